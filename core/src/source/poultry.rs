//! Documents behind `bird`, `thaw`, `roast`, `safety` and `lethality`.

use super::{Source, Standing};

sources! {
    /// Pounds of turkey a person.
    TURKEY_PORTIONS = "turkey-portions", "USDA FSIS", "Countdown to the Thanksgiving Holiday", "", "size chart", Seen;
    /// Pounds of chicken a serving.
    CHICKEN_PORTIONS = "chicken-portions", "Purdue University, 4-H Foods", "Purchasing Poultry", "", "", Seen;
    /// A big turkey carries more meat a pound: 3/4 lb a serving above 12 lb.
    BIG_TURKEY_PORTION = "big-turkey-portion", "household buying guide", "general guidance quoted in a household guide", "2009", "", SeenSecondary;
    /// Duck, goose, capon, children, leftovers.
    PORTION_HABITS = "portion-habits", "common practice", "a child eats about half; leftovers take a quarter to a half more; duck and goose 1 to 1½ lb a person", "", "", CommonPractice;
    /// Usual masses at the shop.
    USUAL_MASSES = "usual-masses", "common practice", "masses at which the kinds are sold", "", "", CommonPractice;
    /// Cooked edible share, turkey and turkey breast.
    TURKEY_YIELD = "turkey-yield", "USDA", "Food Buying Guide for Child Nutrition Programs, PA-1331", "", "average of four methods; quoted in a trade manual", SeenSecondary;
    /// Whole-bird figures worked out from composition tables.
    TURKEY_YIELD_SR28 = "turkey-yield-sr28", "USDA", "National Nutrient Database, edible cooked over raw total from weights and refuse", "SR28, 2016", "whole turkey", Derived;
    /// Cooked edible share, chicken, duck, goose.
    POULTRY_YIELD_SR28 = "poultry-yield-sr28", "USDA", "National Nutrient Database, cooked edible from one pound ready to cook", "SR28, 2016", "household weights", Seen;

    /// Thawing of a turkey by weight, in the refrigerator and in cold water.
    TURKEY_THAWING = "turkey-thawing", "USDA FSIS", "turkey thawing table", "current", "24 h for each 4 to 5 lb; 30 min a pound in water", Seen;
    /// Thawing in general, water changes, cooking from frozen.
    BIG_THAW = "big-thaw", "USDA FSIS", "The Big Thaw: Safe Defrosting Methods", "2013-06-15", "", SeenSecondary;
    /// Thawing a duck.
    DUCK_THAWING = "duck-thawing", "USDA FSIS", "Duck and Goose from Farm to Table", "quoted in a newspaper, 2019", "", SeenSecondary;
    /// Other birds thaw at the turkey's rate; a chicken takes a day or two.
    THAWING_BY_RATE = "thawing-by-rate", "common practice", "other birds thaw at the turkey's rate, a small one in a day or two", "", "", CommonPractice;
    /// Part-thawed birds.
    PART_THAWED = "part-thawed", "common practice", "a bird half thawed needs a quarter to three quarters of the whole time", "", "", CommonPractice;

    /// Roasting a turkey at 325 °F.
    TURKEY_TIMETABLE = "turkey-timetable", "USDA FSIS / foodsafety.gov", "turkey roasting timetable at 325 °F, thawed or fresh", "current", "", Seen;
    /// Roasting a turkey from frozen.
    FROZEN_TIMETABLE = "frozen-timetable", "USDA FSIS / foodsafety.gov", "turkey roasting timetable from frozen", "", "copy on an unattributed page", SeenSecondary;
    /// Roasting chicken, capon, duck, goose.
    POULTRY_TIMETABLE = "poultry-timetable", "foodsafety.gov", "Meat and Poultry Roasting Charts", "reviewed 2023-09-21", "poultry", Seen;
    /// Time goes with mass to the power 2/3.
    MASS_LAW = "mass-law", "AIP Advances 11, 115316", "cooking time goes with mass to the power 2/3", "2021", "used only outside the timetable's weights", Seen;
    /// Other settings than the timetable's.
    SETTING_LAW = "setting-law", "Carvetime", "time from 40 to 165 °F in air at T goes with ln((T-40)/(T-165))", "", "fitted to nothing published; spread stated with each estimate", Derived;
    /// Fan oven.
    FAN_OVEN = "fan-oven", "common practice", "a fan oven is 10 to 15 % quicker", "", "", CommonPractice;
    /// Smoker at 325 to 350 °F.
    HOT_SMOKER = "hot-smoker", "common practice", "a 12.7 lb turkey takes 2½ to 3 h in a smoker at 325 to 350 °F", "", "", CommonPractice;
    /// Smoker at about 250 °F.
    LOW_SMOKER = "low-smoker", "common practice", "25 to 30 min a pound in a smoker at 250 °F", "", "", CommonPractice;
    /// Fuel by the hour.
    FUEL = "fuel", "common practice", "an hour at 325 °F takes 0.4 to 0.7 kg of charcoal, 1 to 1½ lb of propane or 1 to 2 lb of pellets", "", "", CommonPractice;
    /// Stuffing and gravy a person.
    SIDES = "sides", "common practice", "a person eats ½ to ¾ cup of stuffing and ⅓ to ½ cup of gravy", "", "", CommonPractice;
    /// Basting.
    BASTING = "basting", "common practice", "basting wets the skin and cools the oven at every opening", "", "", CommonPractice;
    /// A thermometer that stands still.
    STALL = "stall", "common practice", "in a low smoker a bird stands still while its skin is wet; a hotter pit or foil ends it", "", "", CommonPractice;
    /// Use-by dates.
    USE_BY = "use-by", "UK Food Standards Agency", "Best before and use-by dates", "", "", FromMemory;
    /// Sell-by dates.
    SELL_BY = "sell-by", "USDA FSIS", "Food Product Dating", "", "", FromMemory;
    /// What a spoiled bird is like.
    SPOILED = "spoiled", "common practice", "a sour or rotten smell and a slimy skin mean spoiled; a faint smell from a sealed bag airs off", "", "", CommonPractice;
    /// Kinds of thermometer, and the check in ice water.
    THERMOMETERS = "thermometers", "USDA FSIS", "Food Thermometers", "updated 2025-03-21", "ice water 32 °F", SeenSecondary;
    /// Cutting it up.
    CARVING = "carving", "common practice", "legs first, then each breast off the bone in one piece and across into slices", "", "", CommonPractice;
    /// Around the roasting pan.
    ROASTING_HABITS = "roasting-habits", "common practice", "breast up, on a rack or on vegetables, untied or loosely tied, a cup of water in the pan, in an oven that is hot", "", "", CommonPractice;
    /// Crisp skin.
    SKIN_HABITS = "skin-habits", "common practice", "skin dried uncovered in the fridge and thinly oiled crisps best", "", "", CommonPractice;
    /// Salting by water or dry.
    BRINING_HABITS = "brining-habits", "common practice", "dry salting does what a wet brine does, with less room; salt does not get into ice, and need not be rinsed off", "", "", CommonPractice;
    /// Fire and smoke.
    SMOKE_HABITS = "smoke-habits", "common practice", "mild wood, thin bluish smoke, the bird beside the fire; wind and frost take heat", "", "", CommonPractice;
    /// Gravy and broth.
    GRAVY_HABITS = "gravy-habits", "common practice", "as much flour as fat for gravy; bones simmer 2 to 3 h for broth", "", "", CommonPractice;
    /// Timers that pop.
    POP_UP_TIMERS = "pop-up-timers", "USDA FSIS", "pop-up timers are to be checked with a thermometer", "", "", FromMemory;
    /// Giblets that were roasted in their bag.
    GIBLET_BAG = "giblet-bag", "USDA FSIS", "Giblets and Food Safety", "", "paper is no harm; plastic that melted or changed its shape is", FromMemory;
    /// Bags to roast in.
    OVEN_BAGS = "oven-bags", "USDA FSIS", "oven bags by their maker's directions; no brown paper bags", "", "", FromMemory;
    /// Bones for dogs and cats.
    BONES_FOR_PETS = "bones-for-pets", "US FDA", "no bones for pets: cooked ones splinter", "", "", FromMemory;
    /// A cooler instead of a fridge.
    COOLER = "cooler", "common practice", "a cooler with ice and a thermometer stands in for a full fridge", "", "", CommonPractice;
    /// Salting of kosher meat.
    KOSHERING = "koshering", "common practice", "kosher birds are soaked, salted and rinsed before they are sold", "", "", CommonPractice;
    /// A bird opened flat.
    FLAT_BIRD = "flat-bird", "common practice", "a bird opened flat takes 60 to 65 % of the time", "", "", CommonPractice;
    /// A bird in pieces.
    PIECES = "pieces", "common practice", "pieces take about half the time of the whole bird", "", "", CommonPractice;
    /// Stuffing in a bird that is not a turkey.
    STUFFED_OTHER = "stuffed-other", "USDA FSIS", "stuffed: 15 to 30 minutes more", "", "", FromMemory;
    /// How wide the estimates are.
    SYNTHETIC_COOKS = "synthetic-cooks", "Carvetime", "sixty synthetic cooks from a detailed heat model, not measured on real birds: used for spreads and a check of bias", "", "", Derived;
    /// Smoker air range.
    SMOKER_RANGE = "smoker-range", "USDA FSIS", "grilling and smoking guidance", "2012", "225 to 300 °F", SeenSecondary;
    /// Smoking needs a thawed bird.
    SMOKING = "smoking", "USDA FSIS", "Smoking Meat and Poultry", "", "", Seen;

    /// Time and temperature for seven decades of Salmonella, turkey.
    LETHALITY_TURKEY = "lethality-turkey", "USDA FSIS", "Cooking Guideline for Meat and Poultry Products (Revised Appendix A), FSIS-GD-2021-14", "December 2021", "Table 4, p. 38", Seen;
    /// Time and temperature for seven decades of Salmonella, chicken.
    LETHALITY_CHICKEN = "lethality-chicken", "USDA FSIS", "Cooking Guideline for Meat and Poultry Products (Revised Appendix A), FSIS-GD-2021-14", "December 2021", "Table 3, p. 37", Seen;
    /// The rule for other birds and unknown fat.
    LETHALITY_RULES = "lethality-rules", "USDA FSIS", "Cooking Guideline for Meat and Poultry Products (Revised Appendix A), FSIS-GD-2021-14", "December 2021", "p. 36; key question after p. 39", Seen;
    /// Seven decades, and one of growth, for plants.
    CFR_381_150 = "cfr-381-150", "USDA FSIS", "9 CFR 381.150", "", "(a)(1), (a)(2)", Seen;
    /// 165 °F.
    SAFE_MINIMUM = "safe-minimum", "USDA FSIS", "Safe Minimum Internal Temperature Chart", "updated 2025-04-14", "", SeenSecondary;
    /// Where to measure, oven minimum.
    ROASTING_CHARTS = "roasting-charts", "foodsafety.gov", "Meat and Poultry Roasting Charts", "reviewed 2023-09-21", "notes", Seen;
    /// 40 to 140 °F, two hours, one hour.
    DANGER_ZONE = "danger-zone", "USDA FSIS", "Danger Zone (40 °F - 140 °F)", "updated 2023-06-28", "", SeenSecondary;
    /// Warming up over low heat.
    SLOW_WARMING = "slow-warming", "common practice", "over low heat a whole bird passes from 40 to 140 °F within four hours", "", "no authority's figure for a kitchen", CommonPractice;
    /// Fridge and freezer temperatures.
    FOUR_STEPS = "four-steps", "foodsafety.gov", "4 Steps to Food Safety", "2023-09-18", "Chill", SeenSecondary;
    /// Cooling, holding, reheating in a business.
    FOOD_CODE = "food-code", "US FDA", "Food Code", "2022 and 2026 (same figures)", "chapter 3", SeenSecondary;
    /// Leftovers, reheating, gravy.
    LEFTOVERS = "leftovers", "USDA FSIS", "Leftovers and Food Safety", "updated 2020-07-31", "", SeenSecondary;
    /// Keeping times raw and cooked.
    COLD_STORAGE = "cold-storage", "foodsafety.gov", "Cold Food Storage Chart", "", "", Seen;
    /// Keeping times of gravy, stuffing, giblets.
    COLD_STORAGE_COUNTY = "cold-storage-county", "USDA", "food storage chart", "", "county health department copy", SeenSecondary;
    /// Keeping times of frozen cooked turkey.
    COLD_STORAGE_RETAILER = "cold-storage-retailer", "foodsafety.gov", "what to do with leftovers", "", "quoted by a retailer", SeenSecondary;
    /// Stuffing keeps 1 to 2 days.
    STUFFING_SAFELY = "stuffing-safely", "University of Illinois Extension", "Stuffing Safely", "", "", Seen;
    /// Stuffing, and the stand.
    TURKEY_STUFFING = "turkey-stuffing", "USDA", "Turkey Basics: Stuffing", "hotline text", "", SeenSecondary;
    /// Duck and goose, raw.
    DUCK_GOOSE = "duck-goose", "USDA FSIS", "Duck and Goose from Farm to Table", "", "", SeenSecondary;
    /// The stand before carving.
    TURKEY_ROASTING = "turkey-roasting", "USDA FSIS", "turkey roasting guidance", "", "", SeenSecondary;
    /// Buying and freezing a turkey.
    TURKEY_BUYING = "turkey-buying", "USDA FSIS", "turkey buying guidance", "", "", SeenSecondary;
    /// Buying fresh.
    COUNTDOWN = "countdown", "USDA FSIS", "Countdown to the Thanksgiving Holiday", "", "", Seen;
    /// Charcoal and carbon monoxide.
    CHARCOAL = "charcoal", "US CPSC", "charcoal grill safety", "reported 2021", "", SeenSecondary;
    /// Fire in an oven or a pan.
    OVEN_FIRE = "oven-fire", "Pennsylvania Office of the State Fire Commissioner", "Kitchen Fire Safety", "", "oven off, door shut, no water on grease; lid on a pan", Seen;
    /// A smell of gas.
    GAS_SMELL = "gas-smell", "Pennsylvania Public Utility Commission", "Gas Emergencies", "", "out at once, no switches, no flame, no call from inside", Seen;
    /// An alarm for carbon monoxide.
    CARBON_MONOXIDE = "carbon-monoxide", "US CPSC; CDC", "out into fresh air at once, call from there, nobody back in before the service says so", "", "", FromMemory;
    /// A burn or scald.
    BURN = "burn", "NHS", "Burns and scalds", "", "cool running water for 20 minutes, no ice, no butter", FromMemory;
    /// Someone who chokes.
    CHOKING = "choking", "American Red Cross; NHS", "five back blows, five abdominal thrusts; for a baby chest thrusts", "", "", FromMemory;
    /// Someone who has passed out.
    UNCONSCIOUS = "unconscious", "American Red Cross; NHS", "breathing: onto their side; not breathing normally: chest compressions, 100 to 120 a minute", "", "", SeenSecondary;
    /// An allergic reaction that closes the throat.
    ANAPHYLAXIS = "anaphylaxis", "Anaphylaxis UK; NHS", "What to do in an emergency", "", "auto-injector into the outer thigh at once, lie flat with the legs raised, a second one after 5 minutes", SeenSecondary;
    /// A fridge or a freezer without power, or too warm.
    POWER_OUTAGE = "power-outage", "USDA FSIS", "food safety in a power outage", "quoted by a news agency, 2012-08-28", "a fridge 4 h unopened, a freezer 48 h full and 24 h half full; above 40 °F for 2 h: discard; ice crystals or 40 °F: fine", SeenSecondary;
    /// Never cooked in two goes.
    PART_COOKED = "part-cooked", "USDA FSIS", "never brown or partially cook poultry to finish later", "", "", FromMemory;
    /// Signs of food poisoning that want a doctor.
    FOOD_POISONING = "food-poisoning", "CDC", "Food Poisoning Symptoms", "", "severe symptoms", FromMemory;
    /// A cook with a stomach bug.
    SICK_COOK = "sick-cook", "CDC", "How to Prevent Norovirus", "", "no food for others while sick and for two days after; no hand gel in place of soap", FromMemory;
    /// A cut hand over food.
    CUT_HAND = "cut-hand", "US FDA; NHS", "a cut is cleaned and covered, with a glove over it; a doctor where it is deep or bleeds for 10 minutes under pressure", "", "", FromMemory;
    /// Numbers to call.
    EMERGENCY_NUMBERS = "emergency-numbers", "European Union 112; United States, Canada and Mexico 911; United Kingdom 999; Brazil 193 fire, 192 ambulance (SAMU); Australia 000; New Zealand 111", "numbers of the fire and ambulance services", "", "", FromMemory;
    /// Frying.
    FRYING = "frying", "FEMA / USDA", "turkey fryer safety", "", "", SeenSecondary;
    /// Washing raw birds.
    WASHING = "washing", "USDA", "Washing Raw Poultry: Our Science, Your Choice", "2019-08-20", "", SeenSecondary;
    /// Hands and surfaces.
    HANDS = "hands", "USDA FSIS", "Washing Food: Does It Promote Food Safety?", "", "", SeenSecondary;
    /// Raw bird on the lowest shelf.
    LOWEST_SHELF = "lowest-shelf", "CDC; USDA", "Chicken and Food Poisoning", "", "", SeenSecondary;
    /// Groups at higher risk.
    VULNERABLE = "vulnerable", "CDC; UK FSA", "people at increased risk", "", "", SeenSecondary;
    /// What is left in pregnancy, and by others at more risk.
    NOT_IN_PREGNANCY = "not-in-pregnancy", "NHS; British Nutrition Foundation", "What should I avoid when pregnant?", "", "pâté and liver, raw-milk and mould-ripened cheese, raw eggs, raw or pink meat, raw shellfish", SeenSecondary;
    /// What small children are given, and what not.
    LITTLE_ONES = "little-ones", "NHS", "Foods to avoid giving babies and young children", "", "no added salt; no whole nuts under 5; round food cut up", SeenSecondary;
    /// What makes most allergies, and where it hides.
    ALLERGENS = "allergens", "USDA FSIS", "Allergens and Ingredients of Public Health Concern", "November 2015", "declared on the label; kept apart", SeenSecondary;
    /// Cooking high up.
    ALTITUDE = "altitude", "USDA FSIS", "high altitude cooking", "video script", "", Seen;
    /// No oven below 325 °F.
    LOW_OVEN = "low-oven", "USDA FSIS", "Danger Zone (40 °F - 140 °F)", "updated 2023-06-28", "overnight cooking", SeenSecondary;
    /// Colour is no sign.
    COLOUR = "colour", "USDA FSIS; UK FSA", "Cooking your food", "2017-12-18", "", SeenSecondary;
    /// Slow cookers.
    SLOW_COOKERS = "slow-cookers", "USDA FSIS", "Slow Cookers and Food Safety", "", "", SeenSecondary;
    /// UK: cooking.
    UK_COOKING = "uk-cooking", "UK FSA", "Cooking your food", "2017-12-18", "", SeenSecondary;
    /// UK: chilling and thawing.
    UK_CHILLING = "uk-chilling", "UK FSA", "How to chill, freeze and defrost food safely", "2017-12-18", "", SeenSecondary;
    /// UK: thawing a turkey.
    UK_THAWING = "uk-thawing", "UK FSA", "Christmas food safety", "", "10 to 12 h a kilogram at 4 °C", SeenSecondary;
    /// UK: holding in a business.
    UK_TEMPERATURE = "uk-temperature", "UK FSA", "Guidance on Temperature Control Legislation in the UK", "May 2016", "summary", SeenSecondary;
    /// UK: hot holding by law.
    UK_LAW = "uk-law", "UK", "Food Hygiene Regulations 2006 (Wales, Scotland)", "2006", "Schedule 4", Seen;
    /// Canada: end points.
    CANADA_COOKING = "canada-cooking", "Health Canada", "Safe internal cooking temperatures", "", "", SeenSecondary;
    /// Canada: cooked poultry on sale.
    CANADA_LAW = "canada-law", "Canada", "Food and Drug Regulations, C.R.C., c. 870", "", "B.22.026", Seen;
}
