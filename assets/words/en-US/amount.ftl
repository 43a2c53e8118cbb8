# Numbers with their units, and what is wrong with a number that was typed.

# Units alone, beside a box or on a face.
amount-unit-millimeters = mm
amount-unit-inches = in
amount-unit-newton-meters = N·m
amount-unit-inch-pounds = in·lb
amount-unit-foot-pounds = ft·lb
amount-unit-degrees = °
amount-unit-kilonewtons = kN
amount-unit-celsius = °C
amount-unit-minutes = min
amount-unit-notches = notches
amount-unit-turns = turns

# A number and its unit. digits: the number as it is shown; count: the same as a number, for plurals.
amount-millimeters = { $digits } mm
amount-inches = { $digits } in
amount-newton-meters = { $digits } N·m
amount-inch-pounds = { $digits } in·lb
amount-foot-pounds = { $digits } ft·lb
amount-degrees = { $digits }°
amount-kilonewtons = { $digits } kN
amount-celsius = { $digits } °C
amount-minutes = { $digits } min
amount-notches = { $count ->
    [one] { $digits } notch
   *[other] { $digits } notches
}
amount-turns = { $count ->
    [one] { $digits } turn
   *[other] { $digits } turns
}

# A number that was typed. They stand behind the name of the box.
amount-empty = Nothing is typed here. Type a number.
# typed: what was typed
amount-not-a-number = “{ $typed }” is not a number. Type digits, as in 0.15.
amount-not-whole = “{ $typed }” is not a whole number. Type one from 0 up, as in 3.
