### Was im Plan steht, in Worten: Schritte, Rufe, Gründe, Änderungen, Hinweise, Dinge.

# ---- Schritte, wie auf der Tafel. Eine Zeile am Telefon: unter 28 Zeichen, kein Punkt.
plan-step-buy = Vogel kaufen
plan-step-thaw = Auftauen anfangen
plan-step-thaw-finish = Umziehen in kaltes Wasser
plan-step-water = Auftauwasser wechseln
plan-step-salt = Vogel salzen
plan-step-rest = Salzruhe im Kühlschrank
plan-step-temper = Vogel abtrocknen
plan-step-fire = Vorheizen
plan-step-on = Vogel kommt rein
plan-step-check = Temperaturen prüfen
plan-step-pull = Vogel herausnehmen
plan-step-stand = Ruhen lassen
plan-step-carve = Tranchieren
plan-step-chill = In den Kühlschrank
plan-step-pack = Kalt einpacken
plan-step-pack-hot = Heiß einpacken
plan-step-travel = Losfahren
plan-step-reheat = Aufwärmen
plan-step-serve = Essen
plan-step-leftovers = Letzter Tag der Reste
plan-step-dish = { $name }

# ---- dasselbe, erledigt
plan-done-buy = Vogel gekauft
plan-done-thaw = Taut auf
plan-done-thaw-finish = In kaltem Wasser
plan-done-water = Wasser gewechselt
plan-done-salt = Gesalzen
plan-done-rest = Ruht im Kühlschrank
plan-done-temper = Vogel ist trocken
plan-done-fire = Heizt vor
plan-done-on = Vogel ist drin
plan-done-check = Temperaturen geprüft
plan-done-pull = Vogel ist raus
plan-done-stand = Ruht
plan-done-carve = Tranchiert
plan-done-chill = Im Kühlschrank
plan-done-pack = Kalt eingepackt
plan-done-pack-hot = Heiß eingepackt
plan-done-travel = Unterwegs
plan-done-reheat = Aufgewärmt
plan-done-serve = Auf dem Tisch
plan-done-leftovers = Reste versorgt
plan-done-dish = { $name } läuft

