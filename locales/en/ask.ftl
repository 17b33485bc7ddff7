### Answers to quick questions. Amounts, temperatures, spans come written for the reader already.
### First the answer, then what to take care of; each line stands by itself.

ask-unknown = I can't read that as a question. Ask me about salt (2 tbsp table salt in flake kosher), times (how long does { units-example-bird } thaw), portions (how big for 11 people), safety (is { units-example-safe } for 2 minutes safe) or units ({ units-example-convert }).
ask-no-amount = That is no amount of anything. Give me one above zero, for example 2 tbsp.
ask-no-span = I need a time I can reckon with, for example 24 h.
ask-no-mark = No gas oven has that mark. They go ¼, ½ and 1 to 10, which is 225 to 500 °F.
ask-no-temperature = That is no temperature. For example: { units-example-convert }.
ask-no-substance = Spoons to weight depends on what is in them. I know salt and butter: 2 tbsp table salt in grams.
ask-no-serving = That is no serving of this bird. For example: sodium in a { units-example-bird } turkey for 11 people.
# $reason is half a sentence from the plan.
ask-impossible = That can't be: { $reason }.

# What is asked back. The reply is put behind the question.
ask-back-mass = How heavy is the bird? For example: { units-example-bird }.
ask-back-how-much = How much { $salt }? For example: 2 tbsp.
ask-back-kosher = Which kosher salt? Coarse weighs nearly twice as much a spoon as flake.
ask-back-own-salt = I don't know your salt yet. Read me its packet, for example: my salt: 1/4 tsp is 0.7 g.
ask-back-water = How much water, or how heavy is the bird? For example: { units-example-water }.
ask-back-scale = { $n } in °F or °C? It makes all the difference.
ask-back-how-long-out = How long was it out? For example: 3 hours.
ask-back-fuel-time = For how long? For example: 4 h.
ask-back-hours-3 = 3 hours
ask-back-hours-5 = 5 hours
ask-fahrenheit = °F
ask-celsius = °C

# Names inside sentences.
ask-kind-turkey = turkey
ask-kind-turkey-breast = turkey breast
ask-kind-chicken = chicken
ask-kind-capon = capon
ask-kind-duck = duck
ask-kind-goose = goose
ask-bird = { $condition ->
    [frozen] { $mass } frozen { $kind }
    [part-thawed] { $mass } part-thawed { $kind }
   *[fresh] { $mass } { $kind }
}
ask-salt-table = table salt
ask-salt-fine-sea = fine sea salt
ask-salt-pickling = pickling salt
ask-salt-flake-kosher = flake kosher salt
ask-salt-coarse-kosher = coarse kosher salt
ask-salt-coarse-sea = coarse sea salt
ask-salt-own = your own salt
ask-food-raw-whole = A raw bird
ask-food-raw-pieces = Raw pieces
ask-food-raw-duck-or-goose = A raw duck or goose
ask-food-giblets = Raw giblets
ask-food-leftovers = Cooked bird and leftovers
ask-food-cooked-pieces = Cooked slices
ask-food-cooked-in-gravy = Cooked bird in gravy
ask-food-gravy = Gravy and broth
ask-food-stuffing = Cooked stuffing
ask-food-stuffing-and-gravy = Stuffing and gravy
ask-food-soup = Soup and stew

ask-seconds = { $n } s
ask-minutes = { $n } min
ask-amount = { $unit ->
    [milligram] { $n } mg
    [gram] { $n } g
    [kilogram] { $n } kg
    [pound] { $n } lb
    [metric-pound] { $n } × 500 g
    [ounce] { $n } oz
    [stick] { $n ->
        [one] { $n } stick of butter
       *[other] { $n } sticks of butter
    }
    [pinch] { $n ->
        [one] { $n } pinch
       *[other] { $n } pinches
    }
    [second] { $n } s
    [minute] { $n } min
    [hour] { $n } h
    [day] { $n ->
        [one] { $n } day
       *[other] { $n } days
    }
    [teaspoon] { $n } tsp
    [tablespoon] { $n } tbsp
    [cup] { $n ->
        [one] { $n } cup
       *[other] { $n } cups
    }
    [fluid-ounce] { $n } fl oz
    [pint] { $n } pt
    [quart] { $n } qt
    [gallon] { $n } gal
    [milliliter] { $n } mL
    [liter] { $n } L
    [fahrenheit] { $n } °F
    [celsius] { $n } °C
    [gas-mark] gas mark { $n }
    [thermostat] thermostat { $n }
   *[other] { $n }
}

