//! Draws the picture of a cook: a PNG that can be read on a phone, on a light ground of its own so that dark chats show it too.
//!
//! Owns ink, fonts and axes. What is shown comes as a [`Chart`], words and numbers from [`Voice`]. The text beside the picture
//! says the same for those who can't see it. Start at [`draw`].

use crate::room::chart::{Chart, Curve};
use crate::words::{Arg, Reader, Text, UnitSystem, Voice};
use carvetime_core::plan::{Finish, Moment};
use carvetime_core::quantity::{Temperature, in_celsius, in_fahrenheit};
use chrono::{TimeDelta, Timelike};
use plotters::coord::Shift;
use plotters::coord::types::RangedCoordf64;
use plotters::prelude::*;
use plotters::style::text_anchor::{HPos, Pos, VPos};
use std::error::Error;
use std::sync::Once;

/// Pixels.
const SIZE: (u32, u32) = (1200, 900);
/// DejaVu Sans; its licence lies beside it.
pub(crate) const FONT: &[u8] = include_bytes!("../fonts/DejaVuSans.ttf");
/// The same, bold.
const BOLD: &[u8] = include_bytes!("../fonts/DejaVuSans-Bold.ttf");
/// What the fonts are registered as.
pub(crate) const FAMILY: &str = "carvetime";

/// Height of the letters.
const LETTERS: i32 = 32;

const GROUND: RGBColor = RGBColor(250, 249, 246);
const INK: RGBColor = RGBColor(45, 45, 48);
const FAINT: RGBColor = RGBColor(214, 211, 204);
// Told apart without red and green too (after Okabe and Ito's palette, from memory), and by their labels.
const PIT: RGBColor = RGBColor(120, 120, 125);
const BREAST: RGBColor = RGBColor(0, 114, 178);
const THIGH: RGBColor = RGBColor(196, 84, 0);

type Page<'a> = DrawingArea<BitMapBackend<'a>, Shift>;
type Field<'a, 'b> = ChartContext<'a, BitMapBackend<'b>, Cartesian2d<RangedCoordf64, RangedCoordf64>>;
/// What one thermometer read.
type Read = [(Moment, Temperature)];
type Drawn<T = ()> = Result<T, Box<dyn Error + Send + Sync>>;

/// The picture as a PNG. `None`, with a line in the log, if it could not be drawn: the text stands for itself.
pub fn draw(chart: &Chart, voice: &Voice, reader: &Reader) -> Option<Vec<u8>> {
    let pen = Pen { chart, voice, reader };
    match pen.draw() {
        Ok(png) => Some(png),
        Err(error) => {
            tracing::error!(%error, "a picture could not be drawn");
            None
        }
    }
}

/// Makes the fonts known, once.
pub(crate) fn register() {
    static REGISTERED: Once = Once::new();
    REGISTERED.call_once(|| {
        // A font that can't be read shows as an error of the first text drawn.
        let _ = plotters::style::register_font(FAMILY, FontStyle::Normal, FONT);
        let _ = plotters::style::register_font(FAMILY, FontStyle::Bold, BOLD);
    });
}

struct Pen<'a> {
    chart: &'a Chart,
    voice: &'a Voice,
    reader: &'a Reader,
}

