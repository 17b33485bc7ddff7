//! Whether a name may be among those of a text: told at a glance, so that a reader who is not meant need not look through them.

/// The names that were added, several of them sharing a place: what is not there was not added, what is there may be another.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Glance(u128);

impl Glance {
    /// Adds a name.
    pub fn add(&mut self, name: &str) {
        self.0 |= place(name);
    }

    /// `false`: the name was not added.
    pub fn may_have(self, name: &str) -> bool {
        self.0 & place(name) != 0
    }

    /// Adds a name by its beginning.
    pub fn add_beginning(&mut self, name: &str) {
        self.0 |= beginning(name).map_or(0, place);
    }

    /// `false`: no name was added that begins so.
    pub fn may_begin(self, group: &str) -> bool {
        beginning(group).is_none_or(|group| self.0 & place(group) != 0)
    }
}

/// As much of a name as every group of names is long.
fn beginning(name: &str) -> Option<&str> {
    name.get(..3)
}

fn place(name: &str) -> u128 {
    let bytes = name.as_bytes();
    let at = |at: usize| usize::from(bytes.get(at).copied().unwrap_or_default());
    let mixed = bytes.len() * 11 + at(bytes.len() / 2) * 5 + at(bytes.len().saturating_sub(1)) * 3 + at(0);
    1 << (mixed % 128)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_was_added_is_never_missed_and_most_else_is_seen_not_to_be_there() {
        let names = ["spot-breast", "ask-how-long", "at", "bird-turkey", "é"];
        let (mut whole, mut begun) = (Glance::default(), Glance::default());
        names.iter().for_each(|name| whole.add(name));
        names.iter().for_each(|name| begun.add_beginning(name));
        assert!(names.iter().all(|name| whole.may_have(name)));
        assert!(["spot-", "ask-", "bird-", "at", ""].iter().all(|group| begun.may_begin(group)));
        let others = ["food-pie", "unit-pound", "ask-safe", "negation", "weekday-thu", "cooker-oven", "fuel-charcoal"];
        assert!(others.iter().filter(|name| whole.may_have(name)).count() <= 2);
        assert!(!begun.may_begin("food-") && !begun.may_begin("unit-"));
    }
}
