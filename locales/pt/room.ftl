### A conversa: planejar, o quadro, as tarefas, os ajustes. Curto como uma mensagem; lê-se com as mãos molhadas.

# ---- botões
room-button-accept = Aceitar
room-button-change = Mudar
room-button-done = Feito
room-button-later = Depois
room-button-skip = Pular
room-button-take = Eu faço
room-button-undo = Desfazer
room-button-yes = Sim
room-button-no = Não
room-button-back = Voltar
room-button-discard = Deixa pra lá
room-button-why = Por que essas horas?
room-button-jobs = Dividir as tarefas

# ---- começo e ajuda
room-start = Eu cuido do plano de uma ave inteira: da compra às últimas sobras. Faço as contas de descongelar, salgar e assar, e aviso quando chega a hora de cada coisa. Por onde começamos?
room-start-group = Oi, pessoal. Eu cuido do plano da ave: quem faz o quê, e quando. Comecem com <b>/plan</b> e uma frase, como “/plan peru congelado de 6,5 kg, jantar quinta às 17h, 11 pessoas, forno”. Só vejo comandos, respostas a mim e botões.
room-start-button-plan = Planejar um jantar
room-start-button-salt = Quanto sal?
room-start-button-safe = É seguro?
room-how = Me diga a ave, a hora de comer e para quantos. Eu calculo quando descongelar, salgar e assar, chamo quem está com a tarefa na hora certa e refaço o plano quando algo dá errado. Enquanto assa, me mande as temperaturas: eu digo quando fica pronta. E pergunte o que quiser. Os comandos: /help.
room-help-plan = Me diga a ave, o dia e quem vem. Por exemplo:
    “peru congelado de 6,5 kg, jantar quinta às 17h, 11 pessoas, defumador a 165”
    O que faltar eu pergunto.
room-help-salt = Pergunte como a um amigo. Por exemplo:
    “sal para um peru de 5,5 kg”
    “2 colheres de sopa de sal de mesa em kosher em flocos”
    “meu sal: 1/4 colher de chá são 0,7 g”, e daí em diante uso o seu.
room-help-safe = Pergunte com os números que você tem. Por exemplo:
    “70 °C por 2 minutos é seguro?”
    “peru fora 3 horas, tudo bem?”
    “quanto tempo duram as sobras?”
    Na dúvida, vale o que diz a autoridade sanitária.
room-help = <b>/plan</b> começar um plano, ou ver o que há
    <b>/board</b> o que vem agora e com quem está
    <b>/salt</b> doses e conversões
    <b>/ask</b> qualquer pergunta rápida
    <b>/log</b> anotar temperaturas: “peito 53, sobrecoxa 61”
    <b>/when</b> quando fica pronto
    <b>/move</b> mudar a hora do jantar: “/move 18h”
    <b>/take</b> e <b>/drop</b> dividir as tarefas
    <b>/undo</b> desfazer a última mudança
    <b>/export</b> o plano para sua agenda, e tudo o que guardo
    <b>/settings</b> idioma, unidades, fuso horário
    <b>/stop</b> encerrar o plano, <b>/forget</b> apagar o que guardo
room-unread = Não entendi. Tente { $stage ->
    [draft] “jantar às 18h”, “12 pessoas”, “sem sal”, ou toque num botão
    [ahead] “feito” quando algo estiver pronto, “eu corto”, “jantar uma hora mais tarde”, ou uma pergunta
    [alone] “feito” quando algo estiver pronto, “jantar uma hora mais tarde”, ou uma pergunta
    [cooking] “peito 65, coxa 70”, “quando?”, “saiu do forno” quando sair, ou uma pergunta
    [after] “as sobras estão na geladeira”, uma pergunta como “quanto duram as sobras”, ou /help
   *[none] “peru congelado de 6,5 kg, jantar domingo às 17h”, uma pergunta como “sal para um peru de 5,5 kg”, ou /help
}.
room-unreadable = Só consigo ler texto. Você digita para mim?
room-no-plan = Ainda não há plano. Comece com uma frase, como “/plan peru congelado de 6,5 kg, jantar domingo às 17h, 10 pessoas, forno”.
room-stale = Esse botão é de um plano anterior. /board mostra como as coisas estão.
room-not-yours = Essa é para outra pessoa responder.
room-not-here = Você não está nesse grupo, então não posso mudar o plano dele.
room-need-person = Não sei quem você é aqui. Escreva com seu próprio nome e tente de novo.
room-may-host = Só { $name }, que começou o plano, ou um admin pode fazer isso.
room-may-not = Só um admin deste grupo pode fazer isso.

# ---- uma ave, um aparelho
room-bird = { $kind ->
    [turkey-breast] peito de peru
    [chicken] frango
    [capon] capão
    [duck] pato
    [goose] ganso
   *[turkey] peru
} { $condition ->
    [frozen] congelado{" "}
    [part-thawed] meio descongelado{" "}
   *[fresh] {""}
}de { $mass }{ $form ->
    [stuffed] , recheado
    [flat] , aberto
    [pieces] {" "}em pedaços
   *[whole] {""}
}
room-heat = { $cooker ->
    [fan-oven] forno com ventilador a { $setting }
    [smoker] defumador a { $setting }
   *[oven] forno a { $setting }
}
room-birds = { $count } × { $bird }

