//! What helpers say of jobs in a group: that they take one, can't do it, or don't come at all. In each language.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{PersonId, RoomKind, What};
use carvetime_core::plan::Step;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const TAGS: [&str; 6] = ["en-US", "es-MX", "fr-FR", "de-DE", "pt-BR", "it-IT"];
const ROSA: PersonId = PersonId(1);
const TOM: PersonId = PersonId(2);
const LI: PersonId = PersonId(3);

/// A dinner of Rosa's with Tom and Li; salting is on Wednesday evening.
fn dinner(tag: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-23 09:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, bought, dinner Thursday 2 pm, 11 people, oven at 325 f");
    kitchen.press("Rosa", "Accept");
    kitchen.scene.room.taste.language = Some(tag.to_owned());
    kitchen.say("Tom", "/board");
    kitchen.say("Li", "/board");
    kitchen
}

/// Said among people, to nobody in particular.
fn aside(kitchen: &mut Kitchen, who: &str, text: &str) -> String {
    kitchen.hear(Some(who), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false })
}

fn reply(kitchen: &mut Kitchen, who: &str, to: &str, text: &str) -> String {
    let reply_to = Some(to.to_owned());
    kitchen.hear(Some(who), What::Said { text: text.into(), addressed: true, reply_to, edited: false })
}

fn owner(kitchen: &Kitchen, step: Step) -> Option<PersonId> {
    kitchen.scene.room.plan.as_ref().unwrap().job(step, 0).unwrap().owner
}

#[test]
fn who_drops_out_hands_their_jobs_back_in_one_message_and_is_not_called() {
    let said = [
        ["guys im out", "sorry I'm sick, can't come", "I can't make it, the car broke down"],
        ["perdón, no voy a poder ir", "estoy enferma, no puedo ir", "lo siento chicos, tengo fiebre"],
        ["désolé, je suis malade", "je peux pas venir", "je ne viens plus, désolée"],
        ["bin leider raus", "ich bin krank, kann nicht kommen", "sorry leute, muss absagen"],
        ["gente, tô fora", "desculpa, não vou poder ir", "estou doente"],
        ["scusate, sto male", "purtroppo non posso venire", "ragazzi ho la febbre, non vengo"],
    ];
    for (tag, said) in TAGS.into_iter().zip(said) {
        for text in said {
            let mut kitchen = dinner(tag);
            kitchen.say("Tom", "/take carve");
            kitchen.say("Tom", "/take fire");
            let heard = aside(&mut kitchen, "Tom", text);
            assert_eq!(owner(&kitchen, Step::Carve), None, "{tag}: {text}: {heard}");
            assert_eq!(owner(&kitchen, Step::Fire), None, "{tag}: {text}: {heard}");
            assert_eq!(heard.matches("New:").count(), 1, "{tag}: one message: {heard}");
            assert!(heard.contains("Tom") && heard.matches("\n    [").count() >= 2, "{tag}: offered: {heard}");
            // Nobody has them: whoever is called by name is not Tom.
            let called = kitchen.run_to("2027-11-25 18:00");
            assert!(!called.contains("Tom"), "{tag}: {text}: {called}");
            assert!(called.contains("Li"), "{tag}: {called}");
        }
    }
}

#[test]
fn who_speaks_of_a_job_again_is_back() {
    let mut kitchen = dinner("en-US");
    aside(&mut kitchen, "Tom", "I'm sick, can't come");
    assert_eq!(kitchen.scene.room.excused, [TOM]);
    aside(&mut kitchen, "Tom", "I'll carve");
    assert_eq!(owner(&kitchen, Step::Carve), Some(TOM));
    assert!(kitchen.scene.room.excused.is_empty());
}

#[test]
fn what_is_said_of_others_or_of_something_else_drops_nothing() {
    let said = [
        "Aunt Lu can't come",
        "my mom is sick, can't come",
        "im out of butter",
        "can we come at 5?",
        "I can't wait",
        "who is sick?",
    ];
    for text in said {
        let mut kitchen = dinner("en-US");
        kitchen.say("Tom", "/take carve");
        aside(&mut kitchen, "Tom", text);
        assert_eq!(owner(&kitchen, Step::Carve), Some(TOM), "{text}");
        assert!(kitchen.scene.room.excused.is_empty(), "{text}");
    }
}

