import type { CheckResult } from '../check/checkHanger'
import { testHangFaults, testHangMass } from '../check/testHang'
import type { Solved } from '../check/solved'
import type { Inspection } from '../hanger/inspection'
import { CALCULATED_TEXT, TESTED_BEFORE_TEXT, TESTED_FIRST_TEXT, testedLessText, testedSharedText, testHungText } from '../words/sheetCustomer'
import type { FigureMark } from './block'

/** What hung in a test that counts, kg; null where there was none. */
export function countedTestMass({ solved }: CheckResult): number | null {
  const mass = testHangMass(solved.hanger.answers)
  return mass === null || testHangFaults(solved, true)?.length !== 0 ? null : mass
}

const HARMS: ReadonlySet<Inspection['what']> = new Set<Inspection['what']>(['frayed', 'thinned', 'slipped', 'strandGone', 'repaired'])

/** Whether it may no longer be the hanger that was tested: damaged or mended since, or on days that nobody noted. */
function changedSince(inspections: readonly Inspection[], tested: string | null): boolean {
  return inspections.some(({ what, date }) => HARMS.has(what) && (tested === null || date === null || (what === 'repaired' ? date > tested : date >= tested)))
}

const massesOf = ({ tiers }: Solved): readonly number[] => tiers.map(({ alone }) => alone.potted.watered.mass.high)

/** How the weight of a hanger is known: by a test hang that counts, at least as heavy in every pot's place; else by reckoning, and why. */
export interface KnownWeight {
  readonly mark: FigureMark
  readonly marked: string
}

/**
 * `watered`: the weight that is told, kg; `limit`: the check with it; `own`: the check of the hanger as it is, whose pots
 * shared out what hung in a test.
 */
export function knownWeight(watered: number, limit: CheckResult, own: CheckResult): KnownWeight {
  const { answers, inspections } = limit.solved.hanger
  const calculated = (marked: string): KnownWeight => ({ mark: 'calculated', marked })
  const mass = countedTestMass(limit)
  if (mass === null) return calculated(CALCULATED_TEXT)
  if (changedSince(inspections, answers['testHang.date'])) return calculated(TESTED_BEFORE_TEXT)
  if (limit.solved.tiers.length > 0 && answers['tiers.tested'] === 'first') return calculated(TESTED_FIRST_TEXT)
  const [pots, shares] = [massesOf(limit.solved).map((pot, i) => (i === 0 ? watered : pot)), massesOf(own.solved)]
  const all = shares.reduce((sum, share) => sum + share, 0)
  if (pots.some((pot, i) => (mass * (shares[i] ?? 0)) / all < pot)) return calculated(mass < pots.reduce((sum, pot) => sum + pot, 0) ? testedLessText(mass) : testedSharedText(mass))
  if (pots.length === 0 && mass < watered) return calculated(testedLessText(mass))
  return { mark: 'testHung', marked: testHungText({ mass, time: answers['testHang.time'], date: answers['testHang.date'] }) }
}
