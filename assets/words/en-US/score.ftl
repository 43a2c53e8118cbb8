# The score: what counts, and why points were lost. Each loss says what was true, what it costs, and what to do next time.
# Lengths and torques come in as finished text with their units, in both systems.

## What points belong to, after a number of points and in the list of losses.
score-part-outcome = outcome
score-part-process = process
score-part-understanding = understanding
score-part-economy = economy
score-part-cap = cap

## What counts: nouns for a list and for the middle of a sentence.
score-counted-depth = pinion depth
score-counted-lash = backlash
score-counted-spread = backlash variation
score-counted-runout = ring gear face runout
score-counted-pinion-torque = pinion rotating torque
score-counted-nut-torque = pinion nut torque
score-counted-side-torque = side bearing torque
score-counted-print = contact pattern

## Values that the job card asks for: nouns for the middle of a sentence.
score-asked-lash = backlash
score-asked-rotating-torque = rotating torque
score-asked-pinion-depth = pinion depth
score-asked-end-play = pinion end play
score-asked-runout = ring gear face runout

## Shared by several parts.

# From one value to another, both with their units.
score-range = { $low } to { $high }
# The state of the axle at sign-off, as a sentence of its own.
score-missing-ring-gear = At sign-off (operation { $operation }) the ring gear was scrap from overheating.
score-missing-pinion = At sign-off (operation { $operation }) the pinion was not held by its own bearings, spacer and nut.
score-missing-mesh = At sign-off (operation { $operation }) the gears were not in mesh.
score-nut-low = The pinion nut is at { $stands }; the job card calls for { $least } to { $most }. Too little clamp load lets the parts work loose. Tighten the nut to the card.
score-nut-high = The pinion nut is at { $stands }; the job card calls for { $least } to { $most }. Too much spoils the threads and the spacer. Start over with a new nut and spacer.

## Outcome: what the axle has become.
score-blanket = You rejected { $count } sound parts. A verdict on everything tells nobody anything. Reject only what the evidence shows.
# $missing: the state of the axle, a whole sentence. $counted: a list of what counts.
score-not-together = { $missing } Without that nothing can be judged of: { $counted }. Put the axle together before you sign off.
score-teeth-apart = At sign-off (operation { $operation }) the teeth did not meet as gears do. Bring the ring gear into mesh and set backlash before you sign off.
# $way: deep or shallow. $from: best or found. $shim_way: thicker or thinner.
score-depth = The pinion sits { $off } { $way ->
        [deep] too close to the ring gear (too deep)
       *[shallow] too far from the ring gear (too shallow)
    }, measured from { $from ->
        [found] where it ran before
       *[best] the best depth this axle can be set to
    }. Full marks within { $full }, none past { $zero }. Make the depth shim { $shim } { $shim_way ->
        [thinner] thinner
       *[thicker] thicker
    }.
# $way: away or toward.
score-depth-no-print = The ring gear sits { $off } { $way ->
        [toward] too close to the pinion
       *[away] too far from the pinion
    }. There, no pinion depth leaves a pattern on the drive flank. Set backlash first, then depth.
# $way: away or toward.
score-lash = Backlash at the tightest place is { $reads }, read as the job card says. Full marks from { $low } to { $high }, none { $zero } outside that. Move the ring gear { $by } { $way ->
        [toward] toward the pinion
       *[away] away from the pinion
    }: take out on one side what you add on the other, so that side preload stays.
score-spread = Backlash varies by { $spread } around the ring gear. Full marks up to { $full }, none past { $zero }. Find the runout, do not shim for it: clean the seat, warm the ring gear, draw the bolts up crosswise, and read the face runout.
score-runout = The back of the ring gear runs out by { $runout }. Full marks up to { $full }, none past { $zero }. Look for a chip on the seat, and fit the ring gear warm.
# $cure: what to do, a whole sentence.
score-pinion-torque = Once settled, the pinion alone has { $felt } of rotating torque. Full marks from { $full }, none outside { $zero }. { $cure }
score-cure-turn-nut = Turn the nut on, each time by half of what is still missing.
score-cure-new-spacer = Fit a new collapsible (crush) spacer and stop sooner: backing the nut off leaves no preload.
# $way: thicker or thinner.
score-cure-spacer-shims = Make the spacer shims about { $by } { $way ->
        [thinner] thinner
       *[thicker] thicker
    }.
