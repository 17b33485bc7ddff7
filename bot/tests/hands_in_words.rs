//! The family shares the work in words: who does which job, who can't, what is left, in the group and in each one's private chat.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::rehearse::{Script, rehearse};
use carvetime::room::{PersonId, RoomKind, To, What, decide, is_answered};
use carvetime::words::Voice;
use carvetime_core::plan::Step;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;
use std::sync::Arc;

const TAGS: [&str; 6] = ["en-US", "es-ES", "fr-FR", "de-DE", "pt-BR", "it-IT"];
const ROSA: PersonId = PersonId(1);
const BEN: PersonId = PersonId(2);
const DEE: PersonId = PersonId(3);

/// Rosa's dinner on Thursday; Ben and Dee are in the group.
fn dinner(tag: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Ben", "/board");
    kitchen.say("Dee", "/board");
    kitchen.scene.room.taste.language = Some(tag.to_owned());
    kitchen
}

fn among(kitchen: &mut Kitchen, who: &str, text: &str) -> String {
    kitchen.hear(Some(who), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false })
}

/// Told to the bot in somebody's private chat, and heard in the group if it concerns that.
fn aside(kitchen: &mut Kitchen, who: &str, text: &str) -> Option<String> {
    let what = What::Said { text: text.into(), addressed: true, reply_to: None, edited: false };
    let person = kitchen.scene.people.values().find(|person| person.name == who).unwrap();
    is_answered(&kitchen.scene.room, person, &what, kitchen.now).then(|| kitchen.hear_privately(who, what))
}

fn owner(kitchen: &Kitchen, step: Step) -> Option<PersonId> {
    kitchen.scene.room.plan.as_ref().unwrap().job(step, 0).unwrap().owner
}

fn asked(kitchen: &Kitchen, step: Step) -> Option<PersonId> {
    kitchen.scene.room.plan.as_ref().unwrap().job(step, 0).unwrap().asked.map(|asked| asked.of)
}

fn ids(kitchen: &Kitchen) -> Vec<String> {
    kitchen.said.last().unwrap().text.iter().map(|text| text.id.to_string()).collect()
}

#[test]
fn who_cant_hands_over_by_name_and_a_word_agrees() {
    let said = [
        ("cant salt it, dee can u?", "yeah ok"),
        ("no puedo salarlo, Dee, ¿puedes tú?", "vale, sí"),
        ("je peux pas la saler, Dee tu peux ?", "oui ok"),
        ("ich kann nicht salzen, Dee kannst du?", "ja klar"),
        ("não posso salgar, Dee, você pode?", "sim, claro"),
        ("non posso salarlo, Dee puoi tu?", "sì certo"),
    ];
    for (tag, (words, yes)) in TAGS.into_iter().zip(said) {
        let mut kitchen = dinner(tag);
        kitchen.say("Ben", "/take salt");
        let heard = among(&mut kitchen, "Ben", words);
        assert_eq!(
            (owner(&kitchen, Step::Salt), asked(&kitchen, Step::Salt)),
            (Some(BEN), Some(DEE)),
            "{tag}: {heard}"
        );
        among(&mut kitchen, "Dee", yes);
        assert_eq!(owner(&kitchen, Step::Salt), Some(DEE), "{tag}: {yes}");
    }
}

