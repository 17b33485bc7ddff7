### Respuestas a preguntas rápidas. Amounts, temperatures, spans come written for the reader already.
### First the answer, then what to take care of; each line stands by itself.

ask-unknown = No lo leo como pregunta. Pregúntame por sal (2 cdas de sal de mesa en kosher en escamas), tiempos (cuánto tarda en descongelar { units-example-bird }), raciones (qué tamaño para 11 personas), seguridad (¿70 °C por 2 minutos es seguro?) o unidades (325 °F en °C).
ask-no-amount = Eso no es cantidad de nada. Dime una mayor que cero, por ejemplo 2 cdas.
ask-no-span = Necesito un tiempo con el que contar, por ejemplo 24 h.
ask-no-mark = Ningún horno de gas tiene esa marca. Van ¼, ½ y de 1 a 10: de 107 a 260 °C.
ask-no-temperature = Eso no es una temperatura. Por ejemplo: 325 °F en °C.
ask-no-substance = De cucharas a peso depende de lo que llevan. Sé de sal y mantequilla: 2 cdas de sal de mesa en gramos.
ask-no-serving = Eso no es una ración de esta ave. Por ejemplo: sodio en un pavo de { units-example-bird } para 11 personas.
# $reason is half a sentence from the plan.
ask-impossible = No puede ser: { $reason }.

# What is asked back. The reply is put behind the question.
ask-back-mass = ¿Cuánto pesa el ave? Por ejemplo: { units-example-bird }.
ask-back-how-much = ¿Cuánta { $salt }? Por ejemplo: 2 cdas.
ask-back-kosher = ¿Qué sal kosher? La gruesa pesa casi el doble por cuchara que la de escamas.
ask-back-own-salt = Aún no conozco tu sal. Léeme su paquete, por ejemplo: mi sal: 1/4 cdta es { units-example-salt }.
ask-back-water = ¿Cuánta agua, o cuánto pesa el ave? Por ejemplo: 4 litros, o { units-example-bird }.
ask-back-scale = ¿{ $n } en °C o en °F? Cambia todo.
ask-back-how-long-out = ¿Cuánto tiempo estuvo fuera? Por ejemplo: 3 horas.
ask-back-fuel-time = ¿Para cuánto tiempo? Por ejemplo: 4 h.
ask-back-hours-3 = 3 horas
ask-back-hours-5 = 5 horas
ask-fahrenheit = °F
ask-celsius = °C

# Names inside sentences.
ask-kind-turkey = pavo
ask-kind-turkey-breast = pechuga de pavo
ask-kind-chicken = pollo
ask-kind-capon = capón
ask-kind-duck = pato
ask-kind-goose = ganso
ask-bird = { $condition ->
    [frozen] { $kind } de { $mass } del congelador
    [part-thawed] { $kind } de { $mass } a medio descongelar
   *[fresh] { $kind } de { $mass }
}
ask-salt-table = sal de mesa
ask-salt-fine-sea = sal marina fina
ask-salt-pickling = sal para encurtir
ask-salt-flake-kosher = sal kosher en escamas
ask-salt-coarse-kosher = sal kosher gruesa
ask-salt-coarse-sea = sal marina gruesa
ask-salt-own = tu propia sal
ask-food-raw-whole = Ave cruda
ask-food-raw-pieces = Piezas crudas
ask-food-raw-duck-or-goose = Pato o ganso crudo
ask-food-giblets = Menudillos crudos
ask-food-leftovers = Ave cocinada y sobras
ask-food-cooked-pieces = { -slices(form: "Title") } cocinadas
ask-food-cooked-in-gravy = Ave cocinada en salsa
ask-food-gravy = Salsa y caldo
ask-food-stuffing = Relleno cocinado
ask-food-stuffing-and-gravy = Relleno y salsa
ask-food-soup = Sopa y guiso

ask-seconds = { $n } s
ask-minutes = { $n } min
ask-amount = { $unit ->
    [milligram] { $n } mg
    [gram] { $n } g
    [kilogram] { $n } kg
    [pound] { $n } lb
    [metric-pound] { $n } × 500 g
    [ounce] { $n } oz
    [stick] { $n ->
        [one] { $n } barrita de mantequilla
       *[other] { $n } barritas de mantequilla
    }
    [pinch] { $n ->
        [one] { $n } pizca
       *[other] { $n } pizcas
    }
    [second] { $n } s
    [minute] { $n } min
    [hour] { $n } h
    [day] { $n ->
        [one] { $n } día
       *[other] { $n } días
    }
    [teaspoon] { $n } cdta
    [tablespoon] { $n } cda
    [cup] { $n ->
        [one] { $n } taza
       *[other] { $n } tazas
    }
    [fluid-ounce] { $n } fl oz
    [pint] { $n } pt
    [quart] { $n } qt
    [gallon] { $n } gal
    [milliliter] { $n } ml
    [liter] { $n } l
    [fahrenheit] { $n } °F
    [celsius] { $n } °C
    [gas-mark] marca de gas { $n }
    [thermostat] thermostat { $n }
   *[other] { $n }
}

