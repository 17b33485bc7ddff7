//! A bird over the heat: readings in, forecast, alarms and choices out.
//!
//! The numbers of the cooks below are those of synthetic logs (`tests/cooks`), thinned.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;
#[path = "common/stretched.rs"]
mod stretched;

use carvetime::picture;
use carvetime::room::turn::FileContent;
use carvetime::room::{Document, RoomKind, What};
use carvetime::words::Reader;
use carvetime_core::plan::Step;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

/// A fresh 14 lb bird in the oven since 11:35, dinner at five.
fn on() -> Kitchen {
    of("14 lb fresh turkey, we have it, dinner Thursday 5 pm, 11 people, oven at 325, no salt", "2027-11-25 11:35")
}

fn of(wish: &str, on: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-24 18:00");
    kitchen.say("Rosa", &format!("/plan {wish}"));
    kitchen.press("Rosa", "Accept");
    kitchen.run_to(on);
    let data = "done.1.on.0".to_owned();
    kitchen.hear(Some("Tom"), What::Pressed { press: "p".into(), data, on: None });
    kitchen
}

/// Says at that time of the day.
fn at(kitchen: &mut Kitchen, time: &str, text: &str) -> String {
    kitchen.run_to(&format!("2027-11-25 {time}"));
    kitchen.say("Tom", text)
}

fn job_at(kitchen: &Kitchen, step: Step) -> String {
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    plan.jobs
        .iter()
        .rfind(|job| job.step() == Some(step))
        .unwrap()
        .at
        .with_timezone(&Chicago)
        .format("%H:%M")
        .to_string()
}

fn readings(kitchen: &Kitchen) -> usize {
    kitchen.scene.room.plan.as_ref().unwrap().counted().len()
}

#[test]
fn a_reading_is_answered_with_when_it_will_be_done() {
    let mut kitchen = on();
    at(&mut kitchen, "12:25", "breast 54, thigh 72, pit 319");
    let said = at(&mut kitchen, "13:55", "125/142/322");
    assert!(said.contains("Noted: breast 125 °F, thigh 142 °F"), "{said}");
    for words in ["About ", " PM to ", "to spare", "look again at "] {
        assert!(said.contains(words), "{words:?} is not in {said}");
    }
}

#[test]
fn the_board_and_the_jobs_follow_the_forecast() {
    let mut kitchen = on();
    at(&mut kitchen, "12:25", "breast 54, thigh 72, pit 319");
    at(&mut kitchen, "13:55", "breast 102, thigh 123, pit 319");
    let slow = job_at(&kitchen, Step::Pull);
    let mut kitchen = on();
    at(&mut kitchen, "12:25", "breast 60, thigh 80, pit 325");
    let board = at(&mut kitchen, "13:55", "breast 142, thigh 159, pit 325");
    let quick = job_at(&kitchen, Step::Pull);
    assert!(quick < slow, "{quick} and {slow}");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert!(plan.ready_from.unwrap() <= plan.ready_to.unwrap());
    assert!(board.contains("Off the heat "), "{board}");
}

#[test]
fn the_next_look_is_asked_for_when_it_tells_most() {
    let mut kitchen = on();
    at(&mut kitchen, "12:25", "breast 54, thigh 72, pit 319");
    let waiting = |kitchen: &Kitchen| {
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        plan.waiting().filter(|job| job.step() == Some(Step::Check)).count()
    };
    assert_eq!(waiting(&kitchen), 1);
    let far = job_at(&kitchen, Step::Check);
    assert!(("13:05".."13:15").contains(&far.as_str()), "{far}");
    at(&mut kitchen, "14:25", "breast 142, thigh 159, pit 320");
    assert_eq!(waiting(&kitchen), 1);
    let near = job_at(&kitchen, Step::Check);
    assert!(("14:35".."14:46").contains(&near.as_str()), "{near}");
}

