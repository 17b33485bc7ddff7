//! Worries before the dinner: the bird may go cold, and who is ill or unfinished elsewhere is nobody's worry. What is asked with in each language
//! of illness and lateness is in `habits.rs`.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::ask::{Advice, Asker, Habit, Question, read_question};

fn read(tag: &str, text: &str) -> Option<Question> {
    let now = "2027-11-24T16:00:00Z".parse().unwrap();
    read_question(text, &Asker::new(tag, chrono_tz::America::Chicago, now)).ok()
}

fn habit(tag: &str, text: &str) -> Option<Habit> {
    match read(tag, text) {
        Some(Question::Advice(Advice::Habit(habit))) => Some(habit),
        _ => None,
    }
}

#[test]
fn a_bird_that_may_go_cold_is_a_matter_of_holding_it_hot() {
    for (tag, text) in [
        ("en-US", "what if it drops below 140"),
        ("es-ES", "¿y si baja de 60 grados?"),
        ("fr-FR", "et si elle descend sous 60 degrés ?"),
        ("de-DE", "was wenn sie unter 60 grad fällt"),
        ("pt-BR", "e se cair abaixo de 60 graus?"),
        ("it-IT", "e se scende sotto 60 gradi?"),
    ] {
        assert_eq!(read(tag, text), Some(Question::HoldHot), "{tag}: {text}");
    }
}

#[test]
fn who_speaks_of_something_else_is_not_consoled() {
    for (tag, text) in [
        ("en-US", "grandma gets sick on boats"),
        ("de-DE", "jonas ist krank"),
        ("fr-FR", "il est malade aujourd'hui"),
        ("en-US", "is it done?"),
        ("de-DE", "sie ist noch nicht fertig mit den hausaufgaben"),
    ] {
        assert!(!matches!(habit(tag, text), Some(Habit::Worry | Habit::NotInTime)), "{tag}: {text}");
    }
}
