//! Two cooks, a bird each, one chat: what is said of one bird changes nothing of the other.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::state::{JobState, LivePlan, Room};
use carvetime::room::{BellKind, Document, How, PersonId, RoomKind, What};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const ROSA: PersonId = PersonId(1);
const TOM: PersonId = PersonId(2);

/// Rosa's turkey in the oven, Tom's duck in the smoker, both for Thursday.
fn both() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-24 08:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, dinner Thursday 5 pm, 11 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    let offered = kitchen.say("Tom", "/plan 6 lb fresh duck, dinner Thursday 5 pm, 4 people, smoker at 325");
    assert!(offered.contains("Rosa's turkey") && !offered.contains("[Accept]"), "{offered}");
    assert!(!offered.contains("Replace"), "Tom may not replace Rosa's plan: {offered}");
    kitchen.press("Tom", "One more bird");
    kitchen
}

/// Both over the heat on Thursday at two.
fn both_on() -> Kitchen {
    let mut kitchen = both();
    kitchen.run_to("2027-11-25 12:30");
    kitchen.say("Rosa", "it's on");
    kitchen.run_to("2027-11-25 14:00");
    kitchen.say("Tom", "the duck is on");
    kitchen.run_to("2027-11-25 14:30");
    kitchen
}

fn plan(kitchen: &Kitchen, host: PersonId) -> LivePlan {
    let plans = kitchen.scene.room.plans();
    (*plans.iter().find(|plan| plan.host == host).unwrap()).clone()
}

fn breast(kitchen: &Kitchen, host: PersonId) -> Vec<f64> {
    let fahrenheit = |c: f64| (c * 1.8 + 32.0).round();
    plan(kitchen, host).readings.iter().filter_map(|reading| reading.breast_c.map(fahrenheit)).collect()
}

fn is_done(plan: &LivePlan, step: &str) -> bool {
    plan.jobs.iter().any(|job| job.step == step && matches!(job.state, JobState::Done { by: Some(_), .. }))
}

#[test]
fn a_second_bird_stands_beside_the_first_with_a_board_of_its_own() {
    let mut kitchen = both();
    assert_eq!(kitchen.scene.room.plans().len(), 2);
    let boards = kitchen.say("Li", "/board");
    assert!(boards.contains("Rosa's turkey: Dinner") && boards.contains("Tom's duck: Dinner"), "{boards}");
    let newest = |key: &str| kitchen.said.iter().rev().find(|say| say.key.as_deref() == Some(key)).unwrap();
    assert!(newest("board").pin && !newest("board@2").pin, "one message is pinned");
    let toms = kitchen.say("Tom", "/board");
    assert!(toms.contains("Tom's duck: Dinner") && !toms.contains("Rosa's turkey: Dinner"), "{toms}");
    let named = kitchen.say("Tom", "/board rosa");
    assert!(named.contains("Rosa's turkey: Dinner") && !named.contains("Tom's duck: Dinner"), "{named}");
}

#[test]
fn readings_go_to_the_speakers_own_bird_or_to_the_one_named() {
    let mut kitchen = both_on();
    assert!(is_done(&plan(&kitchen, ROSA), "on") && is_done(&plan(&kitchen, TOM), "on"));
    kitchen.say("Rosa", "breast 90, thigh 95");
    assert_eq!((breast(&kitchen, ROSA), breast(&kitchen, TOM)), (vec![90.0], vec![]));
    kitchen.say("Tom", "breast 70, thigh 72");
    assert_eq!((breast(&kitchen, ROSA), breast(&kitchen, TOM)), (vec![90.0], vec![70.0]));
    kitchen.run_to("2027-11-25 14:45");
    let said = kitchen.say("Tom", "Rosa's turkey: breast 97, thigh 101");
    assert!(said.contains("Rosa's turkey: "), "{said}");
    kitchen.say("Rosa", "the duck: breast 88, thigh 90");
    kitchen.run_to("2027-11-25 15:00");
    kitchen.say("Li", "the smoker one: breast 103, thigh 105");
    assert_eq!((breast(&kitchen, ROSA), breast(&kitchen, TOM)), (vec![90.0, 97.0], vec![70.0, 88.0, 103.0]));
    kitchen.say("Rosa", "pit 330, breast 104, thigh 108");
    assert_eq!(breast(&kitchen, ROSA), vec![90.0, 97.0, 104.0]);
}

