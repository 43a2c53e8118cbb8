# Display: why there is no window or no picture. Sentences without a stop: the command line puts one there.

# $error: one of the messages of this file.
display-error = error: { $error }.
display-no-window = cannot open a window: { $reason }. `lashwright picture` draws without a screen
display-no-start = cannot open a window: { $reason }
display-no-driver = cannot draw: no Vulkan driver was found. Install the driver of the graphics card, or Mesa’s software driver (on Debian and Ubuntu: mesa-vulkan-drivers)
display-no-gears = cannot draw { $name }: { $why }
display-no-picture = cannot draw: { $reason }
display-no-x-display = there is no X display (DISPLAY is not set)
display-x-display-unreachable = the X display `{ $name }` cannot be reached ({ $error })
display-ended = the window ended with code { $code }
display-window-system = the window system did not start ({ $said })
display-says-nothing = it does not say why
display-driver-silent = the graphics driver does not answer ({ $error })
display-empty = the picture came back empty
display-no-delivery = the graphics driver delivered no picture
display-no-png = the PNG cannot be made ({ $error })
display-too-large = it is too large

## Arguments of a picture

display-size = the size `{ $size }` cannot be used. Give width and height in pixels, each from { $least } to { $most }, for example 1280x720
display-view = there is no view `{ $view }`. Use corner, pinion, ring-gear, above, mesh, drive, coast, tooth-room, start, bench or debrief
display-theme = there is no theme `{ $theme }`. Use paper or slate
display-text = text of { $percent } % cannot be drawn. Use 100 to 200
display-units = there are no units `{ $units }`. Use mm or inch
display-line = line { $line }: { $error }
display-exercise = there is no exercise `{ $name }`. `lashwright attempt --list` shows them

## How a picture was made; $first and $next are milliseconds as text

display-report = drawn in { $first } ms by { $card }, { $driver }; each further frame { $next } ms
# $frames: how many; half of them took no longer than $median ms, all but one in a hundred no longer than $slow ms.
display-report-turning = drawn in { $first } ms by { $card }, { $driver }; each further frame { $next } ms; { $frames } frames with the gears turning: half of them within { $median } ms, all but one in a hundred within { $slow } ms
