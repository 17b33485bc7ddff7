### Risposte a domande veloci. Quantità, temperature e durate arrivano già scritte.
### Prima la risposta, poi a che cosa badare; ogni riga sta in piedi da sola.

ask-unknown = Non riesco a leggerla come domanda. Chiedimi del sale (2 cucchiai di sale fino in sale kosher in fiocchi), dei tempi (quanto scongela un tacchino da 6,5 kg), delle porzioni (che peso per 11 persone), della sicurezza (70 °C per 2 minuti è sicuro) o delle unità (325 °F in °C).
ask-no-amount = Così non è una quantità. Dammene una sopra lo zero, per esempio 2 cucchiai.
ask-no-span = Mi serve un tempo con cui far di conto, per esempio 24 h.
ask-no-mark = Nessun forno a gas ha quel numero. Vanno ¼, ½ e da 1 a 10, cioè da 107 a 260 °C.
ask-no-temperature = Quella non è una temperatura. Per esempio: 325 °F in °C.
ask-no-substance = Quanto pesa un cucchiaio dipende da che cosa c’è dentro. Conosco sale e burro: 2 cucchiai di sale fino in grammi.
ask-no-serving = Quella non è una porzione di questo volatile. Per esempio: sodio in un tacchino da 6,5 kg per 11 persone.
# $reason è mezza frase del piano.
ask-impossible = Non può essere: { $reason }.

# Quel che chiedo io. La risposta va in coda alla domanda.
ask-back-mass = Quanto pesa? Per esempio: 6,5 kg.
ask-back-how-much = Quanto { $salt }? Per esempio: 2 cucchiai.
ask-back-kosher = Quale sale kosher? A parità di cucchiaio, quello grosso pesa quasi il doppio di quello in fiocchi.
ask-back-own-salt = Il tuo sale non lo conosco ancora. Leggimi la confezione, per esempio: il mio sale: 1/4 di cucchiaino è 0,7 g.
ask-back-water = Quanta acqua, o quanto pesa il volatile? Per esempio: 4 litri, o 6,5 kg.
ask-back-scale = { $n } in °F o in °C? Cambia tutto.
ask-back-how-long-out = Quanto tempo è rimasto fuori? Per esempio: 3 ore.
ask-back-fuel-time = Per quanto tempo? Per esempio: 4 h.
ask-back-hours-3 = 3 ore
ask-back-hours-5 = 5 ore
ask-fahrenheit = °F
ask-celsius = °C

# Nomi dentro le frasi.
ask-kind-turkey = tacchino
ask-kind-turkey-breast = petto di tacchino
ask-kind-chicken = pollo
ask-kind-capon = cappone
ask-kind-duck = anatra
ask-kind-goose = oca
ask-bird = { $kind } da { $mass }{ $condition ->
    [frozen] , dal freezer
    [part-thawed] , a metà scongelamento
   *[fresh] {""}
}
ask-salt-table = sale fino da cucina
ask-salt-fine-sea = sale marino fino
ask-salt-pickling = sale per conserve
ask-salt-flake-kosher = sale kosher in fiocchi
ask-salt-coarse-kosher = sale kosher grosso
ask-salt-coarse-sea = sale marino grosso
ask-salt-own = sale tuo
ask-food-raw-whole = Volatile crudo intero
ask-food-raw-pieces = Pezzi crudi
ask-food-raw-duck-or-goose = Anatra o oca cruda
ask-food-giblets = Frattaglie crude
ask-food-leftovers = Carne cotta e avanzi
ask-food-cooked-pieces = Fette cotte
ask-food-cooked-in-gravy = Carne cotta nel sugo
ask-food-gravy = Sugo e brodo
ask-food-stuffing = Ripieno cotto
ask-food-stuffing-and-gravy = Ripieno e sugo
ask-food-soup = Zuppa e stufato

ask-seconds = { $n } s
ask-minutes = { $n } min
ask-amount = { $unit ->
    [milligram] { $n } mg
    [gram] { $n } g
    [kilogram] { $n } kg
    [pound] { $n } lb
    [metric-pound] { $n } × 500 g
    [ounce] { $n } oz
    [stick] { $n ->
        [one] { $n } panetto americano di burro
       *[other] { $n } panetti americani di burro
    }
    [pinch] { $n ->
        [one] { $n } pizzico
       *[other] { $n } pizzichi
    }
    [second] { $n } s
    [minute] { $n } min
    [hour] { $n } h
    [day] { $n ->
        [one] { $n } giorno
       *[other] { $n } giorni
    }
    [teaspoon] { $n ->
        [one] { $n } cucchiaino
       *[other] { $n } cucchiaini
    }
    [tablespoon] { $n ->
        [one] { $n } cucchiaio
       *[other] { $n } cucchiai
    }
    [cup] { $n ->
        [one] { $n } tazza
       *[other] { $n } tazze
    }
    [fluid-ounce] { $n } fl oz
    [pint] { $n } pt
    [quart] { $n } qt
    [gallon] { $n } gal
    [milliliter] { $n } ml
    [liter] { $n } l
    [fahrenheit] { $n } °F
    [celsius] { $n } °C
    [gas-mark] gas mark { $n }
    [thermostat] thermostat { $n }
   *[other] { $n }
}

