# Notices: what was saved or kept, and why something was not.

notices-attempts-kept = Attempts are kept in { $folder }
notices-attempts-not-kept = Attempts are not kept: the system names no folder for your data.
notices-no-debrief = There is no debrief: { $error }
notices-pages-saved = Pages and pictures are saved in { $folder }
notices-no-such-finished = there is no finished attempt { $number }
## What becomes of a page or a picture that is saved

notices-saved-under-way = Saving …
notices-saved-there = Saved
notices-saved-not = Not saved
notices-saved-close = Close
# $error: what is wrong with the file of keys, without a stop.
notices-usual-keys = The usual keys are in use: { $error }. If you change a key here, that file is overwritten.
notices-keys-not-kept = Keys are not kept: { $error }.
notices-keys-no-folder = Keys go back to the usual ones next time: the system names no folder for your data.

## Why the window did not do something

notices-no-such-gears = there is no gear set number { $number }
notices-nothing-to-turn = there is nothing to turn
notices-no-such-exercise = there is no exercise number { $number }
notices-no-such-attempt = there is no unfinished attempt number { $number }
notices-no-attempt = no attempt is under way
# The file of theme, text size, units and panels cannot be read.
notices-usual-choices = The file choices.json in your data folder is damaged, so theme, text size and units are the usual ones. Your next choice replaces it.
