//! What somebody with an allergy leaves of a roast dinner, and what stands in for it. The label decides, and after it they themselves or
//! their doctor: every answer says so.

use super::answer::Answer;
use crate::reading::Allergen;
use crate::words::Text;
use carvetime_core::source;

/// The answer.
pub(super) fn answer(allergens: &[Allergen]) -> Answer {
    let line = |allergen: &Allergen| match allergen {
        Allergen::Milk => Some(Text::new("ask-allergy-milk")),
        Allergen::Gluten => Some(Text::new("ask-allergy-gluten")),
        Allergen::Nuts => Some(Text::new("ask-allergy-nuts")),
        Allergen::Egg => Some(Text::new("ask-allergy-egg")),
        Allergen::Other => None,
    };
    let answer = allergens.iter().filter_map(line).fold(Answer::new("allergies"), Answer::say);
    answer.say(Text::new("ask-allergy-label")).from(source::ALLERGENS).from(source::ADDED_SOLUTION)
}
