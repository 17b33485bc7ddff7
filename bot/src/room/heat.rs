//! The heat is set to something else: by a button that was offered, or by whoever stands at the oven and says so.

use super::live::Light;
use super::sitting::button;
use super::state::{LivePlan, WasSet};
use super::{Say, Sitting, board, jobs, may, order, readings, reports, undo};
use crate::reading::sentence::Sentence;
use crate::reading::{self, Wish};
use crate::words::{Arg, Text};
use carvetime_core::quantity::{Temperature, celsius, fahrenheit, in_celsius, in_fahrenheit};
use carvetime_core::roast::{self, Cooker};
use chrono::TimeDelta;

/// The pit goes up, as was offered.
pub(super) fn hotter(sitting: &mut Sitting<'_>, serial: u32, setting_f: u16) {
    if !may::steer(sitting) {
        return may::refuse(sitting);
    }
    let (light, by) = (sitting.light(), sitting.speaker());
    let allowed = |plan: &LivePlan| {
        let order = plan.order(light.zone)?;
        let offered = order::hotter_settings(&order.heat);
        offered.into_iter().find(|setting| (in_fahrenheit(*setting) - f64::from(setting_f)).abs() < 0.5)
    };
    let plan = sitting.room.plan.as_mut().filter(|plan| plan.serial == serial && !plan.is_off());
    let Some((plan, setting)) =
        plan.and_then(|plan| Some((allowed(plan)?, plan))).map(|(setting, plan)| (plan, setting))
    else {
        return sitting.notice(Text::new("room-stale"));
    };
    plan.remember("mended", None, by, light.now);
    turn(plan, in_celsius(setting), &light);
    let solved = sitting.solve_again();
    sitting.answer(Text::new("cook-hotter").with("setting", Arg::Temperature(setting))).key("hotter");
    if solved.sight.is_none()
        && let Err(conflict) = solved.outcome
    {
        jobs::tell_conflict(sitting, &conflict);
    }
    board::refresh(sitting);
}

/// The setting changes as of now; with the bird on, the forecast is told what it was until now.
pub(super) fn turn(plan: &mut LivePlan, setting_c: f64, light: &Light) {
    let before = plan.order(light.zone).map(|order| in_celsius(order.heat.setting));
    if let (Some(setting_c), true) = (before, plan.on_since(light.now).is_some()) {
        plan.was_set.push(WasSet { until: light.now, setting_c, elsewhere: false });
    }
    plan.wish.setting_c = Some(setting_c);
}

/// "I turned the oven up to 375": what the oven is set to from now on, whoever stands there. `false`: says nothing of it.
pub(super) fn sets_heat(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let sentence = Sentence::read(text, sitting.lexicon());
    let of_meat = ["spot-breast", "spot-thigh", "spot-wing"].iter().any(|spot| sentence.has(spot));
    // "The pies moved to the oven": of nothing else than the bird it is said without naming what.
    let moved = sentence.has("heat-moved") || sentence.is(0, "heat-moved-first");
    if of_meat || asks(text) || !sentence.has("heat-set") && !moved {
        return false;
    }
    let (wish, _) = reading::read_wish(text, &sitting.ground());
    let (light, by, us) = (sitting.light(), sitting.speaker(), sitting.us_units());
    if moved && moves_over(sitting, text, &wish) {
        return true;
    }
    if !sentence.has("heat-set") {
        return false;
    }
    let plan = sitting.room.plan.as_mut().filter(|plan| plan.on_since(light.now).is_some() && !plan.is_off());
    let told = wish.setting_c.filter(|_| wish.cooker.is_some()).or_else(|| turned_to(&sentence, us));
    let Some((plan, setting)) = plan.zip(told) else { return false };
    plan.remember("mended", None, by, light.now);
    turn(plan, setting, &light);
    let noted = Text::new("room-heat-set").with("setting", Arg::Temperature(celsius(setting)));
    tell(sitting, noted, setting);
    true
}

/// "Moved it to the oven at 325": another cooker from now on; an oven nobody has told the setting of is at the authority's. `false`: asked,
/// meant to be, or the same cooker.
fn moves_over(sitting: &mut Sitting<'_>, text: &str, wish: &Wish) -> bool {
    let Some(to) = wish.cooker.as_deref().and_then(Cooker::from_name) else { return false };
    let (light, by) = (sitting.light(), sitting.speaker());
    let lexicon = sitting.lexicon();
    let asks = text.contains(['?', '¿']) || reading::begins_as_question(text, lexicon);
    if asks || Sentence::read(text, lexicon).has("heat-later") {
        return false;
    }
    let plan = sitting.room.plan.as_mut().filter(|plan| plan.on_since(light.now).is_some() && !plan.is_off());
    let Some(plan) = plan else { return false };
    let Some(from) = plan.order(light.zone).map(|order| order.heat.cooker) else { return false };
    let oven = |cooker: Cooker| cooker != Cooker::Smoker;
    // From one oven into another nothing changes but its setting.
    if from == to || oven(from) && oven(to) {
        return false;
    }
    let Some(setting) = wish.setting_c.or(oven(to).then(|| in_celsius(fahrenheit(roast::OVEN_AUTHORITY_F)))) else {
        return false;
    };
    plan.remember("mended", None, by, light.now);
    turn(plan, setting, &light);
    plan.was_set.iter_mut().for_each(|was| was.elsewhere = true);
    plan.wish.cooker = Some(to.name().to_owned());
    let noted = Text::new("room-heat-moved").with("cooker", Arg::Choice(to.name()));
    tell(sitting, noted.with("setting", Arg::Temperature(celsius(setting))), setting);
    true
}

