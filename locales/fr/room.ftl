### La conversation : prévoir, le tableau, les tâches, les réglages. Court comme un SMS ; ça se lit les mains mouillées.

# ---- boutons
room-button-accept = Accepter
room-button-change = Modifier
room-button-done = C’est fait
room-button-later = Plus tard
room-button-skip = Passer
room-button-take = Je m’en charge
room-button-undo = Annuler
room-button-yes = Oui
room-button-no = Non
room-button-back = Retour
room-button-discard = Laisse tomber
room-button-why = Pourquoi ces heures ?
room-button-jobs = Répartir les tâches

# ---- début et aide
room-start = Je tiens le plan d’une volaille entière : de l’achat aux derniers restes. Je fais les calculs de sel, de décongélation et de cuisson, et je te fais signe quand il y a quelque chose à faire. On commence par quoi ?
room-start-group = Bonjour à tous. Je tiens le plan de la volaille : qui fait quoi, et quand. Commencez par <b>/plan</b> et une phrase, comme « /plan dinde congelée de 6,5 kg, repas jeudi à 17 h, 11 personnes, four ». Je ne vois que les commandes, les réponses à mes messages et les boutons.
room-start-button-plan = Prévoir un repas
room-start-button-salt = Combien de sel ?
room-start-button-safe = C’est sûr ?
room-how = Dis-moi la volaille, quand on mange et combien on est. Je calcule décongélation, sel, frigo et feu, je fais signe à qui c’est le tour, et je refais le plan si quelque chose déraille. Pendant la cuisson, envoie-moi les températures : je dis quand ce sera prêt. Et pose tes questions. Les commandes : /help.
room-help-plan = Dis-moi la volaille, le jour et combien vous serez. Par exemple :
    « dinde congelée de 6,5 kg, repas jeudi à 17 h, 11 personnes, fumoir à 165 »
    S’il manque quelque chose, je demande.
room-help-salt = Demande comme à un ami. Par exemple :
    « sel pour une dinde de 5,5 kg »
    « 2 c. à soupe de sel fin en sel casher en flocons »
    « mon sel : 1/4 { -tsp } fait 0,7 g », et ensuite je compte avec le tien.
room-help-safe = Demande avec les chiffres que tu as. Par exemple :
    « 70 °C pendant 2 minutes, c’est sûr ? »
    « dinde sortie depuis 3 heures, c’est bon ? »
    « combien de temps se gardent les restes ? »
    Dans le doute, c’est l’autorité sanitaire de ton pays qui a le dernier mot.
room-help = <b>/plan</b> commencer un plan, ou voir celui qu’il y a
    <b>/board</b> ce qui vient et qui s’en charge
    <b>/salt</b> doses et conversions
    <b>/ask</b> une question rapide
    <b>/log</b> noter des températures : « poitrine 53, cuisse 61 »
    <b>/when</b> quand ce sera cuit
    <b>/move</b> déplacer le repas : « /move 18 h »
    <b>/take</b> et <b>/drop</b> répartir les tâches
    <b>/undo</b> annuler le dernier changement
    <b>/export</b> le plan pour ton agenda, et tout ce que je garde
    <b>/settings</b> langue, unités, fuseau horaire
    <b>/stop</b> arrêter le plan, <b>/forget</b> effacer ce que je garde
room-unread = Je n’ai pas compris. Essaie { $stage ->
    [draft] « repas à 18 h », « 12 personnes », « sans sel », ou touche un bouton
    [ahead] « c’est fait » quand ça l’est, « je m’occupe de la découpe », « repas une heure plus tard », ou une question
    [alone] « c’est fait » quand ça l’est, « repas une heure plus tard », ou une question
    [cooking] « blanc 65, cuisse 70 », « quand ? », « sorti du four » quand ça l’est, ou une question
    [after] « les restes sont au frigo », une question comme « combien de temps se gardent les restes », ou /help
   *[none] « dinde congelée de 6,5 kg, repas dimanche à 17 h », une question comme « sel pour une dinde de 5,5 kg », ou /help
}.
room-unreadable = Je ne sais lire que du texte. Tu me l’écris ?
room-no-plan = Pas encore de plan. Commence par une phrase, comme « /plan dinde congelée de 6,5 kg, repas dimanche à 17 h, 10 personnes, four ».
room-stale = Ce bouton vient d’un plan précédent. /board montre où on en est.
room-not-yours = C’est à quelqu’un d’autre de répondre.
room-not-here = Tu n’es pas dans cette discussion, alors je ne peux pas changer son plan.
room-flooded = Trop d’un coup : j’ai arrêté de lire. Laisse-moi une minute.
room-need-person = Je ne sais pas qui tu es ici. Écris en ton nom et réessaie.
room-may-host = C’est à { $name }, à l’origine du plan, ou à un admin de faire ça.
room-may-not = Il faut être admin de cette discussion pour faire ça.

# ---- une volaille, une chaleur
room-bird = { $kind ->
    [turkey-breast] poitrine de dinde
    [chicken] poulet
    [capon] chapon
    [duck] canard
    [goose] oie
   *[turkey] dinde
} { $condition ->
    [frozen] { $kind ->
        [chicken] congelé{" "}
        [capon] congelé{" "}
        [duck] congelé{" "}
       *[turkey] congelée{" "}
    }
    [part-thawed] { $kind ->
        [chicken] à moitié décongelé{" "}
        [capon] à moitié décongelé{" "}
        [duck] à moitié décongelé{" "}
       *[turkey] à moitié décongelée{" "}
    }
   *[fresh] {""}
}de { $mass }{ $form ->
    [stuffed] { $kind ->
        [chicken] , farci
        [capon] , farci
        [duck] , farci
       *[turkey] , farcie
    }
    [flat] , en crapaudine
    [pieces] , en morceaux
   *[whole] {""}
}
room-heat = { $cooker ->
    [fan-oven] four { -fan } à { $setting }
    [smoker] fumoir à { $setting }
   *[oven] four à { $setting }
}
room-birds = { $count } × { $bird }

