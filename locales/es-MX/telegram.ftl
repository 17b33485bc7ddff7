### Lo que solo dice Telegram.

telegram-sorry = Algo falló de mi lado y no lo registré. Dímelo de otra manera, por favor.
telegram-sorry-bell = Un aviso mío falló. Mira /board, por favor.
