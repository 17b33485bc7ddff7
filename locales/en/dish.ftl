# Dishes beside the bird.
dish-added = Added: { $what }, { $when }.
dish-changed = Changed: { $what }, { $takes }, { $when }.
dish-changed-at = Changed: { $what }, { $takes } at { $setting }, { $when }.
dish-told = { $what }: { $when }, { $takes }.
dish-told-at = { $what }: { $when }, { $takes } at { $setting }.
dish-all-fit = Yes, as planned it all fits:
dish-there = { $name } is on the plan already, { $when }.
dish-button-another = One more
dish-hot-through = { $target } in the middle before it's eaten.
dish-removed = { $name } is off the plan.
dish-none = There are no dishes on the plan.
dish-unknown = No { $name } on the plan. There is { $known }.
dish-name = { $name }
dish-stays = That doesn't work just now. Nothing has changed.
dish-left = Left as it was.
dish-start = You said { $said }. For this dinner it’s { $when }. If it can wait cold, say it’s made ahead.
dish-theirs = That's { $name }'s. Only they, whoever added it, the host or an admin can change it or take it off.
dish-ready = You said ready by { $said }. For this dinner it’s ready { $when }. If it can wait cold, say it’s made ahead.
dish-said = You said { $said }: pick what comes near it, or leave it.
dish-no-plan = The bird first: tell me about the dinner with /plan, then the rest of the table.
dish-no-name = What is it, and how long does it take? Like this: /plan add stuffing in the oven 45 min at 375
dish-no-time = How long does { $name } take? Like this: /plan add { $name } in the oven 45 min at 375
dish-time = { $name } may take 1 min to 12 h.
dish-setting = { $setting } is no setting for a dish: { $low } to { $high }. Like this: in the oven 45 min at 375
dish-too-many = That's { $most } dishes already. Take one away first: /plan remove …
dish-not-yet = “{ $name }” isn’t on the plan yet: first the dinner has to fit. Then tell me again.
dish-cold = In the fridge from { $when }, { $room ->
    [half] half a shelf
    [whole] one shelf
   *[more] { $shelves } shelves
}.
dish-iced = In a cooler with ice from { $when }, a thermometer in it: { $cold } or colder the whole time.
dish-shelves = { $count ->
    [one] One shelf
   *[other] { $count } shelves
} for the dinner, the bird’s among them. If everyday food needs some of that, tell me fewer.
dish-shelves-hint = Is the fridge crowded? Tell me “my fridge has 3 shelves”, and I check that it all fits beside the bird.
dish-stay = { $name } may wait 15 min to 2 days in the fridge, until dinner.
