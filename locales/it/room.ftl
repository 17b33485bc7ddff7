### La conversazione: piano, lavagna, compiti, impostazioni. Breve come un messaggio; si legge con le mani bagnate.

# ---- pulsanti
room-button-accept = Accetta
room-button-change = Cambia
room-button-done = Fatto
room-button-later = Più tardi
room-button-skip = Salta
room-button-take = Prendo io
room-button-undo = Annulla
room-button-yes = Sì
room-button-no = No
room-button-back = Indietro
room-button-discard = Lascia stare
room-button-why = Perché questi orari?
room-button-jobs = Dividere i compiti

# ---- inizio e aiuto
room-start = Tengo il piano di un tacchino, o di un altro volatile intero: dalla spesa all’ultimo avanzo. Faccio i conti di sale, scongelamento e cottura, e ti chiamo quando tocca fare qualcosa. Da dove cominciamo?
room-start-group = Ciao a tutti. Tengo il piano della cottura: chi fa che cosa, e quando. Cominciate con <b>/plan</b> e una frase, come “/plan tacchino congelato da 6,5 kg, si mangia giovedì alle 17, 11 persone, forno”. Vedo solo comandi, risposte a me e pulsanti.
room-start-button-plan = Fare un piano
room-start-button-salt = Quanto sale?
room-start-button-safe = È sicuro?
room-how = Dimmi che volatile è, quando si mangia e in quanti siete. Calcolo scongelamento, sale, frigo e cottura, chiamo chi è di turno quando tocca, e rifaccio il piano se qualcosa va storto. Mentre cuoce mandami le temperature: ti dico quando sarà pronto. E chiedi quello che vuoi. I comandi: /help.
room-help-plan = Dimmi che volatile è, il giorno e chi viene. Per esempio:
    “tacchino congelato da 6,5 kg, si mangia giovedì alle 17, 11 persone, affumicatore a 165”
    Quello che manca te lo chiedo io.
room-help-salt = Chiedi come chiederesti a un amico. Per esempio:
    “sale per un tacchino da 5,5 kg”
    “2 cucchiai di sale fino in sale kosher in fiocchi”
    “il mio sale: 1/4 di cucchiaino è 0,7 g” e da lì in poi uso il tuo.
room-help-safe = Chiedi con i numeri che hai. Per esempio:
    “70 °C per 2 minuti è sicuro?”
    “tacchino fuori dal frigo 3 ore, va bene?”
    “quanto durano gli avanzi?”
    Nel dubbio, l’ultima parola è dell’autorità per la sicurezza alimentare del tuo paese.
room-help = <b>/plan</b> comincia un piano, o mostra quello che hai
    <b>/board</b> che cosa viene dopo e a chi tocca
    <b>/salt</b> dosi e conversioni
    <b>/ask</b> qualsiasi domanda veloce
    <b>/log</b> segna le temperature: “petto 53, sovracoscia 61”
    <b>/when</b> quando sarà pronto
    <b>/move</b> si mangia a un’altra ora: “/move 18:00”
    <b>/take</b> e <b>/drop</b> per dividersi i compiti
    <b>/undo</b> annulla l’ultima modifica
    <b>/export</b> il piano per il calendario, e tutto quello che conservo
    <b>/settings</b> lingua, unità, fuso orario
    <b>/stop</b> chiude il piano, <b>/forget</b> cancella quello che conservo
room-unread = Non ho capito. Prova { $stage ->
    [draft] “cena alle 18”, “12 persone”, “senza sale”, o tocca un pulsante
    [ahead] “fatto” quando una cosa è fatta, “taglio io”, “cena un’ora più tardi”, o una domanda
    [alone] “fatto” quando una cosa è fatta, “cena un’ora più tardi”, o una domanda
    [cooking] “petto 65, coscia 70”, “quando?”, “sfornato” quando lo è, o una domanda
    [after] “gli avanzi sono in frigo”, una domanda come “quanto durano gli avanzi”, o /help
   *[none] “tacchino congelato da 6,5 kg, si mangia domenica alle 17”, una domanda come “sale per un tacchino da 5,5 kg”, o /help
}.
room-unreadable = So leggere solo il testo. Me lo scrivi?
room-no-plan = Non c’è ancora un piano. Comincialo con una frase, come “/plan tacchino congelato da 6,5 kg, si mangia domenica alle 17, 10 persone, forno”.
room-stale = Quel pulsante è di un piano precedente. /board mostra a che punto siamo.
room-not-yours = A questo deve rispondere un’altra persona.
room-not-here = Non sei in quella chat, quindi non posso cambiare il suo piano.
room-flooded = Troppo tutto insieme: ho smesso di leggere. Dammi un minuto.
room-need-person = Qui non capisco chi sei. Scrivi con il tuo nome e riprova.
room-may-host = Può farlo solo { $name }, che ha cominciato il piano, o un amministratore.
room-may-not = Può farlo solo un amministratore di questa chat.

# ---- un volatile, un forno
room-bird = { $kind ->
    [turkey-breast] petto di tacchino
    [chicken] pollo
    [capon] cappone
    [duck] anatra
    [goose] oca
   *[turkey] tacchino
}{ $condition ->
    [frozen] {" "}{ $kind ->
        [duck] congelata
        [goose] congelata
       *[turkey] congelato
    }
    [part-thawed] {" "}a metà scongelamento
   *[fresh] {""}
} da { $mass }{ $form ->
    [stuffed] , { $kind ->
        [duck] farcita
        [goose] farcita
       *[turkey] farcito
    }
    [flat] , { $kind ->
        [duck] aperta a libro
        [goose] aperta a libro
       *[turkey] aperto a libro
    }
    [pieces] {" "}a pezzi
   *[whole] {""}
}
room-heat = { $cooker ->
    [fan-oven] forno ventilato a { $setting }
    [smoker] affumicatore a { $setting }
   *[oven] forno a { $setting }
}
room-birds = { $count } × { $bird }

