### The plan on one page, printed and put on the fridge. Large type: short lines.

sheet-dinner = Dinner { $when }
sheet-day = { $day }
sheet-at = { $at }
# A job that comes several times, in one line.
sheet-times = { $what }: { $times } times, every { $every }
sheet-dish = { $what }: { $how ->
    [oven] oven { $setting }, { $takes }
    [smoker] smoker { $setting }, { $takes }
    [stove] stove, { $takes }
   *[none] { $takes }
}
# Where a name can't be drawn.
sheet-helper = Helper { $n }
sheet-salt = Salt
sheet-done = Done when
sheet-safe = Safe
sheet-target = { $target } in the thickest breast, the innermost thigh and the wing. Measure each.
sheet-target-stuffed = { $target } in the thickest breast, the innermost thigh, the wing and the middle of the stuffing. Measure each.
sheet-safe-cold = Fridge at { $cold } or colder. Never thaw on the counter.
sheet-safe-hands = Hands, board and knife washed after the raw bird. Don’t wash the bird.
sheet-safe-out = Within two hours into the fridge, in shallow dishes, unless kept at { $hot } or hotter. Longer out: throw it away.
sheet-made = As of { $when }. Times can move: the chat knows best.
