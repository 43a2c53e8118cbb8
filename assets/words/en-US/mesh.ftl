# Contact of a gear set: the text of `lashwright mesh`, its pictures, and those of the tooth room.

# Parts of a placement, as headings.
mesh-pinion-depth = Pinion depth
mesh-ring-gear = Ring gear
mesh-offset = Offset
mesh-shaft-angle = Shaft angle

# What a part of a placement means, beside its number.
mesh-toward-ring-gear = toward the ring gear (deeper)
mesh-from-ring-gear = away from the ring gear (shallower)
mesh-toward-pinion = toward the pinion (less backlash)
mesh-from-pinion = away from the pinion (more backlash)
mesh-less-offset = less offset
mesh-more-offset = more offset
mesh-angle-closed = closed
mesh-angle-opened = opened
mesh-as-designed = as designed
# The same where there is room for about 15 letters.
mesh-short-deeper = toward ring gear
mesh-short-shallower = from ring gear
mesh-short-toward-pinion = toward pinion
mesh-short-from-pinion = from pinion

mesh-none = none
# high holds the unit.
mesh-range = { $low } to { $high }

# The text of one placement.
mesh-teeth-hunting = { $ring_gear } to { $pinion } teeth, { $ratio } to 1, hunting: no timing marks
mesh-teeth-partly-hunting = { $ring_gear } to { $pinion } teeth, { $ratio } to 1, partly hunting: line up the timing marks
mesh-teeth-non-hunting = { $ring_gear } to { $pinion } teeth, { $ratio } to 1, non-hunting: line up the timing marks
mesh-warning = Warning: { $what }
mesh-placement = Placement, measured from the design
mesh-backlash-measured = Backlash at the ring gear’s outer pitch diameter, along its circumference
mesh-tightest = Tightest
mesh-mean = Mean
mesh-loosest = Loosest
mesh-no-backlash = none: one flank cannot touch at this placement
mesh-interference = Interference: the teeth would overlap. Gears placed like this do not go together
mesh-interference-in-places = Interference over part of the pitch: the gears bind there
mesh-drive-heading = Drive side (convex flank of the ring gear), { $film } µm of marking compound
mesh-coast-heading = Coast side (concave flank of the ring gear), { $film } µm of marking compound
mesh-pattern-place = Pattern: { $along }, { $up }
mesh-at-toe = at the toe
mesh-toward-toe = toward the toe
mesh-slightly-toward-toe = slightly toward the toe
mesh-middle-of-length = in the middle of the length
mesh-slightly-toward-heel = slightly toward the heel
mesh-toward-heel = toward the heel
mesh-at-heel = at the heel
mesh-at-flank = at the flank (root)
mesh-toward-flank = toward the flank
mesh-slightly-toward-flank = slightly toward the flank
mesh-middle-of-height = in the middle of the height
mesh-slightly-toward-face = slightly toward the face
mesh-toward-face = toward the face
mesh-at-face = at the face (top)
mesh-no-pattern-at-all = No pattern: no part of this flank comes as close as the marking compound is thick
mesh-pattern-runs-off = The pattern runs off the tooth: { $edges }
mesh-area-and-center = Covers { $area } of the flank; center at length { $along }, height { $up }
# The ends are shares of half the length: −1 and +1 as written here.
mesh-length = Length: { $length } of the { $face_width } face width, from { $toe } (toe end −1) to { $heel } (heel end +1)
mesh-height = Height: from { $root } (flank −1) to { $top } (face +1)
mesh-transmission-error-of = Transmission error: { $error } µrad at the ring gear, peak to peak
mesh-no-edge-contact = No edge contact
mesh-edge-contact-ring-gear = Edge contact, a pattern to correct: on an edge of the ring gear’s tooth for { $ring_gear } of the roll
mesh-edge-contact-pinion = Edge contact, a pattern to correct: on the pinion’s tip edge for { $pinion } of the roll
mesh-edge-contact-both = Edge contact, a pattern to correct: on an edge of the ring gear’s tooth for { $ring_gear } of the roll, on the pinion’s tip edge for { $pinion } of the roll
mesh-geometry = As designed
mesh-pitch-angles = Pitch angles, ring gear / pinion
mesh-spiral-angles = Spiral angles, ring gear / pinion
mesh-ring-gear-angles = Ring gear face / root angle
mesh-pinion-face-angle = Pinion face angle
mesh-mean-radii = Mean radii, ring gear / pinion
mesh-normal-module = Mean normal module
mesh-offset-angle = Offset angle in the pitch plane
mesh-limit = Limit pressure angle / radius
mesh-no-limit-radius = none (no offset)
mesh-blades = Cutter blades, drive / coast
mesh-point-width = Cutter point width
mesh-fast-route-reach = the fast route covers moves of up to { $axial } mm along the axes, { $offset } mm of offset, and { $angle } degrees; beyond that its numbers can be far off, so leave out `--route fast`
mesh-compound-range = `--paste { $given }`: give a thickness above 0 and up to { $most } µm. Marking compound is about 8 µm thick.

