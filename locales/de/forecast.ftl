### Die Vorhersage: wann der Vogel fertig ist, was zu fragen ist, warum die Spanne breit ist.

forecast-line = { $at }: fertig nach { $done } ({ $from } bis { $to })
forecast-line-done = { $at }: am Ziel (wahre Zeit etwa { $done }, { $from } bis { $to })
forecast-progress = { $done } von { $all } Werten

forecast-suspect-meant = { $place ->
    [breast] Brust { $given }? Oder { $meant }? Nicht gezählt.
    [thigh] Keule { $given }? Oder { $meant }? Nicht gezählt.
    [oven] Ofen { $given }? Oder { $meant }? Nicht gezählt.
   *[pit] Garraum { $given }? Oder { $meant }? Nicht gezählt.
}
forecast-suspect = { $place ->
    [breast] Brust { $given } kann nicht sein. Sieh noch mal hin; nicht gezählt.
    [thigh] Keule { $given } kann nicht sein. Sieh noch mal hin; nicht gezählt.
    [oven] Ofen { $given } kann nicht sein. Sieh noch mal hin; nicht gezählt.
   *[pit] Garraum { $given } kann nicht sein. Sieh noch mal hin; nicht gezählt.
}

forecast-doubt-no-readings = Noch kein Wert: das ist nur das Übliche.
forecast-doubt-unread = { $place ->
    [breast] In der Brust ist noch nichts gemessen.
   *[thigh] In der Keule ist noch nichts gemessen.
}
forecast-doubt-pit-unread = Wie heiß es drin ist, misst keiner: ich nehme die Einstellung.
forecast-doubt-gap = { $span } ohne Wert: weniger sicher.
forecast-doubt-fire-dying = Der Garraum ist auf { $pit } gefallen und erholt sich nicht. Sieh nach dem Feuer.
forecast-doubt-probe-moved = { $place ->
    [breast] Der Wert der Brust ist gesprungen: verrutscht, am Knochen oder in der Höhle? Weniger sicher.
    [thigh] Der Wert der Keule ist gesprungen: verrutscht, am Knochen oder in der Höhle? Weniger sicher.
    [oven] Der Wert des Ofens ist gesprungen: das Thermometer versetzt? Weniger sicher.
   *[pit] Der Wert des Garraums ist gesprungen: das Thermometer versetzt? Weniger sicher.
}
forecast-doubt-probes-disagree = Brust und Keule liegen { $by } auseinander. Prüfe, wo beide Spitzen sitzen.
forecast-doubt-changed = { $place ->
    [breast] Die Brust erwärmt sich anders als zuvor (Folie, Deckel, verrutscht?). Weniger sicher.
   *[thigh] Die Keule erwärmt sich anders als zuvor (Folie, Deckel, verrutscht?). Weniger sicher.
}
forecast-doubt-behind = { $place ->
    [breast] Die Brust ist viel kälter, als diese Hitze sie bis jetzt macht: unsicher.
   *[thigh] Die Keule ist viel kälter, als diese Hitze sie bis jetzt macht: unsicher.
}
forecast-doubt-ahead = { $place ->
    [breast] Die Brust ist viel heißer, als diese Hitze sie bis jetzt macht: Spitze am Knochen oder unter der Haut? Unsicher.
   *[thigh] Die Keule ist viel heißer, als diese Hitze sie bis jetzt macht: Spitze am Knochen oder unter der Haut? Unsicher.
}
forecast-doubt-part-frozen = Er hatte innen noch Eis, als er zu garen begann: weniger sicher.
forecast-doubt-unusual = Solche Vögel kenne ich wenig: weniger sicher.
forecast-doubt-endless = Bei dieser Hitze kommt er womöglich nie ans Ziel. Mehr Hitze.

forecast-csv-empty = Zeile { $line }: keine Werte. Ein Protokoll hat einen Kopf wie minutes,pit_f,breast_f,thigh_f und eine Zeile je Messung.
forecast-csv-no-time = Zeile { $line }: keine Spalte für die Zeit. Nenn eine minutes oder time.
forecast-csv-no-spot = Zeile { $line }: keine Spalte für eine Temperatur. Nenn sie pit_f, breast_f, thigh_f (oder _c).
forecast-csv-twice = Zeile { $line }: „{ $given }“ steht doppelt. Behalt eins.
forecast-csv-no-number = Zeile { $line }: „{ $given }“ ist keine brauchbare Zahl. Ohne Wert bleibt die Zelle leer.
forecast-csv-no-clock = Zeile { $line }: „{ $given }“ ist keine Zeit. Schreib sie als 14:05.
forecast-csv-earlier = Zeile { $line }: { $given } liegt vor der Zeile davor. Ordne die Zeilen nach der Zeit.
forecast-csv-too-long = Zeile { $line }: mehr Werte, als ein Tag Sekunden hat. Kürze das Protokoll auf ein Essen.

forecast-flag-mass = --mass: „{ $given }“ ist kein Gewicht. Schreib es als "14.2 lb" oder "6,4 kg".
forecast-flag-mass-range = --mass: { $given } wiegt kein Vogel. Nimm { $low } bis { $high }.
forecast-flag-temperature = { $flag }: „{ $given }“ geht nicht. Schreib eine Temperatur von { $low } bis { $high }, etwa "163 C".
