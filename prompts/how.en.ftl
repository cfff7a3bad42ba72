# Why an answer cannot be given, what to beware of in it, and how it was worked out, one line each.

nothing-in-pile = { $stage ->
    [empty] { CAP($pile) } is empty{ HAS($on) ->
        [yes] {" "}since { $on }
       *[no] {""}
    }.
   *[other] Nothing has gone on { $pile } yet.
}
no-size-known = No loads and no size are told for { $pile }. Tell one, like: { $pile } is 40 by 120 and 10 high.
no-size-told = The size of { $pile } is not told. Tell it, like: { $pile } is 40 by 120 and 10 high.
no-ration-known = { HAS($lbAsFed) ->
    [yes] About { ABOUT($lbAsFed) } on { $pile }{ HAS($lbLow) ->
        [yes] {" "}({ ABOUT($lbLow) } to { ABOUT($lbHigh) })
       *[no] {""}
    }. {""}
   *[no] {""}
}Tell what is fed a day and the days can be counted, like: feeding 9,000 a day{ HAS($pile) ->
    [yes] {" "}off { $pile }
   *[no] {""}
}.
no-such-feed = There is no { WORD("crop", $crop) } in any pile.
no-head-known = How many head there are{ HAS($group) ->
    [yes] {" "}({ WORD("group", $group) })
   *[no] {""}
} is not told. Tell it, like: milking 118.
note-no-harvest = Tell when the next crop comes, like: first crop around May 28.
no-such-pile = No pile is called { $pile }.
which-pile = Which pile: { $piles }?
no-pile-fits = There is no pile that fits that yet.
no-answer-yet = Nothing was worked out here yet.
figures-do-not-fit = What is told{ HAS($pile) ->
    [yes] {" "}of { $pile }
   *[no] {""}
} does not fit together, so there is no figure. Look over its loads, its size and its feeding.
not-open = { CAP($pile) } is not open yet.
not-covered = { CAP($pile) } is not covered yet. Its time starts when the sheet is on.
no-face-known = Tell where the face of { $pile } stands, in feet, or what is fed a day, like: face is at 40 ft.
plan-impossible = No pile can be planned from that: { WORD("outside", $what) }.
no-amount-known = { $missing ->
    [ration] Tell what the herd is fed a day, or the tons, like: how big a pile for 600 ton.
   *[days] Tell the tons or the days, like: how big a pile for 600 ton.
}
nothing-to-explain = Nothing was worked out here yet.

weighed-scale = the scale
weighed-tickets = what its scale tickets showed
weighed-box = what the box is told to hold
weighed-crop-box = the box of that crop
weighed-usual = a usual box
lost-filling = filling
lost-fermentation = ferment
lost-seepage = seepage
lost-top = top and sides
lost-face = face
moves-readings = the readings
moves-feet = the feet told as taken off
moves-use = what is fed a day
used-pile = the ration told for it
used-crop = the ration of that crop
used-herd = the herd's ration
used-intake = what so many cows eat
used-logs = what was told as fed
used-face = how the face moved
used-none = nothing told

