### Parole che la gente scrive, per quello che vogliono dire. Non le vede nessuno; le legge il programma.
### Ogni valore è un elenco di parole e locuzioni separate da virgole. Maiuscole e accenti non contano; i plurali italiani
### cambiano vocale e stanno qui come parole loro. Le parole comuni da cinque lettere in su si leggono anche con un errore di
### battitura; la locuzione più lunga vince. Si capiscono anche le parole inglesi, dove qui non vogliono dire altro.

## Come si scrivono le date: mdy o dmy. Se la virgola è decimale: yes o no.
lexicon-date-order = dmy
lexicon-decimal-comma = yes
## Che cosa si può aggiungere a una parola: qui niente.
lexicon-endings = { "" }
## Parole che perdono la fine davanti a vocale e si attaccano alla successiva: l’acqua, dell’acqua, mezz’ora.
lexicon-elisions = l, un, d, dell, all, dall, nell, sull, coll, quell, quest, c, m, t, s, v, n, mezz, quant, dov, com, cos, bell, anch, tutt, senz, nessun, cent, ventun, sott, quand
## Se la mezza viene dopo l’ora (le cinque e mezza: 5:30) o prima.
lexicon-half-hour = past

## Parole che somigliano a un’altra di qui e non lo sono.
lexicon-plain = altri, altro, italia, citta, altre, forse, quali, volte, stessa, nulla, paese, credo, molti, bisogno, serie, morte, spesso, siano, presidente, senso, diritto, nostri, porta, letto, livello, possa, propria, unico, avanti, maggior, nuove, nuovi, pensare, maggiore, posizione, punti, ultimi, fronte, resto, parti, stessi, mente, voglia, lavori, ultima, cerca, nostre, ministro, perso, forze, libero, comuni, francesco, propri, costa, posti, andato, morti, vogliamo, pieno, prende, stesse, dovrebbero, precedenti, abbiano, europea, coloro, proprie, marito, famiglie, libera, metri, pezzo, certa, marco, santo, spese, costo, prego, strade, grave, forme, lavora, prezzi, rimanere, ultime, certe, certi, fratelli, pietro, giornale, momenti, posta, denaro, europeo, stavo, aspettare, condizione, dedicato, ricordare, colori, molta, ponte, conta, inferiore, aprire, comitato, freddo, misure, dimensioni, piani, risposto, conferma, carte, cerco, fiori, scala, formato, salvare, composto, istituzioni, parliamo, senti, vento, vicini, brutto, pertanto, accettare, acque, appuntamento, posizioni, russo, senato, bordo, completa, croce, palle, volto, classico, farci, istruzione, marina, prendi, vieni, macchine, tocca, andate, completo, soluzioni, bassi, canto, dedicata, interni, rischi, consenso, vicina, morta, piante, andava, classifica, compreso, partite, pasta, casino, collezione, finta, frutto, iniziale, porti, copia, viaggi, chiusa, elettrica, andati, manco, salire, sposa, fascia, piatto, carino, europee, inviato, lancio, tende, socio, cammino, firmato, troppi, accedere, esseri, ministri, pianta, bomba, coppie, credi, resti, segnale, arresto, connessione, corretto, impiego, pista, trasporti, ancor, calma, indicato, mostrare, portale, talvolta, tetto, composta, esser, metro, normali, profonda, selezione, ambientale, cesare, coppa, grillo, porno, portando, russa, consegna, pazienza, salto, vengano, comporta, server, smesso, conviene, diavolo, manda, solare, strana, comunicare, concerti, magia, mettersi, quinto, salva, compresa, concessione, lancia, lasciano, passano, poste, precedenza, rotta, scappare, basata, bravi, parete, salvato, destro, tette, tieni, troppe, chiusi, iniziano, scarsa, sorelle, treni, camminare, funzionare, lanciato, pareti, perdendo, ambienti, chiuse, domenico, facciano, persa, riflettere, scale, trono, concetti, fermata, grasso, intesa, rapida, rischia, scandalo, versi, aggiungo, convenzione, foglio, interne, labbra, pensiamo, saltare, compiuto, coperto, corretta, ritornare, sesto, troppa, acquistato, compiere, pietre, prete, riccardo, classici, quinta, riportare, venuti, camere, privo, ripetere, scorta, spinto, tasca, uccelli, bisogni, cambiano, dargli, inferiori, portate, retta, coperta, delegato, francesca, tradotto, trend, vicine, acquisti, bombe, compare, continente, correnti, lasciamo, notti, preparati, affermare, padri, saluto, basse, coste, lanciare, libere, toglie, trasformare, trasformato, borse, confermare, pazzi, ricordiamo, volti, consentire, convinzione, guardano, pianto, sanremo, veloci, attendere, funzionale, prendiamo, spera, concezione, cuori, dedicati, mobilita, saremmo, trascorso, camion, comprese, iscrizioni, marca, menti, sufficienti, accadere, ancona, brani, busta, cartone, speso, tendono, vigili, distanze, letta, canone, colto, commentare, contenti, convinti, facciata, genitore, giardini, indicati, inteso, marmo, scarso, trentino, venditore, africani, dovrai, finto, francisco, funzionano, ignorare, madri, priva, serva, bagni, cantiere, iniziamo, preda, scuro, convento, coperte, distante, marine, macchia, potro, prenda, strato, finira, funzionato, giordano, indicata, mamme, provano, appartamenti, contesti, continue, meteo, parente, porco, senno, service, verbo, cattura, consegnare, dedicate, informa, acquisito, arrestare, europe, grido, iniziali, metterci, mettermi, servi, termina, acquista, basti, cambiera, confessione, conservato, fonda, strati, tenore, butta, inviati, marini, mettete, paure, perle, perse, stage, aiutarti, domestica, interiore, mantenendo, nuoto, ritirare, salario, voluta, mangiano, matto, circo, fermati, fogli, infezione, inviata, mangi, viaggia, cartoni, coerente, dovreste, elettrici, esserne, prega, regio, servira, sognare, corta, esatta, fermate, iniziate, prestato, salari, salito, stadi, tarda, temere, trasformata, africano, cambiate, mazza, spunto, classiche, elettriche, elettronico, fascio, fornitura, proviamo, punito, scossa, servo, vendono, bruce, canne, gennaro, prossimita, saldo, sella, domini, informare, navale, trasferta, carbonio, delta, force, pasti, rispetta, schiera, vogliano, vuote, cacciare, doveri, passiamo, purche, rapito, rimanga, ripetuto, risata, setta, busto, pesaro, rotte, sapra, tardo, vesti, concreti, confermano, durato, martina, vegetali, correzione, foglia, indizio, conduzione, conservatore, creda, delicata, dritta, mortalita, passava, profondi, ristretto, tener, metterti, rispettato, sassi, smette, acuto, grant, manica, matti, preparata, rissa, settimanali, stara, tenete, abbondanza, brave, chiudo, consolato, cuscino, darle, dirci, francis, grigia, lanciano, mariano, partiamo, piste, rischiano, segmento, selezionato, share, sostituisce, calmo, cenere, convenzioni, distanti, facci, fornendo, frattura, grassa, lanciata, liscia, percepito, sacchi, spesi, sufficienza, estere, iniezione, leggerlo, ricorre, saluta, iniziera, piana, regni, terni, confezione, postare, spade, sponda, templi, autostrade, concerne, liscio, presento, retto, spezzato, versa, aiutatemi, bagnato, bastato, cieca, degni, facciamolo, fermano, moralita, quinte, ragno, rispetti, scura, stavi, tracciare, vinti, aiutarci, botto, facciate, irruzione, secchi, umido, avuti, calorie, consegne, consegue, freddi, mattia, preparo, prosa, scesa, cominciata, compilare, compiuta, comportato, derivato, fronti, grato, sostituita, aiutarlo, comparire, comporre, congedo, duello, sforza, subiti, terrazza, correndo, perdiamo, pozzi, preparate, quesito, bollette, combustibile, iniziati, mento, scuri, sonia, viaggiatore, piera, finocchi, teglia, stagnola, manzo, salsina, marinata, tiepido, grigliate, grigliata, grigliati, arrostite, arrostiti, arrostito, saltate, saltati, stufate, stufati, frittata, salse, zuppe, minestre

