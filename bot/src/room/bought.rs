//! What is told of the bird as it came from the shop: "bought it, it's 15 lb", "it's already brined".
//!
//! The weight told with the purchase is the plan's from then on. A bird the packer has salted is salted no more: of whoever may decide a
//! change at once or offered, of anyone else the host is asked, as with every change of the plan.

use super::state::{JobState, LivePlan};
use super::{PersonId, Sitting, amend, order, planning, reports, spoiled};
use crate::reading::sentence::Sentence;
use crate::reading::{self, Wish};
use crate::words::{Arg, Text};
use carvetime_core::plan::Step;

/// Weights nearer than this part of each other are the same.
const SAME: f64 = 0.01;

/// "Got the bird, 7.2 kg". `false`: no purchase with a weight, or no such job is left.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let waits = |plan: &&LivePlan| plan.job(Step::Buy, 0).is_some_and(|job| job.state == JobState::Waiting);
    let Some(before) = sitting.room.plan.as_ref().filter(waits).map(|plan| plan.wish.clone()) else { return false };
    let Some((report, grams)) = reading::read_bought(text, sitting.lexicon()) else { return false };
    // What no bird weighs has been left out there.
    let Some(mass) = planning::read(sitting, text).0.mass_g.filter(|mass| (mass - grams).abs() < 1.0) else {
        return false;
    };
    let same = before.mass_g.is_some_and(|known| (known - mass).abs() <= known * SAME);
    let told = Wish { mass_g: Some(mass), ..before.clone() };
    let news = if same { Vec::new() } else { amend::news(&before, &told) };
    if let Some(plan) = sitting.room.plan.as_mut().filter(|_| !same) {
        plan.wish = told;
    }
    let said = sitting.says.len();
    let heard = reports::heard(sitting, &report);
    if let Some(say) = sitting.says.get_mut(said).filter(|_| !news.is_empty()) {
        let place = say.text.len().min(1);
        say.text.insert(place, Text::new("room-amended").with("known", Arg::List(news)));
    }
    heard
}

/// "It's already brined", "my marinade has salt in it, no more please", of a bird that is not salted yet. `false`: it is no word of such
/// salt, or it answers the call to salt it.
pub(super) fn is_salted(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let (now, lexicon) = (sitting.now, sitting.lexicon());
    let waits = |plan: &&LivePlan| plan.job(Step::Salt, 0).is_some_and(|job| job.state == JobState::Waiting);
    let Some(plan) = sitting.room.plan.as_ref().filter(waits) else { return false };
    // "It's already brined", called for, is that job done.
    let called = plan.job(Step::Salt, 0).is_some_and(|job| job.calls > 0 || job.at <= now);
    if called && reading::read_report(text, lexicon).is_some() {
        return false;
    }
    let marinated = reading::says_salted_by_marinade(text, lexicon);
    let says = marinated || reading::says_packer_salted(text, lexicon);
    let (Wish { salting, solution_percent, .. }, _) = planning::read(sitting, text);
    if !(says || solution_percent.is_some() && is_label(sitting, text)) {
        return false;
    }
    let salting = salting.filter(|_| solution_percent.is_some()).or(says.then(|| "none".to_owned()));
    let presalted = (says && solution_percent.is_none()).then_some(true);
    let mut wish = plan.wish.clone();
    wish.merge(Wish { salting, presalted, solution_percent, ..Wish::default() });
    amend::to(sitting, text, wish, addressed)
}

/// "It says contains up to 12% solution": what stands on the pack, and nothing else.
fn is_label(sitting: &Sitting<'_>, text: &str) -> bool {
    const LONGEST: usize = 80;
    let asks = text.contains(['?', '¿']) || reading::begins_as_question(text, sitting.lexicon());
    !asks && text.len() <= LONGEST && amend::is_plain(sitting, &Sentence::read(text, sitting.lexicon()))
}

/// A bird that takes the place of one the packer had salted, as its host said, is salted as well, unless another one is told of.
pub(super) fn keeps_packers_salt(sitting: &Sitting<'_>, who: PersonId, text: &str, wish: &mut Wish) {
    let told = wish.salting.is_some() || wish.presalted.is_some() || wish.solution_percent.is_some();
    let another = Sentence::read(text, sitting.lexicon()).has("another");
    if told || another || sitting.room.drafts.contains_key(&who) {
        return;
    }
    let same = |plan: &LivePlan| wish.kind.is_none() || wish.kind == plan.wish.kind;
    let raw = |plan: &LivePlan| plan.on_since(sitting.now).is_none() && !plan.is_off() && !spoiled::is_gone(plan);
    let plans = sitting.room.plans();
    let before =
        plans.iter().find(|plan| plan.host == who && order::is_packer_salted(&plan.wish) && raw(plan) && same(plan));
    if let Some(before) = before {
        wish.presalted = before.wish.presalted;
        wish.solution_percent = before.wish.solution_percent;
        wish.salting = Some("none".to_owned());
    }
}
