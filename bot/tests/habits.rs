//! How things are done in a kitchen: the words people ask with, in six languages, and what must not be taken for such a question.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Advice, Asker, Habit, Question, answer, read_question};
use carvetime::room::{RoomKind, What};
use carvetime::words::{Reader, Voice, plain};
use carvetime_core::plan::Moment;
use kitchen::Kitchen;

const ZONE: chrono_tz::Tz = chrono_tz::America::Chicago;

fn now() -> Moment {
    "2027-11-23T00:30:00Z".parse().unwrap()
}

fn habit(tag: &str, text: &str) -> Option<Habit> {
    match read_question(text, &Asker::new(tag, ZONE, now())) {
        Ok(Question::Advice(Advice::Habit(habit))) => Some(habit),
        _ => None,
    }
}

/// Each line: the habit's name, then questions that ask for it.
fn check(tag: &str, table: &[(&str, &[&str])]) {
    let mut wrong = Vec::new();
    for (name, questions) in table {
        for text in *questions {
            let got = habit(tag, text).map_or("none", Habit::name);
            if got != *name {
                wrong.push(format!("{text}: got {got}, wanted {name}"));
            }
        }
    }
    assert!(wrong.is_empty(), "{tag}\n{}", wrong.join("\n"));
    let missing: Vec<&str> =
        Habit::ALL.iter().map(|habit| habit.name()).filter(|name| table.iter().all(|(n, _)| n != name)).collect();
    assert!(missing.is_empty(), "{tag}: nothing asks for {missing:?}");
}

#[test]
fn english_questions() {
    check(
        "en-US",
        &[
            ("dropped", &["dropped the turkey on the floor"]),
            ("prick", &["do i need to prick the goose"]),
            ("worry", &["im so scared i'll poison everyone", "I'm worried someone gets sick"]),
            (
                "not-in-time",
                &["what if it isn't done by dinner?", "what if its not done at 5", "what if it is not done at 5?"],
            ),
            (
                "crossed",
                &[
                    "i used the same cutting board for the raw chicken and the salad",
                    "cut the salad with the raw chicken knife",
                ],
            ),
            ("kills", &["does cooking kill the bacteria", "if i roast it long enough will it kill the germs"]),
            ("dial", &["my oven dial only has numbers 1 to 8", "the knob has numbers 1 to 10 which one"]),
            ("carve", &["how do i carve this", "how do you carve a turkey?", "how to carve"]),
            ("pop-up", &["popup thing popped is it done", "the pop up timer popped"]),
            (
                "bag-inside",
                &[
                    "i left the bag of giblets inside",
                    "giblet bag was still inside, is it ok to eat",
                    "giblets bag was frozen inside still in there",
                ],
            ),
            ("probe-out", &["probe fell out", "my thermometer is broken"]),
            (
                "mess",
                &[
                    "bag leaked in the fridge",
                    "turkey juice dripped in my fridge",
                    "how do i clean up after raw turkey",
                ],
            ),
            ("dog", &["can my dog eat the bones", "can i give the dog some"]),
            ("fragile", &["pregnant can i eat it", "grandma has weak immune system"]),
            ("neck", &["what about the neck", "what do i do with the giblets"]),
            ("finish-oven", &["can i finish it in the oven", "should i move it to the oven"]),
            ("side-up", &["breast side up or down", "which side up", "breast up or down"]),
            ("fridge-shelf", &["where in the fridge does it go"]),
            ("fridge-cover", &["should i cover it in the fridge", "covered or uncovered in the fridge"]),
            ("salted-twice", &["my wife salted it too, so its been salted twice", "i put too much salt"]),
            ("rinse-salt", &["do i rinse off the salt", "do i rinse after dry brining"]),
            ("brine-frozen", &["can i brine a frozen turkey"]),
            ("brine-or-not", &["do i brine or not", "do i need to brine it", "wet brine or dry brine"]),
            ("rack", &["do i need a rack", "i have no rack", "which oven rack"]),
            ("truss", &["do i truss it", "tie the legs?"]),
            ("pan-water", &["do i add water to the pan", "should i put water in the roasting pan"]),
            (
                "which-salt",
                &[
                    "which salt should i use",
                    "can i use table salt instead",
                    "whats the difference between coarse and fine salt",
                ],
            ),
            ("fits", &["will it fit in my oven", "how big a pan do i need", "i have a small oven, will it fit?"]),
            ("boil", &["and if i boil it instead?", "can i boil it"]),
            ("oven-bag", &["can i cook it in a bag"]),
            ("temper", &["should i let it come to room temp", "how long does it take to come to room temp"]),
            ("weather", &["its raining will the smoker work", "its windy", "30mph gusts, smoker wont hold temp"]),
            ("grill", &["can i use a gas grill", "can i grill it"]),
            ("smoke", &["what wood for smoking", "white smoke ok?"]),
            ("gravy-how", &["how do i make gravy", "can i use the drippings", "is gravy too salty after dry brine"]),
            ("carcass", &["soup from the carcass", "what do i do with the bones"]),
            ("bones-out", &["the bones sat out all night, can i make stock"]),
            ("reheat-twice", &["can i reheat the turkey twice"]),
            ("no-butter", &["what do i use instead of butter"]),
            ("crisp", &["how do i get crispy skin", "skin is not crispy", "can i put baking powder on the skin"]),
            ("fat", &["butter under the skin", "oil or butter"]),
            ("preheat", &["do i need to preheat"]),
            ("early", &["it's done too early", "done 2 hours early what now", "turkey is finished early"]),
            ("fan", &["convection or regular", "should i use convection"]),
            ("ahead", &["can i cook it the day before", "can i carve it the night before"]),
            ("flat", &["can i spatchcock it", "how to spatchcock"]),
            ("fresh-or-frozen", &["fresh or frozen", "when should i buy a fresh turkey"]),
            ("thaw-microwave", &["can i thaw it in the microwave"]),
            ("thaw-sink", &["how do i thaw it in the sink"]),
            ("raw-inside", &["it is raw near the bone"]),
            ("ate-raw", &["we ate undercooked turkey"]),
            ("half-cook", &["can i half cook it tonight"]),
            ("freezer-down", &["the freezer was off all night, is the bird ok?", "the freezer died"]),
            ("fridge-down", &["the fridge was off"]),
            ("inject", &["can i inject it with butter"]),
        ],
    );
}

