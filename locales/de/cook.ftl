### Während er gart: die Vorhersage in einer Zeile, was bezweifelt wurde, Alarme, und was daraus wurde. Man liest es mit nassen Händen am Smoker.

cook-line = Etwa <b>{ $about }</b>, { $from } bis { $to }; { $standing ->
    [spare] { $span } Luft;{" "}
    [tight] knapp, bis { $latest } muss er raus;{" "}
    [late] { $span } zu spät fürs Essen;{" "}
   *[ahead] {""}
}sieh um { $look } wieder nach.
cook-endless = Bestenfalls etwa <b>{ $about }</b>, ab { $from }; bei dieser Hitze ist nach { $to } das Ende offen; { $standing ->
    [spare] { $span } Luft;{" "}
    [tight] knapp, bis { $latest } muss er raus;{" "}
    [late] { $span } zu spät fürs Essen;{" "}
   *[ahead] {""}
}sieh um { $look } wieder nach.
cook-done = { $target }, wo du gemessen hast: raus damit, sobald es auch innen am Flügel so weit ist.
cook-spot = { $spot ->
    [breast] Brust
   *[thigh] Keule
}: { $reached ->
    [yes] so weit.
   *[no] jetzt { $now }, { $target } etwa { $about } ({ $from } bis { $to }).
}
cook-air-read = { $air ->
    [oven] Ofen
   *[pit] Garraum
}{ $seen ->
    [yes] : { $read } um { $at }, eingestellt { $setting }.
   *[no] : eingestellt { $setting }.
}
cook-dinner = Essen { $dinner }.
cook-decades = Nach den veröffentlichten Tabellen reichen Hitze und Zeit dort, wo du misst. Die Marke bleibt { $target }: anderswo kann es kälter sein.
cook-decades-off = Käme der Vogel jetzt heraus und ruhte { $stand } unzerteilt, reichten Hitze und Zeit dort, wo du misst, nach den veröffentlichten Tabellen: { $low } braucht überall { $hold }, auch im Flügel. Die Marke bleibt { $target }: anderswo kann es kälter sein.

cook-in-time-again = So passt es wieder zum Essen.
cook-read-by = { $name } hat gemessen.
cook-late-choices = Ihr esst später, oder:
cook-late-hotter = • Hitze auf { $setting }: dann vielleicht etwa { $about }. Sag mir danach, wie heiß es drin ist.
cook-late-carve = • Keulen und Brust abtrennen und auf dem Blech im heißen Ofen fertig garen, jedes Stück auf { $target }: Teile gehen viel schneller. Von Hitze zu Hitze, ohne Pause.
cook-button-dinner = Essen { $at }
cook-button-hotter = Hitze auf { $setting }
cook-hotter = Im Plan stehen jetzt { $setting }. Dreh auf und schick mir in 20 Minuten, wie heiß es drin ist.
# The air was otherwise than set. $since: on (since the bird went on) or at ($from); $setting: what it is set to now.
cook-air-was = { $since ->
    [on] Notiert: { $was }, seit der Vogel drin ist.
   *[at] Notiert: { $was } seit { $from }.
}
cook-air-off = { $since ->
    [on] Notiert: keine Hitze, seit der Vogel drin ist.
   *[at] Notiert: keine Hitze seit { $from }.
}
cook-air-now = Ab jetzt rechne ich mit { $setting }. Sag mir, wenn du etwas änderst.
cook-start = Notiert: { $at } im Innern, als der Vogel hineinkam.
cook-air-back = Jetzt wieder auf { $setting }: damit rechnet die Uhrzeit.
cook-air-burns-on = Dann geht die Hitze weiter, und der Plan auch. Sieh nach, ob die Flamme noch brennt; doch aus? Sag es mir.
cook-air-rising = Es steigt, also hat er Hitze: ich rechne wieder mit { $setting }. Stimmt nicht? Sag es mir.
cook-air-low = Geflügel braucht einen Ofen mit { $limit } oder mehr. Miss jetzt die Brust und sag mir, was sie hat.
cook-air-cold = Miss jetzt die Brust und sag mir, was sie hat. Unter { $hot } nach { $limit } so: wegwerfen.
cook-air-raw = Ein rohes Tier { $limit } oder länger ohne Hitze ist nicht mehr sicher, wie es danach auch gegart wird. Wegwerfen.
cook-early = { $done ->
    [yes] Das ist deutlich vor { $dinner }.
   *[no] Das ist deutlich vor dem Essen um { $dinner }.
} Halt ihn heiß: eingewickelt, im warmen Ofen oder in einer trockenen Kühlbox, und er muss weiter { $hot } zeigen. Darunter ist er bis { $until } gegessen oder im Kühlschrank. Oder tranchieren, in flachen Schalen kühlen und auf { $target } aufwärmen.

