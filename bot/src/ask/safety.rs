//! Answers about safety. In doubt the careful one; every answer names what it defers to.

use super::answer::{Answer, AskBack, Choice, exact_span};
use super::read::NotUnderstood;
use super::{Asker, Habit};
use crate::words::{Arg, Text};
use carvetime_core::bird::{Form, Kind};
use carvetime_core::lethality::{self, Answer as Table, Hold};
use carvetime_core::quantity::{Temperature, celsius, fahrenheit, in_celsius, in_fahrenheit};
use carvetime_core::safety::{self as rules, Food, Keep, Place, Verdict};
use carvetime_core::source;
use carvetime_core::thaw::WATER_CHANGE_EVERY;
use chrono::TimeDelta;

fn degrees(fahrenheit_value: f64) -> Arg {
    Arg::Temperature(fahrenheit(fahrenheit_value))
}

pub(super) fn lethality(
    temperature: Option<Temperature>,
    bare: Option<f64>,
    held: Option<TimeDelta>,
    done: bool,
    kind: Kind,
) -> Result<Answer, NotUnderstood> {
    let name = "lethality";
    let Some(temperature) = temperature else {
        let choice = |label, adds| Choice { label: Text::new(label), adds };
        let text = Text::new("ask-back-scale").with("n", Arg::Number(bare.unwrap_or_default(), 1));
        let choices = vec![choice("ask-fahrenheit", "°F"), choice("ask-celsius", "°C")];
        return Ok(Answer { ask_back: Some(AskBack { text, choices }), ..Answer::new(name) });
    };
    // The coldest spot of a bird on the table is not hotter than boiling water.
    if !(-40.0..=110.0).contains(&in_celsius(temperature)) {
        return Err(NotUnderstood::Impossible(
            Text::new("reading-thermometer")
                .with("given", Arg::Temperature(temperature))
                .with("low", Arg::Temperature(celsius(-40.0)))
                .with("high", Arg::Temperature(celsius(110.0))),
        ));
    }
    let held = held.map(|held| held.max(TimeDelta::zero()));
    let verdict = lethality::is_enough(temperature, held.unwrap_or_default(), kind, None);
    let at = Arg::Temperature(temperature);
    let needed = match verdict.needed {
        Hold::For(needed) => Some(exact_span(needed)),
        Hold::Instant | Hold::BelowTable => None,
    };
    let main = match (verdict.answer, held, needed) {
        (Table::Never, _, _) => Text::new("ask-lethality-never")
            .with("at", at)
            .with("first", degrees(136.0))
            .with("kitchen", degrees(165.0)),
        (Table::Enough, _, None) => Text::new("ask-lethality-instant").with("at", at),
        (Table::Enough, Some(held), Some(needed)) => {
            Text::new("ask-lethality-enough").with("at", at).with("needed", needed).with("held", exact_span(held))
        }
        (Table::NotYet { missing }, Some(_), Some(needed)) => Text::new("ask-lethality-not-yet")
            .with("at", at)
            .with("needed", needed)
            .with("missing", exact_span(missing)),
        (_, None, Some(needed)) if done => Text::new("ask-lethality-go-on")
            .with("at", at)
            .with("needed", needed)
            .with("kitchen", Arg::Temperature(verdict.kitchen)),
        (_, _, Some(needed)) => Text::new("ask-lethality-time").with("at", at).with("needed", needed),
        (Table::NotYet { .. }, _, None) => return Err(NotUnderstood::Unknown),
    };
    let answer = Answer::new(name).say(main);
    let answer = match verdict.needed {
        Hold::For(needed) => answer.value("needed", needed.as_seconds_f64(), "s"),
        Hold::Instant => answer.value("needed", 0.0, "s"),
        Hold::BelowTable => answer,
    };
    let safe =
        if verdict.answer == Table::Enough && held.is_some() || verdict.needed == Hold::Instant { 1.0 } else { 0.0 };
    let answer = answer
        .value("temperature", in_fahrenheit(temperature), "°F")
        .value("enough", safe, "")
        .from(verdict.source)
        .from(source::SAFE_MINIMUM);
    // "Go on to 165 °F" has said by what to go.
    let goes_on = done && held.is_none() && matches!(verdict.needed, Hold::For(_));
    Ok(if verdict.answer == Table::Never || goes_on {
        answer
    } else {
        answer.say(Text::new("ask-lethality-care").with("kitchen", Arg::Temperature(verdict.kitchen)))
    })
}

