### Wörter, die Leute tippen, nach dem, was sie bedeuten. Niemand sieht sie; das Programm liest sie.
### Each value is a list of words and phrases, separated by commas. Case, umlauts left off and plain endings (see
### lexicon-endings) need no entry of their own, nor do umlauts written ae, oe, ue; common words of five letters and more
### are also read with a slip of the finger. A translator lists what people really write, abbreviations and compounds
### included; the longest phrase wins. English words are understood too where they mean nothing else here.

## How dates are written: mdy or dmy. Whether a comma marks decimals: yes or no.
lexicon-date-order = dmy
lexicon-decimal-comma = yes
## What may be added to a word: plurals and cases.
lexicon-endings = s, es, e, n, en, er, em
## Words that lose their end before a vowel and cling to the next word (French l'eau); none here.
lexicon-elisions = { "" }
## What a half before an hour says: past it (half five is 5:30) or to it (halb sechs is 5:30).
lexicon-half-hour = to

## Words that look like a slip of another word here and are not.
lexicon-plain = meine, deine, seine, keine, meiner, deiner, seiner, keiner, einen, einem, einer, eines, unter, über, oben, unten, immer, wieder, weiter, leider, nicht, nichts, macht, machen, gemacht, nacht, nachts, recht, rechts, leicht, reicht, liegt, liegen, steht, stehen, stand, kommt, kommen, geht, gehen, gibt, geben, haben, hatte, wurde, werden, waren, sollte, sollen, wollte, wollen, konnte, können, kann, musst, müssen, darf, dürfen, brauche, brauchen, braucht, nehme, nehmen, nimmt, lasse, lassen, lässt, finde, finden, kuchen, kochen, kocht, suche, suchen, sache, sachen, woche, wochen, lachen, danke, denke, trinken, tanken, butter, mutter, vater, bruder, schwester, tante, onkel, freunde, freundin, nachbar, gäste, leute, heute, morgen, sorgen, abend, abends, oder, ohne, sonst, sondern, besser, messer, wasser, wassers, masse, klasse, strasse, grosse, grosser, kleine, kleiner, ganze, ganzer, halbe, halber, viele, vielen, alles, alle, andere, anderen, erste, ersten, zweite, letzte, letzten, nächste, stelle, stellen, platte, platten, platz, blatt, teller, keller, heller, helles, dunkel, gabel, nadel, nudel, nudeln, hunde, hund, stunde, runde, grund, mund, rand, wand, stein, beine, beiden, reise, reis, leise, weise, weiß, heiß, heiße, fleisch, flasche, tasche, tisch, fisch, fische, mische, mischen, zwischen, deutsch, kühl, kühle, gefühl, stuhl, schale, schalen, schuld, schule, schluss, schnell, schon, schön, seite, seiten, zeit, zeiten, weit, breit, breite, tiefe, tiefer, decke, deckel, deckt, ecke, lecker, wecker, zucker, hafer, hagel, kragen, tragen, fragen, frage, sagen, sagt, lage, klage, grade, gerade, gramm, programm, krumm, ofens, offen, öffnen, läuft, kaufe, karton, kasten, kosten, kostet, rosten, rasten, reste, rest, feste, fest, feiern, feier, feuer, teuer, steuer, mauer, sauer, dauer, trauer, braune, brühe, brücke, drück, stück, zurück, rück, jetzt, letztes, damit, dabei, dafür, daneben, davor, danach, darin, darauf, daraus, raus, rein, rauf, runter, drauf, drin, drinnen, hälfte, mitte, bitte, kühlt, zelle, welle, welche, welcher, welches, solche, solch, manche, löffeln, koffer, körper, kerne, gerne, sterne, ferne, vorne, hinten, immerhin, eigentlich, vielleicht, ungefähr, ziemlich, wirklich, endlich, gestern, ostern, western, spät, später, früh, früher, genau, genug, gegen, regen, wegen, legen, gelegt, liege, bleibt, bleiben, braten, brate, gebraten, raten, rote, roten, boden, faden, laden, baden, wagen, magen, lange, langen, zange, stange, menge, enge, dicke, dicker, dünn, blech, pech, frech, sprich, sicht, sicher, licht, schicht, gewicht, gericht, gedicht

## Zahlen
lexicon-number-0 = null
lexicon-nobody = niemand, keiner, keine gäste
lexicon-number-1 = eins
lexicon-number-2 = zwei, zwo, paar
lexicon-number-3 = drei
lexicon-number-4 = vier
lexicon-number-5 = fünf
lexicon-number-6 = sechs
lexicon-number-7 = sieben
lexicon-number-8 = acht
lexicon-number-9 = neun
lexicon-number-10 = zehn
lexicon-number-11 = elf
lexicon-number-12 = zwölf, dutzend
lexicon-number-13 = dreizehn
lexicon-number-14 = vierzehn
lexicon-number-15 = fünfzehn
lexicon-number-16 = sechzehn
lexicon-number-17 = siebzehn
lexicon-number-18 = achtzehn
lexicon-number-19 = neunzehn
lexicon-number-20 = zwanzig
lexicon-number-30 = dreißig, dreissig
lexicon-number-40 = vierzig
lexicon-number-50 = fünfzig
lexicon-number-60 = sechzig
lexicon-number-90 = neunzig
lexicon-number-100 = hundert
lexicon-number-half = halb, halbe, halber, halbes, halben
lexicon-number-third = drittel
lexicon-number-quarter = viertel
lexicon-number-eighth = achtel
lexicon-number-21 = einundzwanzig
lexicon-number-22 = zweiundzwanzig
lexicon-number-23 = dreiundzwanzig
lexicon-number-24 = vierundzwanzig
lexicon-number-25 = fünfundzwanzig
lexicon-number-26 = sechsundzwanzig
lexicon-number-27 = siebenundzwanzig
lexicon-number-28 = achtundzwanzig
lexicon-number-29 = neunundzwanzig
lexicon-number-1-half = anderthalb, eineinhalb
lexicon-number-2-half = zweieinhalb
lexicon-number-3-half = dreieinhalb
lexicon-number-4-half = viereinhalb
lexicon-number-5-half = fünfeinhalb
lexicon-number-6-half = sechseinhalb
lexicon-number-7-half = siebeneinhalb
lexicon-number-article = ein, eine, einen, einem, einer, ne, nen, ner
lexicon-number-and = und
lexicon-number-plus = plus
lexicon-number-of = von
lexicon-number-to = bis
lexicon-minus = minus

## Einheiten
lexicon-unit-pound = lb, lbs, pound
lexicon-unit-ounce = oz, unze
lexicon-unit-gram = g, gr, gramm
lexicon-unit-kilogram = kg, kilo, kilogramm
lexicon-unit-milligram = mg, milligramm
lexicon-unit-teaspoon = tl, teelöffel, teel, kaffeelöffel
lexicon-unit-tablespoon = el, esslöffel, eßlöffel, essl, eßl, löffel, suppenlöffel
lexicon-unit-cup = tasse, cup, becher
lexicon-unit-fluid-ounce = flüssigunze, fl oz
lexicon-unit-pint = pint
lexicon-unit-quart = quart
lexicon-unit-gallon = gallone
lexicon-unit-milliliter = ml, milliliter
lexicon-unit-liter = l, liter
lexicon-unit-pinch = prise
lexicon-unit-stick = stick butter, stick
lexicon-unit-fahrenheit = f, °f, fahrenheit, grad f, grad fahrenheit, ° f
lexicon-unit-celsius = c, °c, celsius, grad c, grad celsius, ° c
lexicon-unit-degree = °, grad
lexicon-unit-second = s, sek, sekunde
lexicon-unit-minute = min, minute
lexicon-unit-hour = h, std, stunde, stündchen
lexicon-unit-day = d, tag
lexicon-unit-week = woche
lexicon-unit-month = monat
lexicon-unit-percent = prozent
lexicon-unit-gas-mark = gas mark, gasstufe, gas stufe
## Mark of a French oven (thermostat 6 is 180 °C); none here.
lexicon-unit-thermostat = { "" }

