//! Who may do what: every button and every command against everyone who could use it.
//!
//! A refusal is seen by nobody but the one who pressed, and changes nothing.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::action::{Action, JobRef, Mark};
use carvetime::room::{Heard, PersonId, RoomKind, Scene, Speaker, To, Turn, What, decide};
use carvetime_core::plan::Step;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

/// Everyone who could press or say something, in the order of the table's columns.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Role {
    /// Rosa, who made the plan.
    Host,
    /// Ana, who administers the group and has nothing to do with the plan.
    Administrator,
    /// Tom, who carves, has a draft and was asked to salt.
    Helper,
    /// Lena, who is in the group and never spoke.
    Stranger,
    /// Eve, who is not.
    Outsider,
    /// Lou, who was and is not any more.
    Left,
    /// Someone who speaks in the name of the group: the platform does not say who. They press as themselves.
    Anonymous,
}

const ROLES: [Role; 7] =
    [Role::Host, Role::Administrator, Role::Helper, Role::Stranger, Role::Outsider, Role::Left, Role::Anonymous];

const ROSA: PersonId = PersonId(1);
const TOM: PersonId = PersonId(2);

/// What became of it, a letter a cell.
fn outcome(before: &Scene, turn: &Turn) -> char {
    const REFUSALS: [&str; 10] = [
        "room-skip-theirs",
        "room-may-host",
        "room-may-not",
        "room-not-yours",
        "room-not-here",
        "room-take-theirs",
        "room-drop-theirs",
        "room-undo-theirs",
        "sharing-give-theirs",
        "sharing-give-not-yours",
    ];
    let told = |id: &str| turn.says.iter().flat_map(|say| &say.text).any(|text| text.id == id);
    let mut room = turn.room.clone().unwrap_or_else(|| before.room.clone());
    // Whoever is heard is noted as a member; that is no effect of what they wanted.
    room.members.clone_from(&before.room.members);
    let changed = room != before.room || turn.forget.is_some();
    if REFUSALS.into_iter().any(told) {
        assert!(!changed, "refused and done: {turn:?}");
        assert_eq!(turn.says.len(), 1, "one short refusal: {turn:?}");
        return 'R';
    }
    if told("room-need-person") {
        return '?';
    }
    if told("room-stale") || told("room-question-gone") || told("sharing-give-over") {
        return 'S';
    }
    match (changed, turn.says.is_empty()) {
        (true, _) => 'D',
        (false, true) => '-',
        (false, false) => 'A',
    }
}

/// Rosa's dinner with all of them about.
fn table() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-20 09:30");
    kitchen.say("Rosa", "/plan 14.5 lb frozen turkey, dinner Thursday 5 pm, 11 people, smoker at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Tom", "2 tbsp table salt");
    kitchen.say("Tom", "/plan 12 lb fresh turkey, dinner Friday 6 pm, oven at 325");
    for late in ["Ana", "Lou"] {
        kitchen.say(late, "/board");
    }
    kitchen.hear(None, What::Left { who: PersonId(4) });
    kitchen.say("Tom", "/take carve");
    kitchen.say("Rosa", "/take salt Tom");
    kitchen.say("Rosa", "/take fire");
    kitchen
}

fn heard(kitchen: &Kitchen, role: Role, what: What) -> Heard {
    let (id, name, admin) = match role {
        Role::Host => (1, "Rosa", false),
        Role::Helper => (2, "Tom", false),
        Role::Administrator => (3, "Ana", true),
        Role::Left => (4, "Lou", false),
        Role::Stranger => (5, "Lena", false),
        Role::Outsider => (6, "Eve", false),
        Role::Anonymous => (0, "", false),
    };
    let away = matches!(role, Role::Outsider | Role::Left);
    let speaker = Speaker { id: PersonId(id), name: name.into(), username: None, language: None, admin, inside: None };
    Heard {
        room: kitchen.scene.room.id,
        kind: if away { RoomKind::Private } else { RoomKind::Group },
        by: (role != Role::Anonymous).then_some(speaker),
        for_group: role == Role::Anonymous,
        what,
    }
}

