### Words people type, by what they mean. Not shown to anyone; read by the program.
### Each value is a list of words and phrases, separated by commas. Case, accents and plain plurals (see
### lexicon-endings) need no entry of their own; common words of five letters and more are also read with a slip of the finger.
### A translator lists what people really write, abbreviations included; the longest phrase wins.

## How dates are written: mdy or dmy. Whether a comma marks decimals: yes or no.
lexicon-date-order = mdy
lexicon-decimal-comma = no
## What may be added to a word: plurals and cases.
lexicon-endings = s, es
## Words that lose their end before a vowel and cling to the next word (French l'eau); none here.
lexicon-elisions = { "" }
## Whether a half before an hour is past it (half five: 5:30) or to it (halb sechs: 5:30).
lexicon-half-hour = past

## Words that look like a slip of another word here and are not.
lexicon-plain = haven, three, there, their, these, those, house, home, toast, mouth, winner, beast, quest, guess, toady, towel, flour, floor, could, would, other, after, about, again, never, every, table, salty, water, waters, later, eaten, easter, sunny, money, monkey, north, south, march, match, plate, place, piece, peace, sauce, source, stuff, still, grand, brand, bread, board, broad, least, beats, great, treat, large, small, whole, while, white, wheel, kitchen, ovens, overs, cover, shower, smoked, smokey, thinner, dining, diner, going, gloves, friends, friday, fried, freezer, fridge, cooler, cooker, counter, country, county, chickpea, ducts, grease, sound, round, found, wound, count, court, pints, points, paints, ground, grams, grain, gains, cause, caught, bought, brought, timber, temper, number, member, second, seconds, season, reason, mother, father, brother, sister, spoon, sport, sheet, sweet, sugar, cream, butter, better, bitter, batter, letter, thick, think, thing, things, thanks, right, light, night, might, fight, sight, weigh, height, weight, eighth, hours, honey, horse, nurse, purse, first, fresh, flesh, flash, flake, flakes, snake, shake, brine, bring, bride, dried, drive, drove, stove, store, stone, steam, cream, twice, sat at, sat down, sat there

## Numbers
lexicon-number-0 = zero
lexicon-nobody = nobody, no one, no guests
lexicon-number-1 = one
lexicon-number-2 = two, couple
lexicon-number-3 = three
lexicon-number-4 = four
lexicon-number-5 = five
lexicon-number-6 = six
lexicon-number-7 = seven
lexicon-number-8 = eight
lexicon-number-9 = nine
lexicon-number-10 = ten
lexicon-number-11 = eleven
lexicon-number-12 = twelve, dozen
lexicon-number-13 = thirteen
lexicon-number-14 = fourteen
lexicon-number-15 = fifteen
lexicon-number-16 = sixteen
lexicon-number-17 = seventeen
lexicon-number-18 = eighteen
lexicon-number-19 = nineteen
lexicon-number-20 = twenty
lexicon-number-30 = thirty
lexicon-number-40 = forty
lexicon-number-50 = fifty
lexicon-number-60 = sixty
lexicon-number-90 = ninety
lexicon-number-100 = hundred
lexicon-number-half = half
lexicon-number-third = third
lexicon-number-quarter = quarter
lexicon-number-eighth = eighth
lexicon-number-article = a, an
lexicon-number-and = and
lexicon-number-plus = plus
lexicon-number-of = of
lexicon-number-to = to
lexicon-minus = minus, negative

## Units
lexicon-unit-pound = lb, lbs, pound, pounds, pounder
lexicon-unit-ounce = oz, ounce, ounces
lexicon-unit-gram = g, gr, gram, grams, gramme
lexicon-unit-kilogram = kg, kgs, kilo, kilos, kilogram, kilogramme
lexicon-unit-milligram = mg, milligram
lexicon-unit-teaspoon = tsp, tsps, teaspoon, tea spoon
lexicon-unit-tablespoon = tbsp, tbsps, tbs, tblsp, tablespoon, table spoon
lexicon-unit-cup = cup
lexicon-unit-fluid-ounce = fl oz, fluid ounce, fluid oz
lexicon-unit-pint = pint, pt
lexicon-unit-quart = quart, qt, qts
lexicon-unit-gallon = gallon, gal
lexicon-unit-milliliter = ml, milliliter, millilitre
lexicon-unit-liter = l, liter, litre
lexicon-unit-pinch = pinch, pinches
lexicon-unit-stick = stick
lexicon-unit-fahrenheit = f, °f, fahrenheit, degrees f, degree f, degrees fahrenheit, ° f
lexicon-unit-celsius = c, °c, celsius, centigrade, degrees c, degree c, degrees celsius, degrees centigrade, ° c
lexicon-unit-degree = °, degree, degrees, deg
lexicon-unit-second = s, sec, secs, second
lexicon-unit-minute = min, mins, minute, mn
lexicon-unit-hour = h, hr, hrs, hour
lexicon-unit-day = d, day
lexicon-unit-week = week, wk
lexicon-unit-month = month
lexicon-unit-percent = percent, per cent, pct
lexicon-unit-gas-mark = gas mark, gas, mark
## Mark of a French oven (thermostat 6 is 180 °C); none here.
lexicon-unit-thermostat = { "" }

## Days and hours
lexicon-weekday-mon = monday, mon
lexicon-weekday-tue = tuesday, tue, tues
lexicon-weekday-wed = wednesday, wed, weds
lexicon-weekday-thu = thursday, thu, thur, thurs
lexicon-weekday-fri = friday, fri
lexicon-weekday-sat = saturday, sat
lexicon-weekday-sun = sunday, sun
lexicon-month-1 = january, jan
lexicon-month-2 = february, feb
lexicon-month-3 = march, mar
lexicon-month-4 = april, apr
lexicon-month-5 = may
lexicon-month-6 = june, jun
lexicon-month-7 = july, jul
lexicon-month-8 = august, aug
lexicon-month-9 = september, sep, sept
lexicon-month-10 = october, oct
lexicon-month-11 = november, nov
lexicon-month-12 = december, dec
lexicon-day-today = today
lexicon-day-tonight = tonight, this evening
lexicon-day-tomorrow = tomorrow, tmrw, tomorow
lexicon-day-after-tomorrow = day after tomorrow, the day after tomorrow
lexicon-day-yesterday = yesterday
## What stands before the day of a month without its name (French le 24).
lexicon-day-of-month = { "" }
lexicon-holiday-thanksgiving = thanksgiving, thanksgiving day, turkey day
lexicon-holiday-christmas = christmas, christmas day, xmas, xmas day
lexicon-holiday-boxing-day = boxing day, st stephen's day, saint stephen's day, second day of christmas
lexicon-holiday-numbered-day = { "" }
lexicon-holiday-christmas-eve = christmas eve, xmas eve
lexicon-holiday-new-year = new year's day, new years day, new year
lexicon-holiday-new-year-eve = new year's eve, new years eve
lexicon-holiday-easter = easter, easter sunday, easter day
lexicon-next = next, coming, this
lexicon-part-morning = am, in the morning, morning
lexicon-part-afternoon = pm, in the afternoon, afternoon, in the evening, evening, at night, night
lexicon-noon = noon, midday, at noon, at midday
lexicon-midnight = midnight, at midnight
lexicon-oclock = o'clock, oclock
lexicon-past = past
lexicon-to = to, til, till, of
lexicon-at = at, by, around, about, at about, at around, for
lexicon-since = since
lexicon-on = on, the, of
lexicon-in = in, within
lexicon-ago = ago
lexicon-later = later, back, longer, delay, delayed, push, postpone
lexicon-earlier = earlier, sooner, forward, early, too early, ahead of plan
lexicon-now = now, right now, just now
lexicon-ordinal = st, nd, rd, th
lexicon-meal-dinner = dinner, supper, meal, eat, eating, serve, served, on the table, table, sat down, sitting down
lexicon-meal-lunch = lunch, brunch

