# Problems of files. What is wrong is a clause without a capital or a full stop: "error: " stands before it. Labels stand
# beside a mark under the place in the file. Cures are whole sentences.
# $path and $key are names of the file's own keys; they stay as they are.

# $what: what is wrong. $cure: what to do, whole sentences.
problem-line = { $what }. { $cure }
problem-line-without-cure = { $what }.
# $file: name of the file. $count: problems shown.
problem-count = { $file }: { $count ->
    [one] { $count } problem
   *[other] { $count } problems
}
problem-count-left-out = { $file }: { $count } problems shown, { $more } more left out

# What people call the files, with the article.
problem-file-text = a text file
problem-file-gear-set = a gear set file
problem-file-support = a pinion support file
problem-file-scenario = an exercise file
problem-file-placements = a placements file

# The file as a whole.
problem-too-large = the file has { $bytes } bytes, more than the { $most } that are read
problem-too-large-cure = Check that this is the right file. A file written by hand is far smaller.
problem-nul = the file contains a NUL character, so it is not plain text
problem-not-utf8 = the file is not plain text in UTF-8
problem-not-utf8-label = the first byte that is not
problem-plain-text-cure = Save the file again as plain text in UTF-8.
problem-here = here
# $said: what the reader of TOML says, in English.
problem-not-toml = this is not TOML: { $said }
problem-not-toml-cure = Write one `key = value` per line, text in double quotes, and tables as `[name]`.
problem-unusable = this file cannot be used
problem-unusable-cure = Compare it with a file that works.
problem-newer-format = this is { $file } of version { $version }, and this program reads up to version { $newest }
problem-newer-format-label = a newer version
problem-newer-format-cure = Use a newer program, or ask for the file in the older version.
problem-other-format = this is not { $file } that this program can read
problem-other-format-label = expected: "{ $wanted }"
problem-other-format-cure = Use a file that says `format = "{ $wanted }"`.

# Keys that are missing or not known.
problem-missing = `{ $path }` is missing
problem-add-line = Add a line `{ $key } = …` below `[{ $table }]`.
problem-add-line-at-top = Add a line `{ $key } = …` at the top of the file.
problem-missing-table = the table `[{ $path }]` is missing
problem-missing-table-cure = Add a line `[{ $path }]` with its keys below it.
problem-unknown-key = `{ $path }` is not a key that this file can have
problem-unknown-key-label = nothing reads this
# $known: names of keys, with commas.
problem-unknown-key-cure = Take it out. Keys that can be here: { $known }.
problem-meant-key = Did you mean `{ $key }`?

# What to give. $range: see below.
problem-give-number = Give a number in the range { $range }, without quotes.
problem-give-whole = Give a whole number in the range { $range }, without quotes or a decimal point.
problem-give-text = Give text of { $least } to { $most } characters on one line, in double quotes.
problem-give-flag = Give true or false, without quotes.
# $words: words in quotes, with commas. $count: how many.
problem-give-word = { $count ->
    [one] Write { $words }.
   *[other] Write one of these: { $words }.
}
# $allowed: how many of what, as "2 numbers".
problem-give-list = Give a list of { $allowed } in square brackets.
# $amount: a number or a range of numbers. $most: the larger end of it.
problem-items-texts = { $most ->
    [one] { $amount } text
   *[other] { $amount } texts
}
problem-items-numbers = { $most ->
    [one] { $amount } number
   *[other] { $amount } numbers
}
problem-items-tables = { $most ->
    [one] { $amount } table
   *[other] { $amount } tables
}

# Values of the wrong kind. $found and $wanted: nouns with their articles, below.
problem-wrong-kind = `{ $path }` is { $found }, not { $wanted }
problem-wrong-kind-label = expected: { $wanted }
problem-wanted-number = a number
problem-wanted-whole = a whole number
problem-wanted-text = text in quotes
problem-wanted-flag = true or false
problem-wanted-word = a word in quotes
problem-wanted-list = a list
problem-value-text = text
problem-value-whole = a whole number
problem-value-decimal = a number with a decimal point
problem-value-flag = true or false
problem-value-date = a date
problem-value-list = a list
problem-value-table = a table
problem-not-a-table = `{ $path }` is { $found }, not a table
problem-not-a-table-label = expected: a table
problem-not-a-table-cure = Write `[{ $path }]` on its own line, with its keys below it.
problem-item-not-a-table = an item of `{ $path }` is { $found }, not a table
problem-item-not-a-table-cure = Write `[[{ $path }]]` on its own line, with its keys below it.

