# What comes by itself: mornings, evenings, the week, askings, reminders, cautions.

reminder = Reminder{ HAS($who) ->
    [yes] {" "}for { $who }
   *[no] {""}
}: { $about }.
summary-more = And { $count } more.

morning-head = { LONGDAY($day) }, morning.
morning-nothing = { LONGDAY($day) }, morning. Nothing waits.
morning-pile = { CAP($pile) }: { n-days } left{ watch-range }, face { NUMBER($inPerDay, maximumFractionDigits: 1) } inches a day{ watch-face }.
morning-pile-days = { CAP($pile) }: { n-days } left{ watch-range }.
morning-pile-face = { CAP($pile) }: face { NUMBER($inPerDay, maximumFractionDigits: 1) } inches a day{ watch-face }.
morning-pile-bare = { CAP($pile) } is being fed. Tell what is fed and the days can be counted.
watch-range = { HAS($low) ->
    [yes] {" "}({ NUMBER($low, maximumFractionDigits: 0) } to { NUMBER($high, maximumFractionDigits: 0) })
   *[no] {""}
}
watch-face = { $enough ->
    [yes] {""}
   *[no] , { NUMBER($minInPerDay, maximumFractionDigits: 1) } needed
}
morning-roll = { CAP($pile) }: roll back { NUMBER($ft, maximumFractionDigits: 0) } ft{ $tires ->
    [0] {""}
   *[other] , { NUMBER($tires, maximumFractionDigits: 0) } tires off, { NUMBER($edgeTires, maximumFractionDigits: 0) } of them on the new edge
}{ $bags ->
    [0] {""}
   *[other] , { NUMBER($bags, maximumFractionDigits: 0) } bags off
}.
morning-bare = { CAP($pile) }: { NUMBER($ft, maximumFractionDigits: 0) } ft lies bare, { n-days } of feed. Pull the sheet up closer.
morning-damage = { CAP($pile) }: { watch-places } not patched{ HAS($where) ->
    [yes] , { $where }
   *[no] {""}
}{ $days ->
    [0] {""}
   *[other] , { n-days } now
}.
watch-places = { $count ->
    [one] { $count } place
   *[other] { $count } places
}
morning-uncovered = { CAP($pile) } lies open, { n-days } since the last load.{ watch-depth }
# The only published clock is of a top that lay wholly open; it is named, so that nobody takes it for a hole's.
watch-depth = { $depthFt ->
    [0] {""}
    [1] {" "}A top left wholly open had lost its first foot by week 2 (Kansas State, alfalfa, 1991). One hole goes slower.
    [2] {" "}A top left wholly open was losing its second foot after week 4 (Kansas State, alfalfa, 1991). One hole goes slower.
   *[3] {" "}A top left wholly open was losing its third foot after week 7 (Kansas State, alfalfa, 1991). One hole goes slower.
}
morning-round = After the hail of { $on }, still to walk: { $piles }.
morning-check-due = { CAP($pile) }: walk the cover{ $late ->
    [0] {" "}today
    [one] , { $late } day late
   *[other] , { $late } days late
}{ watch-why }{ HAS($last) ->
    [yes] , last { $last }
   *[no] {""}
}.
watch-why = { $why ->
    [sealed] {" "}(new sheet)
    [hail] {" "}(hail)
    [wind] {" "}(wind)
    [rain] {" "}(rain)
    [thaw] {" "}(thaw)
    [animal] {" "}(animals come back)
   *[plain] {""}
}

evening-head = { LONGDAY($day) }, evening.
evening-nothing = { LONGDAY($day) }, evening. Nothing to tell.
evening-load = { CAP($pile) }: { $count ->
    [0] {""}
   *[other] { n-load }{" "}
}{ WORD("crop", $crop) } today{ HAS($lb) ->
    [yes] , { ABOUT($lb) }
   *[no] {""}
}.
evening-driver = { CAP($by) }: { n-load }.
cover-tonight = If that was the last load, cover { $pile } tonight: plastic { by-feet }{ watch-weights }, { $people } people about { watch-minutes }.{ $fromStock ->
    [no] {" "}No sheet in stock fits.
   *[other] {""}
}
watch-weights = { $tires ->
    [0] {""}
   *[other] , { NUMBER($tires, maximumFractionDigits: 0) } tires
}{ $bags ->
    [0] {""}
   *[other] , { NUMBER($bags, maximumFractionDigits: 0) } bags
}
watch-minutes = { NUMBER($minutes, maximumSignificantDigits: 2) } minutes
cover-tonight-bare = Cover { $pile } tonight if that was the last load.
cover-sun = If it waits for morning: best sun { CLOCK($from) } to { CLOCK($to) }, the plastic draws tight then.

