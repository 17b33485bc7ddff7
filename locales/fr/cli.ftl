### Le programme dans un terminal : aide, erreurs, marques autour des messages.

cli-script-line = Ligne { $line } : { $reason }
cli-script-unknown = « { $given } » n’est ni un réglage (zone, locale, room) ni une heure. Commence par une heure comme 2027-11-25 17:00.
cli-script-room = « { $given } » n’est pas une sorte de salon. Écris "room group" ou "room private".
cli-script-late = « { $given } » arrive trop tard ou deux fois. Mets chaque réglage une fois, au-dessus de la première heure.
cli-script-time = « { $given } » n’est pas une heure. Écris 2027-11-25 17:00, avec les secondes si tu veux.
cli-script-earlier = « { $given } » est avant la ligne d’avant. Mets les lignes dans l’ordre des heures.
cli-script-act = « { $given } » ne dit rien et ne touche rien. Écris "Rosa: texte" ou "Rosa > Bouton".
cli-script-empty = { $given } ne dit rien et ne touche rien. Ajoute le texte ou le nom du bouton.
cli-script-crowd = Dans un salon privé il n’y a qu’une personne : { $given } ne peut pas y parler. Écris "room group".
cli-no-zone = « { $given } » n’est pas un fuseau horaire. Prends un nom comme Europe/Paris.
cli-no-locale = « { $given } » n’est pas un code de langue. Prends-en un comme fr-FR ou en-US.

# Au-dessus des lignes d'une répétition : qui parle, et à qui. $name est une personne.
cli-said-to-all = carvetime
cli-said-to-one = carvetime à { $name }
cli-said-edit-to-all = carvetime (modifié)
cli-said-edit-to-one = carvetime à { $name } (modifié)
cli-said-notice = carvetime à { $name } (avis)
cli-no-button = Il n’y a pas de bouton « { $label } ». Il y a : { $there }.
cli-no-buttons = Il n’y a pas de bouton « { $label } », ni aucun autre.
cli-standstill = Les rappels n’en finissaient pas. Merci de le signaler avec ce script.

# Devant un message dans le terminal.
cli-only-for = (pour { $name })
cli-changed = (modifié)
cli-you = Toi
cli-hello = Parle-moi de la volaille et du repas, ou tape /help. #1 appuie sur un bouton, "@Rosa bonjour" parle comme Rosa, Ctrl-D termine.
cli-nothing-to-press = Il n’y a encore aucun bouton.
cli-press = #{ $number } appuie sur le bouton.
cli-no-number = Aucun bouton n’a ce numéro. Il y a : { $there }
cli-file-kept = Enregistré : { $path }
cli-file-lost = Impossible d’enregistrer { $path }. Vérifie le disque et redemande.

cli-file-failed = { $path } : { $what }
cli-file-failed-do = Vérifie le fichier et son dossier, puis réessaie.
cli-failed = Échec : { $what }
cli-failed-do = Réessaie ; avec RUST_LOG=debug il en dit plus.
cli-backed-up = { $rows ->
    [one] { $rows } ligne écrite dans { $path }.
   *[other] { $rows } lignes écrites dans { $path }.
}
cli-restored = { $rows ->
    [one] { $rows } ligne reprise de { $path }.
   *[other] { $rows } lignes reprises de { $path }.
}
cli-no-data = Il n’y a pas d’endroit où garder des données ici. Indique un dossier avec --data.

# Aide : ce que fait le programme et chaque commande, sur moins d'une ligne de terminal.
cli-about-carvetime = Prévoit une volaille entière pour une grande table, et tient le plan pendant qu’elle cuit.
cli-about-chat = Lui parler dans ce terminal ; sans compte, sans réseau
cli-about-serve = Tourner comme bot Telegram ; le jeton vient de TELOXIDE_TOKEN
cli-about-ask = Répondre à une question et s’arrêter
cli-about-rehearse = Jouer le script d’une cuisson sur une horloge virtuelle et afficher la conversation
cli-about-forecast = Rejouer un relevé de températures et afficher la prévision à chaque mesure
cli-about-backup = Écrire tout ce qui est gardé dans un seul fichier
cli-about-restore = Remettre une sauvegarde dans un dossier de données vide
cli-help-data = Dossier où tout est gardé
cli-help-locale = Langue, unités et heure, par exemple fr-FR ou en-US
cli-help-zone = Fuseau horaire de la cuisine, par exemple Europe/Paris
cli-help-json = JSON au lieu de texte
cli-help-text = La question, avec des mots simples
cli-help-file = Le fichier
cli-help-bird = Sorte de volaille
cli-help-mass = Poids à l’achat, par exemple "6,4 kg"
cli-help-form = Comment elle est posée ; breast est une poitrine de dinde seule
cli-help-stuffed = Elle est farcie
cli-help-cooker = Ce qui donne la chaleur
cli-help-pit = Le réglage de la chaleur, par exemple "163 C"
cli-help-start = Température de la volaille au début de la cuisson, par exemple "4 C"
cli-help-breast = Cible de la poitrine
cli-help-thigh = Cible de la cuisse
cli-help-webhook = Telegram livre à cette adresse https au lieu d’être interrogé ; demande --listen
cli-help-listen = Où écouter pour cela, par exemple 127.0.0.1:8080, derrière un serveur https
cli-help-health = Où l'on peut interroger /health et /metrics pour surveiller, par exemple 127.0.0.1:9090 ; pas pour le réseau ouvert
