### The conversation: planning, the board, jobs, settings. Short as a text message; a cook reads it with wet hands.

# ---- buttons. Scripts rely on Accept, Change, Done, Later, Skip, Take, Drop, Undo, Yes, No.
room-button-accept = Accept
room-button-change = Change
room-button-done = Done
room-button-later = Later
room-button-skip = Skip
room-button-take = Take
room-button-undo = Undo
room-button-yes = Yes
room-button-no = No
room-button-back = Back
room-button-discard = Never mind
room-button-why = Why these times?
room-button-jobs = Share the jobs

# ---- start and help
room-start = I keep the plan for a whole bird: from buying it to the last leftovers. I do the sums on salt, thawing and cooking, and call you when something is due. What's first?
room-start-group = Hello all. I keep the plan for the bird: who does what, and when. Start with <b>/plan</b> and a sentence, like “/plan { units-example-bird } frozen turkey, dinner Thursday 5 pm, 11 people, oven”. I only see commands, replies to me and buttons.
room-start-button-plan = Plan a dinner
room-start-button-salt = How much salt?
room-start-button-safe = Is it safe?
room-how = Tell me the bird, when you eat and for how many. I work out thawing, salt, fridge and fire, call whoever has the job when it’s due, and plan again when something goes wrong. Send me temperatures while it cooks: I say when it’ll be done. And ask me anything. All commands: /help.
room-help-plan = Tell me the bird, the day and who is coming. For example:
    “{ units-example-plan }”
    I'll ask for what is missing.
room-help-salt = Ask the way you'd ask a friend. For example:
    “salt for a { units-example-smaller } turkey”
    “2 tbsp table salt in flake kosher”
    “my salt: 1/4 tsp is 0.7 g” and I'll use yours from then on.
room-help-safe = Ask with the numbers you have. For example:
    “is { units-example-asked } safe?”
    “turkey out for 3 hours, ok?”
    “how long do leftovers keep?”
    When in doubt, your food-safety authority has the last word.
room-help = <b>/plan</b> start a plan, or see the one you have
    <b>/board</b> what's next and who has it
    <b>/salt</b> doses and conversions
    <b>/ask</b> any quick question
    <b>/log</b> note temperatures: “breast 128, thigh 141”
    <b>/when</b> when it will be done
    <b>/move</b> dinner moves: “/move 6 pm”
    <b>/take</b> and <b>/drop</b> share the jobs
    <b>/undo</b> take back the last change
    <b>/export</b> the plan for your calendar, and all I keep
    <b>/settings</b> language, units, time zone
    <b>/stop</b> end the plan, <b>/forget</b> delete what I keep
room-unread = I didn't get that. Try { $stage ->
    [draft] “dinner 6 pm”, “12 people”, “no salt”, or tap a button
    [ahead] “done” once a job is, “I’ll carve”, “dinner an hour later”, or a question
    [alone] “done” once a job is, “dinner an hour later”, or a question
    [cooking] “{ units-example-log }”, “when?”, “it’s out” once it is, or a question
    [after] “leftovers are in the fridge”, a question like “how long do leftovers keep”, or /help
   *[none] “{ units-example-bird } frozen turkey, dinner Sunday 5 pm”, a question like “salt for a { units-example-smaller } turkey”, or /help
}.
room-unreadable = I can only read text. Type it out for me?
room-no-plan = No plan yet. Start one with a sentence, like “/plan { units-example-bird } frozen turkey, dinner Sunday 5 pm, 10 people, oven”.
room-stale = That button is from an earlier plan. /board shows how things stand.
room-not-yours = That one is for somebody else to answer.
room-not-here = You're not in that chat, so I can't change its plan.
room-flooded = Too much at once: I've stopped reading. Give me a minute.
room-need-person = I can't tell who you are in here. Post as yourself and try again.
room-may-host = Only { $name }, who started the plan, or an admin can do that.
room-may-not = Only an admin of this chat can do that.

# ---- a bird, a cooker. $kind: turkey, turkey-breast, chicken, capon, duck, goose. $form: whole, flat, pieces, stuffed.
room-bird = { $mass } { $condition ->
    [frozen] frozen{" "}
    [part-thawed] half-thawed{" "}
   *[fresh] {""}
}{ $form ->
    [stuffed] stuffed{" "}
    [flat] flattened{" "}
   *[whole] {""}
}{ $kind ->
    [turkey-breast] turkey breast
    [chicken] chicken
    [capon] capon
    [duck] duck
    [goose] goose
   *[turkey] turkey
}{ $form ->
    [pieces] {" "}in pieces
   *[whole] {""}
}
room-heat = { $cooker ->
    [fan-oven] fan oven at { $setting }
    [smoker] smoker at { $setting }
   *[oven] oven at { $setting }
}
room-birds = { $count } × { $bird }

