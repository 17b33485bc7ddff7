### Unità, durate e ore come stanno dentro altre frasi. I numeri arrivano già scritti.

units-lb = { $lb } lb
units-oz = { $oz } oz
units-lb-oz = { $lb } lb { $oz } oz
units-kg = { $kg } kg
units-g = { $g } g

units-pinch = un pizzico
units-tsp = { $many ->
    [one] { $n } cucchiaino
   *[other] { $n } cucchiaini
}
units-tbsp = { $many ->
    [one] { $n } cucchiaio
   *[other] { $n } cucchiai
}
units-cup = { $many ->
    [one] { $n } tazza
   *[other] { $n } tazze
}
units-qt = { $n } qt
units-ml = { $ml } ml
units-l = { $l } l

units-fahrenheit = { $n } °F
units-celsius = { $n } °C

units-moment = un attimo
units-min = { $min } min
units-h = { $h } h
units-h-min = { $h } h { $min } min
units-days = { $days ->
    [one] { $days } giorno
   *[other] { $days } giorni
}
units-days-h = { $days } { $h } h
units-range-min = { $from }–{ $to } min
units-range-h = { $from }–{ $to } h
units-range-days = { $from }–{ $to } giorni
units-range = da { $from } a { $to }

units-day-clock = { $day } { $clock }
# Un’ora secondo l’orologio di un altro posto.
units-there = { $when } ({ $place })

units-unsaid = Non sono riuscito a metterlo in parole. Colpa mia, non tua; /board mostra a che punto siamo.
