### Der Plan auf einer Seite, gedruckt für die Kühlschranktür. Große Schrift: kurze Zeilen.

sheet-dinner = Essen { $when }
sheet-day = { $day }
sheet-at = { $at }
sheet-times = { $what }: { $times } Mal, alle { $every }
sheet-dish = { $what }: { $how ->
    [oven] Ofen { $setting }, { $takes }
    [smoker] Smoker { $setting }, { $takes }
    [stove] Herd, { $takes }
   *[none] { $takes }
}
sheet-helper = Hilfe { $n }
sheet-salt = Salz
sheet-done = Fertig bei
sheet-safe = Sicher
sheet-target = { $target } in der dicksten Brust, tief in der Keule und am Flügel. Jede Stelle messen.
sheet-target-stuffed = { $target } in der dicksten Brust, tief in der Keule, am Flügel und mitten in der Füllung. Jede Stelle messen.
sheet-safe-cold = Kühlschrank bei { $cold } oder kälter. Nie auf der Arbeitsplatte auftauen.
sheet-safe-hands = Nach dem rohen Vogel Hände, Brett und Messer waschen. Den Vogel nicht waschen.
sheet-safe-out = Binnen zwei Stunden in den Kühlschrank, in flachen Schalen, außer bei { $hot } oder heißer gehalten. Länger draußen: weg damit.
sheet-made = Stand { $when }. Zeiten können sich verschieben: im Chat steht es richtig.
