# The stage: the gears as they are drawn, where they are seen from, how they are turned and set.

stage-name = Stage
stage-view = View
stage-view-corner = Corner
stage-view-pinion = Pinion
stage-view-ring-gear = Ring gear
stage-view-above = Above
stage-view-mesh = Mesh
stage-view-drive = Drive
stage-view-coast = Coast
stage-view-by-hand = By hand
# $view: a caption, as “From above”.
stage-view-next = Next: { $view }

## Captions over the picture

stage-caption-corner = From the corner
stage-caption-pinion = Along the pinion, from the flange
stage-caption-ring-gear = Along the ring gear axis, toothed side
stage-caption-above = From above
stage-caption-mesh = The mesh, toe ends toward you
stage-caption-drive = Drive side of the ring gear teeth
stage-caption-coast = Coast side of the ring gear teeth
stage-caption-by-hand = Turned by hand
stage-caption-nothing = Nothing on the stage
# Title and second line, said to those who listen.
stage-caption-said = { $title }. { $second }
stage-drawn = The computed gears in mesh, true to scale. Yellow: marking compound on three teeth of each gear, one of them marked at its tip.
stage-drawn-bench = Cut open, with every part at its designed place. Finding where the gears really sit is your job.
stage-drawn-bench-thick = Cut open, with every part at its designed place. Finding where the gears really sit is your job. Shims are drawn 10 times thicker.
stage-no-gears = No gear set is chosen.
stage-computing = Computing the gears …

## Tooltips of the views

stage-seen-corner = From between the toothed side and the flange
stage-seen-pinion = Along the pinion axis, from the flange
stage-seen-ring-gear = Along the ring gear axis, from the toothed side
stage-seen-above = From above
stage-seen-mesh = Close to the mesh, from inside the ring gear
stage-seen-drive = The painted tooth turned up, drive side
stage-seen-coast = The painted tooth turned up, coast side
stage-projection = Projection
stage-flat = Flat
stage-flat-help = Keep parallel lines parallel

## Turning

stage-pinion = Pinion
stage-ring-gear = Ring gear
stage-turn = Turn
stage-turn-pinion = Turn pinion
stage-turn-help = Turn the pinion in the picture
stage-stop = Stop
stage-rock = Rock
stage-rock-ring-gear = Rock ring gear
stage-rock-help = Rock the ring gear through its designed backlash
stage-stop-rocking = Stop rocking
stage-tooth-back = Back one tooth
stage-tooth-on = Forward one tooth
# Two lines with little room.
stage-hand-help = Drag: turn the view. Right drag: move it. Wheel: zoom.
stage-hand-help-gears = With Ctrl, drag or wheel turns the gears.
stage-shims = Shims
stage-shims-thick = Shims 10 times thicker
stage-shims-help = Draw shims ten times as thick as they are
# How far a gear has been turned. $turns and $teeth: texts made of the two messages below.
stage-turned = { $gear } { $turns } and { $teeth }
# $number: the count as text; $count: the same as a number.
stage-turns = { $count ->
    [one] { $number } turn
   *[other] { $number } turns
}
stage-teeth = { $count ->
    [one] { $number } tooth
   *[other] { $number } teeth
}

## Setting: how far the gears stand from their designed place, and what the teeth say

stage-setting = Setting
stage-setting-zero = Set all to zero
stage-setting-zero-help = Put both gears back at their designed place
stage-set-pinion = Pinion
stage-set-pinion-help = Away from the ring gear (shallower) or toward it (deeper)
stage-set-ring-gear = Ring gear
stage-set-ring-gear-help = Away from the pinion (more backlash) or toward it (less backlash)
stage-set-offset = Offset
stage-set-offset-help = More or less offset between both axes
stage-set-shaft-angle = Shaft angle
stage-set-shaft-angle-help = Wider or narrower than designed
stage-set-film = Compound film
stage-set-film-help = Thickness of the marking compound
# $size: a length or angle with its unit.
stage-set-away = { $size } away
stage-set-toward = { $size } toward
stage-set-more = { $size } more
stage-set-less = { $size } less
stage-set-wider = { $size } wider
stage-set-narrower = { $size } narrower
# A scale with its value, said to those who listen.
stage-scale-said = { $name }: { $reading }
stage-micrometers = { $size } µm
stage-backlash = Backlash
stage-backlash-help = Play of the ring gear at its outer pitch radius over one tooth, with the pinion held
stage-backlash-range = { $low } to { $high }
stage-no-contact = no contact
stage-drive = Drive
stage-coast = Coast
stage-pattern-help = Share of the flank that the compound marks, and where its middle lies: toward toe or heel as a share of half the face width, toward face (top) or flank (root) as a share of half the tooth height
# There is little room. $along: as “0.02 toe”; $up: as “0.16 face”.
stage-pattern = { $share } %, { $along }, { $up }
stage-no-pattern = none
