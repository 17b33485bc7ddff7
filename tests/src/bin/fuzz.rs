//! Feeds every reader made-up input for as long as it is told, and says what came of it.
//!
//! cargo run -p carvetime-tests --bin fuzz -- [--seconds 60] [--first N] [--only NAME] [--number N]
//!
//! `--number N` with `--only` tries that one input and shows it. Exit status 1 if anything failed, or if a reader
//! took longer than 50 ms of processor for a message.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::fuzz::{TARGETS, processor_time, round};
use std::time::{Duration, Instant};

fn main() {
    let (mut seconds, mut first, mut only, mut number) = (60, 0, None, None);
    let mut args = std::env::args().skip(1);
    while let Some(flag) = args.next() {
        let value = args.next().unwrap_or_else(|| panic!("{flag} what?"));
        match flag.as_str() {
            "--seconds" => seconds = value.parse().expect("seconds"),
            "--first" => first = value.parse().expect("a number"),
            "--only" => only = Some(value),
            "--number" => number = Some(value.parse::<u64>().expect("a number")),
            _ => panic!("no flag {flag}"),
        }
    }
    if number.is_none() {
        std::panic::set_hook(Box::new(|_| {}));
    }
    let mut failed = false;
    for target in TARGETS.iter().filter(|target| only.as_ref().is_none_or(|only| only == target.name)) {
        if let Some(number) = number {
            println!("{:?}", String::from_utf8_lossy(&target.input(number)));
        }
        let (began, before) = (Instant::now(), processor_time().unwrap_or_default());
        let until = Duration::from_secs(seconds);
        let result =
            round(
                target,
                number.unwrap_or(first),
                |tried| {
                    if number.is_some() { tried > 0 } else { began.elapsed() >= until }
                },
            );
        println!(
            "{:<11} {:>9} inputs, {:>7.1} s of processor, {} failed, {} hung, slowest {:.1} ms (number {})",
            target.name,
            result.tried,
            (processor_time().unwrap_or_default() - before).as_secs_f64(),
            result.failed.len(),
            result.hung.len(),
            result.slowest.1.as_secs_f64() * 1e3,
            result.slowest.0
        );
        for (number, what) in result.failed.iter().take(5) {
            println!("  {number}: {what}");
        }
        for (number, took) in result.hung.iter().take(5) {
            println!("  {number}: {:.1} ms", took.as_secs_f64() * 1e3);
        }
        failed |= !result.failed.is_empty() || !result.hung.is_empty();
    }
    std::process::exit(i32::from(failed));
}
