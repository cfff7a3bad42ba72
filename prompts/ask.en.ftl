# Questions, the words on their buttons, and the short lines that close a matter.

ask-pile = { CAP($what) }: which pile?
ask-onto = { CAP($what) }: onto which pile?
ask-crop = { HAS($pile) ->
    [yes] What feed went on { $pile }?
   *[no] What feed is it?
}
ask-count = How many loads{ HAS($crop) ->
    [yes] {" "}of { WORD("crop", $crop) }
   *[no] {""}
}{ HAS($pile) ->
    [yes] {" "}on { $pile }
   *[no] {""}
}?
ask-amount = { $type ->
    [load] How much went on{ HAS($pile) ->
        [yes] {" "}{ $pile }
       *[no] {""}
    }?
    [feed] How much was fed{ HAS($pile) ->
        [yes] {" "}off { $pile }
       *[no] {""}
    }?
    [spoil] How much was pitched{ HAS($pile) ->
        [yes] {" "}off { $pile }
       *[no] {""}
    }?
    [shift] How much was pushed{ HAS($pile) ->
        [yes] {" "}off { $pile }
       *[no] {""}
    }?
    [box] How much does it hold?
    [supply] How many?
   *[other] How much?
}
ask-unknown-pile = No pile is called { $name }.{ HAS($near) ->
    [yes] {" "}Is it { $near }?
   *[no] {" "}Which one is it?
}
# `slot` is the name of the event's slot.
ask-implausible = { slot-value }?{ HAS($most) ->
    [yes] {" "}{ CAP($pile) } is { $most } ft long.
   *[no] {" "}That is far from what this farm sees.
} Say the number again, or that it is right.
slot-value = { $slot ->
    [count] { $unit ->
        [bucket] { n-bucket-value }
        [batch] { n-batch-value }
        [load] { n-load-value }
       *[other] { $value }{ HAS($unit) ->
            [yes] {" "}{ $unit }
           *[no] {""}
        }
    }
    [lb] { $value } lb
    [lbPerDay] { $value } lb a day
    [lbPerHead] { $value } lb a head
    [tractorLb] { $value } lb a tractor
    [dmPct] { $value }% dry matter
    [atFt] Face at { $value } ft
    [leftFt] { $value } ft left
    [widthFt] { $value } ft wide
    [lengthFt] { $value } ft long
    [heightFt] { $value } ft high
    [wallFt] Walls of { $value } ft
    [ft] { $value } ft
    [inches] { $value } inches
    [layerIn] { $value } inch layers
    [mph] { $value } mph
    [degF] { $value } °F
    [hours] { $value } hours
    [head] { $value } head
    [tractors] { $value } tractors
    [acres] { $value } acres
    [cut] Cut number { $value }
    [on] { LONGDAY($value) }
   *[other] { $value }{ HAS($unit) ->
        [yes] {" "}{ $unit }
       *[no] {""}
    }
}
n-load-value = { $value ->
    [one] { $value } load
   *[other] { $value } loads
}
n-bucket-value = { $value ->
    [one] { $value } bucket
   *[other] { $value } buckets
}
n-batch-value = { $value ->
    [one] { $value } batch
   *[other] { $value } batches
}
ask-same = { CAP($who) } logged that already: { $what }. Same ones, or more?
ask-face-back = The face was at { $was } ft, now { $now } ft? A face does not go back. Which is right?
ask-others = { CAP($who) } logged that one: { $what }. { CAP($who) } or the owner has to say yes. Change it?
ask-remove = Take { $name } out of the book, with { $entries ->
    [one] its one entry
   *[other] all its { $entries } entries
}?
ask-in-all = { $logged } logged already. Is { $said } the count in all, or that many more?
ask-meant = Did you mean: { $what }?
ask-slot-generic = { $slot ->
    [pile] Which pile?
    [toPile] Onto which pile?
    [name] What is it called?
    [crop] What feed is it?
    [count] How many?
    [lb] How many pounds?
    [ft] How many feet?
    [unit] Loads, buckets or batches?
    [on] Which day?
    [time] What time?
    [material] Covered with what?
    [change] On, off or rolled back?
    [cause] What did it?
    [animal] What animal?
    [what] A hole, a tear or a loose edge?
    [where] Where on the pile?
    [finding] All good, or trouble?
    [kind] What kind of weather?
    [why] Opened to feed, or to put more on?
    [atFt] How many feet from the end first opened?
    [leftFt] How many feet are left?
    [dmPct] What dry matter, in percent?
    [cut] Which cut?
    [item] What was it?
    [about] Remind you of what?
    [head] How many head?
    [text] What should the note say?
    [widthFt] How wide, in feet?
    [lengthFt] How long, in feet?
    [heightFt] How high, in feet?
   *[other] How much was it?
}
ask-choose = Which one?
ask-reply-how = Answer with one of these, or say it in your own words.

choice-yes = Yes
choice-no = No
choice-new-pile = New pile { $name }
choice-same = Same ones
choice-more = More
choice-as-said = { $value }, as said
choice-never-mind = Never mind
choice-more-of = { $n } more
choice-in-all = { $n } in all
choice-all = All of them
choice-good = All good
choice-trouble = Trouble
choice-why-feed = To feed
choice-why-add = To put more on

undone = Took back: { $what }.
nothing-to-undo = Nothing left to take back.
nothing-to-fix = Nothing like that is logged here.
closed-question = All right, nothing written down.
puzzled = Could not make that out. Try { $examples }.
quoted = "{ $text }"
refused-viewer = You can ask here, but not log. The owner can change that.
refused-stranger = This book is for the crew only. Ask the owner for the code.
refused-owner = Only the owner can do that.
not-yours = { HAS($who) ->
    [yes] That one is from { $who }. Only { $who } or the owner can change it.
   *[no] Somebody else logged that. Only they or the owner can change it.
}
too-long = That is over 4,096 characters. Send it in shorter pieces; nothing was written down.
question-lapsed = That question has closed. Say the whole thing again if it still counts.
noted-plan = Not written down, that sounds like a plan.
noted-denial = Not written down, since it did not happen.
event-invalid = That does not fit in the book ({ WORD("event", $type) }: { $why }). Nothing was written down.
hello =
    I keep the book of your silage piles. Three things to type:
    { $one }
    { $two }
    { $three }
hello-one = new pile called north, 40 by 120
hello-two = put 7 loads corn on north
hello-three = how long will north last


example-pile = new pile called creek, 40 by 120
example-load = put 7 loads corn on { $pile }
example-feed = fed 12,000 lb off { $pile }
example-left = how long will { $pile } last
example-status = how is { $pile }
example-damage = two holes on { $pile }
example-check = walked { $pile }, all good
