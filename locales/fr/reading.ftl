### Ce qui ne va pas dans ce qu'on a tapé : ce qui a été compris, les limites, un exemple.

reading-mass = Une volaille de { $given } ? Je sais compter entre { $low } et { $high }. Par exemple : dinde de 6,5 kg.
reading-guests = { $given } à table ? Donne-moi un nombre entier de { $low } à { $high }. Par exemple : 11 personnes.
reading-setting = { $given }, ça ne cuit pas une volaille : je peux travailler entre { $low } et { $high }. Par exemple : four à { $example }.
reading-solution = { $given } % de saumure ajoutée ? L’étiquette dit au plus { $high } %. Par exemple : contient jusqu’à 8 % de saumure.
reading-drive = { $given } min de route ? Au plus { $high }. Par exemple : 40 min de route.
reading-past = { $given }, c’est passé. Quand est-ce qu’on mange ? Par exemple : jeudi à 17 h.
reading-used-by = La date de l’emballage, { $day }, est passée. Une volaille fraîche après sa date limite ne se mange pas, sauf si elle a été congelée à temps.
reading-use-by-far = À consommer jusqu’à { $day } ? Une volaille fraîche ne se garde pas si longtemps. Par exemple : « à consommer jusqu’à vendredi ».
reading-far = { $given }, c’est trop loin : je prévois jusqu’à { $days } jours à l’avance. Par exemple : jeudi à 17 h.
reading-fryer = Je m’occupe de fours et de fumoirs, pas d’huile bouillante. Ne fais jamais frire une volaille congelée, mouillée ou farcie, et seulement dehors. Demande-moi : la friture, c’est sûr ?
reading-other-bird = J’ai des temps pour dinde, poulet (poularde aussi), chapon, canard et oie, pas pour celle-là, alors je ne la planifie pas. Fie-toi au thermomètre : { $target } dans la poitrine, la cuisse et l’aile.
reading-thermometer = { $given } sur un thermomètre ? J’accepte de { $low } à { $high }. Par exemple : poitrine 53, cuisse 61.
reading-future = { $given }, ce n’est pas encore arrivé. Mesuré quand ? Par exemple : poitrine 53 à 14:05.
reading-too-many = Une seule mesure par endroit : poitrine, cuisse, air. Par exemple : poitrine 53, cuisse 61, air 168.
reading-loose-number = Je ne sais pas ce que veut dire { $given } ici. Mets une unité : 6,5 kg, 11 personnes, 165 °C.
reading-two-weights = Deux volailles de poids différents : je les prévois l’une après l’autre, d’abord celle de { $heavy }. Quand c’est fait, dis-moi celle de { $light }.