#[test]
fn a_missing_digit_is_asked_about_and_not_believed() {
    let mut kitchen = on();
    at(&mut kitchen, "12:25", "breast 54, thigh 72, pit 319");
    at(&mut kitchen, "13:25", "breast 102, thigh 123");
    let before = readings(&kitchen);
    let said = at(&mut kitchen, "13:40", "breast 18");
    assert!(said.contains("Breast at 18 °F? 118 °F would fit"), "{said}");
    assert!(said.contains("[It's breast 118 °F]") && said.contains("[Yes] [No]"), "{said}");
    assert_eq!(readings(&kitchen), before);
    assert!(kitchen.press("Tom", "No").contains("Left out"));
    assert_eq!(readings(&kitchen), before);
    at(&mut kitchen, "13:42", "breast 18");
    let taken = kitchen.press("Tom", "It's breast 118 °F");
    assert!(taken.contains("Noted: breast 118 °F"), "{taken}");
    assert_eq!(readings(&kitchen), before + 1);
}

#[test]
fn celsius_typed_as_fahrenheit_is_recognised() {
    let mut kitchen = on();
    at(&mut kitchen, "12:25", "breast 54, thigh 72, pit 319");
    at(&mut kitchen, "13:55", "breast 125, thigh 142");
    let said = at(&mut kitchen, "14:25", "breast 61, thigh 165");
    assert!(said.contains("Breast at 61 °F? If that was °C, it's 142 °F"), "{said}");
    assert!(said.contains("Noted: thigh 165 °F"), "what is plausible is kept: {said}");
}

#[test]
fn a_reading_someone_stands_by_counts() {
    let mut kitchen = on();
    at(&mut kitchen, "12:25", "breast 54, thigh 72, pit 319");
    at(&mut kitchen, "13:55", "breast 125, thigh 142");
    at(&mut kitchen, "14:25", "breast 61");
    kitchen.press("Tom", "Yes");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert!(plan.counted().last().unwrap().sure);
}

#[test]
fn nobody_else_answers_for_the_one_who_was_asked() {
    let mut kitchen = on();
    at(&mut kitchen, "12:25", "breast 54, thigh 72, pit 319");
    at(&mut kitchen, "13:25", "breast 18");
    assert!(kitchen.press("Lena", "Yes").contains("(notice)"));
}

#[test]
fn an_edited_message_takes_the_place_of_the_reading_and_undo_brings_it_back() {
    let mut kitchen = on();
    at(&mut kitchen, "12:25", "breast 54, thigh 72, pit 319");
    at(&mut kitchen, "13:25", "breast 110");
    kitchen.run_to("2027-11-25 13:30");
    let edit = What::Said { text: "breast 101".into(), addressed: true, reply_to: None, edited: true };
    kitchen.hear(Some("Tom"), edit);
    let breasts = |kitchen: &Kitchen| -> Vec<i64> {
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        plan.counted().iter().filter_map(|reading| Some((reading.breast_c? * 1.8 + 32.0).round() as i64)).collect()
    };
    assert_eq!(breasts(&kitchen), [54, 101]);
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert_eq!(plan.counted().last().unwrap().at, kitchen.local("2027-11-25 13:25"), "it was read when it was read");
    kitchen.say("Tom", "/undo");
    assert_eq!(breasts(&kitchen), [54, 110]);
}

#[test]
fn dinner_at_risk_is_told_once_with_ways_out() {
    let mut kitchen = on();
    at(&mut kitchen, "13:00", "breast 60, thigh 70, pit 290");
    at(&mut kitchen, "14:30", "breast 96, thigh 108, pit 290");
    at(&mut kitchen, "15:10", "breast 111, thigh 123, pit 290");
    let late = at(&mut kitchen, "15:40", "breast 121, thigh 133, pit 290");
    assert!(late.contains("too late for dinner"), "{late}");
    assert!(late.contains("Dinner can move") && late.contains("[Dinner ") && late.contains("[Heat to "), "{late}");
    let again = at(&mut kitchen, "15:50", "breast 124, thigh 136, pit 290");
    assert!(!again.contains("Dinner can move"), "{again}");
    let moved = {
        let said = late.split("[Dinner ").nth(1).unwrap().split(']').next().unwrap().to_owned();
        kitchen.press("Rosa", &format!("Dinner {said}"))
    };
    assert!(moved.contains("Dinner is now"), "{moved}");
    assert!(at(&mut kitchen, "16:10", "breast 130, thigh 142, pit 290").contains("About "));
}

