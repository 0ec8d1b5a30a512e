import { TIPS_ABOVE } from '../../catalogue/seat'
import { inCase, stillApplying } from '../cordStrength'
import type { Outcome } from '../finding'
import { weakestSection } from '../sections'
import type { CaseSling, Solved } from '../solved'
import { cordFactors } from '../timeFactors'
import { groupsOf, panelGroups, type PanelGroup } from './panelGroups'
import { panelSections, strandSections } from './panelSections'

/** What a wall planter does without the strands of one corner, without one half of those behind, and without one strand. */
export interface PanelRedundancy {
  readonly front: Outcome
  readonly back: Outcome
  readonly strand: Outcome
}

const WORST_FIRST = ['falls', 'unknown', 'tips', 'stays'] as const satisfies readonly Outcome[]

/** The worse of what may happen. */
export const worseOutcome = (outcomes: readonly Outcome[]): Outcome => WORST_FIRST.find((outcome) => outcomes.includes(outcome)) ?? 'unknown'

/** A statement, not a verdict; with the reserve of an accident, as redundancy(). */
export function panelRedundancy(solved: Solved): PanelRedundancy {
  const { slings, panel } = solved
  if (slings === null || panel === null) return { front: 'unknown', back: 'unknown', strand: 'unknown' }
  const front = groupGone(solved, panel.without.front)
  const back = groupGone(solved, panel.without.back)
  return { front, back, strand: strandGone(solved, worseOutcome([front, back])) }
}

/** What a group may carry in an accident, with some of its strands gone; null if the cord is not known. */
function allowed(solved: Solved, code: 'strandParted' | 'legParted' | 'legPartedSudden', { kind, strands }: PanelGroup, parted: number): number | null {
  const { answers } = solved.hanger
  const loadCase = solved.loads[code].case
  const cord = inCase(solved.cord.leg, loadCase)
  if (cord.capacity === null) return null
  const left = Math.max(0, strands - parted)
  const inNet = kind === 'front' && answers['cradle.kind'] === 'net'
  const { effective } = weakestSection([...strandSections(answers, left, inNet, cord), ...panelSections(answers, left, cord)])
  return stillApplying(cord, cordFactors(answers, loadCase, false).factors).reduce((product, f) => product * f.value, cord.capacity.value * effective)
}

function groupGone(solved: Solved, after: CaseSling): Outcome {
  if (after.trouble === 'not converged') return 'unknown'
  if (after.trouble !== 'none' || after.each === null) return 'falls'
  const intact = groupsOf(solved, solved.slings?.strandParted ?? null)
  const bears = groupsOf(solved, after).map((group, i): Outcome => {
    const [atRest, sudden] = [allowed(solved, 'legParted', group, 0), allowed(solved, 'legPartedSudden', group, 0)]
    if (atRest === null || sudden === null || group.tension === null) return 'unknown'
    const before = intact[i]?.tension ?? 0
    return group.tension > atRest || before + 2 * Math.max(0, group.tension - before) > sudden ? 'falls' : 'stays'
  })
  const tilt = 'tiltRadians' in after.drawn ? after.drawn.tiltRadians : Infinity
  return worseOutcome([...bears, tilt > TIPS_ABOVE.value ? 'tips' : 'stays'])
}

/** Where the rest of a group cannot carry its share, the strand takes the group with it. */
const strandGone = (solved: Solved, groupGoes: Outcome): Outcome => worseOutcome(panelGroups(solved, 'strandParted').map((group): Outcome => {
  if (group.strands <= 1) return groupGoes
  const left = allowed(solved, 'strandParted', group, 1)
  if (left === null || group.tension === null) return 'unknown'
  return group.tension <= left ? 'stays' : groupGoes
}))
