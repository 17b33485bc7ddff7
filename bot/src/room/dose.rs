//! The salt for a bird, place by place, in the salt of the one who does it.

use super::state::{LivePlan, OwnSalt};
use super::{PersonId, Sitting};
use crate::reading::Wish;
use crate::words::{Arg, Text};
use carvetime_core::plan::{Order, Salting, Step};
use carvetime_core::salt::{self, Dose, Grain, HeldBack, Place, Salt, Strength, dose};

/// The salt the bird is salted with: of whoever does it; while nobody has the job, of the one who has told of theirs.
pub(super) fn own(sitting: &Sitting<'_>, plan: &LivePlan) -> Option<OwnSalt> {
    let of = |who: PersonId| sitting.people.get(&who).and_then(|person| person.own_salt);
    let owner = plan.job(Step::Salt, 0).and_then(|job| job.owner);
    let mut told = sitting.people.values().filter_map(|person| person.own_salt);
    let alone = || told.next().filter(|_| owner.is_none() && told.next().is_none());
    of(owner.unwrap_or(plan.host)).or_else(alone)
}

/// The amount for the shopping line, in the salt usual there.
pub(super) fn needed(order: &Order, strength: Strength, usual: Grain) -> Option<Text> {
    let dose = dry(order, strength)?;
    let total = dose.total * f64::from(order.birds);
    Some(
        Text::new("room-need-salt")
            .with("grams", Arg::Grams(total))
            .with("spoons", Arg::Spoons(Salt::from(usual).volume_of(total)))
            .with("salt", Arg::Choice(usual.name())),
    )
}

/// The lines of a dose: how much in all, where it goes, and why it may be less. None where nothing is salted dry.
/// In their own salt where they told of it, else in the `usual` one.
pub(super) fn lines(order: &Order, own: Option<OwnSalt>, strength: Strength, usual: Grain) -> Vec<Text> {
    let Some(dose) = dry(order, strength) else { return Vec::new() };
    if let Some(HeldBack::Nothing { percent }) = dose.held_back {
        return vec![Text::new("room-dose-none").with("percent", Arg::Number(percent, 1))];
    }
    let salt = own.and_then(|own| salt::OwnSalt::new(None, own.grams_per_ml).ok()).map_or(Salt::from(usual), Salt::Own);
    let mine = matches!(salt, Salt::Own(_));
    let mut lines = vec![
        Text::new("room-dose-total")
            .with("grams", Arg::Grams(dose.total))
            .with("spoons", Arg::Spoons(salt.volume_of(dose.total)))
            .with("salt", Arg::Choice(if mine { "own" } else { usual.name() })),
        Text::new("room-dose-places").with("places", Arg::List(places(&dose, &salt))),
    ];
    if dose.each(Place::Skin).is_some() {
        lines.push(Text::new("room-dose-skin"));
    }
    if let Some(HeldBack::Light { percent }) = dose.held_back {
        lines.push(Text::new("room-dose-light").with("percent", Arg::Number(percent, 1)));
    }
    lines
}

/// The salt of a bird that has no salted rest and is salted as it is dried, where it would have been salted dry.
pub(super) fn last_lines(order: &Order, wish: &Wish, own: Option<OwnSalt>, usual: Grain) -> Vec<Text> {
    if wish.salt_last != Some(true) || order.salting != Salting::None {
        return Vec::new();
    }
    let rested = Order { salting: Salting::Dry, ..*order };
    let lines = lines(&rested, own, strength(wish), usual);
    let lead = (!lines.is_empty()).then(|| Text::new("plan-call-temper-salt"));
    lead.into_iter().chain(lines).collect()
}

fn places(dose: &Dose, salt: &Salt) -> Vec<Text> {
    dose.shares
        .iter()
        .map(|share| {
            Text::new("room-dose-place")
                .with("place", Arg::Choice(share.place.name()))
                .with("count", Arg::Count(share.count.into()))
                .with("spoons", crate::words::share(dose, share, salt))
        })
        .collect()
}

/// Said where the packer has salted it already, so nothing is salted here.
pub(super) fn by_the_packer(order: &Order, wish: &Wish) -> Option<Text> {
    let percent = wish.solution_percent.filter(|percent| *percent >= salt::NO_SALT_FROM_PERCENT);
    let text = match percent {
        Some(percent) => Some(Text::new("room-dose-none").with("percent", Arg::Number(percent, 1))),
        None => (wish.presalted == Some(true)).then(|| Text::new("room-dose-presalted")),
    };
    text.filter(|_| order.salting == Salting::None)
}

/// The dose of a bird that is salted dry; None where it is not.
pub(super) fn dry(order: &Order, strength: Strength) -> Option<Dose> {
    (order.salting == Salting::Dry).then(|| dose(&order.bird, strength).ok()).flatten()
}

/// How salty a wish wants it.
pub(super) fn strength(wish: &Wish) -> Strength {
    wish.strength.as_deref().and_then(Strength::from_name).unwrap_or(Strength::Usual)
}
