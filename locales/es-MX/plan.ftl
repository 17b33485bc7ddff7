### Nombres que el tablero enseña y que se leen tal cual: enteros, sin términos.

plan-step-thaw-finish = Del refri al agua fría
plan-step-rest = Reposo con sal en el refri
plan-step-chill = Al refri
plan-step-fire = Prender
plan-done-fire = Prendido
