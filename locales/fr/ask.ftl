### Réponses aux questions rapides. Quantités, températures et durées arrivent déjà écrites.
### D'abord la réponse, puis ce à quoi il faut veiller ; chaque ligne tient seule.

ask-unknown = Je ne vois pas la question. Demande-moi le sel (2 c. à soupe de sel fin en sel casher en flocons), les temps (combien de temps pour décongeler 6,5 kg), les portions (quelle taille pour 11 personnes), la sécurité (70 °C pendant 2 minutes, c’est sûr ?) ou les unités (325 °F en °C).
ask-no-amount = Ce n’est pas une quantité. Donne-m’en une au-dessus de zéro, par exemple 2 c. à soupe.
ask-no-span = Il me faut une durée, par exemple 24 h.
ask-no-mark = Aucun four n’a ce chiffre. Les gas marks vont de ¼, ½ et 1 à 10, soit de 107 à 260 °C ; les thermostats de 1 à 10, soit de 30 à 300 °C.
ask-no-temperature = Ce n’est pas une température. Par exemple : 325 °F en °C.
ask-no-substance = De la cuillère au poids, ça dépend de ce qu’il y a dedans. Je connais le sel et le beurre : 2 c. à soupe de sel fin en grammes.
ask-no-serving = Ce n’est pas une portion de cette volaille. Par exemple : sodium dans une dinde de 6,5 kg pour 11 personnes.
ask-impossible = C’est impossible : { $reason }.

# Ce qui est demandé en retour. La réponse se met derrière la question.
ask-back-mass = Elle pèse combien ? Par exemple : 6,5 kg.
ask-back-how-much = Combien ({ $salt }) ? Par exemple : 2 c. à soupe.
ask-back-kosher = Quel sel casher ? Le gros pèse presque le double des flocons par cuillère.
ask-back-own-salt = Je ne connais pas encore ton sel. Lis-moi le paquet, par exemple : mon sel : 1/4 { -tsp } fait 0,7 g.
ask-back-water = Combien d’eau, ou quel poids de volaille ? Par exemple : 4 litres, ou 6,5 kg.
ask-back-scale = { $n } en °F ou en °C ? Ça change tout.
ask-back-how-long-out = Combien de temps hors du frigo ? Par exemple : 3 heures.
ask-back-fuel-time = Pour combien de temps ? Par exemple : 4 h.
ask-back-hours-3 = 3 heures
ask-back-hours-5 = 5 heures
ask-fahrenheit = °F
ask-celsius = °C

# Des noms dans des phrases.
ask-kind-turkey = dinde
ask-kind-turkey-breast = poitrine de dinde
ask-kind-chicken = poulet
ask-kind-capon = chapon
ask-kind-duck = canard
ask-kind-goose = oie
ask-bird = { $condition ->
    [frozen] { $kind } de { $mass }, du congélateur
    [part-thawed] { $kind } de { $mass }, encore de la glace dedans
   *[fresh] { $kind } de { $mass }
}
ask-salt-table = sel fin
ask-salt-fine-sea = sel de mer fin
ask-salt-pickling = sel à conserves
ask-salt-flake-kosher = sel casher en flocons
ask-salt-coarse-kosher = gros sel casher
ask-salt-coarse-sea = gros sel de mer
ask-salt-own = ton sel
ask-food-raw-whole = Volaille crue
ask-food-raw-pieces = Morceaux crus
ask-food-raw-duck-or-goose = Canard ou oie crus
ask-food-giblets = Abats crus
ask-food-leftovers = Volaille cuite et restes
ask-food-cooked-pieces = Tranches cuites
ask-food-cooked-in-gravy = Volaille cuite en sauce
ask-food-gravy = Sauce et bouillon
ask-food-stuffing = Farce cuite
ask-food-stuffing-and-gravy = Farce et sauce
ask-food-soup = Soupe et ragoût

ask-seconds = { $n } s
ask-minutes = { $n } min
ask-amount = { $unit ->
    [milligram] { $n } mg
    [gram] { $n } g
    [kilogram] { $n } kg
    [pound] { $n } lb
    [metric-pound] { $n ->
        [one] { $n } livre
       *[other] { $n } livres
    }
    [ounce] { $n } oz
    [stick] { $n ->
        [one] { $n } bâton de beurre
       *[other] { $n } bâtons de beurre
    }
    [pinch] { $n ->
        [one] { $n } pincée
       *[other] { $n } pincées
    }
    [second] { $n } s
    [minute] { $n } min
    [hour] { $n } h
    [day] { $n ->
        [one] { $n } jour
       *[other] { $n } jours
    }
    [teaspoon] { $n } { -tsp }
    [tablespoon] { $n } c. à soupe
    [cup] { $n ->
        [one] { $n } tasse
       *[other] { $n } tasses
    }
    [fluid-ounce] { $n } fl oz
    [pint] { $n } pt
    [quart] { $n } qt
    [gallon] { $n } gal
    [milliliter] { $n } ml
    [liter] { $n } l
    [fahrenheit] { $n } °F
    [celsius] { $n } °C
    [gas-mark] gas mark { $n }
    [thermostat] thermostat { $n }
   *[other] { $n }
}

