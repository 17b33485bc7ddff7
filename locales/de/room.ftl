### Das Gespräch: Planen, Tafel, Aufgaben, Einstellungen. Kurz wie eine Nachricht; man liest es mit nassen Händen.

# ---- Knöpfe
room-button-accept = Annehmen
room-button-change = Ändern
room-button-done = Erledigt
room-button-later = Später
room-button-skip = Auslassen
room-button-take = Mach ich
room-button-undo = Rückgängig
room-button-yes = Ja
room-button-no = Nein
room-button-back = Zurück
room-button-discard = Doch nicht
room-button-why = Warum diese Zeiten?
room-button-jobs = Aufgaben verteilen

# ---- Anfang und Hilfe
room-start = Ich halte den Plan für einen ganzen Vogel: vom Einkauf bis zu den letzten Resten. Salz, Auftauen und Garzeit rechne ich aus, und ich melde mich, wenn etwas dran ist. Womit fangen wir an?
room-start-group = Hallo zusammen. Ich halte den Plan für den Vogel: wer was macht, und wann. Fangt mit <b>/plan</b> und einem Satz an, etwa „/plan gefrorene Pute 6,5 kg, Essen Donnerstag 17 Uhr, 11 Personen, Ofen“. Ich sehe nur Befehle, Antworten an mich und Knöpfe.
room-start-button-plan = Ein Essen planen
room-start-button-salt = Wie viel Salz?
room-start-button-safe = Ist das sicher?
room-how = Sag mir den Vogel, wann gegessen wird und für wie viele. Ich rechne Auftauen, Salz, Kühlschrank und Feuer aus, rufe den, der dran ist, und plane neu, wenn etwas dazwischenkommt. Schick mir beim Garen Temperaturen, dann sage ich, wann er fertig ist. Und frag, was du willst. Alle Befehle: /help.
room-help-plan = Sag mir den Vogel, den Tag und wer kommt. Zum Beispiel:
    „gefrorene Pute 6,5 kg, Essen Donnerstag 17 Uhr, 11 Personen, Smoker auf 165“
    Was fehlt, frage ich.
room-help-salt = Frag, wie du einen Freund fragen würdest. Zum Beispiel:
    „Salz für eine Pute mit 5,5 kg“
    „2 EL Tafelsalz in koscheres Flockensalz“
    „mein Salz: 1/4 TL sind 0,7 g“, und ab da nehme ich deins.
room-help-safe = Frag mit den Zahlen, die du hast. Zum Beispiel:
    „sind 70 °C für 2 Minuten sicher?“
    „Pute stand 3 Stunden draußen, ok?“
    „wie lange halten sich Reste?“
    Im Zweifel hat deine Lebensmittelbehörde das letzte Wort.
room-help = <b>/plan</b> einen Plan anfangen oder ansehen
    <b>/board</b> was als Nächstes kommt und wer es macht
    <b>/salt</b> Mengen und Umrechnungen
    <b>/ask</b> jede schnelle Frage
    <b>/log</b> Temperaturen notieren: „Brust 53, Keule 61“
    <b>/when</b> wann er fertig ist
    <b>/move</b> das Essen verschieben: „/move 18 Uhr“
    <b>/take</b> und <b>/drop</b> Aufgaben verteilen
    <b>/undo</b> die letzte Änderung zurücknehmen
    <b>/export</b> der Plan für deinen Kalender, und alles, was ich habe
    <b>/settings</b> Sprache, Einheiten, Zeitzone
    <b>/stop</b> den Plan beenden, <b>/forget</b> löschen, was ich habe
room-unread = Das habe ich nicht verstanden. Versuch { $stage ->
    [draft] „Essen 18 Uhr“, „12 Personen“, „ohne Salz“, oder tippe auf einen Knopf
    [ahead] „erledigt“, wenn etwas getan ist, „ich tranchiere“, „Essen eine Stunde später“, oder eine Frage
    [alone] „erledigt“, wenn etwas getan ist, „Essen eine Stunde später“, oder eine Frage
    [cooking] „Brust 65, Keule 70“, „wann?“, „ist draußen“, wenn es so weit ist, oder eine Frage
    [after] „Reste sind im Kühlschrank“, eine Frage wie „wie lange halten Reste“, oder /help
   *[none] „gefrorene Pute 6,5 kg, Essen Sonntag 17 Uhr“, eine Frage wie „Salz für eine Pute mit 5,5 kg“, oder /help
}.
room-unreadable = Ich kann nur Text lesen. Tippst du es mir?
room-no-plan = Noch kein Plan. Fang mit einem Satz an, etwa „/plan gefrorene Pute 6,5 kg, Essen Sonntag 17 Uhr, 10 Personen, Ofen“.
room-stale = Der Knopf gehört zu einem früheren Plan. /board zeigt, wie es steht.
room-not-yours = Das soll jemand anders beantworten.
room-not-here = Du bist nicht in dem Chat, also kann ich seinen Plan nicht ändern.
room-need-person = Ich sehe hier nicht, wer du bist. Schreib unter deinem Namen, dann noch mal.
room-may-host = Das kann nur { $name }, von dem der Plan stammt, oder ein Admin.
room-may-not = Das kann nur ein Admin dieses Chats.

# ---- ein Vogel, ein Gerät
room-bird = { $mass } { $kind ->
    [turkey-breast] Putenbrust
    [chicken] Hähnchen
    [capon] Kapaun
    [duck] Ente
    [goose] Gans
   *[turkey] Pute
}{ $condition ->
    [frozen] , gefroren
    [part-thawed] , halb aufgetaut
   *[fresh] {""}
}{ $form ->
    [stuffed] , gefüllt
    [flat] , flach aufgeklappt
    [pieces] , in Teilen
   *[whole] {""}
}
room-heat = { $cooker ->
    [fan-oven] Umluft { $setting }
    [smoker] Smoker { $setting }
   *[oven] Ofen { $setting }
}
room-birds = { $count } × { $bird }

