import { HOLDS_LIMIT } from '../catalogue/reserves'
import { USUAL_DOWELS } from '../catalogue/sticks'
import { hangerMass } from '../load/hangerMass'
import { CASES, type CaseCode } from '../load/loadCases'
import { metres, STANDARD_GRAVITY } from '../quantity/si'
import type { Finding } from './finding'
import { stickRoutes } from './links/stick/stickRoutes'
import type { CaseLoad, Solved } from './solved'

/** The same hanger with a stick of another thickness, its weight counted, its jolts as before. */
function withDowel(solved: Solved, diameter: number): Solved {
  const answers = { ...solved.hanger.answers, 'stick.diameter': metres(diameter) }
  const own = hangerMass(answers)
  const before = hangerMass(solved.hanger.answers)
  const loads = Object.fromEntries(CASES.map((code): [CaseCode, CaseLoad] => {
    const load = solved.loads[code]
    // Of several pots the cords of the lower ones stay as they are.
    const hanger = load.hanger + own[load.case.state].high - before[load.case.state].high
    return [code, { ...load, hanger, weight: (load.potted + hanger) * STANDARD_GRAVITY * load.factor }]
  })) as Record<CaseCode, CaseLoad>
  return { ...solved, hanger: { ...solved.hanger, answers }, hangerMass: own, loads }
}

/** The thinnest usual dowel of the same wood that holds in every case, thicker than the present one: STICK_DIAMETER_NEEDED, or STICK_NONE_THICK_ENOUGH. */
export function dowelNeeded(solved: Solved): Finding {
  const thicker = USUAL_DOWELS.map((dowel) => dowel.diameter.value).filter((d) => d > solved.hanger.answers['stick.diameter'] * (1 + 1e-9))
  const needed = thicker.find((diameter) => {
    const tried = withDowel(solved, diameter)
    return stickRoutes(tried).every((r) => r.utilisation !== null && r.utilisation <= HOLDS_LIMIT.table.value)
  })
  return needed === undefined ? { code: 'STICK_NONE_THICK_ENOUGH', most: USUAL_DOWELS.at(-1)?.diameter.value ?? 0 } : { code: 'STICK_DIAMETER_NEEDED', diameter: needed }
}