# ---- demander ce qui manque
room-known = Pour l’instant : { $parts }.
room-known-mass = { $mass }
room-known-bird = { $kind ->
    [turkey-breast] poitrine de dinde
    [chicken] poulet
    [capon] chapon
    [duck] canard
    [goose] oie
   *[turkey] dinde
}{ $condition ->
    [frozen] { $kind ->
        [chicken] {" "}congelé
        [capon] {" "}congelé
        [duck] {" "}congelé
       *[turkey] {" "}congelée
    }
    [part-thawed] { $kind ->
        [chicken] {" "}à moitié décongelé
        [capon] {" "}à moitié décongelé
        [duck] {" "}à moitié décongelé
       *[turkey] {" "}à moitié décongelée
    }
    [fresh] { $kind ->
        [chicken] {" "}frais
        [capon] {" "}frais
        [duck] {" "}frais
       *[turkey] {" "}fraîche
    }
   *[unknown] {""}
}
room-known-form = { $form ->
    [pieces] en morceaux
   *[flat] ouverte à plat
}
room-known-guests = { $guests ->
    [one] une personne
   *[other] { $guests } personnes
}
room-known-salt = { $how ->
    [none] sans sel
    [bold] plus de sel
   *[light] moins de sel
}
room-known-dinner = repas { $when }
room-known-start = en cuisson { $when }
room-known-use-by = à consommer jusqu’à { $day }
room-known-shop = courses { $when }
# $start: the hour somebody said; $on: the plan’s.
room-proposal-start = Tu disais en cuisson { $start }. Pour ce repas, c’est { $on }.
room-shop-not = Courses { $said } : ça ne va pas. Achète-la { $when }.
room-proposal-dish = { $dish }
room-proposal-beside = Une fois accepté, j’ajoute : { $dishes }.
room-known-drive = { $drive } de route
room-ask-zone = Où est la cuisine ? Une ville ou un fuseau horaire suffit : « Lyon », « Europe/Paris ».
room-ask-dinner = On mange quand ? Jour et heure : « jeudi à 17 h ».
room-ask-dinner-hour = On mange à quelle heure ? « 17 h »
room-ask-dinner-day = Quel jour ? « jeudi », « 25 novembre »
room-ask-size = Elle pèse combien, ou vous serez combien à table ? « 6,5 kg » ou « 11 personnes »
room-ask-weight = Elle pèse combien, la nouvelle ? C’est sur l’étiquette : « 6,5 kg ».
room-ask-condition = La volaille est congelée ?
room-ask-cooker = Tu la cuis dans quoi ?
room-ask-drive = Combien de temps de route ?
room-ask-change = Qu’est-ce qui doit changer ? Touche une option, ou dis-le : « repas 18 h », « 7 kg », « 14 personnes ».
room-condition-frozen = Congelée
room-condition-fresh = Fraîche ou décongelée
room-condition-part-thawed = À moitié décongelée
room-cooker-oven = Four
room-cooker-fan-oven = Four { -fan }
room-cooker-smoker = Fumoir
room-drive-15 = 15 min
room-drive-30 = 30 min
room-drive-60 = 1 heure
room-change-no-salt = Sans sel
room-change-dry-salt = Salage à sec
room-change-fridge = Décongeler au frigo
room-change-cold-water = Décongeler à l’eau froide
room-change-ahead = Cuire la veille
room-change-same-day = Cuire le jour même
room-change-hot = La transporter chaude
room-change-cold = La transporter froide
room-change-there = La cuire là-bas
room-change-home = à la maison
room-kept = Le reste ne change pas. { $known }
room-plan-unread = Je n’ai trouvé ni volaille ni jour dans « { $text } ». Essaie « dinde congelée de 6,5 kg, repas dimanche à 17 h, 10 personnes ».

# ---- la proposition
room-proposal-head = <b>{ $bird }</b>{ $guests ->
    [0] {""}
    [one] , pour une personne
   *[other] , pour { $guests }
}, { $heat }. À table <b>{ $when }</b>.
room-proposal-size = Ça fait environ { $mass } de volaille pour ta table.
room-proposal-small = Un peu petit : pour { $guests } personnes, je chercherais { $mass }.
room-proposal-ready = Fin de cuisson entre { $from } et { $to } ; neuf fois sur dix, avant la deuxième heure.
room-proposal-need = Il te faut : { $things }.
room-proposal-use-by = Sur l’emballage : à consommer jusqu’à { $day }.
room-proposal-first = D’abord : <b>{ $what }</b>, { $when }.
room-line = { $when } · { $what }
room-need-salt = { $grams } de sel ({ $spoons } de { $salt ->
    [table] sel fin
   *[flake-kosher] sel casher en flocons
})
room-accepted = C’est décidé. Je te fais signe quand il y a quelque chose à faire.
room-discarded = D’accord, on oublie.

# ---- pourquoi
room-why = Pourquoi ces heures :
room-why-line = <b>{ $what }</b>, { $when } : { $reasons }.

# ---- un souhait impossible
room-clash = Ça ne peut pas marcher : { $because }.
room-clash-short = Le temps ne suffit pas : { $because }. Il manque environ { $short }.
room-clash-now = Ça ne tient plus : { $because }. Il manque environ { $short }.
room-clash-keeps = Elle ne se gardera pas jusqu’au repas : { $because }. C’est environ { $short } de trop.
room-clash-use-by = Une date limite sur l’emballage ? Dis-la-moi, par exemple « à consommer jusqu’à vendredi » : fermée, elle se garde jusque-là.
room-clash-instead = <b>Moi, je ferais plutôt : { $change }</b> ({ $cost }).
room-clash-others = Ou alors :
room-clash-offers = Ce qui marcherait :
room-clash-offer = • { $change } : { $cost }
room-clash-hopeless = Je ne vois aucun moyen sûr d’y arriver à cette heure-là. Un repas plus tard, ou une autre volaille ?
room-mended = D’accord : { $change }.

