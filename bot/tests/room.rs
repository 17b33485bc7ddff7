//! The conversation, turn by turn.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime::room::state::JobState;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

/// The plan of the tests: a frozen bird, told on Saturday for Thursday.
fn planned() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-20 09:30");
    kitchen.say("Rosa", "/plan 14.5 lb frozen turkey, dinner Thursday 5 pm, 11 people, smoker at 325");
    kitchen.press("Rosa", "Accept");
    kitchen
}

#[test]
fn one_sentence_is_enough_for_a_proposal() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-20 09:30");
    let said = kitchen.say("Rosa", "/plan 14.5 lb frozen turkey, dinner Thursday 5 pm, 11 people, smoker at 325");
    for words in
        ["14 lb 8 oz frozen turkey for 11", "smoker at 325 °F", "Thu 5:00 PM", "Start thawing", "[Accept] [Change]"]
    {
        assert!(said.contains(words), "{words:?} is not in {said}");
    }
}

#[test]
fn what_is_missing_is_asked_one_thing_at_a_time() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-20 09:30");
    assert!(kitchen.say("Rosa", "/plan").contains("When is dinner?"));
    assert!(kitchen.say("Rosa", "Thursday").contains("What time"));
    assert!(kitchen.say("Rosa", "5 pm").contains("How heavy"));
    assert!(kitchen.say("Rosa", "11").contains("frozen?"));
    assert!(kitchen.press("Rosa", "Fresh or thawed").contains("cook it in"));
    assert!(kitchen.press("Rosa", "Oven").contains("[Accept]"));
}

#[test]
fn nobody_else_answers_for_the_one_who_is_planning() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-20 09:30");
    kitchen.say("Rosa", "/plan 14.5 lb frozen turkey, dinner Thursday 5 pm, 11 people, smoker at 325");
    assert!(kitchen.press("Tom", "Accept").contains("(notice)"));
    assert!(kitchen.scene.room.plan.is_none());
}

#[test]
fn a_due_job_is_called_once_and_done_moves_the_board() {
    let mut kitchen = planned();
    let called = kitchen.run_to("2027-11-20 09:40");
    assert_eq!(called.matches("Time to buy the bird").count(), 1, "{called}");
    let done = kitchen.press("Tom", "Done");
    assert!(done.contains("Bird bought, Tom") && done.contains("[Undo]"), "{done}");
}

#[test]
fn pressing_done_twice_has_one_effect_and_says_who_was_first() {
    let mut kitchen = planned();
    kitchen.run_to("2027-11-20 11:00");
    kitchen.press("Tom", "Done");
    let facts = kitchen.scene.room.plan.clone().unwrap().facts;
    let job = facts[0].clone();
    let data = format!("done.1.{}.{}", job.step, job.nth);
    let again = kitchen.hear(Some("Lena"), carvetime::room::What::Pressed { press: "p".into(), data, on: None });
    assert!(again.contains("(notice)") && again.contains("Tom"), "{again}");
    assert_eq!(kitchen.scene.room.plan.unwrap().facts, facts);
}

#[test]
fn undo_gives_back_the_plan_before() {
    let mut kitchen = planned();
    kitchen.run_to("2027-11-20 11:00");
    let before = kitchen.scene.room.plan.clone().unwrap();
    kitchen.press("Tom", "Done");
    let undone = kitchen.say("Tom", "/undo");
    assert!(undone.contains("Taken back"), "{undone}");
    let after = kitchen.scene.room.plan.unwrap();
    assert_eq!((after.facts, after.wish), (before.facts, before.wish));
}

#[test]
fn only_the_host_moves_dinner() {
    let mut kitchen = planned();
    let refused = kitchen.say("Tom", "/move 6 pm");
    assert!(refused.contains("Rosa"), "{refused}");
    let moved = kitchen.say("Rosa", "/move 6 pm");
    assert!(moved.contains("Dinner is now Thu 6:00 PM"), "{moved}");
}

