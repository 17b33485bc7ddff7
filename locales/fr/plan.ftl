### Les valeurs du plan en mots : étapes, appels, raisons, changements, mises en garde, choses.

# ---- noms des étapes, comme au tableau. Une ligne de téléphone : moins de 28 caractères, sans point.
plan-step-buy = Acheter la volaille
plan-step-thaw = Lancer la décongélation
plan-step-thaw-finish = Du frigo à l’eau froide
plan-step-water = Changer l’eau
plan-step-salt = Saler la volaille
plan-step-rest = Repos salé au frigo
plan-step-temper = Sécher la volaille
plan-step-fire = Préchauffer
plan-step-on = Mettre à cuire
plan-step-check = Prendre les températures
plan-step-pull = Sortir de cuisson
plan-step-stand = Laisser reposer
plan-step-carve = Découper
plan-step-chill = Mettre au frigo
plan-step-pack = Emballer au froid
plan-step-pack-hot = L’emballer chaude
plan-step-travel = Partir
plan-step-reheat = Réchauffer
plan-step-serve = À table
plan-step-leftovers = Dernier jour des restes
plan-step-dish = { $name }

# ---- les mêmes, faites
plan-done-buy = Volaille achetée
plan-done-thaw = En décongélation
plan-done-thaw-finish = Dans l’eau froide
plan-done-water = Eau changée
plan-done-salt = Salée
plan-done-rest = Au repos au frigo
plan-done-temper = La volaille est sèche
plan-done-fire = Préchauffage lancé
plan-done-on = En cuisson
plan-done-check = Températures prises
plan-done-pull = Sortie de cuisson
plan-done-stand = Au repos
plan-done-carve = Découpée
plan-done-chill = Au frigo
plan-done-pack = Emballée au froid
plan-done-pack-hot = Emballée chaude
plan-done-travel = En route
plan-done-reheat = Réchauffée
plan-done-serve = Repas servi
plan-done-leftovers = Restes réglés
plan-done-dish = { $name } en préparation

