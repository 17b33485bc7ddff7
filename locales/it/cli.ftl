### Il programma in un terminale: aiuto, errori, segni intorno ai messaggi.

cli-script-line = Riga { $line }: { $reason }
cli-script-unknown = "{ $given }" non è né un’impostazione (zone, locale, room) né un’ora. Comincia con un’ora come 2027-11-25 17:00.
cli-script-room = "{ $given }" non è un tipo di chat. Scrivi "room group" o "room private".
cli-script-late = "{ $given }" arriva troppo tardi o due volte. Metti ogni impostazione una volta, sopra la prima ora.
cli-script-time = "{ $given }" non è un’ora. Scrivila come 2027-11-25 17:00, anche con i secondi.
cli-script-earlier = "{ $given }" viene prima della riga precedente. Metti le righe in ordine di tempo.
cli-script-act = "{ $given }" non dice e non preme niente. Scrivi "Rosa: testo" o "Rosa > Pulsante".
cli-script-empty = { $given } non dice o non preme niente. Aggiungi il testo o il nome del pulsante.
cli-script-crowd = In una chat privata c’è una persona sola, quindi { $given } non può parlare. Scrivi "room group".
cli-no-zone = "{ $given }" non è un fuso orario. Usa un nome come Europe/Rome.
cli-no-locale = "{ $given }" non è una lingua. Usane una come en-US o it-IT.

cli-said-to-all = carvetime
cli-said-to-one = carvetime a { $name }
cli-said-edit-to-all = carvetime (modificato)
cli-said-edit-to-one = carvetime a { $name } (modificato)
cli-said-notice = carvetime a { $name } (avviso)
cli-no-button = Non c’è nessun pulsante "{ $label }". Ci sono: { $there }.
cli-no-buttons = Non c’è nessun pulsante "{ $label }", né altri.
cli-standstill = I promemoria non finivano più. Segnalalo con questo copione, per favore.

# Prima di un messaggio, nel terminale.
cli-only-for = (per { $name })
cli-changed = (modificato)
cli-you = Tu
cli-hello = Dimmi che cosa cuoci e quando si mangia, o scrivi /help. #1 preme un pulsante, "@Rosa ciao" parla come Rosa, Ctrl-D chiude.
cli-nothing-to-press = Non c’è ancora niente da premere.
cli-press = #{ $number } preme il pulsante.
cli-no-number = Nessun pulsante ha quel numero. Ci sono: { $there }
cli-file-kept = Salvato: { $path }
cli-file-lost = Non ho potuto salvare { $path }. Controlla il disco e chiedi di nuovo.

cli-file-failed = { $path }: { $what }
cli-file-failed-do = Controlla il file e la sua cartella, poi riprova.
cli-failed = Non è riuscito: { $what }
cli-failed-do = Riprova; con RUST_LOG=debug dice di più.
cli-backed-up = { $rows ->
    [one] Scritta { $rows } riga in { $path }.
   *[other] Scritte { $rows } righe in { $path }.
}
cli-restored = { $rows ->
    [one] Ripristinata { $rows } riga da { $path }.
   *[other] Ripristinate { $rows } righe da { $path }.
}
cli-no-data = Qui non c’è un posto per i dati. Indica una cartella con --data.

# Aiuto: che cosa fanno il programma e i comandi, in meno di una riga.
cli-about-carvetime = Pianifica un tacchino intero per tutta la tavola e tiene il piano mentre cuoce.
cli-about-chat = Conversazione in questo terminale; senza account, senza rete
cli-about-serve = Gira come bot di Telegram; il token viene da TELOXIDE_TOKEN
cli-about-ask = Risponde a una domanda ed esce
cli-about-rehearse = Recita un copione su un orologio virtuale e stampa la conversazione
cli-about-forecast = Rivede un registro di temperature e stampa la previsione a ogni lettura
cli-about-backup = Scrive in un file tutto quello che è conservato
cli-about-restore = Riporta una copia in una cartella dei dati vuota
cli-help-data = Cartella in cui è conservato tutto
cli-help-locale = Lingua, unità e orologio, come en-US o it-IT
cli-help-zone = Fuso orario della cucina, come Europe/Rome
cli-help-json = JSON invece di testo
cli-help-text = La domanda, in parole semplici
cli-help-file = Il file
cli-help-bird = Tipo di volatile
cli-help-mass = Peso all’acquisto, come "14.2 lb"
cli-help-form = Come sta; breast è solo il petto di tacchino
cli-help-stuffed = È farcito
cli-help-cooker = Che cosa dà il calore
cli-help-pit = A che temperatura è impostata la cottura, come "325 F"
cli-help-start = Temperatura del volatile a inizio cottura, come "38 F"
cli-help-breast = Temperatura da raggiungere nel petto
cli-help-thigh = Temperatura da raggiungere nella sovracoscia
cli-help-webhook = Telegram consegni a questo indirizzo https invece di essere interrogato; serve --listen
cli-help-listen = Dove ascoltare per questo, come 127.0.0.1:8080, dietro un server che parla https
cli-help-health = Dove chi sorveglia può chiedere /health e /metrics, come 127.0.0.1:9090; non è per la rete aperta