# ---- chiedere quello che manca
room-known = Fin qui: { $parts }.
room-known-mass = { $mass }
room-known-bird = { $kind ->
    [turkey-breast] petto di tacchino
    [chicken] pollo
    [capon] cappone
    [duck] anatra
    [goose] oca
   *[turkey] tacchino
}{ $condition ->
    [frozen] {" "}{ $kind ->
        [duck] congelata
        [goose] congelata
       *[turkey] congelato
    }
    [part-thawed] {" "}a metà scongelamento
    [fresh] {" "}{ $kind ->
        [duck] fresca
        [goose] fresca
       *[turkey] fresco
    }
   *[unknown] {""}
}
room-known-form = { $form ->
    [pieces] a pezzi
   *[flat] aperto a libro
}
room-known-guests = { $guests ->
    [one] una persona
   *[other] { $guests } persone
}
room-known-salt = { $how ->
    [none] senza sale
    [bold] più sale
   *[light] meno sale
}
room-known-dinner = a tavola { $when }
room-known-start = in cottura { $when }
room-known-use-by = da consumare entro { $day }
room-known-shop = spesa { $when }
# $start: the hour somebody said; $on: the plan’s.
room-proposal-start = Hai detto in cottura { $start }. Per questa cena va in cottura { $on }.
room-shop-not = La spesa { $said } non va bene: compralo { $when }.
room-proposal-dish = { $dish }
room-proposal-beside = Quando accetti, aggiungo: { $dishes }.
room-known-drive = { $drive } di strada
room-ask-zone = Dov’è la cucina? Basta una città o un fuso orario: “Bologna”, “Europe/Rome”.
room-ask-dinner = Quando si mangia? Giorno e ora: “giovedì alle 17”.
room-ask-dinner-hour = A che ora si mangia? “17:30”
room-ask-dinner-day = Che giorno? “giovedì”, “25 novembre”
room-ask-size = Quanto pesa, o in quanti siete? “6,5 kg” o “11 persone”
room-ask-weight = Quanto pesa il nuovo? È sull’etichetta: “6,5 kg”.
room-ask-condition = È congelato?
room-ask-cooker = Dove lo cuoci?
room-ask-drive = Quanto dura il viaggio?
room-ask-change = Che cosa cambiamo? Tocca un pulsante, o dillo e basta: “si mangia alle 18”, “7 kg”, “14 persone”.
room-condition-frozen = Congelato
room-condition-fresh = Fresco o scongelato
room-condition-part-thawed = Scongelato a metà
room-cooker-oven = Forno
room-cooker-fan-oven = Forno ventilato
room-cooker-smoker = Affumicatore
room-drive-15 = 15 min
room-drive-30 = 30 min
room-drive-60 = 1 ora
room-change-no-salt = Senza sale
room-change-dry-salt = Sale a secco
room-change-fridge = Scongela in frigo
room-change-cold-water = Scongela in acqua fredda
room-change-ahead = Cuoci il giorno prima
room-change-same-day = Cuoci il giorno stesso
room-change-hot = Portalo caldo
room-change-cold = Portalo freddo
room-change-there = Cuocerlo lì
room-change-home = a casa
room-kept = Il resto rimane com’è. { $known }
room-plan-unread = In “{ $text }” non ho trovato né un volatile né un giorno. Prova “tacchino congelato da 6,5 kg, si mangia domenica alle 17, 10 persone”.

# ---- la proposta
room-proposal-head = <b>{ $bird }</b>{ $guests ->
    [0] {""}
    [one] {" "}per una persona
   *[other] {" "}per { $guests } persone
}, { $heat }. In tavola <b>{ $when }</b>.
room-proposal-size = Per la vostra tavola ci vuole un volatile da circa { $mass }.
room-proposal-small = Un po’ piccolo: per { $guests } persone lo cercherei da { $mass }.
room-proposal-ready = Fuori dal fuoco tra { $from } e { $to }; nove volte su dieci entro le { $to }.
room-proposal-need = Ti serve: { $things }.
room-proposal-use-by = Sulla confezione: da consumare entro { $day }.
room-proposal-first = Per prima cosa: <b>{ $what }</b>, { $when }.
room-line = { $when } · { $what }
room-need-salt = { $grams } di sale ({ $spoons } di { $salt ->
    [table] sale fino da cucina
   *[flake-kosher] sale kosher in fiocchi
})
room-accepted = Piano fatto. Ti chiamo quando tocca fare qualcosa.
room-discarded = Va bene, lasciamo stare.

# ---- perché. $reasons è un elenco di mezze frasi di plan.ftl.
room-why = Perché questi orari:
room-why-line = <b>{ $what }</b>, { $when }: { $reasons }.

# ---- un desiderio che non si può accontentare
room-clash = Così non si può: { $because }.
room-clash-short = Non c’è tempo: { $because }. Mancano circa { $short }.
room-clash-now = Così non ci sta più: { $because }. Mancano circa { $short }.
room-clash-keeps = Non si conserva fino al pranzo: { $because }. Sono circa { $short } di troppo.
room-clash-use-by = C’è una scadenza sulla confezione? Dimmela, per esempio «da consumare entro venerdì»: chiuso, si conserva fino ad allora.
room-clash-instead = <b>Io farei così: { $change }</b> ({ $cost }).
room-clash-others = Oppure:
room-clash-offers = Quello che si può fare:
room-clash-offer = • { $change }: { $cost }
room-clash-hopeless = Per quell’ora non vedo un modo sicuro. Mangiare più tardi, o un altro volatile?
room-mended = Va bene: { $change }.

