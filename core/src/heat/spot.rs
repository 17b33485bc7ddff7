//! The fast model: one spot in a warm, wet-skinned sphere. What a forecast runs a hundred times a reading.
//!
//! Owns the dimensionless solver. Knows nothing of birds or readings; the same physics in full is [`super::body`]. Start at
//! [`Spot::run`]. Temperatures °C, times minutes.
//!
//! A muscle mass is no sphere, but the curve of a spot in one, with its own time scale, Biot number, wetness and depth, follows the
//! logs of whole birds within a degree; which sphere it is, the readings tell.

use super::surface::saturation;

/// Intervals between centre and skin: at this size the error is below a tenth of a degree, and the sphere is fitted anyway.
const CELLS: usize = 10;
/// Trapezoidal share of a TR-BDF2 step.
const STAGE: f64 = 2.0 - std::f64::consts::SQRT_2;
/// Vapour pressure in a cooker, Pa: burnt gas and drippings keep it above that of the room. Assumed; wetness absorbs the rest.
const VAPOR: f64 = 4000.0;
/// Psychrometric constant, Pa/K; see [`super::surface`].
const PSYCHROMETRIC: f64 = 66.0;

/// A spot and the sphere it sits in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spot {
    /// Diffusivity over radius squared, 1/min.
    pub rate: f64,
    /// Biot number of the skin.
    pub biot: f64,
    /// How freely water leaves the skin at first: 0 dry, 1 an open water surface.
    pub wetness: f64,
    /// Water the skin gives until it is a third as wet, as the kelvins by which its heat would have warmed the sphere.
    pub drying: f64,
    /// Distance from the centre, as a share of the radius.
    pub depth: f64,
}

/// Temperature of the spot and its slope in depth, at one time.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Reached {
    /// °C.
    pub celsius: f64,
    /// °C for the whole radius.
    pub by_depth: f64,
}

/// Geometry of the grid, the same for every run.
struct Grid {
    volumes: [f64; CELLS + 1],
    faces: [f64; CELLS],
}

impl Grid {
    fn new() -> Self {
        let width = 1.0 / CELLS as f64;
        let (mut volumes, mut faces) = ([0.0; CELLS + 1], [0.0; CELLS]);
        for (i, volume) in volumes.iter_mut().enumerate() {
            let inner = ((i as f64 - 0.5) * width).max(0.0);
            let outer = ((i as f64 + 0.5) * width).min(1.0);
            *volume = (outer.powi(3) - inner.powi(3)) / 3.0;
        }
        for (i, face) in faces.iter_mut().enumerate() {
            *face = ((i as f64 + 0.5) * width).powi(2) / width;
        }
        Self { volumes, faces }
    }
}

/// The part of a stage's elimination that does not change from step to step: everything but the skin's row.
struct Stage {
    weight: f64,
    off: [f64; CELLS],
    factor: [f64; CELLS],
    inverse: [f64; CELLS],
    skin: f64,
}

impl Stage {
    fn new(grid: &Grid, weight: f64) -> Self {
        let mut diagonal = grid.volumes;
        let (mut off, mut factor, mut inverse) = ([0.0; CELLS], [0.0; CELLS], [0.0; CELLS]);
        for i in 0..CELLS {
            off[i] = weight * grid.faces[i];
            diagonal[i] += off[i];
            diagonal[i + 1] += off[i];
        }
        for i in 0..CELLS {
            inverse[i] = 1.0 / diagonal[i];
            factor[i] = off[i] * inverse[i];
            diagonal[i + 1] -= factor[i] * off[i];
        }
        Self { weight, off, factor, inverse, skin: diagonal[CELLS] }
    }

    /// Solves with the skin's law `gain - slope × T` added to the last row.
    fn solve(&self, mut right: [f64; CELLS + 1], (gain, slope): (f64, f64)) -> [f64; CELLS + 1] {
        right[CELLS] += self.weight * gain;
        for i in 0..CELLS {
            right[i + 1] += self.factor[i] * right[i];
        }
        right[CELLS] /= self.skin + self.weight * slope;
        for i in (0..CELLS).rev() {
            right[i] = (right[i] + self.off[i] * right[i + 1]) * self.inverse[i];
        }
        right
    }
}

