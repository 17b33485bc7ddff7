# Plusieurs volailles dans une discussion. $bird : comment on appelle l'une d'elles (« Dinde (Léa) »), $birds : une liste.

birds-whose = { $kind ->
    [turkey-breast] { $own ->
        [yes] La poitrine de dinde
       *[no] Poitrine de dinde ({ $name })
    }
    [chicken] { $own ->
        [yes] Le poulet
       *[no] Poulet ({ $name })
    }
    [capon] { $own ->
        [yes] Le chapon
       *[no] Chapon ({ $name })
    }
    [duck] { $own ->
        [yes] Le canard
       *[no] Canard ({ $name })
    }
    [goose] { $own ->
        [yes] L’oie
       *[no] Oie ({ $name })
    }
   *[turkey] { $own ->
        [yes] La dinde
       *[no] Dinde ({ $name })
    }
}
birds-where = { $bird } { $cooker ->
    [smoker] au fumoir
    [fan-oven] au four { -fan }
   *[oven] au four
}
birds-heavy = { $bird }, { $mass }
birds-number = { $bird }, nº { $number }
birds-of = { $bird } : { $what }

birds-standing = Déjà prévu ici : { $birds }. { $replaces ->
    [yes] C’est une volaille de plus, ou elle prend la place ?
   *[no] C’est une volaille de plus ?
}
birds-same-heat = À ce moment-là, ta volaille de { $mass } est dans la même chaleur. Côte à côte : de l’air autour des deux, un peu plus long pour chacun, et un thermomètre dans chacun.
birds-other-heat = À ce moment-là, ta volaille de { $mass } est dans la même chaleur, à { $setting }. Il faut un seul réglage pour les deux, ou l’un avant l’autre.
birds-one-oven = { $bird } sera alors dans un four à { $setting }. Si c’est le même : un seul réglage pour les deux, ou l’un avant l’autre.
birds-one-fridge = Aussi au frigo à ce moment-là : { $birds }. Si c’est le même, { $shelves ->
    [one] une étagère ne suffit pas
   *[other] { $shelves } étagères ne suffisent pas
} : un autre frigo, ou une glacière avec de la glace à { $cold } ou moins.
birds-all = { $birds }
birds-hotter = Dans le même four que { $birds } ? Alors ça chauffe plus là aussi : mesure plus tôt.
birds-full = Déjà prévu ici : { $birds }. Je ne peux pas en suivre plus dans une discussion{ $replaces ->
    [yes] {" "}; celle-ci ne pourrait que prendre une place.
   *[no] .
}
birds-button-beside = Une volaille de plus
birds-button-instead = Remplacer : { $bird }
birds-most = { $most } volailles dans une discussion, c’est tout ce que je peux suivre. Arrêtes-en une avec /stop.
birds-beside = Aussi dans cette discussion : { $birds }.

birds-which = Quelle volaille ? « { $text } »
birds-each = Une volaille à la fois : envoie les chiffres de l’une, puis ceux de l’autre.
birds-which-gone = Je n’ai plus ce que tu as dit. Redis-le, avec le nom de la volaille ?
birds-moved = Noté ici plutôt que pour « { $bird } » : { $parts }.
