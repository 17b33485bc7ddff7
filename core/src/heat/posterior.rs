//! What the readings so far say about the unknowns: the prior, bent by each reading as much as it deserves.
//!
//! Owns the fit. Knows the readings as numbers; what they are worth is settled before. Start at [`Posterior::fit`].
//!
//! A Gauss–Newton search for the most probable unknowns, whose last turn also gives their covariance. The model is not the bird: what it
//! leaves over wanders (a first-order process), and a scalar Kalman filter takes that wandering out, so that two hundred readings a
//! minute apart do not pretend to be two hundred witnesses. Cost is linear in the readings; memory is that of the curve.

use super::pit::Air;
use super::prior::{AHEAD, BIOT, BREAST, DEPTH, DRY, PIT, Prior, RATE, START, STEM, THIGH, UNKNOWNS, WET};
use super::small::{Matrix, Vector, ZERO, apply, cholesky, dot, inverse, solve};
use super::spot::{Course, Reached, Spot};

/// Minutes between the points of a curve.
pub const STEP: f64 = 4.0;

/// A thermometer reading at a spot.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Seen {
    /// Minutes since the bird met the heat.
    pub minutes: f64,
    /// °C as shown.
    pub celsius: f64,
    /// The thermometer was moved since the reading before: what the model had left over then says nothing now.
    pub moved: bool,
}

/// Everything known so far, as numbers.
#[derive(Debug, Clone, Default)]
pub struct Evidence {
    /// Readings at the breast.
    pub breast: Vec<Seen>,
    /// Readings at the thigh.
    pub thigh: Vec<Seen>,
    /// Readings of the pit.
    pub pit: Vec<Seen>,
    /// Minutes now.
    pub now: f64,
    /// True temperatures, only known when tuning.
    pub truth: [Option<Seen>; 2],
}

/// How far the model and the thermometers are trusted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Noise {
    /// Standard deviation of what the model leaves over, °C.
    pub wander: f64,
    /// Minutes over which that fades.
    pub memory: f64,
    /// Standard deviation of a reading by itself, °C.
    pub reading: f64,
}

impl Noise {
    /// What to expect of these readings. A thermometer left in place reads often and steadily; one put in anew each time scatters.
    pub fn of(evidence: &Evidence) -> Self {
        let spots = [&evidence.breast, &evidence.thigh];
        let most = spots.iter().map(|s| s.len()).max().unwrap_or(0);
        let last = spots.iter().filter_map(|s| s.last()).map(|s| s.minutes).fold(0.0, f64::max);
        let often = most > 3 && last / most as f64 <= 8.0;
        Self { wander: WANDER, memory: WANDER_MEMORY, reading: if often { 0.3 } else { 0.8 } }
    }
}

/// Standard deviation, °C, and memory, min, of what the model leaves over.
const WANDER: f64 = 0.9;
const WANDER_MEMORY: f64 = 120.0;

/// One spot's model curve with its slopes in the unknowns.
#[derive(Debug, Clone, Default)]
pub struct Curve {
    /// °C a step.
    pub celsius: Vec<f64>,
    /// Slopes: an unknown each.
    pub slopes: Vec<Vector>,
}

/// The unknowns after the readings.
#[derive(Debug, Clone)]
pub struct Posterior {
    /// Most probable values.
    pub mean: Vector,
    /// Covariance.
    pub covariance: Matrix,
    /// What the model leaves over now at breast and thigh, °C, and its variance.
    pub left: [(f64, f64); 2],
    /// How many readings entered.
    pub readings: usize,
    /// Variance scale used.
    pub scale: f64,
    /// How ill the unknowns fit prior and readings: twice a negative log probability, up to a constant. Less is better.
    pub worth: f64,
}

