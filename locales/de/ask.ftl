### Antworten auf schnelle Fragen. Mengen, Temperaturen, Dauern kommen schon geschrieben.
### Erst die Antwort, dann worauf zu achten ist; jede Zeile steht für sich.

ask-unknown = Das lese ich nicht als Frage. Frag mich nach Salz (2 EL Tafelsalz in koscheres Flockensalz), Zeiten (wie lange taut eine Pute mit 6,5 kg), Mengen (wie groß für 11 Personen), Sicherheit (sind 70 °C für 2 Minuten sicher) oder Einheiten (325 °F in °C).
ask-no-amount = Das ist keine Menge. Gib mir eine über null, zum Beispiel 2 EL.
ask-no-span = Ich brauche eine Dauer, mit der ich rechnen kann, zum Beispiel 24 h.
ask-no-mark = Diese Stufe hat kein Gasofen. Es gibt ¼, ½ und 1 bis 10, das sind 107 bis 260 °C.
ask-no-temperature = Das ist keine Temperatur. Zum Beispiel: 325 °F in °C.
ask-no-substance = Was ein Löffel wiegt, hängt davon ab, was darin ist. Ich kenne Salz und Butter: 2 EL Tafelsalz in Gramm.
ask-no-serving = Das ist keine Portion von diesem Vogel. Zum Beispiel: Natrium in einer Pute mit 6,5 kg für 11 Personen.
ask-impossible = Das kann nicht sein: { $reason }.

# Was zurückgefragt wird. Die Antwort kommt hinter die Frage.
ask-back-mass = Wie schwer ist der Vogel? Zum Beispiel: 6,5 kg.
ask-back-how-much = Wie viel { $salt }? Zum Beispiel: 2 EL.
ask-back-kosher = Welches koschere Salz? Grobes wiegt je Löffel fast doppelt so viel wie Flocken.
ask-back-own-salt = Dein Salz kenne ich noch nicht. Lies mir die Packung vor, zum Beispiel: mein Salz: 1/4 TL sind 0,7 g.
ask-back-water = Wie viel Wasser, oder wie schwer ist der Vogel? Zum Beispiel: 4 l oder 6,5 kg.
ask-back-scale = { $n } in °F oder °C? Das ist der ganze Unterschied.
ask-back-how-long-out = Wie lange stand es draußen? Zum Beispiel: 3 Stunden.
ask-back-fuel-time = Für wie lange? Zum Beispiel: 4 h.
ask-back-hours-3 = 3 Stunden
ask-back-hours-5 = 5 Stunden
ask-fahrenheit = °F
ask-celsius = °C

# Namen in Sätzen.
ask-kind-turkey = Pute
ask-kind-turkey-breast = Putenbrust
ask-kind-chicken = Hähnchen
ask-kind-capon = Kapaun
ask-kind-duck = Ente
ask-kind-goose = Gans
ask-bird = { $condition ->
    [frozen] { $mass } { $kind }, gefroren
    [part-thawed] { $mass } { $kind }, halb aufgetaut
   *[fresh] { $mass } { $kind }
}
ask-salt-table = Tafelsalz
ask-salt-fine-sea = feines Meersalz
ask-salt-pickling = Einmachsalz
ask-salt-flake-kosher = koscheres Flockensalz
ask-salt-coarse-kosher = grobes koscheres Salz
ask-salt-coarse-sea = grobes Meersalz
ask-salt-own = dein eigenes Salz
ask-food-raw-whole = Ein roher Vogel
ask-food-raw-pieces = Rohe Teile
ask-food-raw-duck-or-goose = Rohe Ente oder Gans
ask-food-giblets = Rohe Innereien
ask-food-leftovers = Gegarter Vogel und Reste
ask-food-cooked-pieces = Gegarte Scheiben
ask-food-cooked-in-gravy = Gegarter Vogel in Soße
ask-food-gravy = Soße und Brühe
ask-food-stuffing = Gegarte Füllung
ask-food-stuffing-and-gravy = Füllung und Soße
ask-food-soup = Suppe und Eintopf

ask-seconds = { $n } s
ask-minutes = { $n } min
ask-amount = { $unit ->
    [milligram] { $n } mg
    [gram] { $n } g
    [kilogram] { $n } kg
    [pound] { $n } lb
    [metric-pound] { $n } Pfund
    [ounce] { $n } oz
    [stick] { $n ->
        [one] { $n } US-Stück Butter
       *[other] { $n } US-Stück Butter
    }
    [pinch] { $n ->
        [one] { $n } Prise
       *[other] { $n } Prisen
    }
    [second] { $n } s
    [minute] { $n } min
    [hour] { $n } h
    [day] { $n ->
        [one] { $n } Tag
       *[other] { $n } Tage
    }
    [teaspoon] { $n } TL
    [tablespoon] { $n } EL
    [cup] { $n ->
        [one] { $n } Tasse
       *[other] { $n } Tassen
    }
    [fluid-ounce] { $n } fl oz
    [pint] { $n } pt
    [quart] { $n } qt
    [gallon] { $n } gal
    [milliliter] { $n } ml
    [liter] { $n } l
    [fahrenheit] { $n } °F
    [celsius] { $n } °C
    [gas-mark] Gasstufe { $n }
    [thermostat] thermostat { $n }
   *[other] { $n }
}

