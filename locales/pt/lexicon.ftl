### Palavras que as pessoas digitam, pelo que significam. Ninguém as vê; o programa as lê.
### Each value is a list of words and phrases, separated by commas. Case, accents and plain plurals (see
### lexicon-endings) need no entry of their own; common words of five letters and more are also read with a slip of the
### finger. A translator lists what people really write, abbreviations included; the longest phrase wins. English words
### are understood too where they mean nothing else here.

## How dates are written: mdy or dmy. Whether a comma marks decimals: yes or no.
lexicon-date-order = dmy
lexicon-decimal-comma = yes
## What may be added to a word: plurals and cases.
lexicon-endings = s, es
## Words that lose their end before a vowel and cling to the next word (French l'eau); none here.
lexicon-elisions = { "" }
## Whether a half before an hour is past it (half five: 5:30) or to it (halb sechs: 5:30).
lexicon-half-hour = past

## Words that look like a slip of another word here and are not.
lexicon-plain = sobre, sobra, cobra, cabra, peito, feito, jeito, leito, efeito, perfeito, prefeito, noite, leite, doze, doce, carne, carga, mesa, mesmo, mesma, menos, fora, fogo, jogo, logo, gente, quente, quando, quanto, quantos, conto, canto, santo, ponto, pronto, tanto, junto, gelo, pelo, belo, cedo, medo, dedo, lado, gado, nada, dado, cada, casa, caso, causa, calor, valor, color, coisa, colher, mulher, melhor, maior, menor, muito, pouco, porco, porca, porta, parte, partes, tarde, verde, grande, grano, prato, parto, perto, aperto, certo, carta, corta, corte, forte, fonte, forma, forca, norma, torno, turno, terra, tempo, templo, tempero, mim, minha, vinha, linha, sinto, cinto, quinto, queijo, beijo, deixo, deixa, deixar, peixe, dentro, centro, antes, entre, tampa, tapa, mapa, massa, passa, passo, pasta, posta, resto, rosto, gosto, gostar, agora, hora, horas, senhora, irmã, irmão, tia, sogra, avó, amigo, amiga, agua, agulha, ovelha, ordem, outro, outra, ontem, sempre, nunca, nosso, nossa, vosso, vamos, vemos, temos, tenho, venho, sonho, lenha, senha, saber, sabor, sacar, secar, secos, seca, saída, saiu, salsa, salto, saldo, sala, sabe, ficar, ficou, pegar, pagar, jogar, lugar, fechar, queimar, pimenta, manteiga, metade, verdade, cidade, unidade, quadro, quatro, cinco, cento, vento, lento, dente, mente, frente, frase, fresco, frango, morango, manga, tanga, banco, branco, branca, barco, bacon, batata, salada, assado, pesado, passado, pesar, passar, assar, usar, lavar, levar, livre, livro, litro, vidro, filtro, retiro, tirar, virar, parar, marca, marcou, março, abril, julho, junho, filho, velho, milho, molho, olho, alho

## Números
lexicon-number-0 = zero
lexicon-nobody = ninguém, nenhum convidado
lexicon-number-1 = um
lexicon-number-2 = dois, duas, par, casal
lexicon-number-3 = três
lexicon-number-4 = quatro
lexicon-number-5 = cinco
lexicon-number-6 = seis
lexicon-number-7 = sete
lexicon-number-8 = oito
lexicon-number-9 = nove
lexicon-number-10 = dez
lexicon-number-11 = onze
lexicon-number-12 = doze, dúzia
lexicon-number-13 = treze
lexicon-number-14 = catorze, quatorze
lexicon-number-15 = quinze
lexicon-number-16 = dezesseis, dezasseis
lexicon-number-17 = dezessete, dezassete
lexicon-number-18 = dezoito
lexicon-number-19 = dezenove, dezanove
lexicon-number-20 = vinte
lexicon-number-30 = trinta
lexicon-number-40 = quarenta
lexicon-number-50 = cinquenta
lexicon-number-60 = sessenta
lexicon-number-90 = noventa
lexicon-number-100 = cem, cento
lexicon-number-half = meio, meia
lexicon-number-third = terço
lexicon-number-quarter = quarto
lexicon-number-eighth = oitavo
lexicon-number-article = um, uma
lexicon-number-and = e
lexicon-number-plus = mais
lexicon-number-of = de
lexicon-number-to = a, até
lexicon-minus = menos

## Unidades
lexicon-unit-pound = lb, lbs, libra
lexicon-unit-ounce = oz, onça
lexicon-unit-gram = g, gr, grama
lexicon-unit-kilogram = kg, kgs, quilo, kilo, quilograma
lexicon-unit-milligram = mg, miligrama
lexicon-unit-teaspoon = colher de chá, colheres de chá, colher chá, colheres chá, colherzinha, colherinha, col chá, col de chá, cc
lexicon-unit-tablespoon = colher de sopa, colheres de sopa, colher sopa, colheres sopa, colher, colherada, col sopa, col de sopa, cs
lexicon-unit-cup = xícara, xíc, xícara de chá, xícaras de chá, copo
lexicon-unit-fluid-ounce = onça líquida, onças líquidas, fl oz
lexicon-unit-pint = pinta
lexicon-unit-quart = quarto de galão, quartos de galão
lexicon-unit-gallon = galão, galões
lexicon-unit-milliliter = ml, mililitro
lexicon-unit-liter = l, litro
lexicon-unit-pinch = pitada
lexicon-unit-stick = tablete de manteiga, tabletes de manteiga, tablete
lexicon-unit-fahrenheit = f, °f, fahrenheit, graus f, grau f, graus fahrenheit, ° f
lexicon-unit-celsius = c, °c, celsius, centígrado, graus c, grau c, graus celsius, graus centígrados, ° c
lexicon-unit-degree = °, grau
lexicon-unit-second = s, segundo
lexicon-unit-minute = min, mins, minuto
lexicon-unit-hour = h, hr, hrs, hora
lexicon-unit-day = d, dia
lexicon-unit-week = semana
lexicon-unit-month = mês, meses
lexicon-unit-percent = por cento
lexicon-unit-gas-mark = gas mark, marca de gás, marca do gás
## Mark of a French oven (thermostat 6 is 180 °C); none here.
lexicon-unit-thermostat = { "" }