impl Spot {
    /// The spot's temperatures in steps of `step` minutes, `out[0]` being `start` throughout, in an `air` of the same steps.
    pub fn run(&self, start: f64, air: &[f64], step: f64, out: &mut Vec<Reached>) {
        let mut course = Course::new(self, start, step);
        out.clear();
        out.push(course.reached());
        for pair in air.windows(2) {
            course.step(pair[0], pair[1]);
            out.push(course.reached());
        }
    }
}

/// A sphere on its way.
pub struct Course {
    grid: Grid,
    first: Stage,
    second: Stage,
    place: Place,
    biot: f64,
    wetness: f64,
    drying: f64,
    /// Share of a unit of Fourier number a step, times three: from heat at the skin to the sphere's mean temperature.
    share: f64,
    lost: f64,
    now: [f64; CELLS + 1],
}

impl Course {
    /// At `start` °C throughout, to be advanced in steps of `step` minutes.
    pub fn new(spot: &Spot, start: f64, step: f64) -> Self {
        let grid = Grid::new();
        let fourier = spot.rate * step;
        Self {
            first: Stage::new(&grid, 0.5 * STAGE * fourier),
            second: Stage::new(&grid, (1.0 - STAGE) / (2.0 - STAGE) * fourier),
            grid,
            place: Place::new(spot.depth),
            biot: spot.biot,
            wetness: spot.wetness,
            drying: spot.drying,
            share: 3.0 * fourier,
            lost: 0.0,
            now: [start; CELLS + 1],
        }
    }

    /// Where the spot is now.
    pub fn reached(&self) -> Reached {
        self.place.of(&self.now)
    }

    /// The skin now takes heat `times` as well as before: off the heat there is no draught.
    pub fn shelter(&mut self, times: f64) {
        self.biot *= times;
    }

    /// One step in an air of `from` °C now and `to` °C then.
    pub fn step(&mut self, from: f64, to: f64) {
        let (near, far) = (1.0 / (STAGE * (2.0 - STAGE)), (1.0 - STAGE).powi(2) / (STAGE * (2.0 - STAGE)));
        let wet = self.biot * self.wetness / PSYCHROMETRIC * (-self.lost / self.drying).exp();
        let skin = self.now[CELLS];
        let (pressure, rise) = saturation(skin);
        let (over, rise) = if pressure > VAPOR { (pressure - VAPOR, rise) } else { (0.0, 0.0) };
        let law = |air: f64| (self.biot * air - wet * (over - rise * skin), self.biot + wet * rise);

        let mut right = [0.0; CELLS + 1];
        for ((right, volume), now) in right.iter_mut().zip(&self.grid.volumes).zip(&self.now) {
            *right = volume * now;
        }
        for i in 0..CELLS {
            let heat = self.first.off[i] * (self.now[i + 1] - self.now[i]);
            right[i] += heat;
            right[i + 1] -= heat;
        }
        let (gain, slope) = law(from);
        right[CELLS] += self.first.weight * (gain - slope * skin);
        let middle = self.first.solve(right, law(from + STAGE * (to - from)));

        let skin = middle[CELLS];
        let (pressure, rise) = saturation(skin);
        let (over, rise) = if pressure > VAPOR { (pressure - VAPOR, rise) } else { (0.0, 0.0) };
        for ((right, volume), (middle, now)) in
            right.iter_mut().zip(&self.grid.volumes).zip(middle.iter().zip(&self.now))
        {
            *right = volume * (near * middle - far * now);
        }
        self.now = self.second.solve(right, (self.biot * to - wet * (over - rise * skin), self.biot + wet * rise));
        self.lost += self.share * wet * over;
    }
}

/// Where between the nodes a depth lies; temperatures run nearly straight in the radius squared.
struct Place {
    below: usize,
    part: f64,
    by_depth: f64,
}

impl Place {
    fn new(depth: f64) -> Self {
        let depth = depth.clamp(0.0, 1.0);
        let below = ((depth * CELLS as f64) as usize).min(CELLS - 1);
        let edge = |i: usize| (i as f64 / CELLS as f64).powi(2);
        let span = edge(below + 1) - edge(below);
        Self { below, part: (depth * depth - edge(below)) / span, by_depth: 2.0 * depth / span }
    }

    fn of(&self, at: &[f64; CELLS + 1]) -> Reached {
        let rise = at[self.below + 1] - at[self.below];
        Reached { celsius: at[self.below] + self.part * rise, by_depth: self.by_depth * rise }
    }
}