# ---- il sale
ask-salt-convert = { $given } di { $from } = { $volume } di { $to } ({ $mass }).
# $rule e $mass sono percentuali del volume.
ask-salt-rule-holds = Regola dei cuochi: { $rule } % del volume. A peso è { $mass } %, quindi la regola va bene.
ask-salt-rule-fails = Regola dei cuochi: { $rule } % del volume. A peso è { $mass } %; io seguo il peso.
ask-salt-weighs = { $volume } di { $salt } = { $mass }.
ask-dose = { $bird }: { $volume } di { $salt } in tutto ({ $mass }, { $strength ->
    [light] dose leggera
    [bold] dose abbondante
   *[usual] la solita dose
}).
ask-dose-shares = Così: { $shares }.
ask-dose-share = { $place ->
    [cavity] { $volume } nella cavità
    [bone-side] { $volume } dal lato dell’osso
    [breast] { $count ->
        [one] { $volume } sotto la pelle del petto
       *[other] { $volume } su ciascun lato del petto
    }
    [thigh] { $volume } su ciascuna sovracoscia
    [drumstick] { $volume } su ciascun fuso
   *[skin] { $volume } sulla pelle
}
ask-dose-skin = Per la pelle mescolalo con altrettanto pepe e, se la vuoi croccante, altrettanto lievito istantaneo non vanigliato.
ask-oversalt-given = { $mass } ({ $salt })
ask-oversalt-much = Sì: circa { $times } volte la dose. Sono { $given }, e qui ne servono { $dose }.
ask-oversalt-a-little = Un po’: sono { $given }, e qui ne servono { $dose }. Lascialo così e sala poco la salsa.
ask-oversalt-right = No, va bene così: { $given }, e qui ne servono { $dose }.
ask-oversalt-little = No, anzi è poco: sono { $given }, e qui ne servono { $dose }.
ask-salt-enough-much = Più che abbastanza, circa { $times } volte la dose: sono { $given }, e questo volatile ne vuole { $dose }.
ask-salt-enough-a-little = Sì, un po’ di più: sono { $given }, e questo volatile ne vuole { $dose }.
ask-salt-enough-right = Sì, più o meno giusto: { $given }, e questo volatile ne vuole { $dose }.
ask-oversalt-double = Sì, il doppio del sale è troppo.
ask-oversalt-fresh = Togli subito con la mano quello che c’è sopra. Se devi proprio sciacquare, piano e senza schizzi; poi asciuga e strofina il lavello: sciacquare sparge germi.
ask-oversalt-soaked = Ormai è entrato: togli con la mano quello che c’è ancora sopra, senza sciacquare.
ask-oversalt-either = Nella prima ora, toglilo con la mano. Se devi proprio sciacquare, piano e senza schizzi; poi asciuga e strofina il lavello: sciacquare sparge germi. Dopo è entrato: solo con la mano.
ask-oversalt-beside = Niente sale nella salsa né nel ripieno. Rovina il gusto e non fa male a nessuno, tranne a chi deve evitare il sale.
ask-dose-per-lb = { $volume } di { $salt } per libbra di volatile ({ $mass }).
ask-dose-per-kg = { $volume } di { $salt } per chilo di volatile ({ $mass }).
ask-spoon-weights = { $volume } pesa: { $weights }.
ask-spoon-weight = { $mass } di { $salt }
ask-dose-rest = Poi 24 h o più in frigo, senza coprire; al massimo { $longest }.
ask-dose-none = Soluzione al { $percent } %: chi l’ha confezionato l’ha già salato. Niente altro sale, niente salamoia.
ask-dose-light = Contiene già il { $percent } % di soluzione, quindi la dose è leggera.
ask-brine = Salamoia al { $percent } %: { $mass } di sale in { $water } d’acqua. Cioè { $volume } di { $salt }.
ask-brine-strength = { $given } % è più di quanto l’acqua fredda tenga, o proprio niente. Sopra 0 e fino a { $high } %, per esempio: salamoia al 6 % per 4 litri.
ask-brine-other = Percentuale su tutta la salamoia; sulla sola acqua è { $percent } %.
ask-brine-time = Tempo: { $time }, in una pentola da { $vessel }.
ask-brine-usual = { $time } per volatili da { $low } a { $high }.
ask-brine-cold = Carne e salamoia restano a { $cold } o meno, 48 h al massimo.
ask-depth = Dopo { $rest } in frigo il sale è arrivato a circa { $depth } mm (da { $low } a { $high }).
ask-depth-pork = È il punto in cui arriva un decimo del sale della superficie. Misurato sul maiale; per il tacchino non l’ha pubblicato nessuno.
ask-sodium = { $bird } con il solito sale, { $who }: circa { $expected } mg di sodio (da { $low } a { $high }).
ask-sodium-one-of = { $people ->
    [one] mangiato da una sola persona
   *[other] una porzione su { $people }
}
ask-sodium-grams = { $mass } di carne cotta
ask-sodium-day = È dal { $low } al { $high } % dei { $daily } mg di una giornata.
ask-sodium-care = È una stima: se il sodio conta per la tua salute, chiedi al medico.
ask-own = Il tuo sale: { $teaspoon } al cucchiaino, { $tablespoon } al cucchiaio.
ask-own-not-plain = Sodio e peso non tornano per del sale puro. Guarda l’etichetta, per esempio: il mio sale: 1/4 di cucchiaino ha 280 mg di sodio.
ask-own-density = Nessun sale è così leggero o così pesante: un cucchiaino pesa da 1,5 a 8 g. Controlla il cucchiaino, per esempio: il mio sale: 1/4 di cucchiaino è 0,7 g.

# ---- il volatile
ask-thaw = { $bird }: { $fridge } in frigo, o { $water } in acqua fredda cambiata ogni { $every }.
ask-fridge-warm = Il tuo frigo è a { $at }: sopra { $cold } niente di questo vale. Mettilo più freddo, e controlla prima di metterci la carne.
ask-thaw-care = Scongelato in frigo si conserva { $keeps }; scongelato in acqua, va cotto subito. Mai sul piano di lavoro.
ask-roast = { $bird }, { $cooker ->
    [fan-oven] forno ventilato
    [smoker] affumicatore
   *[oven] forno
} a { $setting }: { $time }, più probabile { $middle }.
ask-roast-done = È cotto quando lo dice il termometro, non l’orologio: { $target } in petto, sovracoscia e ala.
ask-roast-practice = Una parte è esperienza di chi cucina, non una tabella pubblicata.
ask-bird-for = { $people ->
    [one] Una persona: { $kind }, da { $low } a { $high }.
   *[other] { $people } persone: { $kind }, da { $low } a { $high }.
}
ask-bird-for-exactly = { $people ->
    [one] Una persona: { $kind }, { $low }.
   *[other] { $people } persone: { $kind }, { $low }.
}
ask-portion = A persona da { $low } a { $high } di { $kind }, come si compra, ossa comprese.
ask-bird-for-several = Meglio { $birds }, da { $low } a { $high } ciascuno.
ask-bird-for-leftovers = Se vuoi avanzi, prendi da un quarto alla metà in più.
ask-people-for = { $bird }: basta per { $low }–{ $high } persone, o { $some } con avanzi.
ask-fuel = { $fuel ->
    [charcoal] Carbonella
    [propane] Propano
   *[pellets] Pellet
} per { $span } a circa 165 °C: da { $low } a { $high }. È esperienza di chi cucina, nessuna tabella; tieni pronta metà dose in più.
ask-fuel-bottle = Una bombola piena ne contiene { $bottle }.
ask-fuel-care = Solo all’aperto, mai in casa, in garage o in tenda.

