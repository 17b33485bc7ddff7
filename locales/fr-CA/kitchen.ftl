### Mots de cuisine du Québec ; les phrases sont celles de `fr`.

-counter = le comptoir
-baking-powder = poudre à pâte
-fan = à convection
-fan-said = four à convection
-fan-with = À convection
-shelf = tablette
-shelves = { $form ->
    [Title] Tablettes
   *[bare] tablettes
}
-shopping-bag = sac d’épicerie
-gas-bottle = bonbonne
-pan = Un poêlon
-tsp = c. à thé
-foil = papier d’aluminium
