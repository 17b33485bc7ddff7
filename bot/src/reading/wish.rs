//! A dinner as far as it has been told: every field may still be open.
//!
//! Owns the sentence grammar of a plan: `14.5 lb frozen turkey, dinner Thursday 5 pm, 11 people, smoker at 325`. Start at
//! [`read_wish`]. Order does not matter: what has a unit or a word beside it is taken first, bare numbers last. Who eats is counted in
//! `wish/guests.rs`, whose clock an hour is in `wish/clock.rs`.

mod clock;
mod guests;

pub use clock::There;

use super::beside;
use super::ground::Ground;
use super::in_jest::only_speaks_of_frying;
use super::once;
use super::problem::{FARTHEST_DINNER, FARTHEST_USE_BY, LONGEST_DRIVE, MASS_KG, Problem, SETTING_C, SOLUTION_PERCENT};
use super::sentence::{Sentence, What};
use super::told::Told;
use super::when::{Lean, When, hour_of_amount, next_at, read_when, take};
use carvetime_core::quantity::{Measure, Unit, in_celsius, in_grams, in_kilograms};
use carvetime_core::roast::OvenLevel;
use serde::{Deserialize, Serialize};

/// What a person wants, with gaps. Kept in drafts, so numbers are plain and enums go by their stable names
/// (`carvetime_core`'s `name`/`from_name`).
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct Wish {
    /// Kind of bird ([`carvetime_core::bird::Kind`]).
    pub kind: Option<String>,
    /// Mass in grams.
    pub mass_g: Option<f64>,
    /// [`carvetime_core::bird::Condition`].
    pub condition: Option<String>,
    /// [`carvetime_core::bird::Form`].
    pub form: Option<String>,
    /// Stuffed.
    pub stuffed: Option<bool>,
    /// Percent of added solution on the label.
    pub solution_percent: Option<f64>,
    /// Adults (plain "11 people" counts as adults).
    pub adults: Option<u16>,
    /// Children.
    pub children: Option<u16>,
    /// The children are among the people told before.
    #[serde(skip)]
    pub among: bool,
    /// The people come besides those told before.
    #[serde(skip)]
    pub more: bool,
    /// The people are missing from those told before.
    #[serde(skip)]
    pub fewer: bool,
    /// Leftovers wanted.
    pub leftovers: Option<bool>,
    /// [`carvetime_core::roast::Cooker`].
    pub cooker: Option<String>,
    /// Setting in degrees Celsius.
    pub setting_c: Option<f64>,
    /// The cooker's dial is in °C, so what nobody names is set to what such a dial has.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub celsius_dial: Option<bool>,
    /// [`carvetime_core::plan::Salting`].
    pub salting: Option<String>,
    /// The packer has salted it already, as far as somebody said so without a percentage.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub presalted: Option<bool>,
    /// [`carvetime_core::plan::Thawing`].
    pub thawing: Option<String>,
    /// When it is on the table, UTC.
    pub dinner: Option<chrono::DateTime<chrono::Utc>>,
    /// Only the day is known, not the hour (local date).
    pub dinner_day: Option<chrono::NaiveDate>,
    /// Only the hour is known, not the day (local time).
    pub dinner_hour: Option<chrono::NaiveTime>,
    /// Eaten at another house.
    pub elsewhere: Option<bool>,
    /// Carried there hot, on the day; else cold, cooked the day before.
    pub hot: Option<bool>,
    /// Drive, minutes.
    pub drive_min: Option<u32>,
    /// Where it is eaten, if clocks may differ there: the place as it was told and its IANA zone. The dinner hour is that place's.
    #[serde(default)]
    pub there: Option<There>,
    /// The dinner by home's clock, where the hour was told before the place and is the place's now.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub by_home: Option<chrono::DateTime<chrono::Utc>>,
    /// The hour was told by home's clock, and that was said.
    #[serde(skip)]
    pub home_clock: bool,
    /// Cooked the day before.
    pub ahead: Option<bool>,
    /// The bird is already in the house.
    pub at_home: Option<bool>,
    /// The last moment of the use-by date on a fresh bird's pack.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub use_by: Option<chrono::DateTime<chrono::Utc>>,
    /// How many such birds.
    pub birds: Option<u8>,
    /// A salted rest shorter than usual is all right.
    pub short_rest: Option<bool>,
    /// No time was left for a salted rest, so it is salted just before it goes on.
    #[serde(default)]
    pub salt_last: Option<bool>,
    /// [`carvetime_core::salt::Strength`].
    #[serde(default)]
    pub strength: Option<String>,
    /// What else is on the table. A dish keeps its place when another goes.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub dishes: Vec<Option<super::WishDish>>,
    /// When the bird is to go on, as far as somebody said so. The plan says when it has to.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub start: Option<chrono::DateTime<chrono::Utc>>,
    /// When the bird is bought, as far as somebody said so. Nobody is sent shopping before.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub shop: Option<chrono::DateTime<chrono::Utc>>,
    /// A day or an hour was told for when it goes on.
    #[serde(skip)]
    pub starts: bool,
    /// Dishes told with the bird, as they were written. They join the plan when it is one.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub beside: Vec<String>,
    /// Shelves of the fridge that are free for this dinner.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub shelves: Option<u8>,
}