how-in = Went in: { ABOUT($lb) }{ $loads ->
    [0] {""}
    [one] , { $loads } load
   *[other] , { $loads } loads
}, by { WORD("weighed", $from) }{ HAS($boxes) ->
    [yes] {" "}({ $boxes })
   *[no] {""}
}.
how-light = Boxes go out less than heaped: { NUMBER($pct, maximumFractionDigits: 1) }% off, { ABOUT($lb) }.
how-in-size = By its size, { NUMBER($ft3, maximumSignificantDigits: 3) } cubic feet, about { ABOUT($lb) } went in.
how-loss = Lost on the way, about { NUMBER($pct, maximumFractionDigits: 0) }%{ HAS($low) ->
    [yes] {" "}({ NUMBER($low, maximumFractionDigits: 0) } to { NUMBER($high, maximumFractionDigits: 0) })
   *[no] {""}
}.
how-fed = Told as fed: { ABOUT($lb) } on { n-days }.
how-thrown = Pitched: { ABOUT($lb) }.
how-silent = Nothing told on { n-days }; taken as fed, about { ABOUT($lb) }.{ HAS($copied) ->
    [yes] {" "}What is told equals the ration, so it counts for little.
   *[no] {""}
}
how-face = Face at { NUMBER($ft, maximumFractionDigits: 0) } of { NUMBER($lengthFt, maximumFractionDigits: 0) } ft{ HAS($on) ->
    [yes] , { $on }
   *[no] {""}
}{ $readings ->
    [one] {""}
   *[other] , { $readings } readings in all
}.
how-use = Used a day: about { NUMBER($lb, maximumSignificantDigits: 3) } lb, by { WORD("used", $from) }{ HAS($said) ->
    [yes] {" "}({ NUMBER($said, maximumSignificantDigits: 3) } lb)
   *[no] {""}
}.
how-fused = All of it weighed together, each by how sure it is: { n-days }{ $readings ->
    [0] {""}
    [one] , { $readings } face reading
   *[other] , { $readings } face readings
}.
how-narrow = { $what ->
    [face] Read the face in feet
    [tickets] Weigh a few loads
    [length] Tape the length
   *[ration] Read a day's feed off the scale
}{ HAS($pile) ->
    [yes] , for { $pile },
   *[no] {""}
} and the range comes down, from { NUMBER($half, maximumFractionDigits: 0) } to { NUMBER($after, maximumFractionDigits: 0) } days either way.
how-narrow-none = Nothing told now would narrow it by much: { NUMBER($half, maximumFractionDigits: 0) } days either way.
how-narrow-density = { $what ->
    [size] Tape the width, length and height, and the range comes down, from { NUMBER($half, maximumFractionDigits: 1) } to { NUMBER($after, maximumFractionDigits: 1) } lb either way.
    [tickets] Weigh a few loads, and the range comes down, from { NUMBER($half, maximumFractionDigits: 1) } to { NUMBER($after, maximumFractionDigits: 1) } lb either way.
    [packing] Tell the tractors and the layers, and the range comes down, from { NUMBER($half, maximumFractionDigits: 1) } to { NUMBER($after, maximumFractionDigits: 1) } lb either way.
   *[none] Nothing told now would narrow it by much: { NUMBER($half, maximumFractionDigits: 1) } lb either way.
}
how-narrow-face = { $after ->
    [0] Read the face in feet twice, a week apart, and the rate is known.
   *[other] Read the face today and the range comes down, from { NUMBER($half, maximumFractionDigits: 1) } to { NUMBER($after, maximumFractionDigits: 1) } inches either way.
}
how-loss-widest = { CAP(WORD("lost", $cause)) } makes { PCT($share) }% of that range: { $cause ->
    [top] tell when the cover went on and what it is.
    [face] read the face, the faster it moves the less is lost.
    [seepage] test the dry matter.
   *[other] weigh what goes in and what comes out, nothing else shows it.
}
how-cover-height = Tape the height: by what it turns out the sheet must be { NUMBER($low, maximumFractionDigits: 0) } to { NUMBER($high, maximumFractionDigits: 0) } ft wide.
how-checks = A covered pile is walked every { n-days }, more often when warm or open, and after hail, wind, rain, a thaw or animals.
how-cover = For { $widthFt } by { $lengthFt } ft{ HAS($heightFt) ->
    [yes] , { NUMBER($heightFt, maximumFractionDigits: 1) } ft high
   *[no] {""}
}{ HAS($assumed) ->
    [yes] {" "}(height not told)
   *[no] {""}
}.
how-sheet = Over the crown and down to the ground, 2 ft more all round: { NUMBER($widthFt, maximumFractionDigits: 0) } by { NUMBER($lengthFt, maximumFractionDigits: 0) } ft.
how-tires = { NUMBER($tires, maximumSignificantDigits: 3) } tires on { NUMBER($areaFt2, maximumSignificantDigits: 3) } square feet, side by side{ HAS($spaced) ->
    [yes] ; { NUMBER($spaced, maximumSignificantDigits: 3) } with gaps between
   *[no] {""}
}.
how-edge = { NUMBER($edgeFt, maximumFractionDigits: 0) } ft of edge to weigh down.
how-density-measured = { ABOUT($lb) } in { NUMBER($ft3, maximumSignificantDigits: 3) } cubic feet, as measured.
how-density-packing = { $tractors ->
    [one] { $tractors } tractor
   *[other] { $tractors } tractors
} of { $tractorLb } lb, { $layerIn } inch layers, { NUMBER($tonsHour, maximumFractionDigits: 0) } tons an hour.
how-density-usual = What is usual{ HAS($crop) ->
    [yes] {" "}for { WORD("crop", $crop) }
   *[no] {""}
}; nothing of the packing or the size is told.
how-porosity = { HAS($air) ->
    [yes] { PCT($air) }% air
   *[no] Air
} at a dry matter of { NUMBER($dmPct, maximumFractionDigits: 0) }%; no more than { PCT($target) }% is wanted.
how-density-loss = So packed, about { NUMBER($pct, maximumFractionDigits: 0) }% is lost by half a year.
how-face-rate = The face moves { NUMBER($inPerDay, maximumFractionDigits: 1) } inches a day, by { WORD("moves", $from) }{ HAS($days) ->
    [yes] , over { n-days }
   *[no] {""}
}.
how-face-least = { $season ->
    [warm] Warm months ask
   *[cool] Cool months ask
} for { NUMBER($inPerDay, maximumFractionDigits: 0) } inches a day at least, better { NUMBER($goal, maximumFractionDigits: 0) }.
how-plan-amount = { ABOUT($lbDry) } dry matter{ HAS($days) ->
    [yes] , { n-days }{ HAS($lbDay) ->
        [yes] {" "}at { NUMBER($lbDay, maximumSignificantDigits: 3) } lb
       *[no] {""}
    }
   *[no] {""}
} at { NUMBER($dmPct, maximumFractionDigits: 0) }% dry matter{ HAS($loss) ->
    [yes] , { $loss }% lost on the way
   *[no] {""}
}.
how-plan-face = A face that moves { NUMBER($inPerDay, maximumFractionDigits: 0) } inches a day.
how-plan-shape = Packed to { NUMBER($density, maximumFractionDigits: 1) } lb dry matter a cubic foot, sides { $run } to 1.
how-of = { CAP($pile) }:
how-loss-cause = { CAP(WORD("lost", $cause)) }: { NUMBER($pct, maximumFractionDigits: 1) }% ({ NUMBER($low, maximumFractionDigits: 1) } to { NUMBER($high, maximumFractionDigits: 1) }).
how-loss-total = All together { NUMBER($pct, maximumFractionDigits: 0) }% ({ NUMBER($low, maximumFractionDigits: 0) } to { NUMBER($high, maximumFractionDigits: 0) }).
how-loss-record = By its own record so far: { NUMBER($pct, maximumFractionDigits: 0) }%.
how-ready = Covered { $sealedOn }, and { n-days } to work.
how-have = There: { ABOUT($lbDry) } dry matter in { $piles }.
how-day = Used a day: { NUMBER($lb, maximumSignificantDigits: 3) } lb as fed, { NUMBER($lbDry, maximumSignificantDigits: 3) } dry.
how-until = { n-days } to { $until }.
how-mix = From { ABOUT($lb) } in { $layers ->
    [one] { $layers } layer
   *[other] { $layers } layers
}, as they were told.
how-weighed = { ABOUT($lb) } by { WORD("weighed", $from) }{ HAS($box) ->
    [yes] {" "}({ $box })
   *[no] {""}
}.

