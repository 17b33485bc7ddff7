# What only the Telegram side says.

telegram-sorry = That went wrong on my side and I didn't take it in. Please say it another way.
# A reminder that could not be worked out.
telegram-sorry-bell = A reminder of mine went wrong. Please look at /board.
# $person is a mention. The message meant for them follows on the next line.
telegram-unreachable = { $person }, I can't write to you privately, so here it is:
# A button under the text field of a phone.
telegram-share-place = Share my place

# Typed behind the bot's name in any chat. The first three are examples of what to ask: questions the bot can read.
telegram-inline-salt = 2 tbsp table salt in flake kosher
telegram-inline-bird = salt for a { units-example-smaller } turkey
telegram-inline-safe = turkey out for 3 hours, ok?
# On a button above the results, where nothing could be read yet. Under 40 characters.
telegram-inline-unread = Ask me privately

# Why serving did not start or had to end: what happened, what to do. Shown in a terminal.
telegram-no-token = There is no bot token.
telegram-no-token-do = Set TELOXIDE_TOKEN to the one you got for your bot.
telegram-bad-token = Telegram doesn't accept the bot token.
telegram-bad-token-do = Check TELOXIDE_TOKEN, or have a new one made.
telegram-other-bot = This data belongs to another bot.
telegram-other-bot-do = Start with that bot's token, or choose an empty folder with --data.
telegram-conflict = Another program is running as this bot.
telegram-conflict-do = Stop one of the two; they would take each other's messages.
# $url is what was set.
telegram-bad-url = TELOXIDE_API_URL is no web address: { $url }.
telegram-bad-url-do = Write it like http://localhost:8081, or leave it unset.
telegram-no-api = There is no Bot API at { $url }: it has no such page.
telegram-no-api-do = Check TELOXIDE_API_URL; without it, Telegram's own is used.
# $url is what was given.
telegram-bad-webhook = Telegram won't deliver to { $url }.
telegram-bad-webhook-do = Use a public https address on port 443, 80, 88 or 8443.
# $reason comes from the operating system.
telegram-listen = Can't listen on { $address }: { $reason }.
telegram-listen-do = Choose another address with --listen, or stop what listens there.
telegram-system = The system gave no threads, signals or network.
telegram-system-do = Start again; with RUST_LOG=carvetime=debug it says more.

# The menu of commands: what each does, in a few words, no full stop. Under 60 characters.
telegram-command-plan = Plan the bird, or see the plan
telegram-command-board = What is due, who has it, when dinner is
telegram-command-salt = How much salt, and one salt for another
telegram-command-ask = A quick kitchen question
telegram-command-log = Note thermometer readings
telegram-command-when = When it will be done
telegram-command-move = Move dinner
telegram-command-take = Take a job
telegram-command-drop = Hand a job back
telegram-command-undo = Take back the last change
telegram-command-export = Calendar, readings, everything
telegram-command-stop = End the plan
telegram-command-forget = Delete what is kept here
telegram-command-settings = Language, units, time zone
telegram-command-help = How this works

# The bot's page before anyone has written. Under 500 characters.
telegram-description = Tell me about the bird and the dinner: weight, fresh or frozen, when, how many people. I work out thawing, salting, fire and rest, remind whoever has the job, and follow your thermometer until it is carved. Works in a private chat or with the whole family in a group.
# On the bot's profile. Under 110 characters.
telegram-short-description = Gets a whole bird to the table on time, with one cook or a whole family.
