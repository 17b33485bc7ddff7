### Respostas a perguntas rápidas. Quantidades, temperaturas e durações já vêm escritas.
### Primeiro a resposta, depois o cuidado; cada linha vale por si.

ask-unknown = Não leio isso como pergunta. Pergunte sobre sal (2 colheres de sopa de sal de mesa em kosher em flocos), tempos (quanto tempo descongela um peru de 6,5 kg), porções (que tamanho para 11 pessoas), segurança (70 °C por 2 minutos é seguro) ou unidades (325 °F em °C).
ask-no-amount = Isso não é quantidade de nada. Diga uma acima de zero, por exemplo 2 colheres de sopa.
ask-no-span = Preciso de um tempo com que dê para contar, por exemplo 24 h.
ask-no-mark = Nenhum forno a gás tem essa marca. Elas vão de ¼, ½ e 1 a 10, ou seja, de 107 a 260 °C.
ask-no-temperature = Isso não é uma temperatura. Por exemplo: 325 °F em °C.
ask-no-substance = Quanto pesa uma colher depende do que há nela. Conheço sal e manteiga: 2 colheres de sopa de sal de mesa em gramas.
ask-no-serving = Isso não é uma porção desta ave. Por exemplo: sódio num peru de 6,5 kg para 11 pessoas.
ask-impossible = Não pode ser: { $reason }.

# O que se pergunta de volta. A resposta vai atrás da pergunta.
ask-back-mass = Quanto pesa a ave? Por exemplo: 6,5 kg.
ask-back-how-much = Quanto de { $salt }? Por exemplo: 2 colheres de sopa.
ask-back-kosher = Qual sal kosher? O grosso pesa quase o dobro do em flocos, na mesma colher.
ask-back-own-salt = Ainda não conheço o seu sal. Leia o rótulo para mim, por exemplo: meu sal: 1/4 colher de chá são 0,7 g.
ask-back-water = Quanta água, ou quanto pesa a ave? Por exemplo: 4 litros, ou 6,5 kg.
ask-back-scale = { $n } em °F ou °C? Faz toda a diferença.
ask-back-how-long-out = Quanto tempo ficou fora? Por exemplo: 3 horas.
ask-back-fuel-time = Por quanto tempo? Por exemplo: 4 h.
ask-back-hours-3 = 3 horas
ask-back-hours-5 = 5 horas
ask-fahrenheit = °F
ask-celsius = °C

# Nomes dentro de frases.
ask-kind-turkey = peru
ask-kind-turkey-breast = peito de peru
ask-kind-chicken = frango
ask-kind-capon = capão
ask-kind-duck = pato
ask-kind-goose = ganso
ask-bird = { $condition ->
    [frozen] { $kind } congelado de { $mass }
    [part-thawed] { $kind } meio descongelado de { $mass }
   *[fresh] { $kind } de { $mass }
}
ask-salt-table = sal de mesa
ask-salt-fine-sea = sal marinho fino
ask-salt-pickling = sal para conserva
ask-salt-flake-kosher = sal kosher em flocos
ask-salt-coarse-kosher = sal kosher grosso
ask-salt-coarse-sea = sal marinho grosso
ask-salt-own = seu próprio sal
ask-food-raw-whole = Ave crua
ask-food-raw-pieces = Pedaços crus
ask-food-raw-duck-or-goose = Pato ou ganso cru
ask-food-giblets = Miúdos crus
ask-food-leftovers = Ave assada e sobras
ask-food-cooked-pieces = Fatias assadas
ask-food-cooked-in-gravy = Ave assada em molho
ask-food-gravy = Molho e caldo
ask-food-stuffing = Recheio assado
ask-food-stuffing-and-gravy = Recheio e molho
ask-food-soup = Sopa e ensopado

ask-seconds = { $n } s
ask-minutes = { $n } min
ask-amount = { $unit ->
    [milligram] { $n } mg
    [gram] { $n } g
    [kilogram] { $n } kg
    [pound] { $n } lb
    [metric-pound] { $n } × 500 g
    [ounce] { $n } oz
    [stick] { $n ->
        [one] { $n } tablete americano de manteiga
       *[other] { $n } tabletes americanos de manteiga
    }
    [pinch] { $n ->
        [one] { $n } pitada
       *[other] { $n } pitadas
    }
    [second] { $n } s
    [minute] { $n } min
    [hour] { $n } h
    [day] { $n ->
        [one] { $n } dia
       *[other] { $n } dias
    }
    [teaspoon] { $n ->
        [one] { $n } colher (chá)
       *[other] { $n } colheres (chá)
    }
    [tablespoon] { $n ->
        [one] { $n } colher (sopa)
       *[other] { $n } colheres (sopa)
    }
    [cup] { $n ->
        [one] { $n } xícara
       *[other] { $n } xícaras
    }
    [fluid-ounce] { $n } fl oz
    [pint] { $n } pt
    [quart] { $n } qt
    [gallon] { $n } gal
    [milliliter] { $n } ml
    [liter] { $n } l
    [fahrenheit] { $n } °F
    [celsius] { $n } °C
    [gas-mark] marca de gás { $n }
    [thermostat] thermostat { $n }
   *[other] { $n }
}

