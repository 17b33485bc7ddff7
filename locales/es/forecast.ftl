### El pronóstico: cuándo está el ave, qué hay que preguntar, por qué el margen es ancho.

# Una línea de `carvetime forecast`. Todo es tiempo desde que el ave entró al calor: "3 h 5 min".
forecast-line = { $at }: lista tras { $done } (de { $from } a { $to })
forecast-line-done = { $at }: en su punto (hora real, cerca de { $done }; de { $from } a { $to })
forecast-progress = { $done } de { $all } lecturas

forecast-suspect-meant = { $place ->
    [breast] ¿Pechuga a { $given }? ¿O { $meant }? No la cuento.
    [thigh] ¿Muslo a { $given }? ¿O { $meant }? No la cuento.
    [oven] ¿Horno a { $given }? ¿O { $meant }? No la cuento.
   *[pit] ¿Aire a { $given }? ¿O { $meant }? No la cuento.
}
forecast-suspect = { $place ->
    [breast] Pechuga a { $given } no puede ser. Mira otra vez; no la cuento.
    [thigh] Muslo a { $given } no puede ser. Mira otra vez; no la cuento.
    [oven] Horno a { $given } no puede ser. Mira otra vez; no la cuento.
   *[pit] Aire a { $given } no puede ser. Mira otra vez; no la cuento.
}

forecast-doubt-no-readings = Aún sin lecturas: esto es solo lo habitual.
forecast-doubt-unread = { $place ->
    [breast] Aún sin lecturas de la pechuga.
   *[thigh] Aún sin lecturas del muslo.
}
forecast-doubt-pit-unread = Nadie mide la temperatura de dentro: tomo el ajuste.
forecast-doubt-gap = { $span } sin lecturas: menos seguro.
forecast-doubt-fire-dying = El aire bajó a { $pit } y no se recupera. Mira el fuego.
forecast-doubt-probe-moved = { $place ->
    [breast] La lectura de la pechuga saltó: ¿movida, junto al hueso o en la cavidad? Menos seguro.
    [thigh] La lectura del muslo saltó: ¿movida, junto al hueso o en la cavidad? Menos seguro.
    [oven] La lectura del horno saltó: ¿se movió su termómetro? Menos seguro.
   *[pit] La lectura del aire saltó: ¿se movió su termómetro? Menos seguro.
}
forecast-doubt-probes-disagree = Pechuga y muslo difieren en { $by }. Comprueba dónde están las dos puntas.
forecast-doubt-changed = { $place ->
    [breast] La pechuga se calienta de otro modo que antes (¿papel, tapa, movida?). Menos seguro.
   *[thigh] El muslo se calienta de otro modo que antes (¿papel, tapa, movido?). Menos seguro.
}
forecast-doubt-behind = { $place ->
    [breast] La pechuga está mucho más fría de lo normal a estas alturas: no es seguro.
   *[thigh] El muslo está mucho más frío de lo normal a estas alturas: no es seguro.
}
forecast-doubt-ahead = { $place ->
    [breast] La pechuga va muy por encima de lo normal: ¿la punta toca hueso o está bajo la piel? Menos seguro.
   *[thigh] El muslo va muy por encima de lo normal: ¿la punta toca hueso o está bajo la piel? Menos seguro.
}
forecast-doubt-part-frozen = Entró con hielo dentro: menos seguro.
forecast-doubt-unusual = He visto pocas aves así: menos seguro.
forecast-doubt-endless = Con este calor quizá nunca llegue. Sube el calor.

forecast-csv-empty = Línea { $line }: sin lecturas. Un registro lleva una cabecera como minutes,pit_f,breast_f,thigh_f y una línea por lectura.
forecast-csv-no-time = Línea { $line }: falta la columna del tiempo. Llámala minutes o time.
forecast-csv-no-spot = Línea { $line }: falta una columna de temperatura. Llámalas pit_f, breast_f, thigh_f (o _c).
forecast-csv-twice = Línea { $line }: «{ $given }» está dos veces. Deja una.
forecast-csv-no-number = Línea { $line }: «{ $given }» no es un número que sirva. Deja vacía la celda sin lectura.
forecast-csv-no-clock = Línea { $line }: «{ $given }» no es una hora. Escríbela como 14:05.
forecast-csv-earlier = Línea { $line }: { $given } es anterior a la línea de antes. Ordena las líneas por tiempo.
forecast-csv-too-long = Línea { $line }: más lecturas que segundos tiene un día. Recorta el registro a un solo asado.

forecast-flag-mass = --mass: «{ $given }» no es un peso. Escríbelo como "14.2 lb" o "6.4 kg".
forecast-flag-mass-range = --mass: { $given } no es peso de ave. Elige de { $low } a { $high }.
forecast-flag-temperature = { $flag }: «{ $given }» no vale. Escribe una temperatura de { $low } a { $high }, como "325 F".
