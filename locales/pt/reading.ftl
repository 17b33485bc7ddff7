### O que há de errado em algo digitado: o que foi entendido, a faixa, um exemplo.

reading-mass = Uma ave de { $given }? Eu planejo de { $low } a { $high }. Por exemplo: peru de 6,5 kg.
reading-guests = { $given } à mesa? Diga um número inteiro de { $low } a { $high }. Por exemplo: 11 pessoas.
reading-setting = { $given } não é calor para uma ave: trabalho de { $low } a { $high }. Por exemplo: forno a { $example }.
reading-solution = { $given } % de solução? O rótulo diz no máximo { $high } %. Por exemplo: contém até 8 % de solução.
reading-drive = { $given } min de viagem? Vai até { $high }. Por exemplo: 40 min de carro.
reading-past = { $given } já passou. Quando é o jantar? Por exemplo: quinta às 17h.
reading-used-by = A validade, { $day }, já passou. Ave fresca vencida não se come, a não ser que tenha sido congelada a tempo.
reading-use-by-far = Validade { $day }? Ave fresca não dura tanto. Por exemplo: “validade sexta”.
reading-far = { $given } está longe demais: planejo até { $days } dias à frente. Por exemplo: quinta às 17h.
reading-fryer = Planejo forno e defumador, não óleo quente. Nunca frite uma ave congelada, molhada ou recheada, e só ao ar livre. Pergunte: fritar é seguro?
reading-other-bird = Tenho tempos de peru, frango, capão, pato e ganso, dessa ave não, então não a planejo. Vale o termômetro: { $target } no peito, na coxa e na asa.
reading-thermometer = { $given } no termômetro? Aceito de { $low } a { $high }. Por exemplo: peito 53, sobrecoxa 61.
reading-future = { $given } ainda não chegou. Quando você mediu? Por exemplo: peito 53 às 14:05.
reading-too-many = Um valor por lugar, por favor: peito, sobrecoxa, ar. Por exemplo: peito 53, sobrecoxa 61, ar 168.
reading-loose-number = O que é { $given } aí? Diga com a unidade: 6,5 kg, 11 pessoas, 165 °C.
reading-two-weights = Duas aves de pesos diferentes: planejo uma de cada vez, primeiro a de { $heavy }. Quando ela estiver pronta no plano, me diga a de { $light }.
