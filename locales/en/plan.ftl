### The plan's values in words: steps, calls, reasons, changes, cautions, things.

# ---- names of steps, as on the board. One line on a phone: under 28 characters, no full stop.
plan-step-buy = Buy the bird
plan-step-thaw = Start thawing
plan-step-thaw-finish = From fridge to cold water
plan-step-water = Change the thawing water
plan-step-salt = Salt the bird
plan-step-rest = Salted rest in the fridge
plan-step-temper = Dry the bird
plan-step-fire = Preheat
plan-step-on = Bird on
plan-step-check = Check temperatures
plan-step-pull = Off the heat
plan-step-stand = Let it stand
plan-step-carve = Carve
plan-step-chill = Into the fridge
plan-step-pack = Pack it cold
plan-step-pack-hot = Wrap it hot
plan-step-travel = Leave
plan-step-reheat = Reheat
plan-step-serve = Dinner
plan-step-leftovers = Leftovers’ last day
plan-step-dish = { $name }

# ---- the same, done
plan-done-buy = Bird bought
plan-done-thaw = Thawing
plan-done-thaw-finish = In cold water
plan-done-water = Water changed
plan-done-salt = Salted
plan-done-rest = Resting in the fridge
plan-done-temper = Bird is dry
plan-done-fire = Heat is on
plan-done-on = Bird is on
plan-done-check = Temperatures checked
plan-done-pull = Off the heat
plan-done-stand = Standing
plan-done-carve = Carved
plan-done-chill = In the fridge
plan-done-pack = Packed cold
plan-done-pack-hot = Wrapped hot
plan-done-travel = On the road
plan-done-reheat = Reheated
plan-done-serve = Dinner served
plan-done-leftovers = Leftovers dealt with
plan-done-dish = { $name } started