/// Stuffing goes by 165 °F and nothing else: no minutes make up for it.
pub(super) fn stuffing_at(at: Temperature) -> Result<Answer, NotUnderstood> {
    let target = fahrenheit(165.0);
    let there = in_fahrenheit(at) >= in_fahrenheit(target) - 0.05;
    let id = if there { "ask-lethality-stuffing" } else { "ask-lethality-stuffing-not" };
    Ok(Answer::new("lethality")
        .say(Text::new(id).with("target", Arg::Temperature(target)).with("at", Arg::Temperature(at)))
        .value("temperature", in_fahrenheit(at), "°F")
        .value("enough", if there { 1.0 } else { 0.0 }, "")
        .from(source::TURKEY_STUFFING))
}

/// A bird that was warm for hours before it was hot: heat does not undo all that grew. Never called safe.
pub(super) fn come_up(span: TimeDelta, temperature: Temperature) -> Result<Answer, NotUnderstood> {
    let text = Text::new("ask-come-up")
        .with("span", Arg::Span(span))
        .with("low", degrees(40.0))
        .with("hot", degrees(140.0))
        .with("kitchen", degrees(165.0));
    Ok(Answer::new("come-up")
        .say(text)
        .span_value("span", span, "min")
        .value("temperature", in_fahrenheit(temperature), "°F")
        .value("enough", 0.0, "")
        .from(rules::US_TWO_HOUR_RULE.source)
        .from(source::SAFE_MINIMUM))
}

pub(super) fn safe_temperature(stuffing: bool, colour: bool, asker: &Asker) -> Result<Answer, NotUnderstood> {
    let end = rules::end_point(Form::Whole, asker.jurisdiction);
    let temperature = if stuffing { fahrenheit(165.0) } else { end.temperature };
    let main = if stuffing {
        Text::new("ask-safe-stuffing").with("target", Arg::Temperature(temperature))
    } else if end.hold > TimeDelta::zero() {
        Text::new("ask-safe-held")
            .with("target", Arg::Temperature(temperature))
            .with("hold", exact_span(end.hold))
            .with("plan", degrees(165.0))
    } else if in_fahrenheit(temperature) > 166.0 {
        // The authority's figure is for one place of a whole bird; the plan's is for every place it is measured at.
        Text::new("ask-safe-higher").with("target", Arg::Temperature(temperature)).with("plan", degrees(165.0))
    } else {
        Text::new("ask-safe").with("target", Arg::Temperature(temperature))
    };
    Ok(Answer::new("safe-temp")
        .say_if(colour, || Text::new("ask-colour"))
        .say(main)
        .say_if(!colour, || Text::new("ask-safe-where"))
        .value("temperature", in_fahrenheit(temperature), "°F")
        .from(if stuffing { source::TURKEY_STUFFING } else { end.rule.source })
        .from(source::ROASTING_CHARTS))
}

