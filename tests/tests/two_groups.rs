//! One person with a part in the dinners of two groups: what is called privately says which dinner it is for, and what is pressed, read
//! and said there reaches that one and no other.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::room::state::{JobState, LivePlan, Room};
use carvetime::room::{PersonId, RoomId};
use carvetime_tests::loopback::{ChatId, Message};
use carvetime_tests::stage::Scene;
use chrono::{NaiveDateTime, TimeZone};

/// Tom salts and looks in on Rosa's bird and on Ana's, the same jobs at the same hours.
struct Both {
    scene: Scene,
    dinner: ChatId,
    feast: ChatId,
    tom: ChatId,
}

impl Both {
    fn planned() -> Self {
        let scene = Scene::play_text(
            "zone America/Chicago
             locale en-US
             room group
             people Rosa, Tom, Ana
             2027-11-22 09:00 * Tom starts
             2027-11-22 09:01 Rosa: /plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325
             2027-11-22 09:02 Rosa > Accept
             2027-11-22 09:03 Tom: /take salt
             2027-11-22 09:03 Tom: /take check\n",
        );
        let feast = scene.telegram.group("Feast", &["Ana", "Tom"]);
        let (dinner, tom) = (scene.group, scene.id("Tom"));
        let both = Self { scene, dinner, feast, tom };
        for words in
            ["/settings America/Chicago", "/plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325"]
        {
            both.say("Ana", feast, words);
        }
        both.press("Ana", feast, "Accept");
        both.say("Tom", feast, "/take salt");
        both.say("Tom", feast, "/take check");
        both
    }

    fn say(&self, name: &str, chat: ChatId, text: &str) {
        self.scene.telegram.say(name, chat, text);
        self.scene.rest();
    }

    fn press(&self, name: &str, chat: ChatId, label: &str) {
        let press = self.scene.telegram.press(name, chat, label);
        self.scene.telegram.answer(&press);
        self.scene.rest();
    }

    /// Tom replies to what he was told about a group.
    fn reply(&self, group: &str, text: &str) {
        let call = self.call(group);
        self.scene.telegram.reply("Tom", self.tom, call.id, text);
        self.scene.rest();
    }

    fn run_to(&mut self, local: &str) {
        let naive = NaiveDateTime::parse_from_str(local, "%Y-%m-%d %H:%M").unwrap();
        let at = self.scene.zone.from_local_datetime(&naive).unwrap().to_utc();
        self.scene.run_to(at);
    }

    /// The newest message to Tom that speaks of the group.
    fn call(&self, group: &str) -> Message {
        let said = self.scene.telegram.said(self.tom);
        let found = said.into_iter().rev().find(|message| message.text.contains(group));
        found.unwrap_or_else(|| panic!("nothing of {group}:\n{}", self.scene.transcript()))
    }

    fn room(&self, chat: ChatId) -> Option<Room> {
        self.scene.engine.pages().room(RoomId(chat)).unwrap()
    }

    fn plan(&self, chat: ChatId) -> LivePlan {
        self.room(chat).unwrap().plan.unwrap()
    }

    fn salted(&self, chat: ChatId) -> bool {
        let plan = self.plan(chat);
        let salt = plan.jobs.iter().find(|job| job.step == "salt").unwrap();
        matches!(salt.state, JobState::Done { .. })
    }

    /// How often a bird was read.
    fn readings(&self, chat: ChatId) -> usize {
        self.plan(chat).readings.len()
    }
}

#[test]
fn a_private_call_says_which_dinner_and_its_buttons_reach_that_one() {
    let mut both = Both::planned();
    both.run_to("2027-11-23 18:31");
    let (dinner, feast) = (both.call("Dinner"), both.call("Feast"));
    assert_ne!(dinner.id, feast.id, "{}", both.scene.transcript());
    for call in [&dinner, &feast] {
        assert!(call.text.contains("Salt the bird"), "{}", call.text);
        assert_eq!(call.labels(), ["Done", "Later", "Skip"], "{}", both.scene.transcript());
    }
    let done = dinner.buttons.iter().flatten().find(|(label, _)| label == "Done").unwrap();
    let press = both.scene.telegram.press_data("Tom", &dinner, &done.1, "Done");
    both.scene.telegram.answer(&press);
    both.scene.rest();
    assert!(both.salted(both.dinner) && !both.salted(both.feast), "{}", both.scene.transcript());
    // The other call stands as it was.
    let standing = both.call("Feast");
    assert_eq!((standing.id, standing.labels()), (feast.id, feast.labels()), "{}", both.scene.transcript());
    let said = both.scene.telegram.said(both.tom);
    let pressed = said.iter().find(|message| message.id == dinner.id).unwrap();
    assert_eq!(pressed.labels(), ["Undo"], "{pressed:?}");
}

#[test]
fn a_reply_to_a_private_call_is_heard_where_the_call_came_from() {
    for (group, other) in [("Dinner", "Feast"), ("Feast", "Dinner")] {
        let mut both = Both::planned();
        both.run_to("2027-11-23 18:31");
        let (meant, unmeant) = if group == "Dinner" { (both.dinner, both.feast) } else { (both.feast, both.dinner) };
        both.reply(group, "done");
        assert!(both.salted(meant) && !both.salted(unmeant), "{group}:\n{}", both.scene.transcript());
        both.reply(other, "done");
        assert!(both.salted(unmeant), "{group}:\n{}", both.scene.transcript());

        both.run_to("2027-11-25 14:30");
        both.reply(group, "breast 118, thigh 126");
        assert_eq!((both.readings(meant), both.readings(unmeant)), (1, 0), "{group}:\n{}", both.scene.transcript());
        assert!(both.call(group).text.contains("Noted: breast 118"), "{}", both.scene.transcript());
        both.reply(other, "breast 121, thigh 128");
        assert_eq!((both.readings(meant), both.readings(unmeant)), (1, 1), "{group}:\n{}", both.scene.transcript());
        // What was answered says whose it was, and is replied to as a call is.
        both.run_to("2027-11-25 14:40");
        both.reply(group, "breast 122, thigh 130");
        assert_eq!((both.readings(meant), both.readings(unmeant)), (2, 1), "{group}:\n{}", both.scene.transcript());
    }
}

#[test]
fn a_group_that_is_forgotten_takes_nothing_of_the_other_along() {
    let mut both = Both::planned();
    both.run_to("2027-11-23 18:31");
    let feast = both.call("Feast");
    both.say("Rosa", both.dinner, "/forget");
    both.press("Rosa", both.dinner, "Yes");
    assert!(both.room(both.dinner).is_none_or(|room| room.plan.is_none()), "{}", both.scene.transcript());
    let standing = both.call("Feast");
    assert_eq!((standing.id, standing.labels()), (feast.id, feast.labels()), "{}", both.scene.transcript());
    both.reply("Feast", "done");
    assert!(both.salted(both.feast), "{}", both.scene.transcript());
    let check = |both: &Both| both.plan(both.feast).jobs.iter().find(|job| job.step == "check").unwrap().owner;
    assert_eq!(check(&both), Some(PersonId(both.tom)));
    // He is still called for it.
    both.run_to("2027-11-25 14:30");
    let called = both.call("Feast");
    assert!(called.text.contains("Time for a look"), "{}", both.scene.transcript());
}

#[test]
fn a_call_is_known_as_its_groups_after_that_has_moved() {
    let mut both = Both::planned();
    both.run_to("2027-11-23 18:31");
    let call = both.call("Dinner");
    both.dinner = both.scene.telegram.migrate(both.dinner);
    both.scene.rest();
    both.press("Rosa", both.dinner, "Done"); // on the board
    assert!(both.salted(both.dinner) && !both.salted(both.feast), "{}", both.scene.transcript());
    let said = both.scene.telegram.said(both.tom);
    let standing = |id: i64| said.iter().find(|message| message.id == id).unwrap().labels();
    assert_eq!(standing(call.id), ["Undo"], "{}", both.scene.transcript());
    assert_eq!(standing(both.call("Feast").id), ["Done", "Later", "Skip"]);
}

#[test]
fn whoever_has_a_bird_of_their_own_too_replies_for_the_groups() {
    let mut both = Both::planned();
    both.say("Tom", both.tom, "/settings America/Chicago");
    both.say("Tom", both.tom, "/plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325");
    both.press("Tom", both.tom, "Accept");
    both.run_to("2027-11-23 18:31");
    both.reply("Dinner", "done");
    assert!(both.salted(both.dinner) && !both.salted(both.tom), "{}", both.scene.transcript());
    both.say("Tom", both.tom, "salted it");
    assert!(both.salted(both.tom) && !both.salted(both.feast), "{}", both.scene.transcript());
}