# ---- perguntar o que falta
room-known = Até aqui: { $parts }.
room-known-mass = { $mass }
room-known-bird = { $kind ->
    [turkey-breast] peito de peru
    [chicken] frango
    [capon] capão
    [duck] pato
    [goose] ganso
   *[turkey] peru
}{ $condition ->
    [frozen] {" "}congelado
    [part-thawed] {" "}meio descongelado
    [fresh] {" "}fresco
   *[unknown] {""}
}
room-known-form = { $form ->
    [pieces] em pedaços
   *[flat] aberta em borboleta
}
room-known-guests = { $guests ->
    [one] uma pessoa
   *[other] { $guests } pessoas
}
room-known-salt = { $how ->
    [none] sem sal
    [bold] mais sal
   *[light] menos sal
}
room-known-dinner = jantar { $when }
room-known-start = assar { $when }
room-known-use-by = validade { $day }
room-known-shop = compra { $when }
# $start: the hour somebody said; $on: the plan’s.
room-proposal-start = Você disse assar { $start }. Para este jantar ela entra { $on }.
room-shop-not = Compra { $said } não dá: compre { $when }.
room-proposal-dish = { $dish }
room-proposal-beside = Quando aceitar, eu acrescento: { $dishes }.
room-known-drive = a { $drive } de carro
room-ask-zone = Onde fica a cozinha? Uma cidade ou um fuso serve: “Recife”, “America/Sao_Paulo”.
room-ask-dinner = Quando é o jantar? Dia e hora: “quinta às 17h”.
room-ask-dinner-hour = A que horas é o jantar? “17h”
room-ask-dinner-day = Que dia? “quinta”, “25 de novembro”
room-ask-size = Quanto pesa a ave, ou quantos vão comer? “6,5 kg” ou “11 pessoas”
room-ask-weight = Quanto pesa a nova? Está na etiqueta: “6,5 kg”.
room-ask-condition = A ave está congelada?
room-ask-cooker = Onde você vai assar?
room-ask-drive = Quanto tempo de viagem?
room-ask-change = O que deve mudar? Toque numa opção, ou só diga: “jantar 18h”, “7 kg”, “14 pessoas”.
room-condition-frozen = Congelada
room-condition-fresh = Fresca ou descongelada
room-condition-part-thawed = Meio descongelada
room-cooker-oven = Forno
room-cooker-fan-oven = Forno com ventilador
room-cooker-smoker = Defumador
room-drive-15 = 15 min
room-drive-30 = 30 min
room-drive-60 = 1 hora
room-change-no-salt = Sem sal
room-change-dry-salt = Salgar a seco
room-change-fridge = Descongelar na geladeira
room-change-cold-water = Descongelar em água fria
room-change-ahead = Assar na véspera
room-change-same-day = Assar no dia
room-change-hot = Levar quente
room-change-cold = Levar frio
room-change-there = Assar lá
room-change-home = em casa
room-kept = O resto fica como está. { $known }
room-plan-unread = Não achei ave nem dia em “{ $text }”. Tente “peru congelado de 6,5 kg, jantar domingo às 17h, 10 pessoas”.

# ---- a proposta
room-proposal-head = <b>{ $bird }</b>{ $guests ->
    [0] {""}
    [one] , para uma pessoa
   *[other] , para { $guests }
}, { $heat }. Na mesa <b>{ $when }</b>.
room-proposal-size = Para a sua mesa dá cerca de { $mass } de ave.
room-proposal-small = Um pouco pequeno: para { $guests } pessoas eu procuraria { $mass }.
room-proposal-ready = Sai do calor entre { $from } e { $to }; em nove de cada dez vezes, até o segundo horário.
room-proposal-need = Você precisa de: { $things }.
room-proposal-use-by = Na embalagem: validade { $day }.
room-proposal-first = Primeiro: <b>{ $what }</b>, { $when }.
room-line = { $when } · { $what }
room-need-salt = { $grams } de sal ({ $spoons } de { $salt ->
    [table] sal de mesa
   *[flake-kosher] kosher em flocos
})
room-accepted = Plano feito. Aviso quando chegar a hora de algo.
room-discarded = Tudo bem, deixei de lado.

# ---- por quê
room-why = Por que essas horas:
room-why-line = <b>{ $what }</b>, { $when }: { $reasons }.

# ---- um desejo que não dá
room-clash = Assim não dá: { $because }.
room-clash-short = Não dá tempo: { $because }. Faltam cerca de { $short }.
room-clash-now = Assim não dá mais: { $because }. Faltam cerca de { $short }.
room-clash-keeps = Não dura até o jantar: { $because }. São cerca de { $short } a mais.
room-clash-use-by = A embalagem tem data de validade? Me diga, por exemplo “validade sexta”: fechada, dura até lá.
room-clash-instead = <b>Eu faria assim: { $change }</b> ({ $cost }).
room-clash-others = Ou então:
room-clash-offers = O que funcionaria:
room-clash-offer = • { $change }: { $cost }
room-clash-hopeless = Não vejo um jeito seguro de chegar a essa hora. Jantar mais tarde, ou outra ave?
room-mended = Certo: { $change }.