## The bird
lexicon-bird-turkey = turkey, tom turkey, hen turkey, gobbler, turkey on, turkey in
lexicon-bird-turkey-breast = turkey breast, breast of turkey, turkey crown, crown
lexicon-bird-chicken = chicken, broiler, roaster
lexicon-bird-capon = capon
lexicon-bird-duck = duck, duckling
lexicon-bird-goose = goose, geese
lexicon-bird-any = bird
lexicon-condition-fresh = fresh, thawed, defrosted, already thawed, fully thawed, not frozen, never frozen, unfrozen, already defrosted, completely thawed
lexicon-condition-frozen = frozen, still frozen, rock hard, frozen solid, deep frozen, haven't thawed, havent thawed, have not thawed, haven't thawed it, havent thawed it, have not thawed it, haven't thawed it yet, havent thawed it yet, have not thawed it yet, haven't thawed yet, havent thawed yet, hasn't thawed, hasnt thawed, hasn't thawed yet, hasnt thawed yet, haven't started thawing, havent started thawing, haven't started thawing it, havent started thawing it, not thawed, not thawed yet, isn't thawed, isnt thawed, isn't thawed yet, isnt thawed yet, it's not thawed, its not thawed, didn't thaw it, didnt thaw it, haven't defrosted it, havent defrosted it, haven't defrosted it yet, havent defrosted it yet, not defrosted, not defrosted yet, still frozen solid, frozen solid still, rock solid frozen
lexicon-unthawed = haven't thawed, havent thawed, have not thawed, haven't thawed it, havent thawed it, have not thawed it, haven't thawed it yet, havent thawed it yet, have not thawed it yet, haven't thawed yet, havent thawed yet, hasn't thawed, hasnt thawed, hasn't thawed yet, hasnt thawed yet, haven't started thawing, havent started thawing, haven't started thawing it, havent started thawing it, not thawed, not thawed yet, isn't thawed, isnt thawed, isn't thawed yet, isnt thawed yet, it's not thawed, its not thawed, didn't thaw it, didnt thaw it, haven't defrosted it, havent defrosted it, haven't defrosted it yet, havent defrosted it yet, not defrosted, not defrosted yet, still frozen, still frozen solid, frozen solid still, rock solid frozen
lexicon-condition-part-thawed = part thawed, partly thawed, partially thawed, half thawed, half frozen, partly frozen, partially frozen, part frozen, still icy, icy inside, still ice inside, part defrosted, partially defrosted, partly defrosted, half defrosted
lexicon-form-whole = whole
lexicon-form-flat = flat, flattened, spatchcock, spatchcocked, butterflied, butterfly, backbone out, opened flat
lexicon-form-pieces = pieces, in pieces, parts, in parts, cut up, jointed, in joints
lexicon-stuffed = stuffed, with stuffing, stuffing inside, stuffing in the bird, stuffed bird
lexicon-unstuffed = unstuffed, not stuffed, no stuffing, without stuffing, stuffing on the side, stuffing outside
lexicon-solution = solution, contains up to, contains, added, enhanced, injected, brine solution
lexicon-basted = self basting, self basted, basted, pre basted, prebasted
lexicon-salted-already = pre salted, presalted, pre brined, prebrined, already salted, already brined, salted already, comes salted, salted by the packer, koshered

## Who eats
lexicon-people = people, persons, person, guest, of us, adults and kids, mouths, diners, eaters, at the table, pax, folks, ppl, servings, portions, heads, plates
lexicon-adults = adult, grown ups, grownups, grown up
lexicon-children = kid, child, children, little ones
lexicon-among = of them, of whom, of which, including, incl, including the, counting, among them, them
lexicon-another = another, second, one more, 2nd, additional
lexicon-size-big = big, bigger, biggest, large, larger, heavy, heavier
lexicon-size-small = small, smaller, smallest, little, lighter
lexicon-instead = instead, make it, rather, change it to, lets say, let's say, switch to, move it to
lexicon-joining = coming too, is coming too, are coming too, coming as well, also coming, joining us, joining, is joining, are joining, tagging along, extra, more, coming, are coming
lexicon-for = for, feed, feeds, feeding, we are, we're, we'll be, we will be, family of, table of, party of, we are now, now we are, we're now, we'll be now, there will be, there are, there'll be, we're up to, we are up to, us is now
lexicon-leftovers = leftovers, leftover, with leftovers, and leftovers, want leftovers, some leftovers
lexicon-no-leftovers = no leftovers, without leftovers, without leftover

