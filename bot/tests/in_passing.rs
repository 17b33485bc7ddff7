//! What people say in passing while a plan stands: it is heard for what it is, and changes no more than that.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime_core::plan::Step;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

/// A fresh bird, bought, salted, and in the oven since Thursday, 1 pm.
fn cooking() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-24 08:00");
    kitchen.say("Rosa", "14 lb fresh turkey, we have it, dinner Thursday 6 pm, 11 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Rosa", "salted it");
    kitchen.run_to("2027-11-25 13:00");
    kitchen.say("Rosa", "it's in the oven");
    kitchen
}

fn setting_f(kitchen: &Kitchen) -> f64 {
    kitchen.scene.room.plan.as_ref().unwrap().wish.setting_c.unwrap() * 1.8 + 32.0
}

#[test]
fn an_oven_turned_up_is_a_setting_and_no_reading() {
    let mut kitchen = cooking();
    let before = kitchen.scene.room.plan.as_ref().unwrap().ready_to.unwrap();
    let said = kitchen.say("Rosa", "I turned the oven up to 375");
    assert!(said.contains("375 °F from now on") && said.contains("[Undo]"), "{said}");
    assert!((setting_f(&kitchen) - 375.0).abs() < 0.5);
    assert!(kitchen.scene.room.plan.as_ref().unwrap().readings.is_empty());
    assert!(kitchen.scene.room.plan.as_ref().unwrap().ready_to.unwrap() < before, "hotter is sooner");
    let undone = kitchen.press("Rosa", "Undo");
    assert!((setting_f(&kitchen) - 325.0).abs() < 0.5, "{undone}");
}

#[test]
fn an_oven_turned_too_low_is_noted_with_the_authority_s_figure() {
    let mut kitchen = cooking();
    let said = kitchen.say("Rosa", "turned the oven down to 250");
    assert!(said.contains("250 °F from now on") && said.contains("325 °F or hotter"), "{said}");
}

#[test]
fn a_thermometer_s_number_is_still_a_reading() {
    let mut kitchen = cooking();
    let said = kitchen.say("Rosa", "oven 350, breast 60");
    assert!(said.contains("350 °F") && said.contains("60 °F"), "{said}");
    assert!((setting_f(&kitchen) - 325.0).abs() < 0.5, "what the oven is set to was not told");
}

/// A frozen bird in the fridge since Saturday, as somebody said.
fn thawing() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-20 09:30");
    kitchen.say("Rosa", "14 lb frozen turkey, we have it, dinner Thursday 6 pm, 11 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Rosa", "in the fridge, thawing");
    kitchen
}

#[test]
fn ice_found_after_the_thaw_is_finished_in_cold_water_before_the_heat() {
    let mut kitchen = thawing();
    kitchen.run_to("2027-11-24 20:00");
    let said = kitchen.say("Rosa", "there is still ice inside the cavity");
    assert!(said.contains("cold water finishes it"), "{said}");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    let (water, on) = (plan.job(Step::Thaw, 0).unwrap().at, plan.job(Step::On, 0).unwrap().at);
    assert!(water > kitchen.now && water < on, "thawed before it goes on");
    let called = kitchen.run_to("2027-11-25 11:00");
    assert!(called.contains("cold water") && called.contains("Change the thawing water"), "{called}");
}

#[test]
fn ice_that_leaves_no_time_is_told_with_what_would_work_and_can_be_taken_back() {
    let mut kitchen = thawing();
    kitchen.run_to("2027-11-25 11:00");
    let said = kitchen.say("Rosa", "it is still frozen in the middle");
    assert!(said.contains("into the oven as it is") && said.contains("165 °F everywhere"), "{said}");
    assert!(said.contains("What would work"), "{said}");
    let said = kitchen.say("Rosa", "undo");
    assert!(said.contains("Taken back") || said.contains("can't take that back"), "{said}");
}

#[test]
fn ice_in_a_bird_bought_fresh_is_answered_with_advice() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-24 08:00");
    kitchen.say("Rosa", "14 lb fresh turkey, we have it, dinner Thursday 6 pm, 11 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    let said = kitchen.say("Rosa", "it's still frozen inside");
    assert!(said.contains("cold water now") && said.contains("165 °F"), "{said}");
}

#[test]
fn leftovers_asked_after_are_told_their_own_last_day_and_move_nothing() {
    let mut kitchen = cooking();
    let dinner = kitchen.scene.room.plan.as_ref().unwrap().wish.dinner;
    kitchen.run_to("2027-11-26 12:00");
    let said = kitchen.say("Rosa", "can I still eat the leftovers");
    assert!(said.contains("3 to 4 days") && said.contains("by Sun"), "{said}");
    kitchen.run_to("2027-12-01 12:00");
    let said = kitchen.say("Rosa", "are the leftovers still good?");
    assert!(said.contains("throw out what isn’t frozen"), "{said}");
    assert_eq!(kitchen.scene.room.plan.as_ref().and_then(|plan| plan.wish.dinner).or(dinner), dinner);
}

