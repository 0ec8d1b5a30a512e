import type { Grade } from '../catalogue/basis'
import { DEFAULT_STIFFNESS, FIBRE_PROPERTIES } from '../catalogue/cords'
import type { Answers } from '../hanger/fields'
import type { Hanger } from '../hanger/hanger'
import type { PullTest } from '../hanger/pullTest'
import { cordMassPerMetre } from '../load/cordMass'
import { newtons, type Newtons } from '../quantity/si'
import { CORD_RUNGS, RUNGS, type CordQuestion } from './cordRungs'
import type { Finding } from './finding'
import type { Capacity, Factor, Term } from './linkResult'
import { pullTestSummary, type PullTestSet, type PullTestSummary } from './pullTests'

/** Breaking force of one new strand, with the way it is known; null if it is not. */
export interface CordStrength {
  readonly capacity: Capacity | null
  readonly grade: Grade
  /** The pull tests it rests on; null where it rests on none. */
  readonly tests: PullTestSet | null
  /** Whether it is that of a strand pulled as tied, which holds the knots’ share already. */
  readonly tied: boolean
  /** The diameter it is the strength of, m, where that is not the measured one: that of the rope’s size in its table. */
  readonly size: number | null
  readonly findings: readonly Finding[]
  readonly terms: readonly Term[]
}

/** A cord's strength in a leg, where tests as tied come first, and in the wraps, where tests of a straight strand do. */
export interface CordStrengths {
  readonly leg: Readonly<Record<'dry' | 'wet', CordStrength>>
  readonly wrap: Readonly<Record<'dry' | 'wet', CordStrength>>
  /** What a strand is likely to break at, N, for its stiffness; null if nothing is known. */
  readonly likely: Newtons | null
}

/** The first of the ways that is open, best first; with the findings of those passed over. */
function firstOpen(question: CordQuestion): CordStrength {
  const findings: Finding[] = []
  for (const code of RUNGS) {
    const rung = CORD_RUNGS[code](question)
    findings.push(...rung.findings)
    if (rung.ok) return { capacity: rung.capacity, grade: rung.grade, tests: rung.tests, tied: rung.tests?.how === 'tied', size: rung.size, findings, terms: rung.terms }
  }
  return { capacity: null, grade: 'diameter', tests: null, tied: false, size: null, findings: [...findings, { code: 'CORD_UNKNOWN' }], terms: [] }
}

/**
 * What is known of a hanger's cord, N per strand, best first: own pull tests, rated, the rope table of
 * its fibre, grams per metre times tenacity, diameter only. Findings: of the log (FEW_PULL_TESTS,
 * PULL_TEST_…), OUTSIDE_ROPE_TABLE, CORD_LIGHTER_THAN_TABLE, CORD_TOO_HEAVY, CORD_BY_DIAMETER, CORD_UNKNOWN.
 */
export function cordStrengths({ answers, pullTests }: Hanger): CordStrengths {
  const summary = pullTestSummary(pullTests, answers['cord.fibre'])
  const both = (how: PullTest['how']): CordStrengths['leg'] => {
    const of = (wet: boolean): CordStrength => firstOpen({ answers, summary, how, wet })
    return { dry: of(false), wet: of(true) }
  }
  const wrap = both('straight')
  return { leg: both('tied'), wrap, likely: likelyBreak(answers, wrap.dry) }
}

const NO_TESTS: PullTestSummary = { sets: [] }

/**
 * What one strand is likely to break at. Not the value that counts: a low strength is safe, a low
 * stiffness is not. Of tests their mean; a strand tested as tied is stronger straight.
 */
function likelyBreak(answers: Answers, straight: CordStrength): Newtons | null {
  if (straight.tests?.how === 'straight') return straight.tests.mean
  const untested = straight.tests === null ? straight : firstOpen({ answers, summary: NO_TESTS, how: 'straight', wet: false })
  const tied = straight.tests?.mean ?? 0
  const { capacity, grade } = untested
  if (capacity === null) return tied > 0 ? newtons(tied) : null
  if (grade !== 'diameter') return newtons(Math.max(tied, capacity.value))
  const perTex = (FIBRE_PROPERTIES[answers['cord.fibre']].tenacity ?? FIBRE_PROPERTIES.cotton.tenacity)?.tight.value ?? 0
  return newtons(Math.max(tied, capacity.value, cordMassPerMetre(answers).likely * perTex))
}

/** The strength in a case that leaves the cord dry, or wet. */
export const inCase = (strengths: CordStrengths['leg'], loadCase: { readonly wet: boolean }): CordStrength => strengths[loadCase.wet ? 'wet' : 'dry']

/** The factors that still apply to a strength: tests of soaked strands hold the wet already. */
export const stillApplying = (cord: CordStrength, factors: readonly Factor[]): readonly Factor[] =>
  (cord.tests?.state === 'soaked' ? factors.filter((f) => f.code !== 'wet') : factors)

/** Secant stiffness EA of one strand, N: likely breaking force over strain at break; a 4 mm cotton cord where nothing is known. */
export const strandStiffness = (answers: Answers, { likely }: CordStrengths): number =>
  (likely === null ? DEFAULT_STIFFNESS.value : likely / FIBRE_PROPERTIES[answers['cord.fibre']].strainAtBreak.value)