## Numeri
lexicon-number-0 = zero
lexicon-nobody = nessuno, nessun ospite, nessun invitato
lexicon-number-1 = uno, un, una, primo
lexicon-number-2 = due, coppia
lexicon-number-3 = tre
lexicon-number-4 = quattro
lexicon-number-5 = cinque
lexicon-number-6 = sei
lexicon-number-7 = sette
lexicon-number-8 = otto
lexicon-number-9 = nove
lexicon-number-10 = dieci
lexicon-number-11 = undici
lexicon-number-12 = dodici, dozzina
lexicon-number-13 = tredici
lexicon-number-14 = quattordici
lexicon-number-15 = quindici, quindicina
lexicon-number-16 = sedici
lexicon-number-17 = diciassette
lexicon-number-18 = diciotto
lexicon-number-19 = diciannove
lexicon-number-20 = venti, ventina
lexicon-number-21 = ventuno, ventun
lexicon-number-22 = ventidue
lexicon-number-23 = ventitré
lexicon-number-24 = ventiquattro
lexicon-number-25 = venticinque
lexicon-number-26 = ventisei
lexicon-number-27 = ventisette
lexicon-number-28 = ventotto
lexicon-number-29 = ventinove
lexicon-number-30 = trenta, trentina
lexicon-number-31 = trentuno, trentun
lexicon-number-32 = trentadue
lexicon-number-33 = trentatré
lexicon-number-34 = trentaquattro
lexicon-number-35 = trentacinque
lexicon-number-36 = trentasei
lexicon-number-37 = trentasette
lexicon-number-38 = trentotto
lexicon-number-39 = trentanove
lexicon-number-40 = quaranta, quarantina
lexicon-number-41 = quarantuno, quarantun
lexicon-number-42 = quarantadue
lexicon-number-43 = quarantatré
lexicon-number-44 = quarantaquattro
lexicon-number-45 = quarantacinque
lexicon-number-46 = quarantasei
lexicon-number-47 = quarantasette
lexicon-number-48 = quarantotto
lexicon-number-49 = quarantanove
lexicon-number-50 = cinquanta, cinquantina
lexicon-number-51 = cinquantuno, cinquantun
lexicon-number-52 = cinquantadue
lexicon-number-53 = cinquantatré
lexicon-number-54 = cinquantaquattro
lexicon-number-55 = cinquantacinque
lexicon-number-56 = cinquantasei
lexicon-number-57 = cinquantasette
lexicon-number-58 = cinquantotto
lexicon-number-59 = cinquantanove
lexicon-number-60 = sessanta
lexicon-number-61 = sessantuno, sessantun
lexicon-number-62 = sessantadue
lexicon-number-63 = sessantatré
lexicon-number-64 = sessantaquattro
lexicon-number-65 = sessantacinque
lexicon-number-66 = sessantasei
lexicon-number-67 = sessantasette
lexicon-number-68 = sessantotto
lexicon-number-69 = sessantanove
lexicon-number-70 = settanta
lexicon-number-71 = settantuno, settantun
lexicon-number-72 = settantadue
lexicon-number-73 = settantatré
lexicon-number-74 = settantaquattro
lexicon-number-75 = settantacinque
lexicon-number-76 = settantasei
lexicon-number-77 = settantasette
lexicon-number-78 = settantotto
lexicon-number-79 = settantanove
lexicon-number-80 = ottanta
lexicon-number-81 = ottantuno, ottantun
lexicon-number-82 = ottantadue
lexicon-number-83 = ottantatré
lexicon-number-84 = ottantaquattro
lexicon-number-85 = ottantacinque
lexicon-number-86 = ottantasei
lexicon-number-87 = ottantasette
lexicon-number-88 = ottantotto
lexicon-number-89 = ottantanove
lexicon-number-90 = novanta
lexicon-number-91 = novantuno, novantun
lexicon-number-92 = novantadue
lexicon-number-93 = novantatré
lexicon-number-94 = novantaquattro
lexicon-number-95 = novantacinque
lexicon-number-96 = novantasei
lexicon-number-97 = novantasette
lexicon-number-98 = novantotto
lexicon-number-99 = novantanove
lexicon-number-100 = cento
lexicon-number-110 = centodieci
lexicon-number-120 = centoventi
lexicon-number-130 = centotrenta
lexicon-number-140 = centoquaranta
lexicon-number-150 = centocinquanta
lexicon-number-160 = centosessanta
lexicon-number-165 = centosessantacinque
lexicon-number-170 = centosettanta
lexicon-number-175 = centosettantacinque
lexicon-number-180 = centoottanta, centottanta
lexicon-number-190 = centonovanta
lexicon-number-200 = duecento
lexicon-number-250 = duecentocinquanta
lexicon-number-300 = trecento
lexicon-number-500 = cinquecento
lexicon-number-600 = seicento
lexicon-number-800 = ottocento
lexicon-number-half = mezzo, mezza, mezz, mezz', metà
lexicon-number-third = terzo, terzi
lexicon-number-quarter = quarto, quarti
lexicon-number-eighth = ottavo, ottavi
lexicon-number-article = un, uno, una, un'
lexicon-number-and = e, ed
lexicon-number-plus = più
lexicon-number-of = di, d', del, dello, della, dell, dell', dei, degli, delle
lexicon-number-to = a, fino a, ai
lexicon-minus = meno

## Unità
lexicon-unit-pound = lb, lbs, libbra, libbre
lexicon-unit-ounce = oz, oncia, once
lexicon-unit-gram = g, gr, grammo, grammi
lexicon-unit-kilogram = kg, kgs, chilo, chili, kilo, kili, chilogrammo, chilogrammi, kilogrammi
lexicon-unit-milligram = mg, milligrammo, milligrammi
lexicon-unit-teaspoon = cucchiaino, cucchiaini, cucchiaino da tè, cucchiaini da tè, cucchiaino da caffè, cucchiaini da caffè, cucch.no, cucch.ni
lexicon-unit-tablespoon = cucchiaio, cucchiai, cucchiaio da tavola, cucchiai da tavola, cucchiaio da minestra, cucchiai da minestra, cucchiaiata, cucchiaiate, cucch
lexicon-unit-cup = tazza, tazze, cup
lexicon-unit-fluid-ounce = oncia fluida, once fluide, oncia liquida, once liquide, fl oz
lexicon-unit-pint = pinta, pinte
lexicon-unit-quart = quarto di gallone, quarti di gallone
lexicon-unit-gallon = gallone, galloni
lexicon-unit-milliliter = ml, millilitro, millilitri
lexicon-unit-liter = l, litro, litri
lexicon-unit-pinch = pizzico, pizzichi, presa, prese
lexicon-unit-stick = panetto di burro, panetti di burro, panetto, panetti
lexicon-unit-fahrenheit = f, °f, fahrenheit, gradi f, grado f, gradi fahrenheit, grado fahrenheit, ° f
lexicon-unit-celsius = c, °c, celsius, centigradi, gradi c, grado c, gradi celsius, grado celsius, gradi centigradi, ° c
lexicon-unit-degree = °, grado, gradi
lexicon-unit-second = s, sec, secondo, secondi
lexicon-unit-minute = min, mins, minuto, minuti, minutini
lexicon-unit-hour = h, hr, ora, ore, oretta, orette
lexicon-unit-day = g, gg, giorno, giorni, giornata, giornate
lexicon-unit-week = settimana, settimane
lexicon-unit-month = mese, mesi
lexicon-unit-percent = per cento, percento
lexicon-unit-gas-mark = gas mark, tacca del gas, tacca
## Numero di un forno francese (thermostat 6 è 180 °C); qui nessuno.
lexicon-unit-thermostat = { "" }