/// The physical spot for these unknowns.
pub fn spot_of(unknowns: &Vector, spot: usize) -> Spot {
    Spot {
        rate: unknowns[spot + RATE].clamp(-12.0, -2.0).exp(),
        biot: unknowns[spot + BIOT].clamp(-4.0, 5.0).exp(),
        wetness: unknowns[spot + WET].clamp(-9.0, 0.0).exp(),
        drying: unknowns[DRY].clamp(0.0, 9.0).exp(),
        depth: 1.0 / (1.0 + (-unknowns[spot + DEPTH]).exp()),
    }
}

/// Temperatures alone, for several sets of unknowns at once.
pub fn curves_of<const L: usize>(unknowns: [&Vector; L], spot: usize, air: &Air, points: usize) -> Vec<[f64; L]> {
    course(unknowns, spot, air, points).map(|reached| reached.map(|r| r.celsius)).collect()
}

/// Temperatures alone.
pub fn curve_of(unknowns: &Vector, spot: usize, air: &Air, points: usize) -> Vec<f64> {
    course([unknowns], spot, air, points).map(|[reached]| reached.celsius).collect()
}

fn course<const L: usize>(
    unknowns: [&Vector; L],
    spot: usize,
    air: &Air,
    points: usize,
) -> impl Iterator<Item = [Reached; L]> {
    let mut course = Course::new(unknowns.map(|u| spot_of(u, spot)), unknowns.map(|u| u[START]), STEP);
    let shifts = unknowns.map(|u| (u[PIT], u[AHEAD]));
    let at = move |i: usize| shifts.map(|(pit, ahead)| air.at(i, pit, ahead));
    (0..points).map(move |i| {
        if i > 0 {
            course.step(&at(i - 1), &at(i));
        }
        course.reached()
    })
}

/// Temperatures with slopes: the most probable course and one a nudged unknown, all at once.
pub fn curve_with_slopes(unknowns: &Vector, spot: usize, air: &Air, points: usize) -> Curve {
    let nudges = [
        (spot + RATE, 0.02),
        (spot + BIOT, 0.03),
        (spot + WET, 0.1),
        (DRY, 0.1),
        (PIT, 1.0),
        (START, 0.5),
        (AHEAD, 2.0),
    ];
    let mut moved = [*unknowns; 8];
    for (moved, (which, by)) in moved.iter_mut().skip(1).zip(nudges) {
        moved[which] += by;
    }
    let depth = spot_of(unknowns, spot).depth;
    let mut curve = Curve { celsius: Vec::with_capacity(points), slopes: Vec::with_capacity(points) };
    for [base, nudged @ ..] in course(moved.each_ref(), spot, air, points) {
        let mut slope = [0.0; UNKNOWNS];
        slope[spot + DEPTH] = base.by_depth * depth * (1.0 - depth);
        for (nudged, (which, by)) in nudged.iter().zip(nudges) {
            slope[which] = (nudged.celsius - base.celsius) / by;
        }
        curve.celsius.push(base.celsius);
        curve.slopes.push(slope);
    }
    curve
}

impl Curve {
    /// What a thermometer at the spot shows at `minutes`, with its slopes in the unknowns.
    pub fn shown(&self, minutes: f64, air: &Air, mean: &Vector, spot: usize) -> (f64, Vector) {
        let pit = air.at_minute(minutes, mean);
        through_stem(self, minutes, pit, mean[spot + STEM], spot)
    }
}

/// The reading of a thermometer whose stem leads some of the pit's heat to its tip.
fn through_stem(curve: &Curve, minutes: f64, pit: f64, stem: f64, spot: usize) -> (f64, Vector) {
    let (at, mut slope) = between(curve, minutes);
    // Meat with ice in it stays at the freezing point whatever the unknowns.
    let free = if at < ICE { 0.0 } else { 1.0 };
    let at = at.max(ICE);
    slope.iter_mut().for_each(|s| *s *= (1.0 - stem) * free);
    slope[spot + STEM] = pit - at;
    slope[PIT] += stem;
    ((1.0 - stem) * at + stem * pit, slope)
}

impl Posterior {
    /// Bends the prior to the evidence.
    pub fn fit(prior: &Prior, evidence: &Evidence, air: &Air, noise: &Noise) -> Self {
        Self::fit_from(prior.mean, prior, evidence, air, noise)
    }

    /// The same, looking for the most probable unknowns from `mean` on: sooner found where that is near.
    pub fn fit_from(mut mean: Vector, prior: &Prior, evidence: &Evidence, air: &Air, noise: &Noise) -> Self {
        const TURNS: usize = 16;
        let precision = inverse(&prior.covariance);
        let last = evidence.breast.iter().chain(&evidence.thigh).map(|s| s.minutes).fold(0.0, f64::max);
        let last = evidence.truth.iter().flatten().map(|s| s.minutes).fold(last, f64::max);
        let points = (last / STEP) as usize + 2;
        let mut best: Option<Best> = None;
        let mut turn = 0;
        loop {
            let sums = Sums::over(&mean, evidence, air, noise, points);
            let mut away = [0.0; UNKNOWNS];
            (0..UNKNOWNS).for_each(|i| away[i] = prior.mean[i] - mean[i]);
            let home = apply(&precision, &away);
            // The spread of the readings about the curve is itself learned, from a belief worth a score of them.
            let scale = (PATIENCE + sums.square) / (PATIENCE + sums.count as f64);
            let worth = (PATIENCE + sums.count as f64) * scale.ln() + sums.extra + dot(&home, &away);
            if let Some(best) = best.as_mut().filter(|best| worth > best.worth) {
                if turn >= TURNS {
                    return best.posterior.clone();
                }
                // Too far along a bent valley: half the way back.
                (0..UNKNOWNS).for_each(|i| best.step[i] *= 0.4);
                (0..UNKNOWNS).for_each(|i| mean[i] = best.posterior.mean[i] + best.step[i]);
                turn += 1;
                continue;
            }
            let mut normal = precision;
            let mut pull = home;
            for i in 0..UNKNOWNS {
                (0..UNKNOWNS).for_each(|j| normal[i][j] += sums.normal[i][j] / scale);
                pull[i] += sums.pull[i] / scale;
            }
            let mut step = solve(&cholesky(&normal), &pull);
            let mut largest = 0.0_f64;
            for (i, step) in step.iter().enumerate() {
                largest = largest.max(step.abs() / prior.covariance[i][i].sqrt());
            }
            // A step of more than two prior deviations leaves the range where the slopes hold.
            if largest > 2.0 {
                step.iter_mut().for_each(|s| *s *= 2.0 / largest);
            }
            let posterior =
                Self { mean, covariance: inverse(&normal), left: sums.left, scale, readings: sums.count, worth };
            if turn >= TURNS || largest < 0.02 {
                return posterior;
            }
            best = Some(Best { posterior, step, worth });
            (0..UNKNOWNS).for_each(|i| mean[i] += step[i]);
            turn += 1;
        }
    }
}

/// The most probable unknowns so far, and the step from there that is tried.
struct Best {
    posterior: Posterior,
    step: Vector,
    worth: f64,
}

/// Readings' worth of belief in the stated noise.
const PATIENCE: f64 = 20.0;

struct Sums {
    normal: Matrix,
    pull: Vector,
    square: f64,
    extra: f64,
    count: usize,
    left: [(f64, f64); 2],
}

impl Sums {
    fn over(mean: &Vector, evidence: &Evidence, air: &Air, noise: &Noise, points: usize) -> Self {
        let rest = (0.0, noise.wander * noise.wander);
        let mut sums = Self { normal: ZERO, pull: [0.0; UNKNOWNS], square: 0.0, extra: 0.0, count: 0, left: [rest; 2] };
        for (which, spot, seen) in [(0, BREAST, &evidence.breast), (1, THIGH, &evidence.thigh)] {
            if seen.is_empty() {
                continue;
            }
            let curve = curve_with_slopes(mean, spot, air, points);
            sums.left[which] = sums.add(seen, &curve, air, mean, spot, noise);
            if let Some(truth) = evidence.truth[which] {
                let (at, slope) = between(&curve, truth.minutes);
                sums.observe(truth.celsius - at, &slope, 0.2_f64.powi(2));
            }
        }
        sums
    }

