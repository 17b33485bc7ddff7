# What can go wrong with the data on disk. Pairs: what happened, what to do. Shown in a terminal.
# $path is a file or folder.
book-locked = Otro Carvetime está usando { $path }.
book-locked-do = Ciérralo antes, o elige otra carpeta con --data.
# $reason comes from the operating system, in its own words.
book-disk = No se puede usar { $path }: { $reason }.
book-disk-do = Revisa el espacio libre y los permisos de la carpeta, y vuelve a empezar.
# $detail says where, for a report.
book-damaged = Los datos guardados están dañados ({ $detail }).
book-damaged-do = Aparta la carpeta de datos, consérvala y recupera una copia con: carvetime restore FILE
book-newer = Los datos guardados son de un Carvetime más nuevo.
book-newer-do = Usa esa versión o una posterior.
book-file-exists = { $path } ya existe.
book-file-exists-do = Elige otro nombre; no se ha sobrescrito nada.
book-not-empty = { $path } ya contiene datos.
book-not-empty-do = Elige una carpeta vacía con --data; no se ha cambiado nada.
# $line is the number of the line in the file.
book-bad-backup = { $path } no es una copia completa: la línea { $line } no se puede usar.
book-bad-backup-do = Usa otra copia; no se ha cambiado nada.
# $aside: where the damaged data lie; $export: what took their place.
book-recovered = Los datos guardados estaban dañados y quedan en { $aside }. Sigo desde la copia { $export }; { $missing ->
    [0] no consta que falte nada de lo que vino después.
    [one] falta un mensaje de los que vinieron después, oídos o enviados.
   *[other] faltan { $missing } mensajes que vinieron después, oídos o enviados.
}
