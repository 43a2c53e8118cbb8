# What `lashwright --help` says of commands, arguments, and options. Names of options, commands, and values stay as they are.

command-line-about = Teaching simulator for setting up a ring and pinion
command-line-long-about = Teaching simulator for setting up a ring and pinion. Without a command it opens the window.

    { $note }
command-line-help = Print help
command-line-version = Print the version
# Several commands have this option.
command-line-json = Print one JSON document
command-line-seed = Axle (seed) of the exercise

command-line-check = Check files and show all their problems
command-line-check-files = Files, or names of gear sets, pinion supports, and exercises that ship with the program

command-line-gears = List the gear sets that ship with the program

command-line-preload = Compute preload and rotating torque of a pinion support with its nut tightened
command-line-preload-more = Compute preload and rotating torque of a pinion support with its nut tightened.

    Without a table and without options it shows one case: the support as its file says.
# names are those that ship with the program.
command-line-preload-support = Pinion support: a file, or the name of one that ships with the program ({ $names })
command-line-preload-spacer = Free length of the spacer with its shims [default: as in the file]
command-line-preload-nut-torque = Torque on the pinion nut [default: what the support is meant for; 217 (160 ft·lb) where its file does not say]
command-line-preload-turn = Speed at which the pinion is turned [default: 20]
command-line-preload-temperature = Temperature of oil and bearings [default: 20]
command-line-preload-spacer-from = Table over spacer length: first length
command-line-preload-spacer-to = Table over spacer length: last length
command-line-preload-nut-from = Table over nut torque: first torque
command-line-preload-nut-to = Table over nut torque: last torque
command-line-preload-step = Step of the table, mm or N·m
command-line-preload-picture = Write the chart of rotating torque with its windows into an SVG file
command-line-preload-json = Print one JSON document (for a table a list of them)
command-line-preload-csv = Print the table as comma-separated values

command-line-mesh = Compute contact pattern, backlash, and transmission error of a gear set at a placement
command-line-mesh-gears = Gear set: a file, or the name of one that ships with the program (see `lashwright gears`)
command-line-mesh-pinion = Pinion away from the ring gear, mm: positive shallower, negative deeper
command-line-mesh-ring-gear = Ring gear away from the pinion, mm: positive more backlash, negative less
command-line-mesh-offset = Offset beyond the designed one, mm
command-line-mesh-shaft-angle = Shaft angle beyond the designed one, degrees
command-line-mesh-paste = Thickness of the marking compound, µm
command-line-mesh-route = How to find the contact
command-line-mesh-route-exact = Every point solved to the end: what readings and scores are made of
command-line-mesh-route-fast = From numbers prepared for the set: what is drawn while a slider moves
command-line-mesh-placements = CSV file of placements; prints one JSON line a row, in order
command-line-mesh-picture = Write a picture of both flanks, transmission error, and backlash into an SVG file
command-line-mesh-chart = Make the picture a wall chart over two axes of pinion, ring-gear, offset (mm), and shaft-angle (degrees): AXIS=from:to:step, first across, second down, as in pinion=-0.2:0.2:0.1,ring-gear=-0.1:0.1:0.05
command-line-mesh-json = Print one JSON document instead of text

command-line-attempt = Build up an axle without a screen: operations in, answers out
command-line-attempt-exercise = Exercise: a file, or the name of one that ships with the program (see `--list`)
command-line-attempt-operations = Operations as JSON lines; without it they are read from standard input
command-line-attempt-play = Let the program play: reference, reversed, or random
command-line-attempt-journal = Keep the attempt in this file, which must not exist yet
command-line-attempt-json = Print one JSON line for each operation, and one for the end
command-line-attempt-debrief = Write the truth beside what you believed, and better ways, as one HTML page; the axle has to be signed off
command-line-attempt-list = List the exercises that ship with the program

command-line-replay = Do an attempt again from its journal and compare every answer
command-line-replay-file = Journal
command-line-replay-debrief = Write the debrief of the finished attempt as one HTML page

command-line-operations = List all operations of an attempt with their fields
command-line-operations-json = Print a JSON Schema

command-line-schema = Print the schema of a JSON document
command-line-schema-name = Name of the document: the command that prints it

command-line-picture = Draw what the window shows into a PNG file, without a window
command-line-picture-gears = Gear set to show: a file, or the name of one that ships with the program
command-line-picture-out = PNG file to write
command-line-picture-size = Size in pixels
command-line-picture-view = Where to look from: corner, pinion, ring-gear, above, mesh, drive, or coast; or a page: tooth-room, start, bench, or debrief
command-line-picture-theme = Colors: paper or slate
command-line-picture-scenario = Exercise whose bench is shown: a name from `attempt --list`
command-line-picture-operations = What is done to it first: operations as JSON lines
command-line-picture-text = Size of text in percent, 100 to 200
command-line-picture-units = Units: mm or inch
command-line-picture-frames = Frames that are drawn afterward with the gears turning, to tell how long they take

# Where a window is asked for.
command-line-no-window = this program was built without its window. Build it again with the default features.

## What stands around

command-line-usage = Usage:
# In a usage line: any of the options, and the name of a command.
command-line-usage-options = [OPTIONS]
command-line-usage-command = [COMMAND]
command-line-commands = Commands:
command-line-arguments = Arguments:
command-line-options = Options:
# Behind or below what an argument is.
command-line-with-values = { $help } [values: { $names }]
command-line-value = - { $name }: { $help }
command-line-with-usual = { $help } [default: { $usual }]
command-line-usual = [default: { $usual }]

## Mistakes on the command line

command-line-mistake-command = there is no command `{ $given }`. Choose one that `lashwright --help` lists.
command-line-mistake-command-near = there is no command `{ $given }`. Did you mean: { $near }?
command-line-mistake-option = there is no option `{ $given }`. Leave it out, or choose one of this command.
command-line-mistake-option-near = there is no option `{ $given }`. Did you mean `{ $near }`?
command-line-mistake-too-many = `{ $given }` is one argument too many. Leave it out.
command-line-mistake-no-value = `{ $argument }` has no value. Write one after it.
command-line-mistake-choice = `{ $given }` is not a value of `{ $argument }`. Choose from: { $names }.
command-line-mistake-number = `{ $given }` is not a number. Give `{ $argument }` a number such as 0.5.
command-line-mistake-whole-number = `{ $given }` is not a whole number. Give `{ $argument }` a whole number without a sign.
command-line-mistake-range = `{ $given }` is out of range for `{ $argument }`. Give a value within its range.
command-line-mistake-twice = `{ $argument }` is given twice. Leave one of them out.
command-line-mistake-conflict = `{ $argument }` does not go together with { $others }. Leave one of them out.
command-line-mistake-missing = missing: { $arguments }. Add what is missing.
command-line-mistake-takes-no-value = `{ $argument }` takes no value, but `{ $given }` follows it. Leave the value out.
command-line-mistake-no-text = an argument is not UTF-8 text. Type it again.
command-line-mistake-other = this command line cannot be understood. Check it against the usage line below.
# command: what to type
command-line-mistake-help = `{ $command }` says what each argument is.
