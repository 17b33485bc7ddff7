//! Brine against published recipes and densities.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod table;

use carvetime_core::bird::{Bird, BirdMass, Condition, Form, Kind};
use carvetime_core::brine::{BrineError, BrineStrength, warmest_allowed, wet_brine};
use carvetime_core::quantity::{
    SpoonSystem, Unit, celsius, grams, in_fahrenheit, in_grams, in_kilograms, in_milliliters, milliliters, pounds,
};
use carvetime_core::salt::{Grain, Salt};
use chrono::TimeDelta;
use proptest::prelude::*;
use table::Table;

fn turkey(solution: Option<f64>) -> Bird {
    let mass = BirdMass::new(pounds(14.0)).unwrap();
    Bird { kind: Kind::Turkey, mass, condition: Condition::Fresh, form: Form::Whole, stuffed: false, solution }
}

#[test]
fn published_brines_are_the_usual_strength() {
    let table = Table::read("salt_dose_guidance.csv");
    let us = |unit: Unit| milliliters(unit.milliliters(SpoonSystem::Us).unwrap());
    let mut seen = 0;
    for row in table.rows().filter(|r| r.text("method") == "wet brine") {
        let (salt, water) = match row.text("amount") {
            "0.75 cup" => (us(Unit::Cup) * 0.75, us(Unit::Gallon)),
            "3 tbsp" => (us(Unit::Tablespoon) * 3.0, us(Unit::Quart)),
            other => panic!("{other}"),
        };
        let printed = row.number("grams_salt_table_equiv");
        // a cup of table salt weighs 292 g, 48 teaspoons 288 g: both are in the database
        let spooned = in_grams(Salt::from(Grain::Table).mass_of(salt));
        assert!((spooned - printed).abs() <= 0.015 * printed, "{spooned} g, printed {printed}");
        let strength = BrineStrength::mixed(grams(printed), water).unwrap();
        let usual = BrineStrength::usual();
        assert!((strength.percent_of_solution() - usual.percent_of_solution()).abs() < 0.1, "{strength:?}");
        assert!((in_grams(usual.salt_for(water)) - printed).abs() < 1.0);
        seen += 1;
    }
    assert_eq!(seen, 2);
    let max = table.rows().find(|r| r.text("amount") == "0.75 cup").unwrap().number("max_hours");
    assert_eq!(wet_brine(&turkey(None), BrineStrength::usual()).unwrap().at_most, TimeDelta::hours(max as i64));
}

#[test]
fn both_conventions_are_those_of_the_table() {
    for row in Table::read("nacl_brine_coolprop.csv").rows() {
        let strength = BrineStrength::of_solution(row.number("nacl_mass_pct")).unwrap();
        let printed = row.number("salt_g_per_100g_water");
        assert!((strength.percent_of_water() - printed).abs() <= 0.5e-4, "{strength:?}, printed {printed}");
    }
}

#[test]
fn density_is_the_handbooks_within_two_parts_in_a_thousand() {
    let water = 0.9991; // kg/L at 15 °C
    for row in Table::read("nacl_brine_handbook.csv").rows().filter(|r| r.number("nacl_mass_pct") > 0.0) {
        let strength = BrineStrength::of_solution(row.number("nacl_mass_pct")).unwrap();
        let printed = row.number("specific_gravity_15c");
        let got = strength.density(celsius(15.0)) / water;
        assert!((got - printed).abs() <= 0.002, "{strength:?}: {got}, printed {printed}");
    }
}

#[test]
fn density_is_that_of_an_independent_fluid_model_at_every_temperature() {
    for row in Table::read("nacl_brine_coolprop.csv").rows() {
        let strength = BrineStrength::of_solution(row.number("nacl_mass_pct")).unwrap();
        let printed = row.number("density_kg_m3") / 1000.0;
        let got = strength.density(celsius(row.number("temp_c")));
        // stated accuracy: the model lets brine expand like water, which a strong one outdoes
        let tolerance = if row.number("nacl_mass_pct") <= 10.0 { 0.004 } else { 0.006 };
        assert!(
            (got - printed).abs() <= tolerance,
            "{strength:?} {} °C: {got}, printed {printed}",
            row.number("temp_c")
        );
    }
}

#[test]
fn six_percent_means_two_things() {
    let litre = milliliters(1000.0);
    let of_solution = BrineStrength::of_solution(6.0).unwrap();
    let of_water = BrineStrength::of_water(6.0).unwrap();
    assert!((in_grams(of_solution.salt_for(litre)) - 63.83).abs() < 0.005);
    assert!((in_grams(of_water.salt_for(litre)) - 60.0).abs() < 1e-9);
}

#[test]
fn a_brine_for_a_bird_fits_its_vessel_and_stays_cold() {
    let brine = wet_brine(&turkey(None), BrineStrength::usual()).unwrap();
    let bird_ml = in_kilograms(turkey(None).mass.get()) * 1000.0;
    assert!(in_milliliters(brine.brine) > in_milliliters(brine.water));
    assert!(in_milliliters(brine.vessel) > in_milliliters(brine.brine) + bird_ml);
    assert!(brine.time.low < brine.time.high && brine.time.high <= brine.at_most);
    assert!((in_fahrenheit(warmest_allowed()) - 40.0).abs() < 1e-9);
}

#[test]
fn brines_that_can_not_be_are_refused() {
    for percent in [0.0, -3.0, 26.5, f64::NAN] {
        assert!(matches!(BrineStrength::of_solution(percent), Err(BrineError::Strength { .. })), "{percent}");
    }
    assert!(matches!(BrineStrength::mixed(grams(50.0), milliliters(0.0)), Err(BrineError::Water { .. })));
    assert_eq!(wet_brine(&turkey(Some(8.0)), BrineStrength::usual()), Err(BrineError::AlreadySalted { percent: 8.0 }));
}

proptest! {
    #[test]
    fn a_mixed_brine_has_the_strength_it_was_mixed_for(percent in 0.1f64..26.0, ml in 100.0f64..50_000.0) {
        let strength = BrineStrength::of_solution(percent).unwrap();
        let water = milliliters(ml);
        let mixed = BrineStrength::mixed(strength.salt_for(water), water).unwrap();
        prop_assert!((mixed.percent_of_solution() - percent).abs() < 1e-9);
        let again = BrineStrength::of_water(strength.percent_of_water()).unwrap();
        prop_assert!((again.percent_of_solution() - percent).abs() < 1e-9);
    }
}