    fn observe(&mut self, gap: f64, slope: &Vector, variance: f64) {
        for i in 0..UNKNOWNS {
            if slope[i] == 0.0 {
                continue;
            }
            let share = slope[i] / variance;
            self.pull[i] += share * gap;
            (0..UNKNOWNS).for_each(|j| self.normal[i][j] += share * slope[j]);
        }
    }

    /// Takes a spot's readings through the filter; gives what is left over at the last one.
    fn add(
        &mut self,
        seen: &[Seen],
        curve: &Curve,
        air: &Air,
        mean: &Vector,
        spot: usize,
        noise: &Noise,
    ) -> (f64, f64) {
        let wander = noise.wander * noise.wander;
        let (mut left, mut spread, mut left_slope, mut then) = (0.0, wander, [0.0; UNKNOWNS], 0.0);
        for reading in seen {
            let (shown, slope) = curve.shown(reading.minutes, air, mean, spot);
            let gap = reading.celsius - shown;

            let fade = (-(reading.minutes - then) / noise.memory).exp();
            then = reading.minutes;
            left *= fade;
            spread = fade * fade * spread + wander * (1.0 - fade * fade);
            left_slope.iter_mut().for_each(|s| *s *= fade);
            if reading.moved {
                spread += MOVED * MOVED;
            }
            let mut own = noise.reading * noise.reading;
            let new = gap - left;
            let expected = spread + own;
            // A reading far out of line counts for less, the further the less.
            let out = new * new / (TRUST * TRUST * expected);
            if out > 1.0 {
                own += expected * (out - 1.0);
            }
            let variance = spread + own;
            let mut new_slope = slope;
            for i in 0..UNKNOWNS {
                new_slope[i] -= left_slope[i];
            }
            #[cfg(test)]
            super::cost::taken();
            self.observe(new, &new_slope, variance);
            self.square += new * new / variance;
            self.extra += (variance / expected).ln();
            self.count += 1;
            let gain = spread / variance;
            left += gain * new;
            for i in 0..UNKNOWNS {
                left_slope[i] += gain * new_slope[i];
            }
            spread *= 1.0 - gain;
        }
        (left, spread)
    }
}

/// °C by which a moved thermometer may find itself elsewhere.
const MOVED: f64 = 8.0;

/// Standard deviations within which a reading counts in full.
const TRUST: f64 = 5.0;

/// Meat with ice in it shows this, °C.
const ICE: f64 = -1.0;

fn between(curve: &Curve, minutes: f64) -> (f64, Vector) {
    let (below, part) = place(curve.celsius.len(), minutes);
    let mut slope = curve.slopes[below];
    for (slope, next) in slope.iter_mut().zip(&curve.slopes[below + 1]) {
        *slope += part * (next - *slope);
    }
    (between_values(&curve.celsius, minutes), slope)
}

/// A value between two points of a curve.
pub fn between_values(values: &[f64], minutes: f64) -> f64 {
    let (below, part) = place(values.len(), minutes);
    values[below] + part * (values[below + 1] - values[below])
}

fn place(points: usize, minutes: f64) -> (usize, f64) {
    let at = (minutes / STEP).max(0.0);
    let below = (at as usize).min(points.saturating_sub(2));
    (below, (at - below as f64).min(1.0))
}

/// Inner product through a covariance.
pub fn through(covariance: &Matrix, a: &Vector, b: &Vector) -> f64 {
    dot(a, &apply(covariance, b))
}