# ---- o quadro
room-board-dinner = <b>Jantar { $when }</b>
room-board-bird = { $bird }, { $heat }
room-board-no-heat = Sem calor desde { $since }.
room-board-clash = Assim não fecha: escolha uma saída acima ou me diga o que muda.
room-board-next = { $late ->
    [yes] <b>É agora: { $what }</b>
   *[no] <b>A seguir: { $what }</b>
}, { $when }{ $who }
room-board-then = { $when } · { $what }{ $who }
room-board-who = {" "}– { $name }
room-board-nobody = {""}
room-board-more-dishes = … e mais { $count }, com { $dishes }
room-board-more = … e mais { $count }
room-board-ready = Sai do calor de { $from } a { $to }{ $standing ->
    [spare] , { $span } de folga
    [tight] , apertado
    [late] , tarde demais para o jantar
   *[no] {""}
}
room-board-done = Feito: { $jobs }
room-board-done-one = { $what }
room-board-done-by = { $what } ({ $name })
room-board-assumed = Dou por feito: { $jobs }. Ninguém disse.
room-board-skipped = sem “{ $what }”
room-pin-how = Não posso fixar o quadro aqui. Se quiser ele no topo, me faça admin com permissão de fixar; /board traz ele para cá a qualquer hora.
room-left = { $name } saiu. Livres de novo: { $jobs }.
room-board-all-done = Tudo feito. Bom apetite.

# ---- tarefas
room-call-again = Ainda em aberto desde { $since }: { $what }.
room-call-from = { $what }:
room-call-name = { $name }:
room-call-ahead = Para as { $at }:
room-done = { $what }, { $at }.
room-done-by = { $what }, { $name }, { $at }.
room-skipped = Pulado: { $what }.
room-skipped-by = { $name } pulou: { $what }.
room-next = Depois: { $what }, { $when }.
room-later = Certo, de novo às { $when }.
room-held-up-leave = Então, saída às { $when }. Nessa hora pergunto de novo.
room-held-up-hot = Deixe embrulhado e fechado. Se lá peito e coxa não marcarem { $hot } ou mais: comido até { $by }; depois não se serve.
room-held-up-over = As duas horas terminaram às { $by }. Se peito e coxa não marcaram { $hot } ou mais até então, não sirva.
room-taken = É sua: { $what }, { $when }.
room-taken-water = É sua: { $what }, { $when }, e depois { $count ->
    [one] a troca de água
   *[other] as { $count } trocas de água
}.
room-take-yours = Essa já é sua.
room-take-theirs = Essa está com { $name }.
room-dropped = { $what } está livre de novo.
room-drop-free = Ninguém está com essa.
room-drop-theirs = Essa é de { $name }. Só essa pessoa, quem começou o plano ou um admin pode devolver.
room-already = Isso já está resolvido.
room-already-by = { $name } já resolveu isso, { $at }.
room-jobs = Toque numa para pegar, ou para devolver.
room-jobs-take = { $what }
room-jobs-drop = { $what } ({ $name })
room-step-unread = Não conheço a tarefa “{ $text }” neste plano.
room-missed = Enquanto estive fora passou a hora disto: { $what }. /board mostra o que ainda importa.
room-shifts = Isso muda o resto:
room-shift = { $what }: { $is } (era { $was })

# ---- mudar, desfazer, encerrar
room-move-how = O jantar é { $dinner }. Para mudar: “/move 18h” ou “/move +45 min”.
room-move-past = { $when } já passou, agora são { $now }. O jantar continua { $dinner }.
room-move-unread = Não leio uma hora em “{ $text }”. Tente “/move 18h” ou “/move +45 min”. O jantar continua { $dinner }.
room-move-clash = { $when } não dá. O jantar fica onde estava.
room-moved = O jantar agora é <b>{ $when }</b>.
room-misread = Tiro { $parts }?
room-undone = Desfeito: { $what }.
room-undone-what = { $change ->
    [back-on] a ave de volta ao forno
    [unmarked] a correção de “{ $step }”
    [done] “{ $step }” feito
    [skipped] “{ $step }” pulado
    [take] “{ $step }” assumida
    [drop] “{ $step }” devolvido
    [moved] a nova hora do jantar
    [dish] a mudança nos pratos
    [logged] a última leitura
   *[other] a mudança de plano
}
room-undone-dish = { $how ->
    [added] colocar “{ $name }”
    [gone] tirar “{ $name }”
   *[changed] a mudança de “{ $name }”
}
room-undo-nothing = Não há nada para desfazer.
room-undo-stale = Aconteceu algo desde então. /undo desfaz primeiro o mais novo.
room-undo-late = Isso já não dá para desfazer. O plano fica como está.
room-stop-sure = Encerrar o plano de { $dinner }? Eu pararia de avisar.
room-stopped = Encerrado. Não aviso mais.
room-stopped-calendar = Se ele está na sua agenda, /export tira.
room-stopped-back = Por uma hora você ainda pode dizer “voltou”.
room-stopped-told = O jantar de { $dinner } foi cancelado. Você não precisa fazer nada.
room-back-again = Está de pé de novo: jantar <b>{ $dinner }</b>.
room-kept-going = Bom, nada muda.
room-eve = Amanhã:
room-eve-job = { $when } · { $what }
room-eve-early = É cedo: ponha também um despertador para { $at }, caso o celular esteja no silencioso.
room-forget-sure-me = Guardo { $things }. Apago tudo? Nos grupos, o que você fez continua feito, sem o seu nome.
room-forget-sure-group = Guardo { $things }. Apago tudo, para todos? O que guardo de cada pessoa fica, até ela me pedir no privado.
room-kept-name = seu nome
room-kept-settings = seus ajustes
room-kept-salt = seu sal
room-kept-cooker = seu forno ou defumador
room-kept-fridge = sua geladeira: prateleiras e temperatura
room-kept-learned = como se assa na sua casa
room-kept-notes = notas de jantares passados
room-kept-plan = o que você planeja aqui comigo
room-kept-question = sua última pergunta
room-kept-groups = suas tarefas, leituras e links em grupos
room-kept-title = o nome e os ajustes deste grupo
room-kept-members = quem está nele
room-kept-jobs = o plano com as tarefas e quem as tem
room-kept-readings = as leituras
room-kept-said = planos pela metade e perguntas
room-kept-links = links para o chat privado
room-forgotten = Apagado.

