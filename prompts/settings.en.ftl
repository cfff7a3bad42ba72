# What was set, how it is listed, and the reminders' own words.

watch-for = { $you ->
    [yes] {" "}for you
   *[no] { HAS($who) ->
        [yes] {" "}for { $who }
       *[no] {""}
    }
}
set-morning = Morning summary{ watch-for } at { CLOCK($time) }.
set-evening = Evening summary{ watch-for } at { CLOCK($time) } on filling days.
set-weekly = Weekly summary{ watch-for } on { watch-weekday } at { CLOCK($time) }.
watch-weekday = { $weekday ->
    [mon] Monday
    [tue] Tuesday
    [wed] Wednesday
    [thu] Thursday
    [fri] Friday
    [sat] Saturday
   *[sun] Sunday
}
watch-kind = { $kind ->
    [evening] evening summary
    [weekly] weekly summary
   *[morning] morning summary
}
set-gets = { $you ->
    [yes] You get the { watch-kind }.
   *[no] { HAS($who) ->
        [yes] { CAP($who) } gets the { watch-kind }.
       *[no] The { watch-kind } is sent.
    }
}
set-gets-not = { $you ->
    [yes] No { watch-kind } for you.
   *[no] { HAS($who) ->
        [yes] No { watch-kind } for { $who }.
       *[no] No { watch-kind }.
    }
}
set-empty = { $always ->
    [yes] Summaries come even when there is nothing to say.
   *[no] No summary when there is nothing to say.
}
set-quiet = Quiet{ watch-for } from { CLOCK($from) } to { CLOCK($to) }, but for reminders set to an hour.
set-quiet-none = No quiet hours{ watch-for }.
set-check = Covers are walked every { $days ->
    [1] day
   *[other] { $days } days
}, sooner after a storm.
set-total = { $count ->
    [0] No running totals in the group.
    [1] A running total after every load told in the group.
   *[other] A running total every { $count } loads told in the group.
}
set-nudges = { $count ->
    [0] What is left undone is not asked after.
    [one] At most { $count } nudge a day.
   *[other] At most { $count } nudges a day.
}
set-ask = What is left undone is asked after at { CLOCK($time) }.
set-wait = A pile waits { n-days } before it is fed.
set-freeze = The ground freezes around { $on }.
set-thaw = The ground thaws around { $on }.
set-place = The farm is at { NUMBER($lat, maximumFractionDigits: 4) } { $south ->
    [yes] S
   *[no] N
}, { NUMBER($lon, maximumFractionDigits: 4) } { $west ->
    [yes] W
   *[no] E
}.
set-place-none = Place for the sun: not set.
set-lang = { $lang ->
    [es] Spanish
   *[en] English
}{ $you ->
    [yes] {" "}for you
   *[no] { HAS($who) ->
        [yes] {" "}for { $who }
       *[no] {" "}for the group
    }
}.
settings-owner-only = Only the owner changes that. Your own summary, hours and quiet hours you may set.
settings-say-anew = A setting stays until another is told, like "check the covers every 7 days".
settings-nobody = There is nobody called { $name } here.
settings-no-chat = { CAP($name) } has to write to me in private once, then it comes.
setting-outside = { $said } is out of range: { $min } to { $most }.

reminders-none = No reminders.
reminders-line = { NUMBER($n, maximumFractionDigits: 0) }. { LONGDAY($on) }{ HAS($time) ->
    [yes] {" "}at { CLOCK($time) }
   *[no] {""}
}{ watch-repeats }{ HAS($who) ->
    [yes] , for { $who }
   *[no] {""}
}: { $about }
watch-repeats = { $every ->
    [day] { $step ->
        [1] , every day
       *[other] , every { $step } days
    }
    [week] { $step ->
        [1] , every week
       *[other] , every { $step } weeks
    }
    [month] { $step ->
        [1] , every month
       *[other] , every { $step } months
    }
   *[other] {""}
}
reminders-which = Which one? Say "cancel reminder 1", or 2.
reminder-not-yours = That reminder is not yours to change.
reminder-no-such = No reminder like that.
reminder-done = Good: { $about }.

choice-patched = Patched
choice-walked = Walked, all good
choice-later = Not yet
nudge-not-yet = Still open then.
nudge-over = That is settled already.

filled = { CAP($pile) } is filled{ $count ->
    [0] {""}
   *[other] , { n-load } today
}.

stock-on = { CAP($pile) }: { $things }.
stock-free = Free: { $things }.
stock-sheet = { $what } ({ n-days } on)
stock-unknown = Nothing of that is in the book.

choice-done = Done
choice-hour = In an hour
choice-tomorrow = Tomorrow

lapsed = I let the question about "{ $what }" go, nothing was written. Say it again if it matters.
lapsed-many = I let { $count } questions go, the first about "{ $what }". Say it again if it matters.