#[test]
fn who_cant_do_what_they_are_called_for_hands_that_back_and_the_others_are_called() {
    let said = ["I can't do it", "no puedo", "je peux pas", "kann ich nicht", "não vou conseguir", "non ce la faccio"];
    for (tag, text) in TAGS.into_iter().zip(said) {
        let mut kitchen = dinner(tag);
        kitchen.say("Tom", "/take salt");
        kitchen.say("Tom", "/take carve");
        let salted = kitchen.scene.room.plan.as_ref().unwrap().job(Step::Salt, 0).unwrap().at;
        let at = (salted + chrono::TimeDelta::minutes(2)).with_timezone(&Chicago).format("%Y-%m-%d %H:%M").to_string();
        kitchen.run_to(&at);
        let heard = aside(&mut kitchen, "Tom", text);
        assert_eq!((owner(&kitchen, Step::Salt), owner(&kitchen, Step::Carve)), (None, Some(TOM)), "{tag}: {heard}");
        let later = (salted + chrono::TimeDelta::minutes(40)).with_timezone(&Chicago).format("%Y-%m-%d %H:%M");
        let called = kitchen.run_to(&later.to_string());
        assert!(called.contains("New: Li") && !called.contains("New: Tom"), "{tag}: {called}");
    }
    let mut kitchen = dinner("en-US");
    kitchen.say("Tom", "/take salt");
    kitchen.say("Tom", "/take carve");
    aside(&mut kitchen, "Tom", "sorry, can't do the carving after all");
    assert_eq!((owner(&kitchen, Step::Salt), owner(&kitchen, Step::Carve)), (Some(TOM), None));
}

#[test]
fn all_of_ones_jobs_are_dropped_at_once() {
    let said = ["all", "todo", "tout", "alles", "tudo", "tutto"];
    for (tag, all) in TAGS.into_iter().zip(said) {
        let mut kitchen = dinner(tag);
        kitchen.say("Tom", "/take salt");
        kitchen.say("Tom", "/take carve");
        kitchen.say("Li", "/take fire");
        let heard = kitchen.say("Tom", &format!("/drop {all}"));
        assert_eq!((owner(&kitchen, Step::Salt), owner(&kitchen, Step::Carve)), (None, None), "{tag}: {heard}");
        assert_eq!(owner(&kitchen, Step::Fire), Some(LI), "{tag}");
        let none = kitchen.say("Tom", &format!("/drop {all}"));
        assert!(!none.contains("    ["), "{tag}: {none}");
    }
}

#[test]
fn yes_and_no_in_words_answer_who_was_asked() {
    let yes = [
        ["sure", "ok I will", "on it"],
        ["claro", "sí, yo me encargo", "cuenta conmigo"],
        ["oui", "d'accord, je m'en occupe", "avec plaisir"],
        ["klar", "ja, mach ich", "gerne"],
        ["claro", "pode deixar", "sim, eu faço"],
        ["certo", "va bene, ci penso io", "volentieri"],
    ];
    let no = ["no sorry", "no, lo siento", "non désolé", "nein, tut mir leid", "não, desculpa", "no, mi dispiace"];
    for ((tag, yes), no) in TAGS.into_iter().zip(yes).zip(no) {
        for text in yes {
            let mut kitchen = dinner(tag);
            kitchen.say("Rosa", "/take carve Li");
            let heard = aside(&mut kitchen, "Li", text);
            assert_eq!(owner(&kitchen, Step::Carve), Some(LI), "{tag}: {text}: {heard}");
        }
        let mut kitchen = dinner(tag);
        kitchen.say("Rosa", "/take carve Li");
        let heard = reply(&mut kitchen, "Li", "give-carve-0", no);
        let job = |kitchen: &Kitchen| kitchen.scene.room.plan.as_ref().unwrap().job(Step::Carve, 0).unwrap().clone();
        assert_eq!((job(&kitchen).owner, job(&kitchen).asked), (None, None), "{tag}: {no}: {heard}");
    }
    // Somebody else's yes is none, nor one long after.
    let mut kitchen = dinner("en-US");
    kitchen.say("Rosa", "/take carve Li");
    aside(&mut kitchen, "Tom", "sure");
    kitchen.run_to("2027-11-23 11:00");
    aside(&mut kitchen, "Li", "sure");
    assert_eq!(owner(&kitchen, Step::Carve), None);
    reply(&mut kitchen, "Li", "give-carve-0", "sure");
    assert_eq!(owner(&kitchen, Step::Carve), Some(LI));
}

