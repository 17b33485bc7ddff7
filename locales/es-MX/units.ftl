### Ejemplos: el punto decimal, la hora con «de la tarde», y libras donde el lector las usa.

units-example-bird = { $units ->
    [us] 14.5 lb
   *[metric] 6.5 kg
}
units-example-smaller = { $units ->
    [us] 12 lb
   *[metric] 5.5 kg
}
units-example-salt = 0.7 g
units-example-setting = { $units ->
    [us] 325 °F
   *[metric] 165 °C
}
units-example-oven = { $units ->
    [us] 325
   *[metric] 165
}
units-example-log = { $units ->
    [us] pechuga 128, muslo 141, horno 335
   *[metric] pechuga 53, muslo 61, horno 168
}
units-example-hour = las 5 de la tarde
units-example-later = las 6 de la tarde
units-example-places = «Monterrey», «America/Mexico_City»
units-unsaid = No supe cómo decirlo. Es falla mía, no tuya; /board muestra cómo va todo.
