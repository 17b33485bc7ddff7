### Los valores del plan en palabras: pasos, avisos, motivos, cambios, advertencias, cosas.

# ---- nombres de los pasos, como en el tablero. Una línea en el móvil: menos de 28 caracteres, sin punto.
plan-step-buy = Comprar el ave
plan-step-thaw = Empezar a descongelar
plan-step-thaw-finish = De la nevera al agua fría
plan-step-water = Cambiar el agua
plan-step-salt = Salar el ave
plan-step-rest = Reposo con sal en la nevera
plan-step-temper = Secar el ave
plan-step-fire = Encender
plan-step-on = Meter el ave
plan-step-check = Mirar temperaturas
plan-step-pull = Fuera del fuego
plan-step-stand = Dejarla reposar
plan-step-carve = Trinchar
plan-step-chill = A la nevera
plan-step-pack = Empaquetar en frío
plan-step-pack-hot = Envolver en caliente
plan-step-travel = Salir
plan-step-reheat = Recalentar
plan-step-serve = Cena
plan-step-leftovers = Último día de las sobras
plan-step-dish = { $name }

# ---- lo mismo, hecho
plan-done-buy = Ave comprada
plan-done-thaw = Descongelando
plan-done-thaw-finish = En agua fría
plan-done-water = Agua cambiada
plan-done-salt = Salada
plan-done-rest = En reposo { -fridge(form: "in") }
plan-done-temper = El ave está seca
plan-done-fire = Encendido
plan-done-on = El ave ya está dentro
plan-done-check = Temperaturas miradas
plan-done-pull = Fuera del fuego
plan-done-stand = Reposando
plan-done-carve = Trinchada
plan-done-chill = { -fridge(form: "In") }
plan-done-pack = Empaquetada en frío
plan-done-pack-hot = Envuelta en caliente
plan-done-travel = De camino
plan-done-reheat = Recalentada
plan-done-serve = Cena servida
plan-done-leftovers = Sobras resueltas
plan-done-dish = { $name } en marcha

