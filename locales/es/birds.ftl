# Varias aves en un chat. $bird es cómo se llama una («Pato de Tom»), $birds una lista.

birds-whose = { $kind ->
    [turkey-breast] Pechuga de pavo
    [chicken] Pollo
    [capon] Capón
    [duck] Pato
    [goose] Ganso
   *[turkey] Pavo
}{ $own ->
    [yes] {""}
   *[no] {" "}de { $name }
}
birds-where = { $bird }, { $cooker ->
    [smoker] en el ahumador
    [fan-oven] en el { -fan-oven }
   *[oven] en el horno
}
birds-heavy = { $bird }, { $mass }
birds-number = { $bird }, n.º { $number }
birds-of = { $bird }: { $what }

birds-standing = Aquí ya hay plan para: { $birds }. { $replaces ->
    [yes] ¿Es un ave más, o va en su lugar?
   *[no] ¿Es un ave más?
}
birds-same-heat = A esa hora también está tu ave de { $mass } en el mismo calor. Lado a lado: aire alrededor de los dos, algo más de tiempo cada uno y un termómetro en cada uno.
birds-other-heat = A esa hora también está tu ave de { $mass } en el mismo calor, a { $setting }. Los dos necesitan una sola temperatura, o uno va antes que el otro.
birds-one-oven = { $bird } estará entonces en un horno a { $setting }. Si es el mismo: una temperatura para los dos, o uno antes que el otro.
birds-one-fridge = También en { -fridge } entonces: { $birds }. Si es la misma, con { $shelves ->
    [one] una balda
   *[other] { $shelves } baldas
} no caben todas: otra, o una { -cooler } con hielo a { $cold } o menos.
birds-all = { $birds }
birds-hotter = ¿En el mismo horno que { $birds }? Entonces allí también sube: mide antes.
birds-full = Aquí ya hay plan para: { $birds }. Con más aves no doy abasto en un chat{ $replaces ->
    [yes] ; esta solo puede ir en lugar de otra.
   *[no] .
}
birds-button-beside = Un ave más
birds-button-instead = En lugar de: { $bird }
birds-most = Con { $most } aves en un chat no doy para más. Termina antes una con /stop.
birds-beside = También en este chat: { $birds }.

birds-which = ¿Qué ave? «{ $text }»
birds-each = Un ave cada vez: mándame los números de una y luego los de la otra.
birds-which-gone = Ya no tengo lo que dijiste. ¿Me lo repites, con el nombre del ave?
birds-moved = Anotado aquí y no en «{ $bird }»: { $parts }.
