### Palabras que la gente escribe, por lo que significan. Nadie las ve; las lee el programa.
### Each value is a list of words and phrases, separated by commas. Case, accents and plain plurals (see
### lexicon-endings) need no entry of their own; common words of five letters and more are also read with a slip of the finger.
### A translator lists what people really write, abbreviations included; the longest phrase wins. English words are
### understood too where they mean nothing else here.

## How dates are written: mdy or dmy. Whether a comma marks decimals: yes or no.
lexicon-date-order = dmy
lexicon-decimal-comma = yes
## What may be added to a word: plurals and cases.
lexicon-endings = s, es
## Words that lose their end before a vowel and cling to the next word (French l'eau); none here.
lexicon-elisions = { "" }
## Whether a half before an hour is past it (half five: 5:30) or to it (halb sechs: 5:30).
lexicon-half-hour = past

## Words that look like a slip of another word here and are not.
lexicon-plain = sobre, sobra, cabra, pecho, hecho, techo, lecho, mucho, noche, coche, leche, carne, carga, mesa, misa, horma, fuera, fuego, juego, luego, jugo, pava, parte, partes, puerta, gracias, grasa, grano, grande, grado, gramo, medir, media, medio, miedo, menos, meses, manos, verde, tarde, tarda, carta, corta, corto, cuatro, cuarto, cuadro, cuerpo, cuento, cuanto, cuando, ciento, siento, quince, quinta, quiero, queso, hielo, suelo, vuelo, cielo, horas, honra, ahora, entra, entre, antes, tanto, canto, santo, salsa, sales, salto, saldo, sabor, saber, sacar, secar, asado, pasado, pesado, poner, comer, coser, cocer, cocina, vecina, hermana, mayor, mejor, mujer, personal, paste, pasta, tapa, tazon, razon, vaso, paso, peso, beso, queda, horno, torno, hornos, pierna, piedra, muslo, puslo, jugoso, jugosa, jugosos

## Números
lexicon-number-0 = cero
lexicon-nobody = nadie, ningún invitado
lexicon-number-1 = uno
lexicon-number-2 = dos, par
lexicon-number-3 = tres
lexicon-number-4 = cuatro
lexicon-number-5 = cinco
lexicon-number-6 = seis
lexicon-number-7 = siete
lexicon-number-8 = ocho
lexicon-number-9 = nueve
lexicon-number-10 = diez
lexicon-number-11 = once
lexicon-number-12 = doce, docena
lexicon-number-13 = trece
lexicon-number-14 = catorce
lexicon-number-15 = quince
lexicon-number-16 = dieciséis
lexicon-number-17 = diecisiete
lexicon-number-18 = dieciocho
lexicon-number-19 = diecinueve
lexicon-number-20 = veinte
lexicon-number-30 = treinta
lexicon-number-40 = cuarenta
lexicon-number-50 = cincuenta
lexicon-number-60 = sesenta
lexicon-number-90 = noventa
lexicon-number-100 = cien, ciento
lexicon-number-half = medio, media
lexicon-number-third = tercio
lexicon-number-quarter = cuarto
lexicon-number-eighth = octavo
lexicon-number-article = un, una
lexicon-number-and = y, e
lexicon-number-plus = más
lexicon-number-of = de
lexicon-number-to = a
lexicon-minus = menos

## Unidades
lexicon-unit-pound = lb, lbs, libra
lexicon-unit-ounce = oz, onza
lexicon-unit-gram = g, gr, gramo
lexicon-unit-kilogram = kg, kgs, kilo, kilogramo
lexicon-unit-milligram = mg, miligramo
lexicon-unit-teaspoon = cdta, cdita, cucharadita, cucharilla, cucharita, cucharada de té, cucharadas de té
lexicon-unit-tablespoon = cda, cdas, cuchara, cucharada, cucharada sopera, cucharadas soperas
lexicon-unit-cup = taza
lexicon-unit-fluid-ounce = onza líquida, onzas líquidas, fl oz
lexicon-unit-pint = pinta
lexicon-unit-quart = cuarto de galón, cuartos de galón
lexicon-unit-gallon = galón
lexicon-unit-milliliter = ml, mililitro
lexicon-unit-liter = l, litro
lexicon-unit-pinch = pizca
lexicon-unit-stick = barra, barrita
lexicon-unit-fahrenheit = f, °f, fahrenheit, grados f, grados fahrenheit, ° f
lexicon-unit-celsius = c, °c, celsius, centígrado, grados c, grados celsius, grados centígrados, ° c
lexicon-unit-degree = °, grado
lexicon-unit-second = s, seg, segundo
lexicon-unit-minute = min, mins, minuto
lexicon-unit-hour = h, hr, hrs, hora
lexicon-unit-day = d, día
lexicon-unit-week = semana
lexicon-unit-month = mes, meses
lexicon-unit-percent = por ciento
lexicon-unit-gas-mark = gas mark, marca de gas, gas, termostato
## Mark of a French oven (thermostat 6 is 180 °C); none here.
lexicon-unit-thermostat = { "" }

## Días y horas
lexicon-weekday-mon = lunes, lun
lexicon-weekday-tue = martes, mar
lexicon-weekday-wed = miércoles, mié
lexicon-weekday-thu = jueves, jue
lexicon-weekday-fri = viernes, vie
lexicon-weekday-sat = sábado, sáb
lexicon-weekday-sun = domingo, dom
lexicon-month-1 = enero, ene
lexicon-month-2 = febrero, feb
lexicon-month-3 = marzo
lexicon-month-4 = abril, abr
lexicon-month-5 = mayo
lexicon-month-6 = junio, jun
lexicon-month-7 = julio, jul
lexicon-month-8 = agosto, ago
lexicon-month-9 = septiembre, setiembre, sep, sept
lexicon-month-10 = octubre, oct
lexicon-month-11 = noviembre, nov
lexicon-month-12 = diciembre, dic
lexicon-day-today = hoy
lexicon-day-tonight = esta noche, hoy por la noche
lexicon-day-tomorrow = mañana
lexicon-day-after-tomorrow = pasado mañana
lexicon-day-yesterday = ayer
## What stands before the day of a month without its name (French le 24).
lexicon-day-of-month = día, el día, para el día, el, para el, del, del día
lexicon-holiday-thanksgiving = acción de gracias, día de acción de gracias, el día de acción de gracias
lexicon-holiday-christmas = navidad, día de navidad, el día de navidad
lexicon-holiday-boxing-day = san esteban, día de san esteban
lexicon-holiday-numbered-day = { "" }
lexicon-holiday-christmas-eve = nochebuena
lexicon-holiday-new-year = año nuevo, día de año nuevo
lexicon-holiday-new-year-eve = nochevieja, fin de año
lexicon-holiday-easter = pascua, domingo de pascua, domingo de resurrección
lexicon-next = próximo, próxima, que viene, este, esta
lexicon-part-morning = am, de la mañana, por la mañana
lexicon-part-afternoon = pm, de la tarde, por la tarde, de la noche, por la noche, tarde, noche
lexicon-noon = mediodía, al mediodía, a mediodía, las doce del mediodía
lexicon-midnight = medianoche, a medianoche
lexicon-oclock = en punto
lexicon-past = pasadas
lexicon-to = menos
lexicon-at = a las, a la, las, hacia las, sobre las, a eso de las, para las, a
lexicon-since = desde, desde el
lexicon-on = el, la, los, de, del, para el
lexicon-in = en, dentro de
lexicon-ago = hace
lexicon-later = más tarde, tarde, después, retrasa, retrasar, atrasa, atrasar, aplaza, aplazar
lexicon-earlier = antes, más temprano, más pronto, adelanta, adelantar, de antelación, de adelanto, de anticipación
lexicon-now = ahora, ahora mismo
lexicon-ordinal = ro, do, er
lexicon-meal-dinner = cena, cenar, cenamos, comemos, comer, servir, mesa, cenaremos
lexicon-meal-lunch = comida, almuerzo, almorzar

