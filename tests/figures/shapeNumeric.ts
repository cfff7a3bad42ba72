import { all, create } from 'mathjs'

/** The solver is not in the library's own types. */
interface Solver {
  solveODE(
    f: (x: number) => number[],
    span: [number, number],
    start: number[],
    options: { tol: number; maxStep: number; firstStep: number; maxIter: number },
  ): { y: number[][] }
}

export const math = create(all!)

/** Integral by mathjs' adaptive Runge-Kutta solver, y' = f(x): shares nothing with the project's own rule. */
export const integral = (f: (x: number) => number, a: number, b: number, tol = 1e-7): number => {
  if (!(b > a)) return 0
  const options = { tol, maxStep: (b - a) / 8, firstStep: (b - a) / 64, maxIter: 200_000 }
  const { y } = (math as unknown as Solver).solveODE(x => [f(x)], [a, b], [0], options)
  return y.at(-1)![0]!
}