# ---- salt
ask-salt-convert = { $given } of { $from } = { $volume } of { $to } ({ $mass }).
# $rule and $mass are percentages of the volume.
ask-salt-rule-holds = Cooks' rule: { $rule } % of the volume. By mass it is { $mass } %, so the rule is fine.
ask-salt-rule-fails = Cooks' rule: { $rule } % of the volume. By mass it is { $mass } %; I go by mass.
ask-salt-weighs = { $volume } of { $salt } = { $mass }.
ask-dose = { $bird }: { $volume } of { $salt } in all ({ $mass }, { $strength ->
    [light] light
    [bold] bold
   *[usual] the usual dose
}).
ask-dose-shares = It goes: { $shares }.
ask-dose-share = { $place ->
    [cavity] { $volume } in the cavity
    [bone-side] { $volume } on the bony side
    [breast] { $count ->
        [one] { $volume } under the breast's skin
       *[other] { $volume } on each breast
    }
    [thigh] { $volume } on each thigh
    [drumstick] { $volume } on each drumstick
   *[skin] { $volume } on the skin
}
ask-dose-skin = For the skin mix it with as much pepper and, for crisp skin, baking powder.
ask-oversalt-given = { $mass } ({ $salt })
ask-oversalt-much = Yes: about { $times } times the dose. That is { $given }, and this bird takes { $dose }.
ask-oversalt-a-little = A little: that is { $given }, and this bird takes { $dose }. Leave it, and go easy on salt in the gravy.
ask-oversalt-right = No, that’s about right: { $given }, and this bird takes { $dose }.
ask-oversalt-little = No, rather little: that is { $given }, and this bird takes { $dose }.
ask-salt-enough-much = More than enough, about { $times } times the dose: that is { $given }, and this bird takes { $dose }.
ask-salt-enough-a-little = Yes, a little over: that is { $given }, and this bird takes { $dose }.
ask-salt-enough-right = Yes, that’s about right: { $given }, and this bird takes { $dose }.
ask-oversalt-double = Yes, twice the salt is too much.
ask-oversalt-fresh = Brush off now what lies on it. If you must rinse, gently and without splashing, then pat it dry and scrub the sink: rinsing spreads germs.
ask-oversalt-soaked = It has gone in by now: brush off what still lies on it, don’t rinse.
ask-oversalt-either = Within the first hour brush it off. If you must rinse, gently and without splashing, then pat it dry and scrub the sink: rinsing spreads germs. Later it has gone in: only brush.
ask-oversalt-beside = No salt in gravy or stuffing. It spoils the taste and harms nobody, except people who must avoid salt.
ask-dose-per-lb = { $volume } of { $salt } a pound of bird ({ $mass }).
ask-dose-per-kg = { $volume } of { $salt } a kilo of bird ({ $mass }).
ask-spoon-weights = { $volume } weighs: { $weights }.
ask-spoon-weight = { $mass } of { $salt }
ask-dose-rest = Then 24 h or more in the fridge, uncovered; { $longest } at most.
ask-dose-none = { $percent } % solution: the packer has salted it already. No more salt, no brine.
ask-dose-light = There is { $percent } % solution in it, so this is a light dose.
ask-brine = { $percent } % brine: { $mass } of salt in { $water } of water. That is { $volume } of { $salt }.
ask-brine-strength = { $given } % is more than cold water holds, or none at all. Above 0 to { $high } %, for example: 6 % brine for 1 gallon.
ask-brine-other = Percent of the whole brine; reckoned on the water alone it is { $percent } %.
ask-brine-time = It takes { $time }, in a pot of { $vessel }.
ask-brine-usual = { $time } for birds of { $low } to { $high }.
ask-brine-cold = Bird and brine stay at { $cold } or colder, 48 h at most.
ask-depth = After { $rest } in the fridge salt is about { $depth } mm deep ({ $low } to { $high }).
ask-depth-pork = That is where a tenth of the surface's salt has arrived. Measured in pork; nobody has published it for turkey.
ask-sodium = { $bird } with the usual salt, { $who }: about { $expected } mg of sodium ({ $low } to { $high }).
ask-sodium-one-of = { $people ->
    [one] eaten by one
   *[other] one of { $people } servings
}
ask-sodium-grams = { $mass } of cooked meat
ask-sodium-day = That is { $low } to { $high } % of a day's { $daily } mg.
ask-sodium-care = An estimate: if sodium matters for your health, ask your doctor.
ask-own = Your salt: { $teaspoon } a teaspoon, { $tablespoon } a tablespoon.
ask-own-not-plain = Sodium and weight don't fit plain salt. Check the label, for example: my salt: 1/4 tsp has 280 mg sodium.
ask-own-density = No salt is that light or heavy: a teaspoon weighs 1.5 to 8 g. Check the spoon, for example: my salt: 1/4 tsp is 0.7 g.

