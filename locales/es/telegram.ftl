# What only the Telegram side says.

telegram-sorry = Algo ha fallado por mi parte y no lo he recogido. Dímelo de otra manera, por favor.
# A reminder that could not be worked out.
telegram-sorry-bell = Un aviso mío ha fallado. Mira /board, por favor.
# $person is a mention. The message meant for them follows on the next line.
telegram-unreachable = { $person }, no puedo escribirte en privado, así que va por aquí:
# A button under the text field of a phone.
telegram-share-place = Enviar mi ubicación

# Typed behind the bot's name in any chat. The first three are examples of what to ask: questions the bot can read.
telegram-inline-salt = 2 cucharadas de sal fina en sal kosher en escamas
telegram-inline-bird = sal para un pavo de 5 kg
telegram-inline-safe = pavo 3 horas fuera, ¿está bien?
# On a button above the results, where nothing could be read yet. Under 40 characters.
telegram-inline-unread = Pregúntame en privado

# Why serving did not start or had to end: what happened, what to do. Shown in a terminal.
telegram-no-token = No hay token del bot.
telegram-no-token-do = Pon en TELOXIDE_TOKEN el que recibiste para tu bot.
telegram-bad-token = Telegram no acepta el token del bot.
telegram-bad-token-do = Revisa TELOXIDE_TOKEN, o pide uno nuevo.
telegram-other-bot = Estos datos son de otro bot.
telegram-other-bot-do = Arranca con el token de ese bot o elige una carpeta vacía con --data.
telegram-conflict = Otro programa está funcionando como este bot.
telegram-conflict-do = Para uno de los dos; se quitarían los mensajes el uno al otro.
# $url is what was set.
telegram-bad-url = TELOXIDE_API_URL no es una dirección web: { $url }.
telegram-bad-url-do = Escríbela como http://localhost:8081, o déjala sin poner.
telegram-no-api = En { $url } no hay ninguna API de bots: no existe esa página.
telegram-no-api-do = Revisa TELOXIDE_API_URL; sin ella se usa la de Telegram.
# $url is what was given.
telegram-bad-webhook = Telegram no entrega en { $url }.
telegram-bad-webhook-do = Usa una dirección https pública en el puerto 443, 80, 88 u 8443.
# $reason comes from the operating system.
telegram-listen = No se puede escuchar en { $address }: { $reason }.
telegram-listen-do = Elige otra dirección con --listen, o para lo que escucha ahí.
telegram-system = El sistema no ha dado hilos, señales o red.
telegram-system-do = Vuelve a empezar; con RUST_LOG=carvetime=debug dice más.

# The menu of commands: what each does, in a few words, no full stop. Under 60 characters.
telegram-command-plan = Planear el ave, o ver el plan
telegram-command-board = Qué toca, quién lo hace, cuándo se cena
telegram-command-salt = Cuánta sal, y una sal por otra
telegram-command-ask = Una duda rápida de cocina
telegram-command-log = Anotar lecturas del termómetro
telegram-command-when = Cuándo estará
telegram-command-move = Cambiar la hora de la cena
telegram-command-take = Tomar una tarea
telegram-command-drop = Devolver una tarea
telegram-command-undo = Deshacer el último cambio
telegram-command-export = Calendario, lecturas, todo
telegram-command-stop = Terminar el plan
telegram-command-forget = Borrar lo guardado aquí
telegram-command-settings = Idioma, unidades, zona horaria
telegram-command-help = Cómo funciona

# The bot's page before anyone has written. Under 500 characters.
telegram-description = Cuéntame del ave y de la cena: peso, fresca o congelada, cuándo, cuántos a la mesa. Calculo la descongelación, la sal, el fuego y el reposo, aviso a quien le toca y sigo tu termómetro hasta trinchar. En un chat privado o con toda la familia en un grupo.
# On the bot's profile. Under 110 characters.
telegram-short-description = Lleva un ave entera a la mesa a su hora, con un cocinero o con toda la familia.
