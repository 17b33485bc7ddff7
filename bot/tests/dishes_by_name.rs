//! Dishes spoken of by their name: begun, done, asked after, taken; and "it's in" from whoever was just called for one.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::state::{JobState, LiveJob};
use carvetime::room::{RoomKind, What};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const TAGS: [&str; 6] = ["en-US", "es-ES", "fr-FR", "de-DE", "pt-BR", "it-IT"];

/// Thursday at five in a group; Rosa hosts, Tom has added the dishes.
fn dinner(dishes: &[&str]) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-24 09:00");
    kitchen.say("Rosa", "/plan 12 lb fresh turkey, already bought, dinner Thursday 5 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    for dish in dishes {
        kitchen.say("Tom", &format!("/plan add {dish}"));
    }
    kitchen
}

fn speaks(kitchen: &mut Kitchen, tag: &str) {
    kitchen.scene.room.taste.language = Some(tag.to_owned());
    kitchen.scene.room.taste.us_units = Some(tag == "en-US");
}

fn job(kitchen: &Kitchen, step: &str, nth: u8) -> LiveJob {
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    plan.jobs.iter().find(|job| job.step == step && job.nth == nth).unwrap().clone()
}

fn is_done(kitchen: &Kitchen, step: &str, nth: u8) -> bool {
    matches!(job(kitchen, step, nth).state, JobState::Done { .. })
}

/// The bird on at twenty past twelve and read hot at half past three.
fn cooked(kitchen: &mut Kitchen) {
    kitchen.run_to("2027-11-25 12:20");
    kitchen.say("Rosa", "the bird is on");
    kitchen.run_to("2027-11-25 15:25");
    kitchen.say("Rosa", "breast 166, thigh 177, wing 170");
    kitchen.say("Rosa", "it's off");
    assert!(is_done(kitchen, "on", 0) && is_done(kitchen, "pull", 0));
}

fn privately(kitchen: &mut Kitchen, who: &str, text: &str) -> String {
    kitchen.hear_privately(who, What::Said { text: text.into(), addressed: true, reply_to: None, edited: false })
}

#[test]
fn it_s_in_from_whoever_was_just_called_for_a_dish_is_of_that_dish() {
    for said in ["it's in", "it's in the oven", "pie is in", "the pie is in the oven", "pie's in", "done"] {
        let mut kitchen = dinner(&["pie in the oven 45 min at 375"]);
        kitchen.say("Tom", "/take pie");
        let heard = kitchen.run_to("2027-11-25 16:16");
        assert!(heard.contains("pie: into the oven"), "{heard}");
        let heard = privately(&mut kitchen, "Tom", said);
        assert!(is_done(&kitchen, "dish", 0), "{said}: {heard}");
        assert!(!is_done(&kitchen, "on", 0) && !is_done(&kitchen, "pull", 0), "{said}: {heard}");
        // Said once more it is still of the pie.
        let heard = privately(&mut kitchen, "Tom", "it's in");
        assert!(!is_done(&kitchen, "on", 0) && !heard.contains("Bird"), "{said}: {heard}");
    }
}

#[test]
fn the_bird_s_own_words_stay_the_bird_s() {
    // Nobody was called for the pie: it is the bird that went in.
    let mut kitchen = dinner(&["pie in the oven 45 min at 375"]);
    kitchen.run_to("2027-11-25 12:22");
    kitchen.say("Rosa", "it's in");
    assert!(is_done(&kitchen, "on", 0) && !is_done(&kitchen, "dish", 0));
    // The bird is in the heat: what comes out now is the bird, or asked about.
    let mut kitchen = dinner(&["peas on the stove 40 min"]);
    kitchen.run_to("2027-11-25 12:20");
    kitchen.say("Rosa", "the bird is on");
    kitchen.run_to("2027-11-25 16:20");
    kitchen.say("Rosa", "it's out");
    assert!(!is_done(&kitchen, "dish", 0), "of no peas");
    // Named, the bird is the bird, though its name is part of a dish's.
    let mut kitchen = dinner(&["turkey gravy on the stove 20 min"]);
    kitchen.run_to("2027-11-25 12:22");
    kitchen.say("Rosa", "the turkey is in");
    assert!(is_done(&kitchen, "on", 0) && !is_done(&kitchen, "dish", 0));
}

