import { value, type Value } from '../catalogue/basis'
import { BAMBOO, CLEAR_WOOD_DIVISOR, CREEP, GRAIN_SLOPE, GREEN_SHARE, SHEAR_DIVISOR, UNKNOWN_WOOD, WOOD_SCATTER } from '../catalogue/sticks'
import { WOODS, type Wood, type WoodCode } from '../catalogue/woods'
import type { Answers } from '../hanger/fields'
import { lowerTail, slopeShare } from './woodStrength'

/** Means of the wood a stick is made of, as it hangs; Pa. */
export interface StickWood {
  readonly rupture: Value
  readonly shear: Value
  /** Low and crept: for a stick that its own thrust may bow out of line. */
  readonly stiffness: Value
  /** Share of the bending strength that the run of the grain leaves. */
  readonly grain: Value
  readonly bendingDivisor: Value
  readonly shearDivisor: Value
}

const isListed = (wood: string): wood is WoodCode => Object.hasOwn(WOODS, wood)
const leastOf = (of: (wood: Wood) => Value): Value => Object.values(WOODS as Readonly<Record<string, Wood>>).map(of).reduce((least, v) => (v.value < least.value ? v : least))

/** Whether the wood hangs wet: fresh, or out in the rain. */
export const hangsWet = (answers: Pick<Answers, 'stick.state' | 'place.exposure'>): boolean => answers['stick.state'] === 'green' || answers['place.exposure'] === 'outdoors'

/** What is counted of a stick's wood: that of its table, the weakest one listed where it is not known, or bamboo. */
export function stickWood(answers: Answers): StickWood {
  const code = answers['stick.wood']
  const bamboo = code === 'bamboo'
  const listed: Wood | null = isListed(code) ? WOODS[code] : null
  const soaked = (dry: Value): Value => (hangsWet(answers) ? value(dry.value * GREEN_SHARE.value, dry.unit, 'computed', `${dry.source}; ${GREEN_SHARE.source}`) : dry)
  const low = (v: { readonly low: number; readonly unit: string; readonly basis: Value['basis']; readonly source: string }): Value => value(v.low, v.unit, v.basis, v.source)
  const elasticity = bamboo ? low(BAMBOO.elasticity) : listed?.elasticity ?? leastOf((w) => w.elasticity)
  const kind = listed?.kind ?? 'hardwood'
  const slope = bamboo ? GRAIN_SLOPE.straight : GRAIN_SLOPE[answers['stick.grain']]
  const green = hangsWet(answers) ? listed?.ruptureGreen ?? null : null
  return {
    rupture: green ?? soaked(bamboo ? low(BAMBOO.rupture) : listed?.rupture ?? UNKNOWN_WOOD),
    shear: soaked(bamboo ? low(BAMBOO.shear) : listed?.shear ?? leastOf((w) => w.shear)),
    stiffness: value((soaked(elasticity).value * lowerTail(WOOD_SCATTER.elasticity.value)) / CREEP.high, 'Pa', 'computed', `${elasticity.source}: low value, crept`),
    grain: value(slopeShare(slope.value) ?? 0, '1', 'from memory', `slope of grain ${slope.value} (${slope.source})`),
    bendingDivisor: CLEAR_WOOD_DIVISOR[kind],
    shearDivisor: SHEAR_DIVISOR[kind],
  }
}
