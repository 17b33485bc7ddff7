### La conversación: el plan, el tablero, las tareas, los ajustes. Corto como un mensaje; se lee con las manos mojadas.

# ---- botones
room-button-accept = Aceptar
room-button-change = Cambiar
room-button-done = Hecho
room-button-later = Luego
room-button-skip = Saltar
room-button-take = Lo hago yo
room-button-undo = Deshacer
room-button-yes = Sí
room-button-no = No
room-button-back = Atrás
room-button-discard = Déjalo
room-button-why = ¿Por qué estas horas?
room-button-jobs = Repartir tareas

# ---- inicio y ayuda
room-start = Llevo el plan de un ave entera: desde comprarla hasta las últimas sobras. Calculo la sal, la descongelación y el horno, y te aviso cuando toca algo. ¿Por dónde empezamos?
room-start-group = Hola a todos. Llevo el plan del ave: quién hace qué y cuándo. Se empieza con <b>/plan</b> y una frase, por ejemplo «/plan pavo congelado de { units-example-bird }, cena el jueves a { units-example-hour }, 11 personas, horno». Solo veo órdenes, respuestas a mis mensajes y botones.
room-start-button-plan = Planear una cena
room-start-button-salt = ¿Cuánta sal?
room-start-button-safe = ¿Es seguro?
room-how = Dime el ave, cuándo se come y para cuántos. Yo calculo descongelado, sal, { -fridge } y horno, aviso a quien le toca cuando llega la hora, y rehago el plan si algo falla. Mientras se asa, mándame temperaturas: te digo cuándo estará. Y pregunta lo que quieras. Las órdenes: /help.
room-help-plan = Dime el ave, el día y cuántos a la mesa. Por ejemplo:
    «pavo congelado de { units-example-bird }, cena el jueves a { units-example-hour }, 11 personas, horno a { units-example-oven }»
    Lo que falte, te lo pregunto.
room-help-salt = Pregunta como a un amigo. Por ejemplo:
    «sal para un pavo de { units-example-smaller }»
    «2 cucharadas de sal de mesa en kosher en escamas»
    «mi sal: 1/4 cdta son { units-example-salt }» y desde entonces uso la tuya.
room-help-safe = Pregunta con los números que tengas. Por ejemplo:
    «¿70 °C durante 2 minutos es seguro?»
    «el pavo lleva 3 horas fuera, ¿está bien?»
    «¿cuánto duran las sobras?»
    En caso de duda, manda tu autoridad de seguridad alimentaria.
room-help = <b>/plan</b> empieza un plan o muestra el que hay
    <b>/board</b> qué viene y quién lo hace
    <b>/salt</b> dosis y conversiones
    <b>/ask</b> cualquier pregunta rápida
    <b>/log</b> anota temperaturas: «pechuga 53, muslo 61»
    <b>/when</b> cuándo estará listo
    <b>/move</b> cambia la hora de la cena: «/move 18:00»
    <b>/take</b> y <b>/drop</b> reparten las tareas
    <b>/undo</b> deshace el último cambio
    <b>/export</b> el plan para tu calendario, y todo lo que guardo
    <b>/settings</b> idioma, unidades, zona horaria
    <b>/stop</b> termina el plan, <b>/forget</b> borra lo que guardo
room-unread = Eso no lo entiendo. Prueba con { $stage ->
    [draft] «cena a { units-example-later }», «12 personas», «sin sal», o toca un botón
    [ahead] «hecho» cuando algo esté hecho, «yo trincho», «cena una hora más tarde», o una pregunta
    [alone] «hecho» cuando algo esté hecho, «cena una hora más tarde», o una pregunta
    [cooking] «pechuga 65, muslo 70», «¿cuándo?», «ya lo saqué» cuando salga, o una pregunta
    [after] «las sobras están { -fridge(form: "in") }», una pregunta como «cuánto duran las sobras», o /help
   *[none] «pavo congelado de { units-example-bird }, cena el domingo a { units-example-hour }», una pregunta como «sal para un pavo de { units-example-smaller }», o /help
}.
room-unreadable = Solo leo texto. ¿Me lo escribes?
room-no-plan = Todavía no hay plan. Empieza uno con una frase, como «/plan pavo congelado de { units-example-bird }, cena el domingo a { units-example-hour }, 10 personas, horno».
room-stale = Ese botón es de un plan anterior. /board muestra cómo va todo.
room-not-yours = Eso le toca contestarlo a otra persona.
room-not-here = No estás en ese chat, así que no puedo cambiar su plan.
room-flooded = Demasiado de golpe: he dejado de leer. Dame un minuto.
room-need-person = Aquí no sé quién eres. Escribe con tu nombre y prueba otra vez.
room-may-host = Eso solo puede hacerlo { $name }, que empezó el plan, o un administrador.
room-may-not = Eso solo puede hacerlo un administrador del chat.

# ---- un ave, un aparato
room-bird = { $kind ->
    [turkey-breast] pechuga de pavo
    [chicken] pollo
    [capon] capón
    [duck] pato
    [goose] ganso
   *[turkey] pavo
} de { $mass }{ $condition ->
    [frozen] , { $kind ->
        [turkey-breast] congelada
        [goose] congelado
       *[turkey] congelado
    }
    [part-thawed] {" "}a medio descongelar
   *[fresh] {""}
}{ $form ->
    [stuffed] , { $kind ->
        [turkey-breast] rellena
        [goose] relleno
       *[turkey] relleno
    }
    [flat] , { $kind ->
        [turkey-breast] abierta en plano
        [goose] abierto en plano
       *[turkey] abierto en plano
    }
    [pieces] {" "}en trozos
   *[whole] {""}
}
room-heat = { $cooker ->
    [fan-oven] { -fan-oven } a { $setting }
    [smoker] ahumador a { $setting }
   *[oven] horno a { $setting }
}
room-birds = { $count } × { $bird }

