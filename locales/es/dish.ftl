# Platos junto al ave.
dish-added = Añadido: { $what }, { $when }.
dish-changed = Cambiado: { $what }, { $takes }, { $when }.
dish-changed-at = Cambiado: { $what }, { $takes } a { $setting }, { $when }.
dish-told = { $what }: { $when }, { $takes }.
dish-told-at = { $what }: { $when }, { $takes } a { $setting }.
dish-all-fit = Sí, así planeado cabe todo:
dish-there = { $name } ya está en el plan, { $when }.
dish-button-another = Uno más
dish-hot-through = { $target } en el centro antes de comerlo.
dish-removed = { $name } ya no está en el plan.
dish-none = No hay platos en el plan.
dish-unknown = No hay { $name } en el plan. Hay { $known }.
dish-name = { $name }
dish-stays = Ahora mismo no puede ser. No cambia nada.
dish-left = Todo queda como estaba.
dish-start = Dijiste { $said }. Para esta cena es { $when }. Si puede esperar frío, di que se hace con antelación.
dish-theirs = Es de { $name }. Solo esa persona, quien lo añadió, quien lleva el plan o un administrador puede cambiarlo o quitarlo.
dish-ready = Dijiste listo a { $said }. Para esta cena está listo { $when }. Si puede esperar frío, di que se hace con antelación.
dish-said = Dijiste { $said }: elige lo que más se acerque, o déjalo.
dish-no-plan = Primero el ave: cuéntame la cena con /plan y luego el resto de la mesa.
dish-no-name = ¿Qué es y cuánto tarda? Así: /plan añade relleno al horno 45 min a 190
dish-no-time = ¿Cuánto tarda { $name }? Así: /plan añade { $name } al horno 45 min a 190
dish-time = { $name } puede tardar de 1 min a 12 h.
dish-setting = { $setting } no es temperatura para un plato: de { $low } a { $high }. Así: al horno 45 min a 190
dish-too-many = Ya hay { $most } platos. Quita uno primero: /plan quita …
dish-not-yet = «{ $name }» aún no está en el plan: primero tiene que cuadrar la cena. Luego dímelo otra vez.
dish-cold = { -fridge(form: "In") } desde { $when }, { $room ->
    [half] media { -shelf }
    [whole] una { -shelf }
   *[more] { $shelves } { -shelves }
}.
dish-iced = En una { -cooler } con hielo desde { $when }, con un termómetro dentro: { $cold } o menos todo el tiempo.
dish-shelves = { $count ->
    [one] Una { -shelf }
   *[other] { $count } { -shelves }
} para la cena, contando la del ave. Si lo de cada día necesita sitio, dime menos.
dish-shelves-hint = ¿Queda poco sitio { -fridge(form: "in") }? Dime «mi { -fridge } tiene 3 { -shelves }» y miro que todo quepa junto al ave.
dish-stay = { $name } puede esperar { -fridge(form: "in") } de 15 min a 2 días, hasta la cena.