/// Says what it is set to now, and what becomes of the dinner.
fn tell(sitting: &mut Sitting<'_>, noted: Text, setting: f64) {
    let Some(plan) = sitting.room.plan.as_ref() else { return };
    let undo = undo::newest(plan);
    let smoker = plan.wish.cooker.as_deref() == Some(Cooker::Smoker.name());
    let solved = sitting.solve_again();
    let authority = fahrenheit(roast::OVEN_AUTHORITY_F);
    // Told in one scale and kept in the other, a setting comes back a hair lower.
    let cool = !smoker && in_fahrenheit(celsius(setting)) < in_fahrenheit(authority) - 0.5;
    let low = cool.then(|| Text::new("ask-oven-low").with("limit", Arg::Temperature(authority)));
    let outlook = readings::outlook(sitting);
    sitting.answer(noted).lines(low).lines(outlook).key("hotter").row([button("room-button-undo", &undo)]);
    if solved.sight.is_none()
        && let Err(conflict) = solved.outcome
    {
        jobs::tell_conflict(sitting, &conflict);
    }
    board::refresh(sitting);
}

/// An oven that reads colder than any authority roasts poultry at, and than it is set: said, with what it does to the time. `None`: it is
/// hot enough, only just lit, or a smoker.
pub(super) fn too_cool(sitting: &Sitting<'_>, pit: Option<Temperature>) -> Option<Text> {
    const HEATING_UP: TimeDelta = TimeDelta::minutes(15);
    // An oven swings about its setting.
    const SWING_F: f64 = 15.0;
    let pit = pit?;
    let plan = sitting.room.plan.as_ref().filter(|plan| !plan.is_off())?;
    let on = plan.on_since(sitting.now).filter(|on| sitting.now - *on >= HEATING_UP)?;
    let heat = plan.order(sitting.zone_or_utc())?.heat;
    let authority = fahrenheit(roast::OVEN_AUTHORITY_F);
    let least = in_fahrenheit(authority).min(in_fahrenheit(heat.setting)) - SWING_F;
    let cool = heat.cooker != Cooker::Smoker && on <= sitting.now && in_fahrenheit(pit) < least;
    cool.then(|| Text::new("room-oven-cool").with("limit", Arg::Temperature(authority)))
}

/// Whether the words with the number in them are asked: "should I turn it down to 300?".
fn asks(text: &str) -> bool {
    let asked = text.split_inclusive(['?', '!', '.', ',', ';', '\n']).filter(|clause| clause.ends_with('?'));
    asked.into_iter().any(|clause| clause.contains(|c: char| c.is_ascii_digit()))
}

/// "Turned it up to 375": where nothing but the heat can be meant, °C. "Down to 230" alone is what it reads.
fn turned_to(sentence: &Sentence, us: bool) -> Option<f64> {
    if !sentence.has("heat-turned") {
        return None;
    }
    let told = |at: usize| {
        let scaled = || sentence.amount(at).and_then(|amount| amount.temperature()).map(in_celsius);
        let bare = || sentence.number(at).map(|n| if us { in_celsius(fahrenheit(n)) } else { n });
        scaled().or_else(bare)
    };
    let mut told = (0..sentence.len()).filter_map(told);
    // Air that ovens and smokers are set to.
    let only = told.next().filter(|setting_c| (100.0..=290.0).contains(setting_c))?;
    told.next().is_none().then_some(only)
}

/// "Ovens on, 325 right": the fire is lit, and the plan's setting answers the number. Before the bird is on the air is no reading of its
/// cook. `false`: says nothing of it.
pub(super) fn lit(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let Some(report) = reading::read_lit(text, sitting.lexicon()) else { return false };
    let Some(plan) = sitting.room.plan.as_ref().filter(|plan| plan.on_since(sitting.now).is_none() && !plan.is_off())
    else {
        return false;
    };
    let Some(order) = plan.order(sitting.zone_or_utc()) else { return false };
    reports::heard(sitting, &report);
    sitting.answer(Text::new("cook-setting").with("setting", Arg::Temperature(order.heat.setting)));
    true
}

/// What the air around the bird is called: an oven is one to everybody, whatever its readings are stored as.
pub(super) fn air(cooker: Cooker) -> &'static str {
    match cooker {
        Cooker::Smoker => "pit",
        Cooker::Oven | Cooker::FanOven => "oven",
    }
}

/// Calls the air by its name wherever a text speaks of it.
pub(super) fn put_name(say: &mut Say, plan: &LivePlan) {
    let cooker = plan.wish.cooker.as_deref().and_then(Cooker::from_name).unwrap_or(Cooker::Oven);
    let labels = say.buttons.iter_mut().flatten().map(|button| &mut button.label);
    say.text.iter_mut().chain(labels).for_each(|text| name_air(text, air(cooker)));
}

fn name_air(text: &mut Text, air: &'static str) {
    for (_, arg) in &mut text.args {
        match arg {
            Arg::Choice(place) if *place == "pit" => *place = air,
            Arg::Text(text) => name_air(text, air),
            Arg::List(texts) | Arg::Lines(texts) => texts.iter_mut().for_each(|text| name_air(text, air)),
            _ => {}
        }
    }
}