#[test]
fn what_may_mean_either_is_asked_once_and_counts_from_when_it_was_said() {
    let mut kitchen = both_on();
    let before = (plan(&kitchen, ROSA), plan(&kitchen, TOM));
    let asked = kitchen.say("Li", "breast 85, thigh 88");
    assert!(asked.contains("Which bird? “breast 85, thigh 88”"), "{asked}");
    assert!(asked.contains("[Rosa's turkey]") && asked.contains("[Tom's duck]"), "{asked}");
    assert_eq!((plan(&kitchen, ROSA), plan(&kitchen, TOM)), before);
    let said_at = kitchen.now;
    kitchen.run_to("2027-11-25 14:36");
    assert!(kitchen.press("Rosa", "Tom's duck").contains("somebody else"));
    let noted = kitchen.press("Li", "Tom's duck");
    assert!(noted.contains("Close") && noted.contains("Tom's duck: "), "{noted}");
    let read = plan(&kitchen, TOM).readings;
    assert_eq!((read.len(), read[0].at), (1, said_at));
    assert!(plan(&kitchen, ROSA).readings.is_empty());
    assert!(kitchen.scene.room.unsure.is_empty());
    assert!(kitchen.press("Li", "Rosa's turkey").contains("(notice)"), "asked once");
    assert!(plan(&kitchen, ROSA).readings.is_empty());
}

#[test]
fn a_bird_not_on_yet_has_no_readings() {
    let mut kitchen = both();
    kitchen.run_to("2027-11-25 12:30");
    kitchen.say("Rosa", "it's on");
    kitchen.run_to("2027-11-25 12:33");
    kitchen.say("Tom", "breast 45, thigh 50");
    assert_eq!((breast(&kitchen, ROSA), breast(&kitchen, TOM)), (vec![45.0], vec![]));
}

#[test]
fn a_reply_is_about_the_bird_of_the_message() {
    let mut kitchen = both_on();
    let reply = |key: &str| What::Said {
        text: "breast 80, thigh 84".into(),
        addressed: true,
        reply_to: Some(key.to_owned()),
        edited: false,
    };
    kitchen.hear(Some("Li"), reply("board@2"));
    assert_eq!((breast(&kitchen, ROSA), breast(&kitchen, TOM)), (vec![], vec![80.0]));
    kitchen.hear(Some("Tom"), reply("board"));
    assert_eq!((breast(&kitchen, ROSA), breast(&kitchen, TOM)), (vec![80.0], vec![80.0]));
}

#[test]
fn nothing_of_one_plan_changes_when_the_other_is_spoken_of() {
    let mut kitchen = both_on();
    let rosas = plan(&kitchen, ROSA);
    let messages: [(&str, &str); 9] = [
        ("Tom", "breast 90, thigh 92"),
        ("Tom", "/move 6 pm"),
        ("Tom", "/undo"),
        ("Tom", "/take carve"),
        ("Li", "/take the duck's leftovers"),
        ("Tom", "5 people now"),
        ("Tom", "undo"),
        ("Tom", "/when"),
        ("Li", "/board duck"),
    ];
    for (who, text) in messages {
        let said = kitchen.say(who, text);
        assert_eq!(plan(&kitchen, ROSA), rosas, "{who}: {text}");
        assert!(said.contains("Tom's duck: ") && !said.contains("Rosa's turkey: "), "{who}: {text}: {said}");
    }
    let toms = plan(&kitchen, TOM);
    kitchen.say("Rosa", "/move 6 pm");
    kitchen.say("Rosa", "breast 92, thigh 97");
    kitchen.press("Rosa", "Undo");
    assert_eq!(plan(&kitchen, TOM), toms);
}