## Dias e horas
lexicon-weekday-mon = segunda, segunda feira, seg
lexicon-weekday-tue = terça, terça feira
lexicon-weekday-wed = quarta, quarta feira, qua
lexicon-weekday-thu = quinta, quinta feira, qui
lexicon-weekday-fri = sexta, sexta feira, sex
lexicon-weekday-sat = sábado, sáb
lexicon-weekday-sun = domingo, dom
lexicon-month-1 = janeiro, jan
lexicon-month-2 = fevereiro, fev
lexicon-month-3 = março, mar
lexicon-month-4 = abril, abr
lexicon-month-5 = maio, mai
lexicon-month-6 = junho, jun
lexicon-month-7 = julho, jul
lexicon-month-8 = agosto, ago
lexicon-month-9 = setembro, set
lexicon-month-10 = outubro, out
lexicon-month-11 = novembro, nov
lexicon-month-12 = dezembro
lexicon-day-today = hoje
lexicon-day-tonight = hoje à noite, esta noite, hoje de noite
lexicon-day-tomorrow = amanhã
lexicon-day-after-tomorrow = depois de amanhã
lexicon-day-yesterday = ontem
## What stands before the day of a month without its name (French le 24).
lexicon-day-of-month = dia, no dia, para o dia
lexicon-holiday-thanksgiving = ação de graças, dia de ação de graças, thanksgiving
lexicon-holiday-christmas = natal, dia de natal, almoço de natal
lexicon-holiday-boxing-day = { "" }
lexicon-holiday-numbered-day = { "" }
lexicon-holiday-christmas-eve = véspera de natal, noite de natal, ceia de natal
lexicon-holiday-new-year = ano novo, dia de ano novo
lexicon-holiday-new-year-eve = véspera de ano novo, réveillon, noite de ano novo
lexicon-holiday-easter = páscoa, domingo de páscoa
lexicon-next = próximo, próxima, que vem, este, esta, nesta, neste
lexicon-part-morning = am, da manhã, de manhã, pela manhã
lexicon-part-afternoon = pm, da tarde, de tarde, à tarde, da noite, de noite, à noite, noite
lexicon-noon = meio dia, ao meio dia, meiodia
lexicon-midnight = meia noite, à meia noite
lexicon-oclock = em ponto
lexicon-past = passadas
lexicon-to = para as, para às, pras
lexicon-at = às, as, à, para as, para às, pras, pelas, lá pelas, por volta das, a partir das, até as, até às, a
lexicon-since = desde, desde o
lexicon-on = o, a, no, na, de, do, da, para o, para a, pro, pra
lexicon-in = em, dentro de, daqui a
lexicon-ago = há, faz, atrás
lexicon-later = mais tarde, depois, atrasa, atrasar, atrase, adia, adiar, adie
lexicon-earlier = antes, mais cedo, adianta, adiantar, adiante, antes da hora, de antecedência, adiantado
lexicon-now = agora, agora mesmo, neste momento
lexicon-ordinal = o
lexicon-meal-dinner = jantar, janta, ceia, jantamos, servir, mesa, na mesa, comer, comemos, cear, ceamos, ceamos
lexicon-meal-lunch = almoço, almoçar

## A ave
lexicon-bird-turkey = peru, perua, peruzinho, peru no forno
lexicon-bird-turkey-breast = peito de peru
lexicon-bird-chicken = frango, galinha, galeto
lexicon-bird-capon = capão, capões
lexicon-bird-duck = pato, marreco
lexicon-bird-goose = ganso
lexicon-bird-any = ave
lexicon-other-bird = galinha-d'angola, galinha d'angola, galinha da angola, capote assado, codorna, codornas, faisão, faisões, perdiz, perdizes, pombo, avestruz
lexicon-condition-fresh = fresco, fresca, descongelado, descongelada, já descongelado, já descongelada, não congelado, não congelada, resfriado, resfriada
lexicon-condition-frozen = congelado, congelada, ainda congelado, ainda congelada, duro de gelo, dura de gelo, não descongelei, não descongelei ainda, ainda não descongelei, não descongelado, não descongelada, não está descongelado, ainda não descongelou, não descongelou, ainda não está descongelado, ainda está congelado, ainda está congelada, continua congelado, continua congelada
lexicon-unthawed = não descongelei, não descongelei ainda, ainda não descongelei, não descongelado, não descongelada, não está descongelado, ainda não descongelou, não descongelou, ainda não está descongelado, ainda congelado, ainda congelada, ainda está congelado, ainda está congelada, continua congelado, continua congelada
lexicon-condition-part-thawed = meio congelado, meio congelada, meio descongelado, meio descongelada, parcialmente descongelado, parcialmente descongelada, semi congelado, semi congelada, ainda com gelo, com gelo dentro
lexicon-form-whole = inteiro, inteira
lexicon-form-flat = aberto, aberta, achatado, achatada, espalmado, espalmada, borboleta, em borboleta, sem espinha, spatchcock
lexicon-form-pieces = em pedaços, pedaços, em partes, aos pedaços, cortado em pedaços, cortada em pedaços, desossado em partes
lexicon-stuffed = recheado, recheada, com recheio
lexicon-unstuffed = sem recheio, sem rechear, não recheado, não recheada, recheio à parte, recheio fora, recheio ao lado
lexicon-solution = solução, contém até, contém, salmoura adicionada, injetado, injetada, adicionado
lexicon-basted = injetado, injetada
lexicon-salted-already = já salgado, já salgada, vem salgado, salgado de fábrica, já temperado, já temperada, temperado, temperada, pré temperado, pré temperada, vem temperado, vem temperada, já vem temperado

## Quem come
lexicon-people = pessoa, gente, convidado, convidada, comensal, porção, porções, pratos, à mesa, bocas
lexicon-adults = adulto, adulta
lexicon-children = criança, menino, menina, pequenos, filhos
lexicon-among = sendo, dos quais, incluindo, contando, deles, entre eles, com
lexicon-another = outro, outra, mais um, mais uma, segundo
lexicon-size-big = grande, maior, pesado
lexicon-size-small = pequeno, pequena, menor
lexicon-instead = em vez, melhor, prefiro, muda, mudar, vamos dizer, passa, passar
lexicon-joining = vêm também, vem também, também vêm, também vem, vão vir, a mais, mais
lexicon-for = para, pra, somos, seremos, somos em, família de, mesa de, mesa para, agora somos, somos agora, vamos ser, seremos agora, agora vamos ser, já somos, agora seremos
lexicon-leftovers = sobras, com sobras, que sobre, que sobrem
lexicon-no-leftovers = sem sobras, que não sobre

