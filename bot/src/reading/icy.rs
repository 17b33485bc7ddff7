//! "It's still hard in the middle, is that bad?": ice that is told of before something is asked.

use super::lexicon::Lexicon;
use super::talk::{Report, ReportKind, read_report};
use carvetime_core::plan::Step;

/// What is told of the ice. `None`: nothing is asked behind it, or it is the ice itself that is asked about.
pub fn read_icy_worry(text: &str, lexicon: &'static Lexicon) -> Option<Report> {
    let (told, _) = text.split_once(['?', '¿'])?;
    let (told, _) = told.rsplit_once([',', '.', ';', '!', ':', '\n'])?;
    let icy = |report: &Report| report.kind == ReportKind::NotDone && report.step == Some(Step::Thaw);
    told.split([',', '.', ';', '!', ':', '\n']).find_map(|clause| read_report(clause, lexicon).filter(icy))
}
