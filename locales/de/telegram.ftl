# Was nur in Telegram gesagt wird.

telegram-sorry = Da ist bei mir etwas schiefgegangen, das habe ich nicht mitbekommen. Sag es bitte anders.
telegram-sorry-bell = Eine Erinnerung von mir ist schiefgegangen. Sieh bitte auf /board nach.
telegram-unreachable = { $person }, ich kann dir nicht privat schreiben, also hier:
telegram-share-place = Meinen Ort senden

telegram-inline-salt = 2 EL Tafelsalz in koscheres Flockensalz
telegram-inline-bird = Salz für eine Pute mit 5,5 kg
telegram-inline-safe = Pute stand 3 Stunden draußen, ok?
telegram-inline-unread = Frag mich privat

telegram-no-token = Es gibt kein Bot-Token.
telegram-no-token-do = Setze TELOXIDE_TOKEN auf das Token deines Bots.
telegram-bad-token = Telegram nimmt das Bot-Token nicht an.
telegram-bad-token-do = Prüfe TELOXIDE_TOKEN oder lass ein neues ausstellen.
telegram-conflict = Ein anderes Programm läuft schon als dieser Bot.
telegram-conflict-do = Beende eins von beiden; sie nähmen sich die Nachrichten weg.
telegram-other-bot = Diese Daten gehören zu einem anderen Bot.
telegram-other-bot-do = Starte mit dem Token jenes Bots, oder wähle mit --data einen leeren Ordner.
telegram-bad-url = TELOXIDE_API_URL ist keine Webadresse: { $url }.
telegram-bad-url-do = Schreib sie wie http://localhost:8081 oder lass sie weg.
telegram-no-api = Unter { $url } gibt es keine Bot-API: Die Seite ist nicht da.
telegram-no-api-do = Prüfe TELOXIDE_API_URL; ohne sie gilt die von Telegram.
telegram-bad-webhook = An { $url } stellt Telegram nicht zu.
telegram-bad-webhook-do = Nimm eine öffentliche https-Adresse auf Port 443, 80, 88 oder 8443.
telegram-listen = Auf { $address } lässt sich nicht lauschen: { $reason }.
telegram-listen-do = Wähle mit --listen eine andere Adresse oder beende, was dort läuft.
telegram-system = Das System gab keine Threads, Signale oder kein Netz her.
telegram-system-do = Starte noch einmal; mit RUST_LOG=carvetime=debug sagt es mehr.

telegram-command-plan = Den Vogel planen oder den Plan sehen
telegram-command-board = Was ansteht, wer es macht, wann es Essen gibt
telegram-command-salt = Wie viel Salz, und ein Salz statt des anderen
telegram-command-ask = Eine schnelle Küchenfrage
telegram-command-log = Temperaturen notieren
telegram-command-when = Wann er fertig ist
telegram-command-move = Das Essen verschieben
telegram-command-take = Eine Aufgabe übernehmen
telegram-command-drop = Eine Aufgabe abgeben
telegram-command-undo = Die letzte Änderung zurücknehmen
telegram-command-export = Kalender, Temperaturen, alles
telegram-command-stop = Den Plan beenden
telegram-command-forget = Löschen, was hier gespeichert ist
telegram-command-settings = Sprache, Einheiten, Zeitzone
telegram-command-help = Wie das hier geht

telegram-description = Erzähl mir vom Vogel und vom Essen: Gewicht, frisch oder gefroren, wann, wie viele Leute. Ich rechne Auftauen, Salzen, Hitze und Ruhezeit aus, erinnere, wer dran ist, und lese dein Thermometer mit, bis tranchiert ist. Privat oder mit der ganzen Familie in einer Gruppe.
telegram-short-description = Bringt einen ganzen Vogel pünktlich auf den Tisch, allein oder mit der ganzen Familie.
