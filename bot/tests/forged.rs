//! Presses made up by hand: whoever is not in a room sees and changes nothing there, whatever the data; and whoever is
//! may do no more than the buttons they are shown.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{RoomKind, To, What};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;
use proptest::prelude::*;

/// Rosa's dinner, with Tom in the group and a draft of his, a question asked, a job asked for, two plans made.
fn table() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-20 09:30");
    kitchen.say("Rosa", "/plan 14.5 lb frozen turkey, dinner Thursday 5 pm, 11 people, smoker at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Tom", "2 tbsp table salt");
    kitchen.say("Tom", "/plan 12 lb fresh turkey, dinner Friday 6 pm, oven at 325");
    kitchen.say("Rosa", "/take carve Tom");
    kitchen
}

/// Every step by the name that stands on its buttons.
const STEPS: [&str; 18] = [
    "buy",
    "thaw",
    "water",
    "salt",
    "rest",
    "temper",
    "fire",
    "on",
    "check",
    "pull",
    "stand",
    "carve",
    "chill",
    "pack",
    "travel",
    "reheat",
    "serve",
    "leftovers",
];

/// Data of every kind, of every job, and for everyone: Rosa (1), Tom (2), whoever presses (3), nobody (0, 99).
fn all_data() -> Vec<String> {
    let mut all: Vec<String> = Vec::new();
    let people = ["1", "2", "3", "0", "99", "-100"];
    let serials = ["0", "1", "2", "4294967295"];
    for verb in ["accept", "beside", "change", "back", "reasons", "discard", "sources", "meant"] {
        all.extend(people.iter().map(|who| format!("{verb}.{who}")));
    }
    for who in people {
        all.extend(serials.iter().map(|serial| format!("instead.{who}.{serial}")));
        all.extend(serials.iter().map(|serial| format!("bird.{who}.1.{serial}")));
        all.extend(
            ["condition.fresh", "cooker.smoker", "drive.1441", "ahead.yes"].map(|pick| format!("pick.{who}.{pick}")),
        );
        all.extend(["00000000", "1", "ffffffff"].map(|way| format!("offer.{who}.{way}")));
        all.extend([0, 1, 255].map(|place| format!("reply.{who}.{place}")));
        for what in ["stop", "forget", "reading", "anything"] {
            all.extend([format!("yes.{what}.{who}"), format!("no.{what}.{who}")]);
        }
    }
    for serial in serials {
        for verb in ["held", "jobs", "giving", "why"] {
            all.push(format!("{verb}.{serial}"));
        }
        all.extend(["00000000", "1", "ffffffff"].map(|way| format!("mend.{serial}.{way}")));
        all.extend([0, 1, 255].map(|place| format!("another.{serial}.{place}")));
        all.extend([0, 1, 65_535].map(|index| format!("undo.{serial}.{index}")));
        all.extend(
            ["0", "30000000", "-9223372036854775808", "9223372036854775807"].map(|at| format!("dinner.{serial}.{at}")),
        );
        all.extend(
            ["0.00000000-0", "30450180.0-1", "9223372036854775807.ffffffff-4294967295"]
                .map(|at| format!("shift.{serial}.{at}")),
        );
        all.extend([0, 350, 65_535].map(|setting| format!("hotter.{serial}.{setting}")));
        for step in STEPS {
            for verb in ["done", "sure", "later", "skip", "take", "drop", "give", "willing", "unwilling"] {
                all.extend([0, 255].map(|nth| format!("{verb}.{serial}.{}.{nth}", step)));
            }
            all.extend(people.iter().map(|who| format!("askfor.{serial}.{}.0.{who}", step)));
        }
    }
    for page in ["language", "units", "spoons", "zone", "quiet", "all", "?"] {
        all.push(format!("settings.{page}"));
    }
    for set in ["language.es", "units.metric", "spoons.imperial", "zone.Europe/Madrid", "quiet.21-7", "x.y"] {
        all.push(format!("set.{set}"));
    }
    all.extend(["plan", "salt", "safe", "?"].map(|page| format!("help.{page}")));
    all
}

fn pressed(data: String) -> What {
    What::Pressed { press: "p".into(), data, on: Some("board".into()) }
}

#[test]
fn whoever_is_not_in_the_room_changes_nothing_and_is_told_so_alone() {
    let mut kitchen = table();
    let (room, data) = (kitchen.scene.room.clone(), all_data());
    assert!(data.len() > 600, "{}", data.len());
    for data in data {
        for marked in [data.clone(), format!("{data}@1"), format!("{data}@2")] {
            let from = kitchen.said.len();
            kitchen.hear_privately("Eve", pressed(marked.clone()));
            assert_eq!(kitchen.scene.room, room, "{marked}");
            let said = &kitchen.said[from..];
            assert!(said.iter().all(|say| say.to == To::Press("p".into())), "{marked}: {said:?}");
            let told = said.iter().flat_map(|say| &say.text).all(|text| text.id == "room-not-here");
            assert!(told && said.len() == 1, "{marked}: {said:?}");
        }
    }
}

#[test]
fn a_member_who_is_not_the_host_moves_ends_and_sets_nothing() {
    let mut kitchen = table();
    let tom = carvetime::room::PersonId(2);
    let before = kitchen.scene.clone();
    let plan = before.room.plan.clone().unwrap();
    for data in all_data() {
        kitchen.scene = before.clone();
        kitchen.hear(Some("Lena"), pressed(data.clone()));
        let room = &kitchen.scene.room;
        let after = room.plan.as_ref().unwrap_or_else(|| panic!("{data} ended the plan"));
        assert_eq!(after.wish.dinner, plan.wish.dinner, "{data} moved dinner");
        assert_eq!((after.host, after.serial), (plan.host, plan.serial), "{data}");
        assert_eq!(room.taste, before.room.taste, "{data} changed the settings");
        assert_eq!(room.drafts.get(&tom), before.room.drafts.get(&tom), "{data} changed Tom's draft");
        assert!(after.jobs.iter().all(|job| job.owner != Some(tom)), "{data} answered for Tom");
    }
}

#[test]
fn a_place_shared_by_someone_else_does_not_set_the_kitchen_s_clock() {
    let mut kitchen = table();
    let said = kitchen.hear(Some("Lena"), What::Located { latitude: 40.4, longitude: -3.7 });
    assert!(said.contains("Only Rosa"), "{said}");
    assert_eq!(kitchen.scene.room.taste.zone.as_deref(), Some("America/Chicago"));
    kitchen.hear(Some("Rosa"), What::Located { latitude: 40.4, longitude: -3.7 });
    assert_eq!(kitchen.scene.room.taste.zone.as_deref(), Some("Europe/Madrid"));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(256))]

    /// Any data at all, from anyone: no panic, and nothing from outside.
    #[test]
    fn any_data_from_outside_change_nothing(data in "([a-z]{2,9}[.:@]?){0,3}[.0-9a-z:@-]{0,40}|.{0,64}") {
        let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-20 09:30");
        kitchen.hear(Some("Rosa"), pressed(data.clone()));
        let room = kitchen.scene.room.clone();
        kitchen.hear_privately("Eve", pressed(data));
        prop_assert_eq!(kitchen.scene.room, room);
    }
}
