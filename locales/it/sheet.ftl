### Il piano in una pagina, stampata e appesa al frigo. Caratteri grandi: righe corte.

sheet-dinner = A tavola { $when }
sheet-day = { $day }
sheet-at = { $at }
sheet-times = { $what }: { $times } volte, ogni { $every }
sheet-dish = { $what }: { $how ->
    [oven] forno { $setting }, { $takes }
    [smoker] affumicatore { $setting }, { $takes }
    [stove] fornello, { $takes }
   *[none] { $takes }
}
sheet-helper = Aiuto { $n }
sheet-salt = Sale
sheet-done = È cotto quando
sheet-safe = In sicurezza
sheet-target = { $target } nel punto più spesso del petto, nel più interno della sovracoscia e nell’ala. Misura in ognuno.
sheet-target-stuffed = { $target } nel punto più spesso del petto, nel più interno della sovracoscia, nell’ala e al centro del ripieno. Misura in ognuno.
sheet-safe-cold = Frigo a { $cold } o meno. Mai scongelare sul piano di lavoro.
sheet-safe-hands = Dopo il crudo lava mani, tagliere e coltello. Non lavare il volatile.
sheet-safe-out = Entro due ore in frigo, in contenitori bassi, se non resta a { $hot } o più. Fuori più a lungo: si butta.
sheet-made = Situazione: { $when }. Gli orari possono spostarsi: vale la chat.
