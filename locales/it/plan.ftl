### I valori del piano in parole: compiti, chiamate, motivi, cambi, avvertenze, cose che servono.

# ---- nomi dei compiti, come sulla lavagna. Una riga di telefono: meno di 28 caratteri, senza punto.
plan-step-buy = Fai la spesa
plan-step-thaw = Inizia a scongelare
plan-step-thaw-finish = Dal frigo all’acqua fredda
plan-step-water = Cambia l’acqua
plan-step-salt = Salatura
plan-step-rest = Riposo col sale in frigo
plan-step-temper = Asciuga la pelle
plan-step-fire = Accendi forno o fuoco
plan-step-on = Inizia la cottura
plan-step-check = Misura le temperature
plan-step-pull = Togli dal fuoco
plan-step-stand = Lascia riposare
plan-step-carve = Taglia la carne
plan-step-chill = Metti in frigo
plan-step-pack = Prepara la borsa frigo
plan-step-pack-hot = Avvolgi ben caldo
plan-step-travel = Partenza
plan-step-reheat = Riscalda
plan-step-serve = A tavola
plan-step-leftovers = Ultimo giorno degli avanzi
plan-step-dish = { $name }

# ---- gli stessi, fatti
plan-done-buy = Spesa fatta
plan-done-thaw = Sta scongelando
plan-done-thaw-finish = In acqua fredda
plan-done-water = Acqua cambiata
plan-done-salt = Sale messo
plan-done-rest = Riposa in frigo
plan-done-temper = La pelle è asciutta
plan-done-fire = Forno o fuoco acceso
plan-done-on = In cottura
plan-done-check = Temperature misurate
plan-done-pull = Fuori dal fuoco
plan-done-stand = Sta riposando
plan-done-carve = Carne tagliata
plan-done-chill = Messo in frigo
plan-done-pack = Borsa frigo pronta
plan-done-pack-hot = Avvolto ben caldo
plan-done-travel = In viaggio
plan-done-reheat = Carne riscaldata
plan-done-serve = Tutti a tavola
plan-done-leftovers = Avanzi sistemati
plan-done-dish = { $name } in corso