#[test]
fn only_the_host_turns_the_pit_up() {
    let mut kitchen = on();
    at(&mut kitchen, "13:30", "breast 60, thigh 72, pit 322");
    let press = |data: &str| What::Pressed { press: "p".into(), data: data.into(), on: None };
    assert!(kitchen.hear(Some("Tom"), press("hotter.1.350")).contains("(notice)"));
    assert!(kitchen.hear(Some("Rosa"), press("hotter.1.900")).contains("(notice)"), "no such setting is offered");
    assert!(kitchen.hear(Some("Rosa"), press("hotter.1.350")).contains("350 °F now"));
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert!((plan.wish.setting_c.unwrap() - 176.67).abs() < 0.01);
}

#[test]
fn done_early_comes_with_a_clock() {
    let mut kitchen = on();
    let mut early = at(&mut kitchen, "12:25", "breast 75, thigh 95, pit 350");
    early += &at(&mut kitchen, "13:15", "breast 132, thigh 150, pit 350");
    early += &at(&mut kitchen, "13:35", "breast 150, thigh 166, pit 350");
    assert_eq!(early.matches("well before dinner at 5:00 PM. Hold it hot").count(), 1, "{early}");
    let done = at(&mut kitchen, "13:50", "breast 166, thigh 180, pit 350");
    assert!(done.contains("165 °F in both") && done.contains("[Off the heat]"), "{done}");
    let off = kitchen.press("Tom", "Off the heat");
    assert!(off.contains("it came off at 1:50 PM") && off.contains("in the fridge by 3:50 PM"), "{off}");
    let limit = kitchen.run_to("2027-11-25 15:35");
    assert!(limit.contains("Off the heat since 1:50 PM. Measure it"), "{limit}");
}

#[test]
fn a_dying_fire_is_called_once() {
    let mut kitchen = of(
        "12 lb fresh turkey, we have it, dinner Thursday 5 pm, 9 people, smoker at 325, no salt",
        "2027-11-25 12:00",
    );
    at(&mut kitchen, "12:30", "breast 48, thigh 55, pit 324");
    at(&mut kitchen, "13:00", "breast 68, thigh 80, pit 318");
    at(&mut kitchen, "13:20", "breast 82, thigh 96, pit 270");
    let dying = at(&mut kitchen, "13:40", "breast 92, thigh 107, pit 236");
    assert!(dying.contains("The fire is dying") && dying.contains("236 °F"), "{dying}");
    let again = at(&mut kitchen, "13:50", "breast 96, thigh 110, pit 222");
    assert!(!again.contains("The fire is dying"), "{again}");
}

#[test]
fn a_cold_pit_over_a_cold_bird_is_a_matter_of_safety() {
    let mut kitchen = of(
        "12 lb fresh turkey, we have it, dinner Thursday 5 pm, 9 people, smoker at 325, no salt",
        "2027-11-25 12:00",
    );
    at(&mut kitchen, "12:30", "breast 48, thigh 55, pit 220");
    at(&mut kitchen, "13:00", "breast 56, thigh 66, pit 190");
    let warned = at(&mut kitchen, "13:35", "breast 62, thigh 72, pit 170");
    assert!(warned.contains("under 225 °F for 1 h 5 min") && warned.contains("Two hours of this"), "{warned}");
    let over = at(&mut kitchen, "14:35", "breast 70, thigh 80, pit 160");
    assert!(over.contains("past the two-hour limit"), "{over}");
}

