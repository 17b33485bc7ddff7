# Several birds in one chat. $bird is what one of them is called (“Tom's duck”), $birds a list of them.

# $own: yes in a private chat. $kind: turkey, turkey-breast, chicken, capon, duck, goose.
birds-whose = { $own ->
    [yes] The{" "}
   *[no] { $name }'s{" "}
}{ $kind ->
    [turkey-breast] turkey breast
    [chicken] chicken
    [capon] capon
    [duck] duck
    [goose] goose
   *[turkey] turkey
}
birds-where = { $bird } { $cooker ->
    [smoker] in the smoker
    [fan-oven] in the fan oven
   *[oven] in the oven
}
birds-heavy = { $bird }, { $mass }
birds-number = { $bird }, no. { $number }
birds-of = { $bird }: { $what }

# $replaces: yes where it may take the place of one of them.
birds-standing = Planned here already: { $birds }. { $replaces ->
    [yes] Is this one more bird, or does it take its place?
   *[no] Is this one more bird?
}
birds-same-heat = Your { $mass } bird is in the same heat then. Side by side: air around both, a little longer for each, and a thermometer in each.
birds-other-heat = Your { $mass } bird is in the same heat then, at { $setting }. Both need one setting, or one goes before the other.
birds-one-oven = { $bird } is in an oven at { $setting } then. If it’s the same one: one setting for both, or one goes before the other.
birds-one-fridge = In the fridge then too: { $birds }. If it’s the same one, { $shelves ->
    [one] one shelf is too few
   *[other] { $shelves } shelves are too few
}: another fridge, or a cooler with ice at { $cold } or colder.
birds-all = { $birds }
birds-hotter = In the same oven as { $birds }? Then that gets hotter too: read it sooner.
birds-full = Planned here already: { $birds }. That's as many as I keep up with in one chat{ $replaces ->
    [yes] ; this one could only take a place.
   *[no] .
}
birds-button-beside = One more bird
birds-button-instead = Replace: { $bird }
birds-most = { $most } birds in one chat is as many as I keep up with. /stop one first.
birds-beside = Also in this chat: { $birds }.

birds-which = Which bird? “{ $text }”
birds-each = One bird at a time: send the numbers of one, then those of the other.
birds-which-gone = I no longer have what you said. Say it again, with the bird's name?
birds-moved = Moved here from { $bird }: { $parts }.
