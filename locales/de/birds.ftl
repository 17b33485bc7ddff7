# Mehrere Vögel in einem Chat. $bird ist, wie einer davon heißt („Ente von Tom“), $birds eine Liste davon.

birds-whose = { $kind ->
    [turkey-breast] { $own ->
        [yes] Die Putenbrust
       *[no] Putenbrust von { $name }
    }
    [chicken] { $own ->
        [yes] Das Hähnchen
       *[no] Hähnchen von { $name }
    }
    [capon] { $own ->
        [yes] Der Kapaun
       *[no] Kapaun von { $name }
    }
    [duck] { $own ->
        [yes] Die Ente
       *[no] Ente von { $name }
    }
    [goose] { $own ->
        [yes] Die Gans
       *[no] Gans von { $name }
    }
   *[turkey] { $own ->
        [yes] Die Pute
       *[no] Pute von { $name }
    }
}
birds-where = { $bird } { $cooker ->
    [smoker] im Smoker
    [fan-oven] im Umluftofen
   *[oven] im Ofen
}
birds-heavy = { $bird }, { $mass }
birds-number = { $bird }, Nr. { $number }
birds-of = { $bird }: { $what }

birds-standing = Hier schon geplant: { $birds }. { $replaces ->
    [yes] Ist das noch ein Vogel, oder kommt er an die Stelle?
   *[no] Ist das noch ein Vogel?
}
birds-same-heat = Dann ist auch dein Vogel mit { $mass } in derselben Hitze. Nebeneinander: Luft um beide, jeder dauert etwas länger, und in jeden ein Thermometer.
birds-other-heat = Dann ist auch dein Vogel mit { $mass } in derselben Hitze, bei { $setting }. Beide brauchen eine Temperatur, oder einer kommt vor dem anderen dran.
birds-one-oven = { $bird } ist dann im Ofen bei { $setting }. Ist es derselbe: eine Temperatur für beide, oder einer nach dem anderen.
birds-one-fridge = Dann auch im Kühlschrank: { $birds }. Ist es derselbe, { $shelves ->
    [one] reicht ein Fach
   *[other] reichen { $shelves } Fächer
} nicht: ein zweiter, oder eine Kühlbox mit Eis bei { $cold } oder kälter.
birds-all = { $birds }
birds-hotter = Im selben Ofen wie { $birds }? Dann wird es auch dort heißer: miss früher nach.
birds-full = Hier schon geplant: { $birds }. Mehr behalte ich in einem Chat nicht im Blick{ $replaces ->
    [yes] ; dieser könnte nur an die Stelle von einem kommen.
   *[no] .
}
birds-button-beside = Noch ein Vogel
birds-button-instead = Ersetzt: { $bird }
birds-most = Mehr als { $most } Vögel behalte ich in einem Chat nicht im Blick. Beende erst einen mit /stop.
birds-beside = Auch in diesem Chat: { $birds }.

birds-which = Welcher Vogel? „{ $text }“
birds-each = Ein Vogel nach dem anderen: schick erst die Zahlen vom einen, dann die vom anderen.
birds-which-gone = Was du gesagt hast, habe ich nicht mehr. Sagst du es noch mal, mit dem Namen vom Vogel?
birds-moved = Hierher statt zu „{ $bird }“: { $parts }.