score-side-torque-low = The side bearings add { $felt } of rotating torque. Full marks from { $full }, none outside { $zero }. Tighten both sides by the same amount, so that the ring gear stays where it is.
score-side-torque-high = The side bearings add { $felt } of rotating torque. Full marks from { $full }, none outside { $zero }. Ease both sides by the same amount, so that the ring gear stays where it is.
score-no-prints = At sign-off (operation { $operation }) there was no contact pattern, because the gears were not in mesh. Bring them into mesh before you sign off.
# $flank: drive or coast.
score-no-print-on-flank = { $flank ->
        [coast] The coast flank carries no contact pattern: 0 % of it is marked. Set depth and backlash first.
       *[drive] The drive flank carries no contact pattern: 0 % of it is marked. Set depth and backlash first.
    }
# $flank: drive or coast.
score-edge-contact = On the { $flank ->
        [coast] coast
       *[drive] drive
    } flank an edge of the teeth touches over { $share } % of the roll. Edge contact overloads the tooth. Bring the pattern off the edge with pinion depth before you do anything else.
# $flank: drive or coast. $off: where the pattern lies, as debrief-print-off says it. Numbers are parts of half a tooth.
score-print-off = The { $flank ->
        [coast] coast
       *[drive] drive
    } pattern is off the set’s own pattern, in parts of half a tooth: { $off }. Full marks within { $full_along } in length and { $full_up } in height, none past { $zero }. Set the height on both flanks first, with pinion depth; length comes second.
score-value-not-written = The job card asks for { $quantity }, and the sheet holds 0 values of it. Write the value down before you sign off.
score-value-of-nothing = In operation { $operation } you wrote down { $value }, but at sign-off the parts it speaks of are not together. Write down what can be measured on the finished axle.
score-value-off = You wrote down { $noted } for { $quantity }; true is { $truth }. Full marks within { $full }, none past { $zero }. Check how you set the instrument up before you look for the error in the axle.
score-pack = { $pieces ->
        [one] The pack is { $size } thick and has 1 piece.
       *[other] The pack is { $size } thick and has { $pieces } pieces.
    } The job card asks for { $wanted } in at most { $most_pieces }. Full marks within { $full }, none past { $zero }. Measure each piece: a label is only a claim.
score-plates = You judged { $right } of { $all } painted plates right. Full marks from { $full_from } on. Read the height on both flanks first, and use the chart of the set named on the plate.

## Process: how the axle was checked, written down and put together.
score-numbers-not-compared = You rejected the gears before you compared their 2 numbers. Without that the verdict is a guess. Read what is etched on both gears first.
score-not-bracketed = Your verdict does not rest on 2 patterns at different pinion depths. One pattern cannot tell depth from a bad part. Bracket with two depths before you blame a part.
# $missing: the state of the axle, a whole sentence.
score-nothing-to-verify = { $missing } There was nothing to verify, so the work leading up to it wins no points. Put the axle together, then read it.
# The following sentences are put behind each other, those that are true.
score-lash-unverified = { $places ->
        [one] For the axle as signed off, backlash was read at 1 place with a dial indicator fine enough for the window; { $wanted } are needed.
       *[other] For the axle as signed off, backlash was read at { $places } places with a dial indicator fine enough for the window; { $wanted } are needed.
    }
score-lash-one-side = They all lie on one side of the ring gear.
score-lash-coarse = { $count ->
        [one] 1 reading came from a dial indicator whose scatter fills more than { $share } % of the window.
       *[other] { $count } readings came from a dial indicator whose scatter fills more than { $share } % of the window.
    }
