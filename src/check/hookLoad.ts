import type { CaseCode } from '../load/loadCases'
import { STANDARD_GRAVITY } from '../quantity/si'
import type { Term } from './linkResult'
import { weightTerms } from './links/weightTerms'
import type { Solved } from './solved'
import { hookShare } from './stickBeam'
import { entering, worked } from './term'

export interface HookLoad {
  readonly load: number
  /** How it came about, by the symbol E. */
  readonly terms: readonly Term[]
}

/** What hangs between one hook and the hanger in a case, N: all of it, or of a stick on two hooks the larger part; with the rest of a row. */
export const belowHook = (solved: Solved, code: CaseCode): HookLoad => shared(solved, code, 0)

/** What one hook bears in a case, N: that, and whatever else hangs from it, at rest but in a gust. */
export const hookLoad = (solved: Solved, code: CaseCode): HookLoad => shared(solved, code, solved.hanger.answers['rail.others'] ?? 0)

function shared(solved: Solved, code: CaseCode, others: number): HookLoad {
  const share = hookShare(solved, code).all
  const terms = weightTerms(solved, code)
  if (share === 1 && others === 0) return { load: solved.loads[code].weight, terms }
  // A gust meets them too, and they pull harder as this one does.
  const blown = code === 'gust'
  const load = solved.loads[code].weight * share + others * STANDARD_GRAVITY * (blown ? solved.loads[code].factor : 1)
  return {
    load,
    terms: [
      ...terms.filter((t) => t.code !== 'demand'),
      ...(share === 1 ? [] : [entering('hookShare', 'k_h', share, '1', 'computed', shareSource(solved))]),
      ...(others === 0 ? [] : [entering('othersMass', 'm_o', others, 'kg', 'your own', 'what else hangs there, all together')]),
      worked('demand', 'E', load, 'N', `W${share === 1 ? '' : ' * k_h'}${others === 0 ? '' : ` + m_o * g${blown ? ' * phi' : ''}`}`, 'what hangs on one hook'),
    ],
  }
}

const shareSource = ({ hanger: { answers } }: Solved): string => (answers['make.arrangement'] === 'row'
  ? 'what one hook bears of the whole row, over this hanger’s weight, the worst of its places'
  : 'larger part that one of the two hooks bears, by lever, the legs sharing unequally')
