# The flanks of a tooth of the ring gear, and their edges.
tooth-drive-side = Drive side
tooth-coast-side = Coast side
tooth-convex = convex flank
tooth-concave = concave flank
tooth-toe = toe
tooth-heel = heel
tooth-face = face (top)
tooth-flank = flank (root)
# On a tooth without a pattern.
tooth-cannot-touch = cannot touch: the pinion does not reach
tooth-no-pattern = no pattern: no place comes as close as the marking compound is thick