# Values out of range.
problem-range = { $low } to { $high }
problem-range-above = above { $low } up to { $high }
problem-out-of-range = `{ $path }` is { $value }, outside the range { $range }
problem-range-label = allowed: { $range }
problem-out-of-range-cure = Give a number in the range { $range }.
problem-whole-out-of-range-cure = Give a whole number in the range { $range }.
problem-length = `{ $path }` has { $count ->
    [one] { $count } character
   *[other] { $count } characters
}, and { $least } to { $most } are allowed
problem-length-cure = Give text of { $least } to { $most } characters.
problem-control-character = `{ $path }` contains a line break or another control character
problem-control-character-cure = Write it on one line.
problem-unknown-word = `{ $path }` does not take this word
problem-unknown-word-label = allowed: { $words }
problem-meant-word = Did you mean "{ $word }"?
# $allowed: how many of what, as "2 numbers".
problem-list-length = `{ $path }` has { $count ->
    [one] { $count } item
   *[other] { $count } items
}, and it takes { $allowed }
problem-list-length-cure = Give { $allowed }.
problem-item-no-text = an item of `{ $path }` is { $found }, not text
problem-item-text-does-not-fit = an item of `{ $path }` is too long or too short, or contains a line break
problem-item-no-text-label = expected: text of { $least } to { $most } characters
problem-item-no-text-cure = Give text of { $least } to { $most } characters on one line, in double quotes.
problem-item-no-number = an item of `{ $path }` is not a number in the range { $range }

# A number in another unit. $other and $unit: units below. $meant: the number in the file's unit.
problem-mix-up = Is it in { $other }? { $given } { $other } is { $meant } { $unit }.
problem-unit-millimeters = millimeters
problem-unit-micrometers = micrometers
problem-unit-inches = inches
problem-unit-thousandths = thousandths of an inch
problem-unit-square-millimeters = square millimeters
problem-unit-square-inches = square inches
problem-unit-degrees = degrees
problem-unit-radians = radians
problem-unit-newtons = newtons
problem-unit-kilonewtons = kilonewtons
problem-unit-pounds = pounds
problem-unit-newton-meters = newton meters
problem-unit-foot-pounds = foot-pounds
problem-unit-inch-pounds = inch-pounds
problem-unit-newtons-per-millimeter = newtons per millimeter
problem-unit-newtons-per-micrometer = newtons per micrometer
problem-unit-pounds-per-inch = pounds per inch
problem-unit-kilopounds-per-inch = thousands of pounds per inch

# Gear sets. $wheel, $pinion: numbers of teeth.
problem-gears-teeth = the ring gear has { $wheel } teeth and the pinion { $pinion }; the ring gear must have more
problem-gears-teeth-label = must be more than the pinion's
problem-gears-teeth-cure = Check that the two numbers are not swapped.
problem-gears-face-width = a face width of { $face } mm leaves no room in a ring gear of { $diameter } mm
problem-gears-face-width-cure = Check both numbers. A face width of about a third of the outer cone distance is usual.
problem-gears-no-radius = neither `limit_radius_mm` nor `cutter_radius_mm` is given
problem-gears-no-radius-cure = Give at least one of them. The other is then taken to be equal.

