import type { FieldPath, Finding, LinkCode } from '#core'

/** What is done in steps, with a result that is written down. */
export const STEP_GUIDES = ['weighing', 'pullTest', 'testHang', 'pullInPlace'] as const
export type StepGuide = (typeof STEP_GUIDES)[number]

/** Steps of every such guide, in their order. */
export const STEPS = ['need', 'ready', 'doing', 'writing', 'changed'] as const
export type Step = (typeof STEPS)[number]

interface Writes {
  /** Fields the result is written in; none where it goes into the log of pull tests. */
  readonly fields: readonly FieldPath[]
  /** Parts that are told of at the end in any case; others where their verdict changes. */
  readonly links: readonly LinkCode[]
}

export const WRITES: Readonly<Record<StepGuide, Writes>> = {
  weighing: { fields: ['weighed.mass', 'weighed.state', 'weighed.tare'], links: ['load'] },
  pullTest: { fields: [], links: ['leg', 'gatheringTurn', 'wrapHoop', 'topCord', 'ringCord'] },
  testHang: { fields: ['testHang.mass', 'testHang.volume', 'testHang.time', 'testHang.slip', 'testHang.date', 'tiers.tested'], links: ['gatheringGrip'] },
  pullInPlace: { fields: ['fixing.proof'], links: ['fixing'] },
}

/** Fields beside which the steps are offered. */
const STEPS_AT: ReadonlyMap<FieldPath, StepGuide> = new Map([['weighed.mass', 'weighing'], ['testHang.mass', 'testHang'], ['testHang.slip', 'testHang'], ['fixing.proof', 'pullInPlace']])
export const stepsAt = (path: FieldPath): StepGuide | null => STEPS_AT.get(path) ?? null

/** What a guide would settle, by the findings that ask for it. */
const SETTLED_BY: Readonly<Partial<Record<Finding['code'], StepGuide>>> = {
  WEIGHED_TOO_LIGHT: 'weighing',
  WEIGHED_STATE_ASSUMED: 'weighing',
  PULL_TESTS_WOULD_SETTLE: 'pullTest',
  FEW_PULL_TESTS: 'pullTest',
  PULL_TEST_OUTLIER: 'pullTest',
  PULL_TESTS_TIED_STRONGER: 'pullTest',
  JOIN_UNKNOWN: 'pullTest',
  GRIP_UNTESTED: 'testHang',
  TEST_HANG_TOO_SHORT: 'testHang',
  TEST_HANG_SLIPPED: 'testHang',
  TEST_HANG_SLIP_UNSAID: 'testHang',
  RING_UNRATED: 'testHang',
  RING_LEVEL_UNTESTED: 'testHang',
  HOOK_UNMARKED: 'testHang',
  CONNECTOR_UNRATED: 'testHang',
  STICK_UNRATED: 'testHang',
  ROW_TESTED: 'testHang',
  PULL_IN_PLACE: 'pullInPlace',
  RAIL_NEEDS_RATING: 'pullInPlace',
  BRANCH_UNTESTED: 'pullInPlace',
}
export const guideSettling = ({ code }: Finding): StepGuide | null => SETTLED_BY[code] ?? null

/** Parts whose card offers a guide whatever was found. */
const ALWAYS_AT: Readonly<Partial<Record<LinkCode, StepGuide>>> = { load: 'weighing', leg: 'pullTest', gatheringGrip: 'testHang' }
export const guideOfPart = (link: LinkCode): StepGuide | null => ALWAYS_AT[link] ?? null
