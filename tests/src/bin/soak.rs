//! The long versions of the durability runs, one after the other, and a table of what came of them.
//!
//! ```text
//! cargo run --release -p carvetime-tests --bin soak -- [--kills 500] [--cooks 10000] [--seed 1]
//! ```
//!
//! First whole cooks on the loopback Bot API, every third by webhook, with at least so many `kill -9` of a real process (`carvetime_tests::kills`; every log
//! the program has is on, and searched for the token), then so many simulated cooks with everything else that can go wrong
//! (`carvetime_tests::sim`). Exit status 1 if anything was lost, done twice, set aside, said in a wrong room, repeated outside its
//! window, or if the token was seen. What failed is printed with the seed that repeats it. A run with 0 of them is left out.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::fuzz::Chance;
use carvetime_tests::kills::{Kills, SHARED, STORIES, Story, Tally};
use carvetime_tests::sim;
use std::process::ExitCode;
use std::time::Instant;

struct Wish {
    kills: usize,
    cooks: u64,
    seed: u64,
}

fn main() -> ExitCode {
    let wish = read_args();
    let began = Instant::now();
    let killed = (wish.kills > 0).then(|| kill(&wish));
    let killed_for = began.elapsed();
    let began = Instant::now();
    let simulated = (wish.cooks > 0).then(|| sim::play_many(wish.seed, wish.cooks, 2));
    let simulated_for = began.elapsed();

    println!();
    println!(
        "{:<11} {:>7} {:>7} {:>9} {:>9} {:>9} {:>6} {:>9} {:>11} {:>6} {:>6} {:>6} {:>7}",
        "run",
        "cooks",
        "kills",
        "faults",
        "updates",
        "messages",
        "lost",
        "repeated",
        "unexpected",
        "wrong",
        "aside",
        "token",
        "minutes"
    );
    let mut good = true;
    if let Some(tally) = killed {
        println!(
            "{:<11} {:>7} {:>7} {:>9} {:>9} {:>9} {:>6} {:>9} {:>11} {:>6} {:>6} {:>6} {:>7.1}",
            "kills",
            tally.cooks,
            tally.kills(),
            tally.kills(),
            tally.updates,
            tally.messages,
            tally.lost.len(),
            tally.repeated,
            tally.unexpected.len(),
            tally.wrong_room,
            tally.set_aside,
            tally.token,
            killed_for.as_secs_f64() / 60.0
        );
        println!("            killed {:?}", tally.kills);
        good &= tally.is_good();
    }
    match simulated {
        None => {}
        Some(Ok(tally)) => {
            let deaths = tally.faults.iter().filter(|(name, _)| name.contains("kill") || name.contains("power"));
            println!(
                "{:<11} {:>7} {:>7} {:>9} {:>9} {:>9} {:>6} {:>9} {:>11} {:>6} {:>6} {:>6} {:>7.1}",
                "simulation",
                tally.cooks,
                deaths.map(|(_, count)| count).sum::<u64>(),
                tally.faults(),
                tally.updates,
                tally.messages,
                0,
                tally.repeated,
                0,
                0,
                tally.set_aside,
                "-",
                simulated_for.as_secs_f64() / 60.0
            );
            println!("            faults {:?}", tally.faults);
        }
        Some(Err((seed, wrong))) => {
            println!("simulation  failed: CARVETIME_SEED={seed}: {wrong}");
            good = false;
        }
    }
    ExitCode::from(u8::from(!good))
}

fn read_args() -> Wish {
    let mut wish = Wish { kills: 500, cooks: 10_000, seed: 1 };
    let mut args = std::env::args().skip(1);
    while let Some(flag) = args.next() {
        let value = args.next().and_then(|text| text.parse::<u64>().ok());
        let value = value.unwrap_or_else(|| panic!("a number after {flag}"));
        match flag.as_str() {
            "--kills" => wish.kills = value as usize,
            "--cooks" => wish.cooks = value,
            "--seed" => wish.seed = value,
            _ => panic!("no flag {flag}"),
        }
    }
    wish
}

/// Cooks until there were as many kills as wished.
fn kill(wish: &Wish) -> Tally {
    let stories: Vec<(&str, Story)> =
        STORIES.into_iter().chain([SHARED]).map(|name| (name, Story::told(name))).collect();
    let mut all = Tally::default();
    for nth in 0.. {
        if all.kills() >= wish.kills {
            break;
        }
        let seed = wish.seed + nth;
        let (name, story) = &stories[nth as usize % stories.len()];
        let tally = story.play(Kills::Anywhere { percent: 70, chance: Chance::new(seed), by_webhook: nth % 3 == 2 });
        if !tally.is_good() {
            println!("{name}, seed {seed}: {tally:#?}");
        }
        all.add(tally);
        eprint!("\r{} kills in {} cooks ", all.kills(), all.cooks);
    }
    all
}