# ---- asking for what is missing. $parts is a list of what is known.
room-known = So far: { $parts }.
room-known-mass = { $mass }
room-known-bird = { $condition ->
    [frozen] frozen{" "}
    [part-thawed] half-thawed{" "}
    [fresh] fresh{" "}
   *[unknown] {""}
}{ $kind ->
    [turkey-breast] turkey breast
    [chicken] chicken
    [capon] capon
    [duck] duck
    [goose] goose
   *[turkey] turkey
}
room-known-form = { $form ->
    [pieces] in pieces
   *[flat] opened flat
}
room-known-guests = { $guests ->
    [one] one person
   *[other] { $guests } people
}
room-known-salt = { $how ->
    [none] no salt
    [bold] more salt
   *[light] less salt
}
room-known-dinner = dinner { $when }
room-known-start = on at { $when }
room-known-use-by = use by { $day }
room-known-shop = shopping { $when }
# $start: the hour somebody said; $on: the plan’s.
room-proposal-start = You said on at { $start }. For this dinner it goes on at { $on }.
room-shop-not = Shopping { $said } doesn't fit: buy it { $when }.
room-proposal-dish = { $dish }
room-proposal-beside = Once it’s a plan I add: { $dishes }.
room-known-drive = { $drive } away
room-ask-zone = Where is the kitchen? A city or a time zone will do: “Chicago”, “Europe/Madrid”.
room-ask-dinner = When is dinner? Day and hour: “Thursday 5 pm”.
room-ask-dinner-hour = What time is dinner? “5 pm”
room-ask-dinner-day = Which day? “Thursday”, “25 November”
room-ask-size = How heavy is the bird, or how many are eating? “{ units-example-bird }” or “11 people”
room-ask-weight = How heavy is the new one? It’s on the label: “{ units-example-bird }”.
room-ask-condition = Is the bird frozen?
room-ask-cooker = What will you cook it in?
room-ask-drive = How long is the drive?
room-ask-change = What should be different? Tap one, or just say it: “dinner 6 pm”, “{ units-example-bigger }”, “14 people”.
room-condition-frozen = Frozen
room-condition-fresh = Fresh or thawed
room-condition-part-thawed = Half thawed
room-cooker-oven = Oven
room-cooker-fan-oven = Fan oven
room-cooker-smoker = Smoker
room-drive-15 = 15 min
room-drive-30 = 30 min
room-drive-60 = 1 hour
room-change-no-salt = No salt
room-change-dry-salt = Dry salt
room-change-fridge = Thaw in the fridge
room-change-cold-water = Thaw in cold water
room-change-ahead = Cook it the day before
room-change-same-day = Cook it on the day
room-change-hot = Carry it hot
room-change-cold = Carry it cold
room-change-there = Cook it there
room-change-home = at home
room-kept = The rest stays as it is. { $known }
room-plan-unread = I couldn't find a bird or a day in “{ $text }”. Try “{ units-example-bird } frozen turkey, dinner Sunday 5 pm, 10 people”.

# ---- the proposal
room-proposal-head = <b>{ $bird }</b>{ $guests ->
    [0] {""}
    [one] {" "}for one
   *[other] {" "}for { $guests }
}, { $heat }. On the table <b>{ $when }</b>.
room-proposal-size = That's about { $mass } of bird for your table.
room-proposal-small = A little small: for { $guests } people I'd look for { $mass }.
room-proposal-ready = Off the heat between { $from } and { $to }, nine times in ten by the later one.
room-proposal-need = You need: { $things }.
room-proposal-use-by = On the pack: use by { $day }.
room-proposal-first = First: <b>{ $what }</b>, { $when }.
room-line = { $when } · { $what }
room-need-salt = { $grams } salt ({ $spoons } of { $salt ->
    [table] table salt
   *[flake-kosher] flake kosher
})
room-accepted = It's a plan. I'll call when something is due.
room-discarded = All right, dropped.

# ---- why. $reasons is a list of sentences' halves from plan.ftl.
room-why = Why these times:
room-why-line = <b>{ $what }</b>, { $when }: { $reasons }.

# ---- a wish that can't be met
# $because is a list of reasons (halves of sentences).
room-clash = That can't work: { $because }.
room-clash-short = There isn't time for that: { $because }. It's about { $short } short.
room-clash-now = It no longer fits: { $because }. It's about { $short } short.
room-clash-keeps = It won't keep until dinner: { $because }. That's about { $short } too long.
room-clash-use-by = A use-by date on the pack? Tell me, like “use by Friday”: unopened, it keeps until then.
room-clash-instead = <b>I'd do this instead: { $change }</b> ({ $cost }).
room-clash-others = Or else:
room-clash-offers = What would work:
room-clash-offer = • { $change }: { $cost }
room-clash-hopeless = I see no safe way to that hour. A later dinner or another bird?
room-mended = All right: { $change }.

# ---- the board
room-board-dinner = <b>Dinner { $when }</b>
room-board-bird = { $bird }, { $heat }
room-board-no-heat = No heat since { $since }.
room-board-clash = It doesn't fit like this: pick a way out above, or tell me what changes.
room-board-next = { $late ->
    [yes] <b>Due: { $what }</b>
   *[no] <b>Next: { $what }</b>
}, { $when }{ $who }
room-board-then = { $when } · { $what }{ $who }
room-board-who = {" "}– { $name }
room-board-nobody = {""}
room-board-more-dishes = … and { $count } more, with { $dishes }
room-board-more = … and { $count } more
# $standing: spare ($span is left before dinner), tight, late, no (nothing is said of it).
room-board-ready = Off the heat { $from } to { $to }{ $standing ->
    [spare] , { $span } to spare
    [tight] , tight
    [late] , too late for dinner
   *[no] {""}
}
room-board-done = Done: { $jobs }
room-board-done-one = { $what }
room-board-done-by = { $what } ({ $name })
room-board-assumed = I take it: { $jobs }. Nobody said so.
room-board-skipped = no “{ $what }”
room-pin-how = I can't pin the board here. If you'd like it at the top, make me an admin who may pin; /board brings it down here any time.
room-left = { $name } has left. Free again: { $jobs }.
room-board-all-done = All done. Enjoy.

# ---- jobs
room-call-again = Still open since { $since }: { $what }.
room-call-from = For { $what }:
room-call-name = { $name }:
room-call-ahead = For { $at }:
room-done = { $what }, { $at }.
room-done-by = { $what }, { $name }, { $at }.
room-skipped = Skipped: { $what }.
room-skipped-by = { $name } skipped: { $what }.
room-next = Next: { $what }, { $when }.
room-later = All right, again at { $when }.
# Whoever drives to the other house is held up; $by: the end of the two hours since the bird was last known to be hot.
room-held-up-leave = Leaving at { $when } then. I ask again at that hour.
room-held-up-hot = Leave it wrapped and shut. Unless breast and thigh read { $hot } or more there: eaten by { $by }, not served after that.
room-held-up-over = Its two hours were over at { $by }. Unless breast and thigh read { $hot } or more up to then, don’t serve it.
room-taken = Yours: { $what }, { $when }.
room-taken-water = Yours: { $what }, { $when }, and { $count ->
    [one] the change of water
   *[other] the { $count } changes of water
} after it.
room-take-yours = You have that one already.
room-take-theirs = { $name } has that one.
room-dropped = { $what } is free again.
room-drop-free = Nobody has that one.
room-skip-theirs = That's { $name }'s. Only they, the host or an admin can leave it out.
room-drop-theirs = That's { $name }'s. Only they, the host or an admin can hand it back.
room-already = That's settled already.
room-already-by = { $name } settled that, { $at }.
room-jobs = Tap one to take it, or to hand it back.
room-jobs-take = { $what }
room-jobs-drop = { $what } ({ $name })
room-step-unread = I know no job “{ $text }” in this plan.
room-missed = While I was away this fell due: { $what }. /board shows what still matters.
room-shifts = That moves the rest:
room-shift = { $what }: { $is } (was { $was })

# ---- dinner moves, undo, the end
room-move-how = Dinner is { $dinner }. To move it: “/move 6 pm” or “/move +45 min”.
room-move-past = { $when } is already over, it's { $now }. Dinner stays { $dinner }.
room-move-unread = I can't read a time in “{ $text }”. Try “/move 6 pm” or “/move +45 min”. Dinner stays { $dinner }.
room-move-clash = { $when } doesn't work. Dinner stays where it was.
room-moved = Dinner is now <b>{ $when }</b>.
room-move-already = Dinner is { $when } already.
room-move-already-by = { $name } was first: dinner is { $when }.
# Someone comes late. $when: when they come; $dinner: the hour that stands.
room-late = Dinner { $when } instead of { $dinner }?
room-wanted = { $name } would like dinner { $when } instead of { $dinner }.
room-late-on = The bird is on already and comes off as planned.
room-late-kept = Dinner stays <b>{ $when }</b>.
room-late-host = That's for { $name } or an admin to choose.
room-late-stands = { $stands ->
    [off] It’s off the heat already:
   *[done] It’s done: off it comes, and
} hold it hot, covered, in the oven on low, and it must keep reading { $hot }. Colder, and it’s eaten or in the fridge by { $until }. Or carve it now, chill it in shallow dishes, and reheat to { $target }.
room-late-how = How late? Say “dinner an hour later”, and I’ll see what that moves.
room-button-late-keep = Leave it
room-misread = Take { $parts } back?
room-undone = Taken back: { $what }.
# Who did it, and when.
room-undone-by = Taken back: { $what } ({ $name }, { $at }).
# $change: done, skipped, take, drop, moved, dish, logged. $step is empty where no job was meant.
room-undone-what = { $change ->
    [back-on] the bird back on
    [unmarked] the correction of “{ $step }”
    [done] “{ $step }” done
    [skipped] “{ $step }” skipped
    [take] “{ $step }” taken
    [drop] “{ $step }” handed back
    [moved] the new dinner hour
    [dish] the change of dishes
    [logged] the last reading
   *[other] the change of plan
}
room-undone-dish = { $how ->
    [added] adding “{ $name }”
    [gone] taking away “{ $name }”
   *[changed] the change of “{ $name }”
}
room-undo-nothing = Nothing to take back.
room-undo-stale = Something has happened since. /undo takes back the newest change first.
room-undo-gone = That has been taken back already.
room-undo-theirs = The last change is { $name }'s: { $what }. Only they, the host or an admin can take it back.
# A mark that is no slip any more: only the mark can go, not what was done to the food.
room-undo-sure = “{ $step }” was marked done, { $at }. Was that a mistake? Only the mark can go; what's done to the bird stays done.
room-undo-sure-by = { $name } marked “{ $step }” done, { $at }. Was that a mistake? Only the mark can go; what's done to the bird stays done.
room-button-undo-sure = A mistake, undo
room-undo-rests = “{ $step }” stays: after it came “{ $later }”, { $at }. That can't be taken back.
room-undo-rests-read = “{ $step }” stays: the bird was measured after it, { $at }. That can't be taken back.
room-undo-late = I can't take that back any more. The plan stays as it is.
room-stop-sure = End the plan for { $dinner }? I'd stop calling.
room-stopped = Ended. I won't call any more.
room-stopped-calendar = If it's in your calendar, /export takes it out again.
room-stopped-back = You can still say “back on”, for an hour.
room-stopped-told = Dinner { $dinner } is cancelled. You don't need to do anything.
room-back-again = It's back on: dinner <b>{ $dinner }</b>.
room-kept-going = Good, nothing changes.
room-eve = Tomorrow:
room-eve-job = { $when } · { $what }
room-eve-early = That's early: set an alarm for { $at } too, in case your phone is muted.
room-forget-sure-me = I keep { $things }. Delete all of it? In groups, what you did stays done, without your name.
room-forget-sure-group = I keep { $things }. Delete all of it, for everyone? What I keep of each of you yourselves stays until you ask me in private.
room-kept-name = your name
room-kept-settings = your settings
room-kept-salt = your salt
room-kept-cooker = your cooker
room-kept-fridge = your fridge: shelves and temperature
room-kept-learned = how your cooker cooks
room-kept-notes = notes on past dinners
room-kept-plan = what you plan here with me
room-kept-question = what you asked last
room-kept-groups = your jobs, readings and links in groups
room-kept-title = this chat’s name and settings
room-kept-members = who is in it
room-kept-jobs = the plan with its jobs and who has them
room-kept-readings = the readings
room-kept-said = half-told plans and questions
room-kept-links = links to the private chat
room-forgotten = Deleted.

# ---- readings
room-log-how = Tell me what the thermometers say: “{ units-example-log }”. A time may follow: “at 2:05 pm”.
room-frozen-on = Leave it in the heat: it takes up to half as long again.{ $smoker ->
    [yes] {" "}A smoker is too slow for that: move it to an oven at { $oven }.
   *[no] {""}
}{" "}Giblets out once they come loose, and off only at { $target } everywhere.
room-log-noted = Noted: { $parts }.
room-log-spot = { $spot ->
    [breast] breast { $temperature }
    [thigh] thigh { $temperature }
    [wing] wing { $temperature }
    [stuffing] stuffing { $temperature }
    [oven] oven { $temperature }
   *[pit] pit { $temperature }
}
room-log-on-unsaid = Nobody has told me that the bird is on. Is it?
room-log-both = { $target } in both. Check the innermost part of the wing too; if it's there as well, off it comes.
room-log-all = { $target } in breast, thigh and wing: off it comes.
room-log-too-long = { $target } now, but it stood without heat for more than two hours: cooking doesn’t undo that. I wouldn’t serve it.
room-log-thigh-behind = The breast is there, the thigh isn't. It stays on until the thigh reads { $target } too.
room-log-wing-behind = Breast and thigh may be there, the wing isn't. It stays on until the innermost part of the wing reads { $target } too.
room-log-breast-behind = The thigh is there, the breast isn't. It stays on until the breast reads { $target } too.
room-log-stuffing-behind = Breast and thigh are there, the stuffing isn't. It stays in until the stuffing reads { $target } too.
room-log-stuffing-unread = Breast and thigh are there. Now the middle of the stuffing: the bird stays in until that reads { $target } too.
room-log-asked-not = No: { $spot ->
    [breast] the breast
    [thigh] the thigh
    [wing] the wing
   *[stuffing] the stuffing
} has to reach { $target }.
room-log-one-spot = { $target } in one spot. Check the others before you trust it: thickest breast, innermost thigh and wing.
room-log-doubt = { $spot ->
    [breast] Breast
    [thigh] Thigh
    [wing] Wing
    [stuffing] Stuffing
    [oven] Oven
   *[pit] Pit
} at { $given }? I'd expect { $low } to { $high }, so I haven't noted it.{ $celsius ->
    [yes] {" "}If that was °C, write it with a C: “58C”.
   *[no] {" "}Look again and send it once more.
}
room-log-fell = { $spot ->
    [breast] Breast
    [thigh] Thigh
    [wing] Wing
    [stuffing] Stuffing
    [oven] Oven
   *[pit] Pit
} at { $given }? It was { $last } before, and meat over heat doesn't cool like that. A digit missing, or the probe moved? I haven't noted it; send it again with what it reads now.
room-when = Off the heat between { $from } and { $to }. Dinner { $dinner }.
room-when-off = Off the heat since { $since }.{ $eaten ->
    [no] {" "}Dinner { $dinner }.
   *[yes] {""}
}
room-when-dinner = Nothing on the heat right now. Dinner { $dinner }.

