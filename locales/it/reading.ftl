### Che cosa non va in quel che è stato scritto: quel che si è capito, i limiti, un esempio.

reading-mass = Un volatile da { $given }? Posso fare un piano da { $low } a { $high }. Per esempio: tacchino da 6,5 kg.
reading-guests = { $given } a tavola? Dammi un numero intero da { $low } a { $high }. Per esempio: 11 persone.
reading-setting = { $given } non è una temperatura di cottura: lavoro da { $low } a { $high }. Per esempio: forno a { $example }.
reading-solution = Soluzione al { $given } %? L’etichetta arriva al { $high } %. Per esempio: contiene fino all’8 % di soluzione.
reading-drive = Un viaggio di { $given } min? Al massimo { $high }. Per esempio: 40 min di macchina.
reading-past = { $given } è già passato. Quando si mangia? Per esempio: giovedì alle 17.
reading-used-by = La data sulla confezione, { $day }, è passata. Un volatile fresco scaduto non si mangia, a meno che sia stato congelato in tempo.
reading-use-by-far = Da consumare entro { $day }? Un volatile fresco non si conserva così a lungo. Per esempio: «da consumare entro venerdì».
reading-far = { $given } è troppo lontano: faccio piani fino a { $days } giorni prima. Per esempio: giovedì alle 17.
reading-fryer = Faccio piani per forno e affumicatore, non per l’olio bollente. Mai friggere un volatile congelato, bagnato o farcito, e solo all’aperto. Chiedimi: è sicuro friggere?
reading-other-bird = Ho tempi per tacchino, pollo, cappone, anatra e oca, per questo no, quindi non lo pianifico. Conta il termometro: { $target } in petto, coscia e ala.
reading-thermometer = { $given } sul termometro? Accetto da { $low } a { $high }. Per esempio: petto 53, sovracoscia 61.
reading-future = { $given } deve ancora arrivare. A che ora l’hai letto? Per esempio: petto 53 alle 14:05.
reading-too-many = Una lettura per punto: petto, sovracoscia, camera. Per esempio: petto 53, sovracoscia 61, camera 168.
reading-loose-number = Non so che cosa vuol dire { $given } lì. Dillo con un’unità: 6,5 kg, 11 persone, 165 °C.
reading-two-weights = Due volatili di peso diverso: ne pianifico uno per volta, prima quello da { $heavy }. Quando è a posto, dimmi quello da { $light }.