# ---- sel
ask-salt-convert = { $given } de { $from } = { $volume } de { $to } ({ $mass }).
ask-salt-rule-holds = Règle de cuisine : { $rule } % du volume. Au poids, c’est { $mass } %, la règle tient.
ask-salt-rule-fails = Règle de cuisine : { $rule } % du volume. Au poids, c’est { $mass } % ; je suis le poids.
ask-salt-weighs = { $volume } de { $salt } = { $mass }.
ask-dose = Sel ({ $bird }) : { $volume } de { $salt } en tout ({ $mass }, { $strength ->
    [light] dose légère
    [bold] dose forte
   *[usual] la dose habituelle
}).
ask-dose-shares = Répartition : { $shares }.
ask-dose-share = { $place ->
    [cavity] { $volume } dans la carcasse
    [bone-side] { $volume } côté os
    [breast] { $count ->
        [one] { $volume } sous la peau de la poitrine
       *[other] { $volume } de chaque côté de la poitrine
    }
    [thigh] { $volume } sur chaque cuisse
    [drumstick] { $volume } sur chaque pilon
   *[skin] { $volume } sur la peau
}
ask-dose-skin = Pour la peau, mélange-le avec autant de poivre et, pour qu’elle croustille, de { -baking-powder }.
ask-oversalt-given = { $mass } ({ $salt })
ask-oversalt-much = Oui : environ { $times } fois la dose. Ça fait { $given }, et il en faut { $dose } pour cette volaille.
ask-oversalt-a-little = Un peu : ça fait { $given }, et il en faut { $dose } pour cette volaille. Laisse comme ça, et sale peu la sauce.
ask-oversalt-right = Non, c’est à peu près ça : { $given }, et il en faut { $dose } pour cette volaille.
ask-oversalt-little = Non, plutôt peu : ça fait { $given }, et il en faut { $dose } pour cette volaille.
ask-salt-enough-much = Largement, environ { $times } fois la dose : ça fait { $given }, et cette volaille en demande { $dose }.
ask-salt-enough-a-little = Oui, un peu plus qu’il n’en faut : ça fait { $given }, et cette volaille en demande { $dose }.
ask-salt-enough-right = Oui, c’est à peu près ça : { $given }, et cette volaille en demande { $dose }.
ask-oversalt-double = Oui, le double de sel, c’est trop.
ask-oversalt-fresh = Brosse maintenant ce qui est dessus. S’il faut vraiment rincer, doucement et sans éclabousser, puis sèche et récure l’évier : rincer répand les microbes.
ask-oversalt-soaked = Il est entré maintenant : brosse ce qui reste dessus, sans rincer.
ask-oversalt-either = Dans la première heure, brosse-le. S’il faut vraiment rincer, doucement et sans éclabousser, puis sèche et récure l’évier : rincer répand les microbes. Plus tard il est entré : brosse seulement.
ask-oversalt-beside = Pas de sel dans la sauce ni dans la farce. Ça gâte le goût et ne fait de mal à personne, sauf à qui doit éviter le sel.
ask-dose-per-lb = { $volume } de { $salt } par livre de volaille ({ $mass }).
ask-dose-per-kg = { $volume } de { $salt } par kilo de volaille ({ $mass }).
ask-spoon-weights = Poids de { $volume } : { $weights }.
ask-spoon-weight = { $mass } de { $salt }
ask-dose-rest = Puis 24 h ou plus au frigo, sans couvrir ; { $longest } au plus.
ask-dose-none = { $percent } % de saumure ajoutée : c’est déjà salé à l’emballage. N’ajoute pas de sel, pas de saumure.
ask-dose-light = Il y a { $percent } % de saumure ajoutée dedans, alors la dose est légère.
ask-brine = Saumure à { $percent } % : { $mass } de sel dans { $water } d’eau. Ça fait { $volume } de { $salt }.
ask-brine-strength = { $given } %, c’est plus que l’eau froide ne peut en dissoudre, ou rien du tout. Au-dessus de 0 et jusqu’à { $high } %, par exemple : saumure à 6 % pour 4 litres.
ask-brine-other = Pour cent de la saumure entière ; par rapport à l’eau seule, c’est { $percent } %.
ask-brine-time = Il faut { $time }, dans une marmite de { $vessel }.
ask-brine-usual = { $time } pour des volailles de { $low } à { $high }.
ask-brine-cold = Volaille et saumure restent à { $cold } ou moins, 48 h au plus.
ask-depth = Après { $rest } au frigo, le sel est à environ { $depth } mm de profondeur ({ $low } à { $high }).
ask-depth-pork = C’est là qu’un dixième du sel de la surface est arrivé. Mesuré dans du porc ; personne ne l’a publié pour la dinde.
ask-sodium = Sodium ({ $bird }, sel habituel, { $who }) : environ { $expected } mg de sodium ({ $low } à { $high }).
ask-sodium-one-of = { $people ->
    [one] une personne mange tout
   *[other] une portion sur { $people }
}
ask-sodium-grams = { $mass } de viande cuite
ask-sodium-day = C’est { $low } à { $high } % des { $daily } mg d’une journée.
ask-sodium-care = Une estimation : si le sodium compte pour ta santé, demande à ton médecin.
ask-own = Ton sel : { $teaspoon } la { -tsp }, { $tablespoon } la c. à soupe.
ask-own-not-plain = Sodium et poids ne vont pas avec du sel pur. Vérifie l’étiquette, par exemple : mon sel : 1/4 { -tsp } a 280 mg de sodium.
ask-own-density = Aucun sel n’est si léger ni si lourd : une { -tsp } pèse de 1,5 à 8 g. Vérifie la cuillère, par exemple : mon sel : 1/4 { -tsp } fait 0,7 g.

# ---- la volaille
ask-thaw = Décongélation ({ $bird }) : { $fridge } au frigo, ou { $water } dans l’eau froide changée toutes les { $every }.
ask-fridge-warm = Ton frigo est à { $at } : au-dessus de { $cold }, rien de tout ça ne tient. Règle-le plus froid, et vérifie avant d’y mettre la volaille.
ask-thaw-care = Décongelée au frigo, elle se garde { $keeps } ; décongelée dans l’eau, cuis-la tout de suite. Jamais sur { -counter }.
ask-roast = Cuisson ({ $bird }), { $cooker ->
    [fan-oven] four { -fan }
    [smoker] fumoir
   *[oven] four
} à { $setting } : { $time }, le plus probable { $middle }.
ask-roast-done = C’est le thermomètre qui dit si c’est cuit, pas l’horloge : { $target } dans la poitrine, la cuisse et l’aile.
ask-roast-practice = En partie, c’est l’habitude des cuisiniers, pas une table publiée.
ask-bird-for = { $people ->
    [one] Une personne : { $kind }, { $low } à { $high }.
   *[other] { $people } personnes : { $kind }, { $low } à { $high }.
}
ask-bird-for-exactly = { $people ->
    [one] Une personne : { $kind }, { $low }.
   *[other] { $people } personnes : { $kind }, { $low }.
}
ask-portion = Par personne ({ $kind }) : { $low } à { $high }, comme à l’achat, os compris.
ask-bird-for-several = Mieux vaut { $birds } volailles de { $low } à { $high } chacune.
ask-bird-for-leftovers = Pour avoir des restes, prends un quart à la moitié en plus.
ask-people-for = De quoi servir ({ $bird }) : { $low } à { $high } personnes, ou { $some } avec des restes.
ask-fuel = { $fuel ->
    [charcoal] Charbon
    [propane] Propane
   *[pellets] Granulés
} pour { $span } à environ 165 °C : { $low } à { $high }. Habitude de cuisine, pas une table ; garde moitié plus en réserve.
ask-fuel-bottle = Une { -gas-bottle } pleine contient { $bottle }.
ask-fuel-care = Dehors seulement, jamais dans une maison, un garage ou une tente.

