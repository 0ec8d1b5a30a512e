import { FIBRE_PROPERTIES } from '../catalogue/cords'
import { CAUTIOUS_SCATTER, LEAST_SCATTER } from '../catalogue/pullTests'
import { AGEING_SCATTER, DURATION_SCATTER, KNOT, ROLL, WATERING_SCATTER } from '../catalogue/scatter'
import { TEST_TIME } from '../catalogue/duration'
import type { CordStrength } from '../check/cordStrength'
import type { Factor, Part } from '../check/linkResult'
import type { LoadCase } from '../load/loadCases'
import type { Answers } from '../hanger/fields'
import type { Layout } from './layout'
import { logDeviation, overCounted } from './spread'

/** Least of a cord's strength that time or weather is taken to leave: beyond, no slope or loss says anything. */
const LEAST_LEFT = 0.02

/** What is drawn of a hanger's cord as a whole: every part that is of cord shares it. */
export interface CordNow {
  /** Draws on the roll: its strength over the one counted. */
  readonly roll: (strength: CordStrength) => (z: Float64Array) => number
  /** Strength of one strand over that of its roll. */
  readonly strand: (strength: CordStrength) => (z: number) => number
  /** What a kind of knot leaves, from what is counted of it. */
  readonly knot: (part: Part, counted: number) => (z: Float64Array) => number
  /** What wet, age and time leave in a case, from the factors of its check. */
  readonly left: (factors: readonly Factor[], loadCase: LoadCase) => (z: Float64Array) => number
}

/** Lays out the numbers that a hanger's cord is drawn by. */
export function cordOf(answers: Answers, layout: Layout): CordNow {
  const [roll, ageing, slope, watering] = [layout.take('roll', 1), layout.take('ageing', 1), layout.take('duration', 1), layout.take('watering', 1)]
  const knots = new Map<Part, number>()
  const { duration } = FIBRE_PROPERTIES[answers['cord.fibre']]
  const wets = logDeviation(WATERING_SCATTER.value)
  return {
    roll: (strength) => {
      const over = rollOver(strength)
      return (z) => over(z[roll]!)
    },
    strand: (strength) => {
      const deviation = logDeviation(strandScatter(strength))
      return (z) => Math.exp(deviation * z)
    },
    knot: (part, counted) => {
      const place = knots.get(part) ?? layout.take('knots', 1)
      knots.set(part, place)
      const over = overCounted(KNOT)
      return (z) => Math.min(1, counted * over(z[place]!))
    },
    left: (factors, { code, time }) => {
      const of = (name: 'wet' | 'ageing' | 'drainHole'): number => factors.find((f) => f.code === name)?.value ?? 1
      const [wet, aged, damp] = [of('wet'), of('ageing'), of('drainHole')]
      const scatters = code === 'watered' || code === 'flooded'
      return (z) => {
        const worse = Math.max(0, 1 + AGEING_SCATTER.value * z[ageing]!)
        const hung = Math.min(answers['place.life'], scatters ? time * Math.exp(wets * z[watering]!) : time)
        const lasting = 1 - duration.value * Math.max(0, 1 + DURATION_SCATTER.value * z[slope]!) * Math.max(0, Math.log10(hung / TEST_TIME.value))
        return wet * leftOf(aged, worse) * leftOf(damp, worse) * Math.max(LEAST_LEFT, lasting)
      }
    },
  }
}

/** What is left where so much more or less is lost than is counted. */
const leftOf = (counted: number, worse: number): number => Math.min(1, Math.max(LEAST_LEFT, 1 - (1 - counted) * worse))

/** The roll over what is counted: of tests their mean, as surely as so many show it; else by the way its strength is known. */
function rollOver({ tests, grade, capacity }: CordStrength): (z: number) => number {
  if (tests !== null && capacity !== null) {
    const deviation = logDeviation(tests.scatter) / Math.sqrt(tests.n)
    const median = tests.mean / capacity.value
    return (z) => median * Math.exp(deviation * z)
  }
  return overCounted(grade === 'rated' || grade === 'table' || grade === 'weighed' ? ROLL[grade] : ROLL.diameter)
}

/** One strand against the next of its roll: as tested, the least of a cord made to a rating or table, else the cautious value. */
function strandScatter({ tests, grade }: CordStrength): number {
  if (tests !== null) return tests.scatter
  return grade === 'rated' || grade === 'table' ? LEAST_SCATTER.value : CAUTIOUS_SCATTER.value
}
