# How it was, and what comes of it next time.
feedback-ask = How was it? Three taps, for next time.
# Three in a row: to 11 letters each.
feedback-button-salt-little = Needed salt
feedback-button-salt-right = Well salted
feedback-button-salt-much = Too salty
feedback-button-meat-dry = Dry
feedback-button-meat-right = Just right
feedback-button-meat-underdone = Underdone
feedback-button-time-early = Done early
feedback-button-time-right = On time
feedback-button-time-late = Late
feedback-word-salt-little = too little salt
feedback-word-salt-much = too salty
feedback-word-meat-dry = a little dry
feedback-word-meat-underdone = underdone
feedback-word-time-early = done early
feedback-word-time-late = late
feedback-word-time-late-by = { $span } late
feedback-how-late = How late was it?
feedback-button-late = { $span }
feedback-word-all-right = all as it should be
feedback-noted = Noted for next time: { $notes }.
feedback-last-time = Last time: { $notes }.
feedback-no-notes = No notes of an earlier dinner yet.
feedback-button-less-salt = Less salt
feedback-button-more-salt = More salt
feedback-button-leftovers = I have the leftovers