## Heat, salt, way
lexicon-cooker-oven = oven, conventional oven, in the oven, oven without fan, no fan, roast it, going in the oven, goes in the oven, going into the oven, goes into the oven, putting it in the oven, put it in the oven, in the oven at, in the oven by
lexicon-cooker-fan-oven = fan oven, convection oven, convection, fan, fan assisted, fan assisted oven, oven with fan, fan on
lexicon-cooker-smoker = smoker, smoke, smoked, kettle, kettle grill, grill, bbq, barbecue, pellet grill, pit, on the smoker at, on the smoker by, going on the smoker, goes on the smoker, start smoking
lexicon-heat-stove = stove, stovetop, stove top, hob, burner, range, on the stove, saucepan, skillet, frying pan
lexicon-heat-set = set to, is set to, turned up to, turned it up to, turned it up, turned up, turned down, turned it down, turned down to, turned it down to, turn it up to, raised, raised to, lowered, lowered to, cranked, cranked up, cranked up to, up to, down to
lexicon-heat-turned = turned up to, turned it up to, turned it up, turned up, turned down, turned it down, turned down to, turned it down to, turn it up to, raised, raised to, lowered, lowered to, cranked, cranked up, cranked up to
lexicon-reading-before = before that, before this, before now, earlier, a while ago, a bit ago, a little while ago, previously, last time
lexicon-reading-said = said, read, showed, reading
lexicon-heat-moved = moved it, moved it to, moved it over, moved it over to, moved it into, moving it, moving it to, moving it into, moved the bird, moved the bird to, moved the turkey, moved the turkey to, moved bird, moved turkey, moved bird to, moved turkey to, transferred it, transferred it to, transferred the turkey, transferred the bird, finishing it, finishing it in, finishing it off, finishing it off in, finishing the bird, finishing the turkey, switched it to, switched it over, switched it over to
lexicon-heat-moved-first = moved to, moved over to, moved into, transferred to, finishing in, finishing off in, now in
lexicon-heat-later = gonna, going to, will, would, should, might, may, plan to, planning to, want to, later, when it, once it, if it, if i, thinking of, before moving, after moving
lexicon-heat-start = start cooking, starting cooking, start cooking it, starting to cook, start roasting, start smoking, going in, goes in, going in the oven, goes in the oven, going into the oven, goes into the oven, put it in, putting it in, putting it in the oven, put it in the oven, in the oven at, in the oven by, on the smoker at, on the smoker by, going on the smoker, goes on the smoker, going on, goes on
lexicon-heat-start-early = bird on, turkey on, bird goes on, bird in, turkey in
lexicon-heat-all-along = the whole time, this whole time, whole time, the entire time, entire time, all along, all this time, from the start, since the start, from the beginning, since the beginning
lexicon-heat-was = was, had, has been, been, have been, were
lexicon-heat-off = off, not on, switched off, shut off, wasn't on, wasnt on, cold
lexicon-heat-never = never turned the oven on, never turned on the oven, forgot to turn on the oven, forgot to turn the oven on, never lit the smoker, oven was never on, oven wasn't on, oven wasnt on, oven was not on, oven never came on, oven was never turned on
lexicon-heat-back = back on, on again, back at, back up to, relit, lit again, it's back, its back, it's back on, its back on, we're back on, power's back, powers back, power is back, power's back on, powers back on, power is back on, power came back, power came back on, power back on, power back, electricity is back, electricity's back, oven is back, oven's back, ovens back, oven is back on, oven's back on, ovens back on, oven back on, oven came back on, oven came back, oven works again, oven is working again, oven working again, oven is on again, smoker is back on, smoker's back on, smoker back on, fire is back, fire's back, fire is going again, fire's going again, fire going again, relit the fire, got it going again, got it relit, it's working again, its working again, it works again, it's on again, its on again
lexicon-heat-returned = it's back, its back, it's back on, its back on, we're back on, power's back, powers back, power is back, power's back on, powers back on, power is back on, power came back, power came back on, power back on, power back, electricity is back, electricity's back, oven is back, oven's back, ovens back, oven is back on, oven's back on, ovens back on, oven back on, oven came back on, oven came back, oven works again, oven is working again, oven working again, oven is on again, smoker is back on, smoker's back on, smoker back on, fire is back, fire's back, fire is going again, fire's going again, fire going again, relit the fire, got it going again, got it relit, it's working again, its working again, it works again, it's on again, its on again
lexicon-fryer = fryer, deep fryer, deep fry, deep fried, fried, fry, frying, deep frying, turkey fryer, hot oil
lexicon-salting-none = no salt, unsalted, without salt, skip the salt, no brine, without brine, no salting, don't salt, dont salt, not salted
lexicon-salting-dry = dry brine, dry brined, dry brining, dry salt, dry salted, salted, salt it, salt rub, with salt, pre salt
lexicon-salting-wet = wet brine, wet brined, wet brining, brined, in brine, brine, brine it
lexicon-thawing-fridge = thaw in the fridge, fridge thaw, in the fridge, fridge, refrigerator
lexicon-thawing-cold-water = cold water, thaw in water, water thaw, thaw in cold water, in the sink
lexicon-thawing-cook-frozen = from frozen, cook from frozen, cook it frozen, straight from the freezer
lexicon-ahead = day before, the day before, a day before, day ahead, a day ahead, cook ahead, cooked ahead, cook it ahead, ahead, ahead of time, in advance, the night before, night before
lexicon-not-ahead = same day, on the day, the same day
lexicon-elsewhere = at my sister's, at my brother's, at my mother's, at my mom's, at my mum's, at my dad's, at my parents', at my parents, at my aunt's, at my uncle's, at my friend's, at my in laws, at my grandma's, potluck, at another house, another house, other house, elsewhere, somewhere else, their house, their place, her house, her place, his house, his place, carry it, carried, take it to, bring it to, carry it cold
lexicon-here = cook it there, cook there, cooking there, at home, at ours, at our place, at my place, at my house, here, our house, my house
lexicon-drive = drive, away, trip, ride, by car, on the road, journey, driving
## Carried to another house, and how it arrives
lexicon-bring = bring, bringing, brought, carry, carrying, carried, carry it, carry it cold, bring it to, take it to, take it over, take it there, taking it, transport, transporting, transported, deliver, delivered
lexicon-hot = hot, piping hot, still hot, hot from the oven
lexicon-cold = cold, chilled, carry it cold
lexicon-at-home = have, i've got, ive got, got, already have, we have, in my freezer, in the freezer, in my fridge, already bought, bought, already at home, already home, already here, it's here already, have it already
lexicon-to-buy = need to buy, have to buy, not bought, haven't bought, still to buy, going to buy, buy
lexicon-ask-shopping = what do i need to buy, what do we need to buy, what should i buy, what do i buy, shopping list, what's on the shopping list, what do i need to get, what's missing, what do i have to buy
lexicon-shopping = buy, buying, pick up, pick it up, picking up, picking it up, get it, getting it, collect, fetch

## Where a thermometer reads
lexicon-spot-breast = breast, breasts, white meat
lexicon-spot-thigh = thigh, thighs, dark meat, leg
lexicon-spot-pit = pit, smoker, oven, air, ambient, grate, grill, chamber
lexicon-spot-stuffing = stuffing
lexicon-spot-wing = wing, wings

## Steps, as people name them when they take or drop one
lexicon-step-buy = buy, buying, shop, shopping
lexicon-step-thaw = thaw, thawing, defrost, defrosting, take it out of the freezer, take out of freezer
lexicon-step-water = water, water change, change water, change the water
lexicon-step-salt = salt, salting, dry brine, brine
lexicon-step-rest = rest, salted rest
lexicon-step-temper = temper, out of the fridge, take out
lexicon-step-fire = fire, light, light the fire, preheat, heat the oven, light fire, turn the oven on, turn oven on, turn on oven, turn on the oven
lexicon-step-on = on, bird on, put it on, put on, put it in, goes in, go in, going in, going on, goes on
lexicon-step-check = check, checks, checking, thermometer
lexicon-step-pull = pull, take off, off the heat, take it out, comes out, come out, comes off, come off
lexicon-step-stand = stand, standing
lexicon-step-carve = carve, carving, carve it
lexicon-step-chill = chill, chilling, cool, cooling, put away, put leftovers away
lexicon-step-pack = pack, packing
lexicon-step-travel = travel, drive, driving, carry
lexicon-step-reheat = reheat, reheating, warm up
lexicon-step-serve = serve, serving
lexicon-step-leftovers = leftovers, leftover

lexicon-yes = yes, y, yep, yeah, ok, okay, sure, fine
lexicon-no = no, n, nope, not

## A job is done
lexicon-done = done, finished, did it, all done, ready, it's done, done it, is done

## Salts by grain
lexicon-salt-table = table salt, table, fine salt, iodized salt, iodised salt, cooking salt
lexicon-salt-fine-sea = fine sea salt, fine sea, sea salt
lexicon-salt-pickling = pickling salt, canning salt, pickling, canning
lexicon-salt-flake-kosher = flake kosher salt, flake kosher, kosher flake, kosher flakes, light kosher, flaky kosher, flaky kosher salt, flake salt, flaky salt
lexicon-salt-coarse-kosher = coarse kosher salt, coarse kosher, kosher coarse, dense kosher
lexicon-salt-coarse-sea = coarse sea salt, coarse sea, rock salt
lexicon-salt-kosher = kosher salt, kosher
lexicon-salt-own = my salt, own salt, my own salt, mine
lexicon-ask-only = only have, only got, only have got, i've only, all i have is, just have, we only have
lexicon-salt-any = salt
lexicon-sodium = sodium
lexicon-butter = butter
lexicon-strength-light = light, lightly, less salty, less salt, mild, lightly salted, a little less salt, not so salty, not too salty, easy on the salt
lexicon-strength-bold = bold, heavy, saltier, strong, extra salty, more salt, a little more salt