#[test]
fn a_move_that_costs_something_or_cannot_be_is_asked_with_its_ways_as_buttons() {
    let dinner = |kitchen: &Kitchen| kitchen.scene.room.plan.as_ref().unwrap().wish.dinner.unwrap();
    let mut kitchen = planned();
    let at = |kitchen: &Kitchen, local: &str| kitchen.local(local);
    // Two days sooner a frozen bird has no time to thaw in the fridge.
    let said = kitchen.say("Rosa", "/move Tuesday 5 pm");
    assert_eq!(said.matches("New: ").count(), 1, "one message: {said}");
    assert!(said.contains("doesn't work") && said.contains("[Leave it]"), "{said}");
    assert_eq!(dinner(&kitchen), at(&kitchen, "2027-11-25 17:00"));
    let button = said.lines().filter(|line| line.trim().starts_with('[')).find(|line| line.contains("water"));
    let label = button.unwrap_or_else(|| panic!("{said}")).trim().trim_matches(['[', ']']).to_owned();
    assert!(kitchen.press("Tom", &label).contains("Only Rosa"), "the host and admins choose");
    let moved = kitchen.press("Rosa", &label);
    assert!(moved.contains("Dinner is now Tue 5:00 PM.") && moved.contains("[Undo]"), "{moved}");
    assert_eq!(dinner(&kitchen), at(&kitchen, "2027-11-23 17:00"));
    assert!(kitchen.press("Rosa", &label).contains("earlier plan"), "the way out was for the plan before");
    kitchen.say("Rosa", "/undo");
    assert_eq!(dinner(&kitchen), at(&kitchen, "2027-11-25 17:00"));
    // Roasting, it comes off as planned whatever the hour: that is asked too.
    kitchen.run_to("2027-11-25 12:10");
    kitchen.say("Rosa", "it's on");
    let asked = kitchen.say("Rosa", "/move +20 min");
    assert!(
        asked.contains("Dinner Thu 5:20 PM instead of 5:00 PM?") && asked.contains("comes off as planned"),
        "{asked}"
    );
    assert_eq!(dinner(&kitchen), at(&kitchen, "2027-11-25 17:00"));
    assert!(kitchen.press("Rosa", "Dinner 5:20 PM").contains("Dinner is now Thu 5:20 PM."));
}

#[test]
fn a_mark_that_is_no_slip_is_asked_about_by_name_and_stays_where_more_was_built_on_it() {
    let state = |kitchen: &Kitchen, step: &str| {
        kitchen.scene.room.plan.as_ref().unwrap().jobs.iter().find(|job| job.step == step).unwrap().state
    };
    let mut kitchen = planned();
    kitchen.run_to("2027-11-25 12:10");
    kitchen.say("Tom", "it's on");
    let on = state(&kitchen, "on");
    kitchen.run_to("2027-11-25 12:40");
    let refused = kitchen.say("Lena", "/undo");
    assert!(refused.contains("Tom's: “Bird on” done"), "{refused}");
    let asked = kitchen.say("Rosa", "/undo");
    assert!(asked.contains("Tom marked “Bird on” done, Thu 12:10 PM. Was that a mistake?"), "{asked}");
    assert_eq!(state(&kitchen, "on"), on, "asked first");
    assert!(kitchen.press("Rosa", "Leave it").contains("nothing changes"));
    // Other changes since do not keep a mistake from being mended.
    kitchen.say("Lena", "/take carve");
    let asked = kitchen.say("Tom", "it isn't on yet");
    assert!(asked.contains("Was that a mistake?"), "{asked}");
    let undone = kitchen.press("Tom", "A mistake, undo");
    assert!(undone.contains("Taken back: “Bird on” done (Tom, Thu 12:10 PM)."), "{undone}");
    assert_eq!(state(&kitchen, "on"), JobState::Waiting);
    let carve = kitchen.scene.room.plan.as_ref().unwrap().jobs.iter().find(|job| job.step == "carve").unwrap().owner;
    assert!(carve.is_some(), "the carving stays Lena's");
    // On after all, and measured: food in the fire stays in the fire.
    kitchen.say("Tom", "it's on");
    kitchen.run_to("2027-11-25 13:30");
    kitchen.say("Tom", "/log breast 88, thigh 95");
    let refused = kitchen.say("Tom", "it isn't on yet");
    assert!(refused.contains("“Bird on” stays: the bird was measured after it"), "{refused}");
    assert!(matches!(state(&kitchen, "on"), JobState::Done { .. }));
}

