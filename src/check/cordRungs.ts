import type { Basis, Grade, Value } from '../catalogue/basis'
import { BREAK_BY_DIAMETER, DENSEST_CORD, FIBRE_PROPERTIES, type Fibre } from '../catalogue/cords'
import { SOAKED_OVER_DRY, TESTS_THAT_SHOW_SCATTER, TESTS_WORTH_MAKING } from '../catalogue/pullTests'
import type { Answers } from '../hanger/fields'
import type { PullTest } from '../hanger/pullTest'
import { cordWeighing, type CordWeighing } from './cordWeighing'
import type { Finding } from './finding'
import type { Capacity, Term } from './linkResult'
import { choosePullTests, impossiblyTied, type PullTestSet, type PullTestSummary } from './pullTests'
import { leastMass, leastOf, ropeRow, ropeTable } from './ropeTable'
import { entering, fromCatalogue, worked } from './term'

/** Ways to know a cord's breaking force, best first. */
export const RUNGS = ['pullTests', 'rated', 'ropeTable', 'weighed', 'diameter'] as const
export type RungCode = (typeof RUNGS)[number]

/** Why a way is not open. */
export const RUNG_GAPS = [
  'noTests', 'notRated', 'notRope', 'noTable', 'noDiameter', 'thinnerThanTable', 'lighterThanTable', 'notWeighed', 'pieceTooLight', 'tooHeavy', 'noTenacity',
] as const
export type RungGap = (typeof RUNG_GAPS)[number]

/** Breaking force of one new strand by one way, N, or why not; findings stand either way. `size`: the diameter it is the strength of, m, where that is not the measured one. */
export type Rung =
  | { readonly ok: true; readonly capacity: Capacity; readonly grade: Grade; readonly tests: PullTestSet | null; readonly size: number | null; readonly findings: readonly Finding[]; readonly terms: readonly Term[] }
  | { readonly ok: false; readonly gap: RungGap; readonly findings: readonly Finding[] }

/** What the ways are tried on: the answers, the log, and how the strand was to be pulled and whether it is wet. */
export interface CordQuestion {
  readonly answers: Answers
  readonly summary: PullTestSummary
  readonly how: PullTest['how']
  readonly wet: boolean
}

const newton = (value: number, basis: Basis, source: string): Capacity => ({ value, unit: 'N', basis, source })
const gap = (code: RungGap): Rung => ({ ok: false, gap: code, findings: [] })
const known = (capacity: Capacity, grade: Grade, findings: readonly Finding[], terms: readonly Term[]): Extract<Rung, { ok: true }> => ({ ok: true, capacity, grade, tests: null, size: null, findings, terms })

function byPullTests({ summary, how, wet }: CordQuestion): Rung {
  const tests = choosePullTests(summary, how, wet)
  if (tests === null) return gap('noTests')
  const { n, mean, scatter, k, characteristic } = tests
  const wrong = impossiblyTied(summary)
  const driedFrom = tests.state === 'soaked' && !wet
  const force = driedFrom ? characteristic / SOAKED_OVER_DRY.value : characteristic
  return {
    ok: true,
    capacity: newton(force, 'your own', `pull tests, ${tests.how === 'tied' ? 'as tied' : 'straight'}, ${tests.state}: what 19 of 20 strands bear`),
    grade: 'tested',
    tests,
    size: null,
    findings: [...testFindings(tests), ...(wrong === null ? [] : [{ code: 'PULL_TESTS_TIED_STRONGER', tied: wrong.tied.mean, straight: wrong.straight.mean } as const])],
    terms: [
      entering('pullTests', 'n_t', n, '1', 'your own', 'pull tests that count'),
      entering('meanPull', 'F_m', mean, 'N', 'your own', 'their mean, each brought to a pull of 10 s'),
      entering('pullScatter', 'V', scatter, '1', 'computed', 'their scatter, not below what is always counted with'),
      entering('pullFactor', 'k_n', k, '1', 'published', 'EN 1990:2002, annex D, table D1'),
      ...(driedFrom ? [fromCatalogue('soakedOverDry', 'q', SOAKED_OVER_DRY)] : []),
      worked('capacity', 'R', force, 'N', `F_m * exp(-k_n * sqrt(log(1 + V^2)))${driedFrom ? ' / q' : ''}`, 'what 19 of 20 strands bear'),
    ],
  }
}

function testFindings({ n, outliers, held, inMass }: PullTestSet): readonly Finding[] {
  const findings: Finding[] = []
  if (n < TESTS_THAT_SHOW_SCATTER.value) findings.push({ code: 'FEW_PULL_TESTS', tests: n, wanted: TESTS_WORTH_MAKING.value })
  for (const row of outliers) findings.push({ code: 'PULL_TEST_OUTLIER', row })
  if (held > 0) findings.push({ code: 'PULL_TEST_HELD', tests: held })
  if (inMass !== null) findings.push({ code: 'PULL_TEST_IN_MASS', force: inMass.force })
  return findings
}

function byRating({ answers }: CordQuestion): Rung {
  const rated = answers['cord.rated']
  return rated === null ? gap('notRated') : known(newton(rated, 'your own', 'rated breaking force of the cord'), 'rated', [], [])
}