impl Pen<'_> {
    fn draw(&self) -> Drawn<Vec<u8>> {
        register();
        let (width, height) = SIZE;
        let mut pixels = vec![0_u8; (width * height * 3) as usize];
        {
            let page = BitMapBackend::with_buffer(&mut pixels, SIZE).into_drawing_area();
            page.fill(&GROUND)?;
            self.plot(&page)?;
            page.present()?;
        }
        encode(&pixels)
    }

    fn plot(&self, page: &Page<'_>) -> Drawn {
        let (low, high) = self.span_of_temperatures();
        let right = self.minute(self.chart.to).max(30.0);
        let mut field: Field<'_, '_> = ChartBuilder::on(page)
            .margin(24)
            .margin_right(40)
            .margin_top(36)
            .x_label_area_size(64)
            .y_label_area_size(110)
            .build_cartesian_2d(0.0..right, low..high)?;
        self.grid(&mut field, low, high)?;
        self.forecast(&mut field, low, high)?;
        let air = self.points(&self.chart.pit);
        self.curve(&mut field, &air, PIT, 3)?;
        for spot in &self.chart.spots {
            let points = self.points(&spot.read);
            self.curve(&mut field, &points, color(spot), 5)?;
        }
        self.labels(&mut field)
    }

    /// Hours below, degrees on the left.
    fn grid(&self, field: &mut Field<'_, '_>, low: f64, high: f64) -> Drawn {
        let step = if self.metric() { 20.0 } else { 50.0 };
        let mut at = (low / step).ceil() * step;
        while at <= high {
            let line = [(0.0, at), (self.minute(self.chart.to).max(30.0), at)];
            field.draw_series(LineSeries::new(line, FAINT.stroke_width(1)))?;
            self.write(field, (0.0, at), (-14, 0), &self.degrees(at), INK, HPos::Right, VPos::Center)?;
            at += step;
        }
        for hour in self.hours() {
            let x = self.minute(hour);
            field.draw_series(LineSeries::new([(x, low), (x, high)], FAINT.stroke_width(1)))?;
            self.write(field, (x, low), (0, 14), &self.clock(hour), INK, HPos::Center, VPos::Top)?;
        }
        Ok(())
    }

    /// Where the spots go from here: a fan to the target, nine times in ten inside; the band of the end; dinner; the present.
    fn forecast(&self, field: &mut Field<'_, '_>, low: f64, high: f64) -> Drawn {
        let now = self.minute(self.chart.now);
        let target = self.degree(self.chart.target);
        let Finish { p10, p90, .. } = self.chart.finish;
        let band = [(self.minute(p10), low), (self.minute(p90), high)];
        field.draw_series([Rectangle::new(band, INK.mix(0.07).filled())])?;
        for spot in &self.chart.spots {
            let Some(ahead) = spot.ahead else { continue };
            let from = (now, self.degree(spot.at_now));
            let fan = vec![from, (self.minute(ahead.p10), target), (self.minute(ahead.p90), target)];
            field.draw_series([Polygon::new(fan, color(spot).mix(0.22).filled())])?;
            let middle = [from, (self.minute(ahead.p50), target)];
            field.draw_series(DashedLineSeries::new(middle, 12, 8, color(spot).stroke_width(3)))?;
        }
        let right = self.minute(self.chart.to).max(30.0);
        field.draw_series(DashedLineSeries::new([(0.0, target), (right, target)], 4, 8, INK.stroke_width(2)))?;
        for at in [self.chart.now, self.chart.dinner] {
            let x = self.minute(at);
            if (0.0..=right).contains(&x) {
                field.draw_series(LineSeries::new([(x, low), (x, high)], INK.stroke_width(2)))?;
            }
        }
        Ok(())
    }

    fn curve(&self, field: &mut Field<'_, '_>, points: &[(f64, f64)], color: RGBColor, width: u32) -> Drawn {
        field.draw_series(LineSeries::new(points.iter().copied(), color.stroke_width(width)))?;
        // Dots where someone looked; a dense log needs none.
        if points.len() <= 40 {
            field.draw_series(points.iter().map(|point| Circle::new(*point, 7, color.filled())))?;
        }
        Ok(())
    }

    /// Each curve is named where it stands; the marks at their ends.
    fn labels(&self, field: &mut Field<'_, '_>) -> Drawn {
        let target = self.degree(self.chart.target);
        let word = |name: &'static str| {
            self.voice.label(&Text::new("cook-chart").with("what", Arg::Choice(name)), self.reader)
        };
        let (low, high) = self.span_of_temperatures();
        let mut taken = Vec::new();
        let mut put = |at, off, text: &str, color, across, down| {
            self.label(field, &mut taken, at, off, text, color, across, down)
        };
        put((0.0, target), (12, -8), &self.degrees(target), INK, HPos::Left, VPos::Bottom)?;
        let mut curves: Vec<(&'static str, &Read, RGBColor)> =
            self.chart.spots.iter().map(|spot| (spot.name, spot.read.as_slice(), color(spot))).collect();
        curves.push((self.chart.air, &self.chart.pit, PIT));
        for (name, read, color) in curves {
            let Some((at, value)) = read.last() else { continue };
            let (x, y) = (self.minute(*at), self.degree(*value));
            let label = format!("{} {}", word(name), self.degrees(self.degree(*value)));
            // At the left edge there is no room before the point.
            let early = x < 0.3 * self.minute(self.chart.to);
            let (off, hang) = if early { ((14, -10), HPos::Left) } else { ((-14, -10), HPos::Right) };
            put((x, y), off, &label, color, hang, VPos::Bottom)?;
        }
        let right = self.minute(self.chart.to).max(30.0);
        let dinner = self.minute(self.chart.dinner);
        if (0.0..=right).contains(&dinner) {
            let label = format!("{} {}", word("dinner"), self.clock(self.chart.dinner));
            put((dinner, high), (-10, 12), &label, INK, HPos::Right, VPos::Top)?;
        }
        let Finish { p10, p50, p90 } = self.chart.finish;
        if self.chart.spots.iter().any(|spot| spot.ahead.is_some()) {
            let label = format!("{} {}", word("done"), self.clock(p50));
            let (left, right) = (self.minute(p10), self.minute(p90));
            if left < self.minute(self.chart.to) * 0.6 {
                put((left, low), (6, -14), &label, INK, HPos::Left, VPos::Bottom)?;
            } else {
                put((right.min(dinner), low), (-6, -14), &label, INK, HPos::Right, VPos::Bottom)?;
            }
        }
        Ok(())
    }

    /// A text inside the plot, moved to where the picture has room and no other text stands.
    #[allow(clippy::too_many_arguments)] // a text, where, how it hangs there, and what is there already
    fn label(
        &self,
        field: &mut Field<'_, '_>,
        taken: &mut Vec<Place>,
        at: (f64, f64),
        off: (i32, i32),
        text: &str,
        color: RGBColor,
        across: HPos,
        down: VPos,
    ) -> Drawn {
        let style = (FAMILY, LETTERS).into_font().color(&color);
        let page = field.plotting_area().strip_coord_spec();
        let (wide, tall) = page.estimate_text_size(text, &style)?;
        let size = (i32::try_from(wide)?, i32::try_from(tall)?);
        let ((x, y), (left, top)) = (field.backend_coord(&at), page.get_base_pixel());
        let x = x - left + off.0 - if matches!(across, HPos::Right) { size.0 } else { 0 };
        let y = y - top + off.1 - if matches!(down, VPos::Bottom) { size.1 } else { 0 };
        let room = page.dim_in_pixel();
        let place = free_place((x, y), size, (i32::try_from(room.0)?, i32::try_from(room.1)?), taken);
        page.draw_text(text, &style.pos(Pos::new(HPos::Left, VPos::Top)), (place.left, place.top))?;
        taken.push(place);
        Ok(())
    }

    #[allow(clippy::too_many_arguments)] // a text, where, and how it hangs there
    fn write(
        &self,
        field: &mut Field<'_, '_>,
        at: (f64, f64),
        off: (i32, i32),
        text: &str,
        color: RGBColor,
        across: HPos,
        down: VPos,
    ) -> Drawn {
        let style = (FAMILY, LETTERS).into_font().color(&color).pos(Pos::new(across, down));
        // Only what stands inside the plot can be drawn by its own measure; axes' marks stand beside it.
        let (x, y) = field.backend_coord(&at);
        let page = field.plotting_area().strip_coord_spec();
        let (left, top) = page.get_base_pixel();
        page.draw_text(text, &style, (x - left + off.0, y - top + off.1))?;
        Ok(())
    }

    fn points(&self, read: &[(Moment, Temperature)]) -> Vec<(f64, f64)> {
        read.iter().map(|(at, value)| (self.minute(*at), self.degree(*value))).collect()
    }

    fn minute(&self, at: Moment) -> f64 {
        (at - self.chart.from).num_seconds() as f64 / 60.0
    }

    fn metric(&self) -> bool {
        self.reader.units == UnitSystem::Metric
    }

    fn degree(&self, at: Temperature) -> f64 {
        if self.metric() { in_celsius(at) } else { in_fahrenheit(at) }
    }

    fn degrees(&self, value: f64) -> String {
        use carvetime_core::quantity::{celsius, fahrenheit};
        let at = if self.metric() { celsius(value) } else { fahrenheit(value) };
        self.voice.label(&Text::new("cook-chart-number").with("number", Arg::Temperature(at)), self.reader)
    }

    fn clock(&self, at: Moment) -> String {
        self.voice.label(&Text::new("cook-chart-number").with("number", Arg::Clock(at)), self.reader)
    }

    /// From a little under the coldest to a little over the hottest thing shown.
    fn span_of_temperatures(&self) -> (f64, f64) {
        let spots = self.chart.spots.iter().flat_map(|spot| &spot.read);
        let shown = spots.chain(&self.chart.pit).map(|(_, value)| self.degree(*value));
        let shown: Vec<f64> = shown.chain([self.degree(self.chart.target)]).collect();
        let low = shown.iter().copied().fold(f64::INFINITY, f64::min);
        let high = shown.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let margin = (high - low) * 0.08 + 1.0;
        (low - margin, high + 2.0 * margin)
    }

    /// Whole hours, not more than fit.
    fn hours(&self) -> Vec<Moment> {
        let whole = (self.chart.to - self.chart.from).num_hours().max(1);
        let step = whole.unsigned_abs().div_ceil(6).max(1);
        let local = self.chart.from.with_timezone(&self.reader.zone);
        let past = TimeDelta::minutes(i64::from(local.minute())) + TimeDelta::seconds(i64::from(local.second()));
        let mut at = self.chart.from - past + TimeDelta::hours(1);
        let mut hours = Vec::new();
        while at < self.chart.to && hours.len() < 24 {
            hours.push(at);
            at += TimeDelta::hours(i64::try_from(step).unwrap_or(1));
        }
        hours
    }
}

