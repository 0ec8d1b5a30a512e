import { BUMP_ANGLE, TUG_ANGLE, TUG_PULL, type Puller } from '../catalogue/jolts'
import { BUMP_SIDE_PULL } from '../load/loadCases'
import { metres, newtons, radians } from '../quantity/si'
import { tug } from '../statics/tug'
import { suddenAside, suddenSwing, type InWind } from '../statics/wind'
import type { InGust, LightWeights } from './inGust'
import type { Term } from './linkResult'
import type { CaseLoad } from './solved'
import { entering, fromCatalogue, worked } from './term'

const atRest = ({ weight, factor }: CaseLoad): number => weight / factor

/** At the end of a bump's swing: of the weight W sin a cos a aside and W cos^2 a down. */
export const bumped = (load: CaseLoad): CaseLoad => ({
  ...load,
  side: atRest(load) * BUMP_SIDE_PULL,
  sideShare: BUMP_SIDE_PULL,
  sideSource: 'side pull over the weight at the end of a swing of 30 degrees, sin a cos a',
  sideDown: atRest(load) * Math.cos(BUMP_ANGLE.value) ** 2,
})

/**
 * A gust all at once on a hanger at its heaviest and at its lightest, of each the worse: a heavy one pulls
 * harder down, a light one is thrown farther aside.
 */
export function blown(load: CaseLoad, gust: InGust, light: LightWeights): CaseLoad {
  const { force } = gust
  const weight = atRest(load)
  const weights = [weight, light.dry].map(newtons)
  const pull = Math.max(...weights.map((w) => suddenSwing(w, force).tension))
  const side = Math.max(...weights.map((w) => suddenAside(w, force)))
  return {
    ...load,
    weight: pull, factor: pull / weight, factorSource: 'gust all at once: (3 sqrt(W^2 + F^2) - 2 W) / W, heaviest or lightest, whichever is more',
    factorTerms: gustTerms(gust, light, pull / weight),
    side, sideShare: side / weight, sideSource: 'greatest side pull in the swing of a gust all at once, heaviest or lightest, over the weight at its heaviest',
    // Greatest down and greatest aside come a little apart in the swing; here they count together.
    sideDown: pull,
  }
}

const caught = ({ area, drag, share }: InWind): number => area * drag * share

function gustTerms({ gust, pressure, pot, leaves, cords, force }: InGust, light: LightWeights, factor: number): readonly Term[] {
  const pullOf = (weight: string): string => `3 * sqrt(${weight}^2 + F_w^2) - 2 * ${weight}`
  return [
    fromCatalogue('gustSpeed', 'V_w', gust),
    worked('gustPressure', 'q_gust', pressure, 'Pa', '0.613 * V_w^2', 'velocity pressure (ASCE 7)'),
    entering('potInWind', 'A_pot', caught(pot), 'm2', 'from memory', 'silhouette of the pot times its drag coefficient'),
    entering('leavesInWind', 'A_leaf', caught(leaves), 'm2', 'from memory', 'width and height of the leaves, times what is left of them as they fold'),
    entering('cordsInWind', 'A_cord', caught(cords), 'm2', 'from memory', 'silhouette of the cords times their drag coefficient'),
    worked('gustForce', 'F_w', force, 'N', 'q_gust * (A_pot + A_leaf + A_cord)', 'push of the wind'),
    entering('lightWeight', 'W_dry', light.dry, 'N', 'computed', 'weight of the hanger dry, low values'),
    worked('caseFactor', 'phi', factor, '1', `max(${pullOf('((m_pot + m_h) * g)')}, ${pullOf('W_dry')}) / ((m_pot + m_h) * g)`, 'gust all at once, on the hanger at its heaviest or its lightest'),
  ]
}

/** Forces are all that is asked of the tug: where it acts decides the lean only. */
const ANYWHERE = metres(1)

/** Somebody pulls at it: P more straight down, or P sin a aside. */
export function tugged(load: CaseLoad, puller: Puller): CaseLoad {
  const weight = atRest(load)
  const of = TUG_PULL[puller]
  const pull = newtons(of.value)
  const pulled = (angle: number) => tug({ weight: newtons(weight), pull, angle: radians(angle), centreDepth: ANYWHERE, pullDepth: ANYWHERE })
  const [straight, askew] = [pulled(0), pulled(TUG_ANGLE.value)]
  // Neither lifts: both go downwards.
  if (!straight.ok || !askew.ok) return load
  return {
    ...load,
    weight: straight.tension, factor: straight.tension / weight, factorSource: 'pulled straight down besides: (W + P) / W',
    factorTerms: [
      fromCatalogue('tugPull', 'P_t', of),
      worked('caseFactor', 'phi', straight.tension / weight, '1', '((m_pot + m_h) * g + P_t) / ((m_pot + m_h) * g)', 'pulled straight down besides'),
    ],
    side: askew.aside, sideShare: askew.aside / weight, sideSource: 'pull at 30 degrees from straight down, P sin a, over the weight',
    sideDown: askew.down,
  }
}
