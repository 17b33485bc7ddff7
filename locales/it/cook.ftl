### Mentre cuoce: la previsione in una riga, i dubbi, gli allarmi, e com’è finita. Si legge con le mani bagnate.

cook-line = Verso le <b>{ $about }</b>, tra le { $from } e le { $to }; { $standing ->
    [spare] { $span } di margine;{" "}
    [tight] al limite, dev’essere fuori entro le { $latest };{" "}
    [late] { $span } di ritardo sull’ora in cui si mangia;{" "}
   *[ahead] {""}
}riguarda alle { $look }.
cook-endless = Verso le <b>{ $about }</b> se va bene, dalle { $from }; con questo calore può finire anche dopo le { $to }; { $standing ->
    [spare] { $span } di margine;{" "}
    [tight] al limite, dev’essere fuori entro le { $latest };{" "}
    [late] { $span } di ritardo sull’ora in cui si mangia;{" "}
   *[ahead] {""}
}riguarda alle { $look }.
cook-done = { $target } dove hai misurato: toglilo dal fuoco quando lo dice anche il punto più interno dell’ala.
cook-spot = { $spot ->
    [breast] Petto
   *[thigh] Sovracoscia
}: { $reached ->
    [yes] c’è.
   *[no] ora { $now }, { $target } verso le { $about } (tra le { $from } e le { $to }).
}
cook-air-read = { $air ->
    [oven] Forno
   *[pit] Camera
}{ $seen ->
    [yes] : { $read } alle { $at }, impostazione { $setting }.
   *[no] : impostazione { $setting }.
}
cook-dinner = A tavola { $dinner }.
cook-decades = Secondo le tabelle pubblicate, calore e tempo fin qui bastano dove misuri. Il traguardo resta { $target }: altri punti possono essere più freddi.
cook-decades-off = Fuori adesso e lasciato { $stand } senza tagliarlo, calore e tempo basterebbero dove misuri, secondo le tabelle pubblicate: { $low } chiede { $hold } in ogni punto, anche nell’ala. Il traguardo resta { $target }: altri punti possono essere più freddi.

cook-in-time-again = Così ci stiamo di nuovo con gli orari.
cook-read-by = { $name } ha misurato.
cook-late-choices = Si può mangiare più tardi, oppure:
cook-late-hotter = • Calore su a { $setting }: così potrebbe essere verso le { $about }. Poi dimmi quanti gradi ci sono dentro.
cook-late-carve = • Stacca cosce e petti e finiscili su una teglia in forno caldo, ogni pezzo a { $target }: i pezzi vanno molto più in fretta. Da calore a calore, senza pause.
cook-button-dinner = Si mangia alle { $at }
cook-button-hotter = Calore a { $setting }
cook-hotter = Ora il piano dice { $setting }. Alza, e tra 20 minuti dimmi quanti gradi ci sono dentro.
# The air was otherwise than set. $since: on (since the bird went on) or at ($from); $setting: what it is set to now.
cook-air-was = { $since ->
    [on] Annotato: { $was } da quando è dentro.
   *[at] Annotato: { $was } dalle { $from }.
}
cook-air-off = { $since ->
    [on] Annotato: senza calore da quando è dentro.
   *[at] Annotato: senza calore dalle { $from }.
}
cook-air-now = Da adesso conto su { $setting }. Dimmi se lo cambi.
cook-start = Annotato: { $at } all’interno quando è entrato.
cook-air-back = Riportalo subito a { $setting }: l’ora conta su questo.
cook-air-burns-on = Allora il calore continua, e il piano anche. Guarda che la fiamma sia accesa; si è spenta? Dimmelo.
cook-air-rising = Sta salendo, quindi il calore c’è: conto di nuovo su { $setting }. Non è così? Dimmelo.
cook-air-low = Il pollame vuole un forno a { $limit } o più. Misura il petto adesso e dimmi quanto segna.
cook-air-cold = Misura il petto adesso e dimmi quanto segna. Sotto { $hot } dopo { $limit } così: da buttare.
cook-air-raw = Un volatile crudo senza calore per { $limit } o più non è più sicuro, comunque lo si cuocia dopo. Da buttare.
cook-early = { $done ->
    [yes] È molto prima delle { $dinner }.
   *[no] È molto prima: si mangia alle { $dinner }.
} Tienilo caldo: avvolto, in forno al minimo o in una borsa termica senza ghiaccio, e deve continuare a segnare { $hot }. Se scende sotto, va mangiato o messo in frigo entro le { $until }. Oppure taglia, raffredda in contenitori bassi e riscalda a { $target }.

