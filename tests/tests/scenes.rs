//! Scenes of several people in one group, over the loopback server: each a readable script in `tests/scenes` that says what
//! must be heard. The noise of a calm cook is counted from its transcript.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::stage::Scene;
use chrono::NaiveDate;
use std::sync::Mutex;

macro_rules! scenes {
    ($($name:ident => $script:literal),+ $(,)?) => {
        $(#[test]
        fn $name() {
            Scene::play($script);
        })+

        /// The same when the platform delivers instead of being asked.
        #[test]
        fn every_scene_goes_by_webhook_as_well() {
            let scripts = Mutex::new(vec!["calm", "eight-share", $($script),+]);
            let next = || scripts.lock().unwrap().pop();
            std::thread::scope(|scope| {
                for _ in 0..3 {
                    scope.spawn(|| while let Some(script) = next() {
                        let scene = Scene::play_by_webhook(script);
                        let polled = scene.telegram.calls().iter().filter(|call| call.method == "getUpdates").count();
                        assert_eq!(polled, 0, "{script}");
                    });
                }
            });
        }

        #[test]
        fn every_script_is_played() {
            let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("scenes");
            let mut files: Vec<String> = std::fs::read_dir(folder)
                .unwrap()
                .map(|entry| entry.unwrap().file_name().to_string_lossy().trim_end_matches(".cook").to_string())
                .collect();
            files.sort();
            let mut played = vec!["calm", "eight-share", $($script),+];
            played.sort_unstable();
            assert_eq!(files, played);
        }
    };
}

scenes! {
    two_people_mark_the_same_job => "two-mark-one-job",
    who_asks_in_another_language_is_answered_in_it => "asked-in-their-own",
    dinner_moves_twice => "dinner-moves-twice",
    the_hosts_phone_dies => "host-phone-dies",
    nobody_takes_the_six_o_clock_job => "nobody-takes-six",
    the_group_moves_while_a_call_is_due => "moves-while-calling",
    whoever_sleeps_through_a_job_that_moved_is_let_sleep => "quiet-hours",
    the_bot_is_removed_and_back => "removed-and-back",
    what_a_helper_asks_privately_is_of_the_dinner_they_share => "helper-asks-privately",
    numbers_asked_for_privately_are_heard_in_the_group => "numbers-privately",
    the_host_changes_the_plan_privately => "hosts-words-privately",
    the_drive_crosses_a_time_zone => "drive-across-zones",
    a_bird_is_carried_hot => "hot-drive",
    two_cooks_with_a_bird_each_are_called_for_their_own => "two-birds-two-cooks",
    what_is_said_privately_goes_to_the_bird_it_names => "two-birds-and-one-alone",
    the_whole_table_shares_the_heat => "whole-table",
    second_thoughts_are_asked_and_named => "second-thoughts",
    whoever_blocks_the_bot_is_called_in_the_group => "owner-blocks",
    whoever_lets_the_bot_back_is_greeted_once => "blocks-and-back",
    jobs_are_given_to_people_by_their_usernames => "by-username",
    everyone_is_spoken_to_privately_in_their_own_language => "tongues",
}

#[test]
fn numbers_sent_privately_stand_in_the_groups_plan_once() {
    let scene = Scene::play("numbers-privately");
    let room = scene.engine.pages().room(carvetime::room::RoomId(scene.group)).unwrap().unwrap();
    let readings = room.plan.unwrap().readings;
    let breasts: Vec<f64> = readings.iter().filter_map(|reading| reading.breast_c).collect();
    assert_eq!(breasts.len(), 1, "Tom's, not Ana's: {readings:?}");
    assert!((breasts[0] - 47.8).abs() < 0.1, "118 °F: {breasts:?}");
}

/// At most so many new messages in the group before the day, and on it.
const BEFORE: usize = 12;
const ON_THE_DAY: usize = 20;

/// What each person took, by a word of the call; the host is asked how it was.
const JOBS: [(&str, &[&str]); 4] = [
    ("Rosa", &["to thaw", "Bird on", "about done", "off the heat", "Off the heat:", "Leftovers", "How was it?"]),
    ("Tom", &["Salt the bird", "Time for a look"]),
    ("Ana", &["Heat the oven", "Time to carve"]),
    ("Li", &["Bird out of the fridge", "into the fridge by"]),
];

/// New messages in the group before the day and on it. Edits notify nobody and don't count.
fn noise(scene: &Scene, day: NaiveDate) -> (usize, usize) {
    let group = scene.telegram.heard(scene.group);
    let dates = || group.iter().map(|(at, _)| at.with_timezone(&scene.zone).date_naive());
    (dates().filter(|date| *date < day).count(), dates().filter(|date| *date == day).count())
}

#[test]
fn a_calm_cook_is_quiet_and_calls_nobody_for_what_is_not_theirs() {
    let scene = Scene::play("calm");
    let day = NaiveDate::from_ymd_opt(2027, 11, 25).unwrap();
    let (before, on) = noise(&scene, day);
    let mut private = Vec::new();
    for (name, jobs) in JOBS {
        let calls: Vec<String> = scene
            .telegram
            .heard(scene.id(name))
            .into_iter()
            .map(|(_, text)| text)
            .filter(|text| !text.starts_with("I keep the plan") && !text.starts_with("Noted")) // answers, not calls
            .collect();
        for call in &calls {
            assert!(jobs.iter().any(|job| call.contains(job)), "{name} is called for {call:?}\n{}", scene.transcript());
        }
        private.push((name, calls.len()));
    }
    eprintln!("new messages in the group: {before} before the day, {on} on it; private calls {private:?}");
    assert!(before <= BEFORE, "{before} before the day:\n{}", scene.transcript());
    assert!(on <= ON_THE_DAY, "{on} on the day:\n{}", scene.transcript());
    // It was no silence either: each job was called, to whoever had it.
    assert!(private.iter().all(|(_, calls)| *calls >= 2), "{private:?}");
}

#[test]
fn eight_people_are_no_louder_than_four_and_none_hears_of_what_is_not_theirs() {
    let scene = Scene::play("eight-share");
    let (before, on) = noise(&scene, NaiveDate::from_ymd_opt(2027, 11, 25).unwrap());
    eprintln!("eight: {before} new messages in the group before the day, {on} on it");
    assert!(before <= BEFORE, "{before} before the day:\n{}", scene.transcript());
    assert!(on <= ON_THE_DAY, "{on} on the day:\n{}", scene.transcript());
    // Each job was called to whoever had it at last, and to nobody who had given it away.
    let hears =
        |name: &str, call: &str| scene.telegram.heard(scene.id(name)).iter().any(|(_, text)| text.contains(call));
    for (name, call) in
        [("Eva", "Salt the bird: neck"), ("Ana", "Heat the oven"), ("Max", "Bird on."), ("Max", "Time for a look")]
    {
        assert!(hears(name, call), "{name} is not called: {call}\n{}", scene.transcript());
    }
    for (name, call) in
        [("Tom", "Salt the bird: neck"), ("Li", "Bird out of the fridge"), ("Rosa", "Bird on."), ("Eva", "Bird on.")]
    {
        assert!(!hears(name, call), "{name} is called: {call}\n{}", scene.transcript());
    }
}
