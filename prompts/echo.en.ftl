# What was understood, one phrase for each event type. Phrases start small; a line gives them their capital and their stop.
# Every slot may be missing: the same phrases name what is asked about.

echo-line = { CAP($what) }{ HAS($on) ->
    [yes] , { $on }
   *[no] {""}
}.{ HAS($total) ->
    [yes] {" "}{ $total }
   *[no] {""}
}
total-loads = { $count } so far.
total-weight = { ABOUT($lb) } so far.
total-open-damage = { $count ->
    [one] { $count } open now.
   *[other] { $count } open now.
}
total-left = About { n-days } left.
took-back = Took back: { $what }.
took-back-many = Took back { $count } entries.
corrected = Now { $now } (was { $was }).

did-pile = { HAS($known) ->
    [yes] { $name }
   *[no] new pile { $name }
}{ HAS($details) ->
    [yes] , { $details }
   *[no] {""}
}
pile-feet-wide = { $ft } ft wide
pile-feet-long = { $ft } ft long
pile-feet-high = { $ft } ft high
pile-feet-top = { $ft } ft across the top
pile-walls = walls { $ft } ft
pile-also = also called { $names }
did-box = { $name } holds { $amount }{ HAS($crop) ->
    [yes] {" "}{ $crop }
   *[no] {""}
}
did-load = { $amount }{ HAS($crop) ->
    [yes] {" "}{ $crop }
   *[no] {""}
}{ HAS($pile) ->
    [yes] {" "}on { $pile }
   *[no] {""}
}{ HAS($details) ->
    [yes] , { $details }
   *[no] {""}
}
some-feed = some
load-dry = { $pct }% dry matter
load-box = { $box }
load-field = from { $field }
did-pack = packing{ HAS($pile) ->
    [yes] {" "}{ $pile }
   *[no] {""}
}{ HAS($details) ->
    [yes] , { $details }
   *[no] {""}
}
pack-tractors = { $count ->
    [one] { $count } tractor
   *[other] { $count } tractors
}{ HAS($lb) ->
    [yes] {" "}at { $lb } lb
   *[no] {""}
}
pack-weight = tractor { $lb } lb
pack-layers = { $inches } inch layers
pack-hours = { $hours ->
    [one] { $hours } hour
   *[other] { $hours } hours
}
did-size = { HAS($pile) ->
    [yes] { $pile } is { $details }
   *[no] { $details }
}
did-cover-on = { $things }{ HAS($pile) ->
    [yes] {" "}on { $pile }
   *[no] {" "}on
}
did-cover-off = { $things } off{ HAS($pile) ->
    [yes] {" "}{ $pile }
   *[no] {""}
}
did-cover-back = { $things } rolled back{ HAS($ft) ->
    [yes] {" "}{ $ft } ft
   *[no] {""}
}{ HAS($pile) ->
    [yes] {" "}on { $pile }
   *[no] {""}
}
did-damage = { hurt }{ HAS($pile) ->
    [yes] {" "}on { $pile }
   *[no] {""}
}{ HAS($where) ->
    [yes] , { $where }
   *[no] {""}
}{ HAS($animal) ->
    [yes] {" "}({ WORD("animal", $animal) })
   *[no] { HAS($cause) ->
        [yes] {" "}({ WORD("cause", $cause) })
       *[no] {""}
    }
}
# `kind` is hole, tear, loose-edge, water, other or any.
hurt = { HAS($count) ->
    [yes] { $kind ->
        [tear] { $count ->
            [one] { $count } tear
           *[other] { $count } tears
        }
        [loose-edge] { $count ->
            [one] { $count } loose edge
           *[other] { $count } loose edges
        }
        [water] { $count ->
            [one] water in { $count } place
           *[other] water in { $count } places
        }
        [hole] { $count ->
            [one] { $count } hole
           *[other] { $count } holes
        }
       *[other] { $count ->
            [one] damage in { $count } place
           *[other] damage in { $count } places
        }
    }
   *[no] { $kind ->
        [hole] a hole
        [tear] a tear
        [loose-edge] a loose edge
        [water] water
       *[other] damage
    }
}
did-patch = patched{ HAS($count) ->
    [yes] {" "}{ $count ->
        [one] { $count } place
       *[other] { $count } places
    }{ HAS($pile) ->
        [yes] {" "}on { $pile }
       *[no] {""}
    }
   *[no] { HAS($pile) ->
        [yes] {" "}{ $pile }
       *[no] {""}
    }
}{ HAS($where) ->
    [yes] , { $where }
   *[no] {""}
}
did-check = walked { HAS($pile) ->
    [yes] { $pile ->
        [all] the covers
       *[other] { $pile }
    }
   *[no] the covers
}{ $finding ->
    [good] , all good
    [trouble] , trouble found
   *[other] {""}
}
did-weather = { WORD("kind", $kind) }{ HAS($details) ->
    [yes] , { $details }
   *[no] {""}
}
weather-inches = { $inches } { $inches ->
    [one] inch
   *[other] inches
}
weather-mph = { $mph } mph
weather-degrees = { $degF } °F
did-open-feed = opened{ HAS($pile) ->
    [yes] {" "}{ $pile }
   *[no] {""}
} to feed
did-open-add = opened{ HAS($pile) ->
    [yes] {" "}{ $pile }
   *[no] {""}
} to put more on
did-feed = fed { $amount }{ HAS($pile) ->
    [yes] {" "}off { $pile }
   *[no] {""}
}
did-take = took { $amount }{ HAS($pile) ->
    [yes] {" "}off { $pile }
   *[no] {""}
}
did-face-at = face{ HAS($pile) ->
    [yes] {" "}of { $pile }
   *[no] {""}
} at { $ft } ft
did-face-left = { $ft } ft left{ HAS($pile) ->
    [yes] {" "}on { $pile }
   *[no] {""}
}
did-spoil = pitched { $amount }{ HAS($pile) ->
    [yes] {" "}off { $pile }
   *[no] {""}
}
did-shift = pushed { HAS($amount) ->
    [yes] { $amount }{ HAS($pile) ->
        [yes] {" "}of { $pile }
       *[no] {""}
    }
   *[no] feed{ HAS($pile) ->
        [yes] {" "}from { $pile }
       *[no] {""}
    }
}{ HAS($toPile) ->
    [yes] {" "}onto { $toPile }
   *[no] {""}
}
did-empty = { HAS($pile) ->
    [yes] { $pile } is empty
   *[no] a pile is empty
}
did-test = { HAS($crop) ->
    [yes] { $crop }{ HAS($pile) ->
        [yes] {" "}on { $pile }
       *[no] {""}
    }
   *[no] { HAS($pile) ->
        [yes] { $pile }
       *[no] the test
    }
} tested { $pct }% dry matter
did-ration = ration: { $details }
ration-head = { $head } head{ HAS($group) ->
    [yes] {" "}({ WORD("group", $group) })
   *[no] {""}
}
ration-group = { WORD("group", $group) }
ration-per-head = { $lb } lb{ HAS($crop) ->
    [yes] {" "}{ $crop }
   *[no] {""}
} a head{ $basis ->
    [dry] , dry
   *[other] {""}
}
ration-per-day = { $lb } lb{ HAS($crop) ->
    [yes] {" "}{ $crop }
   *[no] {""}
} a day{ $basis ->
    [dry] , dry
   *[other] {""}
}
ration-from = off { $pile }
did-supply-add = { $things } added to stock
did-supply-use = { $things } used from stock
did-supply-have = { $things } in stock
did-harvest = { HAS($crop) ->
    [yes] { $crop }
   *[no] harvest
}{ HAS($on) ->
    [yes] {" "}around { $on }
   *[no] {""}
}{ HAS($acres) ->
    [yes] , { $acres } acres
   *[no] {""}
}
did-remind = reminder{ HAS($who) ->
    [yes] {" "}for { $who }
   *[no] {""}
}{ HAS($on) ->
    [yes] {" "}{ $every ->
        [day] { $step ->
            [1] every day from {""}
           *[other] every { $step } days from {""}
        }
        [week] { $step ->
            [1] every week from {""}
           *[other] every { $step } weeks from {""}
        }
        [month] { $step ->
            [1] every month from {""}
           *[other] every { $step } months from {""}
        }
       *[other] {""}
    }{ LONGDAY($on) }
   *[no] {""}
}{ HAS($time) ->
    [yes] {" "}at { CLOCK($time) }
   *[no] {""}
}{ HAS($about) ->
    [yes] : { $about }
   *[no] {""}
}
did-note = { HAS($text) ->
    [yes] note: { $text }
   *[no] a note
}
day = { $on }
