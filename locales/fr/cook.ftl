### Pendant la cuisson : la prévision en une ligne, ce qui a paru faux, les alarmes, et comment ça a fini. Se lit les mains mouillées.

cook-line = Vers <b>{ $about }</b>, entre { $from } et { $to } ; { $standing ->
    [spare] { $span } de marge ;{" "}
    [tight] c’est juste, à sortir avant { $latest } ;{" "}
    [late] { $span } trop tard pour le repas ;{" "}
   *[ahead] {""}
}regarde encore à { $look }.
cook-endless = Au mieux vers <b>{ $about }</b>, à partir de { $from } ; à cette chaleur ça peut aller bien au-delà de { $to } ; { $standing ->
    [spare] { $span } de marge ;{" "}
    [tight] c’est juste, à sortir avant { $latest } ;{" "}
    [late] { $span } trop tard pour le repas ;{" "}
   *[ahead] {""}
}regarde encore à { $look }.
cook-done = { $target } là où tu as mesuré : à sortir dès que le plus profond de l’aile y est aussi.
cook-spot = { $spot ->
    [breast] Poitrine
   *[thigh] Cuisse
} : { $reached ->
    [yes] c’est bon.
   *[no] { $now } maintenant, { $target } vers { $about } (entre { $from } et { $to }).
}
cook-air-read = { $air ->
    [oven] Four
   *[pit] Air
}{ $seen ->
    [yes]  : { $read } à { $at }, réglé sur { $setting }.
   *[no]  : réglé sur { $setting }.
}
cook-dinner = Repas { $dinner }.
cook-decades = D’après les tables publiées, chaleur et temps suffisent déjà là où tu mesures. Le repère reste { $target } : d’autres endroits sont peut-être plus froids.
cook-decades-off = Sortie maintenant et laissée { $stand } sans la découper, chaleur et temps suffiraient là où tu mesures, d’après les tables publiées : { $low } demande { $hold } partout, aile comprise. Le repère reste { $target } : d’autres endroits sont peut-être plus froids.

cook-in-time-again = Ça colle de nouveau pour le repas.
cook-read-by = { $name } a mesuré.
cook-late-choices = On peut décaler le repas, ou :
cook-late-hotter = • Chaleur à { $setting } : ça pourrait donner vers { $about }. Ensuite, dis-moi combien il y fait.
cook-late-carve = • Détache cuisses et poitrines et finis-les sur une plaque dans un four chaud, chaque morceau à { $target } : les morceaux vont bien plus vite. D’une chaleur à l’autre, sans pause.
cook-button-dinner = Repas { $at }
cook-button-hotter = Chaleur à { $setting }
cook-hotter = Le plan dit { $setting } maintenant. Monte-le, et dis-moi dans 20 minutes combien il y fait.
# The air was otherwise than set. $since: on (since the bird went on) or at ($from); $setting: what it is set to now.
cook-air-was = { $since ->
    [on] Noté : { $was } depuis le début de la cuisson.
   *[at] Noté : { $was } depuis { $from }.
}
cook-air-off = { $since ->
    [on] Noté : pas de chaleur depuis le début.
   *[at] Noté : pas de chaleur depuis { $from }.
}
cook-air-now = À partir de maintenant, je compte avec { $setting }. Dis-moi si tu changes.
cook-start = Noté : { $at } à cœur au départ.
cook-air-back = Remets à { $setting } tout de suite : mon heure compte là-dessus.
cook-air-burns-on = Alors la chaleur continue, et le plan aussi. Vérifie que la flamme brûle encore ; éteinte ? Dis-le-moi.
cook-air-rising = Ça monte, donc il y a de la chaleur : je compte de nouveau sur { $setting }. Ce n’est pas le cas ? Dis-le-moi.
cook-air-low = La volaille demande un four à { $limit } ou plus. Mesure la poitrine maintenant et dis-moi.
cook-air-cold = Mesure la poitrine maintenant et dis-moi. Moins de { $hot } après { $limit } comme ça : à jeter.
cook-air-raw = Une volaille crue sans chaleur { $limit } ou plus n’est plus sûre, quelle que soit la cuisson ensuite. À jeter.
cook-early = { $done ->
    [yes] C’est bien avant { $dinner }.
   *[no] C’est bien avant le repas ({ $dinner }).
} À garder au chaud : bien emballé, au four tiède ou dans une glacière sèche, et le thermomètre doit continuer à marquer { $hot }. Plus froid, il faut manger ou mettre au frigo avant { $until }. Ou alors découper, refroidir dans des plats peu profonds, et réchauffer à { $target }.

