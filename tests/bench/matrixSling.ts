import { add, cross, eigs, identity, lusolve, multiply, norm, subtract, zeros, type Matrix } from 'mathjs'
import type { SlingInput, Vec3 } from '../../src/statics/sling/result'

// The yardstick of sling.bench.ts: the same model, start and stopping, written straight from the
// formulas with a general matrix library (undamped but for a shift that makes the step descend).
type Rows = number[][]

const skew = ([x, y, z]: number[]): Rows => [[0, -z!, y!], [z!, 0, -x!], [-y!, x!, 0]]
const outer = (a: number[], b: number[]): Rows => a.map((x) => b.map((y) => x * y))
const turnBy = (theta: number[]): Rows => {
  const angle = norm(theta) as number
  if (angle < 1e-12) return add<Rows>(identity(3).valueOf() as Rows, skew(theta))
  const K = skew(theta.map((x) => x / angle))
  return add(add(identity(3).valueOf() as Rows, multiply(K, Math.sin(angle))), multiply(multiply(K, K), 1 - Math.cos(angle))) as Rows
}

interface State { readonly energy: number; readonly gradient: number[]; readonly hessian: Rows; readonly T: number[] }

function stateAt({ A, B, L0, EA, mass, gravity, cg, ell }: SlingInput, p: number[], R: Rows): State {
  const W = mass * gravity
  let energy = W * p[2]!
  let gradient: number[] = [0, 0, W, 0, 0, 0]
  let hessian = (zeros(6, 6) as Matrix).valueOf() as Rows
  const T: number[] = []
  A.forEach((top, i) => {
    const b = multiply(R, subtract([...B[i]!], [...cg]))
    const d = subtract(add(p, b), [...top])
    const l = norm(d) as number
    const k = EA[i]! / L0[i]!
    const tension = k * Math.max(0, l - L0[i]!)
    T.push(tension)
    if (tension === 0) return
    energy += tension ** 2 / (2 * k)
    const n = d.map((x) => x / l)
    const J = [...n, ...(cross(b, n) as number[]).map((x) => x / ell)]
    gradient = add(gradient, multiply(J, tension)) as number[]
    const G = [[1, 0, 0], [0, 1, 0], [0, 0, 1]].map((row, r) => [...row, ...skew(b)[r]!.map((x) => -x / ell)])
    const transposed = G[0]!.map((_, c) => G.map((row) => row[c]!))
    hessian = add(add(hessian, multiply(outer(J, J), k - tension / l)), multiply(multiply(transposed, G), tension / l)) as Rows
    const dot = n.reduce((sum, x, j) => sum + x * b[j]!, 0)
    for (let r = 0; r < 3; r++) for (let c = 0; c < 3; c++) hessian[3 + r]![3 + c]! += (tension / ell ** 2) * ((n[r]! * b[c]! + n[c]! * b[r]!) / 2 - (r === c ? dot : 0))
  })
  return { energy, gradient, hessian, T }
}

/** Tensions and eigenvalues of a free sling at rest, from an upright start by halving; no judgement of the rest. */
export function matrixSling(input: SlingInput): { readonly T: readonly number[]; readonly eigenvalues: readonly number[] } {
  const W = input.mass * input.gravity
  const mean = (points: readonly Vec3[], i: 0 | 1): number => points.reduce((sum, point) => sum + point[i], 0) / points.length
  const x = mean(input.A, 0) - mean(input.B, 0) + input.cg[0]
  const y = mean(input.A, 1) - mean(input.B, 1) + input.cg[1]
  let R = identity(3).valueOf() as Rows
  // In plain numbers: the start is not what is compared.
  const pull = (z: number): number => input.A.reduce((sum, top, i) => {
    const d = [top[0] - x - input.B[i]![0] + input.cg[0], top[1] - y - input.B[i]![1] + input.cg[1], top[2] - z - input.B[i]![2] + input.cg[2]]
    const l = Math.hypot(...d)
    return sum + (input.EA[i]! * Math.max(0, l / input.L0[i]! - 1) * d[2]!) / l
  }, 0)
  let [low, high] = [-10, 10]
  for (let i = 0; i < 20; i++) {
    const middle = (low + high) / 2
    if (pull(middle) > W) low = middle
    else high = middle
  }
  let p = [x, y, low]
  let here = stateAt(input, p, R)
  for (let step = 0; step < 100 && (norm(here.gradient) as number) > 1e-11 * W; step++) {
    const tiny = 1e-9 * here.hessian.reduce((sum, row, i) => sum + row[i]!, 0)
    const shifted = here.hessian.map((row, i) => row.map((entry, j) => entry + (i === j ? tiny : 0)))
    const dx = (lusolve(shifted, here.gradient) as Rows).map(([value]) => -value!)
    for (let share = 1; share > 1e-6; share /= 2) {
      const part = dx.map((value) => share * value)
      const trialP = add(p, part.slice(0, 3))
      const trialR = multiply(turnBy(part.slice(3).map((value) => value / input.ell)), R)
      const trial = stateAt(input, trialP, trialR)
      if (trial.energy > here.energy && (norm(trial.gradient) as number) > (norm(here.gradient) as number)) continue
      ;[p, R, here] = [trialP, trialR, trial]
      break
    }
  }
  const symmetric = here.hessian.map((row, i) => row.map((entry, j) => (entry + here.hessian[j]![i]!) / 2))
  return { T: here.T, eigenvalues: eigs(symmetric, { eigenvectors: false }).values as number[] }
}