# ---- Salz
ask-salt-convert = { $given } { $from } = { $volume } { $to } ({ $mass }).
ask-salt-rule-holds = Küchenregel: { $rule } % der Menge im Löffel. Nach Gewicht sind es { $mass } %, die Regel stimmt also.
ask-salt-rule-fails = Küchenregel: { $rule } % der Menge im Löffel. Nach Gewicht sind es { $mass } %; ich gehe nach Gewicht.
ask-salt-weighs = { $volume } { $salt } = { $mass }.
ask-dose = { $bird }: insgesamt { $volume } { $salt } ({ $mass }, { $strength ->
    [light] mild
    [bold] kräftig
   *[usual] wie üblich
}).
ask-dose-shares = Verteilt: { $shares }.
ask-dose-share = { $place ->
    [cavity] { $volume } in die Höhle
    [bone-side] { $volume } auf die Knochenseite
    [breast] { $count ->
        [one] { $volume } unter die Haut der Brust
       *[other] { $volume } auf jede Brusthälfte
    }
    [thigh] { $volume } auf jede Oberkeule
    [drumstick] { $volume } auf jede Unterkeule
   *[skin] { $volume } auf die Haut
}
ask-dose-skin = Für die Haut misch es mit ebenso viel Pfeffer und, damit sie knusprig wird, Backpulver.
ask-oversalt-given = { $mass } ({ $salt })
ask-oversalt-much = Ja: etwa das { $times }-Fache. Das sind { $given }, und dieser Vogel braucht { $dose }.
ask-oversalt-a-little = Etwas: das sind { $given }, und dieser Vogel braucht { $dose }. Lass es so, und salz die Soße wenig.
ask-oversalt-right = Nein, das passt etwa: { $given }, und dieser Vogel braucht { $dose }.
ask-oversalt-little = Nein, eher wenig: das sind { $given }, und dieser Vogel braucht { $dose }.
ask-salt-enough-much = Mehr als genug, etwa das { $times }-Fache: Das sind { $given }, und dieser Vogel braucht { $dose }.
ask-salt-enough-a-little = Ja, etwas mehr als nötig: Das sind { $given }, und dieser Vogel braucht { $dose }.
ask-salt-enough-right = Ja, das passt etwa: { $given }, und dieser Vogel braucht { $dose }.
ask-oversalt-double = Ja, doppelt so viel Salz ist zu viel.
ask-oversalt-fresh = Streif jetzt ab, was darauf liegt. Wenn es abgespült werden muss: sanft und ohne Spritzer, dann trocken tupfen und die Spüle schrubben, denn Abspülen verteilt Keime.
ask-oversalt-soaked = Es ist inzwischen eingezogen: streif ab, was noch darauf liegt, nicht abspülen.
ask-oversalt-either = In der ersten Stunde: abstreifen. Wenn es abgespült werden muss: sanft und ohne Spritzer, dann trocken tupfen und die Spüle schrubben, denn Abspülen verteilt Keime. Später ist es eingezogen: nur abstreifen.
ask-oversalt-beside = Kein Salz in Soße und Füllung. Es verdirbt den Geschmack und schadet niemandem, außer wer Salz meiden muss.
ask-dose-per-lb = { $volume } { $salt } je Pound Vogel ({ $mass }).
ask-dose-per-kg = { $volume } { $salt } je Kilo Vogel ({ $mass }).
ask-spoon-weights = Gewicht von { $volume }: { $weights }.
ask-spoon-weight = { $mass } { $salt }
ask-dose-rest = Dann 24 h oder länger offen in den Kühlschrank; höchstens { $longest }.
ask-dose-none = { $percent } % Salzlake: der Abpacker hat ihn schon gesalzen. Kein Salz mehr, keine Lake.
ask-dose-light = Es sind { $percent } % Salzlake drin, darum eine leichte Menge.
ask-brine = { $percent } % Lake: { $mass } Salz auf { $water } Wasser. Das sind { $volume } { $salt }.
ask-brine-strength = { $given } % ist mehr, als kaltes Wasser hält, oder gar nichts. Über 0 bis { $high } %, zum Beispiel: 6 % Lake für 4 l.
ask-brine-other = Prozent der ganzen Lake; auf das Wasser allein gerechnet sind es { $percent } %.
ask-brine-time = Es dauert { $time }, in einem Topf mit { $vessel }.
ask-brine-usual = { $time } für Vögel von { $low } bis { $high }.
ask-brine-cold = Vogel und Lake bleiben bei { $cold } oder kälter, höchstens 48 h.
ask-depth = { $rest } im Kühlschrank: das Salz ist etwa { $depth } mm tief ({ $low } bis { $high }).
ask-depth-pork = So weit kommt ein Zehntel des Salzes von der Oberfläche. An Schwein gemessen; für Pute hat es niemand veröffentlicht.
ask-sodium = { $bird } mit der üblichen Salzmenge, { $who }: etwa { $expected } mg Natrium ({ $low } bis { $high }).
ask-sodium-one-of = { $people ->
    [one] von einer Person gegessen
   *[other] eine von { $people } Portionen
}
ask-sodium-grams = { $mass } gegartes Fleisch
ask-sodium-day = Das sind { $low } bis { $high } % der { $daily } mg eines Tages.
ask-sodium-care = Eine Schätzung: ist Natrium für deine Gesundheit wichtig, frag deine Ärztin oder deinen Arzt.
ask-own = Dein Salz: { $teaspoon } je Teelöffel, { $tablespoon } je Esslöffel.
ask-own-not-plain = Natrium und Gewicht passen nicht zu reinem Salz. Sieh aufs Etikett, zum Beispiel: mein Salz: 1/4 TL hat 280 mg Natrium.
ask-own-density = So leicht oder schwer ist kein Salz: ein Teelöffel wiegt 1,5 bis 8 g. Prüf den Löffel, zum Beispiel: mein Salz: 1/4 TL sind 0,7 g.

# ---- der Vogel
ask-thaw = { $bird }: { $fridge } im Kühlschrank, oder { $water } in kaltem Wasser, alle { $every } gewechselt.
ask-thaw-care = Im Kühlschrank aufgetaut hält er { $keeps }; in Wasser aufgetaut gleich garen. Nie auf der Arbeitsplatte.
ask-roast = { $bird }, { $cooker ->
    [fan-oven] Umluft
    [smoker] Smoker
   *[oven] Ofen
} { $setting }: { $time }, am ehesten { $middle }.
ask-roast-done = Fertig ist er nach dem Thermometer, nicht nach der Uhr: { $target } in Brust, Keule und Flügel.
ask-roast-practice = Ein Teil davon ist Küchenerfahrung, keine veröffentlichte Tabelle.
ask-bird-for = { $people ->
    [one] Eine Person: { $low } bis { $high } { $kind }.
   *[other] { $people } Personen: { $low } bis { $high } { $kind }.
}
ask-bird-for-exactly = { $people ->
    [one] Eine Person: { $low } { $kind }.
   *[other] { $people } Personen: { $low } { $kind }.
}
ask-portion = { $low } bis { $high } { $kind } pro Person, wie gekauft, mit Knochen.
ask-bird-for-several = Besser { $birds } Vögel mit je { $low } bis { $high }.
ask-bird-for-leftovers = Für Reste nimm ein Viertel bis die Hälfte mehr.
ask-people-for = { $bird } reicht für { $low } bis { $high }, mit Resten für { $some }.
ask-fuel = { $fuel ->
    [charcoal] Holzkohle
    [propane] Propan
   *[pellets] Pellets
} für { $span } bei etwa 165 °C: { $low } bis { $high }. Küchenerfahrung, keine Tabelle; halte die Hälfte mehr bereit.
ask-fuel-bottle = In eine volle Flasche passen { $bottle }.
ask-fuel-care = Nur im Freien, nie in Haus, Garage oder Zelt.

