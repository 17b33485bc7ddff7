### Einheiten, Dauern und Zeiten, wie sie in anderen Sätzen stehen. Zahlen kommen schon geschrieben.

units-lb = { $lb } lb
units-oz = { $oz } oz
units-lb-oz = { $lb } lb { $oz } oz
units-kg = { $kg } kg
units-g = { $g } g

units-pinch = eine Prise
units-tsp = { $many ->
    [one] { $n } TL
   *[other] { $n } TL
}
units-tbsp = { $many ->
    [one] { $n } EL
   *[other] { $n } EL
}
units-cup = { $many ->
    [one] { $n } Tasse
   *[other] { $n } Tassen
}
units-qt = { $n } qt
units-ml = { $ml } ml
units-l = { $l } l

units-fahrenheit = { $n } °F
units-celsius = { $n } °C

units-moment = einen Moment
units-min = { $min } min
units-h = { $h } h
units-h-min = { $h } h { $min } min
units-days = { $days ->
    [one] { $days } Tag
   *[other] { $days } Tage
}
units-days-h = { $days } { $h } h
units-range-min = { $from }–{ $to } min
units-range-h = { $from }–{ $to } h
units-range-days = { $from } bis { $to } Tage
units-range = { $from } bis { $to }

units-day-clock = { $day } { $clock }
# Eine Zeit nach der Uhr eines anderen Orts.
units-there = { $when } ({ $place })

units-unsaid = Das konnte ich nicht in Worte fassen. Mein Fehler, nicht deiner; /board zeigt, wie es steht.