#[test]
fn leftovers_nobody_put_away_are_not_simply_eaten() {
    let mut kitchen = cooking();
    let called = kitchen.run_to("2027-11-28 13:00");
    assert!(called.contains("Only what went into the fridge within two hours"), "{called}");
}

#[test]
fn when_and_what_is_next_are_asked_in_plain_words() {
    let mut kitchen = cooking();
    assert!(kitchen.say("Rosa", "when do we eat?").contains("Dinner Thu 6:00 PM"));
    assert!(kitchen.say("Rosa", "what's next?").contains("Check temperatures"));
}

#[test]
fn a_bird_the_packer_salted_is_not_salted_again() {
    let plan = "14 lb fresh turkey with 8 % solution, we have it, dinner Thursday 6 pm, 11 people, oven";
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-24 08:00");
    let said = kitchen.say("Rosa", plan);
    assert!(said.contains("8 % solution is salt enough") && !said.contains("Salt the bird"), "{said}");

    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-24 08:00");
    kitchen.say("Rosa", "14 lb fresh turkey, we have it, dinner Thursday 6 pm, 11 people, oven");
    kitchen.press("Rosa", "Accept");
    let said = kitchen.say("Rosa", "the label says it is already salted");
    assert!(said.contains("no salt"), "{said}");
    assert!(!kitchen.say("Rosa", "/board").contains("Salt the bird"));
}

#[test]
fn the_only_salt_in_the_house_is_the_one_reckoned_with() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-24 08:00");
    kitchen.say("Rosa", "14 lb fresh turkey, we have it, dinner Thursday 6 pm, 11 people, oven");
    kitchen.press("Rosa", "Accept");
    let said = kitchen.say("Rosa", "I only have table salt");
    assert!(said.contains("6 g a teaspoon") && said.contains("of your salt"), "{said}");
}

#[test]
fn readings_before_their_time_make_no_other_bird() {
    let mut kitchen = thawing();
    kitchen.say("Rosa", "breast 45 thigh 50");
    assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().wish.kind.as_deref(), Some("turkey"));
}

#[test]
fn how_many_will_eat_moves_no_dinner() {
    let mut kitchen = thawing();
    let dinner = kitchen.scene.room.plan.as_ref().unwrap().wish.dinner;
    kitchen.say("Rosa", "we are 10 by now");
    kitchen.say("Rosa", "we are now 10");
    let wish = &kitchen.scene.room.plan.as_ref().unwrap().wish;
    assert_eq!((wish.dinner, wish.adults), (dinner, Some(10)));
}

#[test]
fn what_was_done_is_heard_beside_the_numbers() {
    let mut kitchen = cooking();
    kitchen.run_to("2027-11-25 15:45");
    let plan = |kitchen: &Kitchen| kitchen.scene.room.plan.clone().unwrap();
    let early = kitchen.say("Rosa", "163 breast 172 thigh 168 wing");
    assert!(early.contains("stays on"), "{early}");
    // Measured a minute ago, it is not called off before the next look.
    let calls = kitchen.run_to("2027-11-25 15:48");
    assert!(!calls.contains("Still open"), "{calls}");
    kitchen.run_to("2027-11-25 15:55");
    let off = kitchen.say("Rosa", "166 breast 175 thigh 171 wing, pulled it");
    assert!(off.contains("breast 166 °F") && off.contains("Off the heat, 3:55 PM"), "{off}");
    assert_eq!(plan(&kitchen).readings.len(), 2);
}

#[test]
fn a_number_that_is_asked_about_is_no_reading() {
    let mut kitchen = cooking();
    kitchen.run_to("2027-11-25 15:00");
    let asked = kitchen.say("Rosa", "is 158 ok if it's been at it for 2 minutes");
    assert!(asked.contains("you held 2 min"), "{asked}");
    assert!(kitchen.scene.room.plan.as_ref().unwrap().readings.is_empty());
    let both = kitchen.say("Rosa", "breast 151, is that ok?");
    assert!(both.contains("Noted: breast 151 °F"), "{both}");
}

