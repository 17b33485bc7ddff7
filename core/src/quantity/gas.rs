//! Marks of British gas ovens and of French ovens. Scales: [`crate::source::GAS_MARK`], [`crate::source::THERMOSTAT`].

use super::{Temperature, celsius, fahrenheit, in_fahrenheit};

/// Temperature of a mark on the dial: 1/4, 1/2 and 1 to 10; none between or beyond.
pub fn gas_mark(mark: f64) -> Option<Temperature> {
    let f = match mark {
        0.25 => 225.0,
        0.5 => 250.0,
        m if (1.0..=10.0).contains(&m) && m.fract() == 0.0 => 250.0 + 25.0 * m,
        _ => return None,
    };
    Some(fahrenheit(f))
}

/// Temperature of a mark on a French dial: 1 to 10, halves between; none beyond.
pub fn thermostat(mark: f64) -> Option<Temperature> {
    ((1.0..=10.0).contains(&mark) && (2.0 * mark).fract() == 0.0).then(|| celsius(30.0 * mark))
}

/// The mark nearest to `temperature`, none more than half a mark off the dial.
pub fn nearest_gas_mark(temperature: Temperature) -> Option<f64> {
    let f = in_fahrenheit(temperature);
    if !(212.5..=512.5).contains(&f) {
        return None;
    }
    Some(match ((f - 250.0) / 25.0).round() {
        m if m >= 1.0 => m,
        0.0 => 0.5,
        _ => 0.25,
    })
}
