# Più volatili in una chat. $bird è come si chiama uno (“Anatra di Marco”), $birds un elenco.

birds-whose = { $kind ->
    [turkey-breast] Petto di tacchino
    [chicken] Pollo
    [capon] Cappone
    [duck] Anatra
    [goose] Oca
   *[turkey] Tacchino
}{ $own ->
    [yes] {""}
   *[no] {" "}di { $name }
}
birds-where = { $bird } { $cooker ->
    [smoker] nell’affumicatore
    [fan-oven] nel forno ventilato
   *[oven] in forno
}
birds-heavy = { $bird }, { $mass }
birds-number = { $bird }, n. { $number }
birds-of = { $bird }: { $what }

birds-standing = Qui c’è già un piano per: { $birds }. { $replaces ->
    [yes] Questo è uno in più, o ne prende il posto?
   *[no] Questo è uno in più?
}
birds-same-heat = A quell’ora c’è anche il tuo volatile da { $mass } nello stesso calore. Fianco a fianco: aria intorno a entrambi, un po’ più di tempo per ciascuno e un termometro in ciascuno.
birds-other-heat = A quell’ora c’è anche il tuo volatile da { $mass } nello stesso calore, a { $setting }. Serve una sola temperatura per tutti e due, oppure uno prima dell’altro.
birds-one-oven = { $bird } sarà allora in un forno a { $setting }. Se è lo stesso: una temperatura per tutti e due, o uno prima dell’altro.
birds-one-fridge = Allora in frigo c’è anche: { $birds }. Se è lo stesso, { $shelves ->
    [one] un ripiano non basta
   *[other] { $shelves } ripiani non bastano
}: un altro frigo, o una borsa frigo con ghiaccio a { $cold } o meno.
birds-all = { $birds }
birds-hotter = Nello stesso forno di { $birds }? Allora scalda di più anche lì: misura prima.
birds-full = Qui c’è già un piano per: { $birds }. In una chat di più non ne seguo{ $replaces ->
    [yes] ; questo potrebbe solo prendere un posto.
   *[no] .
}
birds-button-beside = Uno in più
birds-button-instead = Al posto di: { $bird }
birds-most = In una chat ne seguo al massimo { $most }. Prima chiudine uno con /stop.
birds-beside = In questa chat anche: { $birds }.

birds-which = Quale volatile? “{ $text }”
birds-each = Uno alla volta: manda i numeri di uno, poi quelli dell’altro.
birds-which-gone = Non ho più quello che hai detto. Lo ripeti, con il nome del volatile?
birds-moved = Segnato qui e non per «{ $bird }»: { $parts }.
