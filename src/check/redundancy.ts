import { TIPS_ABOVE } from '../catalogue/seat'
import { radians, STANDARD_GRAVITY } from '../quantity/si'
import { withoutLeg } from '../statics/seat/withoutEach'
import { inCase, stillApplying } from './cordStrength'
import type { Outcome } from './finding'
import { strandsGone } from './inspected'
import { panelRedundancy, worseOutcome } from './panel/panelRedundancy'
import { legSections, weakestSection } from './sections'
import { slingInput } from './slingBattery'
import { legStiffness } from './solve'
import type { CaseSling, Solved } from './solved'
import { centreOfAll } from './tiers/centreOfAll'
import { cordFactors } from './timeFactors'

/** What happens if one leg, or one strand of a leg, gives way. A statement, not a verdict. */
export interface Redundancy {
  readonly leg: Outcome
  readonly strand: Outcome
}

/**
 * What a hanger does when one leg or one strand parts, just watered or standing in water, with the reserve of an accident:
 * a leg that goes leaves the pot hanging level, tipping, or falling, where the others can bear neither
 * the load nor its jolt; a strand whose leg cannot do without it takes the leg along. `unknown` where
 * the cord's strength is not known or the sling was not solved.
 */
export function redundancy(solved: Solved): Redundancy {
  const { slings, tiers } = solved
  if (tiers.length > 0) {
    const each = tiers.map(({ hung }) => redundancy(hung))
    return { leg: worseOutcome(each.map(({ leg }) => leg)), strand: worseOutcome(each.map(({ strand }) => strand)) }
  }
  if (solved.geometry.panel !== null) {
    const { front, back, strand } = panelRedundancy(solved)
    return { leg: worseOutcome([front, back]), strand }
  }
  if (slings === null) return { leg: 'unknown', strand: 'unknown' }
  const leg = legGone(solved, slings.legParted, slings.legPartedSudden)
  return { leg, strand: strandGone(solved, slings.strandParted, leg) }
}

/** What one leg may carry in an accident, with some of its strands gone; null if the cord is not known. */
function allowedInAccident(solved: Solved, code: 'strandParted' | 'legParted' | 'legPartedSudden', parted: number): number | null {
  const { answers } = solved.hanger
  const loadCase = solved.loads[code].case
  const cord = inCase(solved.cord.leg, loadCase)
  if (cord.capacity === null) return null
  const factors = stillApplying(cord, cordFactors(answers, loadCase, false).factors)
  return factors.reduce((product, f) => product * f.value, cord.capacity.value * weakestSection(legSections(answers, parted + strandsGone(solved), cord)).effective)
}

function legGone(solved: Solved, after: CaseSling, sudden: CaseSling): Outcome {
  if (after.trouble === 'not converged') return 'unknown'
  if (after.trouble !== 'none' || after.tension === null || sudden.tension === null) return 'falls'
  const allowed = allowedInAccident(solved, 'legParted', 0)
  const allowedSudden = allowedInAccident(solved, 'legPartedSudden', 0)
  if (allowed === null || allowedSudden === null) return 'unknown'
  if (after.tension > allowed || sudden.tension > allowedSudden) return 'falls'
  return worseOutcome(withoutEachKind(solved))
}

/** How the pot hangs without each leg in turn, one standing for those alike: the one that pulls hardest need not be the one that tips it most. */
function withoutEachKind({ hanger: { answers }, plan, cord, loads, potted, drawnKnot }: Solved): readonly Outcome[] {
  if (plan === null) return []
  const load = loads.legParted
  const stiffness = legStiffness(answers, cord)
  const { centre } = centreOfAll(potted[load.case.state].centre, 0, load, drawnKnot)
  const sling = slingInput({ plan, stiffness, bedded: stiffness, mass: load.weight / STANDARD_GRAVITY, centre, offset: 0, tolerance: 0 }, stiffness, [0, 0, centre], [])
  return plan.distinct.map((leg) => withoutLeg(sling, leg, radians(TIPS_ABOVE.value)).outcome)
}

/** Where the rest of the leg cannot carry its share, the strand takes the leg with it. */
function strandGone(solved: Solved, intact: CaseSling, legGoes: Outcome): Outcome {
  const left = weakestSection(legSections(solved.hanger.answers, 1 + strandsGone(solved), inCase(solved.cord.leg, solved.loads.strandParted.case))).effective
  const allowed = allowedInAccident(solved, 'strandParted', 1)
  if (left === 0) return legGoes
  if (intact.tension === null || allowed === null) return 'unknown'
  return intact.tension <= allowed ? 'stays' : legGoes
}
