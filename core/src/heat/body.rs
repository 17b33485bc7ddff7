//! Transient conduction in a slab, cylinder or sphere with any surface law: the full model.
//!
//! Owns the grid and the time stepping. Knows nothing of birds, cookers or forecasts. Start at [`Body::step`].
//!
//! Finite volumes with nodes at the centre and at the surface, second order in space; TR-BDF2 in time (a trapezoidal stage, then a
//! BDF2 stage), second order and L-stable, so a cold bird put into a hot pit does not ring. Energy is conserved through phase
//! change because a stage balances enthalpy, not capacity times temperature.

use super::composition::{Composition, Layers};
use super::surface::Skin;

/// Trapezoidal share of a TR-BDF2 step: with `2 - √2` both stages share one matrix.
const STAGE: f64 = 2.0 - std::f64::consts::SQRT_2;

/// The three bodies in which heat flows along one coordinate.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Shape {
    /// Half-thickness as radius.
    Slab,
    /// Infinite cylinder.
    Cylinder,
    /// Sphere.
    Sphere,
}
names!(Shape { Slab => "slab", Cylinder => "cylinder", Sphere => "sphere" });

impl Shape {
    fn area(self, radius: f64) -> f64 {
        match self {
            Self::Slab => 1.0,
            Self::Cylinder => radius,
            Self::Sphere => radius * radius,
        }
    }

    fn volume(self, inner: f64, outer: f64) -> f64 {
        match self {
            Self::Slab => outer - inner,
            Self::Cylinder => (outer.powi(2) - inner.powi(2)) / 2.0,
            Self::Sphere => (outer.powi(3) - inner.powi(3)) / 3.0,
        }
    }
}

/// What the body is made of.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Stuff {
    /// Properties that do not change: conductivity W/(m K) and volumetric heat capacity J/(m³ K).
    Constant {
        /// Thermal conductivity, W/(m K).
        conductivity: f64,
        /// Density times specific heat, J/(m³ K).
        capacity: f64,
    },
    /// Meat of this composition, with melting.
    Meat(Composition),
}

impl Stuff {
    fn conductivity(&self, celsius: f64) -> f64 {
        match self {
            Self::Constant { conductivity, .. } => *conductivity,
            // The bounds' mean lies at the measured 0.46 W/(m K) of turkey (Chang, Carpenter and Toledo 1998).
            Self::Meat(meat) => {
                0.5 * (meat.conductivity(celsius, Layers::Parallel) + meat.conductivity(celsius, Layers::Series))
            }
        }
    }

    /// Enthalpy per volume, J/m³, from an arbitrary zero.
    fn enthalpy(&self, celsius: f64) -> f64 {
        match self {
            Self::Constant { capacity, .. } => capacity * celsius,
            Self::Meat(meat) => meat.density(20.0) * meat.enthalpy(celsius),
        }
    }

    fn capacity(&self, celsius: f64) -> f64 {
        const NUDGE: f64 = 1e-3;
        match self {
            Self::Constant { capacity, .. } => *capacity,
            Self::Meat(_) => (self.enthalpy(celsius + NUDGE) - self.enthalpy(celsius - NUDGE)) / (2.0 * NUDGE),
        }
    }
}

/// A body and its temperatures, °C, from the centre outwards.
#[derive(Debug, Clone)]
pub struct Body {
    shape: Shape,
    radius: f64,
    stuff: Stuff,
    temperatures: Vec<f64>,
    volumes: Vec<f64>,
    faces: Vec<f64>,
}

impl Body {
    /// A body of `radius` metres at `celsius` throughout, with `cells` intervals between centre and surface (at least two).
    pub fn new(shape: Shape, radius: f64, stuff: Stuff, cells: usize, celsius: f64) -> Self {
        let cells = cells.max(2);
        let width = radius / cells as f64;
        let face = |i: usize| (i as f64 - 0.5) * width;
        let mut edges = vec![0.0];
        edges.extend((1..=cells).map(face));
        edges.push(radius);
        Self {
            shape,
            radius,
            stuff,
            temperatures: vec![celsius; cells + 1],
            volumes: edges.windows(2).map(|e| shape.volume(e[0], e[1])).collect(),
            faces: (1..=cells).map(|i| shape.area(face(i)) / width).collect(),
        }
    }

