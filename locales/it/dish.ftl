# I contorni e il resto della tavola.
dish-added = Aggiunto: { $what }, { $when }.
dish-changed = Cambiato: { $what }, { $takes }, { $when }.
dish-changed-at = Cambiato: { $what }, { $takes } a { $setting }, { $when }.
dish-told = { $what }: { $when }, { $takes }.
dish-told-at = { $what }: { $when }, { $takes } a { $setting }.
dish-all-fit = Sì, così come previsto ci sta tutto:
dish-there = { $name } è già nel piano, { $when }.
dish-button-another = Un altro
dish-hot-through = { $target } al centro prima di mangiarlo.
dish-removed = Tolto dal piano: { $name }.
dish-none = Nel piano non ci sono altri piatti.
dish-unknown = Nel piano non c’è { $name }. C’è { $known }.
dish-name = { $name }
dish-stays = Adesso non si può. Non è cambiato niente.
dish-left = Resta tutto com’era.
dish-start = Hai detto { $said }. Per questa cena è { $when }. Se può aspettare freddo, scrivi che si fa in anticipo.
dish-theirs = Questo è di { $name }. Può cambiarlo o toglierlo solo chi ce l’ha, chi l’ha aggiunto, chi ha fatto il piano o un amministratore.
dish-ready = Hai detto pronto per { $said }. Per questa cena è pronto { $when }. Se può aspettare freddo, scrivi che si fa in anticipo.
dish-said = Hai detto { $said }: scegli quello che più si avvicina, o lascia.
dish-no-plan = Prima il tacchino: dimmi quando si mangia con /plan, poi il resto della tavola.
dish-no-name = Che cos’è, e quanto ci vuole? Così: /plan aggiungi ripieno in forno 45 min a 190
dish-no-time = Quanto ci vuole per { $name }? Così: /plan aggiungi { $name } in forno 45 min a 190
dish-time = Per { $name } va bene da 1 min a 12 h.
dish-setting = { $setting } non è una temperatura per un piatto: da { $low } a { $high }. Così: in forno 45 min a 190
dish-too-many = Sono già { $most } piatti. Prima togline uno: /plan togli …
dish-not-yet = “{ $name }” non è ancora nel piano: prima deve tornare la cena. Poi ridimmelo.
dish-cold = In frigo da { $when }, { $room ->
    [half] mezzo ripiano
    [whole] un ripiano
   *[more] { $shelves } ripiani
}.
dish-iced = In una borsa frigo con ghiaccio da { $when }, con un termometro dentro: sempre a { $cold } o meno.
dish-shelves = { $count ->
    [one] Un ripiano
   *[other] { $count } ripiani
} per la cena, compreso quello della carne. Se ne serve per le cose di ogni giorno, dimmene di meno.
dish-shelves-hint = Il frigo è pieno? Dimmi «il mio frigo ha 3 ripiani» e controllo che ci stia tutto accanto alla carne.
dish-stay = In frigo ({ $name }): da 15 min a 2 giorni, fino a cena.
