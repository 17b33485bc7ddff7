### Mots de cuisine qui changent d’un pays à l’autre : ici ceux de France ; ce qui se dit autrement ailleurs est dans le dossier
### de la région (fr-CA).

-counter = le plan de travail
-baking-powder = levure chimique
-fan = à chaleur tournante
-fan-said = chaleur tournante
-fan-with = En chaleur tournante
-shelf = clayette
-shelves = { $form ->
    [Title] Clayettes
   *[bare] clayettes
}
-shopping-bag = sac de courses
-gas-bottle = bouteille
-pan = Une poêle
-tsp = c. à café
-foil = papier alu
