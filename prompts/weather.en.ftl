# Weather from outside: only ever asked about.

alert-past = { $kind ->
    [hail] Hail
    [wind] High wind
   *[rain] Heavy rain
} was warned of near the farm { $when ->
    [night] last night
    [today] today
   *[day] on { $on }
}. { $kind ->
    [rain] How much came down? Walk
   *[other] Did it reach you? Walk
} { $piles }.
alert-ahead = A freeze is warned of for { $on }. Lift mesh and bags from what will be fed soon: once frozen down they stay.
alert-none = Good, nothing to log.
choice-hail = Yes, hail
choice-wind = Yes, it blew
choice-none = Not here
choice-inches = { $inches } in
