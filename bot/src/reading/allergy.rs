//! "My niece is allergic to milk", "Tom is celiac", "is the turkey gluten free?": who at the table can't have what.
//!
//! Owns no word: see the `talk-allerg-` entries of the lexicon. A tongue that swells is read before ([`super::peril`]), and whoever is
//! allergic to cats eats everything.

use super::lexicon::Lexicon;
use super::told::Told;

/// Longer texts tell a story.
const LONGEST: usize = 200;

/// What somebody can't have.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Allergen {
    /// Milk and what is made of it.
    Milk,
    /// Wheat and its kin.
    Gluten,
    /// Nuts and peanuts.
    Nuts,
    /// Eggs.
    Egg,
    /// Another food.
    Other,
}

impl Allergen {
    /// All of them.
    pub const ALL: [Self; 5] = [Self::Milk, Self::Gluten, Self::Nuts, Self::Egg, Self::Other];

    /// The stable name.
    pub fn name(self) -> &'static str {
        match self {
            Self::Milk => "milk",
            Self::Gluten => "gluten",
            Self::Nuts => "nuts",
            Self::Egg => "egg",
            Self::Other => "other",
        }
    }

    /// The food itself, and the phrases that name who can't have it in one.
    fn groups(self) -> (&'static str, &'static str) {
        match self {
            Self::Milk => ("allergen-milk", "allergy-milk"),
            Self::Gluten => ("allergen-gluten", "allergy-gluten"),
            Self::Nuts => ("allergen-nuts", "allergy-nuts"),
            Self::Egg => ("allergen-egg", "allergy-egg"),
            Self::Other => ("allergen-other", "allergy-other"),
        }
    }
}

/// Reads them; none for everything else.
pub fn read_allergies(text: &str, lexicon: &'static Lexicon) -> Vec<Allergen> {
    let told = Told::of(text, lexicon);
    if text.chars().count() > LONGEST || told.says("allergic-not") {
        return Vec::new();
    }
    let allergic = told.says("allergic");
    let means = |allergen: &Allergen| {
        let (food, whole) = allergen.groups();
        told.says(whole) || allergic && told.says(food)
    };
    Allergen::ALL.into_iter().filter(means).collect()
}