# ---- fragen, was fehlt
room-known = Bisher: { $parts }.
room-known-mass = { $mass }
room-known-bird = { $condition ->
    [frozen] { $kind ->
        [chicken] gefrorenes{" "}
        [capon] gefrorener{" "}
       *[turkey] gefrorene{" "}
    }
    [part-thawed] halb aufgetaut:{" "}
    [fresh] { $kind ->
        [chicken] frisches{" "}
        [capon] frischer{" "}
       *[turkey] frische{" "}
    }
   *[unknown] {""}
}{ $kind ->
    [turkey-breast] Putenbrust
    [chicken] Hähnchen
    [capon] Kapaun
    [duck] Ente
    [goose] Gans
   *[turkey] Pute
}
room-known-form = { $form ->
    [pieces] in Stücken
   *[flat] flach aufgeklappt
}
room-known-guests = { $guests ->
    [one] eine Person
   *[other] { $guests } Personen
}
room-known-salt = { $how ->
    [none] ohne Salz
    [bold] mehr Salz
   *[light] weniger Salz
}
room-known-dinner = Essen { $when }
room-known-start = gart ab { $when }
room-known-use-by = zu verbrauchen bis { $day }
room-known-shop = Einkauf { $when }
# $start: the hour somebody said; $on: the plan’s.
room-proposal-start = Du wolltest ihn { $start } reintun. Für dieses Essen kommt er { $on } rein.
room-shop-not = Einkauf { $said } passt nicht: kauf ihn { $when }.
room-proposal-dish = { $dish }
room-proposal-beside = Sobald der Plan steht, kommt dazu: { $dishes }.
room-known-drive = { $drive } Fahrt
room-ask-zone = Wo steht die Küche? Eine Stadt oder Zeitzone reicht: „Berlin“, „Europe/Vienna“.
room-ask-dinner = Wann wird gegessen? Tag und Uhrzeit: „Donnerstag 17 Uhr“.
room-ask-dinner-hour = Um wie viel Uhr wird gegessen? „17 Uhr“
room-ask-dinner-day = An welchem Tag? „Donnerstag“, „25. November“
room-ask-size = Wie schwer ist der Vogel, oder wie viele essen mit? „6,5 kg“ oder „11 Personen“
room-ask-weight = Wie schwer ist der neue? Es steht auf dem Etikett: „6,5 kg“.
room-ask-condition = Ist der Vogel gefroren?
room-ask-cooker = Worin garst du ihn?
room-ask-drive = Wie lange dauert die Fahrt?
room-ask-change = Was soll anders sein? Tipp eins an oder sag es einfach: „Essen 18 Uhr“, „7 kg“, „14 Personen“.
room-condition-frozen = Gefroren
room-condition-fresh = Frisch oder aufgetaut
room-condition-part-thawed = Halb aufgetaut
room-cooker-oven = Ofen
room-cooker-fan-oven = Umluftofen
room-cooker-smoker = Smoker
room-drive-15 = 15 min
room-drive-30 = 30 min
room-drive-60 = 1 Stunde
room-change-no-salt = Kein Salz
room-change-dry-salt = Trocken salzen
room-change-fridge = Im Kühlschrank auftauen
room-change-cold-water = In kaltem Wasser auftauen
room-change-ahead = Am Vortag garen
room-change-same-day = Am Tag selbst garen
room-change-hot = Heiß mitnehmen
room-change-cold = Kalt mitnehmen
room-change-there = Dort garen
room-change-home = zu Hause
room-kept = Der Rest bleibt, wie er ist. { $known }
room-plan-unread = In „{ $text }“ finde ich weder Vogel noch Tag. Versuch „gefrorene Pute 6,5 kg, Essen Sonntag 17 Uhr, 10 Personen“.

# ---- der Vorschlag
room-proposal-head = <b>{ $bird }</b>{ $guests ->
    [0] {""}
    [one] , für eine Person
   *[other] , für { $guests } Personen
}, { $heat }. Auf dem Tisch <b>{ $when }</b>.
room-proposal-size = Für euren Tisch sind das etwa { $mass } Vogel.
room-proposal-small = Etwas knapp: für { $guests } Personen würde ich { $mass } suchen.
room-proposal-ready = Fertig zwischen { $from } und { $to }, in neun von zehn Fällen bis zur späteren Zeit.
room-proposal-need = Du brauchst: { $things }.
room-proposal-use-by = Auf der Packung: zu verbrauchen bis { $day }.
room-proposal-first = Zuerst: <b>{ $what }</b>, { $when }.
room-line = { $when } · { $what }
room-need-salt = { $grams } Salz ({ $spoons } { $salt ->
    [table] Tafelsalz
   *[flake-kosher] koscheres Flockensalz
})
room-accepted = Der Plan steht. Ich melde mich, wenn etwas dran ist.
room-discarded = Gut, lassen wir es.

# ---- warum
room-why = Warum diese Zeiten:
room-why-line = <b>{ $what }</b>, { $when }: { $reasons }.

# ---- ein Wunsch, der nicht geht
room-clash = So geht es nicht: { $because }.
room-clash-short = Dafür reicht die Zeit nicht: { $because }. Es fehlen etwa { $short }.
room-clash-now = So geht es nicht mehr: { $because }. Es fehlen etwa { $short }.
room-clash-keeps = So lange hält er nicht: { $because }. Das sind etwa { $short } zu viel.
room-clash-use-by = Steht ein Verbrauchsdatum auf der Packung? Sag es mir, etwa „zu verbrauchen bis Freitag“: ungeöffnet hält er bis dahin.
room-clash-instead = <b>Ich würde das machen: { $change }</b> ({ $cost }).
room-clash-others = Oder sonst:
room-clash-offers = Das ginge:
room-clash-offer = • { $change }: { $cost }
room-clash-hopeless = Ich sehe keinen sicheren Weg zu dieser Zeit. Später essen, oder ein anderer Vogel?
room-mended = Gut: { $change }.