## Calor, sal, caminho
lexicon-cooker-oven = forno, no forno, ao forno, forno comum, forno a gás, forno elétrico, forno sem ventilador, vai ao forno, vai para o forno, vai pro forno, entra no forno, ponho no forno, coloco no forno, boto no forno, peru no forno, ave no forno
lexicon-heat-stove = fogão, no fogão, boca do fogão, cooktop, panela, na panela, frigideira, na frigideira, fogo baixo
lexicon-heat-set = aumentei, abaixei, subi, baixei, coloquei em, ajustei, aumentei para, abaixei para
lexicon-heat-turned = aumentei, abaixei, subi, baixei, ajustei, aumentei para, abaixei para
lexicon-reading-before = antes disso, mais cedo, há pouco, um tempo atrás, da última vez, anteriormente
lexicon-reading-said = marcava, marcou, dizia, disse
lexicon-heat-moved = passei o peru, passei o peru pro, passei o peru para, passei ele, passei ele pro, mudei o peru, mudei o peru pro, mudei ele pro, transferi o peru, transferi ele, estou terminando no, estou terminando ele, tô terminando no, termino ele
lexicon-heat-moved-first = agora no, agora está no, agora tá no, terminando no, passei pro, passei para o, mudei pro, mudei para o, transferi para o, transferi pro
lexicon-heat-later = vou passar, vou mudar, vamos, quero, deveria, poderia, depois, mais tarde, quando, se eu, talvez
lexicon-heat-start = vai ao forno, vai para o forno, vai pro forno, entra no forno, ponho no forno, coloco no forno, boto no forno, começo a assar, começar a assar, começamos a assar, início do assado
lexicon-heat-start-early = peru no forno, ave no forno
lexicon-heat-all-along = o tempo todo, todo o tempo, todo esse tempo, esse tempo todo, este tempo todo, desde o começo, desde o início, desde o princípio
lexicon-heat-was = estava, esteve, tinha, ficou, está há, tava
lexicon-heat-off = desligado, desligada, apagado, apagada, desligados
lexicon-heat-never = nunca liguei o forno, não liguei o forno, esqueci de ligar o forno, o forno nunca foi ligado, o forno não estava ligado, forno não estava ligado
lexicon-heat-back = religado, ligado de novo, de novo em, religuei, voltou, já voltou, a luz voltou, luz voltou, voltou a luz, a energia voltou, energia voltou, voltou a energia, o forno voltou, forno voltou, o forno voltou a funcionar, forno voltou a funcionar, forno funcionando de novo, o forno está funcionando de novo, funcionando de novo, está ligado de novo, tá ligado de novo, forno ligado de novo, o fogo voltou, fogo voltou, voltou a funcionar
lexicon-heat-returned = voltou, já voltou, a luz voltou, luz voltou, voltou a luz, a energia voltou, energia voltou, voltou a energia, o forno voltou, forno voltou, o forno voltou a funcionar, forno voltou a funcionar, forno funcionando de novo, o forno está funcionando de novo, funcionando de novo, está ligado de novo, tá ligado de novo, forno ligado de novo, o fogo voltou, fogo voltou, voltou a funcionar
lexicon-cooker-fan-oven = forno com ventilador, forno de convecção, convecção, forno com convecção, forno ventilado, forno turbo, ventilador
lexicon-cooker-smoker = defumador, defumado, defumada, defumar, churrasqueira, grelha, pit, kettle, na brasa
lexicon-fryer = fritadeira, frito, frita, fritar, fritá lo, fritura, óleo quente, óleo fervendo
lexicon-salting-none = sem sal, sem salgar, não salgar, sem salmoura, nada de sal
lexicon-salting-dry = salmoura seca, salga seca, salgar a seco, salgado a seco, salgado, salgada, com sal, a seco
lexicon-salting-wet = salmoura, na salmoura, em salmoura, salmoura líquida, salmoura úmida
lexicon-thawing-fridge = descongelar na geladeira, na geladeira, geladeira, no frigorífico
lexicon-thawing-cold-water = água fria, descongelar em água, em água fria, na água fria
lexicon-thawing-cook-frozen = assar congelado, assar congelada, direto do freezer, sem descongelar
lexicon-ahead = véspera, na véspera, dia antes, um dia antes, no dia antes, dia anterior, no dia anterior, com antecedência, de véspera, na noite anterior, noite anterior
lexicon-not-ahead = mesmo dia, no mesmo dia, no dia
lexicon-elsewhere = na casa da minha irmã, na casa do meu irmão, na casa da minha mãe, na casa do meu pai, na casa dos meus pais, na casa da minha tia, na casa da minha avó, na casa da minha sogra, na casa dos meus sogros, na casa da, na casa do, na casa de, na casa dos, em outra casa, outra casa, fora de casa, vou levar, levar, levo, levamos
lexicon-here = asso lá, assar lá, assamos lá, em casa, na minha casa, na nossa casa, aqui, aqui em casa
lexicon-drive = de carro, de viagem, viagem, de estrada, de caminho, trajeto, de distância, de trajeto
## Carried to another house, and how it arrives
lexicon-bring = levar, levo, levamos, vou levar, vamos levar, levá-lo, levá-la, levado, levada, trazer, trazemos, trago, transportar, transportamos, entregar
lexicon-hot = quente, quentes, quentinho, quentinha, bem quente, ainda quente
lexicon-cold = frio, fria, frios, frias, gelado, gelada
lexicon-at-home = tenho, temos, já tenho, já temos, no meu freezer, comprado, comprada, já comprei, comprei, já comprado, já está em casa, já em casa, já tá em casa, já está aqui
lexicon-money = reais, euros, centavos, dólares
lexicon-use-by = validade, data de validade, prazo de validade, validade até, vence, vence em, vence dia, consumir até, válido até, válida até
lexicon-to-buy = tenho que comprar, preciso comprar, falta comprar, vou comprar, comprar
lexicon-ask-shopping = lista de compras, a lista de compras, o que preciso comprar, o que tenho que comprar, o que falta comprar, que preciso comprar, o que eu compro, o que comprar, o que precisamos comprar
lexicon-shopping = compro, compramos, comprar, pego, pegar, busco, buscar

## Onde o termômetro mede
lexicon-spot-breast = peito
lexicon-spot-thigh = coxa, sobrecoxa, sobre coxa, perna
lexicon-spot-pit = defumador, forno, ar, churrasqueira, câmara, ambiente, grelha
lexicon-spot-stuffing = recheio
lexicon-spot-wing = asa, asas

## Passos
lexicon-step-buy = comprar, compra, compras, comprar a ave, comprar o peru, compro
lexicon-step-thaw = descongelar, degelo, descongelamento, começar o degelo, tirar do freezer, descongelo
lexicon-step-water = água, troca de água, trocar a água, trocar água, troca da água
lexicon-step-salt = salgar, sal, salmoura, salga, salgo
lexicon-step-rest = repouso, repouso com sal
lexicon-step-temper = secar, untar, secar e untar, tirar da geladeira, tirar geladeira
lexicon-step-fire = fogo, acender, acender o fogo, acender fogo, pré aquecer, preaquecer, aquecer o forno, ligar o forno, ligar forno, acender o calor, ligo o forno, acendo, ligo
lexicon-step-on = ave no calor, no forno, pôr no forno, colocar no forno, botar no forno, pôr, colocar, coloco, ponho, boto, coloco no forno, vai ao forno, colocar a ave
lexicon-step-check = medir, medir temperaturas, conferir, checar, termômetro, olhar
lexicon-step-pull = tirar do forno, tirar do fogo, tirar do calor, tirar, tiro do forno, fora do fogo
lexicon-step-stand = descansar, descanso, deixar descansar
lexicon-step-carve = cortar, corte, fatiar, destrinchar, trinchar, corto, fatio
lexicon-step-chill = esfriar, resfriar, gelar, para a geladeira, pra geladeira, guardar, guardar as sobras, guardar sobras
lexicon-step-pack = embalar, embrulhar, empacotar
lexicon-step-travel = sair, sair de casa, viajar, viagem, levar
lexicon-step-reheat = reaquecer, requentar, esquentar
lexicon-step-serve = servir, jantar
lexicon-step-leftovers = sobras

lexicon-yes = sim, claro, ok, tá, beleza, isso, certo
lexicon-no = não

## A job is done
lexicon-done = feito, feita, pronto, pronta, terminei, acabei, já foi, já fiz, tá feito, tá pronto, está feito