cook-suspect-odd = { $spot ->
    [breast] Poitrine
    [thigh] Cuisse
    [oven] Four
   *[pit] Air
} à { $given } ? { $slip ->
    [was-celsius] Si c’étaient des °C, ça fait { $meant }.
    [was-fahrenheit] Si c’étaient des °F, ça fait { $meant }.
   *[digit] { $meant } irait mieux.
}
cook-suspect-impossible = { $spot ->
    [breast] Poitrine
    [thigh] Cuisse
    [oven] Four
   *[pit] Air
} à { $given } ? Je n’y crois pas.
cook-suspect-ask = Pas compté. C’est vraiment ce que ça marque ?
cook-suspect-meant = C’est { $parts }
cook-suspect-meant-all = Prendre les corrigées
cook-suspect-dropped = Laissé de côté. Renvoie ce que ça marque maintenant.

cook-alarm-fire = { $cooker ->
    [smoker] <b>Le feu s’éteint :</b> air à { $pit }, et ça ne remonte pas. Du combustible et de l’air tout de suite, couvercle fermé. Redis-moi l’air dans 15 minutes.
   *[oven] <b>Le four perd sa chaleur :</b> { $pit } pour un réglage à { $setting }. Il est allumé, la porte fermée ? Dis-moi ce qu’il marque dans 15 minutes.
}
cook-alarm-hot = { $cooker ->
    [smoker] Le feu s’emballe : { $pit } au lieu de { $setting }. Ferme un peu les arrivées d’air ; { -foil } sur ce qui dore trop vite.
   *[oven] Le four chauffe trop : { $pit } au lieu de { $setting }. Baisse-le ; { -foil } sur ce qui dore trop vite.
}
cook-alarm-sag = { $cooker ->
    [smoker] Le fumoir baisse : { $pit } au lieu de { $setting }. Couvercle ouvert à l’instant ? Regarde encore dans 10 minutes. Sinon, du combustible et un peu plus d’air, couvercle fermé. Il reste dehors : monoxyde de carbone.
   *[oven] Le four baisse : { $pit } au lieu de { $setting }. Porte ouverte à l’instant ? Regarde encore dans 10 minutes. Sinon, vérifie qu’il est allumé et fermé, et monte-le un peu.
}
cook-alarm-moved = { $spot ->
    [breast] La mesure de la poitrine a fait un saut. La sonde est toujours au plus épais, loin de l’os ?
    [thigh] La mesure de la cuisse a fait un saut. La sonde est toujours au plus profond de la cuisse, loin de l’os ?
    [oven] La mesure du four a fait un saut. Le thermomètre a bougé ?
   *[pit] La mesure de l’air a fait un saut. Le thermomètre a bougé ?
} Remets tout en place et envoie-moi ce que ça marque.
cook-doubting = Mesure ailleurs, au cœur de la viande, loin de l’os. Si le chiffre était faux, annule-le ; sinon il compte.
cook-alarm-behind = { $spot ->
    [breast] La poitrine
   *[thigh] La cuisse
} est bien plus froide qu’elle ne devrait à { $setting } à ce stade. { $cooker ->
    [smoker] Le feu est-il chaud, la pointe est-elle au cœur de la viande ? Mesure ailleurs aussi. Il était éteint ? Dis-moi combien de temps : « éteint 40 min ».
   *[oven] Le four est-il chaud, la pointe est-elle au cœur de la viande ? Mesure ailleurs aussi. Il était éteint ? Dis-moi combien de temps : « éteint 40 min ».
}
cook-alarm-ahead = { $spot ->
    [breast] La poitrine
   *[thigh] La cuisse
} est bien plus chaude qu’elle ne devrait à { $setting } à ce stade : la pointe touche l’os ou reste sous la peau ? Mesure ailleurs, au cœur de la viande.
cook-alarm-apart = { $apart } d’écart entre poitrine et cuisse. L’une des sondes est mal placée : vérifie les deux, loin de l’os et pas dans le creux de la carcasse.
cook-alarm-stalled = { $spot ->
    [breast] La poitrine
   *[thigh] La cuisse
} marque { $at } depuis { $since }. { $low ->
    [yes] Dans un fumoir doux, c’est peut-être le plateau : la peau transpire aussi vite qu’elle chauffe. Plus de chaleur y met fin.
   *[no] La sonde est bien à sa place ? Un second thermomètre le dira.
}
cook-alarm-zone = <b>L’air est sous { $low } depuis { $span }</b>, et la volaille à { $spot }. Sous { $hot }, les bactéries se multiplient : remonte la chaleur tout de suite, ou passe tout au four. Deux heures comme ça, c’est la limite.
cook-alarm-zone-over = <b>L’air est sous { $low } depuis { $span }</b>, et la volaille à { $spot }. La limite de deux heures est passée. Je ne servirais pas ça.
cook-alarm-long = { $spot ->
    [thigh] La cuisse
   *[breast] La poitrine
} marque { $at } après { $span }. À feu doux, elle devrait passer { $hot } en { $most } au plus : c’est l’usage, pas un chiffre officiel. Plus de chaleur, ou un four à { $oven }, et c’est passé.
cook-alarm-falling = { $spot ->
    [thigh] <b>La cuisse refroidit :</b>
   *[breast] <b>La poitrine refroidit :</b>
} { $from }, maintenant { $to }. { $cooker ->
    [smoker] Le feu est éteint ? Du combustible et de l’air tout de suite, ou passe la volaille dans un four chaud.
   *[oven] Le four est allumé, la porte fermée ? Sinon, dans un autre four chaud.
} En dessous de { $hot }, les bactéries se multiplient : deux heures comme ça, c’est la limite. Envoie-moi la prochaine mesure dans 10 minutes.
cook-alarm-falling-over = { $spot ->
    [thigh] <b>La cuisse refroidit depuis { $span } :</b>
   *[breast] <b>La poitrine refroidit depuis { $span } :</b>
} { $from }, maintenant { $to }. La limite de deux heures sous { $hot } est passée. Je ne la servirais pas.
cook-falling = Pas d’heure tant que ça refroidit : d’abord, la chaleur doit revenir.
cook-alarm-hold = Sortie de cuisson depuis { $off }. Mesure : { $hot } ou plus, ça peut attendre. Moins, il faut manger ou mettre au frigo avant { $until }.
cook-alarm-hold-read = Dernière mesure chaude à { $off }. Mesure encore : { $hot } ou plus, ça peut attendre. Moins, il faut manger ou mettre au frigo avant { $until }.
cook-held-unread = Encore chaude ? Je n’ai pas de mesure depuis { $off }. Mesure poitrine et cuisse tout de suite : { $hot } ou plus aux deux, elle l’est. Moins, elle se jette.
# A bird carried hot to another house. $hot: 140 °F; $off: when it was last known to be hot; $by: two hours later.
cook-hot-by = Si ça marque moins : mangée avant { $by }, les restes tout de suite au frigo. Plus tard, ne la sers pas.
cook-measure-first = Mesure d’abord poitrine et cuisse et dis-le-moi : à { $hot } ou plus, ses deux heures comptent de là, sinon depuis { $off }.
cook-hot-dinner-late = Ses deux heures finissent à { $by }, avant le repas : elle doit rester à { $hot } ou plus. Sinon, elle est mangée avant.
cook-hot-still = Toujours { $hot } ou plus aux deux : bien, elle peut attendre tant qu’elle affiche ça. Après la dernière mesure ainsi, elle a { $most }.
cook-hot-one = Cet endroit est assez chaud. Les deux comptent, poitrine et cuisse : mesure l’autre aussi.
cook-hot-below = C’est sous { $hot }. D’après ce qu’on m’a dit, elle était chaude jusqu’à { $off } : mangée avant { $by }, les restes tout de suite au frigo.
cook-hot-over = C’est sous { $hot }, et plus de { $most } depuis { $off }, où on la savait chaude pour la dernière fois. Je ne la servirais pas.
# Remise à chauffer dans l'autre maison.
cook-hot-in = Remise à chauffer à { $at }, avant la fin de ses deux heures : bien. Elle y reste jusqu’à { $target } à la poitrine et à la cuisse, puis elle est mangée. Donne-moi les chiffres.
cook-hot-in-more = Pas encore : elle y reste jusqu’à { $target } à la poitrine et à la cuisse.
cook-hot-in-there = { $target } aux deux : découpe et à table. Les restes au frigo avant { $by }.
cook-hot-in-table = Remise à chauffer à { $at } : elle est découpée quand poitrine et cuisse affichent { $target }.
cook-hot-too-late = Ses deux heures ont fini à { $by }, avant qu’elle soit réchauffée. La chaleur ne rattrape pas ça : à la poubelle, ne la sers pas.
cook-hot-needs = Poitrine et cuisse à { $hot } ou plus : non, découpe-la telle quelle, avant { $by }. Moins : au four avant cette heure, jusqu’à { $target } aux deux.
cook-hot-needs-no = Non : { $hot } ou plus aux deux. Découpe-la telle quelle, mangée avant { $by }.
cook-cooled-counter = { $at }. Quoi qu’elle affiche, elle va au frigo avant { $by }, en plats peu profonds : il reste { $left }.
cook-cooled-unsaid = { $at } : assez froid seulement si c’était au frigo avant { $by }. Sinon, ça se jette.
cook-cooled-cold = { $at } : assez froid, pour garder et pour emporter. Que ça reste à { $cold } ou moins.
cook-cooled-fridge = { $at } : ça refroidit encore. À { $by } il faudrait { $cold } ou moins : plats peu profonds, espacés, à peine couverts.
cook-cooled-warm = { $at } après { $span } au frigo, c’est trop chaud. Vérifie le frigo ; ce qui est resté plus de deux heures au-dessus de { $cold }, personne ne peut le dire sûr. Dans le doute, jette.
cook-cooled-packed = { $at } dépasse { $cold }. Plus de { $most } au-dessus, en tout, et ça se jette, aussi quand personne ne sait combien. Sinon de la glace autour, ou tout de suite au chaud, à { $target } partout.
cook-reheat-on = { $at } : ça continue, jusqu’à { $target } partout, mesuré dans le morceau le plus épais.
cook-reheat-there = { $at } : c’est bon là où tu as mesuré. Pareil au milieu de chaque plat, puis à table.
cook-reheat-only = Ça ne vaut que si c’était au frigo avant { $by } ; personne ne l’a dit. La chaleur ne rattrape pas ça.
cook-gone = Celle-ci est restée dehors trop longtemps et se jette, quoi qu’elle affiche. Désolé. Il n’y a plus rien à faire avec.
cook-tossed = Tu as bien fait, et je suis désolé. Plus de rappels pour cette volaille.
cook-tossed-rest = Tu as bien fait. Plus de rappels pour ça.
cook-tossed-raw = Plus de rappels pour celle-ci.
cook-new-bird = Dès que tu en as une autre, dis-moi son poids et si elle est fraîche ou surgelée : je prévois le même repas avec.
cook-setting = Le plan dit { $setting }.
cook-standing = Hors du feu depuis { $off } : découpée, mangée et au frigo avant { $by }, sauf si elle reste à { $hot } ou plus.
cook-hot-day = { $at } autour : au-dessus de { $air }, c’est une heure en tout hors du chaud et du frigo, pas deux. J’en tiens compte.
cook-hot-day-off = { $at } autour : au-dessus de { $air }, c’est une heure, pas deux. Mangé ou au frigo avant { $by }.

