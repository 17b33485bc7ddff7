# O que pode dar errado com os dados no disco. Pares: o que houve, o que fazer. Num terminal.
book-locked = Outro Carvetime está usando { $path }.
book-locked-do = Pare o outro primeiro, ou escolha outra pasta com --data.
book-disk = Não dá para usar { $path }: { $reason }.
book-disk-do = Veja o espaço livre e as permissões da pasta, e inicie de novo.
book-damaged = Os dados guardados estão danificados ({ $detail }).
book-damaged-do = Tire a pasta de dados do lugar, guarde, e traga um backup com: carvetime restore ARQUIVO
book-newer = Os dados guardados são de um Carvetime mais novo.
book-newer-do = Use aquela versão ou uma mais recente.
book-file-exists = { $path } já existe.
book-file-exists-do = Escolha outro nome; nada foi sobrescrito.
book-not-empty = { $path } já tem dados.
book-not-empty-do = Escolha uma pasta vazia com --data; nada foi mudado.
book-bad-backup = { $path } não é um backup inteiro: a linha { $line } não serve.
book-bad-backup-do = Use outro backup; nada foi mudado.
book-recovered = Os dados guardados estavam danificados e ficam em { $aside }. Segui com a cópia { $export }; { $missing ->
    [0] não consta que falte algo do que veio depois.
    [one] falta uma mensagem que veio depois, ouvida ou enviada.
   *[other] faltam { $missing } mensagens que vieram depois, ouvidas ou enviadas.
}
