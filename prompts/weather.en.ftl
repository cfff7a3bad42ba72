# Weather from outside: only ever asked about.

alert-kind = { $kind ->
    [hail] Hail
    [wind] High wind
    [rain] Heavy rain
   *[freeze] A freeze
}
alert-past = { alert-kind } was warned of near the farm, { $on }. Did it reach you? Walk { $piles }.
alert-ahead = A freeze is warned of for { $on }. Lift mesh and bags from what will be fed soon: once frozen down they stay.