# ---- sécurité
ask-lethality-enough = Oui, d’après la table : { $at } à l’endroit le plus froid demande { $needed }, tu as tenu { $held }.
ask-lethality-not-yet = Pas encore : { $at } à l’endroit le plus froid demande { $needed }. Encore { $missing }.
ask-lethality-never = Non. Sous { $first }, aucune durée connue ne suffit. Continue la cuisson jusqu’à { $kitchen }.
ask-lethality-instant = Oui : à { $at } à l’endroit le plus froid, c’est sûr tout de suite.
ask-lethality-time = { $at } doit tenir { $needed } à l’endroit le plus froid.
ask-lethality-go-on = Pas encore : continue jusqu’à { $kitchen } au plus épais de la poitrine, au plus profond de la cuisse et à l’aile. D’après la table, { $at } devraient tenir { $needed } à l’endroit le plus froid.
ask-lethality-stuffing-not = Non : la farce doit arriver à { $target } au milieu ; { $at } ne suffit pas. La viande est cuite avant ? Sors la farce et finis-la au four.
ask-lethality-stuffing = Oui, si c’est au milieu : la farce est sûre à { $target }.
ask-lethality-care = Pour la viande, avec un thermomètre vérifié ; pas pour la farce. Pour la maison, les autorités sanitaires disent { $kitchen } partout : dans le doute, c’est ça qui compte.
ask-come-up = Ne t’y fie pas. Les { $span } de montée ne comptent pas comme un maintien, et la chaleur ne défait pas tout ce qui s’est développé entre { $low } et { $hot }. Si elle y est restée plus de deux heures environ sans chaleur régulière, jette-la ; sinon, continue jusqu’à { $kitchen } partout.
ask-safe = { $target } au plus épais de la poitrine, au plus profond de la cuisse et dans l’aile.
ask-safe-held = { $target } pendant { $hold } au plus épais de la poitrine, au plus profond de la cuisse et dans l’aile. { $plan }, ce que je vise, ne demande pas de minutes.
ask-safe-higher = Je me fie à { $plan } dans la poitrine, la cuisse et l’aile. Santé Canada dit { $target } pour une volaille entière : pour t’y tenir, laisse-la jusque-là.
ask-safe-stuffing = La farce : { $target } en son milieu, dans la volaille ou à côté.
ask-safe-where = Garde la pointe loin de l’os. La couleur et un jus clair ne prouvent rien.
ask-out-fine = { $out } hors du frigo, ça va encore. Il reste { $left } : ensuite, c’est mangé, au frigo ou à la poubelle.
ask-out-if-cool = Ça vaut jusqu’à { $air } autour ; plus chaud, c’est une heure en tout.
ask-out-limit = Deux heures hors du frigo en tout, une seule au-dessus de { $air }. Ensuite, poubelle.
ask-out-discard = À la poubelle : { $out } hors du frigo, et la limite est de { $limit }.
ask-out-dont = Non : { $out } hors du frigo, c’est trop, la limite est de { $limit } en tout.
ask-out-why = Réchauffer n’y change rien : certaines toxines restent.
ask-keeps = { $food } : { $days } au frigo.
ask-keeps-still = { $age }, c’est dans la limite. { $food } : { $days } au frigo.
ask-keeps-over = À la poubelle : { $age }, c’est trop vieux. { $food } : { $days } au frigo.
ask-keeps-that-still = { $food } : { $days } au frigo ; { $age }, ça va.
ask-keeps-that-over = { $food } : { $days } au frigo ; après { $age }, poubelle.
ask-days = { $n ->
    [one] { $n } jour
   *[other] { $n } jours
}
ask-days-range = { $low } à { $high } jours
ask-months = { $n ->
    [one] { $n } mois
   *[other] { $n } mois
}
ask-months-range = { $low } à { $high } mois
ask-keeps-care = Le frigo à { $cold } ou moins. Si l’aspect ou l’odeur est bizarre, poubelle.
ask-keeps-frozen = { $food } : { $months } au congélateur pour la qualité. Bien congelé, ça reste sûr.
ask-keeps-unknown = { $food } : je ne connais pas de durée publiée. Prudence : deux heures hors du frigo au plus.
ask-cooling = Au frigo dans les { $limit } après la cuisson, même chaud, dans des plats peu profonds, la viande détachée de l’os.
ask-cooling-marks = De { $from } à { $middle } en moins de 2 h, jusqu’à { $cold } en moins de 6 h en tout.
ask-reheat = Réchauffe à { $target } partout.
ask-reheat-gravy = La sauce, jusqu’à gros bouillons.
ask-reheat-care = À couvert, avec un peu de bouillon. Pas à la mijoteuse.
ask-reheat-once = Au Royaume-Uni : on ne réchauffe qu’une fois.
ask-refreeze = Décongelée au frigo, elle peut être recongelée, crue ou cuite. Décongelée dans l’eau ou au micro-ondes, cuis-la d’abord.
ask-refreeze-out = Pas si elle est restée sortie plus de deux heures.
ask-colour = La couleur et un jus clair ne prouvent rien, rosé ou pas. C’est le thermomètre qui décide :
ask-stand = Laisse reposer { $least } ou plus avant de découper, couvert sans serrer. La température monte encore d’abord, puis redescend.
ask-oven-low = Non : la volaille veut un four à { $limit } ou plus, disent les autorités sanitaires.
ask-oven-fits = Oui, { $at } convient. Les autorités sanitaires demandent { $limit } ou plus pour la volaille.
ask-oven = Règle le four à { $limit } ou plus : c’est ce que disent les autorités sanitaires pour la volaille.
ask-oven-level = Un four { $level ->
        [low] doux
        [high] chaud
       *[medium] moyen
    }, c’est environ { $setting }. Les fours diffèrent : fie-toi au thermomètre dans la volaille.
