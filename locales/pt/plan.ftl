### O que está no plano em palavras: passos, chamadas, razões, mudanças, cuidados, coisas.

# ---- nomes dos passos, como no quadro. Uma linha no telefone: menos de 28 caracteres, sem ponto.
plan-step-buy = Comprar a ave
plan-step-thaw = Começar a descongelar
plan-step-thaw-finish = Da geladeira à água fria
plan-step-water = Trocar a água
plan-step-salt = Salgar a ave
plan-step-rest = Repouso com sal
plan-step-temper = Secar a ave
plan-step-fire = Preaquecer
plan-step-on = Colocar a ave
plan-step-check = Medir temperaturas
plan-step-pull = Tirar a ave
plan-step-stand = Deixar descansar
plan-step-carve = Cortar
plan-step-chill = Para a geladeira
plan-step-pack = Embalar frio
plan-step-pack-hot = Embrulhar quente
plan-step-travel = Sair de casa
plan-step-reheat = Reaquecer
plan-step-serve = Jantar
plan-step-leftovers = Último dia das sobras
plan-step-dish = { $name }

# ---- o mesmo, feito
plan-done-buy = Ave comprada
plan-done-thaw = Descongelando
plan-done-thaw-finish = Na água fria
plan-done-water = Água trocada
plan-done-salt = Salgada
plan-done-rest = Repousando na geladeira
plan-done-temper = A ave está seca
plan-done-fire = Preaquecendo
plan-done-on = A ave está assando
plan-done-check = Temperaturas medidas
plan-done-pull = Ave fora do calor
plan-done-stand = Descansando
plan-done-carve = Cortada
plan-done-chill = Na geladeira
plan-done-pack = Embalada fria
plan-done-pack-hot = Embrulhada quente
plan-done-travel = Na estrada
plan-done-reheat = Reaquecida
plan-done-serve = Jantar servido
plan-done-leftovers = Sobras resolvidas
plan-done-dish = { $name } em andamento