# ---- the bird
ask-thaw = { $bird }: { $fridge } in the fridge, or { $water } in cold water changed every { $every }.
# $at is what the person's own fridge shows, $cold the most it may.
ask-fridge-warm = Your fridge is at { $at }: above { $cold } none of that holds. Turn it colder, and check before the bird goes in.
ask-thaw-care = Thawed in the fridge it keeps { $keeps }; thawed in water, cook it at once. Never on the counter.
ask-roast = { $bird }, { $cooker ->
    [fan-oven] fan oven
    [smoker] smoker
   *[oven] oven
} at { $setting }: { $time }, most likely { $middle }.
ask-roast-done = It is done by the thermometer, not the clock: { $target } in breast, thigh and wing.
ask-roast-practice = Part of this is cooks' practice, not a published table.
ask-bird-for = { $people ->
    [one] One person: { $low } to { $high } of { $kind }.
   *[other] { $people } people: { $low } to { $high } of { $kind }.
}
ask-bird-for-exactly = { $people ->
    [one] One person: { $low } of { $kind }.
   *[other] { $people } people: { $low } of { $kind }.
}
ask-portion = { $low } to { $high } of { $kind } a person, as bought, bones and all.
ask-bird-for-several = Better { $birds } birds of { $low } to { $high } each.
ask-bird-for-leftovers = For leftovers take a quarter to a half more.
ask-people-for = { $bird } feeds { $low } to { $high }, or { $some } with leftovers.
ask-fuel = { $fuel ->
    [charcoal] Charcoal
    [propane] Propane
   *[pellets] Pellets
} for { $span } at about 325 °F: { $low } to { $high }. Cooks' practice, no table; have half as much again at hand.
ask-fuel-bottle = A full bottle holds { $bottle }.
ask-fuel-care = Outdoors only, never in a house, garage or tent.

# ---- safety
ask-lethality-enough = Yes, by the table: { $at } at the coldest spot needs { $needed }, you held { $held }.
ask-lethality-not-yet = Not yet: { $at } at the coldest spot needs { $needed }. { $missing } to go.
ask-lethality-never = No. Under { $first } no time is known to be enough. Cook it on to { $kitchen }.
ask-lethality-instant = Yes: at { $at } in the coldest spot it is safe at once.
ask-lethality-time = { $at } must hold for { $needed } at the coldest spot.
ask-lethality-go-on = Not yet: on to { $kitchen }, in the thickest breast, the innermost thigh and the wing. { $at } would have to hold for { $needed } at the coldest spot, by the table.
ask-lethality-stuffing-not = No: stuffing has to reach { $target } in its middle, and { $at } isn’t it. Meat done first? Scoop the stuffing out and bake it on.
ask-lethality-stuffing = Yes, if that is its middle: stuffing is safe at { $target }.
ask-lethality-care = For meat, with a checked thermometer; not for stuffing. Food-safety authorities tell kitchens { $kitchen } everywhere: in doubt, go by that.
ask-come-up = Don't count on it. The { $span } on the way up don't count as held, and what grew between { $low } and { $hot } isn't all undone by heat. If it was in there for more than two hours or so without steady heat, throw it out; else on to { $kitchen } everywhere.
ask-safe = { $target } in the thickest breast, the innermost thigh and the wing.
ask-safe-held = { $target } for { $hold } in the thickest breast, the innermost thigh and the wing. { $plan }, what I plan for, needs no minutes.
ask-safe-higher = I go by { $plan } in breast, thigh and wing. Health Canada says { $target } for a whole bird: to follow it, leave it in until then.
ask-safe-stuffing = Stuffing: { $target } in its middle, in the bird or beside it.
ask-safe-where = Keep the tip off the bone. Color and clear juices prove nothing.
ask-out-fine = { $out } out is still fine. { $left } left: then it is eaten, in the fridge or thrown away.
ask-out-if-cool = That holds up to { $air } around it; hotter, it is one hour in all.
ask-out-limit = Two hours out of the fridge in all, one hour above { $air }. Then it is thrown away.
ask-out-discard = Throw it away: { $out } out, and the limit is { $limit }.
ask-out-dont = Don’t: { $out } out is too long, the limit is { $limit } in all.
ask-out-why = Heating it again doesn't make it safe: some toxins stay.
# $days is one of the next two.
ask-keeps = { $food }: { $days } in the fridge.
ask-keeps-still = { $age } old is within the limit. { $food }: { $days } in the fridge.
ask-keeps-over = Throw it away: { $age } is too old. { $food }: { $days } in the fridge.
ask-keeps-that-still = { $food }: { $days } in the fridge; { $age } is within that.
ask-keeps-that-over = { $food }: { $days } in the fridge; after { $age } throw it away.
ask-days = { $n ->
    [one] { $n } day
   *[other] { $n } days
}
ask-days-range = { $low } to { $high } days
ask-months = { $n ->
    [one] { $n } month
   *[other] { $n } months
}
ask-months-range = { $low } to { $high } months
ask-keeps-care = The fridge at { $cold } or colder. If it looks or smells off, out with it.
ask-keeps-frozen = { $food }: { $months } in the freezer for quality. Frozen through, it stays safe.
ask-keeps-unknown = { $food }: I know no published time. Be careful: two hours out of the fridge at most.
ask-cooling = Into the fridge within { $limit } of leaving the heat, hot is fine, in shallow dishes, the meat off the bone.
ask-cooling-marks = From { $from } to { $middle } within 2 h, to { $cold } within 6 h in all.
ask-reheat = Reheat to { $target } all through.
ask-reheat-gravy = Bring gravy to a rolling boil.
ask-reheat-care = Covered, with a little broth. Not in a slow cooker.
ask-reheat-once = In the UK: reheat once only.
ask-refreeze = Thawed in the fridge it may be frozen again, raw or cooked. Thawed in water or a microwave, cook it first.
ask-refreeze-out = Not if it stood out more than two hours.
ask-colour = Color and clear juices prove nothing, pink or not. The thermometer decides:
ask-stand = Let it stand { $least } or more before carving, loosely covered. It gets hotter first, then cooler.
ask-oven-low = No: poultry wants an oven at { $limit } or hotter, say food-safety authorities.
ask-oven-fits = Yes, { $at } is fine. Food-safety authorities ask for { $limit } or hotter for poultry.
ask-oven = Set the oven to { $limit } or hotter: that is what food-safety authorities say for poultry.
ask-oven-level = A { $level ->
        [low] low
        [high] hot
       *[medium] medium
    } oven is about { $setting }. Ovens differ: go by the thermometer in the bird.