# ---- preguntar lo que falta
room-known = Por ahora: { $parts }.
room-known-mass = { $mass }
room-known-bird = { $kind ->
    [turkey-breast] pechuga de pavo
    [chicken] pollo
    [capon] capón
    [duck] pato
    [goose] ganso
   *[turkey] pavo
}{ $condition ->
    [frozen] {" "}{ $kind ->
        [turkey-breast] congelada
        [goose] congelado
       *[turkey] congelado
    }
    [part-thawed] {" "}a medio descongelar
    [fresh] {" "}{ $kind ->
        [turkey-breast] fresca
        [goose] fresco
       *[turkey] fresco
    }
   *[unknown] {""}
}
room-known-form = { $form ->
    [pieces] en piezas
   *[flat] abierta en mariposa
}
room-known-guests = { $guests ->
    [one] una persona
   *[other] { $guests } personas
}
room-known-salt = { $how ->
    [none] sin sal
    [bold] más sal
   *[light] menos sal
}
room-known-dinner = en la mesa { $when }
room-known-start = a asar { $when }
room-known-use-by = caduca { $day }
room-known-shop = compra { $when }
# $start: the hour somebody said; $on: the plan’s.
room-proposal-start = Dijiste a asar { $start }. Para esta comida se mete { $on }.
room-shop-not = La compra { $said } no encaja: cómprala { $when }.
room-proposal-dish = { $dish }
room-proposal-beside = Cuando lo aceptes añado: { $dishes }.
room-known-drive = a { $drive } de camino
room-ask-zone = ¿Dónde está la cocina? Vale una ciudad o una zona horaria: { units-example-places }.
room-ask-dinner = ¿Cuándo se come? Día y hora: «jueves a { units-example-hour }».
room-ask-dinner-hour = ¿A qué hora se come? «a { units-example-hour }»
room-ask-dinner-day = ¿Qué día? «jueves», «25 de noviembre»
room-ask-size = ¿Cuánto pesa el ave, o cuántos a la mesa? «{ units-example-bird }» u «11 personas»
room-ask-weight = ¿Cuánto pesa la nueva? Lo dice la etiqueta: «{ units-example-bird }».
room-ask-condition = ¿El ave está congelada?
room-ask-cooker = ¿Dónde la vas a asar?
room-ask-drive = ¿Cuánto dura el viaje?
room-ask-change = ¿Qué cambiamos? Toca una opción o dilo sin más: «cena a { units-example-later }», «7 kg», «14 personas».
room-condition-frozen = Congelada
room-condition-fresh = Fresca o descongelada
room-condition-part-thawed = A medio descongelar
room-cooker-oven = Horno
room-cooker-fan-oven = { -fan-oven(form: "Title") }
room-cooker-smoker = Ahumador
room-drive-15 = 15 min
room-drive-30 = 30 min
room-drive-60 = 1 hora
room-change-no-salt = Sin sal
room-change-dry-salt = Salar en seco
room-change-fridge = Descongelar { -fridge(form: "in") }
room-change-cold-water = Descongelar en agua fría
room-change-ahead = Asarla el día antes
room-change-same-day = Asarla el mismo día
room-change-hot = Llevarla caliente
room-change-cold = Llevarla fría
room-change-there = Asarla allí
room-change-home = en casa
room-kept = Lo demás queda como estaba. { $known }
room-plan-unread = No encuentro ni ave ni día en «{ $text }». Prueba con «pavo congelado de { units-example-bird }, cena el domingo a { units-example-hour }, 10 personas».

# ---- la propuesta
room-proposal-head = <b>{ $bird }</b>{ $guests ->
    [0] {""}
    [one] , para una persona
   *[other] , para { $guests }
}, { $heat }. En la mesa <b>{ $when }</b>.
room-proposal-size = Son unos { $mass } de ave para esa mesa.
room-proposal-small = Algo justo: para { $guests } personas buscaría { $mass }.
room-proposal-ready = Fuera del fuego entre { $from } y { $to }; nueve de cada diez veces, a más tardar a la segunda.
room-proposal-need = Te hace falta: { $things }.
room-proposal-use-by = En el envase: caduca { $day }.
room-proposal-first = Primero: <b>{ $what }</b>, { $when }.
room-line = { $when } · { $what }
room-need-salt = { $grams } de sal ({ $spoons } de { $salt ->
    [table] sal de mesa
   *[flake-kosher] kosher en escamas
})
room-accepted = Ya hay plan. Te aviso cuando toque algo.
room-discarded = De acuerdo, lo dejo.

# ---- por qué
room-why = Por qué estas horas:
room-why-line = <b>{ $what }</b>, { $when }: { $reasons }.

# ---- un deseo que no cabe
room-clash = Así no puede ser: { $because }.
room-clash-short = No da tiempo: { $because }. Faltan cerca de { $short }.
room-clash-now = Así ya no sale: { $because }. Faltan cerca de { $short }.
room-clash-keeps = No aguanta hasta la comida: { $because }. Son cerca de { $short } de más.
room-clash-use-by = ¿El envase lleva fecha de caducidad? Dímela, por ejemplo «caduca el viernes»: sin abrir, aguanta hasta entonces.
room-clash-instead = <b>Yo haría esto: { $change }</b> ({ $cost }).
room-clash-others = O si no:
room-clash-offers = Esto sí funcionaría:
room-clash-offer = • { $change }: { $cost }
room-clash-hopeless = No veo forma segura de llegar a esa hora. ¿Una cena más tarde u otra ave?
room-mended = De acuerdo: { $change }.