ask-oven-smoker = Un fumoir tourne entre { $low } et { $high }, avec une volaille décongelée à cœur.
ask-off-dial-at = { $side ->
    [cold] Il lui manque { $by } : pour { $setting }, règle-le sur { $dial }.
   *[hot] Il chauffe { $by } de trop : pour { $setting }, règle-le sur { $dial }.
}
ask-off-dial-by = { $side ->
    [cold] Il lui manque { $by } : règle-le d’autant plus haut que prévu.
   *[hot] Il chauffe { $by } de trop : règle-le d’autant plus bas que prévu.
}
ask-off-dial = { $side ->
    [cold] Alors règle-le plus haut, d’autant qu’il lui manque.
    [hot] Alors règle-le plus bas, d’autant qu’il chauffe de trop.
   *[some] S’il chauffe trop, règle-le d’autant plus bas ; pas assez, d’autant plus haut.
}
ask-off-dial-thermometer = Un thermomètre de four à côté de la volaille dit de combien. Laisse-lui 20 min : tous les fours oscillent.
ask-hold = Garde à { $hot } ou plus ; en dessous, { $limit } au plus, puis au frigo.
ask-wash = Non, ne la lave pas : chez ceux qui l’ont fait, { $share } % avaient ensuite des bactéries dans l’évier. Éponge-la, lave-toi les mains 20 s.
ask-counter-thaw = Jamais sur { -counter }, ni dans l’eau tiède : l’extérieur se gâte pendant que le milieu est de la glace. Au frigo, ou dans l’eau froide changée toutes les { $every } et cuite aussitôt.
ask-warm-thaw = Poubelle : l’extérieur a été tiède plus de { $limit } pendant que le cœur dégelait, et la cuisson n’y change rien. La prochaine, au frigo ou dans l’eau froide changée toutes les { $every }.
ask-stuffing = Le plus sûr : la cuire à côté de la volaille. Dedans : sans tasser, juste avant la cuisson, et pas dans une volaille congelée, fumée ou frite.
ask-stuffing-target = Son milieu doit atteindre { $target } aussi.
ask-fry-frozen = Non : ne fais jamais frire une volaille congelée, même en partie. L’huile déborde et prend feu. Décongèle-la d’abord à cœur.
ask-fry-stuffed = Non : ne fais jamais frire une volaille farcie.
ask-fry-heavy = Non : { $given }, c’est trop pour une friteuse. Jusqu’à 5,4 kg.
ask-fry-time = { $mass } : environ { $time } à 177 °C ; c’est cuit à { $target } partout.
ask-fry = Friture : dehors, à 3 m ou plus de la maison, huile à 177 °C, 7 à 11 min par kilo, pas de volaille de plus de 5,4 kg.
ask-fry-care = Décongelée à cœur et sèche, jamais farcie : l’eau fait déborder l’huile. Trouve d’abord le niveau d’huile avec de l’eau, ne laisse jamais l’huile seule, garde un extincteur à poudre sous la main.
ask-charcoal = Jamais à l’intérieur, dans un garage, une tente ou sous un auvent. Le monoxyde de carbone tue et ne sent rien. Un barbecue encore tiède reste dehors aussi.
ask-fire = { $call ->
    [none] Porte du four fermée, four éteint. Pas d’eau, et on ne sort pas le plat. Si ça ne s’éteint pas tout de suite ou si des flammes sortent : tout le monde dehors, portes fermées, et de dehors appelle les pompiers.
   *[known] Porte du four fermée, four éteint. Pas d’eau, et on ne sort pas le plat. Si ça ne s’éteint pas tout de suite ou si des flammes sortent : tout le monde dehors, portes fermées, et de dehors appelle le { $call }.
}
ask-fire-elsewhere = { -pan } sur le feu : on éteint, couvercle dessus. Fumoir ou gril : couvercle et aérations fermés, gaz coupé. Seulement si tu peux l’atteindre sans danger.
ask-gas = { $call ->
    [none] Ne touche à aucun interrupteur, pas de flamme, pas d’appel à l’intérieur. Ouvre les fenêtres sur ton chemin, tout le monde dehors, puis de dehors appelle les pompiers ou le fournisseur de gaz.
   *[known] Ne touche à aucun interrupteur, pas de flamme, pas d’appel à l’intérieur. Ouvre les fenêtres sur ton chemin, tout le monde dehors, puis de dehors appelle le { $call } ou le fournisseur de gaz.
}
ask-kitchen-smoke = { $call ->
    [none] Coupe la chaleur, porte du four fermée, fenêtres ouvertes. Des flammes, ou la fumée ne cesse pas : tout le monde dehors et de dehors appelle les secours. Une fois froid, cherche la graisse qui a coulé.
   *[known] Coupe la chaleur, porte du four fermée, fenêtres ouvertes. Des flammes, ou la fumée ne cesse pas : tout le monde dehors et de dehors appelle le { $call }. Une fois froid, cherche la graisse qui a coulé.
}
ask-carbon-monoxide = { $call ->
    [none] Tout le monde dehors à l’air libre, tout de suite, portes ouvertes au passage. Puis appelle les secours ; personne ne rentre avant leur accord. Mal de tête, vertiges, nausées : dis-le. Charbon et barbecue ne brûlent jamais dedans.
   *[known] Tout le monde dehors à l’air libre, tout de suite, portes ouvertes au passage. Puis appelle le { $call } ; personne ne rentre avant leur accord. Mal de tête, vertiges, nausées : dis-le. Charbon et barbecue ne brûlent jamais dedans.
}
ask-hot-oil = { $call ->
    [none] Coupe le brûleur, si tu peux sans te pencher au-dessus. Tout le monde recule, les enfants d’abord, et pas d’eau. Des flammes, ou de l’huile sur quelqu’un : appelle les secours. Avant de reprendre : laisser refroidir, et moins d’huile.
   *[known] Coupe le brûleur, si tu peux sans te pencher au-dessus. Tout le monde recule, les enfants d’abord, et pas d’eau. Des flammes, ou de l’huile sur quelqu’un : appelle le { $call }. Avant de reprendre : laisser refroidir, et moins d’huile.
}
ask-burn = { $call ->
    [none] Eau fraîche du robinet dessus, 20 min, tout de suite ; bagues et montre ôtées, puis un linge propre. Ni glace ni beurre. Plus grande qu’une main, blanche ou avec des cloques, au visage, ou un enfant : médecin, ou appelle les secours.
   *[known] Eau fraîche du robinet dessus, 20 min, tout de suite ; bagues et montre ôtées, puis un linge propre. Ni glace ni beurre. Plus grande qu’une main, blanche ou avec des cloques, au visage, ou un enfant : médecin, ou appelle le { $call }.
}
ask-choking = { $call ->
    [none] Ni toux ni parole ? Appelle les secours. Penche la personne en avant : 5 claques entre les omoplates, puis 5 poussées au-dessus du nombril, en alternant jusqu’à ce que ça sorte. Un bébé : jamais le ventre ; les claques à plat ventre, puis 5 poussées sur la poitrine.
   *[known] Ni toux ni parole ? Appelle le { $call }. Penche la personne en avant : 5 claques entre les omoplates, puis 5 poussées au-dessus du nombril, en alternant jusqu’à ce que ça sorte. Un bébé : jamais le ventre ; les claques à plat ventre, puis 5 poussées sur la poitrine.
}
ask-fainted = { $call ->
    [none] Appelle les secours tout de suite. Respire normalement : sur le côté, tête en arrière, et reste là. Ne respire pas, ou par à-coups : sur le dos, appuie fort et vite au milieu de la poitrine, 100 à 120 fois par minute, jusqu’aux secours. Plus d’une personne a la tête qui tourne : tout le monde dehors, à l’air.
   *[known] Appelle le { $call } tout de suite. Respire normalement : sur le côté, tête en arrière, et reste là. Ne respire pas, ou par à-coups : sur le dos, appuie fort et vite au milieu de la poitrine, 100 à 120 fois par minute, jusqu’aux secours. Plus d’une personne a la tête qui tourne : tout le monde dehors, à l’air.
}
ask-allergy = { $call ->
    [none] Langue, lèvres ou gorge qui gonflent, ou le souffle court après avoir mangé : appelle les secours tout de suite et dis « réaction allergique ». Un stylo d’adrénaline, s’il y en a un : aussitôt dans l’extérieur de la cuisse, un second après 5 min si ça ne va pas mieux. À plat, jambes levées ; redressé si respirer est dur. Ne pas se lever, ne pas marcher.
   *[known] Langue, lèvres ou gorge qui gonflent, ou le souffle court après avoir mangé : appelle le { $call } tout de suite et dis « réaction allergique ». Un stylo d’adrénaline, s’il y en a un : aussitôt dans l’extérieur de la cuisse, un second après 5 min si ça ne va pas mieux. À plat, jambes levées ; redressé si respirer est dur. Ne pas se lever, ne pas marcher.
}