#[test]
fn on_it_after_a_call_takes_the_job_and_is_no_report() {
    let said = ["on it", "yo me encargo", "je m'en occupe", "mach ich", "pode deixar", "ci penso io"];
    for (tag, text) in TAGS.into_iter().zip(said) {
        let mut kitchen = dinner(tag);
        let fire = kitchen.scene.room.plan.as_ref().unwrap().job(Step::Carve, 0).unwrap().at;
        let at = (fire + chrono::TimeDelta::minutes(3)).with_timezone(&Chicago).format("%Y-%m-%d %H:%M").to_string();
        kitchen.run_to(&at);
        let heard = aside(&mut kitchen, "Tom", text);
        assert_eq!(owner(&kitchen, Step::Carve), Some(TOM), "{tag}: {heard}");
        assert_eq!(aside(&mut kitchen, "Li", text), "", "{tag}: Tom has it");
    }
    let mut kitchen = dinner("en-US");
    kitchen.say("Tom", "/take salt");
    aside(&mut kitchen, "Tom", "guys im out");
    reply(&mut kitchen, "Rosa", "offer", "sure, I can do it");
    assert_eq!(owner(&kitchen, Step::Salt), Some(ROSA), "the only one offered");
}

#[test]
fn a_kind_of_job_is_taken_by_what_people_call_it() {
    let said = [
        [("ill do the temps", Step::Check), ("I can do the oven", Step::Fire), ("I'll carve", Step::Carve)],
        [
            ("yo me encargo de las temperaturas", Step::Check),
            ("yo me encargo del horno", Step::Fire),
            ("yo trincho", Step::Carve),
        ],
        [
            ("je m'occupe des températures", Step::Check),
            ("je m'occupe du four", Step::Fire),
            ("je m'occupe de la découpe", Step::Carve),
        ],
        [
            ("ich mach die Temperaturen", Step::Check),
            ("ich kümmere mich um den Ofen", Step::Fire),
            ("ich tranchiere", Step::Carve),
        ],
        [("eu cuido das temperaturas", Step::Check), ("eu cuido do forno", Step::Fire), ("eu corto", Step::Carve)],
        [
            ("mi occupo delle temperature", Step::Check),
            ("mi occupo del forno", Step::Fire),
            ("io taglio la carne", Step::Carve),
        ],
    ];
    for (tag, said) in TAGS.into_iter().zip(said) {
        let mut kitchen = dinner(tag);
        for (text, step) in said {
            let heard = aside(&mut kitchen, "Tom", text);
            assert_eq!(owner(&kitchen, step), Some(TOM), "{tag}: {text}: {heard}");
        }
    }
    let orders = [
        ["temps", "oven", "heat", "smoker"],
        ["temperaturas", "horno", "calor", "ahumador"],
        ["températures", "four", "feu", "fumoir"],
        ["temperaturen", "ofen", "feuer", "smoker"],
        ["temperaturas", "forno", "fogo", "defumador"],
        ["temperature", "forno", "fuoco", "affumicatore"],
    ];
    for (tag, orders) in TAGS.into_iter().zip(orders) {
        for (order, step) in orders.into_iter().zip([Step::Check, Step::Fire, Step::Fire, Step::Fire]) {
            let mut kitchen = dinner(tag);
            let heard = kitchen.say("Tom", &format!("/take {order}"));
            assert_eq!(owner(&kitchen, step), Some(TOM), "{tag}: {order}: {heard}");
        }
    }
}

#[test]
fn who_does_what_is_listed_whoever_it_is_asked() {
    let said = ["who does what", "quién hace qué", "qui fait quoi", "wer macht was", "quem faz o quê", "chi fa cosa"];
    for (tag, text) in TAGS.into_iter().zip(said) {
        let heard = aside(&mut dinner(tag), "Tom", text);
        assert!(heard.matches("\n    [").count() >= 5, "{tag}: {heard}");
    }
}

#[test]
fn whoever_thaws_has_the_changes_of_water_as_well() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-24 17:00");
    kitchen
        .say("Rosa", "/plan 14 lb frozen turkey, bought, cold water, dinner Thursday 8 pm, 10 people, oven, no salt");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Tom", "/board");
    kitchen.say("Li", "/board");
    let waters = |kitchen: &Kitchen| -> Vec<Option<PersonId>> {
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        plan.jobs.iter().filter(|job| job.step() == Some(Step::Water)).map(|job| job.owner).collect()
    };
    assert!(waters(&kitchen).len() > 4);
    let heard = kitchen.say("Tom", "/take thaw");
    assert!(waters(&kitchen).iter().all(|owner| *owner == Some(TOM)), "{heard}");
    assert!(heard.contains("water"), "they are told: {heard}");
    // What someone else has is theirs; and the thaw handed back takes its water along.
    kitchen.say("Tom", "/drop thaw");
    assert!(waters(&kitchen).iter().all(Option::is_none));
    kitchen.say("Li", "/take water");
    kitchen.say("Tom", "/take thaw");
    assert!(waters(&kitchen).iter().all(|owner| *owner == Some(LI)));
}