ask-oven-smoker = A smoker runs at { $low } to { $high }, with the bird thawed through.
# How far an oven is from its dial. $side: too hot, too cold, or nobody said which. $by is a difference: "25 °F". Both lines stand in one message.
ask-off-dial-at = { $side ->
    [cold] It runs { $by } cold: for { $setting }, set the dial to { $dial }.
   *[hot] It runs { $by } hot: for { $setting }, set the dial to { $dial }.
}
ask-off-dial-by = { $side ->
    [cold] It runs { $by } cold: set it that much higher than it should be.
   *[hot] It runs { $by } hot: set it that much lower than it should be.
}
ask-off-dial = { $side ->
    [cold] Then set it higher, by as much as it falls short.
    [hot] Then set it lower, by as much as it runs over.
   *[some] If it runs hot, set it that much lower; if cold, that much higher.
}
ask-off-dial-thermometer = An oven thermometer next to the bird tells how far it’s off. Give it 20 min: every oven swings.
ask-hold = Keep it at { $hot } or hotter; under that, { $limit } at most, then into the fridge.
ask-wash = No, don't wash it: of people who did, { $share } % had bacteria in the sink afterwards. Pat it dry, wash your hands 20 s.
ask-counter-thaw = Never on the counter, nor in warm water: the outside spoils while the middle is ice. Fridge, or cold water changed every { $every }, then cooked at once.
ask-warm-thaw = Throw it away: it was warm outside for more than { $limit } while the middle thawed, and cooking doesn’t undo that. The next one thaws in the fridge, or in cold water changed every { $every }.
ask-stuffing = Safest baked beside the bird. In it: stuff loosely, just before it goes on, and not a bird that is frozen, smoked or fried.
ask-stuffing-target = Its middle must reach { $target } too.
ask-fry-frozen = No: never fry a bird that is frozen or partly frozen. The oil boils over and burns. Thaw it through first.
ask-fry-stuffed = No: never fry a stuffed bird.
ask-fry-heavy = No: { $given } is too much for a fryer. Up to 12 lb.
ask-fry-time = { $mass } takes about { $time } at 350 °F; done at { $target } everywhere.
ask-fry = Frying: outdoors, 10 ft or more from the house, oil at 350 °F, 3 to 5 min a pound, no bird over 12 lb.
ask-fry-care = Thawed through and dry, never stuffed: water makes the oil boil over. Find the oil level with water first, never leave it alone, keep a dry-powder extinguisher at hand.
ask-charcoal = Never indoors, in a garage, tent or under a porch roof. Carbon monoxide kills and has no smell. A grill still warm stays outside too.
ask-fire = { $call ->
    [none] Keep the oven door shut and switch it off. No water, and don’t carry the pan. If it isn’t out in moments, or flames come out: everyone out, doors shut, and call the fire service from outside.
   *[known] Keep the oven door shut and switch it off. No water, and don’t carry the pan. If it isn’t out in moments, or flames come out: everyone out, doors shut, and call { $call } from outside.
}
ask-fire-elsewhere = A pan on the stove: heat off, lid on. A smoker or grill: lid and vents shut, gas off. Only if you can reach it safely.
ask-gas = { $call ->
    [none] Touch no switch, light no flame, phone nobody from in there. Open what is on your way and get everyone out, then call the fire service or the gas company from outside.
   *[known] Touch no switch, light no flame, phone nobody from in there. Open what is on your way and get everyone out, then call { $call } or the gas company from outside.
}
ask-kitchen-smoke = { $call ->
    [none] Heat off, oven door shut, windows open. Flames, or smoke that doesn’t stop: everyone out and call the emergency services from outside. Once it has cooled, look for fat that dripped.
   *[known] Heat off, oven door shut, windows open. Flames, or smoke that doesn’t stop: everyone out and call { $call } from outside. Once it has cooled, look for fat that dripped.
}
ask-carbon-monoxide = { $call ->
    [none] Everyone out into fresh air now, doors open on the way. Then call the emergency services; nobody goes back in before they say so. Headache, dizziness, nausea: tell them. Charcoal and grills never burn indoors.
   *[known] Everyone out into fresh air now, doors open on the way. Then call { $call }; nobody goes back in before they say so. Headache, dizziness, nausea: tell them. Charcoal and grills never burn indoors.
}
ask-hot-oil = { $call ->
    [none] Burner off, if you can do it without leaning over the pot. Everyone back, children first, and no water. Flames, or oil on someone: call the emergency services. Before it goes on again: cool, and less oil.
   *[known] Burner off, if you can do it without leaning over the pot. Everyone back, children first, and no water. Flames, or oil on someone: call { $call }. Before it goes on again: cool, and less oil.
}
ask-burn = { $call ->
    [none] Cool running water on it, 20 min, at once; rings and watch off, then a clean cover. No ice, no butter. Larger than a hand, white or blistered, on the face, or a child: a doctor, or call the emergency services.
   *[known] Cool running water on it, 20 min, at once; rings and watch off, then a clean cover. No ice, no butter. Larger than a hand, white or blistered, on the face, or a child: a doctor, or call { $call }.
}
ask-choking = { $call ->
    [none] Can’t cough or speak? Call the emergency services. Bend them forward: 5 blows between the shoulder blades, then 5 thrusts above the navel, in turn until it’s out. A baby: never the belly; face down for the blows, then 5 pushes on the chest.
   *[known] Can’t cough or speak? Call { $call }. Bend them forward: 5 blows between the shoulder blades, then 5 thrusts above the navel, in turn until it’s out. A baby: never the belly; face down for the blows, then 5 pushes on the chest.
}
ask-fainted = { $call ->
    [none] Call the emergency services now. Breathing normally: onto their side, head back, and stay with them. Not breathing, or only gasping: on their back, push hard and fast in the middle of the chest, 100 to 120 times a minute, till help comes. More than one person dizzy: everyone out into fresh air.
   *[known] Call { $call } now. Breathing normally: onto their side, head back, and stay with them. Not breathing, or only gasping: on their back, push hard and fast in the middle of the chest, 100 to 120 times a minute, till help comes. More than one person dizzy: everyone out into fresh air.
}
ask-allergy = { $call ->
    [none] Swelling tongue, lips or throat, or short of breath after eating: call the emergency services now and say allergic reaction. An adrenaline pen, if there is one: into the outer thigh at once, a second after 5 min if it’s no better. Lying flat, legs up; propped up if breathing is hard. Not standing up, not walking.
   *[known] Swelling tongue, lips or throat, or short of breath after eating: call { $call } now and say allergic reaction. An adrenaline pen, if there is one: into the outer thigh at once, a second after 5 min if it’s no better. Lying flat, legs up; propped up if breathing is hard. Not standing up, not walking.
}