# ---- la lavagna
room-board-dinner = <b>A tavola { $when }</b>
room-board-bird = { $bird }, { $heat }
room-board-no-heat = Senza calore dalle { $since }.
room-board-clash = Così non torna: scegli sopra una via d’uscita, o dimmi che cosa cambia.
room-board-next = { $late ->
    [yes] <b>Adesso: { $what }</b>
   *[no] <b>Poi: { $what }</b>
}, { $when }{ $who }
room-board-then = { $when } · { $what }{ $who }
room-board-who = {" "}– { $name }
room-board-nobody = {""}
room-board-more-dishes = … e altri { $count }, con { $dishes }
room-board-more = { $count ->
    [one] … e un altro
   *[other] … e altri { $count }
}
room-board-ready = Fuori dal fuoco tra { $from } e { $to }{ $standing ->
    [spare] , { $span } di margine
    [tight] , al limite
    [late] , troppo tardi per la tavola
   *[no] {""}
}
room-board-done = Fatto: { $jobs }
room-board-done-one = { $what }
room-board-done-by = { $what } ({ $name })
room-board-assumed = Do per fatto: { $jobs }. Nessuno l’ha detto.
room-board-skipped = senza “{ $what }”
room-pin-how = Qui non posso fissare la lavagna in alto. Se ce la vuoi, fammi amministratore con il permesso di fissare; /board la riporta qui sotto quando vuoi.
room-left = { $name } ha lasciato la chat. Di nuovo liberi: { $jobs }.
room-board-all-done = Tutto fatto. Buon appetito.

# ---- compiti
room-call-again = Ancora da fare dalle { $since }: { $what }.
room-call-from = Per { $what }:
room-call-name = { $name }:
room-call-ahead = Per le { $at }:
room-done = { $what }, { $at }.
room-done-by = { $what }, { $name }, { $at }.
room-skipped = Saltato: { $what }.
room-skipped-by = { $name } ha saltato: { $what }.
room-next = Poi: { $what }, { $when }.
room-later = Va bene, te lo ridico alle { $when }.
room-held-up-leave = Allora si parte alle { $when }. A quell’ora chiedo di nuovo.
room-held-up-hot = Lascialo avvolto e chiuso. Se là petto e coscia non segnano { $hot } o più: mangiato entro le { $by }, dopo non si serve.
room-held-up-over = Le sue due ore finivano alle { $by }. Se petto e coscia non hanno segnato { $hot } o più fino ad allora, non servirlo.
room-taken = Tocca a te: { $what }, { $when }.
room-taken-water = Tocca a te: { $what }, { $when }, e poi { $count ->
    [one] il cambio d’acqua
   *[other] i { $count } cambi d’acqua
}.
room-take-yours = Questo ce l’hai già.
room-take-theirs = Questo ce l’ha { $name }.
room-dropped = Di nuovo libero: { $what }.
room-drop-free = Questo non ce l’ha nessuno.
room-skip-theirs = Questo è di { $name }. Può saltarlo solo chi ce l’ha, chi ha fatto il piano o un amministratore.
room-drop-theirs = Questo è di { $name }. Può restituirlo solo chi ce l’ha, chi ha fatto il piano o un amministratore.
room-already = È già a posto.
room-already-by = Ci ha già pensato { $name }, { $at }.
room-jobs = Tocca un compito per prenderlo, o per restituirlo.
room-jobs-take = { $what }
room-jobs-drop = { $what } ({ $name })
room-step-unread = In questo piano non conosco un compito “{ $text }”.
room-missed = Mentre non c’ero era ora di: { $what }. /board mostra quello che conta ancora.
room-shifts = Questo sposta il resto:
room-shift = { $what }: { $is } (era { $was })