## Tage und Stunden
lexicon-weekday-mon = montag, mo, montags, montagabend, montagmittag, montagnachmittag
lexicon-weekday-tue = dienstag, di, dienstags, dienstagabend, dienstagmittag, dienstagnachmittag
lexicon-weekday-wed = mittwoch, mi, mittwochs, mittwochabend, mittwochmittag, mittwochnachmittag
lexicon-weekday-thu = donnerstag, do, donnerstags, donnerstagabend, donnerstagmittag, donnerstagnachmittag
lexicon-weekday-fri = freitag, fr, freitags, freitagabend, freitagmittag, freitagnachmittag
lexicon-weekday-sat = samstag, sa, sonnabend, samstags, samstagabend, samstagmittag, samstagnachmittag
lexicon-weekday-sun = sonntag, sonntags, am so, sonntagabend, sonntagmittag, sonntagnachmittag
lexicon-month-1 = januar, jänner, jan
lexicon-month-2 = februar, feber, feb
lexicon-month-3 = märz, mrz
lexicon-month-4 = april, apr
lexicon-month-5 = mai
lexicon-month-6 = juni, jun
lexicon-month-7 = juli, jul
lexicon-month-8 = august, aug
lexicon-month-9 = september, sep, sept
lexicon-month-10 = oktober, okt
lexicon-month-11 = november, nov
lexicon-month-12 = dezember, dez
lexicon-day-today = heute, heut
lexicon-day-tonight = heute abend, heut abend
lexicon-day-tomorrow = morgen
lexicon-day-after-tomorrow = übermorgen
lexicon-day-yesterday = gestern
## What stands before the day of a month without its name (French le 24).
lexicon-day-of-month = am, den, zum, für den
lexicon-holiday-thanksgiving = thanksgiving, erntedank
lexicon-holiday-christmas = weihnachten, erster weihnachtstag, ersten weihnachtstag, erster weihnachtsfeiertag, ersten weihnachtsfeiertag, weihnachtstag, erster feiertag, ersten feiertag
lexicon-holiday-boxing-day = zweiter weihnachtstag, zweiten weihnachtstag, zweiter weihnachtsfeiertag, zweiten weihnachtsfeiertag, zweiter feiertag, zweiten feiertag, stephanstag, stefanitag
lexicon-holiday-numbered-day = feiertag, weihnachtsfeiertag
lexicon-holiday-christmas-eve = heiligabend, heilig abend, heiliger abend, weihnachtsabend
lexicon-holiday-new-year = neujahr, neujahrstag
lexicon-holiday-new-year-eve = silvester, sylvester
lexicon-holiday-easter = ostern, ostersonntag
lexicon-next = nächster, nächste, nächsten, kommenden, kommender, diesen, dieser
lexicon-part-morning = morgens, vormittags, vormittag, am vormittag, früh, in der früh, frühmorgens
lexicon-part-afternoon = pm, abends, nachmittags, nachmittag, am nachmittag, abend, am abend, nachts
lexicon-noon = mittag, mittags, am mittag, zu mittag, zwölf uhr mittags
lexicon-midnight = mitternacht, um mitternacht
lexicon-oclock = uhr
lexicon-past = nach
lexicon-to = vor
lexicon-at = um, gegen, ab, bis, so gegen, so um, etwa um, auf, bei
lexicon-since = seit
lexicon-on = am, den, der, dem, zum, zu
lexicon-in = in
lexicon-ago = vor, her
lexicon-later = später, verschiebe, verschieben, nach hinten, länger
lexicon-earlier = früher, eher, vorziehen, nach vorne, nach vorn, zu früh, früh, vorher
lexicon-now = jetzt, gerade eben, gerade, eben
lexicon-ordinal = te, ten, ter
lexicon-meal-dinner = essen, abendessen, abendbrot, dinner, gegessen, gegessen wird, wir essen, esse, auf dem tisch, am tisch, auf den tisch, tisch, servieren, festessen, essen wir
lexicon-meal-lunch = mittagessen, brunch, mittag essen

## Der Vogel
lexicon-bird-turkey = pute, truthahn, truthähne, puter, truthenne, babypute, pute rein, pute drauf
lexicon-bird-turkey-breast = putenbrust, truthahnbrust, brust vom truthahn, brust von der pute
lexicon-bird-chicken = hähnchen, hühnchen, huhn, hühner, hendl, brathähnchen, poularde, masthähnchen, brathuhn
lexicon-bird-capon = kapaun
lexicon-bird-duck = ente, flugente, barbarieente
lexicon-bird-goose = gans, gänse, weihnachtsgans, martinsgans
lexicon-bird-any = vogel, vögel, geflügel, viech
lexicon-condition-fresh = frisch, aufgetaut, schon aufgetaut, ganz aufgetaut, nicht gefroren, ungefroren, komplett aufgetaut
lexicon-condition-frozen = gefroren, tiefgefroren, tk, tiefgekühlt, tiefkühl, noch gefroren, steinhart, durchgefroren, noch hart gefroren, noch nicht aufgetaut, nicht aufgetaut, noch gar nicht aufgetaut, hab ihn noch nicht aufgetaut, hab sie noch nicht aufgetaut, noch nicht angefangen aufzutauen, immer noch gefroren, noch steinhart, noch steinhart gefroren, noch tiefgefroren
lexicon-unthawed = noch nicht aufgetaut, nicht aufgetaut, noch gar nicht aufgetaut, hab ihn noch nicht aufgetaut, hab sie noch nicht aufgetaut, noch nicht angefangen aufzutauen, noch gefroren, immer noch gefroren, noch hart gefroren, noch steinhart, noch steinhart gefroren, noch tiefgefroren
lexicon-condition-part-thawed = halb aufgetaut, halb gefroren, angetaut, teilweise aufgetaut, halbgefroren, noch eis drin, innen noch gefroren, noch eisig, leicht angetaut
lexicon-form-whole = ganz, im ganzen
lexicon-form-flat = flach, plattiert, aufgeklappt, flach aufgeklappt, schmetterling, rückgrat raus, spatchcock
lexicon-form-pieces = in teilen, teile, zerlegt, in stücken, stücke, zerteilt
lexicon-stuffed = gefüllt, mit füllung, füllung im vogel
lexicon-unstuffed = ungefüllt, nicht gefüllt, ohne füllung, keine füllung, füllung extra, füllung separat, füllung daneben
lexicon-solution = salzlake, lösung, salzlösung, enthält bis zu, enthält, zugesetzt, gespritzt, injiziert, mariniert
lexicon-basted = selbstbegießend, injiziert
lexicon-salted-already = vorgesalzen, schon gesalzen, bereits gesalzen, ist schon gesalzen, koscheres geflügel, gewürzt gekauft, vorgewürzt

## Wer isst
lexicon-people = person, leute, gast, gäste, mann, esser, mäuler, portion, am tisch, teller, köpfe
lexicon-adults = erwachsene
lexicon-children = kind, kleinkind
lexicon-among = davon, darunter, inklusive, inkl, einschließlich, von denen, von ihnen
lexicon-another = noch eine, noch einen, noch ein, zweite, zweiten, zweiter, zweites, weitere, weiteren, weiteres
lexicon-size-big = groß, große, großen, großer, großes, größere, größeren, größerer, schwere, schwerere
lexicon-size-small = klein, kleine, kleinen, kleiner, kleines, kleinere, kleineren, leichtere
lexicon-instead = lieber, statt, stattdessen, doch lieber, sagen wir, machen wir, verschieben auf, mach
lexicon-joining = kommen auch, kommt auch, kommen noch, kommt noch, kommen dazu, kommt dazu, kommen mit, kommt mit, zusätzlich, mehr
lexicon-for = für, wir sind, sind wir, wir werden, wir sind zu, runde von, wir sind jetzt, jetzt sind wir, wir sind nun, nun sind wir, wir sind doch, wir sind dann, es werden, sind jetzt, sind nun, sind dann, jetzt sind
lexicon-leftovers = reste, mit resten, was übrig bleibt, übrig bleiben, etwas übrig
lexicon-no-leftovers = keine reste, ohne reste