# ---- le tableau
room-board-dinner = <b>Repas { $when }</b>
room-board-bird = { $bird }, { $heat }
room-board-no-heat = Pas de chaleur depuis { $since }.
room-board-clash = Ça ne tient pas comme ça : choisis une solution ci-dessus, ou dis-moi ce qui change.
room-board-next = { $late ->
    [yes] <b>C’est l’heure : { $what }</b>
   *[no] <b>Ensuite : { $what }</b>
}, { $when }{ $who }
room-board-then = { $when } · { $what }{ $who }
room-board-who = {" "}– { $name }
room-board-nobody = {""}
room-board-more-dishes = … et { $count } de plus, dont { $dishes }
room-board-more = … et { $count } de plus
room-board-ready = Fin de cuisson entre { $from } et { $to }{ $standing ->
    [spare] , { $span } de marge
    [tight] , c’est juste
    [late] , trop tard pour le repas
   *[no] {""}
}
room-board-done = Fait : { $jobs }
room-board-done-one = { $what }
room-board-done-by = { $what } ({ $name })
room-board-assumed = Je compte comme fait : { $jobs }. Personne ne l’a dit.
room-board-skipped = sans « { $what } »
room-pin-how = Je ne peux pas épingler le tableau ici. Si tu le veux en haut, nomme-moi admin avec le droit d’épingler ; /board le ramène ici à tout moment.
room-left = { $name } n’est plus là. De nouveau libre : { $jobs }.
room-board-all-done = Tout est fait. Bon appétit.

# ---- tâches
room-call-again = Toujours en attente depuis { $since } : { $what }.
room-call-from = { $what } :
room-call-name = { $name } :
room-call-ahead = Pour { $at } :
room-done = { $what }, { $at }.
room-done-by = { $what }, { $name }, { $at }.
room-skipped = Laissé de côté : { $what }.
room-skipped-by = { $name } laisse de côté : { $what }.
room-next = Ensuite : { $what }, { $when }.
room-later = D’accord, je rappelle à { $when }.
room-held-up-leave = Départ à { $when } alors. Je redemande à cette heure-là.
room-held-up-hot = Laissez-la emballée, sans ouvrir. Si filet et cuisse n’affichent pas { $hot } ou plus là-bas : mangée avant { $by }, plus servie ensuite.
room-held-up-over = Ses deux heures étaient finies à { $by }. Si filet et cuisse n’ont pas affiché { $hot } ou plus jusque-là, ne la servez pas.
room-taken = C’est pour toi : { $what }, { $when }.
room-taken-water = C’est pour toi : { $what }, { $when }, et { $count ->
    [one] le changement d’eau
   *[other] les { $count } changements d’eau
} ensuite.
room-take-yours = C’est déjà à toi.
room-take-theirs = { $name } s’en charge déjà.
room-dropped = De nouveau libre : { $what }.
room-drop-free = Personne ne l’a prise.
room-skip-theirs = C’est à { $name }. Il faut être cette personne, l’hôte ou un admin pour la laisser de côté.
room-drop-theirs = C’est à { $name }. Il faut être cette personne, l’hôte ou un admin pour la rendre.
room-already = C’est déjà réglé.
room-already-by = { $name } s’en est occupé, { $at }.
room-jobs = Touches-en une pour la prendre, ou pour la rendre.
room-jobs-take = { $what }
room-jobs-drop = { $what } ({ $name })
room-step-unread = Je ne connais pas de tâche « { $text } » dans ce plan.
room-missed = Pendant mon absence, c’était l’heure de : { $what }. /board montre ce qui compte encore.
room-shifts = Ça décale le reste :
room-shift = { $what } : { $is } (au lieu de { $was })

