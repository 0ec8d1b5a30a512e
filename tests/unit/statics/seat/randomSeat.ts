import type { Vec3 } from '../../../../src/statics/sling/result'
import type { SlidingSeat } from '../../../../src/statics/seat/slidingSeat'

export interface RoundSeat {
  readonly legs: number
  readonly ring: number
  readonly leaveRadius: number
  readonly leaveHeight: number
  readonly baseRadius: number
  readonly rise: number
  readonly EA: number
  readonly weight: number
  readonly centre: number
}

const GRAVITY = 9.80665
export const apart = (a: Vec3, b: Vec3): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])

/** Whole lengths that lie along the drawn ways, A to knot, made shorter so that under its share of the weight each strand is as long as drawn. */
export const wholeLengths = ({ A, B, edge, knot, EA }: Pick<SlidingSeat, 'A' | 'B' | 'edge' | 'knot' | 'EA'>, weight: number): number[] =>
  A.map((a, i) => {
    const free = apart(a, B[i]!)
    const pull = (weight * free) / (A.length * (a[2] - B[i]![2]))
    return (free + apart(B[i]!, edge[i]!) + apart(edge[i]!, knot)) / (1 + pull / EA[i]!)
  })

/** Equal strands round a pot, from a level ring or one point, base at height 0. */
export function roundSeat({ legs, ring, leaveRadius, leaveHeight, baseRadius, rise, EA, weight, centre }: RoundSeat): SlidingSeat {
  const round = (r: number, z: number): Vec3[] => Array.from({ length: legs }, (_, i): Vec3 => {
    const angle = 0.3 + (2 * Math.PI * i) / legs
    return [r * Math.cos(angle), r * Math.sin(angle), z]
  })
  const shape = { A: round(ring, leaveHeight + rise), B: round(leaveRadius, leaveHeight), edge: round(baseRadius, 0), knot: [0, 0, 0] as const, EA: new Array<number>(legs).fill(EA) }
  return { ...shape, L0: wholeLengths(shape, weight), mass: weight / GRAVITY, cg: [0, 0, centre], ell: leaveRadius, gravity: GRAVITY, wall: null }
}

/** A seat of 3 to 12 strands with everything unequal: places, lengths, stiffnesses, centre of gravity. */
export function randomSeat(random: () => number, leaning: boolean): SlidingSeat {
  const between = (low: number, high: number): number => low + (high - low) * random()
  const legs = 3 + Math.floor(10 * random())
  const radius = between(0.06, 0.2), base = radius * between(0.4, 0.95), leave = between(0.05, 0.3), rise = between(0.35, 1.3)
  const ring = random() < 0.3 ? 0 : between(0.01, 0.15)
  const spread = random() < 0.3 ? 0 : between(0, 0.006)
  const turn = between(0, 2 * Math.PI)
  const away = leaning ? between(0, 0.1) : 0
  const weight = between(8, 210)
  const A: Vec3[] = [], B: Vec3[] = [], edge: Vec3[] = [], EA: number[] = []
  for (let i = 0; i < legs; i++) {
    const angle = turn + (2 * Math.PI * (i + between(-0.2, 0.2))) / legs
    const [c, s, reach] = [Math.cos(angle), Math.sin(angle), radius * between(0.95, 1.05)]
    A.push([ring * c, ring * s - away, leave + rise])
    B.push([reach * c, reach * s, leave])
    edge.push([base * c, base * s, 0])
    EA.push(between(600, 6000))
  }
  const shape = { A, B, edge, knot: [0, 0, between(-0.02, 0)] as const, EA }
  return {
    ...shape, L0: wholeLengths(shape, weight).map((length) => length + spread * between(-1, 1)), mass: weight / GRAVITY,
    cg: [radius * between(-0.1, 0.1), radius * between(-0.1, 0.1), leave * between(0.1, 2)], ell: radius, gravity: GRAVITY,
    wall: leaning ? { n: [0, 1, 0], d: 0, contacts: [{ type: 'circle', z: leave + 0.02, r: 1.1 * radius }, { type: 'circle', z: 0, r: base }] } : null,
  }
}
