# What is done: first as it is logged while it is done, then in the past as the debrief tells it.

# What is done, as it is logged.
# what: what is measured, as a heading; instrument: with what
operation-measure = { $what }, { $instrument }
operation-compare-numbers = Read the numbers on both gears
# to: how far
operation-take-apart = Take apart: { $to }
# place: where the shims go; pieces: their numbers; count: how many there are
operation-fit-shims = { $count ->
    [0] Fit the { $place }: no pieces
    [one] Fit the { $place }: piece { $pieces }
   *[other] Fit the { $place }: pieces { $pieces }
}
operation-remove-shims = Take the { $place } out
operation-press-cone = Press the { $part } on, { $force }
operation-press-cup = Press the { $part } in, { $force }
operation-pull-cone = Pull the { $part } off
operation-pull-cup = Pull the { $part } out
operation-fit-set-up-bearings = Slip the set-up bearings in
operation-remove-set-up-bearings = Take the set-up bearings out
operation-fit-no-spacer = Leave the spacer out
operation-fit-new-spacer = Put a new spacer on the shaft
operation-fit-spacer = Put the spacer on the shaft
operation-remove-spacer = Take the spacer off
operation-insert-pinion = Put the pinion in
operation-remove-pinion = Take the pinion out
operation-fit-seal = Drive a new pinion seal in
operation-remove-seal = Pull the pinion seal out
operation-fit-new-nut = Put the flange and a new nut on
operation-fit-nut = Put the flange and the nut on
operation-remove-nut = Take the nut and the flange off
operation-tighten-nut = Tighten the nut to { $torque }, { $instrument }
operation-turn-nut-on = Tighten the nut by { $angle }
operation-turn-nut-off = Loosen the nut by { $angle }
operation-bolt-cartridge = Bolt the cartridge on
operation-unbolt-cartridge = Unbolt the cartridge
operation-heat-ring-gear = Heat the ring gear to { $temperature }
operation-wait = Wait { $time }
operation-fit-ring-gear-crosswise = Draw the ring gear on, bolts crosswise
operation-fit-ring-gear-around = Draw the ring gear on, bolts around the circle
operation-remove-ring-gear = Take the ring gear off
operation-torque-ring-gear-bolts = Torque the ring gear bolts without threadlocker
operation-torque-ring-gear-bolts-locked = Torque the ring gear bolts with threadlocker
# teeth: how far the timing marks are off
operation-set-carrier-in = { $teeth ->
    [0] Set the carrier in
    [one] Set the carrier in, timing marks off by { $teeth } tooth
   *[other] Set the carrier in, timing marks off by { $teeth } teeth
}
operation-lift-carrier-out = Lift the carrier out
operation-spread-housing = Spread the housing by { $size }
operation-release-spreader = Take the spreader off
operation-fit-caps = Put the caps on, snug
operation-fit-caps-swapped = Put the caps on, snug, sides swapped
operation-torque-caps = Torque the caps
operation-snug-caps = Snug the caps
operation-loosen-caps = Loosen the caps to snug
operation-remove-caps = Take the caps off
# side: tooth or back; notches: how far
operation-turn-adjuster-in = { $side ->
    [tooth] Turn the side adjuster on the tooth side in by { $notches }
   *[back] Turn the side adjuster at the back of the ring gear in by { $notches }
}
operation-turn-adjuster-out = { $side ->
    [tooth] Turn the side adjuster on the tooth side out by { $notches }
   *[back] Turn the side adjuster at the back of the ring gear out by { $notches }
}
operation-fit-lock = { $side ->
    [tooth] Put the adjuster lock in, tooth side
   *[back] Put the adjuster lock in, back of the ring gear
}
operation-remove-lock = { $side ->
    [tooth] Take the adjuster lock out, tooth side
   *[back] Take the adjuster lock out, back of the ring gear
}
# turns: how many turns, as "10 turns"
operation-turn-pinion = Turn the pinion { $turns }
operation-turn-carrier = Turn the carrier { $turns }
operation-push-pinion-in = Push the pinion into mesh
operation-push-pinion-out = Push the pinion out of mesh
operation-push-carrier-in = Push the carrier into mesh
operation-push-carrier-out = Push the carrier out of mesh
# count: how many teeth; film: thin, usual or thick
operation-brush = { $count ->
    [one] { $film ->
        [thin] Brush marking compound on { $count } tooth, thin
        [thick] Brush marking compound on { $count } tooth, thick
       *[usual] Brush marking compound on { $count } tooth, usual film
    }
   *[other] { $film ->
        [thin] Brush marking compound on { $count } teeth, thin
        [thick] Brush marking compound on { $count } teeth, thick
       *[usual] Brush marking compound on { $count } teeth, usual film
    }
}
operation-roll = { $passes ->
    [one] Roll the painted teeth, { $passes } pass each way
   *[other] Roll the painted teeth, { $passes } passes each way
}
operation-replace = Take a new part from the shelf: { $part }
# what: what it is a value of, as a heading
operation-note = Write down: { $what }, { $value }
# about: the short name of what is predicted
operation-predict = Sign a prediction: { $about }
# plate: its number, from 1
operation-judge-plate = Judge painted plate { $plate }
operation-hint = Take hint { $level }
operation-reject = Reject: { $part }
operation-sign-off = Sign off the axle

