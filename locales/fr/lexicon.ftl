### Les mots que les gens tapent, selon ce qu'ils veulent dire. Personne ne les voit ; le programme les lit.
### Each value is a list of words and phrases, separated by commas. Case, accents and plain plurals (see
### lexicon-endings) need no entry of their own, feminine forms do; common words of five letters and more are also read
### with a slip of the finger. A translator lists what people really write, abbreviations included; the longest phrase wins.
### English words are understood too where they mean nothing else here.

## How dates are written: mdy or dmy. Whether a comma marks decimals: yes or no.
lexicon-date-order = dmy
lexicon-decimal-comma = yes
## What may be added to a word: plurals and cases.
lexicon-endings = s, x
## Words that lose their end before a vowel and cling to the next word: l'eau is l' and eau.
lexicon-elisions = l, d, j, qu, c, s, n, m, t, jusqu, lorsqu, puisqu
## Whether a half before an hour is past it (half five: 5:30) or to it (halb sechs: 5:30).
lexicon-half-hour = past

## Words that look like a slip of another word here and are not.
lexicon-plain = avait, paris, première, ville, cours, cause, étais, corps, forme, ayant, française, série, doute, seront, droite, environ, pourtant, françois, frère, derrière, chance, classe, internet, regarde, auteur, durant, réponse, salle, texte, fonction, arrêter, mains, marie, regarder, haute, marque, auprès, pièce, éviter, faute, forces, personnel, commerce, grosse, tomber, course, maladie, italie, transport, marine, regard, concerne, finir, arrêt, secrétaire, centrale, regardez, entrer, perte, sainte, somme, personnage, avions, collection, content, noire, fonctions, découvert, traité, personnages, textes, françaises, claude, tenter, transports, chasse, aimer, conduit, pointe, sommet, suivante, appartient, comte, piste, plage, précise, claire, comportement, tenue, seine, forêt, ambiance, finit, réponses, commande, denis, apparemment, conception, pourront, serai, marcher, laissez, traiter, arrêtez, convention, affiche, allemande, cache, fermer, cesse, douce, grève, donnée, contente, normale, régler, stage, vivent, grèce, maladies, voient, pause, donnant, démarche, marques, noter, gamme, électronique, coûte, lèvres, ballon, ingénieur, lancement, positions, prime, manche, rapporte, restera, couvert, culte, portugal, manquer, prêtre, remonter, placer, marge, préciser, coûts, hautes, limiter, maria, paquet, amende, chanter, continent, ferais, remporté, sache, conséquent, personnels, tournage, transformer, bruno, africains, inférieur, limitée, mario, plate, profonde, forcer, appartenant, chante, africain, africaine, donnez, prendra, livrer, ondes, chauffeur, continuent, passera, tombée, inférieure, naturels, recul, réveille, survie, traditionnelle, accorde, chair, remporter, affirmer, danser, marquée, roues, dédié, manager, originaire, rôles, barbe, conquête, espagnole, placée, réveiller, sauvé, séparer, trous, fonctionner, tournant, baron, changent, commander, germain, levée, libéré, sonne, canton, donna, comptait, regardes, tante, francis, poème, concernés, insectes, parcs, pouce, sépare, breton, brise, charger, conscient, joues, arrêts, chèque, poils, repartir, apport, collier, franchise, françoise, manga, testé, courante, pavillon, pensant, prêter, solde, assiette, bornes, cuivre, défis, révéler, séparés, conviction, correction, faille, graines, mette, mètre, visibles, affiches, infection, patrie, salade, changera, concernent, courtes, livret, mariages, pente, resto, complément, mettra, franchir, partiel, avancées, grain, ports, arrêtée, sortira, amant, libye, saute, veiller, bonnet, démarre, formée, marion, rapporter, saine, bourré, concession, consulté, encre, franche, moines, oubli, pardonne, report, allemandes, brûle, commenter, gains, profondes, achevé, cachée, choqué, compatible, filer, aidez, bruce, injection, maintenance, brillante, compenser, conventions, couverte, maintenu, aires, laser, servira, tirés, compteur, convictions, fonctionnent, indication, mythique, reçue, robes, tournent, veuille, brute, caire, claque, commença, apportent, coude, couture, coûter, cuisiner, légalement, perdant, renard, terminal, tirent, acheteur, laissée, poussent, secte, aidera, chauve, chœur, contents, décors, moine, sommets, teint, cachés, borne, confession, cooper, détourner, fonte, marianne, saluer, achever, combiné, marina, passa, plaie, salue, terminale, traîner, laissera, loger, paquets, pourrions, bancs, chargement, tuent, brésilienne, serbie, bonté, contrôleur, fusée, gardant, visent, coureur, enterrement, prolongement, teinte, ayons, correcte, dorée, intuition, livrée, pisser, repasser, resta, réformer, souple, transporté, affecter, courbes, courent, grange, incite, songe, achevée, blaise, convocation, récolter, suffisait, cracher, norman, traitent, cases, chauffeurs, concertation, confiant, palace, déroulée, morin, rente, sécurisé, voeux, arène, casier, combustible, conduits, inférieures, réveillée, suffisent, continents, files, parité, précieuses, seriez, vieillesse, décollage, découle, graine, préparée, serions, affichent, conservant, consoles, cuisinier, déconner, lanceur, parie, pelle, pureté, traitées, bastille, couvrant, portugaise, suffirait, sécuriser, apportées, changeant, dérouler, insecte, apports, pièges, suffi, avancent, sains, séjours, chaux, durera, détourné, maintenue, baisé, cassée, clémence, craqué, deutsche, décoller, fonctionnel, plane, tailler, conservées, madison, maris, merdique, soupir, transporteur, cachet, control, corses, gravures, grossier, masquer, terminent, devis, espagnoles, forge, lèvre, raide, contrôleurs, gérée, marqueur, commencera, dealer, jetée, pouls, quantique, marrons, châtaignes, purée, gratin, haricots, carottes, canneberges, airelles, choux, bûche, girofle, romarin, thym, laurier, persil, oignons, champignons, cèpes, pommes, poires, poire, pruneaux, figues, moutarde, crème, cornichons, couteau, planche, plateau, ficelle, torchon, couvercle, glaçons, robinet, cousine, cousins, oncle, voisin, voisins, dessert, fromage, salades, fraise, fraises, doré, croustillante, croquante, tendre, juteuse, saucisse, marinade, beurré, beurrée, sautée, nappe, verre, verres, tarte, tartes, patates, légumes, épices, herbes, sauge, truffe, foie, noix, citron, orange, miel, cidre, cognac, bougie, chaise, enfin, surtout, assez, moment, matin, chose, choses, petit, petite, vraiment, couscous, boucher, bouchère, fermier, traiteur, dinette, cuillères, poivre, panne, recette, recettes, retourner, tourner, piquer, percer, ouvrir, verser, mélanger, ajouter, goûter, sale, salir, lavabo, bain, baignoire, sèche, cuvette, seau, grosses, ronde, chaud, chaude, temps, position, tenir, venir, porter, poser, poste, foule, moule, roule, coule, boule

## Nombres
lexicon-number-0 = zéro
lexicon-nobody = aucun invité, aucune personne, aucun convive, pas d'invités, sans invités
lexicon-number-1 = un, une
lexicon-number-2 = deux, couple
lexicon-number-3 = trois
lexicon-number-4 = quatre
lexicon-number-5 = cinq
lexicon-number-6 = six
lexicon-number-7 = sept
lexicon-number-8 = huit
lexicon-number-9 = neuf
lexicon-number-10 = dix, dizaine
lexicon-number-11 = onze
lexicon-number-12 = douze, douzaine
lexicon-number-13 = treize
lexicon-number-14 = quatorze
lexicon-number-15 = quinze, quinzaine
lexicon-number-16 = seize
lexicon-number-17 = dix-sept
lexicon-number-18 = dix-huit
lexicon-number-19 = dix-neuf
lexicon-number-20 = vingt, vingtaine
lexicon-number-30 = trente, trentaine
lexicon-number-40 = quarante
lexicon-number-50 = cinquante
lexicon-number-60 = soixante
lexicon-number-70 = septante
lexicon-number-80 = octante, huitante
lexicon-number-90 = nonante
lexicon-number-100 = cent
lexicon-number-half = demi, demie, demis
lexicon-number-third = tiers
lexicon-number-quarter = quart, quarts
lexicon-number-eighth = huitième
lexicon-number-article = un, une
lexicon-number-and = et
lexicon-number-plus = plus
lexicon-number-of = de, d'
lexicon-number-to = à, jusqu'à
lexicon-minus = moins

## Unités
lexicon-unit-pound = lb, lbs, livre
lexicon-unit-ounce = oz, once
lexicon-unit-gram = g, gr, gramme
lexicon-unit-kilogram = kg, kgs, kilo, kilogramme
lexicon-unit-milligram = mg, milligramme
lexicon-unit-teaspoon = cuillère à café, cuillères à café, cuiller à café, cuillers à café, cuillère à thé, cuillères à thé, cuillerée à café, cuillerées à café, cuillerée à thé, cuillerées à thé, cuil à café, cuil à thé, c à café, c à thé, c à c, càc, cc, cuillère café, petite cuillère, petites cuillères
lexicon-unit-tablespoon = cuillère à soupe, cuillères à soupe, cuiller à soupe, cuillers à soupe, cuillère à table, cuillères à table, cuillerée à soupe, cuillerées à soupe, cuil à soupe, cuil à table, c à soupe, c à table, c à s, càs, cs, cuillère soupe, grande cuillère, grandes cuillères, cuillère, cuillerée
lexicon-unit-cup = tasse
lexicon-unit-fluid-ounce = once liquide, onces liquides, fl oz
lexicon-unit-pint = pinte
lexicon-unit-quart = qt, quart américain, quarts américains
lexicon-unit-gallon = gallon, gal
lexicon-unit-milliliter = ml, millilitre
lexicon-unit-liter = l, litre
lexicon-unit-pinch = pincée
lexicon-unit-stick = bâton de beurre, bâtons de beurre
lexicon-unit-fahrenheit = f, fahrenheit, farenheit, degrés f, degré f, degrés fahrenheit
lexicon-unit-celsius = c, celsius, celcius, centigrade, degrés c, degré c, degrés celsius, degrés centigrades
lexicon-unit-degree = °, degré
lexicon-unit-second = s, sec, seconde
lexicon-unit-minute = min, mn, minute
lexicon-unit-hour = h, heure
lexicon-unit-day = j, jour, journée
lexicon-unit-week = semaine, sem
lexicon-unit-month = mois
lexicon-unit-percent = pour cent, pourcent
lexicon-unit-gas-mark = gas mark
lexicon-unit-thermostat = thermostat, th, therm