# ---- le repas se déplace, annuler, la fin
room-move-how = Repas : { $dinner }. Pour le déplacer : « /move 18 h » ou « /move +45 min ».
room-move-past = { $when }, c’est déjà passé, on est { $now }. Le repas reste { $dinner }.
room-move-unread = Je ne lis pas d’heure dans « { $text } ». Essaie « /move 18 h » ou « /move +45 min ». Le repas reste { $dinner }.
room-move-clash = { $when }, ça ne marche pas. Le repas reste où il était.
room-moved = Le repas est maintenant <b>{ $when }</b>.
room-move-already = Le repas est déjà { $when }.
room-move-already-by = { $name } l’a fait avant : le repas est { $when }.
# Quelqu'un arrive en retard.
room-late = Repas { $when } au lieu de { $dinner } ?
room-wanted = { $name } aimerait passer à table { $when } au lieu de { $dinner }.
room-late-on = La volaille cuit déjà et sort comme prévu.
room-late-kept = Le repas reste <b>{ $when }</b>.
room-late-host = C’est à { $name } ou à un admin de choisir.
room-late-stands = { $stands ->
    [off] La cuisson est déjà finie :
   *[done] C’est cuit, sors la volaille :
} garde-la au chaud, couverte, au four au minimum, et le thermomètre doit continuer à marquer { $hot }. Plus froid, il faut manger ou mettre au frigo avant { $until }. Ou découpe maintenant, refroidis dans des plats peu profonds, et réchauffe à { $target }.
room-late-how = De combien ? Dis « repas une heure plus tard », et je regarde ce que ça change.
room-button-late-keep = On garde l’heure
room-misread = J’enlève { $parts } ?
room-undone = Annulé : { $what }.
room-undone-by = Annulé : { $what } ({ $name }, { $at }).
room-undone-what = { $change ->
    [back-on] la volaille remise en cuisson
    [unmarked] la correction de « { $step } »
    [done] « { $step } » fait
    [skipped] « { $step } » laissé de côté
    [take] « { $step } » pris
    [drop] « { $step } » rendu
    [moved] la nouvelle heure du repas
    [dish] le changement de plats
    [logged] la dernière mesure
   *[other] le changement de plan
}
room-undone-dish = { $how ->
    [added] l’ajout de « { $name } »
    [gone] le retrait de « { $name } »
   *[changed] le changement de « { $name } »
}
room-undo-nothing = Rien à annuler.
room-undo-stale = Il s’est passé quelque chose depuis. /undo annule d’abord le plus récent.
room-undo-gone = C’est déjà annulé.
room-undo-theirs = C’est { $name } qui a fait le dernier changement : { $what }. Il faut être cette personne, l’hôte ou un admin pour l’annuler.
# Une marque qui n’est plus un faux mouvement : seule la marque peut partir.
room-undo-sure = « { $step } » a été noté comme fait, { $at }. C’était une erreur ? Seule la note s’efface ; ce qui est fait à la volaille reste fait.
room-undo-sure-by = { $name } a noté « { $step } » comme fait, { $at }. C’était une erreur ? Seule la note s’efface ; ce qui est fait à la volaille reste fait.
room-button-undo-sure = Erreur, annuler
room-undo-rests = « { $step } » reste : ensuite il y a eu « { $later } », { $at }. Ça ne s’annule plus.
room-undo-rests-read = « { $step } » reste : la volaille a été mesurée après, { $at }. Ça ne s’annule plus.
room-undo-late = Je ne peux plus annuler ça. Le plan reste tel quel.
room-stop-sure = Arrêter le plan ({ $dinner }) ? Je n’appellerais plus.
room-stopped = Terminé. Je n’appelle plus.
room-stopped-calendar = S’il est dans ton agenda, /export l’en retire.
room-stopped-back = Pendant une heure, tu peux dire « ça tient ».
room-stopped-told = Le repas ({ $dinner }) est annulé. Tu n’as rien à faire.
room-back-again = Ça tient : repas <b>{ $dinner }</b>.
room-kept-going = Bien, rien ne change.
room-eve = Demain :
room-eve-job = { $when } · { $what }
room-eve-early = C’est tôt : mets aussi un réveil pour { $at }, au cas où le téléphone serait en silencieux.
room-forget-sure-me = Je garde { $things }. J’efface tout ? Dans les groupes, ce que tu as fait reste fait, sans ton nom.
room-forget-sure-group = Je garde { $things }. J’efface tout, pour tout le monde ? Ce que je garde de chacun reste, jusqu’à ce qu’il me le demande en privé.
room-kept-name = ton nom
room-kept-settings = tes réglages
room-kept-salt = ton sel
room-kept-cooker = où tu cuis
room-kept-fridge = ton frigo : { -shelves } et température
room-kept-learned = ce que tes cuissons m’ont appris
room-kept-notes = des notes sur les repas passés
room-kept-plan = ce que tu prévois ici avec moi
room-kept-question = ta dernière question
room-kept-groups = tes tâches, mesures et liens dans les groupes
room-kept-title = le nom et les réglages de cette discussion
room-kept-members = qui en fait partie
room-kept-jobs = le plan, ses tâches et qui s’en charge
room-kept-readings = les mesures
room-kept-said = des plans à moitié dits et des questions
room-kept-links = des liens vers la discussion privée
room-forgotten = Effacé.

# ---- mesures
room-log-how = Dis-moi ce que marquent les thermomètres : « poitrine 53, cuisse 61, air 168 ». L’heure peut suivre : « à 14:05 ».
room-frozen-on = Laisse-la au chaud : il faut jusqu’à moitié plus de temps.{ $smoker ->
    [yes] {" "}Un fumoir est trop lent pour ça : passe-la dans un four à { $oven }.
   *[no] {""}
}{" "}Retire les abats dès qu’ils se détachent, et ne la sors qu’à { $target } partout.
room-log-noted = Noté : { $parts }.
room-log-spot = { $spot ->
    [breast] poitrine { $temperature }
    [thigh] cuisse { $temperature }
    [wing] aile { $temperature }
    [stuffing] farce { $temperature }
    [oven] four { $temperature }
   *[pit] air { $temperature }
}
room-log-on-unsaid = Personne ne m’a dit que la volaille cuit. C’est le cas ?
room-log-both = { $target } dans les deux. Vérifie aussi le plus profond de l’aile ; si c’est bon là aussi, tu peux sortir la volaille.
room-log-all = { $target } dans la poitrine, la cuisse et l’aile : tu peux sortir la volaille.
room-log-too-long = { $target } maintenant, mais elle est restée plus de deux heures sans chaleur : la cuisson n’y change rien. Je ne la servirais pas.
room-log-thigh-behind = La poitrine y est, la cuisse non. Ça reste jusqu’à ce que la cuisse marque { $target } aussi.
room-log-wing-behind = Poitrine et cuisse y sont peut-être, l’aile non. Ça reste jusqu’à ce que le plus profond de l’aile marque { $target } aussi.
room-log-breast-behind = La cuisse y est, la poitrine non. Ça reste jusqu’à ce que la poitrine marque { $target } aussi.
room-log-stuffing-behind = Poitrine et cuisse y sont, la farce non. Ça reste jusqu’à ce que la farce marque { $target } aussi.
room-log-stuffing-unread = Poitrine et cuisse y sont. Maintenant le milieu de la farce : la volaille reste à cuire jusqu’à ce qu’il affiche { $target } aussi.
room-log-asked-not = Non : { $spot ->
    [breast] le blanc
    [thigh] la cuisse
    [wing] l’aile
   *[stuffing] la farce
} doit arriver à { $target }.
room-log-one-spot = { $target } à un endroit. Vérifie les autres avant de t’y fier : le plus épais de la poitrine, le plus profond de la cuisse et de l’aile.
room-log-doubt = { $spot ->
    [breast] Poitrine
    [thigh] Cuisse
    [wing] Aile
    [stuffing] Farce
    [oven] Four
   *[pit] Air
} à { $given } ? J’attends plutôt { $low } à { $high }, alors je ne l’ai pas noté.{ $celsius ->
    [yes] {" "}Si c’étaient des °C, écris-le avec un C : « 58C ».
   *[no] {" "}Regarde encore et renvoie.
}
room-log-fell = { $spot ->
    [breast] Poitrine
    [thigh] Cuisse
    [wing] Aile
    [stuffing] Farce
    [oven] Four
   *[pit] Air
} à { $given } ? C’était { $last } avant, et une viande qui cuit ne refroidit pas comme ça. Il manque un chiffre, ou la sonde a bougé ? Je ne l’ai pas noté ; renvoie ce que ça marque maintenant.
room-when = Fin de cuisson entre { $from } et { $to }. Repas { $dinner }.
room-when-off = Sortie du chaud depuis { $since }.{ $eaten ->
    [no] {" "}Repas { $dinner }.
   *[yes] {""}
}
room-when-dinner = Rien ne cuit pour l’instant. Repas { $dinner }.

