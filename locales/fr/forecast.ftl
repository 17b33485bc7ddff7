### La prévision : quand la volaille est cuite, ce qu'il faut demander, pourquoi l'intervalle est large.

forecast-line = { $at } : cuit après { $done } ({ $from } à { $to })
forecast-line-done = { $at } : cible atteinte (vraie heure vers { $done }, { $from } à { $to })
forecast-progress = { $done } mesures sur { $all }

forecast-suspect-meant = { $place ->
    [breast] Poitrine { $given } ? Ou { $meant } ? Pas compté.
    [thigh] Cuisse { $given } ? Ou { $meant } ? Pas compté.
    [oven] Four { $given } ? Ou { $meant } ? Pas compté.
   *[pit] Air { $given } ? Ou { $meant } ? Pas compté.
}
forecast-suspect = { $place ->
    [breast] Poitrine { $given }, impossible. Regarde encore ; pas compté.
    [thigh] Cuisse { $given }, impossible. Regarde encore ; pas compté.
    [oven] Four { $given }, impossible. Regarde encore ; pas compté.
   *[pit] Air { $given }, impossible. Regarde encore ; pas compté.
}

forecast-doubt-no-readings = Encore aucune mesure : c’est seulement ce qui est habituel.
forecast-doubt-unread = { $place ->
    [breast] Encore rien de mesuré dans la poitrine.
   *[thigh] Encore rien de mesuré dans la cuisse.
}
forecast-doubt-pit-unread = Personne ne mesure la chaleur autour : je prends le réglage.
forecast-doubt-gap = { $span } sans mesure : moins sûr.
forecast-doubt-fire-dying = L’air est tombé à { $pit } et ne remonte pas. Regarde le feu.
forecast-doubt-probe-moved = { $place ->
    [breast] La mesure de la poitrine a fait un saut : sonde déplacée, contre l’os ou dans le vide ? Moins sûr.
    [thigh] La mesure de la cuisse a fait un saut : sonde déplacée, contre l’os ou dans le vide ? Moins sûr.
    [oven] La mesure du four a fait un saut : thermomètre déplacé ? Moins sûr.
   *[pit] La mesure de l’air a fait un saut : thermomètre déplacé ? Moins sûr.
}
forecast-doubt-probes-disagree = { $by } d’écart entre poitrine et cuisse. Vérifie où sont les deux pointes.
forecast-doubt-changed = { $place ->
    [breast] La poitrine chauffe autrement qu’avant ({ -foil }, couvercle, sonde déplacée ?). Moins sûr.
   *[thigh] La cuisse chauffe autrement qu’avant ({ -foil }, couvercle, sonde déplacée ?). Moins sûr.
}
forecast-doubt-behind = { $place ->
    [breast] La poitrine est bien plus froide que d’habitude à ce stade : rien de sûr.
   *[thigh] La cuisse est bien plus froide que d’habitude à ce stade : rien de sûr.
}
forecast-doubt-ahead = { $place ->
    [breast] La poitrine est bien plus chaude que d’habitude à ce stade : pointe à l’os ou sous la peau ? Moins sûr.
   *[thigh] La cuisse est bien plus chaude que d’habitude à ce stade : pointe à l’os ou sous la peau ? Moins sûr.
}
forecast-doubt-part-frozen = Mise à cuire encore gelée dedans : moins sûr.
forecast-doubt-unusual = J’ai vu peu de volailles comme ça : moins sûr.
forecast-doubt-endless = À cette chaleur, elle n’y arrivera peut-être jamais. Monte la chaleur.

forecast-csv-empty = Ligne { $line } : aucune mesure. Un relevé a un en-tête comme minutes,pit_f,breast_f,thigh_f et une ligne par mesure.
forecast-csv-no-time = Ligne { $line } : pas de colonne pour l’heure. Appelles-en une minutes ou time.
forecast-csv-no-spot = Ligne { $line } : pas de colonne pour une température. Appelle-les pit_f, breast_f, thigh_f (ou _c).
forecast-csv-twice = Ligne { $line } : « { $given } » y est deux fois. Gardes-en une.
forecast-csv-no-number = Ligne { $line } : « { $given } » n’est pas un nombre utilisable. Sans mesure, laisse la case vide.
forecast-csv-no-clock = Ligne { $line } : « { $given } » n’est pas une heure. Écris 14:05.
forecast-csv-earlier = Ligne { $line } : { $given } est avant la ligne d’avant. Mets les lignes dans l’ordre des heures.
forecast-csv-too-long = Ligne { $line } : plus de mesures qu’un jour n’a de secondes. Réduis le relevé à une seule cuisson.

forecast-flag-mass = --mass : « { $given } » n’est pas un poids. Écris "14.2 lb" ou "6,4 kg".
forecast-flag-mass-range = --mass : aucune volaille ne pèse { $given }. Prends de { $low } à { $high }.
forecast-flag-temperature = { $flag } : « { $given } » ne va pas. Écris une température de { $low } à { $high }, comme "163 C".
