import type { Value } from '../catalogue/basis'
import { GUST_SPEED } from '../catalogue/wind'
import type { Answers } from '../hanger/fields'
import { windLoad, type WindLoad } from '../load/windLoad'
import { metresPerSecond, newtons, type Newtons, type Radians } from '../quantity/si'
import { steadySwing, suddenSwing, type InWind } from '../statics/wind'

/** A hanger in the gust it is checked for; lightest when dry, and leaning most then. */
export interface InGust extends WindLoad {
  /** The gust of its place, as the catalogue knows it. */
  readonly gust: Value
  /** Lean in a steady wind of that speed, and the farthest swing where it comes all at once, dry. */
  readonly lean: Radians
  readonly swing: Radians
  /** Lean just watered. */
  readonly leanWatered: Radians
  /** Whether it pushes harder than the freshly watered hanger weighs. */
  readonly throws: boolean
}

/** Least weights of the hanger, N. */
export interface LightWeights {
  readonly dry: number
  readonly watered: number
}

/** What a gust does to it, with the pots that hang under it; null under a roof. */
export function inGust(answers: Answers, light: LightWeights, below: readonly Answers[]): InGust | null {
  if (answers['place.exposure'] !== 'outdoors') return null
  const gust = GUST_SPEED[answers['place.wind']]
  const wind = below.map((pot) => windLoad(pot, metresPerSecond(gust.value))).reduce(together, windLoad(answers, metresPerSecond(gust.value)))
  const dry = newtons(light.dry)
  const leanOf = (weight: Newtons): Radians => steadySwing(weight, wind.force).lean
  return { ...wind, gust, lean: leanOf(dry), swing: suddenSwing(dry, wind.force).lean, leanWatered: leanOf(newtons(light.watered)), throws: wind.force > light.watered }
}

/** Two pots in one wind, of one shape and with leaves that fold alike: their silhouettes add up. */
function together(a: WindLoad, b: WindLoad): WindLoad {
  const both = (part: 'pot' | 'leaves' | 'cords'): InWind => ({ ...a[part], area: a[part].area + b[part].area })
  return { ...a, pot: both('pot'), leaves: both('leaves'), cords: both('cords'), force: newtons(a.force + b.force) }
}
