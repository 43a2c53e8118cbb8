# Files that are read and written, and what is wrong with them.

# Every mistake that is told on a terminal; what is a whole sentence that begins small.
files-error = error: { $what }
# why is what the system says.
files-cannot-read = cannot read { $path }: { $why }. Check the name and that you may read the file.
files-too-large = this program reads at most { $limit } bytes of such a file, and { $path } is larger. Check that it is the right file.
files-exists = there is already a file { $path }. Give another name, or move that file away.
files-in-use = another Lashwright is writing { $path }. Close that one first.
files-changed = cannot write { $path }: another program changed it in the meantime. Check the file and start again.
# why is what the system says.
files-cannot-write = cannot write { $path }: { $why }. Check that the folder is there, that you may write to it, and that the disk is not full.
files-cannot-read-input = cannot read standard input: { $why }.
files-cannot-write-output = cannot write to standard output: { $why }.
files-line-too-long = this line is too long. No operation takes more than { $most } bytes.
files-line-not-text = this line is not UTF-8 text: { $why }.
# In front of a mistake in a file or on standard input.
files-at-line = line { $line }: { $what }
# A fault of the program itself; why is what a library says.
files-program-fault = this should not happen: { $why }. Report it with what you did.

# Under the list of what is wrong with a file.
files-problems =
    { $count ->
        [one] { $file }: 1 problem
       *[other] { $file }: { $count } problems
    }
files-problems-left-out = { $file }: { $count } problems shown, { $more } more left out

# Placements of a gear set in a CSV file, or on the command line.
files-placement-not-number = give a number, with a point for decimals
files-placement-too-far = give at most { $most_mm } mm or { $most_degrees } degrees either way
# unfit is one of the two above.
files-placement-option = `{ $option } { $value }`: { $unfit }.
files-placement-remedy = Change it: { $unfit }.
files-placement-not-csv = this file cannot be read as CSV
files-placement-not-csv-remedy = Save it again as plain CSV with commas.
files-placement-header = this is not the header of a placements file
files-placement-header-remedy = Make the first line `{ $header }`.
files-placement-header-semicolons = Make the first line `{ $header }`, with commas and not semicolons between the names.
files-placement-too-many = more than { $most } placements
files-placement-too-many-remedy = Split the file and run it in parts.
files-placement-none = this file holds no placement
files-placement-none-remedy = Write the header `{ $header }`, and below it one placement a row.
files-placement-fields =
    { $count ->
        [one] line { $line } has 1 field and not { $wanted }
       *[other] line { $line } has { $count } fields and not { $wanted }
    }
files-placement-fields-remedy = Give each row { $names }.
files-placement-field = line { $line }: `{ $given }` cannot be `{ $name }`

# Names of what is looked for; names are those that ship with the program, one a line.
files-no-gear-set = there is no gear set and no file named `{ $name }`.
    Gear sets that ship with the program:
    { $names }
files-no-support = there is no pinion support and no file named `{ $name }`.
    Pinion supports that ship with the program:
    { $names }
files-no-exercise = there is no exercise and no file named `{ $name }`.
    Exercises that ship with the program:
    { $names }
files-change-pair = change the numbers of the pair
files-name-part = Name one that ships with the program, or a file in the folder of the exercise.
files-check-part = Run `lashwright check { $name }` to see what is wrong with it.
files-check-gears = Run `lashwright check { $name }` to see what to change.
files-parts-together = Choose a layout, a depth shim, and a pinion support that belong together.
files-no-schema = there is no document named `{ $name }`.
    Documents with a schema: { $names }.

# The folder of a person's own attempts.
files-folder-full = { $folder } holds { $most } attempts at this axle. Move some of them away.
files-keys-damaged = cannot use the keys kept in { $path }: { $why }.
# What is wrong with a journal.
files-journal = { $path }: { $why }.
# A picture that was asked for is there.
files-picture-written = Picture written to { $path }