# ---- si mangia a un’altra ora, annulla, la fine
room-move-how = Si mangia { $dinner }. Per spostare: “/move 18:00” o “/move +45 min”.
room-move-past = { $when } è già passato, adesso è { $now }. Si mangia sempre { $dinner }.
room-move-unread = In “{ $text }” non leggo un’ora. Prova “/move 18:00” o “/move +45 min”. Si mangia sempre { $dinner }.
room-move-clash = { $when } non va. L’ora resta quella di prima.
room-moved = Adesso si mangia <b>{ $when }</b>.
room-move-already = Si mangia già { $when }.
room-move-already-by = { $name } ha fatto prima: si mangia { $when }.
# Qualcuno arriva in ritardo.
room-late = Si mangia { $when } invece che alle { $dinner }?
room-wanted = { $name } vorrebbe mangiare { $when } invece che alle { $dinner }.
room-late-on = La cottura è già cominciata e finisce come previsto.
room-late-kept = Si mangia sempre <b>{ $when }</b>.
room-late-host = Questo lo decide { $name } o un amministratore.
room-late-stands = { $stands ->
    [off] È già fuori dal fuoco:
   *[done] È pronto, si toglie:
} tienilo caldo, coperto, in forno al minimo, e deve continuare a segnare { $hot }. Se scende sotto, va mangiato o messo in frigo entro le { $until }. Oppure taglia adesso, raffredda in contenitori bassi e riscalda a { $target }.
room-late-how = Di quanto? Di’ “cena un’ora più tardi” e vedo che cosa cambia.
room-button-late-keep = Lascia così
room-misread = Tolgo { $parts }?
room-undone = Annullato: { $what }.
room-undone-by = Annullato: { $what } ({ $name }, { $at }).
room-undone-what = { $change ->
    [back-on] la carne di nuovo in cottura
    [unmarked] la correzione di “{ $step }”
    [done] “{ $step }” segnato come fatto
    [skipped] “{ $step }” saltato
    [take] “{ $step }” preso
    [drop] “{ $step }” restituito
    [moved] la nuova ora a tavola
    [dish] il cambio dei piatti
    [logged] l’ultima lettura
   *[other] la modifica del piano
}
room-undone-dish = { $how ->
    [added] “{ $name }” in più
    [gone] “{ $name }” in meno
   *[changed] la modifica di “{ $name }”
}
room-undo-nothing = Non c’è niente da annullare.
room-undo-stale = Nel frattempo è successo altro. /undo annulla prima l’ultima modifica.
room-undo-gone = È già stato annullato.
room-undo-theirs = L’ultima modifica è di { $name }: { $what }. Può annullarla solo chi l’ha fatta, chi ha fatto il piano o un amministratore.
# Un segno che non è più una svista: può sparire solo il segno.
room-undo-sure = “{ $step }” è segnato come fatto, { $at }. È stato un errore? Va via solo il segno; quel che è fatto resta fatto.
room-undo-sure-by = { $name } ha segnato “{ $step }” come fatto, { $at }. È stato un errore? Va via solo il segno; quel che è fatto resta fatto.
room-button-undo-sure = Errore, annulla
room-undo-rests = “{ $step }” resta: dopo è venuto “{ $later }”, { $at }. Non si può più annullare.
room-undo-rests-read = “{ $step }” resta: dopo è stata misurata la temperatura, { $at }. Non si può più annullare.
room-undo-late = Non si può più annullare. Il piano resta com’è.
room-stop-sure = Chiudo il piano per { $dinner }? Non ti chiamerei più.
room-stopped = Chiuso. Non chiamo più.
room-stopped-calendar = Se è nel calendario, /export lo toglie.
room-stopped-back = Per un’ora puoi ancora dire «si fa».
room-stopped-told = La cena ({ $dinner }) è annullata. Non devi fare niente.
room-back-again = Si fa: cena <b>{ $dinner }</b>.
room-kept-going = Bene, non cambia niente.
room-eve = Domani:
room-eve-job = { $when } · { $what }
room-eve-early = È presto: metti anche una sveglia alle { $at }, nel caso il telefono sia silenzioso.
room-forget-sure-me = Conservo { $things }. Cancello tutto? Nei gruppi quel che hai fatto resta fatto, senza il tuo nome.
room-forget-sure-group = Conservo { $things }. Cancello tutto, per tutti? Quel che conservo di ognuno resta, finché non me lo chiede in privato.
room-kept-name = il tuo nome
room-kept-settings = le tue impostazioni
room-kept-salt = il tuo sale
room-kept-cooker = dove cuoci
room-kept-fridge = il tuo frigo: ripiani e temperatura
room-kept-learned = quel che ho imparato dalle tue cotture
room-kept-notes = note sulle cene passate
room-kept-plan = quel che pianifichi qui con me
room-kept-question = la tua ultima domanda
room-kept-groups = i tuoi compiti, letture e link nei gruppi
room-kept-title = il nome e le impostazioni di questa chat
room-kept-members = chi ne fa parte
room-kept-jobs = il piano con i compiti e chi li ha
room-kept-readings = le letture
room-kept-said = piani a metà e domande
room-kept-links = link alla chat privata
room-forgotten = Cancellato.

# ---- letture
room-log-how = Dimmi che cosa segnano i termometri: “petto 53, sovracoscia 61, camera 168”. Puoi aggiungere l’ora: “alle 14:05”.
room-frozen-on = Lascialo al caldo: ci vuole fino a metà tempo in più.{ $smoker ->
    [yes] {" "}Un affumicatore è troppo lento per questo: spostalo in un forno a { $oven }.
   *[no] {""}
}{" "}Togli le frattaglie appena si staccano, e fuori solo a { $target } dappertutto.
room-log-noted = Segnato: { $parts }.
room-log-spot = { $spot ->
    [breast] petto { $temperature }
    [thigh] sovracoscia { $temperature }
    [wing] ala { $temperature }
    [stuffing] ripieno { $temperature }
    [oven] forno { $temperature }
   *[pit] camera { $temperature }
}
room-log-on-unsaid = Nessuno mi ha detto che la cottura è cominciata. È così?
room-log-both = { $target } in tutti e due. Controlla anche il punto più interno dell’ala; se c’è anche lì, si toglie.
room-log-all = { $target } in petto, coscia e ala: si toglie.
room-log-too-long = Ora { $target }, ma è rimasto più di due ore senza calore: la cottura non lo rimedia. Io non lo servirei.
room-log-thigh-behind = Il petto c’è, la sovracoscia no. Resta a cuocere finché anche la sovracoscia segna { $target }.
room-log-wing-behind = Petto e sovracoscia forse ci sono, l’ala no. Resta a cuocere finché anche il punto più interno dell’ala segna { $target }.
room-log-breast-behind = La sovracoscia c’è, il petto no. Resta a cuocere finché anche il petto segna { $target }.
room-log-stuffing-behind = Petto e sovracoscia ci sono, il ripieno no. Resta dentro finché anche il ripieno segna { $target }.
room-log-stuffing-unread = Petto e coscia ci sono. Ora il centro del ripieno: il volatile resta dentro finché non segna { $target } anche lì.
room-log-asked-not = No: { $spot ->
    [breast] il petto
    [thigh] la coscia
    [wing] l’ala
   *[stuffing] il ripieno
} deve arrivare a { $target }.
room-log-one-spot = { $target } in un punto. Controlla gli altri prima di fidarti: petto più spesso, sovracoscia più interna e ala.
room-log-doubt = { $spot ->
    [breast] Petto
    [thigh] Sovracoscia
    [wing] Ala
    [stuffing] Ripieno
    [oven] Forno
   *[pit] Camera
} a { $given }? Mi aspetterei da { $low } a { $high }, quindi non l’ho segnato.{ $celsius ->
    [yes] {" "}Se erano °C, scrivilo con la C: “58C”.
   *[no] {" "}Guarda di nuovo e rimandalo.
}
room-log-fell = { $spot ->
    [breast] Petto
    [thigh] Sovracoscia
    [wing] Ala
    [stuffing] Ripieno
    [oven] Forno
   *[pit] Camera
} a { $given }? Prima era { $last }, e sul calore la carne non si raffredda così. Manca una cifra, o la sonda si è spostata? Non l’ho segnato; rimandalo con quello che segna adesso.
room-when = Fuori dal fuoco tra { $from } e le { $to }. A tavola { $dinner }.
room-when-off = Fuori dal fuoco dalle { $since }.{ $eaten ->
    [no] {" "}A tavola { $dinner }.
   *[yes] {""}
}
room-when-dinner = Adesso non c’è niente in cottura. A tavola { $dinner }.

