//! Answers about the bird: how long it thaws and cooks, how big for how many, and what the fire eats.

use super::Asker;
use super::answer::{Answer, Choice, USUAL, bird_text, how_heavy, mass_value};
use super::question::BirdSaid;
use super::read::NotUnderstood;
use super::safety::fridge_too_warm;
use crate::room::plan_words;
use crate::words::{Arg, Text};
use carvetime_core::bird::{Condition, Diners, Kind, Leftovers, feeds, mass_for, portion};
use carvetime_core::fuel::{Fuel, propane_bottle};
use carvetime_core::plan::{Caution, Reason};
use carvetime_core::quantity::{fahrenheit, in_kilograms};
use carvetime_core::roast::{Basis, Cooker, Heat, RoastError, estimate};
use carvetime_core::source;
use carvetime_core::thaw::{self, KEEPS_AFTER_FRIDGE};
use chrono::TimeDelta;

/// A bird that cannot be, with the plan's own words for why.
fn impossible(error: RoastError) -> NotUnderstood {
    let why = plan_words::reason(&Reason::NotCookedSo(error));
    NotUnderstood::Impossible(Text::new("ask-impossible").with("reason", Arg::from(why)))
}

pub(super) fn thaw(said: &BirdSaid, asker: &Asker) -> Result<Answer, NotUnderstood> {
    let kind = "thaw-time";
    let Some(mut bird) = said.bird(Condition::Frozen) else { return Ok(how_heavy(kind)) };
    if bird.condition == Condition::Fresh {
        // Who asks how long it thaws has it frozen, whatever else was said.
        bird.condition = Condition::Frozen;
    }
    bird.check().map_err(|error| impossible(error.into()))?;
    let (Some(fridge), Some(water)) = (thaw::fridge(&bird), thaw::cold_water(&bird)) else {
        return Err(NotUnderstood::Unknown);
    };
    let warm = fridge_too_warm(asker.fridge);
    Ok(Answer::new(kind)
        .say(
            Text::new("ask-thaw")
                .with("bird", Arg::from(bird_text(&bird)))
                .with("fridge", Arg::SpanRange(fridge.time.low, fridge.time.high))
                .with("water", Arg::SpanRange(water.thaw.time.low, water.thaw.time.high))
                .with("every", Arg::Span(water.change_every)),
        )
        .say(Text::new("ask-thaw-care").with("keeps", Arg::SpanRange(KEEPS_AFTER_FRIDGE.low, KEEPS_AFTER_FRIDGE.high)))
        .say_all(warm)
        .span_value("fridge-low", fridge.time.low, "h")
        .span_value("fridge-high", fridge.time.high, "h")
        .span_value("water-low", water.thaw.time.low, "h")
        .span_value("water-high", water.thaw.time.high, "h")
        .from(fridge.source)
        .from(water.thaw.source)
        .from(source::BIG_THAW))
}

pub(super) fn roast(said: &BirdSaid, heat: Option<Heat>) -> Result<Answer, NotUnderstood> {
    let kind = "roast-time";
    let Some(bird) = said.bird(USUAL) else { return Ok(how_heavy(kind)) };
    let heat = heat.unwrap_or(Heat { cooker: Cooker::Oven, setting: fahrenheit(325.0) });
    let estimate = estimate(&bird, &heat, bird.condition).map_err(impossible)?;
    let spread = estimate.spread;
    let mut answer = Answer::new(kind)
        .say(
            Text::new("ask-roast")
                .with("bird", Arg::from(bird_text(&bird)))
                .with("cooker", Arg::Choice(heat.cooker.name()))
                .with("setting", Arg::Temperature(heat.setting))
                .with("time", Arg::SpanRange(spread.p10, spread.p90))
                .with("middle", Arg::Span(spread.p50)),
        )
        .say(Text::new("ask-roast-done").with("target", Arg::Temperature(fahrenheit(165.0))))
        .say_if(estimate.basis == Basis::Practice, || Text::new("ask-roast-practice"))
        .span_value("p10", spread.p10, "min")
        .span_value("p50", spread.p50, "min")
        .span_value("p90", spread.p90, "min")
        .from(estimate.source)
        .from(estimate.table);
    for caution in estimate.cautions {
        answer = answer.say(plan_words::caution(&Caution::Cooking(caution)));
    }
    Ok(answer)
}