# ---- Rufe: was jetzt zu tun ist, mit der nötigen Vorsicht. Zwei, drei kurze Sätze.
plan-call-buy = { $condition ->
    [frozen] Zeit, den Vogel zu kaufen. Direkt nach Hause und ins Gefrierfach, oder in den Kühlschrank, wenn er gleich auftaut.
   *[fresh] Zeit, den Vogel zu kaufen. Direkt nach Hause und in den Kühlschrank, auf einem Blech ganz unten.
}
plan-call-thaw-fridge = Den Vogel zum Auftauen in den Kühlschrank, in seiner Folie, auf einem Blech ganz unten. Kühlschrank auf { $cold } oder kälter; nie auf der Arbeitsplatte.
plan-call-thaw-water = Den Vogel in einen dichten Beutel und in kaltes Wasser. Wasser alle { $every } wechseln. Nie warmes Wasser.
plan-call-thaw-finish = Jetzt aus dem Kühlschrank in kaltes Wasser, im dichten Beutel, bis er ganz aufgetaut ist. Wasser alle { $every } wechseln. Nie warmes Wasser.
plan-call-water = Auftauwasser wechseln ({ $n } von { $of }). Kalt halten, der Vogel bleibt im dichten Beutel.
plan-call-salt-dry = Vogel salzen: Hals und Innereien raus, trocken tupfen, nicht waschen, innen und außen salzen. Dann offen in den Kühlschrank, auf einem Blech ganz unten.
plan-call-salt-wet = Vogel in die Lake, zugedeckt, und in den Kühlschrank. Die ganze Zeit bei { $cold } oder kälter.
plan-call-salt-now = Jetzt aus dem Wasser: Hals und Innereien raus, abtrocknen, salzen. In Wasser aufgetaut, gart er gleich danach.
plan-call-rest = Die Salzruhe: lass ihn offen ganz unten im Kühlschrank.
plan-call-temper = Vogel aus dem Kühlschrank: sind Hals und Innereien raus? Abtrocknen, Haut einstechen, buttern. Höchstens { $most } draußen, dann garen.
plan-call-temper-fat = Vogel aus dem Kühlschrank: sind Hals und Innereien raus? Abtrocknen, Haut einstechen, wo Fett ist, nicht bis ins Fleisch. Ohne Butter: das eigene Fett reicht. Höchstens { $most } draußen, dann garen.
plan-call-temper-water = Vogel aus dem Wasser? Noch einmal abtrocknen, Haut einstechen, buttern. In { $most } muss er garen.
plan-call-temper-salt = Dann das Salz, das dieser Plan bis zuletzt gelassen hat:
plan-call-fire-oven = Ofen auf { $setting } heizen.
plan-call-fire-smoker = Feuer anmachen und bei { $setting } ruhig werden lassen. Nur im Freien: Holzkohle nie drinnen oder in der Garage.
plan-call-on = Jetzt kommt der Vogel rein. Thermometer in die dickste Brust, weg vom Knochen.
plan-call-on-stuffed = Erst jetzt locker füllen, dann kommt der Vogel rein. Thermometer in die dickste Brust, weg vom Knochen.
plan-call-check = Zeit nachzusehen: Brust, Keule und { $cooker ->
    [smoker] Garraum
   *[oven] Ofen
}. Schick mir einfach die Zahlen.
plan-call-pull = Er sollte bald fertig sein. Raus erst bei { $target } in der dicksten Brust, tief in der Keule und am Flügel. Weniger? Er bleibt drin.
plan-call-pull-stuffed = Er sollte bald fertig sein. Raus erst bei { $target } in der dicksten Brust, tief in der Keule, am Flügel und mitten in der Füllung. Weniger? Er bleibt drin.
plan-call-stand = Ruhen lassen, locker abgedeckt, { $least } oder länger.
plan-call-carve = Zeit zum Tranchieren: sauberes Brett, sauberes Messer.
plan-call-carve-hot = Erst das Thermometer, in Brust und Keule. { $hot } oder mehr in beiden: tranchieren, sauberes Brett, sauberes Messer.
plan-call-chill-ahead = Das Fleisch in flache Schalen und bis { $latest } in den Kühlschrank. Heiß ist gut; später nicht.
plan-call-chill = Reste bis { $latest } in den Kühlschrank, in flachen Schalen. Was länger draußen stand, kommt weg.
plan-call-pack = Kalt einpacken: das Fleisch bei { $cold } oder kälter, rundum Eis, Kühlbox zu.
plan-call-pack-hot = Ganz und heiß einpacken: Alufolie, dann Handtücher, in eine mit heißem Wasser vorgewärmte Box. Thermometer drin lassen. Über { $air } draußen bleibt { $hour } zum Essen, nicht zwei.
plan-call-travel = Zeit loszufahren. Die Kühlbox bleibt zu bis zum Kühlschrank oder Ofen dort.
plan-call-travel-hot = Zeit loszufahren. Die Box bleibt zu, bis ihr da seid.
plan-call-reheat = Zugedeckt aufwärmen, mit etwas Brühe, im Ofen bei { $low } bis { $high }, bis er durch und durch { $target } hat.
plan-call-serve = Essen. Lasst es euch schmecken; für den Kühlschrank melde ich mich.
plan-call-leftovers = Reste: heute essen oder einfrieren. Es ist ihr letzter Tag im Kühlschrank.
plan-call-dish = Zeit für { $name }.
plan-call-dish-oven = { $name }: in den Ofen bei { $setting }, { $takes }.
plan-call-dish-smoker = { $name }: in den Smoker bei { $setting }, { $takes }.
plan-call-dish-stove = { $name }: auf den Herd, { $takes }.
plan-call-dish-made = { $name }: jetzt anfangen, { $takes }.
plan-call-dish-chill = { $name }: jetzt in den Kühlschrank, bei { $cold } oder kälter, bis zum Essen.
plan-call-dish-then-fridge = Dann bis zum Essen in den Kühlschrank, bei { $cold } oder kälter.
plan-call-dish-then-cooler = Dann in eine Kühlbox mit viel Eis, ein Thermometer darin: { $cold } oder kälter bis zum Essen. War es { $most } lang wärmer, kommt es weg.
plan-call-dish-then-hot = Dann zugedeckt heiß halten, { $hot } oder mehr, bis zum Essen.

