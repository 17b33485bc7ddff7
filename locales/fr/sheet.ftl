### Le plan sur une page, imprimé et collé sur le frigo. Gros caractères : lignes courtes.

sheet-dinner = Repas { $when }
sheet-day = { $day }
sheet-at = { $at }
# Une tâche qui revient plusieurs fois, en une ligne.
sheet-times = { $what } : { $times } fois, toutes les { $every }
sheet-dish = { $what } : { $how ->
    [oven] four { $setting }, { $takes }
    [smoker] fumoir { $setting }, { $takes }
    [stove] feu, { $takes }
   *[none] { $takes }
}
# Quand un nom ne peut pas être dessiné.
sheet-helper = Aide { $n }
sheet-salt = Sel
sheet-done = Cuit quand
sheet-safe = Sécurité
sheet-target = { $target } au plus épais de la poitrine, au plus profond de la cuisse et dans l’aile. Mesurer partout.
sheet-target-stuffed = { $target } au plus épais de la poitrine, au plus profond de la cuisse, dans l’aile et au milieu de la farce. Mesurer partout.
sheet-safe-cold = Frigo à { $cold } ou moins. Jamais de décongélation sur { -counter }.
sheet-safe-hands = Mains, planche et couteau lavés après la volaille crue. Ne pas laver la volaille.
sheet-safe-out = Au frigo en moins de deux heures, dans des plats peu profonds, sauf si gardé à { $hot } ou plus. Resté plus longtemps : à la poubelle.
sheet-made = État : { $when }. Les heures peuvent bouger : la discussion fait foi.