## Sais pelo grão
lexicon-salt-table = sal de mesa, sal refinado, sal fino, sal comum, sal de cozinha, sal iodado, refinado
lexicon-salt-fine-sea = sal marinho fino, marinho fino, sal marinho, sal do mar
lexicon-salt-pickling = sal para conserva, sal de conserva, sal para conservas
lexicon-salt-flake-kosher = sal kosher em flocos, kosher em flocos, sal em flocos, flor de sal, flocos de sal, flocos, kosher de flocos
lexicon-salt-coarse-kosher = sal kosher grosso, kosher grosso, kosher de grão grosso
lexicon-salt-coarse-sea = sal marinho grosso, marinho grosso, sal grosso, sal de churrasco
lexicon-salt-kosher = sal kosher, kosher
lexicon-salt-own = meu sal, meu próprio sal, o meu
lexicon-ask-only = só tenho, só temos, só tem
lexicon-salt-any = sal
lexicon-sodium = sódio
lexicon-butter = manteiga
lexicon-strength-light = leve, suave, menos sal, menos salgado, pouco sal, com menos sal, menos salgada, não muito salgado
lexicon-strength-bold = forte, mais salgado, mais sal, com mais sal

## O que se pergunta
lexicon-ask-into = em, são, converter, converte, passar, equivale, em vez de, no lugar de, substituir, trocar, quanto é, quanto são, quanto dá
lexicon-ask-how-much = quanto, quanta, que quantidade, qual quantidade, quantidade de
lexicon-ask-how-long = quanto tempo, quanto demora, quantas horas, quantos minutos, quantos dias, tempo de, quando começo, que horas começo, demora, por quanto tempo
lexicon-ask-when = quando, que horas, a que horas
lexicon-ask-how-big = que tamanho, qual tamanho, de que tamanho, qual o tamanho, qual o peso, que peso, quantos quilos, quanto de peru, quanto peru, quanto de frango, tamanho
lexicon-ask-how-many = quantos, quantas, quantas pessoas, para quantos, para quantas pessoas, pra quantas pessoas, dá para, dá pra, serve quantos, serve quantas, rende, chega para, chega pra, basta para, é suficiente para
lexicon-ask-enough = dá para, dá pra, chega para, chega pra, basta para, é suficiente para
lexicon-ask-how = como, que, qual
lexicon-ask-why = por que, por quê, porque, fonte, quem disse, de onde vem, de onde sai
lexicon-ask-deep = quão fundo, até onde, quanto penetra, penetra, profundidade, quanto entra, que profundidade
lexicon-ask-safe = seguro, segura, é seguro, tudo bem, tá bom, está bom, basta, suficiente, perigoso, perigosa, faz mal, ruim, posso, pode, devo, tem que, precisa, tenho que, ok, bom, boa, ainda dá, é verdade
lexicon-ask-temperature = temperatura, a que temperatura, que temperatura, qual temperatura, qual a temperatura, temperatura interna, quantos graus, a quantos graus, quando está pronto, deve marcar, marcar, como sei que está, como sei se está
lexicon-ask-tell = como sei se, como sei que, como saber se, como sei que está, como sei se está, como saber, como sei
lexicon-ask-leave = deixar, deixá-lo, deixar ele, deixo
lexicon-ask-out = fora, de fora, fora da geladeira, em temperatura ambiente, à temperatura ambiente, temperatura ambiente, na bancada, em cima da mesa, esqueci, sem refrigeração, no carro, na pia, ainda na mesa, ainda em cima da mesa, ficar na mesa, está na mesa, tá na mesa, estar na mesa, deixar na mesa, fica na mesa
lexicon-ask-left = deixei, deixado, esqueci, ficou
lexicon-ask-counter = bancada, na bancada, na pia, em cima da pia, temperatura ambiente, em temperatura ambiente, água quente, água morna, em cima da mesa, água fervendo, água fervente, ficar na mesa, está na mesa, tá na mesa, estar na mesa, deixar na mesa, fica na mesa, ainda na mesa
lexicon-ask-keep = dura, duram, aguenta, aguentam, conserva, conservam, se conserva, guardar, guardo, ficar, fica, ainda presta, de dias, mantenho, comer as sobras, ainda comer, ainda dá para comer, ainda dá pra comer
lexicon-ask-hot-water = água quente, água morna, água fervendo, água fervente
lexicon-ask-past-date = vencido, vencida, venceu, validade vencida, fora da validade, passou da validade, passou do prazo, prazo de validade, data de validade, validade
lexicon-ask-smell = cheira, cheirando, cheiro, fede, fedendo, gosmento, gosmenta, viscoso, viscosa
lexicon-ask-smell-good = cheiro bom, cheirando bem, cheira bem, cheiro gostoso, que cheiro bom, cheiro delicioso, cheirinho bom, cheiro maravilhoso, cheirando muito bem, cheira tão bem
lexicon-habit-raw-inside = cru perto do osso, cru no osso, cru por dentro, crua por dentro, está cru, está crua, ainda cru, ainda crua, ainda está cru, cru no meio, cru dentro, sangrando no osso
lexicon-habit-cooked-said = pronto, pronta, assado, assada, cozido
lexicon-habit-not-there = não
lexicon-habit-ate-raw = comemos cru, comemos peru cru, comi cru, comemos o peru cru, comido cru, comi frango cru, comemos mal passado
lexicon-habit-half-cook = assar pela metade, assar metade, pré assar, pré cozinhar, meio assado hoje, terminar amanhã, termino amanhã, acabar amanhã, terminar de assar amanhã, assar em duas vezes
lexicon-habit-fridge-down = geladeira desligada, geladeira desligou, geladeira quebrou, geladeira quebrada, geladeira parou, geladeira sem energia, geladeira sem luz, geladeira não gela, geladeira não está gelando, geladeira ficou desligada, geladeira pifou
lexicon-habit-comes-salted = vem na salmoura, já vem na salmoura, veio salgado, já injetado, vem injetado, já vem com sal
lexicon-ask-smell-bad = cheiro ruim, cheiro estranho, não cheira bem, cheiro de podre, cheiro azedo, cheira mal, cheirando mal, cheiro de ovo, cheiro forte
lexicon-habit-two-probes = dois termômetros, os dois termômetros, cada termômetro, um diz, outro diz, um marca, outro marca, termômetros não batem, os termômetros não batem
lexicon-habit-inject = injetar, injeto, injetado, injeção, injetar nele
lexicon-ask-low-salt = não pode comer sal, não pode sal, não pode com sal, dieta sem sal, dieta com pouco sal, pouco sódio, baixo sódio, hipertenso, hipertensa, pressão alta, hipertensão, pressão arterial, pressão do sangue, tensão alta, tensão arterial, sofre de pressão, tem pressão
lexicon-ask-keep-hot = manter quente, manter aquecido, mantenho quente, manter quentinho, deixar quente, mantê lo quente
lexicon-ask-warm = quente, quentes, quentinho, aquecido, peru quente, ave quente, frango quente
lexicon-ask-carry = transportar, transporto, levar, levo
lexicon-ask-carry-hot = como levo quente, como levar quente, como levo ele quente, como transportar quente
lexicon-ask-no-room = não cabe, sem espaço, não tem espaço, cheia, pequena demais, muito pequena, é pequena
lexicon-ask-cool = esfriar, resfriar, esfrio, resfrio, gelar, quente na geladeira, ainda quente, peru quente, guardar quente, quão rápido
lexicon-ask-reheat = reaquecer, requentar, reaqueço, requento, esquentar, esquento as sobras, reaquecido
lexicon-ask-wash = lavar, lavo, enxaguar, enxáguo
lexicon-ask-thaw = descongelar, descongela, descongelo, degelo, descongelamento, descongelando
lexicon-ask-stuff = rechear, recheio, recheado, recheada, recheio o
lexicon-ask-roast = assar, asso, assa, assado, cozinhar, forno, defumar, leva, demora, grelhar
lexicon-ask-cook = assar, asso, cozinhar, cozinho, assá-lo, assar ele, cozinhá-lo
lexicon-ask-indoors = dentro de casa, dentro, no interior, garagem, na garagem, na cozinha, barraca, varanda coberta, varanda, sacada, apartamento
lexicon-fuel-charcoal = carvão, briquete, brasas, carvão vegetal
lexicon-fuel-propane = propano, botijão, botijão de gás, butano, glp
lexicon-fuel-pellets = pellets, pellet
lexicon-food-leftovers = sobras, peru assado, frango assado, ave assada, assado, cozido, cozida, carne assada, carne cozida
lexicon-food-gravy = molho, caldo
lexicon-food-stuffing = recheio, recheio assado
lexicon-food-giblets = miúdos
lexicon-food-soup = sopa, ensopado
lexicon-food-raw = cru, crua, fresco, fresca, descongelado, descongelada
lexicon-place-fridge = geladeira, na geladeira, refrigerador, frigorífico
lexicon-shelf = prateleira
lexicon-place-freezer = freezer, no freezer, congelador, no congelador, congelar, congelado, congelada
lexicon-label-per = por, por cada, cada
lexicon-ask-overnight = a noite toda, a noite inteira, noite toda, noite inteira, desde ontem à noite, durante a noite
lexicon-ask-low-heat = baixa temperatura, em baixa temperatura, a baixa temperatura, temperatura baixa, cozimento lento, assar lento
lexicon-ask-refreeze = recongelar, congelar de novo, congelar novamente, voltar a congelar, congelar outra vez
lexicon-ask-colour = rosado, rosada, rosa, cor, sucos, suco, sangue, vermelho, vermelha
lexicon-ask-stand = descansar, descanso, descansa, repousar