#[test]
fn impossible_numbers_get_the_range_and_the_rest_is_kept() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-20 09:30");
    for (text, words) in [
        ("/plan -5 lb turkey", "55 lb"),
        ("/plan 900 lb turkey", "55 lb"),
        ("/plan 0 guests", "200"),
        ("/plan dinner 2020-11-25 17:00", "over"),
    ] {
        let said = kitchen.say("Rosa", text);
        assert!(said.contains(words), "{text}: {said}");
    }
    let kept = kitchen.say("Rosa", "/plan frozen turkey, dinner Thursday 5 pm, 900 lb");
    assert!(kept.contains("Thu 5:00 PM"), "{kept}");
}

#[test]
fn a_reading_that_cannot_be_is_asked_about_not_believed() {
    let mut kitchen = planned();
    kitchen.run_to("2027-11-25 13:00");
    kitchen.say("Rosa", "/log breast 118, pit 331");
    let slip = kitchen.say("Rosa", "/log breast 18");
    assert!(slip.contains("118 °F would fit") && slip.contains("haven't counted"), "{slip}");
    assert_eq!(kitchen.scene.room.plan.unwrap().readings.len(), 1);
}

#[test]
fn a_press_from_elsewhere_counts_only_for_a_member() {
    let mut kitchen = planned();
    kitchen.run_to("2027-11-20 11:00");
    let job = kitchen.scene.room.plan.clone().unwrap().jobs[0].clone();
    let data = format!("done.1.{}.{}", job.step, job.nth);
    let press = || carvetime::room::What::Pressed { press: "p".into(), data: data.clone(), on: None };
    let refused = kitchen.hear_privately("Stranger", press());
    assert!(refused.contains("not in that chat"), "{refused}");
    assert_eq!(kitchen.scene.room.members.len(), 1);
    assert!(kitchen.scene.room.plan.clone().unwrap().facts.is_empty());
    kitchen.hear_privately("Rosa", press());
    assert_eq!(kitchen.scene.room.plan.unwrap().facts.len(), 1);
}

#[test]
fn a_thaw_nobody_confirmed_is_taken_for_done_and_said_so() {
    let mut kitchen = planned();
    kitchen.run_to("2027-11-24 12:00");
    let moved = kitchen.say("Rosa", "/move +30 min");
    assert!(moved.contains("Dinner is now"), "{moved}");
    assert!(moved.contains("I take it: Bird bought and Thawing. Nobody said so."), "{moved}");
}

#[test]
fn an_hour_told_before_the_zone_is_the_kitchens_hour() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 09:30");
    kitchen.scene.room.taste.zone = None;
    kitchen.say("Rosa", "/plan 13 lb fresh turkey, dinner 2027-12-03 16:00, 8 people, oven at 325");
    let said = kitchen.say("Rosa", "Chicago");
    assert!(said.contains("4:00 PM"), "{said}");
    assert_eq!(said.matches("[Accept]").count(), 1, "{said}");
}

#[test]
fn what_is_accepted_is_what_was_shown() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-20 18:30");
    let shown = kitchen.say("Rosa", "/plan 14.5 lb frozen turkey, dinner Thursday 5 pm, 11 people, smoker at 325");
    let salt = shown.lines().find(|line| line.ends_with("Salt the bird")).unwrap().to_owned();
    kitchen.now += chrono::TimeDelta::minutes(2);
    let board = kitchen.press("Rosa", "Accept");
    assert!(board.contains(&salt), "{salt} is not in {board}");
}

#[test]
fn a_question_in_a_chat_is_answered_with_its_sources_at_hand() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 09:30");
    let said = kitchen.say("Rosa", "how long does it take to thaw a 14 lb turkey?");
    assert!(said.contains("3 to 4 days") && said.contains("[Where from?]"), "{said}");
    let sources = kitchen.press("Rosa", "Where from?");
    assert!(sources.contains("USDA"), "{sources}");
}