# ---- salt
ask-salt-convert = { $given } de { $from } = { $volume } de { $to } ({ $mass }).
# $rule and $mass are percentages of the volume.
ask-salt-rule-holds = Regla de cocina: { $rule } % del volumen. Por peso es { $mass } %: la regla vale.
ask-salt-rule-fails = Regla de cocina: { $rule } % del volumen. Por peso es { $mass } %; me guío por el peso.
ask-salt-weighs = { $volume } de { $salt } = { $mass }.
ask-dose = Para { $bird }: { $volume } de { $salt } en total ({ $mass }, { $strength ->
    [light] suave
    [bold] fuerte
   *[usual] la dosis normal
}).
ask-dose-shares = Se reparte así: { $shares }.
ask-dose-share = { $place ->
    [cavity] { $volume } en la cavidad
    [bone-side] { $volume } por el lado del hueso
    [breast] { $count ->
        [one] { $volume } bajo la piel de la pechuga
       *[other] { $volume } en cada pechuga
    }
    [thigh] { $volume } en cada { -thigh }
    [drumstick] { $volume } en cada { -drumstick }
   *[skin] { $volume } en la piel
}
ask-dose-skin = Para la piel, mézclala con otro tanto de pimienta y, para que quede crujiente, de { -baking-powder }.
ask-oversalt-given = { $mass } ({ $salt })
ask-oversalt-much = Sí: unas { $times } veces lo que toca. Son { $given }, y esta ave pide { $dose }.
ask-oversalt-a-little = Un poco: son { $given }, y esta ave pide { $dose }. Déjala así y ve con cuidado con la sal de la salsa.
ask-oversalt-right = No, está bien: { $given }, y esta ave pide { $dose }.
ask-oversalt-little = No, más bien poca: son { $given }, y esta ave pide { $dose }.
ask-salt-enough-much = De sobra, unas { $times } veces lo que toca: son { $given }, y esta ave pide { $dose }.
ask-salt-enough-a-little = Sí, un poco de más: son { $given }, y esta ave pide { $dose }.
ask-salt-enough-right = Sí, está bien: { $given }, y esta ave pide { $dose }.
ask-oversalt-double = Sí, el doble de sal es demasiado.
ask-oversalt-fresh = Quita ya con la mano la que esté encima. Si no hay más remedio que enjuagar, despacio y sin salpicar; luego sécala y friega bien el fregadero: enjuagar reparte gérmenes.
ask-oversalt-soaked = Ya entró: quita la que siga encima, sin enjuagar.
ask-oversalt-either = En la primera hora, quítala con la mano. Si no hay más remedio que enjuagar, despacio y sin salpicar; luego sécala y friega bien el fregadero: enjuagar reparte gérmenes. Después ya entró: solo con la mano.
ask-oversalt-beside = Nada de sal en la salsa ni en el relleno. Estropea el sabor y no hace daño, salvo a quien deba evitar la sal.
ask-dose-per-lb = { $volume } de { $salt } por libra de ave ({ $mass }).
ask-dose-per-kg = { $volume } de { $salt } por kilo de ave ({ $mass }).
ask-spoon-weights = { $volume } pesa: { $weights }.
ask-spoon-weight = { $mass } de { $salt }
ask-dose-rest = Luego 24 h o más { -fridge(form: "in") }, sin tapar; { $longest } como mucho.
ask-dose-none = { $percent } % de solución: ya la saló el envasador. Ni más sal ni salmuera.
ask-dose-light = Lleva { $percent } % de solución, así que la dosis es suave.
ask-brine = Salmuera al { $percent } %: { $mass } de sal en { $water } de agua. Son { $volume } de { $salt }.
ask-brine-strength = { $given } % no cabe en agua fría, o no es nada. De más de 0 a { $high } %, por ejemplo: salmuera al 6 % para 4 litros.
ask-brine-other = Por ciento de toda la salmuera; sobre el agua sola es { $percent } %.
ask-brine-time = Tarda { $time }, en una olla de { $vessel }.
ask-brine-usual = Aves de { $low } a { $high }: { $time }.
ask-brine-cold = Ave y salmuera a { $cold } o menos, 48 h como mucho.
ask-depth = Tras { $rest } { -fridge(form: "in") } la sal ha entrado unos { $depth } mm (de { $low } a { $high }).
ask-depth-pork = Ahí ha llegado una décima de la sal de la superficie. Medido en cerdo; para pavo nadie lo ha publicado.
ask-sodium = Para { $bird } con la sal normal, { $who }: unos { $expected } mg de sodio (de { $low } a { $high }).
ask-sodium-one-of = { $people ->
    [one] para una persona
   *[other] una de { $people } raciones
}
ask-sodium-grams = { $mass } de carne cocinada
ask-sodium-day = Es del { $low } al { $high } % de los { $daily } mg de un día.
ask-sodium-care = Es una estimación: si el sodio importa para tu salud, pregunta a tu médico.
ask-own = Tu sal: { $teaspoon } la cucharadita, { $tablespoon } la cucharada.
ask-own-not-plain = Sodio y peso no cuadran con sal pura. Mira la etiqueta, por ejemplo: mi sal: 1/4 cdta tiene 280 mg de sodio.
ask-own-density = Ninguna sal es tan ligera o pesada: una cucharadita pesa de 1,5 a 8 g. Mira la cuchara, por ejemplo: mi sal: 1/4 cdta es { units-example-salt }.

# ---- the bird
ask-thaw = Para { $bird }: { $fridge } { -fridge(form: "in") }, o { $water } en agua fría cambiada cada { $every }.
# $at is what the person's own fridge shows, $cold the most it may.
ask-fridge-warm = Tu { -fridge } está a { $at }: por encima de { $cold } nada de eso vale. Baja su temperatura y compruébala antes de meter el ave.
ask-thaw-care = Descongelada { -fridge(form: "in") } aguanta { $keeps }; en agua, cocínala enseguida. Nunca en { -counter }.
ask-roast = Para { $bird }, { $cooker ->
    [fan-oven] { -fan-oven }
    [smoker] ahumador
   *[oven] horno
} a { $setting }: { $time }, lo más probable { $middle }.
ask-roast-done = Manda el termómetro, no el reloj: { $target } en pechuga, muslo y ala.
ask-roast-practice = En parte es experiencia de cocina, no tabla publicada.
ask-bird-for = { $people ->
    [one] Una persona: de { $low } a { $high } de { $kind }.
   *[other] { $people } personas: de { $low } a { $high } de { $kind }.
}
ask-bird-for-exactly = { $people ->
    [one] Una persona: { $low } de { $kind }.
   *[other] { $people } personas: { $low } de { $kind }.
}
ask-portion = De { $low } a { $high } de { $kind } por persona, tal como se compra, con huesos.
ask-bird-for-several = Mejor { $birds } aves de { $low } a { $high } cada una.
ask-bird-for-leftovers = Para que sobre, de un cuarto a la mitad más.
ask-people-for = Con { $bird } comen de { $low } a { $high }, o { $some } si debe sobrar.
ask-fuel = { $fuel ->
    [charcoal] Carbón
    [propane] Propano
   *[pellets] Pellets
} para { $span } a unos 165 °C: de { $low } a { $high }. Experiencia, no tabla; ten la mitad más a mano.
ask-fuel-bottle = Una bombona llena tiene { $bottle }.
ask-fuel-care = Solo al aire libre, nunca en casa, garaje o tienda de campaña.

