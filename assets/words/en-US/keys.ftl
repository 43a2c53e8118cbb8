# Keys: what single keys do, their names, and the list where they are changed.

## What a key does; a verb first

# $view: a view of the stage, as “Pinion”.
keys-look-from = View: { $view }
keys-flat = Switch between flat and perspective
keys-nearer = Zoom in
keys-farther = Zoom out
keys-turn = Turn the pinion, or stop
keys-rock = Rock the ring gear, or stop
keys-tooth-back = Turn back one tooth
keys-tooth-on = Turn forward one tooth
keys-tooth-room = Go to the tooth room, and back to the gears
keys-next-part = Choose the next part
keys-part-before = Choose the part before
keys-to-work = Go to the work of the part (arrows move, Enter opens)
keys-take-in-hand = Open the last reading
keys-enlarge = Enlarge the instrument in hand, or put it back
keys-read-out = Show or hide the value beside the instrument
keys-sign-off = Sign off (asks first)
keys-keep-as-b = Keep as B
keys-swap = Swap A and B
keys-drop-b = Drop B
keys-save-picture = Save the picture

## Names of keys

keys-cap-space = Space
keys-off = off
keys-word-space = space bar
keys-word-colon = colon
keys-word-comma = comma
keys-word-minus = minus
keys-word-period = period
keys-word-plus = plus
keys-word-semicolon = semicolon
keys-word-backslash = backslash
keys-word-slash = slash
keys-word-pipe = vertical bar
keys-word-question-mark = question mark
keys-word-exclamation-mark = exclamation mark
keys-word-opening-bracket = opening bracket
keys-word-closing-bracket = closing bracket
keys-word-opening-brace = opening brace
keys-word-closing-brace = closing brace
keys-word-backtick = backtick
keys-word-apostrophe = apostrophe

## Changing keys

# A tooltip with the key that does the same. $what: no full stop at its end.
keys-tooltip = { $what }. Key: { $key }
keys-list = Keys
keys-list-help = Press a framed key to change it.
keys-list-other-places = On other pages
keys-usual = Restore the usual keys
# Said to those who listen.
keys-change = Change the key of “{ $action }”: { $key }
keys-press = Press the new key. Esc keeps the old key, Backspace turns it off.
# $why: a sentence; $press: the message above.
keys-press-again = { $why } { $press }
keys-press-for = { $press } { $action }
keys-fixed = That key has a fixed meaning. Press a letter, a digit, a sign or the space bar.
# The end of the sentence has no stop: the message is quoted in others.
keys-taken = The key { $key } belongs to “{ $action }”. Press another key, or change that one first
keys-taken-sentence = { $taken }.

## The file of keys cannot be used: parts of a sentence that names the file before, without a stop

keys-file-json = line { $line } is not part of a list of keys in JSON
keys-file-format = it calls itself { $found }, and only { $known } is known
keys-file-unknown-action = there is no action { $name }
keys-file-unknown-key = { $key } cannot be a key for “{ $action }”
keys-file-twice = “{ $action }” is listed twice
keys-file-taken = { $key } is the key of both “{ $first }” and “{ $second }”