# ---- Sicherheit
ask-lethality-enough = Ja, nach der Tabelle: { $at } an der kältesten Stelle brauchen { $needed }, gehalten hast du { $held }.
ask-lethality-not-yet = Noch nicht: { $at } an der kältesten Stelle brauchen { $needed }. Es fehlen { $missing }.
ask-lethality-never = Nein. Unter { $first } ist keine Zeit bekannt, die reicht. Gar weiter bis { $kitchen }.
ask-lethality-instant = Ja: bei { $at } an der kältesten Stelle ist es sofort sicher.
ask-lethality-time = { $at } an der kältesten Stelle müssen { $needed } halten.
ask-lethality-go-on = Noch nicht: weiter bis { $kitchen } in der dicksten Brust, der innersten Keule und dem Flügel. Nach der Tabelle müssten { $at } an der kältesten Stelle { $needed } halten.
ask-lethality-stuffing-not = Nein: Füllung muss in der Mitte auf { $target } kommen, { $at } reicht nicht. Fleisch schon gar? Füllung raus und im Ofen weiterbacken.
ask-lethality-stuffing = Ja, wenn das ihre Mitte ist: Bei { $target } ist Füllung sicher.
ask-lethality-care = Für Fleisch, mit geprüftem Thermometer; nicht für Füllung. Die Lebensmittelbehörden verlangen { $kitchen } überall: im Zweifel gilt das.
ask-come-up = Verlass dich nicht darauf. Die { $span } auf dem Weg nach oben zählen nicht als gehalten, und was zwischen { $low } und { $hot } gewachsen ist, macht Hitze nicht alles ungeschehen. War sie dort mehr als etwa zwei Stunden ohne stetige Hitze, weg damit; sonst weiter bis { $kitchen } überall.
ask-safe = { $target } in der dicksten Brust, tief in der Keule und am Flügel.
ask-safe-held = { $target }, { $hold } lang, in der dicksten Brust, tief in der Keule und am Flügel. { $plan }, womit ich rechne, braucht keine Minuten.
ask-safe-higher = Ich richte mich nach { $plan } in Brust, Keule und Flügel. Health Canada sagt { $target } für ganze Vögel: wer sich daran hält, lässt ihn bis dahin drin.
ask-safe-stuffing = Füllung: { $target } in der Mitte, im Vogel oder daneben.
ask-safe-where = Die Spitze weg vom Knochen. Farbe und klarer Saft beweisen nichts.
ask-out-fine = { $out } draußen ist noch gut. Es bleiben { $left }: dann ist es gegessen, im Kühlschrank oder im Müll.
ask-out-if-cool = Das gilt bis { $air } ringsum; ist es heißer, ist es insgesamt eine Stunde.
ask-out-limit = Insgesamt zwei Stunden außerhalb vom Kühlschrank, über { $air } eine. Dann kommt es weg.
ask-out-discard = Wirf es weg: { $out } draußen, und die Grenze ist { $limit }.
ask-out-dont = Nein: { $out } draußen ist zu lang, die Grenze sind { $limit } insgesamt.
ask-out-why = Noch mal erhitzen macht es nicht sicher: manche Gifte bleiben.
ask-keeps = { $food }: { $days } im Kühlschrank.
ask-keeps-still = { $age } alt, das ist noch in der Frist. { $food }: { $days } im Kühlschrank.
ask-keeps-over = Wirf es weg: { $age } ist zu alt. { $food }: { $days } im Kühlschrank.
ask-keeps-that-still = { $food }: { $days } im Kühlschrank; { $age } ist noch drin.
ask-keeps-that-over = { $food }: { $days } im Kühlschrank; { $age } ist zu lang: weg damit.
ask-days = { $n ->
    [one] { $n } Tag
   *[other] { $n } Tage
}
ask-days-range = { $low } bis { $high } Tage
ask-months = { $n ->
    [one] { $n } Monat
   *[other] { $n } Monate
}
ask-months-range = { $low } bis { $high } Monate
ask-keeps-care = Der Kühlschrank bei { $cold } oder kälter. Sieht oder riecht es komisch: weg damit.
ask-keeps-frozen = { $food }: { $months } im Gefrierfach, der Qualität wegen. Durchgefroren bleibt es sicher.
ask-keeps-unknown = { $food }: dafür kenne ich keine veröffentlichte Frist. Vorsicht: höchstens zwei Stunden außerhalb vom Kühlschrank.
ask-cooling = { $limit } nach dem Garen spätestens in den Kühlschrank, ruhig heiß, in flachen Schalen, das Fleisch vom Knochen.
ask-cooling-marks = Von { $from } auf { $middle } in 2 h, auf { $cold } in insgesamt 6 h.
ask-reheat = Durch und durch auf { $target } aufwärmen.
ask-reheat-gravy = Soße sprudelnd aufkochen.
ask-reheat-care = Zugedeckt, mit etwas Brühe. Nicht im Slow Cooker.
ask-reheat-once = In Großbritannien: nur einmal aufwärmen.
ask-refreeze = Im Kühlschrank aufgetaut darf er wieder eingefroren werden, roh oder gegart. In Wasser oder Mikrowelle aufgetaut erst garen.
ask-refreeze-out = Nicht, wenn er länger als zwei Stunden draußen stand.
ask-colour = Farbe und klarer Saft beweisen nichts, rosa oder nicht. Das Thermometer entscheidet:
ask-stand = Vor dem Tranchieren { $least } oder länger ruhen lassen, locker abgedeckt. Erst wird er noch heißer, dann kühler.
ask-oven-low = Nein: Geflügel braucht einen Ofen mit { $limit } oder mehr, sagen die Lebensmittelbehörden.
ask-oven-fits = Ja, { $at } passt. Die Lebensmittelbehörden verlangen für Geflügel { $limit } oder mehr.
ask-oven = Stell den Ofen auf { $limit } oder mehr: das sagen die Lebensmittelbehörden für Geflügel.
ask-oven-level = { $level ->
        [low] Schwache
        [high] Starke
       *[medium] Mittlere
    } Hitze heißt etwa { $setting }. Öfen sind verschieden: das Thermometer im Vogel entscheidet.
