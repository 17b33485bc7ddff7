# Beilagen neben dem Vogel.
dish-added = Dazu: { $what }, { $when }.
dish-changed = Geändert: { $what }, { $takes }, { $when }.
dish-changed-at = Geändert: { $what }, { $takes } bei { $setting }, { $when }.
dish-told = { $what }: { $when }, { $takes }.
dish-told-at = { $what }: { $when }, { $takes } bei { $setting }.
dish-all-fit = Ja, wie geplant passt alles:
dish-there = { $name } steht schon im Plan, { $when }.
dish-button-another = Noch eins
dish-hot-through = In der Mitte { $target }, bevor es gegessen wird.
dish-removed = { $name } ist aus dem Plan.
dish-none = Im Plan stehen keine Beilagen.
dish-unknown = { $name } steht nicht im Plan. Es gibt { $known }.
dish-name = { $name }
dish-stays = Das geht gerade nicht. Alles bleibt, wie es ist.
dish-left = Alles bleibt, wie es war.
dish-start = Du sagtest { $said }. Für dieses Essen ist es { $when }. Kann es kalt warten, sag „im Voraus“.
dish-theirs = Das macht { $name }. Ändern oder streichen kann es nur, wer es hat, es dazugenommen hat oder den Plan führt, oder ein Admin.
dish-ready = Du sagtest fertig bis { $said }. Für dieses Essen ist es { $when } fertig. Kann es kalt warten, sag „im Voraus“.
dish-said = Du sagtest { $said }: Wähl, was dem nahekommt, oder lass es.
dish-no-plan = Erst der Vogel: erzähl mir mit /plan vom Essen, dann vom Rest auf dem Tisch.
dish-no-name = Was ist es, und wie lange braucht es? So: /plan dazu Füllung im Ofen 45 min bei 190
dish-no-time = Wie lange braucht { $name }? So: /plan dazu { $name } im Ofen 45 min bei 190
dish-time = { $name } darf 1 min bis 12 h dauern.
dish-setting = { $setting } ist keine Hitze für eine Beilage: { $low } bis { $high }. So: im Ofen 45 min bei 190
dish-too-many = Das sind schon { $most } Beilagen. Nimm erst eine weg: /plan ohne …
dish-not-yet = „{ $name }“ steht noch nicht im Plan: Erst muss das Essen aufgehen. Sag es mir danach noch mal.
dish-cold = Im Kühlschrank ab { $when }, { $room ->
    [half] ein halbes Fach
    [whole] ein Fach
   *[more] { $shelves } Fächer
}.
dish-iced = In einer Kühlbox mit Eis ab { $when }, ein Thermometer darin: die ganze Zeit { $cold } oder kälter.
dish-shelves = { $count ->
    [one] Ein Fach
   *[other] { $count } Fächer
} für das Essen, das des Vogels mitgezählt. Braucht der Alltag davon etwas, nenn mir weniger.
dish-shelves-hint = Ist der Kühlschrank voll? Sag mir „mein Kühlschrank hat 3 Fächer“, dann prüfe ich, ob alles neben den Vogel passt.
dish-stay = { $name } kann 15 min bis 2 Tage im Kühlschrank warten, bis zum Essen.
