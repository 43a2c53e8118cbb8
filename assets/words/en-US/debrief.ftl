# The debrief: what was judged, believed, changed, read and seen in contact patterns. What was hidden stands in hidden.ftl.

## Amounts.
# $minutes: two digits.
debrief-hours = { $hours } h { $minutes } min
# How far the pinion has to go.
debrief-deeper = { $by } toward the ring gear (deeper)
debrief-shallower = { $by } away from the ring gear (shallower)
debrief-no-change = no change
# $unit: °C.
debrief-with-unit = { $value } { $unit }

## Quantities in the middle of a sentence or after "read", "wrote down".
debrief-quantity-lash = backlash at tooth { $tooth }
debrief-quantity-face-runout = the ring gear face runout
debrief-quantity-radial-runout = the ring gear radial runout
debrief-quantity-pinion-runout = the pinion runout
debrief-quantity-nut-torque = the pinion nut torque
debrief-quantity-breakaway = breakaway torque
debrief-quantity-rotating = rotating torque
debrief-quantity-carrier-torque = the carrier’s rotating torque
debrief-quantity-pinion-depth = pinion depth by arbor and gauge block
debrief-quantity-pinion-play = pinion end play
debrief-quantity-carrier-play = carrier end play
debrief-quantity-spread = the axle housing spread
debrief-quantity-piece = shim piece { $piece }
# $pack: one of debrief-pack.
debrief-quantity-pack = the pack of { $pack }
# $ring: one of debrief-ring.
debrief-quantity-gap = the gap behind the { $ring }
debrief-quantity-temperature = the ring gear temperature
debrief-quantity-print = the contact pattern
debrief-quantity-plate = painted plate { $plate }
debrief-quantity-numbers = the etched numbers

## Where shims go, a noun.
debrief-pack-depth = depth shims
debrief-pack-spacer = spacer shims
debrief-pack-tooth-side = tooth-side shims
debrief-pack-back-side = back-side shims

## Cups and cones, a noun.
debrief-ring-head-cone = head bearing cone
debrief-ring-head-cup = head bearing cup
debrief-ring-tail-cup = tail bearing cup

## How the stem of a dial indicator lies.
debrief-stem-square = stem square to the tooth
debrief-stem-motion = stem along the motion
debrief-stem-normal = stem square to the flank

## Sides of the carrier, as where something is done.

## What is turned or pushed, a noun.

## What a belief is about, at the head of a row.
debrief-subject-pinion-torque = Rotating torque, pinion alone
debrief-subject-total-torque = Total rotating torque, gears in mesh
debrief-subject-lash = Backlash at tooth { $tooth }
debrief-subject-face-runout = Face runout, back of the ring gear
debrief-subject-radial-runout = Radial runout of the ring gear
debrief-subject-pinion-runout = Pinion runout
debrief-subject-nut-torque = Pinion nut torque
debrief-subject-breakaway = Breakaway torque
debrief-subject-rotating = Rotating torque
debrief-subject-carrier-torque = Rotating torque, carrier alone
debrief-subject-pinion-depth = Ring gear axis to pinion head, by arbor and gauge block
debrief-subject-pinion-play = Pinion end play
debrief-subject-carrier-play = Carrier end play
debrief-subject-spread = Axle housing spread
debrief-subject-gap = Gap behind the { $ring }
debrief-subject-piece = Thickness of shim piece { $piece }
debrief-subject-pack = Thickness of the { $pack }
debrief-subject-temperature = Ring gear temperature
debrief-subject-print = Contact pattern
debrief-subject-plate = Painted plate { $plate }
debrief-subject-numbers = Etched numbers
# An instrument and how its stem lay.
debrief-read-with = { $instrument }, { $stem }

## Builds: their names, and what was changed for each, in a list.
debrief-build-as-found = As it came in
debrief-build = Build { $number }
debrief-build-signed-off = Build { $number }, signed off
debrief-build-as-found-short = as it came in
debrief-build-short = build { $number }
debrief-build-span = operations { $first } to { $last }
debrief-build-before = before the first operation
# $pack: one of debrief-pack. $by: by the labels of the pieces.
debrief-change-shims-in = { $pack } in, { $by } by label
debrief-change-shims-out = { $pack } out
debrief-change-shims-thicker = { $pack } { $by } thicker by label
debrief-change-shims-thinner = { $pack } { $by } thinner by label
# $count: notches, finished text. $plural: their number, where it is whole.
debrief-change-adjuster-tooth-in = { $plural ->
        [one] tooth-side adjuster { $count } notch in
       *[other] tooth-side adjuster { $count } notches in
    }
debrief-change-adjuster-tooth-out = { $plural ->
        [one] tooth-side adjuster { $count } notch out
       *[other] tooth-side adjuster { $count } notches out
    }
debrief-change-adjuster-back-in = { $plural ->
        [one] back-side adjuster { $count } notch in
       *[other] back-side adjuster { $count } notches in
    }
debrief-change-adjuster-back-out = { $plural ->
        [one] back-side adjuster { $count } notch out
       *[other] back-side adjuster { $count } notches out
    }
debrief-change-nut-tightened = pinion nut tightened to { $torque }
debrief-change-nut-turned = { $steps ->
        [one] pinion nut turned on by { $angle }° in 1 step
       *[other] pinion nut turned on by { $angle }° in { $steps } steps
    }