## El ave
lexicon-bird-turkey = pavo, pava, guajolote, pavo dentro, pavo al horno
lexicon-bird-turkey-breast = pechuga de pavo
lexicon-bird-chicken = pollo, pularda, pularda al horno
lexicon-bird-capon = capón
lexicon-bird-duck = pato
lexicon-bird-goose = ganso, oca
lexicon-bird-any = ave
lexicon-other-bird = pintada de, pintada al horno, una pintada, la pintada, gallina de guinea, gallina pintada, codorniz, codornices, faisán, faisanes, perdiz, perdices, pichón, pichones, avestruz, pintada rellena, pintada asada
lexicon-condition-fresh = fresco, fresca, descongelado, descongelada, ya descongelado, ya descongelada, no congelado, sin congelar, ya está descongelado
lexicon-condition-frozen = congelado, congelada, todavía congelado, aún congelado, no lo he descongelado, no la he descongelado, todavía no lo he descongelado, aún no lo he descongelado, no lo descongelé, todavía no lo descongelo, sin descongelar, no descongelado, no descongelada, no está descongelado, todavía no está descongelado, aún no está descongelado, sigue congelado, sigue congelada, todavía está congelado, aún está congelado, olvidó sacarlo del congelador, olvidó sacarla del congelador, olvidó sacar el pavo del congelador, olvidé sacarlo del congelador, olvidé sacarla del congelador, no lo saqué del congelador, no la saqué del congelador, se me olvidó sacarlo del congelador, se me olvidó sacarla del congelador, se me olvidó sacar el pavo del congelador
lexicon-unthawed = no lo he descongelado, no la he descongelado, todavía no lo he descongelado, aún no lo he descongelado, no lo descongelé, todavía no lo descongelo, sin descongelar, no descongelado, no descongelada, no está descongelado, todavía no está descongelado, aún no está descongelado, todavía congelado, aún congelado, sigue congelado, sigue congelada, todavía está congelado, aún está congelado
lexicon-condition-part-thawed = medio congelado, medio congelada, medio descongelado, medio descongelada, parcialmente descongelado, parcialmente congelado, a medio descongelar, todavía está congelado por dentro, todavía congelado por dentro, sigue congelado por dentro, está congelado por dentro, todavía está congelada por dentro, sigue congelada por dentro, sigue duro por dentro
lexicon-form-whole = entero, entera
lexicon-form-flat = abierto, abierta, aplanado, aplanada, en mariposa, mariposa, sin espinazo, plano, plana
lexicon-form-pieces = en trozos, trozos, troceado, troceada, en piezas, piezas, despiezado, despiezada, en presas
lexicon-stuffed = relleno, rellena, con relleno
lexicon-unstuffed = sin relleno, sin rellenar, no relleno, relleno aparte, relleno fuera
lexicon-solution = solución, contiene hasta, contiene, salmuera añadida, inyectado, inyectada, añadido
lexicon-basted = inyectado, inyectada
lexicon-salted-already = ya salado, ya salada, presalado, presalada, viene salado, salado de fábrica, marinado de fábrica, ya marinado

## Quién come
lexicon-people = persona, gente, invitado, invitada, comensal, raciones, porciones, ración, porción
lexicon-adults = adulto, adulta, mayores
lexicon-children = niño, niña, crío, chico, peque, pequeños
lexicon-among = de ellos, de los cuales, de las cuales, incluidos, incluyendo, incluidas, entre ellos, contando
lexicon-another = otro, otra, segundo, uno más, una más
lexicon-size-big = grande, mayor, más grande, pesado
lexicon-size-small = pequeño, pequeña, chico, chica, menor, más pequeño
lexicon-instead = mejor, en vez, en lugar, cámbialo, cambia, ponlo, pásalo, digamos, pasar a
lexicon-joining = vienen también, viene también, también vienen, también viene, se apuntan, se apunta, se suman, se suma, de más, más
lexicon-for = para, somos, seremos, familia de, mesa de, mesa para, ahora somos, somos ahora, al final somos, somos al final, vamos a ser, ya somos, seremos ahora
lexicon-leftovers = sobras, con sobras, que sobre, que quede
lexicon-no-leftovers = sin sobras, que no sobre

## Calor, sal, camino
lexicon-cooker-oven = horno, al horno, en el horno, horno sin ventilador, lo meto al horno, meto al horno, lo meto en el horno, va al horno, entra al horno, entra en el horno, lo pongo al horno, lo pongo en el horno, pavo al horno
lexicon-cooker-fan-oven = horno con ventilador, horno de convección, convección, ventilador, horno con aire, aire
lexicon-cooker-smoker = ahumador, ahumado, ahumada, ahumar, parrilla, barbacoa, asador, kettle
lexicon-heat-stove = hornilla, fogón, fuego lento, vitro, vitrocerámica, placa, cazo, cazuela, sartén, en la placa
lexicon-heat-set = puesto a, subí, subido, bajé, bajado, subí a, bajé a, lo he puesto a, he subido, he bajado, lo he subido, lo he bajado
lexicon-heat-turned = subí, subido, bajé, bajado, subí a, bajé a, lo he puesto a, he subido, he bajado, lo he subido, lo he bajado
lexicon-reading-before = antes de eso, hace rato, hace un rato, anteriormente, la última vez
lexicon-reading-said = marcaba, marcó, decía, dijo, mostraba, leía
lexicon-heat-moved = lo pasé, la pasé, lo pase, la pase, lo he pasado, la he pasado, lo pasé al, la pasé al, pasé el pavo, pasé el pavo al, he pasado el pavo, he pasado el pavo al, lo moví, la moví, lo moví al, lo termino, la termino, lo termino en, lo estoy terminando, la estoy terminando, lo estoy terminando en, estoy terminándolo, lo acabo en
lexicon-heat-moved-first = ahora en, terminando en, pasado a, pasado al, ahora está en
lexicon-heat-later = voy a, vamos a, quiero, debería, podría, luego, más tarde, después, cuando, si lo, quizá, quizás
lexicon-heat-start = empiezo a cocinar, empezar a cocinar, empiezo a asar, empezar a asar, empezamos a cocinar, lo meto al horno, meto al horno, lo meto en el horno, va al horno, entra al horno, entra en el horno, lo pongo al horno, lo pongo en el horno, lo meto, entra a las
lexicon-heat-start-early = pavo dentro, ave dentro, pavo al horno
lexicon-heat-all-along = todo el tiempo, todo este tiempo, todo el rato, desde el principio, desde el comienzo, desde el inicio, todo el cocinado
lexicon-heat-was = estaba, estuvo, ha estado, tenía, tuve, lleva, llevaba, estado
lexicon-heat-off = apagado, apagada, apagados, sin encender
lexicon-heat-never = nunca encendí el horno, no encendí el horno, olvidé encender el horno, se me olvidó encender el horno, me olvidé de encender el horno, el horno nunca estuvo encendido, el horno no estaba encendido, horno no estaba encendido
lexicon-heat-back = otra vez a, de nuevo a, encendido otra vez, encendido de nuevo, vuelto a encender, volvió la luz, ya volvió la luz, ha vuelto la luz, regresó la luz, ya hay luz, hay luz otra vez, volvió, ya volvió, ha vuelto, ya ha vuelto, el horno ya funciona, horno funciona otra vez, ya funciona el horno, ya funciona, funciona otra vez, funciona de nuevo, el horno está encendido otra vez, ya está encendido otra vez, ya prendió otra vez, ya prendió, el fuego ha vuelto, el horno volvió, volvió el horno
lexicon-heat-returned = volvió la luz, ya volvió la luz, ha vuelto la luz, regresó la luz, ya hay luz, hay luz otra vez, volvió, ya volvió, ha vuelto, ya ha vuelto, el horno ya funciona, horno funciona otra vez, ya funciona el horno, ya funciona, funciona otra vez, funciona de nuevo, el horno está encendido otra vez, ya está encendido otra vez, ya prendió otra vez, ya prendió, el fuego ha vuelto, el horno volvió, volvió el horno
lexicon-fryer = freidora, frito, frita, freír, freírse, freírlo, freírla, fríe, fritura, aceite hirviendo
lexicon-salting-none = sin sal, sin salar, no salar, sin salmuera, nada de sal
lexicon-salting-dry = salmuera seca, salado en seco, salazón en seco, salar en seco, salado, salada, con sal
lexicon-salting-wet = salmuera, salmuera líquida, en salmuera, salmuera húmeda
lexicon-thawing-fridge = descongelar en la nevera, en la nevera, nevera, en el refrigerador, refrigerador, frigorífico, frigo, en el frigo
lexicon-thawing-cold-water = agua fría, descongelar en agua, en agua fría, descongelar en el fregadero, descongelarlo en el fregadero, descongelarla en el fregadero, en la tarja, descongelarlo en la tarja, cada cuánto le cambio el agua, cada cuánto cambio el agua, cada cuánto se cambia el agua, cada cuánto se le cambia el agua
lexicon-thawing-cook-frozen = cocinar congelado, desde congelado, sin descongelar
lexicon-ahead = día antes, el día antes, un día antes, el día anterior, día anterior, con antelación, por adelantado, la víspera, víspera, rellenarlo hoy, rellenarla hoy, rellenar hoy, rellenarlo un día antes, rellenarlo la noche anterior, noche anterior, la noche anterior
lexicon-not-ahead = el mismo día, mismo día
lexicon-elsewhere = en casa de mi hermana, en casa de mi hermano, en casa de mi madre, en casa de mi padre, en casa de mis padres, en casa de mi tía, en casa de mi abuela, en casa de mis suegros, en casa de, en otra casa, otra casa, fuera de casa, llevarlo, lo llevo, lo llevamos, llevar
lexicon-here = lo aso allí, la aso allí, lo hago allí, en casa, en mi casa, en nuestra casa, aquí
lexicon-drive = en coche, en carro, en auto, de viaje, de camino, de coche, de trayecto, de distancia, viaje, trayecto
## Carried to another house, and how it arrives
lexicon-bring = llevar, llevarlo, llevarla, llevo, llevamos, lo llevo, la llevo, lo llevamos, la llevamos, llevado, llevada, traer, traemos, traigo, transportar, transportarlo, transportarla, transportamos
lexicon-hot = caliente, calientes, bien caliente, recién hecho, recién hecha
lexicon-cold = frío, fría, fríos, frías, en frío
lexicon-at-home = tengo, tenemos, ya tengo, ya lo tengo, en mi congelador, comprado, ya comprado, ya está en casa, ya en casa, ya la tengo, ya lo tenemos, ya la tenemos, ya está aquí
lexicon-money = dólares, pesos, euros, centavos, céntimos
lexicon-use-by = caduca, caduca el, fecha de caducidad, caducidad, vence, vence el, fecha de vencimiento, consumir antes de, consumir antes del, úsese antes de, úsese antes del
lexicon-to-buy = hay que comprar, tengo que comprar, por comprar, comprar
lexicon-ask-shopping = qué necesito comprar, q necesito comprar, qué tengo que comprar, q tengo que comprar, qué hay que comprar, q hay que comprar, lista de la compra, lista de compras, la lista de la compra, qué falta comprar, qué me falta comprar, voy al súper qué falta, qué hace falta comprar, lista del súper, qué necesitamos comprar, q me falta
lexicon-shopping = compro, compramos, comprar, lo compro, recojo, recoger

