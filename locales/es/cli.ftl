### The program in a terminal: help, errors, marks around messages.

cli-script-line = Línea { $line }: { $reason }
cli-script-unknown = «{ $given }» no es un ajuste (zone, locale, room) ni una hora. Empieza con una hora como 2027-11-25 17:00.
cli-script-room = «{ $given }» no es un tipo de sala. Escribe «room group» o «room private».
cli-script-late = «{ $given }» llega tarde o repetido. Pon cada ajuste una vez, antes de la primera hora.
cli-script-time = «{ $given }» no es una hora. Escríbela como 2027-11-25 17:00, con segundos si quieres.
cli-script-earlier = «{ $given }» es anterior a la línea de antes. Pon las líneas por orden de hora.
cli-script-act = «{ $given }» no dice ni pulsa nada. Escribe «Rosa: texto» o «Rosa > Botón».
cli-script-empty = { $given } no dice ni pulsa nada. Añade el texto o el nombre del botón.
cli-script-crowd = Una sala privada es de una persona: { $given } no puede hablar en ella. Escribe «room group».
cli-no-zone = «{ $given }» no es una zona horaria. Usa un nombre como America/Chicago.
cli-no-locale = «{ $given }» no es un idioma. Usa uno como en-US o es-ES.

# Above a rehearsal's lines: who speaks, and to whom. $name is a person.
cli-said-to-all = carvetime
cli-said-to-one = carvetime a { $name }
cli-said-edit-to-all = carvetime (editado)
cli-said-edit-to-one = carvetime a { $name } (editado)
cli-said-notice = carvetime a { $name } (aviso)
cli-no-button = No hay ningún botón «{ $label }». Hay: { $there }.
cli-no-buttons = No hay ningún botón «{ $label }» ni ningún otro.
cli-standstill = Los avisos no paraban. Comunícalo junto con este guion.

# Before a message in the terminal.
cli-only-for = (para { $name })
cli-changed = (cambiado)
cli-you = Tú
cli-hello = Háblame del ave y de la cena, o escribe /help. #1 pulsa un botón, «@Rosa hola» habla como Rosa, Ctrl-D termina.
cli-nothing-to-press = Todavía no hay nada que pulsar.
cli-press = #{ $number } pulsa el botón.
cli-no-number = Ningún botón tiene ese número. Hay: { $there }
cli-file-kept = Guardado: { $path }
cli-file-lost = No he podido guardar { $path }. Revisa el disco y vuelve a pedirlo.

# $what is what the system said.
cli-file-failed = { $path }: { $what }
cli-file-failed-do = Revisa el archivo y su carpeta y vuelve a intentarlo.
cli-failed = Ha fallado: { $what }
cli-failed-do = Inténtalo de nuevo; con RUST_LOG=debug cuenta más.
cli-backed-up = { $rows ->
    [one] Guardada { $rows } fila en { $path }.
   *[other] Guardadas { $rows } filas en { $path }.
}
cli-restored = { $rows ->
    [one] Recuperada { $rows } fila de { $path }.
   *[other] Recuperadas { $rows } filas de { $path }.
}
cli-no-data = Aquí no hay dónde guardar datos. Indica una carpeta con --data.

# Help: what the program and each command do, under one line of a terminal.
cli-about-carvetime = Planea un ave entera para una mesa llena y lleva el plan mientras se asa.
cli-about-chat = Hablar en este terminal; sin cuenta y sin red
cli-about-serve = Funcionar como bot de Telegram; la clave viene de TELOXIDE_TOKEN
cli-about-ask = Responder una pregunta y salir
cli-about-rehearse = Representar un guion con un reloj virtual e imprimir la conversación
cli-about-forecast = Repasar un registro de temperaturas e imprimir la previsión de cada lectura
cli-about-backup = Guardar todo lo que se conserva en un archivo
cli-about-restore = Recuperar una copia en una carpeta de datos vacía
cli-help-data = Carpeta donde se guarda todo
cli-help-locale = Idioma, unidades y reloj, como en-US o es-ES
cli-help-zone = Zona horaria de la cocina, como America/Chicago
cli-help-json = JSON en lugar de texto
cli-help-text = La pregunta, con palabras corrientes
cli-help-file = El archivo
cli-help-bird = Tipo de ave
cli-help-mass = Peso de compra, como "14.2 lb" o "6.4 kg"
cli-help-form = Cómo va; breast es solo la pechuga de pavo
cli-help-stuffed = Va rellena
cli-help-cooker = Qué da el calor
cli-help-pit = Ajuste del horno o ahumador, como "325 F"
cli-help-start = Temperatura del ave al empezar a asarse, como "38 F"
cli-help-breast = Temperatura buscada en la pechuga
cli-help-thigh = Temperatura buscada en el muslo
cli-help-webhook = Telegram entrega en esta dirección https en vez de preguntarle; necesita --listen
cli-help-listen = Dónde escuchar para eso, como 127.0.0.1:8080, detrás de un servidor que hable https
cli-help-health = Dónde se puede preguntar /health y /metrics para vigilarlo, como 127.0.0.1:9090; no es para la red abierta