# ---- sicurezza
ask-lethality-enough = Sì, secondo la tabella: { $at } nel punto più freddo devono durare { $needed }, tu sei a { $held }.
ask-lethality-not-yet = Non ancora: { $at } nel punto più freddo devono durare { $needed }. Mancano { $missing }.
ask-lethality-never = No. Sotto { $first } non si conosce un tempo che basti. Continua la cottura fino a { $kitchen }.
ask-lethality-instant = Sì: con { $at } nel punto più freddo è subito sicuro.
ask-lethality-time = { $at } devono durare { $needed } nel punto più freddo.
ask-lethality-go-on = Non ancora: avanti fino a { $kitchen } nel punto più spesso del petto, nel più interno della coscia e nell’ala. Secondo la tabella { $at } dovrebbero durare { $needed } nel punto più freddo.
ask-lethality-stuffing-not = No: il ripieno deve arrivare a { $target } al centro; { $at } non basta. La carne è pronta prima? Togli il ripieno e finiscilo in forno.
ask-lethality-stuffing = Sì, se è il centro: il ripieno è sicuro a { $target }.
ask-lethality-care = Per la carne, con un termometro controllato; non per il ripieno. Le autorità per la sicurezza alimentare dicono alle cucine { $kitchen } dappertutto: nel dubbio, segui quello.
ask-come-up = Non fidarti. Le { $span } di salita non contano come tenuta, e il calore non annulla tutto quello che è cresciuto tra { $low } e { $hot }. Se è rimasto lì più di due ore circa senza calore costante, buttalo; altrimenti avanti fino a { $kitchen } dappertutto.
ask-safe = { $target } nel punto più spesso del petto, nel più interno della sovracoscia e nell’ala.
ask-safe-held = { $target } per { $hold } nel punto più spesso del petto, nel più interno della sovracoscia e nell’ala. { $plan }, su cui conto io, non chiede minuti.
ask-safe-higher = Mi baso su { $plan } in petto, coscia e ala. Health Canada dice { $target } per un volatile intero: se lo segui, lascialo dentro fino a lì.
ask-safe-stuffing = Ripieno: { $target } al centro, dentro il volatile o a parte.
ask-safe-where = Tieni la punta lontana dall’osso. Colore e succhi limpidi non provano niente.
ask-out-fine = Dopo { $out } fuori va ancora bene. Restano { $left }: poi va mangiato, messo in frigo o buttato.
ask-out-if-cool = Vale fino a { $air } intorno; se fa più caldo, è un’ora in tutto.
ask-out-limit = Due ore fuori dal frigo in tutto, una sopra { $air }. Poi si butta.
ask-out-discard = Buttalo: { $out } fuori, e il limite è { $limit }.
ask-out-dont = No: { $out } fuori sono troppe, il limite è { $limit } in tutto.
ask-out-why = Riscaldarlo non lo rende sicuro: certe tossine restano.
ask-keeps = { $food }: { $days } in frigo.
ask-keeps-still = { $age } sta nel limite. { $food }: { $days } in frigo.
ask-keeps-over = Butta via: { $age } è troppo. { $food }: { $days } in frigo.
ask-keeps-that-still = { $food }: { $days } in frigo; { $age } ci sta.
ask-keeps-that-over = { $food }: { $days } in frigo; dopo { $age } si butta.
ask-days = { $n ->
    [one] { $n } giorno
   *[other] { $n } giorni
}
ask-days-range = { $low }–{ $high } giorni
ask-months = { $n ->
    [one] { $n } mese
   *[other] { $n } mesi
}
ask-months-range = { $low }–{ $high } mesi
ask-keeps-care = Il frigo a { $cold } o meno. Se l’aspetto o l’odore è strano, si butta.
ask-keeps-frozen = { $food }: { $months } in freezer per la qualità. Finché è ben congelato, resta sicuro.
ask-keeps-unknown = { $food }: non conosco un tempo pubblicato. Prudenza: fuori dal frigo due ore al massimo.
ask-cooling = In frigo entro { $limit } da quando lascia il calore, anche caldo, in contenitori bassi, la carne staccata dall’osso.
ask-cooling-marks = Da { $from } a { $middle } entro 2 h, a { $cold } entro 6 h in tutto.
ask-reheat = Riscalda a { $target } fino al cuore.
ask-reheat-gravy = Il sugo va portato a pieno bollore.
ask-reheat-care = Coperto, con un po’ di brodo. Non in una pentola a cottura lenta.
ask-reheat-once = Nel Regno Unito: riscaldare una volta sola.
ask-refreeze = Se si è scongelato in frigo si può ricongelare, crudo o cotto. Se in acqua o nel microonde, prima cuocilo.
ask-refreeze-out = Non se è rimasto fuori più di due ore.
ask-colour = Colore e succhi limpidi non provano niente, rosa o no. Decide il termometro:
ask-stand = Lascialo riposare { $least } o più prima di tagliare, coperto senza stringere. Prima si scalda ancora, poi si raffredda.
ask-oven-low = No: per il pollame serve un forno a { $limit } o più, dicono le autorità per la sicurezza alimentare.
ask-oven-fits = Sì, { $at } va bene. Per il pollame le autorità chiedono { $limit } o più.
ask-oven = Imposta il forno a { $limit } o più: è quello che dicono per il pollame le autorità per la sicurezza alimentare.
ask-oven-level = Forno { $level ->
        [low] dolce
        [high] caldo
       *[medium] medio
    }: circa { $setting }. Ogni forno è diverso: conta il termometro nel volatile.