# ---- chiamate: che cosa fare adesso, con le attenzioni che servono. Due o tre frasi brevi.
plan-call-buy = { $condition ->
    [frozen] È ora di fare la spesa. Dritto a casa e in freezer, o in frigo se poi tocca scongelare.
   *[fresh] È ora di fare la spesa. Dritto a casa e in frigo, su una teglia in basso.
}
plan-call-thaw-fridge = In frigo a scongelare, nella sua confezione, su una teglia in basso. Frigo a { $cold } o meno; mai sul piano di lavoro.
plan-call-thaw-water = In un sacchetto a tenuta, immerso in acqua fredda. Cambia l’acqua ogni { $every }. Mai acqua calda.
plan-call-thaw-finish = Ora dal frigo all’acqua fredda, in un sacchetto a tenuta, per finire di scongelare. Cambia l’acqua ogni { $every }. Mai acqua calda.
plan-call-water = Cambia l’acqua ({ $n } di { $of }). Tienila fredda, e la carne nel suo sacchetto a tenuta.
plan-call-salt-dry = È ora di salare: via collo e frattaglie, asciuga tamponando, non lavare, sale dentro e fuori. Poi in frigo senza coprire, su una teglia in basso.
plan-call-salt-wet = In salamoia, coperto, e in frigo. Resta a { $cold } o meno per tutto il tempo.
plan-call-salt-now = Fuori dall’acqua adesso: via collo e frattaglie, asciuga, sala. La carne scongelata in acqua va subito in cottura.
plan-call-rest = Il riposo col sale: resta in frigo, senza coprire, in basso.
plan-call-temper = Fuori dal frigo: collo e frattaglie già tolti, asciuga, buca la pelle, imburra. Al massimo { $most } fuori, poi in cottura.
plan-call-temper-fat = Fuori dal frigo: collo e frattaglie già tolti, asciuga e buca la pelle dov’è grassa, senza arrivare alla carne. Niente burro: basta il suo grasso. Al massimo { $most } fuori, poi in cottura.
plan-call-temper-water = Già fuori dall’acqua: asciuga di nuovo, buca la pelle, imburra. In cottura entro { $most }.
plan-call-temper-salt = Poi il sale, che questo piano ha lasciato per ultimo:
plan-call-fire-oven = Accendi il forno a { $setting }.
plan-call-fire-smoker = Accendi il fuoco e lascialo assestare a { $setting }. Solo all’aperto: carbonella mai in casa o in garage.
plan-call-on = Si comincia a cuocere. Termometro nel punto più spesso del petto, lontano dall’osso.
plan-call-on-stuffed = Farcisci adesso, senza pressare, poi in cottura. Termometro nel punto più spesso del petto, lontano dall’osso.
plan-call-check = È ora di un’occhiata: petto, sovracoscia e { $cooker ->
    [smoker] camera
   *[oven] forno
}. Mandami solo i numeri.
plan-call-pull = Dovrebbe esserci quasi. Si toglie solo a { $target } nel punto più spesso del petto, nel più interno della sovracoscia e nell’ala. Meno? Resta a cuocere.
plan-call-pull-stuffed = Dovrebbe esserci quasi. Si toglie solo a { $target } nel punto più spesso del petto, nel più interno della sovracoscia, nell’ala e al centro del ripieno. Meno? Resta a cuocere.
plan-call-stand = Ora il riposo, sotto un foglio di alluminio appoggiato: { $least } o più.
plan-call-carve = È ora di tagliare: tagliere pulito, coltello pulito.
plan-call-carve-hot = Prima il termometro, in petto e coscia. { $hot } o più in tutti e due: taglia, tagliere pulito, coltello pulito.
plan-call-chill-ahead = Carne tagliata in contenitori bassi e in frigo entro le { $latest }. Calda va bene; più tardi no.
plan-call-chill = Avanzi in frigo entro le { $latest }, in contenitori bassi. Quello che è rimasto fuori di più si butta.
plan-call-pack = Nella borsa frigo: la carne a { $cold } o meno, ghiaccio tutto intorno, borsa chiusa.
plan-call-pack-hot = Avvolgilo intero e ben caldo: alluminio, poi asciugamani, in una borsa termica scaldata con acqua calda. Il termometro resta dentro. Con più di { $air } fuori va mangiato entro { $hour }, non due.
plan-call-travel = È ora di partire. La borsa frigo resta chiusa fino al frigo o al forno di là.
plan-call-travel-hot = È ora di partire. La borsa termica resta chiusa fino all’arrivo.
plan-call-reheat = Riscalda coperto, con un po’ di brodo, in forno da { $low } a { $high }, finché arriva a { $target } fino al cuore.
plan-call-serve = A tavola. Buon appetito; per il frigo ti chiamo io più tardi.
plan-call-leftovers = Avanzi: mangiali o congelali oggi. È il loro ultimo giorno in frigo.
plan-call-dish = È ora di: { $name }.
plan-call-dish-oven = { $name }: in forno a { $setting }, { $takes }.
plan-call-dish-smoker = { $name }: nell’affumicatore a { $setting }, { $takes }.
plan-call-dish-stove = { $name }: sul fornello, { $takes }.
plan-call-dish-made = { $name }: comincia adesso, { $takes }.
plan-call-dish-chill = { $name }: adesso in frigo, a { $cold } o meno, fino a cena.
plan-call-dish-then-fridge = Poi in frigo fino a cena, a { $cold } o meno.
plan-call-dish-then-cooler = Poi in una borsa frigo con tanto ghiaccio e un termometro dentro: { $cold } o meno fino a cena. Se resta sopra per { $most }, si butta.
plan-call-dish-then-hot = Poi tienilo coperto e caldo, a { $hot } o più, fino a cena.