#[test]
fn german_questions() {
    check(
        "de-DE",
        &[
            ("dropped", &["pute runtergefallen"]),
            ("prick", &["muss die gans eingestochen werden"]),
            ("worry", &["hab angst dass wir alle vergiften", "ich hab so angst dass jemand krank wird"]),
            (
                "not-in-time",
                &["was wenn sie um 18 uhr noch nich fertig ist", "was wenn die pute nicht rechtzeitig fertig wird"],
            ),
            (
                "crossed",
                &[
                    "salat mit demselben messer geschnitten, gleiche messer wie fürs huhn",
                    "das gleiche brett für alles benutzt",
                ],
            ),
            ("kills", &["tötet das braten die bakterien?", "sterben die keime beim garen?"]),
            ("dial", &["mein ofen hat nur zahlen von 1 bis 8", "auf welche stufe stell ich ihn"]),
            ("carve", &["wie tranchiere ich das", "wie schneide ich den truthahn auf"]),
            ("pop-up", &["der rote knopf ist rausgesprungen, ist er fertig"]),
            ("bag-inside", &["die innereien waren noch drin", "tüte war noch drin, kann man ihn essen?"]),
            ("probe-out", &["fühler ist rausgerutscht", "thermometer ist kaputt"]),
            ("mess", &["der beutel ist im kühlschrank ausgelaufen", "fleischsaft im kühlschrank"]),
            ("dog", &["darf der hund die knochen haben"]),
            ("fragile", &["meine schwester ist schwanger, darf sie das essen"]),
            ("neck", &["was mache ich mit dem hals", "wie koche ich die innereien"]),
            ("finish-oven", &["kann ich ihn im ofen fertig garen"]),
            ("side-up", &["brust nach oben oder unten?", "welche seite nach oben"]),
            ("fridge-shelf", &["wo in den kühlschrank damit"]),
            ("fridge-cover", &["soll ich ihn im kühlschrank abdecken"]),
            ("salted-twice", &["meine frau hat ihn auch gesalzen, doppelt gesalzen"]),
            ("rinse-salt", &["muss ich das salz abspülen"]),
            ("brine-frozen", &["kann ich einen gefrorenen truthahn in lake legen"]),
            ("brine-or-not", &["muss ich ihn in lake legen"]),
            ("rack", &["muss er auf den rost", "welche schiene im ofen"]),
            ("truss", &["soll ich die beine zusammenbinden"]),
            ("pan-water", &["soll ich wasser in den bräter geben"]),
            ("which-salt", &["welches salz soll ich nehmen", "geht normales salz"]),
            ("fits", &["passt sie in den ofen?", "wie groß muss der bräter sein"]),
            ("boil", &["kann ich sie im topf kochen"]),
            ("oven-bag", &["kann ich ihn im bratschlauch machen"]),
            ("temper", &["muss er auf zimmertemperatur kommen"]),
            ("weather", &["es regnet, geht der smoker trotzdem"]),
            ("grill", &["kann ich ihn auf dem grill machen"]),
            ("smoke", &["welches holz", "dicker weißer rauch ok?", "weißer rauch"]),
            ("gravy-how", &["wie soll ich die soße machen", "bratensaft für die soße?"]),
            ("carcass", &["was mache ich mit der karkasse", "suppe aus den knochen"]),
            ("bones-out", &["die knochen standen über nacht draußen"]),
            ("reheat-twice", &["kann ich die reste zweimal aufwärmen"]),
            ("no-butter", &["was nehme ich statt butter"]),
            ("crisp", &["wie wird die haut knusprig"]),
            ("fat", &["öl oder butter?", "butter unter die haut?"]),
            ("preheat", &["muss ich vorheizen"]),
            ("early", &["er ist zu früh fertig", "viel zu früh fertig"]),
            ("fan", &["umluft oder ober/unterhitze", "soll ich umluft nehmen"]),
            ("ahead", &["kann ich ihn am vortag braten"]),
            ("flat", &["kann ich ihn flach machen"]),
            ("fresh-or-frozen", &["frisch oder gefroren?"]),
            ("thaw-microwave", &["kann ich ihn in der mikrowelle auftauen"]),
            ("thaw-sink", &["wie taue ich ihn in kaltem wasser auf"]),
            ("raw-inside", &["am knochen noch roh"]),
            ("ate-raw", &["wir haben rohe pute gegessen"]),
            ("half-cook", &["kann ich ihn heute halb garen"]),
            ("freezer-down", &["der Gefrierschrank ist ausgefallen", "die Gefriertruhe war aus"]),
            ("fridge-down", &["kühlschrank ist ausgefallen"]),
            ("inject", &["soll ich brühe injizieren"]),
        ],
    );
}