## Giorni e ore
lexicon-weekday-mon = lunedì, lun
lexicon-weekday-tue = martedì, mart, mar
lexicon-weekday-wed = mercoledì, merc, mer
lexicon-weekday-thu = giovedì, giov, gio
lexicon-weekday-fri = venerdì, ven
lexicon-weekday-sat = sabato, sab
lexicon-weekday-sun = domenica, dom
lexicon-month-1 = gennaio, gen, genn
lexicon-month-2 = febbraio, feb, febb
lexicon-month-3 = marzo
lexicon-month-4 = aprile, apr
lexicon-month-5 = maggio, mag
lexicon-month-6 = giugno, giu
lexicon-month-7 = luglio, lug
lexicon-month-8 = agosto, ago
lexicon-month-9 = settembre, sett, set
lexicon-month-10 = ottobre, ott
lexicon-month-11 = novembre, nov
lexicon-month-12 = dicembre, dic
lexicon-day-today = oggi
lexicon-day-tonight = stasera, questa sera, oggi sera
lexicon-day-tomorrow = domani, domattina, dmn
lexicon-day-after-tomorrow = dopodomani, dopo domani
lexicon-day-yesterday = ieri
lexicon-holiday-thanksgiving = ringraziamento, giorno del ringraziamento, festa del ringraziamento, thanksgiving
lexicon-holiday-christmas = natale, giorno di natale, pranzo di natale
lexicon-holiday-boxing-day = santo stefano, giorno di santo stefano, pranzo di santo stefano
lexicon-holiday-numbered-day = { "" }
lexicon-holiday-christmas-eve = vigilia, vigilia di natale, cena della vigilia, cenone della vigilia, cenone di natale, notte di natale, antivigilia
lexicon-holiday-new-year = capodanno, primo dell'anno, giorno di capodanno, pranzo di capodanno
lexicon-holiday-new-year-eve = san silvestro, ultimo dell'anno, cenone di capodanno, notte di capodanno, notte di san silvestro, cenone di san silvestro, cenone
lexicon-holiday-easter = pasqua, domenica di pasqua, pranzo di pasqua
lexicon-next = prossimo, prossima, questo, questa, quest', che viene
lexicon-part-morning = am, di mattina, del mattino, della mattina, mattina, la mattina, al mattino, mattino
lexicon-part-afternoon = pm, di pomeriggio, del pomeriggio, pomeriggio, nel pomeriggio, di sera, della sera, sera, la sera, alla sera, in serata
lexicon-noon = mezzogiorno, a mezzogiorno, mezzodì
lexicon-midnight = mezzanotte, a mezzanotte
lexicon-oclock = in punto
lexicon-past = passate
lexicon-to = { "" }
lexicon-at = alle, all', alle ore, alle h, ore, h, a, le, per le, per l', verso le, verso l', intorno alle, intorno all', attorno alle, circa alle, dalle, entro le, x le
lexicon-since = da, dal, dalla, fin da
lexicon-on = il, lo, la, l', i, gli, per il, per la, di, del, della, dell', al, alla
lexicon-in = tra, fra, entro, da qui a
lexicon-ago = fa, or sono
lexicon-later = dopo, più tardi, più in là, tardi, in ritardo, ritarda, ritardare, ritardiamo, rimanda, rimandare, rimandiamo, posticipa, posticipare, posticipiamo, slitta, slittare
lexicon-earlier = prima, più presto, in anticipo, anticipa, anticipare, anticipiamo, di anticipo, prima del previsto
lexicon-now = adesso, ora, proprio ora, in questo momento, proprio adesso, subito
lexicon-ordinal = º
## Quel che sta davanti al giorno del mese senza il suo nome (il 24).
lexicon-day-of-month = il, per il, il giorno, giorno, l'
lexicon-meal-dinner = cena, cenare, ceniamo, si cena, cenone, si mangia, mangiamo, mangiare, a tavola, in tavola, tavola, servire, si serve, da servire, pasto
lexicon-meal-lunch = pranzo, si pranza, pranzare, pranziamo, brunch

## Il volatile
lexicon-bird-turkey = tacchino, tacchini, tacchina, tacchinella, tacchine, tacchinello, tacchino in forno, tacchino dentro
lexicon-bird-turkey-breast = petto di tacchino, fesa di tacchino, fesa
lexicon-bird-chicken = pollo, polli, gallina, galletto, pollastra, pollastro, faraona
lexicon-bird-capon = cappone, capponi
lexicon-bird-duck = anatra, anatre, anatroccolo, papera
lexicon-bird-goose = oca, oche
lexicon-bird-any = volatile, volatili, pollame, uccello, bestia
lexicon-condition-fresh = fresco, fresca, scongelato, scongelata, già scongelato, già scongelata, non congelato, non congelata, non surgelato, non surgelata, non è congelato, non è congelata, non è surgelato, non è surgelata, non è più congelato, non è più congelata, mai congelato, freschi, fresche
lexicon-condition-frozen = congelato, congelata, surgelato, surgelata, ancora congelato, ancora congelata, ancora surgelato, ghiacciato, ghiacciata, gelato, duro come un sasso, duro come la pietra, non scongelato, non scongelata, non è scongelato, non è scongelata, non ancora scongelato, non ancora scongelata, non è ancora scongelato, non è ancora scongelata
lexicon-condition-part-thawed = mezzo congelato, mezzo congelata, mezza congelata, mezzo scongelato, mezzo scongelata, mezza scongelata, metà scongelato, metà scongelata, scongelato a metà, scongelata a metà, congelato a metà, a metà scongelamento, parzialmente scongelato, parzialmente scongelata, parzialmente congelato, semicongelato, semi congelato, in parte congelato, in parte scongelato, ancora un po' congelato, ancora un po' congelata, ancora ghiaccio dentro, ghiaccio dentro, ancora con ghiaccio
lexicon-form-whole = intero, intera
lexicon-form-flat = aperto, aperta, a libro, aperto a libro, aperta a libro, alla diavola, appiattito, appiattita, schiacciato, spatchcock, senza schiena, a farfalla
lexicon-form-pieces = a pezzi, in pezzi, pezzi, tagliato a pezzi, tagliata a pezzi, sezionato, porzionato
lexicon-stuffed = farcito, farcita, ripieno, ripiena, imbottito, imbottita, con ripieno, con il ripieno, col ripieno
lexicon-unstuffed = senza ripieno, non farcito, non farcita, ripieno a parte, ripieno fuori, senza farcia, farcia a parte, senza farcitura, non ripieno, non ripiena, non è ripieno, non è ripiena, non è farcito, non è farcita, non imbottito, senza farcire, senza farcirlo
lexicon-solution = soluzione, soluzione salina, contiene fino a, contiene fino al, contiene fino all', contiene, aggiunta, aggiunto, iniettato, iniettata, siringato
lexicon-basted = iniettato, iniettata
lexicon-salted-already = già salato, già salata, pre salato, presalato, salato dal produttore, viene salato, già condito, già condita, condito

## Chi mangia
lexicon-people = persona, persone, a persona, a testa, pers, ospite, ospiti, invitato, invitati, invitata, commensale, commensali, a tavola, coperti, bocche, porzioni, porzione, pax, teste, piatti, amici, parenti, di noi
lexicon-adults = adulto, adulti, adulta, grandi
lexicon-children = bambino, bambini, bambina, bambine, bimbo, bimbi, bimba, bimbe, piccoli, piccolo, figli, ragazzini, bambinetti
lexicon-among = di cui, dei quali, tra cui, fra cui, compresi, inclusi, di loro, contando
lexicon-another = un altro, un'altra, altro, altra, secondo, ancora un, ancora una, uno in più
lexicon-size-big = grande, grosso, grossa, più grande, più grosso
lexicon-size-small = piccolo, piccola, più piccolo, più piccola
lexicon-instead = piuttosto, invece, meglio, facciamo, spostiamo, diciamo
lexicon-joining = vengono anche, viene anche, si aggiungono, si aggiunge, in più, arrivano anche
lexicon-for = per, x, in, siamo, siamo in, saremo, saremo in, in tutto siamo, famiglia di, tavola di, tavolata di, ci siamo in, mangiamo in, ora siamo, siamo ora, adesso siamo, siamo adesso, ora siamo in, adesso siamo in, siamo adesso in, siamo diventati, alla fine siamo, alla fine siamo in, siamo ormai
lexicon-leftovers = avanzi, con avanzi, con gli avanzi, che avanzi, che ne avanzi, voglio avanzi, che avanza
lexicon-no-leftovers = senza avanzi, niente avanzi, che non avanzi, che non avanzi niente, non voglio avanzi, non vogliamo avanzi, non mi servono avanzi