# ---- sal
ask-salt-convert = { $given } de { $from } = { $volume } de { $to } ({ $mass }).
ask-salt-rule-holds = Regra de cozinha: { $rule } % do volume. Em massa dá { $mass } %, então a regra serve.
ask-salt-rule-fails = Regra de cozinha: { $rule } % do volume. Em massa dá { $mass } %; eu vou pela massa.
ask-salt-weighs = { $volume } de { $salt } = { $mass }.
ask-dose = { $bird }: { $volume } de { $salt } ao todo ({ $mass }, { $strength ->
    [light] leve
    [bold] forte
   *[usual] a dose de costume
}).
ask-dose-shares = Vai assim: { $shares }.
ask-dose-share = { $place ->
    [cavity] { $volume } na cavidade
    [bone-side] { $volume } do lado dos ossos
    [breast] { $count ->
        [one] { $volume } sob a pele do peito
       *[other] { $volume } em cada lado do peito
    }
    [thigh] { $volume } em cada sobrecoxa
    [drumstick] { $volume } em cada coxa
   *[skin] { $volume } na pele
}
ask-dose-skin = Na pele, misture com a mesma medida de pimenta e, para ficar crocante, de fermento em pó.
ask-oversalt-given = { $mass } ({ $salt })
ask-oversalt-much = Sim: umas { $times } vezes a dose. São { $given }, e essa ave pede { $dose }.
ask-oversalt-a-little = Um pouco: são { $given }, e essa ave pede { $dose }. Deixe assim e ponha pouco sal no molho.
ask-oversalt-right = Não, está bom: { $given }, e essa ave pede { $dose }.
ask-oversalt-little = Não, até pouco: são { $given }, e essa ave pede { $dose }.
ask-salt-enough-much = De sobra, umas { $times } vezes a dose: são { $given }, e esta ave pede { $dose }.
ask-salt-enough-a-little = Sim, um pouco a mais: são { $given }, e esta ave pede { $dose }.
ask-salt-enough-right = Sim, está mais ou menos certo: { $given }, e esta ave pede { $dose }.
ask-oversalt-double = Sim, o dobro de sal é demais.
ask-oversalt-fresh = Tire agora com a mão o que está por cima. Se tiver mesmo que enxaguar, com cuidado e sem respingar; depois seque e esfregue a pia: enxaguar espalha germes.
ask-oversalt-soaked = Já entrou: tire com a mão o que ainda está por cima, sem enxaguar.
ask-oversalt-either = Na primeira hora, tire com a mão. Se tiver mesmo que enxaguar, com cuidado e sem respingar; depois seque e esfregue a pia: enxaguar espalha germes. Depois disso já entrou: só com a mão.
ask-oversalt-beside = Nada de sal no molho nem no recheio. Estraga o gosto e não faz mal a ninguém, a não ser a quem precisa evitar sal.
ask-dose-per-lb = { $volume } de { $salt } por libra de ave ({ $mass }).
ask-dose-per-kg = { $volume } de { $salt } por quilo de ave ({ $mass }).
ask-spoon-weights = { $volume } pesa: { $weights }.
ask-spoon-weight = { $mass } de { $salt }
ask-dose-rest = Depois 24 h ou mais na geladeira, sem cobrir; no máximo { $longest }.
ask-dose-none = { $percent } % de solução: já vem salgado. Nada de sal, nada de salmoura.
ask-dose-light = Já tem { $percent } % de solução, então a dose é leve.
ask-brine = Salmoura a { $percent } %: { $mass } de sal em { $water } de água. São { $volume } de { $salt }.
ask-brine-strength = { $given } % é mais do que a água fria segura, ou nada. Acima de 0 até { $high } %, por exemplo: salmoura a 6 % para 4 litros.
ask-brine-other = Porcentagem da salmoura inteira; contando só a água, dá { $percent } %.
ask-brine-time = Leva { $time }, numa panela de { $vessel }.
ask-brine-usual = { $time } para aves de { $low } a { $high }.
ask-brine-cold = Ave e salmoura ficam a { $cold } ou menos, 48 h no máximo.
ask-depth = Depois de { $rest } na geladeira o sal entrou cerca de { $depth } mm (de { $low } a { $high }).
ask-depth-pork = É até onde chegou um décimo do sal da superfície. Medido em porco; ninguém publicou para peru.
ask-sodium = { $bird } com a dose de costume, { $who }: cerca de { $expected } mg de sódio (de { $low } a { $high }).
ask-sodium-one-of = { $people ->
    [one] comido por uma pessoa
   *[other] uma de { $people } porções
}
ask-sodium-grams = { $mass } de carne assada
ask-sodium-day = É de { $low } a { $high } % dos { $daily } mg de um dia.
ask-sodium-care = É uma estimativa: se o sódio importa para a sua saúde, pergunte ao seu médico.
ask-own = Seu sal: { $teaspoon } a colher de chá, { $tablespoon } a colher de sopa.
ask-own-not-plain = O sódio e o peso não combinam com sal puro. Veja o rótulo, por exemplo: meu sal: 1/4 colher de chá tem 280 mg de sódio.
ask-own-density = Nenhum sal é tão leve ou tão pesado: uma colher de chá pesa de 1,5 a 8 g. Confira a colher, por exemplo: meu sal: 1/4 colher de chá são 0,7 g.

# ---- a ave
ask-thaw = { $bird }: { $fridge } na geladeira, ou { $water } em água fria trocada a cada { $every }.
ask-thaw-care = Descongelado na geladeira dura { $keeps }; descongelado em água, asse logo. Nunca na bancada.
ask-roast = { $bird }, { $cooker ->
    [fan-oven] forno com ventilador
    [smoker] defumador
   *[oven] forno
} a { $setting }: { $time }, o mais provável { $middle }.
ask-roast-done = Quem diz que está pronto é o termômetro, não o relógio: { $target } no peito, na sobrecoxa e na asa.
ask-roast-practice = Parte disso é experiência de cozinha, não tabela publicada.
ask-bird-for = { $people ->
    [one] Uma pessoa: de { $low } a { $high } de { $kind }.
   *[other] { $people } pessoas: de { $low } a { $high } de { $kind }.
}
ask-bird-for-exactly = { $people ->
    [one] Uma pessoa: { $low } de { $kind }.
   *[other] { $people } pessoas: { $low } de { $kind }.
}
ask-portion = De { $low } a { $high } de { $kind } por pessoa, como se compra, com os ossos.
ask-bird-for-several = Melhor { $birds } aves de { $low } a { $high } cada.
ask-bird-for-leftovers = Para ter sobras, de um quarto a metade a mais.
ask-people-for = { $bird } dá para { $low } a { $high }, ou para { $some } com sobras.
ask-fuel = { $fuel ->
    [charcoal] Carvão
    [propane] Gás
   *[pellets] Pellets
} para { $span } a cerca de 165 °C: de { $low } a { $high }. Experiência de cozinha, sem tabela; tenha metade a mais à mão.
ask-fuel-bottle = Um botijão cheio tem { $bottle }.
ask-fuel-care = Só ao ar livre, nunca em casa, garagem ou barraca.