## Hitze, Salz, Weg
lexicon-cooker-oven = ofen, backofen, ober unterhitze, oberhitze, unterhitze, ober und unterhitze, im ofen, backröhre, rohr, im rohr, in den ofen, in die röhre
lexicon-heat-stove = herd, auf dem herd, kochfeld, herdplatte, kochplatte, kochtopf, pfanne, topf, im topf, in der pfanne
lexicon-heat-set = gestellt, eingestellt, hochgedreht, runtergedreht, aufgedreht, höher gestellt, hochgestellt, runtergestellt, gestellt auf, eingestellt auf
lexicon-heat-turned = gestellt, eingestellt, hochgedreht, runtergedreht, aufgedreht, höher gestellt, hochgestellt, runtergestellt, gestellt auf, eingestellt auf
lexicon-reading-before = davor, vorher, vorhin, zuvor, letztes mal, vor einer weile
lexicon-reading-said = zeigte, angezeigt, las
lexicon-heat-moved = umgesetzt, umgelegt, umgezogen, umgelagert, rübergelegt, rübergetan, rübergesetzt, mach ihn fertig, mach sie fertig, mache ihn fertig, mache sie fertig, mach ihn jetzt fertig, gare ihn fertig, gare sie fertig
lexicon-heat-moved-first = jetzt im, jetzt fertig im, fertig garen im, gart jetzt im
lexicon-heat-later = werde, wird, wollen, will, sollte, sollen, könnte, später, nachher, dann in, wenn er, wenn sie, falls, vielleicht
lexicon-heat-start = in den ofen, in den smoker, auf den smoker, auf den grill, in die röhre, anfangen zu garen, fange an zu garen, garen ab, garbeginn, fange an zu kochen, anfangen zu kochen, reinschieben
lexicon-heat-start-early = vogel rein, pute rein, vogel drauf, pute drauf
lexicon-heat-all-along = die ganze zeit, die ganze zeit über, ganze zeit, von anfang an, seit anfang an, seit beginn, die gesamte zeit
lexicon-heat-was = war, hatte, hatten, gewesen, ist seit
lexicon-heat-off = aus, ausgeschaltet, ausgegangen, nicht an, abgeschaltet, erloschen
lexicon-heat-never = ofen nie angemacht, ofen nicht angemacht, vergessen den ofen anzumachen, vergessen den ofen einzuschalten, ofen war nie an, ofen war nicht an, ofen war gar nicht an, ofen nicht eingeschaltet
lexicon-heat-back = wieder an, wieder auf, wieder angemacht, wieder eingeschaltet, er ist wieder da, ist wieder da, wieder da, strom ist wieder da, strom wieder da, der strom ist wieder da, ofen geht wieder, ofen läuft wieder, ofen ist wieder an, ofen wieder an, ofen heizt wieder, geht wieder, läuft wieder, heizt wieder, ist wieder an, feuer brennt wieder, brennt wieder, glut ist wieder da, smoker läuft wieder
lexicon-heat-returned = er ist wieder da, ist wieder da, wieder da, strom ist wieder da, strom wieder da, der strom ist wieder da, ofen geht wieder, ofen läuft wieder, ofen ist wieder an, ofen wieder an, ofen heizt wieder, geht wieder, läuft wieder, heizt wieder, ist wieder an, feuer brennt wieder, brennt wieder, glut ist wieder da, smoker läuft wieder
lexicon-cooker-fan-oven = umluft, umluftofen, heißluft, heißluftofen, ofen mit umluft, mit umluft
lexicon-cooker-smoker = smoker, räucherofen, räuchern, räuchere, räucher, geräuchert, smoken, grill, kugelgrill, grillen, keramikgrill, pelletgrill, in den smoker, auf den smoker, auf den grill
lexicon-fryer = fritteuse, friteuse, frittieren, fritieren, frittiere, frittiert, frittierte, fritiert, heißes öl
lexicon-salting-none = ohne salz, kein salz, nicht salzen, ungesalzen, ohne lake, keine lake, nicht gesalzen
lexicon-salting-dry = trocken salzen, trocken gesalzen, trockensalzen, trocken gepökelt, trocken pökeln, trockenpökeln, mit salz, gesalzen, einsalzen, dry brine, trockene salzlake
lexicon-salting-wet = lake, nasse lake, in lake, in der lake, in die lake, nass pökeln, nasspökeln, nasspökelung, einlegen, sole, salzwasser
lexicon-thawing-fridge = im kühlschrank auftauen, im kühlschrank, kühlschrank
lexicon-thawing-cold-water = kaltes wasser, kaltem wasser, in kaltem wasser, im wasser auftauen, in wasser auftauen, wasserbad
lexicon-thawing-cook-frozen = gefroren garen, gefroren braten, gefroren in den ofen, ohne auftauen, direkt aus dem gefrierfach
lexicon-ahead = am vortag, vortag, am tag vorher, tag vorher, am tag davor, tag davor, einen tag vorher, einen tag davor, vorher garen, im voraus, am abend vorher, am abend davor, am vorabend, vorabend, abend vorher
lexicon-not-ahead = am selben tag, am gleichen tag, selber tag, am tag selbst
lexicon-elsewhere = bei meiner schwester, bei meinem bruder, bei meiner mutter, bei meinem vater, bei meinen eltern, bei meiner tante, bei meinem onkel, bei meiner oma, bei oma, bei meinen schwiegereltern, bei den schwiegereltern, bei freunden, woanders, auswärts, anderes haus, in einem anderen haus, mitbringen, mitnehmen, nehmen wir mit, bring ich mit
lexicon-here = dort garen, gare ich dort, dort gegart, zu hause, zuhause, daheim, bei uns, bei mir, hier
lexicon-drive = fahrt, fahrzeit, autofahrt, weg, mit dem auto, unterwegs, fahren, entfernt, anfahrt
## Carried to another house, and how it arrives
lexicon-bring = bringen, bringe, bring, bringt, bring ich mit, mitbringen, mitnehmen, mitgenommen, mitgebracht, nehmen, nehme, nehmen wir mit, transportieren, transportiert, hinbringen, liefern
lexicon-hot = heiß, heiss, warm, noch heiß, noch warm
lexicon-cold = kalt, gekühlt
lexicon-at-home = habe, hab, haben, haben wir, hab ich, schon da, schon gekauft, gekauft, in der truhe, im gefrierfach, liegt im gefrierfach, liegt bereit, schon zuhause, schon zu hause, schon daheim, ist schon da, schon im haus, bereits zuhause, bereits da, liegt schon hier
lexicon-to-buy = muss ich kaufen, noch kaufen, müssen wir kaufen, noch zu kaufen, noch nicht gekauft, kaufen
lexicon-shopping = kaufe, kaufen, hole, holen, abholen, besorge, besorgen

## Wo ein Thermometer misst
lexicon-spot-breast = brust, brüste, bruststück, brustfleisch
lexicon-spot-thigh = keule, schenkel, oberkeule, bein, schlegel, oberschenkel
lexicon-spot-pit = garraum, ofen, smoker, luft, grill, rost, umgebung, ofentemperatur, kammer
lexicon-spot-stuffing = füllung
lexicon-spot-wing = flügel

## Schritte, wie man sie nennt, wenn man einen übernimmt oder abgibt
lexicon-step-buy = kaufen, einkaufen, einkauf, besorgen, kaufe, kauf, besorge
lexicon-step-thaw = auftauen, auftaut, abtauen, aus dem gefrierfach holen, aus dem gefrierfach nehmen, taue auf, aus der truhe holen, aus der gefriertruhe
lexicon-step-water = wasser, wasserwechsel, wasser wechseln, auftauwasser wechseln, auftauwasser
lexicon-step-salt = salzen, salz, lake, einsalzen, salze, salz ich
lexicon-step-rest = salzruhe, ruhe im kühlschrank
lexicon-step-temper = abtrocknen, buttern, abtrocknen und buttern, aus dem kühlschrank, rausholen, rausnehmen
lexicon-step-fire = feuer, hitze, anheizen, vorheizen, feuer machen, feuer anmachen, ofen vorheizen, ofen anmachen, hitze anmachen, grill anmachen, anfeuern, heize, heize vor, ofen an, mache ich den ofen an
lexicon-step-on = vogel in die hitze, in den ofen, in die hitze, auf den grill, reinschieben, in den ofen schieben, auflegen, rein, schiebe, in den ofen schiebe, vogel kommt rein
lexicon-step-check = prüfen, temperaturen prüfen, messen, nachsehen, thermometer, kontrollieren
lexicon-step-pull = raus aus der hitze, aus dem ofen, aus dem ofen holen, runternehmen, aus der hitze, raus, hole raus, rausholen aus dem ofen, vogel herausnehmen
lexicon-step-stand = ruhen, ruhen lassen, ruhezeit
lexicon-step-carve = tranchieren, aufschneiden, schneiden, zerlegen, anschneiden, tranchiere, schneide
lexicon-step-chill = kühlen, in den kühlschrank, wegräumen, reste wegräumen, kaltstellen, abkühlen, reste in den kühlschrank
lexicon-step-pack = packen, einpacken, kalt einpacken
lexicon-step-travel = losfahren, fahrt, fahren, transport
lexicon-step-reheat = aufwärmen, wieder aufwärmen, warm machen
lexicon-step-serve = servieren, auftischen, essen
lexicon-step-leftovers = reste

