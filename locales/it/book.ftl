# Che cosa può andare storto con i dati su disco: che cosa è successo, che cosa fare.
book-locked = Un altro Carvetime sta usando { $path }.
book-locked-do = Prima fermalo, o scegli un’altra cartella con --data.
book-disk = { $path } non si può usare: { $reason }.
book-disk-do = Controlla lo spazio sul disco e i permessi della cartella, poi riavvia.
book-damaged = I dati salvati sono danneggiati ({ $detail }).
book-damaged-do = Sposta la cartella dei dati, conservala, e ripristina una copia con: carvetime restore FILE
book-newer = I dati salvati vengono da un Carvetime più recente.
book-newer-do = Usa quella versione o una successiva.
book-file-exists = { $path } esiste già.
book-file-exists-do = Scegli un altro nome; non è stato sovrascritto niente.
book-not-empty = { $path } contiene già dei dati.
book-not-empty-do = Scegli una cartella vuota con --data; non è cambiato niente.
book-bad-backup = { $path } non è una copia intera: la riga { $line } non si può usare.
book-bad-backup-do = Usa un’altra copia; non è cambiato niente.
book-recovered = I dati salvati erano danneggiati e restano in { $aside }. Ho ripreso dall’esportazione { $export }; { $missing ->
    [0] non risulta che manchi qualcosa venuto dopo.
    [one] manca un messaggio venuto dopo, sentito o mandato.
   *[other] mancano { $missing } messaggi venuti dopo, sentiti o mandati.
}