/// The row of what everyone gets for the same words or press.
fn row(kitchen: &Kitchen, what: &What) -> String {
    let pressed = matches!(what, What::Pressed { .. });
    // Nobody presses without a name.
    let roles = ROLES.into_iter().filter(|role| !(pressed && *role == Role::Anonymous));
    roles
        .map(|role| {
            let turn = decide(&kitchen.scene, &heard(kitchen, role, what.clone()), kitchen.now);
            let outcome = outcome(&kitchen.scene, &turn);
            if pressed && matches!(outcome, 'R' | 'S') {
                let alone = turn.says.iter().all(|say| say.to == To::Press("p".into()));
                assert!(alone, "{role:?} is refused in front of everyone: {turn:?}");
            }
            outcome
        })
        .collect()
}

/// The bird is frozen when it was to be salted: there are ways out.
fn frozen_bird() -> Kitchen {
    let mut kitchen = table();
    kitchen.run_to("2027-11-24 12:30");
    kitchen.say("Rosa", "still frozen solid");
    kitchen
}

/// A dish does not fit beside the bird: there are ways out.
fn crowded_smoker() -> Kitchen {
    let mut kitchen = table();
    kitchen.run_to("2027-11-25 12:05");
    kitchen.say("Rosa", "it's on");
    let said = kitchen.say("Rosa", "/plan add pie in the smoker 150 min at 425");
    assert!(said.contains("Without pie"), "{said}");
    kitchen
}

/// The data of the button. Which way out it offers is the room's to say: that of the first such button there.
fn offered(kitchen: &Kitchen, action: &Action) -> String {
    let data = action.data();
    if !matches!(action, Action::Mend(..) | Action::Seat(..) | Action::Shift(..)) {
        return data;
    }
    let verb = data.split_once('.').expect("a verb").0;
    let all = kitchen.said.iter().flat_map(|say| say.buttons.iter().flatten());
    let found = all.map(|button| button.data.clone()).find(|data| data.split('.').next() == Some(verb));
    found.unwrap_or_else(|| panic!("no button {verb}"))
}

/// Tom's last reading is doubted.
fn doubtful_cook() -> Kitchen {
    let mut kitchen = table();
    kitchen.run_to("2027-11-25 13:00");
    kitchen.say("Tom", "/log breast 118, pit 331");
    kitchen.say("Tom", "/log breast 18");
    kitchen
}

fn job(step: Step) -> JobRef {
    JobRef { serial: 1, step, nth: 0 }
}

