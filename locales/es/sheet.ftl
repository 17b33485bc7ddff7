### The plan on one page, printed and put on the fridge. Large type: short lines.

sheet-dinner = Cena { $when }
sheet-day = { $day }
sheet-at = { $at }
# A job that comes several times, in one line.
sheet-times = { $what }: { $times } veces, cada { $every }
sheet-dish = { $what }: { $how ->
    [oven] horno { $setting }, { $takes }
    [smoker] ahumador { $setting }, { $takes }
    [stove] fuego, { $takes }
   *[none] { $takes }
}
# Where a name can't be drawn.
sheet-helper = Ayudante { $n }
sheet-salt = Sal
sheet-done = Listo a
sheet-safe = Seguro
sheet-target = { $target } en lo más grueso de la pechuga, en el interior del { -thigh } y en el ala. Mide en cada sitio.
sheet-target-stuffed = { $target } en lo más grueso de la pechuga, en el interior del { -thigh }, en el ala y en el centro del relleno. Mide en cada sitio.
sheet-safe-cold = { -fridge(form: "Title") } a { $cold } o menos. Nunca descongeles en { -counter }.
sheet-safe-hands = Lava manos, tabla y cuchillo después de tocar el ave cruda. El ave no se lava.
sheet-safe-out = { -fridge(form: "To") } antes de dos horas, en fuentes bajas, salvo que se mantenga a { $hot } o más. Si pasa más tiempo fuera, a la basura.
sheet-made = A { $when }. Las horas pueden cambiar: manda el chat.
