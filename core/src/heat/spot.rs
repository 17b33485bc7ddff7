//! The fast model: one spot in a warm, wet-skinned sphere. What a forecast runs a hundred times a reading.
//!
//! Owns the dimensionless solver. Knows nothing of birds or readings; the same physics in full is [`super::body`]. Start at
//! [`Course`]. Temperatures °C, times minutes.
//!
//! A muscle mass is no sphere, but the curve of a spot in one, with its own time scale, Biot number, wetness and depth, follows the
//! logs of whole birds within a degree; which sphere it is, the readings tell.

// Lanes and cells are walked by index: so the sums read like the formulas, and so the lanes run side by side.
#![allow(clippy::needless_range_loop)]

use super::surface::saturation;

/// Intervals between centre and skin: at this size the error is below a tenth of a degree, and the sphere is fitted anyway.
const CELLS: usize = 10;
/// Trapezoidal share of a TR-BDF2 step.
const STAGE: f64 = 2.0 - std::f64::consts::SQRT_2;
/// Vapour pressure in a cooker, Pa: burnt gas and drippings keep it above that of the room. Assumed; wetness absorbs the rest.
const VAPOR: f64 = 4000.0;
/// Psychrometric constant, Pa/K; see [`super::surface`].
const PSYCHROMETRIC: f64 = 66.0;

/// °C from which the skin's water boils off: it can't get much hotter while it is wet, however hot the air. Below 100 by what the outermost
/// node, being of some thickness, is colder than the skin itself.
const BOILING: f64 = 95.0;
/// What boiling takes for each kelvin above that, as a share of what the air gives for each kelvin. Fitted by cross-validation on the
/// synthetic logs: without it the last half hour is foretold too short.
const BOILED: f64 = 0.5;

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
struct Stage<const L: usize> {
    weight: [f64; L],
    off: [[f64; L]; CELLS],
    factor: [[f64; L]; CELLS],
    inverse: [[f64; L]; CELLS],
    skin: [f64; L],
}

impl<const L: usize> Stage<L> {
    fn new(grid: &Grid, weight: [f64; L]) -> Self {
        let nothing = [[0.0; L]; CELLS];
        let mut stage = Self { weight, off: nothing, factor: nothing, inverse: nothing, skin: [0.0; L] };
        for lane in 0..L {
            let mut diagonal = grid.volumes;
            for i in 0..CELLS {
                stage.off[i][lane] = weight[lane] * grid.faces[i];
                diagonal[i] += stage.off[i][lane];
                diagonal[i + 1] += stage.off[i][lane];
            }
            for i in 0..CELLS {
                stage.inverse[i][lane] = 1.0 / diagonal[i];
                stage.factor[i][lane] = stage.off[i][lane] * stage.inverse[i][lane];
                diagonal[i + 1] -= stage.factor[i][lane] * stage.off[i][lane];
            }
            stage.skin[lane] = diagonal[CELLS];
        }
        stage
    }

    /// Solves with the skin's law `gain - slope × T` added to the last row.
    fn solve(&self, mut right: Profile<L>, gain: &[f64; L], slope: &[f64; L]) -> Profile<L> {
        for i in 0..CELLS {
            for lane in 0..L {
                right[i + 1][lane] += self.factor[i][lane] * right[i][lane];
                right[i][lane] *= self.inverse[i][lane];
            }
        }
        for lane in 0..L {
            let weight = self.weight[lane];
            right[CELLS][lane] = (right[CELLS][lane] + weight * gain[lane]) / (self.skin[lane] + weight * slope[lane]);
        }
        for i in (0..CELLS).rev() {
            for lane in 0..L {
                right[i][lane] += self.factor[i][lane] * right[i + 1][lane];
            }
        }
        right
    }
}

/// Temperatures from the centre to the skin, a lane a sphere.
type Profile<const L: usize> = [[f64; L]; CELLS + 1];

/// Several spheres on their way at once: their sums don't wait for each other, which is most of the time one alone would take.
pub struct Course<const L: usize> {
    grid: Grid,
    first: Stage<L>,
    second: Stage<L>,
    places: [Place; L],
    spots: [Spot; L],
    /// From heat at the skin to the sphere's mean temperature, a step.
    share: [f64; L],
    lost: [f64; L],
    now: Profile<L>,
}

