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