# ---- motivi: mezze frasi in elenchi, senza maiuscola e senza punto.
plan-reason-dinner = si mangia a quell’ora
plan-reason-now = prima di adesso non si può
plan-reason-done = è quando è stato fatto
plan-reason-follows = “{ $step }” viene prima e dura { $takes }
plan-reason-raw-keeps = la carne fresca si conserva { $most } in frigo
plan-reason-shop = la spesa non è prima di { $at }
plan-reason-use-by = la confezione dice da consumare entro { $day }
plan-reason-fridge-thaw = in frigo a scongelare ci mette { $time }
plan-reason-fridge-share = { $spent } in frigo, su un massimo di { $whole }; il resto lo fa l’acqua fredda
plan-reason-water-thaw = in acqua fredda a scongelare ci mette { $time }
plan-reason-water-finish = quel che è ancora ghiaccio finisce in acqua fredda, al massimo { $most }
plan-reason-water-change = l’acqua si cambia ogni { $every }
plan-reason-cook-at-once = la carne scongelata in acqua va cotta subito
plan-reason-thawed-keeps = la carne scongelata si conserva { $most } in frigo
plan-reason-salt-wants = il sale vuole { $least } o più
plan-reason-salt-at-most = la carne salata aspetta al massimo { $most }
plan-reason-brine-wants = la salamoia vuole { $least } o più
plan-reason-temper = circa { $about } per asciugare e imburrare
plan-reason-room-temperature = la carne cruda sta fuori dal frigo al massimo { $most }
plan-reason-preheat = { $cooker ->
    [smoker] il fuoco vuole { $least } per assestarsi
   *[oven] il forno vuole { $least } per scaldarsi
}
plan-reason-cooking-time = cuoce { $time }
plan-reason-forecast = è a questo punto che si trova
plan-reason-check-before = un’occhiata prima che possa essere pronto
plan-reason-stand = riposa { $least } prima del taglio
plan-reason-hot-hold = la carne tolta dal fuoco aspetta al massimo { $most }, se non resta a { $hot }
plan-reason-hot-road = portato caldo si mangia entro { $most } da quando lascia il calore
plan-reason-carving = per tagliare ci vogliono circa { $about }
plan-reason-two-hours = in frigo entro { $most }
plan-reason-cold-through = la carne vuole { $least } in frigo per essere fredda fino al cuore
plan-reason-drive = il viaggio dura { $takes }
plan-reason-packed-cold = nella borsa con il ghiaccio si parte entro { $most }
plan-reason-reheat = per riscaldare ci vogliono circa { $about }
plan-reason-reheat-within = di nuovo a { $target } entro { $most }
plan-reason-cooked-keeps = la carne cotta si conserva { $most } in frigo
plan-reason-sociable = a un’ora in cui si è svegli
plan-reason-dinner-past = quell’ora è già passata
plan-reason-dinner-too-far = manca più di un anno
plan-reason-drive-too-long = una borsa frigo con il ghiaccio regge { $most } di strada
plan-reason-setting = { $cooker ->
    [smoker] un affumicatore va da { $low } a { $high }
   *[oven] un forno va da { $low } a { $high }
}
plan-reason-thaw-before-smoking = nell’affumicatore va solo se è scongelato fino al cuore
plan-reason-stuffed-frozen = se non è scongelato non si può farcire
plan-reason-stuffed-form = si farcisce solo un volatile intero
plan-reason-stuffed-kind = l’anatra non si farcisce
plan-reason-form-for-kind = il petto di tacchino si cuoce così com’è
plan-reason-mass-for-kind = uno così pesa da { $low } a { $high }
plan-reason-solution = la percentuale dell’etichetta va da 0 a 50
plan-reason-dish-hot = tra il calore e la tavola per { $name } passano al massimo { $most }
plan-reason-dish-ahead = per { $name } si fa tutto prima, poi in frigo
plan-reason-heat-taken = { $how ->
    [setting] per { $name } servono { $own } mentre per { $other } lì servono { $others }
    [time] per { $name } serve il calore mentre lo occupa { $other }
    [setting-bird] per { $name } servono { $own } mentre per { $other } lì servono { $others }
    [time-bird] per { $name } serve il calore mentre lo occupa { $other }
    [full] lì ci stanno solo { $room } piatti insieme, e { $name } è di troppo
   *[alone] per { $name } serve un calore che in quel momento è occupato
}
plan-reason-heat-bird = la carne
plan-reason-dish-cold = per { $name } servono { $least } in frigo
plan-reason-fridge-taken = con la carne dentro, nel frigo ({ $shelves ->
    [one] un ripiano
   *[other] { $shelves } ripiani
}) non c’è posto per { $name }
plan-reason-fridge-full = nel frigo ({ $shelves ->
    [one] un ripiano
   *[other] { $shelves } ripiani
}) non c’è più posto per { $name }, neanche senza la carne

# ---- cambi proposti: etichette di pulsanti, meno di 28 caratteri.
plan-change-cold-water = Scongela in acqua fredda
plan-change-finish-in-water = Frigo, poi acqua fredda
plan-change-fridge-thaw = Scongela in frigo
plan-change-cook-frozen = Cuoci da congelato
plan-change-shorter-rest = Meno riposo col sale
plan-change-no-salt = Senza sale prima
plan-change-dinner = A tavola { $when }
plan-change-hotter = Piuttosto { $setting }
plan-change-flat = Aprilo a libro
plan-change-unstuffed = Ripieno a parte
plan-change-cook-ahead = Cuoci il giorno prima
plan-change-carry-cold = Portalo freddo
plan-change-smaller-bird = Uno da { $mass }
plan-change-two-birds = Due da { $mass }
plan-change-buy-fresh = Comprane uno fresco
plan-change-buy-later = Comprane uno fresco dopo
plan-change-freeze = Congelalo ora
plan-change-dish-beside = { $name } con la carne
plan-change-dish-ahead = { $name } in anticipo
plan-change-dish-early = { $name } più presto
plan-change-dish-out = Senza { $name }
plan-change-dish-later = { $name } dopo la carne
plan-change-dish-cooler = { $name } nel ghiaccio