#[test]
fn a_dish_is_begun_or_done_by_its_name_in_every_language() {
    let table: [(usize, &str, &[&str]); 6] = [
        (
            0,
            "red cabbage",
            &["red cabbage is on", "the cabbage is on the stove", "cabbage done", "the red cabbage is ready"],
        ),
        (
            1,
            "lombarda",
            &[
                "la lombarda está en el fuego",
                "la lombarda ya está lista",
                "lombarda lista",
                "ya he puesto la lombarda",
            ],
        ),
        (
            2,
            "chou rouge",
            &["le chou rouge est sur le feu", "le chou rouge est prêt", "j'ai mis le chou rouge sur le feu"],
        ),
        (
            3,
            "Rotkohl",
            &["der Rotkohl ist auf dem Herd", "Rotkohl ist fertig", "Rotkohl steht auf dem Herd", "Rotkohl drin"],
        ),
        (4, "couve", &["a couve já está no fogo", "a couve está pronta", "botei a couve no fogo", "couve pronta"]),
        (5, "cavolo rosso", &["il cavolo rosso è sul fuoco", "il cavolo è pronto", "ho messo il cavolo sul fuoco"]),
    ];
    for (at, name, all) in table {
        for said in all {
            let mut kitchen = dinner(&[&format!("{name} on the stove 40 min")]);
            cooked(&mut kitchen);
            kitchen.run_to("2027-11-25 16:16");
            speaks(&mut kitchen, TAGS[at]);
            kitchen.among("Lena", said);
            assert!(is_done(&kitchen, "dish", 0), "{said}");
        }
    }
}

#[test]
fn a_dish_said_to_be_in_days_before_is_asked_about() {
    let mut kitchen = dinner(&["pie in the oven 45 min at 375"]);
    let said = kitchen.say("Tom", "the pie is in");
    assert!(said.contains("“pie” is planned for Thu") && !is_done(&kitchen, "dish", 0), "{said}");
    // Nothing is settled by a question, a number or somebody's not yet.
    for said in ["is the pie in?", "the pie is not in", "pie in 10 minutes"] {
        kitchen.say("Tom", said);
        assert!(!is_done(&kitchen, "dish", 0), "{said}");
    }
}