cook-after = À { $when } j’avais dit vers { $about } ({ $from } à { $to }) ; sortie à { $off }.

cook-chart = { $what ->
    [breast] Poitrine
    [thigh] Cuisse
    [oven] Four
    [pit] Air
    [dinner] Repas
   *[done] Cuit vers
}
cook-chart-number = { $number }

cook-log-noted = { $count ->
    [one] { $name } : une mesure, { $from }.
   *[other] { $name } : { $count } mesures, { $from } à { $to }.
}
cook-log-nothing = Rien de neuf dedans depuis la mise à cuire, { $on }.
cook-log-not-on = La volaille cuit depuis quand ? Dis-moi ça d’abord, puis renvoie le relevé.
cook-log-full = Je garde { $most } mesures par volaille, et c’est plein. À partir de maintenant, lis le thermomètre toi-même : { $target } partout.
cook-log-large = Ce fichier est trop gros : 2 Mo au plus. Réduis le relevé à cette cuisson.
cook-log-lost = Je n’ai pas pu récupérer ce fichier. Renvoie-le.
cook-odd = { $count ->
    [one] Une mesure est impossible ; elle ne compte pas.
   *[other] { $count } mesures sont impossibles ; elles ne comptent pas.
}
cook-not-done = Pas encore : { $spot ->
    [thigh] la cuisse
    [wing] l’aile
    [stuffing] la farce
   *[breast] la poitrine
} marquait { $read } à { $at }. Cuit, c’est { $target } à la poitrine, à la cuisse et à l’aile.
cook-done-unread = Seul un thermomètre le dit : { $target } au plus épais de la poitrine, au plus profond de la cuisse et à l’aile. Que marque-t-il ?
cook-eat = Oui : { $target } à la poitrine, à la cuisse et à l’aile. Mangé ou au frigo avant { $by }.
cook-eat-unread = Si poitrine, cuisse et aile ont marqué { $target }, oui. Si tu ne sais pas, mesure maintenant. Mangé ou au frigo avant { $by }.
cook-back-in = Alors elle retourne cuire, jusqu’à { $target } à la poitrine, à la cuisse et à l’aile.
cook-pink-read = Poitrine, cuisse et aile ont marqué { $target }. C’est ça qui décide, quelle que soit la couleur. En cas de doute, mesure encore au plus épais de la poitrine, au plus profond de la cuisse et dans l’aile : moins quelque part, et ça retourne au four.
cook-pink-unread = La couleur et le jus ne prouvent rien, rosé ou clair, et personne n’a mesuré. Mesure maintenant, avant que quelqu’un mange : { $target } au plus épais de la poitrine, au plus profond de la cuisse et dans l’aile. Moins quelque part, et ça retourne au four.
cook-no-butter = Quelqu’un ne peut pas avoir de lait : huile, pas de beurre.
