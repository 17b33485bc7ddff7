//! Salt against published weights, sodium and guidance, and against common practice.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod table;

use carvetime_core::bird::{Bird, BirdMass, Condition, Form, Kind, edible};
use carvetime_core::quantity::{
    SpoonSystem, UnitWords, Volume, grams, in_grams, in_kilograms, in_milliliters, milliliters, pounds, round_spoons,
    scan,
};
use carvetime_core::salt::{
    BAKING_POWDER_G_PER_TSP, DAILY_SODIUM_MG, Dose, DoseError, Grain, HeldBack, Measured, NO_SALT_FROM_PERCENT,
    OwnSalt, PEPPER_G_PER_TSP, PacketError, Place, RULES_OF_THUMB, SODIUM_OF_NACL, Salt, Serving, SodiumError,
    Strength, convert, depth_after, dose, rule_of_thumb, sodium_per_serving,
};
use carvetime_core::source::Standing;
use chrono::TimeDelta;
use proptest::prelude::*;
use table::Table;

const US_TSP_ML: f64 = 4.928_921_593_75;

fn close(got: f64, printed: f64, tolerance: f64) -> bool {
    (got - printed).abs() <= tolerance
}

fn tsp(count: f64) -> Volume {
    milliliters(count * US_TSP_ML)
}

fn flake() -> Salt {
    Salt::Grain(Grain::FlakeKosher)
}

fn bird(kind: Kind, lb: f64, form: Form) -> Bird {
    let mass = BirdMass::new(pounds(lb)).unwrap();
    Bird { kind, mass, condition: Condition::Fresh, form, stuffed: false, solution: None }
}

fn turkey(lb: f64) -> Bird {
    bird(Kind::Turkey, lb, Form::Whole)
}

/// The cell `column` of the row whose ingredient and measure are these.
fn ingredient(name: &str, measure: &str, column: &str) -> f64 {
    let table = Table::read("ingredient_densities.csv");
    let mut rows = table.rows();
    rows.find(|r| r.text("ingredient") == name && r.text("measure") == measure).unwrap().number(column)
}

#[test]
fn grams_a_spoon_are_the_published_ones_or_lie_in_the_published_range() {
    let per_tsp = |grain: Grain| Salt::from(grain).grams_per_teaspoon(SpoonSystem::Us);
    assert!(close(per_tsp(Grain::Table), ingredient("salt, table", "tsp", "grams"), 0.05));
    let kosher =
        ["low", "high"].map(|end| ingredient(&format!("kosher salt (range over makers), {end}"), "tsp", "grams"));
    assert!(close(per_tsp(Grain::FlakeKosher), kosher[0], 0.05));
    assert!(close(per_tsp(Grain::CoarseKosher), kosher[1], 0.05));
    let sea = ["low", "high"].map(|end| ingredient(&format!("sea salt (range over kinds), {end}"), "tsp", "grams"));
    for grain in [Grain::FineSea, Grain::CoarseSea] {
        assert!(per_tsp(grain) > sea[0] && per_tsp(grain) < sea[1]);
        assert_eq!(grain.grams_per_teaspoon().1.standing, Standing::CommonPractice);
    }
    assert_eq!(Grain::Pickling.grams_per_teaspoon().1.standing, Standing::CommonPractice);
    assert!(close(
        BAKING_POWDER_G_PER_TSP,
        ingredient("baking powder, double-acting, straight phosphate", "tsp", "grams"),
        0.05
    ));
    assert!(close(PEPPER_G_PER_TSP, ingredient("black pepper", "tsp, ground", "grams"), 0.05));
}

#[test]
fn sodium_of_salt_and_the_daily_value_are_the_published_ones() {
    let table = Table::read("sodium_reference.csv");
    let value = |item: &str| table.rows().find(|r| r.text("item") == item).unwrap().number("value");
    assert!(close(SODIUM_OF_NACL, value("sodium fraction of NaCl"), 0.5e-6));
    assert!(close(DAILY_SODIUM_MG, value("daily value for sodium (current label)"), 0.5));
    let table_salt = Salt::Grain(Grain::Table);
    assert!(close(table_salt.sodium_share() * 1e5, value("sodium in table salt"), 0.5));
    let spoon_mg = in_grams(table_salt.mass_of(tsp(1.0))) * table_salt.sodium_share() * 1000.0;
    assert!(close(spoon_mg, ingredient("salt, table", "tsp", "sodium_mg"), 0.05), "{spoon_mg}");
}

