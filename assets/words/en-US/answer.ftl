# What the bench answers: cautions, what was noticed, why something was not done, names of readings.

# Cautions: the hazard, what it does, what to wear or do.

# What was noticed.
answer-noticed-part-way = The press stopped with the part only part of the way home, and the part came off again. Use more force.
answer-noticed-home = The force rose steeply at the end and the sound changed.
answer-noticed-no-rise = The press stopped, and no clear rise in force was felt.
answer-noticed-nut-went = The nut turned { $degrees }°.
answer-noticed-wrench-first = The wrench reached its setting before the nut moved.
# tooth and back: notches with their unit
answer-noticed-adjusters = The side adjusters stood turned in by { $tooth } on the tooth side and { $back } at the back of the ring gear, counted from where they stand when a carrier is set in.
answer-noticed-straw = The teeth have turned straw-colored from the heat.
answer-noticed-drawn-on = The bolts had to draw the ring gear on.
answer-noticed-went-home = The ring gear went home by hand.
answer-noticed-numbers = The pinion is etched { $pinion }, the ring gear { $ring_gear }.
# mark: with its sign
answer-noticed-mark = The mark on the pinion head is { $mark } mm. A plus sign means that the pinion stands farther from the ring gear axis.
answer-no-such-hint = The job has no such hint.

# It is fitted already.
answer-already-pinion = The pinion is in already.
answer-already-carrier = The carrier is in already.
answer-already-lock = The adjuster lock is in already.
# part: a cup or a cone
answer-already-part = The { $part } is on already. Pull it off first to press it again.
answer-already-nut = The pinion nut is on already.
answer-already-ring-gear = The ring gear is on already.
answer-already-set-up-bearings = The set-up bearings are in already.
answer-already-spacer = A spacer is on the shaft already. Take it off to fit another one.
answer-already-seal = A pinion seal is in already. Pull it out to fit a new one.
answer-already-cartridge = The cartridge is bolted on already.
answer-already-caps = The caps are on already.
answer-already-spreader = A spreader is on the housing already.

# It is not fitted.
answer-missing-pinion = The pinion is not in. Put it in first.
answer-missing-carrier = The carrier is not in. Set it in first.
answer-missing-lock = The adjuster lock is not in.
answer-missing-part = The { $part } is not on.
answer-missing-ring-gear = The ring gear is not on its carrier.
answer-missing-set-up-bearings = The set-up bearings are not in.
answer-missing-spacer = No spacer is on the shaft.
answer-missing-nut = The pinion nut is not on.
answer-missing-seal = No pinion seal is in.
answer-missing-cartridge = The cartridge is not bolted on.
answer-missing-caps = The caps are not on.
answer-missing-spreader = No spreader is on the housing.

# Why something was not done: what is wrong, where, what to do.
answer-signed-off = This axle is signed off. Start the exercise again to work on it.

# Pinion, its bearings, spacer, seal and cartridge.
answer-pinion-in-the-way = The pinion is in the way. Take the pinion out first.
answer-set-up-bearings-in-the-way = The set-up bearings are in that place. Take them out first.
answer-head-cup-behind-carrier = The head bearing cup is reached from inside the axle housing, and the carrier is in. Lift the carrier out first.
answer-pinion-blocks-set-up-bearings = Set-up bearings slip on only while the pinion is out. Take the pinion out first.
answer-real-bearings-in-place = The set-up bearings go where the real ones are. Pull the real bearings first.
answer-pinion-holds-set-up-bearings = The pinion holds the set-up bearings. Take the pinion out first.
answer-spacer-needs-pinion-out = The spacer goes on the shaft while the pinion is out. Take the pinion out first.
answer-no-used-crush-spacer = No used collapsible spacer is on the bench. Take a new one.
answer-spacer-inside = The spacer is on the shaft inside the housing. Take the pinion out first.
answer-pinion-needs-bearings = The pinion has no bearings to run in. Fit the head cone, the head cup and the tail cup, or the set-up bearings.
answer-nut-holds-pinion = The nut holds the pinion. Take the nut off first.
answer-head-blocked-by-cartridge = The pinion head does not pass through the axle housing. Unbolt the cartridge first.
answer-head-blocked-by-carrier = The pinion passes through the inside of the axle housing, and the carrier is in. Lift the carrier out first.
answer-flange-in-the-way = The flange is in the way. Take the nut and the flange off first.
answer-no-cartridge = This axle has no cartridge.
answer-cartridge-not-bolted = The cartridge is not bolted to the axle housing. Bolt it on first.
answer-no-pinion-for-nut = No pinion is in to put the nut on. Put the pinion in first.
answer-no-bar-takes = The nut does not turn that far: no bar takes the torque. Turn it less.
answer-pinion-not-held = No pinion is held in its bearings. Put the pinion in, and the flange and nut on, first.

