# An attempt on the command line: the job card, the answers, the end, and what can be wrong with it.

# The card.
card-title = { $title } (step { $step }, layout { $layout })
card-safety = Safety
card-targets = Targets
card-nut = Pinion nut
card-nut-value = { $torque }, at most { $most }
card-pinion-torque = Pinion rotating torque
card-side-torque = Side bearings add
card-range = { $low } to { $high }
# The same in both systems of units.
card-both = { $metric } ({ $inch })
card-backlash = Backlash, tightest
card-backlash-square = { $range }, stem square to the tooth
card-backlash-along-motion = { $range }, stem along the tooth’s motion
card-backlash-along-normal = { $range }, stem square to the flank
card-variation = Backlash variation
card-face-runout = Face runout
card-at-most = at most { $most }
card-depth = Pinion depth
card-depth-from-best = within { $most } of the best that this axle can be set to
card-depth-from-found = within { $most } of where it ran before
card-counts = What earns points: { $counts }
# The pattern that the maker of the set found on it.
card-own-pattern = The set’s own pattern
card-own-pattern-of = The set’s own pattern, { $gears }
card-drive = Drive
card-coast = Coast
card-pattern-none = nothing is marked
# lean says how the pattern leans.
card-pattern = center at length { $along }, height { $up }; covers { $area } % of the flank, { $lean }
card-pattern-scale = Length runs from toe −1 to heel +1, height from flank (root) −1 to face (top) +1.
card-instruments = Instruments, as operations name them: { $names }
card-kit = Shim kit, by label:
card-fitted = (fitted)
card-place-depth = depth
card-place-spacer = spacer
card-place-tooth-side = tooth side
card-place-back-side = back side
card-how = Write one operation a line, as in { $example };
    `lashwright operations` lists them all. { $finish } signs off the axle.

# Answers.
card-not-done = { $number }. Not done: { $why }
card-done = { $number }. Done
card-done-minutes = { $number }. Done, { $minutes } min
card-done-cost = { $number }. Done, parts cost { $cost }
card-done-minutes-cost = { $number }. Done, { $minutes } min, parts cost { $cost }
card-caution = CAUTION: { $what }
card-record = record { $record }: { $what } { $value }
card-record-nothing = record { $record }: { $what } nothing
card-spoiled = Spoiled: { $parts }
card-stale = No longer true: record { $records }

# The end.
card-signed-off =
    { $teardowns ->
        [one] { $exercise }: signed off, { $minutes } min, parts cost { $cost }, 1 teardown
       *[other] { $exercise }: signed off, { $minutes } min, parts cost { $cost }, { $teardowns } teardowns
    }
card-not-signed-off =
    { $teardowns ->
        [one] { $exercise }: not signed off, { $minutes } min, parts cost { $cost }, 1 teardown
       *[other] { $exercise }: not signed off, { $minutes } min, parts cost { $cost }, { $teardowns } teardowns
    }
card-score = Score { $total } of 100: outcome { $outcome } of { $outcome_most }, process { $process } of { $process_most }, understanding { $understanding } of { $understanding_most }, economy { $economy } of { $economy_most }
card-par =
    { $teardowns ->
        [one] Par (what the reference technician takes): { $minutes } min, parts cost { $cost }, 1 teardown
       *[other] Par (what the reference technician takes): { $minutes } min, parts cost { $cost }, { $teardowns } teardowns
    }
card-loss = { $points } { $part }: { $why }
card-loss-at = { $points } { $part }, operation { $operation }: { $why }
card-truth = What is true of the axle
card-not-assembled = not assembled
card-truth-pinion = Pinion
card-truth-ring-gear = Ring gear
card-truth-offset = Offset
card-toward-ring-gear = { $length } toward the ring gear (deeper)
card-from-ring-gear = { $length } away from the ring gear (shallower)
card-toward-pinion = { $length } toward the pinion (less backlash)
card-from-pinion = { $length } away from the pinion (more backlash)
card-less-offset = { $length } less
card-more-offset = { $length } more
card-as-designed = as designed
card-truth-backlash = Backlash
card-truth-backlash-value = { $low } to { $high } around the ring gear
card-truth-pinion-torque = Pinion turns with
card-truth-pinion-preload = Pinion preload
card-truth-side-preload = Side preload
card-truth-drive = Drive pattern
card-truth-coast = Coast pattern
card-truth-pattern = covers { $area } %, center at length { $along }, height { $up }
card-truth-pattern-edge = covers { $area } %, center at length { $along }, height { $up }, an edge touches
card-state = State { $hash }

# The list of exercises; name is padded so that the columns stand below each other.
card-exercise = { $step }  { $name }  layout { $layout }  { $title }

# A journal that was done again.
card-replayed =
    { $operations ->
        [one] { $journal }: 1 operation at `{ $exercise }`, axle (seed) { $seed }, not signed off
       *[other] { $journal }: { $operations } operations at `{ $exercise }`, axle (seed) { $seed }, not signed off
    }
card-replayed-sealed =
    { $operations ->
        [one] { $journal }: 1 operation at `{ $exercise }`, axle (seed) { $seed }, signed off and sealed
       *[other] { $journal }: { $operations } operations at `{ $exercise }`, axle (seed) { $seed }, signed off and sealed
    }
card-identical = Every answer came out again bit for bit.
card-recomputed = Recomputed: the journal was written with other physics, exercise, or parts. Answers differ from operation { $first } on.
card-changed = This journal was changed: answers differ from operation { $first } on.
card-score-identical = So did the score: { $score } of 100.
card-score-other = The score comes out as { $score } of 100, and the journal holds another.

# What is wrong with an attempt.
card-name-exercise = name an exercise; `--list` shows those that ship with the program.
card-nobody-plays = nobody plays like `{ $policy }`. Choose from: { $names }.
card-cannot-be-played = axle (seed) { $seed } of `{ $exercise }` cannot be played: { $why }
card-operation-wrong = { $why }
card-operation-unreadable = { $path }: operation { $number } cannot be read any more: { $why }.
card-answer-other-version = { $path }: operation { $number } does not come out again as it was answered, so this attempt cannot go on. It was begun with another version of the physics or of the exercise. `lashwright replay` shows what it holds.
card-answer-changed = { $path }: operation { $number } does not come out again as it was answered, so this attempt cannot go on. The file or the program was changed. `lashwright replay` shows what it holds.
card-signed-off-already = the axle has been signed off.
card-journal-full = { $why }; only `finish` is taken now.
card-journal-too-large = { $why }.

# The list of operations: what a field takes.
card-hazard = Safety: { $text }
card-hazard-met = Safety: { $text } (precaution: { $precaution })
card-field = { $field }: { $kind }. { $about }
card-field-optional = { $field }: { $kind }, may be left out. { $about }
card-or = { $first } or { $second }
card-one-of = one of { $names }
card-list-of = list of { $kind }
card-values = values
card-value = value
card-true-or-false = true or false
card-whole-number = whole number
card-whole-number-within = whole number { $low } to { $high }
card-number = number
card-number-within = number { $low } to { $high }
card-text = text