## Calore, sale, modo
lexicon-cooker-oven = forno, in forno, al forno, nel forno, forno statico, statico, forno a gas, forno elettrico, forno normale, forno senza ventola, va in forno, lo metto in forno, la metto in forno, metto in forno, lo inforno, la inforno, inforno, entra in forno, tacchino in forno
lexicon-cooker-fan-oven = forno ventilato, ventilato, ventilata, ventola, con ventola, forno con ventola, forno a convezione, convezione, modalità ventilata
lexicon-cooker-smoker = affumicatore, nell'affumicatore, affumicato, affumicata, affumicare, affumico, smoker, barbecue, bbq, griglia, alla griglia, sulla griglia, kettle, brace, alla brace, sulla brace, grill, kamado, camino
lexicon-heat-stove = fornello, fornelli, sul fornello, sui fornelli, sul fuoco, in padella, padella, in pentola, pentola, in tegame, tegame, piano cottura, piano di cottura, fuoco basso, fuoco lento, a fuoco lento, induzione
lexicon-heat-set = impostato, alzato, abbassato, messo a, portato a, ho alzato, ho abbassato, ho messo a, alzato a, abbassato a, impostato a
lexicon-heat-start = va in forno, lo metto in forno, la metto in forno, metto in forno, lo inforno, la inforno, inforno, entra in forno, comincio a cuocere, inizio a cuocere, inizio cottura, inizio la cottura, inizio della cottura
lexicon-heat-start-early = tacchino in forno, tacchino dentro
lexicon-heat-all-along = tutto il tempo, tutto questo tempo, per tutto il tempo, dall'inizio, fin dall'inizio, sin dall'inizio, da subito
lexicon-heat-was = era, è stato, stato, avevo, aveva, è rimasto
lexicon-heat-off = spento, spenta, non acceso, non accesa, staccato
lexicon-heat-never = mai acceso il forno, non ho acceso il forno, dimenticato di accendere il forno, il forno non era acceso, forno non era acceso, il forno non è mai stato acceso
lexicon-heat-back = riacceso, di nuovo a, riaccesa, rimesso a
lexicon-fryer = friggitrice, fritto, fritta, friggere, friggerlo, friggerla, friggo, friggiamo, frittura, olio bollente
lexicon-salting-none = senza sale, niente sale, non salare, non salarlo, non salarla, non salato, non salata, senza salamoia, niente salamoia, senza salare, no sale
lexicon-salting-dry = salamoia secca, salamoia a secco, salatura a secco, salatura secca, salare a secco, salato a secco, salata a secco, sale a secco, a secco, marinatura secca, marinatura a secco, salatura, salato, salata, con sale, col sale
lexicon-salting-wet = salamoia, in salamoia, salamoia liquida, salamoia umida, nella salamoia, salamoia bagnata, salamoia classica
lexicon-thawing-fridge = scongelare in frigo, scongela in frigo, scongelo in frigo, scongelamento in frigo, scongelarlo in frigo, in frigo, nel frigo, in frigorifero, nel frigorifero, frigo, frigorifero
lexicon-thawing-cold-water = acqua fredda, in acqua fredda, nell'acqua fredda, con acqua fredda, scongelare in acqua, scongela in acqua fredda, scongelare in acqua fredda, scongelarlo in acqua
lexicon-thawing-cook-frozen = da congelato, da congelata, da surgelato, da surgelata, cuocere congelato, cuocerlo congelato, senza scongelare, senza scongelarlo, direttamente dal freezer, dritto dal freezer, dal freezer al forno
lexicon-ahead = il giorno prima, giorno prima, un giorno prima, il giorno precedente, giorno precedente, la sera prima, sera prima, in anticipo, con anticipo, con un giorno di anticipo, un giorno in anticipo
lexicon-not-ahead = giorno stesso, il giorno stesso, stesso giorno, lo stesso giorno, in giornata
lexicon-elsewhere = da mia sorella, da mio fratello, da mia mamma, da mamma, da mia madre, da mio padre, da mio papà, dai miei, dai miei genitori, dai nonni, dalla nonna, da mia nonna, da nonna, da mia zia, dalla zia, dagli zii, dai suoceri, dai miei suoceri, da mia suocera, da mia cognata, da mio cognato, da mia cugina, da mio cugino, da mia figlia, da mio figlio, da mio suocero, da amici, da un amico, da un'amica, dagli amici, a casa di, a casa dei, a casa del, a casa della, a casa degli, fuori casa, altrove, da un'altra parte, in un'altra casa, un'altra casa, a casa loro, a casa sua, lo porto, la porto, lo portiamo, la portiamo, lo portiamo da, da portare, porto, portarlo, portiamo, trasporto
lexicon-here = lo cuocio lì, lo cuocio là, la cuocio lì, lo cuociamo lì, lo cuocio sul posto, cuocere lì, cuocio lì, lo cucino lì, cucino lì, cuocerlo lì, a casa, a casa mia, a casa nostra, in casa, in casa nostra, da me, da noi, qui, qua, qui da noi, qui a casa
lexicon-drive = di macchina, in macchina, di auto, in auto, di viaggio, viaggio, di strada, di tragitto, tragitto, di distanza, di autostrada, di treno, in treno
## Carried to another house, and how it arrives
lexicon-bring = porto, porta, portiamo, portare, portarlo, portarla, lo porto, la porto, lo portiamo, la portiamo, lo portiamo da, da portare, portato, portata, trasporto, trasportare, trasportiamo, trasportarlo
lexicon-hot = caldo, calda, caldi, ben caldo, ben calda, ancora caldo, ancora calda, bollente
lexicon-cold = freddo, fredda, freddi
lexicon-at-home = ho, ce l'ho, ce l'ho già, ho già, abbiamo, ce l'abbiamo, ce l'abbiamo già, già comprato, già comprata, già preso, già presa, comprato, comprata, preso, presa, l'ho comprato, in freezer, nel freezer, nel mio freezer, in congelatore, nel congelatore, già a casa, è già a casa, già in casa, è già qui
lexicon-to-buy = devo comprare, devo comprarlo, devo comprarla, devo ancora comprare, devo ancora comprarlo, devo ancora comprarla, da comprare, ancora da comprare, dobbiamo comprare, dobbiamo comprarlo, dobbiamo ancora comprarlo, lo devo comprare, lo devo ancora comprare, la devo ancora comprare, lo compro, lo compriamo, lo prendo, comprare, comprarlo, non l'ho comprato, non l'ho ancora comprato, non l'ho comprata, non l'ho ancora comprata, non comprato, non ancora comprato, non ho comprato, non ho ancora comprato, non l'abbiamo comprato, non l'abbiamo ancora comprato, non ce l'ho, non ce l'ho ancora, non ce l'abbiamo, non ce l'abbiamo ancora, non l'ho preso, non l'ho ancora preso, non l'ho ancora presa, non preso, non ho preso, non ho ancora preso
lexicon-shopping = compro, compriamo, comprare, lo compro, la compro, prendo, lo prendo, la prendo, ritiro, ritirare

## Dove misura un termometro
lexicon-spot-breast = petto, petti
lexicon-spot-thigh = sovracoscia, sopracoscia, sovracosce, sopra coscia, coscia, cosce, fuso, zampa
lexicon-spot-pit = camera, camera di cottura, affumicatore, forno, aria, ambiente, griglia, barbecue, bbq, pit, termostato
lexicon-spot-stuffing = ripieno, farcia, farcitura
lexicon-spot-wing = ala, ali, aletta, alette

## Compiti
lexicon-step-buy = spesa, fai la spesa, fare la spesa, comprare, compra, comprarlo, comprarla, acquisto
lexicon-step-thaw = scongelare, scongelarlo, scongelarla, scongelamento, inizia a scongelare, iniziare a scongelare, scongela, togliere dal freezer, toglierlo dal freezer, tirare fuori dal freezer, tirarlo fuori dal freezer, scongelo, lo scongelo
lexicon-step-water = acqua, cambio acqua, cambio dell'acqua, cambio d'acqua, cambia l'acqua, cambia acqua, cambiare l'acqua, cambiare acqua
lexicon-step-salt = salare, salarlo, salarla, sale, salatura, salamoia, sala, salo, lo salo, la salo
lexicon-step-rest = riposo col sale, riposo col sale in frigo, riposo con il sale, riposo sotto sale, riposo salato, riposo
lexicon-step-temper = asciuga e imburra, asciuga e imburra la pelle, asciugare e imburrare, asciugare, asciugarlo, asciugarla, imburrare, imburrarlo, asciuga, imburra, togliere dal frigo, toglierlo dal frigo, tirare fuori dal frigo, tirarlo fuori dal frigo
lexicon-step-fire = fuoco, accendere, accendere il fuoco, accendi il fuoco, accendi forno o fuoco, accendere il forno, accendi il forno, accendere forno, accendere l'affumicatore, accendere la griglia, accendere la brace, accendere il barbecue, preriscaldare, preriscaldare il forno, scaldare il forno, scaldare forno, accensione, accendo, accendo il forno, accendo il fuoco
lexicon-step-on = cottura, inizia la cottura, inizio cottura, iniziare la cottura, infornare, infornarlo, infornarla, inforna, in forno, mettere in forno, metterlo in forno, metterla in forno, mettere su, metterlo su, mettere sul fuoco, mettere nell'affumicatore, cuocere, cuocerlo, inforno, metto in forno, lo inforno, va in forno
lexicon-step-check = misurare, misura, misura le temperature, misurare le temperature, misurare la temperatura, controllo, controllare, controlla, termometro, temperature
lexicon-step-pull = togli dal calore, togliere dal calore, toglierlo dal calore, togliere dal forno, toglierlo dal forno, toglierla dal forno, togliere dal fuoco, toglierlo dal fuoco, sfornare, sfornarlo, sfornarla, sforna, tirare fuori dal forno, tirarlo fuori dal forno, fine cottura, fine, togliere, toglierlo, sforno, tolgo dal forno
lexicon-step-stand = lascia riposare, lasciare riposare, lasciarlo riposare, riposare, riposa
lexicon-step-carve = tagliare, tagliarlo, tagliarla, taglia, taglia la carne, tagliare la carne, taglio, affettare, affettarlo, trinciare, porzionare, affetto
lexicon-step-chill = metti in frigo, mettere in frigo, in frigo, metterli in frigo, mettere via, mettere via gli avanzi, metti via, avanzi in frigo, mettere gli avanzi in frigo, raffreddare, conservare gli avanzi, riporre
lexicon-step-pack = prepara la borsa frigo, preparare la borsa frigo, borsa frigo, borsa termica, imballare, impacchettare, imballo
lexicon-step-travel = partenza, partire, viaggio, viaggiare, portare, portarlo
lexicon-step-reheat = riscalda, riscaldare, riscaldarlo, riscaldarla, scaldare, scaldarlo
lexicon-step-serve = a tavola, servire, cena, pranzo, in tavola
lexicon-step-leftovers = avanzi, ultimo giorno degli avanzi