weekly-head = The week to { LONGDAY($day) }.
weekly-nothing = The week to { LONGDAY($day) }: nothing to tell.
weekly-fed = { CAP($pile) }: { HAS($lb) ->
    [yes] fed { ABOUT($lb) }
   *[no] being fed
}{ HAS($days) ->
    [yes] , { n-days } left
   *[no] {""}
}{ HAS($runsOut) ->
    [yes] , to about { $runsOut }
   *[no] {""}
}.
weekly-loads = { n-load } hauled, on { $piles }.
weekly-walks = Covers walked: { $count }.

pace-high = { CAP($pile) }: { NUMBER($tonsHour, maximumFractionDigits: 0) } tons an hour against { NUMBER($lb, maximumFractionDigits: 0) } lb of tractor, which packs { NUMBER($okTonsHour, maximumFractionDigits: 0) }. Slow down, thin the layers, or add weight to make { NUMBER($needLb, maximumSignificantDigits: 2) } lb.
early-open = { CAP($pile) } was covered { $sealedOn } and is still working. Better shut until { $readyOn }.
supply-head = For { $pile }, { $on }. Order by { $by }:
supply-short = { HAS($widthFt) ->
    [yes] { CAP(WORD("item", $item)) } { by-feet }
   *[no] { CAP(WORD("item", $item)) }
}: { $need } needed, { $have } there.
check-line = { CAP($pile) }{ watch-why }{ HAS($last) ->
    [yes] , last walked { $last }
   *[no] , not walked yet
}{ $late ->
    [0] {""}
    [one] , { $late } day late
   *[other] , { $late } days late
}.
check-again = Still to walk:
check-owner = Asked twice and not walked yet:
round-start = Hail { $on }{ $inches ->
    [0] {""}
   *[other] , { $inches } inches
}. Walk { $piles } and say what you find.
round-line = { CAP($piles) }, hail { $on }.
round-again = After the hail, still to walk:
round-owner = After the hail, asked twice and not walked yet:
round-good = Hail round done, { $count ->
    [one] { $count } cover
   *[other] { $count } covers
} whole.
round-trouble = Hail round done. Trouble on { $piles }.
freeze-first = { NUMBER($degF, maximumFractionDigits: 0) } °F: a day as cold can freeze a bare wet edge up to { NUMBER($depthIn, maximumFractionDigits: 0) } inches deep, less under snow. A rough figure. Lift what holds the sheet on { $piles } now.
freeze-ask = Before the ground freezes, lift what will be in the way:
freeze-again = The ground freezes soon. Still to lift:
freeze-owner = Asked twice, not lifted yet:
freeze-line = { CAP($pile) }, { NUMBER($fromFt, maximumFractionDigits: 0) } to { NUMBER($toFt, maximumFractionDigits: 0) } ft: { $mesh ->
    [yes] mesh
   *[no] the sheet free
}{ watch-weights }, by { $by }.
repair-line = { CAP($pile) }: { watch-places }{ HAS($where) ->
    [yes] , { $where }
   *[no] {""}
}{ $days ->
    [0] {""}
   *[other] , { n-days } now
}.{ watch-depth }
repair-ask = Patched yet?
repair-again = Still open, as far as the book knows:
repair-owner = Asked twice, not patched yet:
repair-advice = Patch it soon, with silage tape on plastic that is clean and dry. Duct tape lets go.
edge-spring = The thaw is on. Keep no more than { n-days } of feed bare on { $pile }, and look at the edge that was frozen down.
edge-idle = Nothing told of feeding on { $pile } since { $last }. If it is not being fed, close the edge.
edge-leftover = { CAP($pile) } will have feed for { $daysOver } days past the new { WORD("crop", $crop) } of { $on }. Push it up and feed it first: old feed before new.

caution-face = Stay back from the face{ $awayFt ->
    [0] {" "}three times its height
   *[other] {" "}{ NUMBER($awayFt, maximumFractionDigits: 0) } ft, three times its height
}, and never work there alone.
caution-gas = For { n-days } after filling, to { $until }, { $pile } can give silo gas, seen or not. Yellow haze or a bleach smell: stay out, upwind.
caution-slope = Keep slopes 3 to 1 or flatter, and drive up and down, not across.
caution-sheet-wind = Wind under a big sheet lifts a person. Wait for a calm hour, and let go when it takes off.
caution-knife = Cut away from yourself, and shut the knife before you climb down.
caution-ice = Ice on the sheet and on the edge: go slow, and not alone.
caution-defer = Local rules and licensed people go before this.
