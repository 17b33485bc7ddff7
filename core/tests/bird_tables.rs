//! Portions and yields against the published rows, and which birds make sense.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/tables.rs"]
mod tables;

use carvetime_core::bird::{
    Bird, BirdError, BirdMass, BirdNote, Condition, Diners, Form, Kind, Leftovers, edible, edible_share, feeds,
    mass_for, portion,
};
use carvetime_core::quantity::{in_kilograms, in_pounds, pounds};
use carvetime_core::range::Range;
use proptest::prelude::*;
use tables::rows;

fn whole(kind: Kind, lb: f64) -> Bird {
    let mass = BirdMass::new(pounds(lb)).unwrap();
    Bird { kind, mass, condition: Condition::Fresh, form: Form::Whole, stuffed: false, solution: None }
}

fn adults(adults: u16) -> Diners {
    Diners { adults, children: 0, leftovers: false }
}

fn range_lb(range: Range<carvetime_core::quantity::Mass>) -> (f64, f64) {
    let round = |value: f64| (value * 1e6).round() / 1e6;
    (round(in_pounds(range.low)), round(in_pounds(range.high)))
}

#[test]
fn portions_are_the_published_ones() {
    let printed = |form: &str| {
        let rows = rows("portions");
        let row = rows.iter().find(|row| row["form"] == form).unwrap_or_else(|| panic!("no row {form}")).clone();
        (row["lb_per_person"].parse::<f64>().unwrap(), row["kg_per_person"].parse::<f64>().unwrap())
    };
    for (kind, form, ample) in [
        (Kind::Turkey, "whole turkey", true),
        (Kind::Turkey, "whole turkey, 12 lb or less", true),
        (Kind::Turkey, "whole turkey, more than 12 lb", false),
        (Kind::TurkeyBreast, "bone-in turkey breast", true),
        (Kind::Chicken, "whole chicken or pieces, bone in", false),
    ] {
        let each = portion(kind).each;
        let got = if ample { each.high } else { each.low };
        let (lb, kg) = printed(form);
        assert!((in_pounds(got) - lb).abs() < 1e-9, "{form}");
        assert!((in_kilograms(got) - kg).abs() <= 0.5e-4, "{form}");
    }
}

#[test]
fn edible_shares_are_the_published_ones() {
    let percent = |item: &str| {
        let rows = rows("edible_yield");
        let row = rows.iter().find(|row| row["item"] == item).unwrap_or_else(|| panic!("no row {item}")).clone();
        row["yield_pct"].parse::<f64>().unwrap() / 100.0
    };
    let share = |kind| edible_share(kind, false).0;
    assert!((share(Kind::Turkey).low - percent("whole body turkey")).abs() < 1e-9);
    assert!((share(Kind::TurkeyBreast).low - percent("turkey breast")).abs() < 1e-9);
    assert!((share(Kind::Chicken).low - percent("chicken broiler, meat and skin, roasted")).abs() < 1e-9);
    assert!((share(Kind::Chicken).high - percent("chicken roaster, meat and skin, roasted")).abs() < 1e-9);
    assert!((share(Kind::Duck).low - percent("duck, meat and skin, roasted")).abs() < 1e-9);
    assert!((share(Kind::Goose).low - percent("goose, meat and skin, roasted")).abs() < 1e-9);
    for row in rows("sr28_whole_turkey_derived") {
        let number = |column: &str| row[column].parse::<f64>().unwrap();
        // Worked out again from the weights it was derived from.
        let share = number("roasted_edible_g") / (number("raw_edible_g") / (1.0 - number("raw_refuse_pct") / 100.0));
        let salted = row["bird"].contains("with added");
        let got = edible_share(Kind::Turkey, salted).0;
        let got = if salted { got.low } else { got.high };
        assert!((got - share).abs() <= 0.5e-4, "{row:?}: {got}, {share}");
    }
}

#[test]
fn eight_people_get_an_eight_pound_turkey_and_ten_to_twelve_with_leftovers() {
    let buy = mass_for(Kind::Turkey, &adults(8)).unwrap();
    assert_eq!((range_lb(buy.mass), buy.birds), ((8.0, 8.0), 1));
    let buy = mass_for(Kind::Turkey, &Diners { leftovers: true, ..adults(8) }).unwrap();
    assert_eq!(range_lb(buy.mass), (10.0, 12.0));
    // Above 12 lb the leaner portion may do.
    assert_eq!(range_lb(mass_for(Kind::Turkey, &adults(20)).unwrap().mass), (15.0, 20.0));
    // Two children eat for one.
    let family = Diners { adults: 6, children: 4, leftovers: false };
    assert_eq!(mass_for(Kind::Turkey, &family), mass_for(Kind::Turkey, &adults(8)));
}