ask-oven-smoker = Ein Smoker läuft bei { $low } bis { $high }, mit ganz aufgetautem Vogel.
ask-off-dial-at = { $side ->
    [cold] Ihm fehlen { $by }: für { $setting } stell ihn auf { $dial }.
   *[hot] Er heizt { $by } zu heiß: für { $setting } stell ihn auf { $dial }.
}
ask-off-dial-by = { $side ->
    [cold] Ihm fehlen { $by }: stell ihn um so viel höher, als es sein soll.
   *[hot] Er heizt { $by } zu heiß: stell ihn um so viel niedriger, als es sein soll.
}
ask-off-dial = { $side ->
    [cold] Dann stell ihn höher, um so viel wie ihm fehlt.
    [hot] Dann stell ihn niedriger, um so viel wie er zu heiß ist.
   *[some] Heizt er zu heiß, stell ihn um so viel niedriger; zu kalt, um so viel höher.
}
ask-off-dial-thermometer = Ein Ofenthermometer neben dem Vogel sagt, wie viel es ist. Gib ihm 20 Min.: jeder Ofen schwankt.
ask-hold = Halt ihn bei { $hot } oder mehr; darunter höchstens { $limit }, dann in den Kühlschrank.
ask-wash = Nein, nicht waschen: bei { $share } % derer, die es taten, waren danach Keime in der Spüle. Trocken tupfen, Hände 20 s waschen.
ask-counter-thaw = Nie auf der Arbeitsplatte, auch nicht in warmem Wasser: außen verdirbt er, während innen noch Eis ist. Kühlschrank, oder kaltes Wasser, alle { $every } gewechselt, und dann sofort garen.
ask-warm-thaw = Weg damit: außen war er über { $limit } lauwarm, während es innen noch taute, und Garen macht das nicht gut. Der nächste taut im Kühlschrank, oder in kaltem Wasser, alle { $every } gewechselt.
ask-stuffing = Am sichersten neben dem Vogel gebacken. Im Vogel: locker füllen, erst kurz vor dem Garen, und keinen, der gefroren ist, geräuchert oder frittiert wird.
ask-stuffing-target = Auch in ihrer Mitte müssen es { $target } sein.
ask-fry-frozen = Nein: nie einen Vogel frittieren, der gefroren oder halb gefroren ist. Das Öl kocht über und brennt. Erst ganz auftauen.
ask-fry-stuffed = Nein: nie einen gefüllten Vogel frittieren.
ask-fry-heavy = Nein: { $given } sind zu viel für eine Fritteuse. Bis 5,4 kg.
ask-fry-time = { $mass } brauchen etwa { $time } bei 177 °C; fertig bei { $target } überall.
ask-fry = Frittieren: im Freien, 3 m oder mehr vom Haus, Öl bei 177 °C, 7 bis 11 min je Kilo, kein Vogel über 5,4 kg.
ask-fry-care = Ganz aufgetaut und trocken, nie gefüllt: Wasser lässt das Öl überkochen. Miss den Ölstand zuerst mit Wasser aus, lass ihn nie allein, Pulverlöscher griffbereit.
ask-charcoal = Nie drinnen, in Garage, Zelt oder unter einem Vordach. Kohlenmonoxid tötet und riecht nicht. Auch ein noch warmer Grill bleibt draußen.
ask-fire = { $call ->
    [none] Ofentür zulassen und den Ofen ausschalten. Kein Wasser, und das Blech nicht heraustragen. Geht es nicht gleich aus oder schlagen Flammen heraus: alle hinaus, Türen zu, und von draußen die Feuerwehr anrufen.
   *[known] Ofentür zulassen und den Ofen ausschalten. Kein Wasser, und das Blech nicht heraustragen. Geht es nicht gleich aus oder schlagen Flammen heraus: alle hinaus, Türen zu, und von draußen { $call } anrufen.
}
ask-fire-elsewhere = Eine Pfanne auf dem Herd: Hitze aus, Deckel drauf. Smoker oder Grill: Deckel und Lüftung zu, Gas ab. Nur wenn du gefahrlos herankommst.
ask-gas = { $call ->
    [none] Keinen Schalter anfassen, keine Flamme, drinnen nicht telefonieren. Fenster auf, die auf dem Weg liegen, alle hinaus, dann von draußen die Feuerwehr oder den Gasversorger anrufen.
   *[known] Keinen Schalter anfassen, keine Flamme, drinnen nicht telefonieren. Fenster auf, die auf dem Weg liegen, alle hinaus, dann von draußen { $call } oder den Gasversorger anrufen.
}
ask-kitchen-smoke = { $call ->
    [none] Hitze aus, Ofentür zu, Fenster auf. Flammen, oder es hört nicht auf: alle hinaus und von draußen den Notruf anrufen. Wenn er kalt ist: nach getropftem Fett sehen.
   *[known] Hitze aus, Ofentür zu, Fenster auf. Flammen, oder es hört nicht auf: alle hinaus und von draußen { $call } anrufen. Wenn er kalt ist: nach getropftem Fett sehen.
}
ask-carbon-monoxide = { $call ->
    [none] Alle sofort an die frische Luft, Türen auf dem Weg auf. Dann den Notruf anrufen; niemand geht zurück, bevor die es sagen. Kopfweh, Schwindel, Übelkeit: sag es ihnen. Kohle und Grill brennen nie im Haus.
   *[known] Alle sofort an die frische Luft, Türen auf dem Weg auf. Dann { $call } anrufen; niemand geht zurück, bevor die es sagen. Kopfweh, Schwindel, Übelkeit: sag es ihnen. Kohle und Grill brennen nie im Haus.
}
ask-hot-oil = { $call ->
    [none] Brenner aus, wenn du dich dabei nicht über den Topf beugst. Alle zurück, Kinder zuerst, und kein Wasser. Flammen, oder jemand hat Öl abbekommen: den Notruf anrufen. Vor dem nächsten Versuch: abkühlen, weniger Öl.
   *[known] Brenner aus, wenn du dich dabei nicht über den Topf beugst. Alle zurück, Kinder zuerst, und kein Wasser. Flammen, oder jemand hat Öl abbekommen: { $call } anrufen. Vor dem nächsten Versuch: abkühlen, weniger Öl.
}
ask-burn = { $call ->
    [none] Sofort 20 min unter kühles fließendes Wasser; Ringe und Uhr ab, dann sauber abdecken. Kein Eis, keine Butter. Größer als eine Hand, weiß oder mit Blasen, im Gesicht oder ein Kind: Arzt, oder den Notruf anrufen.
   *[known] Sofort 20 min unter kühles fließendes Wasser; Ringe und Uhr ab, dann sauber abdecken. Kein Eis, keine Butter. Größer als eine Hand, weiß oder mit Blasen, im Gesicht oder ein Kind: Arzt, oder { $call } anrufen.
}
ask-choking = { $call ->
    [none] Kein Husten, kein Wort mehr? den Notruf anrufen. Nach vorn beugen: 5 Schläge zwischen die Schulterblätter, dann 5 Stöße über dem Nabel, im Wechsel, bis es draußen ist. Ein Baby: nie der Bauch; Schläge bäuchlings, dann 5-mal auf die Brust drücken.
   *[known] Kein Husten, kein Wort mehr? { $call } anrufen. Nach vorn beugen: 5 Schläge zwischen die Schulterblätter, dann 5 Stöße über dem Nabel, im Wechsel, bis es draußen ist. Ein Baby: nie der Bauch; Schläge bäuchlings, dann 5-mal auf die Brust drücken.
}
ask-fainted = { $call ->
    [none] Jetzt den Notruf anrufen. Atmet normal: auf die Seite legen, Kopf nach hinten, dabeibleiben. Atmet nicht oder schnappt nur: auf den Rücken, in der Mitte der Brust fest und schnell drücken, 100- bis 120-mal in der Minute, bis Hilfe da ist. Ist mehr als einem schwindlig: alle hinaus an die frische Luft.
   *[known] Jetzt { $call } anrufen. Atmet normal: auf die Seite legen, Kopf nach hinten, dabeibleiben. Atmet nicht oder schnappt nur: auf den Rücken, in der Mitte der Brust fest und schnell drücken, 100- bis 120-mal in der Minute, bis Hilfe da ist. Ist mehr als einem schwindlig: alle hinaus an die frische Luft.
}
ask-allergy = { $call ->
    [none] Zunge, Lippen oder Hals schwellen an oder die Luft wird knapp nach dem Essen: jetzt den Notruf anrufen und „allergische Reaktion“ sagen. Adrenalin-Pen, wenn einer da ist: sofort außen in den Oberschenkel, nach 5 min ein zweiter, wenn es nicht besser wird. Flach hinlegen, Beine hoch; bei Atemnot aufrichten. Nicht aufstehen, nicht gehen.
   *[known] Zunge, Lippen oder Hals schwellen an oder die Luft wird knapp nach dem Essen: jetzt { $call } anrufen und „allergische Reaktion“ sagen. Adrenalin-Pen, wenn einer da ist: sofort außen in den Oberschenkel, nach 5 min ein zweiter, wenn es nicht besser wird. Flach hinlegen, Beine hoch; bei Atemnot aufrichten. Nicht aufstehen, nicht gehen.
}