impl Wish {
    /// What `newer` says replaces what was said before; the rest stays. A day told first and an hour told later make a
    /// moment only in [`Wish::settle`], for that takes a zone.
    pub fn merge(&mut self, mut newer: Wish) {
        if newer.more {
            let sum =
                |before: Option<u16>, more: Option<u16>| more.map(|more| before.unwrap_or(0).saturating_add(more));
            newer.adults = sum(self.adults, newer.adults);
            newer.children = sum(self.children, newer.children);
        }
        if newer.fewer {
            // Nobody is left over of an empty table: what can't be is not taken over.
            let left = |before: Option<u16>, gone: Option<u16>| gone.and_then(|gone| before?.checked_sub(gone));
            // Children nobody has told of apart were counted as people.
            if let (None, Some(children)) = (self.children, newer.children) {
                newer.adults = Some(newer.adults.unwrap_or(0).saturating_add(children));
                newer.children = None;
            }
            newer.adults = left(self.adults, newer.adults).filter(|left| *left > 0);
            newer.children = left(self.children, newer.children);
        }
        // Carried hot it is cooked on the day, and cooked the day before it is carried cold: what is said last counts.
        if newer.hot == Some(true) && newer.ahead.is_none() {
            self.ahead = self.ahead.map(|_| false);
        } else if newer.ahead == Some(true) && newer.hot.is_none() {
            self.hot = self.hot.map(|_| false);
        }
        if newer.salting.is_some() {
            self.salt_last = None;
            // Whoever salts it all the same knows better.
            self.presalted.take_if(|_| newer.salting.as_deref() != Some("none"));
        }
        macro_rules! take_over {
            ($($field:ident),+) => { $(if newer.$field.is_some() { self.$field = newer.$field; })+ };
        }
        let (day, hour) = (newer.dinner_day, newer.dinner_hour);
        if newer.dinner.is_some() || hour.is_some() {
            self.by_home = None;
        }
        if newer.dinner.is_some() {
            (self.dinner, self.dinner_day, self.dinner_hour) = (newer.dinner, None, None);
        } else {
            if day.is_some() {
                self.dinner_day = day;
            }
            if hour.is_some() {
                self.dinner_hour = hour;
            }
        }
        take_over!(
            kind,
            mass_g,
            condition,
            form,
            stuffed,
            solution_percent,
            adults,
            children,
            leftovers,
            cooker,
            setting_c,
            salting,
            presalted,
            thawing,
            elsewhere,
            hot,
            drive_min,
            there,
            by_home,
            ahead,
            at_home,
            use_by,
            birds,
            short_rest,
            strength,
            shelves,
            start,
            shop
        );
        self.beside.extend(newer.beside);
        if newer.among {
            self.take_children_out();
        }
    }

    /// Those counted as people were children in part.
    fn take_children_out(&mut self) {
        let children = self.children.unwrap_or(0);
        self.adults = self.adults.map(|people| people.saturating_sub(children));
        self.among = false;
    }

    /// Puts a day and an hour told apart together: with a dinner told before, a new day keeps its hour and a new hour its
    /// day.
    pub fn settle(&mut self, ground: &Ground) {
        let ground = &self.table_ground(ground);
        let before = self.dinner.map(|at| at.with_timezone(&ground.zone).naive_local());
        // "Going in at 11 on Thursday", and then "dinner at 5".
        let start = self.start.map(|at| at.with_timezone(&ground.zone).date_naive());
        let day = self.dinner_day.or(before.map(|at| at.date())).or(start);
        let hour = self.dinner_hour.or(before.map(|at| at.time()));
        if let (Some(day), Some(hour)) = (day, hour) {
            if self.dinner_day.is_some() || self.dinner_hour.is_some() {
                self.dinner = Some(ground.moment(day, hour));
            }
            (self.dinner_day, self.dinner_hour) = (None, None);
        }
    }