#[test]
fn spanish_questions() {
    check(
        "es-ES",
        &[
            ("dropped", &["se me cayó el pavo al piso"]),
            ("prick", &["¿hay que pinchar la piel?"]),
            ("worry", &["tengo miedo de intoxicar a todos", "me preocupa que alguien se enferme"]),
            ("not-in-time", &["¿y si el pavo no está listo a las 5?"]),
            ("crossed", &["corté la ensalada con el cuchillo del pollo crudo", "usé la misma tabla para todo"]),
            ("kills", &["¿al asarlo se mueren las bacterias?", "cocinarlo mata los gérmenes?"]),
            (
                "dial",
                &["mi horno solo tiene numeros del 1 al 8", "en qué número pongo la perilla", "le puse el dial en 4"],
            ),
            ("carve", &["cómo lo trincho", "cómo se trincha un pavo"]),
            (
                "pop-up",
                &["saltó el botón, ya está?", "trae un botoncito rojo q se bota cuando ya esta, con eso basta?"],
            ),
            ("bag-inside", &["dejé la bolsa dentro", "los menudos dentro, se puede comer?"]),
            ("probe-out", &["se cayó la sonda", "el termómetro está roto"]),
            ("mess", &["goteó en la nevera", "jugo crudo en la nevera"]),
            ("dog", &["puede el perro comer los huesos"]),
            ("fragile", &["estoy embarazada, puedo comerlo"]),
            ("neck", &["qué hago con el cuello", "cómo hago los menudillos"]),
            ("finish-oven", &["puedo terminarlo en el horno"]),
            ("side-up", &["pechuga arriba o abajo"]),
            ("fridge-shelf", &["dónde va en la nevera"]),
            ("fridge-cover", &["hay que taparlo en la nevera"]),
            ("salted-twice", &["mi mujer también, está salado dos veces"]),
            ("rinse-salt", &["hay que enjuagar la sal"]),
            ("brine-frozen", &["puedo poner en salmuera un pavo congelado"]),
            ("brine-or-not", &["hace falta salmuera", "salmuera o no"]),
            ("rack", &["hace falta rejilla"]),
            ("truss", &["hay que atar las patas"]),
            ("pan-water", &["pongo agua en la bandeja"]),
            ("which-salt", &["qué sal uso", "sal fina o gruesa?"]),
            ("fits", &["cabe en mi horno?", "tengo un horno chico"]),
            ("boil", &["y si lo hiervo?"]),
            ("oven-bag", &["puedo hacerlo en bolsa de asar"]),
            ("temper", &["hay que atemperarlo"]),
            ("weather", &["está lloviendo, puedo ahumar"]),
            ("grill", &["puedo hacerlo en la barbacoa"]),
            ("smoke", &["qué madera uso", "humo blanco"]),
            ("gravy-how", &["cómo puedo hacer la salsa"]),
            ("carcass", &["qué hago con los huesos", "sopa con la carcasa"]),
            ("bones-out", &["los huesos se quedaron fuera toda la noche"]),
            ("reheat-twice", &["puedo recalentar las sobras dos veces"]),
            ("no-butter", &["qué uso en vez de mantequilla"]),
            ("crisp", &["cómo queda la piel crujiente"]),
            ("fat", &["aceite o mantequilla"]),
            ("preheat", &["hay que precalentar el horno"]),
            ("early", &["está listo antes de tiempo"]),
            ("fan", &["con ventilador o sin?"]),
            ("ahead", &["puedo asarlo el día antes"]),
            ("flat", &["cómo lo abro en mariposa"]),
            ("fresh-or-frozen", &["fresco o congelado"]),
            ("thaw-microwave", &["puedo descongelarlo en el microondas"]),
            ("thaw-sink", &["cómo lo descongelo en agua fría"]),
            ("raw-inside", &["está crudo por dentro"]),
            ("ate-raw", &["comimos pavo crudo"]),
            ("half-cook", &["puedo cocinarlo a medias"]),
            ("freezer-down", &["se rompió el congelador"]),
            ("fridge-down", &["se estropeó la nevera"]),
            ("inject", &["le inyecto caldo"]),
        ],
    );
}

