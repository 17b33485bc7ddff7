### Repartir el trabajo.

sharing-give-waiting = Ya le pregunté a { $name }.
sharing-left-host = { $name } ya se fue. Ahora { $heir } responde por la cena.
sharing-moved = Se movió tu tarea:
