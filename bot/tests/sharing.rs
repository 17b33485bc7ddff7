//! Several people share the jobs of one dinner: asking, offering, calling on, coming and going.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{How, LINK, PersonId, RoomKind, Say, To, What};
use chrono::Timelike;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const ROSA: PersonId = PersonId(1);
const TOM: PersonId = PersonId(2);
const LI: PersonId = PersonId(3);

/// Rosa's dinner; Tom and Li are in the group.
fn shared() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-20 09:30");
    kitchen.say("Rosa", "/plan 14.5 lb frozen turkey, dinner Thursday 5 pm, 11 people, smoker at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Tom", "/board");
    kitchen.say("Li", "/board");
    kitchen
}

fn reachable(kitchen: &mut Kitchen, who: PersonId) {
    kitchen.scene.people.get_mut(&who).unwrap().reachable = true;
}

fn owner(kitchen: &Kitchen, step: &str) -> Option<PersonId> {
    kitchen.scene.room.plan.as_ref().unwrap().jobs.iter().find(|job| job.step == step).unwrap().owner
}

/// The data of the newest button that opens the private chat.
fn link(said: &[Say]) -> String {
    let buttons = said.iter().rev().flat_map(|say| say.buttons.iter().flatten());
    buttons.map(|button| button.data.clone()).find(|data| data.starts_with(LINK)).expect("a link")
}

fn follow(kitchen: &mut Kitchen, who: &str, data: &str) -> String {
    let text = format!("/start {}", data.strip_prefix(LINK).unwrap());
    kitchen.hear_privately(who, What::Said { text, addressed: true, reply_to: None, edited: false })
}

#[test]
fn whoever_is_asked_has_the_job_only_when_they_say_yes() {
    let mut kitchen = shared();
    let asked = kitchen.say("Rosa", "/take carve Tom");
    assert!(asked.contains("Tom:") && asked.contains("Rosa asks: can you do this? Carve"), "{asked}");
    assert_eq!(owner(&kitchen, "carve"), None);
    let refused = kitchen.press("Li", "Yes");
    assert!(
        refused.starts_with("[") && refused.contains("(notice)") && refused.contains("That's for Tom"),
        "{refused}"
    );
    assert_eq!(owner(&kitchen, "carve"), None);
    let yes = kitchen.press("Tom", "Yes");
    assert!(yes.contains("Tom does it: Carve"), "{yes}");
    assert_eq!(owner(&kitchen, "carve"), Some(TOM));
    assert!(kitchen.press("Tom", "No").contains("settled already"));
    assert_eq!(owner(&kitchen, "carve"), Some(TOM));
}

#[test]
fn words_ask_as_well_and_a_no_changes_nothing() {
    let mut kitchen = shared();
    kitchen.say("Rosa", "/take fire");
    kitchen.say("Rosa", "give the fire to Li");
    assert_eq!(owner(&kitchen, "fire"), Some(ROSA));
    assert!(kitchen.press("Li", "No").contains("Li can't"));
    assert_eq!(owner(&kitchen, "fire"), Some(ROSA));
}

#[test]
fn a_name_is_known_as_people_type_it() {
    for (name, typed) in [
        ("👩‍🍳 Ana", "ana"),
        ("Anne-Marie", "Anne-Marie"),
        ("נועה לוי", "\u{2068}נועה\u{2069}"),
        ("\u{202E}Eve\u{2067}", "Eve"),
        ("Ro\u{200B}sa", "rosa"),
    ] {
        let mut kitchen = shared();
        kitchen.say(name, "/board");
        let asked = kitchen.say("Tom", &format!("/take carve {typed}"));
        assert!(asked.contains("can you do this? Carve"), "{name}: {asked}");
    }
}

#[test]
fn one_s_own_job_is_given_away_by_oneself_or_the_host_alone() {
    let mut kitchen = shared();
    kitchen.say("Tom", "/take fire");
    let refused = kitchen.say("Li", "/take fire Rosa");
    assert!(refused.contains("Only they, the host or an admin"), "{refused}");
    assert!(kitchen.say("Rosa", "/take fire Li").contains("Rosa asks"));
    kitchen.press("Li", "Yes");
    assert_eq!(owner(&kitchen, "fire"), Some(LI));
}

#[test]
fn the_pages_lead_from_the_jobs_to_a_person_and_back() {
    let mut kitchen = shared();
    reachable(&mut kitchen, TOM);
    kitchen.press("Rosa", "Share the jobs");
    kitchen.press("Rosa", "Ask someone…");
    let people = kitchen.press("Rosa", "Carve");
    assert!(people.contains("[Tom] [Li]") && people.contains("[Back]"), "{people}");
    let asked = kitchen.press("Rosa", "Tom");
    assert!(asked.contains("(to 2)") && asked.contains("I'll ask Tom"), "{asked}");
    assert!(!asked.contains("(to 3)"), "{asked}");
    let data = kitchen.said.iter().flat_map(|say| say.buttons.iter().flatten()).rfind(|b| b.data.contains("willing."));
    let data = data.unwrap().data.rsplit_once(':').unwrap().1.replace("unwilling", "willing");
    let yes = kitchen.hear_privately("Tom", What::Pressed { press: "p".into(), data, on: None });
    assert!(yes.contains("(to 2)") && owner(&kitchen, "carve") == Some(TOM), "{yes}");
}

#[test]
fn free_jobs_are_offered_together_and_vanish_from_the_offer_when_taken() {
    let mut kitchen = shared();
    kitchen.run_to("2027-11-23 12:00");
    kitchen.say("Tom", "/take salt");
    let offers = kitchen.run_to("2027-11-25 09:00");
    let evening = offers.lines().filter(|line| line.contains("Nobody has these yet")).count();
    assert_eq!(evening, 1, "{offers}");
    assert!(!offers.contains("[Take: Salt the bird]"), "{offers}");
    let left = kitchen.press("Li", "Take: Carve");
    assert!(left.contains("Edit: Nobody has these yet") && !left.contains("[Take: Carve]"), "{left}");
}

#[test]
fn a_group_of_one_is_offered_nothing() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-20 09:30");
    kitchen.say("Rosa", "/plan 14.5 lb frozen turkey, dinner Thursday 5 pm, 11 people, smoker at 325");
    kitchen.press("Rosa", "Accept");
    assert!(!kitchen.run_to("2027-11-25 23:00").contains("Nobody has these yet"));
}

#[test]
fn at_night_whoever_has_the_job_is_called_again_and_the_others_sleep() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-23 17:02");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, bought, dinner Thursday 1 pm, 10 people, smoker at 275");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Tom", "/board");
    kitchen.say("Li", "/board");
    reachable(&mut kitchen, TOM);
    kitchen.say("Tom", "/take fire");
    kitchen.run_to("2027-11-23 19:00");
    kitchen.say("Rosa", "salted it");
    let fire = kitchen.scene.room.plan.as_ref().unwrap().jobs.iter().find(|job| job.step == "fire").unwrap().at;
    assert!(fire.with_timezone(&Chicago).hour() < 6, "{fire}");
    kitchen.now = fire - chrono::TimeDelta::minutes(5);
    let from = kitchen.said.len();
    let end = (fire + chrono::TimeDelta::minutes(25)).with_timezone(&Chicago).format("%Y-%m-%d %H:%M").to_string();
    kitchen.run_to(&end);
    let calls = kitchen.said[from..].iter().filter(|say| say.key.as_deref() == Some("job-fire-0"));
    let calls: Vec<&To> = calls.map(|say| &say.to).take(2).collect();
    assert_eq!(calls, [&To::Person(TOM), &To::Person(TOM)]);
}

#[test]
fn a_call_goes_up_the_ladder_each_rung_once_and_ends_with_an_answer() {
    let mut kitchen = shared();
    for who in [ROSA, TOM, LI] {
        reachable(&mut kitchen, who);
    }
    kitchen.run_to("2027-11-25 09:00");
    kitchen.say("Tom", "/take carve");
    kitchen.run_to("2027-11-25 16:00");
    let carve = kitchen.scene.room.plan.as_ref().unwrap().jobs.iter().find(|job| job.step == "carve").unwrap().at;
    let until = |minutes| {
        (carve + chrono::TimeDelta::minutes(minutes)).with_timezone(&Chicago).format("%Y-%m-%d %H:%M").to_string()
    };
    let from = kitchen.said.len();
    kitchen.run_to(&until(50));
    let calls: Vec<&To> = kitchen.said[from..]
        .iter()
        .filter(|say| say.key.as_deref() == Some("job-carve-0"))
        .map(|say| &say.to)
        .collect();
    let room = To::Room(kitchen.scene.room.id);
    assert_eq!(calls, [&To::Person(TOM), &room, &To::Person(LI), &To::Person(ROSA)]);

    let mut kitchen = shared();
    kitchen.run_to("2027-11-25 09:00");
    kitchen.say("Tom", "/take carve");
    kitchen.run_to(&until(5));
    kitchen.say("Tom", "carved");
    let from = kitchen.said.len();
    kitchen.run_to(&until(50));
    assert!(kitchen.said[from..].iter().all(|say| say.key.as_deref() != Some("job-carve-0")));
}

#[test]
fn a_job_its_owner_does_not_answer_for_may_be_taken_by_another() {
    let mut kitchen = shared();
    kitchen.run_to("2027-11-25 09:00");
    kitchen.say("Tom", "/take carve");
    assert!(kitchen.say("Li", "/take carve").contains("Tom has that one"));
    let carve = kitchen.scene.room.plan.as_ref().unwrap().jobs.iter().find(|job| job.step == "carve").unwrap().at;
    let late = (carve + chrono::TimeDelta::minutes(29)).with_timezone(&Chicago).format("%Y-%m-%d %H:%M").to_string();
    kitchen.run_to(&late);
    kitchen.say("Li", "/take carve");
    assert_eq!(owner(&kitchen, "carve"), Some(LI));
}

#[test]
fn a_link_reaches_one_person_once() {
    let mut kitchen = shared();
    kitchen.scene.room.title = Some("Thursday table".into());
    assert!(kitchen.say("Tom", "/take carve").contains("[Remind me privately]"));
    let data = link(&kitchen.said);
    let came = follow(&mut kitchen, "Ana", &data);
    assert!(came.contains("(to 4)") && came.contains("Thursday table"), "{came}");
    kitchen.inside = None;
    assert!(kitchen.scene.room.members.contains(&PersonId(4)));
    assert!(kitchen.scene.people[&PersonId(4)].reachable);
    assert!(follow(&mut kitchen, "Ana", &data).contains("From now on"), "following it again does no harm");
    assert!(follow(&mut kitchen, "Eve", &data).contains("used or is too old"));
    assert!(!kitchen.scene.room.members.contains(&PersonId(5)));
}

#[test]
fn a_forwarded_link_lets_nobody_in_who_is_not_in_the_group() {
    let mut kitchen = shared();
    kitchen.scene.room.title = Some("Thursday table".into());
    kitchen.say("Tom", "/take carve");
    let data = link(&kitchen.said);
    for (inside, told) in [(Some(false), "for people in the group"), (None, "Press any button there")] {
        kitchen.inside = inside;
        let refused = follow(&mut kitchen, "Ana", &data);
        assert!(refused.contains("(to 4)") && refused.contains(told), "{refused}");
        assert!(!refused.contains("Thursday table"), "what the group is called is none of theirs: {refused}");
        assert!(!kitchen.scene.room.members.contains(&PersonId(4)));
    }
    // It stays good for whom it was made, and for those heard in the group nobody need be asked.
    assert!(follow(&mut kitchen, "Tom", &data).contains("From now on"));
    // Who has gone without a word of it is not called from the group again.
    kitchen.inside = Some(false);
    assert!(follow(&mut kitchen, "Tom", &data).contains("for people in the group"));
}

#[test]
fn what_is_kept_of_a_room_opens_none_of_its_links() {
    let mut kitchen = shared();
    kitchen.say("Tom", "/take carve");
    let data = link(&kitchen.said);
    let secret = &data[data.len() - 32..];
    let mut kept = serde_json::to_value(&kitchen.scene.room).unwrap();
    assert!(!kept.to_string().contains(secret), "the secret itself");
    let hash = kept["invites"][0]["secret"].as_str().unwrap().to_owned();
    for made_of_it in [hash.as_str(), &hash[hash.len() - 32..]] {
        let made_up = format!("{}{made_of_it}", &data[..data.len() - 32]);
        assert!(!follow(&mut kitchen, "Eve", &made_up).contains("From now on"), "{made_of_it}");
    }
    // An earlier version kept the secret as it was: its links go on, and the next time the room is kept, that is over.
    kept["invites"][0]["secret"] = secret.into();
    kitchen.scene.room = serde_json::from_value(kept).unwrap();
    assert!(!serde_json::to_string(&kitchen.scene.room).unwrap().contains(secret));
    assert!(follow(&mut kitchen, "Ana", &data).contains("From now on"));
}

#[test]
fn a_link_ends_after_two_days_and_a_made_up_one_opens_nothing() {
    let mut kitchen = shared();
    kitchen.say("Tom", "/take carve");
    let data = link(&kitchen.said);
    let made_up = format!("{}{}", &data[..data.len() - 32], "0".repeat(32));
    assert!(follow(&mut kitchen, "Eve", &made_up).contains("too old"));
    kitchen.now += chrono::TimeDelta::hours(49);
    assert!(follow(&mut kitchen, "Eve", &data).contains("too old"));
    assert!(kitchen.scene.room.members.iter().all(|who| *who != PersonId(4)));
}

#[test]
fn without_chance_nothing_is_handed_out_that_could_be_guessed() {
    let mut kitchen = shared();
    kitchen.scene.chance = 0;
    assert!(!kitchen.say("Tom", "/take carve").contains("Remind me privately"));
}

#[test]
fn what_someone_had_is_free_when_they_leave_and_their_buttons_are_dead() {
    let mut kitchen = shared();
    kitchen.say("Tom", "/take carve");
    let said = kitchen.hear(None, What::Left { who: TOM });
    assert!(said.contains("Tom has left"), "{said}");
    assert_eq!(owner(&kitchen, "carve"), None);
    let data = format!("take.{}.carve.0", kitchen.scene.room.plan.as_ref().unwrap().serial);
    let refused = kitchen.hear_privately("Tom", What::Pressed { press: "p".into(), data, on: None });
    assert!(refused.contains("(notice)") && owner(&kitchen, "carve").is_none(), "{refused}");
    assert_eq!(kitchen.hear(None, What::Left { who: TOM }), "", "told twice, said once");
}

#[test]
fn whoever_left_does_not_come_back_by_an_open_link() {
    let mut kitchen = shared();
    kitchen.say("Tom", "/take carve");
    let data = link(&kitchen.said);
    kitchen.hear(None, What::Left { who: TOM });
    assert!(follow(&mut kitchen, "Tom", &data).contains("used or is too old"));
    assert!(!kitchen.scene.room.members.contains(&TOM));
}

#[test]
fn a_plan_whose_host_leaves_goes_to_the_next() {
    let mut kitchen = shared();
    let said = kitchen.hear(None, What::Left { who: ROSA });
    assert!(said.contains("Rosa has left. Tom answers for the dinner now."), "{said}");
    assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().host, TOM);
}

/// What a turn says.
fn turn(kitchen: &mut Kitchen, who: &str, text: &str) -> Vec<Say> {
    let before = kitchen.said.len();
    kitchen.say(who, text);
    kitchen.said.split_off(before)
}

/// What of it is said privately to someone, a text each.
fn privately(said: &[Say], who: PersonId) -> Vec<String> {
    said.iter().filter(|say| say.to == To::Person(who)).map(|say| format!("{:?}", say.text)).collect()
}

#[test]
fn whoever_has_a_job_hears_once_and_privately_that_others_moved_it() {
    let mut kitchen = shared();
    reachable(&mut kitchen, TOM);
    reachable(&mut kitchen, ROSA);
    kitchen.say("Tom", "/take carve");
    kitchen.say("Rosa", "/take chill");
    let said = turn(&mut kitchen, "Rosa", "/move 5:05 pm");
    assert!(privately(&said, TOM).is_empty(), "five minutes are no news");
    let said = turn(&mut kitchen, "Rosa", "/move 5:10 pm");
    let told = privately(&said, TOM);
    assert_eq!(told.len(), 1, "ten since they were told: {told:?}");
    assert!(told[0].contains("sharing-moved") && told[0].contains("carve") && !told[0].contains("chill"), "{told:?}");
    assert!(privately(&said, ROSA).is_empty(), "she moved it herself");
    let said = turn(&mut kitchen, "Li", "/board");
    assert!(privately(&said, TOM).is_empty(), "once");
    assert_eq!(privately(&turn(&mut kitchen, "Rosa", "/move 7 pm"), TOM).len(), 1);
    assert_eq!(privately(&turn(&mut kitchen, "Rosa", "/undo"), TOM).len(), 1, "back is a move as well");
}

#[test]
fn what_concerns_one_alone_is_no_news_to_the_group() {
    let mut kitchen = shared();
    reachable(&mut kitchen, TOM);
    kitchen.say("Rosa", "/take salt");
    for text in ["/take carve", "/take carve", "/take salt", "/drop carve", "/move 8 pm"] {
        let said = turn(&mut kitchen, "Tom", text);
        let room = To::Room(kitchen.scene.room.id);
        let loud: Vec<&Say> = said.iter().filter(|say| say.to == room && say.how == How::New).collect();
        assert!(loud.is_empty(), "{text}: {loud:#?}");
        assert_eq!(privately(&said, TOM).len(), 1, "{text}");
    }
    // Whom no private message reaches is answered where they spoke.
    let said = turn(&mut kitchen, "Li", "/take salt");
    assert!(said.iter().any(|say| say.to == To::Room(kitchen.scene.room.id)), "{said:#?}");
}

#[test]
fn whoever_says_they_will_do_a_job_has_it_and_a_story_takes_nothing() {
    let mut kitchen = shared();
    kitchen.say("Tom", "I'll carve");
    assert_eq!(owner(&kitchen, "carve"), Some(TOM));
    kitchen.say("Li", "I'll do the salting tomorrow");
    assert_eq!(owner(&kitchen, "salt"), Some(LI));
    assert!(kitchen.say("Li", "I'll carve").contains("Tom has that one"));
    assert_eq!(owner(&kitchen, "carve"), Some(TOM));
    // Said to each other, what may be about anything takes nothing; what can't mean anything else does.
    let aside = |text: &str| What::Said { text: text.into(), addressed: false, reply_to: None, edited: false };
    for text in ["I'll check", "I'll drive", "I'll carve out some time", "I'll bring the wine", "can I buy it?"] {
        assert_eq!(kitchen.hear(Some("Li"), aside(text)), "", "{text}");
    }
    assert_eq!(owner(&kitchen, "check"), None);
    assert!(kitchen.say("Tom", "who's doing what?").contains("Carve (Tom)"));
}

/// Hours of which quiet hours begin in a person's own zone.
fn quiet(kitchen: &mut Kitchen, who: PersonId, from: &str, to: &str) {
    kitchen.scene.people.get_mut(&who).unwrap().quiet = Some((from.parse().unwrap(), to.parse().unwrap()));
}

/// The chats called for a job of the plan, one after the other, until `local`.
fn called(kitchen: &mut Kitchen, step: &str, local: &str) -> Vec<To> {
    let before = kitchen.said.len();
    kitchen.run_to(local);
    let key = format!("job-{step}-0");
    let calls = kitchen.said[before..].iter().filter(|say| say.key.as_deref() == Some(&key) && say.how == How::New);
    calls.map(|say| say.to.clone()).collect()
}

#[test]
fn everyone_is_called_once_though_the_others_fall_asleep_in_between() {
    let mut kitchen = shared();
    [ROSA, TOM, LI].into_iter().for_each(|who| reachable(&mut kitchen, who));
    // The carving is called at half past four: Tom at the second rung, and Li sleeps from before the third.
    quiet(&mut kitchen, LI, "16:40:00", "22:00:00");
    let heard = called(&mut kitchen, "carve", "2027-11-25 17:20");
    let here = To::Room(kitchen.scene.room.id);
    assert_eq!(heard, [here, To::Person(TOM), To::Person(ROSA)]);
}

#[test]
fn quiet_hours_run_on_their_owner_s_clock() {
    let mut kitchen = shared();
    [ROSA, TOM, LI].into_iter().for_each(|who| reachable(&mut kitchen, who));
    // Half past four in Chicago is half past ten at night where Li is.
    quiet(&mut kitchen, LI, "22:00:00", "07:00:00");
    kitchen.scene.people.get_mut(&LI).unwrap().taste.zone = Some("Europe/London".into());
    let heard = called(&mut kitchen, "carve", "2027-11-25 17:20");
    assert!(heard.contains(&To::Person(TOM)) && !heard.contains(&To::Person(LI)), "{heard:?}");
}

#[test]
fn whoever_sleeps_through_their_own_job_is_called_when_they_wake_or_at_once_if_it_stays_theirs() {
    for stays in [false, true] {
        let mut kitchen = shared();
        [ROSA, TOM, LI].into_iter().for_each(|who| reachable(&mut kitchen, who));
        kitchen.say("Tom", "/take carve");
        quiet(&mut kitchen, TOM, "11:00:00", "15:45:00");
        let moved = kitchen.say("Rosa", "/move thursday 4 pm");
        assert!(moved.contains("now falls in your quiet hours") && moved.contains("[Still mine: Carve]"), "{moved}");
        if stays {
            let data = kitchen.said.last().unwrap().buttons[0][0].data.strip_prefix("r-100:").unwrap().to_owned();
            let kept = kitchen.hear_privately("Tom", What::Pressed { press: "p".into(), data, on: None });
            assert!(kept.contains("Yours: Carve"), "{kept}");
        }
        let heard = called(&mut kitchen, "carve", "2027-11-25 15:42");
        let first = if stays { To::Person(TOM) } else { To::Room(kitchen.scene.room.id) };
        assert_eq!(heard.first(), Some(&first), "{heard:?}");
        assert_eq!(heard.contains(&To::Person(TOM)), stays, "{heard:?}");
        let later = called(&mut kitchen, "carve", "2027-11-25 15:55");
        assert_eq!(later.contains(&To::Person(TOM)), !stays, "{later:?}");
    }
}

#[test]
fn whatever_else_comes_in_quiet_hours_comes_without_a_sound() {
    let mut kitchen = shared();
    [ROSA, TOM, LI].into_iter().for_each(|who| reachable(&mut kitchen, who));
    kitchen.say("Tom", "/take carve");
    let to_tom = |kitchen: &Kitchen| {
        let says = kitchen.said.iter().rev().find(|say| say.to == To::Person(TOM));
        says.map(|say| say.how).expect("told")
    };
    for (asleep, how) in [(false, How::New), (true, How::Quiet)] {
        let until = if asleep { "23:00:00" } else { "09:10:00" };
        quiet(&mut kitchen, TOM, "09:00:00", until);
        let hour = if asleep { "6" } else { "7" };
        let moved = kitchen.say("Rosa", &format!("/move thursday {hour} pm"));
        assert!(moved.contains("Your job has moved") || moved.contains("(to 2)"), "{moved}");
        assert_eq!(to_tom(&kitchen), how, "{moved}");
        let step = if asleep { "fire" } else { "salt" };
        assert!(kitchen.say("Rosa", &format!("/take {step} Tom")).contains("can you do this?"));
        assert_eq!(to_tom(&kitchen), how);
    }
    kitchen.say("Rosa", "/stop");
    let over = kitchen.press("Rosa", "Yes");
    assert!(over.contains("(to 2)"), "{over}");
    assert_eq!(to_tom(&kitchen), How::Quiet);
}

#[test]
fn one_water_after_the_other_without_an_answer_goes_up_the_ladder() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-25 05:00");
    kitchen.say(
        "Rosa",
        "/plan 12 lb frozen turkey, have it, cold water, dinner today 7 pm, 8 people, oven at 325, no salt",
    );
    kitchen.press("Rosa", "Accept");
    for who in ["Tom", "Li"] {
        kitchen.say(who, "/board");
    }
    [ROSA, TOM, LI].into_iter().for_each(|who| reachable(&mut kitchen, who));
    kitchen.say("Tom", "/take water");
    kitchen.say("Rosa", "it's in the water");
    let before = kitchen.said.len();
    kitchen.run_to("2027-11-25 09:00");
    let of_water =
        |say: &&Say| say.key.as_deref().is_some_and(|key| key.starts_with("job-water-")) && say.how == How::New;
    let called: Vec<To> = kitchen.said[before..].iter().filter(of_water).map(|say| say.to.clone()).collect();
    let (tom, li, rosa) = (To::Person(TOM), To::Person(LI), To::Person(ROSA));
    assert_eq!(called[..4], [tom.clone(), tom.clone(), li, rosa], "{called:?}");
    assert!(called[4..].iter().all(|to| *to == tom), "each once: {called:?}");
}

/// New messages of those calls until `local`, and whom they are for.
fn called_for(kitchen: &mut Kitchen, prefix: &str, local: &str) -> Vec<(String, To)> {
    let before = kitchen.said.len();
    kitchen.run_to(local);
    let calls = kitchen.said[before..].iter().filter(|say| say.how == How::New);
    calls.filter_map(|say| Some((say.key.clone().filter(|key| key.starts_with(prefix))?, say.to.clone()))).collect()
}

#[test]
fn the_shopping_goes_up_the_ladder_as_other_jobs_do() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-20 09:30");
    kitchen.say("Rosa", "/plan 14.5 lb frozen turkey, dinner Thursday 5 pm, 11 people, smoker at 325");
    for who in ["Tom", "Li"] {
        kitchen.say(who, "/board");
    }
    [ROSA, TOM, LI].into_iter().for_each(|who| reachable(&mut kitchen, who));
    kitchen.press("Rosa", "Accept");
    kitchen.say("Tom", "/take buy");
    let called: Vec<To> =
        called_for(&mut kitchen, "job-buy-", "2027-11-20 20:00").into_iter().map(|(_, to)| to).collect();
    let room = To::Room(kitchen.scene.room.id);
    // And in the evening whoever has it is asked whether it is bought.
    assert_eq!(called, [To::Person(TOM), room, To::Person(LI), To::Person(ROSA), To::Person(TOM)]);
}

