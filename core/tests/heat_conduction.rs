//! The full conduction model against analytic series, one-term roots, textbook examples and published properties.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod table;

use carvetime_core::heat::body::{Body, Shape, Stuff};
use carvetime_core::heat::composition::{Composition, Layers, component};
use carvetime_core::heat::surface::{Skin, wet_bulb};
use table::Table;

const UNIT: Stuff = Stuff::Constant { conductivity: 1.0, capacity: 1.0 };

/// Dimensionless temperature at the centre, r/3, r/2 and the surface of a unit body.
fn theta(shape: Shape, biot: f64, fourier: f64, cells: usize, steps: usize) -> [f64; 4] {
    let mut body = Body::new(shape, 1.0, UNIT, cells, 1.0);
    // Short first steps resolve the sudden start, later ones the slow end: each is a fixed share of the time gone by.
    let mut time = 0.0;
    for i in 1..=steps {
        let next = fourier * (i as f64 / steps as f64).powi(2);
        body.step(next - time, &Skin::dry(biot), 0.0, 0.0);
        time = next;
    }
    [0.0, 1.0 / 3.0, 0.5, 1.0].map(|share| body.at(share))
}

#[test]
fn every_shape_follows_its_analytic_series_from_biot_a_tenth_to_a_hundred() {
    let table = Table::read("transient_series_solutions.csv");
    let (mut worst, mut rows) = (0.0_f64, 0);
    for row in table.rows() {
        let shape = Shape::from_name(row.text("geometry")).unwrap();
        let (biot, fourier) = (row.number("biot"), row.number("fourier"));
        let got = theta(shape, biot, fourier, 360, 240);
        for (got, column) in got.iter().zip(["theta_center", "theta_r_third", "theta_r_half", "theta_surface"]) {
            let off = (got - row.number(column)).abs();
            assert!(off < 1e-4, "{} Bi {biot} Fo {fourier} {column}: {got}, off by {off:.1e}", shape.name());
            worst = worst.max(off);
            rows += 1;
        }
    }
    assert!(rows > 200, "only {rows} values compared");
    assert!(worst > 1e-9, "suspiciously exact: {worst}");
}

#[test]
fn halving_the_grid_and_the_step_quarters_the_error() {
    let table = Table::read("transient_series_solutions.csv");
    for name in ["slab", "cylinder", "sphere"] {
        let row = table
            .rows()
            .find(|r| r.text("geometry") == name && r.number("biot") == 1.0 && r.number("fourier") == 0.2)
            .unwrap();
        let shape = Shape::from_name(name).unwrap();
        let error = |n: usize| (theta(shape, 1.0, 0.2, n, n)[0] - row.number("theta_center")).abs();
        let (coarse, fine) = (error(12), error(24));
        let order = (coarse / fine).log2();
        assert!((1.8..2.3).contains(&order), "{name}: order {order:.2} from {coarse:.1e} and {fine:.1e}");
    }
}

#[test]
fn the_late_decay_is_the_first_root_of_the_one_term_tables() {
    for row in Table::read("one_term_coefficients.csv").rows() {
        let shape = Shape::from_name(row.text("geometry")).unwrap();
        let (biot, zeta) = (row.number("biot"), row.number("zeta1_rad"));
        if biot < 0.1 {
            continue;
        }
        let mut body = Body::new(shape, 1.0, UNIT, 240, 1.0);
        let mut advance = |fourier: f64, steps: usize| {
            for _ in 0..steps {
                body.step(fourier / steps as f64, &Skin::dry(biot), 0.0, 0.0);
            }
            body.at(0.0)
        };
        // From 1.2 on, the second term of the series is below 1e-6 of the first in every shape.
        let early = advance(1.2, 600);
        let late = advance(0.2, 300);
        let got = ((early / late).ln() / 0.2).sqrt();
        let coefficient = early * (got * got * 1.2).exp();
        assert!((got - zeta).abs() < 2e-4 * zeta, "{} Bi {biot}: root {got}, table {zeta}", shape.name());
        assert!((coefficient - row.number("c1")).abs() < 5e-4, "{} Bi {biot}: C1 {coefficient}", shape.name());
    }
}