# ---- safety
ask-lethality-enough = Sí, según la tabla: { $at } en el punto más frío pide { $needed }, y fueron { $held }.
ask-lethality-not-yet = Aún no: { $at } en el punto más frío pide { $needed }. Faltan { $missing }.
ask-lethality-never = No. Por debajo de { $first } no hay tiempo que baste. Sigue hasta { $kitchen }.
ask-lethality-instant = Sí: a { $at } en el punto más frío es seguro al momento.
ask-lethality-time = { $at } debe mantenerse { $needed } en el punto más frío.
ask-lethality-go-on = Aún no: sigue hasta { $kitchen } en lo más grueso de la pechuga, lo más hondo del muslo y el ala. Según la tabla, { $at } tendrían que mantenerse { $needed } en el punto más frío.
ask-lethality-stuffing-not = No: el relleno tiene que llegar a { $target } en el centro; { $at } no basta. ¿La carne ya está? Saca el relleno y termínalo en el horno.
ask-lethality-stuffing = Sí, si es en el centro: el relleno es seguro a { $target }.
ask-lethality-care = Para carne y con termómetro comprobado; no para relleno. Las autoridades piden en casa { $kitchen } en todas partes: si dudas, guíate por eso.
ask-come-up = No te fíes. Las { $span } de subida no cuentan como mantenida, y lo que creció entre { $low } y { $hot } no lo deshace todo el calor. Si estuvo ahí más de unas dos horas sin calor constante, a la basura; si no, sigue hasta { $kitchen } en todas partes.
ask-safe = { $target } en lo más grueso de la pechuga, lo más hondo del muslo y el ala.
ask-safe-held = { $target } durante { $hold } en lo más grueso de la pechuga, lo más hondo del muslo y el ala. { $plan }, mi objetivo, no pide minutos.
ask-safe-higher = Me guío por { $plan } en pechuga, muslo y ala. Health Canada dice { $target } para un ave entera: si lo sigues, déjala hasta entonces.
ask-safe-stuffing = Relleno: { $target } en el centro, dentro del ave o aparte.
ask-safe-where = La punta lejos del hueso. El color y los jugos claros no prueban nada.
ask-out-fine = { $out } fuera todavía está bien. Quedan { $left }: luego se come, va { -fridge(form: "to") } o a la basura.
ask-out-if-cool = Vale hasta { $air } de ambiente; con más calor, una hora en total.
ask-out-limit = Dos horas fuera { -fridge(form: "of") } en total, una por encima de { $air }. Después se tira.
ask-out-discard = Tíralo: { $out } fuera, y el límite son { $limit }.
ask-out-dont = No lo hagas: { $out } fuera es demasiado, el límite son { $limit } en total.
ask-out-why = Recalentarlo no lo vuelve seguro: algunas toxinas quedan.
# $days is one of the next two.
ask-keeps = { $food }: { $days } { -fridge(form: "in") }.
ask-keeps-still = { $age } está dentro del límite. { $food }: { $days } { -fridge(form: "in") }.
ask-keeps-over = Tíralo: { $age } es demasiado. { $food }: { $days } { -fridge(form: "in") }.
ask-keeps-that-still = { $food }: { $days } { -fridge(form: "in") }; { $age } entra en eso.
ask-keeps-that-over = { $food }: { $days } { -fridge(form: "in") }; tras { $age }, a la basura.
ask-days = { $n ->
    [one] { $n } día
   *[other] { $n } días
}
ask-days-range = de { $low } a { $high } días
ask-months = { $n ->
    [one] { $n } mes
   *[other] { $n } meses
}
ask-months-range = de { $low } a { $high } meses
ask-keeps-care = { -fridge(form: "The") } a { $cold } o menos. Si tiene mal aspecto u olor, fuera.
ask-keeps-frozen = { $food }: { $months } en el congelador por calidad. Bien congelado sigue siendo seguro.
ask-keeps-unknown = { $food }: no conozco un tiempo publicado. Con cuidado: dos horas fuera { -fridge(form: "of") } como mucho.
ask-cooling = { -fridge(form: "To") } antes de { $limit } desde que sale del fuego; caliente no importa, en recipientes bajos y sin hueso.
ask-cooling-marks = De { $from } a { $middle } en 2 h, y a { $cold } en 6 h en total.
ask-reheat = Recalienta a { $target } por todas partes.
ask-reheat-gravy = La salsa, hasta que hierva a borbotones.
ask-reheat-care = Tapado, con un poco de caldo. No en olla de cocción lenta.
ask-reheat-once = En el Reino Unido: recalienta una sola vez.
ask-refreeze = Descongelada { -fridge(form: "in") } se puede volver a congelar, cruda o cocinada. En agua o microondas, cocínala antes.
ask-refreeze-out = No si estuvo fuera más de dos horas.
ask-colour = El color y los jugos claros no prueban nada, rosado o no. Decide el termómetro:
ask-stand = Déjala reposar { $least } o más antes de trinchar, tapada sin apretar. Primero sube la temperatura, luego baja.
ask-oven-low = No: las autoridades piden para aves un horno a { $limit } o más.
ask-oven-fits = Sí, { $at } va bien. Las autoridades piden para aves { $limit } o más.
ask-oven = Pon el horno a { $limit } o más: es lo que piden las autoridades para aves.
ask-oven-level = Horno { $level ->
        [low] bajo
        [high] fuerte
       *[medium] medio
    }: unos { $setting }. Cada horno es distinto: manda el termómetro en el ave.
