# What only the Telegram side says.

telegram-sorry = Algo ha fallado por mi parte y no lo he recogido. Dímelo de otra manera, por favor.
# A reminder that could not be worked out.
telegram-sorry-bell = Un aviso mío ha fallado. Mira /board, por favor.
# $person is a mention. The message meant for them follows on the next line.
telegram-unreachable = { $person }, no puedo escribirte en privado, así que va por aquí:
# A button under the text field of a phone.
telegram-share-place = Enviar mi ubicación
