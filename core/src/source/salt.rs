//! Documents behind `quantity`, `salt` and `brine`.

use super::{Source, Standing};

sources! {
    /// Spoons, cups, pounds, ounces.
    UNITS = "units", "NIST", "Handbook 44, Appendix C, and SP 811, Appendix B", "", "definitions", SeenSecondary;
    /// Spoons on US nutrition labels.
    LABEL_SPOONS = "label-spoons", "US FDA", "21 CFR 101.9(b)(5)(viii): teaspoon 5 mL, tablespoon 15 mL, cup 240 mL", "", "", SeenSecondary;
    /// Gas marks.
    GAS_MARK = "gas-mark", "British gas cookers", "mark 1 is 275 °F, each mark 25 °F; 1/2 and 1/4 are 250 and 225 °F", "", "", CommonPractice;
    /// Marks of French ovens.
    THERMOSTAT = "thermostat", "French ovens", "thermostat n is about n times 30 °C", "", "", CommonPractice;
    /// Ovens set by a word.
    OVEN_LEVEL = "oven-level", "common practice", "a low, medium or high oven is about 300, 350 or 425 °F (150, 180 or 220 °C)", "", "", CommonPractice;
    /// A stick of butter.
    STICK = "stick", "USDA", "National Nutrient Database, butter, household measure: stick, 113 g", "SR28, 2016", "NDB 01001", Seen;

    /// Table salt, 6 g a teaspoon.
    TABLE_SALT = "table-salt", "USDA", "National Nutrient Database, salt, table: 6.0 g a teaspoon", "SR28, 2016", "NDB 02047", Seen;
    /// Kosher salt over its makers.
    KOSHER_SALT = "kosher-salt", "compiled package labels", "kosher salt: 2.8 g (flake) to 4.8 g (coarse) a teaspoon", "", "", SeenSecondary;
    /// Sea salt over its kinds: the grams a teaspoon taken lie inside this range.
    SEA_SALT = "sea-salt", "compiled package labels", "sea salt: 4.0 to 6.0 g a teaspoon; 5.5 taken for fine, 5.0 for coarse", "", "", CommonPractice;
    /// Pickling salt.
    PICKLING_SALT = "pickling-salt", "common practice", "pickling salt packs a little closer than table salt: 6.2 g a teaspoon", "", "", CommonPractice;
    /// Table salt for flake salt.
    HALF_AS_MUCH_TABLE = "half-as-much-table", "common practice", "half as much table salt as flake kosher", "", "", CommonPractice;
    /// Coarse kosher for flake salt.
    A_QUARTER_LESS_COARSE = "a-quarter-less-coarse", "common practice", "about a quarter less coarse kosher than flake kosher; by mass it is 40 % less", "", "", CommonPractice;

    /// The usual dose and where it goes.
    DRY_SALTING = "dry-salting", "common practice", "a 12.7 lb bird takes 8 tsp of flake kosher: 3 in the cavity, 1 a breast, 1/2 a thigh and drumstick, 1 on the skin", "", "", CommonPractice;
    /// Light and bold doses.
    SALT_STRENGTHS = "salt-strengths", "common practice", "light two thirds, bold one and a half times the usual dose", "", "", CommonPractice;
    /// Published amount and time limit.
    SALTING_GUIDANCE = "salting-guidance", "USDA FSIS", "dry brine 1 tbsp of kosher salt for 5 lb; wet brine 3/4 cup of table salt a gallon; at most 48 h", "video transcript", "", Seen;
    /// Baking powder and pepper, grams and sodium a spoon.
    SKIN_MIX = "skin-mix", "USDA", "National Nutrient Database, baking powder and black pepper", "SR28, 2016", "NDB 18369, 18370, 02030", Seen;
    /// Added solution.
    ADDED_SOLUTION = "added-solution", "US Code of Federal Regulations", "9 CFR 381.169: a basted whole bird holds about 3 % of solution; 381.117(h): the label says how much", "", "", SeenSecondary;
    /// What is done with a bird that has some.
    SALTED_BY_THE_PACKER = "salted-by-the-packer", "common practice", "no salt from 5 % of solution on, a light dose below", "", "", CommonPractice;
    /// How salty the solution is.
    SOLUTION_STRENGTH = "solution-strength", "Carvetime", "a packer's solution taken as 2 to 6 % of salt; labels seldom say", "", "", FromMemory;

    /// Sodium in salt.
    SODIUM_IN_SALT = "sodium-in-salt", "IUPAC", "atomic weights: sodium is 39.34 % of NaCl", "", "", Derived;
    /// Daily value.
    SODIUM_DAILY_VALUE = "sodium-daily-value", "US FDA", "21 CFR 101.9(c)(9): 2300 mg of sodium a day", "since 2016", "", SeenSecondary;
    /// Sodium of the meat itself.
    NATURAL_SODIUM = "natural-sodium", "USDA", "National Nutrient Database, roasted meat and skin", "SR28, 2016", "NDB 05009, 05112, 05140, 05147, 05166, 05192, 05733", Seen;
    /// What stays of the salt in roasting.
    SALT_THAT_STAYS = "salt-that-stays", "Carvetime", "sodium kept from raw to roasted by USDA SR28 weights: 70 % (turkey), 90 % (with solution); 60 to 100 % taken", "", "", Derived;
    /// How fast salt wanders.
    SALT_IN_MUSCLE = "salt-in-muscle", "Springer", "Water Stress in Biological, Chemical, Pharmaceutical and Food Systems: NaCl in pork loin at 4 to 6 °C, 1.9e-10 ± 0.28e-10 m²/s", "2015", "ch. 47, abstract", Seen;

    /// Weight of brine.
    BRINE_DENSITY = "brine-density", "Lange's Handbook of Chemistry", "specific gravity of NaCl solutions at 15 °C, a parabola through the table", "15th ed.", "Table 5.13", Derived;
    /// How much brine and what vessel.
    BRINE_VOLUME = "brine-volume", "common practice", "1 to 1.3 L of brine a kilogram of bird, in a vessel of two and a half litres a kilogram", "", "", CommonPractice;
    /// How long in brine.
    BRINE_TIME = "brine-time", "common practice", "half an hour to an hour a pound", "", "", CommonPractice;
}
