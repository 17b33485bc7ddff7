//! Ovens set by a word: low, medium, high.

use crate::quantity::{Temperature, celsius, fahrenheit};

/// How hot an oven is in the words of cookbooks and of dials without figures.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum OvenLevel {
    /// A low, or slow, oven.
    Low,
    /// A medium, or moderate, oven.
    Medium,
    /// A high, or hot, oven.
    High,
}

impl OvenLevel {
    /// All of them, coolest first.
    pub const ALL: [Self; 3] = [Self::Low, Self::Medium, Self::High];

    /// What a recipe means by it: 300, 350 or 425 °F, 150, 180 or 220 °C
    /// ([`OVEN_LEVEL`](crate::source::OVEN_LEVEL)). Ovens differ; the bird's thermometer decides.
    pub fn setting(self, in_celsius: bool) -> Temperature {
        match (self, in_celsius) {
            (Self::Low, false) => fahrenheit(300.0),
            (Self::Low, true) => celsius(150.0),
            (Self::Medium, false) => fahrenheit(350.0),
            (Self::Medium, true) => celsius(180.0),
            (Self::High, false) => fahrenheit(425.0),
            (Self::High, true) => celsius(220.0),
        }
    }

    /// Its stable name.
    pub fn name(self) -> &'static str {
        match self {
            Self::Low => "low",
            Self::Medium => "medium",
            Self::High => "high",
        }
    }

    /// The level of that name.
    pub fn from_name(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|level| level.name() == name)
    }
}

#[cfg(test)]
mod tests {
    use super::OvenLevel;
    use crate::quantity::in_celsius;

    #[test]
    fn both_dials_mean_about_the_same() {
        for level in OvenLevel::ALL {
            let apart = in_celsius(level.setting(true)) - in_celsius(level.setting(false));
            assert!(apart.abs() < 5.0, "{}: {apart}", level.name());
            assert_eq!(OvenLevel::from_name(level.name()), Some(level));
        }
    }
}