ask-oven-smoker = Un ahumador va de { $low } a { $high }, con el ave descongelada del todo.
ask-off-dial-at = { $side ->
    [cold] Se queda { $by } por debajo: para { $setting }, pon el mando a { $dial }.
   *[hot] Se pasa { $by }: para { $setting }, pon el mando a { $dial }.
}
ask-off-dial-by = { $side ->
    [cold] Se queda { $by } por debajo: ponlo esa diferencia más alto de lo que toca.
   *[hot] Se pasa { $by }: ponlo esa diferencia más bajo de lo que toca.
}
ask-off-dial = { $side ->
    [cold] Entonces ponlo más alto, tanto como le falta.
    [hot] Entonces ponlo más bajo, tanto como se pasa.
   *[some] Si calienta de más, ponlo esa diferencia más bajo; si de menos, más alto.
}
ask-off-dial-thermometer = Un termómetro de horno junto al ave dice cuánto se desvía. Dale 20 min: todos los hornos oscilan.
ask-hold = Mantenlo a { $hot } o más; por debajo, { $limit } como mucho y luego { -fridge(form: "to") }.
ask-wash = No la laves: de quienes la lavaron, el { $share } % acabó con bacterias en el fregadero. Sécala y lávate las manos 20 s.
ask-counter-thaw = Nunca en { -counter } ni en agua tibia: por fuera se estropea y por dentro sigue helada. { -fridge(form: "Title") }, o agua fría cambiada cada { $every } y a cocinar enseguida.
ask-warm-thaw = A la basura: por fuera estuvo templada más de { $limit } mientras el centro se descongelaba, y cocinarla no lo arregla. La próxima, { -fridge(form: "in") } o en agua fría cambiada cada { $every }.
ask-stuffing = Lo más seguro, al horno aparte. Dentro: sin apretarlo, justo antes de meter el ave, y nunca en un ave congelada, ahumada o frita.
ask-stuffing-target = El centro también debe llegar a { $target }.
ask-fry-frozen = No: nunca frías un ave congelada ni a medio descongelar. El aceite rebosa y quema. Primero, descongelada del todo.
ask-fry-stuffed = No: nunca frías un ave rellena.
ask-fry-heavy = No: { $given } es demasiado para una freidora. Hasta 5,4 kg.
ask-fry-time = { $mass } tarda { $time } a 175 °C; está lista con { $target } en todas partes.
ask-fry = Freír: al aire libre, a 3 m o más de la casa, aceite a 175 °C, de 7 a 11 min por kilo, nada de más de 5,4 kg.
ask-fry-care = Descongelada del todo y seca, nunca rellena: el agua hace rebosar el aceite. Busca antes el nivel con agua, no la dejes sola y ten un extintor de polvo a mano.
ask-charcoal = Nunca dentro de casa, en un garaje, una tienda de campaña o bajo techo. El monóxido de carbono mata y no huele. La parrilla aún tibia también se queda fuera.
ask-fire = { $call ->
    [none] Puerta del horno cerrada y horno apagado. Nada de agua, y no saques la { -tray }. Si no se apaga enseguida o salen llamas: todos fuera, puertas cerradas, y desde la calle llama a los bomberos.
   *[known] Puerta del horno cerrada y horno apagado. Nada de agua, y no saques la { -tray }. Si no se apaga enseguida o salen llamas: todos fuera, puertas cerradas, y desde la calle llama al { $call }.
}
ask-fire-elsewhere = Una sartén en el fuego: apaga y ponle la tapa. Ahumador o parrilla: tapa y rejillas cerradas, gas cortado. Solo si llegas sin peligro.
ask-gas = { $call ->
    [none] No toques interruptores, nada de llamas, no llames desde dentro. Abre las ventanas que te queden de paso, todos fuera, y desde la calle llama a los bomberos o a la compañía del gas.
   *[known] No toques interruptores, nada de llamas, no llames desde dentro. Abre las ventanas que te queden de paso, todos fuera, y desde la calle llama al { $call } o a la compañía del gas.
}
ask-kitchen-smoke = { $call ->
    [none] Apaga, puerta del horno cerrada, ventanas abiertas. Si hay llamas o el humo no para: todos fuera y desde la calle llama a emergencias. Ya frío, busca grasa que haya goteado.
   *[known] Apaga, puerta del horno cerrada, ventanas abiertas. Si hay llamas o el humo no para: todos fuera y desde la calle llama al { $call }. Ya frío, busca grasa que haya goteado.
}
ask-carbon-monoxide = { $call ->
    [none] Todos fuera al aire libre ya, puertas abiertas al pasar. Luego llama a emergencias; nadie vuelve a entrar hasta que lo digan. Dolor de cabeza, mareo, náuseas: díselo. Carbón y parrillas nunca arden dentro de casa.
   *[known] Todos fuera al aire libre ya, puertas abiertas al pasar. Luego llama al { $call }; nadie vuelve a entrar hasta que lo digan. Dolor de cabeza, mareo, náuseas: díselo. Carbón y parrillas nunca arden dentro de casa.
}
ask-hot-oil = { $call ->
    [none] Apaga el quemador, si puedes sin inclinarte sobre la olla. Todos atrás, primero los niños, y nada de agua. Llamas, o aceite encima de alguien: llama a emergencias. Antes de seguir: que enfríe, y menos aceite.
   *[known] Apaga el quemador, si puedes sin inclinarte sobre la olla. Todos atrás, primero los niños, y nada de agua. Llamas, o aceite encima de alguien: llama al { $call }. Antes de seguir: que enfríe, y menos aceite.
}
ask-burn = { $call ->
    [none] Agua corriente fresca encima, 20 min, ya; fuera anillos y reloj, y luego tápalo limpio. Ni hielo ni mantequilla. Mayor que una mano, blanca o con ampollas, en la cara, o un niño: médico, o llama a emergencias.
   *[known] Agua corriente fresca encima, 20 min, ya; fuera anillos y reloj, y luego tápalo limpio. Ni hielo ni mantequilla. Mayor que una mano, blanca o con ampollas, en la cara, o un niño: médico, o llama al { $call }.
}
ask-choking = { $call ->
    [none] ¿No puede toser ni hablar? Llama a emergencias. Inclínale hacia delante: 5 golpes entre los omóplatos y 5 compresiones sobre el ombligo, alternando hasta que salga. Un bebé: nunca el vientre; golpes boca abajo y 5 compresiones en el pecho.
   *[known] ¿No puede toser ni hablar? Llama al { $call }. Inclínale hacia delante: 5 golpes entre los omóplatos y 5 compresiones sobre el ombligo, alternando hasta que salga. Un bebé: nunca el vientre; golpes boca abajo y 5 compresiones en el pecho.
}
ask-fainted = { $call ->
    [none] Llama ya a emergencias. Si respira normal: de lado, cabeza hacia atrás, y no te separes. Si no respira o solo boquea: boca arriba y aprieta fuerte y rápido en el centro del pecho, de 100 a 120 veces por minuto, hasta que llegue ayuda. Si hay más de una persona mareada: todos fuera, al aire libre.
   *[known] Llama ya al { $call }. Si respira normal: de lado, cabeza hacia atrás, y no te separes. Si no respira o solo boquea: boca arriba y aprieta fuerte y rápido en el centro del pecho, de 100 a 120 veces por minuto, hasta que llegue ayuda. Si hay más de una persona mareada: todos fuera, al aire libre.
}
ask-allergy = { $call ->
    [none] Se hinchan la lengua, los labios o la garganta, o falta el aire después de comer: llama ya a emergencias y di «reacción alérgica». Autoinyector de adrenalina, si lo hay: enseguida en la parte de fuera del muslo, y otro a los 5 min si no mejora. Tumbado, piernas en alto; incorporado si le cuesta respirar. Sin levantarse ni caminar.
   *[known] Se hinchan la lengua, los labios o la garganta, o falta el aire después de comer: llama ya al { $call } y di «reacción alérgica». Autoinyector de adrenalina, si lo hay: enseguida en la parte de fuera del muslo, y otro a los 5 min si no mejora. Tumbado, piernas en alto; incorporado si le cuesta respirar. Sin levantarse ni caminar.
}