# ---- avisos: qué hacer ahora, con el cuidado que pide. Dos o tres frases cortas.
plan-call-buy = { $condition ->
    [frozen] Toca comprar el ave. Directa a casa y al congelador, o { -fridge(form: "to") } si luego se descongela.
   *[fresh] Toca comprar el ave. Directa a casa y { -fridge(form: "to") }, en una { -tray } abajo.
}
plan-call-thaw-fridge = El ave { -fridge(form: "to") } a descongelar, en su envoltorio, en una { -tray } abajo. { -fridge(form: "The") } a { $cold } o menos; nunca en { -counter }.
plan-call-thaw-water = El ave en una bolsa hermética y bajo agua fría. Cambia el agua cada { $every }. Nunca agua templada.
plan-call-thaw-finish = Ahora, { -fridge(form: "of") } al agua fría, en una bolsa hermética, a acabar de descongelarse. Cambia el agua cada { $every }. Nunca agua templada.
plan-call-water = Cambia el agua ({ $n } de { $of }). Que siga fría, y el ave en su bolsa hermética.
plan-call-salt-dry = Sala el ave: fuera cuello y { -giblets }, sécala, no la laves, sal por dentro y por fuera. Luego { -fridge(form: "to") } sin tapar, en una { -tray } abajo.
plan-call-salt-wet = El ave a la salmuera, tapada, y { -fridge(form: "to") }. Todo el tiempo a { $cold } o menos.
plan-call-salt-now = Fuera del agua ya: quita cuello y { -giblets }, sécala, sálala. Descongelada en agua, va directa a asar.
plan-call-rest = El reposo con sal: déjala { -fridge(form: "in") }, sin tapar, abajo.
plan-call-temper = El ave fuera { -fridge(form: "of") }: sin cuello ni { -giblets } ya, sécala, pincha la piel, úntala de mantequilla. Como mucho { $most } fuera, y a asar.
plan-call-temper-fat = El ave fuera { -fridge(form: "of") }: sin cuello ni { -giblets } ya, sécala y pincha la piel donde hay grasa, sin llegar a la carne. Sin mantequilla: su grasa basta. Como mucho { $most } fuera, y a asar.
plan-call-temper-water = El ave ya fuera del agua: sécala otra vez, pincha la piel, úntala de mantequilla. A asar antes de { $most }.
plan-call-temper-salt = Luego la sal, que este plan dejó para el final:
plan-call-fire-oven = Calienta el horno a { $setting }.
plan-call-fire-smoker = Enciende el fuego y deja que se asiente a { $setting }. Solo al aire libre: carbón, nunca dentro de casa ni en un garaje.
plan-call-on = Mete el ave. El termómetro en lo más grueso de la pechuga, sin tocar el hueso.
plan-call-on-stuffed = Rellénala ahora, sin apretar, y mete el ave. El termómetro en lo más grueso de la pechuga, sin tocar el hueso.
plan-call-check = Hora de mirar: pechuga, muslo y { $cooker ->
    [smoker] ahumador
   *[oven] horno
}. Mándame solo los números.
plan-call-pull = Debería estar casi lista. Fuera solo con { $target } en lo más grueso de la pechuga, lo más hondo del muslo y el ala. ¿Menos? Que siga asándose.
plan-call-pull-stuffed = Debería estar casi lista. Fuera solo con { $target } en lo más grueso de la pechuga, lo más hondo del muslo, el ala y el centro del relleno. ¿Menos? Que siga asándose.
plan-call-stand = Déjala reposar, poco tapada, { $least } o más.
plan-call-carve = Hora de trinchar: tabla limpia, cuchillo limpio.
plan-call-carve-hot = Primero el termómetro, en pechuga y muslo. { $hot } o más en los dos: a trinchar, tabla limpia, cuchillo limpio.
plan-call-chill-ahead = La carne trinchada en fuentes bajas y { -fridge(form: "to") } antes de las { $latest }. Caliente vale; más tarde, no.
plan-call-chill = Las sobras { -fridge(form: "to") } antes de las { $latest }, en fuentes bajas. Lo que haya estado más tiempo fuera se tira.
plan-call-pack = Empaqueta en frío: la carne a { $cold } o menos, hielo alrededor, la { -cooler } cerrada.
plan-call-pack-hot = Envuélvela entera y caliente: { -foil }, luego toallas, en una caja templada con agua caliente. Deja el termómetro puesto. Con más de { $air } fuera hay { $hour } para comerla, no dos.
plan-call-travel = Hora de salir. La { -cooler } sigue cerrada hasta { -fridge(form: "the") } o el horno de allí.
plan-call-travel-hot = Hora de salir. La caja sigue cerrada hasta llegar.
plan-call-reheat = Recalienta tapada, con un poco de caldo, en horno de { $low } a { $high }, hasta { $target } en todas partes.
plan-call-serve = A cenar. Buen provecho; luego te aviso para { -fridge(form: "the") }.
plan-call-leftovers = Sobras: hoy se comen o se congelan. Es su último día { -fridge(form: "in") }.
plan-call-dish = Toca { $name }.
plan-call-dish-oven = { $name }: al horno a { $setting }, { $takes }.
plan-call-dish-smoker = { $name }: al ahumador a { $setting }, { $takes }.
plan-call-dish-stove = { $name }: al fuego, { $takes }.
plan-call-dish-made = { $name }: empieza ya, { $takes }.
plan-call-dish-chill = { $name }: { -fridge(form: "to") } ya, a { $cold } o menos, hasta la cena.
plan-call-dish-then-fridge = Luego { -fridge(form: "to") } hasta la cena, a { $cold } o menos.
plan-call-dish-then-cooler = Luego a una { -cooler } con mucho hielo y un termómetro dentro: { $cold } o menos hasta la cena. Si pasa { $most } por encima, se tira.
plan-call-dish-then-hot = Luego, tapado y caliente, a { $hot } o más, hasta la cena.

