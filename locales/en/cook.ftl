### While it cooks: the forecast in a line, what was doubted, alarms, and what became of it. Read with wet hands over a smoker.

# $about, $from, $to, $latest and $look are times of day. $standing: spare ($span is left), tight, late (by $span), ahead
# (nothing is eaten today, so nothing is said).
cook-line = About <b>{ $about }</b>, { $from } to { $to }; { $standing ->
    [spare] { $span } to spare;{" "}
    [tight] tight, it should be off by { $latest };{" "}
    [late] { $span } too late for dinner;{" "}
   *[ahead] {""}
}look again at { $look }.
# As cook-line, where the end can't be told; the last clause is the same.
cook-endless = About <b>{ $about }</b> at best, from { $from }; at this heat the slow end is open past { $to }; { $standing ->
    [spare] { $span } to spare;{" "}
    [tight] tight, it should be off by { $latest };{" "}
    [late] { $span } too late for dinner;{" "}
   *[ahead] {""}
}look again at { $look }.
cook-done = { $target } where you measured: off the heat, once the innermost wing says so too.
# $from, $to: from early to late.
cook-spot = { $spot ->
    [breast] Breast
   *[thigh] Thigh
}: { $reached ->
    [yes] there.
   *[no] now { $now }, { $target } about { $about } ({ $from } to { $to }).
}
# The air in the cooker: $read at $at, or, where $seen is no, only what it is set to.
cook-air-read = { $air ->
    [oven] Oven
   *[pit] Pit
}{ $seen ->
    [yes] : { $read } at { $at }, set to { $setting }.
   *[no] : set to { $setting }.
}
cook-dinner = Dinner { $dinner }.
# Decades of Salmonella by the published tables: a fact, no leave to pull.
cook-decades = By the published tables, heat and time so far add up where you measure. The mark stays { $target }: other spots may be colder.
# The same of a pull now: what is to come is foretold. $hold: what the table asks at $low, the colder reading.
cook-decades-off = Taken off now and left uncarved for { $stand }, heat and time would add up where you measure, by the published tables: { $low } needs { $hold } in every spot, the wing too. The mark stays { $target }: other spots may be colder.

cook-in-time-again = That fits dinner again.
cook-read-by = { $name } has measured.
cook-late-choices = Dinner can move, or:
cook-late-hotter = • Heat up to { $setting }: that could make it about { $about }. Then tell me what it reads in there.
cook-late-carve = • Take legs and breasts off and finish them on a tray in a hot oven, each piece to { $target }: pieces go far faster. Straight from heat to heat, no break.
cook-button-dinner = Dinner { $at }
cook-button-hotter = Heat to { $setting }
cook-hotter = Plan says { $setting } now. Turn it up, and send me in 20 minutes what it reads in there.
# The air was otherwise than set. $since: on (since the bird went on) or at ($from); $setting: what it is set to now.
cook-air-was = { $since ->
    [on] Noted: { $was } ever since it went on.
   *[at] Noted: { $was } since { $from }.
}
cook-air-off = { $since ->
    [on] Noted: no heat since it went on.
   *[at] Noted: no heat since { $from }.
}
cook-air-now = From now on I count on { $setting }. Tell me if you turn it.
cook-start = Noted: { $at } inside when it went on.
cook-air-back = Get it back to { $setting } now: the hour counts on that.
cook-air-burns-on = Then its heat goes on, and so does the plan. See that the flame still burns; stopped after all? Tell me.
cook-air-rising = It’s rising, so it has heat: I count on { $setting } again. Wrong? Tell me.
cook-air-low = Poultry wants an oven at { $limit } or hotter. Read the breast now and tell me.
cook-air-cold = Read the breast now and tell me. Under { $hot } after { $limit } like this: throw it away.
cook-air-raw = A raw bird without heat for { $limit } or more isn’t safe any more, however it is cooked after. Throw it away.
# $until: two hours off the heat. $done: it is at its targets now, or will be.
cook-early = { $done ->
    [yes] That's well before { $dinner }.
   *[no] That's well before dinner at { $dinner }.
} Hold it hot: wrapped, in a warm oven or a dry cooler, and it must keep reading { $hot }. Colder, and it has to be eaten or in the fridge by { $until }. Or carve, chill it in shallow dishes, and reheat to { $target }.

