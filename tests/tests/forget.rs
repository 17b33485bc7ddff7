//! `/forget`: what is kept is listed, then the store holds no trace of who asked, and the others' plan stands.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::stage::Scene;

/// Tom does everything that leaves something behind; Rosa and Ana go on without him.
const SCENE: &str = "zone America/Chicago
locale en-US
room group
people Rosa, Zebulon, Ana
2027-11-22 09:00 Rosa: /plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325
2027-11-22 09:01 Rosa > Accept
2027-11-22 09:02 * Zebulon starts
2027-11-22 09:03 Zebulon (private): my salt: 1/4 tsp is 0.7 g
2027-11-22 09:04 Zebulon (private): /settings Madrid
2027-11-22 09:04 Zebulon (private): my fridge has 3 shelves
2027-11-22 09:05 Zebulon: /take salt
2027-11-22 09:06 Zebulon: /take carve
2027-11-22 09:07 Zebulon: /ask how much salt for a turkey
2027-11-22 09:08 Zebulon: /plan 12 lb frozen turkey
2027-11-22 09:09 Ana: /take chill
2027-11-23 18:35 Zebulon (private) > Done
2027-11-25 12:30 Ana: /log pit 320
2027-11-25 14:30 Zebulon: /log breast 118, thigh 124
2027-11-25 14:31 * Zebulon ignores the rest
2027-11-25 14:32 Zebulon (private): /forget
2027-11-25 14:32 * Zebulon hears I keep your name, your settings, your salt, your fridge: shelves and temperature,
2027-11-25 14:33 Zebulon (private) > Yes
2027-11-25 16:40 * Zebulon ignores the rest
";

/// Every row of the book as text, keys and values.
fn everything(scene: &Scene) -> String {
    let file = scene.data.with_extension("backup");
    scene.engine.backup(&file).unwrap();
    std::fs::read_to_string(file).unwrap()
}

/// Numbers also stand in keys, as eight bytes with the sign turned over.
fn traces(text: &str, id: i64, name: &str) -> Vec<String> {
    let key = format!("{:016x}", id.cast_unsigned() ^ (1 << 63));
    let value_hex: String = name.bytes().map(|byte| format!("{byte:02x}")).collect();
    let number_hex: String = id.to_string().bytes().map(|byte| format!("{byte:02x}")).collect();
    let marks = [id.to_string(), name.to_owned(), key, value_hex, number_hex];
    let with = |line: &&str| marks.iter().any(|mark| line.to_lowercase().contains(&mark.to_lowercase()));
    text.lines().filter(with).map(|line| line.chars().take(400).collect()).collect()
}

#[test]
fn whoever_is_forgotten_stands_nowhere_in_the_book_and_the_others_plan_goes_on() {
    let asked = SCENE.lines().position(|line| line.contains("/forget")).unwrap();
    let before: String = SCENE.lines().take(asked).map(|line| format!("{line}\n")).collect();
    let scene = Scene::play_text(&before);
    let id = scene.id("Zebulon");
    assert!(traces(&everything(&scene), id, "Zebulon").len() >= 3, "the marks are looked for where they are");
    drop(scene);

    let scene = Scene::play_text(SCENE);
    assert_forgotten(&scene);
}

#[test]
fn whoever_has_left_the_group_before_is_forgotten_there_too() {
    let script = SCENE.replace("2027-11-25 14:31 * Zebulon ignores the rest", "2027-11-25 14:31 * Zebulon leaves");
    assert_ne!(script, SCENE);
    assert_forgotten(&Scene::play_text(&script));
}

fn assert_forgotten(scene: &Scene) {
    let left = traces(&everything(scene), scene.id("Zebulon"), "Zebulon");
    assert!(left.is_empty(), "{left:#?}");
    let room = scene.engine.pages().room(carvetime::room::RoomId(scene.group)).unwrap().unwrap();
    let plan = room.plan.unwrap();
    assert!(plan.facts.iter().any(|fact| fact.step == "salt" && fact.done), "what was done stays done");
    assert_eq!(plan.readings.len(), 2, "what was read stays read");
    assert!(plan.jobs.iter().any(|job| job.step == "chill" && job.owner.is_some()), "Ana's job is hers");
    let carve = plan.jobs.iter().find(|job| job.step == "carve").unwrap();
    assert_eq!(carve.owner, None);
}

