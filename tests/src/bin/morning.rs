//! A holiday morning at full scale, and a picture of how late calls come.
//!
//! ```text
//! cargo run --release -p carvetime-tests --bin morning -- [--rooms 50000] [--minutes 10] [--png FILE]
//! ```
//!
//! Exit status 1 if a call is missing, goes ahead without its hour, or comes later than promised: 5 s where food safety hangs on it,
//! a minute else. What is simulated: `carvetime_tests::morning`.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::morning::{A_SECOND, Lateness, quantile, run};
use chrono::TimeDelta;
use plotters::prelude::*;
use plotters::style::{FontStyle, register_font};
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::time::Instant;

fn main() -> ExitCode {
    let (mut rooms, mut minutes, mut png) = (50_000, 10, None);
    let mut args = std::env::args().skip(1);
    while let Some(flag) = args.next() {
        let value = args.next().unwrap_or_else(|| panic!("{flag} what?"));
        match flag.as_str() {
            "--rooms" => rooms = value.parse().expect("a number"),
            "--minutes" => minutes = value.parse().expect("a number"),
            "--png" => png = Some(PathBuf::from(value)),
            _ => panic!("no flag {flag}"),
        }
    }
    let began = Instant::now();
    let mut late = run(rooms, TimeDelta::minutes(minutes));
    println!(
        "{rooms} kitchens, calls due within {minutes} min, {A_SECOND} messages a second; took {:.0?}",
        began.elapsed()
    );
    println!(
        "{:<22} {:>7} {:>10} {:>10} {:>10} {:>10}",
        "seconds after its time", "count", "earliest", "median", "99 %", "latest"
    );
    let mut latest = Vec::new();
    for (name, values) in classes(&mut late) {
        let (count, mut at) = (values.len(), |share| quantile(values, share));
        println!("{name:<22} {count:>7} {:>10.1} {:>10.1} {:>10.1} {:>10.1}", at(0.0), at(0.5), at(0.99), at(1.0));
        latest.push(at(1.0));
    }
    println!(
        "never called {}; ahead without the hour {}; longest round of ringing {:.0?}",
        late.missing, late.silent, late.longest_ring
    );
    if let Some(png) = png {
        draw(&mut late, &png);
    }
    let good = late.missing == 0 && late.silent == 0 && latest[0] <= 5.0 && latest[2] <= 60.0;
    ExitCode::from(u8::from(!good))
}

fn classes(late: &mut Lateness) -> [(&'static str, &mut Vec<f64>); 3] {
    [("food safety", &mut late.safety), ("answers", &mut late.answers), ("other jobs", &mut late.due)]
}

/// The share of each class that has come, by minutes after its time.
fn draw(late: &mut Lateness, png: &Path) {
    let font = include_bytes!("../../../bot/fonts/DejaVuSans.ttf");
    assert!(register_font("sans-serif", FontStyle::Normal, font).is_ok(), "the bundled font");
    let mut pixels = vec![0; 1000 * 640 * 3];
    plot(late, &mut pixels);
    let file = std::fs::File::create(png).expect("the file can be made");
    let mut encoder = png::Encoder::new(file, 1000, 640);
    encoder.set_color(png::ColorType::Rgb);
    encoder.write_header().and_then(|mut page| page.write_image_data(&pixels)).expect("the file can be written");
}

fn plot(late: &mut Lateness, pixels: &mut [u8]) {
    let page = BitMapBackend::with_buffer(pixels, (1000, 640)).into_drawing_area();
    page.fill(&WHITE).unwrap();
    let mut chart = ChartBuilder::on(&page)
        .caption("Calls of a holiday morning: the share that has come", ("sans-serif", 24))
        .margin(20)
        .x_label_area_size(50)
        .y_label_area_size(70)
        .build_cartesian_2d(-41.0..2.0_f64, 0.0..100.0_f64)
        .unwrap();
    let mut mesh = chart.configure_mesh();
    mesh.x_desc("minutes after its time").y_desc("percent").label_style(("sans-serif", 16)).draw().unwrap();
    let colors = [RED, RGBColor(30, 130, 60), BLUE];
    for ((name, values), color) in classes(late).into_iter().zip(colors) {
        let points: Vec<(f64, f64)> =
            (0..=200).map(|n| (quantile(values, f64::from(n) / 200.0) / 60.0, f64::from(n) / 2.0)).collect();
        let line = chart.draw_series(LineSeries::new(points, color.stroke_width(3))).unwrap();
        line.label(name).legend(move |(x, y)| PathElement::new(vec![(x, y), (x + 20, y)], color.stroke_width(3)));
    }
    let mut legend = chart.configure_series_labels();
    legend.position(SeriesLabelPosition::UpperLeft).label_font(("sans-serif", 18)).border_style(BLACK).draw().unwrap();
    page.present().unwrap();
}
