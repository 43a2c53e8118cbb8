# What was hidden in an axle: sizes of parts, other numbers, faults; where each shows, and what it does.

## Sizes of parts, at the head of a row and, in small letters, in a list.
hidden-housing-depth = Axle housing depth
hidden-cartridge-face = Axle housing face for the cartridge
hidden-cartridge-depth = Cartridge depth
hidden-shoulder-distance = Distance between the shoulders of the pinion bearing cups
hidden-head-stand = Stand height of the inner (head) pinion bearing
hidden-tail-stand = Stand height of the outer (tail) pinion bearing
hidden-set-up-head-stand = Stand height of the head set-up bearing
hidden-set-up-tail-stand = Stand height of the tail set-up bearing
hidden-pinion-mark = Depth where this pinion runs best (its true mark)
hidden-spacer-length = Free length of the spacer
hidden-offset = Offset of the two axes
hidden-squareness = Squareness of the pinion bore
hidden-tooth-side-seat = Seat in the axle housing, tooth side
hidden-back-side-seat = Seat in the axle housing, back side
hidden-carrier-tooth-side = Carrier, ring gear seat to tooth-side cone
hidden-carrier-back-side = Carrier, ring gear seat to back-side cone
hidden-tooth-bearing-stand = Stand height of the side bearing, tooth side
hidden-back-bearing-stand = Stand height of the side bearing, back side
hidden-ring-gear-thickness = Ring gear, seat to teeth
hidden-seat-runout = Face runout of the ring gear seat
hidden-radial-runout = Radial runout of the ring gear
hidden-seat-chip = Face runout from a chip under the ring gear
hidden-pinion-runout = Radial runout of the pinion
hidden-cap-float = Ring gear float while the caps are not torqued
hidden-cap-mismatch = Ring gear shift from swapped caps
hidden-head-cone-gap = Gap behind the head bearing cone, as it came in
hidden-head-cup-gap = Gap behind the head bearing cup, as it came in
hidden-tail-cup-gap = Gap behind the tail bearing cup, as it came in
hidden-depth-shim = Depth shim
hidden-spacer-shims = Spacer shims
hidden-side-shims = Side shims
hidden-side-adjuster = Side adjuster
hidden-tilt = Ring gear drawn on crooked
hidden-spreader = Axle housing held spread

## Where a size shows.
hidden-by-depth = Measure pinion depth with arbor and gauge block; then look at the height of the pattern on both flanks.
hidden-by-preload = Read rotating torque and end play. The spacer makes up for it.
hidden-by-both = It changes depth and preload at once: measure pinion depth, look at the pattern, and read rotating torque.
hidden-by-sides = Read backlash and side preload. The side setting makes up for it.
hidden-by-gap = Check behind the cup or cone with a 0.04 mm (0.0015 in) feeler gauge, and listen to the press: the sound changes when it is home.
hidden-by-mark = Read the mark on the pinion head, as far as it is right; then look at the height of the pattern on both flanks.
hidden-by-offset = Nothing on this bench measures it. Drive and coast patterns that stay at opposite ends of the tooth point to it.
hidden-by-squareness = Nothing on this bench measures it. Patterns that no pinion depth puts right point to it.
hidden-by-face-runout = Put a dial indicator on the back of the ring gear. Backlash varies around the gear.
hidden-by-radial-runout = Put a dial indicator across the teeth. Backlash varies around the ring gear.
hidden-by-chip = Put a dial indicator on the back of the ring gear. The runout is gone once the seat is clean.
hidden-by-pinion-runout = Put a dial indicator on the pinion. Backlash varies as the pinion turns.
hidden-by-cap-float = Read backlash before and after you torque the caps.
hidden-by-caps = Compare the marks on the caps with those on the axle housing. The carrier binds.
hidden-by-micrometer = Measure with a micrometer.
hidden-by-notches = Count the notches.
hidden-by-tilt = Put a dial indicator on the back of the ring gear.
hidden-by-spreader = Put a dial indicator on the axle housing.

## Other hidden numbers, in a list.
hidden-factor-mark-error = Error of the etched mark
hidden-factor-yield = Force at which the collapsible (crush) spacer yields
hidden-factor-hardening = Rise of that force while it is crushed
hidden-factor-nut-friction = Friction of the pinion nut
hidden-factor-nut-scatter = Scatter of that friction from one tightening to the next
hidden-factor-head-friction = Friction of the head bearing
hidden-factor-tail-friction = Friction of the tail bearing
hidden-factor-side-friction = Friction of the side bearings
hidden-factor-seal-drag = Drag of the pinion seal
hidden-factor-stiffness = Stiffness of the axle housing
hidden-factor-thread-slack = Slack in the threads of the side adjusters
hidden-factor-interference = Interference of the ring gear on its register
hidden-factor-head-cone-press = Force that moves the head bearing cone on
hidden-factor-head-cup-press = Force that moves the head bearing cup in
hidden-factor-tail-cup-press = Force that moves the tail bearing cup in
hidden-value-times = { $value } times the drawing’s
hidden-value-mm = { $value } mm
hidden-value-kn = { $value } kN
hidden-value-percent = { $value } %

## Faults.
hidden-fault-mismatched = Pinion and ring gear that were not lapped together
hidden-fault-caps = Bearing caps on each other’s side
hidden-fault-chip = A chip between the ring gear and the carrier
hidden-fault-worn = Teeth worn by running

## What a size does to the axle, in a list. $by: a length in both units, or degrees where their sign stands here.
hidden-shift-pinion-deeper = pinion { $by } toward the ring gear (deeper)
hidden-shift-pinion-shallower = pinion { $by } away from the ring gear (shallower)
hidden-shift-ring-gear-toward = ring gear { $by } toward the pinion
hidden-shift-ring-gear-away = ring gear { $by } away from the pinion
hidden-shift-offset-less = offset { $by } less
hidden-shift-offset-more = offset { $by } more
hidden-shift-angle-closed = shaft angle { $by }° closed
hidden-shift-angle-opened = shaft angle { $by }° opened
hidden-shift-room-shorter = spacer length for zero preload { $by } shorter
hidden-shift-room-longer = spacer length for zero preload { $by } longer
hidden-shift-spacer-shorter = spacer { $by } shorter
hidden-shift-spacer-longer = spacer { $by } longer
hidden-shift-tooth-stack-shorter = tooth-side stack { $by } shorter
hidden-shift-tooth-stack-longer = tooth-side stack { $by } longer
hidden-shift-back-stack-shorter = back-side stack { $by } shorter
hidden-shift-back-stack-longer = back-side stack { $by } longer
hidden-shift-across = ring gear { $by } along the pinion axis
hidden-shift-varies = backlash varies around the turn
