//! The log tells a day's story to whoever runs the program, and nothing about the people in it, however much is logged.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::kitchen::Kitchen;

#[test]
fn the_log_tells_what_happens_and_not_to_whom() {
    let kitchen = Kitchen::loud();
    let telegram = &kitchen.telegram;
    let group = telegram.group("Zibeline supper", &["Quillemina", "Osbertine"]);
    telegram.add_bot("Quillemina", group);
    let private = telegram.person("Osbertine");
    let now = kitchen.clock.now();
    kitchen.plan("Quillemina", group);
    telegram.say("Osbertine", group, "/take carve");
    telegram.settle();
    telegram.say("Quillemina", group, "/plan add zabaglione on the stove 20 min");
    telegram.settle();
    telegram.say("Osbertine", group, "bought it");
    telegram.settle();
    telegram.say("Quillemina", group, "/move +20 min");
    telegram.settle();
    kitchen.wait_until(now + chrono::TimeDelta::days(7));
    kitchen.wait_until(now + chrono::TimeDelta::days(9));
    let log = kitchen.program().log();
    for told in ["a plan begins", "dinner moves", "done", "called"] {
        assert!(log.contains(told), "{told:?} is told: {log}");
    }
    let ids = [group.to_string(), private.to_string()];
    let people = ["Quillemina", "Osbertine", "Zibeline", "zabaglione", "bought it"];
    for secret in people.into_iter().chain(ids.iter().map(String::as_str).filter(|id| id.len() > 4)) {
        let line = log.lines().find(|line| line.contains(secret));
        assert!(line.is_none(), "{secret:?} stands in the log: {line:?}");
    }
}