# ---- impostazioni
room-settings-yours = <b>Le tue impostazioni</b>
room-settings-rooms = <b>Impostazioni di questa chat</b>
room-settings-language = Lingua: { $language }
room-settings-units = Unità: { $chosen }
room-settings-spoons = Cucchiai: { $spoons }
room-settings-zone = Fuso orario: { $zone } (adesso { $now })
room-settings-zone-unset = Fuso orario: non impostato
room-settings-quiet = Ore di silenzio: { $from }–{ $to }
room-settings-quiet-none = Ore di silenzio: nessuna
room-settings-quiet-unread = Ore di silenzio come “silenzio dalle 22:00 alle 7:00”, oppure “silenzio mai”.
room-settings-button-language = Lingua
room-settings-button-units = Unità
room-settings-button-spoons = Cucchiai
room-settings-button-zone = Fuso orario
room-settings-button-quiet = Ore di silenzio
room-settings-pick-language = Quale lingua?
room-settings-pick-units = Quali unità?
room-settings-pick-spoons = Cucchiai e tazze di quale paese?
room-settings-salt = Il tuo sale: { $weighs } g al cucchiaino
room-settings-salt-none = Il tuo sale: non me l’hai ancora detto
room-settings-cooker = Dove cuoci: { $cooker }
room-settings-cooker-none = Dove cuoci: te lo chiedo ogni volta
room-settings-fridge = Il tuo frigo: { $at }
room-settings-fridge-none = Il tuo frigo: non misurato
room-settings-button-salt = Il mio sale
room-settings-button-cooker = Dove cuocio
room-settings-button-fridge = Il mio frigo
room-settings-pick-salt = Dimmi che cosa c’è scritto sulla confezione: “il mio sale: 1/4 di cucchiaino è 0,7 g”. Da lì in poi calcolo con quello.
room-settings-salt-drop = Dimentica il mio sale
room-settings-pick-cooker = Dove cuoci di solito? Un piano che non dice altro vale per quello.
room-settings-cooker-any = Chiedi ogni volta
room-settings-pick-fridge = Che cosa segna un termometro nel tuo frigo?
room-settings-fridge-unknown = Non misurato
room-settings-shelves = Ripiani del frigo per una cena: { $count }
room-settings-shelves-none = Ripiani del frigo per una cena: non detto
room-settings-button-shelves = Ripiani
room-settings-pick-shelves = Quanti ripiani del tuo frigo sono liberi per una cena? La carne ne prende uno, un piatto mezzo, e ti dico quando non ci sta.
room-settings-shelves-unknown = Non controllare
room-settings-pick-zone = Dov’è la cucina? Scrivi una città o un fuso orario, “Bologna” o “Europe/Rome”, o mandami la tua posizione. La posizione in sé non la conservo.
room-settings-pick-zone-group = Dov’è la cucina? Dillo con “/settings Bologna”; va bene anche un fuso orario come “Europe/Rome”.
room-settings-pick-quiet = Quando devo lasciarti in pace? Quello che hai preso tu, e la sicurezza alimentare, passa comunque.
# Le lingue con le loro parole.
room-language-en = English
room-language-es = Español
room-language-fr = Français
room-language-de = Deutsch
room-language-pt = Português (Brasil)
room-language-it = Italiano
room-units-us = libbre, °F
room-units-metric = chili, °C
room-spoons-us = Stati Uniti (4,93 / 14,8 / 237 ml)
room-spoons-metric = metrici (5 / 15 / 250 ml)
room-spoons-uk = Regno Unito (5 / 15 ml)
room-spoons-australia = Australia (5 / 20 / 250 ml)
room-quiet-span = dalle { $from } alle { $to }
room-quiet-none = Nessuna
room-zone-choice = { $zone }
room-zone-which = Ce n’è più d’una. Quale?
room-zone-unknown = “{ $text }” come posto non lo conosco. Una città più grande lì vicino, o un fuso come “Europe/Rome”?
room-zone-nowhere = Di lì non so il fuso orario. Scrivi una città?
room-zone-set = { $zone }, allora: adesso lì è { $now }.