# ---- calls: what to do now, with the care it needs. Two or three short sentences.
plan-call-buy = { $condition ->
    [frozen] Time to buy the bird. Straight home and into the freezer, or into the fridge if it thaws next.
   *[fresh] Time to buy the bird. Straight home and into the fridge, on a tray at the bottom.
}
plan-call-thaw-fridge = Bird into the fridge to thaw, in its wrapper, on a tray at the bottom. The fridge at { $cold } or colder; never on the counter.
plan-call-thaw-water = Bird into a leak-proof bag and under cold water. Change the water every { $every }. Never warm water.
plan-call-thaw-finish = Now from the fridge into cold water, in a leak-proof bag, to finish thawing. Change the water every { $every }. Never warm water.
plan-call-water = Change the thawing water ({ $n } of { $of }). Keep it cold, the bird in its leak-proof bag.
plan-call-salt-dry = Salt the bird: neck and giblets out, pat it dry, don’t wash it, salt inside and out. Then into the fridge uncovered, on a tray at the bottom.
plan-call-salt-wet = Bird into the brine, covered, and into the fridge. It stays at { $cold } or colder the whole time.
plan-call-salt-now = Out of the water now: neck and giblets out, dry it, salt it. Thawed in water, it goes straight on.
plan-call-rest = The salted rest: leave it in the fridge, uncovered, at the bottom.
plan-call-temper = Bird out of the fridge: neck and giblets out by now, dry it, pierce the skin, butter it. At most { $most } out, then on.
plan-call-temper-fat = Bird out of the fridge: neck and giblets out by now, dry it, prick the skin where it is fat, not into the meat. No butter: its own fat does it. At most { $most } out, then on.
plan-call-temper-water = Bird out of the water by now: dry it once more, pierce the skin, butter it. On within { $most }.
plan-call-temper-salt = Then salt it, which this plan left for last:
plan-call-fire-oven = Heat the oven to { $setting }.
plan-call-fire-smoker = Light the fire and let it settle at { $setting }. Outdoors only: charcoal never indoors or in a garage.
plan-call-on = Bird on. Thermometer in the thickest breast, clear of the bone.
plan-call-on-stuffed = Stuff it loosely just now, then bird on. Thermometer in the thickest breast, clear of the bone.
plan-call-check = Time for a look: breast, thigh and { $cooker ->
    [smoker] pit
   *[oven] oven
}. Just send me the numbers.
plan-call-pull = It should be about done. Off only at { $target } in the thickest breast, the innermost thigh and the wing. Less? It stays on.
plan-call-pull-stuffed = It should be about done. Off only at { $target } in the thickest breast, the innermost thigh, the wing and the middle of the stuffing. Less? It stays on.
plan-call-stand = Let it stand, loosely covered, { $least } or more.
plan-call-carve = Time to carve: clean board, clean knife.
plan-call-carve-hot = Thermometer first, in breast and thigh. { $hot } or hotter in both: carve, clean board, clean knife.
plan-call-chill-ahead = Carved meat into shallow dishes and into the fridge by { $latest }. Hot is fine; later isn’t.
plan-call-chill = Leftovers into the fridge by { $latest }, in shallow dishes. What stood out longer gets thrown away.
plan-call-pack = Pack it cold: the meat at { $cold } or colder, ice all round, cooler shut.
plan-call-pack-hot = Wrap it whole and hot: foil, then towels, in a box warmed with hot water. Leave the thermometer in. Over { $air } outside you have { $hour } to eat it, not two.
plan-call-travel = Time to leave. The cooler stays shut until the fridge or the oven over there.
plan-call-travel-hot = Time to leave. The box stays shut until you’re there.
plan-call-reheat = Reheat it covered, with a little broth, in a { $low } to { $high } oven until it’s { $target } all through.
plan-call-serve = Dinner. Enjoy it; I’ll call for the fridge later.
plan-call-leftovers = Leftovers: eat or freeze them today. It’s their last day in the fridge.
plan-call-dish = Time for { $name }.
plan-call-dish-oven = { $name }: into the oven at { $setting }, { $takes }.
plan-call-dish-smoker = { $name }: into the smoker at { $setting }, { $takes }.
plan-call-dish-stove = { $name }: onto the stove, { $takes }.
plan-call-dish-made = { $name }: start now, { $takes }.
plan-call-dish-chill = { $name }: into the fridge now, at { $cold } or colder, until dinner.
plan-call-dish-then-fridge = Then into the fridge until dinner, at { $cold } or colder.
plan-call-dish-then-cooler = Then into a cooler with plenty of ice, a thermometer in it: { $cold } or colder until dinner. Warmer than that for { $most }, it’s thrown away.
plan-call-dish-then-hot = Then keep it covered and hot, { $hot } or more, until dinner.