# Gears that cannot exist.
problem-geometry-offset = no pitch cones exist for an offset of { $offset } mm: this diameter and spiral angle allow about { $largest } mm at most
problem-geometry-offset-cure = Reduce `offset_mm`.
problem-geometry-limit-radius-between = no pitch cones have a limit radius of { $radius } mm: this offset and spiral angle allow { $low } to { $high } mm
problem-geometry-limit-radius-above = no pitch cones have a limit radius of { $radius } mm: this offset and spiral angle allow { $low } mm and more
problem-geometry-limit-radius-none = no pitch cones have a limit radius of { $radius } mm: this offset and spiral angle allow none at all
problem-geometry-limit-radius-cure = Change `limit_radius_mm`, or `offset_mm` and `pinion_mean_spiral_angle_deg`.
problem-geometry-blank-apex = the ring gear's blank is impossible: its teeth reach past the apex
problem-geometry-blank-height = the ring gear's blank is impossible: its teeth have no height at one end
problem-geometry-blank-pinion = the ring gear's blank is impossible: the pinion that goes with it has no cones
problem-geometry-blank-cure = Reduce `wheel_face_width_mm` or `depth_factor`.
problem-geometry-blade-angle-drive = no blade angle gives the drive flank its pressure angle
problem-geometry-blade-angle-coast = no blade angle gives the coast flank its pressure angle
problem-geometry-blade-angle-cure = Bring `{ $key }` nearer to 20.
problem-geometry-point-width = the cutter's point width would be { $width } mm, and it must be above 0
problem-geometry-point-width-cure = Reduce `depth_factor` or the pressure angles, or raise `thickness_factor`.
problem-geometry-cutter-drive = the cutter does not reach the ring gear's drive flank
problem-geometry-cutter-coast = the cutter does not reach the ring gear's coast flank
problem-geometry-cutter-cure = Bring `cutter_radius_mm` nearer to the cone distance.
problem-geometry-contact-drive = no point of the drive flank has regular contact with the pinion: the pressure angle is too small for this face width and number of teeth
problem-geometry-contact-coast = no point of the coast flank has regular contact with the pinion: the pressure angle is too small for this face width and number of teeth
problem-geometry-contact-cure = Raise `{ $key }` or reduce `wheel_face_width_mm`.

# Pinion supports. $own, $other: versions of the format.
problem-support-other-version = `{ $key }` belongs to version { $other } of the format, and this file is version { $own }
problem-support-version-two-cure = Take it out, or write `format = "lashwright-support/2"`, which has `nut_torque_nm`, and `friction` in place of `friction_series`.
problem-support-version-one-cure = Write `friction = {"{"} r1 = …, r2 = …, s1 = …, s2 = … {"}"}` in its place.
problem-support-version-one-cure-row = Write `friction = {"{"} r1 = { $r1 }, r2 = { $r2 }, s1 = { $s1 }, s2 = { $s2 } {"}"}` in its place.
problem-support-version-one-cure-steep = Write `friction = {"{"} r1 = { $r1 }, r2 = { $r2 }, s1 = { $s1 }, s2 = { $s2 } {"}"}` and `steep = true` in its place.
problem-support-cup = a cup of { $outside } mm leaves no room for rollers around a bore of { $bore } mm
problem-support-cup-cure = Check that the two diameters are not swapped. The cup is at least 1.2 times the bore.
problem-support-series = there is no friction series "{ $word }"
problem-support-series-label = expected: a row of the friction table
problem-support-series-cure = Write one of { $known }. Write "other" for a bearing that none of them fits.
problem-support-sleeve-key = `spacer.{ $key }` belongs to a collapsible spacer, and this one is solid
problem-support-sleeve-key-cure = Take it out, or write `kind = "collapsible"`.
problem-support-pitch = a pitch of { $pitch } mm is too coarse for a thread of { $diameter } mm
problem-support-pitch-cure = Check both numbers. The pitch is the advance per turn.
problem-support-face = the nut's face lies outside its thread, so its { $face } mm must be more than { $diameter } mm
problem-support-face-cure = Give the mean of the outer and inner diameters of the face that turns.
problem-support-oil = oil of { $cool } mm²/s at 40 °C cannot be as thick as { $hot } mm²/s at 100 °C
problem-support-oil-label = must be less than at 40 °C
problem-support-oil-cure = Check that the two values are not swapped.
problem-support-tail = the tail bearing is at { $tail } mm, not beyond the head bearing at { $head } mm
problem-support-tail-cure = Check that the two places are not swapped. Both count from the crossing point toward the flange.
problem-support-pilot = the pilot bearing is at { $pilot } mm, not short of the head bearing at { $head } mm
problem-support-pilot-cure = Give the place of the bearing at the small end of the pinion's teeth, or take both pilot keys out.
# $by: how much longer or shorter, mm. $zero: the zero-preload length, mm.
problem-spacer-too-long-sleeve = a spacer { $by } mm longer than the zero-preload length of { $zero } mm can never be closed: a collapsible spacer folds before it is crushed that far
problem-spacer-too-long-solid = a spacer { $by } mm longer than the zero-preload length of { $zero } mm can never be closed: steel does not shorten that far under any nut
problem-spacer-too-long-cure = Check both lengths. At most { $longest } mm would close.
problem-spacer-too-short = a spacer { $by } mm shorter than the zero-preload length of { $zero } mm holds nothing apart
problem-spacer-too-short-cure = Check both lengths. They usually differ by a few hundredths of a millimeter.

