### Mientras se asa: el pronóstico en una línea, lo que se puso en duda, los avisos y en qué quedó.

cook-line = Hacia las <b>{ $about }</b>, de { $from } a { $to }; { $standing ->
    [spare] sobran { $span };{" "}
    [tight] va justo, debería salir antes de las { $latest };{" "}
    [late] { $span } tarde para la cena;{" "}
   *[ahead] {""}
}mira otra vez a las { $look }.
cook-endless = Hacia las <b>{ $about }</b> con suerte, desde las { $from }; con este calor puede pasar de las { $to }; { $standing ->
    [spare] sobran { $span };{" "}
    [tight] va justo, debería salir antes de las { $latest };{" "}
    [late] { $span } tarde para la cena;{" "}
   *[ahead] {""}
}mira otra vez a las { $look }.
cook-done = { $target } donde mediste: fuera del fuego, si el ala por dentro dice lo mismo.
cook-spot = { $spot ->
    [breast] Pechuga
   *[thigh] Muslo
}: { $reached ->
    [yes] en su punto.
   *[no] ahora { $now }, { $target } hacia las { $about } (de { $from } a { $to }).
}
cook-air-read = { $air ->
    [oven] Horno
   *[pit] Aire
}{ $seen ->
    [yes] : { $read } a las { $at }, puesto a { $setting }.
   *[no] : puesto a { $setting }.
}
cook-dinner = En la mesa { $dinner }.
cook-decades = Según las tablas publicadas, el calor y el tiempo hasta ahora ya suman donde mides. La marca sigue siendo { $target }: otros puntos pueden estar más fríos.
cook-decades-off = Si saliera ya y reposara { $stand } sin trinchar, el calor y el tiempo sumarían donde mides, según las tablas publicadas: { $low } pide { $hold } en cada punto, también en el ala. La marca sigue siendo { $target }: otros puntos pueden estar más fríos.

cook-in-time-again = Vuelve a llegar a tiempo para la cena.
cook-read-by = { $name } ha medido.
cook-late-choices = Se puede mover la cena, o bien:
cook-late-hotter = • Subir el calor a { $setting }: podría estar hacia las { $about }. Luego dime qué temperatura hay dentro.
cook-late-carve = • Separar muslos y pechugas y terminarlos en una { -tray } en el horno fuerte, cada pieza a { $target }: en piezas va mucho más rápido. De un calor al otro, sin pausa.
cook-button-dinner = Cena a las { $at }
cook-button-hotter = Calor a { $setting }
cook-hotter = Ahora el plan dice { $setting }. Súbelo y dime en 20 minutos qué temperatura hay dentro.
# The air was otherwise than set. $since: on (since the bird went on) or at ($from); $setting: what it is set to now.
cook-air-was = { $since ->
    [on] Anotado: { $was } desde que entró.
   *[at] Anotado: { $was } desde las { $from }.
}
cook-air-off = { $since ->
    [on] Anotado: sin calor desde que entró.
   *[at] Anotado: sin calor desde las { $from }.
}
cook-air-now = Desde ahora cuento con { $setting }. Dime si lo cambias.
cook-start = Anotado: { $at } por dentro cuando entró.
cook-air-back = Vuelve a ponerlo a { $setting } ya: la hora cuenta con eso.
cook-air-burns-on = Entonces sigue con calor, y el plan también. Mira que la llama siga encendida; ¿se apagó? Dímelo.
cook-air-rising = Está subiendo, así que tiene calor: vuelvo a contar con { $setting }. ¿No es así? Dímelo.
cook-air-low = Las aves piden un horno a { $limit } o más. Mide la pechuga ahora y dime cuánto marca.
cook-air-cold = Mide la pechuga ahora y dime cuánto marca. Menos de { $hot } tras { $limit } así: a la basura.
cook-air-raw = Un ave cruda sin calor { $limit } o más ya no es segura, se cocine como se cocine después. A la basura.
cook-early = { $done ->
    [yes] Es mucho antes de las { $dinner }.
   *[no] Es mucho antes de la cena de las { $dinner }.
} Mantenla caliente: envuelta, en un horno tibio o una { -cooler } seca, y que siga marcando { $hot }. Si baja, hay que comerla o meterla { -fridge(form: "in") } antes de las { $until }. O trínchala, enfríala en fuentes bajas y recaliéntala a { $target }.