## Jours et heures
lexicon-weekday-mon = lundi, lun
lexicon-weekday-tue = mardi, mar
lexicon-weekday-wed = mercredi, mer, merc
lexicon-weekday-thu = jeudi, jeu
lexicon-weekday-fri = vendredi, ven
lexicon-weekday-sat = samedi, sam
lexicon-weekday-sun = dimanche, dim
lexicon-month-1 = janvier, janv, jan
lexicon-month-2 = février, févr, fév
lexicon-month-3 = mars
lexicon-month-4 = avril, avr
lexicon-month-5 = mai
lexicon-month-6 = juin
lexicon-month-7 = juillet, juil, juill
lexicon-month-8 = août
lexicon-month-9 = septembre
lexicon-month-10 = octobre, oct
lexicon-month-11 = novembre, nov
lexicon-month-12 = décembre, déc
lexicon-day-today = aujourd'hui, aujourdhui, auj, ajd
lexicon-day-tonight = ce soir
lexicon-day-tomorrow = demain
lexicon-day-after-tomorrow = après-demain, surlendemain
lexicon-day-yesterday = hier
## What stands before the day of a month without its name (le 24).
lexicon-day-of-month = le, pour le
lexicon-holiday-thanksgiving = thanksgiving, action de grâce, action de grâces, l'action de grâce, l'action de grâces, jour de l'action de grâce, jour de l'action de grâces
lexicon-holiday-christmas = noël, jour de noël, le jour de noël
lexicon-holiday-boxing-day = saint étienne, la saint étienne, lendemain de noël, le lendemain de noël
lexicon-holiday-numbered-day = { "" }
lexicon-holiday-christmas-eve = réveillon, réveillon de noël, veille de noël, la veille de noël
lexicon-holiday-new-year = jour de l'an, nouvel an, premier de l'an, le jour de l'an
lexicon-holiday-new-year-eve = saint sylvestre, la saint sylvestre, st sylvestre, réveillon du jour de l'an, réveillon du nouvel an, réveillon de la saint sylvestre, réveillon de nouvel an, veille du jour de l'an, veille du nouvel an
lexicon-holiday-easter = pâques, dimanche de pâques
lexicon-next = prochain, prochaine, ce, cet, cette, le
lexicon-part-morning = am, du matin, le matin, au matin, matin, matinée, dans la matinée
lexicon-part-afternoon = pm, après-midi, de l'après-midi, l'après-midi, cet après-midi, dans l'après-midi, en après-midi, aprem, de l'aprem, cet aprem, du soir, le soir, au soir, soir, soirée, en soirée, dans la soirée
lexicon-noon = midi, le midi
lexicon-midnight = minuit
lexicon-oclock = pile, précises, tapantes
lexicon-past = passées de, passé de
lexicon-to = avant les
lexicon-at = à, vers, pour, plutôt, finalement, vers les, autour de, aux alentours de, aux environs de, avant, dès, jusqu'à, à partir de, sur les coups de, d'ici
lexicon-since = depuis
lexicon-on = le, la, les, l', du, de, d', des, au, aux, pour le, mais, boudin blanc, vin blanc, riz blanc, poivre blanc, beurre blanc, filet d'huile, chez le boucher, chez mon boucher, chez notre boucher, chez le volailler, chez le traiteur, chez le fermier
lexicon-in = dans, d'ici
lexicon-ago = il y a, y a, ya
lexicon-later = plus tard, après, retarde, retarder, retardons, repousse, repousser, repoussons, décale, décaler, décalons, recule, reculer, reporter, reporte, de retard
lexicon-earlier = plus tôt, avant, avance, avancer, avançons, en avance, trop tôt, d'avance
lexicon-now = maintenant, à l'instant, tout de suite, en ce moment
lexicon-ordinal = er, e, ème
lexicon-meal-dinner = repas, dîner, souper, manger, mange, on mange, mangeons, mangera, passer à table, passe à table, à table, table, servir, sert, servi, servie, on soupe, on va souper
lexicon-meal-lunch = déjeuner, déj, déjeune, brunch, repas de midi, repas du midi, dîner du midi, dîner de midi

## La volaille
lexicon-bird-turkey = dinde, dindon, dindonneau, dinde au four, dinde en cuisson
lexicon-bird-turkey-breast = blanc de dinde, blancs de dinde, poitrine de dinde, poitrines de dinde, filet de dinde, rôti de dinde, suprême de dinde
lexicon-bird-chicken = poulet, poularde, poule, coquelet
lexicon-bird-capon = chapon
lexicon-bird-duck = canard, canette, caneton
lexicon-bird-goose = oie
lexicon-bird-any = volaille, bête, bestiole, oiseau
lexicon-condition-fresh = frais, fraîche, décongelé, décongelée, dégelé, dégelée, déjà décongelé, déjà décongelée, déjà dégelé, déjà dégelée, bien décongelé, bien décongelée, pas congelé, pas congelée, non congelé, non congelée, jamais congelé, jamais congelée, pas surgelé, pas surgelée, non surgelé, non surgelée, réfrigéré, réfrigérée, complètement décongelé, complètement décongelée, tout à fait décongelé, tout à fait décongelée
lexicon-condition-frozen = congelé, congelée, surgelé, surgelée, gelé, gelée, encore congelé, encore congelée, encore gelé, encore gelée, encore surgelé, encore surgelée, toujours congelé, toujours congelée, toujours gelé, toujours gelée, encore dur, encore dure, toujours dur, toujours dure, dur comme pierre, dure comme pierre, dur comme de la pierre, dure comme de la pierre, dur comme la pierre, dure comme la pierre, dur comme du bois, dure comme du bois, dur comme du béton, dure comme du béton, pas encore décongelé, pas encore décongelée, pas décongelé, pas décongelée, l'ai pas décongelée, l'ai pas décongelé, l'ai pas encore décongelée, l'ai pas encore décongelé, encore toute congelée, encore tout congelé
lexicon-unthawed = pas encore décongelé, pas encore décongelée, pas décongelé, pas décongelée, l'ai pas décongelée, l'ai pas décongelé, l'ai pas encore décongelée, l'ai pas encore décongelé, encore congelé, encore congelée, toujours congelé, toujours congelée, encore surgelé, encore surgelée, encore toute congelée, encore tout congelé
lexicon-condition-part-thawed = à moitié décongelé, à moitié décongelée, à moitié dégelé, à moitié dégelée, à moitié congelé, à moitié congelée, à moitié gelé, à moitié gelée, à demi décongelé, à demi décongelée, à demi congelé, à demi congelée, à demi dégelé, à demi dégelée, mi décongelé, mi décongelée, mi congelé, mi congelée, semi congelé, semi congelée, partiellement décongelé, partiellement décongelée, partiellement congelé, partiellement congelée, en partie décongelé, en partie décongelée, en partie congelé, en partie congelée, pas complètement décongelé, pas complètement décongelée, pas encore décongelé, pas encore décongelée, pas entièrement décongelé, pas entièrement décongelée, pas tout à fait décongelé, pas tout à fait décongelée, pas bien décongelé, pas bien décongelée, encore de la glace, encore de la glace dedans, encore de la glace à l'intérieur, glace à l'intérieur, encore un peu congelé, encore un peu congelée, encore un peu gelé, encore un peu gelée, presque décongelé, presque décongelée, congelé à cœur, congelée à cœur, encore congelé à cœur, encore congelée à cœur
lexicon-form-whole = entier, entière
lexicon-form-flat = en crapaudine, crapaudine, à la crapaudine, aplati, aplatie, à plat, ouvert en deux, ouverte en deux, papillon, en papillon, en portefeuille, sans l'échine
lexicon-form-pieces = en morceaux, morceaux, en pièces, découpé en morceaux, découpée en morceaux, coupé en morceaux, coupée en morceaux, découpé d'avance, découpée d'avance
lexicon-stuffed = farci, farcie, avec farce, avec de la farce, avec la farce, avec une farce, farce dedans, farce à l'intérieur
lexicon-unstuffed = sans farce, pas farci, pas farcie, non farci, non farcie, farce à part, farce à côté, farce séparée, pas de farce, sans farcir
lexicon-solution = saumure ajoutée, de saumure ajoutée, contient jusqu'à, contient, solution, injecté, injectée, eau ajoutée, eau salée
lexicon-basted = injecté, injectée
lexicon-salted-already = pré salé, pré salée, présalé, présalée, déjà salé, déjà salée, déjà saumuré, déjà saumurée, pré saumuré, pré saumurée, salé par le fabricant, vendue salée, vendu salé, déjà assaisonné, déjà assaisonnée, pré assaisonné, pré assaisonnée

## Qui mange
lexicon-people = personne, pers, invité, invitée, convive, couverts, à table, gens, bouches, portion, part, assiettes, têtes, mangeurs, de personnes, d'invités, de convives, de gens, de couverts, de parts, de portions, adultes et enfants
lexicon-adults = adulte, grands, grandes personnes
lexicon-children = enfant, gamin, gamine, gosse, petits, bambin, kids, ados
lexicon-among = dont, y compris, d'entre eux, parmi eux, incluant, en comptant
lexicon-another = une autre, un autre, une deuxième, un deuxième, encore une, encore un, deuxième, une seconde
lexicon-size-big = grosse, gros, grande, grand, plus grosse, plus gros, lourde
lexicon-size-small = petite, petit, plus petite, plus petit, légère
lexicon-instead = plutôt, à la place, disons, mets plutôt, décale, on dit
lexicon-joining = viennent aussi, vient aussi, se joignent, se joint, en plus, de plus, supplémentaires, arrivent aussi
lexicon-for = pour, on sera plutôt, on est plutôt, nous serons plutôt, on sera finalement, on est, on sera, on est à, on sera à, on va être, nous sommes, nous serons, sommes, serons, vous serez, famille de, table de, tablée de, nous sommes à, nourrir, on est maintenant, maintenant on est, on est finalement, finalement on est, finalement on sera, nous sommes maintenant, on sera en tout, on est désormais
lexicon-leftovers = restes, avec restes, avec des restes, avec du rab, du rab, qu'il en reste, qu'il y ait des restes
lexicon-no-leftovers = sans restes, pas de restes, sans rab, sans reste, pas de rab