#[test]
fn only_its_host_or_an_admin_moves_or_ends_a_bird() {
    let mut kitchen = both_on();
    let rosas = plan(&kitchen, ROSA);
    let refused = kitchen.say("Tom", "/move Rosa's turkey to 6 pm");
    assert!(refused.contains("Only Rosa"), "{refused}");
    assert!(kitchen.say("Tom", "/stop rosa").contains("Only Rosa"));
    assert_eq!(plan(&kitchen, ROSA), rosas);
    assert!(kitchen.say("Tom", "/forget").contains("Only"), "one host does not delete the other's plan");
    assert!(kitchen.say("Tom", "/stop").contains("Tom's duck: "));
    kitchen.press("Tom", "Yes");
    assert_eq!(kitchen.scene.room.plans().len(), 1);
    assert_eq!(plan(&kitchen, ROSA), rosas);
    let board = kitchen.say("Li", "/board");
    assert!(!board.contains("Rosa's turkey:"), "alone it needs no name: {board}");
}

#[test]
fn the_second_bird_keeps_its_messages_when_the_first_is_over() {
    let mut kitchen = both_on();
    kitchen.say("Rosa", "/stop");
    let old_yes = What::Pressed { press: "p".into(), data: "yes.stop.1".into(), on: None };
    kitchen.press("Rosa", "Yes");
    kitchen.say("Tom", "/board");
    let board = kitchen.said.iter().rev().find(|say| say.key.as_deref().is_some_and(|key| key.starts_with("board")));
    assert_eq!(board.unwrap().key.as_deref(), Some("board@2"));
    assert!(board.unwrap().pin);
    kitchen.hear(Some("Rosa"), old_yes);
    assert_eq!(kitchen.scene.room.plans().len(), 1, "a button of the first plan does not end the second");
    let called = kitchen.run_to("2027-11-25 17:30");
    assert!(called.contains("Measure") || called.contains("Off") || called.contains("off"), "{called}");
}

#[test]
fn each_bird_is_called_for_by_name() {
    let mut kitchen = both();
    let called = kitchen.run_to("2027-11-25 17:00");
    assert!(called.contains("Rosa's turkey: ") && called.contains("Tom's duck: "), "{called}");
    let is_call = |key: &str| key.starts_with("job-");
    for say in kitchen.said.iter().filter(|say| say.key.as_deref().is_some_and(is_call)) {
        let beside = say.key.as_deref().unwrap().ends_with("@2");
        let of_second = say.buttons.iter().flatten().any(|button| button.data.contains(".2."));
        assert_eq!(beside, of_second, "{say:?}");
    }
}

#[test]
fn four_birds_are_as_many_as_fit() {
    let mut kitchen = both();
    for (who, kind) in [("Li", "9 lb goose"), ("Ana", "4 lb chicken")] {
        kitchen.say(who, &format!("/plan {kind}, fresh, dinner Thursday 6 pm, 4 people, oven"));
        kitchen.press(who, "One more bird");
    }
    assert_eq!(kitchen.scene.room.plans().len(), 4);
    let before = kitchen.scene.room.plans().into_iter().cloned().collect::<Vec<_>>();
    let full = kitchen.say("Eve", "/plan 5 lb chicken, fresh, dinner Thursday 6 pm, 4 people, oven");
    assert!(full.contains("as many as I keep up with") && !full.contains("[One more bird]"), "{full}");
    let forged = What::Pressed { press: "p".into(), data: "beside.5".into(), on: None };
    assert!(kitchen.hear(Some("Eve"), forged).contains("(notice)"));
    let forged = What::Pressed { press: "p".into(), data: "instead.5.1".into(), on: None };
    assert!(kitchen.hear(Some("Eve"), forged).contains("Only Rosa"));
    assert_eq!(kitchen.scene.room.plans().into_iter().cloned().collect::<Vec<_>>(), before);
}