#[test]
fn a_unit_that_matters_is_asked_for() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 09:30");
    let back = kitchen.say("Rosa", "is 70 for 2 minutes safe?");
    assert!(back.contains("°C") && back.contains('['), "{back}");
}

#[test]
fn five_thousand_characters_get_one_clear_answer() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 09:30");
    let said = kitchen.say("Rosa", &"turkey ".repeat(715));
    assert!(said.contains("5,005 characters") && said.contains("1,000"), "{said}");
}

#[test]
fn a_dinner_hour_that_can_no_longer_be_met_is_not_brought_back() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 09:30");
    kitchen.say("Rosa", "/plan 13 lb fresh turkey, dinner Thursday 1 pm, 8 people, oven");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Rosa", "/move 7 pm");
    kitchen.run_to("2027-11-25 12:00");
    let before = kitchen.scene.room.plan.clone().unwrap();
    let said = kitchen.say("Rosa", "/undo");
    assert!(said.contains("can't take that back"), "{said}");
    assert_eq!(kitchen.scene.room.plan.unwrap().wish, before.wish);
}

#[test]
fn a_change_of_mind_in_plain_words_changes_the_proposal_and_then_the_plan() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-19 09:30");
    kitchen.say("Rosa", "14 lb frozen turkey, dinner Thursday 5 pm, 10 people, smoker");
    assert!(kitchen.say("Rosa", "12 people now, my cousin is coming").contains("for 12"));
    assert!(kitchen.say("Rosa", "make it 6 instead").contains("Thu 6:00 PM"));
    assert!(kitchen.say("Rosa", "ok").contains("It's a plan"));
    let amended = kitchen.say("Rosa", "we are 14 now");
    assert!(amended.contains("14 people") && amended.contains("[Undo]"), "{amended}");
    assert!(kitchen.say("Rosa", "undo").contains("Taken back"));
    assert_eq!(kitchen.scene.room.plan.unwrap().wish.adults, Some(12));
}

#[test]
fn words_count_as_much_as_buttons() {
    let mut kitchen = planned();
    kitchen.run_to("2027-11-20 13:00");
    let bought = kitchen.say("Tom", "bought it");
    assert!(bought.contains("Bird bought"), "{bought}");
    kitchen.run_to("2027-11-20 20:30");
    assert!(kitchen.say("Tom", "its thawing").contains("Thawing"), "thaw");
}

#[test]
fn still_frozen_is_news_and_never_taken_for_done() {
    let mut kitchen = planned();
    kitchen.run_to("2027-11-22 12:00");
    let told = kitchen.say("Tom", "still frozen solid");
    let plan = kitchen.scene.room.plan.clone().unwrap();
    assert!(plan.jobs.iter().any(|job| job.step == "thaw" && job.denied), "{told}");
}

#[test]
fn chatter_in_a_group_is_left_alone() {
    let mut kitchen = planned();
    for text in ["lol did anyone see the game", "morning everyone", "who brings the pie?"] {
        let said = kitchen.hear(
            Some("Tom"),
            carvetime::room::What::Said { text: text.into(), addressed: false, reply_to: None, edited: false },
        );
        assert_eq!(said, "", "{text}");
    }
}

#[test]
fn two_hours_after_carving_what_stands_out_is_said_to_be_over() {
    let mut kitchen = planned();
    let said = kitchen.run_to("2027-11-25 23:00");
    assert_eq!(said.matches("The two hours are over").count(), 1, "{said}");
    let late = kitchen.say("Tom", "put the leftovers in the fridge");
    assert!(late.contains("gets thrown away"), "{late}");
}

#[test]
fn salt_for_the_plans_bird_needs_no_weight() {
    let mut kitchen = planned();
    let said = kitchen.say("Tom", "how much salt do i need");
    assert!(said.contains("tbsp") && !said.contains("How heavy"), "{said}");
}