# ---- die Tafel
room-board-dinner = <b>Essen { $when }</b>
room-board-bird = { $bird }, { $heat }
room-board-no-heat = Keine Hitze seit { $since }.
room-board-clash = So geht es nicht auf: Wähl oben einen Ausweg oder sag, was anders wird.
room-board-next = { $late ->
    [yes] <b>Jetzt dran: { $what }</b>
   *[no] <b>Als Nächstes: { $what }</b>
}, { $when }{ $who }
room-board-then = { $when } · { $what }{ $who }
room-board-who = {" "}– { $name }
room-board-nobody = {""}
room-board-more-dishes = … und { $count } mehr, mit { $dishes }
room-board-more = … und { $count } mehr
room-board-ready = Fertig { $from } bis { $to }{ $standing ->
    [spare] , { $span } Luft
    [tight] , knapp
    [late] , zu spät fürs Essen
   *[no] {""}
}
room-board-done = Erledigt: { $jobs }
room-board-done-one = { $what }
room-board-done-by = { $what } ({ $name })
room-board-assumed = Ich gehe davon aus: { $jobs }. Gesagt hat es niemand.
room-board-skipped = ohne „{ $what }“
room-pin-how = Ich darf die Tafel hier nicht anheften. Soll sie oben stehen, mach mich zum Admin, der anheften darf; /board holt sie jederzeit herunter.
room-left = { $name } ist gegangen. Wieder frei: { $jobs }.
room-board-all-done = Alles erledigt. Guten Appetit.

# ---- Aufgaben
room-call-again = Noch offen seit { $since }: { $what }.
room-call-from = { $what }:
room-call-name = { $name }:
room-call-ahead = Für { $at }:
room-done = { $what }, { $at }.
room-done-by = { $what }, { $name }, { $at }.
room-skipped = Ausgelassen: { $what }.
room-skipped-by = { $name } hat ausgelassen: { $what }.
room-next = Dann: { $what }, { $when }.
room-later = Gut, um { $when } noch mal.
room-held-up-leave = Dann also los um { $when }. Um die Zeit frage ich noch mal.
room-held-up-hot = Eingepackt lassen, nicht öffnen. Zeigen Brust und Keule dort nicht { $hot } oder mehr: bis { $by } gegessen, danach nicht mehr servieren.
room-held-up-over = Die zwei Stunden waren um { $by } um. Haben Brust und Keule bis dahin nicht { $hot } oder mehr gezeigt: nicht servieren.
room-taken = Deins: { $what }, { $when }.
room-taken-water = Deins: { $what }, { $when }, und danach { $count ->
    [one] der Wasserwechsel
   *[other] die { $count } Wasserwechsel
}.
room-take-yours = Das hast du schon.
room-take-theirs = Das macht { $name }.
room-dropped = { $what } ist wieder frei.
room-drop-free = Das macht noch niemand.
room-drop-theirs = Das macht { $name }. Abgeben kann es nur, wer es hat oder den Plan führt, oder ein Admin.
room-already = Das ist schon geklärt.
room-already-by = Das hat { $name } geklärt, { $at }.
room-jobs = Tipp eine an, um sie zu übernehmen oder abzugeben.
room-jobs-take = { $what }
room-jobs-drop = { $what } ({ $name })
room-step-unread = Eine Aufgabe „{ $text }“ gibt es in diesem Plan nicht.
room-missed = Während ich weg war, war dran: { $what }. /board zeigt, was noch zählt.
room-shifts = Damit verschiebt sich:
room-shift = { $what }: { $is } (war { $was })

# ---- verschieben, zurücknehmen, Ende
room-move-how = Gegessen wird { $dinner }. Verschieben: „/move 18 Uhr“ oder „/move +45 min“.
room-move-past = { $when } ist schon vorbei, es ist { $now }. Es bleibt bei { $dinner }.
room-move-unread = In „{ $text }“ lese ich keine Zeit. Versuch „/move 18 Uhr“ oder „/move +45 min“. Es bleibt bei { $dinner }.
room-move-clash = { $when } geht nicht. Alles bleibt, wie es war.
room-moved = Gegessen wird jetzt <b>{ $when }</b>.
room-misread = { $parts } wieder streichen?
room-undone = Zurückgenommen: { $what }.
room-undone-what = { $change ->
    [back-on] Vogel wieder im Ofen
    [unmarked] die Korrektur von „{ $step }“
    [done] „{ $step }“ erledigt
    [skipped] „{ $step }“ ausgelassen
    [take] „{ $step }“ übernommen
    [drop] „{ $step }“ abgegeben
    [moved] die neue Essenszeit
    [dish] die Änderung bei den Beilagen
    [logged] der letzte Messwert
   *[other] die Planänderung
}
room-undone-dish = { $how ->
    [added] „{ $name }“ dazu
    [gone] „{ $name }“ weg
   *[changed] die Änderung an „{ $name }“
}
room-undo-nothing = Es gibt nichts zurückzunehmen.
room-undo-stale = Seitdem ist etwas passiert. /undo nimmt zuerst das Neueste zurück.
room-undo-late = Das kann ich nicht mehr zurücknehmen. Der Plan bleibt, wie er ist.
room-stop-sure = Den Plan für { $dinner } beenden? Dann melde ich mich nicht mehr.
room-stopped = Beendet. Ich melde mich nicht mehr.
room-stopped-calendar = Steht er in deinem Kalender, nimmt ihn /export wieder heraus.
room-stopped-back = Eine Stunde lang geht noch „doch wieder“.
room-stopped-told = Das Essen ({ $dinner }) fällt aus. Du musst nichts tun.
room-back-again = Es bleibt dabei: Essen <b>{ $dinner }</b>.
room-kept-going = Gut, alles bleibt.
room-eve = Morgen:
room-eve-job = { $when } · { $what }
room-eve-early = Das ist früh: stell dir auch einen Wecker auf { $at }, falls das Handy stumm ist.
room-forget-sure-me = Ich habe { $things }. Alles löschen? Was du in Gruppen getan hast, bleibt getan, ohne deinen Namen.
room-forget-sure-group = Ich habe { $things }. Alles löschen, für alle? Was ich von euch einzeln habe, bleibt, bis ihr es privat löschen lasst.
room-kept-name = deinen Namen
room-kept-settings = deine Einstellungen
room-kept-salt = dein Salz
room-kept-cooker = deinen Ofen oder Smoker
room-kept-fridge = deinen Kühlschrank: Fächer und Temperatur
room-kept-learned = wie es bei dir gart
room-kept-notes = Notizen zu früheren Essen
room-kept-plan = was du hier mit mir planst
room-kept-question = deine letzte Frage
room-kept-groups = deine Aufgaben, Messwerte und Links in Gruppen
room-kept-title = Namen und Einstellungen dieses Chats
room-kept-members = wer dabei ist
room-kept-jobs = den Plan mit Aufgaben und wer sie hat
room-kept-readings = die Messwerte
room-kept-said = halbe Pläne und Fragen
room-kept-links = Links in den privaten Chat
room-forgotten = Gelöscht.

