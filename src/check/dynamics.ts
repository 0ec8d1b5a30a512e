import { BUMP_ANGLE, TUG_ANGLE, TUG_PULL, type Puller } from '../catalogue/jolts'
import { BUMP_SIDE_PULL } from '../load/loadCases'
import { metres, newtons, radians } from '../quantity/si'
import { tug } from '../statics/tug'
import { suddenAside, suddenSwing } from '../statics/wind'
import type { InGust, LightWeights } from './inGust'
import type { CaseLoad } from './solved'

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
export function blown(load: CaseLoad, { force }: InGust, light: LightWeights): CaseLoad {
  const weight = atRest(load)
  const weights = [weight, light.dry].map(newtons)
  const pull = Math.max(...weights.map((w) => suddenSwing(w, force).tension))
  const aside = weights.map((w) => suddenAside(w, force)).reduce((a, b) => (b.aside > a.aside ? b : a))
  return {
    ...load,
    weight: pull, factor: pull / weight, factorSource: 'gust all at once: (3 sqrt(W^2 + F^2) - 2 W) / W, heaviest or lightest, whichever is more',
    side: aside.aside, sideShare: aside.aside / weight, sideSource: 'side pull of a gust all at once, lightest, over the weight at its heaviest',
    sideDown: aside.down,
  }
}

/** Forces are all that is asked of the tug: where it acts decides the lean only. */
const ANYWHERE = metres(1)

/** Somebody pulls at it: P more straight down, or P sin a aside. */
export function tugged(load: CaseLoad, puller: Puller): CaseLoad {
  const weight = atRest(load)
  const pull = newtons(TUG_PULL[puller].value)
  const pulled = (angle: number) => tug({ weight: newtons(weight), pull, angle: radians(angle), centreDepth: ANYWHERE, pullDepth: ANYWHERE })
  const [straight, askew] = [pulled(0), pulled(TUG_ANGLE.value)]
  // Neither lifts: both go downwards.
  if (!straight.ok || !askew.ok) return load
  return {
    ...load,
    weight: straight.tension, factor: straight.tension / weight, factorSource: puller === 'child' ? 'a child hangs on it: (W + 250 N) / W' : 'a cat jumps in: (W + 98 N) / W',
    side: askew.aside, sideShare: askew.aside / weight, sideSource: 'pull at 30 degrees from straight down, P sin a, over the weight',
    sideDown: askew.down,
  }
}