pub(super) fn left_out(
    ahead: bool,
    span: Option<TimeDelta>,
    air: Option<Temperature>,
) -> Result<Answer, NotUnderstood> {
    let name = "left-out";
    let Some(span) = span else {
        return Ok(Answer::back(name, Text::new("ask-back-how-long-out"), Vec::new()));
    };
    let answer = Answer::new(name);
    if span <= TimeDelta::zero() {
        return Ok(answer
            .say(Text::new("ask-out-limit").with("air", degrees(90.0)))
            .value("limit", 2.0, "h")
            .from(rules::US_TWO_HOUR_RULE.source));
    }
    let out = Arg::Span(span);
    let answer = match rules::left_out(air, span) {
        Verdict::Fine { left, rule, if_cool } => answer
            .say(Text::new("ask-out-fine").with("out", out).with("left", Arg::Span(left)))
            .say_if(if_cool, || Text::new("ask-out-if-cool").with("air", degrees(90.0)))
            .span_value("left", left, "min")
            .value("discard", 0.0, "")
            .from(rule.source),
        Verdict::Discard { over, rule } => {
            let limit = rule.time().map_or(TimeDelta::hours(2), |time| time.high);
            // "Throw it away" is for what has happened.
            let main = Text::new(if ahead { "ask-out-dont" } else { "ask-out-discard" });
            answer
                .say(main.with("out", out).with("limit", Arg::Span(limit)))
                .say_if(!ahead, || Text::new("ask-out-why"))
                .span_value("over", over, "min")
                .value("discard", 1.0, "")
                .from(rule.source)
        }
    };
    Ok(answer)
}

pub(super) fn keeps(
    food: Food,
    raw_too: bool,
    place: Place,
    age: Option<TimeDelta>,
    asker: &Asker,
) -> Result<Answer, NotUnderstood> {
    // A raw bird's time is the shorter one, and comes first.
    let answer = Answer::new("keeps");
    if !raw_too {
        return Ok(keep(answer, food, place, age, asker, Told::Alone));
    }
    let answer = keep(answer, Food::RawWhole, place, age, asker, Told::First);
    Ok(keep(answer, food, place, age, asker, Told::Last))
}

/// Whether a food's time is the whole answer, or one of two.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Told {
    Alone,
    First,
    Last,
}

fn keep(answer: Answer, food: Food, place: Place, age: Option<TimeDelta>, asker: &Asker, told: Told) -> Answer {
    let care = told != Told::First;
    let what = Arg::from(Text::named("ask-food", food.name()));
    let Some(keeping) = rules::keeps(food, place, asker.jurisdiction) else {
        return answer.say(Text::new("ask-keeps-unknown").with("food", what)).from(rules::two_hour_limit(None).source);
    };
    let answer = answer.from(keeping.source);
    match keeping.keep {
        Keep::Days(days) => {
            let limit = TimeDelta::days(i64::from(days.high));
            let main = match age {
                Some(age) if age > limit => {
                    let id = if told == Told::Alone { "ask-keeps-over" } else { "ask-keeps-that-over" };
                    Text::new(id).with("age", Arg::Span(age))
                }
                Some(age) if age > TimeDelta::zero() => {
                    let id = if told == Told::Alone { "ask-keeps-still" } else { "ask-keeps-that-still" };
                    Text::new(id).with("age", Arg::Span(age))
                }
                _ => Text::new("ask-keeps"),
            };
            let over = age.is_some_and(|age| age > limit);
            answer
                .say(
                    main.with("food", what)
                        .with("days", Arg::from(range("ask-days", "ask-days-range", days.low, days.high))),
                )
                .say_if(care && !over, || Text::new("ask-keeps-care").with("cold", degrees(40.0)))
                .say_all(fridge_too_warm(asker.fridge).filter(|_| care && place == Place::Fridge))
                .value("days-low", f64::from(days.low), "d")
                .value("days-high", f64::from(days.high), "d")
        }
        Keep::Months(months) => answer
            .say(
                Text::new("ask-keeps-frozen")
                    .with("food", what)
                    .with("months", Arg::from(range("ask-months", "ask-months-range", months.low, months.high))),
            )
            .value("months-low", f64::from(months.low), "month")
            .value("months-high", f64::from(months.high), "month"),
    }
}

/// For how many days that food keeps in the fridge, in words.
pub(super) fn days_of(food: Food, asker: &Asker) -> Arg {
    match rules::keeps(food, Place::Fridge, asker.jurisdiction).map(|keeping| keeping.keep) {
        Some(Keep::Days(days)) => Arg::from(range("ask-days", "ask-days-range", days.low, days.high)),
        // No published time: the shortest there is.
        Some(Keep::Months(_)) | None => Arg::from(range("ask-days", "ask-days-range", 1, 1)),
    }
}