ask-sick = Nada de comida por ahora: quien vomita o tiene diarrea no entra en la cocina hasta 48 h después de la última vez. Otra persona hace sus tareas.
ask-sick-made = Lo que haya preparado desde que empezó y no se vaya a cocinar bien después: a la basura. Manos con agua y jabón, 20 s; el gel sirve de poco contra un virus estomacal.
ask-ate-sick = { $call ->
    [none] Sorbos de agua, seguidos, y reposo. Al médico si hay sangre, fiebre de más de { $fever }, no se retiene nada, casi no se orina, hay mareo al levantarse o dura más de tres días. Embarazadas, muy pequeños, mayores o enfermos: llama ya. Vista borrosa, músculos flojos, cuesta respirar o tragar: llama a emergencias.
   *[known] Sorbos de agua, seguidos, y reposo. Al médico si hay sangre, fiebre de más de { $fever }, no se retiene nada, casi no se orina, hay mareo al levantarse o dura más de tres días. Embarazadas, muy pequeños, mayores o enfermos: llama ya. Vista borrosa, músculos flojos, cuesta respirar o tragar: llama al { $call }.
}
ask-ate-sick-rest = Que nadie coma más hasta saberlo: envuélvelo, márcalo y { -fridge(form: "to") }. ¿Varios enfermos? Avisa a sanidad. Quien vomita no toca comida de otros hasta 48 h después.
ask-cut = Aprieta hasta que pare, lava con agua corriente, seca, y encima un apósito impermeable y un guante. Comida con sangre: a la basura. Cuchillo y tabla, agua caliente y jabón.
ask-cut-doctor = Si es profundo, abierto o sigue sangrando tras 10 min apretando: al médico.

ask-stuffing-slow = ¿La carne está a { $target } y el relleno no? Sácalo caliente con una cuchara y termínalo sin pausa en una fuente al horno, o en la sartén removiendo, hasta { $target } en el centro. ¿La carne aún no? Se queda todo dentro.
ask-stuff-ahead = No: mezcla el relleno y rellena justo antes de meterla, sin apretar. Hasta entonces, lo seco y lo húmedo esperan { -fridge(form: "in") }, por separado. El centro debe llegar a { $target }.

