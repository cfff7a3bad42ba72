/**
 * The English words of the trade and of the yard: what they can mean, and how they are typed. One line a meaning; a phrase
 * may stand under several. Keys are `category:value`; see DEVELOPERS.md for the list of categories.
 */
export const EN_WORDS: Record<string, string> = {
  // things done: `v:` as told of what happened, `b:` the bare form that may as well be an order
  'v:put':
    'i through, we through, he through, they through, just through, threw, tossed, chucked, laid, layed, lay, put, putting, puttin, dumped, dumpd, dumping, hauled, hauling, hauld, unloaded, unloadin, unloading, brought, brung, dropped, dropped off, blew in, ran in, run in, got in, added, addin, tipped, delivered, stacked, piled, piled up, loaded, loading, threw on, went on, went in, goin on, going on, came in, come in, just in, went up, went, goes on, stuck, chucked, drug in, pulled in, snuck in, sneaked in, squeezed in, slipped in, kicked, i set, we set, set out, brot, braught, knocked out, shoveled, winched, weighted, weighted down, weighted it down, hung, backed in',
  'b:put': 'dump, haul, unload, add, log, log me, mark down, write down, put down, count, chalk up, bring, record, enter',
  'v:feed':
    'fd, fed, feed out, fed out, feeding, feedin, fedd, gave, gave em, gave them, gave cows, went thru, went through, used up off, ate, they ate, cows ate',
  'b:feed': 'feed, give',
  'v:take':
    'took, takin, taking, removed, removing, taken, pulled, pulling, pulled off, shaved, faced off, knocked down, knocked, cut, came off, scraped, loaded out, moved off, facing off, defaced, dug out, scooped, peeled',
  'b:take': 'take, pull',
  'v:cover':
    'covd, cvd, cvrd up, covered, coverd, cvrd, covering, tarped, sheeted, sealed, sealed up, buttoned up, coverin, closed up, wrapped up, got covered, tucked in, covered up, got plastic on, plastic is on, cover is on, were all covered up, were all covered, were covered up, were all sealed up, were all sealed, were all tucked in, wrapped, bundled up, put to bed, buttoned down, all buttoned up, all shut',
  'b:cover': 'cover, seal, cover up, seal up',
  'v:uncover': 'uncovered, stripped, untarped, uncoverd, peeled',
  'b:uncover': 'uncover, strip, peel',
  'v:roll': 'rolled, rolld, rolling, peeled back, folded back, pulled back, rolled back, turned back, peeled, slid back',
  'b:roll': 'roll, roll back',
  'v:patch':
    'patched, ptchd, pached, patchd, taped, taped up, fixed, fixd, mended, repaired, sealed up holes, patching, patched up, fixed up, taped over',
  'b:patch': 'patch, tape, fix, mend, repair',
  'v:check':
    'checked, chkd, chckd, checkd, chekd, walked, walkd, looked at, looked over, went over, inspected, been round, went round, went around, been around, walking, chk, checking, eyeballed, looked, did the rounds on, looks, lookd, looked around, drove by, drove around, stopped by, took a walk around, took a walk round, took a lap around, took a look around, took a look at, did a lap around, made a lap around, made the rounds of, made my rounds of, took a walk over',
  'b:check': 'check, walk, inspect, look at, look over',
  'v:pack':
    'pckg, pckng, pkg, pkng, packng, pack in, packing, packin, packed, packd, pkd, pckd, pkg down, packing down, rolling down, driving over, pakt, packt, pakd, pakin, paked, rolling on, rollin on, rolln on, rolling the pile, rolling the pile down, rolled the pile, rolled the pile down, rolling it down, rolled it down, treading, tread, treaded, tramping, tramped, tromping, tromped, driving back and forth, drove back and forth, been back and forth, squished, squished down, squishing, squashing, squashed, mashing down, mashed down, smashing down, tamping, tamped, tamping down, compacting, compacted, running over it, running the tractor over',
  'b:pack': 'pack',
  'v:open':
    'cracked open, cracked, cut into, dug into, tapped into, opened, opend, opened up, opening, broke into, started feeding, started feeding off, started on, started feeding out of, cut open, openin, opened back up, reopened, re opened',
  'b:open': 'opn, open, open up, reopen',
  'v:push': 'pushed, pushd, pushing, shoved, bladed, moved, shifted, pushed up, dozed, dozing, bulldozed, scooted, slid over',
  'b:push': 'push, shove, move, shift',
  'v:pitch':
    'pitched, pitchd, ptchd out, threw out, threw away, thrown out, tossed, tossed out, chucked out, hauled away, scraped off, picked off, forked off, pitching, got rid of, dumped out, discarded, junked, threw',
  'b:pitch': 'pitch, throw out, toss',
  'v:test':
    'tested, testd, tests, testing, came back, came back at, test came back, ran, running, come back, tested out at, checked in at, came out at, test, probed, tester says, lab says, koster said',
  'v:buy':
    'were delivered, was delivered, got delivered, bot, boght, bought, picked up, got in, ordered in, came in, received, purchased, brought home, got, came today, arrived, arrivd, showed up, showed up today, got here, got dropped off, were dropped off',
  'v:have':
    'hve, hav, we hve, have, got, have got, we have got, counted, there are, theres, there is, still have, own, on hand, we have, weve got, left in stock, in stock, in the shed, count, down to, were down to, we are down to, im down to, only got, only have, we only got, we only have, all we got is, all we have is, got on hand, have on hand, we got on hand, hv, cntd, cnted',
  'v:use': 'used, used up, using, went thru, lost, tore up, threw away',
  'v:measure':
    'meas, measrd, msrd, measured, measurd, came out, came out to, comes to, taped out, taped out at, measures, measuring, ended up, stepped off, paced off, wound up, turned out, paced it off, stepped it off, taped it off, measured it, measured it up, paced it',
  'v:remind':
    'remind me, rmind me, remind, remind us, reminder, set me a reminder, set up a reminder, make me a reminder, put a reminder, put in a reminder, give me a reminder, dont let me forget, remember to, rmd me, remind everybody, remind the crew, set a reminder, set reminder, reminder to',
  'v:note': 'note, make a note, note that, jot down, for the record, fyi note, write this down, note to self',
  'v:new':
    'new pil, nw pile, new pl, new pile, start a new pile, starting a new pile, started a new pile, start pile, starting pile, make a new pile, new stack, started pile, add a pile, add pile, begin a new pile, make a pile, set up a pile, set up a new pile, starting a pile, another pile, nw pil',
  'v:call': 'called, calld, clld, named, call it, call her, name it, name is, calling it, name of',
  'v:alias':
    'also called, aka, a k a, also known as, or, we call it, the guys call it, the crew calls it, alias, also calld, some call it, also call it, also calls it, guys call it, we also call it, the guys also call it, the boys call it, the kids call it, everybody calls it, also goes by, goes by',
  'v:weigh':
    'weighed, scale ticket, ticket, weigh ticket, scaled, weighed in at, weighed out at, tipped the scale at, scale says, on the scale, across the scale',
  'v:hold':
    'holds, hold, hauls, carries, weighs, weigh, is good for, averages, runs, will hold, is about, avg, takes, comes in at, does, good for, itll hold, it holds, it will hold, itd hold',
  'v:milk': 'where milking, milking, milkng, milkin, milk, were milking, now milking, milkin now',
  'v:break':
    'got up on, were up on, was up on, climbed up on, climbed on, jumped up on, stomped, stompd, stomped on, trampled, clipped, clippd, clipd, bumped, bumpd, scraped, scrapd, tore, ripped, poked, punched, chewed, got in, got into, been at, been in, broke, clawed, dug, dug in, dug into, ran into, hit, caught, snagged, went through, went thru, got through, got thru, made, put holes in, shredded, pecked, stepped through, walked on, walked through, jumped on, scratched, cut, sliced, opened up, been on, got on, was on, were on, got at, found, tore up, tore open, ripped open, ran over, thru, through, busted, damaged, has, were in, was in, in again, at it, ripped up, poked thru, poked through, backed into, punctured, nicked, drove thru, drove over, gnawed, ate, messing with, messed with, messed up, been digging, been chewing, snuck in, came thru, climbed, chewing, chewin, chewed on, been chewin, ript',
  'v:lift':
    'got a hold of, got hold of, got ahold of, grabbed, grabbed a hold of, got underneath, whipped, lifted, lifted up, blew, blown, blew off, blew back, blew up, blew loose, flapped, flipped, flipped back, peeled up, took off, came loose, come loose, came up, is up, loosened, is loose, flapping, pulled loose, got under, is flapping, whipped',
  // measures
  'unit:load':
    'lod, lods, laods, laod, load, loads, lds, ld, lods, laods, wagon, wagons, wagonload, wagon load, wagon loads, truckload, truck load, truckloads, truck loads, truck, trucks, box, boxes, boxload, boxloads, box load, box loads, trailer, trailers, trip, trips, cart, carts, cartloads, dump, dumps, semi, semis, semi loads, wagonloads, lodes, loades, wagonful, wagonfuls, truckful, truckfuls, trailerful, trailerfuls, trks, trk, trailer loads, trailer load',
  'unit:bucket':
    'bucket, buckets, bckts, bkts, bkt, bucketful, bucketfuls, scoop, scoops, loader bucket, loader buckets, bucket loads, bucketloads, skid loader buckets, buckts',
  'unit:batch': 'batch, batches, btch, mix, mixes, mixer, mixer load, mixer loads, mixers, tmr loads, batchs',
  'unit:lb': 'lb, lbs, pound, pounds, #, pnds, lbs., pouns',
  'unit:ton': 'ton, tons, t, tn, tns, tonne short, short tons, short ton',
  'unit:tonne': 'tonne, tonnes, metric ton, metric tons, metric tonnes',
  'unit:kg': 'kg, kgs, kilo, kilos, kilogram, kilograms',
  'unit:ft': 'ft, feet, foot, ft., feets, fot, feat, fett, footer',
  'unit:in': 'in, inch, inches, inchs, in.',
  'unit:pct': 'percent, %, pct, per cent, percnt',
  'unit:yd': 'yards, yds, yd',
  'unit:cwt': 'cwt, hundredweight, hundred weight',
  'unit:mm': 'mm, millimeters, millimetres',
  'unit:cm': 'cm, centimeters, centimetres',
  'unit:mph': 'mph, miles an hour, miles per hour, mile an hour, mi per hour, m p h',
  'unit:degF': 'degrees, deg, degrees f, f, below',
  'unit:head': 'cows, head, hd, cow, animals, heifers, dry cows, milkers, girls',
  'unit:hour': 'hours, hour, hrs, hr, ours',
  'unit:acre': 'acres, acre, ac',
  'unit:tractor': 'tractors, tractor, trctrs, trctr, packers, packing tractors, packing tractor, machines, packer, tracs, trac',
  'unit:day': 'days, day',
  'unit:month': 'months, month',
  each: 'each, ea, apiece, a piece, per load, a load, a box, a wagon, per box, each one, every load, per wagon, per tractor',
  'per:day': '/ day, / d, a day, per day, daily, every day, each day, a d, a dy, pr day, pr dy',
  'per:head':
    '/ head, / hd, / cow, a head, per head, a cow, per cow, each cow, a hd, per hd, to each cow, a piece per cow, pr hd, pr head, pr cow',
  'per:hour': 'an hour, per hour, /hr, an hr',
  'dim:width':
    'wdth, wdt, w, wide, width, across, wid, wd, in width, at the bottom, at the base, at bottom, wide at the bottom, wide at the base, across the bottom, across at the bottom',
  'dim:length': 'lgth, lngth, lgt, l, long, length, lng, in length, deep back, lnog, lg',
  'dim:height': 'ht, hgt, hght, h, high, hi, tall, height, hgh, deep, at the crown, at the peak, in the middle, up',
  'dim:top':
    'across the top, wide on top, on top, top width, flat on top, wide across the top, wide at the top, wide across top, wide up top',
  'dim:wall': 'wall, walls, side wall, foot wall, sidewall',
  'dim:layer': 'layers, layer, lifts, lift, passes, thick, thick layers, lyrs, at a time, layrs, layr',
  // dry matter
  'dm:dry': 'dry matter, dm, d m, drymatter, dry, dry mater, percent dry, percent dry matter',
  'dm:wet': 'moisture, moist, water, wet, moister, moistur, mst',
  'basis:dry': 'dry matter, dry basis, of dry matter, dm basis, dm, dry',
  'basis:as fed': 'as fed, as is, wet weight, af',
  // what is fed
  'crop:corn silage':
    'corn silage, corn, cs, silage corn, corn silence, corn sileage, chopped corn, crn, corn chop, corn silge, corn slage, c s, csilage, corn sylage, whole plant corn, maize, silage, corn sile edge, corn silo edge',
  'crop:haylage':
    'hail age, hale age, hay edge, hay lege, cutting around, haylage, hay lidge, haylidge, hlg, hlage, haylge, hay ledge, hay large, alfalfa, alfalfa haylage, hay, hay silage, chopped hay, hay crop, haylag, hylage, haylege, haleage, alf, halage, hay lage, haylages, haleidge, hay leg, hay lich, alfalfa silage, crop, cutting, hail edge, hail ledge, hail lege, hay lych, hay lech, hay lish, hey lage, hey ledge, al falfa',
  'crop:grass silage': 'grass silage, grass, chopped grass, ryegrass, grass haylage',
  'crop:small-grain silage':
    'small grain silage, small-grain silage, small grain, oatlage, oats, rye silage, rye, triticale, barley silage, barley, wheat silage, wheatlage, ryelage, oat silage, trit, oatlidge, winter rye',
  'crop:sorghum silage': 'sorghum silage, sorghum, sudan, sorghum sudan, sudangrass, sorgum',
  'crop:earlage': 'earlage, ear lage, ear corn silage, snaplage, earlidge, ear lidge, earledge',
  'crop:high-moisture corn':
    'high moisture corn, high-moisture corn, hmc, hm corn, high moisture, high moist corn, hi moisture corn, hi moist corn, hi moisture',
  cutword: 'cutting around, crop, crp, crps, cut, cutting, cuttin, ctg, cttng, crops, cutt, cuts, ct, cttg',
  'say:ordinal:1': 'first',
  'say:ordinal:2': 'second, scnd',
  'say:ordinal:3': 'third, thrd',
  'say:ordinal:4': 'fourth, forth',
  'say:ordinal:5': 'fifth',
  'say:ordinal:6': 'sixth',
  // covers
  'mat:plastic':
    'plastic, plastics, sheet, sheets, cover, covers, film, plstc, poly, black plastic, white plastic, plastik, bunker cover, silage plastic, plasic, plactic, polys',
  'mat:second plastic':
    '2nd plastic, 2nd sheet, 2nd cover, 2nd layer of plastic, second plastic, second sheet, other plastic, 2nd plastic, 2nd sheet, double plastic, second layer of plastic, second cover, top plastic, another plastic on top',
  'mat:barrier film':
    'barrier film, oxygen barrier, ob film, barrier, underlay, clear film, vapor barrier, oxygen barrier film, o2 barrier, thin film',
  'mat:mesh': 'mesh, net, netting, bird net, protective mesh, mesh cover, bird netting, screen, nets, mash, messh, bird mesh',
  'mat:tarp': 'tarp, tarps',
  'mat:tires':
    'tires, tire, tyres, tites, tired, tirs, tiers, sidewalls, tire sidewalls, tyre, tires., trs, loose tires, spare tires, extra tires',
  'mat:gravel bags':
    'gravel bags, gravel bag, sandbags, sand bags, sandbag, gravelbags, bags of gravel, bags, pea gravel bags, bag, sand bag, bags of sand, grave all bags, gravel backs, gravel bag s, rock bags, rock bag, stone bags, sand tubes, sand tube, gravel sacks, sacks of gravel, sand sacks',
  'mat:gravel': 'gravel, pea gravel, stone, sand, stones',
  'mat:dirt': 'dirt, soil, earth, clay',
  'item:patch tape':
    'tape to patch with, tape for patching, patching tape, rolls of patching tape, patch tape, tape, silage tape, rolls of tape, roll of tape, rolls of patch tape, roll of patch tape, rolls of silage tape, repair tape, tape rolls, rolls tape, patching tape',
  // harm
  'what:hole': 'hole, holes, hols, wholes, punctures, puncture, whole, poke holes, pin holes, pinholes, hls, hles',
  'what:tear':
    'tear, tears, rip, rips, tare, tares, gash, slit, split, slice, rips in it, cut, slits, gashes, ripped, tore, torn, shredded, sliced, ript',
  'what:loose edge':
    'lose edge, loss edge, lose corner, loose edges, loose edge, loose, edge is up, edge up, edge loose, edge came up, flapping, edge blown back, came loose, blew back, lifted, edge lifted, edge, blew up, loose corner, pulled loose, blew off, blew loose, lifted up, flipped back, peeled up, under the edge, edges, lost the corner, lost a corner, lost the edge, lost an edge',
  'what:water':
    'holding water, is holding water, water standing, water, standing water, puddle, puddles, leaking, ponding, water on top, ponded, seeping',
  'cause:hail': 'hail',
  'cause:wind': 'wind, winds, gust, gusts, windy, storm',
  'cause:machine':
    'loader, skid loader, skidsteer, skid steer, tractor, truck, machine, bucket, payloader, loader bucket, skid, forklift, tractor tire, bobcat, telehandler, blade, mower, backed, ran, skidloader, skid ldr, skid steer loader',
  'cause:ice':
    'froze down, frozen down, froze to the ground, frozen to the ground, froze in, frozen in, froze fast, froze solid, ice, frost, icicles, frozen',
  'animal:raccoon': 'raccoon, raccoons, coon, coons, racoon, racoons, cooons, cons, racoon family',
  'animal:dog': 'dog, dogs, mutt',
  'animal:cat': 'cat, cats, barn cats, barn cat, kittens',
  'animal:deer': 'deer, deers, doe, buck',
  'animal:bird': 'bird, birds',
  'animal:crow': 'crow, crows',
  'animal:pigeon': 'pigeon, pigeons',
  'animal:starling': 'starling, starlings',
  'animal:goose': 'goose, geese',
  'animal:turkey': 'turkey, turkeys',
  'animal:vulture': 'vulture, vultures',
  'animal:buzzard': 'buzzard, buzzards',
  'animal:groundhog': 'groundhog, groundhogs',
  'animal:heifer': 'heifer, heifers',
  'animal:calf': 'calf, calves',
  'animal:steer': 'steer, steers',
  'animal:rat': 'rat, rats',
  'animal:mouse': 'mouse, mice',
  'animal:cow': 'a cow, cow, cows',
  'animal:skunk': 'skunk, skunks',
  'animal:coyote': 'coyote, coyotes',
  'animal:opossum': 'opossum, opossums, possum, possums',
  'animal:fox': 'fox, foxes',
  'animal:badger': 'badger, badgers',
  'animal:woodchuck': 'woodchuck, woodchucks',
  'animal:bear': 'bear, bears',
  'animal:rodent': 'rodent, rodents, vermin',
  'animal:animal': 'critter, critters, varmint, varmints, something, animal, animals',
  'animal:horse': 'horse, horses',
  'animal:goat': 'goat, goats',
  'animal:pig': 'pig, pigs, hog, hogs',
  'animal:squirrel': 'squirrel, squirrels',
  // weather
  'sky:hail': 'hail, hailed, hailing, hale, hail storm, hailstorm, haild, hails, hailstones, hail stones, hale storm, hailing',
  'sky:wind': 'wind, winds, windy, gust, gusts, gusting, blowing hard, blew, windstorm, wind storm, wnd, gusted, blow',
  'sky:rain':
    'rain gauge says, gauge says, gauge shows, rain gauge shows, gauge had, gauge read, rain, rained, raining, rains, rainfall, downpour, rain in the gauge, rain gauge, in the gauge, rian, poured, showers, rained hard, of rain, rane, thunderstorm',
  'sky:snow': 'snow, snowed, snowing, blizzard, snoed, snows, snowfall',
  'sky:freeze': 'freeze, froze, frost, frozen, hard freeze, hard frost, killing frost, freezing, frosted, first frost, first freeze, frz',
  'sky:thaw': 'thaw, thawed, thawing, thawin, melting, warmed up, melted, thaw out, warm spell',
  'sky:heat': 'heat, sweltering, hot, heat wave, scorching, sweltering, scorcher',
  // hailstones by the usual object names, inches: National Weather Service hail size chart (from memory)
  'stone:0.25': 'pea, pea size, pea sized, peas',
  'stone:0.5': 'marble, marbles, marble size, marble sized, mothball, moth ball',
  'stone:0.7': 'dime, dimes, dime size, dime sized',
  'stone:0.75': 'penny, pennies, penny size, penny sized',
  'stone:0.88': 'nickel, nickels, nickel size, nickel sized',
  'stone:1': 'qtr, qtr size, qtr sized, quarter size, quarter sized, quarters, quarter hail, quarter',
  'stone:1.25': 'half dollar, half dollar size, half dollar sized, half dollars',
  'stone:1.5':
    'ping pong, ping pong ball, ping pong balls, pingpong, ping pong size, ping pong ball size, walnut, walnuts, walnut size, walnut sized',
  'stone:1.75':
    'golf ball, golf balls, golfball, golfballs, golf ball size, golf ball sized, golfball size, golf bal, gulf ball, gulf ball size, golf',
  'stone:2': 'hen egg, egg size, egg, eggs, egg sized, hen eggs, lime',
  'stone:2.5': 'tennis ball, tennis balls, tennis ball size',
  'stone:2.75': 'baseball, baseballs, baseball size, base ball',
  'stone:3': 'teacup, tea cup, apple size, apples',
  'stone:4': 'grapefruit, grapefruits, grapefruit size',
  'stone:4.5': 'softball, softballs, softball size',
  'stone:size': 'size, sized, stones, stone, ball, balls, hailstones, diameter, sz',
  ground: 'ground, ground is, the ground, solid, hard',
  // findings
  'find:good':
    'good, gd, all gd, looks gd, all good, ok, okay, fine, tight, all tight, looks good, look good, solid, nothing wrong, no holes, no problems, no trouble, sound, all ok, nice and tight, everything good, everythings good, everything is good, in good shape, looking good, a ok, holding, held, all set, all fine, nothing, no damage, no issues, no tears, clean, still tight, shes good, everything tight, no rips, everythings fine, everything fine, everythings tight, everything looks good, looks tight, looks fine, looks ok, all clear, good shape, held up, 10 4, perfect, snug, no loose edges, undamaged, intact, alright, all right, no probs, tite, tight as a drum, didnt find a thing wrong, didnt find anything wrong, found nothing wrong, nothing wrong with it, nothin wrong, nuthin wrong, nothing looks wrong, not a mark, not a mark on them, not a mark on it, not a mark on em, not a scratch, not a scratch on it, not a scratch on them, not a single hole, not a hole, not a hole in it, not a hole in them, without a scratch, without a mark, nary a hole, nary a mark, theres nothing wrong, there is nothing wrong, nothings wrong',
  'find:trouble':
    'trouble, bad, not good, problem, problems, looks bad, rough, a mess, needs work, needs fixing, issue, issues, needs attention, messed up, not right, wrong, not looking good, not lookin good, not looking too good, doesnt look good, dont look good, didnt look good, not so good, not too good, no good, aint good, isnt good, not lookin so good, dont look too good, doesnt look too good, don look good, dont look right, doesnt look right, didnt look right, aint right, isnt right, looks off, looks funny, looks wrong, look funny, theres trouble, there is trouble',
  'thing:covers':
    'covers, the covers, piles, all the piles, all the pills, the pills, all piles, every pile, plastics, all of them, em all, them all, everything, the pales, pales, the piles, all three, both piles, all the covers, plastic on all of em, all covers, whole bunch, all of the piles, all the pales, each pile, the rounds, rounds, round, the lot, everywhere, evrywhere, every cover, every sheet, every one of them, every one of em, each cover',
  'thing:at': 'we are at, were at, we re at, down to, now at',
  'thing:face':
    'phase, the phase, fed back to, face, fase, feed face, feeding face, fce, the face, feedface, faces at, faces now at, faces up to, faces back to, face moved to, face moved up to, face is up to, face moved back to',
  'thing:left':
    'left, to go, remaining, left to feed, left in, still left, more to go, lft, down to the last, down to our last, down to its last, down to the final',
  'thing:spoiled':
    'spoiled, spoilage, rotten, mold, moldy, bad feed, bad stuff, black stuff, spoild, spoilt, junk, rot, waste, slimy, garbage, top spoilage, spoil, rotted, moldy stuff, mouldy, bad silage, crust, spoiled stuff, spoiled feed, white mold',
  'thing:out': 'out of, outta, all out of, ran out of, run out of, clean out of, fresh out of',
  'thing:gone':
    'ran out, run out, none left, theres none left, there is none left, all gone, gone, empty, that is the end of, thats the end of, the end of the, is empty, fed out, finished, finished up, used up, cleaned up, all fed out, done, is done, out of feed, cleaned out, all used up, finished off, emptied, last of it, thats the last, finished it, empty now, fed the last of, all fed, all out, finishd, cleaned it up, all done, wiped out, thats all of it, nothing left, nothing left on, nothing left of, nothing left in, nothing left at, nothin left, down to the slab, down to the concrete, down to concrete, down to bare concrete, down to the dirt, down to the floor, down to the ground, down to bare ground, down to the pad, to the concrete, licked clean, swept clean, all cleaned up, scraped clean, emty, emtpy, al gon, all gon',
  'thing:first': 'last, the last, rest, the rest, remaining, final',
  // where feed goes that is fed
  'to:cows':
    'to the cows, for the cows, to the herd, to the milkers, to the heifers, to the girls, to the ladies, for the girls, for the herd, for the milkers, for the heifers, to the dry cows, to the milk cows, into the bunks, in the bunks, in the feed bunk, to the feed bunk',
  'why:feed':
    'to feed, feed, for feed, feeding, for feeding, to feed out, to feed off, to start feeding, to start feeding it, for the cows, to feed it, for cows',
  'why:add':
    'to add, to put, to top, to fill, to put more, add, for corn, for more, to put corn on, to add corn, to put more on, to add to it, to go on top, to put on, add more, adding, to stack, to lay, to top it off, for second crop, for third crop, for more feed, to put',
  'group:milking':
    'where milking, milking, milkers, milk cows, milking cows, the milking herd, lactating, milk herd, milking herd, milking group, milking string',
  'group:dry': 'dry cows, drys, dries, dry group',
  'group:heifers': 'heifers, bred heifers, young stock, youngstock, heffers',
  'group:calves': 'calves',
  'group:fresh': 'fresh cows, fresh pen, fresh group',
  'group:high': 'high group, high cows, high string, high pen',
  'group:low': 'low group, low cows, low pen',
  'harv:expect':
    'figure on, figuring on, figure, expect, expecting, should be ready, ready around, will be ready, looking at, planning on, thinking, should start, will start, start, ready, starting, chopping, chop, cutting around, is set for, harvest, probably, counting on, plan on, plan to chop, plan to cut, plan to start, planned for, aiming for, shooting for, hoping for, looks like, be ready, gonna chop, will chop, should chop, hoping to chop, due, about ready, going to cut, will be, should be, set for, going to chop, hope to cut, cut, will cut, gonna cut, want to chop, target, figurin',
  // relations
  on: 'on, onto, in, into, to, at, up on, on top of, on to, over on, up to, ontop of, down at, over at, upon, unto, inside',
  off: 'off, off of, from, out of, out, outta, offa, of, for',
  with: 'with, w, using, plus',
  back: 'bk, bak, bck, back, again',
  and: 'and, n, plus, then, also, &, and then, as well as, +, y',
  also: 'also, too, as well',
  more: 'more, another, mor, additional, extra',
  // moods
  'm:no':
    'went around us, went right around us, missed us, missed us completely, skipped us, went north of us, went south of us, passed us by, not, didnt, dint, havent, hasnt, wasnt, no, never, dont, doesnt, isnt, nobody, none, wont, arent, cant, couldnt, did not, have not, has not, was not, no one, noone, aint, werent, without, nothing, missed, skipped, yet to, didn t, hadnt, forgot to, instead of, rather than, neither, no need, avoid, nary, nary a, nary a stone, nary a drop, not a drop, not a drop of, not a stone of, not a stone, went clear around us, went clean around us, skirted us, split and went around us, slid by us, slid past us, went just north of us, went just south of us, went n of us, went s of us, went e of us, went w of us, went east of us, went west of us, went to the north of us, went to the south of us, went the other way, stayed north of us, stayed south of us, never got here, never made it here, no hail to speak of, to speak of',
  'm:hope':
    'would be nice, it would be nice, sure would be nice, itd be nice, wish we could, hope, hoping, hopefully, wish, pray, praying, fingers crossed, hopin, lets hope, knock on wood, better not, could use, sure could use, wishing, wish it would',
  'other:thing': 'milk truck, milk hauler, milk inspector, milkman, milk man, milk guy, milk check, milk tank, milk house',
  aside:
    'between the two of us, the two of us, between us, counted twice, counted them twice, counted em twice, two times over, scale sheet, time sheet, sheet of paper, feed sheet, the scale sheet, tally sheet',
  'm:plan':
    'waiting on, waiting for, waitin on, waitin for, tell, was going to, were going to, wanted to, meant to feed, was gonna, were gonna, gonna, going to, will, ill, well will, tomorrow, tmrw, need to, needs to, have to, gotta, got to, plan to, planning to, planning on, want to, wanna, lets, lets go, might, may, maybe, should, shall, supposed to, about to, wants to, ought to, later, would, could, can, must, thinking of, thinking about, figured we would, fixing to, fixin to, i will, we will, be sure to, dont forget, please, plan, next week, someday, would like to, looking to, remember, intend to, ready to, trying to, need, needs, wont be, will be, probably, better, time to, had better, aim to, meaning to, more comin, more coming, more on the way, more to come, still coming, still comin, theyll, youll, id of, wed of, would of, would have, wouldve, couldve, could have, could of, id have, wed have, shouldve had, meant to put, meant to haul, meant to get, meant to do, was meaning to, were meaning to, can somebody, could somebody, can someone, could someone, can anybody, could anybody, somebody needs to, somebody oughta, would somebody, can one of you, ment to, ment to put',
  'm:if':
    'if, in case, unless, when we, once we, as soon as, whenever, until, till, suppose, supposing, what if, say we, assuming, when its, when it, if it stays dry, if the weather holds, if weather holds, if it dont rain, if it doesnt rain, weather permitting, if it keeps growing, if it keeps up, if it keeps growing like this, if it keeps going, if it keeps coming, if it keeps going like this, if the weather cooperates, if nothing breaks',
  'm:tell':
    'heard, says, said, they say, radio says, radar, radar shows, radar showed, radar says, on the news, the news said, forecast, calling for, supposed to, chance of, they said, thinks, reckon, guess, i guess, dreamed, dreamt, remember when, used to, back when, in the old days, years ago, neighbor, neighbors, next door, forecasting, warning, watch out for, sounds like, rumor, joke, jk, kidding, just kidding, imagine, almost, nearly, bet, looked like it, it looked like it, claims, claimed, swears, swore, brags, bragged, brother in law, in the movie, that movie, this movie, a movie, video game, the game, on tv, in the song, country song, a dream, wrong chat, wrong group, wrong thread, wrong person',
  // questions
  'q:howmany':
    'how many, how much, hw many, hw much, howmany, howmuch, how mny, what was the total, total on, whats the total, whats the count, count on, tally, whats the tally, how manny, what did we get, hw mny, hw mch, how mch',
  'q:howlong':
    'how long, how much time, how many days, how much longer, how long will, days left, how far will, when will, when does, how many more days, when do we run out, run out, hw long, days of feed, how many days left, how long until, when we run out, how many weeks, last us, days lft, when do we run outta, run outta, when does it run out, hw lng wll, hw lng, how lng',
  'q:how':
    'how, hows, how is, how are, whats up with, whats with, status, status on, how about, hows it look, whats the story on, update on, whats on, whats in, what is in, what do we have in, report on, rundown on, tell me about, hw is, show me, show us, let me see, let us see, send me the picture, send me the pictures, send me the photo, give me, info on, sitrep, where are we on, where are we at on, how does',
  'q:what': 'what, whats, which, wat, wut, what is, whats the, what kind, what size, what sz, wht',
  'q:when':
    'when we last, when did we last, when last, when, whens, last time, whn, what day, how long ago, when was, how long since, whats the last time, wen',
  'q:who':
    'who, whos, which one of you, who all, whod, anybody, anyone, did anybody, did anyone, did somebody, has anyone, has anybody, somebody',
  'q:where': 'where, wheres',
  'q:why':
    'why, hows that figured, how do you get that, how did you get that, why that, how come, where do you get that, how so, show your work, hows that worked out, how did you figure, how do you figure, explain, based on what',
  'q:yesno':
    'should, shd, can, is, are, do, does, did, will, would, could, have, has, was, were, am i, shall, u think, you think, do u think, do you think, ya think, you reckon, u reckon, do you reckon, ya reckon, ya se podra',
  'q:happened':
    'what happened, what has been done, been logged, anything happen, anything going on, whats happened, history, history of, log for, what went on, whats been done, what did we do, what was done, show the log, show log, events on, what all happened, what have we done, whats gone on, happened, whats been happening, what all',
  'q:help':
    'help, what can i say, what can you do, what do i say, how does this work, how do i use this, commands, what should i say, how do i log, how do you work, what do you do, what can i type, what can i ask, how do i, what all can i tell you, what can i tell you, what can i ask you, what all can you do, what all can i say, what kind of things can i tell you, what things can i tell you, what can i tell',
  'qt:last': 'last, run out, runs out, enough, hold out, left, hold us, lasts, out, longer, make it, going to last, carry us, get us',
  'qt:reach':
    'make it, make it to, get to, reach, enough to, enough for, enough feed, til, till, until, short, carry us, get us to, last to, last till, last until, make it till, make it until, through winter, to spring, have enough, be short, hold out, get by, get through, stretch, run short, come up short, what if, if we, mk it, mk it to, mk it til',
  'qt:density':
    'packed enough, packed, tight enough, dense enough, density, porosity, packed good, packed tight, hows the packing, packing enough, packd, dense, heavy enough, pack enough, packed hard, how tight, how dense, pack good, packing ok, packed well, pounds per foot, packed down, how much air, air in, too much air, thin packing, packed loose, packed too loose, too loose, packing density, tite enough, tite enuf, tight enuf, pkd tite, packed tite, pkd tight, pckd enuf, pckd enough, pckd tight, pckd good',
  'qt:face':
    'fast enough, feeding fast, moving fast, face moving, inches a day, taking enough off, keeping up, fast enuf, enough off, inches per day, feeding rate, face rate, feed rate, feedin fast, how fast, keeping ahead, too slow, ahead of spoiling, ahead of the spoilage, stay ahead, moving enough, enough a day, enough per day',
  'qt:cover':
    'plastic do i need, plastic do we need, size plastic, what plastic, what size, plastic for, what size sheet, what sheet, how big a sheet, how big of a sheet, tires will it take, tires do i need, tires do we need, tires to cover, to cover, sheet do, cover do, tires for, bags do we need, plastic will, cover, tires does it take, plastic should, how big of plastic, how big a plastic, what sz, sz plastic, sz sheet',
  'qt:plan':
    'how big a pile, how big of a pile, how wide should, how big should, how high should, how long should, pile for, what size pile, how big a pad, how wide, size pile, should we build, to build, should i build, build, how tall should, need to be for, how large a pile, how big, what size slab, big enough for, how wide to build, should a pile be, should the pile be',
  'qt:ready':
    'open, rdy, ready, ready to feed, ready to open, open yet, start feeding, feed yet, feed out of, safe to open, get into, start on, use, fermented, done fermenting, done cooking, long enough, ensiled, feed off, feed from, good to open, good to feed, start feeding off, opened, cured',
  'qt:mix':
    'mix, ratio, blend, made of, percent of, what percent, split between, how much of each, two to one, corn to haylage, composition, made up of, proportion, percent corn, share, layers, breakdown, whats the mix, split, corn and haylage in',
  'qt:checks':
    'whats due, what is due, due today, due now, needs doing, needs doin, need doing, left to do, needs walking, check, checked, chkd, walked, looked at, last check, last checked, been checked, checkd, next check, inspected, last look, walk the covers, looked over, check due, due for a check, lst chk, last chk, lst chkd',
  'qt:loss': 'spoiling, rotting, losing, lose, loss, losses, shrink, wasting, waste, spoilage, lost, throwing away, shrinkage',
  'qt:supplies':
    'do we have, we have, have left, have on hand, on hand, in stock, got left, are left, left over, do we own, in the shed, got, supplies, stock, inventory, left, in use, free, spare, extra, do i have, are there, we got, have we got, do we still have',
  'qt:loads':
    'loads, how much, on, in, today, total, went on, put on, hauled, so far, did we put, we put, have we put, we done, did we do, came in, brought in, did we get, in so far, up to, we at, got in, have we hauled',
  // the pile
  pileword: 'pile, piles, stack, bunker, bunk, pad, piel, pille, the pile, pyle, pil, bnkr, pial, heap',
  'where:place':
    'wall, end, side, corner, edge, top, bottom, middle, front, back, seam, n, s, e, w, ne, nw, se, sw, north, south, east, west, road, toe, left, right, gate, fence, ramp, crown, shoulder, overlap, lap, ground, base, far, near, upper, lower, backside, peak, silo, creek side, drive, driveway, tree line, treeline, trees, face, center, halfway, uphill, downhill, house, barn, shed, feed end, slab, yard, field side, corners, edges, wall side, post, fenceline, fence line, cnr, crnr, cornr, crner, cor, apron, north slope, south slope, west slope, east slope, back slope, w sde, e sde, n sde, s sde, sde, up top, down low, up high, low down, up on top',
  prepWhere:
    'by, near, along, next to, under, underneath, beside, past, just past, against, around, toward, towards, close to, behind, clear to, all along, below, above, across from, round the, all round the, all around the, round',
  // corrections
  'fix:make':
    'that should of been, should of been, it should of been, that shouldve been, that should have been, that shoulda been, mk that, mk it, make that, make it, make the, should be, should have been, shoulda been, shouldve been, change that to, change it to, supposed to be, meant, i meant, it was, that was, was really, actually, was actually, it is, really, correction, change to, its actually, that should be, that shouldve been, was supposed to be, fix that to, put it as, they were, those were, were, it wuz, i mean, that is, thats, thats really, meant to say, i meant to say, change, needs to be, really was, more like, sorry, make mine, mine was, mine were, should say, it should say, shd say, that should say, that shoulda said, shoulda said, should have said, should of said, it shoulda said, it should have said, better make it, better make that, lets make that, lets make it, might as well make it, call that, make it a, make that a, shud be, shd be, shoud be, shuld be, s/b, mke that, mke it, mak that, mkae that, maek that',
  'fix:no':
    'i misspoke, misspoke, misspoke its, i misread, i misread it, no, nope, no wait, wait, wait no, sorry, oops, whoops, my bad, actually, i mean, correction, er, scratch that, make that, no sorry, ope, oh sorry, hold on, no make that, no i mean, or rather, rather, hang on, excuse me, no its, shoot, dang, no no, sorry i mean, nah, no it was, no that was, sorry that was, no thats, wrong, that was wrong, thats wrong, whoa, oh wait, wait make that, sry, uh no, wrong pile, wrong crop, wrong number, strike that, no actually, i lied, nope i lied, no i lied, my mistake, nope my mistake, no i read that wrong, i read that wrong, no i had that wrong, i had that wrong, no im lying, im lying, no im wrong, im wrong, no thats a lie, no hang on, no hold on, no hold up, hold up, no wait a minute, wait a minute, no scratch that, no thats wrong, ah no, oh no, uh no wait, well no',
  'fix:undo':
    'scratch the, erase the, drop the last, scratch that, undo, undo that, scratch the last one, scratch last, delete that, delete the last one, delete last, take that back, take it back, take that off, never happened, cancel that, remove that, forget that, both wrong, scratch it, strike that, undo last, scratch both, delete both, remove the last one, that was wrong, cancel last, cancel the last one, delete it, remove it, wipe that, erase that, forget that last one, disregard, disregard that, ignore that, ignore that last one, ignore last, strike the last one, strike the last, scratch my last, undo the last one, take that last one off, take off that last one, never mind that last one, scratch all that, forget the last one, undo it, delete my last, delete that last one, scratch that last one, scratch the last, take it off, that never happened, drop the last one, drop that, undo please, undo both, scratch this one, scratch this, delete this one, undo this, delete this, take that back out, take it back out, take this one out, take this out, take that one out, take that out, pull that one, pull that one out, remove this one, remove this, remove that one, erase this, erase this one, erase that one, cross that off, cross that out, strike this, strike that one, drop this one, kill that, kill that one, kill the last one',
  'ans:yes':
    'yes, yeah, yep, yup, y, ya, sure, right, correct, thats right, ok, okay, uh huh, you bet, yes sir, that one, do it, as said, i am sure, im sure, thats it, exactly, affirmative, for sure, yessir, it is, it was, they are, ten four, hes right, shes right, theyre right, he is right, she is right, yep thats right, what he said, what she said, thats correct',
  'ans:no': 'no, nope, nah, n, not that, neither, no sir, negative, uh uh, wrong',
  'ans:drop':
    'never mind, nevermind, nvm, forget it, skip it, dont bother, drop it, leave it, cancel, no matter, doesnt matter, dont matter, forget about it, let it go, neither, none, nm, ignore it, dont worry about it, leave mine, leave mine alone, keep mine, mines right, mine is right, leave it as is, leave it like it is, leave it how it is, leave it be, keep it as is',
  'ans:same':
    'same, same ones, same one, the same, the same ones, same loads, thats the same, same thing, already in, already logged, duplicate, double, yeah same, he already said, those are the same, thats mine, same deal, thats the ones, already got it, the ones i said',
  'ans:more':
    'more, no more, additional, different, different ones, extra, those are more, new ones, on top of that, others, another, separate, in addition, besides those, these are mine, not the same, no more loads, new loads, 2 more, different loads, add them, add em, they are more, no different',
  'ans:all':
    'in all, total, so far, all told, all together, altogether, for the day, in total, total for today, today total, all day, thats total, total so far, total today',
  'pick:1': 'first one, first, 1st, option 1, number one, number 1, former',
  'pick:2': 'second one, second, 2nd, option 2, number two, number 2, latter, other one, other',
  'pick:3': 'third one, third, 3rd, option 3, number three, number 3',
  'pick:last': 'last one, last',
  total:
    'in all, so far, total, all told, altogether, total for today, for the day, all together, today total, in total, total so far, all day',
  vague:
    'lotta, lot of, whole lot of, whole lotta, some, a few, few, bunch of, a bunch of, a bunch, bunch, several, lots of, a lot of, lots, many, a lot, plenty, couple three, whole bunch of, a whole bunch, a little, a bit, a little bit, handful, handful of, most of, a mess of, good bit, quite a few, numerous, a few more, a good many, all day, all morning, all am, all afternoon, all night, a whole lot, whole lot, some more, dont know how many, not sure how many, lost count, a bunch more, bunch more, who knows how many, couple or three, a whole mess of, whole mess of, a big mess of, a fair bit, fair bit, a fair amount, a good amount, a whole slew of, whole slew of, a slew of, slew of',
  approx:
    'about, around, roughly, approx, approximately, maybe, bout, close to, nearly, almost, give or take, ish, or so, somewhere around, just over, just under, like, right at, right around, right about, a little over, a little under, figure, say, probably, near, abt, ballpark, pretty near, more or less, pert near, at least, not sure, im not sure, not real sure',
  // words that carry nothing here
  so: 'so it doesnt, so it dont, so it wont, so it stays, so nothing, so they dont, so they cant, so we dont, so i could, so they could, so he could, so we can, so i can, so they can, so we could, so that we can, so you can, so he can',
  but: 'but, though, except',
  'thing:home':
    'from the coop, from the co op, from the store, from the dealer, from town, from the elevator, home from town, home from the store, home from the coop',
  filler:
    "one more thing, sorry one more thing, another thing, quick question, one question, lol, lmao, haha, not funny, not fun, not kidding, no kidding, no joke, wasnt much, wasnt bad, wasnt too bad, wasnt that much, wasnt that bad, didnt take long, not much, not too bad, no big deal, so far so good, last for the day, the last for the day, last for today, last for tonight, the last for today, the last for tonight, last of the day, last one for the day, that was the last for the day, thats the last for the day, that was the last for today, thats the last for today, thats the last for tonight, that was the last for tonight, thats it for today, thats it for the day, thats it for tonight, thats all for today, thats all for tonight, done for the day, done for today, done for tonight, please enter, please log, please record, please mark, please add, enter, log, record, mark, forgot to put it in, forgot to put in, forgot to put that in, forgot to say, forgot to tell you, forgot to tell ya, forgot to mention, forgot to log it, forgot to log, forgot to write it down, never put it in, didnt put it in, not sure what, not sure what did it, not sure who, not sure how, dont know what did it, dont know what, dont know how, no idea what, no idea who, no idea how, no clue what, dunno what, ah, ahh, aw, oof, em, of em, lets see, let me see, let us see, ok, okay, uh, um, so, hey, hi, hello, well, just, the, a, an, we, i, he, she, they, it, that, this, these, those, is, are, was, were, be, been, has, had, have, did, do, now, today, just now, got, you know, like, my, our, your, his, her, their, us, me, him, them, you, up, down, over, there, here, right, alright, yeah, yep, oh, man, boy, guys, fyi, please, thanks, thank you, thank goodness, thx, ty, morning, good morning, evening, good evening, everybody, all, of, for, as, by, too, forgot to say, forgot to tell, forgot, finally, still, already, only, really, about, again, some reason, again today, looks like, look like, looks, look, seems, seem, seems like, think, i think, guess, believe, sorry, my fault, its, im, ive, weve, were, hes, theyre, id, its like, lol, btw, by the way, this time, before dinner, before lunch, after lunch, after dinner, after supper, before supper, after chores, before chores, before dark, after milking, before milking, at noon, over the scale, on the scale, by the scale, across the scale, scale ticket, scale tickets, per the scale, over scale, on scale, scaled, across scale, whole thing, done, so far today, for now, for you, going, well, cab, boss, wet, kinda, sorta, pretty, nice, big, little, small, large, new, old, good, fresh, whole, entire, full, out there, in there, down there, up there, out here, over there, over here, quick, sir, maam, ma'am, anyway, anyways, hear, see, saw, seen, noticed, found, find, pretty much, about right, which, who, what, where, when, than, then, some, any, while ago, a while ago, a minute ago, minutes ago, earlier, later, soon, first thing, one, ones, thing, stuff, feed, silage, worth, apiece, came, come, coming, went, go, goes, get, getting, gets, gave, make, makes, made, ended, end up, let, know, let you know, heads up, update, log, record, report, reporting, also, plus, both, each, either, dang, darn, damn, heck, hell, shit, fuckin, freakin, friggin, crap, holy cow, geez, jeez, wow, ugh, hm, hmm, mhm, say, says, said, tell, told, telling, letting, want, wanted, finished, finish, got done, got it, all done, on account of, cause, because, after that, after that wind, since, out, away, along, together, even, ever, much, very, real, super, way, kind, sort, bit, fairly, quite, rather, through, thru, during, off, in, to, on, at, from, with, into, onto, or, yet, pile, box, loads, field, from there, at all, this is, hers, theirs, mine, ours, one of, the other, other, same, such, must, mustve, must have, been, being, if, around, near, tight, mostly, almost, maybe, couple, straight, even, flat, spot, place, total, number, numbers, count, exactly, exact, currently, presently, right now, at the moment, as of now, as of today, these days, lately, overnight, per, via, due, again this morning, how, there's, there is, hope all, alls, yall, folks, fellas, team, crew, everyone, buddy, pal, bud, dude, bro, mr, mrs, dad, mom, grandpa, grandma, uncle, boss man, over and out, copy, 10-4, standby, signing off, covering for me, covering for him, covering for her, covering for us, covering for you, covered for me, covered for him, covered for her, covered for us, cover for me, cover for him, cover for her, cover for us, cover for you, covers for me, after breakfast, before breakfast, over breakfast, at breakfast, from the lab, at the lab, back from the lab, dunno what did it, dunno whut did it, no idea what did it, no idea what done it, no clue what did it, no clue what done it, dunno what done it, supper time, suppertime, bout supper, around supper, bout supper time, just so you have it, so you have it, just so you know, just so ya know, just so yall know, agn, going to bed, heading to bed, off to bed, goin to bed, calling it a night, stunk, stank, stinks, stinks to high heaven, stunk to high heaven, to high heaven, since dinner, since lunch, since breakfast, since supper, since milking, since chores, since morning milking, taken care of, thats taken care of, its taken care of, so thats that, thats that, forgot to put this in, forgot to put this down, forgot to put these in, forgot to enter this, last thing, didnt last long, didnt last but a minute, only lasted a minute, lasted a minute, didnt last, walk off with, walked off with, what a load of, whew, tho, for the weekend, for tomorrow, lord willing, finaly, finly, load of bull, a load of bull, load of crap, a load of crap, fat thumbs, fat thumbed it, scaled out, before feeding, before i fed, before we fed, after feeding, while feeding, must of, musta, rite now, a load off my mind, load off my mind, never put em in here, never put it in here, never put them in here, never put em in, didnt put it in here, after church, cant count, i cant count, cant count today, settled, setled, settling, settled some, never got it sent in, never sent it in, never got it in here, boys, ladies, gents, fellers, he means, she means, they mean, when you can, when u can, when you get a chance, when u get a chance, whenever you can, come look, come take a look, come see, covered in mud, covered in, all covered in, if anybody asks, if anyone asks, if anybody wants to know, when you get a minute, when you get time, when you get a sec, when u get a minute, dont nobody, dont anybody, dont yall, dont be mad, dont get mad, dont yell, dont let anybody, nobody needs to, nobody go, nobody touch, me and the dog, the dog and me, me n the dog, couldnt tell you what did it, couldnt tell you, couldnt tell ya, couldnt say, couldnt tell you who, cant say what did it, cant tell what did it, cant tell you what did it, before, co, op, at co op, at coop, at the co op, at the coop, at the store, at the farm store, what i did is, what i did was, what we did is, what we did was, hail to the chief, hail to the king, hail mary, all hail",
}
