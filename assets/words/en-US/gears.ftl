# The list of gear sets and the numbers of the chosen one.

gears-title = Gear sets
gears-found = { $count } found
gears-none = No gear sets found.
gears-choose = Choose a gear set to show it on the stage.
gears-built-in = built in
# $hunting: which teeth meet; $origin: where the set came from.
gears-second = { $hunting }, { $origin }
gears-open = Open
gears-file = Gear file
gears-file-hint = Gear file, or drop it here
gears-drop = Drop to open the gear file
gears-not-opened = The file was not opened
gears-hunting = hunting
gears-partly-hunting = partly hunting
gears-non-hunting = non-hunting
gears-large-cutter = large cutter
gears-small-cutter = small cutter
gears-cutter-between = medium cutter
gears-large-cutter-rule = Moving the pinion away from the ring gear moves the drive pattern to the heel and the coast pattern to the toe.
gears-small-cutter-rule = Moving the pinion away from the ring gear moves the drive pattern to the toe and the coast pattern to the heel.
gears-cutter-between-rule = Try a pinion move to see which way it moves the pattern.
gears-tapered = tapered
gears-uniform = uniform
gears-teeth = Teeth
# $pinion and $wheel: numbers of teeth as text.
gears-teeth-numbers = { $pinion } to { $wheel }, { $hunting }
gears-ratio = Ratio
gears-diameter = Ring gear diameter
gears-offset = Offset
gears-no-offset = none
gears-spiral-angle = Pinion spiral angle
gears-tooth-depth = Tooth depth
gears-family = Family
gears-millimeters = { $length } mm
gears-inches = { $length } in