# ---- el tablero
room-board-dinner = <b>En la mesa { $when }</b>
room-board-bird = { $bird }, { $heat }
room-board-no-heat = Sin calor desde { $since }.
room-board-clash = Así no cuadra: elige arriba una salida o dime qué cambia.
room-board-next = { $late ->
    [yes] <b>Toca ya: { $what }</b>
   *[no] <b>Ahora viene: { $what }</b>
}, { $when }{ $who }
room-board-then = { $when } · { $what }{ $who }
room-board-who = {" "}– { $name }
room-board-nobody = {""}
room-board-more-dishes = … y { $count } más, con { $dishes }
room-board-more = … y { $count } más
room-board-ready = Fuera del fuego de { $from } a { $to }{ $standing ->
    [spare] , sobran { $span }
    [tight] , va justo
    [late] , tarde para la cena
   *[no] {""}
}
room-board-done = Hecho: { $jobs }
room-board-done-one = { $what }
room-board-done-by = { $what } ({ $name })
room-board-assumed = Lo doy por hecho: { $jobs }. Nadie lo ha dicho.
room-board-skipped = sin «{ $what }»
room-pin-how = Aquí no puedo fijar el tablero. Para tenerlo arriba, hazme administrador con permiso para fijar; con /board lo traigo aquí abajo cuando haga falta.
room-left = { $name } se ha ido. Quedan libres: { $jobs }.
room-board-all-done = Todo hecho. Buen provecho.

# ---- tareas
room-call-again = Sigue pendiente desde las { $since }: { $what }.
room-call-from = { $what }:
room-call-name = { $name }:
room-call-ahead = Para las { $at }:
room-done = { $what }, { $at }.
room-done-by = { $what }, { $name }, { $at }.
room-skipped = Saltado: { $what }.
room-skipped-by = { $name } ha saltado: { $what }.
room-next = Después: { $what }, { $when }.
room-later = De acuerdo, otra vez a las { $when }.
room-held-up-leave = Entonces, salida a las { $when }. A esa hora vuelvo a preguntar.
room-held-up-hot = Déjalo envuelto y cerrado. Si allí pechuga y muslo no marcan { $hot } o más: comido antes de las { $by }; después no se sirve.
room-held-up-over = Sus dos horas terminaron a las { $by }. Si pechuga y muslo no marcaron { $hot } o más hasta entonces, no lo sirvas.
room-taken = Te toca: { $what }, { $when }.
room-taken-water = Te toca: { $what }, { $when }, y { $count ->
    [one] el cambio de agua
   *[other] los { $count } cambios de agua
} después.
room-take-yours = Ya lo tienes tú.
room-take-theirs = Lo tiene { $name }.
room-dropped = { $what } vuelve a estar libre.
room-drop-free = No lo tiene nadie.
room-skip-theirs = Es de { $name }. Solo esa persona, quien lleva el plan o un administrador puede saltarlo.
room-drop-theirs = Es de { $name }. Solo esa persona, quien lleva el plan o un administrador puede soltarlo.
room-already = Eso ya está resuelto.
room-already-by = Ya lo hizo { $name }: { $at }.
room-jobs = Toca una para quedártela o para soltarla.
room-jobs-take = { $what }
room-jobs-drop = { $what } ({ $name })
room-step-unread = No conozco la tarea «{ $text }» en este plan.
room-missed = Mientras no estaba tocaba esto: { $what }. /board muestra lo que aún importa.
room-shifts = Eso mueve lo demás:
room-shift = { $what }: { $is } (antes { $was })