# ---- Gründe: halbe Sätze in Listen, kein Punkt.
plan-reason-dinner = dann wird gegessen
plan-reason-now = früher als jetzt geht nicht
plan-reason-done = da war es erledigt
plan-reason-follows = „{ $step }“ kommt zuerst und dauert { $takes }
plan-reason-raw-keeps = frisch hält er im Kühlschrank { $most }
plan-reason-shop = eingekauft wird nicht vor { $at }
plan-reason-use-by = auf der Packung steht „zu verbrauchen bis { $day }“
plan-reason-fridge-thaw = im Kühlschrank taut er { $time }
plan-reason-fridge-share = { $spent } im Kühlschrank, von bis zu { $whole }; den Rest macht kaltes Wasser
plan-reason-water-thaw = in kaltem Wasser taut er { $time }
plan-reason-water-finish = was noch Eis ist, taut in kaltem Wasser bis zu { $most }
plan-reason-water-change = das Wasser wird alle { $every } gewechselt
plan-reason-cook-at-once = in Wasser aufgetaut wird er gleich gegart
plan-reason-thawed-keeps = aufgetaut hält er im Kühlschrank { $most }
plan-reason-salt-wants = das Salz braucht { $least } oder mehr
plan-reason-salt-at-most = gesalzen wartet er höchstens { $most }
plan-reason-brine-wants = die Lake braucht { $least } oder mehr
plan-reason-temper = etwa { $about } zum Abtrocknen und Buttern
plan-reason-room-temperature = roh ist er höchstens { $most } draußen
plan-reason-preheat = { $cooker ->
    [smoker] das Feuer braucht { $least }, bis es ruhig ist
   *[oven] der Ofen braucht { $least }, bis er heiß ist
}
plan-reason-cooking-time = er gart { $time }
plan-reason-forecast = so weit ist er bisher
plan-reason-check-before = ein Blick, bevor er fertig sein kann
plan-reason-stand = vor dem Tranchieren ruht er { $least }
plan-reason-hot-hold = nach dem Garen wartet er höchstens { $most }, außer bei { $hot }
plan-reason-hot-road = heiß mitgenommen ist er spätestens { $most } nach dem Garen gegessen
plan-reason-carving = Tranchieren dauert etwa { $about }
plan-reason-two-hours = höchstens { $most } bis zum Kühlschrank
plan-reason-cold-through = bis er durch und durch kalt ist, braucht er { $least } im Kühlschrank
plan-reason-drive = die Fahrt dauert { $takes }
plan-reason-packed-cold = mit Eis gepackt geht er innerhalb von { $most } los
plan-reason-reheat = Aufwärmen dauert etwa { $about }
plan-reason-reheat-within = innerhalb von { $most } wieder auf { $target }
plan-reason-cooked-keeps = gegart hält er im Kühlschrank { $most }
plan-reason-sociable = geweckt wird dafür niemand
plan-reason-dinner-past = diese Essenszeit ist vorbei
plan-reason-dinner-too-far = dieses Essen ist mehr als ein Jahr entfernt
plan-reason-drive-too-long = eine Kühlbox mit Eis hält unterwegs { $most }
plan-reason-setting = { $cooker ->
    [smoker] ein Smoker geht von { $low } bis { $high }
   *[oven] ein Ofen geht von { $low } bis { $high }
}
plan-reason-thaw-before-smoking = in den Smoker darf nur ein ganz aufgetauter Vogel
plan-reason-stuffed-frozen = ein Vogel, der nicht aufgetaut ist, lässt sich nicht füllen
plan-reason-stuffed-form = nur ein ganzer Vogel lässt sich füllen
plan-reason-stuffed-kind = eine Ente wird nicht gefüllt
plan-reason-form-for-kind = eine Putenbrust wird gegart, wie sie ist
plan-reason-mass-for-kind = so ein Vogel wiegt { $low } bis { $high }
plan-reason-solution = auf dem Etikett stehen 0 bis 50 Prozent
plan-reason-dish-hot = { $name } kommt heiß auf den Tisch und wartet höchstens { $most }
plan-reason-dish-ahead = { $name } wird vorher gemacht und kühl gestellt
plan-reason-heat-taken = { $how ->
    [setting] { $name } braucht { $own }, während { $other } dort { $others } braucht
    [time] { $name } braucht die Hitze, während { $other } sie hat
    [setting-bird] { $name } braucht { $own }, während { $other } dort { $others } braucht
    [time-bird] { $name } braucht die Hitze, während { $other } sie hat
    [full] da passen nur { $room } Gerichte zugleich, { $name } ist eins zu viel
   *[alone] { $name } braucht Hitze, die dann belegt ist
}
plan-reason-heat-bird = der Vogel
plan-reason-dish-cold = { $name } braucht { $least } im Kühlschrank
plan-reason-fridge-taken = mit dem Vogel darin hat der Kühlschrank ({ $shelves ->
    [one] ein Fach
   *[other] { $shelves } Fächer
}) keinen Platz für { $name }
plan-reason-fridge-full = der Kühlschrank ({ $shelves ->
    [one] ein Fach
   *[other] { $shelves } Fächer
}) hat auch ohne den Vogel keinen Platz mehr für { $name }

