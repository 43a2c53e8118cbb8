# The debrief of an attempt as one page. Sentences about single values of it are in other files.

pages-title = Debrief: { $title }
pages-kicker = Lashwright debrief · { $exercise }
# lengths of time and counts are finished texts.
pages-summary =
    { $teardowns ->
        [one] Step { $step }, layout { $layout }, axle (seed) { $seed }. Signed off at operation { $operation } after { $hours } of work, with a parts cost of { $cost } and 1 teardown.
       *[other] Step { $step }, layout { $layout }, axle (seed) { $seed }. Signed off at operation { $operation } after { $hours } of work, with a parts cost of { $cost } and { $teardowns } teardowns.
    }
pages-foot = Lashwright { $version }. Everything on this page was computed from the operations of the attempt.
pages-over-other-file = the debrief would overwrite `{ $path }`. Give it another name, such as `debrief.html`.
pages-no-debrief = no debrief: { $why }
pages-journal-identical = Recomputed from its journal: every answer came out again bit for bit.
pages-journal-other-version = Recomputed from a journal that was written with other physics, exercise, or parts: answers differ from those that were shown then.
pages-journal-changed = Recomputed from its journal, which was changed: what it holds is not what comes out.

# A link to an operation of the list at the end of the page.
pages-operation = no. { $number }
pages-you = You
pages-reference = Reference
pages-no-pattern = no pattern

# Score.
pages-score-heading = Score and reasons
# points is large; the rest stands small behind it.
pages-of-hundred = of 100
pages-outcome = Outcome
pages-process = Process
pages-understanding = Understanding
pages-economy = Economy
pages-points-of = { $reached } of { $full }
pages-losses-heading = Where points were lost
pages-no-losses = You lost no points.
pages-under-a-tenth = under 0.1
pages-column-points = Points
pages-column-part = Part
pages-column-operation = Operation
pages-column-why = Why, and what to do next time
pages-column-work = Work
pages-column-cost = Parts cost
pages-column-teardowns = Teardowns
pages-reference-same-axle = Reference technician, same axle and instruments

# Truth beside belief.
pages-truth-heading = Truth beside belief
pages-truth-about = The truth was hidden until now. What you believed is what you wrote on the sheet; beside it stands what your instruments showed last. Axle, reading, and what was made of the reading are three different things.
pages-state-heading = How the axle really stands
pages-column-true = True
pages-state-patterns = Drive pattern: { $drive }. Coast pattern: { $coast }.

# What was scored.
pages-judged-heading = What was scored
pages-judged-scale = { $bands } The scored value is { $place }.
pages-edge-touches = an edge touches
pages-column-scale = Where it stands
pages-column-written = Written down
pages-column-read = Read
# Ranges; numbers come with their decimals.
pages-range-length = { $low } to { $high } mm ({ $low_in } to { $high_in } in)
pages-range-deviation = ±{ $mm } mm (±{ $inches } in)
pages-range-torque = { $low } to { $high } N·m ({ $low_in_lb } to { $high_in_lb } in·lb)
pages-range-nut-torque = { $low } to { $high } N·m ({ $low_ft_lb } to { $high_ft_lb } ft·lb)
pages-range-tooth = ±{ $high } of half a tooth
pages-bands-up-to = Full marks: up to { $full }. None from { $zero }.
pages-bands = Full marks: { $full }. None outside { $zero }.
pages-key-full = full marks
pages-key-some = some marks
pages-key-none = no marks
pages-key-true = true
pages-key-written = written down, still valid
pages-key-read = read, still valid

# Notes and readings.
pages-believed-heading = What you wrote down and read
pages-believed-about = A value is stale when something that it depends on was changed after it. The error of a reading is that of instrument and hand, against the truth at the moment of reading.
pages-stale = stale
pages-not-written = not written down
pages-remark = “{ $remark }”
# link leads to an operation; the two parts are joined to one line.
pages-written-from = { $note }, from { $reading }
pages-not-read = not read
pages-nothing = nothing
pages-not-assembled = not assembled
pages-column-true-at-end = True at sign-off
pages-column-written-last = Written down last
pages-column-note-off = Less truth
pages-column-read-last = Read last
pages-column-reading-off = Error when read
pages-believed-foot = Numbers (no.) are those of the operations at the end of the page. Backlash is true as the card has the stem laid.

# Shims, marks, and how the parts were made.
pages-packs-heading = Shim packs at sign-off
pages-as-a-pack = as a pack
pages-sum-of-pieces = sum of its pieces
pages-not-all-measured = not all measured
pages-column-true-in-place = True, in place
pages-column-by-labels = By its labels
pages-column-labels-off = Labels are off by
pages-column-by-micrometer = By micrometer
pages-column-pieces = Piece by piece
pages-marks-heading = Numbers and mark on the gears
pages-made-heading = How the parts were made
pages-made-as-drawn = Every size of this axle is as drawn.
pages-made-about = Every part of this axle was a little off its drawing. A shim or a setting made up for it, or did not. The box is what inspection passes; the triangle is this part.
pages-outside-drawing = outside its drawing
# link leads to an operation.
pages-looked = You checked this: { $link }.
pages-not-looked = You did not check this.
pages-not-to-be-found = This bench cannot show it.
pages-idle = It does not count in the axle as signed off.
pages-size-said = { $off }; inspection passes { $tolerance }.
pages-column-against-drawing = Against its drawing
pages-column-does = What it does
pages-column-found = How to find it
pages-as-drawn = As drawn
pages-besides = Also
# A heading in bold before a list of names.
pages-in-one-line = { $names }.
pages-number = { $name }: { $value }
pages-faults-heading = What may be wrong in this exercise
pages-fault-there = in this axle
pages-fault-not-there = not in this axle
pages-fault-share = (in { $percent } % of all)