note-not-open = { CAP($pile) } is not open yet: counted as if it were opened today.
note-overfed = More was fed off { $pile } than should be in it: about { ABOUT($fed) } with the days nobody logged, of { ABOUT($in) }. Look over the loads and the boxes.
note-face-past-end = The face is told at { NUMBER($atFt, maximumFractionDigits: 0) } ft, past the end at { NUMBER($lengthFt, maximumFractionDigits: 0) }.
note-size-odd = { $heightFt } ft high on { $widthFt } ft wide is too steep. Measure again.
note-intake = No ration told: reckoned from what { $head } cows eat.
note-no-ration = No ration told: reckoned from { WORD("used", $from) }.
note-no-loads = No loads told for { $pile }: reckoned from its size.
note-usual-box = No box weight told: a usual box was taken.
note-level-layers = Reckoned as if the layers lay level.
note-mix-turns = The mix changes at { NUMBER($atFt, maximumFractionDigits: 0) } ft{ HAS($on) ->
    [yes] , about { $on }
   *[no] {""}
}{ HAS($crop) ->
    [yes] , to more { WORD("crop", $crop) }
   *[no] {""}
}.
note-size-assumed = Size not told: reckoned as if it lay { NUMBER($widthFt, maximumFractionDigits: 0) } by { NUMBER($lengthFt, maximumFractionDigits: 0) } ft.
note-face-back = The face of { $pile } went back, from { NUMBER($wasFt, maximumFractionDigits: 0) } to { NUMBER($atFt, maximumFractionDigits: 0) } ft: one of the two is off.
note-height-assumed = No height told: { NUMBER($ft, maximumFractionDigits: 0) } ft was taken.
note-face-not-read = Nobody read the face lately: reckoned from what is fed.
note-density-guide = Worked out from the packing told, so a guide only.
note-density-misfit = What is told does not fit: { ABOUT($lb) } in { NUMBER($ft3, maximumSignificantDigits: 3) } cubic feet would be heavier than wet mud. Look over the loads and the size.
note-density-assumed = Nothing told of the packing or the size: the usual was taken.
note-hours-assumed = Hours of hauling not told: a usual day was taken.
note-outside = Rough, outside of what is known: { WORD("outside", $what) }.
note-plan-year = Sized for a year.
note-plan-slower-face = { HAS($inPerDay) ->
    [yes] { NUMBER($inPerDay, maximumFractionDigits: 1) } inches a day is slow for summer, which wants { $goal }: feed it in the cool months.
   *[no] The face moves slower than one would wish.
}
note-plan-below-least = { HAS($inPerDay) ->
    [yes] The herd is small for a pile: for { NUMBER($inPerDay, maximumFractionDigits: 1) } inches a day it is only { NUMBER($heightFt, maximumFractionDigits: 1) } ft high, mostly top. Feed it in the cold, or bag the feed.
   *[no] The herd is small for a pile: build it low and narrow, and feed it in the cold.
}
note-plan-lower = Kept low: so little feed makes no higher pile.
note-plan-narrower = Kept narrow, to fit the slab.
note-plan-short-pile = It comes out shorter than wide: less feed than a pile wants.
note-plan-several-piles = Too long for one pile: build { $n }, { NUMBER($lengthFt, maximumFractionDigits: 0) } ft long each.
note-gas = { $stage ->
    [worst] Silo gas is at its worst now
   *[danger] There can be silo gas
}, to { $clearOn }: stay out, and upwind.
note-better-later = Better still after { $on }.
note-core-hot = The core is warmer than it should be.
note-spot-hot = There is a hot spot: feed is burning up there.
note-protein-bound = So hot that protein is bound and lost to the cow.
note-no-face = Tell where the face of { $pile } stands for the mix there.
note-no-price = No price is told for all of it. Tell it, like: corn silage is worth 55 a ton.
note-record-odd = The loads, the feeding and the face of { $pile } do not fit together: one of them is off.