    /// Whether nothing was read.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }
}

/// Reads what a sentence says of a dinner. What cannot be right is left out of the wish and told as a [`Problem`].
pub fn read_wish(text: &str, ground: &Ground) -> (Wish, Vec<Problem>) {
    <(Wish, Vec<Problem>)>::clone(&once::shared(text, ground, read))
}

fn read(text: &str, ground: &Ground) -> (Wish, Vec<Problem>) {
    let sentence = Sentence::read(text, ground.lexicon);
    let mut reader = Reader {
        taken: vec![false; sentence.len()],
        s: &sentence,
        ground,
        wish: Wish::default(),
        problems: Vec::new(),
    };
    reader.wish.beside = beside::dishes(&sentence, &mut reader.taken, ground);
    reader.wish.shop = beside::shop(&sentence, &mut reader.taken, ground);
    let start = beside::start(&sentence, &mut reader.taken, ground);
    reader.use_by();
    reader.solution();
    reader.drive();
    reader.mass();
    reader.people();
    reader.heat();
    reader.words();
    reader.of_which_bird();
    reader.when();
    reader.travels();
    reader.birds();
    reader.bare_numbers();
    reader.by_the_table_s_clock();
    reader.starts(start);
    (reader.wish, reader.problems)
}

struct Reader<'a> {
    s: &'a Sentence,
    taken: Vec<bool>,
    ground: &'a Ground,
    wish: Wish,
    problems: Vec<Problem>,
}