#[test]
fn when_comes_with_a_picture_that_says_the_same() {
    let mut kitchen = on();
    at(&mut kitchen, "12:25", "breast 54, thigh 72, pit 319");
    at(&mut kitchen, "13:55", "breast 125, thigh 142, pit 322");
    let said = at(&mut kitchen, "14:00", "/when");
    assert!(said.contains("About ") && said.contains("Breast: now "), "{said}");
    let say = kitchen.said.last().unwrap();
    let file = say.file.as_ref().unwrap();
    let FileContent::Picture(chart) = &file.content else { panic!("{file:?}") };
    assert_eq!(chart.spots.iter().map(|spot| spot.read.len()).collect::<Vec<_>>(), [2, 2]);
    let voice = stretched::voice();
    for tag in ["en-US", "es-ES", "de-DE", "fr-FR", "it-IT", "pt-BR", stretched::STRETCHED] {
        let reader = Reader::new(tag, Chicago, kitchen.now);
        let png = picture::draw(chart, &voice, &reader).unwrap();
        assert!(png.starts_with(b"\x89PNG") && png.len() > 5_000 && png.len() < 500_000, "{}", png.len());
        if let Some(folder) = std::env::var_os("CARVETIME_PICTURES") {
            std::fs::write(std::path::Path::new(&folder).join(format!("{tag}.png")), &png).unwrap();
        }
        assert!(is_blank_at_its_edges(&png), "{tag}: something is cut off");
    }
}

/// The tables ask 23 s and more of 160 °F: what is to come is said as that, with the mark that stays.
#[test]
fn a_pull_below_the_mark_is_told_with_what_the_tables_ask() {
    let foretold = "left uncarved for 20 min, heat and time would add up";
    let cook = |wish: &str| {
        let mut kitchen = of(wish, "2027-11-25 11:30");
        for (time, text) in [
            ("12:00", "breast 49, thigh 51"),
            ("12:30", "breast 75, thigh 81"),
            ("13:00", "breast 113, thigh 121"),
            ("13:20", "breast 136, thigh 145"),
            ("13:40", "breast 155, thigh 166"),
        ] {
            at(&mut kitchen, time, text);
        }
        kitchen
    };
    let mut kitchen = cook("12 lb fresh turkey, we have it, dinner Thursday 5 pm, 9 people, smoker at 325, no salt");
    assert!(!at(&mut kitchen, "13:41", "/when").contains("tables"), "of 155 °F it is not spoken");
    at(&mut kitchen, "13:47", "breast 160, thigh 171");
    let said = at(&mut kitchen, "13:48", "/when");
    assert!(said.contains(foretold) && said.contains("160 °F needs") && said.contains("stays 165 °F"), "{said}");
    at(&mut kitchen, "13:54", "breast 166, thigh 177");
    assert!(!at(&mut kitchen, "13:55", "/when").contains(foretold), "it is at its mark");
    // The tables say nothing of stuffing.
    let mut stuffed =
        cook("12 lb fresh turkey, stuffed, we have it, dinner Thursday 5 pm, 9 people, smoker at 325, no salt");
    at(&mut stuffed, "13:47", "breast 160, thigh 171");
    assert!(!at(&mut stuffed, "13:48", "/when").contains("tables"));
}

fn is_blank_at_its_edges(png: &[u8]) -> bool {
    let mut decoder = png::Decoder::new(std::io::Cursor::new(png)).read_info().unwrap();
    let mut pixels = vec![0; decoder.output_buffer_size().unwrap()];
    let frame = decoder.next_frame(&mut pixels).unwrap();
    let (wide, tall) = (frame.width as usize, frame.height as usize);
    let edge = |x: usize, y: usize| x < 8 || y < 8 || x >= wide - 8 || y >= tall - 8;
    let ground = pixels[..3].to_vec();
    (0..tall).all(|y| (0..wide).all(|x| !edge(x, y) || pixels[(y * wide + x) * 3..][..3] == ground[..]))
}

