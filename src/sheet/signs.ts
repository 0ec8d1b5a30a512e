import type { Ink, Point, Shape } from '../drawing/shape'
import type { Picture } from './block'

/** What to look for on a hanger that has hung a while. */
export const SIGNS = ['frayed', 'thinned', 'slipped', 'opened'] as const
export type Sign = (typeof SIGNS)[number]

/** Drawn 60 mm high and wide, much larger than life. */
const HALF = 0.03
const BOUNDS = { left: -HALF, right: HALF, bottom: -HALF, top: HALF }

const common = (ink: Ink) => ({ link: null, ink, pencil: false, leg: null }) as const
const line = (points: readonly Point[], width: number, behind: boolean): Shape => ({ ...common('cord'), kind: 'line', points, width, behind })
const pen = (...points: readonly Point[]): Shape => line(points, 0, false)
const area = (points: readonly Point[], texture: 'open' | 'paper'): Shape => ({ ...common('cord'), kind: 'area', points, texture, behind: false })
const mm = (x: number, y: number): Point => [x / 1000, y / 1000]
const steps = (count: number): readonly number[] => Array.from({ length: count }, (_, i) => i)

/** Half the width of a cord at a height, mm. */
type Half = (y: number) => number

/** A twisted cord upright at x: its two edges, and the seams of its strands slanting across. */
function twisted(x: number, half: Half, from: number, to: number): readonly Shape[] {
  const heights = steps(25).map((i) => from + ((to - from) * i) / 24)
  const edge = (side: number): readonly Point[] => heights.map((y) => mm(x + side * half(y), y))
  const seams = steps(Math.max(0, Math.floor((to - from) / 7))).map((i): Shape => {
    const y = from + 3 + 7 * i
    return pen(mm(x - half(y), y - 2.5), mm(x + half(y), y + 2.5))
  })
  return [area([...edge(-1), ...[...edge(1)].reverse()], 'paper'), pen(...edge(-1)), pen(...edge(1)), ...seams]
}

const worn: Half = (y) => 5 - 3 * Math.exp(-((y / 9) ** 2))

/** Broken fibres stand off a cord. */
function frayed(): readonly Shape[] {
  const hairs = [[-1, 9, 14], [-1, 5, 18], [-1, 0, 15], [-1, -4, 19], [-1, -8, 13], [1, 8, 17], [1, 4, 13], [1, 1, 19], [1, -3, 14], [1, -7, 17]] as const
  return [
    ...twisted(0, (y) => (Math.abs(y) < 11 ? 3.6 : 5), -30, 30),
    ...hairs.map(([side, y, reach]) => pen(mm(side * 3.4, y), mm(side * (3.4 + reach * 0.5), y + 1.5), mm(side * reach, y + (reach % 2 === 0 ? -3 : 4)))),
  ]
}

/** A cord rubbed thin, beside what it was. */
const thinned = (): readonly Shape[] => [
  ...twisted(0, worn, -30, 30),
  line([mm(-9, 12), mm(-9, -12)], 0, true), line([mm(9, 12), mm(9, -12)], 0, true),
  pen(mm(-19, 0), mm(-4, 0), mm(-7, 2)), pen(mm(-4, 0), mm(-7, -2)),
  pen(mm(19, 0), mm(4, 0), mm(7, 2)), pen(mm(4, 0), mm(7, -2)),
]

/** Wraps of a gathering knot that stand apart, one of them slid down and open. */
function slipped(): readonly Shape[] {
  const strands = steps(4).flatMap((i) => {
    const x = -9 + 6 * i
    return [line([mm(x * 1.3, 30), mm(x, 16), mm(x, -16), mm(x * 1.5, -30)], 0.0052, false)]
  })
  const wrap = (y: number, tilt: number, reach: number): Shape => line([mm(-reach, y - tilt), mm(-reach * 0.5, y - tilt * 0.4 - 1), mm(reach * 0.5, y + tilt * 0.4 - 1), mm(reach, y + tilt)], 0.0046, false)
  return [...strands, wrap(13, 0.5, 14), wrap(8, 0.5, 14), wrap(1, 1.5, 15), wrap(-7, 3.5, 17), wrap(-17, -4, 19)]
}

/** A hook whose bowl has opened; broken lines show how it was. */
function opened(): readonly Shape[] {
  const arc = (to: number, radius: (angle: number) => number): readonly Point[] =>
    steps(33).map((i) => -Math.PI + ((to + Math.PI) * i) / 32).map((angle) => mm(radius(angle) * Math.sin(angle), -8 - radius(angle) * Math.cos(angle)))
  return [
    line(arc(1.8, () => 13), 0, true),
    line([mm(0, 30), ...arc(0.95, (angle) => 13 + 4 * Math.max(0, angle + 0.7) ** 2)], 0.005, false),
    pen(mm(14, -3), mm(23, -9), mm(19.2, -9.2)), pen(mm(23, -9), mm(21.4, -5.4)),
  ]
}

const DRAWN: Readonly<Record<Sign, () => readonly Shape[]>> = { frayed, thinned, slipped, opened }

/** The picture of a sign. */
export const signPicture = (sign: Sign): Picture => ({ shapes: DRAWN[sign](), bounds: BOUNDS })