ask-sick = Pas de cuisine pour l’instant : qui vomit ou a la diarrhée ne touche pas aux aliments jusqu’à 48 h après la dernière fois. Quelqu’un d’autre fait ses tâches.
ask-sick-made = Ce qu’il a préparé depuis le début et qui ne sera pas bien cuit après : poubelle. Mains à l’eau et au savon, 20 s ; le gel fait peu contre une gastro.
ask-ate-sick = { $call ->
    [none] De petites gorgées d’eau, souvent, et du repos. Un médecin s’il y a du sang, plus de { $fever } de fièvre, si rien ne reste, presque pas d’urine, des vertiges debout, ou plus de trois jours. Enceinte, très jeune, âgé ou malade : appelle tout de suite. Vue trouble, muscles faibles, mal à respirer ou à avaler : les secours.
   *[known] De petites gorgées d’eau, souvent, et du repos. Un médecin s’il y a du sang, plus de { $fever } de fièvre, si rien ne reste, presque pas d’urine, des vertiges debout, ou plus de trois jours. Enceinte, très jeune, âgé ou malade : appelle tout de suite. Vue trouble, muscles faibles, mal à respirer ou à avaler : le { $call }.
}
ask-ate-sick-rest = Personne n’en mange plus tant qu’on ne sait pas : emballé, marqué, au frigo. Plusieurs malades ? Préviens les autorités sanitaires. Qui vomit ne touche pas à la nourriture des autres jusqu’à 48 h après.
ask-cut = Appuie jusqu’à ce que ça s’arrête, rince à l’eau courante, sèche, puis un pansement étanche et un gant dessus. Aliments avec du sang : poubelle. Couteau et planche à l’eau chaude savonneuse.
ask-cut-doctor = Profond, béant, ou ça saigne encore après 10 min de pression : un médecin.

ask-stuffing-slow = La viande est à { $target } et la farce non ? Sors-la chaude à la cuillère et finis-la dans un plat au four, ou à la poêle en remuant, jusqu’à { $target } au milieu, sans pause entre les deux. La viande n’y est pas ? Tout reste au four.
ask-stuff-ahead = Non : mélange la farce et farcis juste avant la cuisson, sans tasser. D’ici là, le sec et l’humide attendent au frigo, à part. Son milieu doit atteindre { $target }.