## What people ask
lexicon-ask-into = in, into, to, as, equals, is, convert, instead of, swap, substitute, replace, equal
lexicon-ask-how-much = how much, amount of, what amount
lexicon-ask-how-long = how long, how much time, what time, how many hours, how many minutes, how many days, time for, time to, when do i start, when should i start
lexicon-ask-when = when, what time, at what time, by when
lexicon-ask-how-big = how big, what size, how large, how heavy, which size, how many pounds, how many kilos, how much turkey, how much bird, what weight, how much chicken
lexicon-ask-how-many = how many, how many people, serves, does it feed, will it feed, enough for, big enough for
lexicon-ask-enough = enough for, will it feed, does it feed, will that feed, big enough for
lexicon-ask-how = how, which, what, what kind of, what sort of
lexicon-ask-why = why, source, says who, where is that from
lexicon-ask-deep = how deep, how far, penetrate, penetrates, depth
lexicon-ask-safe = safe, ok, okay, fine, enough, good to eat, still good, bad, dangerous, sick, can i, may i, should i, do i need to, do i have to, must i, all right, alright, good, should i do, shall i, is it true, is that true
lexicon-ask-temperature = temperature, temp, how hot, internal temp, internal temperature, what temp, what temperature, done at, when is it done, when is turkey done, doneness, read, should read, reads, when it's done, when its done, if it's done, how do i know, how can i tell, how do i tell, how will i know
lexicon-ask-tell = how do i know, how can i tell, how do i tell, how will i know, how do you know, how to tell, how to know
lexicon-ask-leave = leave, leave it, leaving, let it sit, keep it out, let it stand
lexicon-ask-out = out, left out, sat out, sitting out, been out, standing out, stood out, on the counter, at room temperature, room temperature, outside, on the table, unrefrigerated, forgot, warm car, in the car, on the side, on table, still on table, still on the table, sat in, sat for, sat overnight, been sitting, been sitting out, been sitting on the table, sat on the table, sat on the counter, sitting on the table, sitting on the counter, sits out, turkey on the table, bird on the table, meat on the table, food on the table, turkey still on the table, food still on the table
lexicon-ask-left = left, forgot, forgotten, sat, stayed, stood, remained
lexicon-ask-counter = counter, on the counter, countertop, at room temperature, room temperature, hot water, warm water, on the table, in the sink overnight, boiling water, hot tap water, turkey on the table, bird on the table, meat on the table, food on the table, turkey still on the table, food still on the table
lexicon-ask-keep = keep, keeps, last, lasts, store, stored, good for, go bad, shelf life, days old, day old, old, stay, stays, eat the leftovers, eat leftovers, still edible, leftovers still ok, leftovers ok, leftovers still good
lexicon-ask-hot-water = hot water, warm water, boiling water, hot tap water, hot water bath, hot bath, warm bath
lexicon-ask-past-date = past its date, past the date, past date, past their date, out of date, expired, expires, use by date, use by, useby, best before, best before date, sell by, sell by date, expiry date, expiration date, expiration
lexicon-ask-smell = smell, smells, smelly, stinks, stinky, slimy, sulfur, sulphur
lexicon-ask-smell-good = smells good, smells so good, smells great, smells amazing, smells delicious, smells really good, smell good, smelling good, smells wonderful, smells incredible
lexicon-habit-raw-inside = raw near the bone, raw at the bone, raw inside, still raw inside, raw in the middle, it's raw inside, undercooked inside, raw when i cut it, raw when carving, bloody at the bone, still raw
lexicon-habit-cooked-said = done, cooked, ready
lexicon-habit-not-there = isn't, isnt, not, aren't
lexicon-habit-ate-raw = ate raw turkey, ate undercooked, ate it raw, ate it undercooked, ate raw chicken, ate turkey that wasn't cooked, already ate it raw, eaten raw, we ate undercooked turkey
lexicon-habit-half-cook = half cook, half cook it, par cook, part cook, partially cook, partly cook, cook it halfway, cook half now, half cooked tonight, finish it tomorrow, finish cooking it tomorrow, finish cooking tomorrow
lexicon-habit-fridge-down = fridge lost power, fridge was off, fridge is off, fridge broke, fridge died, fridge is broken, fridge stopped, fridge stopped working, fridge not working, fridge has no power, refrigerator died, refrigerator broke
lexicon-habit-comes-salted = came salted, comes brined, came brined, came pre salted, is injected, comes injected, brined already
lexicon-ask-smell-bad = smells bad, smells off, smells funny, smells weird, smells rotten, smells sour, not smell good, doesn't smell right, smells like eggs
lexicon-habit-two-probes = two thermometers, both thermometers, thermometers disagree, thermometers don't agree, each thermometer, one says, the other says, other says, one reads, the other reads, thermometers differ
lexicon-habit-inject = inject, injecting, injector, inject it
lexicon-ask-low-salt = can't have salt, cannot have salt, can't eat salt, cannot eat salt, cant have salt, not allowed salt, no salt for my, low sodium diet, low salt diet, salt free diet, on low sodium, on low salt, on a low sodium diet, on a low salt diet, watching her salt, watching his salt, watch her salt, watch his salt, watch my salt, has to watch salt, high blood pressure, blood pressure
lexicon-ask-keep-hot = keep warm, keep it warm, keep hot, keep it hot, hold, holding, hold it, hold warm, hold hot, warming drawer, stay warm, stay hot
lexicon-ask-warm = warm, hot, hot turkey, hot bird
lexicon-ask-carry = transport, transporting, carry, carrying
lexicon-ask-carry-hot = how do i take it hot, how do we take it hot, how to take it hot, how do i bring it hot, how do we bring it hot, how do i carry it hot, how do i transport it hot, how do i keep it hot on the drive, how do i keep it hot on the way
lexicon-ask-no-room = no room, no space, doesn't fit, does not fit, won't fit, full, too small, is small, tiny, crowded
lexicon-ask-cool = cool, cool down, cooling, chill, chilling, cool it, how fast, into the fridge, put away hot, hot food in the fridge, put hot, hot turkey, hot meat, hot bird, while hot, still hot
lexicon-ask-reheat = reheat, reheating, reheated, warm up, warm it up, heat up, warming up
lexicon-ask-wash = wash, rinse, washing, rinsing
lexicon-ask-thaw = thaw, thawing, defrost, defrosting, thaws, defrosted, unfreeze
lexicon-ask-stuff = stuff, stuffing, stuffed, dressing
lexicon-ask-roast = roast, roasting, cook, cooking, bake, baking, grill, smoke, take, need, oven
lexicon-ask-cook = cook, cooking, roast, roasting, bake, smoke, smoking
lexicon-ask-indoors = indoors, indoor, inside, in the house, in the garage, garage, in the kitchen, in a tent, tent, porch, balcony, carport
lexicon-fuel-charcoal = charcoal, briquettes, briquets, coals, lump charcoal, coal
lexicon-fuel-propane = propane, gas bottle, gas cylinder, gas tank, lpg, butane
lexicon-fuel-pellets = pellets, wood pellets, pellet
lexicon-food-leftovers = leftovers, leftover, cooked turkey, cooked chicken, cooked bird, cooked meat, roast turkey, cooked
lexicon-food-gravy = gravy, broth, stock
lexicon-food-stuffing = cooked stuffing, stuffing, dressing
lexicon-food-giblets = giblets, giblet
lexicon-food-soup = soup, stew
lexicon-food-raw = raw, uncooked, fresh, thawed, defrosted
lexicon-place-fridge = fridge, refrigerator, in the fridge, refrigerated
lexicon-shelf = shelf, shelves
lexicon-place-freezer = freezer, in the freezer, freeze, frozen
lexicon-label-per = per, for every, each
lexicon-ask-overnight = overnight, all night, the whole night, since last night, last nite, all nite, over nite, since last night
lexicon-ask-low-heat = low and slow, slow cook, slow cooking, low temperature, low temp, low heat, slow roast, slow roasting
lexicon-ask-refreeze = refreeze, re freeze, freeze it again, freeze again, refrozen, refreezing
lexicon-ask-colour = pink, juices, juice, juices run clear, run clear, clear juices, colour, color, bloody, red
lexicon-ask-stand = stand, standing, rest, resting, rest after

