# Work at the bench: what can be done at each part. Names of work are verbs, their fields nouns.

## Parts, as the list of parts names them

work-part-axle = Whole axle
work-part-ring-gear = Ring gear
work-part-pinion = Pinion
work-part-head-bearing = Inner (head) bearing
work-part-tail-bearing = Outer (tail) bearing
work-part-head-shim = Head shim
work-part-cup-shim = Cup shim
work-part-cartridge-shim = Cartridge shim
work-part-crush-spacer = Collapsible (crush) spacer
work-part-solid-spacer = Solid spacer
work-part-seal = Pinion seal
work-part-nut = Nut and flange
work-part-cartridge = Cartridge
work-part-carrier = Differential carrier
work-part-tooth-side-shim = Side shim, tooth side
work-part-back-side-shim = Side shim, back side
work-part-tooth-side-adjuster = Side adjuster, tooth side
work-part-back-side-adjuster = Side adjuster, back side
work-part-caps = Bearing caps
work-part-housing = Axle housing
work-part-kit = Shim kit
work-part-plates = Painted plates

## At several parts

work-install = Install
work-remove = Remove
work-turn = Turn
work-turn-turns = Turns
work-push = Push along its axis
work-push-direction = Direction
work-push-into-mesh = into mesh
work-push-out-of-mesh = out of mesh
work-measure-end-play = Measure end play
work-measure-runout = Measure runout
work-measure-rotating-torque = Measure rotating torque
work-instrument = Instrument
work-set-up-again = Set the instrument up again
# $part: a part in the middle of a sentence, as “pinion nut” or “side bearings”.
work-replace = Replace the { $part }

## The whole axle

work-take-apart = Take apart
# Followed by how far, as “carrier out”.
work-take-apart-until = Stop at
work-reject-part = Reject a part
work-reject-which = Part
work-reject-reason = Reason
work-reject-evidence = Readings that show it
# A reading that can be named as evidence. $what: what was measured.
work-record = { $number }: { $what }

## Ring gear

work-check-backlash = Check backlash
# Teeth are numbered from 1.
work-tooth = Tooth in mesh
work-stem = Stem
work-brush-compound = Brush on marking compound
work-teeth = Teeth
work-teeth-one-place = three at one place
work-teeth-two-places = three at each of two places
work-teeth-three-places = three at each of three places
work-film = Film
work-film-thin = wiped thin
work-film-usual = usual
work-film-thick = thick
work-roll = Roll the painted teeth
work-roll-drag = Drag on the ring gear
work-roll-passes = Passes each way
work-read-pattern = Read the pattern
work-measure-face-runout = Measure face runout
work-measure-radial-runout = Measure radial runout
work-heat = Heat
work-heat-to = Target temperature
work-measure-temperature = Measure temperature
work-wait = Wait
work-wait-time = Time
work-draw-on = Draw on with its bolts
work-draw-on-crosswise = Tighten crosswise
work-torque-ring-bolts = Torque its bolts
work-threadlocker = Threadlocker on the threads

## Pinion

work-compare-numbers = Compare the numbers
work-measure-depth = Measure pinion depth

## Bearings

work-press-cup = Press the cup in
work-press-cone = Press the cone on
work-press-force = Force to stop at
work-pull-cup = Pull the cup out
work-pull-cone = Pull the cone off
work-check-behind-cup = Check behind the cup with a feeler gauge
work-check-behind-cone = Check behind the cone with a feeler gauge
work-fit-set-up-bearings = Fit the set-up bearings
work-remove-set-up-bearings = Remove the set-up bearings

## Shims and spacer

work-fit-shims = Make up the shim pack
work-remove-shims = Remove the shim pack
work-measure-shims = Measure the shim pack
work-fit-spacer-shims = Make up the spacer shims
work-remove-spacer-shims = Remove the spacer shims
work-measure-spacer-shims = Measure the spacer shims
work-shim-pieces = Shims by their labels
work-fit-new-crush-spacer = Fit a new spacer
work-fit-old-crush-spacer = Fit the old spacer again
work-fit-solid-spacer = Fit on the shaft

## Nut, flange, seal, cartridge

work-fit-nut = Fit flange and nut
work-fit-nut-new = New nut
work-tighten-nut = Tighten to a torque
work-tighten-nut-torque = Torque
work-wrench = Wrench
work-turn-nut = Turn by an angle
work-turn-nut-angle = Angle to tighten by (minus loosens)
work-turn-nut-wrench = Torque read on
work-remove-nut = Remove nut and flange
work-fit-seal = Drive in a new seal
work-remove-seal = Pull the seal out
work-bolt-cartridge = Bolt to the axle housing
work-unbolt-cartridge = Unbolt

## Differential carrier, caps, sides

work-set-carrier-in = Set in the axle housing
work-timing-marks = Teeth off the timing marks
work-lift-carrier-out = Lift out
work-fit-caps = Fit with the bolts snug
work-fit-caps-as-marked = Each cap on its own side, as marked
work-torque-caps = Torque the bolts
work-loosen-caps = Loosen until snug
work-notches = Notches in (minus backs out)
work-fit-lock = Fit the lock
work-remove-lock = Remove the lock

## Axle housing and shim kit

work-spread-housing = Spread
work-spread-by = Spread on the dial
work-remove-spreader = Remove the spreader
work-measure-spread = Measure the spread
work-measure-piece = Measure a shim
work-piece-which = Shim
# One of the kit: its number, where it belongs, what its label says.
work-piece = { $number }: { $place } { $size }

## Painted plates

work-read-plate = Read plate { $plate }
work-judge-plate = Judge plate { $plate }
work-judge-pinion = Pinion
# $chance: how sure, as “80 %”.
work-judge-toward = too shallow, move it toward the ring gear, { $chance } sure
work-judge-right = right, leave it, { $chance } sure
work-judge-away = too deep, move it away from the ring gear, { $chance } sure

## Mistakes in a form

# $field: name of the field; $problem: a sentence.
work-field-problem = { $field }: { $problem }
work-counted-from-one = Teeth are numbered from 1. Type 1 or more.
# $error: what is wrong, in English, for a report.
work-not-possible = These entries do not go together: { $error }. Change them and try again.