ask-sick = Nothing with food for now: whoever throws up or has diarrhea stays out of the kitchen until 48 h after the last of it. Someone else takes their jobs.
ask-sick-made = What they have made since it began, and what won’t be cooked through after: out. Hands with soap and water, 20 s; gel does little against a stomach bug.
ask-ate-sick = { $call ->
    [none] Small sips of water, often, and rest. A doctor for blood, fever above { $fever }, nothing staying down, hardly any pee, dizziness on standing, or longer than three days. Pregnant, very young, old or ill: call one now. Blurred sight, weak muscles, trouble breathing or swallowing: call the emergency services.
   *[known] Small sips of water, often, and rest. A doctor for blood, fever above { $fever }, nothing staying down, hardly any pee, dizziness on standing, or longer than three days. Pregnant, very young, old or ill: call one now. Blurred sight, weak muscles, trouble breathing or swallowing: call { $call }.
}
ask-ate-sick-rest = Nobody eats more of it until it’s clear: wrap it, mark it, into the fridge. Several ill? Tell the health department. Whoever throws up keeps off other people’s food until 48 h after.
ask-cut = Press till it stops, rinse under running water, dry, then a waterproof bandage and a glove over it. Food with blood on it: out. Knife and board into hot soapy water.
ask-cut-doctor = Deep, gaping, or still bleeding after 10 min of pressure: a doctor.

ask-stuffing-slow = Meat at { $target } and stuffing not? Spoon it out hot and finish it in a dish in the oven, or stirred in a pan, to { $target } in its middle, with no pause between. Meat not there yet? All of it stays in.
ask-stuff-ahead = No: mix and stuff just before it goes on, and loosely. Until then dry and wet parts wait in the fridge, apart. Its middle must reach { $target }.

