//! Who may do what: every button and every command against everyone who could use it.
//!
//! A refusal is seen by nobody but the one who pressed, and changes nothing.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::action::{Action, JobRef, Mark};
use carvetime::room::{Heard, PersonId, RoomKind, Scene, Speaker, To, Turn, What, decide};
use carvetime::words::{Arg, Text};
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
    /// Eve, the group being public: what stands there she can press.
    Passerby,
    /// Max, who administers the group without his name: he speaks as the group, the platform not saying who, and presses as himself.
    Anonymous,
}

const ROLES: [Role; 8] = [
    Role::Host,
    Role::Administrator,
    Role::Helper,
    Role::Stranger,
    Role::Outsider,
    Role::Left,
    Role::Passerby,
    Role::Anonymous,
];

const ROSA: PersonId = PersonId(1);
const TOM: PersonId = PersonId(2);

/// What became of it, a letter a cell.
fn outcome(before: &Scene, turn: &Turn) -> char {
    const REFUSALS: [&str; 11] = [
        "dish-theirs",
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
        Role::Outsider | Role::Passerby => (6, "Eve", false),
        Role::Anonymous => (7, "Max", true),
    };
    let pressed = matches!(what, What::Pressed { .. });
    let away = matches!(role, Role::Outsider | Role::Left);
    let nameless = role == Role::Anonymous && !pressed;
    // Where anyone can press, the platform is asked who is in it; whoever can write is.
    let inside = (role == Role::Passerby && pressed).then_some(false);
    let speaker = Speaker { id: PersonId(id), name: name.into(), username: None, language: None, admin, inside };
    Heard {
        room: kitchen.scene.room.id,
        kind: if away { RoomKind::Private } else { RoomKind::Group },
        by: (!nameless).then_some(speaker),
        for_group: nameless,
        what,
    }
}