# ---- segurança
ask-lethality-enough = Sim, pela tabela: { $at } no ponto mais frio pede { $needed }, você segurou { $held }.
ask-lethality-not-yet = Ainda não: { $at } no ponto mais frio pede { $needed }. Faltam { $missing }.
ask-lethality-never = Não. Abaixo de { $first } não se conhece tempo que baste. Asse até { $kitchen }.
ask-lethality-instant = Sim: a { $at } no ponto mais frio é seguro na hora.
ask-lethality-time = { $at } tem que durar { $needed } no ponto mais frio.
ask-lethality-go-on = Ainda não: siga até { $kitchen } no mais grosso do peito, no mais fundo da coxa e na asa. Pela tabela, { $at } teriam que durar { $needed } no ponto mais frio.
ask-lethality-stuffing-not = Não: o recheio tem que chegar a { $target } no meio; { $at } não basta. A carne ficou pronta antes? Tire o recheio e termine no forno.
ask-lethality-stuffing = Sim, se for no meio: recheio é seguro a { $target }.
ask-lethality-care = Vale para carne, com termômetro conferido; não para recheio. As autoridades sanitárias dizem às cozinhas { $kitchen } em toda parte: na dúvida, siga isso.
ask-come-up = Não conte com isso. As { $span } subindo não valem como tempo mantido, e o calor não desfaz tudo o que cresceu entre { $low } e { $hot }. Se ficou ali mais de umas duas horas sem calor constante, jogue fora; senão, siga até { $kitchen } em toda parte.
ask-safe = { $target } na parte mais grossa do peito, no fundo da sobrecoxa e na asa.
ask-safe-held = { $target } por { $hold } na parte mais grossa do peito, no fundo da sobrecoxa e na asa. { $plan }, com que eu conto, não pede minutos.
ask-safe-higher = Eu me guio por { $plan } no peito, na coxa e na asa. A Health Canada diz { $target } para ave inteira: se for seguir, deixe até lá.
ask-safe-stuffing = Recheio: { $target } no meio, dentro da ave ou ao lado.
ask-safe-where = A ponta longe do osso. Cor e caldo claro não provam nada.
ask-out-fine = { $out } fora ainda está bem. Restam { $left }: depois, comido, na geladeira ou no lixo.
ask-out-if-cool = Isso vale até { $air } em volta; mais quente, é uma hora ao todo.
ask-out-limit = Duas horas fora da geladeira ao todo, uma acima de { $air }. Depois vai para o lixo.
ask-out-discard = Jogue fora: { $out } fora, e o limite é { $limit }.
ask-out-dont = Não faça isso: { $out } fora é demais, o limite é { $limit } no total.
ask-out-why = Esquentar de novo não torna seguro: algumas toxinas ficam.
ask-keeps = { $food }: { $days } na geladeira.
ask-keeps-still = { $age } está dentro do limite. { $food }: { $days } na geladeira.
ask-keeps-over = Jogue fora: { $age } é demais. { $food }: { $days } na geladeira.
ask-keeps-that-still = { $food }: { $days } na geladeira; { $age } está dentro disso.
ask-keeps-that-over = { $food }: { $days } na geladeira; depois de { $age }, lixo.
ask-days = { $n ->
    [one] { $n } dia
   *[other] { $n } dias
}
ask-days-range = de { $low } a { $high } dias
ask-months = { $n ->
    [one] { $n } mês
   *[other] { $n } meses
}
ask-months-range = de { $low } a { $high } meses
ask-keeps-care = A geladeira a { $cold } ou menos. Se a cara ou o cheiro não estiver bom, lixo.
ask-keeps-frozen = { $food }: { $months } no freezer, pela qualidade. Congelado por inteiro, continua seguro.
ask-keeps-unknown = { $food }: não conheço prazo publicado. Cuidado: no máximo duas horas fora da geladeira.
ask-cooling = Na geladeira até { $limit } depois de assada, pode ser quente, em travessas rasas, a carne fora do osso.
ask-cooling-marks = De { $from } a { $middle } em 2 h, a { $cold } em 6 h ao todo.
ask-reheat = Reaqueça a { $target } por inteiro.
ask-reheat-gravy = O molho tem que ferver bem.
ask-reheat-care = Coberto, com um pouco de caldo. Não em panela elétrica lenta.
ask-reheat-once = No Reino Unido: reaquecer uma vez só.
ask-refreeze = Descongelada na geladeira pode ser congelada de novo, crua ou assada. Descongelada em água ou micro-ondas, asse antes.
ask-refreeze-out = Não se ficou fora mais de duas horas.
ask-colour = Cor e caldo claro não provam nada, rosado ou não. Quem decide é o termômetro:
ask-stand = Deixe descansar { $least } ou mais antes de cortar, coberto sem apertar. Primeiro esquenta mais, depois esfria.
ask-oven-low = Não: ave pede forno a { $limit } ou mais, dizem as autoridades sanitárias.
ask-oven-fits = Sim, { $at } serve. As autoridades sanitárias pedem { $limit } ou mais para aves.
ask-oven = Ponha o forno a { $limit } ou mais: é o que as autoridades sanitárias dizem para aves.
ask-oven-level = Forno { $level ->
        [low] baixo
        [high] alto
       *[medium] médio
    }: cerca de { $setting }. Cada forno é um: quem manda é o termômetro na ave.
