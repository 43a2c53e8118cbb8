# The debrief in the window.

verdict-head = Step { $step }, axle (seed) { $seed }, signed off
verdict-another = Choose exercise
verdict-bench = Bench
verdict-save = Save page
verdict-score = Score { $total } of 100
verdict-of-100 = of 100
verdict-part-points = { $points } of { $full }
verdict-part-said = { $name } { $points }
verdict-outcome = Outcome
verdict-process = Process
verdict-understanding = Understanding
verdict-economy = Economy

## Points lost

verdict-losses = Where you lost points
verdict-no-losses = You lost no points.
verdict-operation = operation { $operation }
verdict-loss = { $points }: { $why }
verdict-loss-at = { $points }, operation { $operation }: { $why }

## What was judged

verdict-truth-and-belief = True values and yours
verdict-truth = true
verdict-belief = you
verdict-not-together = not assembled
verdict-not-written = not written
# $range: where full marks are.
verdict-on-edge = { $range }, an edge is touched
# $worth: how it was judged.
verdict-standing-said = { $name }, target { $range }: true { $truth }, you { $belief }, { $worth }
# $size: with its unit.
verdict-within = within ±{ $size }
verdict-at-most = { $most } or less
verdict-between = { $low } to { $high }
verdict-of-half-a-tooth = { $share } of half a tooth

## What was hidden

verdict-hidden = What was hidden
verdict-pinion = Pinion
verdict-ring-gear = Ring gear
verdict-offset = Offset
verdict-pinion-away = { $size } away from the ring gear (shallower)
verdict-pinion-toward = { $size } toward the ring gear (deeper)
verdict-ring-gear-away = { $size } away from the pinion (more backlash)
verdict-ring-gear-toward = { $size } toward the pinion (less backlash)
verdict-offset-more = { $size } more than designed
verdict-offset-less = { $size } less than designed
verdict-as-designed = at its designed place
verdict-pinion-preload = Pinion preload
verdict-side-preload = Side preload
verdict-kilonewtons = { $force } kN
verdict-face-runout = Ring gear face runout
verdict-drive-pattern = Drive pattern
verdict-coast-pattern = Coast pattern
# $along: as “0.02 toe”; $up: as “0.16 face”.
verdict-pattern = { $share } % of the flank, middle { $along }, { $up }
verdict-nothing-marked = no contact marks
verdict-not-as-drawn = What was not as drawn
verdict-all-as-drawn = Nothing that counts.

## Patterns, time and cost

verdict-patterns = All patterns, in order
verdict-patterns-help = upper drive, lower coast; toe left, face (top) up
verdict-pattern-name = { $what }, reading { $number }
verdict-pattern-number = reading { $number }
verdict-took = What it took, and par
# Par is what the reference technician takes for the same axle.
verdict-and-par = { $own }, par { $par }
verdict-par-help = Par: what the reference technician takes for this axle.
verdict-time = Time
verdict-parts-cost = Parts cost
verdict-teardowns = Teardowns

## Builds and log

verdict-reference = The reference technician’s way
verdict-reference-points = Same axle, same instruments, true values hidden: { $points } points.
verdict-own-builds = Your builds
verdict-build-points = { $build }: { $points } points if signed off then
# Lists with commas between their items.
verdict-changed = Changed: { $changes }.
verdict-read = Read: { $readings }.
verdict-best-deeper = True: the best depth is { $size } deeper (toward the ring gear).
verdict-best-shallower = True: the best depth is { $size } shallower (away from the ring gear).
verdict-done = What you did
verdict-done-title = { $number }  { $what }