# ---- leituras
room-log-how = Me diga o que os termômetros marcam: “peito 53, sobrecoxa 61, ar 168”. A hora pode vir junto: “às 14:05”.
room-frozen-on = Deixe no calor: leva até metade a mais do tempo.{ $smoker ->
    [yes] {" "}Um defumador é lento demais para isso: passe para um forno a { $oven }.
   *[no] {""}
}{" "}Tire os miúdos quando se soltarem, e só tire com { $target } em toda parte.
room-log-noted = Anotado: { $parts }.
room-log-spot = { $spot ->
    [breast] peito { $temperature }
    [thigh] sobrecoxa { $temperature }
    [wing] asa { $temperature }
    [stuffing] recheio { $temperature }
    [oven] forno { $temperature }
   *[pit] ar { $temperature }
}
room-log-on-unsaid = Ninguém me disse que a ave já está assando. Está?
room-log-both = { $target } nos dois. Veja também bem dentro da asa; se lá também estiver, pode tirar.
room-log-all = { $target } em peito, coxa e asa: pode tirar.
room-log-too-long = Agora { $target }, mas ficou mais de duas horas sem calor: cozinhar não desfaz isso. Eu não serviria.
room-log-thigh-behind = O peito chegou, a sobrecoxa não. Fica lá até a sobrecoxa marcar { $target } também.
room-log-wing-behind = Peito e sobrecoxa podem ter chegado, a asa não. Fica lá até o ponto mais fundo da asa marcar { $target } também.
room-log-breast-behind = A sobrecoxa chegou, o peito não. Fica lá até o peito marcar { $target } também.
room-log-stuffing-behind = Peito e sobrecoxa chegaram, o recheio não. Fica lá até o recheio marcar { $target } também.
room-log-stuffing-unread = Peito e coxa já estão. Agora o meio do recheio: a ave fica dentro até ele marcar { $target } também.
room-log-asked-not = Não: { $spot ->
    [breast] o peito
    [thigh] a coxa
    [wing] a asa
   *[stuffing] o recheio
} tem que chegar a { $target }.
room-log-one-spot = { $target } num ponto. Confira os outros antes de confiar: a parte mais grossa do peito, o fundo da sobrecoxa e da asa.
room-log-doubt = { $spot ->
    [breast] Peito
    [thigh] Sobrecoxa
    [wing] Asa
    [stuffing] Recheio
    [oven] Forno
   *[pit] Ar
} a { $given }? Eu esperava de { $low } a { $high }, então não anotei.{ $celsius ->
    [yes] {" "}Se eram °C, escreva com um C: “58C”.
   *[no] {" "}Olhe de novo e mande mais uma vez.
}
room-log-fell = { $spot ->
    [breast] Peito
    [thigh] Sobrecoxa
    [wing] Asa
    [stuffing] Recheio
    [oven] Forno
   *[pit] Ar
} a { $given }? Antes marcava { $last }, e carne assando não esfria assim. Faltou um dígito, ou a sonda saiu do lugar? Não anotei; mande de novo o que marca agora.
room-when = Sai do calor entre { $from } e { $to }. Jantar { $dinner }.
room-when-off = Fora do calor desde { $since }.{ $eaten ->
    [no] {" "}Jantar { $dinner }.
   *[yes] {""}
}
room-when-dinner = Nada assando agora. Jantar { $dinner }.

