import type { CaseCode } from '../load/loadCases'
import { stickMass } from '../load/stickMass'
import { STANDARD_GRAVITY } from '../quantity/si'
import type { Solved } from './solved'

/** Several hangers beside one another. */
export interface Row {
  /** Where each hangs, m from the middle of the row. */
  readonly places: readonly number[]
  /** Weight of each of the others over this hanger's in the case, all at rest but in a gust. */
  readonly other: number
  /** Weight of the whole row over this hanger's, one taken down where the case says so. */
  readonly carried: number
}

/**
 * The row a hanger hangs in, in one case; null where it hangs alone. The others are like it unless their mass
 * was given; a jolt meets one of them at a time, a gust all. The stick counts with this hanger, once.
 */
export function rowOf(solved: Pick<Solved, 'hanger' | 'loads' | 'potted' | 'hangerMass'>, code: CaseCode): Row | null {
  const { answers } = solved.hanger
  if (answers['make.arrangement'] !== 'row') return null
  const { weight, factor, case: { state } } = solved.loads[code]
  const count = answers['row.count']
  const alike = solved.potted[state].mass.high + solved.hangerMass[state].high - stickMass(answers, state).high
  const other = answers['row.others'] ?? alike
  // A gust meets them all, and each pulls harder as this one does.
  const share = (other * STANDARD_GRAVITY * (code === 'gust' ? factor : 1)) / weight
  return {
    places: Array.from({ length: count }, (_, i) => answers['row.spacing'] * (i - (count - 1) / 2)),
    other: share,
    carried: 1 + share * (count - (code === 'neighbourDown' ? 2 : 1)),
  }
}
