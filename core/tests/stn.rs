//! The temporal network against the worked example of Dechter, Meiri and Pearl (1991), and as laws on random networks.
//!
//! `stn_dechter1991*`: the example is from memory, its minimal network generated and equal to the remembered one.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_core::plan::stn::{Constraint, Cycle, ORIGIN, Stn, Window};
use proptest::prelude::*;

const CONSTRAINTS: &str = include_str!("../../tests/tables/stn_dechter1991_constraints.csv");
const MINIMAL: &str = include_str!("../../tests/tables/stn_dechter1991_minimal.csv");

fn point(name: &str) -> usize {
    name.trim_start_matches('X').parse().unwrap()
}

fn rows(table: &str) -> Vec<(usize, usize, i64, i64)> {
    table
        .lines()
        .skip(1)
        .map(|line| {
            let cells: Vec<&str> = line.split(',').collect();
            (point(cells[0]), point(cells[1]), cells[2].parse().unwrap(), cells[3].parse().unwrap())
        })
        .collect()
}

/// The car and the car pool; reasons are the numbers of the rows.
fn example() -> Stn<usize> {
    let mut stn = Stn::new(5);
    for (number, (from, to, least, most)) in rows(CONSTRAINTS).into_iter().enumerate() {
        stn.between(from, to, least, most, number);
    }
    stn
}

#[test]
fn the_classic_example_gives_the_printed_windows() {
    let windows = example().solve().unwrap();
    for (from, to, least, most) in rows(MINIMAL).into_iter().filter(|row| row.0 == ORIGIN) {
        assert_eq!(windows[to], Window { earliest: Some(least), latest: Some(most) }, "X{from} to X{to}");
    }
}

#[test]
fn the_classic_example_gives_the_printed_minimal_network() {
    let minimal = example().minimal().unwrap();
    let rows = rows(MINIMAL);
    assert_eq!(rows.len(), 10);
    for (from, to, least, most) in rows {
        assert_eq!(minimal.most(from, to), Some(most), "X{from} to X{to}");
        assert_eq!(minimal.most(to, from), Some(-least), "X{to} to X{from}");
    }
}

#[test]
fn the_inconsistent_variant_names_a_cycle_that_really_overruns() {
    // X4 between 20 and 30 minutes after 7:00 instead of 60 to 70.
    let mut stn = example();
    stn.relax(|constraint| !(constraint.from == 0 && constraint.to == 4));
    stn.between(0, 4, 20, 30, 99);
    let Cycle { reasons, short_by } = stn.solve().unwrap_err();
    // The first gets in at 40 at the soonest, the second left at 20 at the soonest and needs 40: 60, thirty too late.
    assert_eq!(short_by, 30);
    assert!(reasons.contains(&99), "{reasons:?}");
    assert_eq!(stn.minimal().unwrap_err().short_by, 30);
}

#[test]
fn relaxing_a_constraint_of_the_cycle_makes_it_fit_again() {
    let mut stn = example();
    stn.between(0, 4, 20, 30, 99);
    let cycle = stn.solve().unwrap_err();
    assert!(cycle.reasons.contains(&99));
    stn.relax(|constraint| constraint.why != 99);
    assert!(stn.solve().is_ok());
}

#[test]
fn points_without_constraints_are_unbounded() {
    let mut stn = Stn::new(3);
    stn.at_least(0, 1, 5, "after");
    let windows = stn.solve().unwrap();
    assert_eq!(windows[1], Window { earliest: Some(5), latest: None });
    assert_eq!(windows[2], Window { earliest: None, latest: None });
}

const POINTS: usize = 6;

fn network() -> impl Strategy<Value = Vec<(usize, usize, i64, i64)>> {
    prop::collection::vec((0..POINTS, 0..POINTS, -40_i64..40, 0_i64..40), 0..14).prop_map(|rows| {
        rows.into_iter().filter(|r| r.0 != r.1).map(|(f, t, low, wide)| (f, t, low, low + wide)).collect()
    })
}

fn build(rows: &[(usize, usize, i64, i64)]) -> Stn<usize> {
    let mut stn = Stn::new(POINTS);
    for (number, &(from, to, least, most)) in rows.iter().enumerate() {
        stn.add(Constraint { from, to, least: Some(least), most: Some(most), why: number });
    }
    stn
}

/// All-pairs bounds, the plain triple loop. `None` on the diagonal's account: inconsistent.
fn floyd_warshall(rows: &[(usize, usize, i64, i64)]) -> Option<Vec<Vec<Option<i64>>>> {
    let mut d = vec![vec![None; POINTS]; POINTS];
    let tighten = |cell: &mut Option<i64>, bound: i64| *cell = Some(cell.map_or(bound, |old: i64| old.min(bound)));
    for (i, row) in d.iter_mut().enumerate() {
        row[i] = Some(0);
    }
    for &(from, to, least, most) in rows {
        tighten(&mut d[from][to], most);
        tighten(&mut d[to][from], -least);
    }
    for k in 0..POINTS {
        for i in 0..POINTS {
            for j in 0..POINTS {
                if let (Some(a), Some(b)) = (d[i][k], d[k][j]) {
                    tighten(&mut d[i][j], a + b);
                }
            }
        }
    }
    (0..POINTS).all(|i| d[i][i] == Some(0)).then_some(d)
}

fn satisfies(times: &[i64], rows: &[(usize, usize, i64, i64)]) -> bool {
    rows.iter().all(|&(from, to, least, most)| (least..=most).contains(&(times[to] - times[from])))
}

proptest! {
    #[test]
    fn windows_and_minimal_network_agree_with_the_triple_loop(rows in network()) {
        let stn = build(&rows);
        match (stn.solve(), floyd_warshall(&rows)) {
            (Ok(windows), Some(d)) => {
                let minimal = stn.minimal().unwrap();
                for i in 0..POINTS {
                    prop_assert_eq!(windows[i].latest, d[ORIGIN][i]);
                    prop_assert_eq!(windows[i].earliest, d[i][ORIGIN].map(|bound| -bound));
                    prop_assert_eq!(minimal.window(i), windows[i]);
                    for (j, bound) in d[i].iter().enumerate() {
                        prop_assert_eq!(minimal.most(i, j), *bound);
                    }
                }
            }
            (Err(_), None) => {}
            (solved, d) => prop_assert!(false, "{:?} against {:?}", solved, d),
        }
    }

    #[test]
    fn a_window_never_ends_before_it_starts(rows in network()) {
        if let Ok(windows) = build(&rows).solve() {
            for window in windows {
                if let (Some(earliest), Some(latest)) = (window.earliest, window.latest) {
                    prop_assert!(earliest <= latest);
                }
            }
        }
    }

    #[test]
    fn fixing_points_one_by_one_always_ends_in_a_solution(
        rows in network(),
        wishes in prop::collection::vec(-100_i64..100, POINTS),
        order in Just((1..POINTS).collect::<Vec<_>>()).prop_shuffle(),
    ) {
        if let Ok(mut minimal) = build(&rows).minimal() {
            let mut times = vec![0; POINTS];
            for point in order {
                times[point] = minimal.fix(point, wishes[point]);
            }
            prop_assert!(satisfies(&times, &rows), "{:?}", times);
        }
    }

    #[test]
    fn a_cycle_is_a_proof(rows in network()) {
        if let Err(cycle) = build(&rows).solve() {
            prop_assert!(cycle.short_by > 0);
            // The constraints named are impossible by themselves.
            let named: Vec<_> = cycle.reasons.iter().map(|&number| rows[number]).collect();
            prop_assert!(floyd_warshall(&named).is_none());
        }
    }
}
