# I contorni e il resto della tavola.
dish-added = Aggiunto: { $what }, { $when }.
dish-hot-through = { $target } al centro prima di mangiarlo.
dish-removed = Tolto dal piano: { $name }.
dish-none = Nel piano non ci sono altri piatti.
dish-unknown = Nel piano non c’è { $name }. C’è { $known }.
dish-name = { $name }
dish-stays = Adesso non si può. Non è cambiato niente.
dish-no-plan = Prima il tacchino: dimmi quando si mangia con /plan, poi il resto della tavola.
dish-no-name = Che cos’è, e quanto ci vuole? Così: /plan aggiungi ripieno in forno 45 min a 190
dish-no-time = Quanto ci vuole per { $name }? Così: /plan aggiungi { $name } in forno 45 min a 190
dish-time = Per { $name } va bene da 1 min a 12 h.
dish-setting = { $setting } non è una temperatura per un piatto: da { $low } a { $high }.
dish-too-many = Sono già { $most } piatti. Prima togline uno: /plan togli …
