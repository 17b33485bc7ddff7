# Ce que seul le côté Telegram dit.

telegram-sorry = Ça a mal tourné de mon côté et je ne l’ai pas enregistré. Redis-le autrement, s’il te plaît.
telegram-sorry-bell = Un de mes rappels a mal tourné. Jette un œil à /board.
telegram-unreachable = { $person }, je ne peux pas t’écrire en privé, alors voilà :
telegram-share-place = Envoyer ma position

telegram-inline-salt = 2 c. à soupe de sel fin en sel casher en flocons
telegram-inline-bird = sel pour une dinde de 5,5 kg
telegram-inline-safe = dinde sortie depuis 3 heures, c’est bon ?
telegram-inline-unread = Demande-moi en privé

telegram-no-token = Il manque le jeton du bot.
telegram-no-token-do = Mets dans TELOXIDE_TOKEN celui que tu as reçu pour ton bot.
telegram-bad-token = Telegram refuse le jeton du bot.
telegram-bad-token-do = Vérifie TELOXIDE_TOKEN, ou fais-en faire un autre.
telegram-other-bot = Ces données sont celles d’un autre bot.
telegram-other-bot-do = Démarre avec le jeton de ce bot, ou choisis un dossier vide avec --data.
telegram-conflict = Un autre programme tourne déjà comme ce bot.
telegram-conflict-do = Arrête l’un des deux : ils se prendraient leurs messages.
telegram-bad-url = TELOXIDE_API_URL n’est pas une adresse web : { $url }.
telegram-bad-url-do = Écris-la comme http://localhost:8081, ou ne la définis pas.
telegram-no-api = Il n’y a pas d’API de bot à { $url } : cette page n’existe pas.
telegram-no-api-do = Vérifie TELOXIDE_API_URL ; sans elle, c’est celle de Telegram.
telegram-bad-webhook = Telegram ne livre pas à { $url }.
telegram-bad-webhook-do = Prends une adresse https publique sur le port 443, 80, 88 ou 8443.
telegram-listen = Impossible d’écouter sur { $address } : { $reason }.
telegram-listen-do = Choisis une autre adresse avec --listen, ou arrête ce qui écoute là.
telegram-system = Le système n’a donné ni fils d’exécution, ni signaux, ni réseau.
telegram-system-do = Relance ; avec RUST_LOG=carvetime=debug il en dit plus.

telegram-command-plan = Prévoir la volaille, ou voir le plan
telegram-command-board = Ce qui vient, qui s’en charge, quand on mange
telegram-command-salt = Combien de sel, et un sel pour un autre
telegram-command-ask = Une question rapide de cuisine
telegram-command-log = Noter des températures
telegram-command-when = Quand ce sera cuit
telegram-command-move = Déplacer le repas
telegram-command-take = Prendre une tâche
telegram-command-drop = Rendre une tâche
telegram-command-undo = Annuler le dernier changement
telegram-command-export = Agenda, mesures, tout
telegram-command-stop = Arrêter le plan
telegram-command-forget = Effacer ce qui est gardé ici
telegram-command-settings = Langue, unités, fuseau horaire
telegram-command-help = Comment ça marche

telegram-description = Parle-moi de la volaille et du repas : poids, fraîche ou congelée, quand, combien de personnes. Je calcule décongélation, salage, cuisson et repos, je préviens qui s’en charge, et je suis ton thermomètre jusqu’à la découpe. En privé ou avec toute la famille dans un groupe.
telegram-short-description = Amène une volaille entière à table à l’heure, en solo ou avec toute la famille.