# ---- réglages
room-settings-yours = <b>Tes réglages</b>
room-settings-rooms = <b>Réglages de cette discussion</b>
room-settings-language = Langue : { $language }
room-settings-units = Unités : { $chosen }
room-settings-spoons = Cuillères : { $spoons }
room-settings-zone = Fuseau horaire : { $zone } (maintenant { $now })
room-settings-zone-unset = Fuseau horaire : pas encore choisi
room-settings-quiet = Heures calmes : { $from } à { $to }
room-settings-quiet-none = Heures calmes : aucune
room-settings-quiet-unread = Des heures calmes comme « silence de 22:00 à 7:00 », ou « silence jamais ».
room-settings-button-language = Langue
room-settings-button-units = Unités
room-settings-button-spoons = Cuillères
room-settings-button-zone = Fuseau horaire
room-settings-button-quiet = Heures calmes
room-settings-pick-language = Quelle langue ?
room-settings-pick-units = Quelles unités ?
room-settings-pick-spoons = Des cuillères et tasses d’où ?
room-settings-salt = Ton sel : { $weighs } g la { -tsp }
room-settings-salt-none = Ton sel : pas encore dit
room-settings-cooker = Ta cuisson : { $cooker }
room-settings-cooker-none = Ta cuisson : je demande à chaque fois
room-settings-fridge = Ton frigo : { $at }
room-settings-fridge-none = Ton frigo : pas mesuré
room-settings-button-salt = Mon sel
room-settings-button-cooker = Ma cuisson
room-settings-button-fridge = Mon frigo
room-settings-pick-salt = Dis-moi ce qu’il y a sur le paquet : « mon sel : 1/4 { -tsp } fait 0,7 g ». Ensuite, je compte avec.
room-settings-salt-drop = Oublie mon sel
room-settings-pick-cooker = Tu cuis une volaille dans quoi, d’habitude ? Un plan qui ne dit rien d’autre comptera avec.
room-settings-cooker-any = Demander à chaque fois
room-settings-pick-fridge = Un thermomètre dans ton frigo, il marque combien ?
room-settings-fridge-unknown = Pas mesuré
room-settings-shelves = { -shelves(form: "Title") } libres pour un repas : { $count }
room-settings-shelves-none = { -shelves(form: "Title") } libres pour un repas : pas indiqué
room-settings-button-shelves = { -shelves(form: "Title") }
room-settings-pick-shelves = Combien de { -shelves } de ton frigo sont libres pour un repas ? La volaille en prend une, un plat une demie, et je dis quand ça ne tient pas.
room-settings-shelves-unknown = Ne pas vérifier
room-settings-pick-zone = Où est la cuisine ? Tape une ville ou un fuseau horaire, « Lyon » ou « Europe/Paris », ou envoie-moi ta position. La position elle-même n’est pas gardée.
room-settings-pick-zone-group = Où est la cuisine ? Dis-le avec « /settings Lyon » ; un fuseau comme « Europe/Paris » va aussi.
room-settings-pick-quiet = Quand est-ce que je te laisse tranquille ? Ce que tu as pris toi-même, et la sécurité des aliments, passe quand même.
# Chaque langue dans ses propres mots.
room-language-en = English
room-language-es = Español
room-language-fr = Français
room-language-de = Deutsch
room-language-pt = Português (Brasil)
room-language-it = Italiano
room-units-us = livres, °F
room-units-metric = kilos, °C
room-spoons-us = États-Unis (4,93 / 14,8 / 237 ml)
room-spoons-metric = métriques (5 / 15 / 250 ml)
room-spoons-uk = Royaume-Uni (5 / 15 ml)
room-spoons-australia = Australie (5 / 20 / 250 ml)
room-quiet-span = { $from } à { $to }
room-quiet-none = Aucune
room-zone-choice = { $zone }
room-zone-which = Il y en a plusieurs. Laquelle ?
room-zone-unknown = Je ne connais pas d’endroit « { $text } ». Une plus grande ville pas loin, ou un fuseau comme « Europe/Paris » ?
room-zone-nowhere = Là-bas, je ne connais pas l’heure. Écris-moi plutôt une ville ?
room-zone-set = Va pour { $zone } : là-bas, on est maintenant { $now }.

