# What can go wrong. What is wrong is a clause without a capital or a full stop: "error: " may stand before it. Cures are
# whole sentences.

# Files. $source: what the system says.
error-store-read = cannot read { $path }: { $source }
error-store-read-cure = Check the name, and that you may read the file.
error-store-too-large = { $path } has more than { $limit } bytes, the most that is read
error-store-too-large-cure = Check that this is the right file.
error-store-exists = { $path } is there already
error-store-exists-cure = Give another name, or move that file away.
error-store-locked = { $path } is being written by another Lashwright
error-store-locked-cure = Close that one first.
error-store-write = cannot write { $path }: { $source }
error-store-write-cure = Check that the folder is there, that you may write to it, and that the disk is not full.
error-store-changed = cannot write { $path }: another program changed it in the meantime
error-store-changed-cure = Close the other program, or go on with a new file.

# Journals.
error-journal-full = the journal is as large as it can be
error-journal-too-large = the file has { $bytes } bytes, and a journal has at most { $most }
error-journal-too-large-cure = Check that this is the right file.
error-journal-none = this is not a journal: line 1 does not say `"format":"{ $format }"`
error-journal-none-cure = Check that this is the right file.
error-journal-newer = this journal is `{ $format }`, and this program reads `{ $newest }` and older
error-journal-newer-cure = Use a newer Lashwright.
error-journal-version = this journal calls itself `{ $format }`, which no Lashwright has written
error-journal-version-cure = Check that this is the right file. This program reads `{ $newest }` and older.
# $line: number of the line.
error-journal-damaged-after-seal = line { $line } is damaged: it comes after the seal
error-journal-damaged-too-long = line { $line } is damaged: it is longer than any line can be
error-journal-damaged-no-text = line { $line } is damaged: it contains bytes that are not text
error-journal-damaged-seal = line { $line } is damaged: its seal does not fit the lines before it
error-journal-damaged-unreadable = line { $line } is damaged: it cannot be read
error-journal-damaged-chain = line { $line } is damaged: it does not follow the line before it
error-journal-damaged-unfinished = line { $line } is damaged: it was not written to its end
error-journal-damaged-no-format = line { $line } is damaged: it does not say what it is
error-journal-damaged-no-hash = line { $line } is damaged: it has no hash
error-journal-damaged-hash = line { $line } is damaged: its hash does not fit
error-journal-damaged-version = line { $line } is damaged: its version is not what was written
error-journal-damaged-cure = The lines before it are whole. Restore the file from a copy.

# Exercises that cannot be played. $name: of the gear set or support.
error-exercise-no-gears = there is no gear set `{ $name }`
error-exercise-no-support = there is no pinion support `{ $name }`
error-exercise-bad-gears = the gear set `{ $name }` cannot be read
error-exercise-bad-support = the pinion support `{ $name }` cannot be read
# $why: a clause.
error-exercise-impossible-gears = the gears of `{ $name }` cannot exist: { $why }
error-exercise-not-finished = the axle is not signed off yet, and what is hidden is told only then
error-exercise-not-finished-cure = End the attempt with { $command }.

# Axles that cannot be computed.
error-axle-shim = layout "{ $layout }" has no "{ $shim }" depth shim
error-axle-collapsible = layout "{ $layout }" takes a collapsible spacer
error-axle-solid = layout "{ $layout }" takes a solid spacer
error-axle-target = the target preload must be 0 to 1 MN, and the side preload must squeeze 5 mm at most
error-axle-nothing-to-clamp = the nut has nothing to press on

# Something that would give way. $force: N. $stress: N/mm².
error-overload-thread = the nut's thread would tear: { $force } N on it is { $stress } N/mm²
error-overload-spacer = the spacer would be crushed flat: { $force } N on it is { $stress } N/mm²
error-overload-folded = the collapsible spacer would fold: it would have to be crushed { $plastic } mm, more than a quarter of its length
error-overload-bearings = the bearings would be crushed: they carry { $force } N and the pair closes by { $closing } mm

# Numbers for which nothing can be computed.
error-root-bracket = no change of sign between { $low } ({ $valuelow }) and { $high } ({ $valuehigh })
error-root-bracket-cure = Choose ends on both sides of the root.
error-root-number = there is no value at { $at }
error-root-number-cure = Stay within the range where there is one.
error-root-accuracy = an accuracy of { $accuracy } cannot be used
error-root-accuracy-cure = Give one above 0.

# Packs of shims. $piece: number of the piece.
error-pack-no-piece = the kit has no piece { $piece }
error-pack-no-piece-cure = Choose one that the kit lists.
error-pack-shape = piece { $piece } has another shape and does not fit there
error-pack-shape-cure = Choose one of the right shape.
error-pack-fitted = piece { $piece } is already fitted, not in the kit
error-pack-fitted-cure = Take it out first, or choose another.
error-start-pack = a pack that is fitted at the start is impossible: { $why }