# ---- ajustes
room-settings-yours = <b>Seus ajustes</b>
room-settings-rooms = <b>Ajustes deste grupo</b>
room-settings-language = Idioma: { $language }
room-settings-units = Unidades: { $chosen }
room-settings-spoons = Colheres: { $spoons }
room-settings-zone = Fuso horário: { $zone } (agora { $now })
room-settings-zone-unset = Fuso horário: não definido
room-settings-quiet = Horas de silêncio: de { $from } a { $to }
room-settings-quiet-none = Horas de silêncio: nenhuma
room-settings-quiet-unread = Horas de silêncio como em “silêncio das 22:00 às 7:00”, ou “silêncio nunca”.
room-settings-button-language = Idioma
room-settings-button-units = Unidades
room-settings-button-spoons = Colheres
room-settings-button-zone = Fuso horário
room-settings-button-quiet = Horas de silêncio
room-settings-pick-language = Qual idioma?
room-settings-pick-units = Quais unidades?
room-settings-pick-spoons = Colheres e xícaras de onde?
room-settings-pick-quiet = Quando devo te deixar em paz? O que você mesmo pegou, e a segurança da comida, chega assim mesmo.
room-language-en = English
room-language-es = Español
room-language-fr = Français
room-language-de = Deutsch
room-language-pt = Português (Brasil)
room-language-it = Italiano
room-units-us = libras, °F
room-units-metric = quilos, °C
room-spoons-us = EUA (4,93 / 14,8 / 237 ml)
room-spoons-metric = métricas (5 / 15 / 250 ml)
room-spoons-uk = Reino Unido (5 / 15 ml)
room-spoons-australia = Austrália (5 / 20 / 250 ml)
room-quiet-span = de { $from } a { $to }
room-quiet-none = Nenhuma
room-zone-choice = { $zone }
room-zone-which = Há mais de um. Qual?
room-zone-unknown = Não conheço “{ $text }” como lugar. Uma cidade maior por perto, ou um fuso como “America/Sao_Paulo”?
room-zone-nowhere = Não sei o fuso horário daí. Digite uma cidade?
room-zone-set = { $zone }, então: lá agora são { $now }.