# ---- settings
room-settings-yours = <b>Your settings</b>
room-settings-rooms = <b>Settings of this chat</b>
room-settings-language = Language: { $language }
room-settings-units = Units: { $chosen }
room-settings-spoons = Spoons: { $spoons }
room-settings-zone = Time zone: { $zone } (now { $now })
room-settings-zone-unset = Time zone: not set
room-settings-quiet = Quiet hours: { $from } to { $to }
room-settings-quiet-none = Quiet hours: none
room-settings-quiet-unread = Quiet hours as in “quiet 22:00 to 7:00”, or “quiet off”.
room-settings-button-language = Language
room-settings-button-units = Units
room-settings-button-spoons = Spoons
room-settings-button-zone = Time zone
room-settings-button-quiet = Quiet hours
room-settings-pick-language = Which language?
room-settings-pick-units = Which units?
room-settings-pick-spoons = Whose spoons and cups?
room-settings-salt = Your salt: { $weighs } g a teaspoon
room-settings-salt-none = Your salt: not told yet
room-settings-cooker = Your cooker: { $cooker }
room-settings-cooker-none = Your cooker: asked each time
room-settings-fridge = Your fridge: { $at }
room-settings-fridge-none = Your fridge: not measured
room-settings-button-salt = My salt
room-settings-button-cooker = My cooker
room-settings-button-fridge = My fridge
room-settings-pick-salt = Tell me what the packet says: “my salt: 1/4 tsp is 0.7 g”. I'll reckon with it from then on.
room-settings-salt-drop = Forget my salt
room-settings-pick-cooker = What do you usually cook a bird in? A plan that names nothing else is for that.
room-settings-cooker-any = Ask each time
room-settings-pick-fridge = What does a thermometer in your fridge show?
room-settings-fridge-unknown = Not measured
room-settings-shelves = Fridge shelves for a dinner: { $count }
room-settings-shelves-none = Fridge shelves for a dinner: not told
room-settings-button-shelves = Fridge shelves
room-settings-pick-shelves = How many shelves of your fridge are free for a dinner? The bird takes one, a dish half a one, and I say when it doesn’t fit.
room-settings-shelves-unknown = Don’t check
room-settings-pick-zone = Where is the kitchen? Type a city or a time zone, “Chicago” or “Europe/Madrid”, or send me your place. The place itself is not kept.
room-settings-pick-zone-group = Where is the kitchen? Say it with “/settings Chicago”; a time zone like “Europe/Madrid” will do too.
room-settings-pick-quiet = When should I leave you in peace? What you took yourself, and food safety, still comes through.
# Languages in their own words.
room-language-en = English
room-language-es = Español
room-language-fr = Français
room-language-de = Deutsch
room-language-pt = Português (Brasil)
room-language-it = Italiano
room-units-us = pounds, °F
room-units-metric = kilograms, °C
room-spoons-us = US (4.93 / 14.8 / 237 mL)
room-spoons-metric = metric (5 / 15 / 250 mL)
room-spoons-uk = UK (5 / 15 mL)
room-spoons-australia = Australian (5 / 20 / 250 mL)
room-quiet-span = { $from } to { $to }
room-quiet-none = None
room-zone-choice = { $zone }
room-zone-which = There is more than one. Which?
room-zone-unknown = I don't know “{ $text }” as a place. A larger city nearby, or a zone name like “America/Chicago”?
room-zone-nowhere = I can't tell the time zone there. Type a city instead?
room-zone-set = { $zone } it is: { $now } there now.