## When something goes wrong, and habits
lexicon-ask-help = what do i do, what do we do, what now, what can i do, what should i do, what to do, help, what then, what if
lexicon-ask-oven-down = oven broke, oven is broken, oven broken, oven broke down, oven died, oven stopped, oven stopped working, oven isn't working, oven won't heat, oven went out, oven is dead, power went out, power is out, power out, lost power, no power, power cut, fire went out, fire is out, fires out, fire died, fire has died, fire is dead, fire has gone out, killed the fire, fire out, lost the fire, lost my fire, put the fire out, put out the fire, put the smoker out, smoker went out, smoker is out, smoker died, smoker quit, smoker stopped, smoker shut off, smoker shut down, grill went out, grill died, ran out of pellets, ran out of propane, ran out of gas, ran out of charcoal, out of pellets, out of propane, no fire, out of charcoal, out of fuel, ran out of fuel, oven just died, oven just quit, oven quit, oven just broke, oven just stopped, oven just went out, smoker just died, no heat
lexicon-peril-fire = flames, in flames, on fire, caught fire, catches fire, catching fire, burst into flames, grease fire, oven fire, fire in the oven, fire in my oven, there is a fire, there's a fire, kitchen fire
lexicon-peril-gas = smell gas, smells gas, smelling gas, smells like gas, smells of gas, smell of gas, gas smell, gas leak, leaking gas, gas is leaking, reeks of gas
lexicon-nearly-out = almost out of, nearly out of, about out of, running out of, running low, running low on, low on, about to run out
lexicon-speed = mph, kmh, kph
lexicon-ask-come-up = to get to, to reach, took, it took, took to get to, get to, gets to, got to, hits, hit, reached, reaches, before it reached, until it reached, come up to, to come up to
lexicon-ask-too-fast = too fast, too quickly, too quick, too soon, too early, done early, done too early, ahead of schedule
lexicon-ask-too-slow = too slow, too slowly, cooking slow, cooking slowly, taking too long, taking forever, behind schedule, won't cook, isn't cooking, not cooking, takes too long
lexicon-ask-garage = garage, in the garage, shed, in the shed, porch, on the porch, balcony, in the car, outside, outdoors
lexicon-ask-baste = baste, basting, baste it, spoon juices, spoon the juices, open the oven, opening the oven, open the smoker, lift the lid
lexicon-ask-foil = tent it, tent, foil over it, cover it with foil, cover with foil, cover it w foil, tent it w foil, put foil on it, cover it, too dark, getting dark, too brown, browning too fast, skin is burning, burning on top, skin is black, cover the turkey with foil, cover the turkey w foil, cover with tin foil, cover it in foil, foil on top, put foil over it, w foil, with foil, use foil, really dark, too black, getting black, burning, burnt, is burning, wing tips are burning, tips are burning, rly dark, so dark, pretty dark, very dark, kinda dark, super dark, way too dark, really brown, rly brown, very brown, super brown
lexicon-ask-where = where, where do, where does, where to, whereabouts
lexicon-ask-thermometer = thermometer, probe, meat thermometer
lexicon-habit-bag-inside = bag inside, bag was inside, bag still inside, bag was still inside, left the bag, left the bag in, bag of giblets inside, giblets inside, giblets were inside, giblet bag was still inside, giblet bag inside, giblet bag, forgot the giblets, left the giblets in, left the giblets inside, bag of giblets, giblets in the bird, plastic inside, plastic bag inside, giblets bag, bag is still in there, bag still in there, giblets still in there, bag was frozen inside, bag frozen inside
lexicon-habit-pop-up = pop up, popup, popped, pop up timer, popup timer, popup thing, pop up thing, red button, timer popped
lexicon-habit-probe-out = probe fell out, probe came out, probe slipped, probe slipped out, probe fell, thermometer fell out, thermometer came out, thermometer is broken, thermometer broke, thermometer broken, thermometer died, thermometer is dead, thermometer stopped working, thermometer doesn't work, thermometer isn't working, probe broke, probe is broken, probe died, broken thermometer
lexicon-habit-mess = leaked, leaking, leaks, dripped, dripping juice, spilled, spilt, juice in the fridge, juice in my fridge, cutting board, clean up after, clean after, how do i clean, raw juice, juice everywhere
lexicon-habit-dog = dog, puppy, my cat, the cat
lexicon-habit-fragile = pregnant, immune system, weak immune, immunocompromised, chemo, chemotherapy, transplant
lexicon-habit-temper = come to room temp, come to room temperature, to room temp, to room temperature, get to room temp, get to room temperature, reach room temp, up to room temperature, warm up before cooking, before cooking to warm up, sit out before cooking, take the chill off
lexicon-habit-finish-oven = finish in the oven, finish it in the oven, finish it off in the oven, move it to the oven, move to the oven, switch to the oven, transfer to the oven, finish in oven
lexicon-habit-early = done early, done too early, done too soon, finished early, finished too early, ready early, ready too early, ready too soon, hour early, hours early, an hour early, done 1 hour early, too early what now, ahead of time what now
lexicon-habit-neck = neck
lexicon-habit-side-up = side up, which side up, which way up, breast up, breast side up, breast down, breast side down, upside down, breast side
lexicon-habit-cover = cover, cover it, covered, uncovered, covering, wrap, wrapped, unwrapped, wrap it
lexicon-habit-must = do i need to, do i have to, must i, should i, do we need to, do you need to, should we, or not, necessary, is it better, better, versus, vs, worth it
lexicon-habit-or = or
lexicon-habit-rack = rack, roasting rack, v rack, trivet
lexicon-habit-truss = truss, trussing, trussed, tie the legs, tie legs, tie its legs, tie it up, kitchen string, kitchen twine, twine
lexicon-habit-pan-water = water in the pan, water in the roasting pan, water to the pan, add water, water in the tray, liquid in the pan, broth in the pan, stock in the pan
lexicon-habit-oven-bag = oven bag, cooking bag, roasting bag, in a bag, paper bag, brown bag, brown paper bag
lexicon-habit-weather = raining, rainy, in the rain, windy, snowing, wind, blizzard, storm, gust, gusts, gusty, mph
lexicon-habit-smoke = white smoke, thick smoke, smoke is white, smoke is thick, smoke white, billowing, what wood, which wood, wood chips, wood chunks, apple wood, applewood, cherry wood, hickory, mesquite, kind of wood
lexicon-habit-grill = grill, barbecue, bbq
lexicon-habit-gravy = drippings, pan juices, pan drippings, make gravy, making gravy, make the gravy, gravy how, thicken
lexicon-habit-salty = salty, too salty, oversalted
lexicon-habit-salted-twice = salted twice, salted it twice, salted two times, double salted, salted it too, salted it again, too much salt on it, put too much salt, used too much salt
lexicon-habit-carcass = carcass, bones, frame, turkey frame, carcase
lexicon-habit-crisp = crisp, crispy, crisper, crispy skin, crisp skin, rubbery, soggy, baking powder, crunchy
lexicon-habit-fat = butter under the skin, butter the skin, butter on the skin, oil or butter, butter or oil, oil the skin, oil on the skin, rub it with butter, rub with butter, rub with oil, brush with oil, brush with butter, brush it with butter
lexicon-habit-preheat = preheat, preheated, preheating
lexicon-habit-microwave = microwave
lexicon-last = last