# Una lettura che non può essere giusta.
cook-suspect-odd = { $spot ->
    [breast] Petto
    [thigh] Sovracoscia
    [oven] Forno
   *[pit] Camera
} a { $given }? { $slip ->
    [was-celsius] Se erano °C, sono { $meant }.
    [was-fahrenheit] Se erano °F, sono { $meant }.
   *[digit] { $meant } tornerebbe.
}
cook-suspect-impossible = { $spot ->
    [breast] Petto
    [thigh] Sovracoscia
    [oven] Forno
   *[pit] Camera
} a { $given }? Mi sembra impossibile.
cook-suspect-ask = Non l’ho contata. Segna davvero così?
cook-suspect-meant = Sono { $parts }
cook-suspect-meant-all = Usa quelle corrette
cook-suspect-dropped = Lasciata fuori. Rimandala con quello che segna adesso.

# ---- allarmi
cook-alarm-fire = { $cooker ->
    [smoker] <b>Il fuoco si sta spegnendo:</b> camera a { $pit } e non risale. Combustibile e aria subito, coperchio chiuso. Tra 15 minuti dimmi che cosa segna la camera.
   *[oven] <b>Il forno perde calore:</b> { $pit } invece di { $setting }. È acceso, lo sportello è chiuso? Tra 15 minuti dimmi che cosa segna.
}
cook-alarm-hot = { $cooker ->
    [smoker] La camera si scalda troppo: { $pit } invece di { $setting }. Chiudi un po’ le prese d’aria; alluminio su quel che scurisce troppo in fretta.
   *[oven] Il forno è troppo caldo: { $pit } invece di { $setting }. Abbassa; alluminio su quel che scurisce troppo in fretta.
}
cook-alarm-sag = { $cooker ->
    [smoker] L’affumicatore cala: { $pit } dove è impostato { $setting }. Coperchio appena aperto? Riguarda tra 10 minuti. Se no, combustibile e un po’ più d’aria, coperchio chiuso. Resta fuori: monossido di carbonio.
   *[oven] Il forno cala: { $pit } dove è impostato { $setting }. Porta appena aperta? Riguarda tra 10 minuti. Se no, controlla che sia acceso e chiuso, e alzalo un po’.
}
cook-alarm-moved = { $spot ->
    [breast] La lettura del petto ha fatto un salto. La sonda è ancora nel punto più spesso, lontana dall’osso?
    [thigh] La lettura della sovracoscia ha fatto un salto. La sonda è ancora nel punto più interno, lontana dall’osso?
    [oven] La lettura del forno ha fatto un salto. Il termometro si è spostato?
   *[pit] La lettura della camera ha fatto un salto. Il termometro si è spostato?
} Sistemala e mandami che cosa segna.
cook-doubting = Misura in un altro punto, ben dentro la carne e lontano dall’osso. Se il numero era sbagliato, annullalo; se no, vale.
cook-alarm-behind = { $spot ->
    [breast] Il petto
   *[thigh] La coscia
} è molto più indietro di quanto { $setting } faccia fin qui. { $cooker ->
    [smoker] Il fuoco è caldo, la punta è ben dentro la carne? Misura anche altrove. Era spento? Dimmi per quanto: «spento 40 min».
   *[oven] Il forno è caldo, la punta è ben dentro la carne? Misura anche altrove. Era spento? Dimmi per quanto: «spento 40 min».
}
cook-alarm-ahead = { $spot ->
    [breast] Il petto
   *[thigh] La coscia
} è molto più avanti di quanto { $setting } faccia fin qui: la punta tocca l’osso o è sotto la pelle? Misura altrove, ben dentro.
cook-alarm-apart = Petto e sovracoscia distano { $apart }. Una delle due sonde è messa male: controllale entrambe, lontane dall’osso, fuori dalla cavità.
cook-alarm-stalled = { $spot ->
    [breast] Il petto
   *[thigh] La sovracoscia
} segna { $at } da { $since }. { $low ->
    [yes] In un affumicatore a bassa temperatura può essere lo stallo: la pelle suda tanto quanto si scalda. Una camera più calda lo supera.
   *[no] La sonda è dove deve stare? Un secondo termometro lo dice.
}
cook-alarm-zone = <b>La camera è sotto { $low } da { $span }</b>, e la carne è a { $spot }. Sotto { $hot } i batteri crescono: alza subito il calore, o sposta tutto in un forno. Il limite è due ore così.
cook-alarm-zone-over = <b>La camera è sotto { $low } da { $span }</b>, e la carne è a { $spot }. È oltre il limite di due ore. Io non la servirei.
cook-alarm-long = { $spot ->
    [thigh] La sovracoscia
   *[breast] Il petto
} segna { $at } dopo { $span }. A bassa temperatura dovrebbe superare { $hot } entro { $most }: è pratica comune, non una cifra ufficiale. Più calore, o un forno a { $oven }, e ci arriva.
cook-alarm-falling = { $spot ->
    [thigh] <b>La sovracoscia si sta raffreddando:</b>
   *[breast] <b>Il petto si sta raffreddando:</b>
} { $from }, ora { $to }. { $cooker ->
    [smoker] Il fuoco è spento? Subito combustibile e aria, oppure passa il volatile in un forno caldo.
   *[oven] Il forno è acceso, lo sportello chiuso? Se no, in un altro forno caldo.
} Sotto { $hot } i batteri crescono: due ore così sono il limite. Mandami la prossima lettura tra 10 minuti.
cook-alarm-falling-over = { $spot ->
    [thigh] <b>La sovracoscia si raffredda da { $span }:</b>
   *[breast] <b>Il petto si raffredda da { $span }:</b>
} { $from }, ora { $to }. È oltre il limite di due ore sotto { $hot }. Io non lo servirei.
cook-falling = Nessun orario finché si raffredda: prima deve tornare il calore.
cook-alarm-hold = Fuori dal fuoco dalle { $off }. Misura: { $hot } o più, e può aspettare. Meno, e va mangiato o messo in frigo entro le { $until }.
cook-alarm-hold-read = Ultima lettura calda alle { $off }. Misura di nuovo: { $hot } o più, e può aspettare. Meno, e va mangiato o messo in frigo entro le { $until }.
cook-held-unread = Ancora caldo? Non ho letture dalle { $off }. Misura subito petto e coscia: { $hot } o più in tutti e due, e lo è. Meno, e si butta.
# A bird carried hot to another house. $hot: 140 °F; $off: when it was last known to be hot; $by: two hours later.
cook-hot-by = Se segna meno: mangiato entro le { $by }, gli avanzi subito in frigo. Più tardi non servirlo.
cook-measure-first = Prima misura petto e coscia e dimmelo: da { $hot } in su le due ore contano da lì, se no dalle { $off }.
cook-hot-dinner-late = Le sue due ore finiscono alle { $by }, prima di cena: deve restare a { $hot } o più. Se no, si mangia prima.
cook-hot-still = Ancora { $hot } o più in tutti e due: bene, può aspettare finché segna così. Dall’ultima lettura così ha { $most }.
cook-hot-one = Lì è abbastanza caldo. Contano tutti e due, petto e coscia: misura anche l’altro.
cook-hot-below = È sotto { $hot }. Per quanto mi è stato detto, era caldo fino alle { $off }: mangiato entro le { $by }, gli avanzi subito in frigo.
cook-hot-over = È sotto { $hot }, e sono passate più di { $most } dalle { $off }, l’ultima volta che si sapeva caldo. Io non lo servirei.
# Di nuovo al caldo nell'altra casa.
cook-hot-in = Di nuovo al caldo dalle { $at }, prima che finissero le due ore: bene. Resta dentro finché petto e coscia segnano { $target }, poi si mangia. Dimmi i numeri.
cook-hot-in-more = Non ancora: resta dentro finché petto e coscia segnano { $target } tutti e due.
cook-hot-in-there = { $target } in tutti e due: taglialo e mangiate. Gli avanzi in frigo entro le { $by }.
cook-hot-in-table = È tornato al caldo alle { $at }: si taglia quando petto e coscia segnano { $target }.
cook-hot-too-late = Le sue due ore sono finite alle { $by }, prima di scaldarlo. Il calore non rimedia più: si butta, non servirlo.
cook-hot-needs = Petto e coscia a { $hot } o più: no, taglialo così, entro le { $by }. Meno: in forno prima di allora, finché tutti e due segnano { $target }.
cook-hot-needs-no = No: segnano { $hot } o più tutti e due. Taglialo così, mangiato entro le { $by }.
cook-cooled-counter = { $at }. Qualunque cosa segni, va in frigo entro le { $by }, in recipienti bassi: restano { $left }.
cook-cooled-unsaid = { $at } è abbastanza freddo solo se era in frigo entro { $by }. Se no, si butta.
cook-cooled-cold = { $at }: abbastanza freddo, da tenere e da portare. Resti a { $cold } o meno.
cook-cooled-fridge = { $at }: si raffredda ancora. Per { $by } dovrebbe segnare { $cold } o meno: recipienti bassi, distanti, coperchi appena appoggiati.
cook-cooled-warm = { $at } dopo { $span } in frigo è troppo. Controlla il frigo; quello che è stato più di due ore sopra { $cold } nessuno può dirlo sicuro. Nel dubbio, buttalo.
cook-cooled-packed = { $at } è sopra { $cold }. Più di { $most } sopra, in tutto, e si butta, anche se nessuno sa quanto. Se no, ghiaccio intorno, o subito al caldo, a { $target } dappertutto.
cook-reheat-on = { $at }: avanti, fino a { $target } dappertutto, misurati nel pezzo più spesso.
cook-reheat-there = { $at }: lì ci siamo. Lo stesso al centro di ogni recipiente, poi in tavola.
cook-reheat-only = Vale solo se era in frigo entro { $by }; nessuno l’ha detto. Il calore non rimedia.
cook-gone = Quello è rimasto fuori troppo a lungo e si butta, qualunque cosa segni. Mi dispiace. Non c’è più niente da fare.
cook-tossed = Era giusto, e mi dispiace. Per quel volatile non chiamo più.
cook-tossed-rest = Era giusto. Per quello non chiamo più.
cook-tossed-raw = Per quel volatile non chiamo più.
cook-new-bird = Quando c’è un altro volatile, dimmi quanto pesa e se è fresco o surgelato: pianifico la stessa cena.
cook-setting = Il piano dice { $setting }.
cook-standing = Fuori dal fuoco dalle { $off }: tagliato, mangiato e in frigo entro le { $by }, salvo che resti a { $hot } o più.
cook-hot-day = { $at } intorno: sopra { $air } è un’ora in tutto fuori dal caldo e dal frigo, non due. Ne tengo conto.
cook-hot-day-off = { $at } intorno: sopra { $air } è un’ora, non due. Mangiato o in frigo entro { $by }.