# New parts.
answer-old-nut-on = The old nut is on. Take it off first.
answer-old-bolts-in = The old bolts hold the ring gear. Take the ring gear off first.
answer-old-bearings-on = Cups and cones of the old pinion bearings are on. Take the pinion out and pull all of them first.
answer-lift-carrier-first = The carrier is in. Lift the carrier out first.
answer-seal-comes-new = Every pinion seal that is fitted is a new one. Drive one in to have it.
answer-crush-spacer-comes-new = A new collapsible spacer is taken when it is put on the shaft. Ask for a new one there.
answer-not-on-the-shelf = The shelf has no other { $part }. If it is bad, reject it and name the readings that show it.

# Shims.
answer-shim-behind-pinion = The depth shim is behind the pinion head. Take the pinion out first.
answer-shim-under-head-cone = The depth shim is under the head cone. Pull the head cone off first.
answer-shim-under-head-cup = The depth shim is under the head cup. Pull the head cup out first.
answer-shim-under-cartridge = The depth shim is between the cartridge and the axle housing. Unbolt the cartridge first.
answer-no-spacer-shims = This axle has a collapsible (crush) spacer and no spacer shims. Set the preload by the angle of the nut.
answer-spacer-shims-inside = The spacer and its shims are on the shaft inside the housing. Take the pinion out first.
answer-no-side-shims = This axle has side adjusters and no side shims. Turn the side adjusters.
answer-side-shims-behind-carrier = The side shims are beside the carrier bearings. Lift the carrier out first.
answer-no-pack-in = No shims are in that place.
answer-no-such-shim = The shim kit has no piece { $piece }. Choose pieces that are in the kit.
answer-other-shape = Shim piece { $piece } has another shape and does not fit there. Choose pieces of that place.
answer-shim-fitted = Shim piece { $piece } is fitted already, or is named twice. Choose a piece that is in the kit.

# Ring gear and carrier.
answer-ring-gear-on-carrier = The ring gear is on its carrier, which would heat up too. Take the ring gear off first.
answer-no-ring-gear = No ring gear is on the carrier. Draw the ring gear on first.
answer-ring-gear-goes-on-at-bench = The ring gear goes on at the bench, and the carrier is in. Lift the carrier out first.
answer-bolts-reached-at-bench = The ring gear bolts are reached at the bench, and the carrier is in. Lift the carrier out first.
answer-ring-gear-covers-seat = The ring gear covers its seat. Take the ring gear off first.
answer-bolts-are-in = The ring gear bolts are in. Take the ring gear off first.
answer-bearings-inside = The bearings are washed at the bench. Take the pinion out first.
answer-caps-in-the-way = The caps are in the way. Take the caps off first.
answer-side-shims-too-wide = The carrier with its side shims is too wide for the housing. Spread the housing, or make the side shims thinner.
answer-caps-hold-carrier = The caps hold the carrier. Take the caps off first.
answer-no-carrier-for-caps = No carrier is in for the caps to hold. Set the carrier in first.
answer-caps-tighter = The caps are tighter than that already. Loosen them instead.
answer-caps-not-torqued = The caps are not at full torque, so they are loose enough.
answer-caps-torqued = The caps are at full torque already.
answer-locks-hold-caps = The adjuster locks are bolted to the caps. Take the locks out first.
answer-no-adjusters = This axle has side shims and no side adjusters. Change the side shims.
answer-adjuster-thread-open = Half the thread of a side adjuster is in its cap. Set the carrier in and put the caps on first.
answer-adjuster-binds = The side adjuster binds while the caps are at full torque. Loosen the caps to snug first.
answer-lock-is-in = The lock of this side adjuster is in. Take the lock out first.
answer-adjuster-stops = The side adjuster stops before it has turned that far. Turn it less.
answer-no-cap-for-lock = The adjuster lock is bolted to the cap, and the caps are off. Put the caps on first.
answer-no-slot-under-lock = The lock does not fit: no slot is under it. Turn the side adjuster on, never back, to the next slot.
answer-carrier-not-held = No carrier is held in its bearings. Set the carrier in and put the caps on first.
answer-gears-do-not-turn = The gears do not turn: there is no backlash, or the teeth do not mesh. Move the ring gear away from the pinion, or the pinion away from the ring gear (shallower).
answer-nothing-together = The axle is apart that far already. There is nothing to take apart.