impl<const L: usize> Course<L> {
    /// Each at its start temperature throughout, to be advanced in steps of `step` minutes.
    pub fn new(spots: [Spot; L], starts: [f64; L], step: f64) -> Self {
        let grid = Grid::new();
        let fourier = spots.map(|s| s.rate * step);
        Self {
            first: Stage::new(&grid, fourier.map(|f| 0.5 * STAGE * f)),
            second: Stage::new(&grid, fourier.map(|f| (1.0 - STAGE) / (2.0 - STAGE) * f)),
            grid,
            places: spots.map(|s| Place::new(s.depth)),
            spots,
            share: fourier.map(|f| 3.0 * f),
            lost: [0.0; L],
            now: [starts; CELLS + 1],
        }
    }

    /// Where the spots are now.
    pub fn reached(&self) -> [Reached; L] {
        std::array::from_fn(|lane| {
            let place = &self.places[lane];
            let inner = self.now[place.below][lane];
            let rise = self.now[place.below + 1][lane] - inner;
            Reached { celsius: inner + place.part * rise, by_depth: place.by_depth * rise }
        })
    }

    /// The skins exchange heat `times` as well as before from here on.
    pub fn change_air(&mut self, times: f64) {
        self.spots.iter_mut().for_each(|s| s.biot *= times);
    }

    /// One step in an air of `from` °C now and `to` °C then.
    pub fn step(&mut self, from: &[f64; L], to: &[f64; L]) {
        #[cfg(test)]
        super::cost::stepped(L);
        let (near, far) = (1.0 / (STAGE * (2.0 - STAGE)), (1.0 - STAGE).powi(2) / (STAGE * (2.0 - STAGE)));
        let wet: [f64; L] = std::array::from_fn(|lane| {
            let spot = &self.spots[lane];
            spot.biot * spot.wetness / PSYCHROMETRIC * (-self.lost[lane] / spot.drying).exp()
        });
        let law = Law::at(&self.now[CELLS], &wet, &self.spots);
        let mut right = [[0.0; L]; CELLS + 1];
        for i in 0..=CELLS {
            (0..L).for_each(|lane| right[i][lane] = self.grid.volumes[i] * self.now[i][lane]);
        }
        for i in 0..CELLS {
            for lane in 0..L {
                let heat = self.first.off[i][lane] * (self.now[i + 1][lane] - self.now[i][lane]);
                right[i][lane] += heat;
                right[i + 1][lane] -= heat;
            }
        }
        for lane in 0..L {
            let heat = law.gain(from[lane], lane) - law.slope[lane] * self.now[CELLS][lane];
            right[CELLS][lane] += self.first.weight[lane] * heat;
        }
        let gain = std::array::from_fn(|lane| law.gain(from[lane] + STAGE * (to[lane] - from[lane]), lane));
        let middle = self.first.solve(right, &gain, &law.slope);

        let law = Law::at(&middle[CELLS], &wet, &self.spots);
        let mut right = [[0.0; L]; CELLS + 1];
        for i in 0..=CELLS {
            (0..L).for_each(|lane| {
                right[i][lane] = self.grid.volumes[i] * (near * middle[i][lane] - far * self.now[i][lane]);
            });
        }
        let gain = std::array::from_fn(|lane| law.gain(to[lane], lane));
        self.now = self.second.solve(right, &gain, &law.slope);
        (0..L).for_each(|lane| self.lost[lane] += self.share[lane] * wet[lane] * law.over[lane]);
    }
}

/// What the skins take from the air, linear about their temperature: `gain - slope × T`.
struct Law<const L: usize> {
    biot: [f64; L],
    cooling: [f64; L],
    slope: [f64; L],
    over: [f64; L],
}

impl<const L: usize> Law<L> {
    fn at(skin: &[f64; L], wet: &[f64; L], spots: &[Spot; L]) -> Self {
        let biot = std::array::from_fn(|lane| spots[lane].biot);
        let mut law = Self { biot, cooling: [0.0; L], slope: biot, over: [0.0; L] };
        for lane in 0..L {
            let (pressure, rise) = saturation(skin[lane]);
            if pressure > VAPOR {
                law.over[lane] = pressure - VAPOR;
                law.cooling[lane] = wet[lane] * (law.over[lane] - rise * skin[lane]);
                law.slope[lane] += wet[lane] * rise;
            }
            if skin[lane] > BOILING {
                let boiled = BOILED * biot[lane];
                law.cooling[lane] -= boiled * BOILING;
                law.slope[lane] += boiled;
            }
        }
        law
    }

    fn gain(&self, air: f64, lane: usize) -> f64 {
        self.biot[lane] * air - self.cooling[lane]
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
}