/// Too long without power for a fridge that stays shut.
pub(super) fn fridge_off(span: TimeDelta, asker: &Asker) -> Answer {
    let down = Habit::FridgeDown.text(asker);
    let text = Text { id: "ask-fridge-off".into(), ..down };
    Answer::new("fridge-down").say(text.with("span", exact_span(span))).from(source::POWER_OUTAGE)
}

/// Food that is to stay cold, measured warmer.
pub(super) fn cold_at(at: Temperature, asker: &Asker) -> Answer {
    let down = Habit::FridgeDown.text(asker);
    let text = Text { id: "ask-cold-at".into(), ..down };
    Answer::new("fridge").say(text.with("at", Arg::Temperature(at))).from(source::POWER_OUTAGE)
}

pub(super) fn leftovers_at(at: Temperature, asker: &Asker) -> Answer {
    let habit = Habit::BonesOut.text(asker);
    let text = Text { id: "ask-leftovers-at".into(), ..habit };
    Answer::new("left-out").say(text.with("at", Arg::Temperature(at))).from(source::LEFTOVERS).from(source::DANGER_ZONE)
}

/// What is to be said of a fridge whose thermometer shows more than the 40 °F that every keeping time counts on.
pub fn fridge_too_warm(at: Option<Temperature>) -> Option<Text> {
    let at = at.filter(|at| in_fahrenheit(*at) > 40.0)?;
    Some(Text::new("ask-fridge-warm").with("at", Arg::Temperature(at)).with("cold", degrees(40.0)))
}

/// `3 to 4 days`, or `2 days` where both ends are one.
fn range(one: &'static str, several: &'static str, low: u8, high: u8) -> Text {
    let count = |n: u8| Arg::Count(i64::from(n));
    if low == high {
        Text::new(one).with("n", count(high))
    } else {
        Text::new(several).with("low", count(low)).with("high", count(high))
    }
}

pub(super) fn cooling() -> Result<Answer, NotUnderstood> {
    Ok(Answer::new("cooling")
        .say(Text::new("ask-cooling").with("limit", Arg::Span(TimeDelta::hours(2))))
        .say(
            Text::new("ask-cooling-marks")
                .with("from", degrees(135.0))
                .with("middle", degrees(70.0))
                .with("cold", degrees(41.0)),
        )
        .value("first-stage", 2.0, "h")
        .value("total", 6.0, "h")
        .from(rules::US_TWO_HOUR_RULE.source)
        .from(rules::FC_COOL_TOTAL_TIME.source))
}

pub(super) fn reheat(food: Food, asker: &Asker) -> Result<Answer, NotUnderstood> {
    let rule = rules::reheat(food);
    let uk = asker.jurisdiction == rules::Jurisdiction::Uk;
    let answer = Answer::new("reheat").from(rule.source);
    let answer = match rule.temperature() {
        Some(target) => answer.say(Text::new("ask-reheat").with("target", Arg::Temperature(target))).value(
            "temperature",
            in_fahrenheit(target),
            "°F",
        ),
        None => answer.say(Text::new("ask-reheat-gravy")),
    };
    Ok(answer.say(Text::new("ask-reheat-care")).say_if(uk, || Text::new("ask-reheat-once")).from(source::SLOW_COOKERS))
}

pub(super) fn hold_hot(asker: &Asker) -> Result<Answer, NotUnderstood> {
    let rule = rules::hold_hot(asker.jurisdiction);
    let hot = rule.temperature().unwrap_or(celsius(63.0));
    Ok(Answer::new("hold")
        .say(Text::new("ask-hold").with("hot", Arg::Temperature(hot)).with("limit", Arg::Span(TimeDelta::hours(2))))
        .value("temperature", in_fahrenheit(hot), "°F")
        .from(rule.source)
        .from(rules::US_TWO_HOUR_RULE.source))
}

/// Roasting hotter than 450 °F is for minutes at a time: common practice, no source.
const HOTTEST_ROAST_F: f64 = 450.0;

