//! What has happened, looked up by step, and what has been overtaken by it.
//!
//! People forget to say that something is done. A later step done settles the earlier ones: with the bird on, nobody is
//! asked to salt it.

use super::order::Way;
use super::{Fact, Moment, Order, Step};

/// The facts of one plan.
#[derive(Debug, Clone, Copy)]
pub(super) struct Past<'a> {
    facts: &'a [Fact],
    way: Way,
    furthest: u8,
}

impl<'a> Past<'a> {
    pub fn new(order: &Order, facts: &'a [Fact]) -> Self {
        let way = order.way();
        let furthest = facts
            .iter()
            .filter(|fact| fact.done || passes_when_skipped(fact.step))
            .map(|fact| settles(fact.step, fact.nth, way))
            .max()
            .unwrap_or(0);
        Self { facts, way, furthest }
    }

    /// Whether anything that comes after `step` has been done.
    pub fn is_beyond(self, step: Step) -> bool {
        self.furthest > place(step, 0, self.way)
    }

    /// The same past, with dinner served as planned although nobody said so.
    pub fn served(self) -> Self {
        Self { furthest: self.furthest.max(settles(Step::Serve, 0, self.way) + 1), ..self }
    }

    /// Dinner has been served, or something that comes after it has been done.
    pub fn is_served(self) -> bool {
        self.furthest >= place(Step::Serve, 0, self.way)
    }

    /// Whether anything has been done at all.
    pub fn begun(self) -> bool {
        self.facts.iter().any(|fact| fact.done)
    }

    fn last(self, step: Step, nth: u8) -> Option<&'a Fact> {
        self.facts.iter().rev().find(|fact| fact.step == step && fact.nth == nth)
    }

    /// When it was done.
    pub fn done(self, step: Step, nth: u8) -> Option<Moment> {
        self.last(step, nth).filter(|fact| fact.done).map(|fact| fact.at)
    }

    /// When it was done or, for a point in time that passes either way, left out.
    pub fn passed(self, step: Step, nth: u8) -> Option<Moment> {
        self.last(step, nth).filter(|fact| fact.done || passes_when_skipped(step)).map(|fact| fact.at)
    }

    /// Left out on purpose.
    pub fn skipped(self, step: Step, nth: u8) -> bool {
        self.last(step, nth).is_some_and(|fact| !fact.done)
    }

    /// Not said to be done, but a later step was.
    pub fn overtaken(self, step: Step, nth: u8) -> bool {
        place(step, nth, self.way) < self.furthest && self.last(step, nth).is_none()
    }

    /// All that were done of several: which and when, in the order of `nth`.
    pub fn all_done(self, step: Step) -> Vec<(u8, Moment)> {
        let mut done: Vec<(u8, Moment)> = Vec::new();
        for fact in self.facts.iter().filter(|fact| fact.step == step) {
            done.retain(|(nth, _)| *nth != fact.nth);
            if fact.done {
                done.push((fact.nth, fact.at));
            }
        }
        done.sort_unstable();
        done
    }

    /// The last that was done of several: which and when.
    pub fn last_done(self, step: Step) -> Option<(u8, Moment)> {
        self.all_done(step).last().copied()
    }
}

/// Steps that are points in time: "skipped" can only mean that it is over.
fn passes_when_skipped(step: Step) -> bool {
    matches!(step, Step::On | Step::Pull | Step::Carve | Step::Travel | Step::Serve)
}

/// Place of a step in the order of things.
fn place(step: Step, nth: u8, way: Way) -> u8 {
    match step {
        Step::Buy => 1,
        Step::Thaw => 2,
        Step::Water => 3,
        Step::Salt => 4,
        Step::Rest => 5,
        Step::Temper | Step::Fire => 6,
        Step::On => 7,
        Step::Check => 8,
        Step::Pull => 9,
        Step::Stand => 10,
        Step::Pack if way == Way::Hot => 11,
        Step::Travel if way == Way::Hot => 12,
        Step::Carve => 13,
        Step::Chill if way == Way::Ahead && nth == 0 => 14,
        Step::Pack => 15,
        Step::Travel => 16,
        Step::Reheat => 17,
        Step::Serve | Step::Dish => 18,
        Step::Chill => 19,
        Step::Leftovers => 20,
    }
}

/// The place up to which a step done settles what came before. A fire may be lit while the bird still thaws, and a dish made at any time.
fn settles(step: Step, nth: u8, way: Way) -> u8 {
    if matches!(step, Step::Fire | Step::Dish) { 0 } else { place(step, nth, way) }
}