lexicon-yes = ja, jo, jep, ok, okay, klar, gern, gerne, passt, jawohl
lexicon-no = nein, ne, nee, nö, nicht

## Eine Aufgabe ist erledigt
lexicon-done = erledigt, fertig, gemacht, ist erledigt, ist fertig, ist gemacht, hab ich, alles fertig, geschafft

## Salze nach ihrem Korn
lexicon-salt-table = tafelsalz, kochsalz, speisesalz, jodsalz, feines salz, haushaltssalz, siedesalz, streusalz
lexicon-salt-fine-sea = feines meersalz, meersalz, feinem meersalz
lexicon-salt-pickling = einmachsalz, einlegesalz, pökelsalz ohne nitrit
lexicon-salt-flake-kosher = koscheres flockensalz, flockensalz, salzflocken, koschere flocken, meersalzflocken, kosher flocken, koscherem flockensalz, flocken
lexicon-salt-coarse-kosher = grobes koscheres salz, koscheres grobes salz, grob koscher, kosher grob, grobem koscherem salz
lexicon-salt-coarse-sea = grobes meersalz, grobem meersalz, grobes salz, grobem salz, steinsalz
lexicon-salt-kosher = koscheres salz, koscherem salz, koscher, kosher, kosher salz
lexicon-salt-own = mein salz, meinem salz, mein eigenes salz, eigenes salz, meins
lexicon-ask-only = nur, habe nur, hab nur, haben nur
lexicon-salt-any = salz
lexicon-sodium = natrium
lexicon-butter = butter
lexicon-strength-light = mild, leicht, weniger salz, weniger salzig, wenig salz, nicht so salzig, nicht zu salzig, etwas weniger salz
lexicon-strength-bold = kräftig, stark, salziger, mehr salz, etwas mehr salz

## Was gefragt wird
lexicon-ask-into = in, als, sind, ist, wären, umrechnen, gleich, statt, anstatt, anstelle, ersetzen, tauschen, entspricht, wieviel ist, wie viel ist, wie viel sind, wieviel sind
lexicon-ask-how-much = wie viel, wieviel, wie viele, wieviele, welche menge, menge
lexicon-ask-how-long = wie lang, wie lange, wielange, wie viele stunden, wieviele stunden, wie viele minuten, wieviele minuten, wie viele tage, wieviel zeit, wie viel zeit, wann fange ich an, wann muss ich anfangen, wann anfangen
lexicon-ask-when = wann, um wie viel uhr, um wieviel uhr, ab wann
lexicon-ask-how-big = wie groß, wie schwer, welche größe, wie viel kilo, wieviel kilo, wie viele kilo, wieviel kg, wie viel kg, wieviel pute, wie viel pute, wie viel truthahn, wieviel truthahn, wie viel hähnchen, was für eine größe, welches gewicht, wieviel gramm, wie viel gramm
lexicon-ask-how-many = für wie viele, für wieviele, für wie viel, für wieviel, reicht für, reicht das für, reicht, wie viele personen, wieviele personen, wie viele leute, wieviele leute, wie viel personen, wieviel personen, wieviel leute, wie viele essen, reicht der für, reicht die für, reicht er für, reicht sie für, genug für
lexicon-ask-enough = reicht für, reicht das für, reicht der für, reicht die für, reicht er für, reicht sie für, genug für, reicht
lexicon-ask-how = wie, welches, was für ein, welche, welcher
lexicon-ask-why = warum, wieso, weshalb, quelle, wer sagt das, woher
lexicon-ask-deep = wie tief, wie weit, dringt, eindringen, dringt ein, tiefe
lexicon-ask-safe = sicher, ok, okay, in ordnung, noch gut, gut, genug, reicht, reicht das, gefährlich, schlimm, schlecht, krank, darf ich, darf man, kann ich, kann man, soll ich, sollte ich, muss ich, muss man, noch essbar, noch essen, unbedenklich, geht das noch, darf das, kann das noch
lexicon-ask-temperature = temperatur, kerntemperatur, wie heiß, wie warm, welche temperatur, wie viel grad, wieviel grad, wie viele grad, wieviele grad, wann ist er fertig, wann ist die pute fertig, wann gar, wann ist sie gar, wann ist er gar, wann ist sie durch, wann ist er durch, wann ist die pute gar, wann ist die pute durch, wann ist sie fertig, wie kalt, woran erkenne ich, woher weiß ich, wie erkenne ich
lexicon-ask-tell = woran erkenne ich, woher weiß ich, wie erkenne ich, woran merke ich, woran sehe ich
lexicon-ask-leave = lassen, stehen lassen, liegen lassen, stehenlassen, liegenlassen
lexicon-ask-out = draußen, stand draußen, bei zimmertemperatur, zimmertemperatur, bei raumtemperatur, raumtemperatur, auf der arbeitsplatte, auf dem tisch, ungekühlt, vergessen, im warmen auto, im auto, rumgestanden, herumgestanden, außerhalb, noch auf dem tisch, aufm tisch, noch aufm tisch, stehen noch
lexicon-ask-left = gelassen, vergessen, stehen gelassen, stand, lag, gestanden
lexicon-ask-counter = arbeitsplatte, auf der arbeitsplatte, küchentisch, zimmertemperatur, bei zimmertemperatur, raumtemperatur, bei raumtemperatur, heißes wasser, heißem wasser, warmes wasser, warmem wasser, auf dem tisch, über nacht in der spüle, kochendes wasser, kochendem wasser, heißwasser, warmwasser
lexicon-ask-keep = halten, hält, haltbar, halten sich, hält sich, aufbewahren, aufheben, lagern, noch haltbar, alt, tage alt, bleibt, bleiben, halte, noch essen, noch essbar, reste essen
lexicon-ask-hot-water = heißes wasser, heißem wasser, warmes wasser, warmem wasser, kochendes wasser, kochendem wasser, heißwasser, warmwasser
lexicon-ask-past-date = abgelaufen, verbrauchsdatum, mindesthaltbarkeitsdatum, mindesthaltbarkeit, mhd, haltbarkeitsdatum, ablaufdatum, zu verbrauchen bis, über dem datum, überm datum
lexicon-ask-smell = riecht, geruch, stinkt, schmierig, schleimig
lexicon-ask-low-salt = darf kein salz, dürfen kein salz, darf nicht salzig, kein salz essen, kein salz haben, salzarm, salzarme, salzarme diät, salzlos essen, bluthochdruck, blutdruck, hoher blutdruck
lexicon-ask-keep-hot = warm halten, warmhalten, heiß halten, heißhalten, warm stellen, warmstellen, warm bleiben
lexicon-ask-warm = warm, heiß
lexicon-ask-carry = transportieren, transportiere, mitnehmen, mitbringen, nehme mit
lexicon-ask-carry-hot = wie nehme ich ihn heiß mit, wie nehme ich sie heiß mit, wie bringe ich ihn heiß hin, wie transportiere ich ihn heiß
lexicon-ask-no-room = kein platz, keinen platz, passt nicht, voll, zu klein, ist klein, winzig
lexicon-ask-cool = abkühlen, kühlen, herunterkühlen, runterkühlen, wie schnell, heiß in den kühlschrank, heiße in den kühlschrank, warm in den kühlschrank, noch heiß, heiße pute, heißes fleisch
lexicon-ask-reheat = aufwärmen, wärme, wieder aufwärmen, aufgewärmt, warm machen, erwärmen, wieder erhitzen, aufwärme
lexicon-ask-wash = waschen, wasche, abwaschen, abspülen, spülen, ausspülen, abwasche
lexicon-ask-thaw = auftauen, auftaut, taut auf, taut, tauen, abtauen, aufgetaut, auftauzeit, taue, auftaue
lexicon-ask-stuff = füllen, füllung, gefüllt, fülle
lexicon-ask-roast = braten, brate, garen, gart, gegart, garzeit, backen, bratzeit, braucht, brauchen, räuchern, kochen, ofen, dauert, muss in den ofen, grillen, bratet, brät
lexicon-ask-cook = garen, gare, braten, brate, backen, niedertemperatur
lexicon-ask-indoors = drinnen, im haus, in der wohnung, in der garage, garage, in der küche, im zelt, zelt, balkon, vordach, carport, wintergarten, im keller
lexicon-fuel-charcoal = holzkohle, briketts, kohle, grillkohle, grillbriketts, kohlen
lexicon-fuel-propane = propan, gasflasche, flasche gas, butan, propangas
lexicon-fuel-pellets = pellets, holzpellets, pellet
lexicon-food-leftovers = reste, gegarte pute, gegartes hähnchen, gebratene pute, gebratene, gegarten, gegart, gekocht, gekochte pute, gekochtes fleisch, gebratenes fleisch, gegartes fleisch, putenreste
lexicon-food-gravy = soße, sosse, sauce, brühe, fond, bratensoße, bratensauce
lexicon-food-stuffing = füllung, gegarte füllung
lexicon-food-giblets = innereien
lexicon-food-soup = suppe, eintopf
lexicon-food-raw = roh, ungegart, frisch, aufgetaut
lexicon-place-fridge = kühlschrank, im kühlschrank, gekühlt
lexicon-shelf = fach, fächer, fächern, kühlschrankfach, kühlschrankfächer
lexicon-place-freezer = gefrierfach, im gefrierfach, in der truhe, in der gefriertruhe, im tiefkühler, im gefrierschrank, tiefkühler, truhe, gefriertruhe, gefrierschrank, eingefroren, einfrieren, gefroren
lexicon-label-per = pro, je, für jedes, für jede, auf jedes, für ein, auf ein
lexicon-ask-overnight = über nacht, die ganze nacht, ganze nacht, seit gestern abend
lexicon-ask-low-heat = niedertemperatur, niedrigtemperatur, niedrige temperatur, niedriger temperatur, bei niedriger temperatur, niedergaren, niedrigtemperaturgaren, sanft garen
lexicon-ask-refreeze = wieder einfrieren, nochmal einfrieren, noch mal einfrieren, erneut einfrieren, noch einmal einfrieren, wiedereinfrieren
lexicon-ask-colour = rosa, saft, säfte, fleischsaft, farbe, blut, blutig, rot
lexicon-ask-stand = ruhen, ruhen lassen, ruhezeit, ruht, ruhe