#[test]
fn one_host_with_two_turkeys_tells_them_apart() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-24 08:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, dinner Thursday 5 pm, 11 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    let offered = kitchen.say("Rosa", "/plan 12 lb fresh turkey, dinner Thursday 5 pm, 9 people, smoker at 325");
    assert!(offered.contains("Planned here already: The turkey"), "{offered}");
    assert!(offered.contains("[One more bird]") && offered.contains("[Replace: The turkey]"), "{offered}");
    kitchen.press("Rosa", "One more bird");
    let asked = kitchen.say("Rosa", "/move 6 pm");
    assert!(asked.contains("[The turkey in the oven]") && asked.contains("[The turkey in the smoker]"), "{asked}");
    kitchen.press("Rosa", "The turkey in the smoker");
    let plans = kitchen.scene.room.plans();
    assert_eq!(plans[0].wish.dinner, Some(kitchen.local("2027-11-25 17:00")));
    assert_eq!(plans[1].wish.dinner, Some(kitchen.local("2027-11-25 18:00")));
}

#[test]
fn one_plan_takes_the_place_of_another() {
    let mut kitchen = both();
    let offered = kitchen.say("Rosa", "/plan 16 lb fresh turkey, dinner Thursday 5 pm, 12 people, oven at 325");
    assert!(!offered.contains("[Replace: Tom's duck]"), "{offered}");
    let toms = plan(&kitchen, TOM);
    kitchen.press("Rosa", "Replace: Rosa's turkey");
    assert_eq!(kitchen.scene.room.plans().len(), 2);
    assert_eq!(plan(&kitchen, ROSA).wish.adults, Some(12));
    assert_eq!(plan(&kitchen, TOM), toms);
    assert_eq!(kitchen.scene.room.plans()[0].host, ROSA, "it stands where the old one stood");
    let board = kitchen.said.iter().rev().find(|say| say.key.as_deref() == Some("board")).unwrap();
    assert!(board.pin || board.how != How::Quiet);
}

#[test]
fn an_export_has_both() {
    let mut kitchen = both();
    kitchen.say("Li", "/export");
    let files: Vec<_> = kitchen.said.iter().filter_map(|say| say.file.as_ref()).collect();
    let text = format!("{files:?}");
    for serial in [1, 2] {
        let made = kitchen.scene.room.plans().iter().find(|plan| plan.serial == serial).unwrap().made.unwrap();
        let begins = format!("-100-{serial}-{}", made.timestamp());
        assert!(text.contains(&format!("{begins}-carve-0@carvetime")), "no events of plan {serial}");
    }
    let carvetime::room::turn::FileContent::Bytes(json) = &files.last().unwrap().content else { panic!() };
    let json: serde_json::Value = serde_json::from_slice(json).unwrap();
    assert_eq!(json["plan"]["host"], "Rosa");
    assert_eq!(json["plans_beside"][0]["host"], "Tom");
}

#[test]
fn rooms_and_bells_stored_before_there_were_two_birds_are_read() {
    let mut kitchen = both_on();
    let mut stored = serde_json::to_value(&kitchen.scene.room).unwrap();
    let room = stored.as_object_mut().unwrap();
    for field in ["others", "unsure", "unsure_made"] {
        assert!(room.remove(field).is_some());
    }
    room["plan"].as_object_mut().unwrap().remove("beside");
    let old: Room = serde_json::from_value(stored).unwrap();
    assert_eq!(old.plans().len(), 1);
    let job = BellKind::Job { step: "pull".into(), nth: 0, call: 0 };
    kitchen.now = kitchen.local("2027-11-25 18:00");
    let rang = kitchen.hear(None, What::Rang { bells: vec![(kitchen.now, job)] });
    assert!(!rang.contains("Tom's duck: "), "a bell without a mark is the first plan's: {rang}");
}

