//! Questions of salt: converted, weighed, dosed, in a brine, of one's own.

use super::Asked;
use crate::ask::question::{Question, SaltSaid};
use crate::ask::usual_grain;
use crate::words::UnitSystem;
use carvetime_core::bird::BirdMass;
use carvetime_core::quantity::{Amount, Measure, Unit};
use carvetime_core::salt::{Grain, Strength};

impl Asked<'_> {
    /// Salts in the order named.
    pub(super) fn salts(&self) -> Vec<(usize, SaltSaid)> {
        let named = |at: usize| match self.s.of(at, "salt-")? {
            "own" => Some(SaltSaid::Own),
            "kosher" => Some(SaltSaid::Kosher),
            name => Grain::from_name(name).map(SaltSaid::Grain),
        };
        let mut salts: Vec<(usize, SaltSaid)> = self.places().filter_map(|at| Some((at, named(at)?))).collect();
        // "... kosher ... coarse kosher": the reply to which kosher it is.
        let reply = salts.last().map(|(_, salt)| *salt);
        let kosher = salts.iter().position(|(_, salt)| *salt == SaltSaid::Kosher);
        if let (Some(kosher), Some(SaltSaid::Grain(Grain::FlakeKosher | Grain::CoarseKosher))) = (kosher, reply) {
            let enough = if self.amount_of_salt().is_some() && self.has("ask-into") { 3 } else { 2 };
            let told_later = kosher + 1 < salts.len() && salts.len() >= enough;
            if let Some((_, told)) = told_later.then(|| salts.pop()).flatten() {
                salts.iter_mut().skip(kosher).take(1).for_each(|(_, salt)| *salt = told);
            }
        }
        salts
    }

    pub(super) fn amount_of_salt(&self) -> Option<(usize, &Amount)> {
        self.places().find_map(|at| {
            let amount = self.s.amount(at)?;
            matches!(amount.measure(), Some(Measure::Mass | Measure::Volume)).then_some((at, amount))
        })
    }

    pub(super) fn about_salt(&self) -> Option<Question> {
        let salts = self.salts();
        let amount = self.amount_of_salt();
        if let Some(own) = self.own_salt(&salts) {
            return Some(own);
        }
        let about_bird = self.wish.kind.is_some() || self.has("bird-any");
        if let [(_, salt)] = salts[..]
            && self.has("ask-only")
            && amount.is_none()
            && self.wish.mass_g.is_none()
            && !self.any(&["ask-how-much", "ask-how-many", "ask-safe"])
            && !self.places().any(|at| self.s.mark(at) == Some('?') || self.s.of(at, "dish-").is_some())
        {
            return Some(Question::OnlySalt { salt });
        }
        let one = salts.first().map(|(_, salt)| *salt);
        if salts.len() >= 2 && !self.has("sodium") {
            // The salt behind the amount is the one at hand; without one there, the first named.
            let from_at = amount.and_then(|(at, _)| salts.iter().position(|(salt, _)| *salt > at)).unwrap_or(0);
            let (_, from) = *salts.get(from_at)?;
            let (_, to) = *salts.iter().enumerate().find(|(n, _)| *n != from_at)?.1;
            let amount = amount.map(|(_, amount)| amount.clone());
            return Some(Question::SaltConvert { amount, from, to });
        }
        let brine = self.has("salting-wet") && !self.has("salting-dry");
        let per = self.per_unit();
        if (self.has("salt-any") || one.is_some()) && !brine && self.wish.solution_percent.is_none() {
            if let Some(unit @ (Unit::Pound | Unit::MetricPound | Unit::Kilogram)) = per {
                return Some(Question::SaltPer { kilogram: unit != Unit::Pound, salt: one });
            }
            // "How many grams is a tablespoon of salt": of which salt was not said.
            let spoon = amount.filter(|(_, amount)| amount.measure() == Some(Measure::Volume) && !about_bird);
            let kosher = one == Some(SaltSaid::Kosher);
            if let Some(volume) =
                spoon.and_then(|(_, a)| a.volume(self.asker.spoons)).filter(|_| kosher || one.is_none())
            {
                return Some(Question::SpoonWeights { volume, kosher });
            }
        }
        if brine && self.has("ask-how-long") && self.wish.mass_g.is_none() && !self.has("ask-deep") {
            return Some(Question::BrineTime);
        }
        if self.has("ask-deep") && (self.has("salt-any") || one.is_some() || brine || self.has("salting-dry")) {
            return Some(Question::SaltDepth { rest: self.span() });
        }
        if self.has("sodium") {
            return Some(Question::Sodium { bird: self.bird(), people: self.wish.adults, salt: one });
        }
        if brine {
            let percent = self.amounts(Measure::Percent).find_map(|(_, amount)| amount.percent());
            // "4 liters of water" says how much water there is, not what the percentage is of.
            let measured = |at: usize| self.amounts(Measure::Volume).any(|(volume, _)| volume + 1 == at);
            let of_water = (0..self.s.len()).any(|at| self.s.is(at, "ask-of-water") && !measured(at));
            let water = self.amounts(Measure::Volume).find_map(|(_, amount)| amount.volume(self.asker.spoons));
            let one_of = |unit: Unit| unit.milliliters(self.asker.spoons).map(carvetime_core::quantity::milliliters);
            let water = water.or_else(|| per.filter(|unit| unit.measure() == Measure::Volume).and_then(one_of));
            return Some(Question::Brine { percent, of_water, water, bird: self.bird(), salt: one });
        }
        let salted = self.any(&["salt-any", "salting-dry"]) || one.is_some();
        if let (None, Some((at, amount)), false, true) = (one, amount, about_bird, self.has("salt-any"))
            && amount.mass().is_some_and(|mass| BirdMass::new(mass).is_err_and(|error| mass < error.low))
            && !at.checked_sub(1).is_some_and(|before| self.is_for(before))
        {
            // "20 g salt": no bird is as light, the salt is meant.
            let own = self.asker.own_salt.is_some();
            let usual = SaltSaid::Grain(usual_grain(self.asker.units == UnitSystem::Us));
            let salt = if own { SaltSaid::Own } else { usual };
            return Some(Question::SaltWeigh { amount: amount.clone(), salt });
        }
        if let (Some(salt), Some((_, amount)), false) = (one, amount, about_bird) {
            // Pounds of salt are a bird's weight told beside a salt.
            let heavy = matches!(amount.unit(), Some(Unit::Pound | Unit::MetricPound | Unit::Kilogram));
            let of_bird = heavy && (self.has("ask-how-much") || self.weighs_a_bird());
            if !of_bird {
                return Some(Question::SaltWeigh { amount: amount.clone(), salt });
            }
        }
        if salted && (about_bird || self.wish.mass_g.is_some() || self.any(&["ask-how-much", "salting-dry"])) {
            let strength = match (self.has("strength-light"), self.has("strength-bold")) {
                (true, false) => Strength::Light,
                (false, true) => Strength::Bold,
                _ => Strength::Usual,
            };
            return Some(Question::SaltDose { bird: self.bird(), salt: one, strength });
        }
        None
    }

    /// "Coarse salt for 5 kg", "salt for 4.5 kg in coarse salt": what the salt is for, and no salt to be measured out.
    pub(super) fn weighs_a_bird(&self) -> bool {
        const LIGHTEST_G: f64 = 600.0;
        let is_for = |at: usize| at.checked_sub(1).is_some_and(|before| self.is_for(before));
        self.amounts(Measure::Mass).any(|(at, amount)| {
            is_for(at) && amount.mass().is_some_and(|mass| carvetime_core::quantity::in_grams(mass) >= LIGHTEST_G)
        })
    }

    /// `my salt: 1/4 tsp is 0.7 g`, `my salt has 280 mg sodium per 1/4 tsp`.
    pub(super) fn own_salt(&self, salts: &[(usize, SaltSaid)]) -> Option<Question> {
        matches!(salts, [(_, SaltSaid::Own)]).then(|| self.spoon_weighed()).flatten()
    }

    /// `1/4 tsp is 0.7 g`, `280 mg sodium per 1/4 tsp`: what a packet says of its salt.
    pub(super) fn spoon_weighed(&self) -> Option<Question> {
        let volume = self.amounts(Measure::Volume).find_map(|(_, amount)| amount.volume(self.asker.spoons))?;
        let sodium_at = self.s.find(0, "sodium");
        let masses: Vec<_> =
            self.amounts(Measure::Mass).filter_map(|(at, amount)| Some((at, amount.unit()?, amount.mass()?))).collect();
        let sodium = sodium_at.and_then(|place| {
            let milligrams = masses.iter().find(|(_, unit, _)| *unit == Unit::Milligram);
            milligrams.or_else(|| masses.iter().min_by_key(|(at, _, _)| at.abs_diff(place)))
        });
        let mass = masses.iter().find(|(at, _, _)| sodium.is_none_or(|(sodium, _, _)| at != sodium));
        (sodium.is_some() || mass.is_some()).then(|| Question::OwnSalt {
            volume,
            mass: mass.map(|(_, _, mass)| *mass),
            sodium: sodium.map(|(_, _, mass)| *mass),
        })
    }
}
