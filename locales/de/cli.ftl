### Das Programm im Terminal: Hilfe, Fehler, Zeichen um Nachrichten.

cli-script-line = Zeile { $line }: { $reason }
cli-script-unknown = „{ $given }“ ist weder eine Einstellung (zone, locale, room) noch eine Zeit. Fang mit einer Zeit an, etwa 2027-11-25 17:00.
cli-script-room = „{ $given }“ ist keine Art von Raum. Schreib „room group“ oder „room private“.
cli-script-late = „{ $given }“ kommt zu spät oder doppelt. Jede Einstellung einmal, über der ersten Zeit.
cli-script-time = „{ $given }“ ist keine Zeit. Schreib sie als 2027-11-25 17:00, gern mit Sekunden.
cli-script-earlier = „{ $given }“ liegt vor der Zeile davor. Ordne die Zeilen nach der Zeit.
cli-script-act = „{ $given }“ sagt nichts und drückt nichts. Schreib „Rosa: Text“ oder „Rosa > Knopf“.
cli-script-empty = { $given } sagt oder drückt nichts. Ergänze den Text oder die Beschriftung des Knopfs.
cli-script-crowd = In einem privaten Raum ist nur eine Person, also kann { $given } dort nicht reden. Schreib „room group“.
cli-no-zone = „{ $given }“ ist keine Zeitzone. Nimm einen Namen wie Europe/Berlin.
cli-no-locale = „{ $given }“ ist kein Sprachkürzel. Nimm eins wie de-DE oder en-US.

cli-said-to-all = carvetime
cli-said-to-one = carvetime an { $name }
cli-said-edit-to-all = carvetime (geändert)
cli-said-edit-to-one = carvetime an { $name } (geändert)
cli-said-notice = carvetime an { $name } (Hinweis)
cli-no-button = Einen Knopf „{ $label }“ gibt es nicht. Es gibt: { $there }.
cli-no-buttons = Einen Knopf „{ $label }“ gibt es nicht, auch keinen anderen.
cli-standstill = Die Erinnerungen hörten nicht auf. Bitte melde das mit diesem Skript.

cli-only-for = (für { $name })
cli-changed = (geändert)
cli-you = Du
cli-hello = Erzähl mir vom Vogel und vom Essen, oder tipp /help. #1 drückt einen Knopf, „@Rosa hallo“ spricht als Rosa, Strg-D beendet.
cli-nothing-to-press = Noch gibt es nichts zu drücken.
cli-press = #{ $number } drückt den Knopf.
cli-no-number = Kein Knopf hat diese Nummer. Es gibt: { $there }
cli-file-kept = Gespeichert: { $path }
cli-file-lost = { $path } ließ sich nicht speichern. Prüfe die Platte und frag noch einmal.

cli-file-failed = { $path }: { $what }
cli-file-failed-do = Prüfe die Datei und ihren Ordner, dann versuch es noch einmal.
cli-failed = Fehlgeschlagen: { $what }
cli-failed-do = Versuch es noch einmal; mit RUST_LOG=debug sagt es mehr.
cli-backed-up = { $rows ->
    [one] { $rows } Zeile nach { $path } geschrieben.
   *[other] { $rows } Zeilen nach { $path } geschrieben.
}
cli-restored = { $rows ->
    [one] { $rows } Zeile aus { $path } zurückgeholt.
   *[other] { $rows } Zeilen aus { $path } zurückgeholt.
}
cli-no-data = Hier ist kein Platz für Daten. Nenn mit --data einen Ordner.

cli-about-carvetime = Plant einen ganzen Vogel für einen vollen Tisch und hält den Plan, während er gart.
cli-about-chat = Im Terminal reden; ohne Konto, ohne Netz
cli-about-serve = Als Telegram-Bot laufen; das Token kommt aus TELOXIDE_TOKEN
cli-about-ask = Eine Frage beantworten und enden
cli-about-rehearse = Das Skript eines Essens auf einer virtuellen Uhr spielen und das Gespräch ausgeben
cli-about-forecast = Ein Temperaturprotokoll abspielen, mit der Vorhersage bei jedem Wert
cli-about-backup = Alles Gespeicherte in eine Datei schreiben
cli-about-restore = Eine Sicherung in einen leeren Datenordner zurückholen
cli-help-data = Ordner, in dem alles liegt
cli-help-locale = Sprache, Einheiten und Uhr, etwa de-DE oder en-US
cli-help-zone = Zeitzone der Küche, etwa Europe/Berlin
cli-help-json = JSON statt Text
cli-help-text = Die Frage, in einfachen Worten
cli-help-file = Die Datei
cli-help-bird = Art des Vogels
cli-help-mass = Gewicht beim Kauf, etwa "6,4 kg"
cli-help-form = Wie er liegt; breast ist eine Putenbrust allein
cli-help-stuffed = Er ist gefüllt
cli-help-cooker = Woher die Hitze kommt
cli-help-pit = Worauf das Gerät eingestellt ist, etwa "163 C"
cli-help-start = Temperatur des Vogels, als das Garen begann, etwa "4 C"
cli-help-breast = Ziel in der Brust
cli-help-thigh = Ziel in der Keule
cli-help-webhook = Telegram soll an diese https-Adresse zustellen; braucht --listen
cli-help-listen = Wo dafür gelauscht wird, etwa 127.0.0.1:8080, hinter einem Server, der https spricht
cli-help-health = Wo man zur Überwachung /health und /metrics abfragen kann, etwa 127.0.0.1:9090; nicht fürs offene Netz
