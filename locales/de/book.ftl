# Was mit den Daten auf der Platte schiefgehen kann. Paare: was ist, was tun. In einem Terminal.
book-locked = Ein anderes Carvetime benutzt { $path }.
book-locked-do = Beende es zuerst oder wähle mit --data einen anderen Ordner.
book-disk = { $path } lässt sich nicht benutzen: { $reason }.
book-disk-do = Prüfe den freien Platz und die Rechte des Ordners, dann starte neu.
book-damaged = Die gespeicherten Daten sind beschädigt ({ $detail }).
book-damaged-do = Leg den Datenordner beiseite, heb ihn auf und spiel eine Sicherung ein: carvetime restore DATEI
book-newer = Die gespeicherten Daten stammen von einem neueren Carvetime.
book-newer-do = Nimm diese Version oder eine spätere.
book-file-exists = { $path } gibt es schon.
book-file-exists-do = Wähle einen anderen Namen; nichts wurde überschrieben.
book-not-empty = In { $path } liegen schon Daten.
book-not-empty-do = Wähle mit --data einen leeren Ordner; nichts wurde verändert.
book-bad-backup = { $path } ist keine ganze Sicherung: Zeile { $line } ist unbrauchbar.
book-bad-backup-do = Nimm eine andere Sicherung; nichts wurde verändert.
book-recovered = Die gespeicherten Daten waren beschädigt und liegen in { $aside }. Weiter ging es mit der Sicherung { $export }; { $missing ->
    [0] dass danach etwas kam, das fehlt, ist nicht bekannt.
    [one] eine Nachricht von danach, gehört oder gesagt, fehlt.
   *[other] { $missing } Nachrichten von danach, gehört oder gesagt, fehlen.
}
