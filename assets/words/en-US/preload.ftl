# A pinion support with its nut tightened: the text of `lashwright preload`, its tables, and its chart.
# Numbers come with their decimals; units stand here.

preload-windows-source = Windows: common practice, no source.

# The conditions, one part beside the other.
preload-spacer = spacer { $mm } mm ({ $inches } in)
preload-nut = nut { $nm } N·m ({ $ft_lb } ft·lb)
preload-nut-usual = nut { $nm } N·m ({ $ft_lb } ft·lb, the usual value, as none was given)
preload-turned = turned at { $rpm } r/min
preload-temperature = { $celsius } °C (oil { $viscosity } mm²/s)

# Names in a column, values behind them.
preload-clamp = clamp of the nut
preload-carried-by-spacer = carried by the spacer
preload-of-bearings = preload of the bearings
preload-end-play = end play
preload-head-gives = head bearing gives
preload-tail-gives = tail bearing gives
preload-pinion-out = pinion away from ring gear
preload-spacer-loaded = spacer under its load
preload-crushed = spacer crushed for good by
preload-torque = torque
preload-rotating = rotating
preload-breakaway = breakaway
preload-head-bearing = head bearing
preload-tail-bearing = tail bearing
preload-seal = seal
preload-total = total
preload-new-bearings = new bearings
preload-run-in-bearings = run-in bearings
# feels is the torque that a wrench would show; sentences for a torque below, in, and above its window.
preload-window-low = window { $low } to { $high } in·lb; would show { $feels } in·lb: too little
preload-window-inside = window { $low } to { $high } in·lb; would show { $feels } in·lb: in the window
preload-window-high = window { $low } to { $high } in·lb; would show { $feels } in·lb: too much
# What the next small change would do.
preload-degree-more = One more degree of nut: preload { $preload } kN, rotating torque { $torque } in·lb
preload-shim-more = 0.001 in (0.025 mm) more shim: preload { $preload } kN, rotating torque { $torque } in·lb
preload-note = Note: { $what }

# Tables: headings over columns.
preload-table-window-new = window for new bearings: { $low } to { $high } in·lb
preload-table-window-run-in = window for run-in bearings: { $low } to { $high } in·lb
preload-column-spacer = spacer
preload-column-nut = nut
preload-column-past-touching = nut past touching
preload-column-end-play = end play
preload-column-preload = preload
preload-column-as-filed = rotating, as filed
preload-column-new = rotating, new
preload-column-run-in = rotating, run in
preload-column-pinion-out = pinion away
# Beside a torque in a table: below, in, and above its window. At most four letters.
preload-mark-low = low
preload-mark-inside = ok
preload-mark-high = high
preload-table-spacers = Each row is a new collapsible (crush) spacer tightened once; reading down the rows is one spacer tightened on.

# What people should know about the numbers.
preload-note-not-crushed = The collapsible (crush) spacer has not begun to crush: it holds the bearings apart. Turn the nut on.
preload-note-end-play = The spacer holds the bearings apart: end play, no preload.
preload-note-loose = The spacer is so short that it lies loose: the bearings carry the whole clamp and would be ruined.
preload-note-steep = Steep bearings (series 313, 322B, 323B) can need up to four times the breakaway torque computed here.
preload-note-fast = Above { $rpm } r/min oil does not return between the rollers in time. This is left out here.
preload-note-solid-oil = The oil is all but solid at this temperature: the torque is beyond what the formulas cover.
# what says which part would be overloaded.
preload-note-overload = In a shop { $what }.

# What is wrong with what was asked for.
preload-unsolved = the support could not be solved: { $why }
preload-unsolved-picture = the support could not be solved for the picture: { $why }
preload-overload = with the nut at { $torque } N·m and a spacer of { $spacer } mm { $what }. Give less torque or another spacer, and check the nut and the spacer in { $source }.
preload-out-of-range = { $option } is { $value }; give { $low } to { $high } { $unit }.
preload-fahrenheit = { $option } is { $value }; give { $low } to { $high } { $unit }. Did you give °F?
preload-length-above-zero = { $option } is { $value }; give a length above 0 in millimeters.
preload-length = { $option } { $value }: { $fault }
preload-length-inches = { $option } { $value }: { $fault } Did you give inches? { $value } in are { $mm } mm.
preload-no-table = from { $from } to { $to } by { $step } makes no table of 1 to { $most } rows. Give a step above 0 and an end that is not before the start.
preload-step-alone = --step belongs to a table: give --spacer-from and --spacer-to, or --nut-torque-from and --nut-torque-to.

# The chart.
preload-chart-title-spacer = Rotating torque over spacer length: { $support }
preload-chart-title-nut = Rotating torque over nut torque: { $support }
# For those who do not see the chart; present is one of the two below.
preload-chart-description = { $present }: preload { $preload } kN, rotating torque { $in_lb } in·lb ({ $nm } N·m). Two curves, for new and for run-in bearings; two bands, the windows for both.
preload-chart-present-nut = Present: nut at { $nm } N·m
preload-chart-present-spacer = Present: spacer { $mm } mm
preload-chart-heading-spacer = Rotating torque over spacer length: nut at { $nm } N·m ({ $ft_lb } ft·lb),
preload-chart-heading-nut = Rotating torque over nut torque: new collapsible (crush) spacer { $mm } mm long, tightened for the first time,
preload-chart-conditions = turned at { $rpm } r/min, { $celsius } °C, seal in, no gears in mesh
preload-chart-axis-in-lb = rotating torque, in·lb
preload-chart-axis-nm = rotating torque, N·m
preload-chart-axis-nut = nut torque, N·m
preload-chart-axis-degrees = degrees of nut since the bearings touched
preload-chart-axis-spacer = spacer length with its shims, mm
preload-chart-axis-shim = shim against the present, 0.001 in
preload-chart-axis-preload = preload, kN
preload-chart-end-play = end play:
preload-chart-seal-only = seal drag only
preload-chart-window-new = window, new
preload-chart-window-run-in = window, run in
preload-chart-range = { $low } to { $high } in·lb
preload-chart-new = new
preload-chart-run-in = run in
preload-chart-as-filed = as in the file
preload-chart-torque = { $in_lb } in·lb ({ $nm } N·m)
preload-chart-preload = preload { $kn } kN
preload-chart-play = end play { $mm } mm
