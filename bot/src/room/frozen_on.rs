//! "I'm putting it in frozen", "it went in frozen": said at once how a frozen bird is roasted, and planned so where it is in.

use super::turn::Urgency;
use super::{Sitting, questions, reports};
use crate::ask::{Advice, Question};
use crate::reading::{self, Report, ReportKind};
use carvetime_core::plan::Step;

/// "It's still hard in the middle, is that bad?": as it is found, and what is done about it. `false`: they say something else, or of no bird
/// that is still to go on.
pub(super) fn worried(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let Some(report) = reading::read_icy_worry(text, sitting.lexicon()) else { return false };
    let now = sitting.now;
    let raw = sitting
        .room
        .plan
        .as_ref()
        .is_some_and(|plan| plan.job(Step::On, 0).is_some() && plan.on_since(now).is_none() && !plan.is_off());
    raw && reports::heard(sitting, &report)
}

/// `false`: they say something else, or of no bird that is still to go on.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let Some(is_in) = reading::read_put_frozen(text, sitting.lexicon()) else { return false };
    let now = sitting.now;
    let waits = sitting
        .room
        .plan
        .as_ref()
        .is_some_and(|plan| plan.job(Step::On, 0).is_some() && plan.on_since(now).is_none() && !plan.is_off());
    if !waits {
        return false;
    }
    questions::tell(sitting, &Question::Advice(Advice::FromFrozen), Urgency::Safety);
    if is_in {
        reports::heard(sitting, &Report { step: Some(Step::On), or: None, kind: ReportKind::Done, partly: false });
    }
    true
}