# ---- Angebote: Knöpfe, unter 28 Zeichen.
plan-change-cold-water = In kaltem Wasser auftauen
plan-change-finish-in-water = Kühlschrank, dann Wasser
plan-change-fridge-thaw = Im Kühlschrank auftauen
plan-change-cook-frozen = Gefroren garen
plan-change-shorter-rest = Kürzere Salzruhe
plan-change-no-salt = Vorher kein Salz
plan-change-dinner = Essen { $when }
plan-change-hotter = { $setting } stattdessen
plan-change-flat = Flach aufklappen
plan-change-unstuffed = Füllung extra
plan-change-cook-ahead = Am Vortag garen
plan-change-carry-cold = Kalt mitnehmen
plan-change-smaller-bird = Ein Vogel mit { $mass }
plan-change-two-birds = Zwei Vögel mit { $mass }
plan-change-buy-fresh = Lieber einen frischen kaufen
plan-change-buy-later = Später einen frischen kaufen
plan-change-freeze = Jetzt einfrieren
plan-change-dish-beside = { $name } mit zum Vogel
plan-change-dish-ahead = { $name } vorher
plan-change-dish-early = { $name } früher
plan-change-dish-out = Ohne { $name }
plan-change-dish-later = { $name } nach dem Vogel
plan-change-dish-cooler = { $name } in die Kühlbox