/// Where a text stands in the plot, in pixels.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Place {
    left: i32,
    top: i32,
    right: i32,
    bottom: i32,
}

impl Place {
    fn meets(&self, other: &Self) -> bool {
        self.left < other.right && other.left < self.right && self.top < other.bottom && other.top < self.bottom
    }
}

/// The nearest place to `at` inside `room` where nothing is taken: above it, else below it. A crowd leaves it where it was.
fn free_place(at: (i32, i32), size: (i32, i32), room: (i32, i32), taken: &[Place]) -> Place {
    let within = |from: i32, size: i32, room: i32| from.clamp(0, (room - size).max(0));
    let left = within(at.0, size.0, room.0);
    let place = |top: i32| {
        let top = within(top, size.1, room.1);
        Place { left, top, right: left + size.0, bottom: top + size.1 }
    };
    let first = place(at.1);
    let mut tries = (0..room.1 / 4).flat_map(|step| [place(first.top - 4 * step), place(first.top + 4 * step)]);
    tries.find(|place| !taken.iter().any(|other| place.meets(other))).unwrap_or(first)
}

fn color(spot: &Curve) -> RGBColor {
    if spot.name == "breast" { BREAST } else { THIGH }
}

/// A page without colours, as a PNG of 200 dots an inch.
pub(crate) fn encode_gray(pixels: &[u8], size: (u32, u32)) -> Drawn<Vec<u8>> {
    const DOTS_A_METRE: u32 = 7874;
    let gray: Vec<u8> = pixels.chunks_exact(3).filter_map(|pixel| pixel.first().copied()).collect();
    let mut out = Vec::new();
    let mut encoder = png::Encoder::new(&mut out, size.0, size.1);
    encoder.set_color(png::ColorType::Grayscale);
    encoder.set_depth(png::BitDepth::Eight);
    encoder.set_pixel_dims(Some(png::PixelDimensions {
        xppu: DOTS_A_METRE,
        yppu: DOTS_A_METRE,
        unit: png::Unit::Meter,
    }));
    let mut writer = encoder.write_header()?;
    writer.write_image_data(&gray)?;
    writer.finish()?;
    Ok(out)
}

fn encode(pixels: &[u8]) -> Drawn<Vec<u8>> {
    let mut out = Vec::new();
    let mut encoder = png::Encoder::new(&mut out, SIZE.0, SIZE.1);
    encoder.set_color(png::ColorType::Rgb);
    encoder.set_depth(png::BitDepth::Eight);
    encoder.set_compression(png::Compression::Fast);
    let mut writer = encoder.write_header()?;
    writer.write_image_data(pixels)?;
    writer.finish()?;
    Ok(out)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn labels_stand_inside_and_apart(texts in prop::collection::vec((-200..1300_i32, -50..900_i32, 60..700_i32), 1..7)) {
            let room = (1026, 774);
            let mut taken = Vec::new();
            for (x, y, wide) in texts {
                let place = free_place((x, y), (wide, 38), room, &taken);
                prop_assert!(place.left >= 0 && place.top >= 0 && place.right <= room.0 && place.bottom <= room.1);
                prop_assert!(!taken.iter().any(|other| place.meets(other)), "{place:?} {taken:?}");
                taken.push(place);
            }
        }
    }
}