#[test]
fn a_dish_more_and_guests_more_are_heard_without_a_command() {
    let mut kitchen = thawing();
    kitchen.say("Rosa", "add green beans in the oven 30 min at 350");
    let rolls = kitchen.say("Rosa", "and rolls 15 min at 375");
    assert!(rolls.contains("rolls"), "{rolls}");
    let dishes = kitchen.scene.room.plan.as_ref().unwrap().wish.dishes.clone();
    assert_eq!(dishes.iter().flatten().map(|dish| dish.name.as_str()).collect::<Vec<_>>(), ["green beans", "rolls"]);
    let people = |kitchen: &Kitchen| {
        let wish = &kitchen.scene.room.plan.as_ref().unwrap().wish;
        (wish.adults, wish.children)
    };
    let (adults, _) = people(&kitchen);
    kitchen.say("Rosa", "my cousin and his 2 kids are coming too");
    let adults = adults.map(|adults| adults + 1);
    assert_eq!(people(&kitchen), (adults, Some(2)), "the cousin eats too");
    kitchen.say("Rosa", "3 more people are coming");
    assert_eq!(people(&kitchen), (adults.map(|adults| adults + 3), Some(2)));
    kitchen.say("Rosa", "we are now 10");
    assert_eq!(people(&kitchen).0, Some(10));
}

#[test]
fn what_is_asked_measures_and_moves_nothing() {
    let mut kitchen = cooking();
    let dinner = |kitchen: &Kitchen| kitchen.scene.room.plan.as_ref().unwrap().wish.dinner;
    let before = dinner(&kitchen);
    kitchen.run_to("2027-11-25 15:00");
    for asked in [
        "should the breast be 160 or 165",
        "does it need to be 180 in the thigh, my mom says",
        "is it enough for 15?",
        "what's a fan oven",
    ] {
        kitchen.say("Rosa", asked);
        assert!(kitchen.scene.room.plan.as_ref().unwrap().readings.is_empty(), "{asked}");
        assert_eq!(dinner(&kitchen), before, "{asked}");
    }
    let moved = kitchen.say("Rosa", "push dinner to 630");
    assert_ne!(dinner(&kitchen), before, "{moved}");
}

#[test]
fn what_has_stood_out_for_two_hours_is_not_cooked_safe_again() {
    let mut kitchen = cooking();
    kitchen.run_to("2027-11-25 16:00");
    kitchen.say("Rosa", "166/176 wing 170");
    kitchen.say("Rosa", "took it off");
    kitchen.run_to("2027-11-25 18:30");
    let asked = kitchen.say("Rosa", "it reads 128 now, is that ok?");
    assert!(asked.contains("two hours are over"), "{asked}");
}

#[test]
fn of_two_birds_in_one_sentence_what_differs_is_asked() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-20 09:30");
    let said =
        kitchen.say("Rosa", "12 lb fresh on the smoker and a 20 lb frozen in the oven, 22 people, thursday 3 pm");
    assert!(said.contains("the 20 lb first") && said.contains("Is the bird frozen?"), "{said}");
}

#[test]
fn a_reading_too_low_is_asked_about_however_old_it_is() {
    let mut kitchen = cooking();
    kitchen.run_to("2027-11-25 15:20");
    kitchen.say("Rosa", "breast 155 thigh 160 wing 158");
    kitchen.run_to("2027-11-25 16:20");
    let asked = kitchen.say("Rosa", "pulled it");
    assert!(asked.contains("The breast read 155 °F") && asked.contains("[Yes, it does]"), "{asked}");
}

#[test]
fn leftovers_on_the_table_are_told_their_own_limit() {
    let mut kitchen = cooking();
    kitchen.run_to("2027-11-25 16:00");
    kitchen.say("Rosa", "166/176 wing 170");
    kitchen.say("Rosa", "took it off");
    let still = kitchen.say("Rosa", "leftovers still on table is it ok");
    assert!(still.contains("into the fridge by 6:00 PM"), "{still}");
    kitchen.run_to("2027-11-25 18:10");
    assert!(kitchen.say("Rosa", "leftovers still on table is it ok").contains("two hours are over"));
}

#[test]
fn a_letter_for_a_nought_is_a_nought() {
    let mut kitchen = cooking();
    kitchen.run_to("2027-11-25 15:20");
    let noted = kitchen.say("Rosa", "breast is 15o, thigh 1o8");
    assert!(noted.contains("breast 150 °F and thigh 108 °F"), "{noted}");
}

#[test]
fn what_could_not_be_read_is_answered_with_what_fits_the_stage() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-24 08:00");
    let hint = |kitchen: &mut Kitchen| kitchen.say("Rosa", "florble wug");
    assert!(hint(&mut kitchen).contains("14 lb frozen turkey"));
    kitchen.say("Rosa", "14 lb fresh turkey, we have it, dinner Thursday 6 pm, 11 people, oven at 325");
    let drafted = hint(&mut kitchen);
    assert!(drafted.contains("12 people") && !drafted.contains("frozen"), "{drafted}");
    kitchen.press("Rosa", "Accept");
    let waiting = hint(&mut kitchen);
    assert!(waiting.contains("“done”"), "{waiting}");
    kitchen.say("Rosa", "salted it");
    kitchen.run_to("2027-11-25 13:00");
    kitchen.say("Rosa", "it's in the oven");
    assert!(hint(&mut kitchen).contains("breast 128"), "{}", hint(&mut kitchen));
    kitchen.run_to("2027-11-25 20:00");
    assert!(hint(&mut kitchen).contains("leftovers"), "{}", hint(&mut kitchen));
}