#[test]
fn of_the_looks_nobody_answers_only_the_last_goes_up_the_ladder() {
    let mut kitchen = shared();
    [ROSA, TOM, LI].into_iter().for_each(|who| reachable(&mut kitchen, who));
    kitchen.run_to("2027-11-25 09:00");
    kitchen.say("Tom", "/take check");
    kitchen.run_to("2027-11-25 12:10");
    kitchen.say("Rosa", "the bird is on");
    let jobs = &kitchen.scene.room.plan.as_ref().unwrap().jobs;
    let last = jobs.iter().filter(|job| job.step == "check").map(|job| job.nth).max().unwrap();
    assert!(last > 0, "more than one look");
    let pull = jobs.iter().find(|job| job.step == "pull").unwrap().at;
    let heard = called_for(&mut kitchen, "job-check-", "2027-11-25 20:00");
    let of =
        |nth: u8| heard.iter().filter(move |(key, _)| *key == format!("job-check-{nth}")).map(|(_, to)| to.clone());
    for early in 0..last {
        assert!(of(early).count() <= 1, "{heard:?}");
    }
    let calls: Vec<To> = of(last).collect();
    let ladder = [To::Person(TOM), To::Room(kitchen.scene.room.id), To::Person(LI), To::Person(ROSA)];
    assert!(calls.len() > 1 && ladder.starts_with(&calls), "{heard:?} before {pull}");
}

#[test]
fn a_look_is_not_called_again_once_there_is_something_to_go_by() {
    let mut kitchen = shared();
    kitchen.run_to("2027-11-25 12:10");
    kitchen.say("Rosa", "the bird is on");
    kitchen.run_to("2027-11-25 14:40");
    kitchen.say("Tom", "breast 140, thigh 146, smoker 325");
    let heard = called_for(&mut kitchen, "job-check-", "2027-11-25 15:40");
    let mut keys: Vec<&String> = heard.iter().map(|(key, _)| key).collect();
    keys.dedup();
    assert_eq!(keys.len(), heard.len(), "{heard:?}");
}

#[test]
fn what_is_done_again_and_again_is_offered_as_one_job_and_once() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:30");
    kitchen.say("Rosa", "/plan 12 lb frozen turkey, have it, cold water, dinner Thursday 5 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    for who in ["Tom", "Li"] {
        kitchen.say(who, "/board");
    }
    let offers = kitchen.run_to("2027-11-25 23:00");
    let mut inside = false;
    let lines = offers.lines().filter(|line| {
        inside =
            if line.starts_with('[') { line.contains("New: ") && line.contains("obody has these") } else { inside };
        inside && line.contains(" · ")
    });
    let lines: Vec<&str> = lines.collect();
    let of = |what: &str| lines.iter().filter(|line| line.contains(what)).count();
    // Ahead and when it comes near; not a line for each of a dozen.
    assert!((1..=2).contains(&of("Change the thawing water, ")), "{offers}");
    assert!(offers.contains("times in all"), "{offers}");
    let messages = offers.lines().filter(|line| line.contains("New: ") && line.contains("obody has these")).count();
    for what in ["Check temperatures", "Into the fridge"] {
        assert!((1..=messages).contains(&of(what)), "{what} once in a message: {offers}");
    }
    assert!(messages <= 4, "{offers}");
    assert!(!offers.contains("[Take: Leftovers"), "{offers}");
}

#[test]
fn whoever_thaws_has_the_water_too_and_the_offer_shows_neither() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:30");
    kitchen.say("Rosa", "/plan 12 lb frozen turkey, have it, cold water, dinner Thursday 5 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Tom", "/board");
    let thaw = kitchen.scene.room.plan.as_ref().unwrap().jobs.iter().find(|job| job.step == "thaw").unwrap().at;
    let before = (thaw - chrono::TimeDelta::minutes(30)).with_timezone(&Chicago).format("%Y-%m-%d %H:%M").to_string();
    let offers = kitchen.run_to(&before);
    assert!(offers.contains("[Take: Start thawing]") && offers.contains("Change the thawing water"), "{offers}");
    let left = kitchen.press("Tom", "Take: Start thawing");
    let edit = left.lines().skip_while(|line| !line.contains("Edit: ")).take(3).collect::<Vec<_>>().join("\n");
    assert!(!left.contains("[Take: Change the thawing water]") && !edit.contains("Start thawing"), "{left}");
    assert_eq!(owner(&kitchen, "water"), Some(TOM));
}
