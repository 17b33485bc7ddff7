### O programa num terminal: ajuda, erros, marcas em volta das mensagens.

cli-script-line = Linha { $line }: { $reason }
cli-script-unknown = “{ $given }” não é ajuste (zone, locale, room) nem hora. Comece com uma hora, como 2027-11-25 17:00.
cli-script-room = “{ $given }” não é um tipo de sala. Escreva “room group” ou “room private”.
cli-script-late = “{ $given }” vem tarde demais ou duas vezes. Cada ajuste uma vez, acima da primeira hora.
cli-script-time = “{ $given }” não é uma hora. Escreva 2027-11-25 17:00, com segundos se quiser.
cli-script-earlier = “{ $given }” é antes da linha anterior. Ponha as linhas em ordem de hora.
cli-script-act = “{ $given }” não diz nem aperta nada. Escreva “Rosa: texto” ou “Rosa > Botão”.
cli-script-empty = { $given } não diz nem aperta nada. Ponha o texto ou o nome do botão.
cli-script-crowd = Uma sala particular tem uma pessoa só, então { $given } não pode falar nela. Escreva “room group”.
cli-no-zone = “{ $given }” não é um fuso horário. Use um nome como America/Sao_Paulo.
cli-no-locale = “{ $given }” não é um código de idioma. Use um como pt-BR ou en-US.

cli-said-to-all = carvetime
cli-said-to-one = carvetime para { $name }
cli-said-edit-to-all = carvetime (editado)
cli-said-edit-to-one = carvetime para { $name } (editado)
cli-said-notice = carvetime para { $name } (aviso)
cli-no-button = Não há botão “{ $label }”. Há: { $there }.
cli-no-buttons = Não há botão “{ $label }”, nem nenhum outro.
cli-standstill = Os lembretes não paravam. Por favor, relate isso com este roteiro.

cli-only-for = (para { $name })
cli-changed = (mudou)
cli-you = Você
cli-hello = Conte da ave e do jantar, ou digite /help. #1 aperta um botão, “@Rosa oi” fala como Rosa, Ctrl-D encerra.
cli-nothing-to-press = Ainda não há nada para apertar.
cli-press = #{ $number } aperta o botão.
cli-no-number = Nenhum botão tem esse número. Há: { $there }
cli-file-kept = Salvo: { $path }
cli-file-lost = Não deu para salvar { $path }. Confira o disco e peça de novo.

cli-file-failed = { $path }: { $what }
cli-file-failed-do = Confira o arquivo e a pasta, e tente de novo.
cli-failed = Falhou: { $what }
cli-failed-do = Tente de novo; com RUST_LOG=debug ele conta mais.
cli-backed-up = { $rows ->
    [one] { $rows } linha gravada em { $path }.
   *[other] { $rows } linhas gravadas em { $path }.
}
cli-restored = { $rows ->
    [one] { $rows } linha trazida de { $path }.
   *[other] { $rows } linhas trazidas de { $path }.
}
cli-no-data = Não há onde guardar dados aqui. Indique uma pasta com --data.

cli-about-carvetime = Planeja uma ave inteira para uma mesa cheia, e mantém o plano enquanto assa.
cli-about-chat = Conversar neste terminal; sem conta, sem rede
cli-about-serve = Rodar como bot do Telegram; o token vem de TELOXIDE_TOKEN
cli-about-ask = Responder uma pergunta e sair
cli-about-rehearse = Tocar um roteiro num relógio virtual e mostrar a conversa
cli-about-forecast = Repassar um registro de temperaturas, com a previsão a cada leitura
cli-about-backup = Gravar tudo o que está guardado em um arquivo
cli-about-restore = Trazer um backup de volta para uma pasta de dados vazia
cli-help-data = Pasta onde tudo fica guardado
cli-help-locale = Idioma, unidades e relógio, como pt-BR ou en-US
cli-help-zone = Fuso horário da cozinha, como America/Sao_Paulo
cli-help-json = JSON em vez de texto
cli-help-text = A pergunta, em palavras simples
cli-help-file = O arquivo
cli-help-bird = Tipo de ave
cli-help-mass = Peso como comprada, por exemplo "6,4 kg"
cli-help-form = Como ela vai; breast é só o peito de peru
cli-help-stuffed = Está recheada
cli-help-cooker = De onde vem o calor
cli-help-pit = A quanto o aparelho está, por exemplo "163 C"
cli-help-start = Temperatura da ave ao começar a assar, por exemplo "4 C"
cli-help-breast = Alvo no peito
cli-help-thigh = Alvo na sobrecoxa
cli-help-webhook = O Telegram entrega neste endereço https em vez de ser perguntado; precisa de --listen
cli-help-listen = Onde escutar isso, por exemplo 127.0.0.1:8080, atrás de um servidor que fala https
cli-help-health = Onde se pode consultar /health e /metrics para monitorar, por exemplo 127.0.0.1:9090; não é para a rede aberta