ask-sick = Erst mal nichts mit Essen: Wer sich übergibt oder Durchfall hat, bleibt aus der Küche, bis 48 h nach dem letzten Mal. Die Aufgaben macht jemand anders.
ask-sick-made = Was seitdem gemacht wurde und nicht noch durchgegart wird: weg. Hände mit Wasser und Seife, 20 s; Gel hilft gegen Magen-Darm wenig.
ask-ate-sick = { $call ->
    [none] Oft kleine Schlucke Wasser, und Ruhe. Zum Arzt bei Blut, Fieber über { $fever }, wenn nichts drinbleibt, kaum Urin kommt, beim Aufstehen schwindlig wird, oder länger als drei Tage. Schwanger, sehr jung, alt oder krank: jetzt anrufen. Verschwommen sehen, schwache Muskeln, schwer atmen oder schlucken: den Notruf.
   *[known] Oft kleine Schlucke Wasser, und Ruhe. Zum Arzt bei Blut, Fieber über { $fever }, wenn nichts drinbleibt, kaum Urin kommt, beim Aufstehen schwindlig wird, oder länger als drei Tage. Schwanger, sehr jung, alt oder krank: jetzt anrufen. Verschwommen sehen, schwache Muskeln, schwer atmen oder schlucken: { $call }.
}
ask-ate-sick-rest = Niemand isst mehr davon, bis es klar ist: einpacken, beschriften, in den Kühlschrank. Mehrere krank? Das Gesundheitsamt anrufen. Wer sich übergibt, fasst bis 48 h danach kein Essen für andere an.
ask-cut = Drücken, bis es aufhört, unter fließendem Wasser abspülen, trocknen, wasserfestes Pflaster und Handschuh drüber. Essen mit Blut dran: weg. Messer und Brett in heißes Seifenwasser.
ask-cut-doctor = Tief, klaffend oder blutet nach 10 min Druck noch: zum Arzt.

ask-stuffing-slow = Fleisch bei { $target }, Füllung noch nicht? Heiß herauslöffeln und ohne Pause fertig garen: in einer Form im Ofen oder unter Rühren in der Pfanne, bis { $target } in der Mitte. Fleisch noch nicht so weit? Alles bleibt drin.
ask-stuff-ahead = Nein: erst kurz vor dem Garen mischen und füllen, und locker. Bis dahin warten Trockenes und Feuchtes getrennt im Kühlschrank. In der Mitte müssen es { $target } sein.