# ---- il sale. $places è un elenco di room-dose-place.
room-dose-total = { $grams } in tutto, cioè { $spoons } di { $salt ->
    [own] sale tuo
    [table] sale fino da cucina
   *[flake] sale kosher in fiocchi
}.
room-dose-places = { $places }.
room-dose-place = { $spoons } { $place ->
    [cavity] nella cavità
    [bone-side] dal lato dell’osso
    [breast] { $count ->
        [one] sotto la pelle del petto
       *[other] sotto la pelle di ciascun lato del petto
    }
    [thigh] sotto la pelle di ciascuna sovracoscia
    [drumstick] sotto la pelle di ciascun fuso
   *[skin] sulla pelle
}
room-dose-skin = Quello per la pelle va mescolato con altrettanto pepe e altrettanto lievito istantaneo non vanigliato.
room-dose-none = Niente sale qui: la soluzione al { $percent } % di chi l’ha confezionato basta.
room-dose-presalted = Niente sale su questo: hai detto che è già salato.
room-dose-light = Mano leggera: chi l’ha confezionato ci ha già messo il { $percent } % di soluzione.
room-salted-by = { $name } l’ha già salato, { $at }. Se ha davvero il sale due volte:
room-salted = È già salato, da { $at }.
room-salt-then = Si sala { $salt }, poi in frigo senza coprire finché va a cuocere, { $on }.
room-salt-straight = Si sala { $salt }, fuori dall’acqua e asciutto, poi subito in cottura, { $on }.
room-salt-no-rest = Questo piano non ha riposo col sale: mettilo subito prima della cottura, { $on }.
room-button-sources = Da dove viene?
room-question-gone = Quella domanda è troppo indietro. Me la rifai?
room-sources = I numeri vengono da:
room-too-long = Sono { $length } caratteri, più di quanti ne leggo in una volta (al massimo { $most }). Bastano una o due frasi.
room-proposal-night = Di notte: { $jobs }.
room-pack-warm = Fuori alle { $off }, quindi non è ancora fredda: mangiata o in frigo entro le { $by }, anche nel ghiaccio, salvo che resti a { $hot } o più. Nel dubbio, si butta.
room-chill-late = Era dopo { $by }. Quello che è rimasto fuori più di due ore si butta, anche se sembra buono.
# $jobs: what was planned for it and is called for no more.
room-chill-ended = Quindi salta: { $jobs }. Era dentro in tempo? Annulla.
room-limit-chill = Le due ore sono passate. Quello che è ancora fuori e non è rimasto a 60 °C o più si butta.
room-limit-chill-hot = Con questo caldo l’ora è passata. Quello che è ancora fuori e non è rimasto a 60 °C o più si butta.
# What is said of how long it has been out, and the clock kept: the stricter. $since: from when it counts; $off: when it was told to be off.
room-out-clock = Conto dalle { $since }{ $from ->
    [read] , l’ultima lettura calda
    [heat] , quando è uscito dal fuoco
   *[other] {""}
}: mangiato o in frigo entro le { $by }.
room-out-clock-over = Conto dalle { $since }{ $from ->
    [read] , l’ultima lettura calda
    [heat] , quando è uscito dal fuoco
   *[other] {""}
}: il tempo è finito alle { $by }. Quello che non è rimasto a { $hot } o più si butta.
room-out-earlier = Fuori dalle { $since } è prima delle { $off }, quando per me è uscito dal fuoco; ora conto dalle { $since }: mangiato o in frigo entro le { $by }.
room-out-earlier-over = Si butta: fuori dalle { $since }, prima delle { $off }, quando per me è uscito dal fuoco. Il tempo è finito alle { $by }.
room-never-off = Nessuno mi ha detto quando è uscito dal fuoco. Se è uscito { $when }, come previsto, va mangiato o messo in frigo entro le { $by }; se è uscito prima, ancora prima. Salvo che resti a { $hot } o più.
room-never-off-over = Nessuno mi ha detto quando è uscito dal fuoco. Se è uscito { $when }, come previsto, il tempo è finito alle { $by }: tieni solo quello che era già in frigo o è rimasto a { $hot } o più. Il resto si butta.
room-never-off-unread = E nessuno ha misurato { $target } in petto, coscia e ala: senza, mangiarlo non è sicuro.
room-raw-eve = Il volatile fresco deve andare al fuoco o in freezer entro { $until }. Si mangia { $dinner }.
room-raw-over = Il tempo del volatile fresco in frigo è finito: al fuoco o in freezer adesso. Dopo non posso dirlo sicuro.
room-hello = Ciao. Dimmi che volatile è, il giorno e in quanti siete: “tacchino congelato da 6,5 kg, si mangia domenica alle 17, 10 persone”. O chiedimi quello che vuoi.
room-amended = Va bene: { $known }.
room-unbought = Non ancora comprato, capito. La spesa è ora { $when }, e il resto va di conseguenza.
room-unthawed = Non si scongela ancora, capito. Comincia ora { $when }, e il resto va di conseguenza.
room-whether-bought = Nessuno l’ha detto: il volatile è comprato?
room-unlit = Allora accendi adesso, a { $setting }: il volatile entra verso { $when }, quando è caldo, e fino ad allora aspetta in frigo.
room-oven-free = Il forno è libero quando il volatile esce, verso { $off }, fino a { $carve }. Decide { $host }.
room-whether-thawing = Nessuno l’ha detto: il volatile si scongela da { $since }?
room-swap-keeps = Fresco si tiene al massimo due giorni: compralo { $when }, non prima, a meno che la data sulla confezione lo permetta. È già in casa? Dimmelo.
room-button-have-it = Ce l’abbiamo
room-button-not-yet = Non ancora
room-amend-told = Secondo { $name }: { $change }. Anche nel piano, { $host }?
room-button-amend = Cambia il piano
room-not-done = Buono a sapersi: è ancora da fare { $what }.
room-stays-on = Va bene: continua a cuocere.
room-water-not = L’acqua è ancora fredda, { $cold } o meno? Cambiala ora e vai avanti. Più tiepida per oltre { $limit }: butta il volatile.
room-thaw-early = È presto: in acqua fredda si scongela entro { $thawed } e va in cottura { $on }. Scongelato: fuori dall’acqua e in frigo, a { $cold } o meno. O smetti ora: in frigo, «Annulla», e in acqua da { $water }.
room-thaw-water = In acqua fredda si scongela entro { $thawed }: cambia l’acqua ogni { $every }. Poi fuori dall’acqua, in frigo a { $cold } o meno, e va in cottura { $on }. Meglio come previsto? In frigo ora, e «Annulla».
room-thaw-long = È scongelato da { $thawed }. L’acqua è ancora a { $cold } o meno? In frigo adesso. Più tiepida per oltre { $limit }: butta il volatile.
room-thaw-out = Ormai è scongelato: fuori dall’acqua e in frigo in una teglia, a { $cold } o meno. Basta acqua. Ancora ghiaccio dentro? Cambia l’acqua e vai avanti. Va in cottura { $on }.
room-ok = Bene.
room-yes-what = Sì a cosa? Non ho cambiato niente. Dillo per intero: “cena alle 17”.
room-fine = Va bene.
room-unsaid = Non l’ha ancora detto nessuno.
room-not-yet = Va bene, non ancora.
room-when-step = { $what }: { $when }.
room-when-none = In questo piano non c’è “{ $what }”.
room-hour-fits = { $what }: { $asked } va bene, come ogni ora tra { $from } e { $to }. Dimmi quando è fatto.
room-hour-early = { $what }: { $asked } è troppo presto. Da { $from }; previsto { $planned }.
room-hour-late = { $what }: { $asked } è troppo tardi. Entro { $to }; previsto { $planned }.
room-hour-only = { $what }: in questo piano va bene solo { $planned }.
room-who-has = { $what }, { $when }: { $name }.
room-who-nobody = Non l’ha ancora nessuno: { $what }, { $when }.
room-day-free = Quel giorno non c’è più niente da fare.
room-ice = Bene che hai guardato. Resta in frigo, e da { $when } finisce in acqua fredda; poi subito in cottura.
room-ice-now = Bene che hai guardato. Allora finisce adesso in acqua fredda, in un sacchetto ben chiuso; poi subito in cottura.
room-ice-early = È normale. Lascialo in frigo e riguarda { $when }: se c’è ancora ghiaccio, l’acqua fredda finisce in tempo.
room-ice-roast = Bene che hai guardato. L’acqua ci metterebbe troppo: { $when } va in forno così com’è, senza ripieno.
room-ice-roast-now = Bene che hai guardato. L’acqua ci metterebbe troppo: in forno adesso, così com’è, senza ripieno.
room-ice-done = Fino a metà tempo in più; frattaglie fuori appena si staccano; { $target } dappertutto.
room-never-fridge = Niente di perso: in frigo adesso, su un vassoio.
room-never-both = In frigo adesso, su un vassoio; da { $when } lo finisce l’acqua fredda.
room-never-water = Allora ci pensa l’acqua fredda, da { $when }, in un sacchetto ben chiuso; poi subito in cottura.
room-never-water-now = Allora ci pensa l’acqua fredda, da adesso, in un sacchetto ben chiuso; poi subito in cottura.
room-never-roast = Non c’è tempo per scongelarlo: { $when } va in forno congelato, senza ripieno.
room-never-roast-now = Non c’è tempo per scongelarlo: in forno congelato adesso, senza ripieno.
# $when: the next job with it.
room-thawed = Scongelato: niente ghiaccio nella cavità, le cosce si muovono? Allora resta in frigo fino a { $when }.
# Scongelato in acqua si cuoce subito. $when: la sua ora di cottura; far: ore dopo, o domani.
room-thawed-water = Scongelato in acqua: niente ghiaccio dentro, le zampe si muovono? Meglio cuocerlo subito. Se no fuori dall’acqua, in frigo a { $cold } o meno, e in cottura { $when } al più tardi.
room-thawed-water-far = Scongelato in acqua si cuoce subito e non aspetta in frigo fino a { $when }. Cuocilo ora; tagliato e freddo, si riscalda a { $target } per il pasto.
room-stuffing-out = Segnato: il ripieno finisce da solo, fino a { $target } al centro. Per il volatile contano ora petto, coscia e ala, a { $target } ciascuno.
room-thawed-now = Scongelato: niente ghiaccio nella cavità, le cosce si muovono? Allora avanti.
room-log-when = Quando è stato? Dimmelo con l’ora, così: “petto 35 alle 13:30”. Senza ora lo prenderei per adesso.
room-heat-set = Segnato: { $setting } da adesso.
room-heat-moved = Segnato: da adesso { $cooker ->
    [smoker] nell’affumicatore
    [fan-oven] nel forno ventilato
   *[oven] in forno
 } a { $setting }.
