### Les exemples de lieux.

room-ask-zone = Où est la cuisine ? Une ville ou un fuseau horaire suffit : « Québec », « America/Toronto ».
room-settings-pick-zone = Où est la cuisine ? Tape une ville ou un fuseau horaire, « Québec » ou « America/Toronto », ou envoie-moi ta position. La position elle-même n’est pas gardée.
room-settings-pick-zone-group = Où est la cuisine ? Dis-le avec « /settings Québec » ; un fuseau comme « America/Toronto » va aussi.
room-zone-unknown = Je ne connais pas d’endroit « { $text } ». Une plus grande ville pas loin, ou un fuseau comme « America/Toronto » ?
