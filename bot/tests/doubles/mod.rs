//! A room that does on command what the real one does for reasons: answers, buttons, calls, bells, files.
#![allow(dead_code)]

use carvetime::room::turn::{File, FileContent};
use carvetime::room::{Bell, BellKind, Button, Heard, How, RoomKind, Say, Scene, To, Turn, What};
use carvetime::words::{Arg, Text, Voice, locales};
use carvetime_core::plan::Step;
use chrono::{DateTime, TimeDelta, Utc};

const MESSAGES: &str = "
double-heard = <b>Heard</b> { $text } from { $who }
double-done = Done
double-later = Later
double-press = { $who } pressed { $data }
double-notice = Only you see this
double-rang = Ring { $n }
double-board = Board at { $at }
double-call = It is your turn
";

/// All languages with the double's messages in English.
pub fn voice() -> Voice {
    let files = |language| locales::files(language).into_iter().map(|(_, text)| text.to_owned());
    let sources = locales::languages().into_iter().map(|language| {
        let own = (language == locales::FIRST).then(|| MESSAGES.to_owned());
        (language.to_owned(), files(language).chain(own).collect())
    });
    Voice::of_sources(sources)
}

fn button(id: &'static str, data: &str) -> Button {
    Button { label: Text::new(id), data: data.to_owned() }
}

/// `buttons`, `bell`, `board`, `call`, `file`, `close` do that; any text is answered.
pub fn decide(scene: &Scene, heard: &Heard, now: DateTime<Utc>) -> Turn {
    let here = To::Room(heard.room);
    let mut room = scene.room.clone();
    let who = heard.by.as_ref().map(|by| by.name.clone()).unwrap_or_default();
    if let Some(by) = heard.by.as_ref().filter(|by| !room.members.contains(&by.id)) {
        room.members.push(by.id);
    }
    let who = || Arg::Verbatim(who.clone());
    let mut turn = Turn::default();
    match &heard.what {
        What::Said { text, .. } => {
            let heard_text = Text::new("double-heard").with("text", Arg::Verbatim(text.clone())).with("who", who());
            let mut say = Say::new(here.clone(), heard_text);
            match text.as_str() {
                "buttons" => {
                    say.key = Some("job-salt-0".into());
                    say.step = Some(Step::Salt);
                    say.buttons = vec![vec![button("double-done", "done"), button("double-later", "later")]];
                }
                "bell" => {
                    let bell = |minutes| Bell {
                        at: now + TimeDelta::minutes(minutes),
                        kind: BellKind::Note { name: "x".into() },
                    };
                    turn.bells = Some(vec![bell(10), bell(25)]);
                }
                "board" => {
                    say = Say::new(here, Text::new("double-board").with("at", Arg::Clock(now)));
                    say.key = Some("board".into());
                    say.how = How::Edit;
                }
                "call" => {
                    let person = heard.by.as_ref().map_or(carvetime::room::PersonId(1), |by| by.id);
                    say = Say::new(To::Person(person), Text::new("double-call"));
                    say.buttons = vec![vec![button("double-done", "called")]];
                }
                "file" => {
                    say.file = Some(File { name: "../plan.ics".into(), content: FileContent::Bytes(b"BEGIN".to_vec()) })
                }
                "close" => {
                    say.key = Some("job-salt-0".into());
                    say.how = How::Close;
                }
                _ => {}
            }
            turn.says.push(say);
        }
        What::Pressed { press, data, on } => {
            let on = on.clone().unwrap_or_default();
            let said = Text::new("double-press").with("who", who()).with("data", Arg::Verbatim(format!("{data} {on}")));
            turn.says.push(Say::new(To::Press(press.clone()), Text::new("double-notice")));
            turn.says.push(Say::new(here, said));
        }
        What::Rang { bells } => {
            let n = Arg::Count(i64::try_from(bells.len()).unwrap_or_default());
            turn.says.push(Say::new(here, Text::new("double-rang").with("n", n)));
        }
        _ => {}
    }
    assert!(room.kind == RoomKind::Group || room.id.0 > 0);
    turn.room = Some(room);
    turn
}