#[test]
fn quiet_hours_keep_the_host_unnamed_except_for_safety() {
    let mut kitchen = planned();
    kitchen.scene.people.get_mut(&carvetime::room::PersonId(1)).unwrap().quiet =
        Some((chrono::NaiveTime::MIN, chrono::NaiveTime::from_hms_opt(23, 59, 0).unwrap()));
    let said = kitchen.run_to("2027-11-25 23:00");
    for (step, called) in [("Start thawing", false), ("Off the heat", true)] {
        let again = |pair: &[&str]| {
            pair[0].contains("Rosa:") && pair[1].contains("Nobody has done it yet") && pair[1].contains(step)
        };
        let lines: Vec<&str> = said.lines().collect();
        assert_eq!(lines.windows(2).any(again), called, "{step}: {said}");
    }
}

#[test]
fn settings_take_a_language_by_its_name() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-19 09:30");
    assert!(kitchen.say("Rosa", "/settings language spanish").contains("Idioma: Español"));
    assert!(kitchen.say("Rosa", "ayuda").contains("/plan"));
    assert!(kitchen.say("Rosa", "/settings zone Mars/Olympus_Mons").contains("Mars/Olympus_Mons"));
}

#[test]
fn a_bird_that_read_too_little_is_asked_about_before_it_comes_off() {
    let mut kitchen = planned();
    kitchen.run_to("2027-11-25 12:10");
    kitchen.say("Rosa", "it's on");
    kitchen.run_to("2027-11-25 15:30");
    kitchen.say("Rosa", "breast 159, thigh 171");
    let asked = kitchen.say("Rosa", "took it off");
    assert!(asked.contains("The breast read 159 °F") && asked.contains("[Yes, it does]"), "{asked}");
    assert!(kitchen.scene.room.plan.clone().unwrap().facts.iter().all(|fact| fact.step != "pull"));
    kitchen.press("Rosa", "Yes, it does");
    assert!(kitchen.scene.room.plan.unwrap().facts.iter().any(|fact| fact.step == "pull"));
}

#[test]
fn good_news_of_a_job_days_ahead_settles_nothing() {
    let mut kitchen = planned();
    kitchen.run_to("2027-11-20 20:45");
    kitchen.say("Rosa", "its thawing");
    kitchen.say("Rosa", "i put it in the fridge");
    let plan = kitchen.scene.room.plan.unwrap();
    assert!(plan.facts.iter().all(|fact| fact.step != "chill"), "{:?}", plan.facts);
}

#[test]
fn a_bird_off_the_heat_hours_before_carving_is_kept_hot() {
    let mut kitchen = planned();
    kitchen.run_to("2027-11-25 12:10");
    kitchen.say("Rosa", "it's on");
    kitchen.run_to("2027-11-25 14:30");
    let off = kitchen.say("Rosa", "took it off");
    assert!(off.contains("140 °F or hotter until then"), "{off}");
}

#[test]
fn quiet_hours_told_in_words_are_the_speaker_s_own() {
    let mut kitchen = planned();
    kitchen.say("Tom", "2 tbsp table salt");
    let quiet = |kitchen: &Kitchen, who: i64| kitchen.scene.people[&carvetime::room::PersonId(who)].quiet;
    let told = kitchen.say("Tom", "quiet 10:30 pm to 7 am");
    assert!(told.contains("Quiet hours: 10:30 PM to 7:00 AM"), "{told}");
    assert_eq!(
        (quiet(&kitchen, 1), quiet(&kitchen, 2).map(|(from, _)| from.to_string())),
        (None, Some("22:30:00".into()))
    );
    let unread = kitchen.say("Tom", "/settings quiet 25 to 7");
    assert!(unread.contains("as in “quiet 22:00 to 7:00”"), "{unread}");
    assert!(quiet(&kitchen, 2).is_some(), "what was unread changes nothing");
    let told = kitchen.say("Tom", "/settings quiet off");
    assert!(told.contains("Quiet hours: none"), "{told}");
    assert_eq!(quiet(&kitchen, 2), None);
}

#[test]
fn what_people_tell_each_other_moves_no_plan() {
    for addressed in [false, true] {
        let mut kitchen = planned();
        let before = kitchen.scene.room.plan.clone().unwrap().wish;
        for text in [
            "my sister arrives at 8 pm",
            "I have to leave for work at 9",
            "see you all again thursday at 6",
            "I bought 5 lb potatoes today",
            "I'll bake a 2 kg pie at 400",
            "quiet 10 pm to 7 am",
        ] {
            let what = carvetime::room::What::Said { text: text.into(), addressed, reply_to: None, edited: false };
            let said = kitchen.hear(Some("Rosa"), what);
            assert_eq!(kitchen.scene.room.plan.clone().unwrap().wish, before, "{text}: {said}");
        }
    }
}