score-lash-stale = { $count ->
        [one] 1 reading went stale with a later change.
       *[other] { $count } readings went stale with a later change.
    }
score-lash-again = After your last change, read backlash again all around the ring gear.
score-print-unverified = No contact pattern on both flanks shows the axle as signed off. Too faint to read: { $faint }. Stale after a later change: { $stale }. After your last change, paint the teeth, roll them under a firm drag, and read the pattern again.
# $along, $up: distances in parts of half a tooth.
score-print-known-wrong = In operation { $operation } you saw the drive pattern { $along } in length and { $up } in height away from the set’s own pattern, in parts of half a tooth, and signed off anyway. A check that you do not act on is worth nothing. Correct the depth, then sign off.
score-torque-unverified = { $stale ->
        [0] Rotating torque was read 0 times on the axle as signed off.
        [one] Rotating torque was read 0 times on the axle as signed off; 1 reading had gone stale with a later change.
       *[other] Rotating torque was read 0 times on the axle as signed off; { $stale } readings had gone stale with a later change.
    } Turn the pinion ten times, then read it with a beam or dial wrench or with cord and scale.
score-torque-early = You read rotating torque after { $turns } turns of the pinion. Rollers that have not seated drag more, so the reading is high. Turn the pinion { $wanted } times, then read.
# $of: lash, print or torque.
score-note-missing = { $of ->
        [lash] The set-up sheet has no valid note of backlash for the axle as signed off
        [print] The set-up sheet has no valid note of the contact pattern for the axle as signed off
       *[torque] The set-up sheet has no valid note of rotating torque for the axle as signed off
    } (notes of it in all: { $notes }). The next person has nothing to go by. Write down what you read, with what, and in which state.
# $of: lash, print or torque.
score-note-unfounded = { $of ->
        [lash] No reading backs up what the set-up sheet says about backlash
        [print] No reading backs up what the set-up sheet says about the contact pattern
       *[torque] No reading backs up what the set-up sheet says about rotating torque
    } (valid notes of it: { $notes }). A number from memory is no record. Write down what the instrument showed.
# $operations: numbers of operations, a list. $caution: the first hazard, a whole sentence.
score-hazards = { $count ->
        [one] You left 1 hazard unguarded (operation { $operations }).
       *[other] You left { $count } hazards unguarded (operations { $operations }).
    } { $caution }
# $parts: a list of score-reused-part.
score-reused = { $count ->
        [one] You used 1 part again that the job card allows only once ({ $parts }).
       *[other] You used { $count } parts again that the job card allows only once ({ $parts }).
    } Used a second time they no longer hold or seal. Take new ones.
score-reused-part = { $part }, operation { $operation }
score-no-seal = You signed the axle off at operation { $operation } without its pinion seal. It would lose its oil. Fit a new seal before the companion flange goes on.
score-locks-out = { $locked } of 2 side adjusters have their lock in. An adjuster without its lock backs off. Go on to the next slot, never back, and fit the lock.
score-caps-swapped = The 2 bearing caps are on each other’s side. They were bored with the axle housing and fit only their own side. Match the marks before you fit them.
score-caps-loose = At sign-off (operation { $operation }) the bearing caps were not at full torque. Backlash read that way is not the backlash the axle runs with. Torque the caps, turn the carrier, then read.
score-bolts-unsound = At sign-off (operation { $operation }) the ring gear bolts were not sound. Bolts that work loose wreck the axle. Clean the threads, use threadlocker, and torque the bolts with the ring gear cold.
score-few-readings = { $read ->
        [one] Your value for { $quantity } rests on 1 reading; { $wanted } are needed.
       *[other] Your value for { $quantity } rests on { $read } readings; { $wanted } are needed.
    } A single set-up hides its own error. Set the instrument up again for each reading.
score-few-turns = You turned the pinion { $turns } times in all; rollers take { $wanted } turns to seat. Until then the torque reads high. Turn the pinion first, then read.
score-pack-not-measured = You measured the finished pack 0 times. Labels and sums are not a measurement. Put the whole pack under the micrometer.
score-plates-not-looked-at = You looked at { $looked } of { $all } painted plates before you judged them. A verdict without a look is a guess. Look at the plate, then judge it.

