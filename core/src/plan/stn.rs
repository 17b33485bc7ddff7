//! A simple temporal network: points in time and, between them, the least and the most time that may pass.
//!
//! Owns the constraints, the windows they leave (Bellman–Ford), the minimal network (Floyd–Warshall) and the proof that
//! nothing fits (a negative cycle, as the constraints on it). Knows nothing of birds: every constraint carries a reason
//! of the caller's own type. Start at [`Stn::solve`].
//!
//! # Source
//! Dechter, Meiri, Pearl, Temporal constraint networks, Artificial Intelligence 49 (1991) 61-95.

/// A point of the network. Point 0, [`ORIGIN`], is the time all others are measured from.
pub type Point = usize;

/// The point that all windows are measured from.
pub const ORIGIN: Point = 0;

/// No bound. Far from overflow even when many are added up.
const FREE: i64 = i64::MAX / 8;

/// `least <= to - from <= most`, in seconds, and why.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Constraint<R> {
    /// Point counted from.
    pub from: Point,
    /// Point counted to.
    pub to: Point,
    /// At least this many seconds later (`None`: no such bound).
    pub least: Option<i64>,
    /// At most this many seconds later (`None`: no such bound).
    pub most: Option<i64>,
    /// Why.
    pub why: R,
}

/// The network.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Stn<R> {
    points: usize,
    constraints: Vec<Constraint<R>>,
}

/// Seconds after [`ORIGIN`] between which a point may lie. `None`: unbounded on that side.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Window {
    /// No sooner than.
    pub earliest: Option<i64>,
    /// No later than.
    pub latest: Option<i64>,
}

/// Why nothing fits: constraints that, taken together, ask for more time than there is.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Cycle<R> {
    /// The reasons on the cycle, in its order.
    pub reasons: Vec<R>,
    /// By how many seconds they overrun one another. Always positive.
    pub short_by: i64,
}

/// A bound in one direction: `to - from <= weight`.
struct Edge {
    from: Point,
    to: Point,
    weight: i64,
    constraint: usize,
}

impl<R: Copy> Stn<R> {
    /// A network of `points` points, the origin among them, without constraints.
    pub fn new(points: usize) -> Self {
        Self { points: points.max(1), constraints: Vec::new() }
    }

    /// Adds a constraint. Points out of range are taken into the network.
    pub fn add(&mut self, constraint: Constraint<R>) {
        self.points = self.points.max(constraint.from + 1).max(constraint.to + 1);
        self.constraints.push(constraint);
    }

    /// `to` at least `least` seconds after `from`.
    pub fn at_least(&mut self, from: Point, to: Point, least: i64, why: R) {
        self.add(Constraint { from, to, least: Some(least), most: None, why });
    }

    /// `to` at most `most` seconds after `from`.
    pub fn at_most(&mut self, from: Point, to: Point, most: i64, why: R) {
        self.add(Constraint { from, to, least: None, most: Some(most), why });
    }

    /// `to` between `least` and `most` seconds after `from`.
    pub fn between(&mut self, from: Point, to: Point, least: i64, most: i64, why: R) {
        self.add(Constraint { from, to, least: Some(least), most: Some(most), why });
    }

    /// Takes away the constraints for which `keep` says no.
    pub fn relax(&mut self, keep: impl FnMut(&Constraint<R>) -> bool) {
        self.constraints.retain(keep);
    }

    /// Takes the newest constraints away until `len` are left.
    pub fn truncate(&mut self, len: usize) {
        self.constraints.truncate(len);
    }

    /// The constraints.
    pub fn constraints(&self) -> &[Constraint<R>] {
        &self.constraints
    }

    /// Window of every point.
    ///
    /// # Errors
    /// [`Cycle`] when no times satisfy all constraints.
    pub fn solve(&self) -> Result<Vec<Window>, Cycle<R>> {
        let edges = self.edges();
        self.refute(&edges)?;
        let latest = distances(self.points, edges.iter().map(|e| (e.from, e.to, e.weight)));
        let earliest = distances(self.points, edges.iter().map(|e| (e.to, e.from, e.weight)));
        let bound = |distance: i64| (distance < FREE / 2).then_some(distance);
        Ok(latest
            .into_iter()
            .zip(earliest)
            .map(|(latest, earliest)| Window { earliest: bound(earliest).map(|d| -d), latest: bound(latest) })
            .collect())
    }

    /// The minimal network: the tightest bound between every two points. Any value within a window of it is part of a
    /// whole solution.
    ///
    /// # Errors
    /// [`Cycle`] when no times satisfy all constraints.
    pub fn minimal(&self) -> Result<Minimal, Cycle<R>> {
        let edges = self.edges();
        self.refute(&edges)?;
        let n = self.points;
        let mut most = vec![FREE; n * n];
        for point in 0..n {
            most[point * n + point] = 0;
        }
        for edge in &edges {
            let cell = &mut most[edge.from * n + edge.to];
            *cell = (*cell).min(edge.weight);
        }
        let mut middle_row = vec![FREE; n];
        for middle in 0..n {
            middle_row.copy_from_slice(&most[middle * n..(middle + 1) * n]);
            for row in most.chunks_exact_mut(n) {
                let first = row[middle];
                if first >= FREE / 2 {
                    continue;
                }
                for (cell, second) in row.iter_mut().zip(&middle_row) {
                    *cell = (*cell).min(first + second);
                }
            }
        }
        let latest = most[..n].to_vec();
        let earliest = (0..n).map(|point| most[point * n + ORIGIN].saturating_neg()).collect();
        Ok(Minimal { n, most, earliest, latest })
    }

