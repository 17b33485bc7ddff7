### Units, spans and times as they stand inside other sentences. Numbers come written for the locale.

units-lb = { $lb } lb
units-oz = { $oz } oz
units-lb-oz = { $lb } lb { $oz } oz
units-kg = { $kg } kg
units-g = { $g } g

units-pinch = a pinch
# $n is text such as "1¼"; $many is 1 up to one spoon and 2 above.
units-tsp = { $many ->
    [one] { $n } tsp
   *[other] { $n } tsp
}
units-tbsp = { $many ->
    [one] { $n } tbsp
   *[other] { $n } tbsp
}
units-cup = { $many ->
    [one] { $n } cup
   *[other] { $n } cups
}
units-qt = { $n } qt
units-ml = { $ml } mL
units-l = { $l } L

units-fahrenheit = { $n } °F
units-celsius = { $n } °C

units-moment = a moment
units-min = { $min } min
units-h = { $h } h
units-h-min = { $h } h { $min } min
units-days = { $days ->
    [one] { $days } day
   *[other] { $days } days
}
# $days is the text of units-days.
units-days-h = { $days } { $h } h
units-range-min = { $from }–{ $to } min
units-range-h = { $from }–{ $to } h
units-range-days = { $from } to { $to } days
units-range = { $from } to { $to }

# "Thu 5:00 PM", "Thu, Nov 25 5:00 PM"
units-day-clock = { $day } { $clock }

# Said in place of a message that could not be put together.
units-unsaid = I couldn't put that into words. That is my fault, not yours; /board shows where things stand.
# A time by the clock of another place.
units-there = { $when } ({ $place })

## Examples in the reader's own measures: English is read in pounds and in kilograms. Referred to by messages of other files.
units-example-bird = { $units ->
    [us] 14 lb
   *[metric] 6.5 kg
}
units-example-smaller = { $units ->
    [us] 12 lb
   *[metric] 5.5 kg
}
units-example-bigger = { $units ->
    [us] 16 lb
   *[metric] 7 kg
}
units-example-safe = { $units ->
    [us] 158 °F
   *[metric] 70 °C
}
units-example-setting = { $units ->
    [us] 325 °F
   *[metric] 165 °C
}
units-example-convert = { $units ->
    [us] 325 °F in °C
   *[metric] 165 °C in °F
}
units-example-water = { $units ->
    [us] 1 gallon, or 14 lb
   *[metric] 4 L, or 6.5 kg
}
units-example-log = { $units ->
    [us] breast 128, thigh 141, oven 335
   *[metric] breast 53, thigh 61, oven 168
}
units-example-hot = { $units ->
    [us] 140 °F
   *[metric] 60 °C
}
units-example-plan = { $units ->
    [us] 14.5 lb frozen turkey, dinner Thursday 5 pm, 11 people, smoker at 325
   *[metric] 6.5 kg frozen turkey, dinner Thursday 5 pm, 11 people, smoker at 165
}
units-example-asked = { $units ->
    [us] 158 for 2 minutes
   *[metric] 70 for 3 minutes
}