lexicon-yes = sì, si, certo, ok, okay, va bene, sicuro, esatto, yes
lexicon-no = no, non

## Un compito è fatto
lexicon-done = fatto, fatta, finito, finita, pronto, pronta, l'ho fatto, l'ho finito, già fatto, è fatto, è pronto, tutto fatto, ho fatto, ho finito

## Sali, secondo il grano
lexicon-salt-table = sale fino da cucina, sale fino, sale da tavola, sale da cucina, sale iodato, sale fino iodato, sale comune, sale raffinato, sale normale
lexicon-salt-fine-sea = sale marino fino, marino fino, sale marino, sale di mare, sale fino marino, sale marino fine
lexicon-salt-pickling = sale per conserve, sale da conserva, sale per le conserve, sale da salamoia
lexicon-salt-flake-kosher = sale kosher in fiocchi, kosher in fiocchi, kosher a fiocchi, sale kosher a fiocchi, sale in fiocchi, sale a fiocchi, fiocchi di sale, fior di sale, fiocchi
lexicon-salt-coarse-kosher = sale kosher grosso, kosher grosso, kosher a grana grossa
lexicon-salt-coarse-sea = sale grosso, sale marino grosso, marino grosso, sale grosso da cucina, sale grosso marino
lexicon-salt-kosher = sale kosher, kosher
lexicon-salt-own = il mio sale, mio sale, del mio sale, mio
lexicon-ask-only = ho solo, abbiamo solo, c'è solo, ho soltanto, solo
lexicon-salt-any = sale
lexicon-sodium = sodio
lexicon-butter = burro
lexicon-strength-light = leggero, leggera, poco salato, poco salata, meno sale, meno salato, meno salata, poco sale, delicato, con meno sale, un po meno sale, non troppo salato, non troppo sale
lexicon-strength-bold = abbondante, forte, più salato, più salata, più sale, molto salato, saporito, con più sale

## Che cosa si chiede
lexicon-ask-into = in, sono, converti, convertire, conversione, equivale, equivalgono, equivale a, al posto di, al posto del, invece di, invece del, sostituire, sostituisco, quanti sono, quanto sono, quanto fa, quanto è, trasforma
lexicon-ask-how-much = quanto, quanta, che quantità, quale quantità, quantità di, dose, dose di, dosi
lexicon-ask-how-long = quanto durano, quanto dura la cottura, dura la cottura, quanto dura lo scongelamento, quanto si frigge, quanto tempo, per quanto tempo, in quanto tempo, quanto ci vuole, quanto ci mette, quanto ci metto, quanto dura, quante ore, quanti minuti, quanti giorni, tempo di, tempi di, tempo di cottura, tempi di cottura, a che ora comincio, a che ora inizio, quando comincio, quando inizio, quando devo iniziare, quando devo cominciare, ci vuole, ci vogliono, per quanto, quanto impiega, quanto deve
lexicon-ask-when = quando, a che ora, per quando
lexicon-ask-how-big = quanto deve pesare, quanto dovrebbe pesare, quanto grande, quanto grosso, che taglia, che peso, quale peso, di che peso, da quanti chili, quanti chili, quanti kg, quanto pesa, di quanto, quanto tacchino, quanto pollo, quanta carne, che tacchino, che dimensione
lexicon-ask-how-many = quanti, quante, quante persone, per quante persone, per quanti, quanti ne, quanti ospiti, basta per, bastano per, basta, bastano, è sufficiente per, sfama, quante porzioni, basterà per
lexicon-ask-enough = basta per, bastano per, basterà per, è sufficiente per
lexicon-ask-how = come, quale, che
lexicon-ask-why = perché, come mai, fonte, fonti, chi lo dice, da dove viene, da dove vengono, da dove
lexicon-ask-deep = quanto in profondità, quanto a fondo, fin dove, fino a dove, penetra, penetrazione, profondità, quanto entra, quanto penetra, a che profondità
lexicon-ask-safe = è pronto, è cotto, è pronta, è cotta, si può mangiare, posso mangiare, sicuro, sicura, sicuri, è sicuro, sicurezza, va bene, vanno bene, ok, ancora buono, ancora buona, ancora buoni, buono, buona, basta, sufficiente, pericoloso, pericolosa, fa male, posso, si può, possiamo, devo, bisogna, occorre, dovrei, serve, è ok, mangiabile, commestibile, mi sento male, va buttato, lo butto, da buttare, rischio, rischioso
lexicon-ask-temperature = temperatura, temp, a che temperatura, che temperatura, quale temperatura, temperatura interna, temperatura al cuore, quanti gradi, a quanti gradi, quando è cotto, quando è cotta, quando è pronto, quanto caldo, quanto calda, deve segnare, deve essere, segnare, al cuore, come capisco, come faccio a sapere, come so
lexicon-ask-tell = come capisco, come faccio a sapere, come so, come si capisce, come vedo
lexicon-ask-leave = lasciare, lasciarlo, lasciarla, lascio
lexicon-ask-out = fuori, fuori dal frigo, fuori frigo, rimasto fuori, rimasta fuori, lasciato fuori, lasciata fuori, stato fuori, a temperatura ambiente, temperatura ambiente, sul tavolo, sul piano, sul bancone, sul piano della cucina, dimenticato, dimenticata, l'ho dimenticato, in macchina, senza frigo, ancora sul tavolo, ancora in tavola
lexicon-ask-left = lasciato, lasciata, dimenticato, dimenticata, rimasto, rimasta
lexicon-ask-counter = scongelare in acqua calda, scongelarlo in acqua calda, scongelare in acqua tiepida, scongelarlo in acqua tiepida, sul piano, sul piano di lavoro, sul piano della cucina, sul bancone, sul tavolo, sul lavello, nel lavello, nel lavandino, a temperatura ambiente, temperatura ambiente, in acqua calda, acqua calda, in acqua tiepida, acqua tiepida
lexicon-ask-keep = quanto dura, quanto durano, dura, durano, si conserva, si conservano, conservare, conservo, conservarlo, conservarli, conservazione, si mantiene, mantiene, mantengono, tenere, tengo, tengono, si tiene, vecchio, vecchi, di giorni, resiste, resistono
lexicon-ask-past-date = scaduto, scaduta, scadenza, scade, data di scadenza, da consumarsi entro, da consumare entro
lexicon-ask-smell = puzza, odore, odora, viscido, viscida, puzzolente
lexicon-ask-low-salt = non può mangiare sale, non può mangiare salato, non può avere sale, dieta senza sale, dieta iposodica, iposodica, povera di sale, pressione alta, ipertensione, iperteso, ipertesa
lexicon-ask-keep-hot = tenere caldo, tenere in caldo, tenerlo caldo, tenerlo in caldo, tenerla calda, tenerla in caldo, tengo in caldo, tengo caldo, lo tengo in caldo, lo tengo caldo, mantenere caldo, mantenerlo caldo, in caldo, mantenere in caldo, resta caldo
lexicon-ask-warm = caldo, calda, caldi, calde, tacchino caldo
lexicon-ask-carry = trasportare, trasporto, portare, porto
lexicon-ask-no-room = non c'è posto, non c'è spazio, non entra, non ci sta, pieno, troppo piccolo, è piccolo
lexicon-ask-cool = raffreddare, raffreddarlo, raffreddo, raffreddarsi, raffreddamento, far raffreddare, caldo in frigo, calda in frigo, ancora caldo, ancora calda, tacchino caldo, in frigo caldo, in frigo ancora caldo, quanto in fretta
lexicon-ask-reheat = riscaldare, riscaldo, riscaldarlo, riscaldarli, riscaldato, riscaldata, scaldare, scaldo, scaldare gli avanzi, ripassare, riscaldamento
lexicon-ask-wash = lavare, lavo, lavarlo, lavarla, lavato, sciacquare, sciacquo, sciacquarlo, sciacquarla, lavaggio
lexicon-ask-thaw = quanto dura lo scongelamento, scongelare in acqua calda, scongelarlo in acqua calda, scongelare in acqua tiepida, scongelarlo in acqua tiepida, scongelare, scongela, scongelo, scongelarlo, scongelarla, scongelamento, scongelarsi, decongelare, decongelamento, sgelare
lexicon-ask-stuff = farcire, farcirlo, farcisco, farcito, farcita, ripieno, ripiena, farcia, farcitura, imbottire
lexicon-ask-roast = quanto dura la cottura, dura la cottura, cuocere, cuoce, cuocio, cuocerlo, cottura, cotto, arrosto, arrostire, forno, affumicare, affumico, grigliare, al forno, infornare
lexicon-ask-cook = cuocere, cuocio, arrostire
lexicon-ask-indoors = in casa, dentro casa, al chiuso, dentro, in garage, nel garage, garage, in cucina, in tenda, nella tenda, tenda, veranda, in veranda, tettoia, sotto la tettoia, balcone, sul balcone, appartamento, loggia
lexicon-fuel-charcoal = carbonella, carbone, bricchetti, bricchette, braci, carbone vegetale, carboni
lexicon-fuel-propane = propano, bombola, bombola del gas, bombola di gas, gpl, butano
lexicon-fuel-pellets = pellet, pellets
lexicon-food-leftovers = avanzi, avanzo, tacchino cotto, tacchino avanzato, pollo cotto, carne cotta, carne avanzata, cotto, cotta, tacchino arrosto, arrosto, rimasugli
lexicon-food-gravy = sugo, sugo d'arrosto, sugo dell'arrosto, salsa, intingolo, fondo, fondo di cottura, brodo, gravy
lexicon-food-stuffing = ripieno, farcia, farcitura, ripieno cotto
lexicon-food-giblets = frattaglie, rigaglie, interiora, fegatini, fegato
lexicon-food-soup = zuppa, minestra, stufato, spezzatino, minestrone
lexicon-food-raw = crudo, cruda, crudi, fresco, fresca, scongelato, scongelata
lexicon-place-fridge = frigo, in frigo, nel frigo, frigorifero, in frigorifero, nel frigorifero, refrigerato
lexicon-shelf = ripiano, ripiani, mensola, mensole
lexicon-place-freezer = freezer, in freezer, nel freezer, congelatore, in congelatore, nel congelatore, congelare, congelarlo, congelarli, congelo, congelati, congelato, congelata, surgelato
lexicon-label-per = al, allo, alla, per ogni, ogni, cada, a persona, a testa
lexicon-ask-overnight = tutta la notte, tutta notte, una notte, la notte, per tutta la notte, da ieri sera, durante la notte, nottata
lexicon-ask-refreeze = ricongelare, ricongelo, ricongelarlo, ricongelarla, ricongelato, congelare di nuovo, congelarlo di nuovo, congelare un'altra volta, rimettere in freezer, rimetterlo in freezer, rimetterlo nel freezer, di nuovo in freezer
lexicon-ask-colour = rosa, rosato, rosata, colore, succhi, succo, sangue, sanguinolento, rosso, rossa, rosso vicino all'osso
lexicon-ask-stand = riposo, riposare, riposa, lasciare riposare, lasciarlo riposare, far riposare, deve riposare, lo faccio riposare, lascio riposare