# ---- saler
room-dose-total = { $grams } en tout, soit { $spoons } de { $salt ->
    [own] ton sel
    [table] sel fin
   *[flake] sel casher en flocons
}.
room-dose-places = { $places }.
room-dose-place = { $spoons } { $place ->
    [cavity] dans la carcasse
    [bone-side] côté os
    [breast] { $count ->
        [one] sous la peau de la poitrine
       *[other] sous la peau de chaque côté de la poitrine
    }
    [thigh] sous la peau de chaque cuisse
    [drumstick] sous la peau de chaque pilon
   *[skin] sur la peau
}
room-dose-skin = Pour la peau, mélange le sel avec autant de poivre et autant de { -baking-powder }.
room-dose-none = Pas de sel ici : les { $percent } % de saumure ajoutée à l’emballage suffisent.
room-dose-presalted = Pas de sel pour celle-ci : tu as dit qu’elle est déjà salée.
room-dose-light = Main légère : il y a déjà { $percent } % de saumure ajoutée dedans.
room-salted-by = { $name } l’a déjà salée, { $at }. Si elle a vraiment du sel deux fois :
room-salted = Elle est déjà salée, depuis { $at }.
room-salt-then = On sale { $salt }, puis au frigo sans couvrir jusqu’à la cuisson, { $on }.
room-salt-straight = On sale { $salt }, hors de l’eau et séchée, puis tout de suite à la cuisson, { $on }.
room-salt-no-rest = Ce plan n’a pas de repos au sel : sale juste avant la cuisson, { $on }.
room-button-sources = Ça vient d’où ?
room-question-gone = Cette question date trop. Tu la reposes ?
room-sources = Les chiffres viennent de :
room-too-long = Ça fait { $length } caractères, plus que je ne peux lire d’un coup (le maximum est { $most }). Une ou deux phrases suffisent.
room-proposal-night = La nuit : { $jobs }.
room-pack-warm = Sortie à { $off }, donc pas encore froide : mangée ou au frigo avant { $by }, en glacière aussi, sauf si elle reste à { $hot } ou plus. Un doute ? À jeter.
room-chill-late = C’était trop tard : la limite était { $by }. Ce qui est resté hors du frigo plus de deux heures part à la poubelle, même si ça a l’air bon.
# $jobs: what was planned for it and is called for no more.
room-chill-ended = Donc plus besoin de : { $jobs }. C’était à temps, finalement ? Annuler.
room-limit-chill = Les deux heures sont passées. Ce qui est encore sorti et n’est pas resté à 60 °C ou plus part à la poubelle.
room-limit-chill-hot = Par cette chaleur, l’heure est passée. Ce qui est encore sorti et n’est pas resté à 60 °C ou plus part à la poubelle.
# What is said of how long it has been out, and the clock kept: the stricter. $since: from when it counts; $off: when it was told to be off.
room-out-clock = Je compte depuis { $since }{ $from ->
    [read] , la dernière mesure chaude
    [heat] , la sortie de cuisson
   *[other] {""}
} : mangé ou au frigo avant { $by }.
room-out-clock-over = Je compte depuis { $since }{ $from ->
    [read] , la dernière mesure chaude
    [heat] , la sortie de cuisson
   *[other] {""}
} : le délai est passé depuis { $by }. Ce qui n’est pas resté à { $hot } ou plus se jette.
room-out-earlier = Dehors depuis { $since }, c’est avant { $off }, la sortie de cuisson que j’avais notée ; je compte donc depuis { $since } : mangé ou au frigo avant { $by }.
room-out-earlier-over = Ça se jette : dehors depuis { $since }, avant { $off }, la sortie de cuisson que j’avais notée. Le délai est passé depuis { $by }.
room-never-off = Personne ne m’a dit quand la volaille est sortie de cuisson. Sortie { $when }, comme prévu, elle est mangée ou au frigo avant { $by } ; sortie plus tôt, avant. Sauf si elle est restée à { $hot } ou plus.
room-never-off-over = Personne ne m’a dit quand la volaille est sortie de cuisson. Sortie { $when }, comme prévu, le délai est passé depuis { $by } : garde seulement ce qui était déjà au frigo ou resté à { $hot } ou plus. Le reste se jette.
room-never-off-unread = Et personne n’a mesuré { $target } à la poitrine, à la cuisse et à l’aile : sans ça, la manger n’est pas sûr.
room-raw-eve = La volaille fraîche doit être au feu ou au congélateur avant { $until }. Repas : { $dinner }.
room-raw-over = Le temps de la volaille fraîche au frigo est écoulé : au feu ou au congélateur maintenant. Après, je ne peux plus la dire sûre.
room-hello = Bonjour. Dis-moi la volaille, le jour et combien vous serez : « dinde congelée de 6,5 kg, repas dimanche à 17 h, 10 personnes ». Ou pose-moi une question.
room-amended = D’accord : { $known }.
room-unbought = Pas encore achetée, compris. Courses maintenant { $when }, et le reste suit.
room-unthawed = Pas encore en décongélation, compris. Début maintenant { $when }, et le reste suit.
room-whether-bought = Personne ne l’a dit : la volaille est-elle achetée ?
room-unlit = Alors allume maintenant, à { $setting } : la volaille entre vers { $when }, une fois que c’est chaud, et attend au frigo d’ici là.
room-oven-free = Le four est libre une fois la volaille sortie, vers { $off }, jusqu’à { $carve }. C’est { $host } qui décide.
room-whether-thawing = Personne ne l’a dit : la volaille décongèle-t-elle depuis { $since } ?
room-swap-keeps = Fraîche, elle se garde deux jours au plus : achète-la { $when }, pas avant, sauf si la date sur l’emballage le permet. Déjà à la maison ? Dis-le-moi.
room-button-have-it = On l’a déjà
room-button-not-yet = Pas encore
room-amend-told = D’après { $name } : { $change }. Aussi pour le plan, { $host } ?
room-button-amend = Changer le plan
room-not-done = Bon à savoir. Reste à faire : { $what }.
room-stays-on = D’accord : la cuisson continue.
room-water-not = L’eau est encore froide, { $cold } ou moins ? Change-la maintenant et continue. Plus tiède que ça pendant plus de { $limit } : jette la volaille.
room-thaw-early = C’est tôt : dans l’eau froide, elle est décongelée vers { $thawed } et va à la cuisson { $on }. Décongelée : hors de l’eau, au frigo à { $cold } ou moins. Ou arrête maintenant : au frigo, « Annuler », et à l’eau à partir de { $water }.
room-thaw-water = Dans l’eau froide, elle est décongelée vers { $thawed } : change l’eau toutes les { $every }. Puis hors de l’eau, au frigo à { $cold } ou moins, et à la cuisson { $on }. Plutôt comme prévu ? Au frigo maintenant, et « Annuler ».
room-thaw-long = Elle est décongelée depuis { $thawed }. L’eau est encore à { $cold } ou moins ? Au frigo maintenant. Plus tiède pendant plus de { $limit } : jette la volaille.
room-thaw-out = Elle est décongelée : hors de l’eau et au frigo dans un plat, à { $cold } ou moins. Plus d’eau. Encore de la glace dedans ? Change l’eau et continue. Elle va à la cuisson { $on }.
room-ok = Bien.
room-yes-what = Oui à quoi ? Je n’ai rien changé. Redis-le en entier : « dîner à 17 h ».
room-fine = D’accord.
room-unsaid = Personne ne l’a encore dit.
room-not-yet = D’accord, pas encore.
room-when-step = { $what } : { $when }.
room-when-none = Il n’y a pas de « { $what } » dans ce plan.
room-hour-fits = { $what } : { $asked } convient, comme toute heure entre { $from } et { $to }. Dis-moi quand c’est fait.
room-hour-early = { $what } : { $asked }, c’est trop tôt. À partir de { $from }, prévu { $planned }.
room-hour-late = { $what } : { $asked }, c’est trop tard. Au plus tard { $to }, prévu { $planned }.
room-hour-only = { $what } : dans ce plan, seul { $planned } convient.
room-who-has = { $what }, { $when } : { $name }.
room-who-nobody = Personne ne l’a encore : { $what }, { $when }.
room-day-free = Plus rien à faire ce jour-là.
room-ice = Bien vu. Elle reste au frigo, et l’eau froide finit le travail à partir de { $when } ; puis cuite aussitôt.
room-ice-now = Bien vu. Alors on finit maintenant à l’eau froide, dans un sac bien fermé ; puis cuite aussitôt.
room-ice-early = C’est normal. Laisse-la au frigo et regarde à nouveau { $when } : s’il reste de la glace, l’eau froide finit à temps.
room-ice-roast = Bien vu. L’eau prendrait trop de temps : { $when }, elle va au four telle quelle, sans farce.
room-ice-roast-now = Bien vu. L’eau prendrait trop de temps : au four maintenant, telle quelle, sans farce.
room-ice-done = Jusqu’à moitié plus longtemps ; abats dehors dès qu’ils se détachent ; { $target } partout.
room-never-fridge = Rien de perdu : au frigo tout de suite, sur un plateau.
room-never-both = Au frigo tout de suite, sur un plateau ; à partir de { $when }, l’eau froide finit le travail.
room-never-water = Alors ce sera l’eau froide, à partir de { $when }, dans un sac étanche ; puis cuisson aussitôt.
room-never-water-now = Alors ce sera l’eau froide, dès maintenant, dans un sac étanche ; puis cuisson aussitôt.
room-never-roast = Plus le temps de décongeler : { $when }, au four congelée, sans farce.
room-never-roast-now = Plus le temps de décongeler : au four congelée maintenant, sans farce.
# $when: the next job with it.
room-thawed = Décongelée : pas de glace à l’intérieur, les pattes bougent ? Alors elle reste au frigo jusqu’à { $when }.
# Décongelée dans l’eau : à cuire tout de suite. $when : son heure au feu ; far : des heures plus tard, ou demain.
room-thawed-water = Décongelée dans l’eau : plus de glace dedans, les pattes bougent ? Le mieux est de la cuire tout de suite. Sinon hors de l’eau, au frigo à { $cold } ou moins, et à la cuisson { $when } au plus tard.
room-thawed-water-far = Décongelée dans l’eau, elle se cuit tout de suite et n’attend pas au frigo jusqu’à { $when }. Cuis-la maintenant ; découpée et mise au frais, elle se réchauffe à { $target } pour le repas.
room-stuffing-out = Noté : la farce finit à part, jusqu’à { $target } au milieu. La volaille, elle, sort à { $target } à la poitrine, à la cuisse et à l’aile.
room-thawed-now = Décongelée : pas de glace à l’intérieur, les pattes bougent ? Alors on continue.
room-log-when = C’était quand ? Dis-le avec l’heure, comme « blanc 35 à 13 h 30 ». Sans heure, je le prendrais pour maintenant.
room-heat-set = Noté : { $setting } à partir de maintenant.
room-heat-moved = Noté : à partir de maintenant { $cooker ->
    [smoker] au fumoir
    [fan-oven] au four { -fan }
   *[oven] au four
 } à { $setting }.