#[test]
fn french_questions() {
    check(
        "fr-FR",
        &[
            ("dropped", &["la dinde est tombée par terre"]),
            ("prick", &["faut piquer la peau ?"]),
            ("worry", &["j'ai peur d'empoisonner tout le monde", "j'ai peur de rendre malade toute la famille"]),
            ("not-in-time", &["et si la dinde n'est pas cuite à temps ?"]),
            ("crossed", &["j'ai coupé la salade avec le couteau du poulet cru", "la même planche pour tout"]),
            ("kills", &["la cuisson tue les bactéries ?", "ça tue les microbes si je cuis bien ?"]),
            ("dial", &["mon four n'a que des chiffres de 1 à 8", "je le mets sur quel chiffre ?"]),
            ("carve", &["comment je la découpe", "comment découper une dinde"]),
            ("pop-up", &["le témoin a sauté, c'est cuit ?"]),
            ("bag-inside", &["j'ai oublié le sachet", "les abats dedans, c'est grave ?"]),
            ("probe-out", &["la sonde est tombée", "le thermomètre est cassé"]),
            ("mess", &["ça a coulé dans le frigo", "jus cru partout"]),
            ("dog", &["est-ce que je peux donner les os au chien"]),
            ("fragile", &["je suis enceinte, je peux en manger ?"]),
            ("neck", &["comment je fais les abats", "comment cuire le cou"]),
            ("finish-oven", &["je peux la finir au four ?"]),
            ("side-up", &["sur le dos ou sur le ventre ?"]),
            ("fridge-shelf", &["où la mettre dans le frigo"]),
            ("fridge-cover", &["faut-il la couvrir au frigo"]),
            ("salted-twice", &["j'ai mis trop de sel"]),
            ("rinse-salt", &["faut-il rincer le sel"]),
            ("brine-frozen", &["je peux saumurer une dinde congelée ?"]),
            ("brine-or-not", &["faut-il la saumurer"]),
            ("rack", &["faut-il une grille de cuisson"]),
            ("truss", &["faut-il la brider"]),
            ("pan-water", &["je mets de l'eau dans le plat ?"]),
            ("which-salt", &["quel sel je prends", "gros sel ou sel fin ?"]),
            ("fits", &["ça rentre dans mon four ?", "quelle taille de plat il faut"]),
            ("boil", &["et si je la fais bouillir ?"]),
            ("oven-bag", &["je peux la cuire dans un sac de cuisson ?"]),
            ("temper", &["faut-il la tempérer"]),
            ("weather", &["il pleut, le fumoir marche quand même ?"]),
            ("grill", &["je peux la faire au barbecue ?"]),
            ("smoke", &["quel bois pour fumer", "fumée blanche"]),
            ("gravy-how", &["comment faire la sauce"]),
            ("carcass", &["que faire de la carcasse, soupe ?", "soupe avec la carcasse"]),
            ("bones-out", &["les os sont restés dehors toute la nuit"]),
            ("reheat-twice", &["on peut réchauffer les restes deux fois"]),
            ("no-butter", &["quoi à la place du beurre"]),
            ("crisp", &["comment avoir la peau croustillante"]),
            ("fat", &["huile ou beurre ?", "du beurre sous la peau ?"]),
            ("preheat", &["faut-il préchauffer"]),
            ("early", &["elle est prête trop tôt"]),
            ("fan", &["chaleur tournante ou pas"]),
            ("ahead", &["je peux la cuire la veille ?"]),
            ("flat", &["comment la mettre en crapaudine"]),
            ("fresh-or-frozen", &["fraîche ou congelée ?"]),
            ("thaw-microwave", &["je peux la décongeler au micro-ondes ?"]),
            ("thaw-sink", &["comment la décongeler dans l'eau froide"]),
            ("raw-inside", &["c'est cru près de l'os"]),
            ("ate-raw", &["on a mangé une dinde pas cuite"]),
            ("half-cook", &["je la cuis à moitié ce soir"]),
            ("freezer-down", &["le congélateur est en panne"]),
            ("fridge-down", &["le frigo est en panne"]),
            ("inject", &["je peux injecter du beurre"]),
        ],
    );
}