#[test]
fn what_is_asked_of_a_dish_is_answered_of_that_dish() {
    // Its hour, its time, its heat; whose it is; all of them; whether they fit; and one is taken.
    let table: [[&str; 9]; 6] = [
        [
            "when do the rolls go in?",
            "how long do the rolls take?",
            "at what temperature do the rolls go?",
            "who has the rolls?",
            "who makes the rolls?",
            "what dishes are there?",
            "does everything fit in the oven?",
            "I can do the rolls",
            "rolls",
        ],
        [
            "¿cuándo entran los panecillos?",
            "¿cuánto tardan los panecillos?",
            "¿a qué temperatura van los panecillos?",
            "¿quién tiene los panecillos?",
            "¿quién hace los panecillos?",
            "¿qué guarniciones hay?",
            "¿cabe todo en el horno?",
            "yo hago los panecillos",
            "panecillos",
        ],
        [
            "quand va le gratin au four ?",
            "combien de temps prend le gratin ?",
            "à quelle température va le gratin ?",
            "qui a le gratin ?",
            "qui fait le gratin ?",
            "quels accompagnements y a-t-il ?",
            "est-ce que tout tient dans le four ?",
            "je m'occupe du gratin",
            "gratin",
        ],
        [
            "wann kommen die Brötchen rein?",
            "wie lange brauchen die Brötchen?",
            "bei wie viel Grad kommen die Brötchen rein?",
            "wer hat die Brötchen?",
            "wer macht die Brötchen?",
            "welche Beilagen gibt es?",
            "passt alles in den Ofen?",
            "die Brötchen mache ich",
            "Brötchen",
        ],
        [
            "quando entram os pãezinhos?",
            "quanto tempo levam os pãezinhos?",
            "a que temperatura vão os pãezinhos?",
            "quem está com os pãezinhos?",
            "quem faz os pãezinhos?",
            "quais acompanhamentos tem?",
            "cabe tudo no forno?",
            "eu cuido dos pãezinhos",
            "pãezinhos",
        ],
        [
            "quando vanno in forno le lasagne?",
            "quanto ci mettono le lasagne?",
            "a che temperatura vanno le lasagne?",
            "chi ha le lasagne?",
            "chi fa le lasagne?",
            "che contorni ci sono?",
            "ci sta tutto in forno?",
            "faccio io le lasagne",
            "lasagne",
        ],
    ];
    for (at, [when, long, hot, has, makes, all, fit, mine, name]) in table.into_iter().enumerate() {
        let mut kitchen = dinner(&["peas on the stove 20 min"]);
        // As the others write it, whatever it is called elsewhere.
        let mut dish = kitchen.scene.room.plan.clone().unwrap().wish.dishes[0].clone().unwrap();
        (dish.name, dish.heat, dish.setting_c, dish.minutes) = (name.into(), Some("oven".into()), Some(190.0), 15);
        kitchen.scene.room.plan.as_mut().unwrap().wish.dishes[0] = Some(dish);
        kitchen.say("Tom", "dinner at 5:15 pm");
        kitchen.say("Rosa", "/move 5:15 pm");
        speaks(&mut kitchen, TAGS[at]);
        for said in [when, long, hot] {
            let (ids, words) = kitchen.ids("Lena", said, false);
            assert_eq!(ids, ["dish-told-at"], "{said}: {words}");
            assert!(words.contains(name) && words.contains("15"), "{said}: {words}");
        }
        for said in [has, makes] {
            let (ids, words) = kitchen.ids("Lena", said, false);
            assert!(ids == ["room-who-nobody"] && words.contains(name), "{said}: {ids:?} {words}");
        }
        let (ids, words) = kitchen.ids("Lena", all, false);
        assert!(ids == ["dish-told-at"], "{all}: {words}");
        let (ids, words) = kitchen.ids("Lena", fit, false);
        assert!(ids == ["dish-all-fit", "dish-told-at"], "{fit}: {words}");
        kitchen.among("Lena", mine);
        assert!(job(&kitchen, "dish", 0).owner.is_some(), "{mine}");
    }
}

#[test]
fn what_is_asked_of_safety_or_of_the_bird_is_no_question_of_a_dish() {
    let mut kitchen = dinner(&["stuffing in the oven 45 min at 375"]);
    for said in
        ["how long can the stuffing sit out?", "when is the turkey done?", "can I make the stuffing a day ahead?"]
    {
        let (ids, words) = kitchen.ids("Lena", said, true);
        assert!(!ids.iter().any(|id| id.starts_with("dish-told")), "{said}: {words}");
    }
}

#[test]
fn who_eats_a_dish_takes_no_job_of_it_and_who_is_full_takes_none_off_the_plan() {
    let said: [&[&str]; 6] = [
        &["I'll have pie", "I want pie"],
        &["yo quiero pie", "quiero pie"],
        &["je prends du pie"],
        &["ich nehme pie", "ich will pie"],
        &["quero pie", "vou de pie"],
        &["prendo pie", "voglio pie"],
    ];
    for (tag, said) in TAGS.into_iter().zip(said) {
        for text in said {
            let mut kitchen = dinner(&["pie in the oven 45 min at 375"]);
            speaks(&mut kitchen, tag);
            kitchen.among("Li", text);
            assert_eq!(job(&kitchen, "dish", 0).owner, None, "{tag}: {text}");
        }
    }
    let mut kitchen = dinner(&["pie in the oven 45 min at 375"]);
    kitchen.among("Li", "I'll take the pie");
    assert!(job(&kitchen, "dish", 0).owner.is_some(), "the job is taken");
    cooked(&mut kitchen);
    kitchen.run_to("2027-11-25 17:14");
    kitchen.among("Tom", "no more pie");
    assert!(kitchen.scene.room.plan.as_ref().unwrap().wish.dishes[0].is_some(), "at the table");
}
