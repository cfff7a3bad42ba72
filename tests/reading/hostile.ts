/** Parts that hostile texts are made of: every kind of token, and words that begin a phrase, a number, a name or a date. */
export const PARTS = [
  ...'a|é|ñ|漢|🌽|\u0000|\uD800|\u0301|𝟙|½|1|0|9|.|,|;|:|!|?|¿|(|)|[|{|<|#|%|$|&|+|-|/|*|"|\'|`|’|\n|\t| '.split('|'),
  ..."1 |1 1 1 1 |1/2 |1/2/3/4 |1,000,|1.1.1|12k |1x2x|1 by 2 by |10-12 |1-2-|7:30|7am |12th |2026-09-12 |9/12/26 |22'6 |6'3\" |12 ft 6 |34 % ".split(
    '|',
  ),
  ...'one |hundred and |ninety nine thousand |a half |half a |half of a |1 and a half |a couple of |five dozen |point |one point one |to |1 to |two or '.split(
    '|',
  ),
  ...'mil |treinta y |doscientos |y medio |media docena |un |una '.split('|'),
  ...'quarry |quary |long |long bench |long bnch |bench |gate and |old mill, |on north |red truck |jag |jags of |Berit '.split('|'),
  ...'7 loads |7 loads corn on quarry |put |fed |and |and and |, and |tires and |covered |patched |hole |hail |golf ball |corn and hay and |second crop |each |in all |deep |10 wide 20 long '.split(
    '|',
  ),
  ...'echamos 7 viajes de maiz en quarry y |tapamos |plastico y llantas y |granizo anoche '.split('|'),
  ...'last |last night |yesterday |a week after |the day after |on the |friday |el |el lunes |hace |hace 2 dias |12 de |may |days ago '.split(
    '|',
  ),
  ...'no |no, |not |undo |make that |that was |if |hope |will |tomorrow |what |how much |remind me to |note: |every day |when we say |we mean |forget |means '.split(
    '|',
  ),
  ..."http://|www.a.|+1 555 555 5555 |(555) |asdf |remmember |loadsofcornonquarry|don't |a'b".split('|'),
]