#[test]
fn portuguese_questions() {
    check(
        "pt-BR",
        &[
            ("dropped", &["o peru caiu no chão"]),
            ("prick", &["tem que furar a pele?"]),
            ("worry", &["tenho medo de alguém passar mal", "medo de envenenar a família"]),
            ("not-in-time", &["e se o peru não ficar pronto a tempo?"]),
            ("crossed", &["passei a faca do frango cru na salada", "usei a mesma tábua pra tudo"]),
            ("kills", &["assar mata as bactérias?", "se assar bem mata os germes?"]),
            ("dial", &["meu forno só tem números de 1 a 8", "em que número eu coloco?"]),
            ("carve", &["como eu fatio isso", "como trinchar o peru"]),
            ("pop-up", &["o pino pulou, tá pronto?"]),
            ("bag-inside", &["esqueci o saquinho", "os miúdos dentro, pode comer?"]),
            ("probe-out", &["a sonda caiu", "o termômetro quebrou"]),
            ("mess", &["vazou na geladeira", "líquido na geladeira"]),
            ("dog", &["o cachorro pode comer os ossos"]),
            ("fragile", &["estou grávida, posso comer?"]),
            ("neck", &["como faço o pescoço", "como faço os miúdos"]),
            ("finish-oven", &["posso terminar no forno"]),
            ("side-up", &["peito para cima ou para baixo"]),
            ("fridge-shelf", &["onde coloco na geladeira"]),
            ("fridge-cover", &["devo cobrir na geladeira"]),
            ("salted-twice", &["coloquei sal demais"]),
            ("rinse-salt", &["devo enxaguar o sal"]),
            ("brine-frozen", &["posso colocar o peru congelado na salmoura"]),
            ("brine-or-not", &["devo fazer salmoura"]),
            ("rack", &["precisa de grade?"]),
            ("truss", &["devo amarrar as pernas"]),
            ("pan-water", &["devo colocar água na assadeira"]),
            ("which-salt", &["que sal uso", "sal fino ou grosso?"]),
            ("fits", &["cabe no meu forno?", "que tamanho de assadeira"]),
            ("boil", &["posso cozinhar na panela?"]),
            ("oven-bag", &["posso assar no saco"]),
            ("temper", &["devo deixar ficar em temperatura ambiente"]),
            ("weather", &["está chovendo, dá para defumar?"]),
            ("grill", &["posso fazer na churrasqueira"]),
            ("smoke", &["que madeira uso", "fumaça branca"]),
            ("gravy-how", &["como fazer o molho"]),
            ("carcass", &["o que faço com a carcaça", "sopa da carcaça"]),
            ("bones-out", &["os ossos ficaram fora a noite toda"]),
            ("reheat-twice", &["posso requentar as sobras duas vezes"]),
            ("no-butter", &["o que uso no lugar da manteiga"]),
            ("crisp", &["como deixo a pele crocante"]),
            ("fat", &["óleo ou manteiga"]),
            ("preheat", &["tem que preaquecer o forno"]),
            ("early", &["ficou pronto cedo", "pronto cedo demais"]),
            ("fan", &["com convecção ou sem", "devo usar convecção"]),
            ("ahead", &["posso assar na véspera"]),
            ("flat", &["como deixo aberto pelas costas"]),
            ("fresh-or-frozen", &["fresco ou congelado"]),
            ("thaw-microwave", &["posso descongelar no micro-ondas"]),
            ("thaw-sink", &["como descongelar em água fria"]),
            ("raw-inside", &["está cru perto do osso"]),
            ("ate-raw", &["comemos peru cru"]),
            ("half-cook", &["posso assar pela metade"]),
            ("freezer-down", &["o freezer pifou"]),
            ("fridge-down", &["a geladeira quebrou"]),
            ("inject", &["posso injetar manteiga"]),
        ],
    );
}

