//! A small holiday morning: what the program `morning` does for 50,000 kitchens, and draws.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::morning::{quantile, run};
use chrono::TimeDelta;

#[test]
fn two_thousand_kitchens_in_one_minute_are_all_called_in_time() {
    let mut late = run(2_200, TimeDelta::minutes(1));
    assert_eq!((late.missing, late.silent), (0, 0));
    assert_eq!((late.safety.len(), late.due.len()), (22, 2_178));
    let (safety, due) = (quantile(&mut late.safety, 1.0), quantile(&mut late.due, 1.0));
    assert!(safety <= 5.0, "a call that safety hangs on came {safety} s late");
    assert!(due <= 60.0, "a call came {due} s late");
    assert!(quantile(&mut late.safety, 0.0) >= 0.0, "what safety hangs on is not called early");
    assert!(quantile(&mut late.due, 0.0) >= -2400.0, "no call is more than forty minutes early");
    assert!(quantile(&mut late.answers, 1.0) <= 5.0, "whoever asks is answered");
}