# ---- cambios de hora, deshacer, fin
room-move-how = En la mesa { $dinner }. Para moverlo: «/move 18:00» o «/move +45 min».
room-move-past = { $when } ya pasó, ahora es { $now }. Sigue en { $dinner }.
room-move-unread = No leo una hora en «{ $text }». Prueba «/move 18:00» o «/move +45 min». Sigue en { $dinner }.
room-move-clash = { $when } no puede ser. Todo se queda como estaba.
room-moved = Ahora en la mesa <b>{ $when }</b>.
room-move-already = La cena ya es { $when }.
room-move-already-by = { $name } se adelantó: la cena es { $when }.
room-late = ¿Cenamos { $when } en vez de { $dinner }?
room-wanted = { $name } pide cenar { $when } en vez de { $dinner }.
room-late-on = El ave ya está al fuego y sale cuando estaba previsto.
room-late-kept = La cena sigue siendo <b>{ $when }</b>.
room-late-host = Lo decide { $name } o un administrador.
room-late-stands = { $stands ->
    [off] Ya está fuera del fuego:
   *[done] Está hecho: fuera del fuego, y
} mantenlo caliente, tapado, en el horno al mínimo, y que siga marcando { $hot }. Si baja, hay que comerlo o meterlo { -fridge(form: "in") } antes de las { $until }. O trínchalo ya, enfríalo en fuentes bajas y recaliéntalo a { $target }.
room-late-how = ¿Cuánto tarde? Di «cena una hora más tarde» y veo qué cambia.
room-button-late-keep = Dejarlo así
room-misread = ¿Quito { $parts }?
room-undone = Deshecho: { $what }.
room-undone-by = Deshecho: { $what } ({ $name }, { $at }).
room-undone-what = { $change ->
    [back-on] el ave otra vez al fuego
    [unmarked] la corrección de «{ $step }»
    [done] «{ $step }» hecho
    [skipped] «{ $step }» saltado
    [take] «{ $step }» asignado
    [drop] «{ $step }» soltado
    [moved] la nueva hora
    [dish] el cambio de platos
    [logged] la última lectura
   *[other] el cambio de plan
}
room-undone-dish = { $how ->
    [added] añadir «{ $name }»
    [gone] quitar «{ $name }»
   *[changed] el cambio de «{ $name }»
}
room-undo-nothing = No hay nada que deshacer.
room-undo-stale = Desde entonces ha pasado algo más. /undo deshace primero lo más nuevo.
room-undo-gone = Eso ya está deshecho.
room-undo-theirs = El último cambio es de { $name }: { $what }. Solo esa persona, quien lleva el plan o un administrador puede deshacerlo.
# Una marca que ya no es un desliz: solo puede irse la marca, no lo hecho con la comida.
room-undo-sure = «{ $step }» se marcó como hecho, { $at }. ¿Fue un error? Solo se quita la marca; lo hecho al ave hecho queda.
room-undo-sure-by = { $name } marcó «{ $step }» como hecho, { $at }. ¿Fue un error? Solo se quita la marca; lo hecho al ave hecho queda.
room-button-undo-sure = Error, deshacer
room-undo-rests = «{ $step }» se queda: después vino «{ $later }», { $at }. Eso ya no se deshace.
room-undo-rests-read = «{ $step }» se queda: después se midió el ave, { $at }. Eso ya no se deshace.
room-undo-late = Eso ya no se puede deshacer. El plan se queda como está.
room-stop-sure = ¿Terminar el plan de { $dinner }? Dejaría de avisar.
room-stopped = Terminado. Ya no aviso.
room-stopped-calendar = Si está en tu calendario, /export lo quita.
room-stopped-back = Durante una hora puedes decir «sigue en pie».
room-stopped-told = La cena de { $dinner } se cancela. No tienes que hacer nada.
room-back-again = Sigue en pie: cena <b>{ $dinner }</b>.
room-kept-going = Bien, todo sigue igual.
room-eve = Mañana:
room-eve-job = { $when } · { $what }
room-eve-early = Es temprano: pon también un despertador a las { $at }, por si el teléfono está en silencio.
room-forget-sure-me = Guardo { $things }. ¿Lo borro todo? En los grupos, lo que hiciste queda hecho, sin tu nombre.
room-forget-sure-group = Guardo { $things }. ¿Lo borro todo, para todos? Lo que guardo de cada persona se queda hasta que me lo pida en privado.
room-kept-name = tu nombre
room-kept-settings = tus ajustes
room-kept-salt = tu sal
room-kept-cooker = tu horno o ahumador
room-kept-fridge = tu { -fridge }: { -shelves } y temperatura
room-kept-learned = cómo se asa en tu casa
room-kept-notes = notas de cenas pasadas
room-kept-plan = lo que planeas aquí conmigo
room-kept-question = tu última pregunta
room-kept-groups = tus tareas, lecturas y enlaces en grupos
room-kept-title = el nombre y los ajustes de este chat
room-kept-members = quién está en él
room-kept-jobs = el plan con sus tareas y quién las tiene
room-kept-readings = las lecturas
room-kept-said = planes a medias y preguntas
room-kept-links = enlaces al chat privado
room-forgotten = Borrado.

# ---- lecturas
room-log-how = Dime lo que marcan los termómetros: «{ units-example-log }». Puedes añadir la hora: «a las 14:05».
room-frozen-on = Déjala en el calor: tarda hasta la mitad más.{ $smoker ->
    [yes] {" "}Un ahumador es demasiado lento para eso: pásala a un horno a { $oven }.
   *[no] {""}
}{" "}Saca { -giblets(form: "the") } cuando se suelten, y fuera solo a { $target } en todas partes.
room-log-noted = Anotado: { $parts }.
room-log-spot = { $spot ->
    [breast] pechuga { $temperature }
    [thigh] muslo { $temperature }
    [wing] ala { $temperature }
    [stuffing] relleno { $temperature }
    [oven] horno { $temperature }
   *[pit] aire { $temperature }
}
room-log-on-unsaid = Nadie me ha dicho que el ave ya se está asando. ¿Es así?
room-log-both = { $target } en las dos. Mira también lo más hondo del ala; si también está, fuera.
room-log-all = { $target } en pechuga, muslo y ala: fuera.
room-log-too-long = Ahora { $target }, pero estuvo más de dos horas sin calor: cocerla no lo arregla. Yo no la serviría.
room-log-thigh-behind = La pechuga está, el muslo no. Sigue dentro hasta que el muslo marque { $target } también.
room-log-wing-behind = Pechuga y muslo puede que estén, el ala no. Sigue dentro hasta que lo más hondo del ala marque { $target } también.
room-log-breast-behind = El muslo está, la pechuga no. Sigue dentro hasta que la pechuga marque { $target } también.
room-log-stuffing-behind = Pechuga y muslo están, el relleno no. Sigue dentro hasta que el relleno marque { $target } también.
room-log-stuffing-unread = Pechuga y muslo ya están. Ahora el centro del relleno: el ave sigue dentro hasta que marque { $target } también.
room-log-asked-not = No: { $spot ->
    [breast] la pechuga
    [thigh] el muslo
    [wing] el ala
   *[stuffing] el relleno
} tiene que llegar a { $target }.
room-log-one-spot = { $target } en un punto. Mira los demás antes de fiarte: lo más grueso de la pechuga, lo más hondo del muslo y del ala.
room-log-doubt = ¿{ $spot ->
    [breast] Pechuga
    [thigh] Muslo
    [wing] Ala
    [stuffing] Relleno
    [oven] Horno
   *[pit] Aire
} a { $given }? Esperaría entre { $low } y { $high }, así que no lo he anotado.{ $celsius ->
    [yes] {" "}Si eran °C, escríbelo con C: «58C».
   *[no] {" "}Míralo otra vez y mándalo de nuevo.
}
room-log-fell = ¿{ $spot ->
    [breast] Pechuga
    [thigh] Muslo
    [wing] Ala
    [stuffing] Relleno
    [oven] Horno
   *[pit] Aire
} a { $given }? Antes marcaba { $last }, y asándose la carne no se enfría así. ¿Falta una cifra o se movió la sonda? No lo he anotado; manda lo que marca ahora.
room-when = Fuera del fuego entre { $from } y { $to }. En la mesa { $dinner }.
room-when-off = Fuera del fuego desde { $since }.{ $eaten ->
    [no] {" "}En la mesa { $dinner }.
   *[yes] {""}
}
room-when-dinner = Ahora no se está asando nada. En la mesa { $dinner }.

