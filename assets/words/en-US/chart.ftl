# The wall chart: patterns over two parts of a placement.

# given is what was written behind `--chart`; why is one of the sentences below, without a full stop.
chart-refused = `--chart { $given }`: { $why }.
    Write two different axes of pinion, ring-gear, offset (mm), and shaft-angle (degrees), each from:to:step, with a comma between: `--chart pinion=-0.2:0.2:0.1,ring-gear=-0.1:0.1:0.05`. The first runs across, the second down, each with at most { $most } cells.
chart-two-axes = give two axes
chart-same-axes = both axes are the same
chart-no-equals = `{ $text }` has no `=` between the axis and its numbers
chart-no-axis = there is no axis `{ $axis }`
chart-not-from-to-step = `{ $text }` does not give from:to:step
chart-not-a-number = `{ $text }` is no number
chart-step = the step of `{ $text }` must be greater than 0
chart-backward = `{ $text }` runs backward: put the smaller value first
chart-too-many = `{ $text }` has more than { $most } cells: take a larger step

chart-title = Wall chart of { $gears }
# For those who do not see the picture.
chart-description = Contact patterns of both flanks over { $across } ({ $columns } values) and { $down } ({ $rows } values).
chart-heading = Wall chart: contact pattern and backlash over two moves; the table shows the present placement
chart-axis-degrees = { $name }, degrees
chart-axis-mm = { $name }, mm (in)
# What the two ends of an axis mean.
chart-deeper = toward (deeper)
chart-shallower = away (shallower)
chart-toward-pinion = toward the pinion
chart-from-pinion = away (more backlash)
chart-less-offset = less
chart-more-offset = more
chart-angle-closed = closed
chart-angle-opened = opened

# Beside and in the cells.
chart-row-backlash = backlash, mm
chart-none = none
chart-no-backlash = none

# What the marks mean.
chart-legend-backlash-in-cells = Upper tooth drive, lower coast; toe left, heel right, face up. Dark: pattern; number: tightest backlash, mm.
chart-legend-backlash-beside = Upper tooth drive, lower coast; toe left, heel right, face up. Dark: pattern; tightest backlash beside each row.
chart-legend-edge = an edge touches
chart-legend-no-reach = pinion does not reach
chart-legend-off = The present placement lies off this chart.
chart-legend-present = present placement
chart-legend-between = present placement, between cells