# ---- chamadas: o que fazer agora, com o cuidado que pede. Duas ou três frases curtas.
plan-call-buy = { $condition ->
    [frozen] Hora de comprar a ave. Direto para casa e para o freezer, ou para a geladeira se for descongelar em seguida.
   *[fresh] Hora de comprar a ave. Direto para casa e para a geladeira, numa assadeira embaixo de tudo.
}
plan-call-thaw-fridge = Ave na geladeira para descongelar, na embalagem, numa assadeira embaixo de tudo. Geladeira a { $cold } ou menos; nunca na bancada.
plan-call-thaw-water = Ave num saco bem fechado e dentro de água fria. Troque a água a cada { $every }. Nunca água morna.
plan-call-thaw-finish = Agora da geladeira para a água fria, num saco bem fechado, para acabar de descongelar. Troque a água a cada { $every }. Nunca água morna.
plan-call-water = Troque a água ({ $n } de { $of }). Sempre fria, a ave no saco fechado.
plan-call-salt-dry = Salgue a ave: tire o pescoço e os miúdos, seque com papel, não lave, sal por dentro e por fora. Depois na geladeira sem cobrir, numa assadeira embaixo de tudo.
plan-call-salt-wet = Ave na salmoura, coberta, e na geladeira. A { $cold } ou menos o tempo todo.
plan-call-salt-now = Tire da água agora: tire o pescoço e os miúdos, seque, salgue. Descongelada em água, vai direto assar.
plan-call-rest = O repouso com sal: deixe na geladeira, sem cobrir, embaixo de tudo.
plan-call-temper = Ave fora da geladeira: já sem pescoço e miúdos, seque, fure a pele, unte com manteiga. No máximo { $most } fora, depois assar.
plan-call-temper-fat = Ave fora da geladeira: já sem pescoço e miúdos, seque e fure a pele onde há gordura, sem chegar à carne. Sem manteiga: a gordura dela basta. No máximo { $most } fora, depois assar.
plan-call-temper-water = Ave já fora da água: seque de novo, fure a pele, unte com manteiga. Para assar em até { $most }.
plan-call-temper-salt = Depois o sal, que este plano deixou para o fim:
plan-call-fire-oven = Aqueça o forno a { $setting }.
plan-call-fire-smoker = Acenda o fogo e deixe firmar em { $setting }. Só ao ar livre: carvão nunca dentro de casa nem na garagem.
plan-call-on = Coloque a ave para assar. Termômetro na parte mais grossa do peito, longe do osso.
plan-call-on-stuffed = Recheie sem apertar só agora e coloque a ave para assar. Termômetro na parte mais grossa do peito, longe do osso.
plan-call-check = Hora de dar uma olhada: peito, sobrecoxa e { $cooker ->
    [smoker] ar
   *[oven] forno
}. É só me mandar os números.
plan-call-pull = Já deve estar quase. Só sai a { $target } na parte mais grossa do peito, no fundo da sobrecoxa e na asa. Menos? Continua lá.
plan-call-pull-stuffed = Já deve estar quase. Só sai a { $target } na parte mais grossa do peito, no fundo da sobrecoxa, na asa e no meio do recheio. Menos? Continua lá.
plan-call-stand = Deixe descansar, coberta sem apertar, { $least } ou mais.
plan-call-carve = Hora de cortar: tábua limpa, faca limpa.
plan-call-carve-hot = Primeiro o termômetro, no peito e na coxa. { $hot } ou mais nos dois: pode cortar, tábua limpa, faca limpa.
plan-call-chill-ahead = Carne cortada em travessas rasas e na geladeira até { $latest }. Quente pode; mais tarde não.
plan-call-chill = Sobras na geladeira até { $latest }, em travessas rasas. O que ficou fora mais tempo vai para o lixo.
plan-call-pack = Embale frio: a carne a { $cold } ou menos, gelo em volta, caixa térmica fechada.
plan-call-pack-hot = Embrulhe inteira e quente: papel-alumínio, depois toalhas, numa caixa aquecida com água quente. Deixe o termômetro dentro. Com mais de { $air } lá fora são { $hour } para comer, não duas.
plan-call-travel = Hora de sair. A caixa térmica fica fechada até a geladeira ou o forno de lá.
plan-call-travel-hot = Hora de sair. A caixa fica fechada até chegar.
plan-call-reheat = Reaqueça coberto, com um pouco de caldo, em forno de { $low } a { $high }, até estar a { $target } por inteiro.
plan-call-serve = Jantar. Aproveitem; depois aviso da geladeira.
plan-call-leftovers = Sobras: coma ou congele hoje. É o último dia delas na geladeira.
plan-call-dish = Hora de { $name }.
plan-call-dish-oven = { $name }: no forno a { $setting }, { $takes }.
plan-call-dish-smoker = { $name }: no defumador a { $setting }, { $takes }.
plan-call-dish-stove = { $name }: no fogão, { $takes }.
plan-call-dish-made = { $name }: comece agora, { $takes }.
plan-call-dish-chill = { $name }: na geladeira agora, a { $cold } ou menos, até o jantar.
plan-call-dish-then-fridge = Depois na geladeira até o jantar, a { $cold } ou menos.
plan-call-dish-then-cooler = Depois numa caixa térmica com bastante gelo e um termômetro dentro: { $cold } ou menos até o jantar. Acima disso por { $most }, vai para o lixo.
plan-call-dish-then-hot = Depois mantenha coberto e quente, a { $hot } ou mais, até o jantar.