# Painted plates.
pages-plates-heading = The painted plates
# link leads to an operation.
pages-plate-said = You said ({ $link }): { $said }
pages-plate-not-judged = You did not judge it.

# Patterns.
pages-patterns-heading = Patterns in a row
pages-patterns-about = The true pattern of every build under a usual film of marking compound, drive (D) over coast (C), seen on the ring gear: toe left, heel right, face (top) up. The broken outline is the set’s own pattern, the cross the center of the pattern. Distances are from the set’s own pattern, in parts of half a tooth. Height first, on both flanks: both high asks for the pinion toward the ring gear (deeper), both low for away from the ring gear (shallower). Length is the second witness.
pages-own-pattern = The set’s own pattern
pages-own-pattern-said = Of both flanks.
pages-own-pattern-where = both gears at their designed places
pages-patterns-unseen =
    { $count ->
        [one] 1 build was never painted and rolled.
       *[other] { $count } builds were never painted and rolled.
    }
pages-pattern-said = Drive: { $drive }. Coast: { $coast }.
pages-never-looked = never looked at
# link leads to an operation.
pages-rolled-at = rolled at { $link }
pages-moved-afterward = moved afterward
pages-drive = D: { $pattern }
pages-coast = C: { $pattern }
pages-you-saw =
    { $looks ->
        [one] You saw (1 look): D { $drive }; C { $coast }
       *[other] You saw ({ $looks } looks): D { $drive }; C { $coast }
    }
pages-placement = Pinion { $pinion }, ring gear { $ring_gear }
pages-placement-backlash = Pinion { $pinion }, ring gear { $ring_gear }, backlash { $backlash }
pages-toward-ring-gear = { $length } toward the ring gear
pages-from-ring-gear = { $length } away from the ring gear
pages-toward-pinion = { $length } toward the pinion
pages-from-pinion = { $length } away from the pinion
pages-as-designed = as designed

# The reference technician's way.
pages-ways-heading = The reference technician’s way
pages-ways-about =
    { $teardowns ->
        [one] The same axle, the same instruments, the card, and the chart of the set; the truth stayed hidden. { $points } points in { $hours }, with a parts cost of { $cost } and 1 teardown.
       *[other] The same axle, the same instruments, the card, and the chart of the set; the truth stayed hidden. { $points } points in { $hours }, with a parts cost of { $cost } and { $teardowns } teardowns.
    }
pages-time-title = Work over time
pages-time-said = Boxes are builds, ticks operations, squares patterns, thick bars teardowns.
pages-time-caption = Boxes are builds, ticks operations, squares rolled patterns; a thick bar is a teardown, a crossed triangle an unsafe act.
pages-reference-done = The reference, operation by operation
pages-reference-builds = The reference, build by build
pages-your-builds = You, build by build
pages-reference-build = Reference: { $build }
pages-column-changed = Changed
pages-column-seen = Seen
pages-column-true-at-its-end = True at its end
pages-seen-height = height from the set’s own pattern: drive { $drive }, coast { $coast }
pages-seen-height-asks = height from the set’s own pattern: drive { $drive }, coast { $coast }; that asks for { $step }
pages-best-depth = best depth: { $step } from here
pages-backlash-tightest = backlash, tightest { $length }
pages-pinion-alone = pinion alone { $torque }
pages-side-bearings-add = side bearings add { $torque }
pages-until = until { $hours }

# Each build as if it had been signed off.
pages-what-if-heading = What if
pages-what-if-about = Each build as if it had been signed off after its last operation, and the step of depth that the rule asks for from its pattern: the heights of both patterns over the slopes of the set’s chart, drive counted double; at most 0.254 mm (0.010 in) at once, and nothing below 0.05 mm (0.002 in).
pages-column-points-then = Points then
pages-column-most-lost = Most of what was lost
pages-column-rule-seen = The rule, by what you saw
pages-column-rule-true = The rule, by the true pattern
pages-column-best-depth = Best depth
pages-loss = { $points } { $part }: { $why }
pages-nothing-lost = Nothing.
pages-step-thicker = { $step }: depth shim thicker
pages-step-thinner = { $step }: depth shim thinner
pages-inside-band = { $step }: inside the band, leave it
# link leads to an operation.
pages-after = after { $link }
pages-part-outcome = outcome { $points }
pages-part-process = process { $points }
pages-part-understanding = understanding { $points }
pages-part-economy = economy { $points }

# Everything that was done.
pages-done-heading = Everything that was done
pages-done-about = Equal measurements one after another stand in one row. “Moved” is the true change of where the gears stand since they last stood in mesh; you could not see it.
pages-column-number = No.
pages-column-at = At
pages-column-minutes = min
pages-column-done = Done, and what it showed
pages-teardown = TEARDOWN
pages-unsafe = UNSAFE
pages-not-done = Not done: { $why }