# ---- appels : quoi faire maintenant, avec le soin qu'il faut. Deux ou trois phrases courtes.
plan-call-buy = { $condition ->
    [frozen] C’est l’heure d’acheter la volaille. Directement à la maison et au congélateur, ou au frigo si elle décongèle ensuite.
   *[fresh] C’est l’heure d’acheter la volaille. Directement à la maison et au frigo, sur une plaque tout en bas.
}
plan-call-thaw-fridge = Mets la volaille au frigo pour décongeler, dans son emballage, sur une plaque tout en bas. Le frigo à { $cold } ou moins ; jamais sur { -counter }.
plan-call-thaw-water = Mets la volaille dans un sac étanche et sous l’eau froide. Change l’eau toutes les { $every }. Jamais d’eau tiède.
plan-call-thaw-finish = Maintenant du frigo à l’eau froide, dans un sac étanche, pour finir de décongeler. Change l’eau toutes les { $every }. Jamais d’eau tiède.
plan-call-water = Change l’eau de décongélation ({ $n } sur { $of }). Elle reste froide, la volaille dans son sac étanche.
plan-call-salt-dry = Sale la volaille : ôte le cou et les abats, éponge-la, ne la lave pas, du sel dedans et dehors. Puis au frigo sans couvrir, sur une plaque tout en bas.
plan-call-salt-wet = Mets la volaille dans la saumure, couverte, et au frigo. Elle reste à { $cold } ou moins tout du long.
plan-call-salt-now = Sors-la de l’eau maintenant : ôte cou et abats, sèche-la, sale-la. Décongelée dans l’eau, elle passe tout de suite à la cuisson.
plan-call-rest = Le repos salé : laisse-la au frigo, sans couvrir, tout en bas.
plan-call-temper = Sors la volaille du frigo : cou et abats ôtés, sèche-la, pique la peau, beurre-la. Au plus { $most } hors du frigo, puis à cuire.
plan-call-temper-fat = Sors la volaille du frigo : cou et abats ôtés, sèche-la, pique la peau là où c’est gras, sans toucher la chair. Pas de beurre : sa graisse suffit. Au plus { $most } hors du frigo, puis à cuire.
plan-call-temper-water = La volaille est sortie de l’eau : sèche-la encore, pique la peau, beurre-la. À cuire dans les { $most }.
plan-call-temper-salt = Puis le sel, que ce plan a gardé pour la fin :
plan-call-fire-oven = Préchauffe le four à { $setting }.
plan-call-fire-smoker = Allume le feu et laisse-le se stabiliser à { $setting }. Dehors seulement : jamais de charbon à l’intérieur ni dans un garage.
plan-call-on = Mets la volaille à cuire. Thermomètre au plus épais de la poitrine, loin de l’os.
plan-call-on-stuffed = Farcis-la maintenant, sans tasser, puis mets-la à cuire. Thermomètre au plus épais de la poitrine, loin de l’os.
plan-call-check = C’est l’heure d’y jeter un œil : poitrine, cuisse et { $cooker ->
    [smoker] air du fumoir
   *[oven] four
}. Envoie-moi juste les chiffres.
plan-call-pull = Ça devrait être à peu près cuit. À sortir seulement à { $target } au plus épais de la poitrine, au plus profond de la cuisse et dans l’aile. Moins ? Ça reste.
plan-call-pull-stuffed = Ça devrait être à peu près cuit. À sortir seulement à { $target } au plus épais de la poitrine, au plus profond de la cuisse, dans l’aile et au milieu de la farce. Moins ? Ça reste.
plan-call-stand = Laisse reposer, couvert sans serrer, { $least } ou plus.
plan-call-carve = C’est l’heure de découper : planche propre, couteau propre.
plan-call-carve-hot = D’abord le thermomètre, dans la poitrine et la cuisse. { $hot } ou plus aux deux : on découpe, planche propre, couteau propre.
plan-call-chill-ahead = Mets la viande découpée dans des plats peu profonds et au frigo avant { $latest }. Chaude, c’est bien ; plus tard, non.
plan-call-chill = Mets les restes au frigo avant { $latest }, dans des plats peu profonds. Ce qui est resté hors du frigo plus longtemps part à la poubelle.
plan-call-pack = Emballe au froid : la viande à { $cold } ou moins, de la glace tout autour, glacière fermée.
plan-call-pack-hot = Emballe-la entière et chaude : { -foil }, puis serviettes, dans une caisse réchauffée à l’eau chaude. Le thermomètre reste dedans. Au-dessus de { $air } dehors, { $hour } pour la manger, pas deux.
plan-call-travel = C’est l’heure de partir. La glacière reste fermée jusqu’au frigo ou au four là-bas.
plan-call-travel-hot = C’est l’heure de partir. La caisse reste fermée jusqu’à l’arrivée.
plan-call-reheat = Réchauffe à couvert, avec un peu de bouillon, au four de { $low } à { $high }, jusqu’à { $target } partout.
plan-call-serve = À table ! Bon appétit ; je te rappelle plus tard pour le frigo.
plan-call-leftovers = Les restes : mange-les ou congèle-les aujourd’hui. C’est leur dernier jour au frigo.
plan-call-dish = C’est l’heure : { $name }.
plan-call-dish-oven = { $name } : au four à { $setting }, { $takes }.
plan-call-dish-smoker = { $name } : au fumoir à { $setting }, { $takes }.
plan-call-dish-stove = { $name } : sur le feu, { $takes }.
plan-call-dish-made = { $name } : à commencer maintenant, { $takes }.
plan-call-dish-chill = { $name } : au frigo maintenant, à { $cold } ou moins, jusqu’au repas.
plan-call-dish-then-fridge = Ensuite au frigo jusqu’au repas, à { $cold } ou moins.
plan-call-dish-then-cooler = Ensuite dans une glacière avec beaucoup de glace et un thermomètre : { $cold } ou moins jusqu’au repas. Au-dessus pendant { $most }, ça se jette.
plan-call-dish-then-hot = Ensuite au chaud et couvert, à { $hot } ou plus, jusqu’au repas.