## Dónde mide el termómetro
lexicon-spot-breast = pechuga
lexicon-spot-thigh = muslo, contramuslo, pierna, el muslo, pernil
lexicon-spot-pit = ahumador, horno, aire, parrilla, cámara, ambiente
lexicon-spot-stuffing = relleno
lexicon-spot-wing = ala, alas, alón

## Pasos
lexicon-step-buy = comprar, compra, comprarlo, comprarla, compro
lexicon-step-thaw = descongelar, descongelación, deshielo, descongelarlo, descongelarla, sacarlo del congelador, sacarla del congelador, sacar congelador, descongelo, lo descongelo
lexicon-step-water = agua, cambio de agua, cambiar el agua, cambiar agua
lexicon-step-salt = salar, sal, salmuera, salarlo, salarla, salo, lo salo, la salo
lexicon-step-rest = reposo, reposo con sal
lexicon-step-temper = atemperar, sacar de la nevera, sacar, sacarlo, sacarla
lexicon-step-fire = fuego, encender, precalentar, encender el fuego, encender horno, encender el horno, encender fuego, enciendo, enciendo el horno, precaliento
lexicon-step-on = al horno, al fuego, meter, poner, meterlo, meterla, ponerlo, ponerla, meter en horno, meto, pongo, lo meto, meter el ave
lexicon-step-check = control, comprobar, medir, termómetro
lexicon-step-pull = sacar del fuego, sacar del horno, retirar, sacarlo del horno, sacarla del horno, saco del horno, fuera del fuego
lexicon-step-stand = reposar, reposo final
lexicon-step-carve = trinchar, cortar, trincharlo, trincharla, trincho, corto, trincha, rebanar, rebanarlo, lo rebano, se corta, lo corto, lo parto, cortarlo, cortar el pavo, partir el pavo, se corta el pavo, corto el pavo, cómo se corta, cómo se corta el pavo, cómo se rebana, se rebana
lexicon-step-chill = enfriar, a la nevera, guardar, guardarlo, guardarla, guardarlas, guardar sobras, guardar las sobras
lexicon-step-pack = empacar, empaquetar
lexicon-step-travel = viajar, viaje, llevar
lexicon-step-reheat = recalentar, calentar
lexicon-step-serve = servir
lexicon-step-leftovers = sobras

lexicon-yes = sí, vale, claro, de acuerdo, ok, bueno
lexicon-no = no

## A job is done
lexicon-done = hecho, hecha, listo, lista, terminado, ya está, ya esta

## Sales por su grano
lexicon-salt-table = sal de mesa, sal fina, sal común, mesa
lexicon-salt-fine-sea = sal marina fina, marina fina, sal marina, sal de mar
lexicon-salt-pickling = sal para encurtir, sal de encurtir, sal de conservas, encurtir
lexicon-salt-flake-kosher = sal kosher en escamas, kosher en escamas, kosher de escamas, sal en escamas, sal de escamas, escamas
lexicon-salt-coarse-kosher = sal kosher gruesa, kosher gruesa, sal kosher de grano grueso
lexicon-salt-coarse-sea = sal marina gruesa, sal gruesa, sal gorda, marina gruesa
lexicon-salt-kosher = sal kosher, kosher
lexicon-salt-own = mi sal, mi propia sal, la mía
lexicon-ask-only = solo tengo, solo tenemos, solo hay, sólo tengo, no tengo más que
lexicon-salt-any = sal
lexicon-sodium = sodio
lexicon-butter = mantequilla, manteca
lexicon-strength-light = suave, ligera, poco salado, menos sal, menos salado, menos salada, no tan salado, con menos sal, con poca sal, poca sal
lexicon-strength-bold = fuerte, intensa, más salado, más sal, con más sal

