### La conversación, donde México la dice de otra manera.

room-button-later = Al rato
room-left = { $name } ya se fue. Quedan libres: { $jobs }.
room-skipped-by = { $name } se saltó: { $what }.
room-missed = Mientras no estuve tocaba esto: { $what }. /board muestra lo que aún importa.
room-undo-stale = Desde entonces pasó algo más. /undo deshace primero lo más nuevo.
room-log-on-unsaid = Nadie me dijo que el ave ya se está asando. ¿Es así?
room-ice = Qué bueno que revisaste. Sigue en el refri, y desde { $when } lo termina el agua fría; luego directo a asar.
room-ice-now = Qué bueno que revisaste. Entonces termina ahora en agua fría, en una bolsa bien cerrada; luego directo a asar.
room-ice-roast = Qué bueno que revisaste. El agua tardaría demasiado: a las { $when } va al horno tal cual, sin relleno.
room-ice-roast-now = Qué bueno que revisaste. El agua tardaría demasiado: al horno ya, tal cual, sin relleno.
room-settings-salt-none = Tu sal: todavía no me la dices
room-spoons-us = EE. UU. (4.93 / 14.8 / 237 ml)
room-settings-pick-zone = ¿Dónde está la cocina? Escribe una ciudad o una zona horaria, «Monterrey» o «America/Mexico_City», o mándame tu ubicación. El lugar no se guarda.
room-settings-pick-zone-group = ¿Dónde está la cocina? Dímelo con «/settings Monterrey»; también vale una zona como «America/Mexico_City».
room-zone-unknown = No conozco «{ $text }» como lugar. ¿Una ciudad más grande cerca, o una zona como «America/Mexico_City»?
