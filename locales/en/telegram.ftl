# What only the Telegram side says.

telegram-sorry = That went wrong on my side and I didn't take it in. Please say it another way.
# A reminder that could not be worked out.
telegram-sorry-bell = A reminder of mine went wrong. Please look at /board.
# $person is a mention. The message meant for them follows on the next line.
telegram-unreachable = { $person }, I can't write to you privately, so here it is:
# A button under the text field of a phone.
telegram-share-place = Share my place
