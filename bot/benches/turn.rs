//! How long a turn of the conversation takes, and a whole week of it.

use carvetime::rehearse::{Script, rehearse};
use carvetime::room::state::Room;
use carvetime::room::turn::FileContent;
use carvetime::room::{Document, Heard, PersonId, RoomId, RoomKind, Scene, Speaker, What, decide};
use carvetime::words::Voice;
use carvetime_core::plan::Moment;
use chrono::{TimeZone, Utc};
use std::collections::BTreeMap;
use std::sync::Arc;

fn main() {
    divan::main();
}

fn now() -> Moment {
    Utc.with_ymd_and_hms(2027, 11, 20, 15, 30, 0).single().unwrap_or_default()
}

fn heard(what: What) -> Heard {
    let by =
        Speaker { id: PersonId(1), name: "Rosa".into(), username: None, language: None, admin: false, inside: None };
    Heard { room: RoomId(-100), kind: RoomKind::Group, by: Some(by), for_group: false, what }
}

fn said(text: &str) -> Heard {
    heard(What::Said { text: text.into(), addressed: true, reply_to: None, edited: false })
}

fn pressed(data: &str) -> Heard {
    heard(What::Pressed { press: "1".into(), data: data.into(), on: None })
}

/// A room whose plan has been accepted.
fn planned() -> Scene {
    let mut room = Room::new(RoomId(-100), RoomKind::Group);
    room.taste.language = Some("en-US".into());
    room.taste.zone = Some("America/Chicago".into());
    let mut scene = Scene { room, people: BTreeMap::new(), chance: 0 };
    for heard in [said(WISH), pressed("accept.1")] {
        let turn = decide(&scene, &heard, now());
        scene.room = turn.room.unwrap_or(scene.room);
        scene.people.extend(turn.people.into_iter().map(|person| (person.id, person)));
    }
    scene
}

const WISH: &str = "/plan 14.5 lb frozen turkey, dinner Thursday 5 pm, 11 people, smoker at 325";

#[divan::bench]
fn a_job_is_marked_done(bencher: divan::Bencher<'_, '_>) {
    let (scene, heard) = (planned(), pressed("done.1.buy.0"));
    bencher.bench_local(|| decide(&scene, &heard, now()));
}

#[divan::bench]
fn the_board_is_asked_for(bencher: divan::Bencher<'_, '_>) {
    let (scene, heard) = (planned(), said("/board"));
    bencher.bench_local(|| decide(&scene, &heard, now()));
}

#[divan::bench]
fn a_question_is_answered(bencher: divan::Bencher<'_, '_>) {
    let (scene, heard) = (planned(), said("2 tbsp table salt in flake kosher"));
    bencher.bench_local(|| decide(&scene, &heard, now()));
}

#[divan::bench]
fn a_plan_is_proposed_from_a_sentence(bencher: divan::Bencher<'_, '_>) {
    let (scene, heard) = (planned(), said(WISH));
    bencher.bench_local(|| decide(&scene, &heard, now()));
}

/// A bird two hundred minutes over the heat, read every minute.
fn cooking() -> (Scene, Moment) {
    let on = now();
    let mut scene = planned();
    let mut hear = |heard: Heard, at: Moment| {
        let turn = decide(&scene, &heard, at);
        scene.room = turn.room.unwrap_or_else(|| scene.room.clone());
    };
    hear(pressed("done.1.on.0"), on);
    let mut log = "minutes,pit_f,breast_f,thigh_f\n".to_owned();
    for minute in 1..=200 {
        let part = f64::from(minute) / 200.0;
        log.push_str(&format!("{minute},325,{:.0},{:.0}\n", 40.0 + 108.0 * part * part, 42.0 + 118.0 * part * part));
    }
    let at = on + chrono::TimeDelta::minutes(205);
    hear(heard(What::Document { name: "log.csv".into(), content: Document::Text(log) }), at);
    (scene, at)
}

#[divan::bench]
fn a_reading_joins_two_hundred(bencher: divan::Bencher<'_, '_>) {
    let ((scene, at), heard) = (cooking(), said("/log breast 150, thigh 162, pit 325"));
    bencher.bench_local(|| decide(&scene, &heard, at));
}

#[divan::bench]
fn when_is_asked_and_drawn(bencher: divan::Bencher<'_, '_>) {
    let ((scene, at), heard, voice) = (cooking(), said("/when"), Voice::new());
    let reader = carvetime::words::Reader::new("en-US", chrono_tz::America::Chicago, at);
    bencher.bench_local(|| {
        let turn = decide(&scene, &heard, at);
        let chart = turn.says.iter().find_map(|say| match &say.file.as_ref()?.content {
            FileContent::Picture(chart) => Some(chart.clone()),
            _ => None,
        });
        chart.map(|chart| carvetime::picture::draw(&chart, &voice, &reader))
    });
}

/// A frozen bird from the Saturday before to the last leftovers, every call shown.
#[divan::bench]
fn a_week_is_rehearsed(bencher: divan::Bencher<'_, '_>) {
    let text = format!(
        "room group\n2027-11-20 09:30 Rosa: {WISH}\n2027-11-20 09:31 Rosa > Accept\n2027-11-22 12:00 Tom: /take salt\n\
         2027-11-25 14:20 Tom: breast 128, thigh 141, pit 331\n2027-11-29 12:00\n"
    );
    let Ok(script) = Script::parse(&text, chrono_tz::America::Chicago, "en-US") else { return };
    let voice = Arc::new(Voice::new());
    bencher.bench_local(|| rehearse(&script, decide, &voice, false, &mut std::io::sink()));
}
