# The line that `lashwright check` prints for a good file.
check-gears =
    { $warnings ->
        [0] { $source }: gear set "{ $name }", { $ring_gear } to { $pinion } teeth: no problem found
        [one] { $source }: gear set "{ $name }", { $ring_gear } to { $pinion } teeth: usable, with 1 warning
       *[other] { $source }: gear set "{ $name }", { $ring_gear } to { $pinion } teeth: usable, with { $warnings } warnings
    }
check-warning = Warning: { $what }
check-support-crush = { $source }: pinion support "{ $name }", collapsible (crush) spacer: no problem found
check-support-solid = { $source }: pinion support "{ $name }", solid spacer: no problem found
check-exercise = { $source }: exercise "{ $title }", step { $step }, layout { $layout }: no problem found
check-journal-sealed =
    { $operations ->
        [one] { $source }: journal of `{ $exercise }`, axle (seed) { $seed }, 1 operation, signed off and sealed: no problem found
       *[other] { $source }: journal of `{ $exercise }`, axle (seed) { $seed }, { $operations } operations, signed off and sealed: no problem found
    }
check-journal-open =
    { $operations ->
        [one] { $source }: journal of `{ $exercise }`, axle (seed) { $seed }, 1 operation, not signed off: no problem found
       *[other] { $source }: journal of `{ $exercise }`, axle (seed) { $seed }, { $operations } operations, not signed off: no problem found
    }
# torn is a sentence about its last line.
check-journal-torn =
    { $operations ->
        [one] { $source }: journal of `{ $exercise }`, axle (seed) { $seed }, 1 operation, not signed off. { $torn }
       *[other] { $source }: journal of `{ $exercise }`, axle (seed) { $seed }, { $operations } operations, not signed off. { $torn }
    }