## Quando algo dá errado, e hábitos
lexicon-ask-help = o que faço, o que eu faço, o que fazemos, o que fazer, e agora, o que posso fazer, socorro, que faço, e se, o que acontece se
lexicon-ask-oven-down = forno quebrou, o forno quebrou, quebrou o forno, forno quebrado, forno pifou, o forno pifou, pifou o forno, forno não funciona, o forno não funciona, forno não esquenta, o forno não esquenta, forno apagou, o forno apagou, forno parou, o forno parou, acabou a luz, faltou luz, sem luz, acabou a energia, faltou energia, sem energia, acabou o gás, o fogo apagou, fogo apagou, apagou o fogo, fogo apagado, defumador apagou, churrasqueira apagou, acabou o gás, acabou o carvão, a brasa apagou, sem gás, sem carvão, fiquei sem gás, fiquei sem carvão, forno morreu, o forno morreu, forno acabou de apagar, não esquenta
lexicon-peril-fire = em chamas, há chamas, tem chamas, tem chama, saindo chamas, saindo chama, chamas no forno, chama no forno, pegou fogo, pegando fogo, está pegando fogo, fogo no forno, tem fogo no forno, incêndio, incendiou, labaredas, gordura em chamas, óleo pegou fogo, está a arder, fogo na cozinha
lexicon-peril-gas = cheiro de gás, cheiro a gás, cheirando a gás, cheirando gás, cheira a gás, vazamento de gás, vazando gás, gás vazando, fuga de gás, sentindo gás, sinto cheiro de gás
lexicon-nearly-out = quase sem, quase acabando, está acabando, tá acabando, resta pouco, sobrou pouco
lexicon-speed = kmh, kph
lexicon-ask-come-up = demorou, levou, para chegar, até chegar, chegar a, chegou a, atingiu, atingir
lexicon-ask-too-fast = rápido demais, muito rápido, depressa demais, cedo demais, antes da hora
lexicon-ask-too-slow = devagar demais, muito devagar, lento demais, muito lento, demora demais, demorando demais, demorando muito, não assa, não fica pronto, não anda
lexicon-ask-garage = garagem, na garagem, despensa, varanda, na varanda, sacada, na sacada, quintal, no quintal, no carro
lexicon-ask-baste = regar, regá lo, rego, pincelar, pincelo, banhar, molhar com o caldo, jogar o caldo por cima, abrir o forno, abro o forno
lexicon-ask-foil = pele tá queimando, pele ta queimando, pele está queimando, queimando por cima, muito escuro, dourando demais, cobrir com papel alumínio, cobre com papel alumínio, cubro com papel alumínio, papel alumínio por cima, está queimando, tá queimando, ta queimando, queimando, queimou, muito escura, escuro demais, escura demais, com papel alumínio, com papel-alumínio, papel alumínio
lexicon-ask-where = onde, aonde
lexicon-ask-thermometer = termômetro, sonda, termômetro de carne
lexicon-habit-bag-inside = saquinho dentro, saco dentro, saquinho lá dentro, miúdos dentro, os miúdos dentro, miúdos lá dentro, esqueci o saquinho, esqueci os miúdos, deixei o saquinho, deixei os miúdos, plástico dentro
lexicon-habit-pop-up = pino pulou, o pino pulou, pino saltou, o pino saltou, pino vermelho, botão vermelho, pino subiu, o pino subiu, termômetro que pula, pino do peru
lexicon-habit-probe-out = a sonda saiu, sonda saiu, a sonda caiu, sonda caiu, termômetro caiu, o termômetro caiu, termômetro quebrou, o termômetro quebrou, quebrou o termômetro, termômetro quebrado, termômetro não funciona, o termômetro parou, termômetro parou
lexicon-habit-mess = vazou, vazando, pingou, escorreu, derramou, suco na geladeira, líquido na geladeira, tábua de corte, tábua de cortar, limpar depois, como limpo, caldo cru
lexicon-habit-dog = cachorro, cachorra, gato
lexicon-aside-drink = vinho, espumante, cerveja, refrigerante, champanhe
lexicon-habit-fragile = grávida, grávidas, gestante, imunidade baixa, imunossuprimido, imunossuprimida, quimio, quimioterapia
lexicon-habit-temper = chegar à temperatura ambiente, chegar na temperatura ambiente, ficar em temperatura ambiente, voltar à temperatura ambiente, deixar amornar, tirar o gelo antes
lexicon-habit-finish-oven = terminar no forno, acabar no forno, passar para o forno, passar pro forno, finalizar no forno
lexicon-habit-early = pronto cedo demais, pronta cedo demais, ficou pronto cedo, ficou pronta cedo, pronto antes da hora, pronta antes da hora, horas antes da hora, hora antes da hora, horas adiantado, hora adiantado
lexicon-habit-neck = pescoço
lexicon-habit-side-up = peito para cima, peito pra cima, peito para baixo, peito pra baixo, de barriga para cima, qual lado para cima, que lado para cima
lexicon-habit-cover = cobrir, cubro, coberto, coberta, descoberto, descoberta, tampar, tampado, tampada, embrulhar, embrulhado, embrulhada
lexicon-habit-must = devo, tem que, tenho que, é preciso, ou não, é necessário, necessário, é melhor, melhor, vale a pena
lexicon-habit-or = ou
lexicon-habit-rack = grelha de assar, grade
lexicon-habit-truss = amarrar as pernas, amarrar as coxas, amarrar, amarro, barbante, barbante de cozinha
lexicon-habit-pan-water = água na assadeira, água na forma, caldo na assadeira, pôr água, colocar água, botar água
lexicon-habit-oven-bag = saco de assar, saco para assar, no saco, saco assa fácil, saco de papel, saco plástico
lexicon-habit-weather = chovendo, chuva, vento, ventando, nevando, temporal, rajadas
lexicon-habit-smoke = fumaça branca, fumaça grossa, que lenha, qual lenha, que madeira, qual madeira, lascas de madeira
lexicon-habit-grill = churrasqueira, grelha
lexicon-habit-gravy = fazer o molho, fazer molho, sucos da assadeira, suco da assadeira, caldo da assadeira, engrossar
lexicon-habit-salty = salgado demais, salgada demais, muito salgado, muito salgada
lexicon-habit-salted-twice = salguei duas vezes, salgado duas vezes, salgada duas vezes, coloquei sal demais, pus sal demais, exagerei no sal
lexicon-habit-carcass = carcaça, ossos
lexicon-habit-crisp = crocante, pele crocante, borrachuda, fermento em pó, pururuca
lexicon-habit-fat = manteiga embaixo da pele, manteiga por baixo da pele, manteiga sob a pele, óleo ou manteiga, manteiga ou óleo, passar manteiga, passar óleo, untar com manteiga
lexicon-habit-preheat = pré-aquecer, preaquecer, preaquecido, pré-aquecido
lexicon-habit-microwave = micro-ondas, microondas
lexicon-last = passado, passada, último, última