# ---- motivos: medias frases en listas, sin mayúscula ni punto.
plan-reason-dinner = la cena es a esa hora
plan-reason-now = no puede ser antes de ahora
plan-reason-done = se hizo entonces
plan-reason-follows = antes va «{ $step }», que lleva { $takes }
plan-reason-raw-keeps = un ave fresca aguanta { $most } { -fridge(form: "in") }
plan-reason-shop = la compra no es antes de { $at }
plan-reason-use-by = el envase dice que caduca { $day }
plan-reason-fridge-thaw = descongelarse { -fridge(form: "in") } le lleva { $time }
plan-reason-fridge-share = { $spent } { -fridge(form: "in") }, de hasta { $whole }; el agua fría hace el resto
plan-reason-water-thaw = descongelarse en agua fría le lleva { $time }
plan-reason-water-finish = el hielo que queda tarda hasta { $most } en agua fría
plan-reason-water-change = el agua se cambia cada { $every }
plan-reason-cook-at-once = descongelada en agua se cocina enseguida
plan-reason-thawed-keeps = descongelada aguanta { $most } { -fridge(form: "in") }
plan-reason-salt-wants = la sal quiere { $least } o más
plan-reason-salt-at-most = salada espera { $most } como mucho
plan-reason-brine-wants = la salmuera quiere { $least } o más
plan-reason-temper = unos { $about } para secarla y untarla
plan-reason-room-temperature = cruda está fuera { -fridge(form: "of") } { $most } como mucho
plan-reason-preheat = { $cooker ->
    [smoker] el fuego tarda { $least } en asentarse
   *[oven] el horno tarda { $least } en calentarse
}
plan-reason-cooking-time = se asa { $time }
plan-reason-forecast = así de avanzado va
plan-reason-check-before = una mirada antes de que pueda estar lista
plan-reason-stand = reposa { $least } antes de trinchar
plan-reason-hot-hold = tras el calor espera { $most } como mucho si no se mantiene a { $hot }
plan-reason-hot-road = llevada caliente se come antes de { $most } desde que sale del fuego
plan-reason-carving = trinchar lleva unos { $about }
plan-reason-two-hours = { -fridge(form: "in") } antes de { $most }
plan-reason-cold-through = necesita { $least } { -fridge(form: "in") } para enfriarse del todo
plan-reason-drive = el viaje dura { $takes }
plan-reason-packed-cold = empaquetada con hielo sale antes de { $most }
plan-reason-reheat = recalentar lleva unos { $about }
plan-reason-reheat-within = otra vez a { $target } antes de { $most }
plan-reason-cooked-keeps = cocinada aguanta { $most } { -fridge(form: "in") }
plan-reason-sociable = a una hora en que la gente está despierta
plan-reason-dinner-past = esa hora de cena ya pasó
plan-reason-dinner-too-far = esa cena es dentro de más de un año
plan-reason-drive-too-long = una { -cooler } con hielo vale para { $most } de viaje
plan-reason-setting = { $cooker ->
    [smoker] un ahumador va de { $low } a { $high }
   *[oven] un horno va de { $low } a { $high }
}
plan-reason-thaw-before-smoking = al ahumador solo va un ave descongelada del todo
plan-reason-stuffed-frozen = un ave sin descongelar no se rellena
plan-reason-stuffed-form = solo se rellena un ave entera
plan-reason-stuffed-kind = el pato no se rellena
plan-reason-form-for-kind = la pechuga de pavo se asa tal cual
plan-reason-mass-for-kind = un ave así pesa de { $low } a { $high }
plan-reason-solution = el porcentaje de la etiqueta va de 0 a 50
plan-reason-dish-hot = { $name } llega caliente a la mesa y espera { $most } como mucho
plan-reason-dish-ahead = { $name } se hace antes y va { -fridge(form: "to") }
plan-reason-heat-taken = { $how ->
    [setting] { $name } necesita { $own } mientras { $other } necesita ahí { $others }
    [time] { $name } necesita el calor mientras lo tiene { $other }
    [setting-bird] { $name } necesita { $own } mientras { $other } necesita ahí { $others }
    [time-bird] { $name } necesita el calor mientras lo tiene { $other }
    [full] ahí solo caben { $room } platos a la vez, y { $name } sobra
   *[alone] { $name } necesita un calor que entonces está ocupado
}
plan-reason-heat-bird = el ave
plan-reason-dish-cold = { $name } necesita { $least } { -fridge(form: "in") }
plan-reason-fridge-taken = con el ave dentro, { -fridge(form: "in") } ({ $shelves ->
    [one] una { -shelf }
   *[other] { $shelves } { -shelves }
}) no cabe { $name }
plan-reason-fridge-full = { -fridge(form: "in") } ({ $shelves ->
    [one] una { -shelf }
   *[other] { $shelves } { -shelves }
}) ya no cabe { $name }, ni sin el ave

# ---- cambios que se ofrecen: textos de botón, menos de 28 caracteres.
plan-change-cold-water = Descongelar en agua fría
plan-change-finish-in-water = { -fridge(form: "Title") } y luego agua fría
plan-change-fridge-thaw = Descongelar { -fridge(form: "in") }
plan-change-cook-frozen = Asarla congelada
plan-change-shorter-rest = Menos reposo con sal
plan-change-no-salt = Sin sal previa
plan-change-dinner = En la mesa { $when }
plan-change-hotter = Mejor a { $setting }
plan-change-flat = Abrirla en plano
plan-change-unstuffed = Relleno aparte
plan-change-cook-ahead = Asarla el día antes
plan-change-carry-cold = Llevarla fría
plan-change-smaller-bird = Un ave de { $mass }
plan-change-two-birds = Dos aves de { $mass }
plan-change-buy-fresh = Comprar una fresca
plan-change-buy-later = Comprar otra más tarde
plan-change-freeze = Congelarla ya
plan-change-dish-beside = { $name } junto al ave
plan-change-dish-ahead = { $name } antes
plan-change-dish-early = { $name } más temprano
plan-change-dish-out = Sin { $name }
plan-change-dish-later = { $name } tras el ave
plan-change-dish-cooler = { $name } con hielo

