//! The same cook through Telegram and in rehearsal: in the end the same messages must stand in the chat, though the program is
//! killed on the way. How that is told: `carvetime_tests::kills`.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::fuzz::Chance;
use carvetime_tests::kills::{Kills, SHARED, Story, Tally};

fn check(tally: &Tally) {
    println!("{tally:#?}");
    assert!(tally.is_good(), "{tally:#?}");
}

#[test]
fn a_whole_holiday_goes_on_telegram_as_in_rehearsal_through_kills_and_restarts() {
    let tally = Story::told("fresh-for-eight").play(Kills::AtRest(5));
    check(&tally);
    assert!(tally.kills() >= 5 && tally.repeated == 0, "nothing is sent twice by a program killed at rest: {tally:?}");
}

#[test]
fn a_plan_nobody_answers_goes_on_telegram_as_in_rehearsal() {
    check(&Story::told("cooked-ahead").play(Kills::AtRest(11)));
}

#[test]
fn a_spanish_plan_goes_on_telegram_as_in_rehearsal() {
    check(&Story::told("en-espanol").play(Kills::AtRest(1000)));
}

/// Cooks until there were so many kills: a short run of what the program `soak` does at length. `CARVETIME_SEED` draws other moments.
fn killed(name: &str, wanted: usize, by_webhook: bool) {
    let seed: u64 = std::env::var("CARVETIME_SEED").ok().and_then(|text| text.parse().ok()).unwrap_or(23);
    println!("CARVETIME_SEED={seed}");
    let mut all = Tally::default();
    let mut chance = Chance::new(seed);
    let story = Story::told(name);
    while all.kills() < wanted {
        let kills = Kills::Anywhere { percent: 70, chance: Chance::new(chance.number()), by_webhook };
        all.add(story.play(kills));
    }
    check(&all);
}

#[test]
fn killed_at_any_moment_of_a_cook_it_loses_nothing_and_does_nothing_twice() {
    killed("moves-twice", 20, false);
}

#[test]
fn killed_at_any_moment_while_updates_are_delivered_it_loses_nothing_either() {
    killed("moves-twice", 10, true);
}

#[test]
fn killed_at_any_moment_of_a_shared_cook_everyone_hears_what_is_theirs_and_only_once() {
    killed(SHARED, 10, false);
}
