# Help: keys that always mean the same, with what they do.

help-row = { $keys }: { $what }
help-f1 = Show or hide this list
help-tab-key = Tab
help-tab = Move to the next thing; Enter or Space presses it
help-enter-key = Enter
help-enter = Do what the form says or write the reading down; with Ctrl from anywhere in the form
help-escape-key = Esc
help-escape = Close the form
help-arrows-key = Arrows
help-arrows = Turn the view; with Shift, move it
help-ctrl-key = Ctrl
help-ctrl = With drag or mouse wheel over the stage, turn the gears by hand
help-chart-key = Shift + arrow
help-chart = Move one field on the wall chart