/// The row of what everyone gets for the same words or press.
fn row(kitchen: &Kitchen, what: &What) -> String {
    let pressed = matches!(what, What::Pressed { .. });
    ROLES
        .into_iter()
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

/// The bird went on hours late: dinner has a way out.
fn late_bird() -> Kitchen {
    let mut kitchen = table();
    kitchen.run_to("2027-11-25 14:30");
    kitchen.say("Rosa", "bird isn't on yet");
    kitchen.run_to("2027-11-25 14:31");
    kitchen.say("Rosa", "just put it on");
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

/// Tom has added corn and has it, Rosa rice that nobody has.
fn crowded_by_tom() -> Kitchen {
    let mut kitchen = table();
    kitchen.say("Tom", "/plan add corn in the oven 150 min at 350");
    kitchen.say("Tom", "/take corn");
    kitchen.say("Rosa", "/plan add rice on the stove 20 min");
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
/// administrator, helper, stranger, outsider, left, passer-by in a public group, administrator without a name.
#[rustfmt::skip]
fn buttons() -> Vec<(Action, &'static str)> {
    // Nobody has `on`; Rosa has `fire`, Tom `carve`; Tom was asked to take `salt`.
    let (free, rosas, toms, asked) = (job(Step::On), job(Step::Fire), job(Step::Carve), job(Step::Salt));
    let minute = 30453120; // dinner an hour later
    vec![
        // Tom's draft is Tom's alone; while a plan stands he is asked whether it joins that or takes its place.
        (Action::Accept(TOM), "RRARRRRR"),
        (Action::Beside(TOM), "RRDRRRRR"),
        (Action::Instead(TOM, 1), "RRRRRRRR"),
        (Action::Bird(TOM, 1, 1), "RRARRRRR"),
        (Action::Change(TOM), "RRDRRRRR"),
        (Action::Back(TOM), "RRARRRRR"),
        (Action::WhyDraft(TOM), "RRARRRRR"),
        (Action::Discard(TOM), "RRDRRRRR"),
        (Action::Pick(TOM, "salting".into(), "none".into()), "RRDRRRRR"),
        (Action::Offer(TOM, Mark(0)), "RRARRRRR"),
        // What is seen to be done anyone may say.
        (Action::Done(free), "DDDDRRRD"),
        (Action::Done(rosas), "DDDDRRRD"),
        (Action::AsPlanned(free), "DDDDRRRD"),
        (Action::NotYet(free), "DDDDRRRD"),
        (Action::Sure(free), "DDDDRRRD"),
        (Action::Held(1), "DDDDRRRD"),
        (Action::Later(free), "DDDDRRRD"),
        (Action::Skip(free), "DDDDRRRD"),
        (Action::Skip(toms), "DDDRRRRD"),
        // Jobs.
        (Action::Take(free), "DDDDRRRD"),
        (Action::Take(toms), "RRARRRRR"),
        (Action::Drop(free), "AAAARRRA"),
        (Action::Drop(toms), "DDDRRRRD"),
        (Action::Drop(rosas), "DDRRRRRD"),
        (Action::Give(free), "AAAARRRA"),
        (Action::Give(toms), "AAARRRRA"),
        (Action::AskFor(free, ROSA), "DDDDRRRD"),
        (Action::AskFor(toms, ROSA), "RDDRRRRD"),
        (Action::Willing(asked), "RRDRRRRR"),
        (Action::Unwilling(asked), "RRDRRRRR"),
        (Action::Giving(1), "AAAARRRA"),
        (Action::Jobs(1), "AAAARRRA"),
        // The plan as a whole. The newest change is Rosa's.
        (Action::Mend(1, Mark(0)), "DDRRRRRD"),
        (Action::Seat(1, Mark(0)), "DDDDRRRD"),
        (Action::Leave(1), "DDDDRRRD"),
        (Action::Another(1, 0), "DDDDRRRD"),
        (Action::Undo(1, 2), "DDRRRRRD"),
        (Action::Dinner(1, minute), "DDRRRRRD"),
        (Action::Stay(1, minute), "AARRRRRA"),
        (Action::Shift(1, 0, Mark(0), 1), "DDRRRRRD"),
        (Action::Hotter(1, 350), "DDRRRRRD"),
        (Action::Yes("stop".into(), ROSA), "DRRRRRRR"),
        (Action::Yes("stop".into(), TOM), "RRRRRRRR"),
        (Action::Yes("forget".into(), TOM), "RRRRRRRR"),
        (Action::No("stop".into(), ROSA), "ARRRRRRR"),
        (Action::Rate(1, "salt".into(), "much".into()), "DRRRRRRR"),
        (Action::Why(1), "AAAARRRA"),
        (Action::Settings("units".into()), "DDRRRRRD"),
        (Action::Set("units".into(), "metric".into()), "DDRRRRRD"),
        (Action::Help("plan".into()), "AAAARRRA"),
        // What Tom said and asked.
        (Action::Meant(TOM), "RRDRRRRR"),
        (Action::Reply(TOM, 0), "RRSRRRRR"),
        (Action::Sources(TOM), "AAAARRRA"),
    ]
}

/// The same for what is said. Whoever can write in a public group is in it, and the last speaks in the group's name. -: not heard, it is
/// another chat. ?: has to say who they are.
const SAID: [(&str, &str); 25] = [
    ("/start", "AAAA--AA"),
    ("/help", "AAAA--AA"),
    ("/settings", "AAAA--AA"),
    ("/settings zone Madrid", "DDRR--RD"),
    ("/plan", "AAAA--A?"),
    ("/plan add stuffing in the oven 45 min at 375", "DDDD--D?"),
    ("/plan remove stuffing", "AAAA--A?"),
    ("/board", "AAAA--AA"),
    ("/salt 2 tbsp table", "DDDD--DA"),
    ("/ask 2 tbsp table", "DDDD--DA"),
    ("/log breast 100", "DDDD--D?"),
    ("/when", "AAAA--AA"),
    ("/move", "AARR--RA"),
    ("/move 6 pm", "DDRR--RD"),
    ("/take", "AAAA--AA"),
    ("/take on", "DDDD--D?"),
    ("/take carve", "RRAR--R?"),
    ("/take on Tom", "DDDD--D?"),
    ("/drop carve", "DDDR--RD"),
    ("/drop fire", "DDRR--RD"),
    ("/undo", "DDRR--RD"),
    ("/export", "DDDD--DD"), // what calendars have of the plan is kept
    ("/stop", "DDRR--R?"),
    ("/forget", "AARR--R?"),
    ("guests come 40 min late", "DDDD--D?"),
];

#[test]
fn every_button_does_for_everyone_what_it_may() {
    let (table, late, crowded, doubtful) = (table(), late_bird(), crowded_smoker(), doubtful_cook());
    let mut with_rice = self::table();
    with_rice.say("Rosa", "/plan add rice on the stove 20 min");
    let mut sooner = self::table();
    sooner.say("Rosa", "/move Tuesday 5 pm");
    let mut wrong = Vec::new();
    for (action, expected) in buttons() {
        let kitchen = match action {
            Action::Mend(..) => &late,
            Action::Seat(..) | Action::Leave(_) => &crowded,
            Action::Shift(..) => &sooner,
            Action::Another(..) => &with_rice,
            Action::Meant(_) => &doubtful,
            _ => &table,
        };
        let pressed = What::Pressed { press: "p".into(), data: offered(kitchen, &action), on: None };
        let found = row(kitchen, &pressed);
        if found != expected {
            wrong.push(format!("{action:?}: {found}, not {expected}"));
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn every_command_does_for_everyone_what_it_may() {
    let kitchen = table();
    let mut wrong = Vec::new();
    for (text, expected) in SAID {
        let said = What::Said { text: text.into(), addressed: true, reply_to: None, edited: false };
        let found = row(&kitchen, &said);
        if found != expected {
            wrong.push(format!("{text}: {found}, not {expected}"));
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn a_dish_is_changed_and_taken_off_by_whoever_has_it_added_it_or_leads_the_plan() {
    let kitchen = crowded_by_tom();
    for (text, expected) in [
        ("/plan remove corn", "DDDR--R?"),
        ("/plan remove rice", "DDRR--R?"),
        ("no rice after all", "DDAA--AD"),
        ("corn takes 160 min", "DDDR--RD"),
        ("corn at 375", "DDDR--RD"),
    ] {
        let said = What::Said { text: text.into(), addressed: true, reply_to: None, edited: false };
        assert_eq!(row(&kitchen, &said), expected, "{text}");
    }
    let mut crowded = crowded_by_tom();
    let said = crowded.say("Rosa", "/plan add rolls in the oven 150 min at 450");
    assert!(said.contains("What would work"), "{said}");
    // Any way out there is can be pressed, whichever are shown.
    let without = |dish: &str| {
        let label = Text::new("plan-change-dish-out").with("name", Arg::Verbatim(dish.to_owned()));
        Action::Seat(1, Mark(crc32fast::hash(format!("{label:?}").as_bytes()))).data()
    };
    // Rolls are not on the plan yet: leaving them out is anyone's.
    for (dish, expected) in [("corn", "DDDRRRRD"), ("rolls", "DDDDRRRD")] {
        let pressed = What::Pressed { press: "p".into(), data: without(dish), on: None };
        assert_eq!(row(&crowded, &pressed), expected, "{dish}");
    }
}

#[test]
fn who_had_a_dish_hears_once_that_somebody_else_has_taken_it_off() {
    let mut kitchen = crowded_by_tom();
    kitchen.hear_privately("Tom", What::Said { text: "/start".into(), addressed: true, reply_to: None, edited: false });
    for person in kitchen.scene.people.values_mut() {
        person.reachable = true;
    }
    let told = |turn: &Turn| {
        let gone = turn.says.iter().filter(|say| say.text.iter().any(|text| text.id == "sharing-dish-gone"));
        gone.map(|say| say.to.clone()).collect::<Vec<_>>()
    };
    let said = What::Said { text: "/plan remove corn".into(), addressed: true, reply_to: None, edited: false };
    let turn = decide(&kitchen.scene, &heard(&kitchen, Role::Host, said.clone()), kitchen.now);
    assert_eq!(told(&turn), [To::Person(TOM)]);
    let turn = decide(&kitchen.scene, &heard(&kitchen, Role::Helper, said), kitchen.now);
    assert!(told(&turn).is_empty(), "Tom knows");
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
