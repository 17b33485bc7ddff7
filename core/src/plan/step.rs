//! The jobs between the shop and the last leftover, by the contract's names.

/// A job.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Step {
    /// Buy the bird.
    Buy,
    /// Start thawing.
    Thaw,
    /// Change the thawing water.
    Water,
    /// Salt it.
    Salt,
    /// The salted rest in the fridge begins.
    Rest,
    /// Out of the fridge: dry, pierce, butter.
    Temper,
    /// Light the fire or heat the oven.
    Fire,
    /// Bird on.
    On,
    /// Read the thermometers.
    Check,
    /// Off the heat.
    Pull,
    /// The rest after the heat.
    Stand,
    /// Carve.
    Carve,
    /// Into the fridge. In a plan cooked ahead `nth` 0 is the carved bird, 1 what is left after dinner.
    Chill,
    /// Pack it cold; `nth` 1 is wrapping it hot.
    Pack,
    /// Leave for the other house.
    Travel,
    /// Reheat.
    Reheat,
    /// Serve.
    Serve,
    /// Last day of the leftovers.
    Leftovers,
    /// Start a dish that goes with the bird; `nth` is its place in the order.
    Dish,
}

impl Step {
    /// Someone has to do something; the rest and the stand run by themselves.
    pub fn needs_hands(self) -> bool {
        !matches!(self, Self::Rest | Self::Stand)
    }

    /// Left undone or late, someone may get ill or hurt: called again, and not held back by quiet hours.
    pub fn is_safety(self) -> bool {
        matches!(
            self,
            Self::Water | Self::Check | Self::Pull | Self::Chill | Self::Pack | Self::Reheat | Self::Leftovers
        )
    }
}

names!(Step {
    Buy => "buy",
    Thaw => "thaw",
    Water => "water",
    Salt => "salt",
    Rest => "rest",
    Temper => "temper",
    Fire => "fire",
    On => "on",
    Check => "check",
    Pull => "pull",
    Stand => "stand",
    Carve => "carve",
    Chill => "chill",
    Pack => "pack",
    Travel => "travel",
    Reheat => "reheat",
    Serve => "serve",
    Leftovers => "leftovers",
    Dish => "dish",
});