#[test]
fn two_tablespoons_of_table_salt_are_over_four_of_flake() {
    let got = convert(Measured::Volume(tsp(6.0)), &Grain::Table.into(), &flake());
    assert!(close(in_grams(got.mass), 36.0, 1e-9));
    assert!(close(in_milliliters(got.to) / US_TSP_ML / 3.0, 36.0 / 8.4, 1e-9));
}

#[test]
fn half_as_much_table_salt_is_confirmed_by_mass() {
    let rule = rule_of_thumb(Grain::FlakeKosher, Grain::Table).unwrap();
    assert_eq!(rule.spoons, 0.5);
    assert!(close(rule.spoons_by_mass(), 0.467, 0.0005), "{}", rule.spoons_by_mass());
    assert!(rule.holds());
    assert_eq!(rule_of_thumb(Grain::Table, Grain::FlakeKosher).unwrap().spoons, 2.0);
}

#[test]
fn a_quarter_less_coarse_kosher_is_forty_percent_less_by_mass() {
    let rule = rule_of_thumb(Grain::FlakeKosher, Grain::CoarseKosher).unwrap();
    assert_eq!(rule.spoons, 0.75);
    assert!(close(1.0 - rule.spoons_by_mass(), 0.42, 0.005), "{}", rule.spoons_by_mass());
    assert!(!rule.holds(), "the answer goes by mass");
    assert!(RULES_OF_THUMB.iter().all(|r| r.source.standing == Standing::CommonPractice));
    assert_eq!(rule_of_thumb(Grain::Table, Grain::CoarseSea), None);
}

#[test]
fn a_packet_gives_the_salts_weight() {
    let words = UnitWords::international();
    let found = scan("1/4 tsp is 0.7 g", &words);
    let volume = found[0].amount.volume(SpoonSystem::Us).unwrap();
    let own = OwnSalt::from_weight(Some("the red box".to_owned()), volume, found[1].amount.mass().unwrap()).unwrap();
    assert!(close(Salt::Own(own).grams_per_teaspoon(SpoonSystem::Us), 2.8, 1e-9));

    let found = scan("1/4 tsp (0.7g) has 280 mg sodium", &words);
    let label = found[0].amount.label_volume().unwrap();
    assert!(close(in_milliliters(label), 1.25, 1e-9));
    let (mass, sodium) = (found[1].amount.mass().unwrap(), found[2].amount.mass().unwrap());
    let own = OwnSalt::from_label(None, label, sodium, Some(mass)).unwrap();
    assert!(close(own.grams_per_ml(), 0.28 / 0.393_372 / 1.25, 1e-6));
    assert!(close(Salt::Own(own).grams_per_teaspoon(SpoonSystem::Us), 2.8, 0.05));
}

#[test]
fn a_table_salt_label_agrees_with_the_database() {
    // 1/4 tsp (1.5 g) has 590 mg sodium, as US table salt labels print it
    let own = OwnSalt::from_label(None, milliliters(1.25), grams(0.59), Some(grams(1.5))).unwrap();
    let per_label_tsp = Salt::Own(own).grams_per_teaspoon(SpoonSystem::Metric);
    assert!(close(per_label_tsp, 6.0, 0.1), "{per_label_tsp}");
}

#[test]
fn a_packet_that_can_not_be_salt_is_refused_with_the_range() {
    let quarter = milliliters(1.25);
    match OwnSalt::from_weight(None, quarter, grams(7.0)) {
        Err(PacketError::Density { given, low, high }) => {
            assert!(close(given, 5.6, 1e-9) && low < high && given > high);
        }
        other => panic!("{other:?}"),
    }
    assert!(matches!(OwnSalt::from_weight(None, quarter, grams(0.1)), Err(PacketError::Density { .. })));
    for volume in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        assert!(matches!(OwnSalt::from_weight(None, milliliters(volume), grams(1.0)), Err(PacketError::Volume { .. })));
    }
    for mass in [0.0, -1.0, f64::NAN] {
        assert!(matches!(OwnSalt::from_weight(None, quarter, grams(mass)), Err(PacketError::Mass { .. })));
    }
    // half of it potassium salt
    let lite = OwnSalt::from_label(None, quarter, grams(0.29), Some(grams(1.4)));
    assert!(matches!(lite, Err(PacketError::NotPlainSalt { .. })), "{lite:?}");
}