# ---- Messwerte
room-log-how = Sag mir, was die Thermometer zeigen: „Brust 53, Keule 61, Garraum 168“. Die Zeit kann dabeistehen: „um 14:05“.
room-frozen-on = Lass ihn in der Hitze: es dauert bis zu halb so lang dazu.{ $smoker ->
    [yes] {" "}Ein Smoker ist dafür zu langsam: stell ihn in einen Ofen bei { $oven }.
   *[no] {""}
}{" "}Innereien raus, sobald sie sich lösen, und heraus erst bei { $target } überall.
room-log-noted = Notiert: { $parts }.
room-log-spot = { $spot ->
    [breast] Brust { $temperature }
    [thigh] Keule { $temperature }
    [wing] Flügel { $temperature }
    [stuffing] Füllung { $temperature }
    [oven] Ofen { $temperature }
   *[pit] Garraum { $temperature }
}
room-log-on-unsaid = Niemand hat gesagt, dass der Vogel schon gart. Tut er das?
room-log-both = { $target } in beiden. Sieh auch innen am Flügel nach; ist es dort auch so weit, kommt er raus.
room-log-all = { $target } in Brust, Keule und Flügel: er kommt raus.
room-log-too-long = Jetzt { $target }, aber er stand mehr als zwei Stunden ohne Hitze: Garen macht das nicht ungeschehen. Ich würde ihn nicht servieren.
room-log-thigh-behind = Die Brust ist so weit, die Keule nicht. Er bleibt drin, bis auch die Keule { $target } zeigt.
room-log-wing-behind = Brust und Keule sind vielleicht so weit, der Flügel nicht. Er bleibt drin, bis es innen am Flügel auch { $target } sind.
room-log-breast-behind = Die Keule ist so weit, die Brust nicht. Er bleibt drin, bis auch die Brust { $target } zeigt.
room-log-stuffing-behind = Brust und Keule sind so weit, die Füllung nicht. Er bleibt drin, bis auch die Füllung { $target } zeigt.
room-log-stuffing-unread = Brust und Keule sind so weit. Jetzt die Mitte der Füllung: der Vogel bleibt drin, bis auch sie { $target } hat.
room-log-asked-not = Nein: { $spot ->
    [breast] die Brust
    [thigh] die Keule
    [wing] der Flügel
   *[stuffing] die Füllung
} muss auf { $target } kommen.
room-log-one-spot = { $target } an einer Stelle. Prüf die anderen, bevor du ihr traust: dickste Brust, tief in der Keule, innen am Flügel.
room-log-doubt = { $spot ->
    [breast] Brust
    [thigh] Keule
    [wing] Flügel
    [stuffing] Füllung
    [oven] Ofen
   *[pit] Garraum
} { $given }? Ich hätte { $low } bis { $high } erwartet, darum habe ich es nicht notiert.{ $celsius ->
    [yes] {" "}Falls das °C waren, schreib ein C dazu: „58C“.
   *[no] {" "}Sieh noch mal hin und schick es noch einmal.
}
room-log-fell = { $spot ->
    [breast] Brust
    [thigh] Keule
    [wing] Flügel
    [stuffing] Füllung
    [oven] Ofen
   *[pit] Garraum
} { $given }? Zuvor waren es { $last }, und garendes Fleisch kühlt nicht so ab. Fehlt eine Ziffer, oder ist der Fühler verrutscht? Ich habe es nicht notiert; schick noch mal, was er jetzt zeigt.
room-when = Fertig zwischen { $from } und { $to }. Essen { $dinner }.
room-when-off = Der Vogel ist seit { $since } fertig und heraus.{ $eaten ->
    [no] {" "}Essen { $dinner }.
   *[yes] {""}
}
room-when-dinner = Gerade gart nichts. Essen { $dinner }.

# ---- Einstellungen
room-settings-yours = <b>Deine Einstellungen</b>
room-settings-rooms = <b>Einstellungen dieses Chats</b>
room-settings-language = Sprache: { $language }
room-settings-units = Einheiten: { $chosen }
room-settings-spoons = Löffel: { $spoons }
room-settings-zone = Zeitzone: { $zone } (jetzt { $now })
room-settings-zone-unset = Zeitzone: nicht gesetzt
room-settings-quiet = Ruhezeit: { $from } bis { $to }
room-settings-quiet-none = Ruhezeit: keine
room-settings-quiet-unread = Ruhezeiten wie „Ruhe 22:00 bis 7:00“ oder „Ruhe aus“.
room-settings-button-language = Sprache
room-settings-button-units = Einheiten
room-settings-button-spoons = Löffel
room-settings-button-zone = Zeitzone
room-settings-button-quiet = Ruhezeit
room-settings-pick-language = Welche Sprache?
room-settings-pick-units = Welche Einheiten?
room-settings-pick-spoons = Wessen Löffel und Tassen?
room-settings-pick-quiet = Wann soll ich dich in Ruhe lassen? Was du selbst übernommen hast, und die Sicherheit beim Essen, kommt trotzdem durch.
room-language-en = English
room-language-es = Español
room-language-fr = Français
room-language-de = Deutsch
room-language-pt = Português (Brasil)
room-language-it = Italiano
room-units-us = Pounds, °F
room-units-metric = Kilogramm, °C
room-spoons-us = USA (4,93 / 14,8 / 237 ml)
room-spoons-metric = metrisch (5 / 15 / 250 ml)
room-spoons-uk = Großbritannien (5 / 15 ml)
room-spoons-australia = Australien (5 / 20 / 250 ml)
room-quiet-span = { $from } bis { $to }
room-quiet-none = Keine
room-zone-choice = { $zone }
room-zone-which = Davon gibt es mehrere. Welche?
room-zone-unknown = „{ $text }“ kenne ich nicht als Ort. Eine größere Stadt in der Nähe, oder eine Zone wie „Europe/Berlin“?
room-zone-nowhere = Dort kenne ich die Zeitzone nicht. Tippst du eine Stadt?
room-zone-set = { $zone } also: dort ist es jetzt { $now }.