# ---- ajustes
room-settings-yours = <b>Tus ajustes</b>
room-settings-rooms = <b>Ajustes de este chat</b>
room-settings-language = Idioma: { $language }
room-settings-units = Unidades: { $chosen }
room-settings-spoons = Cucharas: { $spoons }
room-settings-zone = Zona horaria: { $zone } (ahora { $now })
room-settings-zone-unset = Zona horaria: sin poner
room-settings-quiet = Horas tranquilas: de { $from } a { $to }
room-settings-quiet-none = Horas tranquilas: ninguna
room-settings-quiet-unread = Horas tranquilas como en «silencio de 22:00 a 7:00», o «silencio nunca».
room-settings-button-language = Idioma
room-settings-button-units = Unidades
room-settings-button-spoons = Cucharas
room-settings-button-zone = Zona horaria
room-settings-button-quiet = Horas tranquilas
room-settings-pick-language = ¿Qué idioma?
room-settings-pick-units = ¿Qué unidades?
room-settings-pick-spoons = ¿Cucharas y tazas de dónde?
room-settings-salt = Tu sal: { $weighs } g la cucharadita
room-settings-salt-none = Tu sal: aún no me la has dicho
room-settings-cooker = Tu horno o ahumador: { $cooker }
room-settings-cooker-none = Tu horno o ahumador: lo pregunto cada vez
room-settings-fridge = Tu { -fridge }: { $at }
room-settings-fridge-none = Tu { -fridge }: sin medir
room-settings-button-salt = Mi sal
room-settings-button-cooker = Mi horno
room-settings-button-fridge = Mi { -fridge }
room-settings-pick-salt = Dime lo que dice el paquete: «mi sal: 1/4 cdta son { units-example-salt }». Desde entonces cuento con ella.
room-settings-salt-drop = Olvida mi sal
room-settings-pick-cooker = ¿Dónde sueles asar un ave? Un plan que no diga otra cosa es para eso.
room-settings-cooker-any = Pregúntame cada vez
room-settings-pick-fridge = ¿Qué marca un termómetro en tu { -fridge }?
room-settings-fridge-unknown = Sin medir
room-settings-shelves = { -shelves(form: "Title") } { -fridge(form: "of") } para una cena: { $count }
room-settings-shelves-none = { -shelves(form: "Title") } { -fridge(form: "of") } para una cena: sin decir
room-settings-button-shelves = { -shelves(form: "Title") }
room-settings-pick-shelves = ¿Cuántas { -shelves } de tu { -fridge } quedan libres para una cena? El ave ocupa una, un plato media, y te aviso si no cabe.
room-settings-shelves-unknown = No lo mires
room-settings-pick-zone = ¿Dónde está la cocina? Escribe una ciudad o una zona horaria, «Chicago» o «Europe/Madrid», o mándame tu ubicación. El lugar no se guarda.
room-settings-pick-zone-group = ¿Dónde está la cocina? Dímelo con «/settings Chicago»; también vale una zona como «Europe/Madrid».
room-settings-pick-quiet = ¿Cuándo te dejo en paz? Lo que tú tomaste, y la seguridad, llega igual.
room-language-en = English
room-language-es = Español
room-language-fr = Français
room-language-de = Deutsch
room-language-pt = Português (Brasil)
room-language-it = Italiano
room-units-us = libras, °F
room-units-metric = kilos, °C
room-spoons-us = EE. UU. (4,93 / 14,8 / 237 ml)
room-spoons-metric = métricas (5 / 15 / 250 ml)
room-spoons-uk = Reino Unido (5 / 15 ml)
room-spoons-australia = Australia (5 / 20 / 250 ml)
room-quiet-span = de { $from } a { $to }
room-quiet-none = Ninguna
room-zone-choice = { $zone }
room-zone-which = Hay más de una. ¿Cuál?
room-zone-unknown = No conozco «{ $text }» como lugar. ¿Una ciudad más grande cerca, o una zona como «Europe/Madrid»?
room-zone-nowhere = Ahí no sé qué hora es. ¿Me escribes una ciudad?
room-zone-set = { $zone } entonces: allí es { $now }.