cook-suspect-odd = { $spot ->
    [breast] Brust
    [thigh] Keule
    [oven] Ofen
   *[pit] Garraum
} { $given }? { $slip ->
    [was-celsius] Falls das °C waren, sind es { $meant }.
    [was-fahrenheit] Falls das °F waren, sind es { $meant }.
   *[digit] { $meant } würde passen.
}
cook-suspect-impossible = { $spot ->
    [breast] Brust
    [thigh] Keule
    [oven] Ofen
   *[pit] Garraum
} { $given }? Das kann ich nicht glauben.
cook-suspect-ask = Ich habe es nicht gezählt. Zeigt es das wirklich?
cook-suspect-meant = Es ist { $parts }
cook-suspect-meant-all = Die korrigierten nehmen
cook-suspect-dropped = Weggelassen. Schick noch mal, was es jetzt zeigt.

cook-alarm-fire = { $cooker ->
    [smoker] <b>Das Feuer geht aus:</b> Garraum { $pit }, und er erholt sich nicht. Jetzt Brennstoff und Luft, Deckel zu. Sag mir den Wert in 15 Minuten.
   *[oven] <b>Der Ofen verliert Hitze:</b> { $pit }, wo { $setting } eingestellt sind. Ist er an, die Tür zu? Sag mir den Wert in 15 Minuten.
}
cook-alarm-hot = { $cooker ->
    [smoker] Der Garraum läuft davon: { $pit }, wo { $setting } sein sollten. Mach die Luft etwas zu; Folie über das, was zu dunkel wird.
   *[oven] Der Ofen ist zu heiß: { $pit }, wo { $setting } sein sollten. Dreh ihn runter; Folie über das, was zu dunkel wird.
}
cook-alarm-sag = { $cooker ->
    [smoker] Der Smoker sackt ab: { $pit }, wo { $setting } eingestellt sind. Deckel gerade offen? In 10 Minuten noch einmal sehen. Sonst nachlegen und etwas mehr Luft, Deckel zu. Er bleibt draußen: Kohlenmonoxid.
   *[oven] Der Ofen sackt ab: { $pit }, wo { $setting } eingestellt sind. Tür gerade offen? In 10 Minuten noch einmal sehen. Sonst prüfen, ob er an und zu ist, und etwas höher stellen.
}
cook-alarm-moved = { $spot ->
    [breast] Der Wert der Brust ist gesprungen. Steckt der Fühler noch an der dicksten Stelle, weg vom Knochen?
    [thigh] Der Wert der Keule ist gesprungen. Steckt der Fühler noch tief in der Keule, weg vom Knochen?
    [oven] Der Wert vom Ofen ist gesprungen. Wurde das Thermometer versetzt?
   *[pit] Der Wert vom Garraum ist gesprungen. Wurde das Thermometer versetzt?
} Richte ihn und schick mir, was er zeigt.
cook-doubting = Miss an einer zweiten Stelle, tief im Fleisch, weg vom Knochen. War die Zahl falsch, nimm sie zurück; sonst gilt sie.
cook-alarm-behind = { $spot ->
    [breast] Die Brust
   *[thigh] Die Keule
} ist viel kälter, als sie bei { $setting } jetzt wäre. { $cooker ->
    [smoker] Brennt das Feuer, steckt die Spitze tief im Fleisch? Miss an einer zweiten Stelle. War es aus? Sag mir, wie lange: „40 min aus“.
   *[oven] Ist der Ofen heiß, steckt die Spitze tief im Fleisch? Miss an einer zweiten Stelle. War er aus? Sag mir, wie lange: „40 min aus“.
}
cook-alarm-ahead = { $spot ->
    [breast] Die Brust
   *[thigh] Die Keule
} ist viel heißer, als { $setting } sie bis jetzt macht: Spitze am Knochen oder unter der Haut? Miss eine zweite Stelle, tief im Fleisch.
cook-alarm-apart = Brust und Keule liegen { $apart } auseinander. Einer sitzt falsch: prüfe beide, weg vom Knochen, nicht in der Höhle.
cook-alarm-stalled = { $spot ->
    [breast] Die Brust
   *[thigh] Die Keule
} zeigt seit { $since } { $at }. { $low ->
    [yes] Im kühlen Smoker kann das der Stillstand sein: die Haut schwitzt so schnell, wie sie heizt. Mehr Hitze beendet ihn.
   *[no] Steckt der Fühler richtig? Ein zweites Thermometer zeigt es.
}
cook-alarm-zone = <b>Der Garraum liegt seit { $span } unter { $low }</b>, der Vogel bei { $spot }. Unter { $hot } wachsen Bakterien: jetzt Hitze drauf, oder ab in einen Ofen. Zwei Stunden davon sind die Grenze.
cook-alarm-zone-over = <b>Der Garraum liegt seit { $span } unter { $low }</b>, der Vogel bei { $spot }. Das ist über der Grenze von zwei Stunden. Ich würde ihn nicht auftischen.
cook-alarm-long = { $spot ->
    [thigh] Die Keule
   *[breast] Die Brust
} zeigt { $at } nach { $span }. Bei wenig Hitze sollte sie nach höchstens { $most } über { $hot } sein: so ist es üblich, keine Behörde hat die Zahl. Mehr Hitze, oder ein Ofen bei { $oven }, und sie kommt darüber.
cook-alarm-falling = { $spot ->
    [thigh] <b>Die Keule kühlt ab:</b>
   *[breast] <b>Die Brust kühlt ab:</b>
} { $from }, jetzt { $to }. { $cooker ->
    [smoker] Ist das Feuer aus? Jetzt Brennstoff und Luft, oder der Vogel kommt in einen heißen Ofen.
   *[oven] Ist der Ofen an, die Tür zu? Wenn nicht: in einen anderen heißen Ofen.
} Unter { $hot } wachsen Bakterien: zwei Stunden so sind die Grenze. Schick mir in 10 Minuten den nächsten Wert.
cook-alarm-falling-over = { $spot ->
    [thigh] <b>Die Keule kühlt seit { $span } ab:</b>
   *[breast] <b>Die Brust kühlt seit { $span } ab:</b>
} { $from }, jetzt { $to }. Das ist über der Grenze von zwei Stunden unter { $hot }. Ich würde ihn nicht servieren.
cook-falling = Keine Uhrzeit, solange er abkühlt: erst muss die Hitze zurück.
cook-alarm-hold = Heraus seit { $off }. Miss nach: ab { $hot } darf er warten. Darunter ist er bis { $until } gegessen oder im Kühlschrank.
cook-alarm-hold-read = Zuletzt heiß gemessen um { $off }. Miss noch einmal: ab { $hot } darf er warten. Darunter ist er bis { $until } gegessen oder im Kühlschrank.
cook-held-unread = Noch heiß? Seit { $off } habe ich keine Messung. Miss jetzt Brust und Keule: { $hot } oder mehr in beiden, dann ist er es. Darunter kommt er weg.
# A bird carried hot to another house. $hot: 140 °F; $off: when it was last known to be hot; $by: two hours later.
cook-hot-by = Weniger: bis { $by } gegessen, Reste gleich in den Kühlschrank. Später nicht mehr servieren.
cook-measure-first = Miss vorher Brust und Keule und sag es mir: Ab { $hot } zählen die zwei Stunden von da an, sonst ab { $off }.
cook-hot-dinner-late = Seine zwei Stunden enden um { $by }, vor dem Essen: er muss bei { $hot } oder mehr bleiben. Sonst wird er vorher gegessen.
cook-hot-still = Noch { $hot } oder mehr in beiden: gut, er kann warten, solange er das zeigt. Nach der letzten solchen Messung bleiben { $most }.
cook-hot-one = Die Stelle ist heiß genug. Beide zählen, Brust und Keule: miss auch die andere.
cook-hot-below = Das ist unter { $hot }. Soweit mir gesagt wurde, war er bis { $off } heiß: bis { $by } gegessen, Reste gleich in den Kühlschrank.
cook-hot-over = Das ist unter { $hot }, und seit { $off }, als er zuletzt sicher heiß war, sind mehr als { $most } vergangen. Ich würde ihn nicht servieren.
# Im anderen Haus wieder im Ofen.
cook-hot-in = Seit { $at } wieder im Ofen, bevor seine zwei Stunden um waren: gut. Er bleibt drin, bis Brust und Keule { $target } zeigen, dann wird gegessen. Sag mir die Zahlen.
cook-hot-in-more = Noch nicht: er bleibt drin, bis Brust und Keule beide { $target } zeigen.
cook-hot-in-there = { $target } in beiden: tranchieren und essen. Reste bis { $by } in den Kühlschrank.
cook-hot-in-table = Um { $at } kam er wieder in den Ofen: tranchiert wird, wenn Brust und Keule { $target } zeigen.
cook-hot-too-late = Seine zwei Stunden waren um { $by } um, bevor er aufgewärmt wurde. Hitze macht das nicht mehr gut: er kommt weg, nicht servieren.
cook-hot-needs = Brust und Keule bei { $hot } oder mehr: nein, so tranchieren, bis { $by }. Weniger: vorher in den Ofen, bis beide { $target } zeigen.
cook-hot-needs-no = Nein: beide zeigen { $hot } oder mehr. So tranchieren, bis { $by } gegessen.
cook-cooled-counter = { $at }. Was es auch zeigt, bis { $by } kommt es in flachen Schalen in den Kühlschrank: noch { $left }.
cook-cooled-unsaid = { $at } ist nur kalt genug, wenn es bis { $by } im Kühlschrank war. Wenn nicht, kommt es weg.
cook-cooled-cold = { $at }: kalt genug, zum Aufheben und zum Mitnehmen. Bei { $cold } oder kälter bleibt es.
cook-cooled-fridge = { $at }: kühlt noch. Bis { $by } sollte es { $cold } oder weniger haben: flache Schalen, Abstand, Deckel lose.
cook-cooled-warm = { $at } nach { $span } im Kühlschrank ist zu warm. Sieh nach dem Kühlschrank; was über zwei Stunden wärmer als { $cold } war, kann niemand sicher nennen. Im Zweifel weg damit.
cook-cooled-packed = { $at } ist über { $cold }. Insgesamt mehr als { $most } darüber, und es kommt weg, auch wenn keiner weiß, wie lange. Sonst Eis rundum oder gleich in den Ofen, auf { $target } überall.
cook-reheat-on = { $at }: weiter, bis es überall { $target } hat, gemessen im dicksten Stück.
cook-reheat-there = { $at }: dort passt es. Genauso in der Mitte jeder Schale, dann auf den Tisch.
cook-reheat-only = Das gilt nur, wenn es bis { $by } im Kühlschrank war; gesagt hat das niemand. Hitze macht das nicht gut.
cook-gone = Das stand zu lange draußen und kommt weg, was es auch zeigt. Tut mir leid. Damit ist nichts mehr zu tun.
cook-tossed = Das war richtig, und es tut mir leid. Wegen dieses Vogels melde ich mich nicht mehr.
cook-tossed-rest = Das war richtig. Deswegen melde ich mich nicht mehr.
cook-tossed-raw = Für diesen Vogel melde ich mich nicht mehr.
cook-new-bird = Sobald ein neuer Vogel da ist, sag mir, wie schwer er ist und ob frisch oder gefroren: Ich plane dasselbe Essen damit.
cook-setting = Im Plan stehen { $setting }.
cook-standing = Seit { $off } heraus: bis { $by } tranchiert, gegessen und im Kühlschrank, außer es bleibt bei { $hot } oder mehr.
cook-hot-day = { $at } drum herum: über { $air } ist es insgesamt eine Stunde ohne Hitze und Kühlung, nicht zwei. Damit rechne ich.
cook-hot-day-off = { $at } drum herum: über { $air } ist es eine Stunde, nicht zwei. Bis { $by } gegessen oder im Kühlschrank.