#[test]
fn an_edited_reading_corrects_the_bird_it_was_told_of() {
    let mut kitchen = both_on();
    kitchen.say("Li", "the duck: breast 98, thigh 100");
    let edited = What::Said { text: "breast 89, thigh 100".into(), addressed: true, reply_to: None, edited: true };
    kitchen.hear(Some("Li"), edited);
    assert_eq!(plan(&kitchen, TOM).readings.last().unwrap().replaces, Some(0));
    assert!(plan(&kitchen, ROSA).readings.is_empty());
}

#[test]
fn a_log_waits_too_until_it_is_known_which_bird_it_is_of() {
    let mut kitchen = both_on();
    let content = Document::Text("minutes,breast_f,thigh_f\n5,50,52\n15,60,64\n25,71,76\n".into());
    let asked = kitchen.hear(Some("Li"), What::Document { name: "probe.csv".into(), content });
    assert!(asked.contains("Which bird? “probe.csv”"), "{asked}");
    kitchen.press("Li", "Rosa's turkey");
    assert_eq!((breast(&kitchen, ROSA), breast(&kitchen, TOM)), (vec![50.0, 60.0, 71.0], vec![]));
}

#[test]
fn a_doubted_reading_is_answered_for_its_own_bird() {
    let mut kitchen = both_on();
    kitchen.say("Tom", "breast 70, thigh 75");
    kitchen.say("Rosa", "breast 80, thigh 88");
    kitchen.run_to("2027-11-25 14:40");
    let doubted = kitchen.say("Tom", "breast 170, thigh 77");
    assert!(doubted.contains("[Yes] [No]"), "{doubted}");
    let rosas = plan(&kitchen, ROSA);
    kitchen.press("Tom", "No");
    assert!(plan(&kitchen, TOM).doubted.is_empty());
    assert_eq!(plan(&kitchen, ROSA), rosas);
}

#[test]
fn spanish_names_them_too() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "es", Chicago, "2027-11-24 08:00");
    kitchen.say("Rosa", "/plan pavo fresco de 6 kg, cena el jueves a las 17:00, 11 personas, horno a 165 °C");
    kitchen.press("Rosa", "Aceptar");
    kitchen.say("Tom", "/plan pato fresco de 2,5 kg, cena el jueves a las 17:00, 4 personas, ahumador a 165 °C");
    kitchen.press("Tom", "Un ave más");
    let board = kitchen.say("Rosa", "/board pato");
    assert!(board.contains("Pato de Tom: ") && !board.contains("Pavo de Rosa: "), "{board}");
    let board = kitchen.say("Li", "/board Rosa");
    assert!(board.contains("Pavo de Rosa: ") && !board.contains("Pato de Tom: "), "{board}");
}

#[test]
fn the_question_which_bird_can_be_answered_in_words() {
    let mut kitchen = both_on();
    kitchen.say("Li", "breast 85, thigh 88");
    let noted = kitchen.say("Li", "the duck");
    assert!(noted.contains("Tom's duck: Noted"), "{noted}");
    assert_eq!((breast(&kitchen, ROSA), breast(&kitchen, TOM)), (vec![], vec![85.0]));
    assert!(kitchen.scene.room.unsure.is_empty());
}

#[test]
fn numbers_of_two_birds_in_one_message_go_to_each_where_the_names_are_clear() {
    for text in [
        "turkey 90, duck 75",
        "Rosa's breast 90, Tom's breast 75",
        "breast 90 thigh 95 on rosas, breast 75 thigh 80 on the duck",
        "big one 90 breast, duck 75",
        "Tom's duck reads 75 80, rosas 90",
    ] {
        let mut kitchen = both_on();
        kitchen.say("Li", text);
        assert_eq!((breast(&kitchen, ROSA), breast(&kitchen, TOM)), (vec![90.0], vec![75.0]), "{text}");
    }
    let mut kitchen = both_on();
    let said = kitchen.say("Tom", "breast 90 in the oven, thigh 75 in the smoker");
    assert!(said.contains("One bird at a time"), "{said}");
    for text in ["Tom's is 20 degrees ahead of the big one", "Tom owes me 120, Rosa 115", "Rosa and Tom, see you at 5"]
    {
        assert_eq!(kitchen.among("Li", text), 0, "{text}");
    }
    assert_eq!((breast(&kitchen, ROSA), breast(&kitchen, TOM)), (vec![], vec![]));
}

