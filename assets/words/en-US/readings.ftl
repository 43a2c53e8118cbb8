# Readings: what instruments show, and what the trainee writes down of them.

readings-ask = Your reading
# What is typed as a number with its sign.
readings-ask-pattern = Drive pattern height: flank (root) −1, mid-tooth 0, face (top) +1
readings-value = Value you read
readings-write = Write down
# $name: what is etched, as “Number on the pinion”.
readings-etched = { $name }: { $value }
# Where the middle of a pattern lies: shares of half the tooth’s length or height.
readings-toward-toe = { $share } toe
readings-toward-heel = { $share } heel
readings-toward-face = { $share } face
readings-toward-flank = { $share } flank
readings-middle = middle { $along }, { $up }, { $share } %
readings-middle-short = { $along }, { $up }, { $share } %
readings-from = Reading { $number }, { $instrument }
readings-from-stale = Reading { $number }, { $instrument }, stale since a change
# $stem: how the stem of the dial lies.
readings-from-stem = Reading { $number }, { $instrument }, stem { $stem }
readings-from-stem-stale = Reading { $number }, { $instrument }, stem { $stem }, stale since a change
readings-on-sheet = On your sheet: { $value }
# What is held up over the stage: $what was read, and its number.
readings-held = { $what }, reading { $number }
readings-put-down = Back to the stage
readings-enlarge = Enlarge
readings-read-out = Show the value too (for beginners)
readings-face-said = { $instrument }: { $values }
readings-nothing = nothing
readings-named-value = { $name } { $value }
readings-how-wrench = Open ring: breakaway torque. Needle: rotating torque.
readings-how-dial = The small hand counts whole turns.
readings-how-micrometer = Read whole turns on the sleeve and the rest on the thimble.
readings-how-feeler = The longest leaf is the thickest that goes in.
readings-how-feeler-none = Not even the thinnest leaf goes in.
readings-how-click = A click wrench clicks at its setting and shows no value.

## Words on the faces of instruments; there is little room

readings-dial-turns = turns
readings-shows-nothing = no reading
readings-micrometer-metric = sleeve 0.5 mm, thimble 0.01 mm
readings-micrometer-inch = sleeve 0.025 in, thimble 0.001 in
readings-depth-from = from the ring gear axis
readings-clicks = Clicks, shows no value.