# ---- salzen
room-dose-total = { $grams } insgesamt, das sind { $spoons } { $salt ->
    [own] von deinem Salz
    [table] Tafelsalz
   *[flake] koscheres Flockensalz
}.
room-dose-places = { $places }.
room-dose-place = { $spoons } { $place ->
    [cavity] in die Höhle
    [bone-side] auf die Knochenseite
    [breast] { $count ->
        [one] unter die Haut der Brust
       *[other] unter die Haut jeder Brusthälfte
    }
    [thigh] unter die Haut jeder Oberkeule
    [drumstick] unter die Haut jeder Unterkeule
   *[skin] auf die Haut
}
room-dose-skin = Das Salz für die Haut mischst du mit ebenso viel Pfeffer und ebenso viel Backpulver.
room-dose-none = Hier kommt kein Salz dran: die { $percent } % Salzlake vom Abpacker sind Salz genug.
room-dose-presalted = Kein Salz an diesen Vogel: Er ist schon gesalzen, hast du gesagt.
room-dose-light = Eine leichte Hand: der Abpacker hat schon { $percent } % Salzlake hineingegeben.
room-salted-by = { $name } hat schon gesalzen, { $at }. Falls wirklich zweimal Salz drauf ist:
room-salted = Gesalzen ist schon, seit { $at }.
room-salt-then = Gesalzen wird { $salt }, dann offen in den Kühlschrank, bis der Vogel gart, { $on }.
room-salt-straight = Gesalzen wird { $salt }, aus dem Wasser und trocken, dann gleich garen, { $on }.
room-salt-no-rest = Dieser Plan hat keine Salzruhe: Salz erst kurz vor dem Garen drauf, { $on }.
room-button-sources = Woher?
room-question-gone = Die Frage ist zu lange her. Stellst du sie noch mal?
room-sources = Die Zahlen kommen von:
room-too-long = Das sind { $length } Zeichen, mehr, als ich auf einmal lesen kann (höchstens { $most }). Ein, zwei Sätze reichen.
room-proposal-night = Nachts: { $jobs }.
room-pack-warm = Um { $off } herausgenommen, also noch nicht kalt: bis { $by } gegessen oder im Kühlschrank, auch in der Kühlbox, außer es bleibt bei { $hot } oder mehr. Unsicher? Wegwerfen.
room-chill-late = Das war nach { $by }. Was länger als zwei Stunden draußen stand, kommt weg, auch wenn es gut aussieht.
# $jobs: what was planned for it and is called for no more.
room-chill-ended = Damit entfällt: { $jobs }. Doch rechtzeitig drin gewesen? Rückgängig.
room-limit-chill = Die zwei Stunden sind um. Was noch draußen steht und nicht bei 60 °C oder mehr gehalten wurde, kommt weg.
room-limit-chill-hot = Bei der Hitze ist die Stunde um. Was noch draußen steht und nicht bei 60 °C oder mehr gehalten wurde, kommt weg.
# What is said of how long it has been out, and the clock kept: the stricter. $since: from when it counts; $off: when it was told to be off.
room-out-clock = Ich zähle ab { $since }{ $from ->
    [read] , der letzten heißen Messung
    [heat] , als er vom Feuer kam
   *[other] {""}
}: bis { $by } gegessen oder im Kühlschrank.
room-out-clock-over = Ich zähle ab { $since }{ $from ->
    [read] , der letzten heißen Messung
    [heat] , als er vom Feuer kam
   *[other] {""}
}: Um { $by } war die Zeit um. Was nicht bei { $hot } oder mehr blieb, kommt weg.
room-out-earlier = Draußen seit { $since } ist vor { $off }, als er für mich vom Feuer kam; jetzt zähle ich ab { $since }: bis { $by } gegessen oder im Kühlschrank.
room-out-earlier-over = Das kommt weg: draußen seit { $since }, also vor { $off }, als er für mich vom Feuer kam. Um { $by } war die Zeit um.
room-never-off = Niemand hat mir gesagt, wann der Vogel vom Feuer kam. War er wie geplant { $when } draußen, ist er bis { $by } gegessen oder im Kühlschrank; war er früher draußen, eher. Außer er blieb bei { $hot } oder mehr.
room-never-off-over = Niemand hat mir gesagt, wann der Vogel vom Feuer kam. War er wie geplant { $when } draußen, war die Zeit um { $by } um: Behalte nur, was da schon im Kühlschrank war oder bei { $hot } oder mehr blieb. Der Rest kommt weg.
room-never-off-unread = Und niemand hat { $target } in Brust, Keule und Flügel gemessen: ohne das ist er nicht sicher.
room-raw-eve = Der frische Vogel muss bis { $until } in den Ofen oder ins Gefrierfach. Gegessen wird { $dinner }.
room-raw-over = Die Zeit des frischen Vogels im Kühlschrank ist um: jetzt garen oder einfrieren. Danach kann ich ihn nicht mehr sicher nennen.
room-hello = Hallo. Sag mir den Vogel, den Tag und wie viele essen: „gefrorene Pute 6,5 kg, Essen Sonntag 17 Uhr, 10 Personen“. Oder frag mich etwas.
room-amended = Gut: { $known }.
room-unbought = Noch nicht gekauft, verstanden. Einkauf jetzt { $when }, der Rest richtet sich danach.
room-unthawed = Taut noch nicht, verstanden. Beginn jetzt { $when }, der Rest richtet sich danach.
room-whether-bought = Niemand hat es gesagt: Ist der Vogel gekauft?
room-unlit = Dann jetzt an damit, auf { $setting }: Der Vogel kommt gegen { $when } hinein, wenn es heiß ist, und wartet solange im Kühlschrank.
room-oven-free = Der Ofen ist frei, sobald der Vogel draußen ist, etwa { $off }, bis { $carve }. Das letzte Wort hat { $host }.
room-whether-thawing = Niemand hat es gesagt: Taut der Vogel seit { $since }?
room-swap-keeps = Frisch hält er höchstens zwei Tage: kauf ihn { $when }, nicht früher, es sei denn, das Datum auf der Packung erlaubt es. Schon im Haus? Sag es mir.
room-button-have-it = Haben wir
room-button-not-yet = Noch nicht
room-amend-told = Laut { $name }: { $change }. Auch im Plan, { $host }?
room-button-amend = Plan ändern
room-not-done = Gut zu wissen: { $what } steht noch aus.
room-stays-on = Gut, dann gart er weiter.
room-water-not = Ist das Wasser noch kalt, { $cold } oder weniger? Jetzt wechseln und weiter. War es über { $limit } wärmer: wirf den Vogel weg.
room-thaw-early = Das ist früh: in kaltem Wasser ist der Vogel bis { $thawed } aufgetaut, gegart wird er { $on }. Aufgetaut: raus aus dem Wasser, in den Kühlschrank bei höchstens { $cold }. Oder jetzt aufhören: in den Kühlschrank, „Rückgängig“, und ab { $water } ins Wasser.
room-thaw-water = In kaltem Wasser ist der Vogel bis { $thawed } aufgetaut: Wasser alle { $every } wechseln. Dann raus, in den Kühlschrank bei höchstens { $cold }, gegart wird { $on }. Lieber wie geplant? Jetzt in den Kühlschrank, und „Rückgängig“.
room-thaw-long = Er ist seit { $thawed } aufgetaut. Wasser noch { $cold } oder weniger? Jetzt in den Kühlschrank. War es über { $limit } wärmer: wirf den Vogel weg.
room-thaw-out = Jetzt ist er aufgetaut: raus aus dem Wasser, in einer Schale in den Kühlschrank, höchstens { $cold }. Kein Wasser mehr. Noch Eis innen? Wasser wechseln und weiter. Gegart wird er { $on }.
room-ok = Gut.
room-yes-what = Ja wozu? Geändert habe ich nichts. Sag es noch einmal ganz: „Essen um 17 Uhr“.
room-fine = In Ordnung.
room-unsaid = Das hat noch niemand gesagt.
room-not-yet = Gut, noch nicht.
room-when-step = { $what }: { $when }.
room-when-none = „{ $what }“ gibt es in diesem Plan nicht.
room-hour-fits = { $what }: { $asked } passt, wie jede Zeit von { $from } bis { $to }. Sag Bescheid, wenn es erledigt ist.
room-hour-early = { $what }: { $asked } ist zu früh. Ab { $from }, geplant { $planned }.
room-hour-late = { $what }: { $asked } ist zu spät. Bis { $to }, geplant { $planned }.
room-hour-only = { $what }: In diesem Plan passt nur { $planned }.
room-who-has = { $what }, { $when }: { $name }.
room-who-nobody = Das hat noch niemand: { $what }, { $when }.
room-day-free = An dem Tag ist nichts mehr zu tun.
room-ice = Gut, dass du nachgesehen hast. Sie bleibt im Kühlschrank, und ab { $when } taut sie in kaltem Wasser fertig; dann gleich garen.
room-ice-now = Gut, dass du nachgesehen hast. Dann jetzt in kaltem Wasser fertig auftauen, in einer dichten Tüte; danach gleich garen.
room-ice-early = Das ist normal. Lass den Vogel im Kühlschrank und sieh { $when } wieder nach: Ist dann noch Eis drin, schafft kaltes Wasser den Rest.
room-ice-roast = Gut, dass du nachgesehen hast. Wasser würde zu lange dauern: { $when } kommt sie so in den Ofen, ungefüllt.
room-ice-roast-now = Gut, dass du nachgesehen hast. Wasser würde zu lange dauern: jetzt so in den Ofen, ungefüllt.
room-ice-done = Bis anderthalbmal so lang; Innereien raus, sobald sie sich lösen; { $target } überall.
room-never-fridge = Noch nichts verloren: jetzt in den Kühlschrank, auf ein Blech.
room-never-both = Jetzt in den Kühlschrank, auf ein Blech; ab { $when } macht kaltes Wasser den Rest.
room-never-water = Dann muss es kaltes Wasser tun, ab { $when }, im dichten Beutel; danach gleich in den Ofen.
room-never-water-now = Dann muss es kaltes Wasser tun, ab jetzt, im dichten Beutel; danach gleich in den Ofen.
room-never-roast = Zum Auftauen reicht die Zeit nicht: { $when } kommt er gefroren in den Ofen, ohne Füllung.
room-never-roast-now = Zum Auftauen reicht die Zeit nicht: jetzt gefroren in den Ofen, ohne Füllung.
# $when: the next job with it.
room-thawed = Aufgetaut: kein Eis in der Bauchhöhle, die Keulen beweglich? Dann bleibt er bis { $when } im Kühlschrank.
# Im Wasser aufgetaut wird er sofort gegart. $when: seine Stunde am Feuer; far: Stunden später oder morgen.
room-thawed-water = Im Wasser aufgetaut: kein Eis mehr drin, Beine beweglich? Am besten sofort garen. Sonst raus aus dem Wasser, in den Kühlschrank bei { $cold } oder kälter, und spätestens { $when } ans Garen.
room-thawed-water-far = Im Wasser aufgetaut wird er sofort gegart und wartet nicht bis { $when } im Kühlschrank. Jetzt garen; zerlegt und gekühlt wird er zum Essen auf { $target } aufgewärmt.
room-stuffing-out = Notiert: die Füllung wird für sich fertig, bis { $target } in der Mitte. Für den Vogel zählen nun Brust, Keule und Flügel, je { $target }.
room-thawed-now = Aufgetaut: kein Eis in der Bauchhöhle, die Keulen beweglich? Dann weiter.
room-log-when = Wann war das? Sag es mit der Uhrzeit, etwa „Brust 35 um 13:30“. Ohne Uhrzeit hielte ich es für jetzt.
room-heat-set = Notiert: ab jetzt { $setting }.
room-heat-moved = Notiert: ab jetzt { $cooker ->
    [smoker] im Smoker
    [fan-oven] im Umluftofen
   *[oven] im Ofen
 } bei { $setting }.