#[test]
fn a_dinner_that_is_over_makes_room() {
    let mut kitchen = both_on();
    kitchen.run_to("2027-12-20 09:00");
    let offered = kitchen.say("Li", "/plan 14 lb fresh turkey, dinner Saturday 5 pm, 11 people, oven at 325");
    assert!(offered.contains("[Accept]") && !offered.contains("Planned here already"), "{offered}");
    kitchen.press("Li", "Accept");
    let plans = kitchen.scene.room.plans();
    assert_eq!((plans.len(), plans[0].beside), (1, false));
}

#[test]
fn a_number_alone_answers_the_look_that_was_asked_for_and_a_logged_one_is_the_hosts_own() {
    let mut kitchen = both_on();
    kitchen.run_to("2027-11-25 15:02");
    let looks = |host| plan(&kitchen, host).jobs.iter().any(|job| job.step == "check" && job.calls > 0);
    assert!(looks(ROSA) && !looks(TOM), "only the turkey's look has been asked for");
    kitchen.say("Tom", "/log 81");
    assert_eq!((breast(&kitchen, ROSA), breast(&kitchen, TOM)), (vec![], vec![81.0]));
    kitchen.say("Li", "105");
    assert_eq!((breast(&kitchen, ROSA), breast(&kitchen, TOM)), (vec![105.0], vec![81.0]));
}

#[test]
fn a_job_is_taken_where_it_is_free_and_handed_back_where_it_is_ones_own() {
    let mut kitchen = both();
    let owners = |kitchen: &Kitchen| {
        [ROSA, TOM].map(|host| plan(kitchen, host).jobs.iter().find(|job| job.step == "carve").unwrap().owner)
    };
    let li = Some(PersonId(3));
    kitchen.say("Li", "/take carve duck");
    assert_eq!(owners(&kitchen), [None, li]);
    kitchen.say("Li", "/take carve");
    assert_eq!(owners(&kitchen), [li, li]);
    assert!(kitchen.say("Rosa", "/take carve").contains("Rosa's turkey: "), "a host means the own bird");
    assert_eq!(owners(&kitchen), [li, li]);
    let asked = kitchen.say("Li", "/drop carve");
    assert!(asked.contains("Which bird?"), "{asked}");
    kitchen.press("Li", "Rosa's turkey");
    assert_eq!(owners(&kitchen), [None, li]);
    kitchen.say("Li", "/drop carve");
    assert_eq!(owners(&kitchen), [None, None]);
}

#[test]
fn no_words_change_two_birds_at_once() {
    const SAID: [&str; 26] = [
        "breast 90, thigh 95",
        "120",
        "pit 300",
        "/log 90 95 325",
        "/log duck 90",
        "it's off",
        "done",
        "not yet",
        "both are off",
        "the turkey and the duck are off",
        "carved",
        "Tom, Rosa's turkey is off",
        "12 people now",
        "make it 6 instead",
        "the duck is 5 lb",
        "dinner at 7",
        "/move +30 min",
        "/move 4 pm duck",
        "/take carve",
        "/drop carve",
        "undo",
        "/undo",
        "ok",
        "/board",
        "/when",
        "how much salt for the duck?",
    ];
    let mut touched = [0, 0];
    for text in SAID {
        for who in ["Rosa", "Tom", "Li"] {
            let mut kitchen = both_on();
            let before = [plan(&kitchen, ROSA), plan(&kitchen, TOM)];
            kitchen.say(who, text);
            let changed = [plan(&kitchen, ROSA) != before[0], plan(&kitchen, TOM) != before[1]];
            assert!(changed != [true, true], "{who}: {text}");
            assert!(!(text.contains("duck") && !text.contains("turkey") && changed[0]), "{who}: {text}");
            (0..2).for_each(|nth| touched[nth] += u32::from(changed[nth]));
        }
    }
    assert!(touched[0] > 5 && touched[1] > 8, "{touched:?} of these words are understood");
}