pub(super) fn oven(setting: Option<Temperature>, smoked: bool) -> Result<Answer, NotUnderstood> {
    let limit = fahrenheit(carvetime_core::roast::OVEN_AUTHORITY_F);
    // Told in one scale and kept in the other, 325 °F comes back a hair lower.
    let low = setting.is_some_and(|setting| in_fahrenheit(setting) < in_fahrenheit(limit) - 0.5);
    let smoker = rules::ROAST_SMOKER_RANGE;
    let range = |end: Option<f64>| degrees(end.unwrap_or(carvetime_core::roast::OVEN_AUTHORITY_F));
    // Hotter than this the skin is done long before the meat.
    let fits = setting.filter(|setting| !low && in_fahrenheit(*setting) <= HOTTEST_ROAST_F);
    let main = match fits {
        Some(at) => Text::new("ask-oven-fits").with("at", Arg::Temperature(at)),
        None if low => Text::new("ask-oven-low"),
        None => Text::new("ask-oven"),
    };
    Ok(Answer::new("oven-temp")
        .say(main.with("limit", Arg::Temperature(limit)))
        .say_if(smoked, || Text::new("ask-oven-smoker").with("low", range(smoker.low)).with("high", range(smoker.high)))
        .value("temperature", in_fahrenheit(limit), "°F")
        .from(rules::US_OVEN_MINIMUM.source)
        .from(smoker.source))
}

pub(super) fn stand() -> Result<Answer, NotUnderstood> {
    let rule = rules::US_STAND_TIME;
    let least = rule.time().map_or(TimeDelta::minutes(20), |time| time.low);
    Ok(Answer::new("stand")
        .say(Text::new("ask-stand").with("least", Arg::Span(least)))
        .span_value("least", least, "min")
        .from(rule.source))
}

pub(super) fn refreeze() -> Result<Answer, NotUnderstood> {
    told("refreeze", vec![Text::new("ask-refreeze"), Text::new("ask-refreeze-out")], &[source::BIG_THAW])
}

/// Answers that are one short text with its sources.
fn told(kind: &'static str, texts: Vec<Text>, sources: &[source::Source]) -> Result<Answer, NotUnderstood> {
    let answer = texts.into_iter().fold(Answer::new(kind), Answer::say);
    Ok(sources.iter().fold(answer, |answer, source| answer.from(*source)))
}

pub(super) fn wash() -> Result<Answer, NotUnderstood> {
    let share = rules::Hazard::WashingBird.fact().and_then(|fact| fact.figure).map_or(60.0, |(share, _)| share);
    let text = Text::new("ask-wash").with("share", Arg::Number(share, 0));
    told("wash", vec![text], &[source::WASHING, source::HANDS])
}

pub(super) fn counter_thaw() -> Result<Answer, NotUnderstood> {
    let text = Text::new("ask-counter-thaw").with("every", Arg::Span(WATER_CHANGE_EVERY));
    told("counter-thaw", vec![text], &[source::BIG_THAW])
}

/// Thawed in the warm for hours: what has happened is no matter of advice any more.
pub(super) fn warm_thaw() -> Result<Answer, NotUnderstood> {
    let limit = rules::US_TWO_HOUR_RULE.time().map_or(TimeDelta::hours(2), |time| time.high);
    let text = Text::new("ask-warm-thaw").with("limit", Arg::Span(limit)).with("every", Arg::Span(WATER_CHANGE_EVERY));
    told("warm-thaw", vec![text], &[source::BIG_THAW, rules::US_TWO_HOUR_RULE.source])
}

pub(super) fn stuffing() -> Result<Answer, NotUnderstood> {
    let texts = vec![Text::new("ask-stuffing"), Text::new("ask-stuffing-target").with("target", degrees(165.0))];
    told("stuffing", texts, &[source::TURKEY_STUFFING, source::COUNTDOWN])
}

pub(super) fn charcoal_indoors() -> Result<Answer, NotUnderstood> {
    told("charcoal-indoors", vec![Text::new("ask-charcoal")], &[source::CHARCOAL])
}
