import { K_SCATTER_UNKNOWN, LEAST_SCATTER, TESTS_WORTH_MAKING } from '../catalogue/pullTests'
import { HOLDS_LIMIT, LEAST_OVERALL_FACTOR } from '../catalogue/reserves'
import { TENACITY_SPREAD } from '../catalogue/tenacities'
import type { Answers } from '../hanger/fields'
import { cordMassPerMetre } from '../load/cordMass'
import { isTight } from './cordRungs'
import { factorForTests } from './factorForTests'
import type { Finding } from './finding'
import type { LinkResult } from './linkResult'
import { logDeviation } from './pullTests'
import type { Solved } from './solved'
import { verdictFor, worse } from './verdict'

/** Most that such a cord may break at by its mass, N: beyond that no test is worth proposing. */
function mostOf(answers: Answers): number {
  const spread = TENACITY_SPREAD[answers['cord.fibre']] ?? TENACITY_SPREAD.cotton
  return cordMassPerMetre(answers).high * (spread?.[isTight(answers) ? 'tight' : 'loose'].high ?? 0)
}

/** Whether a result falls short for no other reason than what its strength is known by. */
function fallsShortByStrength({ utilisation, grade, overallFactor, verdict }: LinkResult): boolean {
  if (utilisation === null || grade === null) return false
  const low = overallFactor !== null && overallFactor < LEAST_OVERALL_FACTOR.value
  return worse(verdictFor(utilisation, grade), low ? 'just holds' : 'holds') === verdict
}

/** Breaking force at which a tested strand would let a result hold, N. */
function neededBy({ demand, factors, capacity, overallFactor }: LinkResult): number {
  const byUse = (demand?.value ?? 0) / (HOLDS_LIMIT.tested.value * factors.reduce((product, f) => product * f.value, 1))
  return Math.max(byUse, overallFactor === null ? 0 : ((capacity?.value ?? 0) * LEAST_OVERALL_FACTOR.value) / overallFactor)
}

/**
 * Results of a cord whose strength was never pulled: where some do not hold, and a few pull tests within
 * what such a cord may bear would let all of them hold, that is said of each (PULL_TESTS_WOULD_SETTLE).
 */
export function saySettlingTests(solved: Solved, results: readonly LinkResult[]): readonly LinkResult[] {
  const short = results.filter((r) => r.verdict !== 'holds')
  if (short.length === 0 || results.some((r) => r.grade === 'tested' || r.grade === 'rated') || !short.every(fallsShortByStrength)) return results
  const tests = TESTS_WORTH_MAKING.value
  const mean = Math.max(...results.map(neededBy)) * Math.exp(factorForTests(K_SCATTER_UNKNOWN.points, tests) * logDeviation(LEAST_SCATTER.value))
  if (!(mean <= mostOf(solved.hanger.answers))) return results
  const finding: Finding = { code: 'PULL_TESTS_WOULD_SETTLE', tests, mean }
  return results.map((r) => (r.verdict === 'holds' ? r : { ...r, findings: [...r.findings, finding] }))
}