#[test]
fn the_cooker_teaches_its_host_once() {
    let mut kitchen = on();
    for (time, text) in [
        ("12:25", "breast 54, thigh 72, pit 319"),
        ("13:10", "breast 82, thigh 102, pit 320"),
        ("13:55", "breast 115, thigh 134, pit 320"),
        ("14:40", "breast 142, thigh 159, pit 320"),
        ("15:20", "breast 166, thigh 180, pit 320"),
    ] {
        at(&mut kitchen, time, text);
    }
    kitchen.press("Tom", "Off the heat");
    kitchen.run_to("2027-11-25 18:30");
    let rosa = kitchen.scene.people.values().find(|person| person.name == "Rosa").unwrap();
    let oven = rosa.profiles.get("oven").unwrap();
    assert_eq!(oven.cooks, 1);
    assert!((0.5..2.0).contains(&oven.speed), "{oven:?}");
}

#[test]
fn from_frozen_there_is_no_forecast_to_trust() {
    let mut kitchen = of(
        "12 lb frozen turkey, we have it, dinner Thursday 7 pm, 9 people, oven at 325, cook it from frozen",
        "2027-11-25 11:00",
    );
    let said = at(&mut kitchen, "13:00", "breast 34, thigh 36, pit 325");
    assert!(!said.contains("About "), "{said}");
}

fn send(kitchen: &mut Kitchen, time: &str, text: &str) -> String {
    kitchen.run_to(&format!("2027-11-25 {time}"));
    let content = Document::Text(text.to_owned());
    kitchen.hear(Some("Tom"), What::Document { name: "cook.csv".into(), content })
}

#[test]
fn a_log_joins_the_readings_and_undo_takes_it_out_again() {
    let mut kitchen = on();
    let log = "minutes,pit_f,breast_f,thigh_f\n20,315,44,50\n50,319,54,72\n80,320,78,99\n110,,102,123\n";
    let said = send(&mut kitchen, "13:30", log);
    assert!(said.contains("4 readings from cook.csv, 11:55 AM to 1:25 PM") && said.contains("About "), "{said}");
    assert_eq!(readings(&kitchen), 4);
    let longer = send(&mut kitchen, "14:00", &format!("{log}140,,125,142\n"));
    assert!(longer.contains("One reading from cook.csv"), "what is known already is no news: {longer}");
    assert_eq!(readings(&kitchen), 5);
    kitchen.say("Tom", "/undo");
    assert_eq!(readings(&kitchen), 4);
}

#[test]
fn times_of_day_in_a_log_are_the_kitchens() {
    let mut kitchen = on();
    let said = send(&mut kitchen, "13:30", "Time;Breast (°C);Thigh (°C)\n12:25;12,0;22,0\n13:25;39,0;51,0\n");
    assert!(said.contains("2 readings from cook.csv, 12:25 PM to 1:25 PM"), "{said}");
}

#[test]
fn a_log_that_cannot_be_read_is_answered_with_its_line() {
    let mut kitchen = on();
    let said = send(&mut kitchen, "13:30", "minutes,breast_f\n20,44\n50,warm\n");
    assert!(said.contains("Line 3") && said.contains("warm"), "{said}");
    let large = What::Document { name: "cook.csv".into(), content: Document::TooLarge };
    assert!(kitchen.hear(Some("Tom"), large).contains("2 MB"));
    assert_eq!(readings(&kitchen), 0);
}

#[test]
fn a_long_log_is_thinned() {
    let mut kitchen = on();
    let rows: String = (0..7200)
        .map(|s| {
            format!(
                "{:.3},320,{:.1},{:.1}\n",
                f64::from(s) / 60.0,
                40.0 + f64::from(s) / 110.0,
                42.0 + f64::from(s) / 90.0
            )
        })
        .collect();
    let said = send(&mut kitchen, "13:40", &format!("minutes,pit_f,breast_f,thigh_f\n{rows}"));
    assert!(said.contains("About "), "{said}");
    assert!((200..=240).contains(&readings(&kitchen)));
}

