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
no-harvest-known = Feed for { n-days }, to about { $runsOut }. Tell when the next crop comes, like: first crop around May 28.
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
} and the range comes down, from { NUMBER($half, maximumFractionDigits: 0) } to { NUMBER($then, maximumFractionDigits: 0) } days either way.
how-cover = For { $widthFt } by { $lengthFt } ft{ HAS($heightFt) ->
    [yes] , { $heightFt } ft high
   *[no] {""}
}, with 2 ft to spare all round.
how-density = Dry matter by the cubic foot, from the size, else from the packing, else the usual.
how-face-rate = The face moves { NUMBER($inPerDay, maximumFractionDigits: 1) } inches a day, by { WORD("moves", $from) }{ HAS($days) ->
    [yes] , over { n-days }
   *[no] {""}
}.
how-face-least = This time of year asks for { NUMBER($inPerDay, maximumFractionDigits: 0) } inches a day.
how-plan = From the dry matter, how tight it lies, and a face that moves fast enough.
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
note-overfed = More is told as fed off { $pile } than went in ({ ABOUT($fed) } of { ABOUT($in) }). Look over the loads and the boxes.
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
note-height-assumed = No height told: a usual one was taken.
note-no-face = Tell where the face of { $pile } stands for the mix there.

# Limits of the formulas: what was told lies outside of what they were made for.

box-volume = That box is outside of the usual sizes, 50 to 2,500 cubic feet.
dry-matter = That dry matter is outside of what the formula was made for.
sample-weights = The weights of the sample do not fit: what is left dry must be less than what was wet.
no-weighing = No weight of the sample is told.
not-dry-yet = The sample is not dry yet: the last two weights still differ.
face-area = The face has no area; tell the width and the height.
width-impossible = That width cannot be.
length-impossible = That length cannot be.
height-impossible = That height cannot be.
height-above-half-width = Higher than half its width is too steep for a pile.
top-impossible = That top width cannot be.
top-wider-than-base = The top is told wider than the base.
ramp-impossible = That ramp cannot be.
ramps-longer-than-pile = The ramps are told longer than the pile.
wall-impossible = That wall cannot be.
wall-above-crown = The wall is told higher than the crown.
slope-impossible = That slope of the ground cannot be.
slope-runs-out = The ground slopes more than the pile is high.
days-uncovered = So many days open is outside of what was measured, 0 to 365.
ash-below-reference = The ash is lower than in the good feed, so the loss cannot be told.