    fn edges(&self) -> Vec<Edge> {
        let mut edges = Vec::with_capacity(self.constraints.len() * 2);
        for (constraint, c) in self.constraints.iter().enumerate() {
            if let Some(weight) = c.most {
                edges.push(Edge { from: c.from, to: c.to, weight, constraint });
            }
            if let Some(least) = c.least {
                edges.push(Edge { from: c.to, to: c.from, weight: -least, constraint });
            }
        }
        edges
    }

    /// Looks for a negative cycle: Bellman–Ford from everywhere at once.
    fn refute(&self, edges: &[Edge]) -> Result<(), Cycle<R>> {
        let mut distance = vec![0_i64; self.points];
        let mut came_by: Vec<Option<usize>> = vec![None; self.points];
        for round in 0..=self.points {
            let mut moved = None;
            for (index, edge) in edges.iter().enumerate() {
                let through = distance[edge.from] + edge.weight;
                if through < distance[edge.to] {
                    distance[edge.to] = through;
                    came_by[edge.to] = Some(index);
                    moved = Some(edge.to);
                }
            }
            match moved {
                None => return Ok(()),
                Some(point) if round == self.points => return Err(self.cycle_before(point, edges, &came_by)),
                Some(_) => {}
            }
        }
        Ok(())
    }

    /// The cycle met when walking back from a point that still moved after as many rounds as there are points.
    fn cycle_before(&self, point: Point, edges: &[Edge], came_by: &[Option<usize>]) -> Cycle<R> {
        let mut on_cycle = point;
        for _ in 0..self.points {
            match came_by[on_cycle] {
                Some(index) => on_cycle = edges[index].from,
                None => break,
            }
        }
        let mut reasons = Vec::new();
        let mut sum = 0;
        let mut at = on_cycle;
        while let Some(index) = came_by[at] {
            reasons.push(self.constraints[edges[index].constraint].why);
            sum += edges[index].weight;
            at = edges[index].from;
            if at == on_cycle {
                break;
            }
        }
        reasons.reverse();
        Cycle { reasons, short_by: -sum }
    }
}

/// Shortest distance from the origin along `arcs`, which have no negative cycle.
fn distances(points: usize, arcs: impl Iterator<Item = (Point, Point, i64)> + Clone) -> Vec<i64> {
    let mut distance = vec![FREE; points];
    distance[ORIGIN] = 0;
    for _ in 0..points {
        let mut moved = false;
        for (from, to, weight) in arcs.clone() {
            if distance[from] < FREE / 2 && distance[from] + weight < distance[to] {
                distance[to] = distance[from] + weight;
                moved = true;
            }
        }
        if !moved {
            break;
        }
    }
    distance
}

/// A minimal network, and the windows that are left as points are fixed one after the other.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Minimal {
    n: usize,
    /// `most[a * n + b]`: at most so long from a to b.
    most: Vec<i64>,
    earliest: Vec<i64>,
    latest: Vec<i64>,
}

impl Minimal {
    /// At most so many seconds from `from` to `to` (`None`: no bound).
    pub fn most(&self, from: Point, to: Point) -> Option<i64> {
        let bound = *self.most.get(from * self.n + to)?;
        (bound < FREE / 2).then_some(bound)
    }

    /// What is left for `point`, given the points fixed so far.
    pub fn window(&self, point: Point) -> Window {
        Window {
            earliest: self.earliest.get(point).copied().filter(|&at| at > -FREE / 2),
            latest: self.latest.get(point).copied().filter(|&at| at < FREE / 2),
        }
    }

    /// Fixes `point` as near to `wanted` as its window allows, narrows the others, and says where it came to lie.
    ///
    /// One pass over the points is enough: a minimal network is decomposable, so the bounds between the others hold.
    pub fn fix(&mut self, point: Point, wanted: i64) -> i64 {
        let window = self.window(point);
        let at = window.clamp(wanted);
        for other in 0..self.n {
            let after = self.most[point * self.n + other];
            let before = self.most[other * self.n + point];
            if after < FREE / 2 {
                self.latest[other] = self.latest[other].min(at + after);
            }
            if before < FREE / 2 {
                self.earliest[other] = self.earliest[other].max(at - before);
            }
        }
        at
    }
}

impl Window {
    /// `wanted`, or the end of the window that is nearer to it.
    pub fn clamp(self, wanted: i64) -> i64 {
        let wanted = self.latest.map_or(wanted, |latest| wanted.min(latest));
        self.earliest.map_or(wanted, |earliest| wanted.max(earliest))
    }
}
