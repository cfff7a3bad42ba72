# Why an answer cannot be given, what to beware of in it, and how it was worked out, one line each.

nothing-in-pile = { $stage ->
    [empty] { CAP($pile) } is empty{ HAS($on) ->
        [yes] {" "}since { $on }
       *[no] {""}
    }.
   *[other] Nothing has gone on { $pile } yet.
}
no-size-known = No loads and no size are told for { $pile }. Tell one, like: { $pile } is 40 by 120 and 10 high.
no-ration-known = { HAS($lbAsFed) ->
    [yes] About { ABOUT($lbAsFed) } on { $pile }. {""}
   *[no] {""}
}Tell what is fed a day and the days can be counted, like: feeding 9,000 a day{ HAS($pile) ->
    [yes] {" "}off { $pile }
   *[no] {""}
}.
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
} and the range comes down, from { NUMBER($half, maximumFractionDigits: 0) } to { NUMBER($after, maximumFractionDigits: 0) } days either way.
how-cover = For { $widthFt } by { $lengthFt } ft{ HAS($heightFt) ->
    [yes] , { NUMBER($heightFt, maximumFractionDigits: 1) } ft high
   *[no] {""}
}{ HAS($assumed) ->
    [yes] {" "}(height not told)
   *[no] {""}
}.
how-sheet = Over the crown and down to the ground, 2 ft more all round: { NUMBER($widthFt, maximumFractionDigits: 0) } by { NUMBER($lengthFt, maximumFractionDigits: 0) } ft.
how-tires = { NUMBER($tires, maximumSignificantDigits: 3) } tires on { NUMBER($areaFt2, maximumSignificantDigits: 3) } square feet, side by side.
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
how-porosity = Air by the dry matter of { NUMBER($dmPct, maximumFractionDigits: 0) }%; no more than { PCT($target) }% is wanted.
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
}.
note-height-assumed = No height told: { NUMBER($ft, maximumFractionDigits: 0) } ft was taken.
note-face-not-read = Nobody read the face lately: reckoned from what is fed.
note-density-guide = Worked out from the packing told, so a guide only.
note-density-assumed = Nothing told of the packing or the size: the usual was taken.
note-hours-assumed = Hours of hauling not told: a usual day was taken.
note-outside = Rough, outside of what is known: { WORD("outside", $what) }.
note-plan-year = Sized for a year.
note-plan-slower-face = With this herd the face moves slower than one would wish.
note-plan-below-least = With this herd the face moves slower than it should in any pile worth driving on.
note-plan-lower = Build it lower.
note-plan-narrower = Build it narrower.
note-plan-short-pile = It comes out shorter than wide: less feed than a pile wants.
note-plan-several-piles = Too long for one pile: build several.
note-gas = { $stage ->
    [worst] Silo gas is at its worst now
   *[danger] There can be silo gas
}, to { $clearOn }: stay out, and upwind.
note-better-later = Better still after { $on }.
note-core-hot = The core is warmer than it should be.
note-spot-hot = There is a hot spot: feed is burning up there.
note-protein-bound = So hot that protein is bound and lost to the cow.
note-no-face = Tell where the face of { $pile } stands for the mix there.

# Sizes that cannot be, and limits of the formulas, named where a figure was taken outside of them.

note-width-impossible = That width cannot be.
note-length-impossible = That length cannot be.
note-height-impossible = That height cannot be.
note-height-above-half-width = Higher than half its width is too steep for a pile.
note-top-impossible = That top width cannot be.
note-top-wider-than-base = The top is told wider than the base.
note-ramp-impossible = That ramp cannot be.
note-ramps-longer-than-pile = The ramps are told longer than the pile.
note-wall-impossible = That wall cannot be.
note-wall-above-crown = The wall is told higher than the crown.
note-slope-impossible = That slope of the ground cannot be.
note-slope-runs-out = The ground slopes more than the pile is high.

outside-box-volume = the size of the box
outside-dry-matter = the dry matter
outside-sample-weights = the weights of the sample
outside-no-weighing = the weights of the sample
outside-not-dry-yet = a sample not dry yet
outside-face-area = the area of the face
outside-days-uncovered = the days it lay open
outside-ash-below-reference = the ash
outside-ash = the ash
outside-above-seen = a tighter pile than was ever measured
outside-past-saturation = no air left in it
outside-density = how tight it lies
outside-feed = the amount of feed
outside-feeding = what is fed a day
outside-rate = how fast the face moves
outside-target = the density asked for
outside-tractor-weight = the weight of the tractors
outside-tractors = the number of tractors
outside-width = the width
outside-depth = the depth
outside-delivery = the tons an hour
outside-layer = the layers
outside-porosity = the air in it
outside-moisture = the moisture
outside-water = the water
outside-wind = the wind
outside-weight = the weight
outside-week = the weeks
outside-surface = the surface
outside-surface-factor = the surface
outside-conductivity = the ground
outside-freezing-index = the cold
outside-condition = the condition of the cows
outside-days-in-milk = the days in milk
outside-days-to-calving = the days to calving
outside-grown-weight = the grown weight
outside-milk = the milk
outside-milk-energy = the milk
outside-milk-fat = the milk fat
outside-ndf = the fiber
outside-older = the age
outside-grain-yield = the grain yield
outside-width-impossible = the width
outside-length-impossible = the length
outside-height-impossible = the height
outside-height-above-half-width = a height above half the width
outside-top-impossible = the top width
outside-top-wider-than-base = a top wider than the base
outside-ramp-impossible = the ramps
outside-ramps-longer-than-pile = the ramps
outside-wall-impossible = the walls
outside-wall-above-crown = the walls
outside-slope-impossible = the slope of the ground
outside-slope-runs-out = the slope of the ground
note-no-price = No price is told for all of it. Tell it, like: corn silage is worth 55 a ton.