#[test]
fn the_two_hours_count_from_the_heat_unless_it_is_kept_hot() {
    let mut kitchen = planned();
    kitchen.run_to("2027-11-25 12:10");
    kitchen.say("Rosa", "it's on");
    kitchen.run_to("2027-11-25 15:25");
    let off = kitchen.say("Rosa", "took it off");
    assert!(off.contains("in the fridge by 5:25 PM") && off.contains("[Kept hot]"), "{off}");
    let limit = |kitchen: &Kitchen| {
        let plan = kitchen.scene.room.plan.clone().unwrap();
        plan.jobs.iter().find(|job| job.step == "chill").unwrap().latest
    };
    assert_eq!(limit(&kitchen), kitchen.local("2027-11-25 17:25"));
    // That it is kept hot is a word: the two hours count on until it has been read.
    let asked = kitchen.press("Rosa", "Kept hot");
    assert!(asked.contains("Tell me what breast and thigh read") && asked.contains("until 5:25 PM"), "{asked}");
    assert_eq!(limit(&kitchen), kitchen.local("2027-11-25 17:25"));
    kitchen.run_to("2027-11-25 16:20");
    kitchen.say("Rosa", "breast 150, thigh 156");
    assert_eq!(limit(&kitchen), kitchen.local("2027-11-25 18:20"));
}

#[test]
fn water_is_not_due_any_more_once_the_bird_is_on() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 18:30");
    kitchen.say("Rosa", "/plan 14.5 lb frozen turkey, dinner Thursday 5 pm, 11 people, smoker at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-25 18:00");
    let board = kitchen.say("Rosa", "/board");
    assert!(!board.contains("thawing water"), "{board}");
}

#[test]
fn what_stands_against_the_plan_is_told_once() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 18:00");
    kitchen.say("Rosa", "14 lb fresh turkey, dinner Thursday 4 pm, 12 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-25 11:10");
    assert!(kitchen.say("Rosa", "it's in").contains("] New: It no longer fits"));
    kitchen.run_to("2027-11-25 13:45");
    let done = kitchen.press("Rosa", "Done");
    assert!(done.contains("] Edit: It no longer fits"), "{done}");
    let told =
        |say: &&carvetime::room::Say| say.key.as_deref() == Some("conflict") && say.how == carvetime::room::How::New;
    assert_eq!(kitchen.said.iter().filter(told).count(), 1);
}

#[test]
fn a_bird_to_be_bought_later_than_it_was_is_accepted_as_shown() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-23 08:00");
    let shown = kitchen.say("Rosa", "14 lb fresh turkey, bought, dinner Thursday 6 pm, 11 people, oven at 325");
    assert!(shown.contains("Buy a fresh one later"), "{shown}");
    let accepted = kitchen.press("Rosa", "Accept");
    assert!(kitchen.scene.room.plan.is_some(), "{accepted}");
    assert!(accepted.contains("Buy the bird"), "{accepted}");
}

#[test]
fn a_size_that_is_asked_for_in_a_wish_is_answered_first() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-21 10:00");
    let said = kitchen.say("Rosa", "my first turkey this thursday, 12 people, what size do i get");
    assert!(said.contains("12 people: 12 lb of turkey") && said.contains("What time is dinner"), "{said}");
    let said = kitchen.say("Rosa", "turkey for 12, thursday 4pm, oven 325");
    assert!(!said.contains("of turkey.") && said.contains("Is the bird frozen"), "nobody asked: {said}");
    let warm = kitchen.say("Rosa", "is it ok if the fridge is at 42");
    assert!(warm.contains("Your fridge is at 42 °F: above 40 °F"), "{warm}");
    assert!(!kitchen.say("Rosa", "is 38 ok for the fridge").contains("Your fridge"), "cold enough");
}