## Understanding: what was foreseen.
score-nothing-to-predict = You looked both before and after 0 changes, so there was nothing to predict. Look before a change, say what will happen, then look after it.
score-not-predicted = In operation { $operation } you looked at a change without a prediction. That counts as 1/3 for each outcome. Say what will happen before you look.
# $change: what came, one of score-change. $chance: percent.
score-predicted = In operation { $operation } you gave { $chance } % to what happened: { $change }. Points follow the chance you gave it. Before the next change, work out which way it will go, and spread the chances by how sure you are.
# $way: up or down, which is the sign of the change.
score-change-lash = { $way ->
        [down] backlash went down by { $by }
       *[up] backlash went up by { $by }
    }
score-change-torque = { $way ->
        [down] rotating torque at the nut went down by { $by } %
       *[up] rotating torque at the nut went up by { $by } %
    }
# $by: in parts of half a tooth. $flank: drive or coast.
score-change-length = the { $flank ->
        [coast] coast
       *[drive] drive
    } pattern moved { $by } of half a tooth { $way ->
        [down] toward the toe
       *[up] toward the heel
    }
score-change-height = the { $flank ->
        [coast] coast
       *[drive] drive
    } pattern moved { $by } of half a tooth { $way ->
        [down] toward the flank (root)
       *[up] toward the face (top)
    }
# $needs: deeper, nothing or shallower.
score-plate = { $needs ->
        [deeper] Plate { $plate } needs the pinion toward the ring gear (deeper), and you gave that { $chance } %.
        [shallower] Plate { $plate } needs the pinion away from the ring gear (shallower), and you gave that { $chance } %.
       *[nothing] Plate { $plate } needs nothing, and you gave that { $chance } %.
    } Read the height on both flanks first; length comes second.

## Economy: what it took. Par is what the reference technician takes for the same axle.
# $missing: the state of the axle, a whole sentence.
score-nothing-saved = { $missing } Work that was left out saves nothing. Finish the build first, then save.
score-teardowns = { $count ->
        [one] You took the axle apart 1 time;
       *[other] You took the axle apart { $count } times;
    } par, what the reference technician needs, is { $par }, and one more is free. Each teardown costs time and single-use parts. Bracket with two builds, then go between them.
score-ring-gear-scrapped = In operation { $operation } you overheated the ring gear, and it is scrap. Keep the heat below the limit on the job card.
score-parts = Your parts cost { $cost }; par, what the reference technician needs, is { $par }, and one refit for { $refit } more is free. Every build uses up single-use parts. Check before you take the axle apart.
score-outcome-not-reached = The axle falls { $share } % short of the outcome, and work left undone is no saving. Get the axle right first.

## The attempt as a whole.
score-not-signed-off = The axle was not signed off after { $operations } operations. Sign it off, and it will be judged.
# $cause: what was done, whole sentences.
score-capped = { $cause } That leaves at most { $most } of 100 points; without it there were { $without }.
# $caution: the hazard, a whole sentence.
score-cap-unsafe = You did operation { $operation } without its precaution. { $caution }
# $fault: what is wrong, a whole sentence.
score-cap-missed = { $fault } No setting cures that, and you signed off (operation { $operation }) without reporting it on evidence. Compare the numbers, take patterns at two depths, and reject on that evidence: { $part }.
score-cap-false-alarm = In operation { $operation } you rejected a sound part: { $part }. A false alarm costs as much as a missed fault. Bracket with two builds before you blame a part.
score-fault-numbers = The pinion is etched { $pinion } and the ring gear { $ring_gear }: they were never lapped together.
score-fault-offset = The axes are off their offset by { $off }; { $most } may pass.
score-fault-square = The axes are { $off }° out of square; { $most }° may pass.
score-fault-overheated = Operation { $operation } overheated the ring gear.