## Lo que se pregunta
lexicon-ask-into = en, a, son, es, convertir, convierte, pasar, equivale, en vez de, sustituir, cambiar, cuánto es, cuánto son
lexicon-ask-how-much = cuánto, cuánta, qué cantidad, cantidad de
lexicon-ask-how-long = cuánto tiempo, cuánto tarda, cuánto tardan, cuántas horas, cuántos minutos, cuántos días, tiempo de, cuánto necesita, cuándo empiezo
lexicon-ask-when = cuándo, a qué hora, a qué horas
lexicon-ask-how-big = qué tamaño, de qué tamaño, qué peso, de qué peso, cuántos kilos, cuántas libras, cuánto pavo, cuánto pollo, tamaño
lexicon-ask-how-many = cuántos, cuántas, cuántas personas, para cuántos, para cuántas personas, alcanza para, da para, cuántos comen, alcanzará para, llega para, basta para, es suficiente para
lexicon-ask-enough = alcanza para, alcanzará para, da para, llega para, basta para, es suficiente para
lexicon-ask-how = cómo, qué, cuál, cambia algo, qué cambia, cómo se corta, cómo se corta el pavo, cómo se rebana, cada cuánto le cambio el agua, cada cuánto cambio el agua, cada cuánto se cambia el agua, cada cuánto se le cambia el agua
lexicon-ask-why = por qué, fuente, quién lo dice, de dónde sale
lexicon-ask-deep = qué tan profundo, hasta dónde, cuánto penetra, penetra, profundidad, cuánto entra
lexicon-ask-safe = seguro, segura, es seguro, está bien, vale, bastante, basta, suficiente, peligroso, malo, se puede, puedo, debo, hay que, hace falta, bien, ok, es peligroso, es verdad, es cierto
lexicon-ask-temperature = temperatura, a qué temperatura, qué temperatura, temperatura interna, grados, cuándo está hecho, debe marcar, marcar, a cuántos grados, cuántos grados, cuándo está listo por dentro, cómo sé si está, cómo sé que está, cómo sé si ya está, cómo sé que ya está, cómo sé si ya se coció, cómo sé si ya se cocinó, cómo sé cuándo está, cómo sé cuándo ya está, cómo saber si ya está, cómo sé si está bien cocido, cómo sé si ya está cocido, a cuánto pongo, a cuánto lo pongo, a cuánto va el horno, qué tan caliente
lexicon-ask-tell = cómo sé si, cómo sé que, cómo saber si, cómo sé cuándo, cómo sé si está, cómo sé que está, cómo saber, cómo sé
lexicon-ask-leave = dejar, dejarlo, dejarla, dejo
lexicon-ask-out = fuera, fuera de la nevera, a temperatura ambiente, temperatura ambiente, en la encimera, en la mesa, olvidé, sin refrigerar, en el coche, encimera, todavía en la mesa, siguen en la mesa, afuera, fuera del refri, fuera del refrigerador, en la barra, en la barra de la cocina
lexicon-ask-left = dejé, dejado, olvidé, quedó, se quedó
lexicon-ask-counter = encimera, en la encimera, a temperatura ambiente, temperatura ambiente, agua caliente, agua tibia, mesada, en la mesa, agua hirviendo
lexicon-ask-keep = dura, duran, aguanta, aguantan, conserva, conservan, se conserva, se conservan, guardar, de hace, estar, puede estar, mantengo, comer las sobras, comernos las sobras, se pueden comer las sobras, comer todavía, todavía se puede comer, aún se puede comer, dura el recalentado, aguanta el recalentado
lexicon-ask-hot-water = agua caliente, agua tibia, agua hirviendo
lexicon-ask-past-date = caducado, caducada, caducó, caduca, caducidad, fecha de caducidad, vencido, vencida, venció, vencimiento, fecha de vencimiento, consumo preferente, pasado de fecha, se pasó la fecha, ya se pasó la fecha, pasó la fecha, se pasó de fecha, fecha pasada, se le pasó la fecha
lexicon-ask-smell = huele, olor, apesta, baboso, babosa, viscoso, viscosa
lexicon-ask-smell-good = huele bien, huele muy bien, huele rico, huele bien rico, huele delicioso, huele genial, huele que alimenta, huele de maravilla, huele riquísimo, huele buenísimo, huele increíble, qué bien huele, qué rico huele, ya huele rico, ya huele bien
lexicon-habit-raw-inside = crudo por dentro, cruda por dentro, está crudo por dentro, crudo junto al hueso, crudo en el hueso, crudo cerca del hueso, sigue crudo, sigue cruda, todavía está crudo, aún está crudo, está crudo, está cruda, salió crudo, me quedó crudo, quedó crudo, quedó cruda, me salió crudo, me quedó cruda, le faltó por dentro, quedó crudo por dentro
lexicon-habit-cooked-said = hecho, hecha, lista, listo, cocido, cocida
lexicon-habit-not-there = no
lexicon-habit-ate-raw = comido crudo, nos lo hemos comido crudo, comimos pavo crudo, hemos comido pavo crudo, comimos crudo, lo comimos crudo
lexicon-habit-half-cook = a medias, cocinarlo a medias, asarlo a medias, medio cocinar, medio asar, acabarlo luego, acabarlo mañana, terminarlo mañana, termino mañana, acabo mañana, precocinar, precocinarlo
lexicon-habit-fridge-down = nevera apagada, nevera estuvo apagada, nevera rota, se rompió la nevera, se ha roto la nevera, se estropeó la nevera, se ha estropeado la nevera, nevera sin luz, nevera no enfría, la nevera no funciona, refri apagado, refri descompuesto, se descompuso el refri, se apagó el refri, refri sin luz, refri no enfría, se apagó la nevera
lexicon-habit-comes-salted = venía ya salado, venía salado, viene con salmuera, venía con salmuera, viene inyectado, ya venía salado, viene ya salado, ya trae sal, ya viene con sal, viene en salmuera, ya viene inyectado, ya viene salado, inyectado ya trae, inyectado ya trae sal, ya trae solución, trae solución
lexicon-ask-smell-bad = huele mal, no huele bien, huele raro, huele a podrido, huele agrio, huele a huevo, no huele muy bien, huele fuerte, huele feo
lexicon-habit-two-probes = cada termómetro, dos termómetros, los dos termómetros, uno dice, otro dice, uno marca, otro marca, termómetros no coinciden, los termómetros no coinciden
lexicon-habit-inject = inyecto, inyectar, inyectarlo, inyectado, le inyecto, inyectarle, inyección
lexicon-ask-low-salt = no puede comer sal, no puede tomar sal, no puede con sal, sin sal por prescripción, dieta sin sal, dieta baja en sal, dieta baja en sodio, baja en sodio, hipertenso, hipertensa, tensión alta, presión alta, hipertensión, presión arterial, tensión arterial, la presión, presion alta, sufre de la presión, padece de la presión, presión de la sangre
lexicon-ask-keep-hot = mantener caliente, mantenerlo caliente, mantener calientes, tener caliente, mantener
lexicon-ask-warm = caliente, calientes, pavo caliente
lexicon-ask-carry = transportar, transporto, llevar, llevo, llevarme
lexicon-ask-carry-hot = cómo lo llevo caliente, cómo la llevo caliente, cómo llevarlo caliente, cómo llevarla caliente
lexicon-ask-no-room = no cabe, no hay sitio, sin sitio, no hay espacio, sin espacio, llena, lleno, demasiado pequeña, muy pequeña, es pequeña
lexicon-ask-cool = enfriar, enfría, enfriarse, enfriarlo, enfriamiento, qué tan rápido, pavo caliente, aún caliente, todavía caliente, meter caliente
lexicon-ask-reheat = recalentar, recalentado, recaliento, calentar las sobras, recalentarlo, recalentarla, recalentarse, calentarlo, calentarla, recalentar el pavo
lexicon-ask-wash = lavar, lavo, enjuagar, lavarlo, enjuago
lexicon-ask-thaw = descongelar, descongelo, descongela, descongelarse, descongelación
lexicon-ask-stuff = rellenar, relleno, rellena, rellenarlo hoy, rellenarla hoy, rellenar hoy, rellenarlo un día antes, rellenarlo la noche anterior
lexicon-ask-roast = asar, hornear, cocinar, asado, tarda, cocer, ahumar, horno
lexicon-ask-cook = cocinar, cocino, asar, aso, hornear, cocer, asarlo, asarla, cocinarlo, cocinarla, hornearlo, hornearla
lexicon-ask-indoors = dentro, dentro de casa, en interiores, interior, garaje, en el garaje, cocina, en la cocina, tienda de campaña, balcón, porche
lexicon-fuel-charcoal = carbón, carbón vegetal, briquetas, brasas
lexicon-fuel-propane = propano, bombona, butano, garrafa
lexicon-fuel-pellets = pellets, pellet, pélets
lexicon-food-leftovers = sobras, pavo cocido, pavo asado, pollo asado, cocido, cocinado, carne cocida, dura el recalentado, aguanta el recalentado, lo que sobró, lo que sobra, lo que quedó, comerme el recalentado
lexicon-food-gravy = salsa, caldo, gravy
lexicon-food-stuffing = relleno, relleno cocido
lexicon-food-giblets = menudillos, menudos, menudencias, menudencia
lexicon-food-soup = sopa, guiso
lexicon-food-raw = crudo, cruda, fresco, fresca, descongelado
lexicon-place-fridge = nevera, en la nevera, refrigerador, en el refrigerador, frigorífico, frigo, en el frigo, refri, en el refri, el refri, heladera, en la heladera
lexicon-shelf = balda, estante, repisa, anaquel, parrilla del refri
lexicon-place-freezer = congelador, en el congelador, congelado, congelar
lexicon-label-per = por, por cada, cada
lexicon-ask-overnight = toda la noche, desde anoche, anoche
lexicon-ask-low-heat = baja temperatura, a baja temperatura, temperatura baja, a temperatura baja, a fuego lento
lexicon-ask-refreeze = recongelar, volver a congelar, congelarlo otra vez, congelar de nuevo, volver a congelarlo, volverlo a congelar, volver a congelarla, volví a congelar, lo volví a congelar, la volví a congelar, volvimos a congelar
lexicon-ask-colour = rosado, rosada, rosa, jugos, jugo, color, sangre, rojo, roja, rosita, rosadito, rosadita, color rosa, rosita por dentro
lexicon-ask-stand = reposar, reposo, descansar, reposa, reposarlo, reposarla