#[test]
fn the_usual_bird_takes_eight_teaspoons_of_flake_in_the_usual_places() {
    let dose = dose(&turkey(12.7), Strength::Usual).unwrap();
    let spoons = |place| in_milliliters(flake().volume_of(dose.each(place).unwrap())) / US_TSP_ML;
    assert!(close(in_milliliters(flake().volume_of(dose.total)) / US_TSP_ML, 8.0, 1e-9));
    for (place, printed) in
        [(Place::Cavity, 3.0), (Place::Breast, 1.0), (Place::Thigh, 0.5), (Place::Drumstick, 0.5), (Place::Skin, 1.0)]
    {
        assert!(close(spoons(place), printed, 1e-9), "{place:?}: {}", spoons(place));
    }
    let counts: Vec<u8> = dose.shares.iter().map(|s| s.count).collect();
    assert_eq!(counts, [1, 2, 2, 2, 1]);
    let round = round_spoons(flake().volume_of(dose.total), SpoonSystem::Us);
    assert_eq!((round.tablespoons, round.eighth_teaspoons), (2, 16));
}

#[test]
fn the_dose_agrees_with_published_guidance_read_as_flake_kosher() {
    let table = Table::read("salt_dose_guidance.csv");
    let dry = table.rows().find(|r| r.text("method") == "dry brine").unwrap();
    assert_eq!(
        (dry.text("amount"), dry.text("per"), dry.text("salt_kind")),
        ("1 tbsp", "5 lb of turkey", "kosher or seasoned salt")
    );
    assert_eq!(Dose::longest_rest(), TimeDelta::hours(dry.number("max_hours") as i64));
    for lb in [8.0, 12.7, 20.0] {
        let ours = dose(&turkey(lb), Strength::Usual).unwrap().total;
        let tablespoons = lb / 5.0;
        let as_flake = in_grams(flake().mass_of(tsp(3.0 * tablespoons)));
        assert!(close(in_grams(ours) / as_flake, 1.0, 0.1), "{lb} lb: {ours:?} and {as_flake} g");
        assert!(close(in_grams(Dose::published(&turkey(lb))), as_flake, 1e-6));
        // the same spoon of coarse kosher is far more salt: the guidance names no grain
        let as_coarse = in_grams(Salt::from(Grain::CoarseKosher).mass_of(tsp(3.0 * tablespoons)));
        assert!(as_coarse > 1.5 * in_grams(ours));
    }
}

#[test]
fn other_forms_give_the_salt_of_absent_places_to_the_others() {
    let flat = dose(&bird(Kind::Chicken, 5.0, Form::Flat), Strength::Usual).unwrap();
    assert!(flat.each(Place::Cavity).is_none() && flat.each(Place::BoneSide).is_some());
    let pieces = dose(&bird(Kind::Turkey, 12.0, Form::Pieces), Strength::Usual).unwrap();
    assert!(pieces.each(Place::Cavity).is_none() && pieces.each(Place::BoneSide).is_none());
    let breast = dose(&bird(Kind::TurkeyBreast, 6.0, Form::Whole), Strength::Usual).unwrap();
    assert!(breast.each(Place::Thigh).is_none() && breast.each(Place::Drumstick).is_none());
    assert!(close(in_grams(breast.each(Place::Breast).unwrap()) * 6.0, in_grams(breast.total), 1e-9));
}

#[test]
fn a_bird_salted_by_the_packer_gets_little_or_nothing_and_says_why() {
    let table = Table::read("solution_label_rules.csv");
    let basted = table.rows().find(|r| r.text("rule").starts_with("basted whole bird")).unwrap().number("value");
    let with = |percent| Bird { solution: Some(percent), ..turkey(14.0) };
    let light = dose(&with(basted), Strength::Bold).unwrap();
    assert_eq!((light.strength, light.held_back), (Strength::Light, Some(HeldBack::Light { percent: basted })));
    let none = dose(&with(8.0), Strength::Usual).unwrap();
    assert_eq!(none.held_back, Some(HeldBack::Nothing { percent: 8.0 }));
    assert!(none.shares.is_empty() && in_grams(none.total) == 0.0 && none.skin_mix(&flake()).is_none());
    assert!(basted < NO_SALT_FROM_PERCENT);
    assert_eq!(dose(&with(0.0), Strength::Usual).unwrap().held_back, None);
    for percent in [-1.0, 51.0, f64::NAN] {
        assert!(matches!(dose(&with(percent), Strength::Usual), Err(DoseError::Solution { .. })));
    }
}

