# The window: its head, its places, what stands on every page.

window-name = Lashwright
window-safety = Safety. { $note }
window-safety-word = Safety.
window-place = Place
window-place-others = Place: { $place }, others
# A button that opens the list of places.
window-place-more = { $place } …
window-start = Start
window-start-help = Exercises and your own attempts
window-bench = Bench
window-bench-help = The axle you are working on
window-debrief = Debrief
window-debrief-help = What was true of the axle
window-gears = Gears
window-gears-help = Any gear set on the stage
window-tooth-room = Tooth room
window-tooth-room-help = Patterns, motion and wall chart of any gear set
window-theme = Theme
window-theme-paper = Paper
window-theme-slate = Slate
window-units = Units
window-units-metric = mm
window-units-inch = inch
window-text-larger = Text larger
window-text-smaller = Text smaller
window-text-size = Text { $percent } %
window-text-percent = { $percent } %
window-language = Language
# The list of units, theme and language, where there is no room for them.
window-settings = Settings
window-keys = Keys
window-keys-help = List the keys. Key: F1
window-close = Close
window-show = Show
window-tab-sets = Sets
window-tab-setting = Setting
window-tab-numbers = Numbers
# What can be chosen or set, with its value, said to those who listen.
window-said = { $what }: { $value }
# Names of keys on buttons.
window-cap-enter = Enter
window-cap-escape = Esc