## Cuando algo va mal, y costumbres
lexicon-ask-help = qué hago, qué hacemos, qué puedo hacer, qué podemos hacer, ayuda, y ahora qué, y si, qué pasa si, qué hago con, qué hacemos con, q hago con, qué se hace con, se me olvidó sacarlo del congelador, se me olvidó sacarla del congelador, olvidó sacarlo del congelador, olvidó sacarla del congelador, se me olvidó sacar el pavo del congelador, olvidó sacar el pavo del congelador, olvidé sacarlo del congelador, olvidé sacarla del congelador, no lo saqué del congelador, no la saqué del congelador, todavía está congelado por dentro, todavía congelado por dentro, sigue congelado por dentro, está congelado por dentro, todavía está congelada por dentro, sigue congelada por dentro, sigue duro por dentro
lexicon-ask-oven-down = roto el horno, horno roto, se rompió el horno, se estropeó el horno, estropeado el horno, horno estropeado, no funciona el horno, el horno no funciona, horno no funciona, horno no calienta, se fue la luz, se ha ido la luz, sin luz, no hay luz, se apagó el horno, se apagó el fuego, el fuego se apagó, fuego apagado, se ha apagado el fuego, se apagó el ahumador, ahumador apagado, se apagó la parrilla, sin gas, se acabó el gas, se acabó el carbón, se fue el gas, se acabo el gas, se acabo el carbon, sin carbón, se terminó el gas, me quedé sin gas, me quedé sin carbón, el horno se apagó, horno se apagó, se murió el horno, el horno se murió, no calienta, no prende el horno, el horno no prende, horno no prende, no enciende el horno, el horno no enciende, horno no enciende, el horno no calienta, no calienta el horno, no jala el horno, se me fue el gas, se me acabó el gas
lexicon-peril-fire = en llamas, hay llamas, hay una llama, salen llamas, unas llamas, con llamas, veo llamas, llamas en el horno, llamas dentro, llamas en la cocina, hay fuego, hay fuego en el horno, fuego en el horno, fuego dentro del horno, se incendió, se incendia, se está incendiando, incendio, incendiando, se prendió la grasa, se ha prendido la grasa, grasa prendida, se prendió fuego, prendió fuego, prendido fuego, se ha prendido fuego, se ha prendido el aceite, se prendió el aceite, grasa ardiendo, está ardiendo, arde el horno, el horno arde, arde la grasa, se quema el horno, se está quemando el horno, se está quemando la cocina, se quema la cocina
lexicon-peril-gas = huele a gas, huele mucho a gas, olor a gas, huelo a gas, huelo gas, fuga de gas, escape de gas, se escapa el gas, se escapa gas, apesta a gas
lexicon-nearly-out = casi sin, queda poco, queda poca, quedan pocos, casi se acaba, a punto de acabarse, se está acabando
lexicon-speed = kmh, kph
lexicon-ask-come-up = tardó en llegar, tardó, en llegar a, llegar a, llegó a, alcanzó, en alcanzar, alcanzar, subir a
lexicon-ask-too-fast = demasiado rápido, muy rápido, demasiado pronto, demasiado deprisa, antes de tiempo, muy pronto
lexicon-ask-too-slow = demasiado lento, muy lento, demasiado despacio, muy despacio, tarda demasiado, tarda mucho, no se hace, no se cocina, no avanza
lexicon-ask-garage = garaje, en el garaje, trastero, porche, en el porche, balcón, en el balcón, terraza, en la terraza, en el coche
lexicon-ask-baste = regar, regarlo, regarla, rociar, rociarlo, rociarla, bañar con su jugo, bañarlo, bañarla, pintarlo, mojarlo, abrir el horno, abro el horno, lo tengo que bañar, bañar cada rato, lo baño, bañándolo, bañar el pavo, barnizarlo, barnizar
lexicon-ask-foil = se está quemando la piel, se esta quemando la piel, se quema la piel, se está dorando mucho, se esta dorando mucho, muy dorado, muy oscuro, cubrir con aluminio, cubrirlo con aluminio, tapar con aluminio, taparlo con aluminio, tapar con papel aluminio, se está quemando, se esta quemando, se quema, muy oscura, demasiado oscuro, demasiado oscura, demasiado dorado, muy dorada, quemada, con aluminio, con papel aluminio, con papel de aluminio, con papel albal, le quito el aluminio, quito el aluminio, quitar el aluminio, quitarle el aluminio, lo destapo, cuándo lo destapo, se me quemó la piel, se quemó la piel
lexicon-ask-where = dónde, en dónde, adónde
lexicon-ask-thermometer = termómetro, sonda
lexicon-habit-bag-inside = bolsa dentro, la bolsa dentro, bolsita dentro, menudos dentro, los menudos dentro, menudillos dentro, los menudillos dentro, dejé la bolsa, deje la bolsa, dejé los menudos, deje los menudos, dejé los menudillos, plástico dentro
lexicon-habit-pop-up = botón rojo, el botón saltó, saltó el botón, termómetro que salta, temporizador que salta, salió el botón, pincho rojo
lexicon-habit-probe-out = se salió la sonda, la sonda se salió, se cayó la sonda, la sonda se cayó, se salió el termómetro, el termómetro se salió, se cayó el termómetro, termómetro roto, el termómetro está roto, se rompió el termómetro, el termómetro no funciona, el termómetro no va, se murió el termómetro
lexicon-habit-mess = goteó, ha goteado, gotea, se derramó, se ha derramado, jugo crudo, jugo en la nevera, tabla de cortar, limpiar después, cómo limpio, derramado
lexicon-habit-dog = perro, perra, gato
lexicon-aside-drink = vino, cava, cerveza, refrescos, champán, sidra
lexicon-habit-fragile = embarazada, embarazadas, defensas bajas, inmunodeprimido, inmunodeprimida, quimio, quimioterapia, mi abuela puede comer, mi abuelita puede comer, abuelita puede comer, abuela puede comer, abuelito puede comer, bebé puede comer, el bebé puede comer
lexicon-habit-temper = a temperatura ambiente antes, atemperar, atemperarlo, atemperarla, que se atempere, que coja temperatura, que tome temperatura, llegar a temperatura ambiente, sacarlo antes para que se temple
lexicon-habit-finish-oven = terminar en el horno, terminarlo en el horno, terminarla en el horno, acabar en el horno, acabarlo en el horno, pasarlo al horno, pasarla al horno
lexicon-habit-early = listo antes de tiempo, lista antes de tiempo, hecho antes de tiempo, hecha antes de tiempo, terminó antes, ya está listo muy pronto, demasiado pronto, horas antes de la cena, hora antes de la cena
lexicon-habit-neck = cuello, pescuezo
lexicon-habit-side-up = pechuga arriba, pechuga hacia arriba, pechuga para arriba, pechuga abajo, pechuga hacia abajo, boca arriba, boca abajo, qué lado arriba
lexicon-habit-cover = tapar, taparlo, taparla, tapado, tapada, destapado, destapada, cubrir, cubrirlo, cubrirla, cubierto, cubierta, envuelto, envuelta, envolver, lo dejo destapado, la dejo destapada
lexicon-habit-must = debo, hay que, hace falta, tengo que, o no, es necesario, es mejor, mejor, vale la pena, lo dejo destapado, la dejo destapada
lexicon-habit-or = o
lexicon-habit-rack = rejilla, parrilla de horno
lexicon-habit-truss = atar las patas, atarle las patas, atarlo, atarla, bridar, bridarlo, bridarla, cordel, hilo de cocina, bridarle, amarrar las patas, amarrarle las patas, amarrarlo
lexicon-habit-pan-water = agua en la bandeja, agua a la bandeja, agua en la fuente, caldo en la bandeja, poner agua, añadir agua, agua a la charola, agua en la charola
lexicon-habit-oven-bag = bolsa de asar, bolsa de horno, bolsa para asar, bolsa para horno, en una bolsa, bolsa de papel, bolsa para hornear, bolsa de hornear
lexicon-habit-weather = lloviendo, llueve, viento, nevando, nieva, tormenta, ráfagas
lexicon-habit-smoke = humo blanco, humo espeso, qué madera, que madera, qué leña, que leña, astillas, virutas, madera de manzano, puedo ahumarlo, puedo ahumarla, se puede ahumar
lexicon-habit-grill = parrilla, barbacoa, asador
lexicon-habit-gravy = hacer la salsa, hacer salsa, jugos de la bandeja, jugo de la bandeja, jugos del asado, espesar, hago el gravy, hacer el gravy, hacer gravy, hago la salsa, se hace el gravy
lexicon-habit-salty = salado de más, demasiado salado, demasiado salada, muy salado, muy salada, salada de más
lexicon-habit-salted-twice = salado dos veces, salada dos veces, salé dos veces, lo salé dos veces, la salé dos veces, puse demasiada sal, me pasé de sal, me pasé con la sal
lexicon-habit-carcass = carcasa, huesos, esqueleto
lexicon-habit-crisp = crujiente, piel crujiente, gomosa, correosa, levadura química, polvo de hornear
lexicon-habit-fat = mantequilla bajo la piel, mantequilla debajo de la piel, aceite o mantequilla, mantequilla o aceite, untar con mantequilla, untarlo con mantequilla, aceite en la piel
lexicon-habit-preheat = precalentar, precalentarlo, precalentado
lexicon-habit-microwave = microondas
lexicon-last = pasado, pasada