/// D: done. A: answered or asked, and nothing changed. R: refused. S: told that the button is old. Columns: host,
/// administrator, helper, stranger, outsider, left.
#[rustfmt::skip]
fn buttons() -> Vec<(Action, &'static str)> {
    // Nobody has `on`; Rosa has `fire`, Tom `carve`; Tom was asked to take `salt`.
    let (free, rosas, toms, asked) = (job(Step::On), job(Step::Fire), job(Step::Carve), job(Step::Salt));
    let minute = 30453120; // dinner an hour later
    vec![
        // Tom's draft is Tom's alone; while a plan stands he is asked whether it joins that or takes its place.
        (Action::Accept(TOM), "RRARRR"),
        (Action::Beside(TOM), "RRDRRR"),
        (Action::Instead(TOM, 1), "RRRRRR"),
        (Action::Bird(TOM, 1, 1), "RRARRR"),
        (Action::Change(TOM), "RRDRRR"),
        (Action::Back(TOM), "RRARRR"),
        (Action::WhyDraft(TOM), "RRARRR"),
        (Action::Discard(TOM), "RRDRRR"),
        (Action::Pick(TOM, "salting".into(), "none".into()), "RRDRRR"),
        (Action::Offer(TOM, Mark(0)), "RRARRR"),
        // What is seen to be done anyone may say.
        (Action::Done(free), "DDDDRR"),
        (Action::Done(rosas), "DDDDRR"),
        (Action::Sure(free), "DDDDRR"),
        (Action::Held(1), "DDDDRR"),
        (Action::Later(free), "DDDDRR"),
        (Action::Skip(free), "DDDDRR"),
        (Action::Skip(toms), "DDDRRR"),
        // Jobs.
        (Action::Take(free), "DDDDRR"),
        (Action::Take(toms), "RRARRR"),
        (Action::Drop(free), "AAAARR"),
        (Action::Drop(toms), "DDDRRR"),
        (Action::Drop(rosas), "DDRRRR"),
        (Action::Give(free), "AAAARR"),
        (Action::Give(toms), "AAARRR"),
        (Action::AskFor(free, ROSA), "DDDDRR"),
        (Action::AskFor(toms, ROSA), "RDDRRR"),
        (Action::Willing(asked), "RRDRRR"),
        (Action::Unwilling(asked), "RRDRRR"),
        (Action::Giving(1), "AAAARR"),
        (Action::Jobs(1), "AAAARR"),
        // The plan as a whole. The newest change is Rosa's.
        (Action::Mend(1, Mark(0)), "DDRRRR"),
        (Action::Seat(1, Mark(0)), "DDDDRR"),
        (Action::Another(1, 0), "DDDDRR"),
        (Action::Undo(1, 2), "DDRRRR"),
        (Action::Dinner(1, minute), "DDRRRR"),
        (Action::Stay(1, minute), "AARRRR"),
        (Action::Shift(1, 0, Mark(0), 1), "DDRRRR"),
        (Action::Hotter(1, 350), "DDRRRR"),
        (Action::Yes("stop".into(), ROSA), "DRRRRR"),
        (Action::Yes("stop".into(), TOM), "RRRRRR"),
        (Action::Yes("forget".into(), TOM), "RRRRRR"),
        (Action::No("stop".into(), ROSA), "ARRRRR"),
        (Action::Rate(1, "salt".into(), "much".into()), "DRRRRR"),
        (Action::Why(1), "AAAARR"),
        (Action::Settings("units".into()), "AARRRR"),
        (Action::Set("units".into(), "metric".into()), "DDRRRR"),
        (Action::Help("plan".into()), "AAAARR"),
        // What Tom said and asked.
        (Action::Meant(TOM), "RRDRRR"),
        (Action::Reply(TOM, 0), "RRSRRR"),
        (Action::Sources(TOM), "AAAARR"),
    ]
}

/// The same for what is said; a last column for who speaks in the group's name. -: not heard, it is another chat. ?: has to
/// say who they are.
const SAID: [(&str, &str); 24] = [
    ("/start", "AAAA--A"),
    ("/help", "AAAA--A"),
    ("/settings", "AAAA--A"),
    ("/settings zone Madrid", "DDRR--D"),
    ("/plan", "AAAA--?"),
    ("/plan add stuffing in the oven 45 min at 375", "DDDD--?"),
    ("/board", "AAAA--A"),
    ("/salt 2 tbsp table", "DDDD--A"),
    ("/ask 2 tbsp table", "DDDD--A"),
    ("/log breast 100", "DDDD--?"),
    ("/when", "AAAA--A"),
    ("/move", "AARR--A"),
    ("/move 6 pm", "DDRR--D"),
    ("/take", "AAAA--A"),
    ("/take on", "DDDD--?"),
    ("/take carve", "RRAR--?"),
    ("/take on Tom", "DDDD--?"),
    ("/drop carve", "DDDR--D"),
    ("/drop fire", "DDRR--D"),
    ("/undo", "DDRR--D"),
    ("/export", "DDDD--D"), // what calendars have of the plan is kept
    ("/stop", "DDRR--?"),
    ("/forget", "AARR--?"),
    ("guests come 40 min late", "DDDD--?"),
];

#[test]
fn every_button_does_for_everyone_what_it_may() {
    let (table, frozen, crowded, doubtful) = (table(), frozen_bird(), crowded_smoker(), doubtful_cook());
    let mut with_rice = self::table();
    with_rice.say("Rosa", "/plan add rice on the stove 20 min");
    let mut sooner = self::table();
    sooner.say("Rosa", "/move Tuesday 5 pm");
    for (action, expected) in buttons() {
        let kitchen = match action {
            Action::Mend(..) => &frozen,
            Action::Seat(..) => &crowded,
            Action::Shift(..) => &sooner,
            Action::Another(..) => &with_rice,
            Action::Meant(_) => &doubtful,
            _ => &table,
        };
        let pressed = What::Pressed { press: "p".into(), data: offered(kitchen, &action), on: None };
        assert_eq!(row(kitchen, &pressed), expected, "{action:?}");
    }
}

