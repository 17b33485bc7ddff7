# Pratos ao lado da ave.
dish-added = Incluído: { $what }, { $when }.
dish-changed = Mudado: { $what }, { $takes }, { $when }.
dish-changed-at = Mudado: { $what }, { $takes } a { $setting }, { $when }.
dish-told = { $what }: { $when }, { $takes }.
dish-told-at = { $what }: { $when }, { $takes } a { $setting }.
dish-all-fit = Sim, do jeito planejado cabe tudo:
dish-there = { $name } já está no plano, { $when }.
dish-button-another = Mais um
dish-hot-through = { $target } no meio antes de ser comido.
dish-removed = { $name } saiu do plano.
dish-none = Não há pratos no plano.
dish-unknown = Não há { $name } no plano. Há { $known }.
dish-name = { $name }
dish-stays = Agora isso não dá. Nada mudou.
dish-left = Tudo fica como estava.
dish-start = Você disse { $said }. Para este jantar é { $when }. Se puder esperar frio, diga que é feito com antecedência.
dish-theirs = É de { $name }. Só essa pessoa, quem incluiu, quem começou o plano ou um admin pode mudar ou tirar.
dish-ready = Você disse pronto até { $said }. Para este jantar fica pronto { $when }. Se puder esperar frio, diga que é feito com antecedência.
dish-said = Você disse { $said }: escolha o que chega mais perto, ou deixe.
dish-no-plan = Primeiro a ave: conte do jantar com /plan, depois do resto da mesa.
dish-no-name = O que é, e quanto tempo leva? Assim: /plan inclui recheio no forno 45 min a 190
dish-no-time = Quanto tempo leva { $name }? Assim: /plan inclui { $name } no forno 45 min a 190
dish-time = { $name } pode levar de 1 min a 12 h.
dish-setting = { $setting } não é calor para um prato: de { $low } a { $high }. Assim: no forno 45 min a 190
dish-too-many = Já são { $most } pratos. Tire um antes: /plan tira …
dish-not-yet = “{ $name }” ainda não está no plano: primeiro o jantar tem que caber. Depois me diga de novo.
dish-cold = Na geladeira a partir de { $when }, { $room ->
    [half] meia prateleira
    [whole] uma prateleira
   *[more] { $shelves } prateleiras
}.
dish-iced = Numa caixa térmica com gelo a partir de { $when }, com um termômetro dentro: { $cold } ou menos o tempo todo.
dish-shelves = { $count ->
    [one] Uma prateleira
   *[other] { $count } prateleiras
} para o jantar, contando a da ave. Se o dia a dia precisa de espaço, me diga menos.
dish-shelves-hint = A geladeira está cheia? Diga “minha geladeira tem 3 prateleiras” e eu vejo se tudo cabe ao lado da ave.
dish-stay = { $name } pode esperar na geladeira de 15 min a 2 dias, até o jantar.
