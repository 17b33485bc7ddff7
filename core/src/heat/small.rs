//! Linear algebra of a dozen unknowns: symmetric matrices, Cholesky.
//!
//! Owns nothing else. A crate for this would be larger than the forecast.

use super::prior::UNKNOWNS;

/// One value an unknown.
pub type Vector = [f64; UNKNOWNS];
/// A symmetric matrix of the unknowns.
pub type Matrix = [[f64; UNKNOWNS]; UNKNOWNS];

/// A matrix of nothing.
pub const ZERO: Matrix = [[0.0; UNKNOWNS]; UNKNOWNS];

/// Lower Cholesky factor; a matrix that is not positive definite is lifted on its diagonal until it is.
pub fn cholesky(matrix: &Matrix) -> Matrix {
    let mut lift = 0.0;
    loop {
        if let Some(factor) = try_cholesky(matrix, lift) {
            return factor;
        }
        let largest = (0..UNKNOWNS).map(|i| matrix[i][i].abs()).fold(1e-12, f64::max);
        lift = if lift == 0.0 { 1e-12 * largest } else { lift * 10.0 };
        if !lift.is_finite() {
            // Only reached with numbers that are no numbers: the unit matrix keeps what follows finite.
            let mut unit = ZERO;
            (0..UNKNOWNS).for_each(|i| unit[i][i] = 1.0);
            return unit;
        }
    }
}

fn try_cholesky(matrix: &Matrix, lift: f64) -> Option<Matrix> {
    let mut factor = ZERO;
    for i in 0..UNKNOWNS {
        for j in 0..=i {
            let dot: f64 = (0..j).map(|k| factor[i][k] * factor[j][k]).sum();
            let rest = matrix[i][j] - dot;
            if i == j {
                let rest = rest + lift;
                if rest.is_nan() || rest <= 0.0 {
                    return None;
                }
                factor[i][i] = rest.sqrt();
            } else {
                factor[i][j] = rest / factor[j][j];
            }
        }
    }
    Some(factor)
}

/// Solves `factor factorᵀ x = right`.
pub fn solve(factor: &Matrix, right: &Vector) -> Vector {
    let mut x = *right;
    for i in 0..UNKNOWNS {
        let dot: f64 = (0..i).map(|k| factor[i][k] * x[k]).sum();
        x[i] = (x[i] - dot) / factor[i][i];
    }
    for i in (0..UNKNOWNS).rev() {
        let dot: f64 = (i + 1..UNKNOWNS).map(|k| factor[k][i] * x[k]).sum();
        x[i] = (x[i] - dot) / factor[i][i];
    }
    x
}

/// Inverse of a symmetric positive matrix.
pub fn inverse(matrix: &Matrix) -> Matrix {
    let factor = cholesky(matrix);
    let mut out = ZERO;
    for i in 0..UNKNOWNS {
        let mut unit = [0.0; UNKNOWNS];
        unit[i] = 1.0;
        out[i] = solve(&factor, &unit);
    }
    out
}

/// Matrix times vector.
pub fn apply(matrix: &Matrix, vector: &Vector) -> Vector {
    let mut out = [0.0; UNKNOWNS];
    for (out, row) in out.iter_mut().zip(matrix) {
        *out = dot(row, vector);
    }
    out
}

/// Inner product.
pub fn dot(a: &Vector, b: &Vector) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}