#[test]
fn solid_spheres_of_a_birds_mass_reach_their_centre_when_the_series_says() {
    for row in Table::read("sphere_heating_generated.csv").rows() {
        let capacity = row.number("density_kg_m3") * row.number("specific_heat_j_kg_k");
        let stuff = Stuff::Constant { conductivity: row.number("conductivity_w_m_k"), capacity };
        let mut body = Body::new(Shape::Sphere, row.number("radius_m"), stuff, 120, row.number("start_c"));
        let skin = Skin::dry(row.number("h_w_m2_k"));
        let (air, target, step) = (row.number("air_c"), row.number("target_center_c"), 30.0);
        let mut time = 0.0;
        let crossed = loop {
            let before = body.at(0.0);
            body.step(step, &skin, air, air);
            time += step;
            if body.at(0.0) >= target {
                break time - step * (body.at(0.0) - target) / (body.at(0.0) - before);
            }
        };
        let printed = row.number("time_s");
        assert!(
            (crossed / printed - 1.0).abs() < 5e-4,
            "{} kg: {crossed} s, series {printed} s",
            row.number("mass_kg")
        );
    }
}

#[test]
fn an_egg_boils_in_the_textbooks_time() {
    // Cengel, Heat and Mass Transfer, Example 4-3: about 865 s with coefficients read to four digits; 862.6 s exactly.
    let stuff = Stuff::Constant { conductivity: 0.627, capacity: 0.627 / 0.151e-6 };
    let mut egg = Body::new(Shape::Sphere, 0.025, stuff, 120, 5.0);
    let mut seconds = 0.0_f64;
    while egg.at(0.0) < 70.0 {
        egg.step(0.5, &Skin::dry(1200.0), 95.0, 95.0);
        seconds += 0.5;
    }
    // The one-term answer leaves out the later terms, worth about a second here.
    assert!((seconds - 862.6).abs() < 3.0, "{seconds} s");
}

#[test]
fn steaks_cool_in_the_textbooks_time() {
    // Cengel, problem 11-44: surface from 25 to 2 °C in 5590 s as printed, 5586.4 s recomputed; no surface may freeze.
    let stuff = Stuff::Constant { conductivity: 0.45, capacity: 0.45 / 0.91e-7 };
    let mut steak = Body::new(Shape::Slab, 0.01, stuff, 60, 25.0);
    let mut seconds = 0.0_f64;
    while steak.at(1.0) > 2.0 {
        steak.step(1.0, &Skin::dry(9.0), -11.0, -11.0);
        seconds += 1.0;
    }
    assert!((seconds - 5586.4).abs() < 5.0, "{seconds} s");
}

#[test]
fn components_match_the_published_polynomials_and_values() {
    for row in Table::read("choi_okos_values.csv").rows() {
        let Some(got) = component(row.text("component"), row.number("temp_c")) else { continue };
        for (got, column, half_digit) in [
            (got[0], "density_kg_m3", 5e-5),
            (got[1], "specific_heat_kj_kg_k", 5e-7),
            (got[2], "conductivity_w_m_k", 5e-7),
        ] {
            let printed = row.number(column);
            assert!(
                (got - printed).abs() <= half_digit * 1.01,
                "{} {column}: {got}, printed {printed}",
                row.text("component")
            );
        }
    }
}

