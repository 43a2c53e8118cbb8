# The tooth room: pictures of both flanks, transmission error and wall chart.

room-picture = Picture
room-drive = Drive
room-coast = Coast
room-motion = Motion
room-chart = Chart
room-both-flanks = Both flanks
room-drive-flank = Drive flank
room-coast-flank = Coast flank
room-transmission-error = Transmission error
room-wall-chart = Wall chart
room-wall-chart-title = Wall chart: upper tooth drive, lower coast
room-wall-chart-help = Press a field to set the gears there. Shift with an arrow key moves one field.
room-computing = Computing the pictures …
room-keep-as-b = Keep as B
room-swap = Swap A and B
room-drop-b = Drop B
room-save-picture = Save picture