ask-oven-smoker = Un affumicatore lavora da { $low } a { $high }, con il volatile scongelato fino al cuore.
ask-off-dial-at = { $side ->
    [cold] Gli mancano { $by }: per { $setting }, mettilo a { $dial }.
   *[hot] Scalda { $by } di troppo: per { $setting }, mettilo a { $dial }.
}
ask-off-dial-by = { $side ->
    [cold] Gli mancano { $by }: mettilo più alto di altrettanto.
   *[hot] Scalda { $by } di troppo: mettilo più basso di altrettanto.
}
ask-off-dial = { $side ->
    [cold] Allora mettilo più alto, di quanto gli manca.
    [hot] Allora mettilo più basso, di quanto scalda di troppo.
   *[some] Se scalda troppo, mettilo più basso di altrettanto; se poco, più alto.
}
ask-off-dial-thermometer = Un termometro da forno accanto al volatile dice di quanto. Dagli 20 min: ogni forno oscilla.
ask-hold = Tienilo a { $hot } o più; sotto, { $limit } al massimo, poi in frigo.
ask-wash = No, non lavarlo: tra chi l’ha fatto, il { $share } % aveva poi batteri nel lavello. Asciugalo tamponando, e lavati le mani per 20 s.
ask-counter-thaw = Mai sul piano di lavoro, né in acqua calda: l’esterno si guasta mentre il cuore è ghiaccio. In frigo, o in acqua fredda cambiata ogni { $every }, poi subito in cottura.
ask-warm-thaw = Buttalo: fuori è stato tiepido più di { $limit } mentre il cuore si scongelava, e la cottura non rimedia. Il prossimo in frigo, o in acqua fredda cambiata ogni { $every }.
ask-stuffing = La cosa più sicura è cuocerlo a parte. Dentro: farcisci senza pressare, subito prima di cuocere, e mai un volatile congelato, affumicato o fritto.
ask-stuffing-target = Anche il centro del ripieno deve arrivare a { $target }.
ask-fry-frozen = No: mai friggere un volatile congelato o congelato in parte. L’olio trabocca e prende fuoco. Prima scongelalo fino al cuore.
ask-fry-stuffed = No: mai friggere un volatile farcito.
ask-fry-heavy = No: { $given } è troppo per una friggitrice. Al massimo 5,4 kg.
ask-fry-time = { $mass }: circa { $time } a 177 °C; è cotto a { $target } dappertutto.
ask-fry = Friggere: all’aperto, a 3 m o più dalla casa, olio a 177 °C, da 7 a 11 min al chilo, mai oltre i 5,4 kg.
ask-fry-care = Scongelato fino al cuore e asciutto, mai farcito: l’acqua fa traboccare l’olio. Trova prima il livello dell’olio con l’acqua, non lasciare mai l’olio incustodito, tieni vicino un estintore a polvere.
ask-charcoal = Mai in casa, in garage, in tenda o sotto una tettoia. Il monossido di carbonio uccide e non ha odore. Anche una griglia ancora tiepida resta fuori.
ask-fire = { $call ->
    [none] Sportello del forno chiuso e forno spento. Niente acqua, e non portare fuori la teglia. Se non si spegne subito o escono fiamme: tutti fuori, porte chiuse, e da fuori chiama i vigili del fuoco.
   *[known] Sportello del forno chiuso e forno spento. Niente acqua, e non portare fuori la teglia. Se non si spegne subito o escono fiamme: tutti fuori, porte chiuse, e da fuori chiama il { $call }.
}
ask-fire-elsewhere = Una padella sul fornello: spegni e metti il coperchio. Affumicatore o griglia: coperchio e prese d’aria chiusi, gas chiuso. Solo se ci arrivi senza pericolo.
ask-gas = { $call ->
    [none] Non toccare interruttori, niente fiamme, niente telefonate da dentro. Apri le finestre che trovi, tutti fuori, poi da fuori chiama i vigili del fuoco o l’azienda del gas.
   *[known] Non toccare interruttori, niente fiamme, niente telefonate da dentro. Apri le finestre che trovi, tutti fuori, poi da fuori chiama il { $call } o l’azienda del gas.
}
ask-kitchen-smoke = { $call ->
    [none] Spegni, sportello del forno chiuso, finestre aperte. Fiamme, o fumo che non smette: tutti fuori e da fuori chiama i soccorsi. Quando è freddo, cerca il grasso colato.
   *[known] Spegni, sportello del forno chiuso, finestre aperte. Fiamme, o fumo che non smette: tutti fuori e da fuori chiama il { $call }. Quando è freddo, cerca il grasso colato.
}
ask-carbon-monoxide = { $call ->
    [none] Tutti fuori all’aria, subito, porte aperte passando. Poi chiama i soccorsi; nessuno rientra finché non lo dicono loro. Mal di testa, vertigini, nausea: dillo. Carbone e griglia non bruciano mai in casa.
   *[known] Tutti fuori all’aria, subito, porte aperte passando. Poi chiama il { $call }; nessuno rientra finché non lo dicono loro. Mal di testa, vertigini, nausea: dillo. Carbone e griglia non bruciano mai in casa.
}
ask-hot-oil = { $call ->
    [none] Spegni il fornello, se ci riesci senza sporgerti sulla pentola. Tutti indietro, prima i bambini, e niente acqua. Fiamme, o olio addosso a qualcuno: chiama i soccorsi. Prima di ricominciare: freddo, e meno olio.
   *[known] Spegni il fornello, se ci riesci senza sporgerti sulla pentola. Tutti indietro, prima i bambini, e niente acqua. Fiamme, o olio addosso a qualcuno: chiama il { $call }. Prima di ricominciare: freddo, e meno olio.
}
ask-burn = { $call ->
    [none] Acqua corrente fresca sopra, 20 min, subito; via anelli e orologio, poi coprila con un panno pulito. Niente ghiaccio, niente burro. Più grande di una mano, bianca o con vesciche, sul viso, o un bambino: medico, o chiama i soccorsi.
   *[known] Acqua corrente fresca sopra, 20 min, subito; via anelli e orologio, poi coprila con un panno pulito. Niente ghiaccio, niente burro. Più grande di una mano, bianca o con vesciche, sul viso, o un bambino: medico, o chiama il { $call }.
}
ask-choking = { $call ->
    [none] Non tossisce e non parla? Chiama i soccorsi. Piegato in avanti: 5 colpi tra le scapole, poi 5 spinte sopra l’ombelico, a turno finché esce. Un neonato: mai la pancia; colpi a faccia in giù, poi 5 spinte sul petto.
   *[known] Non tossisce e non parla? Chiama il { $call }. Piegato in avanti: 5 colpi tra le scapole, poi 5 spinte sopra l’ombelico, a turno finché esce. Un neonato: mai la pancia; colpi a faccia in giù, poi 5 spinte sul petto.
}
ask-fainted = { $call ->
    [none] Chiama subito i soccorsi. Respira normalmente: sul fianco, testa indietro, e resta lì. Non respira, o boccheggia: a pancia in su, premi forte e veloce al centro del petto, da 100 a 120 volte al minuto, finché arrivano. Se gira la testa a più di uno: tutti fuori, all’aria.
   *[known] Chiama subito il { $call }. Respira normalmente: sul fianco, testa indietro, e resta lì. Non respira, o boccheggia: a pancia in su, premi forte e veloce al centro del petto, da 100 a 120 volte al minuto, finché arrivano. Se gira la testa a più di uno: tutti fuori, all’aria.
}
ask-allergy = { $call ->
    [none] Lingua, labbra o gola che si gonfiano, o manca il fiato dopo aver mangiato: chiama subito i soccorsi e di’ “reazione allergica”. Penna di adrenalina, se c’è: subito nella parte esterna della coscia, una seconda dopo 5 min se non va meglio. Sdraiato, gambe alzate; sollevato se respira a fatica. Non alzarsi, non camminare.
   *[known] Lingua, labbra o gola che si gonfiano, o manca il fiato dopo aver mangiato: chiama subito il { $call } e di’ “reazione allergica”. Penna di adrenalina, se c’è: subito nella parte esterna della coscia, una seconda dopo 5 min se non va meglio. Sdraiato, gambe alzate; sollevato se respira a fatica. Non alzarsi, non camminare.
}

