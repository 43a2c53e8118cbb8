# The start page: exercises, own attempts.

## How an axle is laid out

start-layout = { $housing }, { $shim }, { $spacer }, { $sides }
start-layout-cartridge = Bolt-on cartridge
start-layout-one-piece = One-piece housing
start-layout-head-shim = head shim
start-layout-cup-shim = cup shim
start-layout-cartridge-shim = cartridge shim
start-layout-crush-spacer = collapsible (crush) spacer
start-layout-solid-spacer = solid spacer with shims
start-layout-side-shims = side shims
start-layout-side-adjusters = side adjusters

## Own attempts

start-attempts = Your attempts
start-back-to-bench = Return to the bench
start-none-kept = No unfinished attempts.
start-go-on = Continue an attempt:
start-kept-title = { $title }, axle { $seed }
start-kept-operations = { $count ->
    [0] no operations yet
    [one] one operation so far
   *[other] { $count } operations so far
}
start-finished = Look at a finished attempt:
start-finished-points = { $points } points
start-finished-no-points = finished
start-look-around = Look around
start-open-gears = Gears
start-open-tooth-room = Tooth room

## Exercises

start-exercises = Exercises
start-no-exercise = No exercises found.
start-step-1 = Step 1: one thing at a time
start-step-2 = Step 2: one quantity and its side effects
start-step-3 = Step 3: a whole build
start-step-4 = Step 4: find the fault
# $aim: a sentence without its stop; $best: one of the next three messages.
start-exercise-second = { $aim }. { $best }
start-best = Your best: { $points } points
start-done = { $count ->
    [0] Not done yet
    [one] Done once
   *[other] Done { $count } times
}
start-axle = Axle (seed)
start-axle-lower = Lower axle number
start-axle-higher = Higher axle number
start-axle-help = Each number gives another axle with the same kinds of faults in different amounts.
start-begin = Begin
start-loading = Loading the axle …
start-learn = What you will learn
start-job = The job
