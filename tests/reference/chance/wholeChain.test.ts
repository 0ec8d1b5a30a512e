import jStat from 'jstat'
import { expect, test } from 'vitest'
import { chanceInterval } from '../../../src/chance/interval'
import { PART_SPREADS } from '../../../src/catalogue/scatter'
import { reportOf } from '../../unit/chance/drawn'
import { checkOf, ORDINARY } from '../../unit/hanger/hangerOf'

/**
 * One part that is far weaker than all others, its strength lognormal, its load known but for the scale: the chance of the whole
 * chain is that of the part, P(R < S) = Phi((ln S - ln R50) / sqrt(sR^2 + sS^2)) for lognormal both (A. M. Freudenthal, Trans. ASCE 121, 1956).
 */
test('a link between hook and ring rated far below all else, against the closed form', () => {
  const patch = { ...ORDINARY, 'cord.rated': '2000 N', 'connector.kind': 'carabiner', 'connector.joint': 'closed', 'connector.rated': '2.2 kgf', 'testHang.mass': '80 kg', 'testHang.slip': '1 mm', 'weighed.mass': '6 kg' } as const
  const check = checkOf(patch)
  const { demand, capacity } = check.links.find((l) => l.id === 'connector.rated.flooded')!
  const { scatter, counted } = PART_SPREADS.rated
  const deviation = Math.sqrt(Math.log(1 + scatter.value ** 2))
  const { solved } = check
  // The hanger's own mass is likely, where the check counts it high; the scale is true to 1 %.
  const likely = (solved.potted.flooded.mass.likely + solved.hangerMass.flooded.likely) / (solved.potted.flooded.mass.high + solved.hangerMass.flooded.high)
  const exact = jStat.normal.cdf(Math.log((demand!.value * likely * counted.value) / capacity!.value) / Math.hypot(deviation, 0.01), 0, 1)
  expect([exact > 0.1, exact < 0.9]).toEqual([true, true])
  const flooded = reportOf(patch, { samples: 400, seed: 4 }).cases.find((c) => c.case === 'flooded')!
  const { low, high } = chanceInterval(flooded.overloaded, 400)
  expect([flooded.fails[0]?.link ?? 'connector', exact > low, exact < high]).toEqual(['connector', true, true])
})
