/**
 * Flavoured numbers: a plain number may be used as pounds, but pounds may not be used as feet.
 * Nothing is boxed at run time.
 */
declare const unit: unique symbol
export type Flavour<U extends string> = number & { readonly [unit]?: U }
export type Lb = Flavour<'lb'>
export type Ft = Flavour<'ft'>
export type In = Flavour<'in'>
export type Ft2 = Flavour<'ft2'>
export type Ft3 = Flavour<'ft3'>
export type LbFt3 = Flavour<'lb/ft3'>
/** Percent, 0 to 100. */
export type Pct = Flavour<'pct'>
/** A share, 0 to 1. */
export type Share = Flavour<'share'>

/** Short ton, lb. NIST Handbook 44, Appendix C. */
export const LB_PER_TON = 2000
/** Metric tonne, lb: 1000 kg / 0.453 592 37, rounded to the pound's hundredth as events store it. NIST SP 811. */
export const LB_PER_TONNE = 2204.62
/** Pound, kg, exact. NIST SP 811, footnote 22. */
export const KG_PER_LB = 0.45359237
/** International foot, m, exact. NIST SP 811. */
export const M_PER_FT = 0.3048
/** Inches in a foot. */
export const IN_PER_FT = 12
/** lb/ft3 in kg/m3: KG_PER_LB / M_PER_FT^3. */
export const KGM3_PER_LBFT3 = KG_PER_LB / M_PER_FT ** 3
/** Acre, m2: 43,560 international square feet. NIST Handbook 44. */
export const M2_PER_ACRE = 43_560 * M_PER_FT ** 2
/** Bushel, ft3: 2150.42 in3 exact. NIST Handbook 44. */
export const FT3_PER_BUSHEL = 2150.42 / 1728
/** One mil of film, micrometres, exact. */
export const UM_PER_MIL = 25.4
/** Short ton, kg. */
export const KG_PER_TON = LB_PER_TON * KG_PER_LB
/** Ton per acre in tonne per hectare. */
export const THA_PER_TONACRE = (KG_PER_TON / 1000 / M2_PER_ACRE) * 10_000
/** A temperature difference in Fahrenheit degrees, as Celsius degrees. */
export const celsiusInterval = (fahrenheit: number): number => fahrenheit / 1.8