## Wenn etwas schiefgeht, und Gewohnheiten
lexicon-ask-help = was mache ich, was mach ich, was machen wir, was jetzt, was nun, was kann ich tun, was soll ich tun, was tun, hilfe, und jetzt, was wenn, und wenn, was ist wenn
lexicon-ask-oven-down = ofen kaputt, ofen ist kaputt, ofen geht nicht, ofen geht nicht mehr, ofen ist ausgefallen, ofen ausgefallen, ofen ist tot, ofen heizt nicht, ofen heizt nicht mehr, ofen funktioniert nicht, ofen ging aus, ofen ist ausgegangen, stromausfall, strom weg, strom ist weg, kein strom, strom ausgefallen, strom ist ausgefallen, feuer ist aus, feuer aus, feuer ging aus, feuer ist ausgegangen, feuer ausgegangen, glut ist aus, smoker ist aus, smoker ging aus, smoker ausgegangen, grill ist aus, grill ging aus, gas ist leer, gas leer, kohle ist alle, kohle alle, pellets sind alle, pellets alle, gas ist alle, gas alle, kein gas mehr, keine kohle mehr, keine pellets mehr, ofen ist gerade ausgegangen, ofen ist gerade ausgefallen, ofen hat den geist aufgegeben, ofen ist hin, keine hitze mehr
lexicon-peril-fire = flammen, in flammen, brennt im ofen, brennt im backofen, im ofen brennt, im backofen brennt, ofen brennt, backofen brennt, fett brennt, fettbrand, feuer gefangen, fängt feuer, feuer im ofen, feuer im backofen, brennt lichterloh, küche brennt, hilfe es brennt, die küche brennt
lexicon-peril-gas = riecht nach gas, rieche gas, gasgeruch, nach gas, stinkt nach gas, gas tritt aus, gasleck, gas strömt aus
lexicon-nearly-out = fast leer, fast alle, bald alle, fast keine, kaum noch, geht zur neige, wird knapp, bald leer
lexicon-speed = kmh, kph, stundenkilometer
lexicon-ask-come-up = bis sie, bis er, bis es, erreicht, erreichte, bis, gebraucht, gebraucht hat, um auf, auf dem weg
lexicon-ask-too-fast = zu schnell, zu früh fertig, zu früh, viel zu schnell, schon fast fertig
lexicon-ask-too-slow = zu langsam, viel zu langsam, dauert zu lange, dauert ewig, wird nicht gar, wird nicht fertig, wird einfach nicht fertig, braucht zu lange
lexicon-ask-garage = garage, in der garage, schuppen, im schuppen, balkon, auf dem balkon, terrasse, auf der terrasse, im auto, im keller, draußen
lexicon-ask-baste = begießen, begieße, übergießen, übergieße, bepinseln, bepinsele, einpinseln, mit saft begießen, aufgießen, ofen aufmachen, ofen öffnen
lexicon-ask-foil = zu dunkel, wird dunkel, haut verbrennt, verbrennt oben, mit alufolie abdecken, alufolie drüber, abdecken, zu braun, verbrennt, angebrannt, sehr dunkel, haut wird schwarz, schwarz oben, zu schwarz, mit folie, mit alufolie, alufolie, folie drauf, folie drüber
lexicon-ask-where = wo, wohin, wo hin, an welche stelle
lexicon-ask-thermometer = thermometer, fleischthermometer, bratenthermometer, fühler
lexicon-habit-bag-inside = beutel drin, beutel war drin, beutel noch drin, innereien drin, innereien noch drin, innereien waren noch drin, innereien waren drin, innereien vergessen, die innereien vergessen, innereienbeutel, beutel vergessen, den beutel vergessen, plastik drin, tüte drin, tüte war noch drin, tüte noch drin
lexicon-habit-pop-up = garanzeiger, roter knopf, der rote knopf, rote knopf, knopf ist rausgesprungen, pop up, stift ist rausgesprungen, plopp thermometer
lexicon-habit-probe-out = fühler ist raus, fühler rausgefallen, fühler ist rausgefallen, fühler rausgerutscht, fühler ist rausgerutscht, thermometer rausgefallen, thermometer ist rausgefallen, thermometer kaputt, thermometer ist kaputt, thermometer geht nicht, thermometer spinnt, fühler kaputt, fühler ist kaputt, thermometer ist tot, sonde rausgerutscht
lexicon-habit-mess = ausgelaufen, ist ausgelaufen, tropft, getropft, hat getropft, fleischsaft im kühlschrank, saft im kühlschrank, schneidebrett, sauber machen, saubermachen, wie putze ich, roher saft
lexicon-habit-dog = hund, katze
lexicon-habit-fragile = schwanger, schwangere, immunschwach, immunsystem, abwehrgeschwächt, chemo, chemotherapie
lexicon-habit-temper = auf zimmertemperatur, zimmertemperatur bringen, zimmertemperatur annehmen, auf raumtemperatur, temperieren, vorher rausnehmen, vorher raus
lexicon-habit-finish-oven = im ofen fertig garen, im ofen fertigmachen, im ofen fertig machen, im ofen zu ende garen, im ofen weitergaren, im ofen weitermachen, in den ofen umziehen
lexicon-habit-early = zu früh fertig, viel zu früh fertig, schon fertig was nun, stunden zu früh, stunde zu früh, fertig vor der zeit
lexicon-habit-neck = hals
lexicon-habit-side-up = brust nach oben, brust oben, brust nach unten, brust unten, welche seite nach oben, welche seite oben, brustseite, auf den rücken, auf dem rücken
lexicon-habit-cover = abdecken, zudecken, abgedeckt, zugedeckt, unbedeckt, offen, einwickeln, eingewickelt
lexicon-habit-must = muss ich, muss er, muss sie, soll er, soll sie, soll ich, sollte ich, muss man, soll man, sollte man, oder nicht, nötig, notwendig, besser, lohnt sich
lexicon-habit-or = oder
lexicon-habit-rack = bratrost, rost, einschub, schiene
lexicon-habit-truss = zusammenbinden, beine binden, beine zusammenbinden, die beine zusammenbinden, keulen binden, dressieren, küchengarn, bratengarn
lexicon-habit-pan-water = wasser in den bräter, wasser im bräter, wasser aufs blech, wasser ins blech, wasser in die form, brühe in den bräter, wasser dazu
lexicon-habit-oven-bag = bratschlauch, bratbeutel, bratfolie, in der tüte, papiertüte
lexicon-habit-weather = regnet, es regnet, regen, windig, wind, schneit, es schneit, sturm, böen
lexicon-habit-smoke = weißer rauch, dicker rauch, rauch ist weiß, rauch ist dick, welches holz, holzchips, räucherchips, apfelholz, buchenholz
lexicon-habit-grill = grill, kugelgrill, gasgrill
lexicon-habit-gravy = bratensaft, soße machen, die soße machen, sauce machen, bratensoße machen, bratensatz, soße binden, andicken
lexicon-habit-salty = salzig, zu salzig, versalzen
lexicon-habit-salted-twice = zweimal gesalzen, doppelt gesalzen, zu viel salz drauf, zuviel salz drauf, zu viel gesalzen
lexicon-habit-carcass = karkasse, gerippe, knochen
lexicon-habit-crisp = knusprig, knusprige haut, knusprig wird, kross, gummiartig, labbrig, backpulver
lexicon-habit-fat = butter unter die haut, butter unter der haut, öl oder butter, butter oder öl, mit butter einreiben, mit öl einreiben, mit butter bestreichen, mit öl bestreichen
lexicon-habit-preheat = vorheizen, vorgeheizt
lexicon-habit-microwave = mikrowelle
lexicon-last = letzter, letzte, letzten, letztes, vergangenen