# ---- habits, and what went wrong
ask-fridge = A { $cold } o menos, con un termómetro dentro.
ask-baste = No hace falta. Cada vez que abres el horno pierdes tiempo, y la piel mojada no queda crujiente.
ask-foil = ¿Ya está bastante dorada? { -foil(form: "Title") } suelto por encima y que siga: solo el termómetro dice cuándo está. Quítalo los últimos minutos si quieres la piel crujiente.
ask-carve = Primero las patas: corta la piel, abre el muslo hacia fuera y corta por la articulación; luego separa { -drumstick } y { -thigh }. Cada pechuga entera del hueso y después en { -slices } a lo ancho. Las alas al final. No en la tabla del ave cruda.
ask-pop-up = Ese botón puede saltar antes o después de tiempo. Compruébalo con termómetro: { $target } en pechuga, muslo y ala, y está.
ask-bag-inside = Si la bolsa es de papel no pasa nada: sácala y guíate por { $target } en la carne. Si es de plástico y se derritió o deformó, tira la bolsa y el ave.
ask-probe-out = De vuelta a lo más grueso de la pechuga, punta lejos del hueso; lo que marcó fuera no cuenta. ¿Roto? Sirve cualquier termómetro de lectura rápida que marque { $ice } en agua con hielo. Sin él nadie puede decir que está.
ask-mess = Primero papel, luego agua caliente con jabón y después un desinfectante; las manos, 20 s. Lo que se come crudo y se mojó con el jugo, a la basura.
ask-crossed = Lo que se come crudo y tocó jugo crudo, su cuchillo o su tabla va a la basura. Luego cuchillo, tabla y manos: agua caliente y jabón, las manos { $wash }.
ask-dog = Huesos cocinados no, se astillan; nada salado ni con cebolla. Un poco de carne sola, sí.
ask-fragile = Embarazadas, mayores de 65, niños pequeños o personas con defensas bajas: sí, caliente, y solo con { $target } en todo lo que se mide, también en el relleno; sobras solo recalentadas a eso. En la duda, pregunta al médico.
ask-neck = Fuera antes de salar; mira por los dos extremos, suelen ir en una bolsita. Cuécelos para la salsa, hasta { $target }. Crudos aguantan { $giblets } { -fridge(form: "in") }.
ask-finish-oven = Sí, directo de un fuego al otro; nunca mitad hoy y mitad después. Horno a { $oven } o más, y { $target } como siempre.
ask-side-up = Pechuga arriba, puntas de las alas metidas debajo.
ask-fridge-shelf = Abajo del todo, en una { -tray } que recoja el jugo: nada crudo encima de otra comida.
ask-fridge-cover = Destapada se seca la piel y queda más crujiente. { -tray(form: "Title") } debajo, abajo del todo. Tápala si puede tocar otra comida o gotear encima.
ask-rinse-salt = No: la sal ya entró, y enjuagar reparte gérmenes por el fregadero. Sécala con papel; los granos que queden, sacúdelos.
ask-salted-twice = Quita la que puedas con la mano, sin enjuagar, y nada más de sal: ni encima, ni en la mantequilla, ni jugos en la salsa. Si llevaba mucho puesta, la carne saldrá salada: corta fino y no sales nada más.
ask-brine-frozen = Primero descongela: la sal apenas entra en el hielo. A medio descongelar puede terminar en salmuera fría, a { $cold } o menos.
ask-brine-or-not = No es obligatorio. En seco es lo fácil: sal sobre y bajo la piel, uno o dos días { -fridge(form: "in") }, nada que se derrame. La salmuera pide una olla grande y sitio a { $cold }. Ninguna en un ave kosher o con solución añadida.
ask-rack = ¿Sin rejilla? Valen rodajas gruesas de cebolla y zanahoria o un aro de aluminio. En el horno, abajo, para que el ave quede en el centro.
ask-truss = No hace falta: con las patas sueltas los muslos se asan antes. Si se abre mucho, ata las puntas flojo.
ask-pan-water = Una taza, para que no se quemen los jugos. Más solo ablanda la piel.
ask-oven-bag = Bolsa de asar, según su envase: va más rápido, así que mide pronto. Nada de bolsas de papel o de supermercado: pueden arder y soltar gases.
ask-temper = No hace falta: en una hora por dentro apenas se templa. Fuera solo lo que dice el plan, para secar la piel: cuenta para el límite de { $limit }.
ask-which-salt = Sirve cualquiera si la pesas: un gramo es un gramo. A cucharadas no: en la sal fina de mesa cabe cerca del doble que en la de escamas. Dime cuál tienes, «sal de mesa», y te lo digo en esa.
ask-fits = Mídelo antes: dos dedos de aire alrededor en el horno, y una charola de la que no cuelguen las piernas. ¿No cabe? Abierta o en piezas en dos charolas sí, y se hace antes: di «abierta».
ask-boil = Sí: cubierta de agua, a fuego suave sin hervir fuerte, hasta que pechuga, muslo y ala marquen { $target }. Sin piel crujiente, con buen caldo. Mis horas son de horno: aquí solo manda el termómetro.
ask-weather = Al resguardo del viento, tapa cerrada y más combustible a mano: viento, lluvia y frío se comen el calor. Aun así fuera, nunca en garaje o carpa. Dime qué marca el ahumador y calculo con eso.
ask-grill = Sí: tapa cerrada, el ave al lado de las llamas, no encima, { $oven } o algo más en la rejilla. Lo planifico como ahumador. Solo al aire libre.
ask-smoke = Madera suave: manzano, cerezo, algo de roble. El ave entra cuando el humo es fino y azulado; el blanco y espeso amarga: más aire y espera. Solo al aire libre.
ask-gravy-how = Cuela los jugos y quita la grasa. Tuesta tanta harina como grasa dejes, añade jugos y caldo batiendo hasta que fluya y dale un hervor. Prueba antes de salar: un ave salada gotea sal.
ask-carcass = Huesos { -fridge(form: "to") } en menos de { $limit }, úsalos en { $days } o congélalos. Cuécelos con cebolla y zanahoria 2 o 3 h, cuela y enfría en recipientes bajos.
ask-bones-out = Nada de caldo con huesos que estuvieron fuera más de { $limit }: hervirlos no deshace lo que creció en ellos. Tíralos. { -fridge(form: "In") } a tiempo, aguantan { $days }.
ask-reheat-twice = Recalienta solo lo que vayas a comer, y una vez: cada vez pasa un rato tibio. Si tiene que ser dos, a { $target } por todas partes las dos veces y { -fridge(form: "in") } antes de { $limit } entre medias.
ask-leftovers-at = { $at } es demasiado para las sobras: se conservan a { $cold } o menos. Por encima más de { $limit } en total, con mesa y coche, o nadie sabe cuánto: tíralas, recalentarlas no lo arregla. Menos: { -fridge(form: "to") } ya.
ask-crisp = Piel seca: destapada { -fridge(form: "in") } toda la noche, una capa fina de aceite, sin aluminio, poca agua en la { -tray }. ¿Aún blanda al final? { $crisp } los últimos 10 min, sin perderla de vista.
ask-fat = Cualquiera de los dos. Piel seca, una capa fina justo antes de entrar; mantequilla blanda bajo la piel para dar sabor. Sin sal si el ave ya va salada.
ask-no-butter = Aceite: una capa fina sobre la piel seca justo antes de meterlo, y también debajo si quieres. Dora igual.
ask-allergy-milk = Leche: aceite en vez de mantequilla, sobre la piel y debajo. El relleno, la salsa y el puré suelen llevar mantequilla o leche.
ask-allergy-gluten = Gluten: el relleno de pan, aparte y en su propia fuente, no dentro; la salsa, con maicena y no con harina; { -baking-powder }, según la etiqueta.
ask-allergy-nuts = Frutos secos: nada en el relleno, las guarniciones ni el postre; mezclas, aceites y pan, según la etiqueta.
ask-allergy-egg = Huevo: suele estar en rellenos, masas, salsas y postres.
ask-allergy-label = Mira también la etiqueta del ave: si viene inyectada, puede llevar leche, trigo o soja. Tabla y cuchillo limpios, y su plato primero. Cuánto cuidado hace falta lo sabe esa persona o su médico.
ask-preheat = Sí, caliente antes de que entre el ave: un horno 20 a 30 min, un fuego hasta una hora.
ask-dial = Esos números cambian de un horno a otro: mira su manual. O pon uno del medio y deja un termómetro de horno en la rejilla: a los 20 min busca { $oven } o un poco más. Dime qué marca.
ask-early = Lista es { $target } en todas partes. Entonces envuelta a { $hot } o más, con termómetro. O trínchala, { -fridge(form: "to") } en menos de { $limit }, y recaliéntala para la cena a { $target }.
ask-fan = Valen los dos. Con ventilador va más rápido y se dora antes; aun así, no menos de { $oven }. Di “{ -fan-oven }” y lo planifico así.
ask-ahead = Sí: asada a { $target }, trinchada, { -fridge(form: "in") } en menos de { $limit } en capas bajas, y comida en { $days }. Recalienta tapada con un poco de caldo, a { $target }.
ask-flat = Tijeras por los dos lados del espinazo, quítalo, dale la vuelta y aplasta la pechuga. Necesita unos dos tercios del tiempo. Di “abierta” al planificar.
ask-fresh-or-frozen = Igual de buenas. Congelada se compra semanas antes, solo pide días para descongelar. Fresca: como mucho { $raw } antes de cocinarla.
ask-thaw-microwave = Para descongelar, solo si cabe, según las instrucciones del microondas. Luego cocínala enseguida: hay partes que se calientan.
ask-thaw-sink = En su envoltorio, sin que entre agua, bajo agua fría cambiada cada { $every }. Luego cocínala enseguida. Dime el peso y te digo cuánto tarda.
ask-inject = Se puede: líquido frío, justo antes de asarlo, y su sal cuenta en la dosis. La aguja mete gérmenes dentro: manda { $target } en todos los puntos.
ask-dropped = Cruda: límpiala con papel, sin enjuagar, y ásala hasta { $target } como estaba previsto; luego suelo y manos. Asada: quita lo que tocó el suelo; si no se sabe, a la basura.
ask-prick = Ganso y pato: sí, solo la piel, donde hay grasa. Pavo y pollo no lo necesitan; nunca hasta la carne, que pierde jugo.
ask-worry = Casi todo depende de tres cosas: { $target } en pechuga, muslo y ala, nunca más de { $limit } fuera del frío o del calor, y manos y tabla lavadas tras tocar carne cruda. De las horas me ocupo yo; tú mides.
ask-not-in-time = Entonces sigue dentro: mandan los { $target }, no la hora. Más calor, empezar por las guarniciones, trincharlo y terminar las piezas en el horno, o cenar más tarde. Mándame temperaturas pronto y te digo qué hace falta.
ask-raw-inside = De vuelta al horno, entero o en trozos, hasta { $target } en lo más grueso; antes no come nadie. Cuchillo, tabla y manos con agua caliente y jabón. Rosado junto al hueso no prueba nada: el termómetro sí.
ask-ate-raw = Casi siempre no pasa nada; nadie puede asegurarlo. Lo que queda, al horno hasta { $target } o a la basura. Sangre, fiebre alta, no retener nada o más de tres días: al médico. Embarazadas, muy pequeños, mayores o enfermos: mejor llamar ya.
ask-half-cook = No: nunca a medias ahora y el resto luego. El centro queda tibio horas y el calor no deshace todo lo que crece. Hazlo entero hasta { $target }, trínchalo y enfríalo en menos de { $limit }.
ask-fridge-down = Con la puerta cerrada guarda el frío cerca de { $unopened }. Luego mide: un ave a más de { $cold } durante más de { $limit } se tira, cocinarla no lo arregla. Si aún tiene hielo o está a { $cold } o menos, vale.
ask-fridge-off = { $span } sin luz es demasiado, aun cerrada: el frío dura cerca de { $unopened }. Mide el ave: si aún tiene hielo o está a { $cold } o menos, vale. Más caliente, o no lo sabes: tírala, cocinarla no lo arregla.
ask-cold-at = { $at } es demasiado para ella: { $cold } o menos. A hielo o a una { -fridge } más fría, ya. Más de { $limit } por encima, o nadie sabe cuánto: tírala, cocinarla no lo arregla.
ask-kills = { $target } en lo más grueso mata los gérmenes. No lo que dejaron: lo que estuvo fuera más de { $limit } sigue malo por mucho que se caliente.
ask-freezer-down = No lo abras: lleno aguanta unas { $full }, medio lleno { $half }. Un ave que aún tiene hielo, o a { $cold } o menos, está bien: se vuelve a congelar o sigue descongelándose { -fridge(form: "in") }. Descongelada y a más de { $cold } durante más de { $limit }, o si nadie lo sabe: a la basura, huela como huela.
ask-kosher-bird = Un ave que ya viene salada, con salmuera o kosher: nada de salmuera, ni más sal sin probar antes.
ask-other-bird = De esa ave no conozco tiempos ni pesos publicados, así que no doy ninguno. Vale para todas: lista con { $target } en pechuga, muslo y ala, por termómetro; nunca descongelada fuera { -fridge(form: "of") }, salvo en agua fría. Sé de pavo, pollo, capón, pato y ganso.
ask-thermometer = Lo más grueso de la pechuga, lo más hondo del muslo y la articulación del ala; la punta en medio de la carne, lejos del hueso. { $target } en todos.
ask-garage-thaw = Solo si allí hubo { $cold } o menos todo el tiempo, medidos. Si no lo sabes, tírala: cocinarla no lo arregla.
ask-cold-place = Mejor no: el tiempo cambia y llegan animales. Si no hay otra, en una { -cooler } cerrada con hielo y un termómetro dentro, a { $cold } o menos todo el tiempo. Un día frío no es una { -fridge }.
ask-past-date = La fecha de caducidad es un límite: pasada, no se come, ni cocinado, salvo que se congelara a tiempo. La de consumo preferente es más flexible: un ave fresca aguanta { $days } { -fridge(form: "in") } desde que la compraste, no más.
ask-past-date-care = Si dudas, o si huele o se nota raro: a la basura. Cocinarlo no lo arregla.
ask-smell = Agrio, podrido o baboso: a la basura, o de vuelta a la tienda. Cocinarlo no lo arregla, y no lo pruebes para saberlo. Un olor leve al abrir una bolsa sellada se va en unos minutos; si no se va, fuera.
# Lo que pueden comer los pequeños y quienes corren más riesgo. $call como en ask-choking.
ask-diner-little = Desde los seis meses más o menos, sí: bien hecho, { $target } en todas partes, en trocitos blandos, sin piel ni hueso, sin sal añadida; las sobras solo recalentadas a eso. Nunca nueces, castañas ni uvas enteras: puede atragantarse. La última palabra es del pediatra.
ask-diner-chokes = Enteras no antes de los cinco años: nueces, castañas, uvas, aceitunas y trozos duros tapan la garganta. Aplastadas o muy picadas, sentado, con alguien al lado. La última palabra es del pediatra.
ask-diner-swallowed = { $call ->
    [none] ¿Tose fuerte? Deja que tosa y no te apartes. ¿Respira con ruido o con esfuerzo, babea, labios azules? Llama a emergencias ya. ¿Todo bien, y luego tos o silbidos? Al médico enseguida.
   *[known] ¿Tose fuerte? Deja que tosa y no te apartes. ¿Respira con ruido o con esfuerzo, babea, labios azules? Llama al { $call } ya. ¿Todo bien, y luego tos o silbidos? Al médico enseguida.
}
ask-diner-leaves = Mejor dejarlo: foie gras, paté, salmón ahumado, marisco crudo, queso de leche cruda o blando, huevo crudo y carne rosada no son para embarazadas, niños pequeños, mayores de 65 o defensas bajas. La última palabra es del médico.
ask-low-salt = Un ave no se puede salar para unos y para otros no. Déjala sin sal («sin sal») y pon sal en la mesa, o sala menos («menos sal»); salsa y relleno también sin sal. Si la etiqueta habla de «solución» o «salmuera», ya lleva sal. Cuánta puede tomar, lo dice su médico.
ask-thermometer-which = Uno digital rápido, o una sonda que se queda dentro. Sin él nadie puede saber que es seguro: pide uno prestado. Compruébalo antes: en agua con hielo marca { $ice }.
ask-no-room = Sirve una { -cooler } con hielo: el ave en una bolsa bien cerrada, tapa puesta, un termómetro dentro a { $cold } o menos, hielo nuevo antes de que se caliente. O deja fuera las bebidas; el ave nunca.
ask-carry-food = En frío, en una { -cooler } con hielo, a { $cold } o menos al llegar; o caliente, envuelto en una caja, a { $hot } o más. Si no, { $limit } fuera en total, con el viaje incluido; { $short } con más de { $air }.
ask-oven-down = No abras la puerta. Si el calor no vuelve pronto, lleva el ave a otro horno, al de un vecino o a { -grill } al aire libre. Si aún no había entrado, { -fridge(form: "to") }.
ask-oven-down-care = No la dejes a medias para acabarla luego. Templada, por debajo de { $hot }, más de { $limit } en total: a la basura.
ask-still-frozen = Ya mismo a agua fría, en una bolsa bien cerrada, con agua nueva cada { $every }: una hora por cada kilo aún congelado. Luego, cocínala enseguida.
ask-still-frozen-cook = O ásala como está, sin relleno, en horno, no en ahumador ni freidora: hasta la mitad más de tiempo. Saca { -giblets(form: "the") } cuando se suelten. { $target } en todas partes.
ask-from-frozen = En horno, sí: { $oven } o más, sin relleno, más o menos la mitad más de tiempo que descongelado. { -giblets(form: "Title") } fuera en cuanto se suelten, { $target } en todas partes. Nunca en ahumador ni freidora.
ask-is-thawed = Descongelado: sin hielo en la cavidad, las patas se mueven, { $cold } o menos por dentro. ¿Queda hielo? Más tiempo { -fridge(form: "in") }, o agua fría.
ask-too-fast = Baja el horno, no a menos de { $oven }, y cúbrela con { -foil }. Con { $target } en todas partes está lista: luego, tapada y a { $hot } o más.
ask-stall = Parado una hora o así con poco calor es el estancamiento: la piel húmeda enfría tanto como calienta el fuego. Pasa solo. Con más calor acaba antes, envuelto en { -foil } también, aunque la piel queda blanda. En un horno caliente mira la punta: bien dentro, lejos del hueso. Está a { $target }, igual.
ask-too-slow = Horno a { $oven } o algo más, con la puerta cerrada. Si hay prisa, separa muslos y pechuga y ásalos en piezas. Mejor tarde que por debajo de { $target }.
ask-stuffing-for = { $people ->
    [one] Relleno para uno: de { $low } a { $high }.
   *[other] Relleno para { $people }: de { $low } a { $high }. Lo que no quepa sin apretar va al horno aparte.
}
ask-gravy-for = { $people ->
    [one] Salsa para uno: de { $low } a { $high }.
   *[other] Salsa para { $people }: de { $low } a { $high }.
}

# ---- units
ask-convert = { $given } = { $result }.

# ---- why: where a number comes from. Titles stay as they were printed.
ask-source-seen = { $publisher }: { $title }
ask-source-seen-secondary = { $publisher }: { $title } (citado por otros)
ask-source-common-practice = Costumbre de cocina, sin fuente: { $title }
ask-source-from-memory = De memoria, no hallado impreso: { $publisher }, { $title }
ask-source-derived = Calculado a partir de { $publisher }: { $title }

ask-span = { $span }
