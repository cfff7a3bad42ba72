/** English number words. */
export const EN_UNITS: Record<string, number> = {
  zero: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
  tree: 3,
  fore: 4,
}
export const EN_TENS: Record<string, number> = {
  twenty: 20,
  thirty: 30,
  forty: 40,
  fourty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
}
export const EN_SCALES: Record<string, number> = { hundred: 100, hunderd: 100, thousand: 1000, thousnd: 1000, grand: 1000 }
/** Counted by name. */
export const EN_COUNTS: Record<string, number> = { couple: 2, cpl: 2, cple: 2, coupl: 2, pair: 2, dozen: 12, doz: 12, dzn: 12 }
/** What dictation writes for a number; a number only where nothing else fits. */
export const EN_HOMOPHONES: Record<string, number> = {
  to: 2,
  too: 2,
  for: 4,
  fore: 4,
  ate: 8,
  won: 1,
  tree: 3,
  sicks: 6,
  tin: 10,
  fife: 5,
  nein: 9,
  wun: 1,
}