#[test]
fn readings_before_anyone_said_that_it_is_on_ask_and_move_nothing() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-24 18:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, we have it, dinner Thursday 5 pm, 11 people, oven at 325, no salt");
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-25 11:00");
    let before = job_at(&kitchen, Step::On);
    let said = kitchen.say("Tom", "/log breast 46, thigh 52, pit 325");
    assert!(said.contains("Nobody has told me that the bird is on") && said.contains("[Bird is on]"), "{said}");
    assert_eq!(job_at(&kitchen, Step::On), before);
}

/// A turkey that was doing well until the rain came.
fn rained_on() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-20 09:30");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, dinner 2027-11-25 17:00, 11 people, smoker at 300");
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-25 10:30");
    kitchen.say("Rosa", "it's on");
    for (at, reading) in [("11:30", "breast 92"), ("12:00", "breast 115")] {
        kitchen.run_to(&format!("2027-11-25 {at}"));
        kitchen.say("Rosa", reading);
    }
    kitchen
}

#[test]
fn a_bird_that_cools_over_the_heat_is_an_alarm_and_no_finish_time() {
    let mut kitchen = rained_on();
    kitchen.run_to("2027-11-25 12:20");
    let first = kitchen.say("Rosa", "breast 112");
    assert!(!first.contains("is cooling"), "one lower reading is scatter: {first}");
    kitchen.run_to("2027-11-25 12:40");
    let second = kitchen.say("Rosa", "breast 109");
    assert!(
        second.contains("The breast is cooling: 115 °F, now 109 °F") && second.contains("Is the fire out?"),
        "{second}"
    );
    assert!(second.contains("No finish time while it cools") && !second.contains("to spare"), "{second}");
    kitchen.run_to("2027-11-25 13:00");
    let third = kitchen.say("Rosa", "breast 106");
    assert!(!third.contains("is cooling"), "said once: {third}");
    kitchen.run_to("2027-11-25 14:10");
    let over = kitchen.say("Rosa", "breast 100");
    assert!(over.contains("past the two-hour limit") && over.contains("I wouldn't serve it"), "{over}");
}

#[test]
fn a_cold_pit_over_a_cooling_bird_is_no_slip_of_the_finger() {
    let mut kitchen = rained_on();
    kitchen.run_to("2027-11-25 12:30");
    let told = kitchen.say("Rosa", "breast 109, pit 90");
    assert!(!told.contains("would fit") && told.contains("pit 90 °F"), "{told}");
    assert!(told.contains("The breast is cooling"), "{told}");
}

#[test]
fn of_several_readings_of_a_spot_the_coldest_counts_and_the_wing_is_heard() {
    let mut kitchen = rained_on();
    kitchen.run_to("2027-11-25 13:30");
    let two = kitchen.say("Rosa", "breast 166, breast 158, thigh 175");
    assert!(two.contains("breast 158 °F") && two.contains("The thigh is there, the breast isn't"), "{two}");
    kitchen.run_to("2027-11-25 14:00");
    let wing = kitchen.say("Rosa", "breast 167, thigh 176, wing 159");
    assert!(wing.contains("wing 159 °F") && wing.contains("the wing isn't"), "{wing}");
    assert!(!wing.contains("[Off the heat]"), "{wing}");
    let off = kitchen.say("Rosa", "took it off");
    assert!(off.contains("The wing read 159 °F") && off.contains("Does it read that now?"), "{off}");
    let carved = kitchen.say("Rosa", "carved it");
    assert!(carved.contains("Under 165 °F it goes back into the heat"), "{carved}");
}

#[test]
fn stuffing_read_too_cold_keeps_the_bird_in() {
    let mut kitchen = rained_on();
    kitchen.run_to("2027-11-25 13:50");
    kitchen.say("Rosa", "stuffing 140");
    kitchen.run_to("2027-11-25 14:00");
    let both = kitchen.say("Rosa", "breast 167, thigh 176");
    assert!(both.contains("the stuffing isn't") && !both.contains("[Off the heat]"), "{both}");
}

