# Platos junto al ave.
dish-added = Añadido: { $what }, { $when }.
dish-hot-through = { $target } en el centro antes de comerlo.
dish-removed = { $name } ya no está en el plan.
dish-none = No hay platos en el plan.
dish-unknown = No hay { $name } en el plan. Hay { $known }.
dish-name = { $name }
dish-stays = Ahora mismo no puede ser. No cambia nada.
dish-no-plan = Primero el ave: cuéntame la cena con /plan y luego el resto de la mesa.
dish-no-name = ¿Qué es y cuánto tarda? Así: /plan añade relleno al horno 45 min a 190
dish-no-time = ¿Cuánto tarda { $name }? Así: /plan añade { $name } al horno 45 min a 190
dish-time = { $name } puede tardar de 1 min a 12 h.
dish-setting = { $setting } no es temperatura para un plato: de { $low } a { $high }.
dish-too-many = Ya hay { $most } platos. Quita uno primero: /plan quita …