# ---- salgar
room-dose-total = { $grams } ao todo, ou seja { $spoons } de { $salt ->
    [own] seu sal
    [table] sal de mesa
   *[flake] kosher em flocos
}.
room-dose-places = { $places }.
room-dose-place = { $spoons } { $place ->
    [cavity] na cavidade
    [bone-side] do lado dos ossos
    [breast] { $count ->
        [one] sob a pele do peito
       *[other] sob a pele de cada lado do peito
    }
    [thigh] sob a pele de cada sobrecoxa
    [drumstick] sob a pele de cada coxa
   *[skin] na pele
}
room-dose-skin = O sal da pele vai misturado com a mesma medida de pimenta e a mesma de fermento em pó.
room-dose-none = Sem sal neste: os { $percent } % de solução da embalagem já bastam.
room-dose-presalted = Esta não leva sal: você disse que já vem salgada.
room-dose-light = Mão leve: já vem com { $percent } % de solução.
room-salted-by = { $name } já salgou, { $at }. Se levou mesmo sal duas vezes:
room-salted = Já está salgada, desde { $at }.
room-salt-then = Salga-se { $salt } e depois fica na geladeira, sem cobrir, até a ave ir para o fogo, { $on }.
room-salt-straight = Salga-se { $salt }, fora da água e seca, e vai direto para o fogo, { $on }.
room-salt-no-rest = Este plano não tem descanso com sal: ponha logo antes de a ave ir para o fogo, { $on }.
room-button-sources = De onde vem?
room-question-gone = Essa pergunta já ficou para trás. Pergunta de novo?
room-sources = Os números vêm de:
room-too-long = São { $length } caracteres, mais do que consigo ler de uma vez (o máximo é { $most }). Uma ou duas frases bastam.
room-proposal-night = Tarde da noite ou de madrugada: { $jobs }.
room-pack-warm = Saiu às { $off }, então ainda não está fria: comida ou numa geladeira até { $by }, no gelo também, a não ser que fique a { $hot } ou mais. Na dúvida, jogue fora.
room-chill-late = Isso foi depois de { $by }. O que ficou fora mais de duas horas vai para o lixo, mesmo que pareça bom.
# $jobs: what was planned for it and is called for no more.
room-chill-ended = Então sai do plano: { $jobs }. Estava lá a tempo, afinal? Desfazer.
room-limit-chill = As duas horas acabaram. O que ainda está fora e não ficou a 60 °C ou mais vai para o lixo.
room-limit-chill-hot = Com este calor, a hora acabou. O que ainda está fora e não ficou a 60 °C ou mais vai para o lixo.
# What is said of how long it has been out, and the clock kept: the stricter. $since: from when it counts; $off: when it was told to be off.
room-out-clock = Conto desde { $since }{ $from ->
    [read] , a última leitura quente
    [heat] , quando saiu do calor
   *[other] {""}
}: comido ou na geladeira até { $by }.
room-out-clock-over = Conto desde { $since }{ $from ->
    [read] , a última leitura quente
    [heat] , quando saiu do calor
   *[other] {""}
}: o tempo acabou às { $by }. O que não ficou a { $hot } ou mais vai para o lixo.
room-out-earlier = Fora desde { $since } é antes de { $off }, quando para mim saiu do calor; agora conto desde { $since }: comido ou na geladeira até { $by }.
room-out-earlier-over = Vai para o lixo: fora desde { $since }, antes de { $off }, quando para mim saiu do calor. O tempo acabou às { $by }.
room-never-off = Ninguém me disse quando a ave saiu do calor. Se saiu { $when }, como previsto, tem que ser comida ou ir para a geladeira até { $by }; se saiu antes, mais cedo. A não ser que fique a { $hot } ou mais.
room-never-off-over = Ninguém me disse quando a ave saiu do calor. Se saiu { $when }, como previsto, o tempo acabou às { $by }: guarde só o que já estava na geladeira ou ficou a { $hot } ou mais. O resto vai para o lixo.
room-never-off-unread = E ninguém mediu { $target } no peito, na coxa e na asa: sem isso não é seguro comer.
room-raw-eve = A ave fresca tem que ir ao fogo ou ao freezer até { $until }. O jantar é { $dinner }.
room-raw-over = O tempo da ave fresca na geladeira acabou: ao fogo ou ao freezer agora. Depois disso não posso dizer que é segura.
room-hello = Oi. Me diga a ave, o dia e quantos vão comer: “peru congelado de 6,5 kg, jantar domingo às 17h, 10 pessoas”. Ou pergunte o que quiser.
room-amended = Certo: { $known }.
room-unbought = Ainda não comprada, entendi. A compra fica agora para { $when }, e o resto acompanha.
room-unthawed = Ainda não está descongelando, entendi. Começa agora { $when }, e o resto acompanha.
room-whether-bought = Ninguém disse: a ave está comprada?
room-unlit = Então ligue agora, a { $setting }: a ave entra por volta de { $when }, já com calor, e até lá espera na geladeira.
room-oven-free = O forno fica livre quando a ave sai, por volta de { $off }, até { $carve }. Quem decide é { $host }.
room-whether-thawing = Ninguém disse: a ave está descongelando desde { $since }?
room-swap-keeps = Fresca, dura dois dias no máximo: compre { $when }, não antes, a menos que a data da embalagem permita. Já está em casa? Me diga.
room-button-have-it = Já temos
room-button-not-yet = Ainda não
room-amend-told = Segundo { $name }: { $change }. No plano também, { $host }?
room-button-amend = Mudar o plano
room-not-done = Bom saber: { $what } ainda está por fazer.
room-stays-on = Certo: continua no calor.
room-water-not = A água ainda está fria, a { $cold } ou menos? Troque agora e siga. Mais morna que isso por mais de { $limit }: jogue a ave fora.
room-thaw-early = É cedo: na água fria descongela até { $thawed } e assa { $on }. Descongelado: fora da água e na geladeira, a { $cold } ou menos. Ou pare agora: geladeira, “Desfazer”, e água a partir de { $water }.
room-thaw-water = Na água fria descongela até { $thawed }: troque a água a cada { $every }. Depois fora da água, na geladeira, a { $cold } ou menos, e assa { $on }. Melhor como estava? Na geladeira já, e “Desfazer”.
room-thaw-long = Está descongelado desde { $thawed }. A água ainda está a { $cold } ou menos? Para a geladeira já. Mais morna por mais de { $limit }: jogue a ave fora.
room-thaw-out = Já descongelou: fora da água e na geladeira numa travessa, a { $cold } ou menos. Chega de água. Ainda há gelo dentro? Troque a água e siga. Assa { $on }.
room-ok = Bom.
room-yes-what = Sim a quê? Não mudei nada. Diga de novo por inteiro: “jantar às 17h”.
room-fine = Tudo bem.
room-unsaid = Ninguém disse isso ainda.
room-not-yet = Certo, ainda não.
room-when-step = { $what }: { $when }.
room-when-none = Neste plano não há “{ $what }”.
room-hour-fits = { $what }: { $asked } serve, como qualquer hora entre { $from } e { $to }. Me avise quando estiver feito.
room-hour-early = { $what }: { $asked } é cedo demais. A partir de { $from }; previsto para { $planned }.
room-hour-late = { $what }: { $asked } é tarde demais. Até { $to }; previsto para { $planned }.
room-hour-only = { $what }: neste plano só serve { $planned }.
room-who-has = { $what }, { $when }: { $name }.
room-who-nobody = Ninguém pegou ainda: { $what }, { $when }.
room-day-free = Nesse dia não há mais nada a fazer.
room-ice = Que bom que você olhou. Fica na geladeira, e a partir de { $when } a água fria termina; depois, direto para o calor.
room-ice-now = Que bom que você olhou. Então termina agora em água fria, num saco bem fechado; depois, direto para o calor.
room-ice-early = É normal. Deixe na geladeira e olhe de novo { $when }: se ainda houver gelo, a água fria termina a tempo.
room-ice-roast = Que bom que você olhou. A água demoraria demais: { $when } vai ao forno como está, sem recheio.
room-ice-roast-now = Que bom que você olhou. A água demoraria demais: ao forno já, como está, sem recheio.
room-ice-done = Até metade a mais de tempo; miúdos fora assim que soltarem; { $target } em toda parte.
room-never-fridge = Nada perdido: na geladeira já, numa assadeira.
room-never-both = Na geladeira já, numa assadeira; a partir de { $when } a água fria termina.
room-never-water = Então quem faz é a água fria, a partir de { $when }, num saco bem fechado; depois direto para o calor.
room-never-water-now = Então quem faz é a água fria, já, num saco bem fechado; depois direto para o calor.
room-never-roast = Não dá tempo de descongelar: { $when } vai ao forno congelado, sem recheio.
room-never-roast-now = Não dá tempo de descongelar: ao forno congelado agora, sem recheio.
# $when: the next job with it.
room-thawed = Descongelado: sem gelo na cavidade, as coxas se mexem? Então fica na geladeira até { $when }.
# Descongelada na água vai logo ao fogo. $when: a hora dela no fogo; far: horas depois, ou amanhã.
room-thawed-water = Descongelada na água: sem gelo dentro, as pernas mexem? O melhor é assar já. Se não, fora da água, na geladeira a { $cold } ou menos, e ao fogo { $when } no máximo.
room-thawed-water-far = Descongelada na água, ela é assada na hora e não espera na geladeira até { $when }. Asse agora; cortada e gelada, é reaquecida a { $target } para a refeição.
room-stuffing-out = Anotado: o recheio termina à parte, até { $target } no meio. Para a ave contam agora peito, coxa e asa, { $target } cada.
room-thawed-now = Descongelado: sem gelo na cavidade, as coxas se mexem? Então pode seguir.
room-log-when = Quando foi isso? Diga com a hora, assim: “peito 35 às 13:30”. Sem hora eu tomaria como agora.
room-heat-set = Anotado: { $setting } a partir de agora.
room-heat-moved = Anotado: a partir de agora { $cooker ->
    [smoker] no defumador
    [fan-oven] no forno com convecção
   *[oven] no forno
 } a { $setting }.