ask-oven-smoker = Um defumador vai de { $low } a { $high }, com a ave toda descongelada.
ask-off-dial-at = { $side ->
    [cold] Ele fica { $by } abaixo: para { $setting }, coloque o botão em { $dial }.
   *[hot] Ele passa { $by }: para { $setting }, coloque o botão em { $dial }.
}
ask-off-dial-by = { $side ->
    [cold] Ele fica { $by } abaixo: ajuste essa diferença para cima.
   *[hot] Ele passa { $by }: ajuste essa diferença para baixo.
}
ask-off-dial = { $side ->
    [cold] Então coloque mais alto, o tanto que falta.
    [hot] Então coloque mais baixo, o tanto que passa.
   *[some] Se esquenta a mais, ajuste essa diferença para baixo; se a menos, para cima.
}
ask-off-dial-thermometer = Um termômetro de forno ao lado da ave mostra a diferença. Espere 20 min: todo forno oscila.
ask-hold = Mantenha a { $hot } ou mais; abaixo disso, no máximo { $limit }, e depois geladeira.
ask-wash = Não, não lave: de quem lavou, { $share } % ficaram com bactérias na pia. Seque com papel, lave as mãos 20 s.
ask-counter-thaw = Nunca na bancada, nem em água morna: por fora estraga enquanto o meio ainda é gelo. Geladeira, ou água fria trocada a cada { $every }, e logo ao fogo.
ask-warm-thaw = Lixo: por fora ficou morna mais de { $limit } enquanto o meio descongelava, e cozinhar não desfaz isso. A próxima, na geladeira ou em água fria trocada a cada { $every }.
ask-stuffing = O mais seguro é assar ao lado da ave. Dentro: recheie sem apertar, só na hora de assar, e nunca ave congelada, defumada ou frita.
ask-stuffing-target = O meio dele também tem que chegar a { $target }.
ask-fry-frozen = Não: nunca frite uma ave congelada ou meio congelada. O óleo transborda e pega fogo. Primeiro descongele por inteiro.
ask-fry-stuffed = Não: nunca frite uma ave recheada.
ask-fry-heavy = Não: { $given } é demais para fritar. Até 5,4 kg.
ask-fry-time = { $mass } leva { $time } a 177 °C; pronto a { $target } em toda parte.
ask-fry = Fritar: ao ar livre, a 3 m ou mais da casa, óleo a 177 °C, de 7 a 11 min por quilo, nada acima de 5,4 kg.
ask-fry-care = Toda descongelada e seca, nunca recheada: água faz o óleo transbordar. Meça antes o nível do óleo com água, nunca deixe sozinho, tenha à mão um extintor de pó.
ask-charcoal = Nunca dentro de casa, em garagem, barraca ou varanda coberta. O monóxido de carbono mata e não tem cheiro. Churrasqueira ainda morna também fica fora.
ask-fire = { $call ->
    [none] Porta do forno fechada e forno desligado. Nada de água, e não tire a assadeira. Se não apagar logo ou saírem chamas: todo mundo para fora, portas fechadas, e ligue para os bombeiros lá de fora.
   *[known] Porta do forno fechada e forno desligado. Nada de água, e não tire a assadeira. Se não apagar logo ou saírem chamas: todo mundo para fora, portas fechadas, e ligue para o { $call } lá de fora.
}
ask-fire-elsewhere = Uma frigideira no fogão: desligue e ponha a tampa. Defumador ou churrasqueira: tampa e entradas de ar fechadas, gás fechado. Só se der para chegar sem perigo.
ask-gas = { $call ->
    [none] Não mexa em interruptor, nada de chama, não telefone lá de dentro. Abra as janelas no caminho, todo mundo para fora, e de fora ligue para os bombeiros ou para a companhia de gás.
   *[known] Não mexa em interruptor, nada de chama, não telefone lá de dentro. Abra as janelas no caminho, todo mundo para fora, e de fora ligue para o { $call } ou para a companhia de gás.
}
ask-kitchen-smoke = { $call ->
    [none] Desligue, porta do forno fechada, janelas abertas. Chamas, ou fumaça que não para: todo mundo para fora e de fora ligue para a emergência. Depois de frio, procure gordura que pingou.
   *[known] Desligue, porta do forno fechada, janelas abertas. Chamas, ou fumaça que não para: todo mundo para fora e de fora ligue para o { $call }. Depois de frio, procure gordura que pingou.
}
ask-carbon-monoxide = { $call ->
    [none] Todo mundo para fora, ao ar livre, já, portas abertas no caminho. Depois ligue para a emergência; ninguém volta antes de eles dizerem. Dor de cabeça, tontura, enjoo: avise. Carvão e churrasqueira nunca dentro de casa.
   *[known] Todo mundo para fora, ao ar livre, já, portas abertas no caminho. Depois ligue para o { $call }; ninguém volta antes de eles dizerem. Dor de cabeça, tontura, enjoo: avise. Carvão e churrasqueira nunca dentro de casa.
}
ask-hot-oil = { $call ->
    [none] Apague o fogo, se der sem se debruçar na panela. Todo mundo para trás, crianças primeiro, e nada de água. Chamas, ou óleo em alguém: ligue para a emergência. Antes de recomeçar: deixe esfriar, e menos óleo.
   *[known] Apague o fogo, se der sem se debruçar na panela. Todo mundo para trás, crianças primeiro, e nada de água. Chamas, ou óleo em alguém: ligue para o { $call }. Antes de recomeçar: deixe esfriar, e menos óleo.
}
ask-burn = { $call ->
    [none] Água corrente fresca em cima, 20 min, já; tire anéis e relógio, depois cubra com pano limpo. Nem gelo nem manteiga. Maior que uma mão, branca ou com bolhas, no rosto, ou criança: médico, ou ligue para a emergência.
   *[known] Água corrente fresca em cima, 20 min, já; tire anéis e relógio, depois cubra com pano limpo. Nem gelo nem manteiga. Maior que uma mão, branca ou com bolhas, no rosto, ou criança: médico, ou ligue para o { $call }.
}
ask-choking = { $call ->
    [none] Não tosse nem fala? Ligue para a emergência. Incline a pessoa para a frente: 5 pancadas entre as escápulas, depois 5 compressões acima do umbigo, alternando até sair. Bebê: nunca a barriga; pancadas de bruços, depois 5 compressões no peito.
   *[known] Não tosse nem fala? Ligue para o { $call }. Incline a pessoa para a frente: 5 pancadas entre as escápulas, depois 5 compressões acima do umbigo, alternando até sair. Bebê: nunca a barriga; pancadas de bruços, depois 5 compressões no peito.
}
ask-fainted = { $call ->
    [none] Ligue já para a emergência. Respira normal: de lado, cabeça para trás, e fique junto. Não respira, ou só aos arrancos: de costas, aperte forte e rápido no meio do peito, de 100 a 120 vezes por minuto, até chegar ajuda. Mais de uma pessoa tonta: todo mundo para fora, ao ar livre.
   *[known] Ligue já para o { $call }. Respira normal: de lado, cabeça para trás, e fique junto. Não respira, ou só aos arrancos: de costas, aperte forte e rápido no meio do peito, de 100 a 120 vezes por minuto, até chegar ajuda. Mais de uma pessoa tonta: todo mundo para fora, ao ar livre.
}
ask-allergy = { $call ->
    [none] Língua, lábios ou garganta inchando, ou falta de ar depois de comer: ligue já para a emergência e diga “reação alérgica”. Caneta de adrenalina, se houver: logo na parte de fora da coxa, outra depois de 5 min se não melhorar. Deitado, pernas para cima; mais sentado se for difícil respirar. Sem levantar, sem andar.
   *[known] Língua, lábios ou garganta inchando, ou falta de ar depois de comer: ligue já para o { $call } e diga “reação alérgica”. Caneta de adrenalina, se houver: logo na parte de fora da coxa, outra depois de 5 min se não melhorar. Deitado, pernas para cima; mais sentado se for difícil respirar. Sem levantar, sem andar.
}