# ---- lo que cuesta un cambio: medias frases tras dos puntos.
plan-cost-cold-water = { $changes ->
    [one] un cambio de agua, desde { $when }; sin reposo con sal
   *[other] { $changes } cambios de agua, desde { $when }; sin reposo con sal
}
plan-cost-finish-in-water = { $changes ->
    [one] un cambio de agua, desde { $when }; sin reposo con sal, directa a asar
   *[other] { $changes } cambios de agua, desde { $when }; sin reposo con sal, directa a asar
}
plan-cost-fridge-thaw = { -fridge(form: "to") } { $when }
plan-cost-cook-frozen = cerca de { $time } en el horno, desde { $when }; sin sal previa
plan-cost-shorter-rest = { $rest } de sal en vez de { $wanted }
plan-cost-no-salt = se sazona justo antes de asarla
plan-cost-dinner = lo demás, como querías
plan-cost-hotter = más rápido, y se dora más
plan-cost-flat = sin espinazo; se asa mucho antes
plan-cost-unstuffed = se asa antes y con más seguridad
plan-cost-cook-ahead = trinchada, enfriada y recalentada a { $target }
plan-cost-carry-cold = asada el día antes, recalentada allí a { $target }
plan-cost-smaller-bird = llega para todos, sobra poco
plan-cost-two-birds = se descongelan y asan antes que una grande
plan-cost-buy-fresh = nada que descongelar; cómprala { $when }
plan-cost-buy-later = la de casa no aguanta; cómprala { $when }
plan-cost-freeze = hoy al congelador, a descongelar desde { $when }
plan-cost-dish-beside = a la temperatura del ave: { $takes }, dentro el { $when }
plan-cost-dish-ahead = { $when }, luego { -fridge(form: "to") }; en la mesa, recalentado a { $target }
plan-cost-dish-early = { $when }, luego tapado a { $hot } o más
plan-cost-dish-out = lo demás queda igual
plan-cost-dish-later = { -fridge(form: "to") } { $when }, cuando sale el ave: { $stay } o más, no tanto como pedías
plan-cost-dish-cooler = { -cooler } con mucho hielo y termómetro: { $cold } o menos todo el tiempo

# ---- advertencias de un plan que funciona: frases enteras.
plan-caution-odd-hours = «{ $step }» cae de noche.
plan-caution-short-rest = Solo { $rest } de sal: entra menos, y sigue estando buena.
plan-caution-keep-hot = Puede estar lista { $wait } antes de trincharla: mantenla a { $hot } o más.
plan-caution-hot-till-packed = Puede estar lista { $wait } antes de envolverla: hasta entonces mantenla a { $hot } o más.
plan-caution-overrun = Se ha pasado un límite ({ $reason }). Si dudas, no la comas.
plan-caution-stuffing-apart = Saca el relleno caliente y enfríalo aparte.
plan-caution-stuffing-out = Saca el relleno antes de envolverla; va caliente en su propia fuente.
plan-caution-oven-below-authority = Las autoridades dicen: ningún horno por debajo de { $limit } para aves.
plan-caution-smoker-below-authority = Por debajo de { $limit } se sale del margen publicado para ahumadores.
plan-caution-smoker-above-published = Por encima de { $limit } los tiempos del ahumador son experiencia, no tabla publicada.
plan-caution-long-in-danger-zone = A fuego bajo pasa mucho tiempo entre { $cold } y { $hot }, y la hora es la menos segura.
plan-caution-outside-table = Ninguna tabla publicada llega a ese peso; el tiempo se calcula a partir de ella.
plan-caution-stuffing-last = El centro del relleno también debe llegar a { $target }, a menudo el último. Mejor al horno aparte.
plan-caution-from-frozen = Congelada, el tiempo varía mucho. Saca { -giblets(form: "the") } en cuanto se suelten.
plan-caution-part-thawed = A medio descongelar, el tiempo está entre el de fresca y el de congelada.
plan-caution-pieces-differ = Las piezas acaban una a una: mide cada una.

# ---- lo que el plan da por hecho: nombres en una lista.
plan-need-bird = el ave
plan-need-thermometer = un termómetro de cocina
plan-need-salt = sal
plan-need-rack = una { -tray } con rejilla
plan-need-bag = una bolsa hermética
plan-need-brine-vessel = una olla para la salmuera que quepa { -fridge(form: "in") }
plan-need-fuel = combustible para el ahumador
plan-need-foil = { -foil }
plan-need-shallow-dishes = fuentes bajas
plan-need-cooler = una { -cooler } con hielo
plan-need-hot-box = una caja isotérmica y toallas
plan-need-broth = un poco de caldo
