/** How a world of farms is made: what can be wrong on them, and how much. Each world is a different farm life, not a different seed. */
export interface World {
  name: string
  /** Days that a pile lasts, from and to. */
  lasts: [number, number]
  /** True box weight over the said one: mean and spread between farms. */
  box: [number, number]
  /** Spread of one load around its box, a share. */
  load: number
  /** Share of what went in that never comes out. */
  loss: [number, number]
  /** Really fed over the ration: mean and spread between farms. */
  over: [number, number]
  /** Slow drift of what is fed, a share per square root of a day. */
  drift: number
  /** Spread of one day, a share. */
  daily: number
  /** Share of the days that are logged: least and most. */
  logged: [number, number]
  /** Silent days come in runs of about so many. */
  runs: number
  /** What a log says: the scale's weight, the weight rounded to so many pounds, or the ration whatever was fed. */
  logs: 'scale' | 'rounded' | 'ration' | 'feet' | 'batches'
  /** Faces are told by where they are, or by the feet that are left. */
  faceAs: 'at' | 'left'
  /** Days between readings of the face; 0 for never. */
  faceEvery: number
  /** Faces are told to so many feet. */
  faceGrain: number
  /** Error of a reading before rounding, ft. */
  faceSd: number
  /** Ramps at the ends, run to rise; 0 for upright ends. */
  slope: number
  /** Unevenness of the density along the pile: share of the weight behind the face, at its widest. */
  uneven: number
  /** Chance that the length is known, and its error. */
  length: number
  lengthSd: number
  /** Chance that height was measured. */
  height: number
  /** Chance that some loads were weighed. */
  tickets: number
  /** Chance that a ration is told. */
  ration: number
  /** Told as pounds a day off the pile, or as pounds of the crop a head and the head. */
  rationBy: 'day' | 'head'
  /** Chance that the herd changes once during the feeding. */
  herdChange: number
}