# ---- salar
room-dose-total = { $grams } en total, que son { $spoons } de { $salt ->
    [own] tu sal
    [table] sal de mesa
   *[flake] kosher en escamas
}.
room-dose-places = { $places }.
room-dose-place = { $spoons } { $place ->
    [cavity] en el hueco
    [bone-side] por el lado del hueso
    [breast] { $count ->
        [one] bajo la piel de la pechuga
       *[other] bajo la piel de cada pechuga
    }
    [thigh] bajo la piel de cada { -thigh }
    [drumstick] bajo la piel de cada { -drumstick }
   *[skin] sobre la piel
}
room-dose-skin = La de la piel va mezclada con otro tanto de pimienta y otro tanto de { -baking-powder }.
room-dose-none = Esta no lleva sal: con el { $percent } % de solución que le puso el envasador ya basta.
room-dose-presalted = A esta no se le echa sal: dijiste que ya viene salada.
room-dose-light = Poca sal: el envasador ya le puso un { $percent } % de solución.
room-salted-by = { $name } ya la saló, { $at }. Si de verdad lleva sal dos veces:
room-salted = Ya está salada, desde { $at }.
room-salt-then = Se sala { $salt } y luego { -fridge(form: "in") }, sin tapar, hasta ponerla al fuego, { $on }.
room-salt-straight = Se sala { $salt }, fuera del agua y seca, y va directa al fuego, { $on }.
room-salt-no-rest = Este plan no lleva reposo con sal: pónsela justo antes de ponerla al fuego, { $on }.
room-button-sources = ¿De dónde sale?
room-question-gone = Esa pregunta queda muy atrás. ¿Me la haces otra vez?
room-sources = Los números salen de:
room-too-long = Son { $length } caracteres, más de lo que leo de una vez ({ $most } como mucho). Con una o dos frases basta.
room-proposal-night = De noche: { $jobs }.
room-pack-warm = Salió a las { $off }, así que aún no está fría: comida o en { -fridge(form: "a") } antes de las { $by }, también en hielo, salvo que siga a { $hot } o más. ¿Dudas? A la basura.
room-chill-late = Fue después de { $by }. Lo que estuvo fuera más de dos horas se tira, aunque tenga buena pinta.
# $jobs: what was planned for it and is called for no more.
room-chill-ended = Así que esto ya no toca: { $jobs }. ¿Sí estaba a tiempo? Deshacer.
room-limit-chill = Se acabaron las dos horas. Lo que siga fuera y no se haya mantenido a 60 °C o más se tira.
room-limit-chill-hot = Con este calor se acabó la hora. Lo que siga fuera y no se haya mantenido a 60 °C o más se tira.
# What is said of how long it has been out, and the clock kept: the stricter. $since: from when it counts; $off: when it was told to be off.
room-out-clock = Cuento desde las { $since }{ $from ->
    [read] , la última lectura caliente
    [heat] , cuando salió del fuego
   *[other] {""}
}: comido o { -fridge(form: "in") } antes de las { $by }.
room-out-clock-over = Cuento desde las { $since }{ $from ->
    [read] , la última lectura caliente
    [heat] , cuando salió del fuego
   *[other] {""}
}: el tiempo acabó a las { $by }. Lo que no se mantuvo a { $hot } o más se tira.
room-out-earlier = Fuera desde las { $since } es antes de las { $off }, cuando para mí salió del fuego; ahora cuento desde las { $since }: comido o { -fridge(form: "in") } antes de las { $by }.
room-out-earlier-over = Tíralo: fuera desde las { $since }, antes de las { $off }, cuando para mí salió del fuego. El tiempo acabó a las { $by }.
room-never-off = Nadie me ha dicho cuándo salió del fuego. Si salió { $when }, como estaba previsto, hay que comerlo o meterlo { -fridge(form: "in") } antes de las { $by }; si salió antes, más pronto. Salvo que siga a { $hot } o más.
room-never-off-over = Nadie me ha dicho cuándo salió del fuego. Si salió { $when }, como estaba previsto, el tiempo acabó a las { $by }: guarda solo lo que ya estaba { -fridge(form: "in") } o siguió a { $hot } o más. El resto se tira.
room-never-off-unread = Y nadie ha medido { $target } en pechuga, muslo y ala: sin eso no es seguro comerlo.
room-raw-eve = El ave fresca tiene que estar al fuego o en el congelador antes de { $until }. Se come { $dinner }.
room-raw-over = El ave fresca ya no aguanta más en frío: al fuego o al congelador ahora. Después no puedo darla por segura.
room-hello = Hola. Dime el ave, el día y cuántos a la mesa: «pavo congelado de { units-example-bird }, cena el domingo a { units-example-hour }, 10 personas». O pregúntame lo que sea.
room-amended = De acuerdo: { $known }.
room-unbought = Sin comprar todavía, entiendo. La compra queda ahora para { $when } y lo demás va según eso.
room-unthawed = Sin descongelar todavía, entiendo. Ahora empieza { $when } y lo demás va según eso.
room-whether-bought = Nadie lo ha dicho: ¿está comprada el ave?
room-unlit = Entonces enciéndelo ahora, a { $setting }: el ave entra hacia { $when }, ya con calor, y hasta entonces espera en frío.
room-oven-free = El horno queda libre cuando sale el ave, hacia { $off }, hasta { $carve }. Decide { $host }.
room-whether-thawing = Nadie lo ha dicho: ¿se descongela el ave desde { $since }?
room-swap-keeps = Fresca aguanta dos días como mucho: cómprala { $when }, no antes, salvo que la fecha del envase lo permita. ¿Ya está en casa? Dímelo.
room-button-have-it = Ya la tenemos
room-button-not-yet = Todavía no
room-amend-told = Según { $name }: { $change }. ¿También en el plan, { $host }?
room-button-amend = Cambiar el plan
room-not-done = Bueno es saberlo: { $what } sigue pendiente.
room-stays-on = De acuerdo: sigue al calor.
room-water-not = ¿El agua sigue fría, a { $cold } o menos? Cámbiala ya y sigue. Si estuvo más templada más de { $limit }: tira el ave.
room-thaw-early = Es pronto: en agua fría se descongela hacia { $thawed } y se asa { $on }. Ya descongelado: fuera del agua y { -fridge(form: "to") }, a { $cold } o menos. O para ahora: { -fridge(form: "to") }, «Deshacer», y al agua desde { $water }.
room-thaw-water = En agua fría se descongela hacia { $thawed }: cambia el agua cada { $every }. Luego fuera del agua y { -fridge(form: "to") }, a { $cold } o menos; se asa { $on }. ¿Mejor como estaba? Ahora { -fridge(form: "to") }, y «Deshacer».
room-thaw-long = Está descongelado desde { $thawed }. ¿El agua sigue a { $cold } o menos? { -fridge(form: "To") } ya. Si estuvo más templada más de { $limit }: tira el ave.
room-thaw-out = Ya está descongelado: fuera del agua y { -fridge(form: "to") } en una fuente, a { $cold } o menos. No más agua. ¿Queda hielo dentro? Cambia el agua y sigue. Se asa { $on }.
room-ok = Bien.
room-yes-what = ¿Sí a qué? No he cambiado nada. Dilo entero: «cena a las 17».
room-fine = De acuerdo.
room-unsaid = Nadie lo ha dicho todavía.
room-not-yet = De acuerdo, todavía no.
room-when-step = { $what }: { $when }.
room-when-none = En este plan no hay «{ $what }».
room-hour-fits = { $what }: { $asked } vale, como cualquier hora entre { $from } y { $to }. Dime cuando esté hecho.
room-hour-early = { $what }: { $asked } es demasiado pronto. Desde { $from }; previsto { $planned }.
room-hour-late = { $what }: { $asked } es demasiado tarde. Hasta { $to }; previsto { $planned }.
room-hour-only = { $what }: en este plan solo vale { $planned }.
room-who-has = { $what }, { $when }: { $name }.
room-who-nobody = Aún no lo tiene nadie: { $what }, { $when }.
room-day-free = Ese día no queda nada por hacer.
room-ice = Menos mal que miraste. Sigue { -fridge(form: "in") }, y desde { $when } lo termina el agua fría; luego directo a asar.
room-ice-now = Menos mal que miraste. Entonces termina ahora en agua fría, en una bolsa bien cerrada; luego directo a asar.
room-ice-early = Es normal. Déjalo { -fridge(form: "in") } y mira otra vez { $when }: si aún hay hielo, el agua fría lo termina a tiempo.
room-ice-roast = Menos mal que miraste. El agua tardaría demasiado: a las { $when } va al horno tal cual, sin relleno.
room-ice-roast-now = Menos mal que miraste. El agua tardaría demasiado: al horno ya, tal cual, sin relleno.
room-ice-done = Hasta la mitad más de tiempo; { -giblets(form: "the") } fuera en cuanto se suelten; { $target } en todas partes.
room-never-fridge = Aún no pasa nada: a la nevera ya, en una bandeja.
room-never-both = A la nevera ya, en una bandeja; desde { $when } lo termina el agua fría.
room-never-water = Entonces lo hace el agua fría, desde { $when }, en una bolsa bien cerrada; y directo al calor.
room-never-water-now = Entonces lo hace el agua fría, ya, en una bolsa bien cerrada; y directo al calor.
room-never-roast = No da tiempo a descongelarlo: { $when } va al horno congelado, sin relleno.
room-never-roast-now = No da tiempo a descongelarlo: al horno congelado ya, sin relleno.
# $when: the next job with it.
room-thawed = Descongelado: ¿sin hielo en la cavidad y las patas se mueven? Entonces se queda { -fridge(form: "in") } hasta { $when }.
# Descongelada en agua se cocina enseguida. $when: su hora al fuego; far: horas después, o mañana.
room-thawed-water = Descongelada en agua: ¿sin hielo dentro, las patas se mueven? Lo mejor es cocinarla ya. Si no, fuera del agua, a la nevera a { $cold } o menos, y al fuego { $when } como muy tarde.
room-thawed-water-far = Descongelada en agua se cocina enseguida y no espera en la nevera hasta { $when }. Cocínala ahora; cortada y fría, se recalienta a { $target } para la comida.
room-stuffing-out = Anotado: el relleno se termina aparte, hasta { $target } en el centro. Para el ave cuentan ahora pechuga, muslo y ala, a { $target } cada uno.
room-thawed-now = Descongelado: ¿sin hielo en la cavidad y las patas se mueven? Entonces, adelante.
room-log-when = ¿A qué hora fue? Dímelo con la hora, así: «pechuga 35 a las 13:30». Sin hora lo tomaría por ahora.
room-heat-set = Anotado: { $setting } desde ahora.
room-heat-moved = Anotado: desde ahora en { $cooker ->
    [smoker] el ahumador
    [fan-oven] el { -fan-oven }
   *[oven] el horno
 } a { $setting }.