# A reading that can't be right. $slip: was-celsius, was-fahrenheit, digit.
cook-suspect-odd = { $spot ->
    [breast] Breast
    [thigh] Thigh
    [oven] Oven
   *[pit] Pit
} at { $given }? { $slip ->
    [was-celsius] If that was °C, it's { $meant }.
    [was-fahrenheit] If that was °F, it's { $meant }.
   *[digit] { $meant } would fit.
}
cook-suspect-impossible = { $spot ->
    [breast] Breast
    [thigh] Thigh
    [oven] Oven
   *[pit] Pit
} at { $given }? I can't believe that one.
cook-suspect-ask = I haven't counted it. Does it really say so?
# A button. $parts: "breast 118 °F".
cook-suspect-meant = It's { $parts }
# The same, where several were corrected.
cook-suspect-meant-all = Take the corrected ones
cook-suspect-dropped = Left out. Send it again with what it says now.

# ---- alarms
cook-alarm-fire = { $cooker ->
    [smoker] <b>The fire is dying:</b> pit { $pit } and not coming back. Fuel and air now, lid shut. Tell me the pit in 15 minutes.
   *[oven] <b>The oven is losing heat:</b> { $pit } where { $setting } is set. Is it on, the door shut? Tell me what it reads in 15 minutes.
}
cook-alarm-hot = { $cooker ->
    [smoker] The pit runs away: { $pit } where { $setting } was meant. Close the vents a little; foil over what browns too fast.
   *[oven] The oven runs hot: { $pit } where { $setting } was meant. Turn it down; foil over what browns too fast.
}
cook-alarm-sag = { $cooker ->
    [smoker] The pit sags: { $pit } where { $setting } is set. Lid just open? Look again in 10 minutes. Else fuel and a little more air, lid shut. It stays outside: carbon monoxide.
   *[oven] The oven sags: { $pit } where { $setting } is set. Door just open? Look again in 10 minutes. Else see that it’s on and shut, and turn it up a little.
}
cook-alarm-moved = { $spot ->
    [breast] The breast reading jumped. Is the probe still in the thickest part, clear of the bone?
    [thigh] The thigh reading jumped. Is the probe still in the innermost thigh, clear of the bone?
    [oven] The oven reading jumped. Has its thermometer moved?
   *[pit] The pit reading jumped. Has its thermometer moved?
} Set it right and send me what it says.
cook-doubting = Measure a second spot, deep in the meat, off the bone. If the number was wrong, take it back; if it was right, it stands.
cook-alarm-behind = { $spot ->
    [breast] The breast
   *[thigh] The thigh
} is far colder than { $setting } makes it by now. { $cooker ->
    [smoker] Is the fire hot, is the tip deep in the meat? Measure a second spot. Was the fire out? Tell me how long: “out for 40 min”.
   *[oven] Is the oven hot, is the tip deep in the meat? Measure a second spot. Was it off? Tell me how long: “off for 40 min”.
}
cook-alarm-ahead = { $spot ->
    [breast] The breast
   *[thigh] The thigh
} is far hotter than { $setting } makes it by now: a tip at the bone or under the skin? Measure a second spot, deep in the meat.
cook-alarm-apart = Breast and thigh are { $apart } apart. One of them sits wrong: check both, off the bone, out of the cavity.
cook-alarm-stalled = { $spot ->
    [breast] The breast
   *[thigh] The thigh
} has shown { $at } for { $since }. { $low ->
    [yes] In a low smoker that may be the stall: the skin sweats as fast as it heats. A hotter pit ends it.
   *[no] Is the probe where it should be? A second thermometer tells.
}
# $spot: the colder spot. $low: the lowest pit for smoking. $hot: 140 °F.
cook-alarm-zone = <b>The pit has been under { $low } for { $span }</b>, and the bird is at { $spot }. Below { $hot } bacteria grow: get the heat up now, or move it to an oven. Two hours of this is the limit.
cook-alarm-zone-over = <b>The pit has been under { $low } for { $span }</b>, and the bird is at { $spot }. That's past the two-hour limit. I wouldn't serve it.
# A bird that warms too slowly over low heat. $at is what the colder spot reads, $most the four hours of common practice.
cook-alarm-long = { $spot ->
    [thigh] The thigh
   *[breast] The breast
} reads { $at } after { $span }. At low heat it should pass { $hot } within { $most }: that is common practice, no authority’s figure. A hotter pit, or an oven at { $oven }, gets it through.
cook-alarm-falling = { $spot ->
    [thigh] <b>The thigh is cooling:</b>
   *[breast] <b>The breast is cooling:</b>
} { $from }, now { $to }. { $cooker ->
    [smoker] Is the fire out? Fuel and air now, or move the bird to a hot oven.
   *[oven] Is the oven on, the door shut? If not, into another hot oven.
} Below { $hot } bacteria grow: two hours of this is the limit. Send me the next reading in 10 minutes.
cook-alarm-falling-over = { $spot ->
    [thigh] <b>The thigh has been cooling for { $span }:</b>
   *[breast] <b>The breast has been cooling for { $span }:</b>
} { $from }, now { $to }. That's past the two-hour limit under { $hot }. I wouldn't serve it.
cook-falling = No finish time while it cools: get the heat back first.
cook-alarm-hold = Off the heat since { $off }. Measure it: { $hot } or more, and it may wait. Less, and it's to be eaten or in the fridge by { $until }.
cook-alarm-hold-read = Last read hot at { $off }. Measure it again: { $hot } or more, and it may wait. Less, and it's to be eaten or in the fridge by { $until }.
cook-held-unread = Kept hot? I’ve no reading of that since { $off }. Measure breast and thigh now: { $hot } or more in both, and it was. Less, and it gets thrown away.
# A bird carried hot to another house. $hot: 140 °F; $off: when it was last known to be hot; $by: two hours later.
cook-hot-by = Less than that: eaten by { $by }, leftovers straight into the fridge. Later, don’t serve it.
cook-measure-first = Measure breast and thigh first and tell me: at { $hot } or more its two hours count from then, else from { $off }.
cook-hot-dinner-late = Its two hours end at { $by }, before dinner: it must keep reading { $hot } or more. Less, and it’s eaten by then.
cook-hot-still = Still { $hot } or more in both: good, it may wait while it reads that. From the last such reading it has { $most }.
cook-hot-one = That spot is hot enough. Both count, breast and thigh: measure the other too.
cook-hot-below = That’s under { $hot }. By what I was told it was hot until { $off }: eaten by { $by }, leftovers straight into the fridge.
cook-hot-over = That’s under { $hot }, and more than { $most } since { $off }, when it was last known to be hot. I wouldn’t serve it.
# Put into the heat at the other house. $at: since then; $by: when its two hours end; $target: 165 °F; $hot: 140 °F.
cook-hot-in = In again since { $at }, before its two hours were over: good. It stays in until breast and thigh read { $target }, then it’s eaten. Tell me the numbers.
cook-hot-in-more = Not yet: it stays in until breast and thigh both read { $target }.
cook-hot-in-there = { $target } in both: carve it and eat. Leftovers into the fridge by { $by }.
cook-hot-in-table = It went in again at { $at }: it’s carved once breast and thigh read { $target }.
cook-hot-too-late = Its two hours ended at { $by }, before it was warmed up. Heat doesn’t make that safe again: it gets thrown away, don’t serve it.
cook-hot-needs = Breast and thigh at { $hot } or more: no, carve it as it is, by { $by }. Less: into the oven before then, until both read { $target }.
cook-hot-needs-no = No: both read { $hot } or more. Carved as it is, eaten by { $by }.
cook-cooled-counter = { $at }. Whatever it reads, it goes into the fridge by { $by }, in shallow dishes: { $left } left.
cook-cooled-unsaid = { $at } is cold enough only if it was in the fridge by { $by }. If not, it gets thrown away.
cook-cooled-cold = { $at }: cold enough, to keep and to carry. At { $cold } or colder it stays.
cook-cooled-fridge = { $at }: still cooling. By { $by } it should read { $cold } or colder: dishes shallow, apart, lids loose.
cook-cooled-warm = { $at } after { $span } in the fridge is too warm. Check the fridge; what was above { $cold } for more than two hours nobody can call safe. In doubt, throw it out.
cook-cooled-packed = { $at } is over { $cold }. More than { $most } over it, all told, and it’s thrown away, also when nobody knows how long. Else ice round it, or straight into the heat, to { $target } all through.
cook-reheat-on = { $at }: on it goes, until it’s { $target } all through, measured in the thickest piece.
cook-reheat-there = { $at }: that’s it where you measured. The same in the middle of every dish, then serve.
cook-reheat-only = That holds only if it was in the fridge by { $by }; nobody has said so. Heat doesn’t make up for it.
cook-gone = That one stood out too long and gets thrown away, whatever it reads. I’m sorry. Nothing more is due for it.
cook-tossed = That was right, and I’m sorry. I’ll call for nothing more with that bird.
cook-tossed-rest = That was right. I’ll call for nothing more with it.
cook-tossed-raw = I’ll call for nothing more with that bird.
cook-new-bird = Once there’s another bird, tell me its weight and whether it’s fresh or frozen: I’ll plan the same dinner with it.
cook-setting = The plan has { $setting }.
cook-standing = Off the heat since { $off }: carved, eaten and in the fridge by { $by }, unless it stays at { $hot } or hotter.
cook-hot-day = { $at } around it: above { $air } it’s one hour out of heat and fridge in all, not two. I count with that.
cook-hot-day-off = { $at } around it: above { $air } it’s one hour, not two. Eaten or in the fridge by { $by }.