room-leftovers-until = I tuoi: mangiati o congelati entro { $when }, se sono andati in frigo in tempo.
room-leftovers-over = I tuoi giorni sono passati ({ $when }): butta quello che non è congelato.
room-leftovers-if = Solo quello che è andato in frigo entro due ore; il resto si butta.
room-ok-due = Bene. Scrivi “fatto” quando è finito: { $what }.
room-ok-which = Quale? Toccala, ed è fatto.
room-welcome = Di niente.
room-amend-clash = Così non ci sta. Il piano resta com’è.
room-undone-dinner = Si mangia di nuovo { $when }.
room-already-you = Ci hai già pensato tu, { $at }.
room-proposal-carry = Cotto a casa il giorno prima, portato freddo, riscaldato di là. Se lo cuoci di là, scrivi “lo cuocio lì”.
room-proposal-hot = Portato caldo: intero e avvolto, mangiato entro { $most } da quando lascia il calore ({ $hour } se fuori ci sono più di { $air }). Di più solo finché segna { $hot } o più. Meglio freddo? Scrivi “lo portiamo freddo”.
room-proposal-or-hot = Meglio caldo? Scrivi “lo portiamo caldo”.
room-hour-there = Ora quell’ora è quella di là: { $there }. Se era l’ora di casa, scrivi “cena { $home }”.
room-proposal-not-hot = Cotto il giorno prima non può andare caldo. Per quello scrivi “lo portiamo caldo”: allora si cuoce il giorno stesso.