room-leftovers-until = Las tuyas: comidas o congeladas antes del { $when }, si fueron { -fridge(form: "to") } a tiempo.
room-leftovers-over = A las tuyas se les pasaron los días ({ $when }): tira lo que no esté congelado.
room-leftovers-if = Solo lo que fue { -fridge(form: "to") } en dos horas; el resto se tira.
room-ok-due = Bien. Di «hecho» cuando esté: { $what }.
room-ok-which = ¿Cuál? Tócala y queda hecho.
room-welcome = Cuando quieras.
room-amend-clash = Así no encaja. El plan se queda como está.
room-undone-dinner = Vuelve a ser { $when }.
room-already-you = Ya lo hiciste: { $at }.
room-proposal-carry = Se asa en casa el día antes, se lleva frío y se recalienta allí. Si lo asas allí, di «lo aso allí».
room-proposal-hot = Se lleva caliente: entera y envuelta, comida antes de { $most } desde que sale del fuego ({ $hour } si fuera hace más de { $air }). Más, solo mientras marque { $hot } o más. ¿Mejor fría? Di «la llevamos fría».
room-proposal-or-hot = ¿Mejor caliente? Di «la llevamos caliente».
room-hour-there = Esa hora es ahora la de allí: { $there }. Si era la hora de casa, di «cena { $home }».
room-proposal-not-hot = Asada el día antes no puede ir caliente. Para eso di «la llevamos caliente»: entonces se asa el mismo día.

