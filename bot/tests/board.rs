//! The board stays short, whatever is planned and whatever has happened.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime::words::{Reader, Voice, plain};
use kitchen::Kitchen;
use proptest::prelude::*;
use std::sync::OnceLock;

/// Fewer lines than this.
const LINES: usize = 20;

/// More than a phone shows of one message at once: letters in all.
const LETTERS: usize = 1500;

fn voice() -> &'static Voice {
    static VOICE: OnceLock<Voice> = OnceLock::new();
    VOICE.get_or_init(Voice::new)
}

/// Every board said so far, in every language. How many there were.
fn check(kitchen: &Kitchen) -> usize {
    let boards = kitchen.said.iter().filter(|say| say.key.as_deref().is_some_and(|key| key.starts_with("board")));
    let mut count = 0;
    for board in boards {
        count += 1;
        for language in voice().languages() {
            let reader = Reader::new(language, kitchen.zone, kitchen.now);
            let text = plain(&voice().render(&board.text, &reader));
            assert!(text.lines().count() < LINES, "{language}:\n{text}");
            assert!(text.chars().count() < LETTERS, "{language}: {} letters:\n{text}", text.chars().count());
        }
    }
    count
}

fn wish() -> impl Strategy<Value = String> {
    let bird = prop::sample::select(vec!["turkey", "goose", "chicken", "stuffed turkey"]);
    let state = prop::sample::select(vec!["fresh", "frozen", "half thawed"]);
    let heat = prop::sample::select(vec!["oven at 325", "smoker at 275", "fan oven"]);
    let more = prop::sample::select(vec![
        "",
        ", thaw in cold water",
        ", cook it the day before",
        ", at my sister's, 1 hour drive",
    ]);
    (3_u32..24, bird, state, 1_u32..9, heat, more).prop_map(|(lb, bird, state, days, heat, more)| {
        format!("/plan {lb} lb {state} {bird}, dinner 2027-11-{:02} 17:00, 9 people, {heat}{more}", 15 + days)
    })
}

#[derive(Debug, Clone)]
enum Deed {
    Run(i64),
    Done,
    Take(&'static str),
    Dish(u8),
    Read(u16),
    Move(i64),
}

fn deed() -> impl Strategy<Value = Deed> {
    prop_oneof![
        (1_i64..40).prop_map(Deed::Run),
        Just(Deed::Done),
        prop::sample::select(vec!["salt", "fire", "carve", "chill", "on"]).prop_map(Deed::Take),
        (0_u8..12).prop_map(Deed::Dish),
        (60_u16..170).prop_map(Deed::Read),
        (-2_i64..4).prop_map(Deed::Move),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 24, ..ProptestConfig::default() })]

    #[test]
    fn a_board_is_short(wish in wish(), deeds in prop::collection::vec(deed(), 0..16)) {
        let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", chrono_tz::America::Chicago, "2027-11-15 09:00");
        kitchen.say("A rather long name for a cook", &wish);
        let offered = kitchen.said.last().is_some_and(|say| say.buttons.iter().flatten().any(|b| b.data.starts_with("accept")));
        prop_assume!(offered);
        kitchen.press("A rather long name for a cook", "Accept");
        let mut hours = 0;
        for (nth, deed) in deeds.into_iter().enumerate() {
            let who = ["A rather long name for a cook", "Tom", "Wilhelmina Featherstone"][nth % 3];
            match deed {
                Deed::Run(more) => {
                    hours += more;
                    let at = chrono::NaiveDate::from_ymd_opt(2027, 11, 15).unwrap().and_hms_opt(9, 0, 0).unwrap();
                    let at = at + chrono::TimeDelta::hours(hours);
                    kitchen.run_to(&at.format("%Y-%m-%d %H:%M").to_string());
                }
                Deed::Done => drop(kitchen.say(who, "done")),
                Deed::Take(job) => drop(kitchen.say(who, &format!("/take {job}"))),
                Deed::Dish(n) => drop(kitchen.say(who, &format!("/plan add dish number {n} in the oven {} min at 350", 20 + 5 * n))),
                Deed::Read(f) => drop(kitchen.say(who, &format!("/log breast {f}, thigh {f}"))),
                Deed::Move(h) => drop(kitchen.say(who, &format!("/move {:+} min", h * 60))),
            }
            kitchen.say(who, "/board");
        }
        prop_assert!(check(&kitchen) > 0);
    }
}