ask-sick = Per ora niente cibo: chi vomita o ha la diarrea resta fuori dalla cucina fino a 48 h dopo l’ultima volta. I suoi compiti li fa qualcun altro.
ask-sick-made = Quello che ha preparato da quando è cominciato e che poi non si cuoce bene: via. Mani con acqua e sapone, 20 s; il gel serve a poco contra un virus intestinale.
ask-ate-sick = { $call ->
    [none] Piccoli sorsi d’acqua, spesso, e riposo. Dal medico se c’è sangue, febbre oltre { $fever }, niente resta giù, quasi niente pipì, gira la testa alzandosi, o più di tre giorni. Incinta, molto piccoli, anziani o malati: chiama subito. Vista annebbiata, muscoli deboli, fatica a respirare o inghiottire: i soccorsi.
   *[known] Piccoli sorsi d’acqua, spesso, e riposo. Dal medico se c’è sangue, febbre oltre { $fever }, niente resta giù, quasi niente pipì, gira la testa alzandosi, o più di tre giorni. Incinta, molto piccoli, anziani o malati: chiama subito. Vista annebbiata, muscoli deboli, fatica a respirare o inghiottire: il { $call }.
}
ask-ate-sick-rest = Nessuno ne mangia ancora finché non si sa: avvolto, segnato, in frigo. In più d’uno state male? Avvisa l’ASL. Chi vomita non tocca cibo di altri fino a 48 h dopo.
ask-cut = Premi finché smette, sciacqua sotto acqua corrente, asciuga, poi un cerotto impermeabile e sopra un guanto. Cibo con sangue: via. Coltello e tagliere in acqua calda e sapone.
ask-cut-doctor = Profondo, aperto, o sanguina ancora dopo 10 min di pressione: dal medico.

ask-stuffing-slow = La carne è a { $target } e il ripieno no? Tiralo fuori caldo con un cucchiaio e finiscilo senza pause in una teglia in forno, o in padella mescolando, fino a { $target } al centro. La carne non c’è ancora? Resta tutto dentro.
ask-stuff-ahead = No: mescola il ripieno e farcisci subito prima di cuocere, senza pressare. Fino ad allora secco e umido aspettano in frigo, separati. Il centro deve arrivare a { $target }.

