//! Whose clock the dinner's hour is: home's, or that of the house it is eaten in.

use super::super::fold;
use super::super::ground::{Ground, settle};
use super::super::zone::zone_named;
use super::{Reader, Wish};
use chrono_tz::Tz;
use serde::{Deserialize, Serialize};

/// Words a place's name has at most.
const LONGEST_NAME: usize = 3;

/// A place whose clock counts for the dinner.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct There {
    /// As it was told. Untrusted text.
    pub place: String,
    /// IANA zone name.
    pub zone: String,
}

impl There {
    /// The zone, if it is still known.
    pub fn zone(&self) -> Option<Tz> {
        self.zone.parse().ok()
    }
}

impl Wish {
    /// The ground on which the dinner's hour is read: the clock of the house it is eaten in.
    pub fn table_ground(&self, ground: &Ground) -> Ground {
        Ground { zone: self.table_zone(ground), ..*ground }
    }

    fn table_zone(&self, ground: &Ground) -> Tz {
        self.there.as_ref().and_then(There::zone).unwrap_or(ground.zone)
    }

    /// [`Wish::merge`] where hour and place may be told apart: the hour is the place's, whichever was told first.
    pub fn merge_at(&mut self, mut newer: Wish, ground: &Ground) {
        let (before, zone) = (self.table_zone(ground), newer.table_zone(ground));
        if newer.home_clock {
            let day = newer.dinner_day.or(self.dinner.map(|at| at.with_timezone(&ground.zone).date_naive()));
            if let (None, Some(day), Some(hour)) = (newer.dinner, day, newer.dinner_hour) {
                (newer.dinner, newer.dinner_day, newer.dinner_hour) = (Some(ground.moment(day, hour)), None, None);
            }
        } else if newer.there.is_none() {
            // Read on the kitchen's clock, and meant by the table's.
            newer.dinner = newer.dinner.map(|at| settle(before, at.with_timezone(&ground.zone).naive_local()));
        } else if newer.dinner.is_none() && zone != before {
            let told = self.dinner;
            self.dinner = told.map(|at| settle(zone, at.with_timezone(&before).naive_local()));
            newer.by_home = told.filter(|told| newer.dinner_hour.is_none() && self.dinner != Some(*told));
        }
        let by_home = newer.by_home;
        self.merge(newer);
        self.by_home = by_home.or(self.by_home);
    }
}

impl Reader<'_> {
    /// `5 pm Denver time`, `à 17 h heure de Denver`: the clock is named, whichever house it is in.
    pub(super) fn names_a_clock(&mut self) {
        let lexicon = self.ground.lexicon;
        let said = |from: usize, to: usize, group: &str| lexicon.talk(&fold(self.s.quote(from, to)), group);
        let behind = |at: usize| {
            // "Denver-Zeit" is one word.
            let joined = self.s.raw(at).rsplit_once('-').filter(|(_, last)| lexicon.talk(&fold(last), "clock-behind"));
            if let Some((name, _)) = joined {
                return Some((at, at, name.to_owned(), zone_named(name)?));
            }
            if at == 0 || !said(at, at, "clock-behind") {
                return None;
            }
            let named = (at.saturating_sub(LONGEST_NAME)..at).map(|from| (from, self.s.quote(from, at - 1)));
            named.into_iter().find_map(|(from, name)| Some((from, at, name.to_owned(), zone_named(name)?)))
        };
        let led = |at: usize| {
            let leads = (at.saturating_sub(LONGEST_NAME)..at).any(|from| said(from, at - 1, "clock-of"));
            // "5 pm (Denver)", as the answers put it.
            let opened = at.checked_sub(1).is_some_and(|before| self.s.mark(before) == Some('('));
            let closed = |end: usize| self.s.mark(end + 1) == Some(')');
            let mut named = (leads || opened).then(|| self.named_from(at)).into_iter().flatten();
            let found = named.find(|(end, ..)| leads || closed(*end));
            found.map(|(end, place, zone)| (at, end, place, zone))
        };
        let found = self.places().find_map(|at| behind(at).or_else(|| led(at)));
        self.at_the_clock(found, true);
    }

    /// `in Denver`, `to my sister's in San Diego`: another house with a clock of its own.
    pub(super) fn there(&mut self) {
        let lexicon = self.ground.lexicon;
        let toward = |at: usize| lexicon.talk(&fold(self.s.raw(at)), "toward");
        let found = self
            .places()
            .filter(|at| *at > 0 && self.free(*at) && toward(at - 1))
            .find_map(|at| self.named_from(at).next().map(|(end, place, zone)| (at, end, place, zone)));
        self.at_the_clock(found, false);
    }

    /// The places whose names begin there, each with its last word.
    fn named_from(&self, at: usize) -> impl Iterator<Item = (usize, String, Tz)> {
        let last = (at + LONGEST_NAME).min(self.s.len());
        let word = |at: &usize| {
            let at = *at;
            self.s.number(at).is_none() && self.s.amount(at).is_none() && self.s.mark(at).is_none()
        };
        let named = (at..last).take_while(word).map(move |end| (end, self.s.quote(at, end)));
        named.filter_map(|(end, name)| Some((end, name.to_owned(), zone_named(name)?)))
    }

    fn at_the_clock(&mut self, found: Option<(usize, usize, String, Tz)>, clock: bool) {
        let Some((from, to, place, zone)) = found else { return };
        self.take(from, to);
        if zone == self.ground.zone {
            self.wish.home_clock = clock;
        } else {
            self.wish.there = Some(There { place, zone: zone.name().to_owned() });
        }
    }

    /// The hour that was read on the kitchen's clock is the table's.
    pub(super) fn by_the_table_s_clock(&mut self) {
        self.wish.home_clock &= self.wish.dinner.is_some() || self.wish.dinner_hour.is_some();
        if let (Some(dinner), Some(zone)) = (self.wish.dinner, self.wish.there.as_ref().and_then(There::zone)) {
            self.wish.dinner = Some(settle(zone, dinner.with_timezone(&self.ground.zone).naive_local()));
        }
    }
}