## Chaleur, sel, route
lexicon-cooker-oven = four, au four, dans le four, four classique, four traditionnel, four normal, four à gaz, four électrique, four statique, chaleur statique, convection naturelle, sole et voûte, four sans ventilation, je l'enfourne, on l'enfourne, l'enfourne, on enfourne, j'enfourne, va au four, passe au four, la mets au four, la met au four, le mets au four, dinde au four, volaille au four
lexicon-heat-stove = cuisinière, sur la cuisinière, gazinière, plaque de cuisson, plaque à induction, plaques de cuisson, induction, casserole, à la casserole, dans une casserole, poêle, à la poêle, sur le feu, feu doux, à feu doux, à feu moyen, feu moyen, sur le rond, cocotte, en cocotte
lexicon-heat-set = réglé, réglée, monté, monté à, baissé, baissé à, mis à, augmenté, augmenté à, poussé, poussé à, réglé à, réglé sur
lexicon-heat-turned = réglé, réglée, monté, monté à, baissé, baissé à, augmenté, augmenté à, poussé, poussé à, réglé à, réglé sur
lexicon-reading-before = avant ça, avant cela, tout à l'heure, la dernière fois, auparavant, il y a un moment
lexicon-reading-said = indiquait, affichait, marquait, disait, a dit, a affiché
lexicon-heat-moved = je l'ai passée, je l'ai passé, je l'ai mise, je l'ai mis, je l'ai transférée, je l'ai transféré, je l'ai déplacée, l'ai passée, l'ai passé, l'ai mise, l'ai mis, l'ai transférée, l'ai transféré, l'ai déplacée, j'ai passé la dinde, j'ai transféré la dinde, on l'a passée, on l'a mise, on l'a transférée, je la finis, on la finit, je le finis, je la termine, on la termine, je termine la dinde
lexicon-heat-moved-first = passée au, passé au, maintenant au, finit au, elle finit au, transférée au, elle est maintenant au
lexicon-heat-later = vais, va la, allons, veux, voudrais, devrais, devrait, pourrais, plus tard, ensuite, quand, si je, peut être
lexicon-heat-start = je l'enfourne, on l'enfourne, l'enfourne, on enfourne, j'enfourne, va au four, passe au four, la mets au four, la met au four, le mets au four, commence à cuire, commence la cuisson, début de cuisson, début de la cuisson
lexicon-heat-start-early = dinde au four, volaille au four, dinde en cuisson
lexicon-heat-all-along = tout le temps, tout ce temps, depuis le début, dès le début, du début, pendant tout ce temps, tout du long
lexicon-heat-was = était, a été, avais, avait, été, ai eu, est resté, restait
lexicon-heat-off = éteint, éteinte, coupé, arrêté, pas allumé, pas allumée
lexicon-heat-never = jamais allumé le four, pas allumé le four, oublié d'allumer le four, le four n'était pas allumé, four n'était pas allumé, le four n'a jamais été allumé, four était pas allumé
lexicon-heat-back = rallumé, remis à, remis, de nouveau à, rallumée, c'est revenu, c'est reparti, le courant est revenu, courant est revenu, courant revenu, l'électricité est revenue, électricité est revenue, électricité revenue, le four remarche, four remarche, le four marche à nouveau, four marche à nouveau, four fonctionne à nouveau, le four est reparti, four est reparti, four reparti, ça remarche, ça remarche à nouveau, il remarche, le feu est reparti, feu est reparti, feu reparti, fumoir est reparti, four rallumé, four est rallumé
lexicon-heat-returned = c'est revenu, c'est reparti, le courant est revenu, courant est revenu, courant revenu, l'électricité est revenue, électricité est revenue, électricité revenue, le four remarche, four remarche, le four marche à nouveau, four marche à nouveau, four fonctionne à nouveau, le four est reparti, four est reparti, four reparti, ça remarche, ça remarche à nouveau, il remarche, le feu est reparti, feu est reparti, feu reparti, fumoir est reparti, four rallumé, four est rallumé
lexicon-cooker-fan-oven = four à chaleur tournante, chaleur tournante, à chaleur tournante, four chaleur tournante, four ventilé, ventilé, four à convection, convection, air pulsé, four à air pulsé, chaleur pulsée, convection forcée, four avec ventilation, ventilation
lexicon-cooker-smoker = fumoir, au fumoir, fumer, fumé, fumée, barbecue, bbq, barbec, au barbecue, sur le barbecue, gril, grill, sur le gril, fumoir à granulés, barbecue à granulés, barbecue à couvercle, kettle, braisière
lexicon-fryer = friteuse, friture, frire, frit, faire frire, dinde frite, volaille frite, huile bouillante, huile chaude, bain d'huile, grande friture
lexicon-salting-none = sans sel, pas de sel, ne pas saler, sans saler, pas salé, pas salée, non salé, non salée, sans saumure, pas de saumure, aucun sel, sans salage
lexicon-salting-dry = saumure sèche, salage à sec, salage sec, saler à sec, salé à sec, salée à sec, sel sec, salé, salée, saler, salage, repos salé
lexicon-salting-wet = saumure, en saumure, dans la saumure, saumure liquide, saumure humide, saumurer, saumurée, mettre en saumure
lexicon-thawing-fridge = décongeler au frigo, décongélation au frigo, dégeler au frigo, décongeler au réfrigérateur, décongélation au réfrigérateur, au frigo, dans le frigo, frigo, au réfrigérateur, dans le réfrigérateur, réfrigérateur
lexicon-thawing-cold-water = eau froide, à l'eau froide, dans l'eau froide, décongeler à l'eau, décongeler à l'eau froide, décongeler dans l'eau, décongélation à l'eau, décongélation à l'eau froide, dans l'évier
lexicon-thawing-cook-frozen = cuire sans décongeler, sans décongeler, sans dégeler, sans décongélation, cuire congelé, cuire congelée, cuire surgelé, cuire surgelée, cuite congelée, cuisson sans décongélation, directement du congélateur, droit du congélateur, cuire encore congelé, cuire encore congelée
lexicon-ahead = veille, la veille, à l'avance, d'avance, un jour avant, le jour d'avant, jour d'avant, la veille au soir, un jour à l'avance, cuire la veille, cuite la veille, cuit la veille, faire la veille, le jour avant
lexicon-not-ahead = jour même, le jour même, même jour, le même jour
lexicon-elsewhere = chez, ailleurs, autre maison, une autre maison, autre part, emporter, emporte, on emporte, apporter, apporte, on apporte, j'apporte, amener, on amène, transporter
lexicon-here = cuire là-bas, on cuit là-bas, je cuis là-bas, cuite là-bas, cuisson là-bas, à la maison, maison, chez moi, chez nous, ici, sur place
lexicon-drive = de route, route, de voiture, en voiture, de trajet, trajet, de chemin, de conduite, de char
## Carried to another house, and how it arrives
lexicon-bring = apporte, apporter, apportons, apportée, amène, amener, amenons, emmène, emmener, emmenons, emporte, emporter, emportons, transporte, transporter, transportons, porte, porter, portons, livre, livrer
lexicon-hot = chaud, chaude, chauds, chaudes, bien chaud, bien chaude
lexicon-cold = froid, froide, froids, froides
lexicon-at-home = j'ai, on l'a, on l'a déjà, je l'ai, je l'ai déjà, nous l'avons, nous l'avons déjà, on les a, jai, j'ai déjà, on a, on a déjà, nous avons, nous avons déjà, j'en ai, j'ai acheté, on a acheté, acheté, achetée, déjà acheté, déjà achetée, déjà à la maison, dans mon congélateur, dans notre congélateur, dans le congélateur, au congélateur, déjà là, elle est déjà là, est déjà à la maison, déjà chez nous
lexicon-to-buy = à acheter, pas encore acheté, pas encore achetée, je dois acheter, je dois encore acheter, il faut acheter, faut acheter, on doit acheter, on doit encore acheter, reste à acheter, je vais acheter, on va acheter, acheter, pas acheté, pas achetée, dois acheter, dois encore acheter, j'achète, je l'achète, on l'achète, on achète, j'irai l'acheter, j'irai la chercher, je vais la chercher, je passe la prendre
lexicon-shopping = achète, achetons, acheter, l'achète, récupère, récupérer, vais chercher

## Où le thermomètre mesure
lexicon-spot-breast = poitrine, blanc, filet, suprême
lexicon-spot-thigh = cuisse, haut de cuisse, hauts de cuisse, gras de cuisse, pilon
lexicon-spot-pit = fumoir, four, air, air du fumoir, air du four, enceinte, cuve, ambiante, ambiant, barbecue, grille, chambre
lexicon-spot-stuffing = farce
lexicon-spot-wing = aile, ailes

## Étapes
lexicon-step-buy = acheter, achat, courses, faire les courses, acheter la volaille, acheter la dinde
lexicon-step-thaw = décongeler, décongélation, dégeler, lancer la décongélation, commencer la décongélation, sortir du congélateur, sortir la dinde du congélateur, mettre à décongeler, décongèle, je décongèle
lexicon-step-water = eau, changer l'eau, changer leau, changer eau, changer d'eau, changement d'eau, changements d'eau, change l'eau
lexicon-step-salt = saler, salage, sel, saumure, mettre en saumure, saler la volaille, saler la dinde, sale, je sale
lexicon-step-rest = repos, repos salé, repos au sel, repos au frigo
lexicon-step-temper = sécher et beurrer, sécher, beurrer, sortir du frigo, sortir la dinde du frigo
lexicon-step-fire = lancer la chauffe, chauffe, feu, allumer, allumage, allumer le four, allumer le feu, allumer le fumoir, allumer le barbecue, préchauffer, préchauffage, préchauffer le four, faire chauffer le four, démarrer le four, allume, allume le four, j'allume, préchauffe
lexicon-step-on = mettre à cuire, mise à cuire, mettre au four, mise au four, enfourner, enfournement, mettre la dinde au four, mettre à la cuisson, mettre au fumoir, mettre la dinde au fumoir, mettre au barbecue, mettre sur le barbecue, mettre sur le gril, mettre dans le four, lancer la cuisson, au four, enfourne, j'enfourne, mets au four, va au four
lexicon-step-check = prendre les températures, prendre la température, températures, vérifier les températures, vérifier, mesurer, contrôler, contrôle, mesure, thermomètre, vérif, vérification
lexicon-step-pull = sortir de cuisson, sortie de cuisson, fin de cuisson, sortir du four, sortir la dinde, sortir la volaille, sortir la dinde du four, défourner, sortir du fumoir, retirer du feu, sortir, sors du four
lexicon-step-stand = laisser reposer, reposer
lexicon-step-carve = découper, découpe, découpage, trancher, couper, je découpe
lexicon-step-chill = mettre au frigo, mettre les restes au frigo, ranger, ranger les restes, restes au frigo, refroidir, refroidissement, frigo
lexicon-step-pack = emballer, emballer au froid, emballage, empaqueter
lexicon-step-travel = partir, départ, route, trajet, conduire
lexicon-step-reheat = réchauffer, réchauffage
lexicon-step-serve = servir, service, repas, à table, dîner, souper
lexicon-step-leftovers = restes, dernier jour des restes