## Frases cortas, solo como texto entero: palabras que nada dicen, lo hecho, lo no hecho, por paso
lexicon-talk-filler = yo, ya, lo, la, los, las, le, el, he, ha, hemos, han, esta, estan, me, se, acabo, acabamos, de, que, pues, ahora, mismo, ok, vale, sí, bien, por, fin, oye, pavo, pava, ave, pollo, pato, ganso, oca, bicho, un, una, mi, nuestro, ay, uy, todo, toda, todos, todas, hola, gracias, porfa, eso, chicos, y, es, ahi, hace, momento, rato, poco, uf, ufa, por fin, antes de tiempo, hmm, hm
lexicon-talk-done = hecho, hecha, listo, lista, terminado, terminada, ya está, está hecho, hecho ya, acabado, todo listo, ya lo hice, lo hice, está listo, ya está hecho, ya quedó, quedó, ya quedo, ya quedó listo, ya quedó lista, listo calisto, ya la hice
lexicon-talk-not = aún no, todavía no, no hecho, no está, se me olvidó, me olvidé, me olvidé de, olvidé, olvidó, se nos olvidó, nos olvidamos de, olvidamos, no he podido, no pude, no podido, no lo he hecho, no me ha dado tiempo, sin hacer, no ha dado tiempo a, no hice, aún no he, todavía no he, no he, ya mero, ya mero está, ya merito, casi, ya casi, ya casi está, todavía le falta, le falta poco, ahorita, al ratito
lexicon-talk-asking = puedo, podemos, se puede, debo, debería, hace falta, hay que, cómo, cuándo, cuánto, cuánta, cuántos, qué, dónde, quién, cuál, por qué, sigue siendo, está bien, qué es, cómo se
lexicon-talk-asks-of = acaso
lexicon-talk-ahead = esta noche, mañana, luego, más tarde, después, voy a, vamos a, va a, hay que, tengo que, tenemos que, debo, falta
lexicon-talk-behind = esta mañana, por la mañana, anoche
lexicon-talk-when = cuándo comemos, cuándo cenamos, a qué hora comemos, a qué hora cenamos, a qué hora se come, cuándo se come, cuándo está listo, cuándo estará listo, cuándo estará, cuánto falta, cuánto queda, a qué hora está listo, cuándo está hecho, cuándo estará hecho, ya lo puedo sacar, lo puedo sacar, puedo sacarlo, ya está listo, ya estará, ya se puede sacar, a qué hora va a estar, a qué hora estará, a qué hora va a estar listo, falta mucho, cuánto le falta, cuánto tiempo le falta, a q hora va a estar, a q hora va a estar listo, a q hora está, q tanto le falta, llegamos, llegamos a tiempo, llego a tiempo, voy a llegar a tiempo, vamos a llegar a tiempo, vamos bien de tiempo, voy bien de tiempo, vamos a tiempo, voy a tiempo, vamos bien, va a estar a tiempo, estará a tiempo, estará listo a las, va a estar listo a las, estará listo para las, va a estar listo para las, estará a las, llegamos a las, alcanza el tiempo, nos da tiempo, me da tiempo, cómo vamos de tiempo, vamos tarde, voy tarde
lexicon-talk-next = qué sigue, qué toca, qué toca ahora, qué viene ahora, cuál es el siguiente paso, siguiente paso
lexicon-talk-undone-thaw = sigue congelado, sigue congelada, sigue helado, sigue helada, sigue duro, sigue dura, sigue duro como una piedra, como una piedra, sigue como una piedra, duro como una piedra, duro como piedra, sigue duro como piedra, sigue como piedra, sigue medio congelado, sigue medio congelada, sigue descongelando, sigue descongelándose, no descongelado, no descongelada, sin descongelar, tiene hielo dentro, con hielo dentro, hielo dentro, sigue con hielo, sigue con hielo dentro, sigue congelado por dentro, congelado por dentro, sigue congelado dentro, congelado dentro, todavía congelado, todavía congelada, todavía helado, todavía helada, todavía duro, todavía dura, todavía medio congelado, todavía medio congelada, todavía descongelando, aún congelado, aún congelada, aún helado, aún helada, aún duro, aún dura, aún medio congelado, aún medio congelada, aún descongelando, todavía tiene hielo, tiene hielo, todavía tiene hielo adentro, tiene hielo adentro, todavía está duro, está duro de en medio, todavía está duro de en medio, duro de en medio, todavía está duro en medio, sigue duro por dentro
lexicon-talk-icy = dentro, por dentro, hielo, medio, media, centro, adentro, en medio, de en medio
lexicon-talk-thawed = descongelado, descongelada, ya está descongelado, ya está descongelada, se descongeló, se ha descongelado, ya se descongeló, totalmente descongelado, terminó de descongelarse
lexicon-talk-thawing = se está descongelando, estoy descongelando, descongelando en agua, descongelando en el refri, descongelando en la nevera
lexicon-talk-undone-water = sin cambiar el agua, agua sin cambiar, no cambié el agua, no he cambiado el agua, olvidé cambiar el agua, se me olvidó cambiar el agua, se me olvidó el agua
lexicon-talk-undone-salt = sin salar, no salado, no salada
lexicon-talk-undone-on = no en horno, no está en el horno, no en el horno, sin meter
lexicon-talk-undone-pull = sigue en el horno, sigue en horno, sigue dentro, sigue cocinándose, sigue en ahumador, otra vez al horno, de vuelta al horno, al horno otra vez, lo he vuelto a meter, lo volví a meter, otra vez dentro, de nuevo al horno, otra vez en el horno
lexicon-talk-undone-chill = sigue fuera, siguen fuera, sigue en la mesa, siguen en la mesa, sigue en mesa, siguen en mesa, lo dejé en la mesa, la dejé en la mesa, lo dejé fuera, la dejé fuera, se me olvidó guardarlo, se me olvidó guardarla, se me olvidó en la mesa, olvidé guardarlo
lexicon-talk-did-buy = comprado, comprada, compré, compramos, tengo, en casa, tengo el pavo, tenemos el pavo
lexicon-talk-did-thaw = descongelando, descongelándose, descongelado, descongelada, empezado a descongelar, empezado descongelar, descongelación empezada, sacado del congelador, sacada del congelador, fuera del congelador, saqué del congelador, en nevera, en la nevera, metido en nevera, metida en nevera, metido en la nevera, metida en la nevera, puesto en la nevera, puse en la nevera, puesto en nevera, puse en nevera, metí en nevera, metí en la nevera, en agua, en el agua, en agua fría, puesto en agua, metido en agua, en frigo, en el frigo, metido en frigo, metido en el frigo, puse a descongelar, lo puse a descongelar, puse a descongelar en el refri, lo puse a descongelar en el refri, metí al refri a descongelar, lo metí al refri a descongelar, lo metí al refri, en el refri, está en el refri, metí al refri, ya está en el refri, descongelando en el refri, puse a descongelar en refri, puse descongelar en refri, puse descongelar, metí a descongelar, metí descongelar en refri, metí refri, en refri, metí refri a descongelar, metí refri descongelar, puse en la nevera a descongelar, en la nevera a descongelar, en el refri a descongelar, empecé a descongelar en agua, empecé a descongelarlo en agua, empezado a descongelar en agua, descongelando en agua, descongelándose en agua, descongelando en el fregadero, a descongelar en agua, metimos al refri, metimos a la nevera, lo metimos al refri, lo metimos a la nevera, estoy descongelando, estoy descongelando en agua, la estoy descongelando, lo estoy descongelando, la estoy descongelando en agua, lo estoy descongelando en agua, estoy descongelando en agua fría, la estoy descongelando en agua fría, lo estoy descongelando en agua fría, se está descongelando, se está descongelando en agua, se está descongelando en el refri, tengo en agua, la tengo en agua, lo tengo en agua, la tengo en agua fría, lo tengo en agua fría, puse en agua, la puse en agua, lo puse en agua, puse en agua fría, está en agua, está en agua fría
lexicon-talk-did-water = cambiada el agua, cambiado el agua, cambiada agua, cambiado agua, agua cambiada, cambié el agua, cambié agua, agua nueva, cambiamos el agua, cambiamos agua
lexicon-talk-did-salt = salado, salada, salé, salamos, con sal, puesto sal, puesta sal, sal puesta, en salmuera, en la salmuera, metido en salmuera, echado sal, puse sal, eché sal
lexicon-talk-did-rest = reposando, en reposo
lexicon-talk-did-temper = fuera de la nevera, fuera nevera, sacado de la nevera, sacada de la nevera, sacado nevera, sacada nevera, saqué nevera, saqué de la nevera, fuera, sacado, sacada, sacamos de la nevera, sacamos del refri, saqué del refri, saqué refri, fuera del refri, sacado del refri
lexicon-talk-did-fire = encendido, encendida, encendí, encendí el fuego, encendido el fuego, fuego encendido, encendido fuego, encendí fuego, horno encendido, encendido horno, encendido el horno, encendí horno, encendí el horno, horno caliente, horno puesto, precalentando, precalentado, horno precalentado, horno precalentando, ahumador encendido, encendido ahumador, encendido el ahumador, ahumador listo, brasas listas, carbón encendido, puesto horno, puesto el horno, prendí el horno, prendí horno, prendido, prendí, el horno está prendido, horno prendido, prendió, ya prendió, prendió el horno, prendió horno, ya prendió el horno, prendimos el horno, prendimos horno, prendimos, encendimos, encendimos el horno, encendimos horno
lexicon-talk-did-on = al calor, sobre el calor, en el horno, en horno, al horno, dentro, dentro horno, dentro del horno, metido, metida, metí, metido en el horno, metida en el horno, metido en horno, metida en horno, metí en horno, puesto, puesta, puesto en horno, puse en horno, en el ahumador, en ahumador, en la parrilla, en parrilla, al fuego, cociéndose, asándose, cocinándose, haciéndose, puesto en ahumador, adentro, ya está adentro, está adentro, lo metí, la metí, lo metí al horno, metí al horno, lo metimos, metimos, metimos al horno, metimos horno, metimos en el horno, metimos en horno, lo metimos al horno, hemos metido, metido al horno, metimos al ahumador, lo metimos en el horno, pusimos al horno, pusimos en el horno, está en el horno, ya está en el horno
lexicon-talk-did-check = comprobado, medido, medida, comprobada, mirado
lexicon-talk-did-pull = fuera del horno, fuera horno, sacado del horno, sacada del horno, saqué del horno, sacado, sacada, fuera, saqué, fuera del fuego, fuera del calor, sacado del fuego, retirado, retirada, sacado del ahumador, fuera del ahumador, lo saco, la saco, lo saco ya, lo estoy sacando, lo estamos sacando, saco el pavo, ya lo saqué, lo saqué, la saqué, ya la saqué, sacamos, sacamos del horno, sacamos horno, lo sacamos, la sacamos, ya lo sacamos, lo sacamos del horno, sacaron del horno, sacó del horno, lo hemos sacado
lexicon-talk-did-stand = reposando, en reposo
lexicon-talk-did-carve = trinchado, trinchada, cortado, cortada, trinché, corté, trinchamos, rebanado, rebanada, rebané, rebanamos, cortamos, lo rebané, lo corté, lo cortamos, ya está partido, está partido, lo partí, ya lo partí, lo partimos, ya lo partimos
lexicon-talk-did-chill = guardado, guardada, guardadas, guardados, guardé, guardamos, sobras guardadas, guardado sobras, guardadas sobras, guardado las sobras, sobras en nevera, sobras en la nevera, a nevera, a la nevera, en nevera, en la nevera, metido en nevera, metida en nevera, metido en la nevera, metida en la nevera, puse en nevera, puse en la nevera, recogido, ya guardé las sobras, guardé las sobras, guardé lo que sobró, metí todo al refri, metí todo en el refri, metí todo a la nevera, metí todo en la nevera, todo en la nevera, todo en el refri, ya está todo en la nevera, ya está todo en el refri, todo está en la nevera, todo guardado, ya guardé todo, guardé todo, ya metí todo al refri, las sobras están en la nevera, sobras en el refri, metimos todo al refri, metimos al refri, metimos todo a la nevera, metimos a la nevera, metimos todo en la nevera, todo al refri, metimos refri, todo refri, metí lo que sobró al refri, lo que sobró al refri, sobró al refri, metí sobró al refri, guardé sobró, lo que sobró está en el refri, metí el recalentado al refri, metí recalentado al refri, lo que sobró ya está en el refri
lexicon-talk-did-pack = empacado, empaquetado, empaquetada, en coche, en el coche, cargado, empacada
lexicon-talk-did-travel = en camino, camino, salido, salimos, vamos, vamos en camino, saliendo
lexicon-talk-did-reheat = recalentado, recalentada, recalentando, calentado, calentada
lexicon-talk-did-serve = servido, servida, en la mesa, en mesa, comiendo, comido, cenando, cenado, estamos cenando, ya estamos cenando, estamos comiendo, ya cenamos, ya servimos
lexicon-talk-did-leftovers = sobras acabadas, acabado sobras, acabado las sobras, tirado sobras, tirado las sobras, no quedan sobras
lexicon-talk-toward = en, a, hasta, cerca
lexicon-talk-give = da, dale, pasa, pásale, pide, pídele, asigna, encarga, puede, puedes, pregunta, pregúntale, hace, se encarga, encárgate, trincha
lexicon-talk-mine = yo, yo me encargo de, me encargo de, yo me encargo del, me encargo del, yo me ocupo de, me ocupo de, me ocupo del, yo me ocupo del, yo hago, hago, yo lo, yo la, voy a, yo voy a, déjame, puedo, yo puedo, me toca, me pido, yo me encargo, me encargo, yo me ocupo, me ocupo
lexicon-talk-mine-last = yo, lo hago yo, la hago yo, me encargo yo, es mío, es mía, va por mi cuenta
lexicon-talk-mine-link = el, la, lo, los, las, de, del, a, al, con, para, yo, tarea, esta noche, mañana, hoy, luego, por la mañana, con el, con la
lexicon-talk-manners = perdón, perdona, perdonen, perdonad, disculpa, disculpen, lo siento, lo siento mucho, chicos, chicas, gente, hola, oye, oigan, familia, a todos, todos, al final, hoy, mañana, ya, esta vez, este año, lamentablemente, desgraciadamente, por desgracia, ay, uf, pero, y, es que, porque, mucho, gracias, por favor, porfa, también, entonces, pues, a la cena
lexicon-talk-gone = no puedo ir, no voy a poder ir, no podré ir, no voy a ir, ya no voy, no puedo venir, no podré venir, no voy a poder venir, no voy a llegar, no puedo asistir, estoy enfermo, estoy enferma, estoy malo, estoy mala, ando malo, ando mala, me puse enfermo, me puse enferma, me he puesto malo, me he puesto mala, me enfermé, tengo fiebre, tengo gripe, tengo la gripe, no cuenten conmigo, no contéis conmigo, no cuentes conmigo, me bajo, me borro, me surgió algo, me ha surgido algo, me salió algo, no me esperen, no me esperéis, tengo que cancelar, me toca cancelar
lexicon-talk-gone-short = enfermo, enferma, con fiebre, con gripe
lexicon-talk-cant = no puedo, yo no puedo, no puedo hacerlo, yo no puedo hacerlo, no lo puedo hacer, no voy a poder, no podré, no voy a poder hacerlo, no podré hacerlo, no puedo con eso, no me da tiempo, no me va a dar tiempo, no alcanzo, que lo haga otro, que lo haga alguien más
lexicon-talk-willing = voy, ya voy, yo voy, voy yo, lo hago, yo lo hago, lo hago yo, me encargo, yo me encargo, me encargo yo, cuenta conmigo, cuenten conmigo, contad conmigo, en eso estoy, estoy en ello, ya estoy en ello, puedo, yo puedo, sí puedo, puedo hacerlo, sin problema, con gusto, encantado, encantada, por supuesto, déjamelo a mí, me toca a mí, yo
lexicon-talk-unwilling = no, mejor no, no quiero, yo no, paso, esta vez no
lexicon-talk-suggest = podemos, podríamos, podriamos, y si, qué tal, que tal, se puede, se podría, puedes, podrías, puede ser, podría ser, sería posible, es posible, les parece, os parece, te parece, hay manera, tenemos que, quiero, quisiera, quisiéramos
lexicon-talk-suggest-move = movamos la cena, mueve la cena, mover la cena, pasa la cena, pasemos la cena, cenemos, comamos, cena a las, mejor a las
lexicon-talk-everything = todo, todos, todas, todo lo mío, mis tareas, todas mis tareas, mis trabajos
lexicon-talk-kind-check = temperaturas, la temperatura, temperatura, termómetro, lecturas, mediciones
lexicon-talk-meat = carne, temperatura, temperaturas, temp, sonda, termómetro, lonchas, rebanadas, trozos, sobras, grados, grado, f, c, fahrenheit, celsius
lexicon-talk-meat-reads = a, en, del, centro, dentro, interior, marca, marcan, lee, dice, muestra, todavía, aún, solo, unos, unas, casi, bajó, baja, bajado, ha, va, por, partes, ya, sigue, hasta, como, ahorita, mide, tiene, quedó, más, gruesa, parte
lexicon-talk-meat-tells = marca, marcan, lee, dice, muestra, ahora, todavía, bajó, mide, sigue
lexicon-talk-meat-rests = hielera, caja, cava, papel, aluminio, toallas, envuelto, envuelta, reposando, reposo
lexicon-talk-short-breast = p, pe, pech, pec, pch
lexicon-talk-short-thigh = m, mu, mus, ms, pier
lexicon-talk-short-wing = alon
lexicon-talk-short-stuffing = re, rel, rell
lexicon-talk-short-pit = ho, hor
lexicon-talk-everywhere = en todas partes, por todas partes, en todos lados, por todos lados, en todos los puntos, en todos los sitios, en los tres, en todo
lexicon-talk-slip = perdón, perdona, perdonad, uy, ups, digo, quise decir, quise, decir, quería decir, quería, no, jaja, jeje, error, corrijo, mejor dicho, dicho, mejor, espera, lo siento, siento, mal, equivoqué, errata
lexicon-talk-doubting = no puede ser, eso no puede ser, no cuadra, eso no cuadra, está mal, parece mal, parece muy bajo, es muy poco, qué raro, que raro, raro, no tiene sentido
lexicon-talk-eat = se puede comer, todavía se puede comer, aún se puede comer, podemos comer, comestible, sigue bueno, sigue buena, sigue bien, aún sirve, todavía sirve, lo tiro, la tiro, lo tiramos, hay que tirarlo, ya es tarde, demasiado tarde, está bueno todavía, nos lo podemos comer, lo podemos comer
lexicon-talk-kind-fire = horno, calor, ahumador, parrilla, asador, fuego, carbón, brasas, precalentado
lexicon-talk-kind-travel = conducir, manejar, llevo en coche, conduzco, manejo, transporte
lexicon-talk-kind-carve = trinchado, cuchillo
lexicon-talk-kind-water = cambios de agua, agua
lexicon-talk-kind-buy = compras, compra
lexicon-talk-who-does-what = quién hace qué, quien hace que, quién tiene qué, quién se encarga de qué
lexicon-talk-cancel = cancela el plan, cancelar el plan, cancela, cancelar, cancelado, se cancela, se cancela la cena, cancela la cena, cancela todo, termina el plan, borra el plan, no hay cena, ya no hay cena, anula el plan, anula la cena
lexicon-talk-who = quién, quien, quién va a, quien va a, quién se encarga de, quién tiene
lexicon-talk-asked-pull = lo saca, saca el pavo
lexicon-talk-asked-on = lo mete, mete el pavo
lexicon-talk-asked-fire = enciende, enciende el horno, prende el horno
lexicon-talk-asked-check = mide, mira la temperatura, mira las temperaturas
lexicon-talk-asked-water = cambia el agua, cambiar el agua
lexicon-talk-asked-buy = compra, comprar, compra el pavo
lexicon-talk-asked-carve = trincha, trinchar, corta, trincha el pavo, corta el pavo
lexicon-talk-asked-salt = sala, salar, sala el pavo, lo sala
lexicon-talk-late = llega tarde, llegan tarde, tarde, con retraso, se retrasa, se retrasan, retrasados, en un atasco
lexicon-talk-late-elsewhere = tarde al, tarde a, tarde para
lexicon-talk-of-us = estoy, estamos, yo estoy
lexicon-talk-other-year = el año pasado, año pasado, la última vez, la navidad pasada, hace años, hace un año, otros años
lexicon-talk-dish-add = añade, añadir, agrega, agregar, además, también, suma
lexicon-talk-dish-and = y, también, además
lexicon-talk-dish-doing = hago, hacemos, haré, quiero
lexicon-talk-both = los dos, las dos, ambos, ambas, ambos pavos
lexicon-talk-dish-remove = quita, quitar, elimina, borra, sin
lexicon-talk-dish-link = en, el, la, a, al, por, para, durante, tarda, necesita, y, con, los, las, un, una
lexicon-talk-undo = deshacer, deshaz, deshazlo, deshaz eso, deshacer eso, me equivoqué, me he equivocado, me equivoque, botón equivocado, no era eso, atrás, retíralo, quita eso
lexicon-talk-discard = déjalo, olvídalo
lexicon-talk-thrown = tiré, tirado, tirada, lo tiré, la tiré, lo tiramos, tiramos, lo tiré todo, tiré todo, tiramos todo, lo hemos tirado, hemos tirado, he tirado, tirado todo, a la basura, en la basura, tirado a la basura, tiré a la basura, tirado a basura, hubo que tirar, hubo que tirarlo, tuve que tirar, tuve que tirarlo, tuve que tirarla, tuvimos que tirar, tuvimos que tirarlo, boté, lo boté, botado, botamos
lexicon-talk-greeting = hola, buenas, buenos días, buen día, buenas tardes, buenas noches, qué tal, hola qué tal, hola a todos, hola buenas, muy buenas, ey, feliz navidad, hola buenos días, hola buenas tardes
lexicon-talk-assent = ok, okey, vale, de acuerdo, sí, sí por favor, claro, claro que sí, perfecto, genial, bien, muy bien, está bien, me parece bien, adelante, venga, dale, acepto, aceptado, aceptar, trato hecho, hagámoslo, estupendo, bueno, suena bien, por mí bien, vale perfecto, ok perfecto, sí vale, hazlo, así está bien
lexicon-talk-thanks = gracias, muchas gracias, mil gracias, gracias a ti, vale gracias, ok gracias, perfecto gracias, muchísimas gracias, te lo agradezco

## Pedir ayuda en palabras; los nombres de los idiomas
lexicon-help = ayuda, ayúdame, me puedes ayudar, qué sabes hacer, cómo funciona
lexicon-language-en = inglés, english
lexicon-language-es = español, castellano, spanish
lexicon-language-fr = francés, français, french
lexicon-language-de = alemán, deutsch, german
lexicon-language-pt = portugués, português, portuguese, brasileño
lexicon-language-it = italiano, italian

## Quiet hours, and that there are none
lexicon-quiet = silencio, horas tranquilas, horas de silencio, no molestar
lexicon-quiet-off = fuera, ninguna, nunca, no, quitar, sin

## A brine's percentage of the water; whose spoons
lexicon-ask-of-water = del agua, de agua, sobre el agua
lexicon-spoons-us = americana, americano, estadounidense
lexicon-spoons-metric = métrica, métrico
lexicon-spoons-uk = británica, británico, inglesa
lexicon-spoons-australia = australiana, australiano

## Una palabra que niega la siguiente
lexicon-negation = olvida el, olvida, no, no en el, sin el, sin, nada de, nada del