#[test]
fn an_oven_is_called_an_oven_and_a_smoker_s_air_is_not() {
    for (tag, breast, oven, pit) in [
        ("en-US", "breast", "oven", "pit"),
        ("es-ES", "pechuga", "horno", "aire"),
        ("fr-FR", "blanc", "four", "air"),
        ("de-DE", "Brust", "Ofen", "Garraum"),
        ("pt-BR", "peito", "forno", "ar"),
        ("it-IT", "petto", "forno", "camera"),
    ] {
        let mut kitchen = cooking();
        kitchen.run_to("2027-11-25 14:00");
        kitchen.scene.room.taste.language = Some(tag.to_owned());
        kitchen.scene.room.taste.us_units = Some(true);
        let noted = kitchen.say("Rosa", &format!("{breast} 90, {oven} 330"));
        assert!(noted.contains(&format!("{oven} 330")) && !noted.contains(&format!("{pit} 330")), "{tag}: {noted}");
        kitchen.scene.room.plan.as_mut().unwrap().wish.cooker = Some("smoker".into());
        let noted = kitchen.say("Rosa", &format!("{breast} 95, {oven} 330"));
        assert!(noted.contains(&format!("{pit} 330")), "{tag}: {noted}");
    }
}

/// What the button is called, typed where a dinner is still being told.
#[test]
fn a_dinner_half_told_is_dropped_by_a_word() {
    let said = [
        ("en-US", "nevermind"),
        ("en-US", "Forget it"),
        ("es-ES", "déjalo"),
        ("de-DE", "doch nicht"),
        ("pt-BR", "deixa pra lá"),
        ("fr-FR", "laisse tomber"),
        ("it-IT", "lascia stare"),
    ];
    for (tag, words) in said {
        let mut kitchen = Kitchen::new(RoomKind::Private, tag, Chicago, "2027-11-24 08:00");
        kitchen.say("Rosa", "/plan 6 kg");
        assert_eq!(kitchen.scene.room.drafts.len(), 1, "{tag}");
        let answer = kitchen.say("Rosa", words);
        assert!(kitchen.scene.room.drafts.is_empty(), "{tag} {words}: {answer}");
    }
}

#[test]
fn one_clause_of_a_story_says_what_was_done() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-25 08:00");
    kitchen.say("Rosa", "14 lb fresh turkey, we have it, no salt, dinner today 5 pm, 11 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-25 11:50");
    assert!(kitchen.say("Rosa", "its in, still a little icy inside").contains("Bird is on"));
    kitchen.run_to("2027-11-25 15:20");
    kitchen.say("Rosa", "167 and 176, wing 170");
    let out = kitchen.say("Rosa", "its out. mom is 50 min away how do i take it hot");
    assert!(out.contains("Off the heat, 3:20 PM") && out.contains("140 °F or hotter"), "{out}");
    assert!(!out.contains("50 min out"), "{out}");
    kitchen.run_to("2027-11-25 16:00");
    kitchen.say("Rosa", "carved");
    kitchen.run_to("2027-11-25 23:00");
    let late = kitchen.say("Rosa", "forgot it on the counter");
    assert!(late.contains("thrown away"), "{late}");
}

#[test]
fn water_that_was_not_changed_is_asked_about() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-25 06:00");
    kitchen.say(
        "Rosa",
        "/plan 10 lb frozen turkey, we have it, thaw in cold water, dinner today 9 pm, 8 people, oven at 325",
    );
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-25 08:30");
    kitchen.say("Rosa", "its in the sink in cold water now");
    kitchen.run_to("2027-11-25 10:00");
    let said = kitchen.say("Rosa", "fell asleep, didnt change the water");
    assert!(said.contains("40 °F or less") && said.contains("throw the bird away"), "{said}");
}

#[test]
fn fuel_that_is_nearly_out_still_burns() {
    let mut kitchen = cooking();
    let said = kitchen.say("Rosa", "almost out of pellets!! maybe 1 hr left");
    assert!(!said.contains("no heat") && said.contains("Pellets for 1 h"), "{said}");
    let wind = kitchen.say("Rosa", "30mph gusts, smoker wont hold temp");
    assert!(
        wind.contains("Out of the wind") && kitchen.scene.room.plan.as_ref().unwrap().readings.is_empty(),
        "{wind}"
    );
}