#[test]
fn forty_people_get_two_turkeys() {
    let buy = mass_for(Kind::Turkey, &adults(40)).unwrap();
    assert_eq!(buy.birds, 2);
    assert_eq!(range_lb(buy.each), (15.0, 20.0));
}

#[test]
fn nobody_and_an_army_get_no_bird() {
    assert_eq!(mass_for(Kind::Turkey, &adults(0)), None);
    assert_eq!(mass_for(Kind::Chicken, &adults(u16::MAX)), None);
}

#[test]
fn fourteen_pounds_feed_fourteen_to_eighteen() {
    let mass = BirdMass::new(pounds(14.0)).unwrap();
    assert_eq!(feeds(Kind::Turkey, mass, Leftovers::None).people, Range::new(14, 18));
    assert_eq!(feeds(Kind::Turkey, mass, Leftovers::Some).people, Range::new(9, 14));
    let mass = BirdMass::new(pounds(10.0)).unwrap();
    assert_eq!(feeds(Kind::Turkey, mass, Leftovers::None).people, Range::exactly(10));
}

#[test]
fn birds_that_cannot_be_are_refused_with_what_is_wrong() {
    let turkey = whole(Kind::Turkey, 12.0);
    let refused = |bird: Bird| bird.check().unwrap_err();
    assert!(matches!(refused(whole(Kind::Chicken, 30.0)), BirdError::MassForKind { kind: Kind::Chicken, .. }));
    assert!(matches!(refused(Bird { form: Form::Pieces, stuffed: true, ..turkey }), BirdError::StuffedForm { .. }));
    assert!(matches!(refused(Bird { form: Form::Flat, stuffed: true, ..turkey }), BirdError::StuffedForm { .. }));
    assert!(matches!(refused(Bird { stuffed: true, ..whole(Kind::Duck, 5.0) }), BirdError::StuffedKind { .. }));
    assert!(matches!(
        refused(Bird { form: Form::Flat, ..whole(Kind::TurkeyBreast, 6.0) }),
        BirdError::FormForKind { .. }
    ));
    for given in [-1.0, 90.0, f64::NAN] {
        assert!(matches!(refused(Bird { solution: Some(given), ..turkey }), BirdError::Solution { .. }));
    }
    for lb in [60.0, 0.1, -5.0, f64::NAN] {
        let error = BirdMass::new(pounds(lb)).unwrap_err();
        assert!((in_kilograms(error.low) - 0.2).abs() < 1e-9 && (in_kilograms(error.high) - 25.0).abs() < 1e-9);
    }
}

#[test]
fn odd_birds_get_a_note() {
    assert_eq!(whole(Kind::Turkey, 12.0).check(), Ok(vec![]));
    let big = whole(Kind::Turkey, 28.0).check().unwrap();
    assert_eq!(big, [BirdNote::Big(Kind::Turkey.usual_mass()), BirdNote::BetterTwo]);
    assert_eq!(whole(Kind::Goose, 5.0).check(), Ok(vec![BirdNote::Small(Kind::Goose.usual_mass())]));
}

proptest! {
    #[test]
    fn more_guests_never_get_less(n in 1_u16..150, more in 0_u16..40, kind in 0..6_usize, leftovers in any::<bool>()) {
        let kind = Kind::ALL[kind];
        let diners = |adults| Diners { adults, children: 0, leftovers };
        let (Some(few), Some(many)) = (mass_for(kind, &diners(n)), mass_for(kind, &diners(n + more))) else {
            return Ok(());
        };
        prop_assert!(few.mass.low <= many.mass.low * 1.000_001 && few.birds <= many.birds);
        prop_assert!(few.mass.low <= few.mass.high && few.each.low <= few.each.high);
        let usual = kind.usual_mass();
        prop_assert!(few.each.low >= usual.low * 0.999 && few.each.high <= usual.high * 1.001);
    }

    #[test]
    fn what_is_bought_amply_feeds_everybody(n in 1_u16..20, kind in 0..6_usize) {
        let kind = Kind::ALL[kind];
        let buy = mass_for(kind, &adults(n)).unwrap();
        let each = BirdMass::new(buy.each.high).unwrap();
        // With several birds each is rounded down to whole people.
        let fed = feeds(kind, each, Leftovers::None).people.high * buy.birds;
        prop_assert!(fed + buy.birds > n, "{:?} feeds {}", buy, fed);
    }

    #[test]
    fn there_is_never_more_on_the_plate_than_in_the_bag(kg in 0.2..25.0_f64, kind in 0..6_usize, solution in any::<bool>()) {
        let mass = BirdMass::new(carvetime_core::quantity::kilograms(kg)).unwrap();
        let got = edible(Kind::ALL[kind], mass, solution);
        prop_assert!(got.low <= got.high && got.high < mass.get() * 0.7);
    }
}
