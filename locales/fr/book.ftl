# Ce qui peut arriver aux données sur le disque. Par paires : ce qui s'est passé, que faire.
book-locked = Un autre Carvetime utilise { $path }.
book-locked-do = Arrête-le d’abord, ou choisis un autre dossier avec --data.
book-disk = Impossible d’utiliser { $path } : { $reason }.
book-disk-do = Vérifie la place sur le disque et les droits du dossier, puis relance.
book-damaged = Les données enregistrées sont abîmées ({ $detail }).
book-damaged-do = Mets le dossier de données de côté, garde-le, et restaure une sauvegarde avec : carvetime restore FICHIER
book-newer = Les données enregistrées viennent d’un Carvetime plus récent.
book-newer-do = Utilise cette version ou une plus récente.
book-file-exists = { $path } existe déjà.
book-file-exists-do = Choisis un autre nom ; rien n’a été écrasé.
book-not-empty = { $path } contient déjà des données.
book-not-empty-do = Choisis un dossier vide avec --data ; rien n’a changé.
book-bad-backup = { $path } n’est pas une sauvegarde complète : la ligne { $line } est inutilisable.
book-bad-backup-do = Prends une autre sauvegarde ; rien n’a changé.
book-recovered = Les données enregistrées étaient abîmées ; elles sont gardées dans { $aside }. J’ai repris à partir de l’export { $export } ; { $missing ->
    [0] rien de ce qui est venu après ne semble manquer.
    [one] un message venu après, entendu ou envoyé, manque.
   *[other] { $missing } messages venus après, entendus ou envoyés, manquent.
}
