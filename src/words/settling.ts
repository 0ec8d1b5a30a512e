import type { Finding, FindingCode } from '../check/finding'
import type { FieldPath } from '../hanger/fields'

type Settled = { readonly [C in FindingCode]?: (finding: Extract<Finding, { code: C }>) => readonly FieldPath[] }

const TEST_HANG: readonly FieldPath[] = ['testHang.mass', 'testHang.time', 'testHang.slip']

/** Findings that say what is not known, each with the answers that would settle it; none where only a test by hand does. */
const SETTLED: Settled = {
  NO_POT_YET: () => ['weighed.mass', 'pot.rim'],
  NO_HANGER_YET: () => ['make.legs', 'make.strands'],
  ANSWER_NEEDED: ({ path }) => [path],
  ASSUMED_PART_HOLDS: ({ path }) => [path],
  ASSUMED_PART_FAILS: ({ path }) => [path],
  WEIGHED_STATE_ASSUMED: () => ['weighed.state'],
  CORD_UNKNOWN: () => ['cord.linearDensity', 'cord.fibre', 'cord.diameter'],
  CORD_BY_DIAMETER: ({ linearDensityKnown }) => (linearDensityKnown ? ['cord.fibre'] : ['cord.linearDensity', 'cord.fibre']),
  CORD_TOO_HEAVY: () => ['cord.linearDensity', 'cord.diameter'],
  LOWER_NOT_WEIGHED: () => ['second.mass'],
  TIERS_HELD_BY_WRAPS: ({ assumed }) => (assumed ? ['tiers.how'] : ['tiers.tested']),
  GRIP_UNTESTED: () => TEST_HANG,
  TEST_HANG_TOO_SHORT: () => ['testHang.time'],
  TEST_HANG_SLIP_UNSAID: () => ['testHang.slip'],
  RING_UNRATED: () => ['testHang.mass', 'ring.rated'],
  RING_LEVEL_UNTESTED: () => ['testHang.mass'],
  HOOK_UNMARKED: () => ['hook.metal', 'testHang.mass'],
  CONNECTOR_UNRATED: () => ['connector.rated', 'testHang.mass'],
  STICK_UNRATED: () => ['testHang.mass', 'stick.wood'],
  BAMBOO_HOLLOW_UNKNOWN: () => ['stick.hollow'],
  SUBSTRATE_UNKNOWN: () => ['place.substrate'],
  FIXING_KIND_UNKNOWN: () => ['fixing.kind'],
  RAIL_NEEDS_RATING: () => ['fixing.rated', 'fixing.proof'],
  BRANCH_UNTESTED: () => ['fixing.proof'],
  GO_ROUND_INSTEAD: () => ['fixing.rated'],
  RATING_FOR_SHEAR: () => ['fixing.rated', 'fixing.ratedFor'],
  RATING_WAY_UNSAID: () => ['fixing.ratedFor'],
  LOW_TABLE_FIGURE: () => ['fixing.rated'],
  BOARD_NEEDS_RATING: () => ['fixing.rated'],
  MASONRY_NEEDS_RATING: () => ['fixing.rated'],
  BRACKET_NO_LEVER: () => ['bracket.top'],
  BRACKET_UNRATED: () => ['bracket.rated', 'bracket.thick', 'bracket.high'],
  PULL_IN_PLACE: () => ['fixing.proof'],
  JUTE_NEVER_DRY: ({ holeKnown }) => (holeKnown ? [] : ['pot.drainage']),
  SHAPE_NOT_RECKONED: () => [],
  PANEL_SEAT_LOOSE: () => [],
  JOIN_UNKNOWN: () => [],
  FEW_PULL_TESTS: () => [],
  PULL_TESTS_WOULD_SETTLE: () => [],
}

const settledBy = (finding: Finding): readonly FieldPath[] | null =>
  (SETTLED[finding.code] as ((f: Finding) => readonly FieldPath[]) | undefined)?.(finding) ?? null

/** Whether a finding says what would settle a verdict: an answer, a weighing or a test. */
export const isSettling = (finding: Finding): boolean => settledBy(finding) !== null && (finding.code !== 'JUTE_NEVER_DRY' || !finding.holeKnown)

/** The answers that would settle what was found, each once, in the order of the findings. */
export const settlingFields = (findings: readonly Finding[]): readonly FieldPath[] => [...new Set(findings.flatMap((finding) => settledBy(finding) ?? []))]