## Quando qualcosa va storto, e abitudini
lexicon-ask-help = che faccio, cosa faccio, che cosa faccio, cosa devo fare, che devo fare, che facciamo, cosa facciamo, cosa fare, e adesso, e ora, come faccio, cosa posso fare, che si fa, aiuto, e se, cosa succede se
lexicon-ask-oven-down = forno rotto, il forno è rotto, forno è rotto, si è rotto il forno, rotto il forno, il forno si è rotto, forno si è rotto, forno non funziona, il forno non funziona, forno non va, il forno non va, forno non scalda, il forno non scalda, forno si è spento, il forno si è spento, si è spento il forno, spento il forno, forno morto, forno si è fermato, è andata via la luce, andata via la luce, è saltata la luce, saltata la luce, manca la luce, senza corrente, manca la corrente, è andata via la corrente, andata via la corrente, è saltata la corrente, saltata la corrente, blackout, finito il gas, è finito il gas, fuoco spento, il fuoco è spento, si è spento il fuoco, il fuoco si è spento, affumicatore spento, si è spento l'affumicatore, barbecue spento, finito il gas, finita la carbonella, finito il carbone
lexicon-ask-come-up = ci ha messo, ha messo, per arrivare, arrivare a, arrivato a, per raggiungere, raggiungere, raggiunto, per salire
lexicon-ask-too-fast = troppo in fretta, troppo veloce, troppo velocemente, troppo rapido, troppo presto, in anticipo, prima del tempo
lexicon-ask-too-slow = troppo piano, troppo lento, troppo lentamente, ci mette troppo, ci sta mettendo troppo, ci vuole troppo, non cuoce, non si cuoce, non è mai pronto, troppo lenta, è indietro, in ritardo
lexicon-ask-garage = garage, in garage, nel garage, in cantina, cantina, sul balcone, balcone, in veranda, veranda, in terrazzo, terrazzo, in cortile, all'aperto, in macchina, in giardino
lexicon-ask-baste = bagnare, bagnarlo, bagnarla, bagno, irrorare, irrorarlo, spennellare, spennellarlo, spennello, nappare, col suo sugo, aprire il forno, apro il forno
lexicon-ask-foil = troppo scuro, troppo scura, la pelle si brucia, si brucia sopra, coprire con la stagnola, copro con la stagnola, coprire con alluminio, coprirlo
lexicon-ask-where = dove, dov'
lexicon-ask-thermometer = termometro, sonda, termometro da cucina, termometro a sonda, sonde
lexicon-last = scorso, scorsa, passato, passata, ultimo