#[test]
fn the_skins_mix_is_equal_spoons_and_its_baking_powder_counts() {
    let dose = dose(&turkey(12.7), Strength::Usual).unwrap();
    let mix = dose.skin_mix(&flake()).unwrap();
    assert!(close(in_milliliters(mix.spoon), US_TSP_ML, 1e-9));
    let phosphate = ingredient("baking powder, double-acting, straight phosphate", "tsp", "sodium_mg");
    let aluminum = ingredient("baking powder, double-acting, sodium aluminum sulfate", "tsp", "sodium_mg");
    assert!(close(mix.baking_powder_sodium_mg.low, phosphate, 0.05));
    assert!(close(mix.baking_powder_sodium_mg.high, aluminum, 0.05));
    assert!(close(in_grams(mix.pepper), 2.3, 1e-9) && close(in_grams(mix.baking_powder), 4.6, 1e-9));
}

#[test]
fn unsalted_meat_has_the_sodium_of_the_database() {
    let table = Table::read("sr28_composition.csv");
    let mg = |ndb: &str| table.rows().find(|r| r.text("ndb_no") == ndb).unwrap().number("sodium_mg_100g");
    for (kind, ndb) in [
        (Kind::Turkey, "05166"),
        (Kind::TurkeyBreast, "05192"),
        (Kind::Chicken, "05009"),
        (Kind::Capon, "05112"),
        (Kind::Duck, "05140"),
        (Kind::Goose, "05147"),
    ] {
        let got = sodium_per_serving(&bird(kind, 8.0, Form::Whole), None, Serving::Mass(grams(100.0))).unwrap().total;
        assert!((got.low_mg..=got.high_mg).contains(&mg(ndb)), "{kind:?}: {got:?}, printed {}", mg(ndb));
    }
}

#[test]
fn a_bird_with_solution_spans_the_databases_figure() {
    let table = Table::read("sr28_composition.csv");
    let printed = table.rows().find(|r| r.text("ndb_no") == "05707").unwrap().number("sodium_mg_100g");
    // the database does not say how much solution: labels run from 3 to 8 percent
    for percent in [3.0, 8.0] {
        let salted = Bird { solution: Some(percent), ..turkey(14.0) };
        let got = sodium_per_serving(&salted, None, Serving::Mass(grams(100.0))).unwrap().total;
        assert!((got.low_mg..=got.high_mg).contains(&printed), "{percent} %: {got:?}, printed {printed}");
    }
}

#[test]
fn the_salt_taken_to_stay_brackets_what_the_database_keeps_in_roasting() {
    let whole = Table::read("sr28_whole_turkey_derived.csv");
    let composition = Table::read("sr28_composition.csv");
    let mg = |ndb: &str| composition.rows().find(|r| r.text("ndb_no") == ndb).unwrap().number("sodium_mg_100g");
    let kept: Vec<f64> = whole
        .rows()
        .zip([("05165", "05166"), ("05706", "05707")])
        .map(|(row, (raw, roasted))| {
            row.number("roasted_edible_g") * mg(roasted) / (row.number("raw_edible_g") * mg(raw))
        })
        .collect();
    assert!(close(kept[0], 0.70, 0.005) && close(kept[1], 0.90, 0.005), "{kept:?}");
    let dose = dose(&turkey(12.7), Strength::Usual).unwrap();
    let bare = sodium_per_serving(&turkey(12.7), Some((&dose, &flake())), Serving::OneOf(1.0)).unwrap().added;
    let whole_dose = in_grams(dose.total) * SODIUM_OF_NACL * 1000.0;
    let [low, high] = [bare.low_mg / whole_dose, bare.high_mg / whole_dose];
    assert!(low < kept[0] && kept[1] < high, "{low} {high}");
}

#[test]
fn sodium_of_a_serving_adds_up_and_is_a_share_of_the_day() {
    let turkey = turkey(12.7);
    let dose = dose(&turkey, Strength::Usual).unwrap();
    let salt = flake();
    let got = sodium_per_serving(&turkey, Some((&dose, &salt)), Serving::OneOf(10.0)).unwrap();
    let parts = got.added.expected_mg + got.natural.expected_mg + got.solution.expected_mg;
    assert!(close(parts, got.total.expected_mg, 1e-9) && got.solution.high_mg == 0.0);
    assert!(got.total.low_mg < got.total.expected_mg && got.total.expected_mg < got.total.high_mg);
    assert!(close(got.total.expected_percent_of_day(), got.total.expected_mg / 23.0, 1e-9));
    let cooked = edible(turkey.kind, turkey.mass, false);
    let tenth = Serving::Mass((cooked.low + cooked.high) / 20.0);
    let by_mass = sodium_per_serving(&turkey, Some((&dose, &salt)), tenth).unwrap();
    assert!(close(by_mass.total.expected_mg, got.total.expected_mg, 1e-6));
    for serving in
        [Serving::OneOf(0.0), Serving::OneOf(f64::NAN), Serving::Mass(grams(-1.0)), Serving::Mass(pounds(12.0))]
    {
        let refused = sodium_per_serving(&turkey, None, serving);
        assert!(matches!(refused, Err(SodiumError::Serving { .. })), "{serving:?}");
    }
}