/// Rosa's group is forgotten; Zebulon was called from it.
const GROUP: &str = "2027-11-25 16:38 * Zebulon ignores the rest
2027-11-25 16:50 Rosa: /forget
2027-11-25 16:50 * group hears I keep this chat’s name and settings, who is in it, the plan with its jobs and who has them, the readings,
2027-11-25 16:51 Rosa > Yes
";

#[test]
fn a_group_that_is_forgotten_stands_nowhere_in_the_book_and_its_people_keep_what_is_their_own() {
    let before: String = SCENE.lines().filter(|line| !line.contains("14:3")).map(|line| format!("{line}\n")).collect();
    let called = Scene::play_text(&before.replace("2027-11-25 16:40", "2027-11-25 16:37"));
    let zebulon = carvetime::room::PersonId(called.id("Zebulon"));
    let person = called.engine.pages().person(zebulon).unwrap().unwrap();
    assert_eq!(person.called_from.map(|room| room.0), Some(called.group), "{}", called.transcript());
    drop(called);

    let scene = Scene::play_text(&format!("{}{GROUP}", before.replace("2027-11-25 16:40", "2027-11-25 16:37")));
    let left = traces(&everything(&scene), scene.group, "no such name");
    assert!(left.is_empty(), "{left:#?}");
    let zebulon = carvetime::room::PersonId(scene.id("Zebulon"));
    let person = scene.engine.pages().person(zebulon).unwrap().unwrap();
    assert!(person.own_salt.is_some() && person.fridge_shelves == Some(3), "his own stays: {person:?}");
}

/// A place in Chicago; its digits stand nowhere else.
const PLACE: (f64, f64) = (41.878_113, -87.629_799);

#[test]
fn a_place_shared_for_the_time_zone_is_used_and_kept_nowhere() {
    let scene = Scene::play_text(
        "zone Europe/Madrid
         locale en-US
         room group
         people Rosa, Tom
         2027-11-22 09:00 * Rosa starts
         2027-11-22 09:01 Rosa (private): /settings
         2027-11-22 09:02 Rosa (private) > Time zone
         2027-11-22 09:03 * Rosa ignores the rest\n",
    );
    let rosa = scene.id("Rosa");
    scene.telegram.locate("Rosa", rosa, PLACE.0, PLACE.1);
    scene.rest();
    let heard = scene.telegram.heard(rosa);
    assert!(heard.last().is_some_and(|(_, text)| text.contains("America/Chicago")), "{heard:?}");
    scene.telegram.say("Rosa", rosa, "/export");
    scene.rest();
    let files = scene.telegram.said(rosa).into_iter().filter_map(|message| message.file);
    let exported: String = files.map(|file| String::from_utf8_lossy(&file.bytes).into_owned()).collect();
    assert!(exported.contains("America/Chicago"), "{exported}");
    let folder = tempfile::tempdir().unwrap();
    scene.engine.export_daily(folder.path(), scene.now()).unwrap();
    let daily: String = walk(folder.path()).iter().map(|path| std::fs::read_to_string(path).unwrap()).collect();
    let book = everything(&scene);
    assert!(!daily.is_empty() && !book.is_empty());
    for kept in [exported, daily, book] {
        let left = traces(&kept, 878_113, "629799");
        assert!(left.is_empty(), "{left:#?}");
    }
}

/// The files in a folder and those below.
fn walk(folder: &std::path::Path) -> Vec<std::path::PathBuf> {
    let entries = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    entries.flat_map(|path| if path.is_dir() { walk(&path) } else { vec![path] }).collect()
}
