### O plano numa página, impresso e preso na geladeira. Letra grande: linhas curtas.

sheet-dinner = Jantar { $when }
sheet-day = { $day }
sheet-at = { $at }
sheet-times = { $what }: { $times } vezes, a cada { $every }
sheet-dish = { $what }: { $how ->
    [oven] forno { $setting }, { $takes }
    [smoker] defumador { $setting }, { $takes }
    [stove] fogão, { $takes }
   *[none] { $takes }
}
sheet-helper = Ajudante { $n }
sheet-salt = Sal
sheet-done = Pronto a
sheet-safe = Seguro
sheet-target = { $target } na parte mais grossa do peito, no fundo da sobrecoxa e na asa. Meça cada um.
sheet-target-stuffed = { $target } na parte mais grossa do peito, no fundo da sobrecoxa, na asa e no meio do recheio. Meça cada um.
sheet-safe-cold = Geladeira a { $cold } ou menos. Nunca descongele na bancada.
sheet-safe-hands = Lave mãos, tábua e faca depois da ave crua. A ave não se lava.
sheet-safe-out = Na geladeira em até duas horas, em travessas rasas, a não ser que fique a { $hot } ou mais. Mais tempo fora: lixo.
sheet-made = Feito { $when }. As horas podem mudar: vale o que diz o chat.
