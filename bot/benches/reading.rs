//! How long it takes to read what people type: a plan, a question, five thousand characters.
#![allow(missing_docs, clippy::unwrap_used)]

use carvetime::ask::{Asker, ask};
use carvetime::reading::{Ground, Lexicon, read_log, read_wish, read_zone};
use carvetime_core::plan::Moment;
use divan::{Bencher, black_box};

const ZONE: chrono_tz::Tz = chrono_tz::America::Chicago;

fn main() {
    divan::main();
}

fn now() -> Moment {
    "2027-11-23T00:30:00Z".parse().unwrap()
}

fn ground() -> Ground {
    Ground::new("en-US", false, ZONE, now())
}

#[divan::bench]
fn a_plan_sentence(bencher: Bencher) {
    let ground = ground();
    let text = "14.5 lb frozen turkey, dinner Thursday 5 pm, 11 people, smoker at 325";
    bencher.bench(|| read_wish(black_box(text), &ground));
}

#[divan::bench]
fn a_plan_sentence_full_of_slips(bencher: Bencher) {
    let ground = ground();
    let text = "14.5 lb frozn trukey, diner thrusday 5 pm, 11 poeple, smokr at 325";
    bencher.bench(|| read_wish(black_box(text), &ground));
}

#[divan::bench]
fn a_reading(bencher: Bencher) {
    let ground = ground();
    bencher.bench(|| read_log(black_box("breast 128, thigh 141, pit 335 at 14:05"), &ground));
}

#[divan::bench]
fn a_question_with_its_answer(bencher: Bencher) {
    let asker = Asker::new("en-US", ZONE, now());
    bencher.bench(|| ask(black_box("2 tbsp table salt in flake kosher"), &asker));
}

#[divan::bench]
fn five_thousand_characters(bencher: Bencher) {
    let ground = ground();
    let text = "the turky and seven frends came at half past somethng ".repeat(93);
    bencher.bench(|| read_wish(black_box(&text), &ground));
}

#[divan::bench]
fn a_city_with_a_slip(bencher: Bencher) {
    read_zone("Dallas");
    bencher.bench(|| read_zone(black_box("Dalas")));
}

/// What the first message of a language waits for.
#[divan::bench(sample_count = 20)]
fn a_lexicon_already_read(bencher: Bencher) {
    bencher.bench(|| Lexicon::of(black_box("es-MX")));
}
