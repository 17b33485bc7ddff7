//! A short round of made-up input for every reader; the long ones are the program `fuzz`.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::fuzz::{LONGEST, TARGETS, Target, round};

#[test]
fn no_reader_fails_on_made_up_input() {
    for target in &TARGETS {
        let result = round(target, 0, |tried| tried >= target.short);
        assert_eq!(result.tried, target.short);
        assert!(result.failed.is_empty(), "{}: {:#?}", target.name, result.failed);
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