# ---- /export: una riga con ogni file.
room-export-calendar = Il piano per il calendario. Non segue i cambiamenti: chiedilo di nuovo e i nuovi orari sostituiscono i vecchi.
room-export-calendar-ended = Aprilo nel calendario: i compiti del piano chiuso spariscono.
room-export-page = Una pagina per lo sportello del frigo. Stampala e spunta le cose fatte.
room-export-readings = Le temperature, per un foglio di calcolo.
room-export-everything = Tutto quello che conservo di questa chat.
room-shift-more = { $count ->
    [one] … e un altro si sposta di conseguenza.
   *[other] … e altri { $count } si spostano di conseguenza.
}
room-pull-sure = { $spot ->
    [thigh] La sovracoscia
    [wing] L’ala
    [stuffing] Il ripieno
   *[breast] Il petto
} segnava { $read } alle { $at }, e si toglie a { $target }. Adesso segna così?
room-carve-under = { $spot ->
    [thigh] La sovracoscia
    [wing] L’ala
    [stuffing] Il ripieno
   *[breast] Il petto
} segnava { $read } alle { $at }, e nessuno ha detto altro. Sotto { $target } torna a cuocere prima che qualcuno mangi: prima misura.
room-no-heat = Senza calore dalle { $since }? Dimmi quando torna, o dov’è la carne adesso. Sotto { $hot } alle { $until }: si butta.
room-no-heat-over = Due ore senza calore, dalle { $since }: quello che segna meno di { $hot } si butta. Più caldo dappertutto, può continuare fino a { $target }.
room-eat-cooking = Non ancora: è sicuro solo a { $target } in petto, coscia e ala.
room-call-carve-unsaid = È già fuori? Nessuno me l’ha detto. Si toglie solo a { $target } in petto, coscia e ala; con meno resta dentro.
room-back-on = Di nuovo in cottura. Si toglie solo a { $target } nel petto più spesso, all’interno della coscia e nell’ala: misura di nuovo alle { $look }.
room-carve-unread = Segnava { $target } in petto, coscia e ala? Nessuno me l’ha detto. Se non lo sai, misura ora: a meno torna al calore prima che qualcuno mangi.
room-button-reads-now = Sì, segna così
room-button-stays-on = Resta a cuocere
room-done-which = Fuori dal fuoco o solo controllato? Esce solo a { $target } in petto, coscia e ala.
room-button-looked = Solo controllato
room-hold = Si taglia alle { $carve }. Fino ad allora resta a { $hot } o più, coperto, con un termometro dentro? Se no, va tagliato, mangiato e messo in frigo entro le { $by }.
room-hold-packed = Si avvolge alle { $pack }. Fino ad allora resta a { $hot } o più, coperto, con un termometro dentro? Se no, va mangiato e messo in frigo entro le { $by }.
room-report-early = “{ $what }” è previsto { $when }. Davvero già fatto?
room-aside-ask = È per il volatile? Tocca a “{ $what }”.
room-two-thermometers = Vale il più basso, { $low }. Controllali in acqua e ghiaccio: più ghiaccio che acqua, mescolata, devono segnare { $ice }. E dimmi il punto: petto, coscia o ala.
room-wandering = Per ora vale la più bassa: { $low }. Infila di nuovo nel punto più spesso, lontano dall’osso, aspetta che si fermi e dimmi quella.
room-digits-apart = È { $parts }? Non l’ho ancora contata.
room-oven-cool = Troppo freddo per il pollame: { $limit } o più subito, o in un altro forno. Fino ad allora ci vuole più del previsto; dimmi petto e coscia e ti dico quanto.
room-foil-off = Sì, appoggiato, mentre riposa: almeno { $least }, e non oltre il taglio. Stretto ammorbidisce la pelle.
room-fridge-bird = Il volatile dentro: scongelato e sopra { $cold } per più di { $limit } si butta; cuocerlo non rimedia. Misura adesso. Ancora duro di ghiaccio, o { $cold } o meno all’interno: subito in un posto più freddo.
room-button-held = Resta caldo
# $off: when it was last known to be hot; $by: two hours later.
room-held = Bene: coperto, con dentro il termometro. Dimmi cosa segnano petto e coscia: da { $hot } in su le due ore contano da lì. Senza lettura contano dalle { $off }, fino alle { $by }.
room-hold-broken = { $at } è sotto { $hot }: così non resta caldo. Tagliato, mangiato e in frigo entro le { $by }, due ore da { $from ->
    [read] quando lo segnava ancora
   *[heat] quando è uscito
}.
room-own-salt-kept = D’ora in poi calcolo con questo.
