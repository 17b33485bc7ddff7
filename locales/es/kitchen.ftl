### Palabras de cocina que cambian de un país a otro, con el artículo que llevan: aquí las de España; lo que dice otra región está
### en su carpeta (es-MX). `form` es el hueco de la frase en que caen.

-fridge = { $form ->
    [in] en la nevera
    [to] a la nevera
    [of] de la nevera
    [the] la nevera
    [a] una nevera
    [In] En la nevera
    [To] A la nevera
    [Of] De la nevera
    [The] La nevera
    [Title] Nevera
   *[bare] nevera
}
-cooler = nevera portátil
-tray = { $form ->
    [Title] Bandeja
   *[bare] bandeja
}
-shelf = balda
-shelves = { $form ->
    [Title] Baldas
   *[bare] baldas
}
-counter = la encimera
-fan-oven = { $form ->
    [Title] Horno con ventilador
   *[bare] horno con ventilador
}
-baking-powder = levadura química
-foil = { $form ->
    [Title] Papel de aluminio
   *[bare] papel de aluminio
}
-giblets = { $form ->
    [the] los menudillos
    [Title] Menudillos
   *[bare] menudillos
}
-slices = { $form ->
    [Title] Lonchas
   *[bare] lonchas
}
-thigh = contramuslo
-drumstick = muslo
-grill = una barbacoa con tapa