cook-suspect-odd = ¿{ $spot ->
    [breast] Pechuga
    [thigh] Muslo
    [oven] Horno
   *[pit] Aire
} a { $given }? { $slip ->
    [was-celsius] Si eran °C, son { $meant }.
    [was-fahrenheit] Si eran °F, son { $meant }.
   *[digit] { $meant } encajaría.
}
cook-suspect-impossible = ¿{ $spot ->
    [breast] Pechuga
    [thigh] Muslo
    [oven] Horno
   *[pit] Aire
} a { $given }? Eso no me lo creo.
cook-suspect-ask = No la he contado. ¿De verdad marca eso?
cook-suspect-meant = Es { $parts }
cook-suspect-meant-all = Usar las corregidas
cook-suspect-dropped = La dejo fuera. Mándala otra vez con lo que marca ahora.

cook-alarm-fire = { $cooker ->
    [smoker] <b>El fuego se apaga:</b> el aire está a { $pit } y no sube. Combustible y aire ya, tapa cerrada. Dime qué marca en 15 minutos.
   *[oven] <b>El horno pierde calor:</b> { $pit } donde debería haber { $setting }. ¿Está encendido y la puerta cerrada? Dime qué marca en 15 minutos.
}
cook-alarm-hot = { $cooker ->
    [smoker] El fuego se desboca: { $pit } donde queríamos { $setting }. Cierra un poco las rejillas; { -foil } sobre lo que se dora de más.
   *[oven] El horno va demasiado fuerte: { $pit } donde queríamos { $setting }. Bájalo; { -foil } sobre lo que se dora de más.
}
cook-alarm-sag = { $cooker ->
    [smoker] El ahumador baja: { $pit } donde está puesto { $setting }. ¿Tapa recién abierta? Mira otra vez en 10 minutos. Si no, combustible y algo más de aire, tapa cerrada. Se queda fuera: monóxido de carbono.
   *[oven] El horno baja: { $pit } donde está puesto { $setting }. ¿Puerta recién abierta? Mira otra vez en 10 minutos. Si no, comprueba que esté encendido y cerrado, y súbelo un poco.
}
cook-alarm-moved = { $spot ->
    [breast] La lectura de la pechuga saltó. ¿Sigue la sonda en la parte más gruesa, lejos del hueso?
    [thigh] La lectura del muslo saltó. ¿Sigue la sonda en lo más hondo del muslo, lejos del hueso?
    [oven] La lectura del horno saltó. ¿Se movió su termómetro?
   *[pit] La lectura del aire saltó. ¿Se movió su termómetro?
} Colócala bien y dime qué marca.
cook-doubting = Mide en otro sitio, bien dentro de la carne y lejos del hueso. Si el número estaba mal, deshazlo; si no, vale.
cook-alarm-behind = { $spot ->
    [breast] La pechuga
   *[thigh] El muslo
} va muy por debajo de lo que da { $setting } a estas alturas. { $cooker ->
    [smoker] ¿Arde bien el fuego, está la punta bien dentro de la carne? Mide en otro sitio. ¿Estuvo apagado? Dime cuánto: «apagado 40 min».
   *[oven] ¿Está caliente el horno, está la punta bien dentro de la carne? Mide en otro sitio. ¿Estuvo apagado? Dime cuánto: «apagado 40 min».
}
cook-alarm-ahead = { $spot ->
    [breast] La pechuga
   *[thigh] El muslo
} va muy por encima de lo que da { $setting } a estas alturas: ¿la punta toca hueso o está bajo la piel? Mide en otro sitio, bien dentro.
cook-alarm-apart = Pechuga y muslo difieren en { $apart }. Una de las dos sondas está mal puesta: revisa las dos, lejos del hueso y fuera de la cavidad.
cook-alarm-stalled = { $spot ->
    [breast] La pechuga
   *[thigh] El muslo
} lleva { $since } en { $at }. { $low ->
    [yes] Con poco calor puede ser el estancamiento: la piel suda tanto como se calienta. Más calor lo acaba.
   *[no] ¿Está la sonda en su sitio? Un segundo termómetro lo dice.
}
cook-alarm-zone = <b>El aire lleva { $span } por debajo de { $low }</b> y el ave está a { $spot }. Por debajo de { $hot } crecen las bacterias: sube el calor ya o pásala a un horno. El límite son dos horas así.
cook-alarm-zone-over = <b>El aire lleva { $span } por debajo de { $low }</b> y el ave está a { $spot }. Eso pasa del límite de dos horas. Yo no la serviría.
cook-alarm-long = { $spot ->
    [thigh] El muslo
   *[breast] La pechuga
} marca { $at } tras { $span }. Con poco calor debería pasar de { $hot } en { $most } como mucho: es práctica común, no cifra oficial. Más calor, o un horno a { $oven }, y pasa.
cook-alarm-falling = { $spot ->
    [thigh] <b>El muslo se está enfriando:</b>
   *[breast] <b>La pechuga se está enfriando:</b>
} { $from }, ahora { $to }. { $cooker ->
    [smoker] ¿Se apagó el fuego? Combustible y aire ya, o pasa el ave a un horno caliente.
   *[oven] ¿Está encendido el horno, la puerta cerrada? Si no, a otro horno caliente.
} Por debajo de { $hot } crecen bacterias: dos horas así es el límite. Mándame la próxima lectura en 10 minutos.
cook-alarm-falling-over = { $spot ->
    [thigh] <b>El muslo lleva { $span } enfriándose:</b>
   *[breast] <b>La pechuga lleva { $span } enfriándose:</b>
} { $from }, ahora { $to }. Pasa del límite de dos horas por debajo de { $hot }. Yo no lo serviría.
cook-falling = Sin hora mientras se enfría: primero, que vuelva el calor.
cook-alarm-hold = Fuera del fuego desde las { $off }. Mídela: a { $hot } o más puede esperar. Si no, hay que comerla o meterla { -fridge(form: "in") } antes de las { $until }.
cook-alarm-hold-read = Última lectura caliente a las { $off }. Mídela otra vez: a { $hot } o más puede esperar. Si no, hay que comerla o meterla { -fridge(form: "in") } antes de las { $until }.
cook-held-unread = ¿Caliente todavía? No tengo lectura desde las { $off }. Mide ya pechuga y muslo: a { $hot } o más en los dos, lo está. Si no, se tira.
# A bird carried hot to another house. $hot: 140 °F; $off: when it was last known to be hot; $by: two hours later.
cook-hot-by = Si marca menos: comida antes de las { $by }, las sobras enseguida { -fridge(form: "to") }. Después, no la sirvas.
cook-measure-first = Antes mide pechuga y muslo y dímelo: a { $hot } o más, sus dos horas cuentan desde ahí; si no, desde las { $off }.
cook-hot-dinner-late = Sus dos horas acaban a las { $by }, antes de la cena: tiene que seguir marcando { $hot } o más. Si no, se come antes.
cook-hot-still = Sigue a { $hot } o más en los dos: bien, puede esperar mientras marque eso. Desde la última lectura así tiene { $most }.
cook-hot-one = Ahí está bastante caliente. Cuentan los dos, pechuga y muslo: mide también el otro.
cook-hot-below = Está por debajo de { $hot }. Por lo que me han dicho, estuvo caliente hasta las { $off }: comida antes de las { $by }, las sobras enseguida { -fridge(form: "to") }.
cook-hot-over = Está por debajo de { $hot }, y han pasado más de { $most } desde las { $off }, la última vez que se supo caliente. Yo no la serviría.
# Puesta al calor en la otra casa.
cook-hot-in = De nuevo al calor desde las { $at }, antes de que acabaran sus dos horas: bien. Sigue dentro hasta que pechuga y muslo marquen { $target }, y se come. Dime los números.
cook-hot-in-more = Todavía no: sigue dentro hasta que pechuga y muslo marquen los dos { $target }.
cook-hot-in-there = { $target } en los dos: córtala y a comer. Las sobras, { -fridge(form: "to") } antes de las { $by }.
cook-hot-in-table = Volvió al calor a las { $at }: se corta cuando pechuga y muslo marquen { $target }.
cook-hot-too-late = Sus dos horas acabaron a las { $by }, antes de calentarla. El calor ya no lo arregla: se tira, no la sirvas.
cook-hot-needs = Pechuga y muslo a { $hot } o más: no, córtala así, antes de las { $by }. Menos: al horno antes de esa hora, hasta que los dos marquen { $target }.
cook-hot-needs-no = No: los dos marcan { $hot } o más. Córtala así y comedla antes de las { $by }.
cook-cooled-counter = { $at }. Marque lo que marque, va { -fridge(form: "to") } antes de las { $by }, en recipientes bajos: quedan { $left }.
cook-cooled-unsaid = { $at } es bastante frío solo si estaba { -fridge(form: "in") } antes de { $by }. Si no, se tira.
cook-cooled-cold = { $at }: bastante frío, para guardar y para llevar. Que siga a { $cold } o menos.
cook-cooled-fridge = { $at }: aún se enfría. Para { $by } debería marcar { $cold } o menos: recipientes bajos, separados, sin cerrar del todo.
cook-cooled-warm = { $at } tras { $span } { -fridge(form: "in") } es demasiado. Revisa { -fridge(form: "the") }; lo que pasó más de dos horas por encima de { $cold } nadie puede darlo por seguro. En la duda, tíralo.
cook-cooled-packed = { $at } pasa de { $cold }. Más de { $most } por encima, en total, y se tira, también si nadie sabe cuánto. Si no, más hielo, o directo al calor, a { $target } por todas partes.
cook-reheat-on = { $at }: que siga, hasta { $target } por todas partes, medido en el trozo más grueso.
cook-reheat-there = { $at }: ahí ya está. Lo mismo en el centro de cada fuente, y a la mesa.
cook-reheat-only = Eso vale solo si estaba { -fridge(form: "in") } antes de { $by }; nadie lo ha dicho. El calor no lo arregla.
cook-gone = Esa estuvo fuera demasiado tiempo y se tira, marque lo que marque. Lo siento. No queda nada por hacer con ella.
cook-tossed = Fue lo correcto, y lo siento. Por esa ave ya no aviso.
cook-tossed-rest = Fue lo correcto. Por eso ya no aviso.
cook-tossed-raw = Con esa ave ya no aviso de nada.
cook-new-bird = Cuando haya otra ave, dime cuánto pesa y si es fresca o congelada: planeo la misma cena con ella.
cook-setting = El plan dice { $setting }.
cook-standing = Fuera del fuego desde las { $off }: trinchado, comido y { -fridge(form: "in") } antes de las { $by }, salvo que siga a { $hot } o más.
cook-hot-day = Con { $at } alrededor: a más de { $air } es una hora en total fuera del calor y de la { -fridge }, no dos. Cuento con eso.
cook-hot-day-off = Con { $at } alrededor: a más de { $air } es una hora, no dos. Comido o en frío antes de { $by }.

