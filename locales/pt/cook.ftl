### Enquanto assa: a previsão numa linha, o que pareceu errado, alarmes, e no que deu. Lê-se com as mãos molhadas ao lado do defumador.

cook-line = Cerca de <b>{ $about }</b>, de { $from } a { $to }; { $standing ->
    [spare] { $span } de folga;{" "}
    [tight] apertado, tem que sair até { $latest };{" "}
    [late] { $span } tarde demais para o jantar;{" "}
   *[ahead] {""}
}olhe de novo às { $look }.
cook-endless = Na melhor das hipóteses cerca de <b>{ $about }</b>, a partir de { $from }; com este calor pode passar muito de { $to }; { $standing ->
    [spare] { $span } de folga;{" "}
    [tight] apertado, tem que sair até { $latest };{" "}
    [late] { $span } tarde demais para o jantar;{" "}
   *[ahead] {""}
}olhe de novo às { $look }.
cook-done = { $target } onde você mediu: pode tirar assim que a parte de dentro da asa também chegar.
cook-spot = { $spot ->
    [breast] Peito
   *[thigh] Sobrecoxa
}: { $reached ->
    [yes] chegou.
   *[no] agora { $now }, { $target } cerca de { $about } (de { $from } a { $to }).
}
cook-air-read = { $air ->
    [oven] Forno
   *[pit] Ar
}{ $seen ->
    [yes] : { $read } às { $at }, ajustado em { $setting }.
   *[no] : ajustado em { $setting }.
}
cook-dinner = Jantar { $dinner }.
cook-decades = Pelas tabelas publicadas, o calor e o tempo até aqui bastam onde você mede. A marca continua { $target }: outros pontos podem estar mais frios.
cook-decades-off = Se saísse agora e descansasse { $stand } sem trinchar, calor e tempo bastariam onde você mede, pelas tabelas publicadas: { $low } pede { $hold } em cada ponto, na asa também. A marca continua { $target }: outros pontos podem estar mais frios.

cook-in-time-again = Assim dá para o jantar de novo.
cook-read-by = { $name } mediu.
cook-late-choices = O jantar pode atrasar, ou:
cook-late-hotter = • Calor a { $setting }: talvez fique pronto cerca de { $about }. Depois me diga quantos graus faz lá dentro.
cook-late-carve = • Separe coxas e peito e termine numa assadeira em forno quente, cada pedaço até { $target }: pedaços vão bem mais rápido. De um calor direto para o outro, sem parar.
cook-button-dinner = Jantar { $at }
cook-button-hotter = Calor a { $setting }
cook-hotter = O plano agora diz { $setting }. Aumente e me diga daqui a 20 minutos quantos graus faz lá dentro.
# The air was otherwise than set. $since: on (since the bird went on) or at ($from); $setting: what it is set to now.
cook-air-was = { $since ->
    [on] Anotado: { $was } desde que entrou.
   *[at] Anotado: { $was } desde { $from }.
}
cook-air-off = { $since ->
    [on] Anotado: sem calor desde que entrou.
   *[at] Anotado: sem calor desde { $from }.
}
cook-air-now = A partir de agora conto com { $setting }. Avise se mudar.
cook-start = Anotado: { $at } por dentro quando entrou.
cook-air-back = Volte a { $setting } já: a hora conta com isso.
cook-air-burns-on = Então o calor continua, e o plano também. Veja se a chama segue acesa; apagou? Me diga.
cook-air-rising = Está subindo, então tem calor: volto a contar com { $setting }. Não é isso? Me diga.
cook-air-low = Ave pede forno a { $limit } ou mais. Meça o peito agora e me diga.
cook-air-cold = Meça o peito agora e me diga. Menos de { $hot } depois de { $limit } assim: jogue fora.
cook-air-raw = Ave crua sem calor por { $limit } ou mais já não é segura, asse como assar depois. Jogue fora.
cook-early = { $done ->
    [yes] É bem antes de { $dinner }.
   *[no] É bem antes do jantar às { $dinner }.
} Mantenha quente: embrulhado, no forno morno ou numa caixa térmica seca, e tem que continuar marcando { $hot }. Se esfriar, tem que ser comido ou ir para a geladeira até { $until }. Ou corte, resfrie em travessas rasas e reaqueça a { $target }.

