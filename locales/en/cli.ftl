### The program in a terminal: help, errors, marks around messages.

cli-script-line = Line { $line }: { $reason }
cli-script-unknown = "{ $given }" is neither a setting (zone, locale, room) nor a time. Start with a time such as 2027-11-25 17:00.
cli-script-room = "{ $given }" is no kind of room. Write "room group" or "room private".
cli-script-late = "{ $given }" comes too late or twice. Put each setting once, above the first time.
cli-script-time = "{ $given }" is no time. Write it as 2027-11-25 17:00, with seconds if you like.
cli-script-earlier = "{ $given }" is earlier than the line before. Put the lines in order of time.
cli-script-act = "{ $given }" says and presses nothing. Write "Rosa: text" or "Rosa > Label".
cli-script-empty = { $given } says or presses nothing. Add the text or the button's label.
cli-script-crowd = A private room has one person, so { $given } can't speak in it. Write "room group".
cli-no-zone = "{ $given }" is no time zone. Use a name such as America/Chicago.
cli-no-locale = "{ $given }" is no language tag. Use one such as en-US or es-ES.

# Above a rehearsal's lines: who speaks, and to whom. $name is a person.
cli-said-to-all = carvetime
cli-said-to-one = carvetime to { $name }
cli-said-edit-to-all = carvetime (edited)
cli-said-edit-to-one = carvetime to { $name } (edited)
cli-said-notice = carvetime to { $name } (notice)
cli-no-button = There is no button "{ $label }". There are: { $there }.
cli-no-buttons = There is no button "{ $label }", nor any other.
cli-standstill = The reminders would not stop. Please report it with this script.

# Before a message in the terminal.
cli-only-for = (for { $name })
cli-changed = (changed)
cli-you = You
cli-hello = Tell me about the bird and the dinner, or type /help. #1 presses a button, "@Rosa hello" speaks as Rosa, Ctrl-D ends.
cli-nothing-to-press = There is nothing to press yet.
cli-press = #{ $number } presses the button.
cli-no-number = No button has that number. There are: { $there }
cli-file-kept = Saved: { $path }
cli-file-lost = Could not save { $path }. Check the disk and ask again.

# $what is what the system said.
cli-file-failed = { $path }: { $what }
cli-file-failed-do = Check the file and its folder, then try again.
cli-failed = It failed: { $what }
cli-failed-do = Try again; with RUST_LOG=debug it tells more.
cli-backed-up = { $rows ->
    [one] Wrote { $rows } row to { $path }.
   *[other] Wrote { $rows } rows to { $path }.
}
cli-restored = { $rows ->
    [one] Brought back { $rows } row from { $path }.
   *[other] Brought back { $rows } rows from { $path }.
}
cli-no-data = There is no place to keep data here. Name a folder with --data.

# Help: what the program and each command do, under one line of a terminal.
cli-about-carvetime = Plans a whole bird for a table full of people, and keeps the plan while it cooks.
cli-about-chat = Talk to it in this terminal; no account, no network
cli-about-serve = Run as a Telegram bot; the token comes from TELOXIDE_TOKEN
cli-about-ask = Answer one question and exit
cli-about-rehearse = Play a script of a cook on a virtual clock and print the conversation
cli-about-forecast = Replay a temperature log and print the forecast at every reading
cli-about-backup = Write everything that is kept into one file
cli-about-restore = Bring a backup back into an empty data folder
cli-help-data = Folder everything is kept in
cli-help-locale = Language, units and clock, such as en-US or es-ES
cli-help-zone = Time zone of the kitchen, such as America/Chicago
cli-help-json = JSON instead of text
cli-help-text = The question, in plain words
cli-help-file = The file
cli-help-bird = Kind of bird
cli-help-mass = Mass as sold, such as "14.2 lb"
cli-help-form = How it lies; breast is a turkey breast alone
cli-help-stuffed = It is stuffed
cli-help-cooker = What gives the heat
cli-help-pit = What the cooker is set to, such as "325 F"
cli-help-start = Temperature of the bird as it met the heat, such as "38 F"
cli-help-breast = Target of the breast
cli-help-thigh = Target of the thigh
cli-help-webhook = Have Telegram deliver to this https address instead of asking it; needs --listen
cli-help-listen = Where to listen for that, such as 127.0.0.1:8080, behind a server that speaks https
cli-help-health = Where supervisors may ask /health and /metrics, such as 127.0.0.1:9090; not meant for the open network