# Marking compound.
answer-no-ring-gear-to-paint = No ring gear is on the carrier to paint. Draw the ring gear on first.
answer-no-tooth-named = No tooth is named. Name the teeth to paint.
# last: the last number where teeth are counted from 0
answer-no-such-tooth = The ring gear has no such tooth. It has { $teeth }, numbered from 1 to { $teeth } (in files from 0 to { $last }). Name one of these.
answer-no-compound = No marking compound is on the teeth. Brush some on first.
answer-not-rolled = The painted teeth have not been rolled through mesh. Roll them first.
answer-not-in-mesh = The gears are not in mesh. Put the pinion and the carrier in first.

# Measuring.
answer-carrier-must-turn = The carrier must turn in its bearings for that. Set the carrier in and put the caps on first.
answer-nut-torque-read-turning = Torque on the nut is read while the wrench turns the nut. Tighten the nut with a wrench that shows it.
answer-pinion-turns-too = The pinion turns with the carrier. Read the torque of both at the pinion nut.
answer-arbor-blocked = The arbor goes in the carrier bores, and the carrier is in. Lift the carrier out first.
answer-no-such-piece = The shim kit has no such piece. Choose a piece that is in the kit.
answer-piece-fitted = That shim piece is fitted. Take its shims out first, or choose another piece.
answer-no-piece-in-box = No shim piece is left in the kit.
answer-part-not-on = The { $part } is not on. Press it first.
answer-no-such-plate = No such painted plate is beside the bench. Choose one that is there.
answer-numbers-are-compared = Numbers and marks are not measured. Read them by comparing the numbers on both gears.
answer-teeth-do-not-touch = The teeth do not touch at all. Move the pinion toward the ring gear (deeper), or the ring gear toward the pinion.
answer-no-backlash = The gears are tight: there is no backlash, and they do not turn. Move the ring gear away from the pinion.
# name: as it was written in an operation; there: all names that can be written
answer-no-such-tool = There is no `{ $name }` on the bench. Take one of these: { $there }.
# instrument: what it is; what: a quantity
answer-does-not-show = The { $instrument } does not show { $what }. Take another instrument.
answer-wrench-clicks = A click wrench only clicks at its set torque. Read rotating torque with a beam, dial or electronic wrench, or with cord and scale.
answer-wrench-too-large = The pointer stays below its first mark: this wrench begins at { $torque }. Take a smaller one.
answer-wrench-too-small = The pointer is at its stop: this wrench ends at { $torque }. Take a larger one.
answer-does-not-tighten = The { $instrument } does not tighten a nut. Take a torque wrench for nuts.
answer-does-not-turn = The { $instrument } does not turn a nut. Take a torque wrench for nuts.

