# O que só o lado do Telegram diz.

telegram-sorry = Deu errado aqui do meu lado e não entendi. Diga de outro jeito, por favor.
telegram-sorry-bell = Um lembrete meu deu errado. Dê uma olhada em /board.
telegram-unreachable = { $person }, não consigo te escrever em particular, então vai aqui:
telegram-share-place = Enviar meu lugar

telegram-inline-salt = 2 colheres de sopa de sal de mesa em kosher em flocos
telegram-inline-bird = sal para um peru de 5,5 kg
telegram-inline-safe = peru fora 3 horas, tudo bem?
telegram-inline-unread = Pergunte em particular

telegram-no-token = Falta o token do bot.
telegram-no-token-do = Ponha em TELOXIDE_TOKEN o token do seu bot.
telegram-bad-token = O Telegram não aceita o token do bot.
telegram-bad-token-do = Confira TELOXIDE_TOKEN ou peça um novo.
telegram-conflict = Outro programa já está rodando como este bot.
telegram-conflict-do = Pare um dos dois; um tiraria as mensagens do outro.
telegram-other-bot = Estes dados são de outro bot.
telegram-other-bot-do = Inicie com o token daquele bot, ou escolha uma pasta vazia com --data.
telegram-bad-url = TELOXIDE_API_URL não é um endereço web: { $url }.
telegram-bad-url-do = Escreva como http://localhost:8081, ou deixe sem nada.
telegram-no-api = Não há API de bots em { $url }: essa página não existe.
telegram-no-api-do = Confira TELOXIDE_API_URL; sem ela, vale a do Telegram.
telegram-bad-webhook = O Telegram não entrega em { $url }.
telegram-bad-webhook-do = Use um endereço https público na porta 443, 80, 88 ou 8443.
telegram-listen = Não dá para escutar em { $address }: { $reason }.
telegram-listen-do = Escolha outro endereço com --listen, ou pare o que está usando este.
telegram-system = O sistema não deu threads, sinais ou rede.
telegram-system-do = Inicie de novo; com RUST_LOG=carvetime=debug ele conta mais.

telegram-command-plan = Planejar a ave, ou ver o plano
telegram-command-board = O que vem agora, com quem, e quando é o jantar
telegram-command-salt = Quanto sal, e um sal no lugar de outro
telegram-command-ask = Uma pergunta rápida de cozinha
telegram-command-log = Anotar temperaturas
telegram-command-when = Quando fica pronto
telegram-command-move = Mudar a hora do jantar
telegram-command-take = Pegar uma tarefa
telegram-command-drop = Devolver uma tarefa
telegram-command-undo = Desfazer a última mudança
telegram-command-export = Agenda, temperaturas, tudo
telegram-command-stop = Encerrar o plano
telegram-command-forget = Apagar o que está guardado aqui
telegram-command-settings = Idioma, unidades, fuso horário
telegram-command-help = Como isto funciona

telegram-description = Conte da ave e do jantar: peso, fresca ou congelada, quando, quantas pessoas. Eu calculo quando descongelar, salgar, assar e descansar, aviso quem ficou com cada tarefa e acompanho seu termômetro até a hora de cortar. Em conversa particular ou com a família inteira num grupo.
telegram-short-description = Leva uma ave inteira à mesa na hora, com uma pessoa só ou com a família toda.