lexicon-yes = oui, ouais, ouaip, ok, okay, d'accord, dac, yes, o, si, bien sûr
lexicon-no = non, nan, nope, n

## Une tâche est faite
lexicon-done = fait, faite, c'est fait, cest fait, fini, finie, terminé, terminée, prêt, prête, c'est prêt, ça y est

## Sels selon le grain
lexicon-salt-table = sel fin, sel de table, sel de cuisine, sel fin de cuisine, sel iodé, sel fin iodé, sel ordinaire, sel normal, sel raffiné, sel de table fin
lexicon-salt-fine-sea = sel de mer fin, sel fin de mer, sel marin fin, sel de mer, sel marin
lexicon-salt-pickling = sel à conserves, sel pour conserves, sel à marinades, sel à marinade, sel pour marinades
lexicon-salt-flake-kosher = sel casher en flocons, sel kasher en flocons, sel kascher en flocons, sel cacher en flocons, sel kosher en flocons, casher en flocons, kosher en flocons, flocons casher, flocons kosher, flocons de sel, flocons de sel casher, sel en flocons, flocons
lexicon-salt-coarse-kosher = gros sel casher, gros sel kasher, gros sel kascher, gros sel cacher, gros sel kosher, gros casher, gros kosher, sel casher gros, casher gros, sel kosher gros, sel casher à gros grains
lexicon-salt-coarse-sea = gros sel de mer, gros sel marin, gros sel, gros sel gris, sel gris, gros sel de cuisine, gros sel de table, sel gros
lexicon-salt-kosher = sel casher, sel kasher, sel kascher, sel cacher, sel cascher, sel kosher, casher, kasher, kascher, cascher, kosher
lexicon-salt-own = mon sel, mon propre sel, le mien, notre sel
lexicon-ask-only = n'ai que, que du, j'ai que, j'ai seulement, on a que, n'a que, seulement du
lexicon-salt-any = sel
lexicon-sodium = sodium
lexicon-butter = beurre
lexicon-strength-light = léger, légère, légèrement, moins salé, moins salée, moins de sel, peu salé, peu salée, peu de sel, pas trop salé, pas trop salée, avec moins de sel, un peu moins de sel
lexicon-strength-bold = fort, forte, plus salé, plus salée, plus de sel, bien salé, bien salée, très salé, très salée, avec plus de sel

## Ce qu'on demande
lexicon-ask-into = en, font, fait, ça fait, convertir, convertis, conversion, équivaut à, équivalent, équivalence, à la place de, à la place du, au lieu de, au lieu du, remplacer, remplace, donne, donnent, égal, égale
lexicon-ask-how-much = combien, combien de, combien d', quelle quantité, quelle quantité de, quantité de, quelle dose, dose, dose de
lexicon-ask-how-long = combien de temps, combien de tps, cb de temps, quelle durée, durée, combien d'heures, combien de minutes, combien de jours, temps de cuisson, temps de décongélation, temps pour, à quelle heure, quelle heure, quand commencer, quand est-ce que je commence, je commence quand, quand mettre, quand enfourner, quand sortir, quand lancer, quand faut-il, quand dois-je, quand est-ce qu'il faut, quand est-ce que je dois, quand je dois, longtemps, temps de, temps
lexicon-ask-when = quand, à quelle heure, quand est-ce que, quand est-ce qu'
lexicon-ask-how-big = quelle taille, quelle grosseur, quel poids, de quelle taille, de quel poids, combien de kilos, combien de kg, combien de livres, combien de dinde, combien de poulet, combien de volaille, combien de viande, combien de chapon, combien d'oie, taille
lexicon-ask-how-many = combien de personnes, pour combien, pour combien de personnes, combien de parts, combien de portions, combien d'invités, combien de convives, nourrit combien, nourrit, nourrir combien, suffit pour, assez pour, suffisant pour, suffisante pour, ça suffit pour, suffira pour
lexicon-ask-enough = suffit pour, assez pour, suffisant pour, suffisante pour, ça suffit pour, suffira pour
lexicon-ask-how = comment, quel, quelle
lexicon-ask-why = pourquoi, source, sources, d'où ça vient, d'où vient, ça vient d'où, qui dit ça, qui le dit
lexicon-ask-deep = profondeur, profond, profondément, quelle profondeur, à quelle profondeur, jusqu'où, pénètre, pénétrer, pénétration
lexicon-ask-safe = assez pour, suffit pour, suffisant pour, suffisante pour, ça suffit pour, elle est cuite, est cuite, est-elle cuite, il est cuit, est-il cuit, est-ce cuit, c'est cuit, est-ce que c'est cuit, c'est sûr, cest sûr, est-ce sûr, est-ce que c'est sûr, est sûr, sont sûrs, sûre, sûres, sans danger, sans risque, sécuritaire, sécurité, c'est bon, cest bon, est-ce bon, ok, okay, ça va, ça passe, bon, bonne, encore bon, encore bonne, bons, bonnes, dangereux, dangereuse, risqué, risquée, malade, malades, je peux, je peux encore, peux, puis-je, peut-on, on peut, peut, je dois, dois, dois-je, doit-on, faut-il, il faut, faut, est-ce qu'il faut, suffit, suffisant, assez, grave, mauvais, mauvaise, comestible, mangeable, correct, foutu, foutue, fichu, fichue, à jeter, jeter
lexicon-ask-temperature = température, quelle température, à quelle température, température à cœur, température interne, température intérieure, combien de degrés, à combien de degrés, à combien, comment savoir, comment savoir si, comment on sait, quand est-ce cuit, quand est-ce que c'est cuit, c'est cuit quand, cuit quand, cuite quand, cuit à combien, cuite à combien, doit marquer, doit afficher, doit faire à l'intérieur, chaud à l'intérieur, chaude à l'intérieur, comment je sais, comment sait-on
lexicon-ask-tell = comment savoir, comment savoir si, comment on sait, comment je sais, comment sait-on
lexicon-ask-leave = laisser, la laisser, le laisser, laisse
lexicon-ask-out = hors du frigo, hors frigo, sorti, sortie, sortis, sorties, dehors, à température ambiante, température ambiante, sur le plan de travail, sur le comptoir, sur la table, oublié, oubliée, traîné, à l'air libre, dans la voiture, hors du réfrigérateur, non réfrigéré, non réfrigérée, encore sur la table, toujours sur la table
lexicon-ask-left = laissé, laissée, oublié, oubliée, resté, restée
lexicon-ask-counter = décongeler à l'eau chaude, décongeler à l'eau tiède, décongeler dans l'eau chaude, décongeler dans l'eau tiède, décongélation à l'eau chaude, décongélation à l'eau tiède, plan de travail, sur le plan de travail, comptoir, sur le comptoir, à température ambiante, température ambiante, eau chaude, eau tiède, à l'eau chaude, à l'eau tiède, dans l'eau chaude, dans l'eau tiède, sur la table, à l'air libre, table de cuisine, eau bouillante, l'eau chaude, l'eau tiède, de l'eau chaude, de l'eau tiède
lexicon-ask-keep = se congèle, se congèlent, garde, gardent, garder, se garde, se gardent, se garder, conserve, conservent, se conserve, se conservent, conserver, se conserver, conservation, tient, tiennent, dure, durent, durer, vieux, vieille, vieilles, peut rester, peuvent rester, manger les restes, encore manger, encore bons, encore mangeable
lexicon-ask-hot-water = eau chaude, eau tiède, à l'eau chaude, à l'eau tiède, dans l'eau chaude, dans l'eau tiède, eau bouillante, l'eau chaude, l'eau tiède, de l'eau chaude, de l'eau tiède
lexicon-ask-past-date = périmé, périmée, date limite, dlc, date dépassée, date limite dépassée, dlc dépassée, date de péremption, ddm
lexicon-ask-smell = sent, odeur, pue, gluant, gluante, visqueux, visqueuse
lexicon-ask-low-salt = n'a pas droit au sel, pas droit au sel, ne peut pas manger salé, régime sans sel, sans sel à cause, pauvre en sel, pauvre en sodium, hypertension, hypertendu, hypertendue, tension
lexicon-ask-keep-hot = garder la dinde chaude, garder la volaille chaude, garder la viande chaude, garder l'oie chaude, garder le poulet chaud, la garder chaude, le garder chaud, tenir la dinde chaude, rester chaude, reste chaude, garder au chaud, garde au chaud, gardée au chaud, tenir au chaud, tient au chaud, maintenir au chaud, maintenir chaud, maintenir chaude, rester au chaud, reste au chaud, garder chaud, garder chaude, au chaud, tenir chaud
lexicon-ask-warm = chaud, chaude, chauds, chaudes, dinde chaude, volaille chaude
lexicon-ask-carry = transporter, transporte, emporter, emmener, emporte
lexicon-ask-carry-hot = comment l'emporter chaude, comment l'emporter chaud, comment l'emmener chaude, comment je l'emporte chaude
lexicon-ask-no-room = pas de place, plus de place, ne rentre pas, rentre pas, plein, trop petit, est petit, tout petit
lexicon-ask-cool = refroidir, refroidit, refroidissement, laisser refroidir, refroidi, refroidie, chaud au frigo, chaude au frigo, chauds au frigo, encore chaud, encore chaude, encore chauds, tiédir, à quelle vitesse, plat chaud au frigo
lexicon-ask-reheat = réchauffer, réchauffe, réchauffée, réchauffés, réchauffage, faire réchauffer
lexicon-ask-wash = laver, lave, lavage, rincer, rince, lavée
lexicon-ask-thaw = décongeler à l'eau chaude, décongeler à l'eau tiède, décongeler dans l'eau chaude, décongeler dans l'eau tiède, décongélation à l'eau chaude, décongélation à l'eau tiède, sortir du congélateur, sortir la dinde du congélateur, sortir la volaille du congélateur, décongeler, décongèle, décongèlent, décongélation, dégeler, dégèle, dégel, décongelés
lexicon-ask-stuff = farcir, farcis, farcit, farce, farci, farcie, farcissage
lexicon-ask-roast = rôtir, rôtit, rôti, rôtie, cuire, cuis, cuit, cuite, cuisent, cuisson, griller, fumer, four, enfourner, prend, rôtissage, faire cuire, dore, dorer, brunit, brunir, brûle, brûler
lexicon-ask-cook = cuire, cuis, rôtir, faire cuire, faire rôtir
lexicon-ask-indoors = à l'intérieur, en intérieur, intérieur, dans la maison, dans le garage, garage, dans la cuisine, cuisine, tente, dans une tente, sous la tente, balcon, sur le balcon, véranda, appartement, auvent, sous l'auvent, cabanon
lexicon-fuel-charcoal = charbon, charbon de bois, briquette, braise
lexicon-fuel-propane = propane, butane, bonbonne de gaz, bouteille de gaz, bonbonne, bombonne
lexicon-fuel-pellets = pellet, granulé, granulés de bois
lexicon-food-leftovers = restes, dinde cuite, poulet cuit, volaille cuite, viande cuite, oie cuite, canard cuit, chapon cuit, dinde rôtie, poulet rôti, oie rôtie, cuite, cuits, restants, les restants
lexicon-food-gravy = sauce, jus, bouillon, sauce brune
lexicon-food-stuffing = farce, farce cuite
lexicon-food-giblets = abats, abattis, abat
lexicon-food-soup = soupe, ragoût, potage
lexicon-food-raw = cru, crue, pas cuit, pas cuite, frais, fraîche, décongelé, décongelée
lexicon-place-fridge = frigo, réfrigérateur, au frigo, dans le frigo, au réfrigérateur, dans le réfrigérateur, frigidaire, au frigidaire, dans le frigidaire
lexicon-shelf = étagère, clayette
lexicon-place-freezer = congélateur, congélo, au congélateur, dans le congélateur, au congélo, congeler, congèle, congèlent, se congèle, se congèlent, congelée, congelés, surgelé, surgelée
lexicon-label-per = par, pour chaque, chaque
lexicon-ask-overnight = toute la nuit, pendant la nuit, la nuit, cette nuit, la nuit entière, une nuit, depuis hier soir, depuis hier
lexicon-ask-low-heat = basse température, à basse température, cuisson lente, cuisson basse température, cuisson à basse température
lexicon-ask-refreeze = recongeler, recongelé, recongelée, congeler à nouveau, congeler de nouveau, congeler une deuxième fois, remettre au congélateur, regeler
lexicon-ask-colour = rosé, rosée, roses, couleur, jus clair, jus est clair, saignant, saignante, sang, rouge, jus rose
lexicon-ask-stand = reposer, repos, repose, temps de repos, laisser reposer