# What was done, in the past: sentences without their end, since what was read may follow.
# what: what was looked at or read; instrument: with what; stem: how the stem of the dial indicator lay
operation-did-look = Looked at { $what }
operation-did-read = Read { $what } with the { $instrument }
operation-did-read-set-up-again = Set up the { $instrument } again and read { $what }
operation-did-read-backlash = Read backlash with the { $instrument }, stem { $stem }
operation-did-read-backlash-set-up-again = Set up the { $instrument } again, stem { $stem }, and read backlash
# Stands for the shims in the sentences above; which piece it was follows them.
operation-shims-read = shims
operation-did-compare-numbers = Compared the numbers etched on both gears and read the pinion mark
operation-did-take-caps-off = Took the caps and locks off
operation-did-take-carrier-out = Took apart: carrier out
operation-did-take-ring-gear-off = Took apart: ring gear off its carrier
operation-did-take-nut-off = Took apart: nut, flange and seal off
operation-did-take-pinion-out = Took apart: pinion out
operation-did-pull-bearings = Took apart: pinion bearings pulled
# place: where the shims went; size: their sum by label; count: how many
operation-did-fit-shims = { $count ->
    [one] Fitted the { $place }: { $size } by label, { $count } piece
   *[other] Fitted the { $place }: { $size } by label, { $count } pieces
}
operation-did-remove-shims = Took the { $place } out
operation-did-press-cone = Pressed the { $part } on with { $force }
operation-did-press-cup = Pressed the { $part } in with { $force }
operation-did-pull-cone = Pulled the { $part } off
operation-did-pull-cup = Pulled the { $part } out
operation-did-fit-set-up-bearings = Slipped the set-up bearings in
operation-did-remove-set-up-bearings = Took the set-up bearings out
operation-did-fit-no-spacer = Built without a spacer, for a trial
operation-did-fit-new-spacer = Put a new spacer on the shaft
operation-did-fit-spacer = Put the spacer on the shaft
operation-did-remove-spacer = Took the spacer off
operation-did-insert-pinion = Put the pinion in
operation-did-remove-pinion = Took the pinion out
operation-did-fit-seal = Drove a new pinion seal in
operation-did-remove-seal = Pulled the pinion seal out
operation-did-fit-new-nut = Put the flange and a new nut on
operation-did-fit-nut = Put the flange and the old nut on
operation-did-remove-nut = Took the nut and the flange off
operation-did-tighten-nut = Tightened the pinion nut to { $torque } with the { $instrument }
operation-did-turn-nut-on = Tightened the pinion nut by { $angle }
operation-did-turn-nut-off = Loosened the pinion nut by { $angle }
operation-did-bolt-cartridge = Bolted the cartridge to the axle housing
operation-did-unbolt-cartridge = Unbolted the cartridge
operation-did-heat-ring-gear = Heated the ring gear to { $temperature }
# time: how long; room: the temperature of the room
operation-did-wait = Waited { $time } while the ring gear cooled toward { $room }
operation-did-fit-ring-gear-crosswise = Drew the ring gear on, bolts crosswise
operation-did-fit-ring-gear-around = Drew the ring gear on, bolt after bolt around the circle
operation-did-remove-ring-gear = Took the ring gear off its carrier
operation-did-torque-ring-gear-bolts = Torqued the ring gear bolts without threadlocker
operation-did-torque-ring-gear-bolts-locked = Torqued the ring gear bolts with threadlocker
operation-did-set-carrier-in = { $teeth ->
    [0] Set the carrier in
    [one] Set the carrier in, timing marks off by { $teeth } tooth
   *[other] Set the carrier in, timing marks off by { $teeth } teeth
}
operation-did-lift-carrier-out = Lifted the carrier out
operation-did-spread-housing = Spread the housing by { $size }
operation-did-release-spreader = Took the spreader off
operation-did-fit-caps = Put the caps on, each on its own side
operation-did-fit-caps-swapped = Put the caps on with their sides swapped
operation-did-snug-caps = Snugged the caps
operation-did-torque-caps = Torqued the caps
operation-did-loosen-caps = Loosened the caps to snug
operation-did-remove-caps = Took the caps off
operation-did-turn-adjuster-in = { $side ->
    [tooth] Turned the side adjuster on the tooth side in by { $notches }
   *[back] Turned the side adjuster at the back of the ring gear in by { $notches }
}
operation-did-turn-adjuster-out = { $side ->
    [tooth] Turned the side adjuster on the tooth side out by { $notches }
   *[back] Turned the side adjuster at the back of the ring gear out by { $notches }
}
operation-did-fit-lock = { $side ->
    [tooth] Locked the side adjuster on the tooth side
   *[back] Locked the side adjuster at the back of the ring gear
}
operation-did-remove-lock = { $side ->
    [tooth] Took out the lock of the side adjuster on the tooth side
   *[back] Took out the lock of the side adjuster at the back of the ring gear
}
operation-did-turn-pinion = Turned the pinion { $turns }
operation-did-turn-carrier = Turned the carrier { $turns }
operation-did-push-pinion-in = Pushed the pinion into mesh
operation-did-push-pinion-out = Pushed the pinion out of mesh
operation-did-push-carrier-in = Pushed the carrier into mesh
operation-did-push-carrier-out = Pushed the carrier out of mesh
operation-did-clean-ring-gear-seat = Cleaned and stoned the ring gear seat
operation-did-clean-shims = Wiped and deburred the shims
operation-did-clean-threads = Degreased the bolt threads
operation-did-clean-teeth = Wiped the teeth
operation-did-clean-bearings = Washed the bearings and dried them with air
operation-did-brush = { $count ->
    [one] { $film ->
        [thin] Brushed marking compound on { $count } tooth and wiped it thin
        [thick] Brushed marking compound on { $count } tooth, a thick film
       *[usual] Brushed marking compound on { $count } tooth, the usual film
    }
   *[other] { $film ->
        [thin] Brushed marking compound on { $count } teeth and wiped it thin
        [thick] Brushed marking compound on { $count } teeth, a thick film
       *[usual] Brushed marking compound on { $count } teeth, the usual film
    }
}
operation-did-roll = { $passes ->
    [one] Rolled the painted teeth under a drag of { $drag }, { $passes } pass each way
   *[other] Rolled the painted teeth under a drag of { $drag }, { $passes } passes each way
}
operation-did-replace = Took a new part from the shelf: { $part }
# of: what it is a value of; remark: as the trainee typed it
operation-did-note = Wrote down { $of }: { $value }
operation-did-note-remark = Wrote down { $of }: { $value } ({ $remark })
# What a value of a contact pattern on the set-up sheet is of.
operation-drive-pattern-height = the height of the middle of the drive pattern
# Chances in percent.
operation-did-predict-backlash = Predicted backlash: less { $less } %, same { $same } %, more { $more } %
operation-did-predict-torque = Predicted rotating torque: less { $less } %, same { $same } %, more { $more } %
operation-did-predict-drive-length = Predicted the drive pattern along the tooth: toward the toe { $less } %, same { $same } %, toward the heel { $more } %
operation-did-predict-drive-height = Predicted the height of the drive pattern: toward the flank (root) { $less } %, same { $same } %, toward the face (top) { $more } %
operation-did-predict-coast-length = Predicted the coast pattern along the tooth: toward the toe { $less } %, same { $same } %, toward the heel { $more } %
operation-did-predict-coast-height = Predicted the height of the coast pattern: toward the flank (root) { $less } %, same { $same } %, toward the face (top) { $more } %
# Chances in percent that the pinion has to move toward the ring gear, stays, or has to move away from it.
operation-did-judge-plate = Judged painted plate { $plate }: pinion toward the ring gear (deeper) { $deeper } %, right { $right } %, away from the ring gear (shallower) { $shallower } %
operation-did-hint = Took hint { $level }
# reason: as the trainee typed it
operation-did-reject = Rejected: { $part }
operation-did-reject-reason = Rejected: { $part } ({ $reason })
operation-did-sign-off = Signed off the axle

