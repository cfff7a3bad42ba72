import { all, create, type Unit } from 'mathjs'

const math = create(all)
/** Integral by mathjs' adaptive Runge-Kutta solver, y' = f(x): shares nothing with the project's own rule. */
export const integral = (f: (x: number) => number, a: number, b: number, tol = 1e-7): number => {
  if (!(b > a)) return 0
  const { y } = math.solveODE((x: number) => [f(x)] as unknown as Unit[], [a, b], [0], { tol, maxStep: (b - a) / 8, firstStep: (b - a) / 64, maxIter: 200_000 } as never) as unknown as { y: number[][] }
  return y.at(-1)![0]!
}
export { math }
