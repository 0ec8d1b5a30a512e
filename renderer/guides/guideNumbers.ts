import { LEAST_TEST_TIME, lengthText, massLeastText, MOST_TEST_SLIP, pullInPlaceMass, TESTS_WORTH_MAKING, testMassFor, timeText, type CheckResult } from '#core'

/** The numbers that guides tell, as texts, each the core’s own; null while nothing could be checked. */
export interface GuideNumbers {
  /** Mass of a test hang that settles this hanger. */
  readonly testMass: string | null
  readonly testTime: string
  readonly slip: string
  /** Pull tests worth making. */
  readonly pulls: string
  /** What to pull the fixing with. */
  readonly pullInPlace: string | null
}

/** A rail or branch that nobody knows asks for more than a screw does. */
function pullFor({ links, solved }: CheckResult): number {
  const asked = links.flatMap(({ findings }) => findings).flatMap((finding) => (finding.code === 'RAIL_NEEDS_RATING' || finding.code === 'BRANCH_UNTESTED' ? [finding.testMass] : []))
  return Math.max(pullInPlaceMass(solved), ...asked)
}

export const guideNumbers = (check: CheckResult | null): GuideNumbers => ({
  testMass: check === null ? null : massLeastText(testMassFor(check.solved)),
  testTime: timeText(LEAST_TEST_TIME.value),
  slip: lengthText(MOST_TEST_SLIP.value),
  pulls: String(TESTS_WORTH_MAKING.value),
  pullInPlace: check === null ? null : massLeastText(pullFor(check)),
})
