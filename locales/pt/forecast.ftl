### A previsão: quando a ave fica pronta, o que há para perguntar, por que a faixa é larga.

forecast-line = { $at }: pronto depois de { $done } (de { $from } a { $to })
forecast-line-done = { $at }: no alvo (hora real cerca de { $done }, de { $from } a { $to })
forecast-progress = { $done } de { $all } leituras

forecast-suspect-meant = { $place ->
    [breast] Peito { $given }? Ou { $meant }? Não contei.
    [thigh] Sobrecoxa { $given }? Ou { $meant }? Não contei.
    [oven] Forno { $given }? Ou { $meant }? Não contei.
   *[pit] Ar { $given }? Ou { $meant }? Não contei.
}
forecast-suspect = { $place ->
    [breast] Peito { $given } não pode ser. Olhe de novo; não contei.
    [thigh] Sobrecoxa { $given } não pode ser. Olhe de novo; não contei.
    [oven] Forno { $given } não pode ser. Olhe de novo; não contei.
   *[pit] Ar { $given } não pode ser. Olhe de novo; não contei.
}

forecast-doubt-no-readings = Nenhuma leitura ainda: isto é só o de costume.
forecast-doubt-unread = { $place ->
    [breast] Nada medido no peito ainda.
   *[thigh] Nada medido na sobrecoxa ainda.
}
forecast-doubt-pit-unread = Ninguém mede o calor lá dentro: uso o ajuste.
forecast-doubt-gap = { $span } sem leitura: menos certeza.
forecast-doubt-fire-dying = O ar caiu para { $pit } e não volta. Veja o fogo.
forecast-doubt-probe-moved = { $place ->
    [breast] A leitura do peito deu um salto: saiu do lugar, encostou no osso ou ficou na cavidade? Menos certeza.
    [thigh] A leitura da sobrecoxa deu um salto: saiu do lugar, encostou no osso ou ficou na cavidade? Menos certeza.
    [oven] A leitura do forno deu um salto: mexeram no termômetro? Menos certeza.
   *[pit] A leitura do ar deu um salto: mexeram no termômetro? Menos certeza.
}
forecast-doubt-probes-disagree = Peito e sobrecoxa estão { $by } longe um do outro. Veja onde estão as duas pontas.
forecast-doubt-changed = { $place ->
    [breast] O peito esquenta diferente de antes (papel-alumínio, tampa, saiu do lugar?). Menos certeza.
   *[thigh] A sobrecoxa esquenta diferente de antes (papel-alumínio, tampa, saiu do lugar?). Menos certeza.
}
forecast-doubt-behind = { $place ->
    [breast] O peito está bem mais frio que o normal a esta altura: sem certeza.
   *[thigh] A sobrecoxa está bem mais fria que o normal a esta altura: sem certeza.
}
forecast-doubt-ahead = { $place ->
    [breast] O peito está bem mais quente que o normal: a ponta está no osso ou debaixo da pele? Menos certo.
   *[thigh] A sobrecoxa está bem mais quente que o normal: a ponta está no osso ou debaixo da pele? Menos certo.
}
forecast-doubt-part-frozen = Entrou com gelo por dentro: menos certeza.
forecast-doubt-unusual = Vi poucas aves assim: menos certeza.
forecast-doubt-endless = Com este calor, talvez nunca chegue lá. Aumente o calor.

forecast-csv-empty = Linha { $line }: sem leituras. Um registro tem um cabeçalho como minutes,pit_f,breast_f,thigh_f e uma linha por leitura.
forecast-csv-no-time = Linha { $line }: falta a coluna da hora. Chame uma de minutes ou time.
forecast-csv-no-spot = Linha { $line }: falta uma coluna de temperatura. Chame de pit_f, breast_f, thigh_f (ou _c).
forecast-csv-twice = Linha { $line }: “{ $given }” aparece duas vezes. Deixe uma.
forecast-csv-no-number = Linha { $line }: “{ $given }” não é um número que sirva. Sem leitura, deixe a célula vazia.
forecast-csv-no-clock = Linha { $line }: “{ $given }” não é uma hora. Escreva 14:05.
forecast-csv-earlier = Linha { $line }: { $given } é antes da linha anterior. Ponha as linhas em ordem de hora.
forecast-csv-too-long = Linha { $line }: mais leituras do que segundos num dia. Corte o registro para um assado só.

forecast-flag-mass = --mass: “{ $given }” não é um peso. Escreva "14.2 lb" ou "6,4 kg".
forecast-flag-mass-range = --mass: nenhuma ave pesa { $given }. Use de { $low } a { $high }.
forecast-flag-temperature = { $flag }: “{ $given }” não serve. Escreva uma temperatura de { $low } a { $high }, como "163 C".