/// erfc by Simpson's rule on its integral: shares nothing with the constant in the code.
fn erfc(x: f64) -> f64 {
    let steps = 2000;
    let h = (8.0 - x) / f64::from(steps);
    let f = |i: i32| (-(x + h * f64::from(i)).powi(2)).exp();
    let inner: f64 = (1..steps).map(|i| f(i) * if i % 2 == 1 { 4.0 } else { 2.0 }).sum();
    (f(0) + inner + f(steps)) * h / 3.0 * 2.0 / std::f64::consts::PI.sqrt()
}

#[test]
fn salt_gets_as_deep_as_the_published_diffusivity_lets_it() {
    let table = Table::read("salt_diffusivity.csv");
    let pork = table.rows().find(|r| r.text("medium").starts_with("pork loin")).unwrap();
    let (d, spread) = (pork.number("d_m2_s_min"), pork.number("uncertainty_m2_s"));
    for hours in [12, 24, 48, 72] {
        let depth = depth_after(TimeDelta::hours(hours));
        let seconds = hours as f64 * 3600.0;
        for (mm, d) in [(depth.expected_mm, d), (depth.mm.low, d - spread), (depth.mm.high, d + spread)] {
            let left = erfc(mm / 1000.0 / (2.0 * (d * seconds).sqrt()));
            assert!(close(left, 0.1, 1e-6), "{hours} h, {mm} mm: {left}");
        }
    }
    assert!(close(depth_after(TimeDelta::hours(24)).expected_mm, 9.4, 0.05));
    assert_eq!(depth_after(TimeDelta::hours(-5)).expected_mm, 0.0);
}

fn grain() -> impl Strategy<Value = Grain> {
    (0..Grain::ALL.len()).prop_map(|i| Grain::ALL[i])
}

proptest! {
    #[test]
    fn salt_converted_there_and_back_is_the_same(a in grain(), b in grain(), ml in 0.01f64..2000.0) {
        let there = convert(Measured::Volume(milliliters(ml)), &a.into(), &b.into());
        let back = convert(Measured::Volume(there.to), &b.into(), &a.into());
        prop_assert!((in_milliliters(back.to) - ml).abs() < 1e-9 * ml);
        let by_mass = convert(Measured::Mass(there.mass), &a.into(), &b.into());
        prop_assert!((in_milliliters(by_mass.to) - in_milliliters(there.to)).abs() < 1e-9 * ml);
    }

    #[test]
    fn the_parts_of_a_dose_are_the_whole(
        kg in 0.3f64..25.0, kind in 0usize..6, form in 0usize..3, strength in 0usize..3, solution in proptest::option::of(0.0f64..50.0),
    ) {
        let mass = BirdMass::new(grams(kg * 1000.0)).unwrap();
        let bird = Bird { mass, solution, ..bird(Kind::ALL[kind], 10.0, Form::ALL[form]) };
        let dose = dose(&bird, Strength::ALL[strength]).unwrap();
        let sum: f64 = dose.shares.iter().map(|s| f64::from(s.count) * in_grams(s.each)).sum();
        prop_assert!((sum - in_grams(dose.total)).abs() < 1e-9);
        prop_assert!(in_grams(dose.total) <= Strength::Bold.grams_per_kg() * in_kilograms(mass.get()) + 1e-9);
    }

    #[test]
    fn sodium_is_ordered_for_every_bird(kg in 0.5f64..20.0, kind in 0usize..6, servings in 1.0f64..40.0, solution in proptest::option::of(0.0f64..50.0)) {
        let mass = BirdMass::new(grams(kg * 1000.0)).unwrap();
        let bird = Bird { mass, solution, ..bird(Kind::ALL[kind], 10.0, Form::Whole) };
        let dose = dose(&bird, Strength::Usual).unwrap();
        let salt = flake();
        let total = sodium_per_serving(&bird, Some((&dose, &salt)), Serving::OneOf(servings)).unwrap().total;
        prop_assert!(0.0 < total.low_mg && total.low_mg <= total.expected_mg && total.expected_mg <= total.high_mg);
    }
}
