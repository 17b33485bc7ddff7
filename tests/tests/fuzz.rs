//! A short round of made-up input for every reader; the long ones are the program `fuzz`.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::fuzz::{HANG, LONGEST, Reads, TARGETS, Target, processor_time, round};
use std::time::Duration;

/// What counts as hanging here: in an optimised build what counts anywhere, else what is some thirty times slower than all that is
/// slow without the optimiser. Of the processor's time, the fastest of three.
const TOO_LONG: Duration = if cfg!(debug_assertions) { Duration::from_secs(2) } else { HANG };

#[test]
fn no_reader_fails_on_made_up_input() {
    for target in &TARGETS {
        let result = round(target, 0, |tried| tried >= target.short);
        assert_eq!(result.tried, target.short);
        assert!(result.failed.is_empty(), "{}: {:#?}", target.name, result.failed);
        let hung: Vec<_> = result.hung.iter().filter(|(_, took)| *took > TOO_LONG).collect();
        assert!(hung.is_empty(), "{} hangs: {hung:?}", target.name);
    }
}

/// Found by the program `fuzz`: number 10004634 of "sentences" was six hundred times the same unknown word, and took 136 ms; number
/// 5248932 two thousand dates without a space, 76 ms.
#[test]
fn the_same_thing_hundreds_of_times_over_is_read_at_once() {
    let target = TARGETS.iter().find(|target| target.name == "sentences").unwrap();
    for again in ["gluaben ", "/3", "1e"] {
        let text: String = again.chars().cycle().take(LONGEST).collect();
        let mut run = (target.start)();
        let took = (0..3).map(|_| {
            let before = processor_time().unwrap_or_default();
            run(text.as_bytes(), &mut Reads::default()).unwrap();
            processor_time().unwrap_or_default() - before
        });
        // All its readers in all languages together.
        assert!(took.min().unwrap() < TOO_LONG * 6, "{again}");
    }
}

#[test]
fn a_reader_that_hangs_is_found_and_its_input_named() {
    let seeds = || vec![b"2 tbsp table salt".to_vec(), b"salt for a 12 lb turkey".to_vec()];
    let start = || -> carvetime_tests::fuzz::Run {
        Box::new(|bytes, reads| {
            let (began, hangs) = (processor_time(), String::from_utf8_lossy(bytes).contains('½'));
            reads
                .one(|| while hangs && processor_time().zip(began).is_some_and(|(now, then)| now - then < HANG * 2) {});
            Ok(())
        })
    };
    let target = Target { name: "hanging", start, seeds, long: false, short: 0 };
    let result = round(&target, 0, |tried| tried >= 500);
    assert_eq!(result.hung.is_empty(), processor_time().is_none());
    for (number, took) in result.hung {
        assert!(took > HANG && String::from_utf8_lossy(&target.input(number)).contains('½'));
    }
}

#[test]
fn the_same_number_is_the_same_input_and_others_are_others() {
    for target in &TARGETS {
        let inputs: Vec<_> = (0..50).map(|number| target.input(number)).collect();
        assert_eq!(inputs[7], target.input(7), "{}", target.name);
        let mut distinct = inputs.clone();
        distinct.sort();
        distinct.dedup();
        assert!(distinct.len() > 30, "{}: {} of 50 differ", target.name, distinct.len());
    }
}

#[test]
fn a_reader_that_panics_or_answers_wrong_is_found_and_its_input_named() {
    let seeds = || vec![b"2 tbsp table salt".to_vec(), b"salt for a 12 lb turkey".to_vec()];
    let start = || -> carvetime_tests::fuzz::Run {
        Box::new(|bytes, reads| {
            let text = reads.one(|| String::from_utf8_lossy(bytes));
            assert!(!text.contains('½'), "half of what?");
            if text.chars().count() > LONGEST { Err("too long".into()) } else { Ok(()) }
        })
    };
    let target = Target { name: "broken", start, seeds, long: false, short: 0 };
    let result = round(&target, 0, |tried| tried >= 2000);
    assert!(!result.failed.is_empty());
    for (number, what) in result.failed {
        assert!(what.starts_with("half of what?"), "{what}");
        assert!(String::from_utf8_lossy(&target.input(number)).contains('½'));
    }
}