#[test]
fn turkey_and_chicken_match_the_mixing_rules_to_the_last_printed_digit() {
    for row in Table::read("meat_properties_generated.csv").rows() {
        let meat = match row.text("meat") {
            name if name.contains("05165") => Composition::TURKEY,
            name if name.contains("05185") => Composition::TURKEY_LIGHT,
            name if name.contains("05187") => Composition::TURKEY_DARK,
            name if name.contains("05006") => Composition::CHICKEN,
            name => panic!("unknown meat {name}"),
        };
        let t = row.number("temp_c");
        for (got, column, half_digit) in [
            (meat.density(t), "density_kg_m3", 5e-4),
            (meat.specific_heat(t) / 1000.0, "specific_heat_kj_kg_k", 5e-6),
            (meat.conductivity(t, Layers::Parallel), "conductivity_parallel_w_m_k", 5e-6),
            (meat.conductivity(t, Layers::Series), "conductivity_series_w_m_k", 5e-6),
            (meat.diffusivity(t, Layers::Parallel), "diffusivity_parallel_m2_s", 5e-13),
            (meat.diffusivity(t, Layers::Series), "diffusivity_series_m2_s", 5e-13),
        ] {
            let printed = row.number(column);
            assert!(
                (got - printed).abs() <= half_digit * 1.05,
                "{} at {t}: {column} {got}, {printed}",
                row.text("meat")
            );
        }
    }
}

#[test]
fn measured_conductivity_of_turkey_lies_between_the_two_layerings() {
    // Chang, Carpenter and Toledo 1998: 0.464 W/(m K), 0 to 80 °C.
    let meat = Composition::TURKEY;
    assert!(meat.conductivity(40.0, Layers::Series) < 0.464 && 0.464 < meat.conductivity(40.0, Layers::Parallel));
}

#[test]
fn heat_taken_in_is_heat_kept_even_while_ice_melts() {
    let skin = Skin { convection: 20.0, emissivity: 0.0, wetness: 0.0, vapor: 0.0 };
    let mut body = Body::new(Shape::Sphere, 0.06, Stuff::Meat(Composition::TURKEY), 40, -5.0);
    let (start, mut taken) = (body.mean_enthalpy(), 0.0);
    for _ in 0..2400 {
        let before = skin.flux(body.at(1.0), 60.0).0;
        body.step(3.0, &skin, 60.0, 60.0);
        taken += 3.0 * 0.5 * (before + skin.flux(body.at(1.0), 60.0).0) * body.surface_per_volume();
    }
    let kept = body.mean_enthalpy() - start;
    assert!((taken / kept - 1.0).abs() < 2e-3, "taken {taken:.4e}, kept {kept:.4e} J/m³");
}

#[test]
fn an_icy_core_waits_at_the_freezing_point_and_costs_time() {
    let cook = |start: f64| {
        let mut body = Body::new(Shape::Sphere, 0.06, Stuff::Meat(Composition::TURKEY), 40, start);
        let mut minutes = 0;
        while body.at(0.0) < 60.0 {
            body.step(60.0, &Skin::dry(20.0), 163.0, 163.0);
            minutes += 1;
        }
        minutes
    };
    let (thawed, icy) = (cook(2.0), cook(-3.0));
    assert!(icy > thawed + 20, "thawed {thawed} min, icy {icy} min");
}

#[test]
fn a_wet_skin_stalls_in_a_low_smoker_and_hardly_at_all_in_a_hot_oven() {
    let slowdown = |air: f64| {
        let minutes = |wetness: f64| {
            let skin = Skin { convection: 15.0, emissivity: 0.9, wetness, vapor: 2000.0 };
            let mut body = Body::new(Shape::Sphere, 0.06, Stuff::Meat(Composition::TURKEY), 30, 4.0);
            let mut minutes = 0;
            while body.at(0.0) < 70.0 && minutes < 3000 {
                body.step(60.0, &skin, air, air);
                minutes += 1;
            }
            f64::from(minutes)
        };
        minutes(0.1) / minutes(0.0)
    };
    let (low, hot) = (slowdown(107.0), slowdown(190.0));
    assert!(low > 1.3 && low > hot + 0.15, "107 °C: {low:.2} times as long, 190 °C: {hot:.2}");
}

#[test]
fn a_wet_bulb_in_dry_air_stands_far_below_the_pit() {
    // Dry air at 30 °C and half saturated: 22 °C (psychrometric chart, from memory).
    let half = 0.5 * carvetime_core::heat::surface::saturation(30.0).0;
    assert!((wet_bulb(30.0, half) - 22.0).abs() < 0.3);
    assert!((35.0..50.0).contains(&wet_bulb(120.0, 2000.0)));
}