impl Reader<'_> {
    fn places(&self) -> std::ops::Range<usize> {
        0..self.s.len()
    }

    fn free(&self, at: usize) -> bool {
        self.taken.get(at) == Some(&false)
    }

    fn take(&mut self, from: usize, to: usize) {
        take(&mut self.taken, from, to);
    }

    /// The sign a `minus` before the amount gives it.
    fn sign(&self, at: usize) -> f64 {
        if at > 0 && self.s.is(at - 1, "minus") && !self.s.is(at - 1, "to") { -1.0 } else { 1.0 }
    }

    /// `contains up to 8 % solution`.
    fn solution(&mut self) {
        let named = self.s.has("solution") || self.s.has("basted");
        let percent = self.places().find_map(|at| Some((at, self.s.amount_in(at, Unit::Percent)?)));
        match percent {
            Some((at, percent)) if named => {
                self.take(at, at);
                if (SOLUTION_PERCENT.0..=SOLUTION_PERCENT.1).contains(&percent) {
                    self.wish.solution_percent = Some(percent);
                } else {
                    self.problems.push(Problem::Solution(percent));
                }
            }
            // A basted whole bird carries about 3 % (9 CFR 381.169(a)).
            None if self.s.has("basted") => self.wish.solution_percent = Some(3.0),
            _ => {}
        }
    }

    /// `use by Nov 26`, `the pack says use by Friday`.
    fn use_by(&mut self) {
        const NEAR: usize = 6;
        let Some(at) = self.places().find(|at| self.s.is(*at, "use-by")) else { return };
        self.take(at, at);
        // Only what follows, up to the end of the clause.
        let clause = (at + 1..=at + NEAR).take_while(|at| self.s.mark(*at) != Some(','));
        let mut beyond = vec![true; self.s.len()];
        clause.for_each(|at| beyond.get_mut(at).into_iter().for_each(|beyond| *beyond = !self.free(at)));
        let before = beyond.clone();
        let day = match read_when(self.s, &mut beyond, self.ground, Lean::Meal) {
            Some(When::Moment(at)) => at.with_timezone(&self.ground.zone).date_naive(),
            Some(When::Day(day)) => day,
            Some(When::Hour(_)) | None => return,
        };
        for at in self.places().filter(|at| beyond.get(*at) != before.get(*at)) {
            take(&mut self.taken, at, at);
        }
        // A date without a year, read as the next one to come, may well be the last one.
        let last = day.checked_sub_months(chrono::Months::new(12)).filter(|last| {
            day - self.ground.today() > FARTHEST_USE_BY && self.ground.today() - *last < chrono::TimeDelta::days(90)
        });
        let Some(next) = last.unwrap_or(day).succ_opt() else { return };
        let until = self.ground.moment(next, chrono::NaiveTime::MIN) - chrono::TimeDelta::minutes(1);
        if (self.ground.now..=self.ground.now + FARTHEST_USE_BY).contains(&until) {
            self.wish.use_by = Some(until);
        } else {
            self.problems.push(Problem::UseBy(until, until < self.ground.now));
        }
    }

    /// `40 min drive`, `at my sister's`.
    fn drive(&mut self) {
        let driven = self.places().find(|at| {
            let near = [at.checked_sub(1), at.checked_add(1), at.checked_sub(2), at.checked_add(2)];
            self.s.amount(*at).is_some_and(|a| a.measure() == Some(Measure::Span))
                && near.into_iter().flatten().any(|near| self.s.is(near, "drive"))
        });
        if let Some((at, span)) = driven.and_then(|at| Some((at, self.s.amount(at)?.span()?))) {
            self.take(at, at);
            let minutes = span.num_minutes();
            match u32::try_from(minutes).ok().filter(|_| span <= LONGEST_DRIVE) {
                Some(minutes) => {
                    self.wish.drive_min = Some(minutes);
                    self.wish.elsewhere = Some(true);
                }
                None => self.problems.push(Problem::Drive(minutes as f64)),
            }
        }
        if self.s.has("elsewhere") {
            self.wish.elsewhere = Some(true);
        } else if self.s.has("here") && self.wish.elsewhere.is_none() {
            self.wish.elsewhere = Some(false);
        }
        self.hot_or_cold();
        self.names_a_clock();
        if self.wish.elsewhere == Some(true) && self.wish.there.is_none() {
            self.there();
        }
    }

    /// `we bring it hot`, `40 min drive, hot`, `carry it cold`. A hot oven, hot gravy and a hot-smoked bird are something else.
    fn hot_or_cold(&mut self) {
        const NEAR: usize = 4;
        if self.wish.elsewhere == Some(false) {
            return;
        }
        // Within the clause.
        let clear = |at: &usize| self.s.mark(*at).is_none();
        let before = |at: usize| (at.saturating_sub(NEAR)..=at).rev().take_while(clear);
        let brought =
            |at: usize| before(at).chain((at..=at + NEAR).take_while(clear)).any(|near| self.s.is(near, "bring"));
        let elsewhere = self.wish.elsewhere == Some(true);
        let ends = |at: usize| at + 1 >= self.s.len() || self.s.mark(at + 1).is_some();
        let refused = |at: usize| at.checked_sub(1).is_some_and(|before| self.s.is(before, "negation"));
        let cooker = |at: usize| self.s.of(at + 1, "cooker-").is_some() || self.s.is(at + 1, "heat-stove");
        let said = |word: &str| {
            self.places()
                .filter(|at| self.s.is(*at, word) && !refused(*at) && !cooker(*at))
                .any(|at| brought(at) || elsewhere && word == "hot" && ends(at))
        };
        // Cold may be the water it thaws in: it is said of the way only.
        let (hot, cold) = (said("hot"), said("cold"));
        if hot != cold {
            self.wish.hot = Some(hot);
            self.wish.elsewhere = Some(true);
        }
    }

    fn mass(&mut self) {
        self.two_masses();
        if self.wish.mass_g.is_some() {
            return;
        }
        let mass = self.places().filter(|at| self.free(*at)).find_map(|at| {
            let amount = self.s.amount(at).filter(|amount| amount.measure() == Some(Measure::Mass))?;
            // "1.89 a pound" is what it costs.
            let article = self.s.raw(at).starts_with(char::is_alphabetic);
            let price = article && at.checked_sub(1).is_some_and(|before| self.s.number(before).is_some());
            Some((at, amount.mass()?)).filter(|_| !price && !self.is_of_other_food(at))
        });
        if let Some((at, mass)) = mass {
            let grams = in_grams(mass) * self.sign(at);
            self.take(at, at);
            self.set_mass(grams);
        }
    }

    /// `5 lb of potatoes`, `2 kg of carrots`: what is weighed is named behind it, and is no bird.
    fn is_of_other_food(&self, at: usize) -> bool {
        let of = usize::from(self.s.is(at + 1, "number-of"));
        let named = at + 1 + of;
        let bird =
            (named..=named + 2).any(|at| self.s.of(at, "bird-").is_some() || self.s.of(at, "condition-").is_some());
        let dish = self.s.of(named, "dish-").is_some() && self.s.of(named, "food-").is_none();
        let unknown = of > 0 && self.s.item(named).is_some_and(|item| matches!(item.what, What::Word([])));
        !bird
            && (dish || unknown && !self.s.has("bird-any") && self.places().all(|at| self.s.of(at, "bird-").is_none()))
    }

    /// `a 12 pounder and a 16 pounder`: the heavier of two birds. The other is planned beside it.
    fn two_masses(&mut self) {
        let lightest = 1500.0;
        let masses: Vec<(usize, f64)> = self
            .places()
            .filter(|at| self.free(*at))
            .filter_map(|at| Some((at, in_grams(self.s.amount(at)?.mass()?))))
            .filter(|(_, grams)| *grams >= lightest && *grams <= MASS_KG.1 * 1000.0)
            .collect();
        let &[(first, one), (second, other)] = masses.as_slice() else { return };
        let joined = (first..second).any(|at| self.s.is(at, "number-and") || self.s.is(at, "number-plus"));
        if joined && (one - other).abs() > 1.0 {
            let (light, heavy) = if one < other { (one, other) } else { (other, one) };
            self.take(first, first);
            self.take(second, second);
            self.set_mass(heavy);
            self.problems.push(Problem::TwoWeights(light / 1000.0, heavy / 1000.0));
        }
    }

    /// Of two birds in one sentence, "12 lb fresh on the smoker and a 20 lb frozen in the oven", nobody can tell here which word is of
    /// which: what differs is left open, and asked.
    fn of_which_bird(&mut self) {
        if !self.problems.iter().any(|problem| matches!(problem, Problem::TwoWeights(..))) {
            return;
        }
        let several = |group: &str| {
            let mut named: Vec<&str> = self.places().filter_map(|at| self.s.of(at, group)).collect();
            named.dedup();
            named.len() > 1
        };
        let (conditions, cookers, kinds) = (several("condition-"), several("cooker-"), several("bird-"));
        if conditions {
            self.wish.condition = None;
        }
        if cookers {
            (self.wish.cooker, self.wish.setting_c) = (None, None);
        }
        if kinds {
            self.wish.kind = None;
        }
    }

    /// `two 12 lb turkeys`, `2 turkeys for 20 people`.
    fn birds(&mut self) {
        const MOST: u32 = 4;
        let spelled = |at: usize| self.s.raw(at).chars().all(char::is_alphabetic);
        let several = |at: usize| self.s.raw(at).ends_with(['s', 'i']);
        let found = self.places().filter(|at| self.free(*at)).find_map(|at| {
            let count = self.s.whole(at, 2..=MOST)?;
            let between = |at: usize| self.s.of(at, "condition-").is_some() || self.s.amount(at).is_some();
            let bird = (at + 1..=at + 3).find(|at| !between(*at)).filter(|at| self.s.of(*at, "bird-").is_some())?;
            (spelled(at) || several(bird) || self.wish.mass_g.is_some()).then_some((at, count))
        });
        if let Some((at, count)) = found {
            self.take(at, at);
            let told = self.problems.iter().any(|problem| matches!(problem, Problem::TwoWeights(..)));
            self.wish.birds = u8::try_from(count).ok().filter(|_| !told);
        }
    }

    fn set_mass(&mut self, grams: f64) {
        let kg = grams / 1000.0;
        if (MASS_KG.0..=MASS_KG.1).contains(&kg) {
            self.wish.mass_g = Some(grams);
        } else {
            self.problems.push(Problem::Mass(kg));
        }
    }

    /// `smoker at 325`, `fan oven 160C`, `gas mark 3`, `thermostat 6`.
    fn heat(&mut self) {
        let refused = |at: usize| at.checked_sub(1).is_some_and(|before| self.s.is(before, "negation"));
        let cooker = self.places().filter(|at| !refused(*at)).find_map(|at| Some((at, self.s.of(at, "cooker-")?)));
        let fan = self.places().any(|at| !refused(at) && self.s.is(at, "cooker-fan-oven"));
        if let Some((_, name)) = cooker {
            self.wish.cooker = Some(if fan { "fan-oven" } else { name }.to_owned());
        }
        let text = self.s.quote(0, self.s.len().saturating_sub(1));
        if self.s.has("fryer") && !only_speaks_of_frying(text, self.ground.lexicon) {
            self.problems.push(Problem::Fryer);
        }
        // A turkey is what is planned where no bird is named: not where one is that there are no times for.
        if self.s.has("other-bird") && self.wish.kind.is_none() {
            self.problems.push(Problem::OtherBird);
        }
        // "1° gennaio" is no heat.
        let dated = |at: usize| self.s.of(at + 1, "month-").is_some();
        let with_scale = self.places().filter(|at| self.free(*at) && !dated(*at)).find_map(|at| {
            let amount = self.s.amount(at).filter(|amount| amount.measure() == Some(Measure::Temperature))?;
            let gas = matches!(amount.unit(), Some(Unit::GasMark | Unit::Thermostat));
            let degrees =
                amount.temperature().map(in_celsius).or_else(|| (!gas).then(|| self.oven_scale(amount.value())));
            Some((at, degrees.unwrap_or(amount.value()), gas))
        });
        let bare = || {
            let (place, _) = cooker?;
            (place + 1..=place + 3).find_map(|at| {
                let value = self.s.number(at).filter(|value| self.free(at) && *value >= 80.0)?;
                Some((at, self.oven_scale(value), false))
            })
        };
        // "smoke a 12 lb turkey at 275": no clock has such an hour.
        let anywhere = || {
            cooker?;
            self.places().find_map(|at| {
                let value = self.s.number(at).filter(|value| (200.0..=600.0).contains(value) && self.free(at))?;
                (at > 0 && self.s.is(at - 1, "at")).then(|| (at, self.oven_scale(value), false))
            })
        };
        let before = || {
            let (place, _) = cooker?;
            let at = place.checked_sub(1)?;
            let value = self.s.number(at).filter(|value| self.free(at) && *value >= 80.0)?;
            Some((at, self.oven_scale(value), false))
        };
        if let Some((at, degrees, gas)) = with_scale.or_else(bare).or_else(before).or_else(anywhere) {
            self.take(at, at);
            if (SETTING_C.0..=SETTING_C.1).contains(&degrees) {
                self.wish.setting_c = Some(degrees);
            } else {
                self.problems.push(Problem::Setting(degrees));
            }
            if gas && self.wish.cooker.is_none() {
                self.wish.cooker = Some("oven".to_owned());
            }
        } else if let Some(level) = self.s.of_any("oven-level-").and_then(OvenLevel::from_name) {
            self.wish.setting_c = Some(in_celsius(level.setting(self.ground.metric)));
        }
    }

    /// °C of an oven's number without a scale. Under 200 no Fahrenheit oven cooks a bird, over 290 no Celsius oven goes.
    fn oven_scale(&self, value: f64) -> f64 {
        let celsius = value < 200.0 || value <= 290.0 && self.ground.metric;
        if celsius { value } else { (value - 32.0) / 1.8 }
    }

    /// Everything that is said by a word alone.
    fn words(&mut self) {
        let (s, places) = (self.s, self.places());
        let named = |group: &str| places.clone().find_map(|at| s.of(at, group)).map(str::to_owned);
        let kind = self.places().find_map(|at| self.s.of(at, "bird-").filter(|name| *name != "any"));
        self.wish.kind = match kind {
            // "Doesn't the breast dry out?": of any bird's.
            Some("turkey") | None if self.s.has("spot-breast") && (kind.is_some() || self.wish.mass_g.is_some()) => {
                Some("turkey-breast".to_owned())
            }
            kind => kind.map(str::to_owned),
        };
        // "Haven't thawed it yet" names what it is not.
        let unthawed = self.s.has("unthawed");
        self.wish.condition = if unthawed { Some("frozen".to_owned()) } else { named("condition-") };
        self.wish.form = named("form-");
        let told = Told::of(s.quote(0, s.len().saturating_sub(1)), self.ground.lexicon);
        let said = |group: &str| told.says(group);
        let of_bird = self.wish.kind.is_some() || self.wish.mass_g.is_some();
        let of_bird = of_bird && !s.has("food-leftovers") && !s.has("negation") && !s.has("ask-thaw");
        let (in_freezer, in_fridge) = (of_bird && said("in-freezer"), of_bird && said("in-fridge"));
        if in_freezer && self.wish.condition.is_none() {
            self.wish.condition = Some("frozen".to_owned());
        }
        let stored = in_freezer || in_fridge && self.wish.condition.as_deref() == Some("fresh");
        let unstuffed = self.s.has("unstuffed");
        self.wish.stuffed = if unstuffed { Some(false) } else { self.s.has("stuffed").then_some(true) };
        self.wish.leftovers =
            if self.s.has("no-leftovers") { Some(false) } else { self.s.has("leftovers").then_some(true) };
        self.wish.salting = named("salting-");
        if self.s.has("salted-already") || self.kosher_bird() {
            self.wish.salting = Some("none".to_owned());
            self.wish.presalted = Some(true);
        }
        self.wish.strength = self.strength().map(str::to_owned);
        if self.wish.solution_percent.is_some()
            && self.wish.salting.as_deref() == Some("wet")
            && !self.s.has("salting-none")
        {
            // "brine solution" on a label is no wish for brine.
            self.wish.salting = None;
        }
        self.wish.thawing = named("thawing-");
        if self.wish.thawing.as_deref() == Some("cook-frozen") && self.wish.condition.is_none() {
            self.wish.condition = Some("frozen".to_owned());
        }
        self.wish.ahead = if self.s.has("not-ahead") { Some(false) } else { self.s.has("ahead").then_some(true) };
        // "A turkey that I need to buy" asks for no list.
        let of_bird = self.s.has("ask-shopping") && (self.wish.kind.is_some() || self.wish.mass_g.is_some());
        let to_buy = self.s.has("to-buy") || of_bird || self.s.has("shopping") && !self.s.has("at-home");
        // Nobody thaws what they don't have.
        let at_home = self.s.has("at-home") || unthawed || stored;
        self.wish.at_home = if to_buy { Some(false) } else { at_home.then_some(true) };
        for at in self.places() {
            if !self.s.meanings(at).is_empty()
                && ["ahead", "not-ahead", "salting-", "form-", "thawing-"]
                    .iter()
                    .any(|group| self.s.meanings(at).iter().any(|meaning| meaning.starts_with(group)))
            {
                self.take(at, at);
            }
        }
    }

    /// "Less salt", "lightly salted"; "light" alone is no word on salt.
    fn strength(&self) -> Option<&'static str> {
        let salty = self.s.has("salt-any") || self.places().any(|at| self.s.of(at, "salting-").is_some());
        let said = |at: &usize| salty || self.s.raw(*at).contains(' ');
        self.places().filter(said).find_map(|at| self.s.of(at, "strength-"))
    }

    /// `kosher turkey`: koshering has salted it.
    fn kosher_bird(&self) -> bool {
        let bird = |at: usize| self.s.of(at, "bird-").is_some();
        let alone = |at: usize| self.s.raw(at).split(' ').count() == 1 && !self.s.is(at + 1, "salt-any");
        let kosher = |at: &usize| self.s.is(*at, "salt-kosher") && alone(*at);
        self.places().filter(kosher).any(|at| bird(at + 1) || at > 0 && bird(at - 1))
    }

    /// "Last Tuesday" is no day to plan for.
    fn over(&mut self) -> bool {
        let last = self.places().find(|at| self.s.is(*at, "last") && self.s.of(at + 1, "weekday-").is_some());
        let Some(at) = last else { return false };
        let day = read_when(self.s, &mut self.taken, self.ground, Lean::Meal);
        self.take(at, at + 1);
        let coming = match day {
            Some(When::Moment(moment)) => moment,
            Some(When::Day(day)) => self.ground.moment(day, chrono::NaiveTime::MIN) + chrono::TimeDelta::hours(12),
            Some(When::Hour(_)) | None => self.ground.now,
        };
        self.problems.push(Problem::Past(coming - chrono::TimeDelta::days(7)));
        true
    }

    fn when(&mut self) {
        if self.over() {
            return;
        }
        let Some(when) = read_when(self.s, &mut self.taken, self.ground, Lean::Meal) else { return };
        match when {
            When::Moment(at) if at <= self.ground.now => self.problems.push(Problem::Past(at)),
            When::Moment(at) if at > self.ground.now + FARTHEST_DINNER => self.problems.push(Problem::Far(at)),
            When::Moment(at) => self.wish.dinner = Some(at),
            When::Day(day) => {
                let noon = self.ground.moment(day, chrono::NaiveTime::MIN) + chrono::TimeDelta::hours(12);
                if day < self.ground.today() {
                    self.problems.push(Problem::Past(noon));
                } else if noon > self.ground.now + FARTHEST_DINNER {
                    self.problems.push(Problem::Far(noon));
                } else {
                    self.wish.dinner_day = Some(day);
                }
            }
            When::Hour(hour) => self.wish.dinner_hour = Some(hour),
        }
    }

    /// "Going in at 11, dinner at 4 on Thursday": one day is told for both.
    fn starts(&mut self, start: Option<When>) {
        let zone = self.ground.zone;
        self.wish.starts = start.is_some();
        match start {
            Some(When::Moment(at)) => {
                self.wish.start = Some(at);
                if self.wish.dinner_hour.is_some() && self.wish.dinner_day.is_none() {
                    self.wish.dinner_day = Some(at.with_timezone(&zone).date_naive());
                }
            }
            Some(When::Hour(hour)) => {
                let day = self.wish.dinner.map(|at| at.with_timezone(&zone).date_naive()).or(self.wish.dinner_day);
                self.wish.start = Some(day.map_or(next_at(self.ground, hour), |day| self.ground.moment(day, hour)));
            }
            Some(When::Day(_)) | None => {}
        }
    }

    /// "We're flying to Turkey on Friday": a country, and no day to eat.
    fn travels(&mut self) {
        let told = Told::of(self.s.quote(0, self.s.len().saturating_sub(1)), self.ground.lexicon);
        let there = told.says("going-there");
        let bird = self.wish.mass_g.is_some() || self.places().any(|at| self.s.of(at, "meal-").is_some());
        if there && !bird {
            self.wish.kind = None;
            (self.wish.dinner, self.wish.dinner_day, self.wish.dinner_hour) = (None, None, None);
        }
    }

    /// Numbers nothing has claimed: before the bird it is its mass, a lone one is told back.
    fn bare_numbers(&mut self) {
        for at in self.places() {
            let Some(value) = self.s.number(at).filter(|_| self.free(at)) else { continue };
            let by_bird = (at + 1..=at + 3).any(|next| self.s.of(next, "bird-").is_some())
                || at > 0 && self.s.of(at - 1, "bird-").is_some();
            let signed = value * self.sign(at);
            if by_bird && self.wish.mass_g.is_none() && !self.problems.iter().any(|p| matches!(p, Problem::Mass(_))) {
                let kg =
                    if self.ground.metric { signed } else { in_kilograms(carvetime_core::quantity::pounds(signed)) };
                self.set_mass(kg * 1000.0);
            } else {
                self.problems.push(Problem::LooseNumber(self.s.raw(at).chars().take(20).collect()));
            }
            self.take(at, at);
        }
        // One such remark is enough.
        let mut seen = false;
        self.problems.retain(|p| !matches!(p, Problem::LooseNumber(_)) || !std::mem::replace(&mut seen, true));
    }
}