# ---- razões: meias frases em listas, sem ponto.
plan-reason-dinner = o jantar é a essa hora
plan-reason-now = antes de agora não dá
plan-reason-done = foi quando ficou feito
plan-reason-follows = “{ $step }” vem primeiro e leva { $takes }
plan-reason-raw-keeps = fresca dura { $most } na geladeira
plan-reason-shop = a compra não é antes de { $at }
plan-reason-use-by = a embalagem diz validade { $day }
plan-reason-fridge-thaw = descongelar na geladeira leva { $time }
plan-reason-fridge-share = { $spent } na geladeira, de até { $whole }; a água fria faz o resto
plan-reason-water-thaw = descongelar em água fria leva { $time }
plan-reason-water-finish = o que ainda for gelo leva até { $most } em água fria
plan-reason-water-change = a água é trocada a cada { $every }
plan-reason-cook-at-once = descongelada em água, vai logo assar
plan-reason-thawed-keeps = descongelada dura { $most } na geladeira
plan-reason-salt-wants = o sal pede { $least } ou mais
plan-reason-salt-at-most = salgada espera no máximo { $most }
plan-reason-brine-wants = a salmoura pede { $least } ou mais
plan-reason-temper = cerca de { $about } para secar e untar
plan-reason-room-temperature = crua fica fora da geladeira no máximo { $most }
plan-reason-preheat = { $cooker ->
    [smoker] o fogo precisa de { $least } para firmar
   *[oven] o forno precisa de { $least } para esquentar
}
plan-reason-cooking-time = assa { $time }
plan-reason-forecast = é o quanto já avançou
plan-reason-check-before = uma olhada antes de poder estar pronta
plan-reason-stand = descansa { $least } antes do corte
plan-reason-hot-hold = depois de assada espera no máximo { $most }, a não ser a { $hot }
plan-reason-hot-road = levada quente, é comida em até { $most } depois de sair do calor
plan-reason-carving = cortar leva cerca de { $about }
plan-reason-two-hours = na geladeira em até { $most }
plan-reason-cold-through = para gelar por inteiro precisa de { $least } na geladeira
plan-reason-drive = a viagem leva { $takes }
plan-reason-packed-cold = embalada com gelo, sai em até { $most }
plan-reason-reheat = reaquecer leva cerca de { $about }
plan-reason-reheat-within = de volta a { $target } em até { $most }
plan-reason-cooked-keeps = assada dura { $most } na geladeira
plan-reason-sociable = a uma hora em que há gente acordada
plan-reason-dinner-past = essa hora de jantar já passou
plan-reason-dinner-too-far = esse jantar está a mais de um ano
plan-reason-drive-too-long = uma caixa térmica com gelo aguenta { $most } na estrada
plan-reason-setting = { $cooker ->
    [smoker] um defumador vai de { $low } a { $high }
   *[oven] um forno vai de { $low } a { $high }
}
plan-reason-thaw-before-smoking = no defumador só entra ave toda descongelada
plan-reason-stuffed-frozen = uma ave que não descongelou não pode ser recheada
plan-reason-stuffed-form = só uma ave inteira pode ser recheada
plan-reason-stuffed-kind = pato não se recheia
plan-reason-form-for-kind = peito de peru se assa como vem
plan-reason-mass-for-kind = uma ave dessas pesa de { $low } a { $high }
plan-reason-solution = a porcentagem do rótulo vai de 0 a 50
plan-reason-dish-hot = { $name } vai quente à mesa e espera no máximo { $most }
plan-reason-dish-ahead = { $name } se faz antes e fica na geladeira
plan-reason-heat-taken = { $how ->
    [setting] { $name } precisa de { $own } enquanto { $other } precisa ali de { $others }
    [time] { $name } precisa do calor enquanto { $other } o ocupa
    [setting-bird] { $name } precisa de { $own } enquanto { $other } precisa ali de { $others }
    [time-bird] { $name } precisa do calor enquanto { $other } o ocupa
    [full] ali só cabem { $room } pratos ao mesmo tempo, e { $name } sobra
   *[alone] { $name } precisa de um calor que então está ocupado
}
plan-reason-heat-bird = a ave
plan-reason-dish-cold = { $name } pede { $least } de geladeira
plan-reason-fridge-taken = com a ave dentro, a geladeira ({ $shelves ->
    [one] uma prateleira
   *[other] { $shelves } prateleiras
}) não tem lugar para { $name }
plan-reason-fridge-full = a geladeira ({ $shelves ->
    [one] uma prateleira
   *[other] { $shelves } prateleiras
}) não tem mais lugar para { $name }, nem sem a ave

# ---- mudanças oferecidas: botões, menos de 28 caracteres.
plan-change-cold-water = Descongelar em água fria
plan-change-finish-in-water = Geladeira, depois água
plan-change-fridge-thaw = Descongelar na geladeira
plan-change-cook-frozen = Assar congelada
plan-change-shorter-rest = Repouso com sal mais curto
plan-change-no-salt = Sem sal antes
plan-change-dinner = Jantar { $when }
plan-change-hotter = { $setting } em vez disso
plan-change-flat = Abrir a ave
plan-change-unstuffed = Recheio à parte
plan-change-cook-ahead = Assar na véspera
plan-change-carry-cold = Levar frio
plan-change-smaller-bird = Uma ave de { $mass }
plan-change-two-birds = Duas aves de { $mass }
plan-change-buy-fresh = Comprar uma fresca
plan-change-buy-later = Comprar uma fresca depois
plan-change-freeze = Congelar agora
plan-change-dish-beside = { $name } junto com a ave
plan-change-dish-ahead = { $name } antes
plan-change-dish-early = { $name } mais cedo
plan-change-dish-out = Sem { $name }
plan-change-dish-later = { $name } depois da ave
plan-change-dish-cooler = { $name } no gelo

