# Les plats à côté de la volaille.
dish-added = Ajouté : { $what }, { $when }.
dish-changed = Changé : { $what }, { $takes }, { $when }.
dish-changed-at = Changé : { $what }, { $takes } à { $setting }, { $when }.
dish-told = { $what } : { $when }, { $takes }.
dish-told-at = { $what } : { $when }, { $takes } à { $setting }.
dish-all-fit = Oui, comme prévu, tout tient :
dish-there = { $name } est déjà au plan, { $when }.
dish-button-another = Encore un
dish-hot-through = { $target } au milieu avant d’y goûter.
dish-removed = Retiré du plan : { $name }.
dish-none = Il n’y a aucun plat au plan.
dish-unknown = Pas de { $name } au plan. Il y a : { $known }.
dish-name = { $name }
dish-stays = Ça ne marche pas pour l’instant. Rien n’a changé.
dish-left = Tout reste comme avant.
dish-start = Tu as dit { $said }. Pour ce repas, c’est { $when }. S’il peut attendre au froid, dis qu’il se fait à l’avance.
dish-theirs = C’est à { $name }. Il faut être cette personne, celle qui l’a ajouté, l’hôte ou un admin pour le changer ou le retirer.
dish-ready = Tu as dit prêt pour { $said }. Pour ce repas, c’est prêt { $when }. S’il peut attendre au froid, dis qu’il se fait à l’avance.
dish-said = Tu as dit { $said } : choisis ce qui s’en approche, ou laisse.
dish-no-plan = D’abord la volaille : raconte-moi le repas avec /plan, puis le reste de la table.
dish-no-name = C’est quoi, et combien de temps ? Comme ceci : /plan ajoute farce au four 45 min à 190
dish-no-time = Combien de temps ({ $name }) ? Comme ceci : /plan ajoute { $name } au four 45 min à 190
dish-time = { $name } : de 1 min à 12 h.
dish-setting = { $setting }, ce n’est pas un réglage pour un plat : de { $low } à { $high }. Comme ceci : au four 45 min à 190
dish-too-many = Ça fait déjà { $most } plats. Enlèves-en un d’abord : /plan enlève …
dish-not-yet = « { $name } » n’est pas encore dans le plan : il faut d’abord que le repas tienne. Redis-le-moi ensuite.
dish-cold = Au frigo à partir de { $when }, { $room ->
    [half] une demi-{ -shelf }
    [whole] une { -shelf }
   *[more] { $shelves } { -shelves }
}.
dish-iced = Dans une glacière avec de la glace à partir de { $when }, un thermomètre dedans : { $cold } ou moins tout le temps.
dish-shelves = { $count ->
    [one] Une { -shelf }
   *[other] { $count } { -shelves }
} pour le repas, celle de la volaille comprise. S’il en faut pour le reste, dis-m’en moins.
dish-shelves-hint = Le frigo est plein ? Dis-moi « mon frigo a 3 { -shelves } » et je vérifie que tout tient à côté de la volaille.
dish-stay = Au frigo ({ $name }) : de 15 min à 2 jours, jusqu’au repas.
