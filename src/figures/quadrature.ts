/**
 * Nodes and weights of the five-point Gauss-Legendre rule on -1 to 1; exact for polynomials of degree 9. Abramowitz & Stegun, table
 * 25.4.
 */
const NODES: readonly (readonly [number, number])[] = [
  [0, 0.5688888888888889],
  [-0.5384693101056831, 0.47862867049936647],
  [0.5384693101056831, 0.47862867049936647],
  [-0.906179845938664, 0.23692688505618908],
  [0.906179845938664, 0.23692688505618908],
]

/** Integral of `f` from `a` to `b` where it is smooth, in `panels` equal parts. */
export const integrate = (f: (x: number) => number, a: number, b: number, panels = 1): number => {
  const half = (b - a) / panels / 2
  let sum = 0
  for (let i = 0; i < panels; i++) {
    const mid = a + (2 * i + 1) * half
    for (const [x, w] of NODES) sum += w * f(mid + half * x)
  }
  return sum * half
}