cook-suspect-odd = { $spot ->
    [breast] Peito
    [thigh] Sobrecoxa
    [oven] Forno
   *[pit] Ar
} a { $given }? { $slip ->
    [was-celsius] Se eram °C, dá { $meant }.
    [was-fahrenheit] Se eram °F, dá { $meant }.
   *[digit] { $meant } faria sentido.
}
cook-suspect-impossible = { $spot ->
    [breast] Peito
    [thigh] Sobrecoxa
    [oven] Forno
   *[pit] Ar
} a { $given }? Nessa não acredito.
cook-suspect-ask = Não contei. Está marcando isso mesmo?
cook-suspect-meant = É { $parts }
cook-suspect-meant-all = Usar as corrigidas
cook-suspect-dropped = Deixei de fora. Mande de novo o que marca agora.

cook-alarm-fire = { $cooker ->
    [smoker] <b>O fogo está morrendo:</b> ar a { $pit } e não volta. Combustível e ar agora, tampa fechada. Me diga o ar daqui a 15 minutos.
   *[oven] <b>O forno está perdendo calor:</b> { $pit } com o ajuste em { $setting }. Está ligado, com a porta fechada? Me diga o que marca daqui a 15 minutos.
}
cook-alarm-hot = { $cooker ->
    [smoker] O calor disparou: { $pit } quando era para ser { $setting }. Feche um pouco a entrada de ar; papel-alumínio no que dourar rápido demais.
   *[oven] O forno está quente demais: { $pit } quando era para ser { $setting }. Abaixe; papel-alumínio no que dourar rápido demais.
}
cook-alarm-sag = { $cooker ->
    [smoker] O defumador está caindo: { $pit } onde está { $setting }. Acabou de abrir a tampa? Veja de novo em 10 minutos. Senão, combustível e um pouco mais de ar, tampa fechada. Ele fica do lado de fora: monóxido de carbono.
   *[oven] O forno está caindo: { $pit } onde está { $setting }. Acabou de abrir a porta? Veja de novo em 10 minutos. Senão, confira se está ligado e fechado, e aumente um pouco.
}
cook-alarm-moved = { $spot ->
    [breast] A leitura do peito deu um salto. A sonda ainda está na parte mais grossa, longe do osso?
    [thigh] A leitura da sobrecoxa deu um salto. A sonda ainda está bem no fundo da sobrecoxa, longe do osso?
    [oven] A leitura do forno deu um salto. Mexeram no termômetro?
   *[pit] A leitura do ar deu um salto. Mexeram no termômetro?
} Ajeite e me mande o que marca.
cook-doubting = Meça em outro ponto, no meio da carne e longe do osso. Se o número estava errado, desfaça; se não, ele vale.
cook-alarm-behind = { $spot ->
    [breast] O peito
   *[thigh] A sobrecoxa
} está bem abaixo do que { $setting } faz até agora. { $cooker ->
    [smoker] O fogo está forte, a ponta está no meio da carne? Meça em outro ponto. Ficou apagado? Me diga quanto: “apagado 40 min”.
   *[oven] O forno está quente, a ponta está no meio da carne? Meça em outro ponto. Ficou apagado? Me diga quanto: “apagado 40 min”.
}
cook-alarm-ahead = { $spot ->
    [breast] O peito
   *[thigh] A sobrecoxa
} está bem acima do que { $setting } faz até agora: a ponta está no osso ou debaixo da pele? Meça em outro ponto, no meio da carne.
cook-alarm-apart = Peito e sobrecoxa estão { $apart } longe um do outro. Um está mal posto: confira os dois, longe do osso e fora da cavidade.
cook-alarm-stalled = { $spot ->
    [breast] O peito
   *[thigh] A sobrecoxa
} marca { $at } há { $since }. { $low ->
    [yes] Num defumador baixo pode ser a parada: a pele sua tão rápido quanto esquenta. Mais calor resolve.
   *[no] A sonda está no lugar certo? Um segundo termômetro tira a dúvida.
}
cook-alarm-zone = <b>O ar está abaixo de { $low } há { $span }</b>, e a ave a { $spot }. Abaixo de { $hot } as bactérias crescem: suba o calor já, ou passe para um forno. Duas horas assim é o limite.
cook-alarm-zone-over = <b>O ar está abaixo de { $low } há { $span }</b>, e a ave a { $spot }. Passou do limite de duas horas. Eu não serviria.
cook-alarm-long = { $spot ->
    [thigh] A sobrecoxa
   *[breast] O peito
} marca { $at } depois de { $span }. Com pouco calor deveria passar de { $hot } em no máximo { $most }: é costume, não número oficial. Mais calor, ou um forno a { $oven }, e passa.
cook-alarm-falling = { $spot ->
    [thigh] <b>A sobrecoxa está esfriando:</b>
   *[breast] <b>O peito está esfriando:</b>
} { $from }, agora { $to }. { $cooker ->
    [smoker] O fogo apagou? Combustível e ar agora, ou passe a ave para um forno quente.
   *[oven] O forno está ligado, a porta fechada? Se não, para outro forno quente.
} Abaixo de { $hot } as bactérias crescem: duas horas assim é o limite. Mande a próxima leitura em 10 minutos.
cook-alarm-falling-over = { $spot ->
    [thigh] <b>A sobrecoxa está esfriando há { $span }:</b>
   *[breast] <b>O peito está esfriando há { $span }:</b>
} { $from }, agora { $to }. Passou do limite de duas horas abaixo de { $hot }. Eu não serviria.
cook-falling = Sem hora enquanto esfria: primeiro o calor tem que voltar.
cook-alarm-hold = Fora do calor desde { $off }. Meça: { $hot } ou mais, pode esperar. Menos, tem que ser comido ou ir para a geladeira até { $until }.
cook-alarm-hold-read = Última leitura quente: { $off }. Meça de novo: { $hot } ou mais, pode esperar. Menos, tem que ser comido ou ir para a geladeira até { $until }.
cook-held-unread = Ainda quente? Não tenho leitura desde { $off }. Meça agora peito e coxa: { $hot } ou mais nos dois, está. Menos, vai para o lixo.
# A bird carried hot to another house. $hot: 140 °F; $off: when it was last known to be hot; $by: two hours later.
cook-hot-by = Menos que isso: comida até { $by }, as sobras direto na geladeira. Depois, não sirva.
cook-measure-first = Antes meça peito e coxa e me diga: com { $hot } ou mais, as duas horas contam daí; senão, desde { $off }.
cook-hot-dinner-late = As duas horas acabam às { $by }, antes do jantar: tem que continuar marcando { $hot } ou mais. Senão, coma antes.
cook-hot-still = Ainda { $hot } ou mais nos dois: ótimo, pode esperar enquanto marcar isso. Da última leitura assim são { $most }.
cook-hot-one = Esse ponto está quente o bastante. Contam os dois, peito e coxa: meça o outro também.
cook-hot-below = Está abaixo de { $hot }. Pelo que me disseram, estava quente até as { $off }: comida até { $by }, as sobras direto na geladeira.
cook-hot-over = Está abaixo de { $hot }, e já são mais de { $most } desde { $off }, a última vez que se sabia quente. Eu não serviria.
# De volta ao calor na outra casa.
cook-hot-in = De volta ao calor desde { $at }, antes de acabarem as duas horas: ótimo. Fica lá até peito e coxa marcarem { $target }, e aí é comer. Me diga os números.
cook-hot-in-more = Ainda não: fica lá até peito e coxa marcarem { $target }, os dois.
cook-hot-in-there = { $target } nos dois: pode cortar e comer. As sobras na geladeira até { $by }.
cook-hot-in-table = Voltou ao calor às { $at }: corta quando peito e coxa marcarem { $target }.
cook-hot-too-late = As duas horas acabaram às { $by }, antes de esquentar. O calor não conserta mais: vai para o lixo, não sirva.
cook-hot-needs = Peito e coxa com { $hot } ou mais: não precisa, corte assim mesmo, até { $by }. Menos: no forno antes disso, até os dois marcarem { $target }.
cook-hot-needs-no = Não precisa: os dois marcam { $hot } ou mais. Corte assim mesmo, comido até { $by }.
cook-cooled-counter = { $at }. Marque o que marcar, vai para a geladeira até { $by }, em vasilhas rasas: faltam { $left }.
cook-cooled-unsaid = { $at } só é frio o bastante se estava na geladeira até { $by }. Se não, vai fora.
cook-cooled-cold = { $at }: frio o bastante, para guardar e para levar. Que fique a { $cold } ou menos.
cook-cooled-fridge = { $at }: ainda esfria. Até { $by } devia marcar { $cold } ou menos: vasilhas rasas, afastadas, sem fechar de todo.
cook-cooled-warm = { $at } depois de { $span } na geladeira é quente demais. Veja a geladeira; o que passou mais de duas horas acima de { $cold } ninguém pode chamar de seguro. Na dúvida, jogue fora.
cook-cooled-packed = { $at } passa de { $cold }. Mais de { $most } acima, ao todo, e vai fora, também se ninguém sabe quanto. Se não, gelo em volta, ou direto ao calor, até { $target } por inteiro.
cook-reheat-on = { $at }: continua, até { $target } por inteiro, medido no pedaço mais grosso.
cook-reheat-there = { $at }: aí está. O mesmo no meio de cada vasilha, e pode servir.
cook-reheat-only = Isso só vale se estava na geladeira até { $by }; ninguém disse. O calor não conserta isso.
cook-gone = Essa ficou fora tempo demais e vai para o lixo, marque o que marcar. Sinto muito. Não há mais nada a fazer com ela.
cook-tossed = Foi o certo, e sinto muito. Não aviso mais por essa ave.
cook-tossed-rest = Foi o certo. Por isso não aviso mais.
cook-tossed-raw = Dessa ave não aviso mais nada.
cook-new-bird = Quando houver outra ave, me diga quanto pesa e se é fresca ou congelada: planejo o mesmo jantar com ela.
cook-setting = O plano diz { $setting }.
cook-standing = Fora do calor desde { $off }: cortado, comido e na geladeira até { $by }, a não ser que fique a { $hot } ou mais.
cook-hot-day = { $at } em volta: acima de { $air } é uma hora ao todo fora do forno e da geladeira, não duas. Conto com isso.
cook-hot-day-off = { $at } em volta: acima de { $air } é uma hora, não duas. Comido ou na geladeira até { $by }.

