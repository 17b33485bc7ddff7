//! A thermometer's log sent as a file: its readings join those told, as one change that can be taken back.

use super::Sitting;
use super::heard::Document;
use super::readings::{self, Spots};
use super::state::StoredReading;
use crate::reading::{self, Table, settle};
use crate::words::{Arg, Text};
use carvetime_core::plan::Moment;
use carvetime_core::quantity::in_celsius;
use chrono::TimeDelta;

/// Closer than this to a reading there is already, a line of the log is the same reading.
const SAME: TimeDelta = TimeDelta::seconds(45);
/// Another clock may be this far ahead.
const AHEAD: TimeDelta = TimeDelta::minutes(10);

/// A log was sent.
pub(super) fn sent(sitting: &mut Sitting<'_>, name: &str, content: &Document) {
    let text = match content {
        Document::Text(text) => text,
        Document::TooLarge => {
            sitting.answer(Text::new("cook-log-large"));
            return;
        }
        Document::Lost => {
            sitting.answer(Text::new("cook-log-lost"));
            return;
        }
    };
    let Some(who) = sitting.speaker() else { return sitting.notice(Text::new("room-need-person")) };
    let table = match reading::read_table(text) {
        Ok(table) => table,
        Err(problem) => {
            sitting.answer(problem.text());
            return;
        }
    };
    let Some(plan) = &sitting.room.plan else {
        sitting.answer(Text::new("room-no-plan"));
        return;
    };
    let Some(on) = plan.on_since(sitting.now) else {
        sitting.answer(Text::new("cook-log-not-on"));
        return;
    };
    let start = begins(sitting, &table, on);
    let known: Vec<Moment> = plan.counted().iter().map(|reading| reading.at).collect();
    let new: Vec<StoredReading> = table
        .thinned()
        .map(|reading| StoredReading {
            at: start + reading.at,
            pit_c: reading.pit.map(in_celsius),
            breast_c: reading.breast.map(in_celsius),
            thigh_c: reading.thigh.map(in_celsius),
            stuffing_c: None,
            wing_c: None,
            by: Some(who),
            told_at: None,
            sure: false,
            replaces: None,
        })
        .filter(|reading| reading.at >= on && reading.at <= sitting.now + AHEAD)
        .filter(|reading| known.iter().all(|at| (*at - reading.at).abs() > SAME))
        .collect();
    if readings::too_many(sitting, new.len()) {
        return;
    }
    let (Some(first), Some(last)) = (new.first().cloned(), new.last().cloned()) else {
        sitting.answer(Text::new("cook-log-nothing").with("on", Arg::Clock(on)));
        return;
    };
    let noted = Text::new("cook-log-noted")
        .with("count", Arg::Count(i64::try_from(new.len()).unwrap_or(i64::MAX)))
        .with("name", Arg::Verbatim(super::moves::clip(name)))
        .with("from", Arg::Clock(first.at))
        .with("to", Arg::Clock(last.at));
    let spots = Spots::last_of(&new);
    readings::keep(sitting, who, new);
    readings::answer(sitting, [noted], &spots);
}

/// When the log's times begin: minutes count from the bird meeting the heat, times of day stand nearest to it.
fn begins(sitting: &Sitting<'_>, table: &Table, on: Moment) -> Moment {
    let Some(first) = table.first else { return on };
    let zone = sitting.zone_or_utc();
    let day = on.with_timezone(&zone).date_naive();
    let days = [day.pred_opt(), Some(day), day.succ_opt()];
    let starts = days.into_iter().flatten().map(|day| settle(zone, day.and_time(first)));
    starts.min_by_key(|start| (*start - on).abs()).unwrap_or(on)
}
