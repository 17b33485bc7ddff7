//! What must be read alike in every language, because someone could be hurt, or a job lost, where it is not.

use crate::{check, log, plan, question, report, talk};

/// The same said in English, Spanish, German, Portuguese, French, Italian.
type Said = [&'static str; 6];

const TAGS: Said = ["en-US", "es-ES", "de-DE", "pt-BR", "fr-FR", "it-IT"];

fn everywhere(read: fn(&str, &str) -> String, table: &[(&str, Said)]) {
    for (place, tag) in TAGS.iter().enumerate() {
        let rows: Vec<(&str, &str)> = table.iter().map(|(wanted, said)| (said[place], *wanted)).collect();
        check(tag, read, &rows);
    }
}

#[test]
fn spoiled_or_cooked_too_cool_is_never_taken_for_leftovers() {
    everywhere(
        question,
        &[
            (
                "past-date",
                [
                    "the raw turkey expired yesterday, can I still cook it?",
                    "el pavo crudo caducó ayer, ¿lo puedo cocinar?",
                    "die rohe Pute ist gestern abgelaufen, kann ich sie noch braten?",
                    "o peru cru venceu ontem, ainda posso assar?",
                    "la dinde crue est périmée depuis hier, je peux la cuire ?",
                    "il tacchino crudo è scaduto ieri, posso ancora cuocerlo?",
                ],
            ),
            (
                "smell",
                [
                    "the turkey smells bad",
                    "el pavo huele mal",
                    "die Pute riecht komisch",
                    "o peru cheira mal",
                    "la dinde sent mauvais",
                    "il tacchino puzza",
                ],
            ),
            (
                "oven-temp",
                [
                    "can I cook it at 180 F overnight",
                    "¿puedo asar el pavo a 80 grados toda la noche?",
                    "kann ich die Gans bei 80 Grad über Nacht garen?",
                    "posso assar o peru a 80 graus a noite toda?",
                    "on peut cuire la dinde à 80 degrés toute la nuit ?",
                    "posso cuocere il tacchino a 80 gradi tutta la notte?",
                ],
            ),
            (
                "left-out",
                [
                    "I left the turkey in the oven overnight, is it safe?",
                    "dejé el pavo en el horno toda la noche, ¿es seguro?",
                    "ich habe die Pute über Nacht im Ofen stehen gelassen, ist das sicher?",
                    "deixei o peru no forno a noite toda, é seguro?",
                    "j'ai laissé la dinde dans le four toute la nuit, c'est sûr ?",
                    "ho lasciato il tacchino nel forno tutta la notte, è sicuro?",
                ],
            ),
            (
                "hold",
                [
                    "how do I keep the goose warm?",
                    "¿cómo mantengo caliente el pavo?",
                    "wie halte ich die Gans warm?",
                    "como mantenho o peru quente?",
                    "comment je garde l'oie chaude ?",
                    "come tengo caldo il tacchino?",
                ],
            ),
            // Three days old: too old if it is raw, and nobody said that it is not.
            (
                "keeps days-low=1d",
                [
                    "is turkey still good after 3 days in the fridge?",
                    "¿el pavo dura 3 días en la nevera?",
                    "hält die Pute 3 Tage im Kühlschrank?",
                    "o peru dura 3 dias na geladeira?",
                    "la dinde se garde 3 jours au frigo ?",
                    "il tacchino dura 3 giorni in frigo?",
                ],
            ),
            (
                "which-thermometer",
                [
                    "I have no thermometer, what do I do?",
                    "no tengo termómetro, ¿qué hago?",
                    "ich habe kein Thermometer, was mache ich?",
                    "não tenho termômetro, o que faço?",
                    "je n'ai pas de thermomètre, je fais quoi ?",
                    "non ho il termometro, che faccio?",
                ],
            ),
            (
                "no-room",
                [
                    "no room in the fridge for the turkey",
                    "no cabe el pavo en la nevera",
                    "kein Platz im Kühlschrank für die Pute",
                    "o peru não cabe na geladeira",
                    "pas de place au frigo pour la dinde",
                    "il tacchino non entra in frigo",
                ],
            ),
            (
                "own-salt",
                [
                    "I only have table salt",
                    "solo tengo sal de mesa",
                    "ich habe nur Tafelsalz",
                    "só tenho sal de mesa",
                    "je n'ai que du sel fin",
                    "ho solo sale fino",
                ],
            ),
        ],
    );
}

#[test]
fn what_is_asked_or_still_to_come_is_not_done_and_ice_is_heard_anywhere() {
    everywhere(
        report,
        &[
            (
                "-",
                [
                    "can I still eat the leftovers",
                    "puedo comer las sobras todavía",
                    "kann ich die Reste noch essen",
                    "ainda posso comer as sobras",
                    "on peut encore manger les restes",
                    "posso ancora mangiare gli avanzi",
                ],
            ),
            (
                "-",
                [
                    "salted later",
                    "salado mañana",
                    "heute abend gesalzen",
                    "salgado amanhã",
                    "je sale ce soir",
                    "salata domani",
                ],
            ),
            (
                "salt",
                [
                    "salted this morning",
                    "salado esta mañana",
                    "heute morgen gesalzen",
                    "salgado hoje de manhã",
                    "salée ce matin",
                    "salata stamattina",
                ],
            ),
            (
                "not on",
                [
                    "not in yet",
                    "todavía no está en el horno",
                    "noch nicht im Ofen",
                    "ainda não está no forno",
                    "pas encore dedans",
                    "non è ancora in forno",
                ],
            ),
            (
                "not thaw",
                [
                    "the bird is still frozen in the middle and hard",
                    "el ave tiene hielo dentro todavía",
                    "die Pute hat innen noch Eis",
                    "o peru ainda tem gelo dentro da barriga",
                    "la dinde est encore gelée à l'intérieur",
                    "il tacchino è ancora ghiacciato dentro",
                ],
            ),
        ],
    );
}

#[test]
fn how_many_will_eat_is_no_hour_and_the_cooker_named_is_no_question() {
    everywhere(
        plan,
        &[(
            "adults=10",
            [
                "we are now 10",
                "ahora somos 10",
                "wir sind jetzt 10",
                "agora somos 10",
                "finalement on est 10",
                "adesso siamo in 10",
            ],
        )],
    );
    everywhere(question, &[("!", ["oven", "horno", "Ofen", "forno", "four", "forno"])]);
}

#[test]
fn children_among_the_people_are_counted_once() {
    everywhere(
        plan,
        &[
            (
                "adults=9 children=3",
                [
                    "12 of us, 3 of them kids",
                    "somos 12 personas, de ellos 3 niños",
                    "12 Personen, davon 3 Kinder",
                    "12 pessoas, sendo 3 crianças",
                    "12 personnes dont 3 enfants",
                    "12 persone di cui 3 bambini",
                ],
            ),
            (
                "adults=9 children=3",
                [
                    "12 people including 3 kids",
                    "12 personas, incluidos 3 niños",
                    "12 Personen, darunter sind 3 Kinder",
                    "12 pessoas, incluindo 3 crianças",
                    "12 personnes, y compris 3 enfants",
                    "12 persone, compresi 3 bambini",
                ],
            ),
            (
                "adults=12 children=3",
                [
                    "12 adults and 3 kids",
                    "12 adultos y 3 niños",
                    "12 Erwachsene und 3 Kinder",
                    "12 adultos e 3 crianças",
                    "12 adultes et 3 enfants",
                    "12 adulti e 3 bambini",
                ],
            ),
        ],
    );
}

/// How many eat at a table laid for ten once this is heard too.
fn guests(tag: &str, text: &str) -> String {
    let (mut table, _) = carvetime::reading::read_wish("10", &crate::ground(tag));
    table.adults = Some(10);
    table.merge(carvetime::reading::read_wish(text, &crate::ground(tag)).0);
    format!("{}+{}", table.adults.unwrap_or(0), table.children.unwrap_or(0))
}

#[test]
fn guests_who_come_too_are_added() {
    everywhere(
        guests,
        &[
            (
                "13+0",
                [
                    "3 more people are coming",
                    "vienen 3 personas más",
                    "es kommen noch 3 Personen",
                    "vêm mais 3 pessoas",
                    "3 personnes de plus viennent",
                    "arrivano 3 persone in più",
                ],
            ),
            (
                "10+2",
                [
                    "my cousin's 2 kids are coming too",
                    "también vienen 2 niños",
                    "2 Kinder kommen auch",
                    "2 crianças também vêm",
                    "2 enfants viennent aussi",
                    "vengono anche 2 bambini",
                ],
            ),
            ("12+0", ["we are 12 now", "somos 12", "wir sind 12", "somos 12", "on est 12", "siamo in 12"]),
        ],
    );
}

#[test]
fn midnight_ends_the_evening_it_is_told_with() {
    everywhere(
        plan,
        &[(
            "dinner=25.12.@00:00",
            [
                "Christmas Eve, dinner at midnight",
                "cena de Nochebuena a medianoche",
                "Essen Heiligabend um Mitternacht",
                "ceia dia 24 de dezembro à meia-noite",
                "réveillon de Noël à minuit",
                "cena della vigilia di Natale a mezzanotte",
            ],
        )],
    );
}

#[test]
fn two_birds_are_two_of_one_weight_or_one_after_the_other() {
    everywhere(
        plan,
        &[
            (
                "birds=2 condition=fresh kind=turkey mass_g=5000",
                [
                    "two fresh 5 kg turkeys",
                    "dos pavos frescos de 5 kg",
                    "zwei frische Puten, 5 kg",
                    "dois perus frescos de 5 kg",
                    "deux dindes fraîches de 5 kg",
                    "due tacchini freschi da 5 kg",
                ],
            ),
            (
                "!TwoWeights(5.0, 7.0) kind=turkey mass_g=7000",
                [
                    "two turkeys, 5 kg and 7 kg",
                    "dos pavos, de 5 kg y 7 kg",
                    "zwei Puten, 5 kg und 7 kg",
                    "dois perus, 5 kg e 7 kg",
                    "deux dindes, 5 kg et 7 kg",
                    "due tacchini, 5 kg e 7 kg",
                ],
            ),
        ],
    );
}

#[test]
fn the_two_readings_that_everyone_takes_need_no_names() {
    everywhere(
        log,
        &[
            (
                "breast=75 thigh=79 wing=76",
                [
                    "75 and 79, wing 76",
                    "75 y 79, ala 76",
                    "75 und 79, Flügel 76",
                    "75 e 79, asa 76",
                    "75 et 79, aile 76",
                    "75 e 79, ala 76",
                ],
            ),
            (
                "breast=55 thigh=61 pit=170",
                [
                    "55 61 oven 170",
                    "55 y 61, horno 170",
                    "55 und 61, Ofen 170",
                    "55 e 61, forno 170",
                    "55 et 61, four 170",
                    "55 e 61, forno 170",
                ],
            ),
            (
                "breast=75 thigh=82 wing=77",
                ["75/82 wing 77", "75/82 ala 77", "75/82 Flügel 77", "75/82 asa 77", "75/82 aile 77", "75/82 ala 77"],
            ),
            (
                "breast=66 thigh=71",
                [
                    "66 breast 71 thigh",
                    "66 pechuga 71 muslo",
                    "66 Brust 71 Keule",
                    "66 peito 71 coxa",
                    "66 poitrine 71 cuisse",
                    "66 petto 71 coscia",
                ],
            ),
        ],
    );
}

#[test]
fn a_guest_who_may_not_have_salt_is_heard() {
    everywhere(
        question,
        &[(
            "low-salt",
            [
                "my mom can't have salt",
                "mi madre no puede comer sal",
                "meine Mutter darf kein Salz essen",
                "minha mãe não pode comer sal",
                "ma mère n'a pas droit au sel",
                "mia madre non può mangiare sale",
            ],
        )],
    );
}

#[test]
fn the_day_of_the_shopping_is_no_day_of_the_meal() {
    everywhere(
        plan,
        &[
            (
                "at_home=false dinner=25.12.@13:00 kind=turkey mass_g=6000",
                [
                    "turkey 6 kg, I'm buying it tomorrow, Christmas at 1 pm",
                    "pavo de 6 kg, lo compro mañana, Navidad a las 13:00",
                    "Pute 6 kg, hole ich morgen, Weihnachten um 13 Uhr",
                    "peru de 6 kg, compro amanhã, Natal às 13h",
                    "dinde de 6 kg, je l'achète demain, Noël à 13h",
                    "tacchino di 6 kg, lo compro domani, Natale alle 13",
                ],
            ),
            (
                "dinner=25.11.@14:00 kind=turkey mass_g=6000",
                [
                    "turkey 6 kg, it's Tuesday, dinner Thursday at 2 pm",
                    "pavo de 6 kg, hoy es martes, comida el jueves a las 14:00",
                    "Pute 6 kg, heute ist Dienstag, Essen Donnerstag um 14 Uhr",
                    "peru de 6 kg, hoje é terça, almoço quinta às 14h",
                    "dinde de 6 kg, on est mardi, repas jeudi à 14h",
                    "tacchino di 6 kg, oggi è martedì, pranzo giovedì alle 14",
                ],
            ),
            (
                "at_home=false dinner=24.12.@21:00 kind=turkey mass_g=6000",
                [
                    "turkey 6 kg I'm buying on the 23rd, Christmas Eve, the 24th, at 9 pm",
                    "pavo de 6 kg que compro el 23, cena de Nochebuena el 24 a las 21:00",
                    "Pute 6 kg, die ich am 23. kaufe, Heiligabend, den 24., um 21 Uhr",
                    "peru de 6 kg que compro dia 23, véspera de Natal dia 24 às 21h",
                    "dinde de 6 kg que j'achète le 23, réveillon de Noël le 24 à 21h",
                    "tacchino di 6 kg che compro il 23, vigilia di Natale il 24 alle 21",
                ],
            ),
            (
                "dinner=26.12.@13:00 kind=turkey mass_g=6000",
                [
                    "turkey 6 kg, Boxing Day at 1 pm",
                    "pavo de 6 kg, San Esteban a las 13:00",
                    "Pute 6 kg, 2. Feiertag um 13 Uhr",
                    "peru de 6 kg, 26 de dezembro às 13h",
                    "dinde de 6 kg, lendemain de Noël à 13h",
                    "tacchino di 6 kg, santo Stefano alle 13",
                ],
            ),
            (
                "dinner=25.11.@13:00 kind=turkey mass_g=6000",
                [
                    "turkey 6 kg, the 25th at 1 pm",
                    "pavo de 6 kg, el día 25 a las 13:00",
                    "Pute 6 kg, am 25. um 13 Uhr",
                    "peru de 6 kg, dia 25 às 13h",
                    "dinde de 6 kg, le 25 à 13h",
                    "tacchino di 6 kg, il 25 alle 13",
                ],
            ),
            (
                "kind=turkey mass_g=6000 presalted=true salting=none",
                [
                    "6 kg turkey, already salted",
                    "pavo de 6 kg, ya salado",
                    "Pute 6 kg, schon gesalzen",
                    "peru de 6 kg, já salgado",
                    "dinde de 6 kg, déjà salée",
                    "tacchino di 6 kg, già salato",
                ],
            ),
            (
                "strength=light",
                [
                    "less salt please",
                    "menos sal por favor",
                    "weniger Salz bitte",
                    "menos sal por favor",
                    "moins de sel s'il te plaît",
                    "meno sale per favore",
                ],
            ),
        ],
    );
}

#[test]
fn whether_it_will_be_in_time_is_asked_of_the_forecast_whatever_the_hour() {
    everywhere(
        talk,
        &[
            (
                "when",
                [
                    "am i gonna make it by 4?",
                    "¿va a estar listo a las 4?",
                    "schaffen wir das bis 16 Uhr?",
                    "vai dar tempo?",
                    "ce sera prêt pour 16h ?",
                    "ce la facciamo per le 4?",
                ],
            ),
            (
                "when",
                [
                    "are we on track",
                    "¿vamos bien de tiempo?",
                    "sind wir im Plan?",
                    "estamos atrasados?",
                    "on est dans les temps ?",
                    "siamo in orario?",
                ],
            ),
        ],
    );
}

#[test]
fn everything_in_the_fridge_is_put_away() {
    everywhere(
        report,
        &[(
            "chill",
            [
                "put everything in the fridge",
                "metí todo en la nevera",
                "alles im Kühlschrank",
                "guardei tudo na geladeira",
                "tout est au frigo",
                "ho messo tutto in frigo",
            ],
        )],
    );
}

#[test]
fn in_the_fridge_to_thaw_is_the_thaw() {
    everywhere(
        report,
        &[(
            "thaw",
            [
                "put it in the fridge to thaw",
                "en la nevera a descongelar",
                "im Kühlschrank zum Auftauen",
                "na geladeira pra descongelar",
                "au frigo pour décongeler",
                "in frigo a scongelare",
            ],
        )],
    );
}

#[test]
fn of_two_clauses_the_later_is_the_report() {
    everywhere(
        report,
        &[(
            "on",
            [
                "oven on. put it in",
                "horno encendido. ya está en el horno",
                "Ofen ist an. Die Pute ist im Ofen",
                "forno ligado. o peru está no forno",
                "four allumé. la dinde est au four",
                "forno acceso. il tacchino è in forno",
            ],
        )],
    );
}

#[test]
fn shorthand_at_the_probe_is_read_in_every_language() {
    everywhere(
        log,
        &[
            (
                "breast=67 thigh=73 wing=71",
                [
                    "b 67 t 73 wing 71",
                    "pech 67 mus 73 ala 71",
                    "br 67 sch 73 flügel 71",
                    "pei 67 cox 73 asa 71",
                    "po 67 cui 73 aile 71",
                    "pet 67 cos 73 ala 71",
                ],
            ),
            (
                "breast=67 thigh=73",
                ["br 67, th 73", "pe 67, mu 73", "b 67, k 73", "pe 67, co 73", "bl 67, cu 73", "pe 67, cosc 73"],
            ),
            ("thigh=61", ["thig 61", "mulso 61", "kuele 61", "coxs 61", "cuise 61", "cosca 61"]),
            ("breast=64", ["brest 64", "pechgua 64", "brsut 64", "peiot 64", "poitirne 64", "peto 64"]),
            (
                "breast=74 thigh=74 wing=74",
                [
                    "74 everywhere",
                    "74 por todas partes",
                    "überall 74",
                    "74 em toda parte",
                    "74 partout",
                    "74 dappertutto",
                ],
            ),
            (
                "breast=66 thigh=74 wing=70",
                [
                    "66 and 74 thigh, wing 70",
                    "66 y 74 muslo, ala 70",
                    "66 und 74 Keule, Flügel 70",
                    "66 e 74 coxa, asa 70",
                    "66 et 74 cuisse, aile 70",
                    "66 e 74 coscia, ala 70",
                ],
            ),
            (
                "breast=60 thigh=70",
                ["b60 t70", "pech60 mus70", "br60 keu70", "pei60 cox70", "po60 cui70", "pet60 cos70"],
            ),
        ],
    );
}

#[test]
fn letters_beside_other_words_are_no_readings() {
    for said in ["b side at 150 t", "plan b 150 is fine with us", "t 90 minutes", "can it be 74 everywhere?"] {
        let read = log("en-US", said);
        assert!(!read.contains("breast") && !read.contains("wing"), "{said}: {read}");
    }
}