debrief-change-new-spacer = new spacer
debrief-change-new-nut = new pinion nut
debrief-change-new-seal = new pinion seal
debrief-change-new-part = new { $part }
debrief-change-ring-gear-crosswise = ring gear drawn on, bolts crosswise
debrief-change-ring-gear-around = ring gear drawn on, bolts one after the other around the circle
debrief-change-seat-cleaned = ring gear seat cleaned
debrief-change-cup-pressed = { $ring } pressed in
debrief-change-cone-pressed = { $ring } pressed on
debrief-change-caps-swapped = bearing caps swapped
debrief-change-rejected = rejected: { $part }

## What was read of a build, in a list.
debrief-saw-pinion-torque = pinion alone { $value }
debrief-saw-total-torque = in mesh { $value }
debrief-saw-lash = backlash { $value }
debrief-saw-pinion-depth = pinion depth by arbor and gauge block { $value }
debrief-saw-end-play = end play { $value }
debrief-saw-face-runout = face runout { $value }

## What readings showed, short.
debrief-shown-nothing = nothing
# $quantity: the name of one of the values of a reading.
debrief-shown-value = { $quantity } { $value }
debrief-shown-lash = tooth { $tooth }: { $value }
debrief-shown-piece = piece { $piece }: { $value }
# $drive, $coast: debrief-print-off, measured from the middle of the tooth, or debrief-shown-no-print.
debrief-shown-prints = drive: { $drive }; coast: { $coast }
debrief-shown-no-print = no pattern

## Where contact patterns lie. Distances are parts of half a tooth.
debrief-print-none = none
# $height, $length: the messages below, or 0.00.
debrief-print-off = height { $height }, length { $length }
debrief-print-to-face = { $by } toward the face (top)
debrief-print-to-flank = { $by } toward the flank (root)
debrief-print-to-toe = { $by } toward the toe
debrief-print-to-heel = { $by } toward the heel
debrief-print-area = { $share } % of the flank
debrief-print = { $off }; { $share } % of the flank
debrief-print-on-edge = { $off }; { $share } % of the flank, an edge touches over { $edge } % of the roll

## What was judged, at the head of a row; + says which way a value with a sign counts.
debrief-judged-depth-best = Pinion depth, from the best place (+ away from the ring gear, shallower)
debrief-judged-depth-found = Pinion depth, from where it ran (+ away from the ring gear, shallower)
debrief-judged-lash = Backlash, tightest place
debrief-judged-spread = Backlash variation around the ring gear
debrief-judged-runout = Ring gear face runout, at the teeth
debrief-judged-pinion-torque = Rotating torque, pinion alone
debrief-judged-nut-torque = Pinion nut torque
debrief-judged-side-torque = Rotating torque that the side bearings add
debrief-judged-drive-length = Drive pattern, length (+ toward the heel)
debrief-judged-drive-height = Drive pattern, height (+ toward the face, top)
debrief-judged-coast-length = Coast pattern, length (+ toward the heel)
debrief-judged-coast-height = Coast pattern, height (+ toward the face, top)
debrief-judged-written = Written down: { $quantity }
debrief-judged-pack = Pack thickness

## Where a value lies in its bands, and what that is worth.
debrief-place-full = inside
debrief-place-between = near
debrief-place-off = off
debrief-worth-full = full marks
debrief-worth-between = some marks
debrief-worth-off = no marks

## Shim packs, gears and painted plates.
debrief-place-depth = Depth
debrief-place-spacer = Spacer
debrief-place-tooth-side = Tooth side
debrief-place-back-side = Back side
debrief-piece = piece { $number }: label { $label }, true { $truth }
# $matched, $compared: whole sentences, the messages below. The mark: etched and true deviation in both units.
debrief-marks = { $matched } { $compared } The mark on the pinion head (+ is away from the ring gear) says { $etched }; true is { $truth }, so the mark is off by { $off }.
debrief-marks-match = Pinion and ring gear are both etched { $number }: they belong together.
debrief-marks-differ = The pinion is etched { $pinion } and the ring gear { $ring_gear }: they do not belong together.
debrief-marks-compared = You compared them in operation { $operation }.
debrief-marks-not-compared = You did not compare them.
debrief-plate = Painted plate { $plate }
debrief-plate-deeper = Needs the pinion { $by } toward the ring gear (deeper)
debrief-plate-shallower = Needs the pinion { $by } away from the ring gear (shallower)
debrief-plate-nothing = Needs nothing: the pinion is { $by } from its place
debrief-plate-said = deeper { $deeper } %, right { $right } %, shallower { $shallower } %

## What no instrument of the bench shows by itself: a name, and what to know of it.
debrief-state-pinion-depth = Pinion depth P
debrief-state-pinion-depth-note = from the designed place; + is away from the ring gear (shallower)
debrief-state-ring-gear = Ring gear position G
debrief-state-ring-gear-note = from the designed place; + is away from the pinion (more backlash)
debrief-state-offset = Offset E
debrief-state-offset-note = + is more offset; no shim changes it
debrief-state-shaft-angle = Shaft angle Σ
debrief-state-shaft-angle-note = + is opened; no shim changes it
debrief-state-pinion-preload = Pinion preload
debrief-state-pinion-preload-note = you feel it only as rotating torque
debrief-state-pinion-play = Pinion end play
debrief-state-pinion-play-note = 0 when there is preload
debrief-state-side-preload = Side preload
debrief-state-side-preload-note = you feel it only as added rotating torque
debrief-state-clamp = Pinion nut clamp load
debrief-state-clamp-note = what friction leaves of the nut torque