# ---- o que custa uma mudança: meias frases depois de dois-pontos.
plan-cost-cold-water = { $changes ->
    [one] uma troca de água, a partir de { $when }; sem repouso com sal
   *[other] { $changes } trocas de água, a partir de { $when }; sem repouso com sal
}
plan-cost-finish-in-water = { $changes ->
    [one] uma troca de água, a partir de { $when }; sem repouso com sal, e direto assar
   *[other] { $changes } trocas de água, a partir de { $when }; sem repouso com sal, e direto assar
}
plan-cost-fridge-thaw = na geladeira { $when }
plan-cost-cook-frozen = cerca de { $time } de forno, entra { $when }; sem sal antes
plan-cost-shorter-rest = { $rest } de sal em vez de { $wanted }
plan-cost-no-salt = tempere na hora de assar
plan-cost-dinner = todo o resto como você queria
plan-cost-hotter = mais rápido, e doura mais
plan-cost-flat = sem a espinha; assa bem mais rápido
plan-cost-unstuffed = assa mais rápido, e com mais segurança
plan-cost-cook-ahead = cortada, resfriada, reaquecida a { $target }
plan-cost-carry-cold = assada na véspera, reaquecida lá a { $target }
plan-cost-smaller-bird = dá para todos, sobra pouco
plan-cost-two-birds = descongelam e assam mais rápido que uma grande
plan-cost-buy-fresh = nada a descongelar; compre { $when }
plan-cost-buy-later = a de casa não dura até lá; compre { $when }
plan-cost-freeze = hoje no freezer, descongelando a partir de { $when }
plan-cost-dish-beside = junto com a ave: { $takes }, entra { $when }
plan-cost-dish-ahead = { $when }, depois na geladeira; reaquecido a { $target } na hora de servir
plan-cost-dish-early = { $when }, depois coberto a { $hot } ou mais
plan-cost-dish-out = o resto fica como está
plan-cost-dish-later = na geladeira { $when }, quando a ave sair: { $stay } ou mais, menos do que você queria
plan-cost-dish-cooler = caixa térmica com bastante gelo e termômetro: { $cold } ou menos o tempo todo

# ---- cuidados de um plano que dá certo: frases inteiras.
plan-caution-odd-hours = “{ $step }” cai de madrugada.
plan-caution-short-rest = Só { $rest } de sal: entra menos, e ainda fica bom.
plan-caution-keep-hot = Pode ficar pronta { $wait } antes do corte: mantenha a { $hot } ou mais.
plan-caution-hot-till-packed = Pode ficar pronta { $wait } antes de embrulhar: até lá mantenha a { $hot } ou mais.
plan-caution-overrun = Um limite foi passado ({ $reason }). Na dúvida, não coma.
plan-caution-stuffing-apart = Tire o recheio quente e resfrie à parte.
plan-caution-stuffing-out = Tire o recheio antes de embrulhar; ele vai quente num prato só dele.
plan-caution-oven-below-authority = As autoridades sanitárias dizem: forno nunca abaixo de { $limit } para aves.
plan-caution-smoker-below-authority = Abaixo de { $limit } é menos que a faixa publicada para defumadores.
plan-caution-smoker-above-published = Acima de { $limit } os tempos do defumador são experiência de quem assa, não tabela publicada.
plan-caution-long-in-danger-zone = Baixo e devagar leva muito tempo entre { $cold } e { $hot }, e é o tempo menos certo.
plan-caution-outside-table = Nenhuma tabela publicada chega a esse peso; o tempo foi calculado a partir dela.
plan-caution-stuffing-last = O meio do recheio também tem que chegar a { $target }, muitas vezes por último. Mais seguro assado ao lado.
plan-caution-from-frozen = Congelada, o tempo varia muito. Tire os miúdos assim que se soltarem.
plan-caution-part-thawed = Meio descongelada, o tempo fica em algum ponto entre descongelada e congelada.
plan-caution-pieces-differ = Os pedaços ficam prontos um a um: meça cada um.

# ---- o que o plano supõe: nomes numa lista.
plan-need-bird = a ave
plan-need-thermometer = um termômetro de cozinha
plan-need-salt = sal
plan-need-rack = uma assadeira com grade
plan-need-bag = um saco que não vaze
plan-need-brine-vessel = uma panela para a salmoura que caiba na geladeira
plan-need-fuel = combustível para o defumador
plan-need-foil = papel-alumínio
plan-need-shallow-dishes = travessas rasas
plan-need-cooler = uma caixa térmica com gelo
plan-need-hot-box = uma caixa térmica sem gelo e toalhas
plan-need-broth = um pouco de caldo
