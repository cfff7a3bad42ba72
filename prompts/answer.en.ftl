# Answers. The number first, then its range, then the date.

answer-left = { CAP($pile) }: { n-days } left{ HAS($low) ->
    [yes] {" "}({ NUMBER($low, maximumFractionDigits: 0) } to { NUMBER($high, maximumFractionDigits: 0) })
   *[no] {""}
}{ HAS($runsOut) ->
    [yes] , to about { $runsOut }
   *[no] {""}
}.
answer-left-stock = About { ABOUT($lb) } there{ HAS($perDay) ->
    [yes] , { NUMBER($perDay, maximumSignificantDigits: 3) } lb fed a day
   *[no] {""}
}.
answer-reach-yes = { HAS($with) ->
    [yes] With { $with }: yes
   *[no] Yes
}, to { $until }{ HAS($days) ->
    [yes] {" "}with { n-days } to spare
   *[no] {""}
}{ HAS($range) ->
    [yes] {" "}({ $range })
   *[no] {""}
}, about { HAS($feed) ->
    [yes] { ABOUT($feed) } of feed over ({ ABOUT($spare) } dry).
   *[no] { ABOUT($spare) } dry matter over.
}
answer-range = { $low } to { $high }
answer-range-spare = { $n } to spare
answer-range-short = { $n } short
answer-range-plain = { $n }
answer-reach-no = { HAS($with) ->
    [yes] With { $with }: no
   *[no] No
}{ HAS($days) ->
    [yes] {""}
   *[no] , not to { $until }
}{ HAS($ranOutOn) ->
    [yes] , out by { $ranOutOn }
   *[no] {""}
}{ HAS($days) ->
    [yes] , { n-days } before { $until }
   *[no] {""}
}{ HAS($range) ->
    [yes] {" "}({ $range })
   *[no] {""}
}. About { HAS($feed) ->
    [yes] { ABOUT($feed) } of feed short ({ ABOUT($spare) } dry).
   *[no] { ABOUT($spare) } dry matter short.
}
answer-reach-days = { HAS($with) ->
    [yes] With { $with }: feed
   *[no] Feed
} for { n-days }{ HAS($runsOut) ->
    [yes] , to about { $runsOut }
   *[no] {""}
}.
answer-legs = { CAP($list) }.
answer-leg = { $pile } to { $until }
with-both = { $piles } fed at once
answer-gap = To make it: { $ways }.
answer-gap-day = { NUMBER($lb, maximumSignificantDigits: 3) } lb a day
answer-gap-head = { $head } head
answer-gap-add = { ABOUT($lb) } more feed
with-head = { $head } head
with-day = { NUMBER($lb, maximumSignificantDigits: 3) } lb a day
with-day-of = { NUMBER($lb, maximumSignificantDigits: 3) } lb { WORD("crop", $crop) } a day
with-per-head = { NUMBER($lb, maximumFractionDigits: 1) } lb{ HAS($crop) ->
    [yes] {" "}{ WORD("crop", $crop) }
   *[no] {""}
} a head
with-head-more = { NUMBER($lb, maximumFractionDigits: 1) } lb more a head
with-head-less = { NUMBER($lb, maximumFractionDigits: 1) } lb less a head
with-day-more = { NUMBER($lb, maximumSignificantDigits: 3) } lb more a day
with-day-less = { NUMBER($lb, maximumSignificantDigits: 3) } lb less a day
with-pct-more = { NUMBER($pct, maximumFractionDigits: 0) }% more fed
with-pct-less = { NUMBER($pct, maximumFractionDigits: 0) }% less fed
with-more = { ABOUT($lb) } more
with-less = { ABOUT($lb) } less
with-later = the harvest { n-days } later
with-sooner = the harvest { n-days } sooner
answer-status = { CAP($pile) }: { WORD("stage", $stage) }.{ HAS($crops) ->
    [yes] {" "}{ CAP($crops) }.
   *[no] {""}
}
answer-status-crop = { HAS($amount) ->
    [yes] { $amount } { $crop }
   *[no] { $crop }
}{ HAS($lb) ->
    [yes] , about { ABOUT($lb) }
   *[no] {""}
}
answer-status-sealed = Covered { $on }.
answer-status-face = Face at { NUMBER($ft, maximumFractionDigits: 0) } ft{ HAS($on) ->
    [yes] {" "}{ $on }, about { NUMBER($today, maximumFractionDigits: 0) } now
   *[no] {""}
}.
answer-status-left = { n-days } left{ HAS($low) ->
    [yes] {" "}({ NUMBER($low, maximumFractionDigits: 0) } to { NUMBER($high, maximumFractionDigits: 0) })
   *[no] {""}
}{ HAS($lb) ->
    [yes] , about { ABOUT($lb) } there
   *[no] {""}
}.
answer-status-there = About { ABOUT($lb) } there.
answer-open-damage = { $count ->
    [0] Nothing open on the cover.
    [one] { $count } place not patched yet.
   *[other] { $count } places not patched yet.
}
answer-worth = Worth about ${ NUMBER($value, maximumSignificantDigits: 3) } at the price told.
answer-worth-of = { CAP($pile) }: worth about ${ NUMBER($value, maximumSignificantDigits: 3) } at the price told, { ABOUT($lb) } there.
answer-cover-cost = A sheet at ${ NUMBER($cost, maximumSignificantDigits: 3) } comes to ${ NUMBER($perTon, maximumFractionDigits: 2) } a ton under it.
answer-loads = { $amount }{ HAS($crop) ->
    [yes] {" "}{ WORD("crop", $crop) }
   *[no] {""}
}{ HAS($pile) ->
    [yes] {" "}on { $pile }
   *[no] {""}
}{ HAS($from) ->
    [yes] , { $from }{ HAS($to) ->
        [yes] {" "}to { $to }
       *[no] {""}
    }
   *[no] {" "}so far
}{ HAS($lb) ->
    [yes] , about { ABOUT($lb) }
   *[no] {""}
}.
answer-no-loads = No loads{ HAS($crop) ->
    [yes] {" "}of { WORD("crop", $crop) }
   *[no] {""}
}{ HAS($pile) ->
    [yes] {" "}on { $pile }
   *[no] {""}
}{ HAS($from) ->
    [yes] , { $from }{ HAS($to) ->
        [yes] {" "}to { $to }
       *[no] {""}
    }
   *[no] {" "}yet
}.
answer-density = { CAP($pile) }: { NUMBER($dry, maximumFractionDigits: 1) } lb dry matter a cubic foot{ HAS($low) ->
    [yes] {" "}({ NUMBER($low, maximumFractionDigits: 0) } to { NUMBER($high, maximumFractionDigits: 0) })
   *[no] {""}
}{ HAS($bulk) ->
    [yes] , { NUMBER($bulk, maximumFractionDigits: 0) } as it lies
   *[no] {""}
}{ HAS($air) ->
    [yes] , { NUMBER($air, maximumFractionDigits: 0) }% air
   *[no] {""}
}.
answer-density-verdict = { $enough ->
    [yes] Packed enough.
   *[no] Too loose, { NUMBER($target, maximumFractionDigits: 0) } is wanted.
}{ HAS($ways) ->
    [yes] {" "}It takes { $ways }.
   *[no] {""}
}
answer-density-cost = So loose, about { NUMBER($pct, maximumFractionDigits: 0) }% is lost by half a year, { NUMBER($over, maximumFractionDigits: 1) } points more than at { NUMBER($target, maximumFractionDigits: 0) }{ HAS($lb) ->
    [yes] : { ABOUT($lb) } dry matter
   *[no] {""}
}{ HAS($cost) ->
    [yes] , ${ NUMBER($cost, maximumSignificantDigits: 2) }
   *[no] {""}
}.
answer-density-rule = { NUMBER($tons, maximumFractionDigits: 0) } tons an hour want { NUMBER($want, maximumSignificantDigits: 2) } lb of tractor by the rule of 800, and { NUMBER($have, maximumSignificantDigits: 2) } packed it.
answer-mend-tractor = tractors of { NUMBER($lb, maximumSignificantDigits: 2) } lb
answer-mend-hauling = hauling at { NUMBER($tons, maximumFractionDigits: 0) } tons an hour
answer-density-basis = { $basis ->
    [packing] Worked out from the packing told.
    [measured] Worked out from the size measured{ HAS($packing) ->
        [yes] ; by the packing told it would be { NUMBER($packing, maximumFractionDigits: 1) }
       *[no] {""}
    }.
   *[assumed] Assumed; tell the packing or the size for a better figure.
}
answer-face = { CAP($pile) }: { NUMBER($inPerDay, maximumFractionDigits: 1) } inches a day, { NUMBER($min, maximumFractionDigits: 0) } needed. { $enough ->
    [yes] Fast enough.
   *[no] Too slow.
}
answer-face-mend = Fast enough with { $ways }.
answer-mend-day = { NUMBER($lb, maximumSignificantDigits: 3) } lb a day
answer-mend-width = a face { NUMBER($ft, maximumFractionDigits: 0) } ft wide
answer-cover = For { $pile }: { $sheet }{ HAS($weights) ->
    [yes] , { $weights }
   *[no] {""}
}.
answer-cover-sheet = plastic { by-feet }
answer-cover-tires = { NUMBER($count, maximumSignificantDigits: 3) } tires
answer-cover-bags = { NUMBER($count, maximumSignificantDigits: 3) } gravel bags
answer-cover-edge = { NUMBER($ft, maximumFractionDigits: 0) } ft of edge
answer-cover-gravel = { NUMBER($tons, maximumFractionDigits: 1) } tons gravel
answer-cover-stock = { $fromStock ->
    [yes] { HAS($sheets) ->
        [yes] In stock: { $sheets }{ HAS($waste) ->
            [yes] , { NUMBER($waste, maximumFractionDigits: 0) }% over
           *[no] {""}
        }
       *[no] A sheet that fits is in stock
    }
   *[no] No sheet in stock fits
}{ HAS($tires) ->
    [yes] , { $tires } tires short
   *[no] {""}
}.
answer-cover-second = Barrier film under it would save about { ABOUT($lb) } dry matter{ HAS($value) ->
    [yes] , ${ NUMBER($value, maximumSignificantDigits: 2) }
   *[no] {""}
}.
answer-plan = { HAS($crop) ->
    [yes] For { WORD("crop", $crop) }:{" "}
   *[no] {""}
}{ NUMBER($width, maximumFractionDigits: 0) } ft wide, { NUMBER($height, maximumFractionDigits: 1) } ft high, { NUMBER($length, maximumFractionDigits: 0) } ft long.
answer-plan-holds = Holds about { HAS($feed) ->
    [yes] { ABOUT($feed) } ({ ABOUT($lb) } dry)
   *[no] { ABOUT($lb) } dry matter
}{ HAS($days) ->
    [yes] , { n-days }{ HAS($perDay) ->
        [yes] {" "}at { NUMBER($perDay, maximumSignificantDigits: 3) } lb
       *[no] {""}
    }
   *[no] {""}
}{ HAS($inPerDay) ->
    [yes] , face { NUMBER($inPerDay, maximumFractionDigits: 1) } inches a day
   *[no] {""}
}.
answer-plan-cover = To cover it: { $sheet }{ HAS($weights) ->
    [yes] , { $weights }
   *[no] {""}
}.{ HAS($stock) ->
    [yes] {" "}{ $stock }
   *[no] {""}
}
answer-loss-cost = About ${ NUMBER($cost, maximumSignificantDigits: 2) } at the price set.
answer-ready = { $ready ->
    [yes] { CAP($pile) } can be opened, ready since { $readyOn }.
   *[no] { CAP($pile) } is not ready: covered { $sealedOn }, leave it shut until { $readyOn }.
}
answer-ready-open = { CAP($pile) } is open already, since { $openedOn }.
answer-mix = { CAP($pile) }: { $shares }.{ HAS($pct) ->
    [yes] {" "}About { NUMBER($pct, maximumFractionDigits: 0) }% dry matter.
   *[no] {""}
}
answer-share = { NUMBER($pct, maximumFractionDigits: 0) }% { $crop }{ HAS($ft) ->
    [yes] {" "}(from { NUMBER($ft, maximumFractionDigits: 0) } ft)
   *[no] {""}
}
answer-mix-face = At the face now, { NUMBER($ft, maximumFractionDigits: 0) } ft: { $shares }.{ HAS($ratio) ->
    [yes] {" "}{ $ratio }
   *[no] {""}
}
answer-mix-ratio = { NUMBER($times, maximumFractionDigits: 1) } { WORD("crop", $more) } to 1 { WORD("crop", $less) }.
answer-checks = { CAP($pile) }: { HAS($last) ->
    [yes] last walked { $last }
   *[no] not walked yet
}{ HAS($next) ->
    [yes] { HAS($late) ->
        [yes] , due since { $next }
       *[no] , next { $next }
    }
   *[no] {""}
}.
answer-loss = { CAP($pile) }: about { NUMBER($pct, maximumFractionDigits: 0) }% lost{ HAS($low) ->
    [yes] {" "}({ NUMBER($low, maximumFractionDigits: 0) } to { NUMBER($high, maximumFractionDigits: 0) })
   *[no] {""}
}{ HAS($lb) ->
    [yes] , { ABOUT($lb) } dry matter
   *[no] {""}
}.
answer-supplies = In stock: { $items }.
answer-no-supplies = Nothing in stock that was told.
answer-event = { $on }{ HAS($who) ->
    [yes] , { $who }
   *[no] {""}
}: { $what }.
answer-more = And { $count } more.
answer-no-events = Nothing in the book about that.
answer-no-picture = { HAS($pile) ->
    [yes] No picture of { $pile } was sent.
   *[no] No picture was sent.
} Send one with words below it, like: two holes by the wall.
answer-help = Try { $examples }.
answer-no-how = There was no figure to work out.