#[test]
fn every_command_does_for_everyone_what_it_may() {
    let kitchen = table();
    for (text, expected) in SAID {
        let said = What::Said { text: text.into(), addressed: true, reply_to: None, edited: false };
        assert_eq!(row(&kitchen, &said), expected, "{text}");
    }
}

#[test]
fn whoever_presses_in_a_public_group_without_being_in_it_presses_in_vain() {
    let table = table();
    let job = JobRef { serial: 1, step: Step::On, nth: 0 };
    let pressed = |inside| {
        let what = What::Pressed { press: "p".into(), data: Action::Take(job).data(), on: None };
        let mut eve = Heard { kind: RoomKind::Group, ..heard(&table, Role::Outsider, what) };
        eve.by.as_mut().expect("Eve").inside = inside;
        decide(&table.scene, &eve, table.now)
    };
    let turn = pressed(Some(false));
    assert!(turn.says.iter().any(|say| say.text.iter().any(|text| text.id == "room-not-here")), "{:?}", turn.says);
    let member = |turn: &Turn| turn.room.as_ref().is_some_and(|room| room.members.contains(&PersonId(6)));
    assert!(!member(&turn) && turn.people.iter().all(|person| person.shares_in.is_none()), "{turn:?}");
    // In a group that is not public everyone who presses is in it.
    assert!(member(&pressed(None)) && member(&pressed(Some(true))));
}

/// In a public group anyone can press what stands there, members or not.
#[test]
fn whoever_left_presses_in_the_group_in_vain_until_they_speak_or_are_let_in_again() {
    let table = table();
    let lou = |what: What| Heard { kind: RoomKind::Group, ..heard(&table, Role::Left, what) };
    let job = JobRef { serial: 1, step: Step::On, nth: 0 };
    let pressed = lou(What::Pressed { press: "p".into(), data: Action::Take(job).data(), on: None });
    let turn = decide(&table.scene, &pressed, table.now);
    assert!(turn.says.iter().any(|say| say.text.iter().any(|text| text.id == "room-not-here")), "{:?}", turn.says);
    assert!(turn.room.is_none_or(|room| !room.members.contains(&PersonId(4))), "no member by a press");
    let came = Heard { by: None, ..lou(What::Came { who: PersonId(4) }) };
    let spoke = lou(What::Said { text: "hello all".into(), addressed: false, reply_to: None, edited: false });
    for back in [came, spoke] {
        let mut scene = table.scene.clone();
        scene.room = decide(&scene, &back, table.now).room.expect("they are back");
        let turn = decide(&scene, &pressed, table.now);
        let room = turn.room.expect("the job is theirs");
        let plan = room.plan.expect("a plan");
        assert!(plan.jobs.iter().any(|job| job.owner == Some(PersonId(4))), "{:?}", back.what);
    }
}

#[test]
fn no_button_and_no_command_is_left_out() {
    let source = include_str!("../src/room/action.rs");
    let (_, body) = source.split_once("pub enum Action {").unwrap();
    let (body, _) = body.split_once("\n}").unwrap();
    let kinds = body.lines().filter_map(|line| line.strip_prefix("    ").filter(|line| !line.starts_with('/')));
    let kinds: Vec<&str> = kinds.filter_map(|line| line.split('(').next()).collect();
    assert!(kinds.len() > 30, "{kinds:?}");
    let named: Vec<String> = buttons().iter().map(|(action, _)| format!("{action:?}")).collect();
    for kind in kinds {
        assert!(named.iter().any(|name| name.starts_with(&format!("{kind}("))), "no row for {kind}");
    }
    let menu = include_str!("../../locales/en/telegram.ftl");
    let commands = menu.lines().filter_map(|line| line.strip_prefix("telegram-command-")?.split(' ').next());
    let commands: Vec<&str> = commands.collect();
    assert!(commands.len() > 12, "{commands:?}");
    for command in commands {
        assert!(SAID.iter().any(|(said, _)| said.starts_with(&format!("/{command}"))), "no row for /{command}");
    }
}