# ---- reasons: halves of sentences in lists, no capital, no full stop.
plan-reason-dinner = dinner is at that hour
plan-reason-now = it can’t be sooner than now
plan-reason-done = that’s when it was done
# $step is a step's name.
plan-reason-follows = “{ $step }” comes first and takes { $takes }
plan-reason-raw-keeps = a fresh bird keeps { $most } in the fridge
plan-reason-shop = shopping isn't before { $at }
plan-reason-use-by = the pack says use by { $day }
plan-reason-fridge-thaw = it thaws { $time } in the fridge
plan-reason-fridge-share = { $spent } in the fridge, of up to { $whole }; cold water does the rest
plan-reason-water-thaw = it thaws { $time } in cold water
plan-reason-water-finish = what is still ice thaws up to { $most } in cold water
plan-reason-water-change = the water is changed every { $every }
plan-reason-cook-at-once = thawed in water it is cooked at once
plan-reason-thawed-keeps = thawed it keeps { $most } in the fridge
plan-reason-salt-wants = the salt wants { $least } or more
plan-reason-salt-at-most = salted it waits { $most } at most
plan-reason-brine-wants = the brine wants { $least } or more
plan-reason-temper = about { $about } to dry and butter it
plan-reason-room-temperature = raw it is out of the fridge { $most } at most
plan-reason-preheat = { $cooker ->
    [smoker] the fire needs { $least } to settle
   *[oven] the oven needs { $least } to get hot
}
plan-reason-cooking-time = it cooks { $time }
plan-reason-forecast = that’s how far along it is
plan-reason-check-before = a look before it can be done
plan-reason-stand = it stands { $least } before carving
plan-reason-hot-hold = after the heat it waits { $most } at most unless kept at { $hot }
plan-reason-hot-road = carried hot it’s eaten within { $most } of leaving the heat
plan-reason-carving = carving takes about { $about }
plan-reason-two-hours = in the fridge within { $most }
plan-reason-cold-through = it needs { $least } in the fridge to be cold through
plan-reason-drive = the drive takes { $takes }
plan-reason-packed-cold = packed with ice it leaves within { $most }
plan-reason-reheat = reheating takes about { $about }
plan-reason-reheat-within = back to { $target } within { $most }
plan-reason-cooked-keeps = cooked it keeps { $most } in the fridge
plan-reason-sociable = at an hour when people are up
plan-reason-dinner-past = that dinner hour has passed
plan-reason-dinner-too-far = that dinner is more than a year away
plan-reason-drive-too-long = a cooler with ice is good for { $most } on the road
plan-reason-setting = { $cooker ->
    [smoker] a smoker goes from { $low } to { $high }
   *[oven] an oven goes from { $low } to { $high }
}
plan-reason-thaw-before-smoking = a smoker takes only a bird thawed through
plan-reason-stuffed-frozen = a bird that isn’t thawed can’t be stuffed
plan-reason-stuffed-form = only a whole bird can be stuffed
plan-reason-stuffed-kind = a duck isn’t stuffed
plan-reason-form-for-kind = a turkey breast is cooked as it is
plan-reason-mass-for-kind = such a bird weighs { $low } to { $high }
plan-reason-solution = the label’s percentage goes from 0 to 50
plan-reason-dish-hot = { $name } is hot on the table and waits { $most } at most
plan-reason-dish-ahead = { $name } is made ahead and kept in the fridge
plan-reason-heat-taken = { $how ->
    [setting] { $name } wants { $own } while { $other } wants { $others } there
    [time] { $name } wants its heat while { $other } has it
    [setting-bird] { $name } wants { $own } while { $other } wants { $others } there
    [time-bird] { $name } wants its heat while { $other } has it
    [full] only { $room } dishes go on that heat at once, and { $name } is one too many
   *[alone] { $name } wants a heat that something else has then
}
plan-reason-heat-bird = the bird
plan-reason-dish-cold = { $name } wants { $least } in the fridge
plan-reason-fridge-taken = with the bird in it the fridge ({ $shelves ->
    [one] one shelf
   *[other] { $shelves } shelves
}) has no room for { $name }
plan-reason-fridge-full = the fridge ({ $shelves ->
    [one] one shelf
   *[other] { $shelves } shelves
}) has no room left for { $name }, even without the bird

# ---- changes on offer: labels of buttons, under 28 characters.
plan-change-cold-water = Thaw in cold water
plan-change-finish-in-water = Fridge, then cold water
plan-change-fridge-thaw = Thaw in the fridge
plan-change-cook-frozen = Cook it from frozen
plan-change-shorter-rest = Shorter salted rest
plan-change-no-salt = No salt beforehand
plan-change-dinner = Dinner { $when }
plan-change-hotter = { $setting } instead
plan-change-flat = Open it flat
plan-change-unstuffed = Stuffing on the side
plan-change-cook-ahead = Cook it the day before
plan-change-carry-cold = Carry it cold
plan-change-smaller-bird = A bird of { $mass }
plan-change-two-birds = Two birds of { $mass }
plan-change-buy-fresh = Buy a fresh one instead
plan-change-buy-later = Buy a fresh one later
plan-change-freeze = Freeze it now
plan-change-dish-beside = { $name } in with the bird
plan-change-dish-ahead = { $name } ahead
plan-change-dish-early = { $name } earlier
plan-change-dish-out = Without { $name }
plan-change-dish-later = { $name } after the bird
plan-change-dish-cooler = { $name } in a cooler