## Quand ça tourne mal, et habitudes
lexicon-ask-help = que faire, quoi faire, je fais quoi, on fait quoi, qu'est-ce que je fais, qu'est-ce qu'on fait, et maintenant, au secours, à l'aide, aide, comment faire, comment je fais, que dois-je faire, je dois faire quoi, que faut-il faire, help, et si
lexicon-ask-oven-down = four en panne, four est en panne, four cassé, four est cassé, four est mort, four mort, four ne marche plus, four marche plus, four ne fonctionne plus, four fonctionne plus, four ne chauffe plus, four chauffe plus, four ne chauffe pas, four s'est éteint, four s'est arrêté, four éteint, four est éteint, four a lâché, four m'a lâché, four vient de lâcher, four tombe en panne, four est tombé en panne, panne de four, panne de courant, panne d'électricité, plus d'électricité, plus de courant, plus de gaz, coupure de courant, coupure d'électricité, courant coupé, feu éteint, le feu est éteint, le feu s'est éteint, feu s'est éteint, fumoir éteint, le fumoir s'est éteint, barbecue éteint, plus de gaz, plus de charbon, panne de gaz, plus de granulés, à court de charbon, le four a lâché, le four s'est éteint, plus de chaleur, chauffe pu, le four chauffe pu, four chauffe pu, four chauffe pus, le four chauffe pus, four chauffe plus rien
lexicon-peril-fire = flamme, flammes, en flammes, a pris feu, pris feu, prend feu, le feu a pris, feu a pris, en feu, au feu, est en feu, feu dans le four, feu dans la cuisine, y a le feu, il y a le feu, incendie, graisse en feu, feu de graisse, feu de friture
lexicon-peril-gas = sent le gaz, sens le gaz, odeur de gaz, fuite de gaz, pue le gaz, gaz qui fuit
lexicon-nearly-out = presque plus de, bientôt plus de, presque à court, reste peu de, reste presque plus de
lexicon-speed = kmh, kph
lexicon-ask-come-up = a mis, mis, pour atteindre, atteindre, pour arriver, arriver à, arrivée à, pour monter, monter à
lexicon-ask-too-fast = trop vite, trop rapide, trop rapidement, trop tôt, en avance
lexicon-ask-too-slow = trop lent, trop lente, trop lentement, pas assez vite, trop long, n'avance pas, n'avance plus, avance pas, ne cuit pas, cuit pas, ne cuit plus, prend trop de temps, met trop de temps, prend des heures, stagne
lexicon-ask-garage = garage, dans le garage, au garage, cabanon, cellier, cave, à la cave, balcon, sur le balcon, véranda, dans la voiture, dehors, remise, sur la terrasse, terrasse
lexicon-ask-baste = arroser, arrose, arrosage, badigeonner, napper, ouvrir le four, ouvre le four
lexicon-ask-foil = trop foncé, trop foncée, trop brun, trop brune, la peau brûle, ça brûle dessus, couvrir de papier alu, couvrir d'alu, mettre de l'alu, papier alu dessus, elle brûle, il brûle, ça brûle, brûlé, brûlée, peau noire, très foncée, très foncé, avec de l'alu, avec du papier alu, papier alu
lexicon-ask-where = où, où est-ce que, à quel endroit
lexicon-ask-thermometer = thermomètre, thermo, sonde, thermosonde
lexicon-habit-bag-inside = sachet dedans, sachet à l'intérieur, abats dedans, les abats dedans, abats à l'intérieur, les abats à l'intérieur, oublié le sachet, oublié les abats, sachet d'abats, plastique dedans
lexicon-habit-pop-up = le témoin a sauté, témoin de cuisson, bouton rouge, minuteur intégré, le bouton est sorti, le bouton a sauté
lexicon-habit-probe-out = la sonde est sortie, sonde sortie, la sonde est tombée, la sonde a glissé, thermomètre cassé, le thermomètre est cassé, thermomètre en panne, le thermomètre ne marche plus, le thermomètre ne marche pas, sonde cassée, la sonde est cassée, le thermomètre est mort
lexicon-habit-mess = a coulé, a fui, ça a coulé, ça coule, jus cru, jus dans le frigo, planche à découper, nettoyer après, comment nettoyer, renversé
lexicon-habit-dog = chien, chat, chienne
lexicon-habit-fragile = enceinte, immunodéprimé, immunodéprimée, immunité faible, chimio, chimiothérapie
lexicon-habit-temper = à température ambiante avant, revenir à température, remettre à température, mettre à température, tempérer, chambrer, revenir à température ambiante
lexicon-habit-finish-oven = finir au four, la finir au four, le finir au four, terminer au four, la terminer au four, passer au four
lexicon-habit-early = prête trop tôt, prêt trop tôt, cuite trop tôt, cuit trop tôt, finie trop tôt, fini trop tôt, prête en avance, cuite en avance, heures d'avance, heure d'avance
lexicon-habit-neck = cou
lexicon-habit-side-up = poitrine vers le haut, poitrine en haut, poitrine vers le bas, poitrine en bas, filets vers le haut, sur le dos, sur le ventre, dans quel sens
lexicon-habit-cover = couvrir, la couvrir, le couvrir, couvert, couverte, découvert, découverte, emballer, emballée, emballé
lexicon-habit-must = dois-je, faut-il, faut il, est-ce qu'il faut, il faut, est-ce que je dois, ou pas, ou non, nécessaire, vaut mieux, mieux
lexicon-habit-or = ou
lexicon-habit-rack = grille de cuisson, grille du four
lexicon-habit-truss = brider, la brider, le brider, attacher les pattes, ficeler, la ficeler, le ficeler, ficelle, ficelle de cuisine
lexicon-habit-pan-water = eau dans le plat, de l'eau dans le plat, eau au fond du plat, bouillon dans le plat, ajouter de l'eau, mettre de l'eau
lexicon-habit-oven-bag = sachet de cuisson, sac de cuisson, dans un sachet, dans un sac, sac en papier
lexicon-habit-weather = il pleut, pluie, vent, il neige, neige, tempête, rafales
lexicon-habit-smoke = fumée blanche, fumée épaisse, quel bois, copeaux, copeaux de bois, bois de pommier
lexicon-habit-grill = barbecue, au barbecue, gril
lexicon-habit-gravy = faire la sauce, faire une sauce, jus de cuisson, sucs, sucs de cuisson, épaissir, lier la sauce
lexicon-habit-salty = trop salé, trop salée, salée, salé
lexicon-habit-salted-twice = salée deux fois, salé deux fois, mis trop de sel, j'ai mis trop de sel, trop de sel dessus
lexicon-habit-carcass = carcasse, les os, os
lexicon-habit-crisp = croustillant, croustillante, peau croustillante, croustille, peau molle, levure chimique
lexicon-habit-fat = beurre sous la peau, du beurre sous la peau, huile ou beurre, beurre ou huile, beurrer la peau, huiler la peau, badigeonner
lexicon-habit-preheat = préchauffer, préchauffé, préchauffage
lexicon-habit-microwave = micro-ondes, micro ondes
lexicon-last = dernier, dernière, passé, passée

