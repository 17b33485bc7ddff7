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
