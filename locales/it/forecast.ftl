### La previsione: quando è pronto, che cosa c’è da chiedere, perché il margine è ampio.

forecast-line = { $at }: pronto dopo { $done } (da { $from } a { $to })
forecast-line-done = { $at }: alla temperatura giusta (tempo vero circa { $done }, da { $from } a { $to })
forecast-progress = { $done } letture di { $all }

forecast-suspect-meant = { $place ->
    [breast] Petto { $given }? O { $meant }? Non l’ho contata.
    [thigh] Sovracoscia { $given }? O { $meant }? Non l’ho contata.
    [oven] Forno { $given }? O { $meant }? Non l’ho contata.
   *[pit] Camera { $given }? O { $meant }? Non l’ho contata.
}
forecast-suspect = { $place ->
    [breast] Petto { $given } non può essere. Riguarda; non l’ho contata.
    [thigh] Sovracoscia { $given } non può essere. Riguarda; non l’ho contata.
    [oven] Forno { $given } non può essere. Riguarda; non l’ho contata.
   *[pit] Camera { $given } non può essere. Riguarda; non l’ho contata.
}

# Perché il margine è ampio.
forecast-doubt-no-readings = Ancora nessuna lettura: questo è solo quel che succede di solito.
forecast-doubt-unread = { $place ->
    [breast] Nel petto non è stato ancora misurato niente.
   *[thigh] Nella sovracoscia non è stato ancora misurato niente.
}
forecast-doubt-pit-unread = Nessuno misura la temperatura dentro: prendo quella impostata.
forecast-doubt-gap = { $span } senza letture: meno certo.
forecast-doubt-fire-dying = La camera è scesa a { $pit } e non risale. Guarda il fuoco.
forecast-doubt-probe-moved = { $place ->
    [breast] La lettura del petto ha fatto un salto: sonda spostata, sull’osso o nella cavità? Meno certo.
    [thigh] La lettura della sovracoscia ha fatto un salto: sonda spostata, sull’osso o nella cavità? Meno certo.
    [oven] La lettura del forno ha fatto un salto: termometro spostato? Meno certo.
   *[pit] La lettura della camera ha fatto un salto: termometro spostato? Meno certo.
}
forecast-doubt-probes-disagree = Petto e sovracoscia distano { $by }. Controlla dove stanno le due punte.
forecast-doubt-changed = { $place ->
    [breast] Il petto si scalda in modo diverso da prima (alluminio, coperchio, spostato?). Meno certo.
   *[thigh] La sovracoscia si scalda in modo diverso da prima (alluminio, coperchio, spostata?). Meno certo.
}
forecast-doubt-behind = { $place ->
    [breast] Il petto è molto più freddo del solito a questo punto: non è sicuro.
   *[thigh] La coscia è molto più fredda del solito a questo punto: non è sicuro.
}
forecast-doubt-ahead = { $place ->
    [breast] Il petto è molto più caldo del solito: la punta tocca l’osso o è sotto la pelle? Meno sicuro.
   *[thigh] La coscia è molto più calda del solito: la punta tocca l’osso o è sotto la pelle? Meno sicuro.
}
forecast-doubt-part-frozen = È andato in cottura con del ghiaccio dentro: meno certo.
forecast-doubt-unusual = Di volatili così ne ho visti pochi: meno certo.
forecast-doubt-endless = Con questo calore potrebbe non arrivarci mai. Alza la temperatura.

# Righe di un registro che non si leggono.
forecast-csv-empty = Riga { $line }: nessuna lettura. Un registro ha un’intestazione come minutes,pit_f,breast_f,thigh_f e una riga per lettura.
forecast-csv-no-time = Riga { $line }: manca la colonna del tempo. Chiamane una minutes o time.
forecast-csv-no-spot = Riga { $line }: manca la colonna di una temperatura. Chiamale pit_f, breast_f, thigh_f (o _c).
forecast-csv-twice = Riga { $line }: "{ $given }" c’è due volte. Tienine una.
forecast-csv-no-number = Riga { $line }: "{ $given }" non è un numero che posso usare. Senza lettura, lascia la cella vuota.
forecast-csv-no-clock = Riga { $line }: "{ $given }" non è un’ora. Scrivila come 14:05.
forecast-csv-earlier = Riga { $line }: { $given } viene prima della riga precedente. Metti le righe in ordine di tempo.
forecast-csv-too-long = Riga { $line }: più letture dei secondi di un giorno. Riduci il registro a una sola cottura.

# Opzioni del comando.
forecast-flag-mass = --mass: "{ $given }" non è un peso. Scrivilo come "14.2 lb" o "6.4 kg".
forecast-flag-mass-range = --mass: { $given } non è il peso di un volatile. Scegli da { $low } a { $high }.
forecast-flag-temperature = { $flag }: "{ $given }" non va. Scrivi una temperatura da { $low } a { $high }, come "325 F".