# ---- habitudes, et ce qui a mal tourné
ask-fridge = { $cold } ou moins, avec un thermomètre dedans.
ask-baste = Pas besoin. Chaque ouverture du four coûte du temps, et une peau mouillée ne croustille pas.
ask-foil = Assez dorée ? Du { -foil } posé dessus sans serrer, et la cuisson continue : seul le thermomètre dit quand c’est cuit. Enlève-le les dernières minutes pour une peau croustillante.
ask-carve = D’abord les cuisses : coupe la peau, écarte la cuisse, tranche dans l’articulation ; puis sépare pilon et haut de cuisse. Chaque filet d’un seul morceau, puis en tranches en travers. Les ailes à la fin. Pas sur la planche du cru.
ask-pop-up = Ce témoin peut sauter trop tôt ou trop tard. Vérifie au thermomètre : { $target } dans le filet, la cuisse et l’aile, et c’est cuit.
ask-bag-inside = Un sachet en papier, ce n’est pas grave : retire-le, et vise { $target } dans la chair. Du plastique fondu ou déformé : jette le sachet et la volaille.
ask-probe-out = Remets-la au plus épais du filet, pointe loin de l’os ; ce qu’elle a marqué dehors ne compte pas. Cassée ? Tout thermomètre à lecture rapide qui affiche { $ice } dans l’eau glacée convient. Sans thermomètre, personne ne peut dire que c’est cuit.
ask-mess = D’abord du papier, puis de l’eau chaude savonneuse, puis un désinfectant ; les mains, 20 s. Ce qui se mange cru et a reçu du jus va à la poubelle.
ask-crossed = Ce qui se mange cru et a touché le jus cru, son couteau ou sa planche part à la poubelle. Puis couteau, planche et mains : eau chaude et savon, les mains { $wash }.
ask-dog = Pas d’os cuits, ils se fendent en éclats ; rien de salé, pas d’oignon. Un peu de viande nature, oui.
ask-fragile = Enceinte, plus de 65 ans, tout-petit ou immunité affaiblie : oui, chaud, et seulement à { $target } partout où on mesure, farce comprise ; les restes seulement réchauffés jusque-là. Dans le doute, demande à un médecin.
ask-neck = À sortir avant de saler ; regarde aux deux bouts, ils sont souvent dans un sachet. Fais-les mijoter pour la sauce, jusqu’à { $target }. Crus, ils tiennent { $giblets } au frigo.
ask-finish-oven = Oui, directement d’une chaleur à l’autre ; jamais la moitié aujourd’hui et le reste plus tard. Four à { $oven } ou plus, { $target } comme toujours.
ask-side-up = Poitrine vers le haut, bouts des ailes repliés dessous.
ask-fridge-shelf = Tout en bas, sur un plat qui retient le jus : rien de cru au-dessus d’autre chose.
ask-fridge-cover = Sans couvrir, la peau sèche et croustille mieux. Un plat dessous, tout en bas. Couvre-la si elle peut toucher autre chose ou goutter dessus.
ask-rinse-salt = Non : le sel est entré, et rincer répand les microbes dans l’évier. Sèche-la au papier ; s’il reste des grains, brosse-les.
ask-salted-twice = Brosse ce que tu peux, sans rincer, et plus de sel : ni dessus, ni dans le beurre, pas de jus de cuisson dans la sauce. S’il y est depuis longtemps, la viande sera salée : tranche fin et ne sale rien d’autre.
ask-brine-frozen = Décongèle d’abord : le sel n’entre guère dans la glace. À moitié décongelée, elle peut finir dans une saumure froide, à { $cold } ou moins.
ask-brine-or-not = Rien d’obligatoire. À sec, c’est simple : du sel sur et sous la peau, un jour ou deux au frigo, rien à renverser. La saumure demande un seau et de la place à { $cold }. Ni l’un ni l’autre pour une volaille casher ou déjà saumurée.
ask-rack = Pas de grille ? De grosses rondelles d’oignon et de carotte ou un anneau d’alu suffisent. Au four, en bas, pour que la volaille soit au milieu.
ask-truss = Pas besoin : pattes libres, les cuisses cuisent plus vite. Si elle s’étale, attache les bouts sans serrer.
ask-pan-water = Une tasse, pour que les sucs ne brûlent pas. Davantage ne fait que ramollir la peau.
ask-oven-bag = Un sachet de cuisson, selon son emballage : c’est plus rapide, mesure donc tôt. Pas de sac en papier ni de { -shopping-bag } : ça peut brûler et dégager des vapeurs.
ask-temper = Pas nécessaire : en une heure, l’intérieur se réchauffe à peine. Dehors le temps prévu au plan, pour sécher la peau, pas plus : ça compte dans la limite de { $limit }.
ask-which-salt = N’importe lequel, si tu le pèses : un gramme est un gramme. À la cuillère, non : le sel fin de table pèse environ le double des paillettes. Dis-moi lequel tu as, « sel de table », et je compte avec.
ask-fits = Mesure d’abord : deux doigts d’air tout autour dans le four, et un plat d’où les cuisses ne débordent pas. Trop grosse ? Ouverte à plat ou en morceaux sur deux plaques, ça rentre et cuit plus vite : dis « à plat ».
ask-boil = Oui : couverte d’eau, à petit frémissement, sans gros bouillons, jusqu’à { $target } au blanc, à la cuisse et à l’aile. Pas de peau croustillante, mais un bon bouillon. Mes heures sont pour le four : ici, seul le thermomètre compte.
ask-weather = À l’abri du vent, couvercle fermé, plus de combustible sous la main : vent, pluie et gel mangent la chaleur. Dehors quand même, jamais dans un garage ou une tente. Dis-moi ce qu’affiche le fumoir, je calcule avec.
ask-grill = Oui : couvercle fermé, la volaille à côté des flammes, pas au-dessus, { $oven } ou un peu plus à la grille. Je le compte comme un fumoir. Dehors seulement.
ask-smoke = Du bois doux : pommier, cerisier, un peu de chêne. La volaille entre quand la fumée est fine et bleutée ; blanche et épaisse, elle rend amer : plus d’air, et patience. Dehors seulement.
ask-gravy-how = Récupère les sucs, dégraisse. Fais roussir autant de farine que de gras gardé, fouette avec sucs et bouillon jusqu’à ce que ça coule, porte à ébullition. Goûte avant de saler : une volaille salée rend du sel.
ask-carcass = Les os au frigo dans les { $limit }, utilisés sous { $days } ou congelés. Laisse frémir 2 à 3 h avec oignon et carotte, filtre, refroidis en plats peu profonds.
ask-bones-out = Pas de bouillon avec des os restés dehors plus de { $limit } : les faire bouillir ne défait pas ce qui s’y est développé. Jette-les. Mis au frigo à temps, ils se gardent { $days }.
ask-reheat-twice = Ne réchauffe que ce qui sera mangé, une fois : chaque fois, ça reste un moment tiède. S’il faut deux fois, à { $target } partout les deux fois, et au frigo en moins de { $limit } entre les deux.
ask-leftovers-at = { $at }, c’est trop chaud pour des restes : ils se gardent à { $cold } ou moins. Au-dessus plus de { $limit } en tout, table et voiture comprises, ou personne ne sait : jette-les, les réchauffer n’y change rien. Moins : au frigo tout de suite.
ask-crisp = Une peau sèche : une nuit au frigo sans couvrir, un voile d’huile, pas d’alu, peu d’eau dans le plat. Encore molle à la fin ? { $crisp } les 10 dernières minutes, sans la quitter des yeux.
ask-fat = L’un ou l’autre. Peau sèche, une fine couche juste avant d’enfourner ; du beurre mou sous la peau pour le goût. Du beurre doux si la volaille est salée.
ask-no-butter = De l’huile : une fine couche sur la peau sèche juste avant d’enfourner, et dessous si tu veux. Elle dore aussi bien.
ask-allergy-milk = Lait : de l’huile au lieu du beurre, sur la peau et dessous. Farce, sauce et purée contiennent souvent du beurre ou de la crème.
ask-allergy-gluten = Gluten : la farce au pain à part, dans son propre plat, pas dans la volaille ; la sauce à la maïzena, pas à la farine ; la levure chimique selon l’étiquette.
ask-allergy-nuts = Fruits à coque : pas dans la farce, les accompagnements ni le dessert ; farces toutes prêtes, huiles et pain selon l’étiquette.
ask-allergy-egg = Œuf : souvent dans la farce, les pâtes, les sauces et les desserts.
ask-allergy-label = Lis aussi l’étiquette de la volaille : préparée ou injectée, elle peut contenir du lait, du blé ou du soja. Planche et couteau propres, son assiette en premier. Jusqu’où aller, la personne ou son médecin le sait.
ask-preheat = Oui, chaud avant d’y mettre la volaille : un four 20 à 30 min, un feu jusqu’à une heure.
ask-dial = Ces chiffres changent d’un four à l’autre : regarde sa notice. Ou mets celui du milieu et pose un thermomètre de four sur la grille : au bout de 20 min, vise { $oven } ou un peu plus. Dis-moi ce qu’il affiche.
ask-early = Cuite, c’est { $target } partout. Garde-la alors emballée à { $hot } ou plus, au thermomètre. Ou découpe, au frigo dans les { $limit }, et réchauffe pour le repas à { $target }.
ask-fan = Les deux conviennent. { -fan-with }, ça va plus vite et ça dore plus tôt ; pas sous { $oven } quand même. Dis « { -fan-said } » et je compte avec.
ask-ahead = Oui : cuite à { $target }, découpée, au frigo dans les { $limit } en couches minces, mangée sous { $days }. Réchauffe à couvert avec un peu de bouillon, à { $target }.
ask-flat = Des ciseaux de part et d’autre de la colonne, retire-la, retourne la volaille et aplatis la poitrine. Il faut environ deux tiers du temps. Dis « en crapaudine » en planifiant.
ask-fresh-or-frozen = Aussi bonnes l’une que l’autre. Congelée, elle s’achète des semaines avant, il lui faut juste des jours pour décongeler. Fraîche : au plus { $raw } avant la cuisson.
ask-thaw-microwave = Pour décongeler, seulement si elle y tient, selon la notice du micro-ondes. Puis cuis-la tout de suite : certains endroits chauffent déjà.
ask-thaw-sink = Dans son emballage, bien étanche, sous l’eau froide changée toutes les { $every }. Puis cuis-la tout de suite. Dis-moi le poids et je dis combien de temps.
ask-inject = Oui, possible : liquide froid, juste avant la cuisson, et son sel compte dans la dose. L’aiguille porte des germes à l’intérieur : { $target } partout, c’est ça qui décide.
ask-dropped = Crue : essuie-la avec du papier, sans la rincer, et cuis-la à { $target } comme prévu ; puis le sol et les mains. Cuite : retire ce qui a touché le sol ; si on ne sait pas, à la poubelle.
ask-prick = Oie et canard : oui, la peau seulement, là où il y a du gras. Dinde et poulet s’en passent ; jamais jusqu’à la chair, elle perd son jus.
ask-worry = Presque tout tient en trois choses : { $target } dans la poitrine, la cuisse et l’aile, jamais plus de { $limit } hors du frigo ou du chaud, mains et planche lavées après la viande crue. Je surveille les heures ; toi, tu mesures.
ask-not-in-time = Alors ça reste au four : ce sont les { $target } qui comptent, pas l’heure. Plus de chaleur, commencer par les accompagnements, découper et finir les morceaux au four, ou manger plus tard. Envoie-moi des mesures tôt, je dirai ce qu’il faut.
ask-raw-inside = Retour au four, entière ou en morceaux, jusqu’à { $target } au plus épais ; personne n’en mange avant. Couteau, planche et mains à l’eau chaude savonneuse. Rosé près de l’os ne prouve rien : le thermomètre, si.
ask-ate-raw = Le plus souvent il n’arrive rien ; personne ne peut le garantir. Le reste retourne au four jusqu’à { $target }, ou poubelle. Sang, forte fièvre, rien ne reste, ou plus de trois jours : un médecin. Enceinte, très jeune, âgé ou malade : appelle maintenant.
ask-half-cook = Non : jamais à moitié maintenant et le reste plus tard. Le centre reste tiède des heures, et la chaleur n’efface pas tout ce qui s’y développe. Cuis-la d’une traite jusqu’à { $target }, découpe-la, au froid en moins de { $limit }.
ask-fridge-down = Sans l’ouvrir : il garde le froid environ { $unopened }. Ensuite mesure : une volaille au-dessus de { $cold } plus de { $limit } part à la poubelle, la cuire n’y change rien. S’il reste de la glace ou à { $cold } ou moins, ça va.
ask-fridge-off = { $span } sans courant, c’est trop, même fermé : un frigo garde le froid environ { $unopened }. Mesure la volaille : encore de la glace, ou { $cold } ou moins, ça va. Plus chaud, ou tu ne sais pas : jette-la, la cuire n’y change rien.
ask-cold-at = { $at }, c’est trop chaud pour elle : { $cold } ou moins. Sur de la glace ou dans un frigo plus froid, tout de suite. Plus de { $limit } au-dessus, ou personne ne sait : jette-la, la cuire n’y change rien.
ask-kills = { $target } au plus épais tue les microbes. Pas ce qu’ils ont laissé : ce qui est resté dehors plus de { $limit } reste mauvais, même bien chauffé.
ask-freezer-down = Laisse-le fermé : plein, il tient environ { $full }, à moitié plein { $half }. Une volaille qui a encore de la glace, ou à { $cold } ou moins, est bonne : recongelée, ou décongelée jusqu’au bout au frigo. Décongelée et au-dessus de { $cold } plus de { $limit }, ou personne ne sait : poubelle, quelle que soit l’odeur.
ask-kosher-bird = Une volaille vendue salée, en saumure ou casher : pas de saumure, et pas de sel en plus sans goûter d’abord.
ask-other-bird = Pour cette volaille, je ne connais ni temps ni poids publiés, alors je n’en donne pas. Vrai pour toutes : c’est cuit à { $target } dans la poitrine, la cuisse et l’aile, au thermomètre ; jamais de décongélation sur { -counter }. Je connais dinde, poulet, chapon, canard et oie.
ask-thermometer = Au plus épais de la poitrine, au plus profond de la cuisse, à l’articulation de l’aile ; la pointe au milieu de la chair, loin de l’os. { $target } partout.
ask-garage-thaw = Seulement s’il y a fait { $cold } ou moins tout du long, au thermomètre. Si tu n’en sais rien, poubelle : la cuisson n’y change rien.
ask-cold-place = Mieux vaut éviter : le temps change, et les bêtes viennent. S’il le faut, dans une glacière fermée avec de la glace et un thermomètre dedans, à { $cold } ou moins tout du long. Un jour froid n’est pas un frigo.
ask-past-date = Une date limite de consommation est une vraie limite : passée, on ne mange plus, même cuit, sauf si c’était congelé à temps. « De préférence avant » est plus souple : une volaille fraîche tient { $days } au frigo depuis l’achat, pas plus.
ask-past-date-care = Dans le doute, ou si l’odeur ou le toucher est bizarre : poubelle. La cuisson n’y change rien.
ask-smell = Aigre, pourrie ou gluante : poubelle, ou retour au magasin. La cuisson n’y change rien, et ne goûte pas pour voir. Une légère odeur au sortir d’un sachet fermé s’en va en quelques minutes ; sinon, poubelle.
# Ce que peuvent manger les petits et les plus fragiles. $call comme dans ask-choking.
ask-diner-little = Dès six mois environ, oui : bien cuit, { $target } partout, en tout petits morceaux tendres, sans peau ni os, sans sel ajouté ; les restes seulement réchauffés jusque-là. Jamais de noix, marrons ou raisins entiers : il peut s’étouffer. Le dernier mot est au pédiatre.
ask-diner-chokes = Pas entiers avant cinq ans : noix, marrons, raisins, olives et morceaux durs bouchent la gorge. Écrasés ou hachés fin, assis, avec quelqu’un à côté. Le dernier mot est au pédiatre.
ask-diner-swallowed = { $call ->
    [none] Il tousse fort ? Laisse tousser et reste tout près. Souffle bruyant ou difficile, bave, lèvres bleues ? Appelle les secours tout de suite. Tout va bien, puis toux ou sifflement plus tard ? Chez un médecin aussitôt.
   *[known] Il tousse fort ? Laisse tousser et reste tout près. Souffle bruyant ou difficile, bave, lèvres bleues ? Appelle le { $call } tout de suite. Tout va bien, puis toux ou sifflement plus tard ? Chez un médecin aussitôt.
}
ask-diner-leaves = À laisser : foie gras, pâté, saumon fumé, coquillages crus, fromage au lait cru ou à croûte fleurie, œuf cru et viande rosée ne sont pas pour une femme enceinte, un tout-petit, plus de 65 ans ou une immunité affaiblie. Le dernier mot est au médecin.
ask-low-salt = On ne peut pas saler une volaille pour les uns et pas pour les autres. Laisse-la sans sel (« sans sel ») et mets du sel à table, ou sale moins (« moins de sel ») ; sauce et farce sans sel aussi. Si l’étiquette parle de « solution » ou « saumure », il y a déjà du sel. Combien il en faut au plus, c’est au médecin de le dire.
ask-thermometer-which = Un numérique rapide, ou une sonde qui reste dedans. Sans ça, personne ne peut dire que c’est sûr : emprunte-en un. Vérifie-le avant : dans l’eau glacée il marque { $ice }.
ask-no-room = Une glacière avec de la glace suffit : volaille dans un sac bien fermé, couvercle fermé, un thermomètre dedans à { $cold } ou moins, de la glace neuve avant que ça remonte. Ou sors les boissons ; la volaille jamais.
ask-carry-food = Froid, en glacière avec de la glace, à { $cold } ou moins à l’arrivée ; ou chaud, emballé dans une caisse, à { $hot } ou plus. Sinon { $limit } dehors en tout, trajet compris ; { $short } au-dessus de { $air }.
ask-oven-down = Laisse la porte fermée. Si la chaleur ne revient pas vite, déplace la volaille : un autre four, celui d’un voisin, un barbecue à couvercle dehors. Si elle n’était pas encore à cuire, retour au frigo.
ask-oven-down-care = Ne t’arrête pas à moitié pour finir plus tard. Tiède mais sous { $hot } plus de { $limit } en tout : à la poubelle.
ask-still-frozen = Dans l’eau froide maintenant, dans un sac bien fermé, de l’eau fraîche toutes les { $every } : un peu plus d’1 h par kilo encore gelé. Puis cuis-la tout de suite.
ask-still-frozen-cook = Ou cuis-la telle quelle, sans farce, au four, pas au fumoir ni en friteuse : jusqu’à moitié plus longtemps. Retire les abats dès qu’ils se détachent. { $target } partout.
ask-from-frozen = Au four, oui : { $oven } ou plus, sans farce, environ moitié plus longtemps que décongelée. Les abats dehors dès qu’ils se détachent, { $target } partout. Jamais au fumoir ni en friteuse.
ask-is-thawed = Décongelée : pas de glace à l’intérieur, les pattes bougent, { $cold } ou moins au cœur. Encore de la glace ? Plus de temps au frigo, ou de l’eau froide.
ask-too-fast = Baisse le four, pas sous { $oven }, et pose du { -foil } dessus. { $target } partout, c’est cuit : ensuite, garde à couvert à { $hot } ou plus.
ask-stall = Bloqué une heure environ dans un fumoir doux, c’est le plateau : la peau humide refroidit autant que le feu chauffe. Ça passe. Plus de chaleur y met fin plus tôt, { -foil } aussi, mais la peau ramollit. Dans un four chaud, regarde la pointe : au cœur de la chair, loin de l’os. Cuit reste { $target }.
ask-too-slow = Four à { $oven } ou un peu plus, porte fermée. Si ça presse, détache cuisses et poitrine et cuis les morceaux. Mieux vaut servir tard que sous { $target }.
ask-stuffing-for = { $people ->
    [one] Farce pour une personne : { $low } à { $high }.
   *[other] Farce pour { $people } : { $low } à { $high }. Ce qui n’entre pas sans tasser dans la volaille cuit à côté.
}
ask-gravy-for = { $people ->
    [one] Sauce pour une personne : { $low } à { $high }.
   *[other] Sauce pour { $people } : { $low } à { $high }.
}

# ---- unités
ask-convert = { $given } = { $result }.

# ---- pourquoi : d'où vient un chiffre. Les titres restent comme ils ont été imprimés.
ask-source-seen = { $publisher } : { $title }
ask-source-seen-secondary = { $publisher } : { $title } (cité ailleurs)
ask-source-common-practice = Pratique courante, sans source : { $title }
ask-source-from-memory = De mémoire, pas retrouvé imprimé : { $publisher }, { $title }
ask-source-derived = Calculé d’après { $publisher } : { $title }

ask-span = { $span }