#[test]
fn one_more_bird_for_the_same_table_is_told_of_in_a_few_words() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-21 18:00");
    kitchen.say("Rosa", "fresh 16 lb turkey, dinner Thursday 4 pm, 20 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    let hotter = kitchen.say("Rosa", "and another 12 lb turkey in the same oven at 350");
    assert!(
        hotter.contains("On the table Thu 4:00 PM") && hotter.contains("at 325 °F. Both need one setting"),
        "{hotter}"
    );
    let alike = kitchen.say("Rosa", "325");
    assert!(alike.contains("oven at 325 °F") && alike.contains("Side by side"), "{alike}");
    kitchen.press("Rosa", "One more bird");
    let heavy: Vec<i64> = kitchen.scene.room.plans().iter().map(|plan| plan.wish.mass_g.unwrap() as i64).collect();
    assert_eq!(heavy, [7257, 5443]);
    // Put in when the other is out, it shares nothing.
    let mut kitchen = both();
    let apart = kitchen.say("Rosa", "/plan another 6 lb fresh chicken, dinner Friday 7 pm, 4 people, oven at 325");
    assert!(!apart.contains("same heat"), "{apart}");
}

#[test]
fn what_is_told_in_the_middle_of_planning_asks_nothing() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-GB", Chicago, "2027-11-21 18:00");
    kitchen.say("Rosa", "5.5 kg fresh turkey for dinner thursday at half two");
    assert!(kitchen.say("Rosa", "yes").contains("What will you cook it in?"));
    let odd = kitchen.say("Rosa", "blorg 7");
    assert!(odd.contains("6.5 kg, 11 people, 165 °C") && odd.contains("[Fan oven]"), "{odd}");
    let told = kitchen.say("Rosa", "12 of us, 3 of them kids, gas oven 170");
    assert!(told.contains("5.5 kg turkey for 12, oven at 170 °C. On the table Thu 14:30"), "{told}");
}

#[test]
fn birds_are_told_apart_by_their_size_and_both_are_both() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-21 18:00");
    kitchen.say("Rosa", "20 lb fresh turkey thursday 3 pm 22 people oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Rosa", "and another 12 lb fresh turkey on the smoker at 300");
    kitchen.press("Rosa", "One more bird");
    let of = |kitchen: &Kitchen, heavy: bool| {
        let plans = kitchen.scene.room.plans();
        (*plans.iter().find(|plan| (plan.wish.mass_g.unwrap() > 7000.0) == heavy).unwrap()).clone()
    };
    kitchen.run_to("2027-11-23 19:00");
    assert!(kitchen.say("Rosa", "salted").contains("Which bird?"));
    kitchen.say("Rosa", "both");
    assert!(is_done(&of(&kitchen, true), "salt") && is_done(&of(&kitchen, false), "salt"));
    kitchen.run_to("2027-11-25 09:00");
    kitchen.say("Rosa", "big one in the oven");
    assert!(is_done(&of(&kitchen, true), "on") && !is_done(&of(&kitchen, false), "on"));
    kitchen.run_to("2027-11-25 10:30");
    assert!(kitchen.say("Rosa", "it's on").contains("The turkey in the smoker: Bird is on"));
    kitchen.run_to("2027-11-25 12:30");
    kitchen.say("Rosa", "small one breast 120 thigh 131");
    assert!(kitchen.say("Rosa", "breast 110 thigh 119").contains("Which bird?"));
    kitchen.say("Rosa", "the big one");
    assert_eq!((of(&kitchen, true).readings.len(), of(&kitchen, false).readings.len()), (1, 1));
}