# What an operation did beside. parts: a list of names
operation-spoiled = Spoiled: { $parts }.
# How far the gears moved. pinion_way and ring_gear_way: same, in or out; pinion and ring_gear: how far
operation-moved = { $pinion_way ->
    [in] { $ring_gear_way ->
        [in] Moved: pinion { $pinion } toward the ring gear (deeper), ring gear { $ring_gear } toward the pinion (less backlash).
        [out] Moved: pinion { $pinion } toward the ring gear (deeper), ring gear { $ring_gear } away from the pinion (more backlash).
       *[same] Moved: pinion { $pinion } toward the ring gear (deeper), ring gear not at all.
    }
    [out] { $ring_gear_way ->
        [in] Moved: pinion { $pinion } away from the ring gear (shallower), ring gear { $ring_gear } toward the pinion (less backlash).
        [out] Moved: pinion { $pinion } away from the ring gear (shallower), ring gear { $ring_gear } away from the pinion (more backlash).
       *[same] Moved: pinion { $pinion } away from the ring gear (shallower), ring gear not at all.
    }
   *[same] { $ring_gear_way ->
        [in] Moved: pinion not at all, ring gear { $ring_gear } toward the pinion (less backlash).
        [out] Moved: pinion not at all, ring gear { $ring_gear } away from the pinion (more backlash).
       *[same] Moved: neither gear.
    }
}