#[test]
fn the_host_shares_out_by_name_and_each_is_asked() {
    let said = [
        ["ben salts, dee carves", "ben salts and dee carves", "ok so Ben does the salting and Dee will carve"],
        ["ben sala, dee trincha", "Ben sala y Dee trincha", "Ben se encarga de salar y Dee trincha"],
        ["ben sale, dee découpe", "Ben sale et Dee découpe", "Ben s'occupe du salage et Dee découpe"],
        ["ben salzt, dee tranchiert", "Ben salzt und Dee tranchiert", "Ben macht das Salzen und Dee tranchiert"],
        ["ben salga, dee corta", "Ben salga e Dee corta", "Ben cuida da salga e Dee corta"],
        ["ben sala, dee taglia", "Ben sala e Dee taglia", "Ben si occupa della salatura e Dee taglia"],
    ];
    for (tag, said) in TAGS.into_iter().zip(said) {
        for words in said {
            let mut kitchen = dinner(tag);
            let heard = among(&mut kitchen, "Rosa", words);
            assert_eq!(asked(&kitchen, Step::Salt), Some(BEN), "{tag}: {words}: {heard}");
            assert_eq!(asked(&kitchen, Step::Carve), Some(DEE), "{tag}: {words}: {heard}");
            assert_eq!((owner(&kitchen, Step::Salt), owner(&kitchen, Step::Carve)), (None, None), "{tag}: {words}");
        }
    }
    let mut kitchen = dinner("en-US");
    among(&mut kitchen, "Rosa", "I'll salt and Ben carves");
    assert_eq!((owner(&kitchen, Step::Salt), asked(&kitchen, Step::Carve)), (Some(ROSA), Some(BEN)));
    // One person asked for two jobs at once answers for both.
    let mut kitchen = dinner("en-US");
    among(&mut kitchen, "Rosa", "dee salts and carves");
    among(&mut kitchen, "Dee", "sure");
    assert_eq!((owner(&kitchen, Step::Salt), owner(&kitchen, Step::Carve)), (Some(DEE), Some(DEE)));
}

#[test]
fn one_job_of_one_person_is_asked_about_while_nobody_has_it() {
    // Whoever says so: Ben is asked, and nothing is his before he has answered.
    let mut kitchen = dinner("en-US");
    among(&mut kitchen, "Dee", "ben carves");
    assert_eq!((asked(&kitchen, Step::Carve), owner(&kitchen, Step::Carve)), (Some(BEN), None));
    let mut kitchen = dinner("en-US");
    among(&mut kitchen, "Rosa", "ben carves");
    assert_eq!(asked(&kitchen, Step::Carve), Some(BEN));
    among(&mut kitchen, "Ben", "sure");
    assert_eq!(among(&mut kitchen, "Rosa", "ben carves"), "", "he does, and has said so");
    // What somebody has is given away by them, or by whoever may decide.
    let refused = among(&mut kitchen, "Dee", "dee salts, rosa carves");
    assert!(refused.contains("Only they, the host or an admin"), "{refused}");
    assert_eq!((owner(&kitchen, Step::Salt), owner(&kitchen, Step::Carve)), (Some(DEE), Some(BEN)));
}

#[test]
fn several_jobs_are_taken_in_one_sentence_and_told_in_one_message() {
    let said = [
        ["i'll do salt and carving", "ok, I'll salt and carve"],
        ["yo salo y trincho", "vale, yo me encargo de salar y trinchar"],
        ["je m'occupe du salage et de la découpe", "ok, je vais saler et découper"],
        ["ich mache das Salzen und das Tranchieren", "ok, ich salze und tranchiere"],
        ["eu cuido da salga e do corte", "tá bom, eu salgo e corto"],
        ["mi occupo della salatura e del taglio", "va bene, io salo e taglio"],
    ];
    for (tag, said) in TAGS.into_iter().zip(said) {
        for words in said {
            let mut kitchen = dinner(tag);
            let before = kitchen.said.len();
            let heard = among(&mut kitchen, "Dee", words);
            let both = (owner(&kitchen, Step::Salt), owner(&kitchen, Step::Carve));
            assert_eq!(both, (Some(DEE), Some(DEE)), "{tag}: {words}: {heard}");
            let told = kitchen.said[before..].iter().filter(|say| say.key.is_none()).count();
            assert_eq!(told, 1, "{tag}: {words}: {heard}");
        }
    }
}