## Frases curtas, só como texto inteiro: palavras que nada dizem, o feito, o não feito, por passo
lexicon-talk-filler = eu, já, o, a, os, as, lhe, ele, ela, nós, a gente, gente, foi, está, tá, esta, estão, tão, me, se, acabei, acabamos, de, que, pois, agora, mesmo, ok, sim, bem, por, fim, oi, olha, peru, ave, frango, pato, ganso, bicho, um, uma, meu, minha, nosso, nossa, ai, opa, tudo, todo, toda, todos, obrigado, obrigada, isso, pessoal, e, é, aí, hoje, faz, momento, pouco, enfim, finalmente, favor, galera, só, minuto, minutos, ser, temos, ufa, mais cedo, hmm, hm
lexicon-talk-done = feito, feita, pronto, pronta, terminei, terminado, terminada, já fiz, fiz, já foi, foi feito, está feito, tá feito, tudo pronto, tudo certo, acabei, resolvido, concluído
lexicon-talk-not = ainda não, não, não feito, não está, esqueci, me esqueci, esquecemos, esqueci de, não deu, não deu tempo, não deu tempo de, não pude, não consegui, não fiz, ainda não fiz, não comecei, ainda não comecei, sem tempo, não foi
lexicon-talk-asking = posso, podemos, pode, dá para, da pra, devo, preciso, tem que, como, quando, quanto, quanta, o que, que, onde, quem, qual, por que, ainda posso, será que, o que é, como faço
lexicon-talk-asks-of = será
lexicon-talk-ahead = hoje à noite, esta noite, amanhã, mais tarde, vou, vamos, vai, tenho que, preciso, tem que, devo
lexicon-talk-behind = esta manhã, hoje de manhã, ontem à noite
lexicon-talk-when = quando a gente come, quando comemos, que horas comemos, a que horas comemos, que horas a gente come, que horas é o jantar, que horas é a ceia, que horas é o almoço, quando fica pronto, quando está pronto, quando vai ficar pronto, quanto falta, falta muito, quanto tempo falta, que horas fica pronto, já dá pra tirar, dá pra tirar, posso tirar, já posso tirar, tá pronto, está pronto, já está pronto, que horas vai ficar pronto, falta mto, quanto tempo fica no forno, qto tempo fica no forno, q horas fica pronto, que hora fica pronto, qto falta, quanto falta ainda, vai dar tempo, dá tempo, vai dar tempo até, dá tempo até, vamos conseguir a tempo, vai ficar pronto a tempo, fica pronto a tempo, vai ficar pronto até, vai ficar pronto até as, vai ficar pronto às, fica pronto até, fica pronto até as, estamos no horário, tô no horário, estamos atrasados, tô atrasada, tô atrasado, vai estar pronto até, vai estar pronto a tempo
lexicon-talk-next = o que vem agora, o que vem depois, qual o próximo passo, próximo passo, o que falta fazer
lexicon-talk-undone-thaw = continua congelado, continua congelada, ainda congelado, ainda congelada, continua duro, ainda duro, ainda dura, continua duro como pedra, duro como pedra, duro feito pedra, continua duro feito pedra, ainda duro feito pedra, duro que nem pedra, ainda com gelo, ainda tem gelo, tem gelo dentro, ainda tem gelo dentro, com gelo dentro, gelo dentro, continua com gelo, não descongelou, ainda não descongelou, não descongelado, não descongelada, continua meio congelado, ainda meio congelado, ainda meio congelada, ainda descongelando, congelado por dentro, ainda congelado por dentro, congelado dentro, ainda congelado dentro, congelado no meio, ainda congelado no meio, ainda congelada no meio, não descongelou tudo
lexicon-talk-icy = dentro, por dentro, gelo, meio, centro
lexicon-talk-thawed = descongelado, descongelada, descongelou, já descongelou, totalmente descongelado, terminou de descongelar, acabou de descongelar
lexicon-talk-thawing = está descongelando, estou descongelando, a descongelar
lexicon-talk-undone-water = água não trocada, não troquei a água, não troquei água, esqueci de trocar a água, esqueci a água, não foi trocada a água
lexicon-talk-undone-salt = não salgado, não salgada, sem salgar, não salguei
lexicon-talk-undone-on = não no forno, não está no forno, não entrou, ainda não entrou, ainda não no forno
lexicon-talk-undone-pull = pus de volta, voltei pro forno, ainda no forno, continua no forno, ainda no defumador, continua dentro, ainda dentro, ainda assando, continua assando, de volta ao forno, de volta no forno, voltou pro forno, voltou para o forno, coloquei de volta, botei de volta, de novo no forno
lexicon-talk-undone-chill = ainda fora, continua fora, continuam fora, ainda na mesa, continua na mesa, ainda em cima da mesa, ainda em cima mesa, esqueci na mesa, esqueci em cima da mesa, esqueci fora, deixei na mesa, deixei fora, esqueci de guardar
lexicon-talk-did-buy = comprado, comprada, comprei, compramos, em casa, tenho peru, comprei peru
lexicon-talk-did-thaw = descongelando, descongelado, descongelada, degelo começou, comecei degelo, começou descongelar, tirei do freezer, tirado do freezer, fora do freezer, na geladeira, pus na geladeira, coloquei na geladeira, botei na geladeira, na água, na água fria, em água fria, coloquei na água, pus na água, botei na água, descongelou, coloquei para descongelar, botei pra descongelar, pus pra descongelar, está na geladeira descongelando, coloquei na geladeira pra descongelar, na geladeira pra descongelar, na geladeira para descongelar, comecei a descongelar na água, comecei descongelar na água, descongelando na água, descongelando na pia, para descongelar na água
lexicon-talk-did-water = água trocada, troquei água, troquei a água, trocamos água, trocamos a água, água nova, água fresca
lexicon-talk-did-salt = salgado, salgada, salguei, salgamos, com sal, pus sal, coloquei sal, passei sal, na salmoura, em salmoura, pus na salmoura, coloquei na salmoura, temperado, temperei
lexicon-talk-did-rest = repousando, em repouso
lexicon-talk-did-temper = fora da geladeira, tirei da geladeira, tirado da geladeira, sequei, untei, sequei untei, seco untado, fora, tirei
lexicon-talk-did-fire = aceso, acesa, acendi, acendi fogo, acendi o fogo, fogo aceso, forno ligado, forno aceso, liguei forno, liguei o forno, acendi forno, forno quente, forno esquentando, preaquecendo, forno preaquecendo, forno preaquecido, forno aquecido, defumador aceso, defumador ligado, defumador pronto, acendi defumador, brasas prontas, carvão aceso, churrasqueira acesa, acendi churrasqueira, fogo pegou
lexicon-talk-did-on = no forno, em forno, dentro, dentro do forno, dentro forno, no defumador, na churrasqueira, na grelha, no fogo, no calor, assando, coloquei no forno, pus no forno, botei no forno, coloquei no defumador, pus no defumador, botei no defumador, entrou, entrou no forno, foi pro forno, pro forno, coloquei, botei, pus, colocou no forno, colocamos no forno, colocou forno, botamos no forno, colocou
lexicon-talk-did-check = medi, medido, medida, conferi, conferido, checado, chequei
lexicon-talk-did-pull = fora do forno, fora forno, tirei do forno, tirado do forno, saiu do forno, saiu, tirei, fora, fora do fogo, tirei do fogo, fora do calor, tirei do calor, tirei do defumador, fora do defumador, retirado, vou tirar agora, tô tirando, estou tirando, tirando do forno, tiro agora
lexicon-talk-did-stand = descansando, em descanso
lexicon-talk-did-carve = cortado, cortada, cortei, fatiado, fatiei, destrinchado, destrinchei, trinchado
lexicon-talk-did-chill = guardado, guardada, guardadas, guardei, guardamos, sobras guardadas, guardei sobras, guardei as sobras, sobras na geladeira, na geladeira, coloquei na geladeira, pus na geladeira, botei na geladeira, pra geladeira, gelando, resfriado, guardei a sobra, sobra guardada, guardei o que sobrou, tudo na geladeira, coloquei tudo na geladeira, guardei tudo, guardei tudo na geladeira, botei tudo na geladeira, pus tudo na geladeira, está tudo na geladeira, tá tudo na geladeira, as sobras estão na geladeira
lexicon-talk-did-pack = embalado, embalada, embalei, no carro, na caixa térmica, na caixa, carregado
lexicon-talk-did-travel = a caminho, caminho, saí, saímos, saindo, estamos indo, indo, estamos a caminho, na estrada, partimos
lexicon-talk-did-reheat = reaquecido, reaquecida, reaqueci, requentado, esquentado, reaquecendo
lexicon-talk-did-serve = servido, servida, na mesa, servi, comendo, jantando, jantamos, comemos
lexicon-talk-did-leftovers = sobras acabaram, acabaram sobras, comemos sobras, comi sobras, joguei sobras fora, joguei fora sobras
lexicon-talk-give = passa, passe, dá, dê, pede, peça, pergunta, pergunte, pode, poderia, entrega, faz, cuida, fica com
lexicon-talk-mine = eu, eu cuido do, eu cuido da, eu cuido de, cuido do, cuido da, eu faço, faço, eu fico com, fico com, eu vou, vou, deixa que eu, deixa comigo, eu posso, posso, me encarrego de, eu me encarrego de, cuido, eu cuido, eu cuido dos, eu cuido das, cuido dos, cuido das, eu me encarrego, me encarrego, me encarrego do, me encarrego da
lexicon-talk-mine-last = eu, eu faço, é comigo, deixa comigo, fica comigo, por minha conta
lexicon-talk-mine-link = o, a, os, as, de, do, da, com, para, eu, hoje, amanhã, depois, hoje à noite, dos, das, no, na
lexicon-talk-manners = desculpa, desculpe, desculpem, foi mal, sinto muito, pessoal, gente, galera, oi, olá, ei, família, a todos, infelizmente, hoje, amanhã, hoje à noite, desta vez, dessa vez, este ano, mas, e, porque, é que, ah, ai, puxa, poxa, nossa, obrigado, obrigada, por favor, também, então, mais, no jantar, ao jantar, pro jantar
lexicon-talk-gone = tô fora, to fora, estou fora, não vou poder ir, não posso ir, não vou conseguir ir, não consigo ir, não vou mais, não vou, não poderei ir, não vou poder vir, não posso vir, estou doente, tô doente, to doente, fiquei doente, adoeci, estou com febre, tô com febre, to com febre, estou gripado, estou gripada, tô gripado, tô gripada, peguei gripe, não contem comigo, não conte comigo, tive um imprevisto, surgiu um imprevisto, apareceu um imprevisto, vou ter que cancelar, tenho que cancelar, não vou poder comparecer
lexicon-talk-gone-short = doente, gripado, gripada, com febre, com gripe
lexicon-talk-cant = não posso, eu não posso, não consigo, eu não consigo, não vou poder, não vou conseguir, não dá pra mim, não vai dar, não vai dar pra mim, não posso fazer, não consigo fazer, não posso fazer isso, não vou poder fazer, não vou conseguir fazer, não tenho tempo, alguém mais pode fazer
lexicon-talk-willing = pode deixar, deixa comigo, eu faço, faço, faço sim, eu faço sim, faço isso, vou fazer, eu vou fazer, já vou, eu vou, com certeza, pode contar comigo, conta comigo, contem comigo, posso, posso sim, eu posso, sem problema, sem problemas, com prazer, tô nessa, eu cuido, eu cuido disso, fico com essa, eu
lexicon-talk-unwilling = não, nao, eu não, não quero, melhor não, dessa vez não
lexicon-talk-suggest = podemos, poderíamos, dá para, dá pra, que tal, e se, pode ser, pode, poderia, você pode, a gente pode, a gente podia, tem como, seria possível, é possível, vamos, temos que, quero, queria, será que
lexicon-talk-suggest-move = muda o jantar, mudar o jantar, passa o jantar, passar o jantar, jantamos, jantar às, almoço às
lexicon-talk-everything = tudo, todos, todas, minhas tarefas, todas as minhas tarefas, tudo meu
lexicon-talk-kind-check = temperaturas, temperatura, termômetro, medir, medições, leituras
lexicon-talk-meat = carne, temperatura, temperaturas, temp, sonda, termômetro, termómetro, fatias, pedaços, sobras, graus, grau, f, c, fahrenheit, celsius
lexicon-talk-meat-reads = a, em, no, na, do, da, centro, dentro, meio, marca, marcando, mostra, lê, diz, ainda, só, apenas, uns, quase, caiu, baixou, desceu, com, deu, dando, continua, até, por, toda, parte, mede, mais, grossa
lexicon-talk-meat-tells = marca, marcando, mostra, lê, diz, agora, ainda, caiu, baixou, desceu, mede
lexicon-talk-meat-rests = cooler, caixa, térmica, isopor, papel, alumínio, toalhas, enrolado, enrolada, descansando, descanso
lexicon-talk-short-breast = p, pe, pei, pto
lexicon-talk-short-thigh = co, cox, sc, sobre
lexicon-talk-short-wing = as, az
lexicon-talk-short-stuffing = re, rec, rech
lexicon-talk-short-pit = fo, for, def
lexicon-talk-everywhere = em toda parte, por toda parte, em todo lugar, em todos os lugares, em todos os pontos, por inteiro, nos três, em tudo
lexicon-talk-slip = ops, opa, desculpa, desculpe, perdão, não, quis dizer, quis, dizer, quer, digo, errei, erro, haha, kkk, rs, corrigindo, correção, espera, aliás, na verdade, verdade, engano
lexicon-talk-doubting = não pode ser, isso não pode estar certo, não está certo, não tá certo, estranho, que estranho, está errado, tá errado, parece errado, muito baixo, parece baixo
lexicon-talk-eat = ainda dá pra comer, dá pra comer, ainda dá para comer, dá para comer, pode comer, podemos comer, ainda presta, presta, ainda está bom, ainda tá bom, comestível, jogo fora, jogar fora, deito fora, tarde demais, ainda serve, pode comer ainda
lexicon-talk-kind-fire = forno, calor, defumador, churrasqueira, grelha, fogo, carvão, brasas
lexicon-talk-kind-travel = dirigir, dirijo, levar, transporte
lexicon-talk-kind-carve = trinchar, corte, faca
lexicon-talk-kind-water = trocas de água, água
lexicon-talk-kind-buy = compras, compra
lexicon-talk-who-does-what = quem faz o quê, quem faz o que, quem faz oque, quem está com o quê, quem cuida de quê
lexicon-talk-cancel = cancela o plano, cancelar o plano, cancela, cancelar, cancelado, cancela tudo, cancela o jantar, o jantar está cancelado, encerra o plano, apaga o plano, não vai ter jantar, jantar cancelado
lexicon-talk-who = quem, quem vai, quem faz, quem cuida de, quem está com
lexicon-talk-asked-pull = tira do forno, tira o peru
lexicon-talk-asked-on = coloca no forno, põe no forno
lexicon-talk-asked-fire = acende, acende o forno, liga o forno
lexicon-talk-asked-check = mede, olha a temperatura
lexicon-talk-asked-water = troca a água, trocar a água
lexicon-talk-asked-buy = compra, comprar, compra o peru
lexicon-talk-asked-carve = corta, cortar, corta o peru, destrincha
lexicon-talk-asked-salt = salga, salgar, salga o peru, tempera
lexicon-talk-toward = em, a, até, perto, pra, para
lexicon-talk-late = atrasado, atrasada, atrasados, atraso, vai atrasar, vão atrasar, chega tarde, chegam tarde, tarde, no trânsito
lexicon-talk-late-elsewhere = atrasado para, atrasada para, atrasado pro, atrasada pro, atraso no, atraso na
lexicon-talk-of-us = estou, estamos, tô, eu estou, a gente está
lexicon-talk-other-year = ano passado, no ano passado, o ano passado, da última vez, última vez, natal passado, há um ano, anos atrás, ano retrasado
lexicon-talk-dish-add = inclui, incluir, inclua, adiciona, adicionar, adicione, acrescenta, acrescentar, mais, também
lexicon-talk-dish-and = e, também, mais
lexicon-talk-dish-doing = faço, fazemos, vou, fazer, quero
lexicon-talk-both = os dois, as duas, ambos, ambas
lexicon-talk-dish-remove = tira, tirar, tire, remove, remover, sem, exclui, excluir
lexicon-talk-dish-link = em, no, na, o, a, os, as, ao, por, para, durante, leva, precisa, e, com, um, uma, de
lexicon-talk-undo = desfazer, desfaz, desfaça, desfaz isso, desfazer isso, me enganei, me confundi, errei, botão errado, apertei errado, foi sem querer, sem querer, foi engano, engano, volta atrás, não era isso
lexicon-talk-discard = deixa pra lá, deixa para lá, esquece
lexicon-talk-thrown = joguei fora, jogamos fora, jogado fora, jogada fora, joguei tudo fora, jogamos tudo fora, foi pro lixo, foi para o lixo, pro lixo, para lixo, no lixo, joguei no lixo, jogamos no lixo, tive que jogar fora, tivemos que jogar fora, deitei fora, deitámos fora, tive de deitar fora
lexicon-talk-greeting = oi, olá, ola, oie, opa, bom dia, boa tarde, boa noite, oi gente, oi pessoal, olá pessoal, oi tudo bem, tudo bem, e aí, feliz natal, oi bom dia, oi boa tarde, oi boa noite, bom dia pessoal, bom dia a todos
lexicon-talk-assent = ok, okay, tá, tá bom, tá bem, está bem, está bom, certo, sim, sim por favor, claro, claro que sim, perfeito, ótimo, legal, beleza, blz, bom, muito bom, muito bem, combinado, fechado, pode ser, por mim tudo bem, vamos, vamos lá, vamos nessa, bora, aceito, aceitar, aceitado, de acordo, parece bom, parece ótimo, faz isso, faça isso, isso mesmo, isso aí, concordo, ok perfeito, joia, show, maravilha, pode fazer
lexicon-talk-thanks = obrigado, obrigada, muito obrigado, muito obrigada, valeu, obrigadão, brigado, brigada, obrigado a você, ok obrigado, ok obrigada, perfeito obrigado, grato, grata, agradeço, vlw

## Pedir ajuda em palavras; os nomes dos idiomas
lexicon-help = ajuda, me ajuda, me ajude, pode me ajudar, o que você faz, o que você sabe fazer, como funciona
lexicon-language-en = inglês, english
lexicon-language-es = espanhol, español, castelhano, spanish
lexicon-language-fr = francês, français, french
lexicon-language-de = alemão, deutsch, german
lexicon-language-pt = português, brasileiro, portuguese
lexicon-language-it = italiano, italian

## Quiet hours, and that there are none
lexicon-quiet = silêncio, horas de silêncio, horário de silêncio, não perturbe, não perturbar
lexicon-quiet-off = desligar, desligado, nenhuma, nunca, não

## A brine's percentage of the water; whose spoons
lexicon-ask-of-water = da água, de água, sobre a água
lexicon-spoons-us = americana, americano, eua
lexicon-spoons-metric = métrica, métrico, métricas
lexicon-spoons-uk = britânica, britânico, inglesa
lexicon-spoons-australia = australiana, australiano

## Uma palavra que nega a seguinte
lexicon-negation = esquece o, esquece a, esqueça o, esqueça, não, não no, sem o, sem a, sem, nada de, em vez do, em vez de
