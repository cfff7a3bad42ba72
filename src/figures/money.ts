import { LB_PER_TON, type Lb, type Pct } from '../units/measure.ts'

/** Money is worked out only from a price the farm gave, in its own money: without one every figure here is undefined. */
type Price = number | undefined

const priced = (price: Price): price is number => price !== undefined && Number.isFinite(price) && price >= 0

/** Value of feed: tons x price of a ton, both dry or both as fed. */
export const feedValue = (lb: Lb, tonPrice: Price): number | undefined =>
  priced(tonPrice) && lb >= 0 ? (lb / LB_PER_TON) * tonPrice : undefined

/** Cost of a loss: share of the feed put in x its value. */
export const lossCost = (lb: Lb, lossPct: Pct, tonPrice: Price): number | undefined =>
  feedValue((lb * Math.min(100, Math.max(0, lossPct))) / 100, tonPrice)

/** Cost of covering a ton: what sheet, weights and work cost over the tons under it. */
export const coverCostPerTon = (cost: Price, lb: Lb): number | undefined => (priced(cost) && lb > 0 ? (cost * LB_PER_TON) / lb : undefined)

/** What a better cover or pack brings back for each unit of money put in. For check: plastic about 8 (Kansas State; Hoard's). */
export const payback = (savedLb: Lb, tonPrice: Price, cost: Price): number | undefined => {
  const saved = feedValue(savedLb, tonPrice)
  return saved !== undefined && priced(cost) && cost > 0 ? saved / cost : undefined
}