# ---- salting. $places is a list of room-dose-place.
room-dose-total = { $grams } in all, that's { $spoons } of { $salt ->
    [own] your salt
    [table] table salt
   *[flake] flake kosher
}.
room-dose-places = { $places }.
room-dose-place = { $spoons } { $place ->
    [cavity] in the cavity
    [bone-side] on the bony side
    [breast] { $count ->
        [one] under the breast skin
       *[other] under the skin of each breast
    }
    [thigh] under the skin of each thigh
    [drumstick] under the skin of each drumstick
   *[skin] on the skin
}
room-dose-skin = The skin's spoon goes on mixed with as much pepper and as much baking powder.
room-dose-none = No salt on this one: the packer's { $percent } % solution is salt enough.
room-dose-presalted = No salt on this one: the packer has salted it, you said.
room-dose-light = A light hand: the packer has already put { $percent } % of solution in.
room-salted-by = { $name } salted it already, { $at }. If it really has salt on it twice:
room-salted = It’s salted already, since { $at }.
room-salt-then = Salt it { $salt }, then uncovered in the fridge till it goes on, { $on }.
room-salt-straight = Salt it { $salt }, out of the water and dry; then straight on, { $on }.
room-salt-no-rest = This plan has no salted rest: salt it just before it goes on, { $on }.
room-button-sources = Where from?
room-question-gone = That question is too far back. Ask it again?
room-sources = The numbers come from:
room-too-long = That's { $length } characters, more than I can read at once ({ $most } is the most). One or two sentences will do.
room-proposal-night = At night: { $jobs }.
room-pack-warm = Off the heat at { $off }, so it isn't cold yet: eaten or in a fridge by { $by }, in a cooler on ice too, unless it stays at { $hot } or hotter. Not sure? Throw it away.
room-chill-late = That was after { $by }. What stood out longer than two hours gets thrown away, even if it looks fine.
# $jobs: what was planned for it and is called for no more.
room-chill-ended = So these drop out: { $jobs }. In there in time after all? Undo.
room-limit-chill = The two hours are over. Whatever stands out and wasn’t kept at { units-example-hot } or hotter gets thrown away.
room-limit-chill-hot = The hour is over, hot as it is. Whatever stands out and wasn’t kept at { units-example-hot } or hotter gets thrown away.
# What is said of how long it has been out, and the clock kept: the stricter. $since: from when it counts; $off: when it was told to be off.
room-out-clock = I count from { $since }{ $from ->
    [read] , when it last read hot
    [heat] , when it came off the heat
   *[other] {""}
}: eaten or in the fridge by { $by }.
room-out-clock-over = I count from { $since }{ $from ->
    [read] , when it last read hot
    [heat] , when it came off the heat
   *[other] {""}
}: the time was up at { $by }. What wasn’t kept at { $hot } or hotter gets thrown away.
room-out-earlier = Out since { $since } is before { $off }, when I had it come off the heat, so I go by { $since } now: eaten or in the fridge by { $by }.
room-out-earlier-over = Throw it away: out since { $since }, which is before { $off }, when I had it come off the heat. The time was up at { $by }.
room-never-off = Nobody told me when it came off the heat. Off at { $when } as planned, it’s eaten or in the fridge by { $by }; off earlier, sooner. Unless it stayed at { $hot } or hotter.
room-never-off-over = Nobody told me when it came off the heat. Off at { $when } as planned, the time was up at { $by }: keep only what was in the fridge by then or stayed at { $hot } or hotter. The rest gets thrown away.
room-never-off-unread = And nobody has read { $target } in breast, thigh and wing: without that it isn’t safe to eat.
room-raw-eve = The fresh bird has to be on the heat or in the freezer by { $until }. Dinner is { $dinner }.
room-raw-over = The fresh bird's time in the fridge is up: on the heat or into the freezer now. After that I can't call it safe.
room-hello = Hello. Tell me the bird, the day and how many are eating: “{ units-example-bird } frozen turkey, dinner Sunday 5 pm, 10 people”. Or ask me anything.
room-amended = All right: { $known }.
room-unbought = Not bought yet, I see. Shopping is on for { $when } now, and the rest goes by that.
room-unthawed = Not thawing yet, I see. It begins { $when } now, and the rest goes by that.
room-whether-bought = Nobody has said so: is the bird bought?
room-unlit = Then it's on now, to { $setting }: the bird goes in about { $when }, once that is hot, and waits in the fridge till then.
room-oven-free = The oven is free once the bird is off the heat, about { $off }, until { $carve }. { $host } has the last word on it.
room-whether-thawing = Nobody has said so: has the bird been thawing since { $since }?
room-swap-keeps = Fresh, it keeps two days at most: buy it { $when }, not sooner, unless the date on the pack allows it. In the house already? Tell me.
room-button-have-it = We have it
room-button-not-yet = Not yet
room-amend-told = Going by { $name }: { $change }. For the plan too, { $host }?
room-button-amend = Change the plan
room-not-done = Good to know: { $what } is still to do.
room-stays-on = All right, it stays on.
room-water-not = Is the water still cold, { $cold } or less? Change it now and go on. Warmer than that for over { $limit }: throw the bird away.
room-thaw-early = That’s early: in cold water it’s thawed by { $thawed }, and goes on { $on }. Once thawed: out of the water, into the fridge at { $cold } or less. Or stop now: into the fridge, “Undo”, and water from { $water }.
room-thaw-water = In cold water it’s thawed by { $thawed }: change the water every { $every }. Then out of it, into the fridge at { $cold } or less; it goes on { $on }. Rather as planned? Into the fridge now, and “Undo”.
room-thaw-long = It’s been thawed since { $thawed }. Water still { $cold } or less? Into the fridge with it now. Warmer than that for over { $limit }: throw the bird away.
room-thaw-out = By now it’s thawed: out of the water and into the fridge, { $cold } or less, in a dish. No more water. Still ice inside? Change the water and go on. It goes on { $on }.
room-ok = Good.
room-yes-what = Yes to what? I’ve changed nothing. Say it again in full: “dinner at 5”.
room-fine = All right.
room-unsaid = Nobody has said so yet.
room-not-yet = All right, not yet.
room-when-step = { $what }: { $when }.
room-when-none = There is no “{ $what }” in this plan.
room-hour-fits = { $what }: { $asked } works, and so does any time from { $from } to { $to }. Tell me when it’s done.
room-hour-early = { $what }: { $asked } is too early. From { $from }; planned for { $planned }.
room-hour-late = { $what }: { $asked } is too late. By { $to }; planned for { $planned }.
room-hour-only = { $what }: only { $planned } works in this plan.
room-who-has = { $what }, { $when }: { $name }.
room-who-nobody = Nobody has it yet: { $what }, { $when }.
room-day-free = Nothing left to do that day.
room-ice = Good that you looked. It stays in the fridge, and from { $when } cold water finishes it; then straight on.
room-ice-now = Good that you looked. Then it finishes in cold water now, in a tight bag; then straight on.
room-ice-early = That’s to be expected. Leave it in the fridge and look again { $when }: still ice then, and cold water finishes it in time.
room-ice-roast = Good that you looked. Water would take too long: at { $when } it goes into the oven as it is, unstuffed.
room-ice-roast-now = Good that you looked. Water would take too long: into the oven as it is now, unstuffed.
room-ice-done = Up to half as long again; giblets out once they come loose; { $target } everywhere.
room-never-fridge = No harm done yet: into the fridge now, on a tray.
room-never-both = Into the fridge now, on a tray; from { $when } cold water finishes it.
room-never-water = Then cold water has to do it, from { $when }, in a tight bag; then straight on.
room-never-water-now = Then cold water has to do it, from now, in a tight bag; then straight on.
room-never-roast = No time to thaw it: at { $when } it goes into the oven frozen, unstuffed.
room-never-roast-now = No time to thaw it: into the oven frozen now, unstuffed.
# $when: the next job with it.
room-thawed = Thawed: no ice in the cavity, the legs move? Then it stays in the fridge until { $when }.
# Thawed in water, which is cooked at once. $when: its hour for the heat; far: hours off, or tomorrow.
room-thawed-water = Out of the water, thawed: no ice inside, legs loose? Cooked at once is best: on the heat as soon as you can. Until { $when } at most it waits in the fridge, at { $cold } or colder.
room-thawed-water-far = Thawed in water it’s cooked at once, and doesn’t wait in the fridge until { $when }. Cook it now; carved and chilled, it’s reheated to { $target } for dinner.
room-stuffing-out = Noted: the stuffing finishes by itself, to { $target } in its middle. The bird now goes by breast, thigh and wing, { $target } each.
room-thawed-now = Thawed: no ice in the cavity, the legs move? Then on with it.
room-log-when = When was that? Tell it with the hour, like “breast 95 at 1:30”. Without one I’d take it for now.
room-heat-set = Noted: { $setting } from now on.
room-heat-moved = Noted: in { $cooker ->
    [smoker] the smoker
    [fan-oven] the fan oven
   *[oven] the oven
 } at { $setting } from now on.