room-leftovers-until = As suas: coma ou congele até { $when }, se foram para a geladeira a tempo.
room-leftovers-over = Os dias das suas já passaram ({ $when }): jogue fora o que não estiver congelado.
room-leftovers-if = Só o que foi para a geladeira em duas horas; o resto vai fora.
room-ok-due = Bom. Diga “feito” quando acabar: { $what }.
room-ok-which = Qual delas? Toque nela e pronto.
room-welcome = De nada.
room-amend-clash = Desse jeito não cabe. O plano fica como está.
room-undone-dinner = O jantar volta a ser { $when }.
room-already-you = Você já resolveu isso, { $at }.
room-proposal-carry = Assado em casa na véspera, levado frio, reaquecido lá. Se você for assar lá, diga “asso lá”.
room-proposal-hot = Levado quente: inteiro e embrulhado, comido em até { $most } depois de sair do calor ({ $hour } se fizer mais de { $air } lá fora). Mais que isso, só enquanto marcar { $hot } ou mais. Prefere frio? Diga “levamos frio”.
room-proposal-or-hot = Prefere quente? Diga “levamos quente”.
room-hour-there = Agora essa hora é a de lá: { $there }. Se era a hora de casa, diga “jantar { $home }”.
room-proposal-not-hot = Assado na véspera não dá para levar quente. Para isso diga “levamos quente”: aí é assado no dia.