# Pictures.
mesh-picture-title = Contact of { $gears }
# For those who do not see the picture: one flank of it.
mesh-picture-flank = { $side }: center of the pattern { $center }; to the nearest edge { $edge }; edge contact { $contact }.
mesh-flanks-description = Both flanks of a ring gear tooth with the pattern that the marking compound shows.
mesh-motion-description = How far the ring gear lags behind even motion over two pitches.
mesh-sheet-description = Both flanks of a ring gear tooth with the pattern that the marking compound shows, and the transmission error over two pitches.
mesh-pattern-on-ring-gear = Contact pattern on the ring gear
# depth is tapered or uniform; offset is none or a length; other lengths hold their units.
mesh-sheet-gears = { $ring_gear } to { $pinion } teeth, ring gear { $diameter }, { $offset ->
        [none] no offset
       *[other] offset { $offset }
    }, { $depth ->
        [tapered] tapered
       *[uniform] uniform
    } tooth depth, cutter radius { $cutter }
mesh-sheet-placement = Pinion { $pinion }, ring gear { $ring_gear }, offset { $offset }, shaft angle { $angle }°, marking compound { $compound }
# In the heading of a picture there is room for about 15 letters in each of these.
mesh-compound = Compound film
mesh-backlash = Backlash
mesh-exact-route = exact route
mesh-fast-route = fast route
mesh-flank-cannot-touch = a flank cannot touch
mesh-interferes = interference
mesh-binds = binds in places
mesh-over-one-pitch = over one pitch
mesh-doubtful-gears =
    { $more ->
        [0] Doubtful gears: { $what }.
       *[other] Doubtful gears: { $what } (and { $more } more).
    }
mesh-area = Area
mesh-center = Center
mesh-no-pattern = no pattern
mesh-mid-length = mid-length
mesh-mid-height = mid-height
mesh-to-toe = { $length } to toe
mesh-to-heel = { $length } to heel
mesh-to-flank = { $length } to flank
mesh-to-face = { $length } to face
mesh-pattern-to-edge = To nearest edge
mesh-runs-off = runs off at { $edges }
mesh-transmission-error = Transmission error
mesh-edge-contact = Edge contact
mesh-cannot-touch = cannot touch
mesh-edge-ring-gear = ring gear { $ring_gear } % of roll
mesh-edge-pinion = pinion tip { $pinion } % of roll
mesh-edge-both = ring gear { $ring_gear } %, pinion tip { $pinion } % of roll
mesh-legend-pattern = pattern, bare steel
mesh-legend-compound = compound left
mesh-legend-no-reach = pinion does not reach
mesh-legend-film = gap = film, { $film }
mesh-legend-gap = equal gap, µm
mesh-plot-transmission-error = Transmission error, µrad at the ring gear
mesh-plot-roll = roll, tooth pitches (down: ring gear lags)
mesh-no-flank-touches = no flank touches
mesh-one-flank-cannot-touch = one flank cannot touch
mesh-plot-backlash = Backlash over one pitch, mm
mesh-plot-every-tooth = the same at every tooth