# ---- raisons : moitiés de phrases dans une liste, sans majuscule, sans point.
plan-reason-dinner = le repas est à cette heure-là
plan-reason-now = ça ne peut pas être plus tôt que maintenant
plan-reason-done = c’est l’heure où ça a été fait
plan-reason-follows = « { $step } » vient d’abord et prend { $takes }
plan-reason-raw-keeps = une volaille fraîche se garde { $most } au frigo
plan-reason-shop = les courses ne se font pas avant { $at }
plan-reason-use-by = l’emballage dit à consommer jusqu’à { $day }
plan-reason-fridge-thaw = la décongélation au frigo prend { $time }
plan-reason-fridge-share = { $spent } au frigo, sur { $whole } au plus ; l’eau froide fait le reste
plan-reason-water-thaw = la décongélation dans l’eau froide prend { $time }
plan-reason-water-finish = ce qui est encore gelé demande jusqu’à { $most } dans l’eau froide
plan-reason-water-change = l’eau se change toutes les { $every }
plan-reason-cook-at-once = décongelé dans l’eau ça se cuit tout de suite
plan-reason-thawed-keeps = une fois décongelé ça se garde { $most } au frigo
plan-reason-salt-wants = le sel veut { $least } ou plus
plan-reason-salt-at-most = une fois salé ça attend { $most } au plus
plan-reason-brine-wants = la saumure veut { $least } ou plus
plan-reason-temper = environ { $about } pour sécher et beurrer
plan-reason-room-temperature = crue elle reste hors du frigo { $most } au plus
plan-reason-preheat = { $cooker ->
    [smoker] le feu met { $least } à se stabiliser
   *[oven] le four met { $least } à chauffer
}
plan-reason-cooking-time = la cuisson prend { $time }
plan-reason-forecast = c’est là où elle en est
plan-reason-check-before = un coup d’œil avant que ça puisse être cuit
plan-reason-stand = ça repose { $least } avant la découpe
plan-reason-hot-hold = après la cuisson ça attend { $most } au plus sauf si c’est gardé à { $hot }
plan-reason-hot-road = emportée chaude, elle est mangée dans les { $most } après la sortie du feu
plan-reason-carving = la découpe prend environ { $about }
plan-reason-two-hours = au frigo en moins de { $most }
plan-reason-cold-through = il faut { $least } au frigo pour être froid à cœur
plan-reason-drive = la route prend { $takes }
plan-reason-packed-cold = emballé avec de la glace ça part dans les { $most }
plan-reason-reheat = réchauffer prend environ { $about }
plan-reason-reheat-within = de nouveau à { $target } en moins de { $most }
plan-reason-cooked-keeps = une fois cuit ça se garde { $most } au frigo
plan-reason-sociable = à une heure où les gens sont debout
plan-reason-dinner-past = cette heure de repas est passée
plan-reason-dinner-too-far = ce repas est dans plus d’un an
plan-reason-drive-too-long = une glacière avec de la glace tient { $most } sur la route
plan-reason-setting = { $cooker ->
    [smoker] un fumoir va de { $low } à { $high }
   *[oven] un four va de { $low } à { $high }
}
plan-reason-thaw-before-smoking = un fumoir ne prend qu’une volaille décongelée à cœur
plan-reason-stuffed-frozen = une volaille encore congelée ne se farcit pas
plan-reason-stuffed-form = seule une volaille entière se farcit
plan-reason-stuffed-kind = un canard ne se farcit pas
plan-reason-form-for-kind = une poitrine de dinde se cuit telle quelle
plan-reason-mass-for-kind = une volaille de ce genre pèse de { $low } à { $high }
plan-reason-solution = le pourcentage de l’étiquette va de 0 à 50
plan-reason-dish-hot = « { $name } » se mange chaud et attend { $most } au plus
plan-reason-dish-ahead = « { $name } » se prépare à l’avance et attend au frigo
plan-reason-heat-taken = { $how ->
    [setting] « { $name } » demande { $own } quand « { $other } » y demande { $others }
    [time] « { $name } » demande la chaleur quand « { $other } » l’occupe
    [setting-bird] « { $name } » demande { $own } quand la volaille y demande { $others }
    [time-bird] « { $name } » demande la chaleur quand la volaille l’occupe
    [full] on n’y met que { $room } plats à la fois, « { $name } » est de trop
   *[alone] « { $name } » demande une chaleur déjà prise à ce moment-là
}
plan-reason-heat-bird = la volaille
plan-reason-dish-cold = « { $name } » demande { $least } de frigo
plan-reason-fridge-taken = avec la volaille au frigo ({ $shelves ->
    [one] une { -shelf }
   *[other] { $shelves } { -shelves }
}), il ne reste pas de place pour « { $name } »
plan-reason-fridge-full = le frigo ({ $shelves ->
    [one] une { -shelf }
   *[other] { $shelves } { -shelves }
}) n’a plus de place pour « { $name } », même sans la volaille

# ---- changements proposés : noms de boutons, moins de 28 caractères.
plan-change-cold-water = Décongeler à l’eau froide
plan-change-finish-in-water = Frigo, puis eau froide
plan-change-fridge-thaw = Décongeler au frigo
plan-change-cook-frozen = Cuire sans décongeler
plan-change-shorter-rest = Repos salé plus court
plan-change-no-salt = Pas de sel à l’avance
plan-change-dinner = Repas { $when }
plan-change-hotter = Plutôt { $setting }
plan-change-flat = En crapaudine
plan-change-unstuffed = Farce à part
plan-change-cook-ahead = Cuire la veille
plan-change-carry-cold = La transporter froide
plan-change-smaller-bird = Une volaille de { $mass }
plan-change-two-birds = Deux volailles de { $mass }
plan-change-buy-fresh = En acheter une fraîche
plan-change-buy-later = Acheter fraîche plus tard
plan-change-freeze = La congeler maintenant
plan-change-dish-beside = { $name } : en même temps
plan-change-dish-ahead = { $name } : à l’avance
plan-change-dish-early = { $name } : plus tôt
plan-change-dish-out = Sans { $name }
plan-change-dish-later = { $name } : après
plan-change-dish-cooler = { $name } : en glacière

