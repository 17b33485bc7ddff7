### What is wrong with something a person typed: what was understood, the range, an example.
### Masses, temperatures and times come written for the reader already.

reading-mass = A bird of { $given }? I can plan from { $low } to { $high }. For example: { units-example-bird } turkey.
reading-guests = { $given } at the table? Give me a whole number from { $low } to { $high }. For example: 11 people.
reading-setting = { $given } is no heat for a bird: I can work with { $low } to { $high }. For example: oven at { $example }.
reading-solution = { $given } % solution? The label says at most { $high } %. For example: contains up to 8 % solution.
reading-drive = A drive of { $given } min? Give me up to { $high }. For example: 40 min drive.
reading-past = { $given } is over. When is dinner? For example: Thursday 5 pm.
reading-used-by = The pack's date, { $day }, is over. A fresh bird past its use-by date isn't for eating, unless it was frozen in time.
reading-use-by-far = Use by { $day }? That's further off than a fresh bird keeps. For example: “use by Friday”.
reading-far = { $given } is too far off: I plan up to { $days } days ahead. For example: Thursday 5 pm.
reading-fryer = I plan ovens and smokers, not hot oil. Never fry a bird that is frozen, wet or stuffed, and only outdoors. Ask me: is frying safe?
reading-other-bird = I have times for turkey, chicken, capon, duck and goose, none for that bird, so I plan none. Go by the thermometer: { $target } in breast, thigh and wing.
reading-thermometer = { $given } on a thermometer? I take { $low } to { $high }. For example: breast 128, thigh 141.
reading-future = { $given } is still to come. When was it read? For example: breast 128 at 14:05.
reading-too-many = One reading a spot, please: breast, thigh, oven or smoker. For example: { units-example-log }.
reading-loose-number = I don't know what { $given } means there. Say it with a unit: { units-example-bird }, 11 people, { units-example-setting }.
reading-two-weights = Two birds of different weight: I plan one at a time, the { $heavy } first. When it stands, tell me the { $light } one.