# ---- Gewohnheiten, und was schiefging
ask-fridge = { $cold } oder kälter, nach einem Thermometer darin.
ask-fridge-warm = Dein Kühlschrank steht bei { $at }: über { $cold } gilt nichts davon. Dreh ihn kälter, und miss nach, bevor der Vogel hineinkommt.
ask-baste = Nicht nötig. Jedes Öffnen kostet Zeit, und nasse Haut wird nicht knusprig.
ask-foil = Dunkel genug? Alufolie locker drüber und weitergaren: fertig ist er nur nach dem Thermometer. Für knusprige Haut kommt sie die letzten Minuten wieder ab.
ask-carve = Erst die Keulen: Haut einschneiden, Keule nach außen biegen, im Gelenk durchschneiden; dann Unter- von Oberkeule. Jede Brust am Stück vom Knochen, dann quer in Scheiben. Flügel zuletzt. Nicht auf dem Brett vom rohen Vogel.
ask-pop-up = So ein Stift kann zu früh oder zu spät kommen. Miss nach: { $target } in Brust, Keule und Flügel, dann ist er fertig.
ask-bag-inside = Ein Papierbeutel schadet nicht: raus damit, und { $target } im Fleisch zählen. Plastik, das geschmolzen oder verformt ist: Beutel und Vogel wegwerfen.
ask-probe-out = Zurück in die dickste Stelle der Brust, Spitze weg vom Knochen; was er draußen zeigte, zählt nicht. Kaputt? Jedes Einstechthermometer geht, das in Eiswasser { $ice } zeigt. Ohne kann niemand sagen, dass er gar ist.
ask-mess = Erst Küchenpapier, dann heißes Wasser mit Spülmittel, dann desinfizieren; Hände 20 s. Was roh gegessen wird und Saft abbekommen hat, in den Müll.
ask-crossed = Was roh gegessen wird und rohen Saft, das Messer oder das Brett davon berührt hat, kommt weg. Dann Messer, Brett und Hände: heißes Wasser und Spülmittel, Hände { $wash }.
ask-dog = Keine gegarten Knochen, die splittern; nichts Gesalzenes, keine Zwiebel. Etwas reines Fleisch geht.
ask-fragile = Wer schwanger, über 65, sehr klein oder abwehrgeschwächt ist, isst davon heiß und nur mit { $target } überall, wo gemessen wird, auch in der Füllung; Reste nur so heiß aufgewärmt. Im Zweifel Ärztin oder Arzt fragen.
ask-neck = Raus vor dem Salzen; schau in beide Enden, oft sind sie in einem Beutel. Für die Soße köcheln, bis { $target }. Roh halten sie { $giblets } im Kühlschrank.
ask-finish-oven = Ja, direkt von einer Hitze in die andere; nie halb heute und halb später. Ofen auf { $oven } oder mehr, { $target } wie immer.
ask-side-up = Brust nach oben, Flügelspitzen untergesteckt.
ask-fridge-shelf = Ganz unten, auf einem Blech, das den Saft fängt: nichts Rohes über anderem Essen.
ask-fridge-cover = Offen trocknet die Haut und wird knuspriger. Blech drunter, ganz unten. Zudecken, wo er anderes Essen berühren oder betropfen könnte.
ask-rinse-salt = Nein: das Salz ist eingezogen, und Abspülen verteilt Keime in der Spüle. Trocken tupfen; was an Körnern noch liegt, abstreifen.
ask-salted-twice = Streif ab, was geht, nicht abspülen, und kein Salz mehr: nicht darauf, nicht in die Butter, kein Bratensaft in die Soße. Lag es schon lange darauf, wird das Fleisch salzig: dünn schneiden und sonst nichts salzen.
ask-brine-frozen = Erst auftauen: in Eis kommt kaum Salz. Halb aufgetaut darf er in kalter Lake fertig tauen, bei { $cold } oder kälter.
ask-brine-or-not = Kein Muss. Trocken ist einfacher: Salz auf und unter die Haut, ein, zwei Tage in den Kühlschrank, nichts läuft über. Lake braucht einen Eimer und Platz bei { $cold }. Beides nicht bei koscheren Vögeln oder solchen mit zugesetzter Lake.
ask-rack = Kein Rost? Dicke Scheiben Zwiebel und Karotte oder ein Ring aus Alufolie tun es. Ofen: untere Schiene, damit der Vogel in der Mitte steht.
ask-truss = Nicht nötig: mit lockeren Beinen garen die Keulen schneller. Fällt er auseinander, die Enden locker binden.
ask-pan-water = Eine Tasse voll, damit der Bratensaft nicht verbrennt. Mehr macht nur die Haut weich.
ask-oven-bag = Ein Bratschlauch, wie es auf der Packung steht: geht schneller, also früh messen. Keine Papier- oder Einkaufstüte: die kann brennen und Dämpfe abgeben.
ask-temper = Nicht nötig: innen wird er in einer Stunde kaum wärmer. So lange, wie der Plan ihn draußen hat, für trockene Haut, nicht länger: es zählt zu den { $limit }.
ask-which-salt = Jedes, wenn du es wiegst: Gramm ist Gramm. Mit dem Löffel nicht: vom feinen Tafelsalz geht etwa doppelt so viel drauf wie von Flocken. Sag mir, welches du hast, „Tafelsalz“, und ich rechne damit.
ask-fits = Miss vorher: zwei Finger Luft rundum im Ofen, und eine Form, über die die Keulen nicht hängen. Zu groß? Flach aufgeklappt oder in Teilen auf zwei Blechen passt es und ist früher gar: sag „flach“.
ask-boil = Ja: mit Wasser bedeckt, nur eben siedend, nicht sprudelnd, bis Brust, Keule und Flügel { $target } haben. Keine knusprige Haut, dafür gute Brühe. Meine Zeiten sind fürs Braten: hier sagt es nur das Thermometer.
ask-weather = Aus dem Wind, Deckel zu, mehr Brennstoff bereit: Wind, Regen und Frost fressen Hitze. Trotzdem draußen, nie in Garage oder Zelt. Sag mir, was der Grill anzeigt, damit rechne ich.
ask-grill = Ja: Deckel zu, Vogel neben die Flammen, nicht darüber, { $oven } oder etwas mehr am Rost. Ich plane es wie einen Smoker. Nur im Freien.
ask-smoke = Mildes Holz: Apfel, Kirsche, etwas Eiche. Vogel drauf, wenn der Rauch dünn und bläulich ist; dicker weißer schmeckt bitter: mehr Luft und warten. Nur im Freien.
ask-gravy-how = Bratensaft abgießen, Fett abschöpfen. So viel Mehl wie Fett anschwitzen, Saft und Brühe einrühren, bis es fließt, aufkochen. Erst probieren, dann salzen: ein gesalzener Vogel tropft salzig.
ask-carcass = Knochen binnen { $limit } in den Kühlschrank, in { $days } verbrauchen oder einfrieren. Mit Zwiebel und Karotte 2 bis 3 h köcheln, absieben, flach abkühlen.
ask-bones-out = Keine Brühe aus Knochen, die länger als { $limit } draußen standen: Kochen macht nicht gut, was darin gewachsen ist. Wirf sie weg. Rechtzeitig im Kühlschrank halten sie { $days }.
ask-reheat-twice = Wärm nur auf, was gegessen wird, und einmal: jedes Mal ist es eine Weile lauwarm. Wenn es zweimal sein muss, beide Male durch und durch auf { $target }, und dazwischen binnen { $limit } in den Kühlschrank.
ask-leftovers-at = { $at } sind zu warm für Reste: sie halten bei { $cold } oder kälter. Darüber insgesamt mehr als { $limit }, Tisch und Auto mitgezählt, oder niemand weiß, wie lange: wegwerfen, Aufwärmen hilft nicht. Weniger: jetzt in den Kühlschrank.
ask-crisp = Trockene Haut: über Nacht offen in den Kühlschrank, dünn geölt, keine Folie, wenig Wasser im Bräter. Am Ende noch weich? Die letzten 10 min { $crisp }, und dabeibleiben.
ask-fat = Beides geht. Haut trocken, dünn bestreichen, kurz bevor er reinkommt; weiche Butter unter der Haut für den Geschmack. Ungesalzene bei gesalzenem Vogel.
ask-no-butter = Öl: eine dünne Schicht auf die trockene Haut, kurz bevor er hineinkommt, und wenn du magst darunter. Sie bräunt genauso.
ask-allergy-milk = Milch: Öl statt Butter, auf die Haut und darunter. In Füllung, Soße und Püree ist oft Butter oder Sahne.
ask-allergy-gluten = Gluten: Brotfüllung daneben in einer eigenen Form, nicht im Vogel; die Soße mit Maisstärke statt Mehl; Backpulver nach Etikett.
ask-allergy-nuts = Nüsse: keine in Füllung, Beilagen und Nachtisch; Fertigfüllung, Öl und Brot nach Etikett.
ask-allergy-egg = Ei: steckt oft in Füllung, Klößen, Soßen und Nachtisch.
ask-allergy-label = Lies auch das Etikett des Vogels: vorgewürzt oder gespritzt kann er Milch, Weizen oder Soja enthalten. Brett und Messer sauber, deren Teller zuerst. Wie streng es sein muss, wissen sie selbst oder ihr Arzt.
ask-preheat = Ja, heiß, bevor der Vogel reinkommt: ein Ofen 20 bis 30 min, ein Feuer bis zu einer Stunde.
ask-dial = Solche Zahlen bedeuten bei jedem Ofen etwas anderes: schau in die Anleitung. Oder stell eine mittlere ein und leg ein Ofenthermometer aufs Gitter: nach 20 min sollen es { $oven } oder etwas mehr sein. Sag mir, was es zeigt.
ask-early = Fertig heißt { $target } überall. Dann eingepackt bei { $hot } oder mehr halten, mit Thermometer. Oder tranchieren, binnen { $limit } in den Kühlschrank und zum Essen auf { $target } aufwärmen.
ask-fan = Beides geht. Mit Umluft geht es schneller und bräunt eher; trotzdem nicht unter { $oven }. Sag „Umluft“, dann plane ich damit.
ask-ahead = Ja: auf { $target } gegart, tranchiert, binnen { $limit } flach in den Kühlschrank, in { $days } gegessen. Zugedeckt mit etwas Brühe aufwärmen, auf { $target }.
ask-flat = Mit der Geflügelschere beiderseits am Rückgrat entlang, Rückgrat raus, umdrehen, die Brust flach drücken. Braucht etwa zwei Drittel der Zeit. Sag beim Planen „flach“.
ask-fresh-or-frozen = Beide gleich gut. Gefroren kauft man Wochen vorher, er braucht nur Tage zum Auftauen. Frisch: höchstens { $raw } vor dem Garen.
ask-thaw-microwave = Auftauen nur, wenn er hineinpasst, nach der Anleitung der Mikrowelle. Dann gleich garen: Stellen werden warm.
ask-thaw-sink = In der Folie, dicht, unter kaltem Wasser, alle { $every } frisch. Dann gleich garen. Sag mir das Gewicht, und ich sage, wie lange.
ask-inject = Geht: kalte Flüssigkeit, kurz bevor er in den Ofen kommt, ihr Salz zählt zur Menge. Die Nadel trägt Keime hinein, darum zählen { $target } an jeder Stelle.
ask-dropped = Roh: mit Küchenpapier abwischen, nicht abspülen, und wie geplant auf { $target } garen; danach Boden und Hände. Gegart: abschneiden, was den Boden berührt hat; weiß das niemand, weg damit.
ask-prick = Gans und Ente: ja, nur die Haut, wo Fett ist. Pute und Huhn kommen ohne aus; nie bis ins Fleisch, sonst läuft Saft aus.
ask-worry = Auf drei Dinge kommt es an: { $target } in Brust, Keule und Flügel, nie mehr als { $limit } weder kalt noch heiß, und nach rohem Fleisch Hände und Brett waschen. Auf die Zeiten achte ich, du misst.
ask-not-in-time = Dann bleibt der Vogel drin: { $target } zählen, nicht die Uhr. Mehr Hitze, mit den Beilagen anfangen, tranchieren und die Stücke im Ofen fertig garen, oder später essen. Schick früh Messwerte, dann sage ich, was nötig ist.
ask-raw-inside = Zurück in den Ofen, ganz oder in Stücken, bis { $target } an der dicksten Stelle; vorher isst niemand davon. Messer, Brett und Hände mit heißem Seifenwasser waschen. Rosa am Knochen allein sagt nichts: das Thermometer schon.
ask-ate-raw = Meist geht es gut; sagen kann es niemand. Der Rest zurück in den Ofen bis { $target }, oder weg. Blut, hohes Fieber, nichts bleibt drin oder länger als drei Tage: zum Arzt. Schwanger, sehr jung, alt oder krank: jetzt anrufen.
ask-half-cook = Nein: nie heute halb und später fertig. Die Mitte bleibt stundenlang lauwarm, und Hitze macht nicht alles rückgängig. Ganz durchgaren bis { $target }, tranchieren, in { $limit } kalt stellen.
ask-fridge-down = Zu lassen: er bleibt etwa { $unopened } kalt. Dann messen: ein Vogel über { $cold } für mehr als { $limit } kommt weg, Garen hilft nicht. Mit Eis darin oder bei höchstens { $cold } ist er in Ordnung.
ask-fridge-off = { $span } ohne Strom sind zu lang, auch geschlossen: kalt bleibt er etwa { $unopened }. Miss im Fleisch: noch Eis darin oder höchstens { $cold }, dann ist es gut. Wärmer, oder du weißt es nicht: wegwerfen, Garen hilft nicht.
ask-cold-at = { $at } sind zu warm dafür: höchstens { $cold }. Jetzt auf Eis oder in einen kälteren Kühlschrank. Mehr als { $limit } darüber, oder niemand weiß, wie lange: wegwerfen, Garen hilft nicht.
ask-kills = { $target } an den dicksten Stellen töten die Keime. Nicht, was sie hinterlassen haben: was länger als { $limit } draußen stand, bleibt schlecht, egal wie heiß es wird.
ask-freezer-down = Zu lassen: voll hält er etwa { $full } kalt, halb voll { $half }. Ist noch Eis im Vogel oder hat er { $cold } oder weniger, ist er in Ordnung: wieder einfrieren oder im Kühlschrank weiter auftauen. Aufgetaut und länger als { $limit } über { $cold }, oder niemand weiß es: weg, wie er auch riecht.
ask-kosher-bird = Ein gesalzen, in Lake oder koscher gekaufter Vogel: keine Lake, und kein weiteres Salz, ohne zu kosten.
ask-other-bird = Für diesen Vogel kenne ich keine veröffentlichten Zeiten oder Gewichte, also nenne ich keine. Für jedes Geflügel gilt: gar bei { $target } in Brust, Keule und Flügel, nach Thermometer; nie auf der Arbeitsplatte auftauen. Ich kenne Pute, Hähnchen, Kapaun, Ente und Gans.
ask-thermometer = Dickste Brust, tief in der Keule, am Flügelgelenk; die Spitze mitten im Fleisch, weg vom Knochen. { $target } in allen.
ask-garage-thaw = Nur wenn es dort die ganze Zeit { $cold } oder kälter war, nach einem Thermometer. Weißt du es nicht, wirf ihn weg: Garen macht es nicht wieder gut.
ask-cold-place = Besser nicht: Das Wetter dreht, und Tiere kommen. Wenn es sein muss, in einer geschlossenen Kühlbox mit Eis und einem Thermometer drin, die ganze Zeit bei { $cold } oder kälter. Ein kalter Tag ist kein Kühlschrank.
ask-past-date = Das Verbrauchsdatum ist eine Grenze: danach nicht mehr essen, auch nicht gegart, außer es wurde rechtzeitig eingefroren. Die Mindesthaltbarkeit ist weicher: frisches Geflügel hält ab dem Kauf { $days } im Kühlschrank, länger nicht.
ask-past-date-care = Im Zweifel, oder wenn es komisch riecht oder sich so anfühlt: weg damit. Garen macht es nicht wieder gut.
ask-smell = Sauer, faulig oder schmierig: weg damit oder zurück in den Laden. Garen macht es nicht wieder gut, und nicht zum Probieren kosten. Ein leichter Geruch aus der dichten Tüte verfliegt in Minuten; bleibt er, weg damit.
# Was kleine Kinder und Gefährdete essen dürfen. $call wie bei ask-choking.
ask-diner-little = Ab etwa sechs Monaten ja: gut durch, überall { $target }, in winzigen weichen Stückchen, ohne Haut und Knochen, ohne Salz; Reste nur so heiß aufgewärmt. Nie ganze Nüsse, Maronen oder Trauben: daran kann es ersticken. Das letzte Wort hat die Kinderärztin.
ask-diner-chokes = Nicht im Ganzen, bis sie fünf sind: Nüsse, Maronen, Trauben, Oliven und harte Stücke verlegen den Hals. Zerdrückt oder fein gehackt, im Sitzen, jemand daneben. Das letzte Wort hat die Kinderärztin.
ask-diner-swallowed = { $call ->
    [none] Hustet es kräftig? Husten lassen, dabeibleiben. Atmet es laut oder schwer, speichelt, hat blaue Lippen? Sofort den Notruf anrufen. Alles gut, und später Husten oder Pfeifen? Sofort in ärztliche Hände.
   *[known] Hustet es kräftig? Husten lassen, dabeibleiben. Atmet es laut oder schwer, speichelt, hat blaue Lippen? Sofort { $call } anrufen. Alles gut, und später Husten oder Pfeifen? Sofort in ärztliche Hände.
}
ask-diner-leaves = Lieber lassen: Stopfleber, Pastete, Räucherlachs, rohe Meeresfrüchte, Rohmilch- und Weichkäse, rohes Ei und rosa Fleisch sind nichts für Schwangere, kleine Kinder, über 65 oder bei schwacher Abwehr. Das letzte Wort hat die Ärztin.
ask-low-salt = Einen Vogel kann man nicht für die einen salzen und für die anderen nicht. Lass ihn ungesalzen („ohne Salz“) und stell Salz auf den Tisch, oder nimm weniger („weniger Salz“); Soße und Füllung auch ungesalzen. Steht „Lösung“ oder „Lake“ auf dem Etikett, ist schon Salz drin. Wie viel erlaubt ist, sagt der Arzt.
ask-thermometer-which = Ein schnelles digitales oder ein Fühler, der drinbleibt. Ohne weiß niemand, ob es sicher ist: leih dir eins. Vorher prüfen: in Eiswasser zeigt es { $ice }.
ask-no-room = Eine Kühlbox mit Eis geht: Vogel in einer dichten Tüte, Deckel zu, ein Thermometer drin bei { $cold } oder kälter, neues Eis, bevor es wärmer wird. Oder die Getränke nach draußen; der Vogel nie.
ask-carry-food = Kalt in der Kühlbox mit Eis, bei Ankunft { $cold } oder kälter; oder heiß, eingepackt in einer Box, { $hot } oder heißer. Sonst { $limit } draußen insgesamt, die Fahrt zählt mit; über { $air } { $short }.
ask-oven-down = Lass die Tür zu. Kommt die Hitze nicht bald wieder, zieh mit dem Vogel um: ein anderer Ofen, bei den Nachbarn, ein Grill mit Deckel im Freien. War er noch nicht drin, zurück in den Kühlschrank.
ask-oven-down-care = Nicht halb garen und später weitermachen. Insgesamt mehr als { $limit } warm, aber unter { $hot }: wirf ihn weg.
ask-still-frozen = Jetzt in kaltes Wasser, im dichten Beutel, alle { $every } frisch: gut 1 h je Kilo, das noch gefroren ist. Dann gleich garen.
ask-still-frozen-cook = Oder gar ihn, wie er ist, ungefüllt, im Ofen, nicht im Smoker oder in der Fritteuse: bis zu halb so lang dazu. Innereien raus, sobald sie sich lösen. { $target } überall.
ask-from-frozen = Im Ofen ja: { $oven } oder mehr, ungefüllt, etwa anderthalbmal so lange wie aufgetaut. Innereien raus, sobald sie sich lösen, { $target } überall. Nie in Smoker oder Fritteuse.
ask-is-thawed = Aufgetaut: kein Eis in der Bauchhöhle, die Keulen beweglich, innen { $cold } oder weniger. Noch Eis? Länger im Kühlschrank, oder kaltes Wasser.
ask-too-fast = Dreh den Ofen runter, nicht unter { $oven }, und leg Folie darüber. { $target } überall heißt fertig: dann zugedeckt bei { $hot } oder mehr halten.
ask-stall = Eine Stunde Stillstand im kühlen Smoker ist normal: die nasse Haut kühlt so schnell, wie er heizt. Das geht vorbei. Mehr Hitze beendet es eher, Alufolie auch, nur wird die Haut weich. Im heißen Ofen sieh nach der Spitze: tief im Fleisch, weg vom Knochen. Gar bleibt { $target }.
ask-too-slow = Ofen auf { $oven } oder etwas mehr, Tür zu. Eilt es, Keulen und Brust abtrennen und die Teile garen. Lieber spät auftischen als unter { $target }.
ask-stuffing-for = { $people ->
    [one] Füllung für eine Person: { $low } bis { $high }.
   *[other] Füllung für { $people }: { $low } bis { $high }. Was nicht locker in den Vogel passt, bäckt daneben.
}
ask-gravy-for = { $people ->
    [one] Soße für eine Person: { $low } bis { $high }.
   *[other] Soße für { $people }: { $low } bis { $high }.
}

# ---- Einheiten
ask-convert = { $given } = { $result }.

# ---- warum: woher eine Zahl kommt. Titel bleiben, wie sie gedruckt sind.
ask-source-seen = { $publisher }: { $title }
ask-source-seen-secondary = { $publisher }: { $title } (anderswo zitiert)
ask-source-common-practice = Übliche Praxis, ohne Quelle: { $title }
ask-source-from-memory = Aus dem Gedächtnis, nicht gedruckt gefunden: { $publisher }, { $title }
ask-source-derived = Errechnet aus { $publisher }: { $title }

ask-span = { $span }