room-leftovers-until = Yours: eaten or frozen by { $when }, if they went into the fridge in time.
room-leftovers-over = Yours have had their days ({ $when }): throw out what isn’t frozen.
room-leftovers-if = Only what went into the fridge within two hours; the rest is thrown away.
room-ok-due = Good. Say “done” when that is over: { $what }.
room-ok-which = Which one? Tap it, and it’s done.
room-welcome = Any time.
room-amend-clash = As things are that doesn't fit. The plan stays as it is.
room-undone-dinner = Dinner is { $when } again.
room-already-you = You settled that already, { $at }.
room-proposal-carry = Cooked at home the day before, carried cold, reheated over there. If you cook it there, say “cook it there”.
room-proposal-hot = Carried hot: whole and wrapped, eaten within { $most } of leaving the heat ({ $hour } if it’s over { $air } out). Longer only while it reads { $hot } or more. Rather cold? Say “carry it cold”.
room-proposal-or-hot = Rather hot? Say “carry it hot”.
room-hour-there = That hour is now the place’s own: { $there }. If you meant home’s clock, say “dinner { $home }”.
room-proposal-not-hot = Cooked the day before it can’t go hot. For hot, say “carry it hot”: it’s cooked on the day then.

# ---- /export: a line with each file.
room-export-calendar = The plan for your calendar. It won't follow changes: ask again and the new times replace the old.
room-export-calendar-ended = Open it in your calendar and the ended plan's jobs go from it.
room-export-page = One page for the fridge door. Print it, tick things off.
room-export-readings = The temperatures, for a spreadsheet.
room-export-everything = Everything I keep about this chat.
room-shift-more = … and { $count } more move along.
room-pull-sure = { $spot ->
    [thigh] The thigh
    [wing] The wing
    [stuffing] The stuffing
   *[breast] The breast
} read { $read } at { $at }, and it comes off at { $target }. Does it read that now?
room-carve-under = { $spot ->
    [thigh] The thigh
    [wing] The wing
    [stuffing] The stuffing
   *[breast] The breast
} read { $read } at { $at }, no higher since. Under { $target } it goes back into the heat before anyone eats: measure first.
room-no-heat = No heat since { $since }? Tell me when it’s back, or where the bird is now. Under { $hot } by { $until }, it gets thrown away.
room-no-heat-over = Two hours without heat, since { $since }: whatever reads under { $hot } gets thrown away. Hotter everywhere, it may cook on, to { $target }.
room-eat-cooking = Not yet: it’s safe only at { $target } in breast, thigh and wing.
room-call-carve-unsaid = Is it off the heat? Nobody has told me. Off only at { $target } in breast, thigh and wing; less, and it stays on.
room-back-on = Back on. Off only at { $target } in the thickest breast, the innermost thigh and the wing: measure again at { $look }.
room-carve-unread = Did it read { $target } in breast, thigh and wing? Nobody has told me. If you don’t know, measure now: less, and it goes back into the heat before anyone eats.
room-button-reads-now = Yes, it does
room-button-stays-on = It stays on
room-done-which = Off the heat, or only looked? Off it comes only at { $target } in breast, thigh and wing.
room-button-looked = Only looked
room-hold = Carving is at { $carve }. Will it be kept at { $hot } or hotter until then, covered, a thermometer in it? If not, it’s carved, eaten and in the fridge by { $by }.
room-hold-packed = Wrapping is at { $pack }. Will it be kept at { $hot } or hotter until then, covered, a thermometer in it? If not, it’s eaten and in the fridge by { $by }.
room-report-early = “{ $what }” is planned for { $when }. Really done already?
room-aside-ask = Is that the bird? “{ $what }” is due.
room-two-thermometers = Go by the lower one, { $low }. Check both in ice water: more ice than water, stirred, they should read { $ice }. Then tell me the spot: breast, thigh or wing.
# One spot read several times, each time something else. $low: the lowest.
room-wandering = The lowest counts for now: { $low }. Go in again at the thickest part, clear of bone, hold it until it stands still, then tell me that one.
# Digits written apart, as voice typing does. $parts: what they may mean, "breast 158 °F". The buttons below take it or drop it.
room-digits-apart = Is that { $parts }? I haven’t counted it yet.
room-oven-cool = Too cool for poultry: { $limit } or hotter, now, or into another oven. Until then it takes longer than planned; tell me breast and thigh and I’ll say how long.
room-foil-off = Yes, loosely, while it stands: at least { $least }, and no longer than it takes to carve. Tight foil softens the skin.
room-fridge-bird = The bird in it: thawed and above { $cold } for more than { $limit }, it’s thrown out; cooking doesn’t undo that. Measure it now. Still hard with ice, or at { $cold } or less inside: into a colder place at once.
room-button-held = Kept hot
# $off: when it was last known to be hot; $by: two hours later.
room-held = Good: covered, the thermometer in it. Tell me what breast and thigh read: at { $hot } or more its two hours count from then. Unread, they count from { $off }, until { $by }.
room-hold-broken = { $at } is under { $hot }: that isn’t kept hot. Carved, eaten and in the fridge by { $by }, two hours from { $from ->
    [read] when it last read that
   *[heat] the heat
}.
room-own-salt-kept = I'll reckon with it from now on.