# Set-up sheet.
answer-carrier-covers-pinion = The carrier covers the pinion head. Lift the carrier out first.
answer-no-evidence = A part is rejected with evidence. Name the readings that show that it is bad.
answer-no-such-record = There is no reading { $record }. Name one that was taken.

# What would give way, or cannot be.
answer-nothing-to-clamp = The nut has nothing to press on. Fit the bearings and the spacer first.
# clamp: a force; stress: in N/mm², without its unit
answer-thread-tears = The thread of the nut would tear: a clamp force of { $clamp } loads it with { $stress } N/mm². Tighten the nut less.
answer-spacer-crushed = The spacer would be crushed flat: a force of { $force } loads it with { $stress } N/mm². Tighten the nut less.
answer-crush-spacer-folds = The collapsible spacer would fold: it would have to be crushed by { $crush }, more than a quarter of its length. Tighten the nut less.
answer-bearings-crushed = The bearings would be crushed: they would carry { $preload } and close by { $closing }. Tighten the nut less, or fit a longer spacer.
answer-cannot-be = The parts do not go together that way. Check what is fitted.

# What an instrument is. They stand in sentences: "The beam wrench does not show backlash."
answer-instrument-dial = dial indicator
answer-instrument-beam-wrench = beam wrench
answer-instrument-dial-wrench = dial wrench
answer-instrument-electronic-wrench = electronic wrench
answer-instrument-cord-and-scale = cord and scale
answer-instrument-click-wrench = click wrench
answer-instrument-micrometer = micrometer
answer-instrument-depth-gauge = depth gauge
answer-instrument-feeler = feeler gauge
answer-instrument-thermometer = thermometer
answer-instrument-eye = eye

# What is measured, in the middle of a sentence.
answer-quantity-backlash = backlash
answer-quantity-runout = runout
answer-quantity-nut-torque = torque on a nut
answer-quantity-torque = rotating torque
answer-quantity-pinion-depth = pinion depth
answer-quantity-end-play = end play
answer-quantity-housing-spread = the spread of the axle housing
answer-quantity-shim-piece = the thickness of a shim
answer-quantity-shim-pack = the thickness of a pack
answer-quantity-seat-gap = the gap behind a cup or cone
answer-quantity-temperature = temperature
answer-quantity-pattern = a contact pattern
answer-quantity-numbers = etched numbers

# The values of a reading. They stand before a number.
answer-reading-backlash = backlash
answer-reading-runout = total indicator reading
answer-reading-travel = travel
answer-reading-thickness = thickness
answer-reading-distance = distance
answer-reading-thickest-leaf = thickest leaf that goes in
answer-reading-breakaway = breakaway torque
answer-reading-rotating = rotating torque
answer-reading-nut-torque = torque
answer-reading-temperature = temperature
answer-reading-pinion-number = number on the pinion
answer-reading-ring-gear-number = number on the ring gear
answer-reading-pinion-mark = mark on the pinion
answer-reading-clearness = clearness
answer-reading-drive-middle-along = drive pattern, middle along the tooth
answer-reading-drive-middle-up = drive pattern, middle up the tooth
answer-reading-drive-toe = drive pattern, toe end
answer-reading-drive-heel = drive pattern, heel end
answer-reading-drive-root = drive pattern, flank (root) end
answer-reading-drive-top = drive pattern, face (top) end
answer-reading-drive-area = drive pattern, area
answer-reading-coast-middle-along = coast pattern, middle along the tooth
answer-reading-coast-middle-up = coast pattern, middle up the tooth
answer-reading-coast-toe = coast pattern, toe end
answer-reading-coast-heel = coast pattern, heel end
answer-reading-coast-root = coast pattern, flank (root) end
answer-reading-coast-top = coast pattern, face (top) end
answer-reading-coast-area = coast pattern, area

# A journal whose last line was cut off. bytes: how much of it is there
answer-torn-line = { $bytes ->
    [one] The last line of the journal is cut off after { $bytes } byte and was left out. At most the last operation is missing. Do it again.
   *[other] The last line of the journal is cut off after { $bytes } bytes and was left out. At most the last operation is missing. Do it again.
}
