### Unidades, durações e horas como ficam dentro de outras frases. Os números já vêm escritos.

units-lb = { $lb } lb
units-oz = { $oz } oz
units-lb-oz = { $lb } lb { $oz } oz
units-kg = { $kg } kg
units-g = { $g } g

units-pinch = uma pitada
units-tsp = { $many ->
    [one] { $n } colher (chá)
   *[other] { $n } colheres (chá)
}
units-tbsp = { $many ->
    [one] { $n } colher (sopa)
   *[other] { $n } colheres (sopa)
}
units-cup = { $many ->
    [one] { $n } xícara
   *[other] { $n } xícaras
}
units-qt = { $n } qt
units-ml = { $ml } ml
units-l = { $l } l

units-fahrenheit = { $n } °F
units-celsius = { $n } °C

units-moment = um instante
units-min = { $min } min
units-h = { $h } h
units-h-min = { $h } h { $min } min
units-days = { $days ->
    [one] { $days } dia
   *[other] { $days } dias
}
units-days-h = { $days } { $h } h
units-range-min = { $from }–{ $to } min
units-range-h = { $from }–{ $to } h
units-range-days = de { $from } a { $to } dias
units-range = de { $from } a { $to }

units-day-clock = { $day } { $clock }
# Uma hora pelo relógio de outro lugar.
units-there = { $when } ({ $place })

units-unsaid = Não consegui pôr isso em palavras. A falha é minha, não sua; /board mostra como as coisas estão.