# ---- was eine Änderung kostet: halbe Sätze nach einem Doppelpunkt.
plan-cost-cold-water = { $changes ->
    [one] ein Wasserwechsel, ab { $when }; keine Salzruhe
   *[other] { $changes } Wasserwechsel, ab { $when }; keine Salzruhe
}
plan-cost-finish-in-water = { $changes ->
    [one] ein Wasserwechsel, ab { $when }; keine Salzruhe, dann gleich garen
   *[other] { $changes } Wasserwechsel, ab { $when }; keine Salzruhe, dann gleich garen
}
plan-cost-fridge-thaw = in den Kühlschrank { $when }
plan-cost-cook-frozen = etwa { $time } im Ofen, hinein { $when }; vorher kein Salz
plan-cost-shorter-rest = { $rest } Salz statt { $wanted }
plan-cost-no-salt = gewürzt wird gleich vor dem Garen
plan-cost-dinner = sonst alles wie gewünscht
plan-cost-hotter = schneller, und er bräunt mehr
plan-cost-flat = Rückgrat raus; er gart viel schneller
plan-cost-unstuffed = gart schneller, und sicherer
plan-cost-cook-ahead = tranchiert, gekühlt, auf { $target } aufgewärmt
plan-cost-carry-cold = am Vortag gegart, dort auf { $target } aufgewärmt
plan-cost-smaller-bird = reicht für alle, kaum Reste
plan-cost-two-birds = tauen und garen schneller als ein großer
plan-cost-buy-fresh = nichts aufzutauen; kaufen { $when }
plan-cost-buy-later = der zu Hause hält nicht so lange; kaufen { $when }
plan-cost-freeze = heute ins Gefrierfach, auftauen ab { $when }
plan-cost-dish-beside = neben dem Vogel: { $takes }, hinein { $when }
plan-cost-dish-ahead = { $when }, dann in den Kühlschrank; zum Essen auf { $target } aufgewärmt
plan-cost-dish-early = { $when }, dann zugedeckt bei { $hot } oder mehr
plan-cost-dish-out = der Rest bleibt, wie er ist
plan-cost-dish-later = in den Kühlschrank { $when }, wenn der Vogel draußen ist: dann { $stay } oder mehr
plan-cost-dish-cooler = mit viel Eis und Thermometer: die ganze Zeit { $cold } oder kälter

# ---- Hinweise zu einem Plan, der geht: ganze Sätze.
plan-caution-odd-hours = „{ $step }“ fällt in die Nacht.
plan-caution-short-rest = Nur { $rest } Salz: es dringt weniger tief ein und ist trotzdem gut.
plan-caution-keep-hot = Vielleicht ist er { $wait } vor dem Tranchieren fertig: halt ihn bei { $hot } oder heißer.
plan-caution-hot-till-packed = Vielleicht ist er { $wait } vor dem Einpacken fertig: bis dahin bei { $hot } oder heißer halten.
plan-caution-overrun = Eine Grenze ist überschritten ({ $reason }). Im Zweifel nicht essen.
plan-caution-stuffing-apart = Nimm die Füllung heiß heraus und kühl sie für sich.
plan-caution-stuffing-out = Nimm die Füllung vor dem Einpacken heraus; sie fährt heiß in einer eigenen Form mit.
plan-caution-oven-below-authority = Die Lebensmittelbehörden sagen: Geflügel nie in einen Ofen unter { $limit }.
plan-caution-smoker-below-authority = Unter { $limit } liegt unter dem veröffentlichten Bereich für Smoker.
plan-caution-smoker-above-published = Über { $limit } sind die Zeiten am Smoker Erfahrung, keine veröffentlichte Tabelle.
plan-caution-long-in-danger-zone = Niedrig und langsam liegt er lange zwischen { $cold } und { $hot }, und die Zeit ist am wenigsten sicher.
plan-caution-outside-table = Keine veröffentlichte Tabelle reicht bis zu diesem Gewicht; die Zeit ist weitergerechnet.
plan-caution-stuffing-last = Auch mitten in der Füllung müssen es { $target } sein, oft zuletzt. Sicherer neben dem Vogel gebacken.
plan-caution-from-frozen = Gefroren schwankt die Zeit stark. Nimm die Innereien heraus, sobald sie sich lösen.
plan-caution-part-thawed = Halb aufgetaut liegt die Zeit irgendwo zwischen aufgetaut und gefroren.
plan-caution-pieces-differ = Teile werden nacheinander fertig: miss jedes.

# ---- was der Plan voraussetzt: Dinge in einer Liste.
plan-need-bird = den Vogel
plan-need-thermometer = ein Fleischthermometer
plan-need-salt = Salz
plan-need-rack = ein Blech mit Rost
plan-need-bag = einen dichten Beutel
plan-need-brine-vessel = einen Topf für die Lake, der in den Kühlschrank passt
plan-need-fuel = Brennstoff für den Smoker
plan-need-foil = Alufolie
plan-need-shallow-dishes = flache Schalen
plan-need-cooler = eine Kühlbox mit Eis
plan-need-hot-box = eine isolierte Box und Handtücher
plan-need-broth = etwas Brühe
