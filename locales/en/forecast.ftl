### The forecast: when the bird is done, what there is to ask, why the interval is wide.

# A line of `carvetime forecast`. All are spans since the bird met the heat: "3 h 5 min".
forecast-line = { $at }: done after { $done } ({ $from } to { $to })
forecast-line-done = { $at }: at its target (true time about { $done }, { $from } to { $to })
forecast-progress = { $done } of { $all } readings

# A reading that can't be right. $place is pit, breast or thigh. $meant is what was probably meant.
forecast-suspect-meant = { $place ->
    [breast] Breast { $given }? Or { $meant }? Not counted.
    [thigh] Thigh { $given }? Or { $meant }? Not counted.
    [oven] Oven { $given }? Or { $meant }? Not counted.
   *[pit] Pit { $given }? Or { $meant }? Not counted.
}
forecast-suspect = { $place ->
    [breast] Breast { $given } can't be. Look again; not counted.
    [thigh] Thigh { $given } can't be. Look again; not counted.
    [oven] Oven { $given } can't be. Look again; not counted.
   *[pit] Pit { $given } can't be. Look again; not counted.
}

# Why the interval is wide.
forecast-doubt-no-readings = No reading yet: this is only what is usual.
forecast-doubt-unread = { $place ->
    [breast] Nothing read in the breast yet.
   *[thigh] Nothing read in the thigh yet.
}
forecast-doubt-pit-unread = The air around the bird isn’t read: I take the setting.
forecast-doubt-gap = { $span } without a reading: less sure.
forecast-doubt-fire-dying = The pit is down to { $pit } and not coming back. Look at the fire.
forecast-doubt-probe-moved = { $place ->
    [breast] The breast reading jumped: moved, at the bone or in the cavity? Less sure.
    [thigh] The thigh reading jumped: moved, at the bone or in the cavity? Less sure.
    [oven] The oven reading jumped: was its thermometer moved? Less sure.
   *[pit] The pit reading jumped: was its thermometer moved? Less sure.
}
forecast-doubt-probes-disagree = Breast and thigh are { $by } apart. Check where both tips sit.
forecast-doubt-changed = { $place ->
    [breast] The breast warms differently than before (foil, lid, moved?). Less sure.
   *[thigh] The thigh warms differently than before (foil, lid, moved?). Less sure.
}
forecast-doubt-behind = { $place ->
    [breast] The breast is far colder than this heat makes it by now: I can’t be sure.
   *[thigh] The thigh is far colder than this heat makes it by now: I can’t be sure.
}
forecast-doubt-ahead = { $place ->
    [breast] The breast is far hotter than this heat makes it by now: a tip at the bone or under the skin? Less sure.
   *[thigh] The thigh is far hotter than this heat makes it by now: a tip at the bone or under the skin? Less sure.
}
forecast-doubt-part-frozen = It went on with ice inside: less sure.
forecast-doubt-unusual = I have seen few birds of this kind: less sure.
forecast-doubt-endless = At this heat it may never get there. Raise the heat.

# Lines of a log that can't be read.
forecast-csv-empty = Line { $line }: no readings. A log has a header such as minutes,pit_f,breast_f,thigh_f and a line a reading.
forecast-csv-no-time = Line { $line }: no column for the time. Name one minutes or time.
forecast-csv-no-spot = Line { $line }: no column for a temperature. Name them pit_f, breast_f, thigh_f (or _c).
forecast-csv-twice = Line { $line }: "{ $given }" stands twice. Keep one.
forecast-csv-no-number = Line { $line }: "{ $given }" is no number I can use. Leave the cell empty for no reading.
forecast-csv-no-clock = Line { $line }: "{ $given }" is no time. Write it as 14:05.
forecast-csv-earlier = Line { $line }: { $given } is earlier than the line before. Put the lines in order of time.
forecast-csv-too-long = Line { $line }: more readings than a day has seconds. Cut the log down to one cook.

# Flags of the command.
forecast-flag-mass = --mass: "{ $given }" is no mass. Write it as "14.2 lb" or "6.4 kg".
forecast-flag-mass-range = --mass: { $given } is no bird's mass. Take one from { $low } to { $high }.
forecast-flag-temperature = { $flag }: "{ $given }" won't do. Write a temperature from { $low } to { $high }, such as "325 F".