# ---- /export: una línea con cada archivo.
room-export-calendar = El plan para tu calendario. No sigue los cambios: pídelo otra vez y las horas nuevas sustituyen a las viejas.
room-export-calendar-ended = Ábrelo en tu calendario y se van las tareas del plan terminado.
room-export-page = Una página para la puerta { -fridge(form: "of") }. Imprímela y ve marcando.
room-export-readings = Las temperaturas, para una hoja de cálculo.
room-export-everything = Todo lo que guardo de este chat.
room-shift-more = … y { $count } más se mueven también.
room-pull-sure = { $spot ->
    [thigh] El muslo
    [wing] El ala
    [stuffing] El relleno
   *[breast] La pechuga
} marcaba { $read } a las { $at }, y sale a { $target }. ¿Los marca ahora?
room-carve-under = { $spot ->
    [thigh] El muslo
    [wing] El ala
    [stuffing] El relleno
   *[breast] La pechuga
} marcaba { $read } a las { $at }, y nadie dijo más. Por debajo de { $target } sigue asándose antes de que nadie coma: mide primero.
room-no-heat = ¿Sin calor desde { $since }? Dime cuándo vuelve o dónde está el ave ahora. Si antes de { $until } no llega a { $hot }, se tira.
room-no-heat-over = Dos horas sin calor, desde { $since }: lo que marque menos de { $hot } se tira. Más caliente en todas partes, puede seguir hasta { $target }.
room-eat-cooking = Todavía no: solo es segura a { $target } en pechuga, muslo y ala.
room-call-carve-unsaid = ¿Ya está fuera? Nadie me lo ha dicho. Se saca solo a { $target } en pechuga, muslo y ala; con menos, sigue dentro.
room-back-on = Otra vez al fuego. Se saca solo a { $target } en lo más grueso de la pechuga, el interior del muslo y el ala: mide otra vez a { $look }.
room-carve-unread = ¿Marcaba { $target } en pechuga, muslo y ala? Nadie me lo ha dicho. Si no lo sabes, mide ahora: si es menos, vuelve al fuego antes de que nadie coma.
room-button-reads-now = Sí, ahora sí
room-button-stays-on = Sigue dentro
room-done-which = ¿Ya fuera del fuego o solo lo miraste? Sale solo a { $target } en pechuga, muslo y ala.
room-button-looked = Solo miré
room-hold = Se trincha a las { $carve }. ¿Estará hasta entonces a { $hot } o más, tapada y con el termómetro puesto? Si no, trinchada, comida y { -fridge(form: "in") } antes de las { $by }.
room-hold-packed = Se envuelve a las { $pack }. ¿Estará hasta entonces a { $hot } o más, tapada y con el termómetro puesto? Si no, comida y { -fridge(form: "in") } antes de las { $by }.
room-report-early = «{ $what }» está para { $when }. ¿De verdad está hecho ya?
room-aside-ask = ¿Es por el ave? Toca «{ $what }».
room-two-thermometers = Fíate del más bajo, { $low }. Comprueba los dos en agua con hielo: más hielo que agua, removida, deben marcar { $ice }. Y dime el sitio: pechuga, muslo o ala.
room-wandering = Por ahora cuenta lo más bajo: { $low }. Pincha otra vez en lo más grueso, sin tocar hueso, espera a que se pare y dime esa.
room-digits-apart = ¿Es { $parts }? Todavía no lo he contado.
room-oven-cool = Demasiado frío para aves: a { $limit } o más ya, o a otro horno. Hasta entonces tarda más de lo previsto; dime pechuga y muslo y te digo cuánto.
room-foil-off = Sí, suelto, mientras reposa: al menos { $least }, y no más de lo que tardes en trinchar. Apretado ablanda la piel.
room-fridge-bird = El ave que está dentro: descongelada y a más de { $cold } durante más de { $limit }, se tira; cocinarla no lo arregla. Mídela ya. Si sigue dura de hielo o a { $cold } o menos por dentro, a un sitio más frío ahora mismo.
room-button-held = Se mantiene caliente
# $off: when it was last known to be hot; $by: two hours later.
room-held = Bien: tapada y con el termómetro puesto. Dime qué marcan pechuga y muslo: a { $hot } o más, las dos horas cuentan desde ahí. Sin lectura cuentan desde las { $off }, hasta las { $by }.
room-hold-broken = { $at } es menos de { $hot }: así no se mantiene caliente. Trinchada, comida y { -fridge(form: "in") } antes de las { $by }, dos horas desde que { $from ->
    [read] lo marcó por última vez
   *[heat] salió
}.
room-own-salt-kept = Desde ahora cuento con ella.
