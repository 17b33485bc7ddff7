### Palabras de cocina de México; las frases son las de `es`.

-fridge = { $form ->
    [in] en el refri
    [to] al refri
    [of] del refri
    [the] el refri
    [a] un refri
    [In] En el refri
    [To] Al refri
    [Of] Del refri
    [The] El refri
    [Title] Refri
   *[bare] refri
}
-cooler = hielera
-tray = { $form ->
    [Title] Charola
   *[bare] charola
}
-shelf = repisa
-shelves = { $form ->
    [Title] Repisas
   *[bare] repisas
}
-counter = la barra de la cocina
-fan-oven = { $form ->
    [Title] Horno de convección
   *[bare] horno de convección
}
-baking-powder = polvo para hornear
-foil = { $form ->
    [Title] Papel aluminio
   *[bare] papel aluminio
}
-giblets = { $form ->
    [the] las menudencias
    [Title] Menudencias
   *[bare] menudencias
}
-slices = { $form ->
    [Title] Rebanadas
   *[bare] rebanadas
}
-thigh = muslo
-drumstick = pierna
-grill = un asador con tapa