# ---- ce que coûte un changement : moitiés de phrases après deux-points.
plan-cost-cold-water = { $changes ->
    [one] un changement d’eau, à partir de { $when } ; pas de repos salé
   *[other] { $changes } changements d’eau, à partir de { $when } ; pas de repos salé
}
plan-cost-finish-in-water = { $changes ->
    [one] un changement d’eau, à partir de { $when } ; pas de repos salé, puis cuite aussitôt
   *[other] { $changes } changements d’eau, à partir de { $when } ; pas de repos salé, puis cuite aussitôt
}
plan-cost-fridge-thaw = au frigo { $when }
plan-cost-cook-frozen = environ { $time } au four, mise à cuire { $when } ; pas de sel à l’avance
plan-cost-shorter-rest = { $rest } de sel au lieu de { $wanted }
plan-cost-no-salt = à assaisonner au moment de cuire
plan-cost-dinner = tout le reste comme tu voulais
plan-cost-hotter = plus rapide, et ça dore plus
plan-cost-flat = sans l’échine ; ça cuit bien plus vite
plan-cost-unstuffed = ça cuit plus vite, et c’est plus sûr
plan-cost-cook-ahead = découpé, refroidi, réchauffé à { $target }
plan-cost-carry-cold = cuite la veille, réchauffée là-bas à { $target }
plan-cost-smaller-bird = assez pour tous, peu de restes
plan-cost-two-birds = elles décongèlent et cuisent plus vite qu’une grosse
plan-cost-buy-fresh = rien à décongeler ; à acheter { $when }
plan-cost-buy-later = celle de la maison ne tiendra pas ; à acheter { $when }
plan-cost-freeze = au congélateur aujourd’hui, à décongeler dès { $when }
plan-cost-dish-beside = au réglage de la volaille : { $takes }, dès { $when }
plan-cost-dish-ahead = { $when }, puis au frigo ; réchauffé à { $target } pour la table
plan-cost-dish-early = { $when }, puis couvert à { $hot } ou plus
plan-cost-dish-out = le reste ne change pas
plan-cost-dish-later = au frigo { $when }, une fois la volaille sortie : { $stay } au moins, pas plus
plan-cost-dish-cooler = avec beaucoup de glace et un thermomètre : { $cold } ou moins tout le temps

# ---- mises en garde d'un plan qui marche : phrases entières.
plan-caution-odd-hours = « { $step } » tombe en pleine nuit.
plan-caution-short-rest = Seulement { $rest } de sel : il pénètre moins, mais ça reste bon.
plan-caution-keep-hot = Ce sera peut-être cuit { $wait } avant la découpe : à garder à { $hot } ou plus.
plan-caution-hot-till-packed = Elle peut être cuite { $wait } avant l’emballage : d’ici là, garde-la à { $hot } ou plus.
plan-caution-overrun = Une limite est dépassée ({ $reason }). Dans le doute, n’en mange pas.
plan-caution-stuffing-apart = Sors la farce encore chaude et refroidis-la à part.
plan-caution-stuffing-out = Sors la farce avant d’emballer ; elle voyage chaude dans son propre plat.
plan-caution-oven-below-authority = Les autorités sanitaires disent : pas de four sous { $limit } pour la volaille.
plan-caution-smoker-below-authority = Sous { $limit }, on sort de la plage publiée pour les fumoirs.
plan-caution-smoker-above-published = Au-dessus de { $limit }, les temps au fumoir viennent de l’expérience, pas d’une table publiée.
plan-caution-long-in-danger-zone = À feu doux, elle reste longtemps entre { $cold } et { $hot }, et l’heure est la moins sûre.
plan-caution-outside-table = Aucune table publiée ne va jusqu’à ce poids ; le temps est extrapolé.
plan-caution-stuffing-last = Le milieu de la farce doit atteindre { $target } aussi, souvent en dernier. Plus sûr cuite à côté de la volaille.
plan-caution-from-frozen = Sans décongeler, le temps varie beaucoup. Retire les abats dès qu’ils se détachent.
plan-caution-part-thawed = À moitié décongelé, le temps est quelque part entre décongelé et congelé.
plan-caution-pieces-differ = Les morceaux finissent l’un après l’autre : mesure-les tous.

# ---- ce que le plan suppose : noms dans une liste.
plan-need-bird = la volaille
plan-need-thermometer = un thermomètre de cuisine
plan-need-salt = du sel
plan-need-rack = une plaque avec une grille
plan-need-bag = un sac étanche
plan-need-brine-vessel = une marmite pour la saumure qui entre au frigo
plan-need-fuel = du combustible pour le fumoir
plan-need-foil = du { -foil }
plan-need-shallow-dishes = des plats peu profonds
plan-need-cooler = une glacière avec de la glace
plan-need-hot-box = une caisse isotherme et des serviettes
plan-need-broth = un peu de bouillon