    /// Advances by `seconds` in an air of `from` °C now and `to` °C then.
    pub fn step(&mut self, seconds: f64, skin: &Skin, from: f64, to: f64) {
        let middle = from + STAGE * (to - from);
        let before: Vec<f64> = self.temperatures.iter().map(|t| self.stuff.enthalpy(*t)).collect();
        let flow = self.inflow(&self.temperatures, skin, from).0;

        let weight = 0.5 * STAGE * seconds;
        let known: Vec<f64> = (0..before.len()).map(|i| self.volumes[i] * before[i] + weight * flow[i]).collect();
        self.balance(&known, weight, skin, middle);

        let (near, far) = (1.0 / (STAGE * (2.0 - STAGE)), (1.0 - STAGE).powi(2) / (STAGE * (2.0 - STAGE)));
        let known: Vec<f64> = (0..before.len())
            .map(|i| self.volumes[i] * (near * self.stuff.enthalpy(self.temperatures[i]) - far * before[i]))
            .collect();
        self.balance(&known, (1.0 - STAGE) / (2.0 - STAGE) * seconds, skin, to);
    }

    /// Temperature, °C, at a share of the radius: 0 the centre, 1 the surface.
    pub fn at(&self, share: f64) -> f64 {
        let cells = self.temperatures.len() - 1;
        let place = share.clamp(0.0, 1.0) * cells as f64;
        let below = (place as usize).min(cells - 1);
        let part = place - below as f64;
        self.temperatures[below] * (1.0 - part) + self.temperatures[below + 1] * part
    }

    /// Mean enthalpy per volume, J/m³, from an arbitrary zero.
    pub fn mean_enthalpy(&self) -> f64 {
        let held: f64 = self.temperatures.iter().zip(&self.volumes).map(|(t, v)| v * self.stuff.enthalpy(*t)).sum();
        held / self.volumes.iter().sum::<f64>()
    }

    /// Surface over volume, 1/m.
    pub fn surface_per_volume(&self) -> f64 {
        self.shape.area(self.radius) / self.shape.volume(0.0, self.radius)
    }

    /// Heat into each cell and the conductances between them; the surface law's slope comes last.
    fn inflow(&self, at: &[f64], skin: &Skin, air: f64) -> (Vec<f64>, Vec<f64>, f64) {
        let last = at.len() - 1;
        let conductances: Vec<f64> =
            (0..last).map(|i| self.faces[i] * self.stuff.conductivity(0.5 * (at[i] + at[i + 1]))).collect();
        let mut flow = vec![0.0; at.len()];
        for i in 0..last {
            let heat = conductances[i] * (at[i + 1] - at[i]);
            flow[i] += heat;
            flow[i + 1] -= heat;
        }
        let (heat, slope) = skin.flux(at[last], air);
        let area = self.shape.area(self.radius);
        flow[last] += area * heat;
        (flow, conductances, area * slope)
    }

    /// Finds the temperatures at which `volume × enthalpy - weight × inflow` equals `known`: Newton's method, a tridiagonal solve a turn.
    fn balance(&mut self, known: &[f64], weight: f64, skin: &Skin, air: f64) {
        const TURNS: usize = 30;
        const CLOSE: f64 = 1e-9;
        let last = known.len() - 1;
        for turn in 0..TURNS {
            let (flow, conductances, slope) = self.inflow(&self.temperatures, skin, air);
            let mut diagonal = vec![0.0; known.len()];
            let mut gap = vec![0.0; known.len()];
            for i in 0..=last {
                let t = self.temperatures[i];
                diagonal[i] = self.volumes[i] * self.stuff.capacity(t);
                gap[i] = known[i] - self.volumes[i] * self.stuff.enthalpy(t) + weight * flow[i];
            }
            for i in 0..last {
                diagonal[i] += weight * conductances[i];
                diagonal[i + 1] += weight * conductances[i];
            }
            diagonal[last] -= weight * slope;
            let off: Vec<f64> = conductances.iter().map(|c| -weight * c).collect();
            tridiagonal(&mut diagonal, &off, &mut gap);
            // Across the freezing point the enthalpy has a kink: later turns are damped so that they settle.
            let damp = if turn < TURNS / 3 { 1.0 } else { 0.5 };
            let mut largest = 0.0_f64;
            for (t, change) in self.temperatures.iter_mut().zip(&gap) {
                *t += damp * change;
                largest = largest.max(change.abs());
            }
            if largest < CLOSE {
                break;
            }
        }
    }
}

/// Solves a symmetric tridiagonal system in place (Thomas): `right` becomes the solution.
fn tridiagonal(diagonal: &mut [f64], off: &[f64], right: &mut [f64]) {
    let last = diagonal.len() - 1;
    for i in 0..last {
        let factor = off[i] / diagonal[i];
        diagonal[i + 1] -= factor * off[i];
        right[i + 1] -= factor * right[i];
    }
    right[last] /= diagonal[last];
    for i in (0..last).rev() {
        right[i] = (right[i] - off[i] * right[i + 1]) / diagonal[i];
    }
}
