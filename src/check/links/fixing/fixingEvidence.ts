import type { CaseCode } from '../../../load/loadCases'
import type { Finding } from '../../finding'
import type { Evidence, LinkResult, Term } from '../../linkResult'
import type { PlaceDemand, PlaceDemandOutcome } from '../../placeLoad'
import type { Solved } from '../../solved'
import { worked } from '../../term'
import type { Verdict } from '../../verdict'
import { assessPlace } from './assessPlace'

/** What all results of the fixing share. */
export const fixingBase = (code: CaseCode): Pick<Evidence, 'link' | 'side' | 'case' | 'overallFactor'> => ({ link: 'fixing', side: 'place', case: code, overallFactor: null })

/** Demand and capacity on one scale, N, with the lines that say how. */
export interface OneScale {
  readonly demand: { readonly value: number; readonly unit: 'N' }
  readonly capacity: number
  readonly terms: readonly Term[]
}

/** What a fixing bears straight out and along, N, each with its lines; they end in the symbols R and R_V. */
export interface TwoWays {
  readonly pull: number
  readonly pullTerms: readonly Term[]
  readonly shear: number
  readonly shearTerms: readonly Term[]
}

/**
 * Pull and shear at once by the straight line N / N_R + V / V_R <= 1: the demand is the pull that uses
 * the fixing as much as both together, N + V N_R / V_R. Where only one acts, that one.
 */
export function atOnce({ pull, shear }: PlaceDemand, bears: TwoWays): OneScale {
  const newtons = (value: number) => ({ value, unit: 'N' }) as const
  if (pull === 0) {
    return {
      demand: newtons(shear), capacity: bears.shear,
      terms: [worked('demand', 'E', shear, 'N', 'E_V', 'nothing pulls it out'), ...bears.shearTerms, worked('capacity', 'R', bears.shear, 'N', 'R_V', 'along the wall')],
    }
  }
  if (shear === 0) return { demand: newtons(pull), capacity: bears.pull, terms: [worked('demand', 'E', pull, 'N', 'E_N', 'straight out'), ...bears.pullTerms] }
  const both = bears.shear === 0 ? pull + shear : pull + (shear * bears.pull) / bears.shear
  return {
    demand: newtons(both), capacity: bears.pull,
    terms: [
      ...bears.pullTerms, ...bears.shearTerms,
      worked('demand', 'E', both, 'N', bears.shear === 0 ? 'E_N + E_V' : 'E_N + E_V * R / R_V', 'the pull that uses the fixing as much as pull and shear together: N / N_R + V / V_R'),
    ],
  }
}

/** A result without a capacity: why, and how bad that is at least. */
export function withoutCapacity(solved: Solved, code: CaseCode, asked: PlaceDemandOutcome, findings: readonly Finding[], atLeast: Verdict): LinkResult {
  const force = asked.ok ? Math.hypot(asked.pull, asked.shear) : null
  const formula = !asked.ok || asked.shear === 0 ? 'E_N' : asked.pull === 0 ? 'E_V' : 'sqrt(E_N^2 + E_V^2)'
  return assessPlace(solved, {
    ...fixingBase(code), part: 'whole', demand: force === null ? null : { value: force, unit: 'N' }, capacity: null, factors: [], grade: 'table', atLeast, findings,
    terms: [...asked.terms, ...(force === null ? [] : [worked('demand', 'E', force, 'N', formula, 'what pulls on the fixing')])],
  })
}