/** Most that a cord of this fibre and diameter can weigh, kg/m. */
const mostPerMetre = (fibre: Fibre, diameter: number): number => (DENSEST_CORD[fibre].value * Math.PI * diameter * diameter) / 4

/** What was weighed, unless no cord of the measured diameter can be so heavy. */
function weighing(answers: Answers): { readonly weighed: CordWeighing | null; readonly tooHeavy: Extract<Finding, { code: 'CORD_TOO_HEAVY' }> | null } {
  const weighed = cordWeighing(answers)
  const diameter = answers['cord.diameter']
  if (weighed === null || diameter === null) return { weighed, tooHeavy: null }
  const most = mostPerMetre(answers['cord.fibre'], diameter)
  return { weighed, tooHeavy: weighed.perMetre.low <= most ? null : { code: 'CORD_TOO_HEAVY', perMetre: weighed.perMetre.likely, most } }
}

const measured = (diameter: number): Term => entering('diameter', 'd', diameter, 'm', 'your own', 'measured diameter of the cord')

function byRopeTable({ answers }: CordQuestion): Rung {
  if (answers['cord.make'] !== 'rope') return gap('notRope')
  const rows = ropeTable(answers['cord.fibre'])
  const [first, last] = [rows?.[0], rows?.at(-1)]
  if (rows === null || first === undefined || last === undefined) return gap('noTable')
  const diameter = answers['cord.diameter']
  if (diameter === null) return gap('noDiameter')
  const { weighed, tooHeavy } = weighing(answers)
  if (tooHeavy !== null) return gap('tooHeavy')
  const row = ropeRow(rows, diameter)
  const outside: Finding = { code: 'OUTSIDE_ROPE_TABLE', diameter, least: leastOf(first), most: last.diameter }
  if (row === null) return { ok: false, gap: 'thinnerThanTable', findings: [outside] }
  const least = leastMass(row)
  if (weighed !== null && least !== null && weighed.perMetre.likely < least) {
    return { ok: false, gap: 'lighterThanTable', findings: [{ code: 'CORD_LIGHTER_THAN_TABLE', perMetre: weighed.perMetre.likely, least }] }
  }
  const { value, basis, source } = row.breaking
  const beyond = diameter > Math.max(last.diameter, last.inchDiameter) + 1e-9
  return { ...known(newton(value, basis, source), 'table', beyond ? [outside] : [], [measured(diameter), fromCatalogue('capacity', 'R', row.breaking)]), size: Math.min(diameter, row.diameter) }
}

/** The tenacity counted for a cord of this make; null where no figure was found. */
export function countedTenacity(answers: Pick<Answers, 'cord.fibre' | 'cord.make'>): Value | null {
  const tenacities = FIBRE_PROPERTIES[answers['cord.fibre']].tenacity
  return tenacities === null ? null : tenacities[isTight(answers) ? 'tight' : 'loose']
}

/** Whether its yarns are laid tightly, so that more of their strength reaches the cord. */
export const isTight = ({ 'cord.make': make }: Pick<Answers, 'cord.make'>): boolean => make === 'twisted' || make === 'braided' || make === 'rope'

function byWeight({ answers }: CordQuestion): Rung {
  const { weighed, tooHeavy } = weighing(answers)
  if (weighed === null) return gap(answers['cord.weighedMass'] === null || answers['cord.weighedLength'] === null ? 'notWeighed' : 'pieceTooLight')
  const tenacity = countedTenacity(answers)
  if (tooHeavy !== null) return { ok: false, gap: 'tooHeavy', findings: [tooHeavy] }
  if (tenacity === null) return gap('noTenacity')
  const force = weighed.perMetre.low * tenacity.value
  return known(newton(force, 'computed', `grams per metre times tenacity: ${tenacity.source}`), 'weighed', [], [
    ...weighed.terms,
    fromCatalogue('tenacity', 'c_cord', tenacity),
    worked('capacity', 'R', force, 'N', 'm_cord * c_cord', 'grams per metre times tenacity'),
  ])
}

function byDiameter({ answers }: CordQuestion): Rung {
  const diameter = answers['cord.diameter']
  if (diameter === null) return gap('noDiameter')
  const { weighed, tooHeavy } = weighing(answers)
  const force = BREAK_BY_DIAMETER.value * diameter * diameter
  return known(newton(force, BREAK_BY_DIAMETER.basis, BREAK_BY_DIAMETER.source), 'diameter', tooHeavy === null ? [{ code: 'CORD_BY_DIAMETER', linearDensityKnown: weighed !== null }] : [], [
    measured(diameter),
    fromCatalogue('breakByDiameter', 'c_d', BREAK_BY_DIAMETER),
    worked('capacity', 'R', force, 'N', 'c_d * d^2', 'breaking force by diameter alone'),
  ])
}

/** Every way to know a cord's breaking force, with the function that tries it. */
export const CORD_RUNGS: Readonly<Record<RungCode, (question: CordQuestion) => Rung>> = {
  pullTests: byPullTests, rated: byRating, ropeTable: byRopeTable, weighed: byWeight, diameter: byDiameter,
}