# Exercises.
problem-scenario-shim = layout "{ $layout }" has no "{ $shim }" depth shim
# $words: words in quotes, with commas. $count: how many.
problem-scenario-shim-cure = { $count ->
    [one] Write { $words }.
   *[other] Write one of these: { $words }.
}
problem-scenario-ascending = `{ $key }` must go from the smaller to the larger number
problem-scenario-ascending-cure = Write `{ $key } = [smallest, largest]`.
problem-scenario-zero-window = `{ $key }` does not contain the window for full marks, { $low } to { $high }
problem-scenario-zero-window-cure = Write the two values where no marks are left, outside that window.
problem-scenario-member = this layout has no `{ $name }`
problem-scenario-member-cure = Take it out, or choose another layout.
problem-scenario-fault-twice = two faults are named "{ $name }"
problem-scenario-fault-twice-cure = Give this one a `name` that no other fault in the file has. Without a name, its place counted from 0 is its name.
problem-scenario-fault-there = a fault cannot be named "{ $name }": the program uses names that end in "there" itself
problem-scenario-fault-there-cure = Give it a `name` that does not end in "there".
problem-scenario-counts-twice = `{ $name }` is in `counts` twice
problem-scenario-counts-twice-cure = Name each only once.
problem-scenario-counts-unknown = `counts` does not take `{ $name }`
problem-scenario-counts-unknown-cure = Choose from { $known }.
problem-scenario-marks = full marks must end before none begin
problem-scenario-marks-cure = Make `zero` larger than `full`.
problem-scenario-weights = the weights must add up to 100
problem-scenario-weights-label = they add up to { $sum }
problem-scenario-weights-cure = Change them so that they do.
problem-scenario-language = "{ $name }" is not a language tag
problem-scenario-language-cure = Name the table after a language: `[texts.de]`, `[texts.pt-BR]`.
problem-scenario-language-written = the language tag "{ $name }" is not in its standard form
problem-scenario-language-written-cure = Write `[texts.{ $properly }]`.
problem-scenario-first-language = the texts in "{ $tag }" are those at the top of the file
problem-scenario-first-language-cure = Change `title`, `told`, `aims`, `hints` and `cautions` there, and take this table out.
problem-scenario-no-english = there is no English `{ $key }` to translate
problem-scenario-no-english-cure = Write `{ $key }` in English at the top of the file, or take this one out.
problem-scenario-not-there-cure = Name one that ships with the program, or a file in the folder of the exercise.
problem-scenario-unreadable-cure = Run `lashwright check { $name }` to see what is wrong with it.
problem-scenario-gears-cure = Run `lashwright check { $name }` to see what has to change.
problem-scenario-axle-cure = Choose a layout, a depth shim and a pinion support that belong together.

# Placements, a CSV file. $header: its first line.
problem-placements-not-csv = this file cannot be read as CSV
problem-placements-not-csv-cure = Save it again as plain CSV with commas.
problem-placements-header = this is not the header of a placements file
problem-placements-header-cure = Make the first line `{ $header }`.
problem-placements-header-semicolons-cure = Make the first line `{ $header }`, with commas and not semicolons.
problem-placements-too-many = more than { $most } placements
problem-placements-too-many-cure = Split the file and run it in parts.
problem-placements-none = this file has no placements
problem-placements-none-cure = Give the header `{ $header }` and below it one row per placement.
problem-placements-fields = line { $line } has { $count ->
    [one] { $count } field
   *[other] { $count } fields
}, not { $wanted }
problem-placements-fields-cure = Give each row { $columns }.
# $given: what stands in the file.
problem-placements-number = line { $line }: `{ $given }` cannot be `{ $column }`
# $option: a number on the command line, with its option.
problem-placements-option = `{ $option }` cannot be used
problem-placements-no-number-cure = Give a number, with a point for decimals.
problem-placements-too-far-cure = Give at most { $millimeters } mm or { $degrees } degrees either way.
