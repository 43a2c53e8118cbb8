# Names of parts, places, instruments and quantities on the bench.

# What is pressed on or in. They stand in sentences: "Pull the head bearing cone off".
bench-head-cone = head bearing cone
bench-head-cup = head bearing cup
bench-tail-cup = tail bearing cup

# Parts that are spoiled, replaced or rejected. They stand in sentences and lists.
bench-part-crush-spacer = collapsible (crush) spacer
bench-part-solid-spacer = solid spacer
bench-part-nut = pinion nut
bench-part-seal = pinion seal
bench-part-pinion-bearings = pinion bearings
bench-part-side-bearings = side bearings
bench-part-ring-gear-bolts = ring gear bolts
bench-part-gears = ring gear and pinion
bench-part-housing = axle housing
bench-part-carrier = differential carrier

# Places for shims.
bench-place-depth = depth shim
bench-place-spacer = spacer shims
bench-place-tooth-side = side shims on the tooth side
bench-place-back-side = side shims at the back of the ring gear

# What is worn or used for safety: marks to set before the work.
bench-precaution-eyes = Eye protection on
bench-precaution-press-guard = Press guard closed
bench-precaution-hot-gloves = Heat-resistant gloves on
bench-precaution-hoist = Hoist on the hook
bench-precaution-holding-bar = Holding bar on the bench
bench-precaution-bearing-held = Bearing held still


# How the stem of a dial indicator lies.
bench-stem-square = square to the tooth
bench-stem-motion = along the motion of the tooth
bench-stem-normal = square to the tooth surface

# Instruments.
bench-tool-dial-indicator = dial indicator
bench-tool-lever-dial = lever dial, fine
bench-tool-worn-dial = worn dial
bench-tool-small-dial-wrench = small dial wrench
bench-tool-small-beam-wrench = small beam wrench
bench-tool-cord-and-scale = cord and scale
bench-tool-click-wrench = click wrench
bench-tool-large-dial-wrench = large dial wrench
bench-tool-multiplier-wrench = wrench with multiplier
bench-tool-micrometer = micrometer
bench-tool-depth-gauge = depth gauge
bench-tool-feeler = feeler gauge
bench-tool-thermometer = thermometer
bench-tool-press-gauge = press gauge
bench-tool-eye = by eye

# What is measured, as a heading.
# tooth: its number, from 1
bench-measured-backlash = Backlash, tooth { $tooth }
bench-measured-face-runout = Face runout, ring gear
bench-measured-radial-runout = Radial runout, ring gear
bench-measured-pinion-runout = Runout, pinion
bench-measured-nut-torque = Torque on the nut
bench-measured-breakaway-torque = Breakaway torque
bench-measured-rotating-torque = Rotating torque
bench-measured-carrier-torque = Rotating torque, carrier
bench-measured-pinion-depth = Pinion depth
bench-measured-pinion-end-play = End play, pinion
bench-measured-carrier-end-play = End play, carrier
bench-measured-housing-spread = Housing spread
bench-measured-shim-piece = Shim piece { $piece }
# place: the place of the pack
bench-measured-shim-pack = Pack: { $place }
# part: a cup or a cone
bench-measured-seat-gap = Gap behind the { $part }
bench-measured-temperature = Temperature, ring gear
bench-measured-pattern = Contact pattern
# plate: its number, from 1
bench-measured-plate = Painted plate { $plate }
bench-measured-numbers = Numbers on both gears

# What a prediction is about: short names beside the choices.
bench-predicted-backlash = Backlash
bench-predicted-torque = Torque
bench-predicted-drive-length = Drive, length
bench-predicted-drive-height = Drive, height
bench-predicted-coast-length = Coast, length
bench-predicted-coast-height = Coast, height

# What may come of it: the choices, in narrow cells. flank and face: toward the flank (root) and the face (top) of the tooth.
bench-outcome-less = less
bench-outcome-same = same
bench-outcome-more = more
bench-outcome-toe = toe
bench-outcome-heel = heel
bench-outcome-root = flank
bench-outcome-top = face

# How far the axle is taken apart.
bench-level-caps = caps off, locks out
bench-level-carrier = carrier out
bench-level-ring-gear = ring gear off
bench-level-nut = nut, flange and seal off
bench-level-pinion = pinion and spacer out
bench-level-bearings = pinion bearings pulled

# Cleaning, as a button and in the log.
bench-clean-ring-gear-seat = Clean the ring gear seat
bench-clean-shims = Deburr and wipe the shims
bench-clean-threads = Degrease the bolt threads
bench-clean-teeth = Wipe the marking compound off
bench-clean-bearings = Wash the bearings

# How a contact pattern leans.
bench-lean-to-heel = rising to the heel
bench-lean-to-toe = rising to the toe
bench-lean-level = level