#[test]
fn what_the_host_says_to_everyone_changes_the_plan_and_of_a_helper_the_host_is_asked() {
    let people = |kitchen: &Kitchen| kitchen.scene.room.plan.as_ref().unwrap().wish.adults;
    let said = [
        "14 people now",
        "ahora somos 14",
        "on est 14 maintenant",
        "wir sind jetzt 14",
        "agora somos 14",
        "ora siamo 14",
    ];
    for (tag, text) in TAGS.into_iter().zip(said) {
        let mut kitchen = dinner(tag);
        let told = aside(&mut kitchen, "Tom", text);
        assert!(told.contains("Rosa") && told.contains("14"), "{tag}: Tom may not change it, Rosa is asked: {told}");
        assert_eq!(people(&kitchen), Some(11), "{tag}: {told}");
        let heard = aside(&mut kitchen, "Rosa", text);
        assert_eq!(people(&kitchen), Some(14), "{tag}: {heard}");
        let (change, _) = heard.split_once("Edit:").unwrap();
        assert!(change.contains("14") && change.matches("\n    [").count() == 1, "{tag}: to be taken back: {heard}");
    }
    let mut kitchen = dinner("en-US");
    for text in ["there will be 14 people at the market", "are we 14 people now?", "see you at 5 pm", "5 pm"] {
        assert_eq!(aside(&mut kitchen, "Rosa", text), "", "{text}");
    }
    aside(&mut kitchen, "Tom", "14 people now");
    kitchen.press("Tom", "Change the plan");
    assert_eq!(people(&kitchen), Some(11), "Rosa's to say");
    let changed = kitchen.press("Rosa", "Change the plan");
    assert_eq!(people(&kitchen), Some(14), "{changed}");
    assert!(changed.contains("All right: 14 people.") && !changed.contains("New: All right: 14 lb"), "{changed}");
    let dinner_at = |kitchen: &Kitchen| kitchen.scene.room.plan.as_ref().unwrap().wish.dinner.unwrap();
    let before = dinner_at(&kitchen);
    aside(&mut kitchen, "Rosa", "dinner is an hour later");
    if dinner_at(&kitchen) == before {
        kitchen.press("Rosa", "Dinner 3:00 PM");
    }
    assert_eq!(dinner_at(&kitchen) - before, chrono::TimeDelta::hours(1));
}

#[test]
fn a_plan_that_stands_is_changed_by_command_in_each_language() {
    let said = [
        ["dinner is an hour later", "3 more are coming"],
        ["la cena es una hora más tarde", "vienen 3 más"],
        ["le repas une heure plus tard", "3 personnes de plus"],
        ["Essen eine Stunde später", "es kommen noch 3"],
        ["o jantar é uma hora mais tarde", "vem mais 3"],
        ["cena un'ora più tardi", "vengono altri 3"],
    ];
    for (tag, [later, more]) in TAGS.into_iter().zip(said) {
        let mut kitchen = dinner(tag);
        let wish = |kitchen: &Kitchen| kitchen.scene.room.plan.as_ref().unwrap().wish.clone();
        let before = wish(&kitchen).dinner.unwrap();
        let heard = kitchen.say("Rosa", &format!("/plan {later}"));
        assert_eq!(wish(&kitchen).dinner.unwrap() - before, chrono::TimeDelta::hours(1), "{tag}: {heard}");
        let heard = kitchen.say("Rosa", &format!("/plan {more}"));
        assert_eq!(wish(&kitchen).adults, Some(14), "{tag}: {heard}");
    }
}

#[test]
fn a_list_that_is_cut_keeps_what_the_dinner_turns_on() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-20 09:30");
    let plan =
        "/plan 14 lb frozen turkey, bought, dinner Thursday 5 pm, 11 people, oven at 325, at my sister's, 30 min drive";
    kitchen.say("Rosa", plan);
    let board = kitchen.press("Rosa", "Accept");
    assert!(board.contains("and ") && board.contains("more"), "{board}");
    for job in ["Off the heat", "Carve", "Leave"] {
        assert!(board.contains(job), "{job}: {board}");
    }
}