## Short talk, taken as a whole text only: words that say nothing, what is done, what is not, by step
lexicon-talk-filler = i, im, ive, we, weve, it, its, is, was, be, been, the, a, have, has, just, now, already, right, ok, okay, yes, yep, yeah, so, and, hey, well, oh, oops, sorry, bird, birds, turkey, turkeys, chicken, duck, goose, that, thats, all, them, theyre, they, this, finally, my, our, he, hes, she, shes, him, her, guys, everyone, everybody, please, there, then, think, also, again, up, to, did, do, yet, hi, hello, thanks, are, for, you, too, today, ago, minute, minutes, k, kk, lol, ugh, phew, alright, omg, yay, whew, ok so, gonna, early, hmm, hm
lexicon-talk-done = done, all done, finished, did it, did that, done that, done it, its done, thats done, got it done, ready, complete, completed, taken care of, took care of it, sorted
lexicon-talk-not = not yet, not, not done, not done yet, no not yet, forgot, i forgot, forgot to, forgot about, havent, havent done, havent done it, havent yet, didnt, didnt do, didnt do it, have not, did not, couldnt, cant, not started, didnt get to, didnt get to it, didnt manage, no time to
lexicon-talk-asking = can i, can we, could i, may i, may we, should i, should we, shall i, do i, do we, does it, is it, is the, is there, are the, was it, will it, how, how long, when, what, whats, where, which, who, whos, why, what's, should the, should it, does the, will the, is that, are they, would it
lexicon-talk-asks-of = is, are, would, does
lexicon-talk-ahead = tonight, tomorrow, later, will, ill, going to, gonna, about to, need to, needs to, have to, has to, must, should, soon, if, this evening, next
lexicon-talk-behind = this morning, last night
lexicon-talk-when = when do we eat, when are we eating, when is dinner, when's dinner, what time is dinner, what time do we eat, when is it done, when will it be done, when is it ready, when will it be ready, when will the turkey be done, when will the bird be done, how much longer, how long to go, how long now, how long until dinner, when does it come out, eta, is it done yet, is it ready yet, can i take it out, can i take it out now, can i pull it, can i pull it now, is it done, is it ready, when do i take it out, when do i pull it, how long does it still need, am i gonna make it, are we gonna make it, am i going to make it, are we going to make it, will we make it, will i make it, gonna make it, am i gonna make it by, are we gonna make it by, am i going to make it by, are we going to make it by, will we make it by, will i make it by, will it be done by, will it be ready by, is it gonna be done by, is it gonna be ready by, is it going to be done by, is it going to be ready by, will it be done in time, will it be ready in time, will it be done on time, will it be ready on time, will it make it, will it make it by, are we on track, am i on track, are we on time, am i on time, on track, are we late, am i late, are we good for, are we good on time, how are we doing on time, how am i doing on time, hows it looking, how's it looking, will dinner be on time
lexicon-talk-next = what's next, what is next, what next, next step, what's the next step, what's due, what do i do next, what comes next
lexicon-talk-undone-thaw = still frozen, still frozen solid, frozen solid, rock solid, still rock solid, still rock hard, still icy, still ice inside, still hard, still half frozen, still partly frozen, still thawing, not thawed, not thawed yet, isnt thawed, isnt thawed yet, not fully thawed, still frozen inside, frozen inside, frozen in the middle, still frozen in the middle, frozen in middle, still frozen in middle
lexicon-talk-icy = inside, ice, icy, in the middle, in middle, middle, half, partly, partially, center, centre, cavity
lexicon-talk-thawed = thawed, is thawed, its thawed, defrosted, is defrosted, fully thawed, all thawed, completely thawed, thawed out, done thawing, finished thawing, thawed already, fully defrosted, completely defrosted
lexicon-talk-undone-water = water not changed, water wasnt changed, didnt change the water, did not change the water, havent changed the water, forgot to change the water, forgot the water, missed the water
lexicon-talk-undone-salt = not salted, unsalted
lexicon-talk-undone-on = not on, not in, not in the oven, not in oven, isnt on, isnt in
lexicon-talk-undone-pull = still in the oven, still in oven, still on, still cooking, still in, back in, back in the oven, back into the oven, put it back, put it back in, put back in, goes back in, went back in, back on the smoker, back on the grill, put it back on, back in then, back to the oven
lexicon-talk-undone-chill = still out, still on the table, still on table, still on the counter, still on counter, forgot it on the counter, forgot it on the table, left it on the counter, left it on the table, left it out, forgot to put it away, forgot to put it in the fridge, forgot the leftovers, left the leftovers out, forgot it on counter, left it on counter, left it on table, forgot it on table
lexicon-talk-did-buy = bought, bought it, picked up, picked it up, picked the bird up, got the bird, got the turkey, got a turkey, got a bird, got my turkey, got our turkey, i got the turkey, i got the bird, we got the turkey, we got the bird, at home, home, shopped, went shopping
lexicon-talk-did-thaw = thawing, is thawing, thawed, started thawing, thawing started, started to thaw, out of the freezer, out of freezer, took out of freezer, took it out of the freezer, taken out of freezer, moved to fridge, in fridge, in the fridge, put in fridge, in water, in the water, in cold water, put in water, put in cold water, in sink, in brine fridge, defrosting, defrosted, put it in the fridge to thaw, put in the fridge to thaw, put in fridge to thaw, in the fridge to thaw, in fridge to thaw, fridge to thaw, started the water thaw, started water thaw, water thaw started, water thaw is going, started the cold water thaw, started cold water thaw
lexicon-talk-did-water = changed the water, changed water, water changed, fresh water, new water, swapped water, swapped the water, water swapped, water is changed
lexicon-talk-did-salt = salted, salt on, salted it, put salt on, salt is on, dry brined, brined, in brine, in the brine, rubbed, rubbed salt on, seasoned, seasoned it
lexicon-talk-did-rest = resting
lexicon-talk-did-temper = out of the fridge, out of fridge, took out of fridge, taken out of fridge, out, took out, on the counter, on counter
lexicon-talk-did-fire = lit, fires going, fires lit, fires on, lit the fire, lit fire, fire lit, fire on, fire going, fire is going, fire is lit, lit the smoker, lit smoker, smoker lit, smoker on, smokers on, smoker going, smoker hot, smoker ready, lit coals, coals lit, coals going, oven on, ovens on, oven hot, ovens hot, turned oven on, turned on oven, turned on the oven, switched on oven, preheating, preheated, oven preheating, oven preheated, ovens preheating, oven heating, grill on, grill lit, grills on, grill hot, ovens heating, oven is heating, ovens heating up, oven heating up, oven warming up
lexicon-talk-did-on = on, in, in oven, in the oven, on the smoker, on smoker, on the grill, on grill, on fire, went in, went on, goes in, gone in, put in, put on, put in oven, put in the oven, put on smoker, put on grill, cooking, roasting, smoking, started cooking, in going
lexicon-talk-did-check = checked, checked it, measured, checked temperature, checked temp
lexicon-talk-did-pull = off, off heat, off the heat, took off, took it off, taken off, came off, pulled, pulled it, took out of oven, out of oven, out of the oven, out, took out, came out, off the smoker, off smoker, off grill, off the grill, taking it out, taking it off, pulling it, pulling it now, im taking it out, i'm taking it out, i'm taking it off, off and wrapped, off and wrapped up, off wrapped, off resting, out resting, off and resting, out and resting, taking it out now, off the grill now
lexicon-talk-did-stand = resting, standing
lexicon-talk-did-carve = carved, carved it, cut, sliced, carving, carving done
lexicon-talk-did-chill = put away, put them away, put away leftovers, put leftovers away, leftovers away, leftovers in fridge, leftovers in the fridge, put leftovers in fridge, put leftovers in the fridge, in fridge, in the fridge, put in fridge, cooling, chilled, chilling, away, refrigerated, leftovers put away, put all leftovers away, leftovers are put away, all put away, everything put away, leftovers packed away, put everything in the fridge, put everything in fridge, put everything away, everything in the fridge, everything is in the fridge, everythings in the fridge, everything's in the fridge, put it all in the fridge, its all in the fridge, all in the fridge, food in the fridge, food is in the fridge, foods in the fridge, food is put away, leftovers are in the fridge, leftovers are away, everythings put away, everythings away, everything away
lexicon-talk-did-pack = packed, packed it, in cooler, in the cooler, in the car, in car
lexicon-talk-did-travel = on the way, on our way, on my way, on way, left, leaving, driving, set off, were on our way, were on way, were off, were leaving, we left
lexicon-talk-did-reheat = reheated, reheating, warmed
lexicon-talk-did-serve = served, on the table, on table, eating, ate, eaten, were eating, we are eating, dinners on the table
lexicon-talk-did-leftovers = finished leftovers, leftovers gone, leftovers finished, ate leftovers, threw leftovers away, threw leftovers out
lexicon-talk-toward = in, to, near, at
lexicon-talk-give = give, hand, ask, pass, assign, can, could, takes, does, will, handles, do
lexicon-talk-mine = i'll, ill, i will, i can, i'll do, ill do, i will do, i can do, i'll take, ill take, i will take, i'll take care of, ill take care of, i'll handle, ill handle, i will handle, let me, let me do, i'm doing, im doing, i do, i'll be on, ill be on, i'll make, i got, i've got, ive got, i'll get, ill get
lexicon-talk-mine-last = is mine, is on me, on me, i'll do that, i will do that, ill do that, i'll do it
lexicon-talk-mine-link = the, of, care, to, for us, us, do, job, part, some, then, me, tonight, tomorrow, today, later, this evening, in the morning
lexicon-talk-manners = sorry, so sorry, im so sorry, im sorry, i'm really sorry, really sorry, guys, hey, hi, hello, all, everyone, everybody, folks, yall, oh, oh no, ugh, argh, damn, so, ok, okay, well, unfortunately, sadly, really, actually, just, but, and, because, im afraid, today, tomorrow, tonight, this year, now, anymore, any more, after all, this time, thanks, please, again, too, either, i think, then, for dinner, for tomorrow, for today, its ok, then too, dear, love, mom, dad, team, family
lexicon-talk-gone = im out, i am out, count me out, im out sick, im sick, i am sick, i got sick, im home sick, im so sick, ive got the flu, i have the flu, i got the flu, i have a fever, ive got a fever, im not feeling well, i dont feel well, i dont feel good, i feel sick, im in bed sick, i tested positive, i have covid, i got covid, i cant come, i cannot come, i cant make it, i cannot make it, i wont make it, i cant be there, i wont be there, i wont be coming, im not coming, im not gonna make it, im not going to make it, i wont be able to come, i wont be able to make it, i have to bail, i gotta bail, i need to bail, im bailing, im dropping out, i have to drop out, i have to cancel, i need to cancel, i gotta cancel, i quit, im stuck at work, i have to work, im not able to come
lexicon-talk-gone-short = cant come, cannot come, cant make it, cannot make it, wont make it, not coming, not gonna make it, not going to make it, wont be there, wont be coming, cant be there, sick, out sick, am sick, got sick, got the flu, have the flu, got covid, down with the flu, gotta bail, have to bail, bailing, dropping out, something came up, something has come up, have to cancel, gotta cancel
lexicon-talk-cant = cant, i cant, cannot, i cannot, cant do, i cant do, cant do it, i cant do it, i cannot do it, cant do that, i cant do that, i cant do this, cant do this, cant do that one, i cant do that one, cant do this one, i cant do mine, cant do mine, i wont be able to, i wont be able to do it, wont be able to do it, not able to do it, i wont manage it, i wont manage, i wont have time, i dont have time, i dont have time for it, no time for it, someone else please, can someone else do it, can someone else please do it, someone else has to do it, someone else will have to do it, somebody else please, i cant do it anymore
lexicon-talk-willing = on it, im on it, i am on it, i will, i will do it, ill do it, ill do that, ill take it, ill take that, ill take that one, i got it, i got this, i got that, ive got it, ive got this, i can, i can do it, i can do that, leave it to me, count on me, happy to, id be happy to, id love to, with pleasure, of course, sure thing, sure i can, no problem, no worries, will do, yes i can, consider it done, im your man, my job, mine
lexicon-talk-unwilling = no, nope, nah, no way, not me, no can do, no thanks, id rather not, rather not, not really, not this time, pass
lexicon-talk-suggest = can we, could we, shall we, should we, what about, how about, lets, can you, could you, can dinner, could dinner, any chance, is it possible, would it be possible, can i move, could i move, maybe we, we could, we can, can it be, could it be, what if we, what if dinner, would it work, is it ok if we, is it ok to, ok if we, ok to move, do you mind if we, mind if we, i want to move, id like to move, i need to move, we need to move, we have to move, i have to move
lexicon-talk-suggest-move = move dinner, move the dinner, move the meal, push dinner, push the dinner, shift dinner, make dinner, do dinner, have dinner, dinner at, dinner to
lexicon-talk-everything = all, everything, all of it, all of them, all of mine, all mine, all my jobs, my jobs, all jobs, the lot
lexicon-talk-kind-check = temps, temp, temperatures, temperature, temp checks, temperature checks, thermometer, thermometers, probe, readings, temp watch
lexicon-talk-meat = meat, temp, temps, temperature, temperatures, probe, thermometer, slices, pieces, leftovers, degrees, degree, deg, white, dark, f, c, fahrenheit, celsius, internal
lexicon-talk-meat-reads = at, of, in, inside, middle, center, centre, reads, read, reading, says, shows, showing, still, now, only, about, around, roughly, like, cooled, down, come, coming, dropped, currently, everywhere, over, hits, hit, got, getting, thickest, part, spot, here, you
lexicon-talk-meat-tells = reads, reading, read, says, shows, showing, now, still, currently, dropped, cooled
lexicon-talk-meat-rests = cooler, ice chest, hotbox, towels, foil, wrapped, resting
lexicon-talk-short-breast = b, br, brst, brt, bst, bre
lexicon-talk-short-thigh = t, th, thi, thg, tgh
lexicon-talk-short-wing = w, wg, wng, wi
lexicon-talk-short-stuffing = st, stf, stuff
lexicon-talk-short-pit = ov, ovn, smkr, amb
lexicon-talk-everywhere = everywhere, every where, all over, all spots, in all spots, every spot, in every spot, all three, in all three, all around, throughout, all through, across the board, all of them
lexicon-talk-slip = oops, whoops, ooops, mean, meant, no, nope, sorry, lol, haha, hah, typo, wait, actually, correction, correct, rather, scratch, misread, wrong, fat fingers, my bad, bad, oh, ugh, argh, sry, mistyped, i mean
lexicon-talk-doubting = that cant be right, cant be right, that cannot be right, thats not right, that isnt right, doesnt look right, doesnt seem right, seems wrong, looks wrong, seems off, seems low, seems too low, seems way too low, thats way too low, thats too low, thats weird, weird
lexicon-talk-eat = can we eat, can we still eat, can i still eat, still edible, edible, still eat, ok to eat, okay to eat, safe to eat, to toss, toss it, should we toss, throw it out, throw it away, chuck it, bin it, too late, still ok, still okay, still safe, still fine, do we toss it
lexicon-talk-kind-fire = oven, heat, smoker, grill, fire, fires, bbq, barbecue, coals, charcoal, preheating, pit
lexicon-talk-kind-travel = drive, driving, ride, transport
lexicon-talk-kind-carve = carving, carving knife, knife
lexicon-talk-kind-water = water changes, water, night water, waters
lexicon-talk-kind-buy = shopping, buying, the shop
lexicon-talk-who-does-what = who's doing what, whos doing what, who is doing what, who does what, who has what, who's got what, whos got what, who's on what, whos on what
lexicon-talk-cancel = cancel, cancel it, cancel the plan, cancel dinner, cancel the dinner, cancel everything, cancel it all, cancelled, dinner is off, dinners off, dinner's off, dinner is cancelled, call it off, its off this year, calling it off, end the plan, stop the plan, delete the plan, forget the plan, forget dinner, scrap the plan, no dinner this year
lexicon-talk-who = who, whos, who is, whose, who will, wholl, who has, who does, who gets, who is going to, whos going to
lexicon-talk-asked-pull = taking it out, taking it off, pulling it, taking the bird out
lexicon-talk-asked-on = putting it in, putting the bird in, putting the turkey in, putting it on, putting the bird on
lexicon-talk-asked-fire = turning on the oven, preheating, preheating the oven, turns on the oven, lighting the fire, doing the fire, starting the oven
lexicon-talk-asked-check = checking temps, checking the temps, checking temperatures, doing temps, checking the temp
lexicon-talk-asked-water = changing the water, changing water, changes the water
lexicon-talk-asked-buy = buying, buying it, buying the bird, buying the turkey, buys the bird, getting the bird, getting the turkey, picking up the bird, picking up the turkey, shopping
lexicon-talk-asked-carve = carving, carves, carving it, carves it, carving the bird, carving the turkey, carves the bird, carve it
lexicon-talk-asked-salt = salting, salts, salting it, salts it, salting the bird, salts the bird, salting the turkey, salts the turkey, salt it
lexicon-talk-late = late, running late, held up, delayed, stuck in traffic
lexicon-talk-other-year = last year, last thanksgiving, last christmas, last easter, last time, the year before, years ago, year ago, other years
lexicon-talk-dish-add = add, also, plus
lexicon-talk-dish-and = and, also, plus, then, making, plus also
lexicon-talk-dish-doing = doing, making, having, want, need
lexicon-talk-both = both, both of them, both birds, all of them
lexicon-talk-dish-remove = remove, delete, without
lexicon-talk-dish-link = in, into, on, at, for, the, takes, needs, a, and, is, with
lexicon-talk-undo = undo, undo that, undo it, take that back, take it back, scratch that, cancel that, wrong button, my mistake, oops, revert, go back, that was wrong, i take that back, pressed wrong button
lexicon-talk-discard = never mind, nevermind, nvm, forget it, forget about it
lexicon-talk-thrown = threw away, threw out, thrown away, thrown out, throwing away, throwing out, threw it away, threw it out, threw it all out, threw it all away, threw everything away, threw everything out, had to throw away, had to throw out, had to throw it away, had to throw it out, tossed, tossed it, tossed it all, tossed everything, had to toss, had to toss it, binned, binned it, chucked, chucked it, trashed, trashed it, dumped it, in the trash, in trash, in the bin, in bin, in the garbage, in garbage, went in the trash, went in trash, had toss, had throw away, had throw out, had bin, had to bin, ended tossing, just threw out, threw away food, threw food out, threw meat away, threw meat out, tossed meat
lexicon-talk-greeting = hi, hello, hey, hiya, howdy, hi there, hello there, hey there, good morning, morning, good afternoon, good evening, evening, hi everyone, hello everyone, good day, happy thanksgiving, merry christmas
lexicon-talk-assent = ok, okay, k, kk, okey, yes, yep, yeah, yes please, sounds good, sounds great, looks good, looks great, good, great, perfect, sure, fine, alright, all right, go ahead, lets do it, lets go, do it, agreed, accept, accepted, i accept, deal, got it, will do, works for me, that works, ok good, ok great, ok lets do it, please do, cool, yes lets do it, yes do it, go for it, fine by me, ok go, lets go with it, lets go with that, go with that, go with it, that works great, sounds perfect, love it, ok do it, yup, yes lets, yes go, all good, looks perfect
lexicon-talk-thanks = thanks, thank you, thank you so much, thanks so much, thanks a lot, many thanks, thx, ty, cheers, thank you very much, ok thanks, great thanks, ok thank you, perfect thanks, much appreciated

## Asking for help in plain words; the names of languages
lexicon-help = help, help me, can you help me, can u help me, what can you do, how does this work
lexicon-language-en = english, inglés
lexicon-language-es = spanish, español, castellano
lexicon-language-fr = french, français
lexicon-language-de = german, deutsch
lexicon-language-pt = portuguese, português, brazilian
lexicon-language-it = italian, italiano

## Quiet hours, and that there are none
lexicon-quiet = quiet, quiet hours, do not disturb, dont disturb, dnd
lexicon-quiet-off = off, none, no, never

## A brine's percentage of the water; whose spoons
lexicon-ask-of-water = of water, of the water, by water, on water
lexicon-spoons-us = us spoons, american, us
lexicon-spoons-metric = metric
lexicon-spoons-uk = uk, british, imperial
lexicon-spoons-australia = australian, australia, aussie

## A word that takes the next one back
lexicon-negation = forget the, forget, no, not, not in the, not the, not on the, without the, without, skip the, never mind the
