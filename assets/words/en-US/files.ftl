# Files that are read and written, and what is wrong with them.

# Every mistake that is told on a terminal; what is a whole sentence that begins small.
files-error = error: { $what }
# why is what the system says.
# why is what the system says.
files-cannot-read-input = cannot read standard input: { $why }.
files-cannot-write-output = cannot write to standard output: { $why }.
files-line-too-long = this line is too long. No operation takes more than { $most } bytes.
files-line-not-text = this line is not UTF-8 text: { $why }.
# In front of a mistake in a file or on standard input.
files-at-line = line { $line }: { $what }
# A fault of the program itself; why is what a library says.
files-program-fault = this should not happen: { $why }. Report it with what you did.

# Under the list of what is wrong with a file.

# Placements of a gear set in a CSV file, or on the command line.
# unfit is one of the two above.

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
files-no-schema = there is no document named `{ $name }`.
    Documents with a schema: { $names }.

# The folder of a person's own attempts.
files-folder-full = { $folder } holds { $most } attempts at this axle. Move some of them away.
# $name: how the names of the files begin.
files-folder-full-of = { $folder } holds { $most } files named { $name }. Move some of them away.
files-keys-damaged = cannot use the keys kept in { $path }: { $why }.
# What is wrong with a journal.
files-journal = { $path }: { $why }.
# A picture that was asked for is there.
files-picture-written = Picture written to { $path }
