# Quel che dice solo il lato Telegram.

telegram-sorry = Qualcosa è andato storto da parte mia e non ho capito. Me lo dici in un altro modo?
telegram-sorry-bell = Un mio promemoria è andato storto. Guarda /board, per favore.
telegram-unreachable = { $person }, in privato non posso scriverti, quindi te lo dico qui:
telegram-share-place = Condividi la mia posizione

# Esempi di domande: il bot deve saperle leggere.
telegram-inline-salt = 2 cucchiai di sale fino in sale kosher in fiocchi
telegram-inline-bird = sale per un tacchino da 5,5 kg
telegram-inline-safe = tacchino fuori dal frigo 3 ore, va bene?
telegram-inline-unread = Chiedimelo in privato

# Perché il servizio non è partito o si è fermato. In un terminale.
telegram-no-token = Manca il token del bot.
telegram-no-token-do = Imposta TELOXIDE_TOKEN con quello ricevuto per il tuo bot.
telegram-bad-token = Telegram non accetta il token del bot.
telegram-bad-token-do = Controlla TELOXIDE_TOKEN, o fattene dare uno nuovo.
telegram-other-bot = Questi dati sono di un altro bot.
telegram-other-bot-do = Avvia con il token di quel bot, o scegli una cartella vuota con --data.
telegram-conflict = Un altro programma sta girando con questo bot.
telegram-conflict-do = Fermane uno dei due: si ruberebbero i messaggi a vicenda.
telegram-bad-url = TELOXIDE_API_URL non è un indirizzo web: { $url }.
telegram-bad-url-do = Scrivilo come http://localhost:8081, o non impostarlo.
telegram-no-api = A { $url } non c’è nessuna API dei bot: quella pagina non esiste.
telegram-no-api-do = Controlla TELOXIDE_API_URL; senza, vale quella di Telegram.
telegram-bad-webhook = Telegram non consegna a { $url }.
telegram-bad-webhook-do = Usa un indirizzo https pubblico sulla porta 443, 80, 88 o 8443.
telegram-listen = Non riesco ad ascoltare su { $address }: { $reason }.
telegram-listen-do = Scegli un altro indirizzo con --listen, o ferma chi ascolta lì.
telegram-system = Il sistema non ha dato thread, segnali o rete.
telegram-system-do = Riavvia; con RUST_LOG=carvetime=debug dice di più.

# Il menu dei comandi: poche parole, senza punto. Meno di 60 caratteri.
telegram-command-plan = Prepara il piano, o rivedilo
telegram-command-board = Cosa c’è da fare, a chi tocca, quando si mangia
telegram-command-salt = Quanto sale, e un sale al posto di un altro
telegram-command-ask = Una domanda veloce di cucina
telegram-command-log = Segna le letture del termometro
telegram-command-when = Quando sarà pronto
telegram-command-move = Sposta l’ora in cui si mangia
telegram-command-take = Prendi un compito
telegram-command-drop = Restituisci un compito
telegram-command-undo = Annulla l’ultima modifica
telegram-command-export = Calendario, letture, tutto
telegram-command-stop = Chiudi il piano
telegram-command-forget = Cancella quello che conservo qui
telegram-command-settings = Lingua, unità, fuso orario
telegram-command-help = Come funziona

# La pagina del bot prima che qualcuno scriva. Meno di 500 caratteri.
telegram-description = Dimmi che cosa cuoci e quando si mangia: peso, fresco o congelato, giorno e ora, quante persone. Calcolo scongelamento, sale, fuoco e riposo, avviso chi ha il compito e seguo il tuo termometro fino al taglio. In una chat privata o in un gruppo con tutta la famiglia.
# Sul profilo del bot. Meno di 110 caratteri.
telegram-short-description = Porta un tacchino intero in tavola all’ora giusta, che a cucinare sia uno solo o tutta la famiglia.
