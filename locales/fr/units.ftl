### Unités, durées et heures telles qu'elles se glissent dans d'autres phrases. Les nombres arrivent déjà écrits.

units-lb = { $lb } lb
units-oz = { $oz } oz
units-lb-oz = { $lb } lb { $oz } oz
units-kg = { $kg } kg
units-g = { $g } g

units-pinch = une pincée
units-tsp = { $many ->
    [one] { $n } { -tsp }
   *[other] { $n } { -tsp }
}
units-tbsp = { $many ->
    [one] { $n } c. à soupe
   *[other] { $n } c. à soupe
}
units-cup = { $many ->
    [one] { $n } tasse
   *[other] { $n } tasses
}
units-qt = { $n } qt
units-ml = { $ml } ml
units-l = { $l } l

units-fahrenheit = { $n } °F
units-celsius = { $n } °C

units-moment = un instant
units-min = { $min } min
units-h = { $h } h
units-h-min = { $h } h { $min } min
units-days = { $days ->
    [one] { $days } jour
   *[other] { $days } jours
}
units-days-h = { $days } { $h } h
units-range-min = { $from }–{ $to } min
units-range-h = { $from }–{ $to } h
units-range-days = { $from } à { $to } jours
units-range = { $from } à { $to }

units-day-clock = { $day } { $clock }
# Une heure lue sur l'horloge d'un autre lieu.
units-there = { $when } ({ $place })

units-unsaid = Je n’ai pas su le mettre en mots. C’est ma faute, pas la tienne ; /board montre où on en est.