ask-sick = Nada de comida por enquanto: quem vomita ou tem diarreia fica fora da cozinha até 48 h depois da última vez. Outra pessoa faz as tarefas.
ask-sick-made = O que preparou desde o começo e não vai ser bem cozido depois: lixo. Mãos com água e sabão, 20 s; gel adianta pouco contra virose.
ask-ate-sick = { $call ->
    [none] Goles pequenos de água, sempre, e descanso. Médico se tiver sangue, febre acima de { $fever }, nada parar no estômago, quase nada de xixi, tontura ao levantar, ou mais de três dias. Grávida, muito pequeno, idoso ou doente: ligue já. Vista turva, músculos fracos, dificuldade de respirar ou engolir: a emergência.
   *[known] Goles pequenos de água, sempre, e descanso. Médico se tiver sangue, febre acima de { $fever }, nada parar no estômago, quase nada de xixi, tontura ao levantar, ou mais de três dias. Grávida, muito pequeno, idoso ou doente: ligue já. Vista turva, músculos fracos, dificuldade de respirar ou engolir: o { $call }.
}
ask-ate-sick-rest = Ninguém come mais até saber: embrulhe, marque e geladeira. Vários passando mal? Avise a vigilância sanitária. Quem vomita não mexe na comida dos outros até 48 h depois.
ask-cut = Aperte até parar, lave em água corrente, seque, e por cima um curativo à prova d’água e uma luva. Comida com sangue: lixo. Faca e tábua em água quente com sabão.
ask-cut-doctor = Fundo, aberto, ou ainda sangrando depois de 10 min apertando: médico.

ask-stuffing-slow = A carne está a { $target } e o recheio não? Tire quente com uma colher e termine sem pausa numa travessa no forno, ou na frigideira mexendo, até { $target } no meio. A carne ainda não? Fica tudo no forno.
ask-stuff-ahead = Não: misture e recheie só na hora de assar, sem apertar. Até lá, a parte seca e a úmida esperam na geladeira, separadas. O meio tem que chegar a { $target }.