cook-after = A las { $when } dije hacia las { $about } (de { $from } a { $to }); salió a las { $off }.

cook-chart = { $what ->
    [breast] Pechuga
    [thigh] Muslo
    [oven] Horno
    [pit] Aire
    [dinner] Cena
   *[done] Lista hacia
}
cook-chart-number = { $number }

cook-log-noted = { $count ->
    [one] Una lectura de { $name }, { $from }.
   *[other] { $count } lecturas de { $name }, de { $from } a { $to }.
}
cook-log-nothing = No trae nada nuevo desde que empezó a asarse, a las { $on }.
cook-log-not-on = ¿Cuándo empezó a asarse el ave? Dímelo primero y manda el registro otra vez.
cook-log-full = Guardo { $most } lecturas por ave y ya no caben más. Desde aquí mira tú el termómetro: { $target } en todas partes.
cook-log-large = Ese archivo es demasiado grande: 2 MB como mucho. Recorta el registro a este asado.
cook-log-lost = No pude descargar el archivo. Mándalo otra vez.
cook-odd = { $count ->
    [one] Una lectura no puede ser; no cuenta.
   *[other] { $count } lecturas no pueden ser; no cuentan.
}
cook-not-done = Todavía no: { $spot ->
    [thigh] el muslo marcaba
    [wing] el ala marcaba
    [stuffing] el relleno marcaba
   *[breast] la pechuga marcaba
} { $read } a las { $at }. Hecho es { $target } en pechuga, muslo y ala.
cook-done-unread = Solo lo dice un termómetro: { $target } en lo más grueso de la pechuga, lo más hondo del muslo y el ala. ¿Qué marca?
cook-eat = Sí: { $target } en pechuga, muslo y ala. Comido o en la nevera antes de las { $by }.
cook-eat-unread = Si marcó { $target } en pechuga, muslo y ala, sí. Si no lo sabes, mide ahora. Comido o en la nevera antes de las { $by }.
cook-back-in = Entonces otra vez al calor, hasta { $target } en pechuga, muslo y ala.
cook-pink-read = Marcó { $target } en pechuga, muslo y ala. Eso decide, sea cual sea el color. Si dudas, mide otra vez lo más grueso de la pechuga, lo más hondo del muslo y el ala: si algo marca menos, vuelve al horno.
cook-pink-unread = El color y los jugos no prueban nada, rosados o claros, y nadie lo ha medido. Mide ahora, antes de que nadie coma: { $target } en lo más grueso de la pechuga, lo más hondo del muslo y el ala. Si algo marca menos, vuelve al horno.
cook-no-butter = Alguien no puede tomar leche: aceite, sin mantequilla.