room-leftovers-until = Eure: bis { $when } essen oder einfrieren, wenn sie rechtzeitig in den Kühlschrank kamen.
room-leftovers-over = Eure Tage sind um ({ $when }): was nicht eingefroren ist, wird weggeworfen.
room-leftovers-if = Nur was binnen zwei Stunden im Kühlschrank war; der Rest wird weggeworfen.
room-ok-due = Gut. Sag „erledigt“, wenn das vorbei ist: { $what }.
room-ok-which = Was davon? Tipp es an, dann gilt es.
room-welcome = Gern.
room-amend-clash = So geht es nicht auf. Der Plan bleibt, wie er ist.
room-undone-dinner = Gegessen wird wieder { $when }.
room-already-you = Das hast du schon geklärt, { $at }.
room-proposal-carry = Am Vortag zu Hause gegart, kalt mitgenommen, dort aufgewärmt. Garst du dort, sag „dort garen“.
room-proposal-hot = Heiß mitgenommen: ganz und eingepackt, spätestens { $most } nach dem Garen gegessen ({ $hour }, wenn es draußen über { $air } hat). Länger nur, solange es { $hot } oder mehr zeigt. Lieber kalt? Sag „kalt mitnehmen“.
room-proposal-or-hot = Lieber heiß? Sag „heiß mitnehmen“.
room-hour-there = Die Stunde gilt jetzt dort: { $there }. War die Uhr zu Hause gemeint, sag „Essen { $home }“.
room-proposal-not-hot = Am Vortag gegart kann er nicht heiß mit. Sag „heiß mitnehmen“, dann wird am Tag selbst gegart.