# ---- hábitos, e o que deu errado
ask-fridge = { $cold } ou menos, por um termômetro lá dentro.
ask-fridge-warm = Sua geladeira está a { $at }: acima de { $cold } nada disso vale. Deixe mais fria, e confira antes de a ave entrar.
ask-baste = Não precisa. Cada vez que se abre o forno custa tempo, e pele molhada não fica crocante.
ask-foil = Já dourou bastante? Papel-alumínio solto por cima e continua assando: só o termômetro diz quando está pronto. Tire nos últimos minutos se quiser a pele crocante.
ask-carve = Primeiro as coxas: corte a pele, abra a coxa para fora e corte na junta; depois separe coxa e sobrecoxa. Cada peito inteiro do osso e então em fatias na transversal. As asas por último. Não na tábua da ave crua.
ask-pop-up = Esse pino pode pular cedo ou tarde demais. Confira com termômetro: { $target } no peito, na coxa e na asa, aí está pronto.
ask-bag-inside = Saquinho de papel não faz mal: tire e vá pelos { $target } na carne. Plástico derretido ou deformado: jogue fora o saquinho e a ave.
ask-probe-out = De volta à parte mais grossa do peito, ponta longe do osso; o que marcou fora não conta. Quebrou? Serve qualquer termômetro de leitura rápida que marque { $ice } em água com gelo. Sem ele ninguém pode dizer que está pronto.
ask-mess = Primeiro papel, depois água quente com detergente, depois desinfetante; mãos, 20 s. O que se come cru e pegou suco vai para o lixo.
ask-crossed = O que se come cru e encostou em caldo cru, na faca ou na tábua dele vai para o lixo. Depois faca, tábua e mãos: água quente e detergente, mãos por { $wash }.
ask-dog = Ossos assados não, eles lascam; nada salgado nem com cebola. Um pouco de carne pura pode.
ask-fragile = Grávidas, maiores de 65, crianças pequenas ou quem tem imunidade baixa: sim, quente, e só com { $target } em tudo o que se mede, no recheio também; sobras só reaquecidas até isso. Na dúvida, pergunte ao médico.
ask-neck = Tire antes de salgar; olhe nas duas pontas, costumam vir num saquinho. Cozinhe para o molho, até { $target }. Crus duram { $giblets } na geladeira.
ask-finish-oven = Sim, direto de um calor para o outro; nunca metade hoje e metade depois. Forno a { $oven } ou mais, { $target } como sempre.
ask-side-up = Peito para cima, pontas das asas dobradas por baixo.
ask-fridge-shelf = Na prateleira de baixo, numa assadeira que segure o suco: nada cru acima de outra comida.
ask-fridge-cover = Sem cobrir a pele seca e fica mais crocante. Assadeira embaixo, prateleira de baixo. Cubra se puder encostar ou pingar em outra comida.
ask-rinse-salt = Não: o sal já entrou, e enxaguar espalha germes pela pia. Seque com papel; grão que sobrar, é só tirar com a mão.
ask-salted-twice = Tire com a mão o que der, sem enxaguar, e nada mais de sal: nem por cima, nem na manteiga, nem sucos no molho. Se já faz tempo, a carne vai ficar salgada: corte fino e não salgue mais nada.
ask-brine-frozen = Descongele primeiro: o sal quase não entra no gelo. Meio descongelada, pode terminar numa salmoura fria, a { $cold } ou menos.
ask-brine-or-not = Não é obrigatório. A seco é o fácil: sal por cima e por baixo da pele, um ou dois dias na geladeira, nada para derramar. Salmoura pede balde e lugar a { $cold }. Nenhum dos dois em ave kosher ou já temperada com solução.
ask-rack = Sem grelha? Rodelas grossas de cebola e cenoura ou um anel de alumínio resolvem. No forno, embaixo, para a ave ficar no meio.
ask-truss = Não precisa: com as pernas soltas as coxas assam antes. Se ela se abrir demais, amarre as pontas de leve.
ask-pan-water = Uma xícara, para os sucos não queimarem. Mais que isso só amolece a pele.
ask-oven-bag = Saco próprio para assar, como diz a embalagem: é mais rápido, então meça cedo. Nada de saco de papel ou de compras: pode queimar e soltar gases.
ask-temper = Não precisa: em uma hora quase não esquenta por dentro. Fora só o tempo que o plano diz, para secar a pele: conta no limite de { $limit }.
ask-which-salt = Qualquer um, se pesar: grama é grama. Na colher não: o sal fino pesa cerca do dobro do sal em flocos. Me diga qual você tem, “sal de mesa”, e eu digo nele.
ask-fits = Meça antes: dois dedos de ar em volta no forno, e uma assadeira de onde as coxas não fiquem para fora. Não cabe? Aberta ou em pedaços em duas assadeiras cabe e fica pronta antes: diga “aberta”.
ask-boil = Sim: coberta de água, em fervura bem leve, até peito, coxa e asa marcarem { $target }. Sem pele crocante, com bom caldo. Minhas horas são de forno: aqui só o termômetro diz.
ask-weather = Longe do vento, tampa fechada, mais combustível à mão: vento, chuva e frio comem o calor. Mesmo assim ao ar livre, nunca em garagem ou tenda. Me diga o que a churrasqueira marca e eu calculo com isso.
ask-grill = Sim: tampa fechada, a ave ao lado das chamas, não em cima, { $oven } ou um pouco mais na grelha. Planejo como defumador. Só ao ar livre.
ask-smoke = Madeira suave: macieira, cerejeira, um pouco de carvalho. A ave entra quando a fumaça está fina e azulada; branca e grossa amarga: mais ar e espere. Só ao ar livre.
ask-gravy-how = Escorra os sucos e tire a gordura. Doure tanta farinha quanta gordura guardar, junte sucos e caldo mexendo até correr e ferva. Prove antes de salgar: ave salgada pinga sal.
ask-carcass = Ossos na geladeira em até { $limit }, use em { $days } ou congele. Cozinhe com cebola e cenoura por 2 a 3 h, coe e esfrie em vasilhas rasas.
ask-bones-out = Nada de caldo com ossos que ficaram fora mais de { $limit }: ferver não desfaz o que cresceu neles. Lixo. Na geladeira a tempo, duram { $days }.
ask-reheat-twice = Esquente só o que for comer, e uma vez: a cada vez fica um tempo morno. Se tiver que ser duas, a { $target } por inteiro nas duas, e na geladeira em até { $limit } entre uma e outra.
ask-leftovers-at = { $at } é quente demais para sobras: guardam-se a { $cold } ou menos. Acima disso mais de { $limit } no total, com mesa e carro, ou ninguém sabe quanto: lixo, reaquecer não resolve. Menos: geladeira já.
ask-crisp = Pele seca: uma noite na geladeira sem cobrir, uma camada fina de óleo, sem papel-alumínio, pouca água na assadeira. Ainda mole no fim? { $crisp } nos últimos 10 min, de olho nela.
ask-fat = Qualquer um dos dois. Pele seca, camada fina logo antes de entrar; manteiga mole por baixo da pele para dar sabor. Sem sal se a ave já está salgada.
ask-no-butter = Óleo ou azeite: uma camada fina sobre a pele seca logo antes de entrar, e embaixo se quiser. Doura igual.
ask-allergy-milk = Leite: óleo no lugar da manteiga, sobre a pele e embaixo. Recheio, molho e purê costumam levar manteiga ou creme.
ask-allergy-gluten = Glúten: o recheio de pão à parte, na própria forma, não dentro; o molho com amido de milho, não com farinha; o fermento conforme o rótulo.
ask-allergy-nuts = Castanhas e amendoim: nada no recheio, nos acompanhamentos nem na sobremesa; misturas, óleos e pão conforme o rótulo.
ask-allergy-egg = Ovo: costuma estar no recheio, nas massas, nos molhos e nas sobremesas.
ask-allergy-label = Leia também o rótulo da ave: temperada ou injetada, pode ter leite, trigo ou soja. Tábua e faca limpas, o prato dessa pessoa primeiro. O cuidado necessário, ela ou o médico sabem.
ask-preheat = Sim, quente antes de a ave entrar: forno de 20 a 30 min, fogo até uma hora.
ask-dial = Esses números mudam de forno para forno: veja o manual. Ou ponha um do meio e deixe um termômetro de forno na grade: em 20 min, busque { $oven } ou um pouco mais. Me diga quanto marca.
ask-early = Pronta é { $target } em toda parte. Então mantenha embrulhada a { $hot } ou mais, pelo termômetro. Ou fatie, geladeira em até { $limit }, e reaqueça para o jantar a { $target }.
ask-fan = Os dois servem. Com convecção vai mais rápido e doura antes; mesmo assim, não menos de { $oven }. Diga “forno de convecção” e eu planejo com isso.
ask-ahead = Sim: assada a { $target }, fatiada, na geladeira em até { $limit } em camadas rasas, comida em { $days }. Reaqueça coberta com um pouco de caldo, a { $target }.
ask-flat = Tesoura dos dois lados da espinha, tire-a, vire a ave e aperte o peito até ficar plano. Leva uns dois terços do tempo. Diga “aberta” ao planejar.
ask-fresh-or-frozen = Tanto faz. Congelada se compra semanas antes, só pede dias para descongelar. Fresca: no máximo { $raw } antes de assar.
ask-thaw-microwave = Para descongelar, só se couber, pelo manual do micro-ondas. Depois asse na hora: partes dela esquentam.
ask-thaw-sink = Na embalagem, bem fechada, sob água fria trocada a cada { $every }. Depois asse na hora. Me diga o peso e eu digo quanto leva.
ask-inject = Pode: líquido frio, pouco antes de assar, e o sal dele conta na dose. A agulha leva germes para dentro: quem decide são { $target } em todos os pontos.
ask-dropped = Crua: limpe com papel, sem enxaguar, e asse até { $target } como planejado; depois, chão e mãos. Assada: tire o que encostou no chão; se não dá para saber, lixo.
ask-prick = Ganso e pato: sim, só a pele, onde tem gordura. Peru e frango não precisam; nunca até a carne, que perde suco.
ask-worry = Quase tudo depende de três coisas: { $target } no peito, na coxa e na asa, nunca mais de { $limit } fora do frio ou do calor, e mãos e tábua lavadas depois da carne crua. Das horas cuido eu; você mede.
ask-not-in-time = Aí a ave fica lá dentro: valem os { $target }, não a hora. Mais calor, começar pelos acompanhamentos, cortar e terminar os pedaços no forno, ou comer mais tarde. Mande as temperaturas cedo e eu digo o que precisa.
ask-raw-inside = De volta ao forno, inteira ou em pedaços, até { $target } na parte mais grossa; antes ninguém come. Faca, tábua e mãos com água quente e sabão. Rosado junto ao osso não prova nada: o termômetro prova.
ask-ate-raw = Quase sempre não dá nada; ninguém pode garantir. O resto volta ao forno até { $target }, ou lixo. Sangue, febre alta, nada para no estômago ou mais de três dias: médico. Grávida, muito pequeno, idoso ou doente: ligue já.
ask-half-cook = Não: nunca metade agora e o resto depois. O meio fica morno por horas, e o calor não desfaz tudo o que cresce. Asse de uma vez até { $target }, corte e gele em menos de { $limit }.
ask-fridge-down = Sem abrir: guarda o frio por cerca de { $unopened }. Depois meça: ave acima de { $cold } por mais de { $limit } vai para o lixo, assar não resolve. Se ainda tem gelo ou está a { $cold } ou menos, tudo bem.
ask-fridge-off = { $span } sem luz é demais, mesmo fechada: a geladeira guarda o frio por cerca de { $unopened }. Meça a ave: ainda com gelo, ou a { $cold } ou menos, tudo bem. Mais quente, ou não dá para saber: lixo, assar não resolve.
ask-cold-at = { $at } é quente demais para ela: { $cold } ou menos. No gelo ou numa geladeira mais fria, já. Mais de { $limit } acima disso, ou ninguém sabe quanto: lixo, assar não resolve.
ask-kills = { $target } nas partes mais grossas mata os germes. Não o que eles deixaram: o que ficou fora mais de { $limit } continua estragado, por mais que esquente.
ask-freezer-down = Deixe fechado: cheio ele segura umas { $full }, meio cheio { $half }. Ave ainda com gelo, ou a { $cold } ou menos, está boa: congele de novo, ou termine de descongelar na geladeira. Descongelada e acima de { $cold } por mais de { $limit }, ou ninguém sabe: lixo, cheire como cheirar.
ask-kosher-bird = Ave que já vem salgada, na salmoura ou kosher: nada de salmoura, nem mais sal sem provar antes.
ask-other-bird = Dessa ave não conheço tempos nem pesos publicados, então não dou nenhum. Vale para todas: pronta com { $target } no peito, na coxa e na asa, pelo termômetro; nunca descongelar na bancada. Conheço peru, frango, capão, pato e ganso.
ask-thermometer = Parte mais grossa do peito, fundo da sobrecoxa, junta da asa; a ponta no meio da carne, longe do osso. { $target } em todos.
ask-garage-thaw = Só se lá ficou a { $cold } ou menos o tempo todo, por um termômetro. Se você não sabe, jogue fora: assar não conserta.
ask-cold-place = Melhor não: o tempo vira, e os bichos vêm. Se não tiver outro jeito, numa caixa térmica fechada com gelo e um termômetro dentro, a { $cold } ou menos o tempo todo. Um dia frio não é uma geladeira.
ask-past-date = A data de validade é um limite: depois dela não se come, nem assado, a não ser que tenha sido congelado a tempo. “Melhor até” é mais flexível: uma ave fresca dura { $days } na geladeira desde a compra, não mais.
ask-past-date-care = Na dúvida, ou se o cheiro ou o toque estiver estranho: lixo. Assar não resolve.
ask-smell = Azedo, podre ou gosmento: lixo, ou de volta à loja. Assar não resolve, e não prove para saber. Um cheiro leve ao abrir a embalagem fechada some em minutos; se não sumir, lixo.
# O que podem comer os pequenos e quem corre mais risco. $call como em ask-choking.
ask-diner-little = A partir de uns seis meses, sim: bem cozido, { $target } em toda parte, em pedacinhos macios, sem pele nem osso, sem sal; sobras só reaquecidas até isso. Nunca nozes, castanhas ou uvas inteiras: pode engasgar. A última palavra é do pediatra.
ask-diner-chokes = Inteiras não, até os cinco anos: nozes, castanhas, uvas, azeitonas e pedaços duros fecham a garganta. Amassadas ou bem picadas, sentado, com alguém ao lado. A última palavra é do pediatra.
ask-diner-swallowed = { $call ->
    [none] Tosse forte? Deixe tossir e fique perto. Respiração com barulho ou esforço, baba, lábios azuis? Ligue já para a emergência. Tudo bem, e depois tosse ou chiado? Médico na hora.
   *[known] Tosse forte? Deixe tossir e fique perto. Respiração com barulho ou esforço, baba, lábios azuis? Ligue já para o { $call }. Tudo bem, e depois tosse ou chiado? Médico na hora.
}
ask-diner-leaves = Melhor deixar: foie gras, patê, salmão defumado, frutos do mar crus, queijo de leite cru ou mole, ovo cru e carne rosada não são para grávidas, crianças pequenas, maiores de 65 ou quem tem imunidade baixa. A última palavra é do médico.
ask-low-salt = Não dá para salgar a mesma ave para uns e não para outros. Deixe sem sal (“sem sal”) e ponha sal na mesa, ou use menos (“menos sal”); molho e recheio também sem sal. Se o rótulo fala em “solução” ou “salmoura”, já tem sal. Quanto a pessoa pode comer, quem diz é o médico.
ask-thermometer-which = Um digital rápido, ou uma sonda que fica dentro. Sem ele ninguém sabe se está seguro: peça um emprestado. Confira antes: na água com gelo marca { $ice }.
ask-no-room = Uma caixa térmica com gelo serve: ave num saco bem fechado, tampa fechada, um termômetro dentro a { $cold } ou menos, gelo novo antes de esquentar. Ou deixe as bebidas de fora; a ave nunca.
ask-carry-food = Frio, numa caixa térmica com gelo, a { $cold } ou menos na chegada; ou quente, embrulhado numa caixa, a { $hot } ou mais. Senão, { $limit } fora no total, com a viagem; { $short } acima de { $air }.
ask-oven-down = Deixe a porta fechada. Se o calor não voltar logo, mude a ave de lugar: outro forno, o do vizinho, uma churrasqueira com tampa ao ar livre. Se ainda não tinha ido ao calor, de volta à geladeira.
ask-oven-down-care = Não pare no meio para terminar depois. Morna, abaixo de { $hot }, por mais de { $limit } ao todo: jogue fora.
ask-still-frozen = Em água fria já, num saco bem fechado, água nova a cada { $every }: pouco mais de 1 h por quilo ainda congelado. Depois asse logo.
ask-still-frozen-cook = Ou asse como está, sem recheio, no forno, não em defumador nem fritadeira: até metade a mais do tempo. Tire os miúdos quando se soltarem. { $target } em toda parte.
ask-from-frozen = No forno, sim: { $oven } ou mais, sem recheio, cerca de metade a mais do tempo de um descongelado. Miúdos fora assim que soltarem, { $target } em toda parte. Nunca no defumador nem na fritadeira.
ask-is-thawed = Descongelado: sem gelo na cavidade, as coxas se mexem, { $cold } ou menos por dentro. Ainda tem gelo? Mais tempo na geladeira, ou água fria.
ask-too-fast = Abaixe o forno, não menos que { $oven }, e cubra com papel-alumínio. { $target } em toda parte é pronto: depois mantenha coberto a { $hot } ou mais.
ask-stall = Parado por uma hora num defumador baixo é a parada: a pele úmida esfria tanto quanto o fogo esquenta. Passa. Mais calor acaba antes, papel-alumínio também, mas a pele amolece. Num forno quente, olhe a ponta: bem dentro da carne, longe do osso. Pronto continua sendo { $target }.
ask-too-slow = Forno a { $oven } ou um pouco mais, porta fechada. Com pressa, separe coxas e peito e asse os pedaços. Melhor servir tarde do que abaixo de { $target }.
ask-stuffing-for = { $people ->
    [one] Recheio para uma pessoa: de { $low } a { $high }.
   *[other] Recheio para { $people }: de { $low } a { $high }. O que não couber sem apertar assa ao lado.
}
ask-gravy-for = { $people ->
    [one] Molho para uma pessoa: de { $low } a { $high }.
   *[other] Molho para { $people }: de { $low } a { $high }.
}

# ---- unidades
ask-convert = { $given } = { $result }.

# ---- por quê: de onde vem um número. Os títulos ficam como foram impressos.
ask-source-seen = { $publisher }: { $title }
ask-source-seen-secondary = { $publisher }: { $title } (citado em outro lugar)
ask-source-common-practice = Prática comum, sem fonte: { $title }
ask-source-from-memory = De memória, não achado impresso: { $publisher }, { $title }
ask-source-derived = Calculado a partir de { $publisher }: { $title }

ask-span = { $span }