# Wrenches. $torque: N·m.
error-wrench-clicks = a click wrench only clicks at its set torque
error-wrench-clicks-cure = Read rotating torque with a beam, dial or electronic wrench, or with a cord and scale.
error-wrench-too-large = the pointer stays below its first mark: this wrench starts at { $torque } N·m
error-wrench-too-large-cure = Take a smaller one.
error-wrench-too-small = the pointer is at its stop: this wrench ends at { $torque } N·m
error-wrench-too-small-cure = Take a larger one.

# Operations, written as JSON. $reason: what the reader of JSON says, in English. Names of fields stay as they are.
error-operation-unreadable = this is not an operation: { $reason }
error-operation-list-cure = `lashwright operations` lists all operations with their fields.
error-operation-no-number = `{ $field }` is not a number
error-operation-no-number-cure = Give a number.
error-operation-range = `{ $field }` is { $value }, outside the range { $least } to { $greatest }
error-operation-range-cure = Give a number in that range.
error-operation-too-long = `{ $field }` is too long: { $most } at most
error-operation-too-long-cure = Shorten it.
error-operation-chances = the chances add up to { $sum }, not to 1
error-operation-chances-cure = Change them so that they add up to 1.
# $operation: name of the operation, or of what is chosen in its field $within. $fields: names of fields, with commas.
error-operation-unknown = `{ $operation }` does not take { $fields }
error-operation-missing = `{ $operation }` needs { $fields }
error-operation-unknown-and-missing = `{ $operation }` does not take { $unknown }, and needs { $missing }
error-operation-unknown-within = `{ $operation }` in `{ $within }` does not take { $fields }
error-operation-missing-within = `{ $operation }` in `{ $within }` needs { $fields }
error-operation-unknown-and-missing-within = `{ $operation }` in `{ $within }` does not take { $unknown }, and needs { $missing }
error-operation-meant = `{ $name }` (did you mean `{ $near }`?)
# $fields: names of fields, with commas. $count: how many more there are.
error-operation-more-fields = { $fields }, and { $count } more

# Gears that cannot be drawn.
error-solid-wheel-drive = the ring gear cannot be drawn: its drive flank does not exist at x = { $x }
error-solid-wheel-coast = the ring gear cannot be drawn: its coast flank does not exist at x = { $x }
error-solid-wheel-cure = Bring `cutter_radius_mm` nearer to the cone distance, or reduce `wheel_face_width_mm`.
# $along: per cent.
error-solid-pinion-drive = the pinion cannot be drawn: its drive flank is undercut over its whole height { $along } % of the way from toe to heel
error-solid-pinion-coast = the pinion cannot be drawn: its coast flank is undercut over its whole height { $along } % of the way from toe to heel
error-solid-pinion-cure = Raise `{ $key }` or reduce `wheel_face_width_mm`.
error-solid-no-wheel-tooth = the ring gear cannot be drawn: its teeth have no thickness, or no space between them
error-solid-no-pinion-tooth = the pinion cannot be drawn: its teeth have no thickness, or no space between them
error-solid-no-tooth-cure = Reduce `depth_factor`.

# Doubtful gears: computed all the same. $share: per cent. $places: places on a flank, with commas.
error-gears-undercut-drive = the pinion is undercut where the drive flank meets it: { $share } % of the working flank, at the ring gear's { $places }
error-gears-undercut-coast = the pinion is undercut where the coast flank meets it: { $share } % of the working flank, at the ring gear's { $places }
error-gears-undercut-cure = A larger pressure angle, a narrower face or a smaller ring gear addendum helps.
error-gears-pointed-pinion = the pinion's teeth are pointed at the { $place }: their flanks meet below the tip
error-gears-pointed-wheel = the ring gear's teeth are pointed at the { $place }: their flanks meet below the tip
error-gears-narrow-pinion = the pinion's teeth are nearly pointed at the { $place }: the land is { $land } mm, under { $narrow } mm
error-gears-narrow-wheel = the ring gear's teeth are nearly pointed at the { $place }: the land is { $land } mm, under { $narrow } mm
error-gears-land-pinion-cure = A smaller depth factor or a larger thickness factor helps.
error-gears-land-wheel-cure = A smaller depth factor or a smaller thickness factor helps.
error-gears-second-cut = the cutter passes over the ring gear a second time and cuts { $depth } mm into its teeth at the { $place }
error-gears-second-cut-cure = A larger cutter radius helps.
error-gears-place-toe = toe
error-gears-place-middle = middle
error-gears-place-heel = heel
error-gears-place-toe-root = toe near the root (flank)
error-gears-place-middle-root = middle near the root (flank)
error-gears-place-heel-root = heel near the root (flank)
error-gears-place-toe-top = toe near the top (face)
error-gears-place-middle-top = middle near the top (face)
error-gears-place-heel-top = heel near the top (face)