/// Done at noon, and said to be kept hot until carving.
fn kept_hot(said: &str) -> (Kitchen, String) {
    let mut kitchen = on();
    at(&mut kitchen, "13:40", "breast 166, thigh 175, wing 170");
    kitchen.run_to("2027-11-25 13:50");
    let off = kitchen.say("Tom", said);
    (kitchen, off)
}

#[test]
fn a_bird_kept_hot_that_reads_less_has_two_hours_from_the_heat() {
    let (mut kitchen, off) = kept_hot("k took it out");
    assert!(off.contains("Off the heat, Tom, 1:50 PM"), "{off}");
    kitchen.press("Tom", "Kept hot");
    let cold = at(&mut kitchen, "14:30", "breast 131");
    assert!(cold.contains("131 °F is under 140 °F") && cold.contains("by 3:50 PM"), "{cold}");
    let limit = kitchen.run_to("2027-11-25 15:55");
    assert!(limit.contains("The two hours are over"), "{limit}");
}

#[test]
fn a_hot_one_keeps_its_hold() {
    let (mut kitchen, _) = kept_hot("took it out");
    kitchen.press("Tom", "Kept hot");
    assert!(!at(&mut kitchen, "14:30", "breast 151").contains("that isn’t kept hot"));
}

#[test]
fn what_was_done_counts_beside_a_question() {
    let (_, off) = kept_hot("pulled it. its kinda pink tho, is that ok?");
    assert!(off.contains("Off the heat, Tom, 1:50 PM") && off.contains("whatever the color"), "{off}");
}

#[test]
fn what_comes_out_hot_came_out_of_the_heat() {
    let wish = "14 lb fresh turkey, we have it, dinner Thursday 5 pm, 11 people, oven at 325, no salt";
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-24 18:00");
    kitchen.say("Rosa", &format!("/plan {wish}"));
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-25 12:20");
    kitchen.say("Rosa", "breast 166 thigh 175 wing 170. its done way too early!!");
    let out = kitchen.say("Rosa", "its out");
    assert!(out.contains("Off the heat") && !out.contains("Dried and buttered,"), "{out}");
    assert!(kitchen.scene.room.plan.as_ref().unwrap().is_off());
}

#[test]
fn hours_over_a_dead_fire_are_not_undone_by_an_oven() {
    let mut kitchen = of(
        "14 lb fresh turkey, we have it, dinner Thursday 5 pm, 11 people, smoker at 275, no salt",
        "2027-11-25 08:30",
    );
    at(&mut kitchen, "09:30", "breast 60, thigh 66, pit 270");
    at(&mut kitchen, "10:30", "breast 90, thigh 96, pit 140");
    at(&mut kitchen, "11:30", "breast 100, thigh 106, pit 160");
    let over = at(&mut kitchen, "12:40", "breast 106, thigh 112");
    assert!(over.contains("past the two-hour limit. I wouldn't serve it"), "{over}");
    at(&mut kitchen, "12:45", "pit 325");
    let done = at(&mut kitchen, "14:50", "breast 166, thigh 172, wing 170");
    assert!(
        done.contains("cooking doesn’t undo that. I wouldn’t serve it") && !done.contains("off it comes"),
        "{done}"
    );
}

#[test]
fn an_hour_of_tomorrow_is_told_with_its_day() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-25 08:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, we have it, dinner today 8 pm, 11 people, oven at 325, no salt");
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-25 21:30");
    kitchen.say("Rosa", "bird is on");
    kitchen.run_to("2027-11-25 22:40");
    let said = kitchen.say("Rosa", "breast 60 thigh 75");
    assert!(said.contains("About Fri ") && said.contains("look again at 1"), "{said}");
    assert!(said.contains("[Dinner Fri "), "{said}");
    assert!(!said.contains(" to Fri"), "beside the hour it is about, the same day needs no name: {said}");
    kitchen.run_to("2027-11-26 00:10");
    let said = kitchen.say("Rosa", "breast 130 thigh 140");
    assert!(!said.contains("About Fri"), "{said}");
}