## Frasi brevi, solo come testo intero: parole che non dicono niente, il fatto, il non fatto, per compito
lexicon-talk-filler = io, l', lo, la, li, le, gli, il, i, ho, hai, abbiamo, è, e, era, sono, siamo, sta, stanno, si, s', c', ci, ce, già, adesso, ora, appena, proprio, che, ok, sì, sì sì, allora, dai, finalmente, ecco, ehi, oh, scusa, scusate, tacchino, tacchina, pollo, anatra, oca, cappone, volatile, bestia, bestione, mio, mia, nostro, nostra, tutto, tutta, tutti, questo, quello, grazie, ragazzi, gente, ciao, per, poi, anche, stato, stata, stati, stato appena, oggi, fa, minuto, minuti, po, favore, mi, me, noi, tu, te, so, sai, lui, lei, eh, beh, boh, ragazze, momento, ieri, ops, oops, ora ora
lexicon-talk-done = fatto, fatta, fatti, già fatto, tutto fatto, l'ho fatto, ho fatto, finito, finita, ho finito, abbiamo finito, pronto, pronta, tutto pronto, è pronto, a posto, tutto a posto, sistemato, sistemata, completato, fatto fatto, concluso, ci ho pensato io, finito di, ho finito di, abbiamo finito di
lexicon-talk-not = non ancora, ancora no, no, non fatto, non ho fatto, non l'ho fatto, non ancora fatto, non l'ho ancora fatto, non abbiamo fatto, dimenticato, ho dimenticato, l'ho dimenticato, me ne sono dimenticato, me ne sono dimenticata, mi sono dimenticato, mi sono dimenticata, mi sono scordato, mi sono scordata, dimenticato di, scordato, scordato di, non sono riuscito, non sono riuscita, non ce l'ho fatta, non ho potuto, non ho avuto tempo, non ho fatto in tempo, non ho avuto tempo di, non, non ho, non l'ho, non l'ho ancora, non l'abbiamo, non l'abbiamo ancora, non ho ancora, non è ancora, non è, ancora da fare, non ho iniziato, non iniziato, non ho cominciato, non ancora iniziato, dimenticata, ne dimenticata, ne dimenticato, non avuto tempo, non avuto tempo di, non cominciato, non fatta, non fatto in tempo, non potuto, non riuscita, non riuscito, scordata, no non ancora, no ancora no, dimenticata di, scordata di, non pronto, non è pronto, non ancora pronto, non è ancora pronto
lexicon-talk-asking = posso, possiamo, si può, si possono, devo, dobbiamo, bisogna, dovrei, come, quando, quanto, quanta, cosa, che cosa, dove, chi, quale, perché, va bene, cos'è, che cos'è
lexicon-talk-asks-of = posso
lexicon-talk-ahead = stasera, stanotte, domani, più tardi, devo, dobbiamo, bisogna, tra poco, fra poco, se
lexicon-talk-behind = stamattina, questa mattina, ieri sera
lexicon-talk-when = quando si mangia, quando mangiamo, a che ora si mangia, a che ora mangiamo, quando è pronto, quando è pronta, quando sarà pronto, quando sarà pronta, quanto manca, manca molto, quanto tempo manca, a che ora è pronto, a che ora è pronta, a che ora si cena, a che ora si pranza, quando si cena, quando si pranza, posso toglierlo, posso tirarlo fuori, posso sfornarlo, è pronto, è cotto, è già pronto, quando lo tolgo
lexicon-talk-next = cosa viene dopo, che si fa dopo, prossimo passo, qual è il prossimo passo, cosa c'è da fare, cosa manca da fare
lexicon-talk-undone-thaw = ancora congelato, ancora congelata, è ancora congelato, ancora surgelato, ancora duro, ancora dura, duro come un sasso, duro come pietra, duro come la pietra, dura come la pietra, dura come un sasso, ancora duro come un sasso, ancora dura come un sasso, ancora duro come la pietra, ancora dura come la pietra, ancora ghiacciato, ancora ghiacciata, ghiacciato dentro, ancora ghiacciato dentro, congelato dentro, ancora congelato dentro, ancora congelata dentro, dentro ancora congelato, dentro ancora congelata, dentro ancora ghiaccio, ancora ghiaccio dentro, dentro c'è ancora ghiaccio, dentro c'è ancora del ghiaccio, c'è ancora ghiaccio dentro, c'è ancora del ghiaccio dentro, ancora del ghiaccio dentro, ghiaccio dentro, ancora mezzo congelato, ancora mezza congelata, mezzo congelato, ancora congelato al centro, congelato al centro, ancora congelato in mezzo, ancora congelato nel mezzo, non scongelato, non è scongelato, non ancora scongelato, non è ancora scongelato, non è ancora scongelata, non si è scongelato, non si è ancora scongelato, non del tutto scongelato, sta ancora scongelando, ancora scongelando, ancora dura come pietra, ancora duro come pietra, dentro ancora del ghiaccio, dura come pietra, non ancora scongelata, non del scongelato
lexicon-talk-icy = dentro, ghiaccio, mezzo, mezza, centro, cuore
lexicon-talk-thawed = scongelato, scongelata, si è scongelato, si è scongelata, del tutto scongelato, completamente scongelato, finito di scongelare, finito di scongelarsi
lexicon-talk-undone-water = acqua non cambiata, non ho cambiato l'acqua, non ho ancora cambiato l'acqua, non ancora cambiato acqua, non cambiato acqua
lexicon-talk-undone-salt = non salato, non salata, senza sale, non ancora salato, non ancora salata, non l'ho salato, non l'ho salata, non l'ho ancora salato, non l'ho ancora salata, non ho salato, non ho ancora salato
lexicon-talk-undone-on = non in forno, non è in forno, non ancora in forno, non è ancora in forno, non è dentro, non è ancora dentro, non l'ho infornato, non l'ho ancora infornato, non ho infornato, non ho ancora infornato, non ancora dentro, non è ancora in cottura, non ancora in cottura, non ancora infornato, non dentro, non infornato
lexicon-talk-undone-pull = ancora in forno, è ancora in forno, ancora dentro, ancora in cottura, ancora nell'affumicatore, ancora a cuocere, ancora sul fuoco, sta ancora cuocendo, ancora cuocendo, non cotto, non cotta, non è cotto, non è cotta, non ancora cotto, non ancora cotta, non è ancora cotto, non è ancora cotta
lexicon-talk-undone-chill = ancora fuori, è ancora fuori, sono ancora fuori, ancora sul tavolo, ancora in tavola, ancora sul piano, sono ancora sul tavolo
lexicon-talk-did-buy = comprato un, preso un, comprata una, comprato, comprata, ho comprato, l'ho comprato, l'ho comprata, l'abbiamo comprato, preso, presa, l'ho preso, l'ho presa, spesa fatta, fatto la spesa, ho fatto la spesa, fatta la spesa, abbiamo fatto la spesa, a casa, in casa, ho preso il tacchino, ho il tacchino, comprato il tacchino, fatta spesa, fatto spesa
lexicon-talk-did-thaw = scongelando, sta scongelando, si sta scongelando, scongelato, scongelata, è scongelato, iniziato a scongelare, ho iniziato a scongelare, cominciato a scongelare, ho cominciato a scongelare, messo a scongelare, messa a scongelare, l'ho messo a scongelare, l'ho messa a scongelare, è a scongelare, a scongelare, tolto dal freezer, tolta dal freezer, l'ho tolto dal freezer, tirato fuori dal freezer, l'ho tirato fuori dal freezer, fuori dal freezer, in frigo, nel frigo, messo in frigo, messa in frigo, l'ho messo in frigo, in acqua, nell'acqua, in acqua fredda, nell'acqua fredda, messo in acqua, messo in acqua fredda, messo nell'acqua fredda, scongelando in frigo, messo in frigo a scongelare, in frigo a scongelare
lexicon-talk-did-water = acqua cambiata, cambiata l'acqua, cambiato l'acqua, cambiata acqua, cambiato acqua, ho cambiato l'acqua, abbiamo cambiato l'acqua, acqua nuova, acqua pulita
lexicon-talk-did-salt = salato, salata, l'ho salato, l'ho salata, ho salato, abbiamo salato, messo il sale, ho messo il sale, messo sale, sale messo, sotto sale, col sale, in salamoia, messo in salamoia, messa in salamoia, l'ho messo in salamoia, nella salamoia, salatura fatta, fatta la salatura, condito, massaggiato col sale, fatta salatura, salato in frigo, salata in frigo, salato e in frigo
lexicon-talk-did-rest = in riposo, riposa in frigo
lexicon-talk-did-temper = fuori dal frigo, tolto dal frigo, tolta dal frigo, l'ho tolto dal frigo, tirato fuori dal frigo, l'ho tirato fuori dal frigo, asciugato, asciugata, imburrato, imburrata, asciugato e imburrato, asciugata e imburrata, asciugato imburrato, asciutto e imburrato, asciutto imburrato, pelle asciutta e imburrata, pelle asciutta imburrata, fuori, asciugata imburrata
lexicon-talk-did-fire = acceso, accesa, ho acceso, fuoco acceso, acceso il fuoco, acceso fuoco, ho acceso il fuoco, forno acceso, acceso il forno, acceso forno, ho acceso il forno, forno caldo, forno in temperatura, in temperatura, forno a temperatura, forno che scalda, forno scaldando, preriscaldato, forno preriscaldato, affumicatore acceso, acceso l'affumicatore, acceso affumicatore, ho acceso l'affumicatore, affumicatore caldo, affumicatore pronto, affumicatore in temperatura, smoker acceso, acceso lo smoker, acceso smoker, smoker pronto, barbecue acceso, acceso il barbecue, acceso barbecue, griglia accesa, accesa la griglia, accesa griglia, brace pronta, braci pronte, braci accese, carbonella accesa, accesa la carbonella, accesa carbonella, acceso la carbonella, acceso la griglia, acceso griglia, carbone acceso, forno o fuoco acceso, acceso carbonella, forno scalda
lexicon-talk-did-on = in forno, nel forno, al forno, è in forno, dentro, è dentro, messo in forno, messa in forno, l'ho messo in forno, l'ho messa in forno, ho messo in forno, infornato, infornata, ho infornato, l'ho infornato, l'ho infornata, in cottura, è in cottura, cottura iniziata, iniziata la cottura, iniziata cottura, cuoce, si cuoce, sta cuocendo, cuocendo, a cuocere, messo a cuocere, sull'affumicatore, nell'affumicatore, nello smoker, messo nell'affumicatore, l'ho messo nell'affumicatore, messo nello smoker, sulla griglia, sul barbecue, messo sulla griglia, sul fuoco, messo su, entrato, entrato in forno, messo dentro, messa dentro, l'ho messo dentro, messo in affumicatore
lexicon-talk-did-check = misurato, misurata, misurate, ho misurato, controllato, ho controllato, temperature misurate, temperatura misurata, temperatura controllata, misurato le temperature, misurato la temperatura, controllato la temperatura, controllate le temperature, controllate temperature, controllato temperatura, misurato temperatura, misurato temperature
lexicon-talk-did-pull = fuori dal forno, è fuori dal forno, tolto dal forno, tolta dal forno, l'ho tolto dal forno, l'ho tolta dal forno, tirato fuori dal forno, l'ho tirato fuori dal forno, tirata fuori dal forno, tirato fuori, l'ho tirato fuori, sfornato, sfornata, ho sfornato, l'ho sfornato, l'ho sfornata, tolto dal fuoco, tolto dal calore, fuori dal calore, fuori dal fuoco, tolto, tolta, l'ho tolto, l'ho tolta, tolto dall'affumicatore, l'ho tolto dall'affumicatore, tolta dall'affumicatore, fuori dall'affumicatore, tolto dallo smoker, tolto dalla griglia, tolta dalla griglia, fuori, uscito, uscito dal forno, cottura finita, finita la cottura, finita cottura, tirata fuori, tolta dal fuoco, lo tolgo, la tolgo, lo sforno, la sforno, lo tiro fuori, la tiro fuori, sto sfornando
lexicon-talk-did-stand = riposando, sta riposando, riposa, a riposo, a riposare, messo a riposare
lexicon-talk-did-carve = tagliato, tagliata, ho tagliato, l'ho tagliato, l'ho tagliata, affettato, affettata, l'ho affettato, trinciato, trinciata, porzionato, carne tagliata, tagliata la carne, tagliato la carne, ho tagliato la carne, tagliata carne, tagliato carne, tagliando, sto tagliando, affettando
lexicon-talk-did-chill = messo via, messi via, messi in frigo, li ho messi in frigo, messo in frigo, messa in frigo, l'ho messo in frigo, in frigo, nel frigo, avanzi in frigo, gli avanzi sono in frigo, gli avanzi in frigo, messo gli avanzi in frigo, ho messo gli avanzi in frigo, messi gli avanzi in frigo, avanzi messi via, avanzi sistemati, avanzi nel frigo, raffreddato, carne in frigo, in frigorifero, messi avanzi in frigo, messo avanzi in frigo, messo via avanzi, messi via avanzi, messo via gli avanzi, messi via gli avanzi, avanzi messi in frigo
lexicon-talk-did-pack = imballato, impacchettato, borsa frigo pronta, nella borsa frigo, in borsa frigo, nella borsa termica, in macchina, caricato, caricato in macchina
lexicon-talk-did-travel = in viaggio, siamo in viaggio, per strada, siamo per strada, partiti, siamo partiti, partito, partita, sono partito, sono partita, stiamo arrivando, arriviamo, stiamo partendo, in strada, usciti, siamo usciti
lexicon-talk-did-reheat = riscaldato, riscaldata, ho riscaldato, l'ho riscaldato, scaldato, scaldata, scaldando, carne riscaldata
lexicon-talk-did-serve = servito, servita, in tavola, è in tavola, a tavola, siamo a tavola, tutti a tavola, mangiando, stiamo mangiando, mangiato, abbiamo mangiato
lexicon-talk-did-leftovers = avanzi finiti, finiti gli avanzi, finito gli avanzi, mangiati gli avanzi, ho mangiato gli avanzi, abbiamo mangiato gli avanzi, buttati gli avanzi, ho buttato gli avanzi, congelati gli avanzi, ho congelato gli avanzi, avanzi congelati, buttati avanzi, buttato avanzi, congelati avanzi, congelato avanzi, finiti avanzi, finito avanzi, mangiati avanzi, mangiato avanzi
lexicon-talk-give = dai, dà, dare, chiedi, chiedere, passa, passare, assegna, può, puoi, potrebbe, potresti, fa, fai, lo fa, ci pensa, si occupa, pensa, farà
lexicon-talk-mine = io, ci penso io a, ci penso io alla, ci penso io al, io penso a, io penso alla, io penso al, penso io alla, penso io al, penso io a, mi occupo io della, mi occupo io del, mi occupo della, mi occupo del, mi occupo di, io mi occupo di, faccio io la, faccio io il, faccio io, io faccio, faccio, lo faccio io, posso, io posso, prendo io, prendo
lexicon-talk-mine-last = io, ci penso io, lo faccio io, la faccio io, me ne occupo io, tocca a me
lexicon-talk-mine-link = il, lo, la, l', le, di, del, della, a, al, alla, con, io, stasera, domani, oggi, dopo, più tardi
lexicon-talk-who-does-what = chi fa cosa, chi fa che cosa, chi fa che, chi si occupa di cosa, chi ha cosa
lexicon-talk-toward = in, a, ad, da, vicino, vicino a, verso
lexicon-talk-late = in ritardo, ritardo, arrivo tardi, arriva tardi, arrivano tardi, tardi, fa tardi, fanno tardi, faccio tardi, bloccato nel traffico, nel traffico, traffico, ritarda, ritardano
lexicon-talk-dish-add = aggiungi, aggiungere, aggiungiamo, metti, anche, più, inserisci, includi
lexicon-talk-dish-and = e, ed, anche, poi
lexicon-talk-dish-doing = faccio, facciamo, voglio
lexicon-talk-both = tutti e due, tutte e due, entrambi, entrambe
lexicon-talk-dish-remove = togli, togliere, togliamo, leva, levare, elimina, rimuovi, senza, cancella
lexicon-talk-dish-link = in, nel, nella, nello, sul, sui, sulla, il, lo, la, l', i, gli, le, al, alla, per, ci vuole, ci vogliono, vuole, con, e, un, una, di, del, a, da, ci, che, anche
lexicon-talk-undo = annulla, annullalo, annulla tutto, annullare, torna indietro, mi sono sbagliato, mi sono sbagliata, ho sbagliato, sbagliato, sbagliata, pulsante sbagliato, tasto sbagliato, bottone sbagliato, ho premuto il tasto sbagliato, premuto per sbaglio, per sbaglio, errore, errore mio, non era questo, come non detto, ripristina, premuto sbaglio, premuto tasto sbagliato, sbaglio
lexicon-talk-greeting = ciao, salve, ehi, ehilà, buongiorno, buon giorno, buonasera, buona sera, buon pomeriggio, buondì, ciao a tutti, ciao ragazzi, buongiorno a tutti, buonasera a tutti, hey, hello, buon natale, buone feste, ciao come va, come va
lexicon-talk-assent = ok, okay, okk, va bene, vabbene, va benissimo, benissimo, bene, molto bene, sì, si, sì grazie, sì per favore, sì dai, certo, certamente, perfetto, ottimo, d'accordo, accetto, accetta, accettato, facciamo così, si fa così, fai così, così va bene, va bene così, ci sta, mi sta bene, per me va bene, a me va bene, procedi, vai, vai pure, andiamo, dai, affare fatto, volentieri, esatto, giusto, mi piace, buona idea, sembra buono, ok perfetto, ok va bene, bello, come no, certo che sì, ottimo facciamo così, perfetto facciamo così, bene facciamo così, va bene facciamo così
lexicon-talk-thanks = grazie, grazie mille, mille grazie, molte grazie, tante grazie, grazie tante, grazie infinite, ti ringrazio, grz, ok grazie, grazie a te, perfetto grazie, va bene grazie, grazie di cuore, sei un grande, ottimo grazie

