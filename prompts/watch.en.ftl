# What comes by itself: mornings, evenings, the week, askings, reminders, cautions.

reminder = Reminder{ HAS($who) ->
    [yes] {" "}for { $who }
   *[no] {""}
}: { $about }{ HAS($by) ->
    [yes] , from { $by }
   *[no] {""}
}.
summary-more = And { $count } more.

morning-head = { LONGDAY($day) }, morning.
morning-nothing = { LONGDAY($day) }, morning. Nothing waits.
morning-pile = { CAP($pile) }: { watch-left }{ watch-range }, face { NUMBER($inPerDay, maximumFractionDigits: 1) } inches a day{ watch-face }.
morning-pile-days = { CAP($pile) }: { watch-left }{ watch-range }.
morning-pile-face = { CAP($pile) }: face { NUMBER($inPerDay, maximumFractionDigits: 1) } inches a day{ watch-face }.
morning-pile-bare = { CAP($pile) } is being fed. Tell what is fed and the days can be counted.
watch-left = { n-days } left
watch-range = { HAS($low) ->
    [yes] {" "}({ NUMBER($low, maximumFractionDigits: 0) } to { NUMBER($high, maximumFractionDigits: 0) })
   *[no] {""}
}
watch-face = { $enough ->
    [yes] {""}
   *[no] , { NUMBER($minInPerDay, maximumFractionDigits: 1) } needed
}
morning-pile-out = { CAP($pile) } should be used up by now. Say where the face is, or "{ $pile } is all gone".
morning-mix = { CAP($pile) }: the mix at the face changes{ HAS($on) ->
    [yes] {" "}about { $on }
   *[no] {""}
}, at { NUMBER($atFt, maximumFractionDigits: 0) } ft{ HAS($crop) ->
    [yes] , more { WORD("crop", $crop) } from there
   *[no] {""}
}.
morning-roll = { CAP($pile) }: roll back { NUMBER($ft, maximumFractionDigits: 0) } ft.{ $tires ->
    [0] {""}
   *[other] {" "}{ NUMBER($tires, maximumFractionDigits: 0) } tires off: { NUMBER($edgeTires, maximumFractionDigits: 0) } on the new edge{ $stackTires ->
        [0] {""}
       *[other] , { NUMBER($stackTires, maximumFractionDigits: 0) } to the stack
    }.
}{ $bags ->
    [0] {""}
   *[other] {" "}{ NUMBER($bags, maximumFractionDigits: 0) } bags off, to the new edge.
}
morning-bare = { CAP($pile) }: { NUMBER($ft, maximumFractionDigits: 0) } ft lies bare, { n-days } of feed. Pull the sheet up closer.
morning-damage = { CAP($pile) }: { watch-places } not patched{ HAS($where) ->
    [yes] , { $where }
   *[no] {""}
}{ $days ->
    [0] {""}
   *[other] , { n-days } now
}.
watch-places = { $what ->
    [hole] { $count ->
        [one] { $count } hole
       *[other] { $count } holes
    }
    [tear] { $count ->
        [one] { $count } tear
       *[other] { $count } tears
    }
   *[other] { $count ->
        [one] { $count } place
       *[other] { $count } places
    }
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
cover-now = Cover { $pile } tonight: plastic { by-feet }{ watch-weights }, { $people } people about { watch-minutes }.{ $fromStock ->
    [no] {" "}No sheet in stock fits.
   *[other] {""}
}
cover-now-bare = Cover { $pile } tonight.
cover-sun-today = Best sun today { CLOCK($from) } to { CLOCK($to) }, the plastic draws tight then.
cover-tonight-bare = Cover { $pile } tonight if that was the last load.
cover-sun = If it waits for morning: best sun { CLOCK($from) } to { CLOCK($to) }, the plastic draws tight then.

weekly-head = The week to { LONGDAY($day) }.
weekly-nothing = The week to { LONGDAY($day) }: nothing to tell.
weekly-fed = { CAP($pile) }: { HAS($lb) ->
    [yes] fed { ABOUT($lb) }
   *[no] being fed
}{ HAS($days) ->
    [yes] , { watch-left }
   *[no] {""}
}{ HAS($runsOut) ->
    [yes] , to about { $runsOut }
   *[no] {""}
}.
weekly-loads = { n-load } hauled, on { $piles }.
weekly-check = { CAP($pile) }: cover { HAS($last) ->
    [yes] not walked since { $last }
   *[no] not walked yet
}{ watch-why }.
weekly-walks = Covers walked: { $count }.

pace-high = { CAP($pile) }: { NUMBER($tonsHour, maximumFractionDigits: 0) } tons an hour against { NUMBER($lb, maximumFractionDigits: 0) } lb of tractor, which packs { NUMBER($okTonsHour, maximumFractionDigits: 0) }. Slow down, thin the layers, or add weight to make { NUMBER($needLb, maximumSignificantDigits: 2) } lb.
early-open = { CAP($pile) } was covered { $sealedOn } and is still working. Better shut until { $readyOn }.
supply-head = { $filling ->
    [yes] For { $pile }, being filled: get this now.
   *[no] For { $pile }, about { $on }: { $now ->
        [yes] order now.
       *[no] order by { $by }.
    }
}
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
    [one] , { $inches } inch
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
freeze-ask = Before the ground freezes, lift what would freeze down where you feed this winter. Keep enough on to hold the sheet.
freeze-again = The ground freezes soon. Still to lift:
freeze-owner = Asked twice, not lifted yet:
freeze-line = { CAP($pile) }, from { NUMBER($fromFt, maximumFractionDigits: 0) } ft to { $end ->
    [yes] the end
   *[no] { NUMBER($toFt, maximumFractionDigits: 0) } ft
}: { $mesh ->
    [yes] mesh
   *[no] edges of the sheet
}{ watch-weights }{ HAS($by) ->
    [yes] , by { $by }
   *[no] , now
}.
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
repair-risk = In a wrapped bale a 3 mm hole spoiled a fifth of the feed (Teagasc). Of piles nobody has measured it; it goes faster warm, and with a bigger hole.
repair-advice = Patch it soon, with silage tape on plastic that is clean and dry. Duct tape lets go.
edge-spring = From now on seal the edge on { $pile } again after every roll: weights back to the edge, no more than { n-days } of feed bare. Look at what was frozen down.
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