#[test]
fn a_job_taken_in_its_own_words_is_theirs() {
    let said: [[(&str, Step); 4]; 6] = [
        [
            ("i'll turn on the oven", Step::Fire),
            ("I'll put the turkey in the oven", Step::On),
            ("i'll take it out of the oven", Step::Pull),
            ("i'll put the leftovers in the fridge", Step::Chill),
        ],
        [
            ("yo prendo el horno", Step::Fire),
            ("yo lo meto al horno", Step::On),
            ("yo lo saco del horno", Step::Pull),
            ("yo pongo las sobras en el refri", Step::Chill),
        ],
        [
            ("je vais allumer le four", Step::Fire),
            ("je mets la dinde au four", Step::On),
            ("je sors la dinde du four", Step::Pull),
            ("je vais ranger les restes au frigo", Step::Chill),
        ],
        [
            ("ich mache den Ofen an", Step::Fire),
            ("ich schiebe die Pute in den Ofen", Step::On),
            ("ich hole die Pute aus dem Ofen", Step::Pull),
            ("ich räume die Reste weg", Step::Chill),
        ],
        [
            ("eu ligo o forno", Step::Fire),
            ("eu coloco o peru no forno", Step::On),
            ("eu tiro o peru do forno", Step::Pull),
            ("eu guardo as sobras", Step::Chill),
        ],
        [
            ("io accendo il forno", Step::Fire),
            ("io metto il tacchino in forno", Step::On),
            ("io tolgo il tacchino dal forno", Step::Pull),
            ("io metto via gli avanzi", Step::Chill),
        ],
    ];
    let mut wrong = Vec::new();
    for (tag, said) in TAGS.into_iter().zip(said) {
        for (words, step) in said {
            let mut kitchen = dinner(tag);
            let heard = among(&mut kitchen, "Dee", words);
            if owner(&kitchen, step) != Some(DEE) {
                wrong.push(format!("{tag}: {words}: {heard}"));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    // Other things are turned on, put in and put away as well.
    for words in ["i'll turn on the lights", "i'll put the kids in the car", "i'll put the groceries away"] {
        let mut kitchen = dinner("en-US");
        assert_eq!(among(&mut kitchen, "Dee", words), "", "{words}");
    }
}

#[test]
fn who_asks_to_be_put_down_for_a_job_has_it() {
    let said = [
        ["put me down for carving", "I got the carving", "sure, I'll carve"],
        ["apúntame para trinchar", "yo trincho", "claro, yo trincho"],
        ["mets-moi pour la découpe", "je prends la découpe", "d'accord, je découpe"],
        ["trag mich ein fürs Tranchieren", "ich übernehme das Tranchieren", "klar, ich tranchiere"],
        ["me coloca pra cortar", "eu fico com o corte", "claro, eu corto"],
        ["mettimi per il taglio", "prendo io il taglio", "certo, io taglio"],
    ];
    for (tag, said) in TAGS.into_iter().zip(said) {
        for words in said {
            let mut kitchen = dinner(tag);
            let heard = among(&mut kitchen, "Ben", words);
            assert_eq!(owner(&kitchen, Step::Carve), Some(BEN), "{tag}: {words}: {heard}");
        }
    }
}

#[test]
fn can_someone_else_frees_ones_own_job_and_offers_it() {
    let said = [
        "can someone else carve?",
        "¿puede trinchar otro? ¿alguien más puede trinchar?",
        "quelqu'un d'autre peut découper ?",
        "kann jemand anders tranchieren?",
        "alguém mais pode cortar?",
        "qualcun altro può tagliare?",
    ];
    for (tag, words) in TAGS.into_iter().zip(said) {
        let mut kitchen = dinner(tag);
        kitchen.say("Dee", "/take carve");
        // Asked by another, it is said who has it.
        among(&mut kitchen, "Ben", words);
        assert_eq!((ids(&kitchen), owner(&kitchen, Step::Carve)), (vec!["room-who-has".into()], Some(DEE)), "{tag}");
        let heard = among(&mut kitchen, "Dee", words);
        assert_eq!(owner(&kitchen, Step::Carve), None, "{tag}: {words}: {heard}");
        assert!(heard.contains("    ["), "{tag}: offered: {heard}");
        // Nobody has it now: it is offered to whoever reads.
        let heard = among(&mut kitchen, "Ben", words);
        assert_eq!(ids(&kitchen), ["room-who-nobody"], "{tag}: {heard}");
        assert!(heard.contains("    ["), "{tag}: {heard}");
    }
}

#[test]
fn a_name_nobody_here_has_gets_no_job_and_gives_the_asker_none() {
    for (tag, order) in TAGS.into_iter().zip([
        "/take on Cal",
        "/take trinchar Cal",
        "/take découpe cal",
        "/take tranchieren Cal",
        "/take cortar cal",
        "/take taglio Cal",
    ]) {
        let mut kitchen = dinner(tag);
        let heard = kitchen.say("Rosa", order);
        assert_eq!(ids(&kitchen), ["sharing-give-unknown"], "{tag}: {heard}");
        assert!(heard.contains("Ben") && heard.contains("Dee"), "{tag}: {heard}");
        assert_eq!((owner(&kitchen, Step::On), owner(&kitchen, Step::Carve)), (None, None), "{tag}");
    }
    let mut kitchen = dinner("en-US");
    among(&mut kitchen, "Rosa", "ben salts, cal carves");
    assert_eq!((asked(&kitchen, Step::Salt), asked(&kitchen, Step::Carve)), (Some(BEN), None));
    assert!(kitchen.said.iter().any(|say| say.text.iter().any(|text| text.id == "sharing-give-unknown")));
    // What is no name takes the job as ever.
    for order in ["/take carving please", "/take the carvng", "/take Carving tonight", "/take carve myself"] {
        let mut kitchen = dinner("en-US");
        let heard = kitchen.say("Ben", order);
        assert_eq!(owner(&kitchen, Step::Carve), Some(BEN), "{order}: {heard}");
    }
}

#[test]
fn ones_own_jobs_are_told_in_the_group_and_privately() {
    let said = [
        ["what's my job?", "what do I have to do?"],
        ["¿cuál es mi tarea?", "¿qué tengo que hacer?"],
        ["c'est quoi ma tâche ?", "je dois faire quoi ?"],
        ["was ist meine Aufgabe?", "was muss ich machen?"],
        ["qual é a minha tarefa?", "o que eu tenho que fazer?"],
        ["qual è il mio compito?", "cosa devo fare?"],
    ];
    for (tag, said) in TAGS.into_iter().zip(said) {
        for words in said {
            let mut kitchen = dinner(tag);
            kitchen.say("Ben", "/take carve");
            let heard = among(&mut kitchen, "Ben", words);
            assert_eq!(ids(&kitchen), ["sharing-mine", "sharing-link-job"], "{tag}: {words}: {heard}");
            let heard = aside(&mut kitchen, "Ben", words).expect(words);
            assert_eq!(ids(&kitchen), ["sharing-mine", "sharing-link-job"], "{tag}: {words}: {heard}");
            assert_eq!(kitchen.said.last().unwrap().to, To::Person(BEN), "{tag}: {words}");
        }
    }
    let mut kitchen = dinner("en-US");
    assert_eq!(among(&mut kitchen, "Dee", "what do I have to do?"), "", "she has nothing here: it may be of anything");
    among(&mut kitchen, "Dee", "what's my job?");
    assert_eq!(ids(&kitchen), ["sharing-out-none"]);
}

#[test]
fn what_is_left_is_shown_in_the_group_and_privately() {
    let said = [
        "what's left to do?",
        "¿qué queda por hacer?",
        "qu'est-ce qu'il reste à faire ?",
        "was ist noch zu tun?",
        "o que falta fazer?",
        "cosa resta da fare?",
    ];
    for (tag, words) in TAGS.into_iter().zip(said) {
        let mut kitchen = dinner(tag);
        assert_eq!(kitchen.among("Ben", words), 1, "{tag}: {words}");
        assert_eq!(kitchen.said.last().unwrap().key.as_deref(), Some("board"), "{tag}");
        let before = kitchen.said.len();
        aside(&mut kitchen, "Ben", words).expect(words);
        assert!(kitchen.said[before..].iter().all(|say| say.to == To::Person(BEN)), "{tag}: nothing in the group");
    }
}

#[test]
fn whats_next_is_of_the_plan_while_people_are_at_it() {
    let said = [
        "what's next?",
        "¿qué sigue?",
        "c'est quoi la suite ?",
        "was kommt als nächstes?",
        "o que vem agora?",
        "cosa viene dopo?",
    ];
    for (tag, words) in TAGS.into_iter().zip(said) {
        let mut kitchen = dinner(tag);
        assert_eq!(kitchen.among("Ben", words), 0, "{tag}: days ahead it may be of anything");
        kitchen.run_to("2027-11-25 11:45");
        assert!(kitchen.among("Ben", words) > 0, "{tag}: {words}");
        assert_eq!(ids(&kitchen), ["room-who-nobody"], "{tag}");
    }
}

#[test]
fn whether_a_job_is_done_is_told_and_nothing_is_taken_for_done() {
    let said = [
        "did someone salt it?",
        "¿alguien lo ha salado?",
        "quelqu'un l'a salée ?",
        "hat jemand gesalzen?",
        "alguém já salgou?",
        "qualcuno l'ha salato?",
    ];
    for (tag, words) in TAGS.into_iter().zip(said) {
        let mut kitchen = dinner(tag);
        kitchen.say("Dee", "/take salt");
        for heard in [among(&mut kitchen, "Ben", words), aside(&mut kitchen, "Ben", words).expect(words)] {
            assert_eq!(ids(&kitchen), ["room-unsaid", "room-who-has"], "{tag}: {words}: {heard}");
        }
        // Its hour is long past and nobody has said a word.
        kitchen.run_to("2027-11-24 12:00");
        among(&mut kitchen, "Ben", words);
        assert_eq!(ids(&kitchen)[0], "room-unsaid", "{tag}");
        kitchen.scene.room.taste.language = Some("en-US".into());
        kitchen.say("Dee", "salted it");
        kitchen.scene.room.taste.language = Some(tag.to_owned());
        let heard = aside(&mut kitchen, "Ben", words).expect(words);
        assert_eq!(ids(&kitchen), ["room-done-by"], "{tag}: {words}: {heard}");
    }
}

#[test]
fn privately_the_hour_of_dinner_is_that_of_the_group() {
    let said = [
        ["when's dinner?", "what time do we eat"],
        ["¿cuándo cenamos?", "a qué hora comemos"],
        ["on mange quand ?", "à quelle heure on mange"],
        ["wann essen wir?", "wann gibt es Essen"],
        ["que horas é o jantar?", "quando a gente come"],
        ["quando si mangia?", "a che ora si cena"],
    ];
    for (tag, said) in TAGS.into_iter().zip(said) {
        for words in said {
            let mut kitchen = dinner(tag);
            let heard = aside(&mut kitchen, "Ben", words).expect(words);
            assert_eq!(ids(&kitchen), ["room-when"], "{tag}: {words}: {heard}");
            assert_eq!(kitchen.said.last().unwrap().to, To::Person(BEN), "{tag}: {words}");
        }
    }
}

#[test]
fn privately_who_cant_hands_back_their_job_and_the_group_is_offered_it() {
    let said = [
        ["cant make it thursday", "i can't do it", "I'm out"],
        ["no puedo ir el jueves", "no puedo hacerlo", "me bajo"],
        ["je peux pas venir jeudi", "je peux pas le faire", "je viens pas"],
        ["ich kann am Donnerstag nicht kommen", "ich kann das nicht machen", "bin raus"],
        ["não posso ir na quinta", "não posso fazer", "tô fora"],
        ["non posso venire giovedì", "non posso farlo", "non vengo"],
    ];
    for (tag, said) in TAGS.into_iter().zip(said) {
        for words in said {
            let mut kitchen = dinner(tag);
            kitchen.say("Ben", "/take carve");
            let before = kitchen.said.len();
            let heard = aside(&mut kitchen, "Ben", words).expect(words);
            assert_eq!(owner(&kitchen, Step::Carve), None, "{tag}: {words}: {heard}");
            let offered = kitchen.said[before..].iter().find(|say| say.key.as_deref() == Some("offer")).expect(words);
            assert_eq!(offered.to, To::Room(kitchen.scene.room.id), "{tag}: {words}");
            assert!(kitchen.said[before..].iter().any(|say| say.to == To::Person(BEN)), "{tag}: {words}: {heard}");
        }
    }
    // Another day is another dinner.
    let mut kitchen = dinner("en-US");
    kitchen.say("Ben", "/take carve");
    assert_eq!(aside(&mut kitchen, "Ben", "cant make it friday"), None);
    among(&mut kitchen, "Ben", "can't make it friday");
    assert_eq!(owner(&kitchen, Step::Carve), Some(BEN));
    // Who has nothing to do is told so, and nobody else is.
    let heard = aside(&mut kitchen, "Dee", "i can't do it").unwrap();
    assert!(heard.contains("(to 3)") && ids(&kitchen) == ["sharing-out-none"], "{heard}");
}

#[test]
fn a_plan_that_is_over_or_of_others_is_asked_nothing_privately() {
    let mut kitchen = dinner("en-US");
    assert!(aside(&mut kitchen, "Ben", "when's dinner?").is_some());
    for other in ["what's left to watch?", "salt for a 12 lb turkey", "14 lb turkey, dinner sunday 5 pm", "lol"] {
        assert_eq!(aside(&mut kitchen, "Ben", other), None, "{other}");
    }
    kitchen.scene.room.members.retain(|member| *member != BEN);
    assert_eq!(aside(&mut kitchen, "Ben", "when's dinner?"), None, "no member asks");
    kitchen.run_to("2027-11-28 12:00");
    assert_eq!(aside(&mut kitchen, "Dee", "when's dinner?"), None, "eaten long ago");
}

#[test]
fn small_talk_alone_with_the_bot_gets_a_word_or_none() {
    let said = [
        ["lol", "no", "nice", "haha"],
        ["jaja", "no", "jajaja", "lol"],
        ["mdr", "non", "haha", "ptdr"],
        ["haha", "nein", "nee", "lol"],
        ["kkkk", "não", "rsrs", "nossa"],
        ["ahah", "no", "lol", "evviva"],
    ];
    let always = ["👍", "👍🏽", "😂😂", "❤️", "!!"];
    for planned in [false, true] {
        for (tag, said) in TAGS.into_iter().zip(said) {
            for words in said.into_iter().chain(always) {
                let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 09:00");
                if planned {
                    kitchen.say("Rosa", "/plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325");
                    kitchen.press("Rosa", "Accept");
                }
                kitchen.scene.room.taste.language = Some(tag.to_owned());
                let before = kitchen.said.len();
                let heard = kitchen.say("Rosa", words);
                let told: Vec<_> = kitchen.said[before..].iter().flat_map(|say| &say.text).collect();
                assert!(
                    told.iter().all(|text| ["room-fine", "room-not-yet"].contains(&text.id.as_ref())),
                    "{tag}: {words}: {heard}"
                );
            }
        }
    }
    // A thumb up is a yes where something lies open.
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325");
    kitchen.say("Rosa", "👍");
    assert!(kitchen.scene.room.plan.is_some());
}

#[test]
fn what_sounds_alike_stays_between_people() {
    let mut kitchen = dinner("en-US");
    kitchen.say("Ben", "/take carve");
    let before = kitchen.scene.room.plan.clone();
    for talk in [
        "can someone else drive?",
        "can someone else pick up the kids?",
        "can someone pass the salt?",
        "can someone bring salt?",
        "can anyone salt the driveway?",
        "what's left to watch?",
        "what's left in the fridge",
        "what's left of the pie?",
        "ben salts his food too much",
        "ben salts everything",
        "ben carves wood, dee paints",
        "ben drives, dee sleeps",
        "dee drives",
        "what's next week like",
        "what's next door?",
        "I got the wine",
        "I got the tickets",
        "put me down for two pies",
        "put me down for whatever",
        "I'll do dishes and trash",
        "I'll bring salt and pepper",
        "did someone feed the dog?",
        "did anyone lock the door?",
        "did anyone watch the game?",
        "is it on channel 5?",
        "is it in the mail?",
        "what's my password?",
        "what do I have to do to get a drink here?",
        "lol",
        "👍",
        "no",
    ] {
        for who in ["Dee", "Ben", "Rosa"] {
            assert_eq!(among(&mut kitchen, who, talk), "", "{who}: {talk}");
        }
    }
    assert_eq!(kitchen.scene.room.plan, before);
    let alike = [
        ("es-ES", ["¿alguien puede conducir?", "Ben sala demasiado la comida", "¿qué queda en la nevera?"]),
        ("fr-FR", ["quelqu'un peut conduire ?", "Ben sale trop ses plats", "qu'est-ce qu'il reste au frigo ?"]),
        ("de-DE", ["kann jemand anders fahren?", "Ben salzt sein Essen zu viel", "was ist noch im Kühlschrank?"]),
        ("pt-BR", ["alguém pode dirigir?", "Ben salga demais a comida", "o que tem na geladeira?"]),
        ("it-IT", ["qualcuno può guidare?", "Ben sala troppo il cibo", "cosa resta nel frigo?"]),
    ];
    for (tag, alike) in alike {
        let mut kitchen = dinner(tag);
        for talk in alike {
            assert_eq!(among(&mut kitchen, "Rosa", talk), "", "{tag}: {talk}");
        }
    }
}

fn play(lines: &str) -> String {
    let script = format!(
        "zone America/Chicago\nlocale en-US\nroom group\n\
         2027-11-22 09:00 Rosa: /plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325\n\
         2027-11-22 09:01 Rosa > Accept\n\
         2027-11-22 09:02 Ben: /take carve\n{lines}"
    );
    let script = Script::parse(&script, Chicago, "en-US").unwrap();
    let mut out = Vec::new();
    rehearse(&script, decide, &Arc::new(Voice::new()), false, &mut out).unwrap();
    String::from_utf8(out).unwrap()
}

#[test]
fn a_private_chat_finds_the_group_s_plan_unless_it_has_its_own() {
    let told = play(
        "2027-11-22 10:00 Ben (private): when's dinner?\n\
         2027-11-22 10:01 Ben (private): cant make it thursday\n",
    );
    assert!(told.contains("carvetime to Ben: Off the heat between Thu") && told.contains("Dinner Thu 5:00"), "{told}");
    assert!(told.contains("carvetime: Ben is out. Free again:") && !told.contains("What time is dinner?"), "{told}");
    let own = play(
        "2027-11-22 10:00 Ben (private): /plan 12 lb fresh turkey, dinner Saturday 3 pm, 6 people, oven at 325\n\
         2027-11-22 10:01 Ben (private) > Accept\n\
         2027-11-22 10:02 Ben (private): when's dinner?\n",
    );
    let last = own.rsplit("when's dinner?").next().unwrap();
    assert!(last.contains("Dinner Sat 3:00"), "{last}");
    // Who has spoken in no group with a dinner is helped as ever.
    let alone = play("2027-11-22 10:00 Cal (private): when's dinner?\n");
    assert!(alone.rsplit("when's dinner?").next().unwrap().contains("14 lb frozen turkey"), "{alone}");
}

/// A dinner that can't be met any more: the bird went in hours late.
fn up_against_it() -> Kitchen {
    let mut kitchen = dinner("en-US");
    kitchen.run_to("2027-11-25 13:50");
    kitchen.say("Ben", "it's in");
    kitchen
}

fn clashes(kitchen: &Kitchen) -> usize {
    let rows = kitchen.said.iter().rfind(|say| say.key.as_deref() == Some("conflict")).map(|say| say.buttons.len());
    rows.unwrap_or(0)
}

#[test]
fn a_yes_takes_the_one_way_out_and_of_several_it_is_said_which() {
    let mut kitchen = up_against_it();
    let ways = clashes(&kitchen);
    assert!(ways > 0, "something is offered");
    let before = kitchen.scene.room.plan.clone();
    assert_eq!(kitchen.among("Ben", "yes"), 0, "not his to decide");
    assert_eq!(kitchen.scene.room.plan, before);
    let heard = among(&mut kitchen, "Rosa", "ok");
    match ways {
        1 => assert_ne!(kitchen.scene.room.plan, before, "{heard}"),
        several => {
            assert_eq!((kitchen.scene.room.plan.clone(), ids(&kitchen)), (before, vec!["room-ok-which".to_owned()]));
            assert_eq!(kitchen.said.last().unwrap().buttons.len(), several, "{heard}");
        }
    }
    assert_eq!(kitchen.among("Rosa", "ok"), 0, "answered");
    // With one of them left, a yes is to that.
    let mut kitchen = up_against_it();
    kitchen.scene.room.offered.as_mut().unwrap().choices.truncate(1);
    let before = kitchen.scene.room.plan.clone();
    among(&mut kitchen, "Rosa", "yes");
    assert_ne!(kitchen.scene.room.plan, before);
    assert!(kitchen.scene.room.offered.is_none());
    // Long after it may be to anything.
    let mut kitchen = up_against_it();
    kitchen.now += chrono::TimeDelta::minutes(11);
    assert_eq!(kitchen.among("Rosa", "yes"), 0);
}

#[test]
fn on_it_takes_what_was_just_offered_and_agreeing_does_not() {
    let mut kitchen = dinner("en-US");
    kitchen.say("Dee", "/take carve");
    among(&mut kitchen, "Dee", "can someone else carve?");
    assert_eq!(kitchen.among("Rosa", "ok"), 0);
    assert_eq!(owner(&kitchen, Step::Carve), None);
    among(&mut kitchen, "Ben", "i can do it");
    assert_eq!(owner(&kitchen, Step::Carve), Some(BEN));
}

#[test]
fn who_says_among_people_that_they_do_it_has_it() {
    let said: [(&str, &[(&str, Step)]); 6] = [
        (
            "en-US",
            &[
                ("I'll get the bird", Step::Buy),
                ("I'll go to the butcher", Step::Buy),
                ("I'll carve like every year", Step::Carve),
                ("sure I'll do the salt honey", Step::Salt),
            ],
        ),
        ("es-ES", &[("yo voy por el pavo", Step::Buy), ("yo lo trincho como siempre", Step::Carve)]),
        ("fr-FR", &[("je vais chercher la dinde", Step::Buy), ("je découpe comme tous les ans", Step::Carve)]),
        ("de-DE", &[("ich hol die Pute", Step::Buy), ("ich tranchiere wie immer", Step::Carve)]),
        ("pt-BR", &[("eu pego o peru", Step::Buy), ("eu corto como sempre", Step::Carve)]),
        (
            "it-IT",
            &[
                ("lo ritiro io", Step::Buy),
                ("vado io dal macellaio", Step::Buy),
                ("il sale lo metto io", Step::Salt),
                ("taglio io come tutti gli anni", Step::Carve),
                ("le temperature le prendo io", Step::Check),
            ],
        ),
    ];
    for (tag, said) in said {
        for (text, step) in said {
            let mut kitchen = dinner(tag);
            let heard = among(&mut kitchen, "Ben", text);
            assert_eq!(owner(&kitchen, *step), Some(BEN), "{tag}: {text}: {heard}");
        }
    }
    for text in ["I'll get it", "I'll get the door like always", "I'll get the kids", "will you carve like every year?"]
    {
        let mut kitchen = dinner("en-US");
        among(&mut kitchen, "Ben", text);
        let owned = kitchen.scene.room.plan.as_ref().unwrap().jobs.iter().any(|job| job.owner == Some(BEN));
        assert!(!owned, "{text}");
    }
}