## Phrases courtes, seulement comme texte entier : mots qui ne disent rien, ce qui est fait, ce qui ne l'est pas, par étape
lexicon-talk-filler = je, j', jai, ai, on, a, l', le, la, les, il, elle, ils, elles, c', cest, est, sont, ça, moi, nous, tu, me, m', déjà, bon, alors, bien, donc, maintenant, juste, enfin, voilà, ok, oui, merci, salut, dinde, poulet, canard, oie, chapon, volaille, bête, un, une, mon, ma, mes, notre, nos, y, tout, toute, tous, toutes, du, des, et, suis, sommes, avons, été, hop, allez, ouf, ah, oh, hé, hey, svp, stp, s', te, plaît, cette, ce, qu', que, même, ben, bah, euh, minute, minutes, eu, n', ne, gens, finalement, depuis, aussi, t', vous, matin, hier, soir, tantôt, désolé, désolée, pardon, nickel, tiens, eh, voici, en avance, hmm, hm, jlai, jlé, c, cé, jla
lexicon-talk-done = fait, faite, c'est fait, fini, finie, terminé, terminée, prêt, prête, c'est bon, c bon, c'est prêt, voilà, je l'ai fait, ça y est, ça y est c'est fait, effectué, réglé, bouclé, tout est prêt, chose faite, je viens de la, je viens de le, je viens de l', je viens de les, on vient de la, on vient de le, on vient de l', viens de, vient de, venons de, viens d', vient d', venons d', c'est tout bon, tout est bon, fait à instant, fait instant
lexicon-talk-not = pas, pas encore, non pas encore, encore pas, toujours pas, oublié, oubliée, j'ai oublié de, oublié de, oublié de la, pas fait, pas encore fait, pas eu le temps, pas temps, pas eu le temps de, pas temps de, pas encore eu le temps, pas encore temps, pas le temps, pas le temps de, pas pu, pas pu le faire, pas pu faire, pas réussi, pas réussi à, pas commencé, pas encore commencé, zut oublié, mince oublié, pas du tout
lexicon-talk-asking = puis je, peut on, on peut, je peux, est ce que, est ce, dois je, doit on, faut il, il faut, comment, quand, combien, quoi, que, où, qui, pourquoi, quel, quelle, cest quand, qu'est ce que, c'est quoi
lexicon-talk-asks-of = est
lexicon-talk-ahead = ce soir, demain, plus tard, vais, allons, dois, doit, faut, bientôt, si, je découpe, je tranche, je coupe, je sale, je la découpe, je la sale, je le découpe, je le sale, je la coupe, je la tranche
lexicon-talk-behind = ce matin, hier soir
lexicon-talk-when = on mange quand, quand est-ce qu'on mange, quand mange-t-on, quand mangeons-nous, à quelle heure on mange, on mange à quelle heure, à quelle heure mange-t-on, c'est prêt quand, quand est-ce que c'est prêt, c'est pour quand, ce sera prêt quand, ça sera prêt quand, encore combien de temps, il reste combien de temps, combien de temps encore, elle est prête quand, quand est-ce qu'elle est prête, je peux la sortir, je peux le sortir, on peut la sortir, c'est cuit, c'est prêt, elle est cuite, ça y est elle est cuite, quand est-ce que je la sors, on sera à l'heure, on est dans les temps, je suis dans les temps, on est à l'heure, est-ce qu'on est dans les temps, est-ce que ce sera prêt à temps, ce sera prêt à temps, ça sera prêt à temps, ce sera prêt à, ce sera prêt pour, ça sera prêt pour, elle sera prête à temps, elle sera prête pour, on va y arriver, on est en retard, on y sera pour, on va être à l'heure
lexicon-talk-next = c'est quoi la suite, quelle est la suite, et ensuite, prochaine étape, on fait quoi ensuite, qu'est-ce qu'il y a ensuite
lexicon-talk-undone-thaw = encore congelé, encore congelée, toujours congelé, toujours congelée, encore gelé, encore gelée, toujours gelé, toujours gelée, encore dur, encore dure, toujours dur, toujours dure, encore dur comme pierre, encore dure comme pierre, dur comme pierre, dure comme pierre, encore dur comme de la pierre, encore dur comme de pierre, encore dure comme de la pierre, encore dure comme de pierre, dur comme de la pierre, dur comme de pierre, dure comme de la pierre, dure comme de pierre, toujours dur comme de la pierre, toujours dur comme de pierre, toujours dure comme de la pierre, toujours dure comme de pierre, dur comme du bois, dur comme bois, dure comme du bois, dure comme bois, encore dur comme du bois, encore dur comme bois, encore dure comme du bois, encore dure comme bois, dur comme du béton, dur comme béton, dure comme du béton, dure comme béton, encore un glaçon, encore glaçon, encore de la glace, encore de glace, il y a encore de la glace, encore de la glace dedans, encore de glace dedans, encore de la glace à l'intérieur, encore de glace intérieur, encore de la glace au milieu, encore de glace au milieu, pas décongelé, pas décongelée, pas encore décongelé, pas encore décongelée, pas dégelé, pas dégelée, pas encore dégelé, pas encore dégelée, toujours pas décongelé, toujours pas décongelée, pas complètement décongelé, pas complètement décongelée, pas encore complètement décongelé, pas encore complètement décongelée, pas bien décongelé, pas bien décongelée, pas tout à fait décongelé, pas fait décongelé, pas tout à fait décongelée, pas fait décongelée, congelé à l'intérieur, congelé intérieur, congelée à l'intérieur, congelée intérieur, encore congelé à l'intérieur, encore congelé intérieur, encore congelée à l'intérieur, encore congelée intérieur, encore gelé à l'intérieur, encore gelé intérieur, encore gelée à l'intérieur, encore gelée intérieur, congelé au milieu, congelée au milieu, encore congelé au milieu, encore congelée au milieu, encore gelé au milieu, encore gelée au milieu, encore congelé dedans, encore congelée dedans, encore gelé dedans, encore gelée dedans, congelé dedans, congelée dedans, encore congelé à cœur, encore congelé cœur, encore congelée à cœur, encore congelée cœur, encore un peu congelé, encore peu congelé, encore un peu congelée, encore peu congelée, encore un peu gelé, encore peu gelé, encore un peu gelée, encore peu gelée, encore un peu dur, encore peu dur, encore un peu dure, encore peu dure, encore un peu congelé au milieu, encore peu congelé au milieu, encore un peu congelée au milieu, encore peu congelée au milieu, encore un peu congelé à l'intérieur, encore peu congelé intérieur, encore un peu congelée à l'intérieur, encore peu congelée intérieur, encore un peu de glace, encore peu de glace, encore un peu de glace dedans, encore peu de glace dedans, encore un peu de glace à l'intérieur, encore peu de glace intérieur, à moitié congelé, moitié congelé, à moitié congelée, moitié congelée, encore à moitié congelé, encore moitié congelé, encore à moitié congelée, encore moitié congelée, à moitié décongelé, moitié décongelé, à moitié décongelée, moitié décongelée, encore en décongélation, encore froid et dur, encore froid dur, encore froid et dure, encore froid dure, encore froide et dur, encore froide dur, encore froide et dure, encore froide dure, dedans encore congelé, dedans encore congelée, à l'intérieur encore congelé, intérieur encore congelé, à l'intérieur encore congelée, intérieur encore congelée
lexicon-talk-icy = dedans, intérieur, glace, glaçons, milieu, moitié, coeur, cœur
lexicon-talk-thawed = décongelé, décongelée, dégelé, dégelée, elle est décongelée, il est décongelé, complètement décongelée, complètement décongelé, bien décongelée, bien décongelé
lexicon-talk-undone-water = eau pas changée, eau pas encore changée, pas changé l'eau, je n'ai pas changé l'eau, j'ai pas changé l'eau, oublié de changer l'eau, j'ai oublié de changer l'eau, oublié l'eau
lexicon-talk-undone-salt = pas salé, pas salée, non salé, non salée, pas encore salé, pas encore salée
lexicon-talk-undone-on = pas au four, pas encore au four, pas dedans, pas encore dedans, pas encore enfourné, pas encore enfournée, pas enfourné, pas enfournée, toujours pas au four, pas en cuisson, pas encore en cuisson, pas encore au fumoir
lexicon-talk-undone-pull = encore au four, toujours au four, encore dans le four, encore dans four, encore dedans, toujours dedans, encore en cuisson, toujours en cuisson, encore au fumoir, toujours au fumoir, encore sur le feu, encore sur feu, encore en train de cuire, cuit encore, encore sur le barbecue, encore sur barbecue, remis au four, remise au four, de retour au four, retour au four, je l'ai remise, je l'ai remis, on l'a remise, on l'a remis, remise en cuisson, remis en cuisson
lexicon-talk-undone-chill = encore dehors, toujours dehors, encore sur la table, encore sur table, toujours sur la table, toujours sur table, encore sur le plan de travail, encore sur plan de travail, encore sur le comptoir, encore sur comptoir, pas au frigo, pas encore au frigo, restes encore dehors, restes encore sur la table, restes encore sur table, je l'ai laissé dehors, je l'ai laissée dehors, laissé sur la table, laissée sur la table, oublié sur la table, oubliée sur la table, oublié de la mettre au frigo, oublié de le mettre au frigo
lexicon-talk-did-buy = acheté, achetée, à la maison, maison, courses faites, fait les courses, fait courses, récupéré, récupérée, j'ai la dinde, on a la dinde, j'ai la volaille, j'ai le poulet, j'ai pris la dinde, j'ai l'oie, j'ai le chapon, dinde acheté, dinde achetée, volaille achetée
lexicon-talk-did-thaw = décongelé, décongelée, dégelé, dégelée, en décongélation, décongélation lancée, décongélation commencée, lancé décongélation, lancé la décongélation, commencé la décongélation, commencé décongélation, décongèle au frigo, décongèle dans l'eau, décongèle dans eau, commence à décongeler, commence décongeler, en train de décongeler, sorti du congélateur, sorti congélateur, sortie du congélateur, sortie congélateur, sorti du congélo, sorti congélo, sortie du congélo, sortie congélo, hors du congélateur, hors congélateur, au frigo, dans le frigo, dans frigo, mis au frigo, mise au frigo, mis dans le frigo, mis dans frigo, mise dans le frigo, mise dans frigo, mis à décongeler, mis décongeler, mise à décongeler, mise décongeler, mis à dégeler, mis dégeler, mise à dégeler, mise dégeler, dans l'eau, dans eau, dans l'eau froide, dans eau froide, mis dans l'eau, mis dans eau, mise dans l'eau, mise dans eau, mis dans l'eau froide, mis dans eau froide, mise dans l'eau froide, mise dans eau froide, dans l'évier, dans évier, passé du congélateur au frigo, passé congélateur au frigo, passée du congélateur au frigo, passée congélateur au frigo, décongèle, ça décongèle, elle décongèle, mise au frigo à décongeler, mis au frigo à décongeler, au frigo pour décongeler, commencé à décongeler dans l'eau, commencé décongeler dans eau, décongèle dans l'évier, décongèle dans évier, au frigidaire, dans le frigidaire, dans frigidaire, mise au frigidaire, mis au frigidaire
lexicon-talk-did-water = eau changée, changé leau, j'ai changé leau, changé l'eau, changé eau, j'ai changé l'eau, changé d'eau, eau fraîche, eau neuve, nouvelle eau, eau renouvelée, remis de l'eau froide, remis de eau froide, remis de l'eau fraîche, remis de eau fraîche, changement d'eau fait
lexicon-talk-did-salt = salé, salée, mis le sel, mis sel, mis du sel, sel mis, au sel, en saumure, dans la saumure, dans saumure, mis en saumure, mise en saumure, mis dans la saumure, mis dans saumure, mise dans la saumure, mise dans saumure, salé et au frigo, salé au frigo, salée et au frigo, salée au frigo, salé et mis au frigo, salé mis au frigo, salé et mise au frigo, salé mise au frigo, salée et mis au frigo, salée mis au frigo, salée et mise au frigo, salée mise au frigo, salé et remis au frigo, salé remis au frigo, salé et remise au frigo, salé remise au frigo, salée et remis au frigo, salée remis au frigo, salée et remise au frigo, salée remise au frigo, assaisonné, assaisonnée, frotté de sel, frottée de sel, frotté au sel, frottée au sel
lexicon-talk-did-rest = au repos, en repos, en train de reposer, repose
lexicon-talk-did-temper = sorti du frigo, sorti frigo, sortie du frigo, sortie frigo, hors du frigo, hors frigo, séché, séchée, beurré, beurrée, séché et beurré, séché beurré, séché et beurrée, séché beurrée, séchée et beurré, séchée beurré, séchée et beurrée, séchée beurrée, sorti, sortie, dehors, essuyé, essuyée, épongé, épongée
lexicon-talk-did-fire = allumé, allumée, four allumé, allumé le four, allumé four, four est allumé, feu allumé, allumé le feu, allumé feu, feu est allumé, fumoir allumé, allumé le fumoir, allumé fumoir, barbecue allumé, allumé le barbecue, allumé barbecue, braises prêtes, charbon allumé, allumé le charbon, allumé charbon, ça chauffe, chauffe, four chaud, four est chaud, four à température, four température, préchauffé, préchauffée, four préchauffé, préchauffage lancé, lancé le préchauffage, lancé préchauffage, préchauffage, en préchauffage, ça préchauffe, four chauffe, four en chauffe, en chauffe, chauffe lancée, lancé la chauffe, lancé chauffe, feu a pris, feu pris, feu est parti, feu parti, feu est lancé, feu lancé, fumoir prêt, fumoir chaud, four prêt, mis le four en chauffe, mis four en chauffe, four mis en chauffe, parti le four, parti four, mis le four à chauffer, mis four chauffer
lexicon-talk-did-on = au four, dans le four, dans four, dedans, enfourné, enfournée, mis au four, mise au four, mis dans le four, mis dans four, mise dans le four, mise dans four, en cuisson, en train de cuire, mis à cuire, mis cuire, mise à cuire, mise cuire, mis à la cuisson, mis cuisson, mise à la cuisson, mise cuisson, ça cuit, elle cuit, il cuit, la dinde cuit, le poulet cuit, ça cuit maintenant, elle est en train de cuire, au fumoir, dans le fumoir, dans fumoir, mis au fumoir, mise au fumoir, mis dans le fumoir, mis dans fumoir, mise dans le fumoir, mise dans fumoir, sur le barbecue, sur barbecue, au barbecue, mis sur le barbecue, mis sur barbecue, mise sur le barbecue, mise sur barbecue, sur le gril, sur gril, sur le grill, sur grill, mis sur le gril, mis sur gril, mise sur le gril, mise sur gril, mis sur le grill, mis sur grill, mise sur le grill, mise sur grill, sur le feu, sur feu, lancé la cuisson, lancé cuisson, cuisson lancée, cuisson commencée, commencé la cuisson, commencé cuisson, parti au four, partie au four, mis dedans, mise dedans, cuisson partie, enfourne, on a mis la dinde, j'ai mis la dinde, dans le fourneau, au fourneau
lexicon-talk-did-check = mesuré, mesurée, vérifié, vérifiée, contrôlé, contrôlée, température prise, températures prises, pris la température, pris température, pris les températures, pris températures, vérifié la température, vérifié température, vérifié les températures, vérifié températures
lexicon-talk-did-pull = sorti du four, sorti four, sortie du four, sortie four, hors du four, hors four, sorti de cuisson, sortie de cuisson, sorti du fumoir, sorti fumoir, sortie du fumoir, sortie fumoir, hors du fumoir, hors fumoir, sorti du feu, sorti feu, sortie du feu, sortie feu, hors du feu, hors feu, sorti, sortie, défourné, défournée, retiré du four, retiré four, retirée du four, retirée four, retiré du feu, retiré feu, retirée du feu, retirée feu, retiré du fumoir, retiré fumoir, retirée du fumoir, retirée fumoir, enlevé du feu, enlevé feu, enlevée du feu, enlevée feu, enlevé du four, enlevé four, enlevée du four, enlevée four, dehors, sorti du barbecue, sorti barbecue, sortie du barbecue, sortie barbecue, retiré du barbecue, retiré barbecue, retirée du barbecue, retirée barbecue, je la sors, je le sors, on la sort, on le sort, je sors la dinde, je sors la volaille, je la sors du four, je le sors du four, je l'ai sortie, je l'ai sorti, sortie du fourneau
lexicon-talk-did-stand = au repos, en repos, repose, en train de reposer
lexicon-talk-did-carve = découpé, découpée, tranché, tranchée, coupé, coupée, découpe faite, découpe finie, fini de découper
lexicon-talk-did-chill = au frigo, dans le frigo, dans frigo, mis au frigo, mise au frigo, mises au frigo, mis dans le frigo, mis dans frigo, mise dans le frigo, mise dans frigo, restes au frigo, restes dans le frigo, restes dans frigo, mis les restes au frigo, mis restes au frigo, restes mis au frigo, restes rangés, rangé, rangée, rangés, rangé les restes, rangé restes, refroidi, refroidie, au frais, mis au frais, mise au frais, restes au frais, tout est au frigo, tout est rangé au frigo, tout au frigo, j'ai tout mis au frigo, tout mis au frigo, les restes sont au frigo, tout est rangé, au frigidaire, dans le frigidaire, dans frigidaire, restants au frigidaire, restants au frigo, restants dans le frigo, restants dans le frigidaire, restants dans frigidaire, restants dans frigo, restes au frigidaire, restes dans frigidaire
lexicon-talk-did-pack = emballé, emballée, dans la glacière, dans glacière, en glacière, mis dans la glacière, mis dans glacière, mise dans la glacière, mise dans glacière, dans la voiture, dans voiture, chargé, chargée, dans le coffre, dans coffre, voiture chargée
lexicon-talk-did-travel = en route, en chemin, sur la route, sur route, parti, partie, partis, parties, part, on part, je pars, on y est parti, pars, roule, roulons, sur le départ, sur départ, sur la route maintenant
lexicon-talk-did-reheat = réchauffé, réchauffée, ça réchauffe, en train de réchauffer, mis à réchauffer, mis réchauffer, mise à réchauffer, mise réchauffer
lexicon-talk-did-serve = servi, servie, à table, table, sur la table, sur table, mange, mangée, on mange, passés à table, passés table, servi à table, servi table, à table maintenant
lexicon-talk-did-leftovers = restes finis, restes mangés, fini les restes, fini restes, mangé les restes, mangé restes, jeté les restes, jeté restes, restes jetés, plus de restes, restes congelés, congelé les restes, congelé restes, plus rien
lexicon-talk-give = donne, donner, demande, demander, passe, passer, confie, confier, peut, peux, pourrait, pourrais, laisse, attribue, fait, fera, s'occupe, occupe, charge
lexicon-talk-mine = je, j', je m'occupe de, je m'occupe du, je m'occupe de la, je me charge de, je me charge du, je me charge de la, je prends, je fais, je vais, je peux, moi je, je ferai, laisse-moi, c'est moi qui, je gère, je m'occupe, je m'occupe des, je m'occupe de l', je me charge, je me charge des, moi je m'occupe, je veux bien
lexicon-talk-mine-last = c'est pour moi, c'est moi, pour moi, je m'en occupe, je m'en charge
lexicon-talk-mine-link = le, la, l', les, de, du, des, à, au, d', faire, moi, ce soir, demain, aujourd'hui, plus tard, tout à l'heure, aux
lexicon-talk-manners = désolé, désolée, je suis désolé, je suis désolée, vraiment désolé, vraiment désolée, pardon, les gens, les amis, tout le monde, salut, coucou, bonjour, hey, malheureusement, finalement, en fait, aujourd'hui, demain, ce soir, cette fois, cette année, mais, et, car, oh, oh non, zut, mince, merci, s'il te plaît, s'il vous plaît, svp, stp, alors, bon, la famille, au dîner, au repas, du coup
lexicon-talk-gone = je peux pas venir, je ne peux pas venir, je pourrai pas venir, je ne pourrai pas venir, je vais pas pouvoir venir, je ne vais pas pouvoir venir, je viens pas, je ne viens pas, je viens plus, je ne viens plus, je suis malade, suis malade, je suis tombé malade, je suis tombée malade, j'ai la grippe, j'ai de la fièvre, j'ai chopé la grippe, je serai pas là, je ne serai pas là, je laisse tomber, comptez pas sur moi, ne comptez pas sur moi, comptez plus sur moi, ne comptez plus sur moi, j'ai un empêchement, j'annule, je dois annuler, je me désiste
lexicon-talk-gone-short = malade, grippe, pas dispo, empêchement
lexicon-talk-cant = je peux pas, je ne peux pas, peux pas, moi je peux pas, je pourrai pas, je ne pourrai pas, je peux pas le faire, je ne peux pas le faire, je pourrai pas le faire, je ne pourrai pas le faire, je peux pas faire ça, je vais pas pouvoir, je ne vais pas pouvoir, je n'y arriverai pas, j'y arriverai pas, pas possible pour moi, quelqu'un d'autre peut le faire
lexicon-talk-willing = je m'en occupe, m'en occupe, je m'en charge, m'en charge, j'y vais, je le fais, je la fais, je vais le faire, compte sur moi, comptez sur moi, je gère, ça marche, pas de souci, pas de soucis, pas de problème, avec plaisir, je prends, je m'y mets, bien sûr, oui je peux, je peux, je peux le faire, moi, c'est pour moi
lexicon-talk-unwilling = non, nan, non merci, pas moi, plutôt pas, je préfère pas, pas cette fois
lexicon-talk-suggest = on peut, peut on, on pourrait, pourrait on, est ce qu on, et si on, si on, et si, tu peux, tu pourrais, vous pouvez, est ce possible, possible de, ce serait possible, ça irait, ça te va, ça vous va, ça marche si, on décale, on pourra, il faut, je voudrais, j'aimerais
lexicon-talk-suggest-move = décale le dîner, décalons le dîner, décaler le dîner, déplace le dîner, dînons, mangeons, repas à, dîner à
lexicon-talk-everything = tout, toutes, tous, tout le mien, mes tâches, toutes mes tâches
lexicon-talk-kind-check = températures, température, thermomètre, sonde, relevés
lexicon-talk-meat = viande, température, températures, temp, sonde, thermomètre, tranches, morceaux, restes, degrés, degré, f, c, fahrenheit, celsius
lexicon-talk-meat-reads = à, a, au, en, cœur, coeur, dedans, milieu, centre, marque, affiche, indique, lit, encore, toujours, seulement, environ, presque, descendu, descendue, tombé, tombée, partout, là, fait, d', de, vers, épais, plus
lexicon-talk-meat-tells = marque, affiche, indique, lit, maintenant, encore, descendu, descendue, tombé, tombée
lexicon-talk-meat-rests = glacière, boîte, caisse, papier, alu, aluminium, serviettes, emballée, emballé, repos, repose
lexicon-talk-short-breast = p, po, poit, bl, bla, poi
lexicon-talk-short-thigh = cu, cui, cuis, cs
lexicon-talk-short-wing = ail, ai
lexicon-talk-short-stuffing = fa, far
lexicon-talk-short-pit = fo, fum
lexicon-talk-everywhere = partout, dans tous les points, à tous les endroits, dans les trois, de partout, aux trois endroits
lexicon-talk-slip = oups, pardon, non, désolé, désolée, erreur, je voulais dire, voulais, dire, veux, plutôt, lol, haha, mdr, attends, faute de frappe, faute, frappe, correction, zut
lexicon-talk-doubting = c'est pas possible, ce n'est pas possible, pas possible, ça ne peut pas être juste, ça peut pas être ça, ça ne va pas, c'est bizarre, bizarre, c'est faux, c'est trop bas, ça paraît faux
lexicon-talk-eat = on peut encore manger, peut encore manger, encore le manger, encore la manger, encore mangeable, mangeable, encore bon, encore bonne, bon à manger, bonne à manger, je jette, on jette, faut jeter, faut-il jeter, à jeter, trop tard, ça se mange encore, ça se mange
lexicon-talk-kind-fire = four, feu, fumoir, gril, grill, barbecue, braises, charbon, préchauffage
lexicon-talk-kind-travel = conduire, conduis, voiture, trajet, transport
lexicon-talk-kind-carve = découpe, couteau
lexicon-talk-kind-water = changements d'eau, eau
lexicon-talk-kind-buy = courses, achats
lexicon-talk-who-does-what = qui fait quoi, qui fait quoi alors, qui a quoi, qui s'occupe de quoi
lexicon-talk-cancel = annule le plan, on annule, on annule tout, annule tout, annulé, c'est annulé, annule le dîner, on annule le dîner, arrête le plan, supprime le plan, le repas est annulé, plus de repas
lexicon-talk-who = qui, qui va, qui s'occupe de, qui fait, qui a
lexicon-talk-asked-pull = la sort, sort la dinde
lexicon-talk-asked-on = l'enfourne, enfourne, met la dinde au four
lexicon-talk-asked-fire = allume, allume le four, préchauffe
lexicon-talk-asked-check = prend les températures, mesure
lexicon-talk-asked-water = change l'eau, changer l'eau
lexicon-talk-asked-buy = achète, acheter, achète la dinde, fait les courses
lexicon-talk-asked-carve = découpe, découper, coupe, découpe la dinde
lexicon-talk-asked-salt = sale, saler, sale la dinde, la sale
lexicon-talk-toward = à, chez, en, au, vers, aux, près
lexicon-talk-late = en retard, retard, retardé, retardée, retardés, arrive tard, arrivent tard, arrivera tard, arriveront tard, arrive plus tard, arrivent plus tard, arrivera plus tard, bouchons, dans les bouchons, embouteillages, dans le trafic, coincé, coincés, coincée
lexicon-talk-other-year = l'an dernier, an dernier, l'année dernière, année dernière, l'année passée, année passée, la dernière fois, dernière fois, noël dernier, il y a un an
lexicon-talk-dish-add = ajoute, ajouter, rajoute, rajouter, ajoutons, ajoutez, aussi
lexicon-talk-dish-and = et, aussi, plus
lexicon-talk-dish-doing = fais, fait, faire, veux
lexicon-talk-both = les deux, toutes les deux, tous les deux
lexicon-talk-dish-remove = enlève, enlever, retire, retirer, supprime, supprimer, ôte, sans
lexicon-talk-dish-link = au, à, aux, dans, sur, le, la, les, l', du, de, d', des, en, pour, pendant, une, un, prend, demande, faut, et, avec, sous, il
lexicon-talk-undo = annuler, annule, annule ça, annulez, annuler ça, défaire, défais, reviens en arrière, revenir en arrière, retour en arrière, retour arrière, trompé, trompée, je me suis trompé, je me suis trompée, erreur, c'était une erreur, était erreur, j'ai fait une erreur, fait erreur, mauvais bouton, me suis trompé de bouton, trompé de bouton, me suis trompée de bouton, trompée de bouton, fausse manip, fausse manœuvre, pas fait exprès, oups, zut mauvais bouton, non annule, annule le dernier, annule dernier, annule la dernière, annule dernière, oublie ça, oublie, non c'est pas ça, non pas, c'est pas ça, pas, c'était pas ça, était pas, c'était faux, était faux
lexicon-talk-discard = laisse tomber, oublie, oublie ça
lexicon-talk-thrown = jeté, jetée, jetés, tout jeté, jeté à la poubelle, jetée à la poubelle, jeté à poubelle, à la poubelle, à poubelle, mis à la poubelle, mise à la poubelle, dû jeter, dû tout jeter, j'ai tout jeté, on a tout jeté, parti à la poubelle, balancé, foutu à la poubelle
lexicon-talk-greeting = salut, bonjour, bonsoir, coucou, hello, hey, yo, cc, slt, bjr, bsr, allo, salut à tous, salut à toutes, bonjour à tous, bonsoir à tous, bonjour à toutes et à tous, bonsoir tout le monde, bonjour tout le monde, salut tout le monde, coucou tout le monde, bonjour bonjour, salut ça va, bonjour ça va, bonne journée, joyeux noël, bonjour les amis, salut les amis, salut la compagnie, bon matin
lexicon-talk-assent = ok, okay, d'accord, dac, dacc, oui, ouais, ouaip, oui s'il te plaît, oui stp, oui svp, parfait, super, génial, très bien, très, ça marche, marche, ça me va, va, ça va, va pour ça, va pour, bien, bien sûr, sûr, oui bien sûr, bien entendu, entendu, c'est parti, parti, on y va, allons-y, allons, vas-y, vas, allez-y, allez, go, ça roule, roule, c'est bon pour moi, bon pour moi, pour, nickel, impeccable, impec, top, j'accepte, accepte, accepter, volontiers, pas de souci, pas de problème, pas de soucis, bonne idée, fais ça, fais, fais comme ça, fais comme, on fait ça, fait, on fait comme ça, fait comme, faisons ça, faisons, faisons comme ça, faisons comme, tope là, tope, marché conclu, noté, c'est noté, cool, ok parfait, parfait ok, ok super, ok ça marche, oui ça marche, oui parfait, oui d'accord, ok d'accord, tiguidou, correct, excellent, adopté, ça convient, convient, ça me convient, compris, banco
lexicon-talk-thanks = merci, merci beaucoup, merci bien, grand merci, un grand merci, mille mercis, mille merci, merci à toi, ok merci, merci infiniment, merci mille fois, super merci, super merci beaucoup, parfait merci beaucoup, ok merci beaucoup, parfait merci, génial merci, d'accord merci, oui merci, merci bcp, mrc, mci, c'est gentil, merci c'est gentil, je te remercie, merci pour tout, cool merci, top merci

