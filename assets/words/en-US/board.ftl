# The bench in the window: job card, answer, caution, form, lists, set-up sheet, prediction.

## Targets on the job card

board-targets = Targets
board-targets-sheet = On your sheet
board-target-depth = Pinion depth
board-target-depth-range = where the pattern is right
board-target-pattern = Contact pattern, drive and coast
board-target-pattern-range = as the set’s own pattern, clear of every edge
board-target-backlash = Backlash, tightest point
board-target-variation = Backlash variation
board-target-runout = Ring gear face runout
board-target-runout-range = as small as you can get it
board-target-nut = Pinion nut torque
board-target-pinion-torque = Pinion rotating torque
board-target-side-torque = Added by the side bearings
# $place: where the shims belong; $pieces: how many shims there may be.
board-target-pack = { $place }: { $pieces ->
    [one] one piece
   *[other] { $pieces } pieces at most
}
board-target-plates = Painted plates
board-target-plates-range = read each one, then judge it
board-asked-backlash = Backlash as the dial shows it
board-asked-rotating-torque = Rotating torque, settled
board-asked-depth = Pinion depth, measured
board-asked-end-play = Pinion end play
board-range-between = { $low } to { $high }
board-range-most = { $most } or less
board-range-never = { $target }, never over { $most }
board-range-within = find it to within ±{ $size }
# How a target is said to those who listen. $written: what stands on the sheet.
board-target-said = { $name }, target { $range }: { $written }
board-blank = blank
board-stale = stale
board-value-stale = { $value }, stale
# $stem: how the stem of the dial lies, as “square to the tooth”.
board-stem = Read backlash with the stem { $stem }.

## Job card

board-step-and-axle = Step { $step }, axle (seed) { $seed }
board-job = The job
board-safety = Safety
board-set-pattern = The set’s own pattern
board-set-pattern-of = As made
# $side: “Drive” or “Coast”; $pattern: where it lies.
board-set-pattern-line = { $side }: { $pattern }
board-drive = Drive
board-coast = Coast
board-no-marks = no contact marks
board-time = Time
board-parts-cost = Parts cost
board-teardowns = Teardowns
board-show-debrief = Open the debrief
board-hint = Get a hint
board-no-hint = No more hints
board-hint-cost = Each hint costs points.
board-sign-off = Sign off
board-sign-off-yes = Sign off now
board-sign-off-no = Keep working
board-sign-off-help = Hand the axle over and see the truth. You are asked once more.
board-hours-and-minutes = { $hours } h { $minutes } min
board-minutes = { $minutes } min
board-parts-cost-of = parts cost { $cost }
# One line at all times where there is no room for the whole safety note.
board-not-a-specification = Not a specification.

## Set-up sheet, readings, log

board-sheet-empty = The set-up sheet is empty. Take a reading and write it down. The sheet marks a value as stale when a later change makes it unreliable.
board-readings-empty = No readings yet. Choose a part and measure it.
board-reading-title = { $number }  { $what }
board-reading-stale = stale, { $instrument }
# A reading as it is said to those who listen: number, what was measured, value, whether it is stale.
board-reading-said = Reading { $number }: { $what }
board-reading-said-value = Reading { $number }: { $what }, { $value }
board-reading-said-stale = Reading { $number }: { $what }, stale
board-reading-said-value-stale = Reading { $number }: { $what }, { $value }, stale
board-log-empty = Nothing done yet. Choose a part, then what to do with it.
board-log-title = { $number }  { $what }

## Tabs

board-show = Show
board-tab-work = Work
board-tab-card = Card
board-tab-teeth = Teeth
board-tab-prediction = Prediction
board-tab-readings = Readings
board-tab-sheet = Sheet
board-tab-log = Log
board-tab-hand = In hand
board-tab-stage = Stage

## Answer and caution

# $caution: one sentence or more that name the hazard and what to wear or do.
board-caution = Caution. { $caution }
board-caution-word = Caution.
board-caution-none = Cautions for the chosen work appear here.
board-not-saved = Not saved
board-pattern-seen = The pattern is drawn with the teeth.
board-read-instrument = Read the instrument, then write down what it shows.
board-begin-title = The axle is on the bench
board-begin = Choose a part to work on. Results appear here.
board-working = Working …
# The last operation with what came of it. $result: sentences.
board-answer = { $what }. { $result }
board-refused = Not done. { $why }
board-unsafe = Unsafe. { $caution }
# $parts: names of parts with commas between them.
board-spoiled = Spoiled: { $parts }.
# $readings: numbers with commas between them; $count: how many there are.
board-no-longer-true = { $count ->
    [one] Reading { $readings } is stale.
   *[other] Readings { $readings } are stale.
}

## Form

board-form-title = { $part }: { $work }
board-nothing-in-hand = No work chosen
board-nothing-in-hand-help = Choose a part on the stage or in the list, then choose what to do with it.
board-choose-part = Choose a part.
board-signed-off = The axle is signed off.
board-take-reading = Take the reading
board-do = Do it
board-cancel = Cancel
board-not-now = Show what is not possible now
board-not-now-because = Hide what is not possible now
# $why: a sentence.
board-work-not-now = { $work }. { $why }
# A choice as it is said to those who listen.
board-choice = { $field }: { $chosen }
# $count: how many shims were picked; $size: their labels added up.
board-pieces-sum = { $field }: { $count }, total { $size }
board-piece = { $number }: { $size }
# $piece: number and label of a shim.
board-piece-said = Piece { $piece }

## Prediction

board-prediction-help = What will your next change do? Fill in any row, then sign before you look.
board-sure = How sure
board-sign = Sign
board-sign-help = You cannot change it afterward.

## Teeth

board-teeth-no-pattern = No pattern yet
board-teeth-pattern = { $what }, reading { $number }
board-teeth-pattern-stale = { $what }, reading { $number }: stale
board-teeth-before = Dash-dot line: reading { $number }.
board-teeth-as-read = Drawn as you read it by eye.
board-teeth-help = Brush on compound, roll the teeth, then read the pattern.
# $words: one of the three messages above.
board-teeth-set-pattern = { $words } Fine dashes: the set’s own pattern.
board-teeth-said = { $side }: { $pattern }
board-teeth-said-both = { $side }: { $pattern }; the set’s own pattern: { $own }
board-teeth-too-faint = too faint to tell from the compound
board-teeth-too-faint-short = too faint
board-toe = toe
board-heel = heel
board-face = face (top)
board-flank = flank (root)