# ---- /export: uma linha com cada arquivo.
room-export-calendar = O plano para sua agenda. Ele não acompanha mudanças: peça de novo e as horas novas trocam as antigas.
room-export-calendar-ended = Abra na sua agenda e as tarefas do plano encerrado saem dela.
room-export-readings = As temperaturas, para uma planilha.
room-export-everything = Tudo o que guardo deste grupo.
room-shift-more = … e mais { $count } mudam junto.
room-pull-sure = { $spot ->
    [thigh] A sobrecoxa
    [wing] A asa
    [stuffing] O recheio
   *[breast] O peito
} marcou { $read } às { $at }, e sai a { $target }. Agora marca isso?
room-carve-under = { $spot ->
    [thigh] A sobrecoxa
    [wing] A asa
    [stuffing] O recheio
   *[breast] O peito
} marcou { $read } às { $at }, e ninguém disse mais nada. Abaixo de { $target } volta para o calor antes de alguém comer: meça primeiro.
room-no-heat = Sem calor desde { $since }? Me diga quando voltar, ou onde a ave está agora. Abaixo de { $hot } até { $until }: jogue fora.
room-no-heat-over = Duas horas sem calor, desde { $since }: o que marcar menos de { $hot } vai para o lixo. Mais quente em toda parte, pode seguir até { $target }.
room-eat-cooking = Ainda não: só é segura com { $target } em peito, coxa e asa.
room-call-carve-unsaid = Já saiu do forno? Ninguém me disse. Só sai com { $target } em peito, coxa e asa; com menos, continua.
room-back-on = De volta ao forno. Só sai com { $target } no mais grosso do peito, no fundo da coxa e na asa: meça de novo às { $look }.
room-carve-unread = Marcava { $target } em peito, coxa e asa? Ninguém me disse. Se não sabe, meça agora: com menos, volta ao forno antes que alguém coma.
room-button-reads-now = Sim, marca
room-button-stays-on = Fica lá
room-done-which = Saiu do forno ou só olhou? Só sai com { $target } no peito, na coxa e na asa.
room-button-looked = Só olhei
room-hold = O corte é às { $carve }. Até lá vai ficar a { $hot } ou mais, coberto, com um termômetro dentro? Se não, tem que estar cortado, comido e na geladeira até { $by }.
room-hold-packed = É embrulhado às { $pack }. Até lá vai ficar a { $hot } ou mais, coberto, com um termômetro dentro? Se não, tem que estar comido e na geladeira até { $by }.
room-report-early = “{ $what }” está previsto para { $when }. Já foi feito mesmo?
room-aside-ask = É da ave? Está na hora de “{ $what }”.
room-two-thermometers = Vale o mais baixo, { $low }. Confira os dois em água com gelo: mais gelo que água, mexida, devem marcar { $ice }. E diga o lugar: peito, coxa ou asa.
room-wandering = Por enquanto vale a mais baixa: { $low }. Espete de novo na parte mais grossa, longe do osso, espere parar e me diga essa.
room-digits-apart = É { $parts }? Ainda não contei.
room-oven-cool = Frio demais para ave: { $limit } ou mais já, ou outro forno. Até lá demora mais que o previsto; diga peito e coxa e eu digo quanto.
room-foil-off = Sim, solto, enquanto descansa: pelo menos { $least }, e só até cortar. Apertado amolece a pele.
room-fridge-bird = A ave lá dentro: descongelada e acima de { $cold } por mais de { $limit }, lixo; assar não resolve. Meça agora. Ainda dura de gelo, ou a { $cold } ou menos por dentro: já para um lugar mais frio.
room-button-held = Fica quente
# $off: when it was last known to be hot; $by: two hours later.
room-held = Bom: coberto, com o termômetro dentro. Me diga quanto marcam peito e coxa: com { $hot } ou mais, as duas horas contam daí. Sem leitura, contam desde { $off }, até { $by }.
room-hold-broken = { $at } é menos de { $hot }: isso não é manter quente. Cortado, comido e na geladeira até { $by }, duas horas depois { $from ->
    [read] da última leitura quente
   *[heat] de sair do calor
}.
room-own-salt-kept = Daqui em diante faço as contas com ele.
room-flooded = É muita coisa de uma vez: parei de ler. Me dê um minuto.
room-skip-theirs = Essa é de { $name }. Só essa pessoa, quem começou o plano ou um admin pode pular.
room-move-already = O jantar já é { $when }.
room-move-already-by = { $name } foi mais rápido: o jantar é { $when }.
room-late = Jantar { $when } em vez de { $dinner }?
room-wanted = { $name } queria o jantar { $when } em vez de { $dinner }.
room-late-on = A ave já está assando e sai como previsto.
room-late-kept = O jantar continua <b>{ $when }</b>.
room-late-host = Quem decide é { $name } ou um admin.
room-late-stands = { $stands ->
    [off] A ave já saiu do calor:
   *[done] A ave está pronta: tire, e
} mantenha quente, coberta, no forno no mínimo, e tem que continuar marcando { $hot }. Se esfriar, tem que ser comida ou ir para a geladeira até { $until }. Ou corte agora, resfrie em travessas rasas e reaqueça a { $target }.
room-late-how = Quanto mais tarde? Diga “jantar uma hora mais tarde” e eu vejo o que muda.
room-button-late-keep = Deixar assim
room-undone-by = Desfeito: { $what } ({ $name }, { $at }).
room-undo-gone = Isso já foi desfeito.
room-undo-theirs = A última mudança é de { $name }: { $what }. Só essa pessoa, quem começou o plano ou um admin pode desfazer.
# Uma marca que já não é um deslize: só a marca pode sair.
room-undo-sure = “{ $step }” foi marcado como feito, { $at }. Foi engano? Só a marca sai; o que foi feito com a ave fica.
room-undo-sure-by = { $name } marcou “{ $step }” como feito, { $at }. Foi engano? Só a marca sai; o que foi feito com a ave fica.
room-button-undo-sure = Engano, desfazer
room-undo-rests = “{ $step }” fica: depois veio “{ $later }”, { $at }. Isso não dá para desfazer.
room-undo-rests-read = “{ $step }” fica: depois a ave foi medida, { $at }. Isso não dá para desfazer.
room-settings-salt = Seu sal: { $weighs } g a colher de chá
room-settings-salt-none = Seu sal: você ainda não disse
room-settings-cooker = Seu forno ou defumador: { $cooker }
room-settings-cooker-none = Seu forno ou defumador: pergunto toda vez
room-settings-fridge = Sua geladeira: { $at }
room-settings-fridge-none = Sua geladeira: sem medir
room-settings-button-salt = Meu sal
room-settings-button-cooker = Meu forno
room-settings-button-fridge = Minha geladeira
room-settings-pick-salt = Me diga o que está no rótulo: “meu sal: 1/4 colher de chá são 0,7 g”. Daí em diante conto com ele.
room-settings-salt-drop = Esquecer meu sal
room-settings-pick-cooker = Onde você costuma assar uma ave? Um plano que não diga outra coisa é para isso.
room-settings-cooker-any = Perguntar toda vez
room-settings-pick-fridge = O que um termômetro marca na sua geladeira?
room-settings-fridge-unknown = Sem medir
room-settings-shelves = Prateleiras da geladeira para um jantar: { $count }
room-settings-shelves-none = Prateleiras da geladeira para um jantar: não informado
room-settings-button-shelves = Prateleiras
room-settings-pick-shelves = Quantas prateleiras da sua geladeira ficam livres para um jantar? A ave ocupa uma, um prato meia, e eu aviso quando não cabe.
room-settings-shelves-unknown = Não conferir
room-settings-pick-zone = Onde fica a cozinha? Digite uma cidade ou um fuso, “Recife” ou “America/Sao_Paulo”, ou me mande seu lugar. O lugar em si não fica guardado.
room-settings-pick-zone-group = Onde fica a cozinha? Diga com “/settings Recife”; um fuso como “America/Sao_Paulo” também serve.
room-export-page = Uma página para a porta da geladeira. Imprima e vá marcando.
