### Units, spans and times as they stand inside other sentences. Numbers come written for the locale.

units-lb = { $lb } lb
units-oz = { $oz } oz
units-lb-oz = { $lb } lb { $oz } oz
units-kg = { $kg } kg
units-g = { $g } g

units-pinch = una pizca
# $n is text such as "1¼"; $many is 1 up to one spoon and 2 above.
units-tsp = { $many ->
    [one] { $n } cdta
   *[other] { $n } cdtas
}
units-tbsp = { $many ->
    [one] { $n } cda
   *[other] { $n } cdas
}
units-cup = { $many ->
    [one] { $n } taza
   *[other] { $n } tazas
}
units-qt = { $n } qt
units-ml = { $ml } ml
units-l = { $l } l

units-fahrenheit = { $n } °F
units-celsius = { $n } °C

units-moment = un momento
units-min = { $min } min
units-h = { $h } h
units-h-min = { $h } h { $min } min
units-days = { $days ->
    [one] { $days } día
   *[other] { $days } días
}
# $days is the text of units-days.
units-days-h = { $days } { $h } h
units-range-min = { $from }–{ $to } min
units-range-h = { $from }–{ $to } h
units-range-days = de { $from } a { $to } días
units-range = de { $from } a { $to }

# "jue 17:00", "jue, 25 nov 17:00"
units-day-clock = { $day } { $clock }

# Said in place of a message that could not be put together.
units-unsaid = No he sabido decirlo. Es fallo mío, no tuyo; /board muestra cómo va todo.
# A time by the clock of another place.
units-there = { $when } ({ $place })

### Lo que se pone de ejemplo, como se escribe en esta región.

units-example-bird = 6,5 kg
units-example-smaller = 5,5 kg
units-example-salt = 0,7 g
units-example-setting = 165 °C
units-example-oven = 165
units-example-log = pechuga 53, muslo 61, horno 168
units-example-hour = las 17
units-example-later = las 18
units-example-places = «Madrid», «America/Chicago»