## Demander de l'aide avec des mots ; les noms des langues
lexicon-help = aide, aide-moi, à l'aide, au secours, tu peux m'aider, peux-tu m'aider, comment ça marche, comment ça fonctionne, que sais-tu faire, qu'est-ce que tu sais faire, qu'est-ce que tu fais, tu fais quoi, tu sais faire quoi
lexicon-language-en = anglais, english
lexicon-language-es = espagnol, castillan, español
lexicon-language-fr = français, french
lexicon-language-de = allemand, deutsch, german
lexicon-language-pt = portugais, brésilien, português
lexicon-language-it = italien, italiano

## Quiet hours, and that there are none
lexicon-quiet = silence, heures calmes, calme, ne pas déranger, tranquille
lexicon-quiet-off = aucune, jamais, non, arrêt, off

## A brine's percentage of the water; whose spoons
lexicon-ask-of-water = de l'eau, sur l'eau, par rapport à l'eau, du poids d'eau, du poids de l'eau
lexicon-spoons-us = américain, américaine, états-unis, us, usa
lexicon-spoons-metric = métrique
lexicon-spoons-uk = britannique, anglaise, royaume-uni, impériale
lexicon-spoons-australia = australien, australienne, australie

## Un mot qui reprend le suivant
lexicon-negation = oublie le, oublie la, oublie l', oublie, oubliez le, pas, pas de, pas d', pas le, pas la, pas au, pas dans le, pas à la, non, sans le, sans la, sans l', sans, au lieu du, au lieu de la, au lieu de, plutôt que