#[test]
fn italian_questions() {
    check(
        "it-IT",
        &[
            ("dropped", &["mi è caduto il cappone per terra"]),
            ("prick", &["va bucato il cappone?"]),
            ("worry", &["ho paura di avvelenare tutti", "paura che qualcuno stia male"]),
            ("not-in-time", &["e se non è pronto in tempo?"]),
            ("crossed", &["ho tagliato l'insalata con il coltello del pollo crudo", "lo stesso tagliere per tutto"]),
            ("kills", &["la cottura uccide i batteri?", "muoiono i batteri se cuoce bene?"]),
            ("dial", &["il mio forno ha solo numeri da 1 a 8", "su che numero lo metto?"]),
            ("carve", &["come lo taglio", "come si trincia il tacchino"]),
            ("pop-up", &["è saltato il bottone, è pronto?"]),
            ("bag-inside", &["ho dimenticato il sacchetto", "le frattaglie dentro, si può mangiare?"]),
            ("probe-out", &["la sonda è caduta", "il termometro è rotto"]),
            ("mess", &["ha perso liquido in frigo", "liquido in frigo"]),
            ("dog", &["il cane può mangiare le ossa"]),
            ("fragile", &["sono incinta, posso mangiarlo?"]),
            ("neck", &["come faccio il collo", "come cucino le frattaglie"]),
            ("finish-oven", &["posso finirlo in forno"]),
            ("side-up", &["petto in su o in giù"]),
            ("fridge-shelf", &["dove lo metto in frigo"]),
            ("fridge-cover", &["devo coprirlo in frigo"]),
            ("salted-twice", &["ho messo troppo sale"]),
            ("rinse-salt", &["devo sciacquare il sale"]),
            ("brine-frozen", &["posso mettere in salamoia un tacchino congelato"]),
            ("brine-or-not", &["devo fare la salamoia"]),
            ("rack", &["serve la gratella?"]),
            ("truss", &["devo legarlo"]),
            ("pan-water", &["devo mettere acqua nella teglia"]),
            ("which-salt", &["quale sale uso", "che differenza tra sale grosso e sale fino"]),
            ("fits", &["ho un forno piccolo, ci sta?", "quale teglia mi serve"]),
            ("boil", &["ma se lo lesso invece?"]),
            ("oven-bag", &["posso farlo nel sacchetto da forno"]),
            ("temper", &["devo portarlo a temperatura ambiente"]),
            ("weather", &["piove, posso affumicare lo stesso?"]),
            ("grill", &["posso farlo al barbecue"]),
            ("smoke", &["che legna uso", "fumo bianco"]),
            ("gravy-how", &["come fare la salsa"]),
            ("carcass", &["cosa faccio con la carcassa", "brodo con la carcassa"]),
            ("bones-out", &["le ossa sono rimaste fuori tutta la notte"]),
            ("reheat-twice", &["posso riscaldare gli avanzi due volte"]),
            ("no-butter", &["cosa uso al posto del burro"]),
            ("crisp", &["come viene la pelle croccante"]),
            ("fat", &["olio o burro"]),
            ("preheat", &["devo preriscaldare il forno"]),
            ("early", &["è pronto troppo presto"]),
            ("fan", &["ventilato o statico", "devo usare il forno ventilato?"]),
            ("ahead", &["posso cuocerlo il giorno prima"]),
            ("flat", &["come lo apro a libro"]),
            ("fresh-or-frozen", &["fresco o congelato"]),
            ("thaw-microwave", &["posso scongelarlo nel microonde"]),
            ("thaw-sink", &["come lo scongelo in acqua fredda"]),
            ("raw-inside", &["è crudo vicino all'osso"]),
            ("ate-raw", &["abbiamo mangiato crudo"]),
            ("half-cook", &["posso cuocerlo a metà"]),
            ("freezer-down", &["si è rotto il congelatore"]),
            ("fridge-down", &["si è rotto il frigo"]),
            ("inject", &["posso iniettare il brodo"]),
        ],
    );
}