## Kurze Rede, nur als ganzer Text: Wörter, die nichts sagen, was getan ist, was nicht, nach Schritt
lexicon-talk-filler = ich, wir, er, sie, es, ist, sind, war, hab, habe, haben, hat, wird, jetzt, schon, eben, gerade, grad, grade, so, und, ok, okay, ja, nun, endlich, also, na, ach, oh, ups, sorry, mal, vogel, viech, pute, puter, truthahn, hähnchen, ente, gans, der, die, das, den, dem, alles, alle, mein, meine, unser, unsere, bitte, dann, da, auch, wieder, hallo, danke, leute, heute, minute, minuten, vor, seit, ein, eine, einen, einer, bin, worden, habs, hab's, puh, etwas früher, früher, hmm, hm
lexicon-talk-done = erledigt, fertig, gemacht, alles fertig, alles erledigt, getan, geschafft, hab ich, hab ich gemacht, ist gemacht, bereit, abgehakt
lexicon-talk-not = noch nicht, nicht, nicht gemacht, noch nicht gemacht, nein noch nicht, vergessen, hab ich vergessen, haben wir vergessen, vergessen zu, nicht geschafft, noch nicht geschafft, nicht dazu gekommen, keine zeit, keine zeit gehabt, konnte nicht, noch nicht angefangen, geht nicht
lexicon-talk-asking = kann ich, kann man, können wir, darf ich, darf man, dürfen wir, soll ich, sollen wir, sollte ich, muss ich, muss man, müssen wir, ist das, ist die, ist der, ist sie, sind die, wie, wie lange, wann, was, wo, wer, warum, welche, welches, ob, was ist, wie mache, soll die, soll der, muss die, muss der
lexicon-talk-asks-of = ist, sind, reicht, passt, geht
lexicon-talk-ahead = heute abend, heute nacht, morgen, später, nachher, werde, werden, muss, müssen, soll, sollte, will, wollen, bald, wenn
lexicon-talk-behind = heute morgen, gestern
lexicon-talk-when = wann essen wir, wann gibt es essen, wann gibts essen, wann gibt es was zu essen, wann ist er fertig, wann ist sie fertig, wann ist es fertig, wann ist das essen fertig, wann ist essen, wie lange noch, wie lang noch, wie lange dauert es noch, wann ist es so weit, wann ist die pute fertig, wann ist die gans fertig, kann raus, kann sie raus, kann er raus, kann die gans raus, kann die pute raus, ist sie fertig, ist er fertig, schon fertig, wann kann sie raus, wann kann er raus, wie lange braucht sie noch, wie lange braucht er noch, wann ist die soweit, wann ist sie soweit, schaffen wir das, schaff ich das, schaffe ich das, schaffen wir es, schaffe ich es, schaffen wir das bis, schaff ich das bis, schaffe ich das bis, schaffen wir es bis, wird das was bis, wird sie rechtzeitig fertig, wird er rechtzeitig fertig, wird es rechtzeitig fertig, ist sie rechtzeitig fertig, ist er rechtzeitig fertig, wird sie fertig bis, wird er fertig bis, ist sie fertig bis, sind wir im plan, liegen wir gut in der zeit, sind wir gut in der zeit, bin ich im plan, sind wir zu spät, klappt das bis, klappt es bis, klappt das zeitlich
lexicon-talk-next = was kommt als nächstes, was ist als nächstes dran, was steht an, was als nächstes, was kommt jetzt, nächster schritt
lexicon-talk-undone-thaw = noch gefroren, noch steinhart, steinhart, noch hart, noch hart wie stein, hart wie stein, noch eisig, noch eis drin, noch eis innen, innen noch gefroren, noch halb gefroren, noch nicht aufgetaut, nicht aufgetaut, noch nicht ganz aufgetaut, nicht ganz aufgetaut, noch am auftauen, taut noch, innen noch eis, in mitte noch gefroren, in der mitte noch gefroren, immer noch gefroren, immer noch hart, immer noch steinhart, immer noch eisig, noch gefroren innen
lexicon-talk-icy = innen, eis, eisig, mitte, halb, drin, teilweise
lexicon-talk-thawed = aufgetaut, ist aufgetaut, ganz aufgetaut, komplett aufgetaut, fertig aufgetaut, durchgetaut, vollständig aufgetaut
lexicon-talk-undone-water = wasser nicht gewechselt, wasser noch nicht gewechselt, hab das wasser nicht gewechselt, habe das wasser nicht gewechselt, wasser vergessen, das wasser vergessen, wasserwechsel vergessen, hab das wasser vergessen
lexicon-talk-undone-salt = nicht gesalzen, noch nicht gesalzen, ungesalzen
lexicon-talk-undone-on = nicht im ofen, noch nicht im ofen, noch nicht drin, nicht drin, noch nicht in hitze, nicht auf grill
lexicon-talk-undone-pull = noch im ofen, noch drin, immer noch im ofen, immer noch drin, noch im smoker, noch auf grill, gart noch, wieder rein, wieder drin, wieder im ofen, zurück in den ofen, zurück im ofen, kommt wieder rein, wieder in den ofen, wieder drauf, wieder auf grill
lexicon-talk-undone-chill = steht noch draußen, stehen noch draußen, noch draußen, noch auf tisch, steht noch auf tisch, stehen noch auf tisch, auf dem tisch vergessen, draußen vergessen, stehen gelassen, stehen lassen, vergessen wegzustellen, vergessen in den kühlschrank zu stellen, hab ihn stehen lassen
lexicon-talk-did-buy = gekauft, besorgt, geholt, eingekauft, zu hause, zuhause, daheim
lexicon-talk-did-thaw = taut, taut auf, am auftauen, auftauen angefangen, aufgetaut, aus gefrierfach, aus gefrierfach geholt, aus truhe geholt, aus truhe, aus gefriertruhe geholt, im kühlschrank, in kühlschrank gelegt, in kühlschrank gestellt, liegt im kühlschrank, im wasser, im kalten wasser, in kaltem wasser, liegt im wasser, in wasser gelegt, in spüle, liegt im kühlschrank zum auftauen, taut im kühlschrank, zum auftauen im kühlschrank, im kühlschrank zum auftauen, zum auftauen in kühlschrank gelegt, in kühlschrank zum auftauen gelegt, auftauen im wasser angefangen, auftauen im wasser gestartet, taut im wasser, taut in spüle, taut im kalten wasser, im wasser zum auftauen
lexicon-talk-did-water = wasser gewechselt, gewechselt, wasser neu, frisches wasser, neues wasser, wasser getauscht
lexicon-talk-did-salt = gesalzen, eingesalzen, salz drauf, mit salz eingerieben, salz ist drauf, in lake, in lake gelegt, liegt in lake, gewürzt, eingerieben
lexicon-talk-did-rest = ruht
lexicon-talk-did-temper = aus kühlschrank, aus kühlschrank geholt, aus kühlschrank genommen, abgetrocknet, gebuttert, abgetrocknet gebuttert, raus, rausgeholt, rausgenommen, trocken gebuttert
lexicon-talk-did-fire = feuer an, feuer brennt, brennt, ofen an, ofen heizt, ofen angemacht, ofen eingeschaltet, ofen vorgeheizt, vorgeheizt, heizt vor, ofen heizt vor, ofen heiß, smoker an, smoker läuft, smoker brennt, smoker angemacht, grill an, grill heiß, grill angemacht, kohle brennt, kohlen brennen, kohle glüht, angeheizt, feuer gemacht, feuer angemacht, angezündet, angefeuert, hitze an, smoker bereit, smoker heiß
lexicon-talk-did-on = in die hitze, in hitze, im ofen, in ofen, drin, drinnen, in ofen geschoben, reingeschoben, im smoker, in smoker, auf grill, aufm grill, in hitze, gart, brät, in ofen getan, reingetan, auf smoker, rein, reingestellt, in ofen gestellt
lexicon-talk-did-check = gemessen, geprüft, nachgesehen, temperatur gemessen, temperaturen gemessen, temperaturen geprüft, kontrolliert
lexicon-talk-did-pull = aus ofen, aus ofen geholt, aus ofen genommen, raus aus ofen, raus, rausgeholt, rausgenommen, aus hitze, raus aus hitze, runter, runtergenommen, vom grill, vom grill genommen, aus smoker, aus smoker geholt, hol sie raus, hole sie raus, nehm sie raus, nehme sie raus, ich hole sie raus, ich nehme sie raus, hol ihn raus, nehm ihn raus, ist draussen, ist draußen, draussen, draußen
lexicon-talk-did-stand = ruht
lexicon-talk-did-carve = tranchiert, aufgeschnitten, geschnitten, angeschnitten, zerlegt
lexicon-talk-did-chill = weggeräumt, reste weggeräumt, reste weg, im kühlschrank, liegt im kühlschrank, in kühlschrank gelegt, reste im kühlschrank, in kühlschrank gestellt, reste in kühlschrank gestellt, kaltgestellt, abgekühlt, weg, gekühlt, verstaut, rest im kühlschrank, der rest ist im kühlschrank, alles im kühlschrank, alles in den kühlschrank gestellt, alles ist im kühlschrank, alles weggeräumt, reste sind im kühlschrank, die reste sind im kühlschrank, alles verstaut, alles in den kühlschrank getan, weggestellt, alles weggestellt, in den kühlschrank gestellt
lexicon-talk-did-pack = eingepackt, gepackt, in kühlbox, im auto, verladen
lexicon-talk-did-travel = unterwegs, auf weg, losgefahren, abgefahren, los, fahren, fahren los, auf dem weg
lexicon-talk-did-reheat = aufgewärmt, wieder warm, warm gemacht
lexicon-talk-did-serve = serviert, auf tisch, steht auf tisch, essen, gegessen, aufgetischt, beim essen
lexicon-talk-did-leftovers = reste gegessen, reste aufgegessen, reste alle, reste eingefroren, reste weggeworfen
lexicon-talk-give = gib, frag, frage, bitte, kann, kannst, könnte, könntest, übergib, soll, macht, übernimmt, kümmert
lexicon-talk-mine = ich, ich mache, ich mach, ich übernehme, ich übernehm, ich kümmere mich um, ich kümmer mich um, ich kümmere mich ums, ich werde, ich kann, lass mich, ich nehme, ich nehm, ich will, ich kümmere mich, ich kümmer mich, kümmere mich um, ich mache auch
lexicon-talk-mine-last = ich, mach ich, mache ich, übernehme ich, übernehm ich, nehm ich, kann ich machen
lexicon-talk-mine-link = das, den, die, der, dem, vom, beim, mit, um, ums, mich, auch, dann, heute abend, heute, morgen, später, am abend
lexicon-talk-manners = sorry, tut mir leid, tut mir echt leid, es tut mir leid, entschuldigung, entschuldigt, leute, hallo, hey, hi, ihr lieben, alle, an alle, zusammen, leider, doch, heute, morgen, heute abend, diesmal, dieses jahr, aber, und, weil, denn, oh, oh nein, oh je, mist, danke, bitte, auch, dann, jetzt, mehr, also, na, familie, zum essen
lexicon-talk-gone = ich bin raus, bin raus, ich bin krank, bin krank, ich bin krank geworden, bin krank geworden, ich liege flach, liege flach, lieg flach, ich habe fieber, ich hab fieber, habe fieber, hab fieber, ich habe grippe, ich hab grippe, ich kann nicht kommen, kann nicht kommen, ich kann leider nicht kommen, kann leider nicht kommen, ich komme nicht, komme nicht, ich komme doch nicht, komme doch nicht, ich muss absagen, muss absagen, ich muss leider absagen, muss leider absagen, mir ist was dazwischengekommen, mir ist etwas dazwischengekommen, mir ist was dazwischen gekommen, ohne mich, ich falle aus, falle aus, ich fall aus, ich bin nicht dabei, bin nicht dabei, ich bin doch nicht dabei, bin doch nicht dabei
lexicon-talk-gone-short = krank, fieber, grippe, was dazwischengekommen, etwas dazwischengekommen
lexicon-talk-cant = ich kann nicht, kann nicht, kann ich nicht, ich kann leider nicht, kann leider nicht, das kann ich nicht, ich kann das nicht, kann das nicht, ich kann das nicht machen, kann das nicht machen, ich kann es nicht, ich kann es nicht machen, das schaffe ich nicht, das schaff ich nicht, ich schaffe das nicht, ich schaff das nicht, schaffe ich nicht, schaff ich nicht, ich schaffe es nicht, ich schaffs nicht, geht bei mir nicht, ich kann doch nicht, kann doch nicht
lexicon-talk-willing = mach ich, mache ich, ich mach das, ich mache das, ich machs, ich mach es, ich mache es, übernehme ich, übernehm ich, ich übernehme das, ich übernehm das, bin dran, ich bin dran, bin schon dran, geht klar, klar mach ich, wird gemacht, kümmere mich, ich kümmere mich drum, ich kümmere mich darum, kümmere mich drum, gerne, gern, natürlich, verlass dich auf mich, kein problem, kann ich machen, ich kann, kann ich, ich
lexicon-talk-unwilling = nein, nee, nö, ne, lieber nicht, ich nicht, nein danke, diesmal nicht
lexicon-talk-suggest = können wir, könnten wir, wollen wir, sollen wir, sollten wir, wie wäre, wie wärs, was ist mit, geht auch, ginge auch, ginge das, geht das, lass uns, lasst uns, kann man, kann das, könnte das, könnt ihr, kannst du, könntest du, wäre es möglich, ist es möglich, wäre es ok, was wenn, wenn wir, vielleicht können wir, wir könnten, wir müssen, ich würde gern, können wir das
lexicon-talk-suggest-move = verschieben wir, verschieb das essen, das essen verschieben, essen verschieben, essen um, essen auf
lexicon-talk-everything = alles, alle, alles von mir, meine aufgaben, alle meine aufgaben
lexicon-talk-kind-check = temperaturen, temperatur, thermometer, messen, messungen, kerntemperatur
lexicon-talk-meat = fleisch, temperatur, temperaturen, temp, kerntemperatur, fühler, thermometer, scheiben, stücke, reste, grad, f, c, fahrenheit, celsius, kern
lexicon-talk-meat-reads = bei, auf, in, im, mitte, innen, drin, zeigt, misst, gemessen, liest, steht, hat, noch, immer, nur, etwa, ca, circa, ungefähr, fast, runter, gefallen, überall, zu, knapp, rund, an, dicksten, stelle
lexicon-talk-meat-tells = zeigt, misst, gemessen, liest, jetzt, noch, gefallen, runter
lexicon-talk-meat-rests = kühlbox, box, thermobox, warmhaltebox, folie, handtüchern, decke, ruht
lexicon-talk-short-breast = b, br, bru, brst
lexicon-talk-short-thigh = k, ke, keu, sch, schen, sl
lexicon-talk-short-wing = fl, flü, flg, flu
lexicon-talk-short-stuffing = fü, fue, füll
lexicon-talk-short-pit = of, smo
lexicon-talk-everywhere = überall, an allen stellen, an jeder stelle, in allen, alle drei, rundum, durchgehend, durchweg
lexicon-talk-slip = ups, hoppla, sorry, nein, nee, meinte, meine, quatsch, falsch, vertippt, verlesen, tippfehler, haha, lol, moment, doch, entschuldigung, korrektur, ich meine, äh, ähm, stimmt nicht, sondern
lexicon-talk-doubting = das kann nicht stimmen, kann nicht stimmen, das stimmt nicht, stimmt doch nicht, das kann nicht sein, kann nicht sein, kommt mir komisch vor, sieht falsch aus, viel zu wenig, komisch, seltsam
lexicon-talk-eat = noch essen, noch essbar, essbar, noch gut, noch ok, noch okay, noch genießbar, genießbar, geht das noch, kann das noch weg, wegwerfen, wegschmeißen, muss das weg, zu spät, noch sicher, noch in ordnung, kann man das essen
lexicon-talk-kind-fire = ofen, backofen, feuer, smoker, grill, hitze, kohle, glut, vorheizen, ofen vorheizen
lexicon-talk-kind-travel = fahren, fahre, fahrt, transport
lexicon-talk-kind-carve = tranchieren, aufschneiden, messer
lexicon-talk-kind-water = wasserwechsel, wasser
lexicon-talk-kind-buy = einkauf, einkaufen, einkäufe
lexicon-talk-who-does-what = wer macht was, wer macht denn was, wer hat was, wer übernimmt was, wer ist wofür zuständig
lexicon-talk-cancel = absagen, abgesagt, das essen fällt aus, essen fällt aus, fällt aus, wir sagen ab, plan beenden, beende den plan, plan löschen, lösch den plan, plan abbrechen, brich den plan ab, alles absagen, essen ist abgesagt
lexicon-talk-who = wer, wer ist, wer macht, wer hat, wer will, wer kann, wer wird
lexicon-talk-asked-pull = holt ihn raus, nimmt ihn raus
lexicon-talk-asked-on = schiebt ihn rein, macht ihn rein
lexicon-talk-asked-fire = heizt, heizt vor, macht den ofen an, macht feuer
lexicon-talk-asked-check = misst, misst die temperatur, schaut nach
lexicon-talk-asked-water = wechselt das wasser, wasser wechseln
lexicon-talk-asked-buy = kauft, kauft ein, kauft den vogel, kauft die pute, einkaufen
lexicon-talk-asked-carve = tranchiert, tranchieren, schneidet auf, schneidet ihn auf, schneidet
lexicon-talk-asked-salt = salzt, salzen, salzt ihn, salzt den vogel, salzt die pute
lexicon-talk-toward = in, nach, bei, um
lexicon-talk-late = zu spät, spät, später, verspätet, verspätung, kommt später, kommen später, kommt zu spät, im stau
lexicon-talk-other-year = letztes jahr, letzten jahr, voriges jahr, vorigen jahr, letztes mal, letzte weihnachten, letztes weihnachten, vor einem jahr, vor jahren
lexicon-talk-dish-add = dazu, noch, außerdem, ergänze, auch, plus, zusätzlich
lexicon-talk-dish-and = und, auch, dazu, außerdem
lexicon-talk-dish-doing = gibt, mache, machen
lexicon-talk-both = beide, beides, beide vögel
lexicon-talk-dish-remove = ohne, entferne, lösche, streiche
lexicon-talk-dish-link = in, im, auf, am, bei, für, der, die, das, den, dem, braucht, dauert, und, ein, eine, mit
lexicon-talk-undo = rückgängig, rückgängig machen, mach das rückgängig, mach rückgängig, nimm das zurück, zurück, zurücknehmen, falscher knopf, verdrückt, vertippt, mein fehler, das war falsch, das war nicht richtig, ups, war falsch, hab mich verdrückt, hab mich vertippt, versehen, war ein versehen
lexicon-talk-discard = doch nicht, vergiss es
lexicon-talk-thrown = weggeworfen, weggeschmissen, entsorgt, in den müll, in müll, in den müll geworfen, in müll geworfen, im müll, alles weggeworfen, mussten wegwerfen, musste wegwerfen, wegwerfen müssen, weggeworfen worden, in die tonne, in tonne, in tonne geworfen, in der tonne
lexicon-talk-greeting = hallo, hi, hey, moin, moin moin, servus, grüß gott, grüezi, grüß dich, guten morgen, guten tag, guten abend, tag, na, hallo zusammen, hallo alle, hallo ihr, hallo leute, tach, frohe weihnachten, schöne weihnachten, hallöchen
lexicon-talk-assent = ok, okay, ja, ja bitte, jo, jep, klar, gern, gerne, gut, sehr gut, super, perfekt, passt, passt so, klingt gut, hört sich gut an, sieht gut aus, einverstanden, in ordnung, alles klar, geht klar, abgemacht, machen wir, machen wir so, so machen wir es, so machen wirs, mach das, mach so, angenommen, annehmen, nehmen wir, los gehts, los geht es, na gut, ja gut, ok gut, ok super, ja passt, ja gerne, prima, toll, genau, meinetwegen, von mir aus, bestens, ok passt
lexicon-talk-thanks = danke, danke dir, danke schön, dankeschön, vielen dank, tausend dank, herzlichen dank, besten dank, danke sehr, super danke, ok danke, perfekt danke, merci, dank dir, danke euch

## Um Hilfe bitten; die Namen der Sprachen
lexicon-help = hilfe, hilf mir, kannst du mir helfen, was kannst du, wie geht das, wie funktioniert das
lexicon-language-en = englisch, english
lexicon-language-es = spanisch, español, spanish
lexicon-language-fr = französisch, français, french
lexicon-language-de = deutsch, german
lexicon-language-pt = portugiesisch, português, brasilianisch, portuguese
lexicon-language-it = italienisch, italiano, italian

## Quiet hours, and that there are none
lexicon-quiet = ruhe, ruhezeit, ruhezeiten, nicht stören, bitte nicht stören
lexicon-quiet-off = aus, keine, nie, nein

## Prozent vom Wasser; wessen Löffel
lexicon-ask-of-water = vom wasser, des wassers, auf das wasser
lexicon-spoons-us = us löffel, amerikanisch, amerikanische, us
lexicon-spoons-metric = metrisch, metrische
lexicon-spoons-uk = britisch, britische, englische
lexicon-spoons-australia = australisch, australische

## Ein Wort, das das nächste zurücknimmt
lexicon-negation = vergiss den, vergiss die, vergiss das, vergiss, nicht im, nicht in den, nicht in, kein, keine, keinen, ohne, statt, nicht mit