room-leftovers-until = Les tiens : mangés ou congelés avant { $when }, s’ils ont été mis au frigo à temps.
room-leftovers-over = Les tiens sont trop vieux ({ $when }) : jette ce qui n’est pas congelé.
room-leftovers-if = Seulement ce qui était au frigo dans les deux heures ; le reste se jette.
room-ok-due = Bien. Dis « c’est fait » quand ce sera terminé : { $what }.
room-ok-which = Laquelle ? Touche-la, et c’est fait.
room-welcome = Avec plaisir.
room-amend-clash = Comme ça, ça ne tient pas. Le plan reste tel quel.
room-undone-dinner = Le repas est de nouveau { $when }.
room-already-you = Tu t’en es déjà occupé, { $at }.
room-proposal-carry = Cuite à la maison la veille, emportée froide, réchauffée là-bas. Si tu la cuis là-bas, dis « cuire là-bas ».
room-proposal-hot = Emportée chaude : entière et emballée, mangée dans les { $most } après la sortie du feu ({ $hour } s’il fait plus de { $air } dehors). Plus longtemps seulement tant qu’elle affiche { $hot } ou plus. Plutôt froide ? Dis « on l’apporte froide ».
room-proposal-or-hot = Plutôt chaude ? Dis « on l’apporte chaude ».
room-hour-there = Cette heure est maintenant celle de là-bas : { $there }. Si c’était l’heure d’ici, dis « repas { $home } ».
room-proposal-not-hot = Cuite la veille, elle ne peut pas voyager chaude. Pour ça, dis « on l’apporte chaude » : elle cuit alors le jour même.