# ---- /export: eine Zeile zu jeder Datei.
room-export-calendar = Der Plan für deinen Kalender. Änderungen folgt er nicht: frag neu, und die neuen Zeiten ersetzen die alten.
room-export-calendar-ended = In deinem Kalender geöffnet, nimmt es die Aufgaben des beendeten Plans heraus.
room-export-readings = Die Temperaturen, für eine Tabelle.
room-export-everything = Alles, was ich über diesen Chat habe.
room-shift-more = … und { $count } weitere rücken mit.
room-pull-sure = { $spot ->
    [thigh] Die Keule
    [wing] Der Flügel
    [stuffing] Die Füllung
   *[breast] Die Brust
} zeigte um { $at } { $read }, und raus geht es bei { $target }. Zeigt sie das jetzt?
room-carve-under = { $spot ->
    [thigh] Die Keule zeigte
    [wing] Der Flügel zeigte
    [stuffing] Die Füllung zeigte
   *[breast] Die Brust zeigte
} um { $at } { $read }, und mehr hat niemand gesagt. Unter { $target } muss er weiter garen, bevor jemand isst: erst messen.
room-no-heat = Keine Hitze seit { $since }? Sag mir, wenn sie zurück ist oder wo der Vogel jetzt ist. Bis { $until } unter { $hot }: wegwerfen.
room-no-heat-over = Zwei Stunden ohne Hitze, seit { $since }: Was unter { $hot } hat, kommt weg. Überall heißer darf er weitergaren, auf { $target }.
room-eat-cooking = Noch nicht: sicher ist er erst bei { $target } in Brust, Keule und Flügel.
room-call-carve-unsaid = Ist er draußen? Gesagt hat mir das keiner. Raus erst bei { $target } in Brust, Keule und Flügel; bei weniger bleibt er drin.
room-back-on = Weiter im Ofen. Raus erst bei { $target } in der dicksten Brust, innen an der Keule und im Flügel: miss wieder um { $look }.
room-carve-unread = Hatte er { $target } in Brust, Keule und Flügel? Gesagt hat mir das keiner. Wenn du es nicht weißt, miss jetzt: bei weniger kommt er zurück in den Ofen, bevor jemand isst.
room-button-reads-now = Ja, tut sie
room-button-stays-on = Er bleibt drin
room-done-which = Ist er raus, oder hast du nur nachgesehen? Raus kommt er erst bei { $target } in Brust, Keule und Flügel.
room-button-looked = Nur nachgesehen
room-hold = Tranchiert wird um { $carve }. Bleibt er bis dahin bei { $hot } oder mehr, abgedeckt, mit Thermometer drin? Wenn nicht, ist er bis { $by } tranchiert, gegessen und im Kühlschrank.
room-hold-packed = Eingepackt wird um { $pack }. Bleibt er bis dahin bei { $hot } oder mehr, abgedeckt, mit Thermometer drin? Wenn nicht, ist er bis { $by } gegessen und im Kühlschrank.
room-report-early = „{ $what }“ ist für { $when } geplant. Wirklich schon erledigt?
room-aside-ask = Ist das der Vogel? „{ $what }“ steht an.
room-two-thermometers = Der niedrigere gilt: { $low }. Prüf beide in Eiswasser: mehr Eis als Wasser, umrühren, dann müssen sie { $ice } zeigen. Und sag mir die Stelle: Brust, Keule oder Flügel.
room-wandering = Vorerst zählt das Niedrigste: { $low }. Stich noch mal an der dicksten Stelle ein, ohne Knochen, warte, bis es steht, und sag mir das.
room-digits-apart = Heißt das { $parts }? Noch nicht gezählt.
room-oven-cool = Zu kühl für Geflügel: jetzt auf { $limit } oder mehr, oder in einen anderen Ofen. Bis dahin dauert es länger als geplant; nenn mir Brust und Keule, dann sage ich, wie lange.
room-foil-off = Ja, locker, solange er steht: mindestens { $least }, und nicht länger als bis zum Tranchieren. Feste Folie macht die Haut weich.
room-fridge-bird = Der Vogel darin: aufgetaut und mehr als { $limit } über { $cold } kommt er weg; Garen macht das nicht gut. Miss jetzt. Noch hart von Eis oder innen höchstens { $cold }: sofort kälter stellen.
room-button-held = Bleibt heiß
# $off: when it was last known to be hot; $by: two hours later.
room-held = Gut: abgedeckt, das Thermometer drin. Sag mir, was Brust und Keule zeigen: Ab { $hot } zählen die zwei Stunden von da an. Ohne Messung zählen sie ab { $off }, bis { $by }.
room-hold-broken = { $at } ist unter { $hot }: das ist nicht heiß gehalten. Bis { $by }, zwei Stunden nach { $from ->
    [read] der letzten heißen Messung
   *[heat] dem Herausnehmen
}, ist alles tranchiert, gegessen und im Kühlschrank.
room-own-salt-kept = Damit rechne ich ab jetzt.
room-flooded = Zu viel auf einmal: ich lese nicht mehr mit. Gib mir eine Minute.
room-skip-theirs = Das macht { $name }. Auslassen kann es nur, wer es hat oder den Plan führt, oder ein Admin.
room-move-already = Gegessen wird schon { $when }.
room-move-already-by = { $name } war schneller: gegessen wird { $when }.
room-late = { $when } essen statt { $dinner }?
room-wanted = { $name } hätte das Essen gern { $when } statt { $dinner }.
room-late-on = Der Vogel gart schon und kommt wie geplant heraus.
room-late-kept = Es bleibt bei <b>{ $when }</b>.
room-late-host = Das entscheidet { $name } oder ein Admin.
room-late-stands = { $stands ->
    [off] Der Vogel ist schon vom Feuer:
   *[done] Der Vogel ist fertig: nimm ihn heraus und
} halt ihn heiß, zugedeckt, im Ofen auf kleinster Stufe, und er muss weiter { $hot } zeigen. Darunter ist er bis { $until } gegessen oder im Kühlschrank. Oder jetzt tranchieren, in flachen Schalen kühlen und auf { $target } aufwärmen.
room-late-how = Wie viel später? Sag „Essen eine Stunde später“, und ich sehe, was sich verschiebt.
room-button-late-keep = So lassen
room-undone-by = Zurückgenommen: { $what } ({ $name }, { $at }).
room-undo-gone = Das ist schon zurückgenommen.
room-undo-theirs = Die letzte Änderung ist von { $name }: { $what }. Zurücknehmen kann sie nur, von wem sie ist, wer den Plan führt, oder ein Admin.
# Ein Haken, der kein Versehen mehr ist: Nur der Haken kann weg.
room-undo-sure = „{ $step }“ ist abgehakt, { $at }. Ein Versehen? Nur der Haken kann weg; was mit dem Vogel geschehen ist, bleibt.
room-undo-sure-by = { $name } hat „{ $step }“ abgehakt, { $at }. Ein Versehen? Nur der Haken kann weg; was mit dem Vogel geschehen ist, bleibt.
room-button-undo-sure = Versehen, zurück
room-undo-rests = „{ $step }“ bleibt: Danach kam „{ $later }“, { $at }. Das lässt sich nicht zurücknehmen.
room-undo-rests-read = „{ $step }“ bleibt: Danach wurde im Vogel gemessen, { $at }. Das lässt sich nicht zurücknehmen.
room-settings-salt = Dein Salz: { $weighs } g je Teelöffel
room-settings-salt-none = Dein Salz: noch nicht gesagt
room-settings-cooker = Dein Ofen oder Smoker: { $cooker }
room-settings-cooker-none = Dein Ofen oder Smoker: frage ich jedes Mal
room-settings-fridge = Dein Kühlschrank: { $at }
room-settings-fridge-none = Dein Kühlschrank: nicht gemessen
room-settings-button-salt = Mein Salz
room-settings-button-cooker = Mein Ofen
room-settings-button-fridge = Mein Kühlschrank
room-settings-pick-salt = Sag mir, was auf der Packung steht: „mein Salz: 1/4 TL sind 0,7 g“. Ab da rechne ich damit.
room-settings-salt-drop = Mein Salz vergessen
room-settings-pick-cooker = Worin garst du einen Vogel meistens? Ein Plan, der nichts anderes sagt, ist dafür.
room-settings-cooker-any = Jedes Mal fragen
room-settings-pick-fridge = Was zeigt ein Thermometer in deinem Kühlschrank?
room-settings-fridge-unknown = Nicht gemessen
room-settings-shelves = Kühlschrankfächer für ein Essen: { $count }
room-settings-shelves-none = Kühlschrankfächer für ein Essen: nicht gesagt
room-settings-button-shelves = Kühlschrankfächer
room-settings-pick-shelves = Wie viele Fächer deines Kühlschranks sind für ein Essen frei? Der Vogel nimmt eins, ein Gericht ein halbes, und ich sage, wenn es nicht passt.
room-settings-shelves-unknown = Nicht prüfen
room-settings-pick-zone = Wo steht die Küche? Tipp eine Stadt oder Zeitzone, „Berlin“ oder „Europe/Vienna“, oder schick mir deinen Ort. Der Ort selbst wird nicht behalten.
room-settings-pick-zone-group = Wo steht die Küche? Sag es mit „/settings Berlin“; eine Zeitzone wie „Europe/Vienna“ geht auch.
room-export-page = Eine Seite für die Kühlschranktür. Drucken und abhaken.