# ---- dopo
cook-after = Alle { $when } avevo detto verso le { $about } (tra le { $from } e le { $to }); tolto alle { $off }.

# ---- il grafico. Etichette accanto alle curve; una parola ciascuna.
cook-chart = { $what ->
    [breast] Petto
    [thigh] Sovracoscia
    [oven] Forno
    [pit] Camera
    [dinner] Tavola
   *[done] Pronto circa
}
cook-chart-number = { $number }

# ---- un registro mandato come file.
cook-log-noted = { $count ->
    [one] Una lettura da { $name }, alle { $from }.
   *[other] { $count } letture da { $name }, dalle { $from } alle { $to }.
}
cook-log-nothing = Dall’inizio della cottura alle { $on } non c’è niente di nuovo.
cook-log-not-on = Quando è cominciata la cottura? Prima dimmi questo, poi rimanda il registro.
cook-log-full = Tengo { $most } letture per volatile, e sono piene. Da qui leggi tu il termometro: { $target } dappertutto.
cook-log-large = Il file è troppo grande: al massimo 2 MB. Riducilo a questa cottura.
cook-log-lost = Non sono riuscito a prendere il file. Mandalo ancora una volta.
cook-odd = { $count ->
    [one] Una lettura non può essere giusta; non conta.
   *[other] { $count } letture non possono essere giuste; non contano.
}
cook-not-done = Non ancora: { $spot ->
    [thigh] la coscia
    [wing] l’ala
    [stuffing] il ripieno
   *[breast] il petto
} segnava { $read } alle { $at }. Cotto vuol dire { $target } in petto, coscia e ala.
cook-done-unread = Lo dice solo un termometro: { $target } nel punto più spesso del petto, all’interno della coscia e nell’ala. Quanto segna?
cook-eat = Sì: { $target } in petto, coscia e ala. Mangiato o in frigo entro le { $by }.
cook-eat-unread = Se petto, coscia e ala hanno segnato { $target }, sì. Se non lo sai, misura ora. Mangiato o in frigo entro le { $by }.
cook-back-in = Allora torna in cottura, fino a { $target } in petto, coscia e ala.
cook-pink-read = Petto, coscia e ala hanno segnato { $target }. Decide quello, qualunque sia il colore. Nel dubbio misura ancora nel punto più spesso del petto, nel più interno della sovracoscia e nell’ala: se da qualche parte segna meno, torna in forno.
cook-pink-unread = Colore e succhi non provano niente, rosa o limpidi, e nessuno ha misurato. Misura adesso, prima che qualcuno mangi: { $target } nel punto più spesso del petto, nel più interno della sovracoscia e nell’ala. Se da qualche parte segna meno, torna in forno.
cook-no-butter = Qualcuno non può avere latte: olio, niente burro.