# ---- abitudini, e quel che va storto
ask-fridge = { $cold } o meno, secondo un termometro messo dentro.
ask-baste = Non serve. Ogni volta che apri il forno perdi tempo, e la pelle bagnata non diventa croccante.
ask-foil = Abbastanza scuro? Un foglio di alluminio appoggiato sopra e si continua: solo il termometro dice quando è cotto. Toglilo negli ultimi minuti se vuoi la pelle croccante.
ask-carve = Prima le cosce: taglia la pelle, apri la coscia in fuori e taglia nell’articolazione; poi separa fuso e sovracoscia. Ogni petto intero dall’osso e poi a fette di traverso. Le ali per ultime. Non sul tagliere del crudo.
ask-pop-up = Quel segnale può scattare prima o dopo. Controlla col termometro: { $target } in petto, coscia e ala, e allora è cotto.
ask-bag-inside = Un sacchetto di carta non fa danni: toglilo e guarda i { $target } nella carne. Plastica sciolta o deformata: butta sacchetto e volatile.
ask-probe-out = Di nuovo nel punto più spesso del petto, punta lontana dall’osso; quel che segnava fuori non conta. Rotto? Va bene qualsiasi termometro istantaneo che segni { $ice } in acqua e ghiaccio. Senza, nessuno può dire che è cotto.
ask-mess = Prima carta, poi acqua calda e sapone, poi un disinfettante; mani 20 s. Quel che si mangia crudo e ha preso il liquido va buttato.
ask-crossed = Ciò che si mangia crudo e ha toccato liquido crudo, il suo coltello o il suo tagliere si butta. Poi coltello, tagliere e mani: acqua calda e sapone, mani { $wash }.
ask-dog = Niente ossa cotte, si scheggiano; niente di salato, niente cipolla. Un po’ di carne al naturale va bene.
ask-fragile = Chi è incinta, ha più di 65 anni, è molto piccolo o ha difese basse: sì, caldo, e solo con { $target } ovunque si misuri, anche nel ripieno; avanzi solo riscaldati fin lì. Nel dubbio, chiedi al medico.
ask-neck = Fuori prima di salare; guarda da entrambe le parti, spesso sono in un sacchetto. Falli sobbollire per la salsa, fino a { $target }. Crudi durano { $giblets } in frigo.
ask-finish-oven = Sì, dritto da un calore all’altro; mai metà oggi e metà dopo. Forno a { $oven } o più, { $target } come sempre.
ask-side-up = Petto in su, punte delle ali infilate sotto.
ask-fridge-shelf = Sul ripiano più basso, in una teglia che raccolga il liquido: niente di crudo sopra altro cibo.
ask-fridge-cover = Scoperto la pelle si asciuga e viene più croccante. Teglia sotto, ripiano più basso. Coprilo se può toccare altro cibo o gocciolarci sopra.
ask-rinse-salt = No: il sale è entrato, e sciacquare sparge germi nel lavello. Asciugalo con la carta; i grani rimasti li togli con la mano.
ask-salted-twice = Togli con la mano quel che puoi, senza sciacquare, e basta sale: né sopra, né nel burro, né fondo nella salsa. Se è lì da tanto, la carne sarà salata: taglia fine e non salare altro.
ask-brine-frozen = Prima scongela: nel ghiaccio il sale quasi non entra. Mezzo scongelato può finire in una salamoia fredda, a { $cold } o meno.
ask-brine-or-not = Non è obbligatorio. A secco è la via facile: sale sopra e sotto la pelle, un giorno o due in frigo, niente da rovesciare. La salamoia vuole un secchio e posto a { $cold }. Né l’una né l’altro per un volatile kosher o con soluzione aggiunta.
ask-rack = Senza griglia? Bastano fette spesse di cipolla e carota o un anello di stagnola. In forno, in basso, così il volatile sta al centro.
ask-truss = Non serve: con le zampe libere le cosce cuociono prima. Se si apre troppo, lega le punte senza stringere.
ask-pan-water = Una tazza, perché il fondo non bruci. Di più ammorbidisce solo la pelle.
ask-oven-bag = Sacchetto da forno, come dice la confezione: è più rapido, quindi misura presto. Niente sacchetti di carta o della spesa: possono bruciare e dare fumi.
ask-temper = Non serve: in un’ora dentro si scalda appena. Fuori solo quanto dice il piano, per asciugare la pelle: conta nel limite di { $limit }.
ask-which-salt = Qualsiasi, se lo pesi: un grammo è un grammo. A cucchiai no: il sale fino da tavola pesa circa il doppio di quello in scaglie. Dimmi quale hai, «sale da tavola», e te lo dico in quello.
ask-fits = Misura prima: due dita d’aria intorno nel forno, e una teglia da cui le cosce non sporgano. Non ci sta? Aperto a libro o a pezzi su due teglie ci sta e cuoce prima: di’ «aperto».
ask-boil = Sì: coperto d’acqua, appena fremente, non a bollore forte, finché petto, coscia e ala segnano { $target }. Pelle non croccante, brodo buono. Le mie ore sono per il forno: qui lo dice solo il termometro.
ask-weather = Al riparo dal vento, coperchio chiuso, più combustibile pronto: vento, pioggia e gelo mangiano calore. Comunque all’aperto, mai in garage o tenda. Dimmi cosa segna l’affumicatore e calcolo con quello.
ask-grill = Sì: coperchio chiuso, volatile accanto alle fiamme, non sopra, { $oven } o poco più alla griglia. Lo pianifico come affumicatore. Solo all’aperto.
ask-smoke = Legno dolce: melo, ciliegio, un po’ di quercia. Il volatile entra quando il fumo è sottile e azzurrino; bianco e denso dà amaro: più aria e aspetta. Solo all’aperto.
ask-gravy-how = Cola il fondo e sgrassa. Tosta tanta farina quanto grasso tieni, unisci fondo e brodo con la frusta finché scorre, porta a bollore. Assaggia prima di salare: un volatile salato cola sale.
ask-carcass = Ossa in frigo entro { $limit }, usate in { $days } o congelate. Sobbollire con cipolla e carota 2-3 h, filtrare, raffreddare in contenitori bassi.
ask-bones-out = Niente brodo con ossa rimaste fuori più di { $limit }: bollirle non rimedia a quello che ci è cresciuto. Buttale. In frigo in tempo, durano { $days }.
ask-reheat-twice = Riscalda solo quello che si mangia, una volta: ogni volta resta un po’ tiepido. Se devono essere due, a { $target } dappertutto tutte e due le volte, e in mezzo in frigo entro { $limit }.
ask-leftovers-at = { $at } è troppo per gli avanzi: si tengono a { $cold } o meno. Sopra per più di { $limit } in tutto, tavola e macchina comprese, o nessuno sa da quanto: si buttano, riscaldarli non serve. Meno: in frigo subito.
ask-crisp = Pelle asciutta: una notte in frigo scoperto, un velo d’olio, niente stagnola, poca acqua nella teglia. Ancora molle alla fine? { $crisp } per gli ultimi 10 min, senza perderlo d’occhio.
ask-fat = Va bene l’uno o l’altro. Pelle asciutta, uno strato sottile appena prima di infornare; burro morbido sotto la pelle per il gusto. Senza sale se il volatile è salato.
ask-no-butter = Olio: uno strato sottile sulla pelle asciutta appena prima di infornare, e se vuoi anche sotto. Dora lo stesso.
ask-allergy-milk = Latte: olio al posto del burro, sulla pelle e sotto. Ripieno, sugo e purè hanno spesso burro o panna.
ask-allergy-gluten = Glutine: il ripieno di pane a parte, nel suo contenitore, non dentro; il sugo con amido di mais, non con farina; il lievito secondo l’etichetta.
ask-allergy-nuts = Frutta a guscio: niente nel ripieno, nei contorni e nel dolce; ripieni pronti, oli e pane secondo l’etichetta.
ask-allergy-egg = Uovo: spesso nel ripieno, nella pasta, nelle salse e nei dolci.
ask-allergy-label = Leggi anche l’etichetta della carne: se è condita o iniettata può contenere latte, grano o soia. Tagliere e coltello puliti, quel piatto per primo. Quanta attenzione serve lo sa la persona o il suo medico.
ask-preheat = Sì, caldo prima che entri il volatile: un forno 20-30 min, un fuoco fino a un’ora.
ask-dial = Quei numeri cambiano da forno a forno: guarda il libretto. O metti quello di mezzo e lascia un termometro da forno sulla griglia: dopo 20 min deve segnare { $oven } o poco più. Dimmi quanto segna.
ask-early = Cotto vuol dire { $target } ovunque. Poi tienilo avvolto a { $hot } o più, col termometro. Oppure taglialo, in frigo entro { $limit }, e scaldalo per cena a { $target }.
ask-fan = Vanno bene tutti e due. Con la ventola va più veloce e dora prima; comunque non sotto { $oven }. Di’ “forno ventilato” e pianifico così.
ask-ahead = Sì: cotto a { $target }, tagliato, in frigo entro { $limit } in strati bassi, mangiato in { $days }. Scalda coperto con un po’ di brodo, a { $target }.
ask-flat = Forbici ai due lati della spina dorsale, toglila, gira il volatile e schiaccia il petto. Serve circa due terzi del tempo. Di’ “aperto a libro” quando pianifichi.
ask-fresh-or-frozen = Buoni uguale. Congelato si compra settimane prima, servono solo giorni per scongelarlo. Fresco: al massimo { $raw } prima di cuocerlo.
ask-thaw-microwave = Per scongelare, solo se ci sta, secondo il libretto del microonde. Poi cuocilo subito: alcune parti si scaldano.
ask-thaw-sink = Nell’involucro, ben chiuso, sotto acqua fredda cambiata ogni { $every }. Poi cuocilo subito. Dimmi il peso e ti dico quanto ci vuole.
ask-inject = Si può: liquido freddo, poco prima di infornare, e il suo sale conta nella dose. L’ago porta germi all’interno: decidono { $target } in ogni punto.
ask-dropped = Crudo: puliscilo con la carta, senza sciacquare, e cuocilo a { $target } come previsto; poi pavimento e mani. Cotto: togli quel che ha toccato terra; se non si sa, buttalo.
ask-prick = Oca e anatra: sì, solo la pelle, dove c’è grasso. Tacchino e pollo ne fanno a meno; mai fino alla carne, perde succo.
ask-worry = Contano soprattutto tre cose: { $target } in petto, coscia e ala, mai più di { $limit } fuori dal freddo o dal caldo, mani e tagliere lavati dopo la carne cruda. Agli orari penso io; tu misuri.
ask-not-in-time = Allora resta dentro: contano i { $target }, non l’ora. Più calore, cominciare dai contorni, tagliarlo e finire i pezzi in forno, o mangiare più tardi. Mandami presto le temperature e ti dico cosa serve.
ask-raw-inside = Di nuovo in forno, intero o a pezzi, fino a { $target } nel punto più spesso; prima nessuno ne mangia. Coltello, tagliere e mani con acqua calda e sapone. Rosa vicino all’osso non prova niente: il termometro sì.
ask-ate-raw = Quasi sempre non succede niente; nessuno può dirlo. Il resto di nuovo in forno fino a { $target }, o via. Sangue, febbre alta, niente resta giù o più di tre giorni: dal medico. Incinta, molto piccoli, anziani o malati: chiama adesso.
ask-half-cook = No: mai metà adesso e il resto dopo. Il centro resta tiepido per ore e il calore non cancella tutto quello che cresce. Cuocilo tutto fino a { $target }, taglialo, al freddo entro { $limit }.
ask-fridge-down = Tienilo chiuso: resta freddo circa { $unopened }. Poi misura: un volatile sopra { $cold } per più di { $limit } si butta, cuocerlo non serve. Se ha ancora ghiaccio o è a { $cold } o meno, va bene.
ask-fridge-off = { $span } senza corrente sono troppe, anche chiuso: il frigo resta freddo circa { $unopened }. Misura la carne: se ha ancora ghiaccio o è a { $cold } o meno, va bene. Più calda, o non lo sai: si butta, cuocerla non serve.
ask-cold-at = { $at } è troppo per la carne: { $cold } o meno. Sul ghiaccio o in un frigo più freddo, subito. Più di { $limit } sopra, o nessuno sa da quanto: si butta, cuocerla non serve.
ask-kills = { $target } nei punti più spessi uccide i germi. Non quello che hanno lasciato: ciò che è rimasto fuori più di { $limit } resta cattivo, per quanto lo scaldi.
ask-freezer-down = Lascialo chiuso: pieno tiene circa { $full }, mezzo pieno { $half }. Se c’è ancora ghiaccio, o è a { $cold } o meno, va bene: di nuovo in congelatore, o continua a scongelare in frigo. Scongelato e sopra { $cold } per più di { $limit }, o nessuno lo sa: via, qualunque odore abbia.
ask-kosher-bird = Un volatile venduto salato, in salamoia o kosher: niente salamoia, e niente altro sale senza assaggiare.
ask-other-bird = Per questo volatile non conosco tempi né pesi pubblicati, quindi non ne do. Per tutti vale: cotto a { $target } in petto, coscia e ala, col termometro; mai scongelarlo sul piano di lavoro. Conosco tacchino, pollo, cappone, anatra e oca.
ask-thermometer = Punto più spesso del petto, più interno della sovracoscia, attacco dell’ala; la punta al centro della carne, lontana dall’osso. { $target } in tutti.
ask-garage-thaw = Solo se lì è stato sempre a { $cold } o meno, con un termometro. Se non lo sai, buttalo: la cottura non rimedia.
ask-cold-place = Meglio di no: il tempo cambia e gli animali arrivano. Se proprio serve, in una borsa frigo rigida chiusa con ghiaccio e un termometro dentro, sempre a { $cold } o meno. Una giornata fredda non è un frigo.
ask-past-date = “Da consumare entro” è un limite: passato, non si mangia, nemmeno cotto, a meno che sia stato congelato in tempo. “Preferibilmente entro” è più morbido: un volatile fresco dura { $days } in frigo dall’acquisto, non di più.
ask-past-date-care = Nel dubbio, o se odore o tatto sono strani: buttalo. La cottura non rimedia.
ask-smell = Acido, marcio o viscido: buttalo, o riportalo in negozio. La cottura non rimedia, e non assaggiarlo per capire. Un odore leve appena aperta la busta sigillata se ne va in pochi minuti; se resta, buttalo.
# Che cosa possono mangiare i piccoli e chi rischia di più. $call come in ask-choking.
ask-diner-little = Dai sei mesi circa sì: ben cotto, { $target } ovunque, in pezzetti piccolissimi e morbidi, senza pelle né ossa, senza sale; avanzi solo riscaldati fin lì. Mai noci, castagne o chicchi d’uva interi: può soffocare. L’ultima parola è del pediatra.
ask-diner-chokes = Interi no, fino ai cinque anni: noci, castagne, uva, olive e pezzi duri chiudono la gola. Schiacciati o tritati fini, da seduto, con qualcuno accanto. L’ultima parola è del pediatra.
ask-diner-swallowed = { $call ->
    [none] Tossisce forte? Lascialo tossire e stagli vicino. Respiro rumoroso o faticoso, bava, labbra blu? Chiama subito i soccorsi. Tutto bene, e più tardi tosse o fischio? Subito dal medico.
   *[known] Tossisce forte? Lascialo tossire e stagli vicino. Respiro rumoroso o faticoso, bava, labbra blu? Chiama subito il { $call }. Tutto bene, e più tardi tosse o fischio? Subito dal medico.
}
ask-diner-leaves = Meglio di no: foie gras, pâté, salmone affumicato, frutti di mare crudi, formaggi a latte crudo o molli, uovo crudo e carne rosa non sono per chi è incinta, molto piccolo, oltre i 65 anni o con difese basse. L’ultima parola è del medico.
ask-low-salt = Non si può salare lo stesso volatile per alcuni sì e per altri no. Lascialo senza sale (“senza sale”) e metti il sale in tavola, o usane meno (“meno sale”); anche salsa e ripieno senza sale. Se l’etichetta parla di “soluzione” o “salamoia”, il sale c’è già. Quanto ne può mangiare lo dice il medico.
ask-thermometer-which = Uno digitale rapido, o una sonda che resta dentro. Senza, nessuno può dire che è sicuro: fattelo prestare. Prima controllalo: in acqua e ghiaccio segna { $ice }.
ask-no-room = Va bene una borsa frigo rigida con ghiaccio: volatile in un sacchetto ben chiuso, coperchio chiuso, un termometro dentro a { $cold } o meno, ghiaccio nuovo prima che si scaldi. Oppure lascia fuori le bibite; il volatile mai.
ask-carry-food = Freddo, in borsa frigo con ghiaccio, a { $cold } o meno all’arrivo; o caldo, avvolto in una scatola, a { $hot } o più. Altrimenti { $limit } fuori in tutto, viaggio compreso; { $short } sopra i { $air }.
ask-oven-down = Tieni chiuso lo sportello. Se il calore non torna presto, spostalo: un altro forno, quello dei vicini, una griglia con coperchio all’aperto. Se la cottura non è cominciata, di nuovo in frigo.
ask-oven-down-care = Non fermarti a metà per finire dopo. Tiepido ma sotto { $hot } per più di { $limit } in tutto: buttalo.
ask-still-frozen = Subito in acqua fredda, in un sacchetto ben chiuso, acqua nuova ogni { $every }: poco più di 1 h per ogni chilo ancora congelato. Poi cuocilo subito.
ask-still-frozen-cook = Oppure cuocilo così com’è, senza ripieno, in forno, non in affumicatore né in friggitrice: fino a metà tempo in più. Togli le frattaglie appena si staccano. { $target } dappertutto.
ask-from-frozen = In forno, sì: { $oven } o più, senza ripieno, circa metà tempo in più di uno scongelato. Frattaglie fuori appena si staccano, { $target } dappertutto. Mai in affumicatore o friggitrice.
ask-is-thawed = Scongelato: niente ghiaccio nella cavità, le cosce si muovono, { $cold } o meno all’interno. C’è ancora ghiaccio? Più tempo in frigo, o acqua fredda.
ask-too-fast = Abbassa il forno, non sotto { $oven }, e copri con alluminio. Con { $target } dappertutto è cotto: poi tienilo coperto a { $hot } o più.
ask-stall = Fermo un’ora in un affumicatore a bassa temperatura è lo stallo: la pelle bagnata raffredda quanto la camera scalda. Passa da solo. Con più calore finisce prima, anche con l’alluminio, ma la pelle si ammorbidisce. In un forno caldo guarda la punta: in fondo alla carne, lontana dall’osso. Cotto resta { $target }.
ask-too-slow = Forno su a { $oven } o poco più, sportello chiuso. Se c’è fretta, stacca cosce e petto e cuoci i pezzi. Meglio servire tardi che sotto { $target }.
ask-stuffing-for = { $people ->
    [one] Ripieno per uno: da { $low } a { $high }.
   *[other] Ripieno per { $people }: da { $low } a { $high }. Quello che dentro non ci sta senza pressare cuoce a parte.
}
ask-gravy-for = { $people ->
    [one] Sugo per uno: da { $low } a { $high }.
   *[other] Sugo per { $people }: da { $low } a { $high }.
}

# ---- unità
ask-convert = { $given } = { $result }.

# ---- da dove viene un numero. I titoli restano come sono stati stampati.
ask-source-seen = { $publisher }: { $title }
ask-source-seen-secondary = { $publisher }: { $title } (citato da altri)
ask-source-common-practice = Pratica comune, senza fonte: { $title }
ask-source-from-memory = A memoria, non trovato stampato: { $publisher }, { $title }
ask-source-derived = Calcolato da { $publisher }: { $title }

ask-span = { $span }