/// When dinner is, from a text that says nothing else (`6`, `17h`, `half past five`, `Sunday at 5`).
pub fn read_dinner_time(text: &str, ground: &Ground) -> (Wish, Vec<Problem>) {
    let sentence = Sentence::read(text, ground.lexicon);
    let mut reader = Reader {
        taken: vec![false; sentence.len()],
        s: &sentence,
        ground,
        wish: Wish::default(),
        problems: Vec::new(),
    };
    reader.when();
    let nothing = reader.wish.is_empty() && reader.problems.is_empty();
    let alone = || sentence.whole(0, 0..=24).map(|hour| (hour, 0)).or_else(|| hour_of_amount(&sentence, 0));
    if let Some((hour, minute)) = alone().filter(|_| nothing && sentence.len() == 1) {
        let hour = if (1..=11).contains(&hour) { hour + 12 } else { hour % 24 };
        reader.wish.dinner_hour = chrono::NaiveTime::from_hms_opt(hour, minute, 0);
    }
    (reader.wish, reader.problems)
}

/// The dinner of a wish that tells the hour alone: the next time the clock shows it.
pub fn next_dinner(wish: &Wish, ground: &Ground) -> Option<chrono::DateTime<chrono::Utc>> {
    wish.dinner.or_else(|| wish.dinner_hour.map(|hour| next_at(ground, hour)))
}
