//! A value known only as lying between two others.

/// From `low` to `high`, both included.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Range<T> {
    /// The least.
    pub low: T,
    /// The most.
    pub high: T,
}

impl<T: PartialOrd + Copy> Range<T> {
    /// From `low` to `high`.
    pub const fn new(low: T, high: T) -> Self {
        Self { low, high }
    }

    /// Just `value`.
    pub const fn exactly(value: T) -> Self {
        Self { low: value, high: value }
    }

    /// Whether `value` lies in it.
    pub fn holds(&self, value: T) -> bool {
        self.low <= value && value <= self.high
    }
}