# ---- what a change costs: halves of sentences after a colon.
plan-cost-cold-water = { $changes ->
    [one] one change of water, from { $when }; no salted rest
   *[other] { $changes } changes of water, from { $when }; no salted rest
}
plan-cost-finish-in-water = { $changes ->
    [one] one change of water, from { $when }; no salted rest, then straight on
   *[other] { $changes } changes of water, from { $when }; no salted rest, then straight on
}
plan-cost-fridge-thaw = into the fridge { $when }
plan-cost-cook-frozen = about { $time } in the oven, on { $when }; no salt beforehand
plan-cost-shorter-rest = { $rest } of salt instead of { $wanted }
plan-cost-no-salt = season it when it goes on
plan-cost-dinner = everything else as you wished
plan-cost-hotter = quicker, and it browns more
plan-cost-flat = backbone out; it cooks much quicker
plan-cost-unstuffed = it cooks quicker, and safer
plan-cost-cook-ahead = carved, chilled, reheated to { $target }
plan-cost-carry-cold = cooked the day before, reheated there to { $target }
plan-cost-smaller-bird = enough for everyone, little left over
plan-cost-two-birds = they thaw and cook quicker than one big one
plan-cost-buy-fresh = nothing to thaw; buy it { $when }
plan-cost-buy-later = the one at home won’t keep; buy it { $when }
plan-cost-freeze = into the freezer today, thawing from { $when }
plan-cost-dish-beside = at the bird’s setting: { $takes }, in at { $when }
plan-cost-dish-ahead = { $when }, then into the fridge; warmed to { $target } at the table
plan-cost-dish-early = { $when }, then kept covered at { $hot } or hotter
plan-cost-dish-out = the rest stays as it is
plan-cost-dish-later = in the fridge { $when }, once the bird is out: { $stay } or more instead
plan-cost-dish-cooler = with plenty of ice, a thermometer in it: { $cold } or colder all the time

# ---- cautions of a plan that works: whole sentences.
plan-caution-odd-hours = “{ $step }” falls into the night.
plan-caution-short-rest = Only { $rest } of salt: it gets less deep, and is still good.
plan-caution-keep-hot = It may be done { $wait } before it’s carved: keep it at { $hot } or hotter.
plan-caution-hot-till-packed = It may be done { $wait } before you wrap it: until then keep it at { $hot } or hotter.
# $reason is one of the reasons above.
plan-caution-overrun = A limit has been passed ({ $reason }). If in doubt, don’t eat it.
plan-caution-stuffing-apart = Take the stuffing out hot and chill it by itself.
plan-caution-stuffing-out = Take the stuffing out before you wrap it; it goes hot in a dish of its own.
plan-caution-oven-below-authority = Food-safety authorities say no oven below { $limit } for poultry.
plan-caution-smoker-below-authority = Below { $limit } is under the published range for smokers.
plan-caution-smoker-above-published = Above { $limit } a smoker’s times are cooks’ experience, not a published table.
plan-caution-long-in-danger-zone = Low and slow takes long between { $cold } and { $hot }, and the time is the least certain.
plan-caution-outside-table = No published table goes to this weight; the time is reckoned on from it.
plan-caution-stuffing-last = The middle of the stuffing must reach { $target } too, often last. Safer baked beside the bird.
plan-caution-from-frozen = From frozen the time varies a lot. Take the giblets out as soon as they come loose.
plan-caution-part-thawed = Part-thawed, the time lies anywhere between thawed and frozen.
plan-caution-pieces-differ = Pieces finish one by one: measure each.

# ---- what the plan takes for granted: nouns in a list.
plan-need-bird = the bird
plan-need-thermometer = a food thermometer
plan-need-salt = salt
plan-need-rack = a tray with a rack
plan-need-bag = a leak-proof bag
plan-need-brine-vessel = a pot for the brine that fits the fridge
plan-need-fuel = fuel for the smoker
plan-need-foil = foil
plan-need-shallow-dishes = shallow dishes
plan-need-cooler = a cooler with ice
plan-need-hot-box = an insulated box and towels
plan-need-broth = a little broth