## Chiedere aiuto a parole; i nomi delle lingue
lexicon-help = aiuto, aiutami, mi aiuti, puoi aiutarmi, come funziona, come funzioni, cosa sai fare, che cosa sai fare, che sai fare, cosa fai, istruzioni
lexicon-language-en = inglese, english
lexicon-language-es = spagnolo, español, castigliano, spanish
lexicon-language-fr = francese, français, french
lexicon-language-de = tedesco, deutsch, german
lexicon-language-pt = portoghese, português, brasiliano, portuguese
lexicon-language-it = italiano, italian

## Quiet hours, and that there are none
lexicon-quiet = silenzio, ore di silenzio, non disturbare
lexicon-quiet-off = mai, nessuna, no, niente, spento

## La percentuale di una salamoia sull’acqua; i cucchiai di chi
lexicon-ask-of-water = dell'acqua, sull'acqua, rispetto all'acqua
lexicon-spoons-us = americani, americano, americane, stati uniti, usa
lexicon-spoons-metric = metrici, metrico, metriche, europei
lexicon-spoons-uk = inglesi, britannici, britannico, regno unito
lexicon-spoons-australia = australiani, australiano, australia

## Una parola che nega la successiva
lexicon-negation = no, non, niente, senza il, senza la, senza lo, senza l', senza, non in, non nel, non al, lascia stare il, lascia perdere il, invece del, invece di, invece della, al posto del, al posto di
