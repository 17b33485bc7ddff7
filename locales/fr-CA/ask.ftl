### Ce qu’une étiquette dit au Canada.

ask-past-date = Une date limite de consommation est une vraie limite : passée, on ne mange plus, même cuit, sauf si c’était congelé à temps. « Meilleur avant » est plus souple : une volaille fraîche tient { $days } au frigo depuis l’achat, pas plus.