cook-after = Um { $when } sagte ich etwa { $about } ({ $from } bis { $to }); raus kam er um { $off }.

cook-chart = { $what ->
    [breast] Brust
    [thigh] Keule
    [oven] Ofen
    [pit] Garraum
    [dinner] Essen
   *[done] Fertig etwa
}
cook-chart-number = { $number }

cook-log-noted = { $count ->
    [one] Ein Wert aus { $name }, { $from }.
   *[other] { $count } Werte aus { $name }, { $from } bis { $to }.
}
cook-log-nothing = Nichts Neues darin, seit er um { $on } reinkam.
cook-log-not-on = Seit wann gart der Vogel? Sag mir das zuerst, dann schick das Protokoll noch mal.
cook-log-large = Die Datei ist zu groß: 2 MB ist die Grenze. Kürze sie auf dieses Essen.
cook-log-lost = Die Datei konnte ich nicht holen. Schick sie noch einmal.
cook-odd = { $count ->
    [one] Ein Wert kann nicht stimmen; er zählt nicht.
   *[other] { $count } Werte können nicht stimmen; sie zählen nicht.
}
cook-log-full = Ich behalte { $most } Werte für einen Vogel, und die sind voll. Ab hier lies das Thermometer selbst: { $target } überall.
cook-not-done = Noch nicht: { $spot ->
    [thigh] die Keule
    [wing] der Flügel
    [stuffing] die Füllung
   *[breast] die Brust
} zeigte um { $at } { $read }. Gar heißt { $target } in Brust, Keule und Flügel.
cook-done-unread = Das weiß nur ein Thermometer: { $target } an der dicksten Stelle der Brust, innen an der Keule und am Flügel. Was zeigt es?
cook-eat = Ja: { $target } in Brust, Keule und Flügel. Bis { $by } gegessen oder im Kühlschrank.
cook-eat-unread = Wenn Brust, Keule und Flügel { $target } hatten, ja. Weißt du es nicht, miss jetzt. Bis { $by } gegessen oder im Kühlschrank.
cook-back-in = Dann zurück in den Ofen, bis Brust, Keule und Flügel { $target } haben.
cook-pink-read = Brust, Keule und Flügel hatten { $target }. Das entscheidet, welche Farbe es auch hat. Im Zweifel noch einmal messen, in der dicksten Brust, tief in der Keule und am Flügel: irgendwo weniger, und es geht zurück in den Ofen.
cook-pink-unread = Farbe und Saft beweisen nichts, rosa oder klar, und gemessen hat niemand. Miss jetzt, bevor jemand isst: { $target } in der dicksten Brust, tief in der Keule und am Flügel. Irgendwo weniger, und es geht zurück in den Ofen.
cook-no-butter = Jemand verträgt keine Milch: Öl, keine Butter.