# ---- quanto costa un cambio: mezze frasi dopo i due punti.
plan-cost-cold-water = { $changes ->
    [one] un cambio d’acqua, da { $when }; niente riposo col sale
   *[other] { $changes } cambi d’acqua, da { $when }; niente riposo col sale
}
plan-cost-finish-in-water = { $changes ->
    [one] un cambio d’acqua, da { $when }; niente riposo col sale, poi subito in cottura
   *[other] { $changes } cambi d’acqua, da { $when }; niente riposo col sale, poi subito in cottura
}
plan-cost-fridge-thaw = in frigo da { $when }
plan-cost-cook-frozen = circa { $time } di forno, si comincia { $when }; niente sale prima
plan-cost-shorter-rest = { $rest } di sale invece di { $wanted }
plan-cost-no-salt = si condisce quando va in cottura
plan-cost-dinner = tutto il resto come volevi
plan-cost-hotter = più veloce, e colora di più
plan-cost-flat = via la schiena; cuoce molto più in fretta
plan-cost-unstuffed = cuoce più in fretta, ed è più sicuro
plan-cost-cook-ahead = carne tagliata, raffreddata, riscaldata a { $target }
plan-cost-carry-cold = cotto il giorno prima, riscaldato di là a { $target }
plan-cost-smaller-bird = basta per tutti, avanza poco
plan-cost-two-birds = scongelano e cuociono più in fretta di uno grande
plan-cost-buy-fresh = niente da scongelare; si compra { $when }
plan-cost-buy-later = quello che hai in casa non dura; si compra { $when }
plan-cost-freeze = oggi in freezer, a scongelare da { $when }
plan-cost-dish-beside = alla temperatura della carne: { $takes }, dentro { $when }
plan-cost-dish-ahead = { $when }, poi in frigo; a tavola riscaldato a { $target }
plan-cost-dish-early = { $when }, poi coperto a { $hot } o più
plan-cost-dish-out = il resto rimane com’è
plan-cost-dish-later = in frigo { $when }, quando esce la carne: { $stay } o più, meno di quanto volevi
plan-cost-dish-cooler = borsa frigo con tanto ghiaccio e termometro: sempre a { $cold } o meno

# ---- avvertenze di un piano che funziona: frasi intere.
plan-caution-odd-hours = “{ $step }” cade di notte.
plan-caution-short-rest = Solo { $rest } di sale: entra meno a fondo, ed è buono lo stesso.
plan-caution-keep-hot = Può essere pronto { $wait } prima del taglio: va tenuto a { $hot } o più.
plan-caution-hot-till-packed = Può essere pronto { $wait } prima di avvolgerlo: fino ad allora va tenuto a { $hot } o più.
plan-caution-overrun = Un limite è stato superato ({ $reason }). Nel dubbio, non mangiarlo.
plan-caution-stuffing-apart = Togli il ripieno ancora caldo e raffreddalo a parte.
plan-caution-stuffing-out = Togli il ripieno prima di avvolgerlo; viaggia caldo in un piatto suo.
plan-caution-oven-below-authority = Per il pollame le autorità per la sicurezza alimentare non ammettono forni sotto { $limit }.
plan-caution-smoker-below-authority = Sotto { $limit } si è fuori dai valori pubblicati per gli affumicatori.
plan-caution-smoker-above-published = Sopra { $limit } i tempi dell’affumicatore sono esperienza di chi cucina, non una tabella pubblicata.
plan-caution-long-in-danger-zone = A bassa temperatura si resta a lungo tra { $cold } e { $hot }, e il tempo è il meno certo di tutti.
plan-caution-outside-table = Nessuna tabella pubblicata arriva a questo peso; il tempo è calcolato a partire da lì.
plan-caution-stuffing-last = Anche il centro del ripieno deve arrivare a { $target }, e spesso è l’ultimo. Più sicuro cuocerlo a parte.
plan-caution-from-frozen = Da congelato il tempo cambia molto. Togli le frattaglie appena si staccano.
plan-caution-part-thawed = A metà scongelamento, il tempo sta in un punto qualsiasi tra scongelato e congelato.
plan-caution-pieces-differ = I pezzi finiscono uno alla volta: misurali tutti.

# ---- quello che il piano dà per scontato: nomi in un elenco.
plan-need-bird = il volatile
plan-need-thermometer = un termometro da cucina
plan-need-salt = sale
plan-need-rack = una teglia con griglia
plan-need-bag = un sacchetto a tenuta
plan-need-brine-vessel = una pentola per la salamoia che entri in frigo
plan-need-fuel = combustibile per l’affumicatore
plan-need-foil = alluminio
plan-need-shallow-dishes = contenitori bassi
plan-need-cooler = una borsa frigo con il ghiaccio
plan-need-hot-box = una borsa termica senza ghiaccio e asciugamani
plan-need-broth = un po’ di brodo