# ---- after
cook-after = At { $when } I said about { $about } ({ $from } to { $to }); it came off at { $off }.

# ---- the picture. Labels beside their curves; one word each.
cook-chart = { $what ->
    [breast] Breast
    [thigh] Thigh
    [oven] Oven
    [pit] Pit
    [dinner] Dinner
   *[done] Done about
}
cook-chart-number = { $number }

# ---- a log sent as a file. $count readings, $name is the file's.
cook-log-noted = { $count ->
    [one] One reading from { $name }, { $from }.
   *[other] { $count } readings from { $name }, { $from } to { $to }.
}
cook-log-nothing = Nothing new in it since the bird went on at { $on }.
cook-log-not-on = When did the bird go on? Tell me that first, then send the log again.
cook-log-full = I keep { $most } readings for a bird, and they are full. From here read the thermometer yourself: { $target } everywhere.
cook-log-large = That file is too large: 2 MB is the most. Cut the log down to this cook.
cook-log-lost = I couldn't fetch that file. Send it once more.
# Readings of the past that can't be right.
cook-odd = { $count ->
    [one] One reading can't be right; it doesn't count.
   *[other] { $count } readings can't be right; they don't count.
}
cook-not-done = Not yet: { $spot ->
    [thigh] the thigh
    [wing] the wing
    [stuffing] the stuffing
   *[breast] the breast
} read { $read } at { $at }. Done is { $target } in breast, thigh and wing.
cook-done-unread = Only a thermometer can tell: { $target } in the thickest breast, the innermost thigh and the wing. What does it read?
cook-eat = Yes: { $target } in breast, thigh and wing. Eaten or in the fridge by { $by }.
cook-eat-unread = Once it read { $target } in breast, thigh and wing, yes. If you don’t know, measure now. Eaten or in the fridge by { $by }.
cook-back-in = Then back into the heat, until { $target } in breast, thigh and wing.
cook-pink-read = It read { $target } in breast, thigh and wing. That decides, whatever the color. If you doubt it, measure the thickest breast, the innermost thigh and the wing once more: less anywhere, and it goes back in.
cook-pink-unread = Color and juices prove nothing, pink or clear, and nobody has read it. Measure now, before anyone eats: { $target } in the thickest breast, the innermost thigh and the wing. Less anywhere, and it goes back in.
cook-no-butter = Someone can’t have milk: oil, no butter.