# ---- habits, and what went wrong
ask-fridge = { $cold } or colder, by a thermometer inside.
ask-baste = No need. Every opening of the oven costs time, and wet skin won't crisp.
ask-foil = Dark enough? Lay foil loosely over it, shiny side or not, and cook on: only the thermometer says when it’s done. Off again for the last minutes if the skin should crisp.
ask-carve = Legs first: cut the skin, bend the thigh out, cut through the joint; then drumstick from thigh. Each breast off the bone in one piece, then across into slices. Wings last. Not on the raw bird's board.
ask-pop-up = A pop-up can be early or late. Check with a thermometer: { $target } in breast, thigh and wing, then it's done.
ask-bag-inside = A paper bag is no harm: take it out, and go by { $target } in the meat. Plastic that melted or lost its shape: throw bag and bird away.
ask-probe-out = Back into the thickest breast, tip off the bone; what it read outside doesn't count. Broken? Any instant-read will do that shows { $ice } in ice water. Without one nobody can call it done.
ask-mess = Paper first, then hot soapy water, then a disinfectant; hands 20 s. Food eaten raw that got juice on it goes into the bin.
ask-crossed = What is eaten raw and met raw juice, its knife or its board goes into the bin. Then knife, board and hands: hot soapy water, hands { $wash }.
ask-dog = No cooked bones, they splinter; nothing salted, no onion. A little plain meat is fine.
ask-fragile = Who is pregnant, over 65, very young or has a weak immune system eats it hot, and only with { $target } everywhere it’s measured, stuffing too; leftovers only reheated to that. In doubt ask a doctor.
ask-neck = Out before salting; look in both ends of the bird, they're often in a bag. Simmer them for gravy, to { $target }. Raw they keep { $giblets } in the fridge.
ask-finish-oven = Yes, straight from one heat into the other; never half today and half later. Oven at { $oven } or hotter, { $target } as ever.
ask-side-up = Breast up, wing tips tucked under.
ask-fridge-shelf = Lowest shelf, on a tray that holds the juice: nothing raw above other food.
ask-fridge-cover = Uncovered dries the skin, and it crisps better. Tray under it, lowest shelf. Cover it where it could touch or drip on other food.
ask-rinse-salt = No: the salt has gone in, and rinsing spreads germs around the sink. Pat it dry; grains left on it you brush off.
ask-salted-twice = Brush off what you can, don't rinse, and no more salt: not on it, not in the butter, no drippings in the gravy. Long on it already, the meat will be salty: slice it thin and salt nothing else.
ask-brine-frozen = Thaw it first: salt hardly gets into ice. Half thawed it may finish in a cold brine, at { $cold } or colder.
ask-brine-or-not = No must. Dry is the easy way: salt over and under the skin, a day or two in the fridge, nothing to spill. Wet needs a bucket and room at { $cold }. Neither for a kosher bird or one with solution added.
ask-rack = No rack? Thick slices of onion and carrot or a ring of foil will do. Oven shelf low, so that the bird sits in the middle.
ask-truss = No need: with loose legs the thighs cook sooner. If it sprawls, tie the ends lightly.
ask-pan-water = A cupful keeps the drippings from burning. More only steams the skin.
ask-oven-bag = An oven bag, as its leaflet says: it's quicker, so measure early. No brown paper or shopping bag: it can burn and give off fumes.
ask-temper = Not needed: inside it hardly warms in an hour. As long as the plan has it out, for a dry skin, and no longer: it counts toward the { $limit }.
ask-which-salt = Any will do if you weigh it: a gram is a gram. By the spoon they differ: fine table salt holds about twice as much as flake. Tell me which you have, “table salt”, and I give it in that.
ask-fits = Measure first: two fingers of air all round in the oven, and a pan its legs don't hang over. Too big? Opened flat, or in pieces on two trays, it fits and is done sooner: say “flat”.
ask-boil = Yes: covered with water at a bare simmer, not a rolling boil, till breast, thigh and wing read { $target }. No crisp skin, good broth. My hours are for roasting: here only the thermometer tells.
ask-weather = Out of the wind, lid shut, more fuel at hand: wind, rain and frost eat heat. Still outdoors, never in a garage or tent. Tell me what the pit reads and I forecast with that.
ask-grill = Yes: lid shut, bird beside the flames, not over them, { $oven } or a bit hotter at the grate. I plan it as a smoker. Outdoors only.
ask-smoke = Mild wood: apple, cherry, a little oak. Bird on when the smoke is thin and bluish; thick white smoke tastes bitter: more air, and wait. Outdoors only.
ask-gravy-how = Pour off the drippings, skim the fat. Brown as much flour as fat you keep, whisk in drippings and broth till it flows, boil it up. Taste before you salt: a salted bird drips salt.
ask-carcass = Bones into the fridge within { $limit }, used in { $days } or frozen. Simmer with onion and carrot 2 to 3 h, strain, cool it in shallow pans.
ask-bones-out = No broth of bones that stood out for more than { $limit }: boiling doesn’t undo what grew in them. Throw them away. In the fridge in time, they keep { $days }.
ask-reheat-twice = Warm up only what you’ll eat, once: each time it spends a while lukewarm. If it must be twice, to { $target } all through both times, and in the fridge within { $limit } in between.
ask-leftovers-at = { $at } is too warm for leftovers: { $cold } or colder keeps them. Above that for more than { $limit } in all, table and car included, or nobody knows how long: throw them away, reheating doesn’t undo it. Less: into the fridge now.
ask-crisp = Dry skin: uncovered in the fridge overnight, a thin coat of oil, no foil, little water in the pan. Still soft near the end? { $crisp } for the last 10 min, and watch it.
ask-fat = Either one. Skin dry, a thin coat just before it goes in; soft butter under the skin for taste. Unsalted on a salted bird.
ask-no-butter = Oil: a thin coat on the dry skin just before it goes in, and under it if you like. It browns as well.
ask-allergy-milk = Milk: oil instead of butter, on the skin and under it. Stuffing, gravy and mash often hold butter or cream.
ask-allergy-gluten = Gluten: bread stuffing beside the bird, not in it, and in its own dish; gravy with cornstarch, not flour; baking powder by its label.
ask-allergy-nuts = Nuts: none in stuffing, sides or dessert; stuffing mixes, oils and bread by their labels.
ask-allergy-egg = Egg: often in stuffing, dumplings, sauces and desserts.
ask-allergy-label = Read the bird’s label too: a basted or injected one may hold milk, wheat or soy. Clean board and knife, their plate first. How strict it has to be, they or their doctor know.
ask-preheat = Yes, hot before the bird goes in: an oven 20 to 30 min, a fire up to an hour.
ask-dial = Numbers on a dial differ from oven to oven: see its manual. Or set a middle one and put an oven thermometer on the rack: after 20 min you want { $oven } or a little more. Tell me what it shows.
ask-early = Done is { $target } everywhere. Then keep it wrapped at { $hot } or hotter, by thermometer. Or carve it, into the fridge within { $limit }, and reheat it for dinner to { $target }.
ask-fan = Either works. With the fan it goes quicker and browns sooner; not under { $oven } all the same. Say “fan oven” and I plan with that.
ask-ahead = Yes: cooked to { $target }, carved, in the fridge within { $limit } in shallow layers, eaten in { $days }. Reheat covered with a little broth, to { $target }.
ask-flat = Shears along both sides of the backbone, take it out, turn the bird over and press the breast flat. It needs about two thirds of the time. Say “spatchcocked” when you plan.
ask-fresh-or-frozen = As good as each other. Frozen can be bought weeks ahead and only needs days to thaw. Fresh: at most { $raw } before it's cooked.
ask-thaw-microwave = To thaw it, only if it fits, by the microwave's own leaflet. Then cook it at once: parts of it get warm.
ask-thaw-sink = In its wrap, watertight, under cold water, changed every { $every }. Then cook it at once. Tell me the weight and I say how long.
ask-inject = You can: cold liquid, just before it goes on, with its salt counted in the dose. A needle carries germs inside, so { $target } in every spot decides.
ask-dropped = Raw: wipe it off with paper, don’t rinse it, and cook it to { $target } as planned; then floor and hands. Cooked: cut off what touched the floor; if you can’t tell, throw it away.
ask-prick = Goose and duck: yes, the skin only, where the fat is. Turkey and chicken can do without; never into the meat, or it bleeds juice.
ask-worry = Three things do most of it: { $target } in breast, thigh and wing, never more than { $limit } out of the fridge or off the heat, and hands and board washed after raw meat. I keep the hours; you measure.
ask-not-in-time = Then it stays in: { $target } counts, not the hour. Turn the heat up, start with the sides, carve it and finish the pieces in the oven, or eat later. Send me readings early and I’ll say what it takes.
ask-raw-inside = Back into the oven, cut or whole, until { $target } in the thickest spot; nobody eats of it before. Knife, board and hands into hot soapy water. Pink at the bone alone proves nothing: the thermometer does.
ask-ate-raw = Most people get away with it; nobody can say. The rest back into the oven to { $target }, or out. Blood, high fever, nothing stays down, or longer than three days: a doctor. Pregnant, very young, old or ill: call one now.
ask-half-cook = No: never half now and the rest later. The middle stays lukewarm for hours, and heat doesn’t undo all that grows. Cook it through to { $target }, carve it, then chill it within { $limit }.
ask-fridge-down = Keep it shut: it stays cold for about { $unopened }. Then measure: a bird above { $cold } for more than { $limit } goes out, cooking doesn’t mend it. With ice in it still, or at { $cold } or less, it’s fine.
ask-fridge-off = { $span } without power is too long, even shut: a fridge stays cold for about { $unopened }. Measure the bird: ice in it still, or { $cold } or less, and it’s fine. Warmer, or you can’t tell: throw it away, cooking doesn’t mend it.
ask-cold-at = { $at } is too warm for it: { $cold } or less. On ice or into a colder fridge, now. More than { $limit } above that, or nobody knows how long: throw it away, cooking doesn’t mend it.
ask-kills = { $target } in the thickest spots kills the germs in it. Not what they left behind: food that stood out for more than { $limit } stays bad, however hot it gets.
ask-freezer-down = Keep it shut: full, it holds about { $full }, half full { $half }. A bird with ice in it still, or at { $cold } or less, is fine: freeze it again, or let it thaw on in the fridge. Thawed and above { $cold } for more than { $limit }, or nobody knows: out, however it smells.
ask-kosher-bird = A bird that came salted, brined or kosher: no brine, and no more salt without tasting first.
ask-other-bird = That is a bird I know no published times or weights for, so I give none. What holds for any poultry: done at { $target } in breast, thigh and wing, by thermometer; never thawed on the counter. I know turkey, chicken, capon, duck and goose.
ask-thermometer = Thickest breast, innermost thigh, the wing joint; tip in the middle of the meat, off the bone. { $target } in all of them.
ask-garage-thaw = Only if it was { $cold } or colder there all the while, by a thermometer. If you don't know, throw it away: cooking doesn't undo it.
ask-cold-place = Better not: the weather turns, and animals come. If it must, in a closed cooler with ice and a thermometer inside, at { $cold } or colder the whole time. A cold day is no fridge.
ask-past-date = A use-by date is a limit: past it, don't eat it, cooked or not, unless it was frozen in time. Sell-by and best-before are softer: a fresh bird keeps { $days } in the fridge from the day you bought it, no longer.
ask-past-date-care = In doubt, or if it smells or feels off: throw it out. Cooking doesn't undo it.
ask-smell = Sour, rotten or slimy: throw it out or take it back. Cooking doesn't undo it, and don't taste it to find out. A faint smell from a sealed bag airs off in minutes; if it doesn't, out with it.
# What small children, and those at more risk, may have. $call as in ask-choking.
ask-diner-little = From about six months on, yes: well cooked, { $target } everywhere, in tiny soft pieces, no skin or bone, no added salt; leftovers only reheated to that. Never whole nuts, chestnuts or grapes: they can choke. Their pediatrician has the last word.
ask-diner-chokes = Not whole for a child under five: nuts, chestnuts, grapes, olives and hard lumps block the throat. Mashed or chopped fine, sitting down, somebody beside them. Their pediatrician has the last word.
ask-diner-swallowed = { $call ->
    [none] Coughing hard? Let them cough, and stay close. Noisy or hard breathing, drooling, blue lips? Call the emergency services at once. All well now, and coughing or wheezing later? To a doctor at once.
   *[known] Coughing hard? Let them cough, and stay close. Noisy or hard breathing, drooling, blue lips? Call { $call } at once. All well now, and coughing or wheezing later? To a doctor at once.
}
ask-diner-leaves = Leave it: foie gras, pâté, smoked salmon, raw shellfish, raw-milk or soft ripened cheese, raw egg and pink meat are not for anyone pregnant, very young, over 65 or with a weak immune system. Their doctor has the last word.
ask-low-salt = One bird can’t be salted for some and not for others. Leave it unsalted (“no salt”) and put salt on the table, or go lighter (“less salt”); gravy and stuffing unsalted too. A label with “solution” means salt is in it already. How much they may have, their doctor says.
ask-thermometer-which = A quick digital one, or a probe that stays in. Without one nobody can tell that it is safe: borrow one. Check it first: ice water shows { $ice }.
ask-no-room = A cooler with ice does it: bird in a tight bag, lid shut, a thermometer inside at { $cold } or colder, new ice before it warms. Or let the drinks wait outside instead; the bird never.
ask-carry-food = Cold in a cooler with ice, { $cold } or colder on arrival; or hot, wrapped in a box, { $hot } or hotter. Else { $limit } out in all, the drive included; { $short } above { $air }.
ask-oven-down = Keep the door shut. If the heat isn't back soon, move the bird: another oven, a neighbor's, a covered grill outdoors. If it hasn't been on yet, back into the fridge.
ask-oven-down-care = Don't stop halfway and finish later. Warm but under { $hot } for more than { $limit } in all: throw it away.
ask-still-frozen = Into cold water now, in a tight bag, fresh water every { $every }: about 30 min for each pound still frozen. Then cook it at once.
ask-still-frozen-cook = Or roast it as it is, unstuffed, in an oven, not a smoker or fryer: up to half as long again. Pull the giblets out once they come loose. { $target } everywhere.
ask-from-frozen = In an oven, yes: { $oven } or hotter, unstuffed, about half as long again as a thawed one. Giblets out once they come loose, { $target } everywhere. Never in a smoker or fryer.
ask-is-thawed = Thawed: no ice in the cavity, the legs move freely, { $cold } or colder inside. Any ice left? More time in the fridge, or cold water.
ask-too-fast = Turn the oven down, not under { $oven }, and lay foil over it. { $target } everywhere is done: then keep it covered at { $hot } or hotter.
ask-stall = Stuck for an hour or so in a low pit is the stall: the wet skin cools as fast as the pit heats. It passes. A hotter pit ends it sooner, foil too, though the skin goes soft. In a hot oven look at the tip: deep in the meat, off the bone. Done stays { $target }.
ask-too-slow = Oven up to { $oven } or a little more, door shut. In a hurry, cut off legs and breast and roast the pieces. Serve late rather than under { $target }.
ask-stuffing-for = { $people ->
    [one] Stuffing for one: { $low } to { $high }.
   *[other] Stuffing for { $people }: { $low } to { $high }. What doesn't fit loosely in the bird bakes beside it.
}
ask-gravy-for = { $people ->
    [one] Gravy for one: { $low } to { $high }.
   *[other] Gravy for { $people }: { $low } to { $high }.
}

# ---- units
ask-convert = { $given } = { $result }.

# ---- why: where a number comes from. Titles stay as they were printed.
ask-source-seen = { $publisher }: { $title }
ask-source-seen-secondary = { $publisher }: { $title } (as quoted elsewhere)
ask-source-common-practice = Common practice, no source: { $title }
ask-source-from-memory = From memory, not found in print: { $publisher }, { $title }
ask-source-derived = Reckoned from { $publisher }: { $title }

ask-span = { $span }