cook-after = Às { $when } eu disse cerca de { $about } (de { $from } a { $to }); saiu às { $off }.

cook-chart = { $what ->
    [breast] Peito
    [thigh] Sobrecoxa
    [oven] Forno
    [pit] Ar
    [dinner] Jantar
   *[done] Pronto
}
cook-chart-number = { $number }

cook-log-noted = { $count ->
    [one] Uma leitura de { $name }, { $from }.
   *[other] { $count } leituras de { $name }, de { $from } a { $to }.
}
cook-log-nothing = Nada de novo nele desde que a ave entrou, às { $on }.
cook-log-not-on = Quando a ave começou a assar? Diga isso primeiro, depois mande o registro de novo.
cook-log-large = Esse arquivo é grande demais: o máximo é 2 MB. Corte para este assado.
cook-log-lost = Não consegui baixar o arquivo. Mande mais uma vez.
cook-odd = { $count ->
    [one] Uma leitura não pode estar certa; não conta.
   *[other] { $count } leituras não podem estar certas; não contam.
}
cook-log-full = Guardo { $most } leituras por ave, e não cabem mais. Daqui em diante leia você o termômetro: { $target } em toda parte.
cook-not-done = Ainda não: { $spot ->
    [thigh] a coxa marcava
    [wing] a asa marcava
    [stuffing] o recheio marcava
   *[breast] o peito marcava
} { $read } às { $at }. Pronto é { $target } no peito, na coxa e na asa.
cook-done-unread = Só o termômetro diz: { $target } na parte mais grossa do peito, no fundo da coxa e na asa. Quanto marca?
cook-eat = Sim: { $target } no peito, na coxa e na asa. Comido ou na geladeira até { $by }.
cook-eat-unread = Se peito, coxa e asa marcaram { $target }, sim. Se não sabe, meça agora. Comido ou na geladeira até { $by }.
cook-back-in = Então volta para o calor, até { $target } no peito, na coxa e na asa.
cook-pink-read = Peito, coxa e asa marcaram { $target }. É isso que decide, seja qual for a cor. Na dúvida, meça de novo na parte mais grossa do peito, no fundo da sobrecoxa e na asa: se algum ponto marcar menos, volta ao forno.
cook-pink-unread = Cor e caldo não provam nada, rosado ou claro, e ninguém mediu. Meça agora, antes que alguém coma: { $target } na parte mais grossa do peito, no fundo da sobrecoxa e na asa. Se algum ponto marcar menos, volta ao forno.
cook-no-butter = Alguém não pode com leite: óleo, nada de manteiga.