/// What has a number, a weight or a dinner in it is asked of the arithmetic, and what can kill of the cautions.
#[test]
fn what_is_more_than_a_habit_is_not_answered_with_one() {
    for text in [
        "14 lb frozen turkey, dinner thursday 5 pm, dry brine or wet",
        "how long does a 14 lb turkey rest in the fridge",
        "how much salt to dry brine 14 lb",
        "can i run the smoker in the garage when it's raining",
        "how do i fry a frozen turkey on the grill",
        "raw giblets: how long do they keep",
        "what temperature should the grill be",
        "how long do i thaw it in cold water",
        "i'll carve",
        "how much gravy for 10",
        "when do we carve",
    ] {
        assert_eq!(habit("en-US", text), None, "{text}");
    }
}

/// Temperatures follow the reader, and every answer names where it comes from.
#[test]
fn every_habit_is_told_in_every_language_with_its_source() {
    let voice = Voice::new();
    for tag in ["en-US", "de-DE", "es-ES", "fr-FR", "pt-BR", "it-IT"] {
        let asker = Asker::new(tag, ZONE, now());
        for habit in Habit::ALL {
            let told = answer(&Question::Advice(Advice::Habit(*habit)), &asker).unwrap();
            let reader = Reader::new(tag, ZONE, now());
            let said = plain(&voice.render(&told.lines(), &reader));
            assert!(said.len() > 20 && !said.contains('{') && !said.contains("ask-"), "{tag} {habit:?}: {said}");
            assert!(said.contains("°F") == (tag == "en-US" && said.contains('°')), "{tag} {habit:?}: {said}");
            assert!(!told.sources.is_empty() && told.kind == habit.name(), "{tag} {habit:?}");
        }
    }
}

/// Where people talk to each other, what only mentions a habit is left alone; a question and a danger are answered.
#[test]
fn in_a_group_talk_of_the_kitchen_is_not_a_question() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", ZONE, "2027-11-24 08:00");
    let mut mention = |text: &str| {
        let what = What::Said { text: text.into(), addressed: false, reply_to: None, edited: false };
        kitchen.hear(Some("Ben"), what)
    };
    for talk in ["the skin was so crispy last year", "it's windy here", "we put butter under the skin last time"] {
        assert_eq!(mention(talk), "", "{talk}");
    }
    assert!(mention("do we need a rack?").contains("onion"));
    assert!(mention("how do i get the skin crispy").contains("Dry skin"));
    assert!(mention("the pop up timer popped").contains("165"));
    // Said to it, it is answered.
    assert!(kitchen.say("Ben", "it's windy here").contains("Out of the wind"));
}