pub(super) fn bird_for(kind: Kind, diners: &Diners) -> Result<Answer, NotUnderstood> {
    if diners.adults == 0 && diners.children == 0 {
        return Ok(portion_of(kind));
    }
    let Some(purchase) = mass_for(kind, diners) else {
        return Err(NotUnderstood::Wrong(crate::reading::Problem::Guests(f64::from(diners.adults))));
    };
    // Twelve pounds made from kilograms and back are still twelve.
    let exactly = in_kilograms(purchase.mass.high) - in_kilograms(purchase.mass.low) < 0.05;
    let main = if exactly { Text::new("ask-bird-for-exactly") } else { Text::new("ask-bird-for") };
    let main = if exactly { main } else { main.with("high", Arg::Mass(purchase.mass.high)) };
    let answer = Answer::new("portions")
        .say(
            main.with("people", Arg::Count(i64::from(diners.adults) + i64::from(diners.children)))
                .with("kind", Arg::from(Text::named("ask-kind", kind.name())))
                .with("low", Arg::Mass(purchase.mass.low)),
        )
        .say_if(purchase.birds > 1, || {
            Text::new("ask-bird-for-several")
                .with("birds", Arg::Count(i64::from(purchase.birds)))
                .with("low", Arg::Mass(purchase.each.low))
                .with("high", Arg::Mass(purchase.each.high))
        })
        .say_if(!diners.leftovers, || Text::new("ask-bird-for-leftovers"))
        .value("mass-low", in_kilograms(purchase.mass.low), "kg")
        .value("mass-high", in_kilograms(purchase.mass.high), "kg")
        .value("birds", f64::from(purchase.birds), "");
    Ok(answer.from(purchase.portion.source).from(purchase.portion.lean_source))
}

fn portion_of(kind: Kind) -> Answer {
    let portion = portion(kind);
    Answer::new("portions")
        .say(
            Text::new("ask-portion")
                .with("kind", Arg::from(Text::named("ask-kind", kind.name())))
                .with("low", Arg::Mass(portion.each.low))
                .with("high", Arg::Mass(portion.each.high)),
        )
        .value("mass-low", in_kilograms(portion.each.low), "kg")
        .value("mass-high", in_kilograms(portion.each.high), "kg")
        .from(portion.source)
        .from(portion.lean_source)
}

pub(super) fn people_for(said: &BirdSaid) -> Result<Answer, NotUnderstood> {
    let kind = "portions";
    let Some(bird) = said.bird(USUAL) else { return Ok(how_heavy(kind)) };
    bird.check().map_err(|error| impossible(error.into()))?;
    let plain = feeds(bird.kind, bird.mass, Leftovers::None);
    let some = feeds(bird.kind, bird.mass, Leftovers::Some);
    Ok(Answer::new(kind)
        .say(
            Text::new("ask-people-for")
                .with("bird", Arg::from(bird_text(&bird)))
                .with("low", Arg::Count(i64::from(plain.people.low)))
                .with("high", Arg::Count(i64::from(plain.people.high)))
                .with("some", Arg::Count(i64::from(some.people.low))),
        )
        .value("people-low", f64::from(plain.people.low), "")
        .value("people-high", f64::from(plain.people.high), "")
        .from(plain.portion.source)
        .from(plain.portion.lean_source))
}

pub(super) fn fuel(fuel: Fuel, span: Option<TimeDelta>) -> Result<Answer, NotUnderstood> {
    let kind = "fuel";
    let Some(span) = span else {
        let choice = |label, adds| Choice { label: Text::new(label), adds };
        let choices = vec![choice("ask-back-hours-3", "3 h"), choice("ask-back-hours-5", "5 h")];
        return Ok(Answer::back(kind, Text::new("ask-back-fuel-time"), choices));
    };
    if span <= TimeDelta::zero() || span > TimeDelta::days(3) {
        return Err(NotUnderstood::Impossible(Text::new("ask-no-span")));
    }
    let needed = fuel.needed(span);
    let answer = Answer::new(kind)
        .say(
            Text::new("ask-fuel")
                .with("fuel", Arg::Choice(fuel.name()))
                .with("span", Arg::Span(span))
                .with("low", Arg::Mass(needed.low))
                .with("high", Arg::Mass(needed.high)),
        )
        .say_if(fuel == Fuel::Propane, || Text::new("ask-fuel-bottle").with("bottle", Arg::Mass(propane_bottle())))
        .say(Text::new("ask-fuel-care"));
    let answer = mass_value(answer, "mass-low", needed.low, true);
    Ok(mass_value(answer, "mass-high", needed.high, true).from(source::FUEL).from(source::CHARCOAL))
}
