### Was an etwas Getipptem nicht stimmt: was ankam, der Bereich, ein Beispiel.

reading-mass = Ein Vogel mit { $given }? Ich plane { $low } bis { $high }. Zum Beispiel: Pute mit 6,5 kg.
reading-guests = { $given } am Tisch? Gib mir eine ganze Zahl von { $low } bis { $high }. Zum Beispiel: 11 Personen.
reading-setting = { $given } ist keine Hitze für einen Vogel: ich rechne mit { $low } bis { $high }. Zum Beispiel: Ofen auf { $example }.
reading-solution = { $given } % Lake? Auf dem Etikett stehen höchstens { $high } %. Zum Beispiel: enthält bis zu 8 % Salzlake.
reading-drive = { $given } min Fahrt? Es gehen bis zu { $high }. Zum Beispiel: 40 min Fahrt.
reading-past = { $given } ist vorbei. Wann wird gegessen? Zum Beispiel: Donnerstag 17 Uhr.
reading-used-by = Das Datum auf der Packung, { $day }, ist vorbei. Über dem Verbrauchsdatum isst man frisches Geflügel nicht mehr, außer es wurde rechtzeitig eingefroren.
reading-use-by-far = Zu verbrauchen bis { $day }? So lange hält kein frischer Vogel. Zum Beispiel: „zu verbrauchen bis Freitag“.
reading-far = { $given } ist zu weit weg: ich plane höchstens { $days } Tage voraus. Zum Beispiel: Donnerstag 17 Uhr.
reading-fryer = Ich plane Ofen und Smoker, kein heißes Öl. Nie einen gefrorenen, nassen oder gefüllten Vogel frittieren, und nur im Freien. Frag mich: ist Frittieren sicher?
reading-other-bird = Zeiten habe ich für Pute, Hähnchen, Kapaun, Ente und Gans, für diesen Vogel nicht, also plane ich ihn nicht. Es zählt das Thermometer: { $target } in Brust, Keule und Flügel.
reading-thermometer = { $given } auf dem Thermometer? Ich nehme { $low } bis { $high }. Zum Beispiel: Brust 53, Keule 61.
reading-future = { $given } kommt erst noch. Wann hast du gemessen? Zum Beispiel: Brust 53 um 14:05.
reading-too-many = Ein Wert je Stelle, bitte: Brust, Keule, Garraum. Zum Beispiel: Brust 53, Keule 61, Garraum 168.
reading-loose-number = Was heißt { $given } da? Sag es mit Einheit: 6,5 kg, 11 Personen, 165 °C.
reading-two-weights = Zwei Vögel, verschieden schwer: Ich plane einen nach dem anderen, zuerst den mit { $heavy }. Steht der, sag mir den mit { $light }.
