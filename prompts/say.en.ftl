# Words and measures that the other files use. Lines are spoken to people in a cab: short, plain, no exclamation marks.

day-short =
    { $month ->
        [1] Jan
        [2] Feb
        [3] Mar
        [4] Apr
        [5] May
        [6] Jun
        [7] Jul
        [8] Aug
        [9] Sep
        [10] Oct
        [11] Nov
       *[12] Dec
    } { $day }
day-long =
    { $weekday ->
        [mon] Mon
        [tue] Tue
        [wed] Wed
        [thu] Thu
        [fri] Fri
        [sat] Sat
       *[sun] Sun
    } { $date }
clock = { $hour }:{ $minute } { $half }

amount-lb = { $n } lb
amount-tons = { $n } { $n ->
    [one] ton
   *[other] tons
}
weight-lb = { $lb } lb
weight = { WEIGHT($lb) }
about = { ABOUT($lb) }
feet = { $ft } ft
n-load = { $count } { $count ->
    [one] load
   *[other] loads
}
n-bucket = { $count } { $count ->
    [one] bucket
   *[other] buckets
}
n-batch = { $count } { $count ->
    [one] batch
   *[other] batches
}
n-days = { NUMBER($days, maximumFractionDigits: 0) ->
    [one] { NUMBER($days, maximumFractionDigits: 0) } day
   *[other] { NUMBER($days, maximumFractionDigits: 0) } days
}
by-feet = { $widthFt } by { $lengthFt } ft

crop-corn-silage = corn silage
crop-haylage = haylage
crop-grass-silage = grass silage
crop-small-grain-silage = small-grain silage
crop-sorghum-silage = sorghum silage
crop-earlage = earlage
crop-high-moisture-corn = high-moisture corn
crop-of-cut =
    { $cut ->
        [1] first-crop
        [2] second-crop
        [3] third-crop
        [4] fourth-crop
        [5] fifth-crop
       *[other] cut { $cut }
    } { WORD("crop", $crop) }
crop-said = { WORD("crop", $crop) }

item-plastic = plastic
item-second-plastic = second plastic
item-barrier-film = barrier film
item-mesh = mesh
item-tarp = tarp
item-tires = tires
item-gravel-bags = gravel bags
item-gravel = gravel
item-dirt = dirt
item-patch-tape = patch tape
# `kind` is the item with hyphens.
things = { HAS($count) ->
    [yes] { things-counted }{ HAS($widthFt) ->
        [yes] {" "}{ things-size }
       *[no] {""}
    }
   *[no] { HAS($widthFt) ->
        [yes] { things-size }{" "}
       *[no] {""}
    }{ WORD("item", $item) }
}
things-size = { HAS($lengthFt) ->
    [yes] { by-feet }
   *[no] { $widthFt } ft wide
}
things-counted = { $count } { $kind ->
    [plastic] { $count ->
        [one] plastic
       *[other] plastics
    }
    [second-plastic] { $count ->
        [one] second plastic
       *[other] second plastics
    }
    [barrier-film] { $count ->
        [one] barrier film
       *[other] barrier films
    }
    [mesh] { $count ->
        [one] mesh
       *[other] meshes
    }
    [tarp] { $count ->
        [one] tarp
       *[other] tarps
    }
    [tires] { $count ->
        [one] tire
       *[other] tires
    }
    [gravel-bags] { $count ->
        [one] gravel bag
       *[other] gravel bags
    }
    [gravel] { $count ->
        [one] load gravel
       *[other] loads gravel
    }
    [dirt] { $count ->
        [one] load dirt
       *[other] loads dirt
    }
    [patch-tape] { $count ->
        [one] roll patch tape
       *[other] rolls patch tape
    }
   *[other] { $item }
}

cause-hail = hail
cause-wind = wind
cause-animal = animal
cause-machine = machine
cause-ice = ice
cause-unknown = cause not known

animal-raccoon = raccoon
animal-dog = dog
animal-cat = cat
animal-deer = deer
animal-bird = bird
animal-rat = rat
animal-mouse = mouse
animal-cow = cow
animal-heifer = heifer
animal-calf = calf
animal-horse = horse
animal-goat = goat
animal-pig = pig
animal-coyote = coyote
animal-starling = starling
animal-vulture = vulture
animal-buzzard = buzzard
animal-steer = steer
animal-bull = bull
animal-fox = fox
animal-skunk = skunk
animal-opossum = possum
animal-possum = possum
animal-badger = badger
animal-woodchuck = woodchuck
animal-groundhog = groundhog
animal-gopher = gopher
animal-squirrel = squirrel
animal-rabbit = rabbit
animal-crow = crow
animal-seagull = seagull
animal-goose = goose
animal-turkey = turkey
animal-pigeon = pigeon
animal-bear = bear

kind-hail = hail
kind-wind = wind
kind-rain = rain
kind-snow = snow
kind-freeze = freeze
kind-thaw = thaw
kind-heat = heat

group-milking = milking
group-dry = dry cows
group-dry-cows = dry cows
group-heifers = heifers
group-calves = calves
group-beef = beef
group-steers = steers
group-fresh = fresh cows
group-close-up = close-ups

stage-planned = nothing on it yet
stage-filling = filling
stage-sealed = covered
stage-feeding = feeding
stage-empty = empty

event-pile = pile
event-box = box
event-load = loads
event-pack = packing
event-size = size
event-cover = cover
event-damage = damage
event-patch = patch
event-check = check
event-weather = weather
event-open = opening
event-feed = feeding
event-face = face
event-spoil = spoiled feed
event-shift = shift
event-empty = empty
event-test = test
event-ration = ration
event-supply = supplies
event-harvest = harvest
event-remind = reminder
event-note = note

# The farm's own words
words-known = Our words: { $list }.
words-none = No words of our own yet. Say: when we say the bunk we mean north.
word-means = "{ $word }" is { $means }
read-first-words = That was long: I read only the first 240 words. Send the rest on its own.
word-taught = From now on "{ $word }" is { $means }.
word-forgotten = "{ $word }" is no longer a word of ours.
name-trade-word = "{ $name }" is a word of the trade, so it can't be a pile's name. Take another one.
name-taken = "{ $name }" is already { $pile }. Take another name.
remove-unknown = No pile or box is called that. There is { $names }.
remove-owner-only = Only the owner takes a pile or a box out of the book.
price-owner-only = Only the owner sets prices.
price-outside = { $said } cannot be the price. Say it again.
price-feed = { CAP($of) } at ${ NUMBER($price, maximumFractionDigits: 2) } a ton from now on.
price-sheet = A sheet at ${ NUMBER($price, maximumFractionDigits: 2) } from now on.
price-forgotten = No price for { $of } any more.