# ---- /export : une ligne avec chaque fichier.
room-export-calendar = Le plan pour ton agenda. Il ne suit pas les changements : redemande-le et les nouvelles heures remplacent les anciennes.
room-export-calendar-ended = Ouvre-le dans ton agenda : les tâches du plan arrêté s’en vont.
room-export-page = Une page pour la porte du frigo. Imprime-la, coche au fur et à mesure.
room-export-readings = Les températures, pour un tableur.
room-export-everything = Tout ce que je garde sur cette discussion.
room-shift-more = { $count ->
    [one] … et { $count } autre suit
   *[other] … et { $count } autres suivent
}
room-pull-sure = { $spot ->
    [thigh] La cuisse
    [wing] L’aile
    [stuffing] La farce
   *[breast] La poitrine
} marquait { $read } à { $at }, et ça sort à { $target }. Elle y est maintenant ?
room-carve-under = { $spot ->
    [thigh] La cuisse
    [wing] L’aile
    [stuffing] La farce
   *[breast] La poitrine
} marquait { $read } à { $at }, et personne n’a rien dit depuis. En dessous de { $target }, ça retourne à cuire avant que quelqu’un en mange : mesure d’abord.
room-no-heat = Pas de chaleur depuis { $since } ? Dis-moi quand elle revient, ou où est la volaille maintenant. Sous { $hot } à { $until } : à jeter.
room-no-heat-over = Deux heures sans chaleur, depuis { $since } : ce qui affiche moins de { $hot } se jette. Plus chaude partout, elle peut continuer jusqu’à { $target }.
room-eat-cooking = Pas encore : elle n’est sûre qu’à { $target } à la poitrine, à la cuisse et à l’aile.
room-call-carve-unsaid = Elle est sortie ? Personne ne me l’a dit. On ne la sort qu’à { $target } à la poitrine, à la cuisse et à l’aile ; en dessous, elle continue.
room-back-on = De retour en cuisson. On ne la sort qu’à { $target } au plus épais de la poitrine, au creux de la cuisse et à l’aile : mesure de nouveau à { $look }.
room-carve-unread = Elle affichait { $target } à la poitrine, à la cuisse et à l’aile ? Personne ne me l’a dit. Si tu ne sais pas, mesure maintenant : en dessous, elle retourne cuire avant qu’on mange.
room-button-reads-now = Oui, elle y est
room-button-stays-on = Ça reste à cuire
room-done-which = Sortie de cuisson, ou juste regardée ? Elle ne sort qu’à { $target } à la poitrine, à la cuisse et à l’aile.
room-button-looked = Juste regardée
room-hold = La découpe est à { $carve }. Ce sera gardé à { $hot } ou plus jusque-là, couvert, un thermomètre dedans ? Sinon, il faut que ce soit découpé, mangé et au frigo avant { $by }.
room-hold-packed = L’emballage est à { $pack }. Elle restera jusque-là à { $hot } ou plus, couverte, thermomètre dedans ? Sinon, mangée et au frigo avant { $by }.
room-report-early = « { $what } » est prévu { $when }. C’est vraiment déjà fait ?
room-aside-ask = C’est pour la volaille ? « { $what } » est à faire.
room-two-thermometers = Fie-toi au plus bas, { $low }. Vérifie les deux dans de l’eau glacée : plus de glace que d’eau, remuée, ils doivent afficher { $ice }. Et dis-moi l’endroit : poitrine, cuisse ou aile.
room-wandering = Pour l’instant, c’est la plus basse qui compte : { $low }. Repique au plus épais, loin de l’os, attends que ça se fixe et dis-moi celle-là.
room-digits-apart = C’est { $parts } ? Pas encore compté.
room-oven-cool = Trop froid pour une volaille : { $limit } ou plus tout de suite, ou un autre four. D’ici là c’est plus long que prévu ; donne-moi poitrine et cuisse, et je te dis combien.
room-foil-off = Oui, posé sans serrer, pendant le repos : au moins { $least }, et pas plus que jusqu’à la découpe. Serré, il ramollit la peau.
room-fridge-bird = La volaille dedans : décongelée et au-dessus de { $cold } plus de { $limit }, poubelle ; la cuisson n’y change rien. Mesure maintenant. Encore dure de glace, ou { $cold } ou moins à cœur : tout de suite dans un endroit plus froid.
room-button-held = Gardé chaud
# $off: when it was last known to be hot; $by: two hours later.
room-held = Bien : couverte, le thermomètre dedans. Dis-moi ce qu’affichent poitrine et cuisse : à { $hot } ou plus, les deux heures comptent de là. Sans mesure, elles comptent depuis { $off }, jusqu’à { $by }.
room-hold-broken = { $at }, c’est moins de { $hot } : ce n’est pas gardé au chaud. Découpé, mangé et au frigo avant { $by }, deux heures après { $from ->
    [read] la dernière mesure chaude
   *[heat] la cuisson
}.
room-own-salt-kept = Je compte avec à partir de maintenant.
