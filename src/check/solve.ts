import { BEDDED_STIFFNESS } from '../catalogue/cords'
import { DROP_HEIGHT } from '../catalogue/jolts'
import { CENTRE_MARGIN, SOFT_LEGS } from '../catalogue/seat'
import type { Answers } from '../hanger/fields'
import type { Hanger } from '../hanger/hanger'
import { hangerMass } from '../load/hangerMass'
import { BUMP_FACTOR, CASES, loadCases, SET_DOWN_FACTOR, wholeCases, type CaseCode, type LoadCase } from '../load/loadCases'
import { pottedMass } from '../load/pottedMass'
import { pullerOf } from '../load/reach'
import { NO_MASS, type MassRange, type State } from '../load/states'
import { metres, newtons, STANDARD_GRAVITY } from '../quantity/si'
import { dropFactor } from '../statics/drop'
import { heaveStiffness } from '../statics/heave'
import { solveSling } from '../statics/sling/solveSling'
import type { TautPath } from '../statics/tautPath'
import { cordStrengths, strandStiffness, type CordStrengths } from './cordStrength'
import { blown, bumped, tugged } from './dynamics'
import { inGust } from './inGust'
import { panelStrands } from './panel/panelPlan'
import { solvePanel } from './panel/panelShares'
import { planOf } from './planOf'
import { carryingStrands } from './sections'
import { slingInput, solveBattery, solveWithoutLeg, troubleOf, type BatteryInput } from './slingBattery'
import type { CaseLoad, CaseSling, Solved } from './solved'
import { entering } from './term'
import { NOTHING_BELOW, type Below } from './tiers/below'
import { centreOfAll } from './tiers/centreOfAll'
import { drawnGeometry } from './tiers/drawnDown'
import { solveTiers } from './tiers/solveTiers'

/** Axial stiffness EA of a leg at its first load, N: its carrying strands side by side; of a panel that of one strand, of which its groups have several. */
export function legStiffness(answers: Answers, cord: CordStrengths): number {
  return (answers['make.arrangement'] === 'panel' ? 1 : carryingStrands(answers)) * strandStiffness(answers, cord)
}

/**
 * First stage of a check: masses, geometry and the sling in every load case. Where the strands do not
 * reach round the pot there is no sling (`slings` null), and the loads are told all the same. A leg
 * that goes at once jolts the others by at most T0 + 2 (T' - T0).
 */
export function solve(hanger: Hanger): Solved {
  return hanger.answers['make.arrangement'] === 'tiers' ? solveTiers(hanger, solveAbove) : solveAbove(hanger, hangerMass(hanger.answers), NOTHING_BELOW)
}

/** One pot in its legs, its hanger of a given mass, and what hangs from its gathering knot. */
function solveAbove(hanger: Hanger, own: Readonly<Record<State, MassRange>>, below: Below): Solved {
  const { answers } = hanger
  const potted = pottedMass(answers)
  const { geometry, knot } = drawnGeometry(answers, own, below)
  const cases = loadCases(answers)
  const path = geometry.path.ok ? geometry.path : null
  const cord = cordStrengths(hanger)
  const stiffness = legStiffness(answers, cord)
  const load = (loadCase: LoadCase, factor: number, factorSource: string): CaseLoad => {
    const { state } = loadCase
    const [pots, cords] = [loadCase.code === 'lowerOut' ? NO_MASS : below.potted[state], below.hanger[state]]
    const pottedNow = potted[state].mass.high + pots.high
    const ownNow = own[state].high + cords.high
    return { case: loadCase, factor, factorSource, factorTerms: [entering('caseFactor', 'phi', factor, '1', 'computed', factorSource)], potted: pottedNow, hanger: ownNow, below: pots.high + cords.high, belowLeast: pots.low + cords.low, centre: centreOfAll(potted[state].centre, 0, { potted: pottedNow, hanger: ownNow, below: pots.high + cords.high }, knot).centre, weight: (pottedNow + ownNow) * STANDARD_GRAVITY * factor, ...NO_SIDE_PULL, sideDown: (pottedNow + ownNow) * STANDARD_GRAVITY * factor }
  }
  const rest = (code: CaseCode): CaseLoad => load(cases[code], 1, 'at rest')
  const drop = path === null ? SET_DOWN_FACTOR : dropFactor(DROP_HEIGHT.value, dropStiffness(answers, path, geometry.strand, stiffness), rest('drop').weight)
  const lightest = (state: State): number => (potted[state].mass.low + own[state].low + below.potted[state].low + below.hanger[state].low) * STANDARD_GRAVITY
  const light = { dry: lightest('dry'), watered: lightest('watered') }
  const gust = inGust(answers, light, below.answers)
  const loads: Record<CaseCode, CaseLoad> = {
    dry: rest('dry'),
    watered: rest('watered'),
    flooded: rest('flooded'),
    bump: bumped(load(cases.bump, BUMP_FACTOR, 'let go from 30 degrees: 3 - 2 cos a')),
    setDown: load(cases.setDown, SET_DOWN_FACTOR, 'put on at once'),
    gust: gust === null ? rest('gust') : blown(rest('gust'), gust, light),
    tug: tugged(rest('tug'), pullerOf(answers) ?? 'child'),
    lowerOut: rest('lowerOut'),
    neighbourDown: rest('neighbourDown'),
    drop: load(cases.drop, drop, 'dropped 10 mm: 1 + sqrt(1 + 2 h K / W)'),
    strandParted: rest('strandParted'),
    legParted: rest('legParted'),
    legPartedSudden: rest('legPartedSudden'),
  }
  const plan = planOf(geometry)
  const whole = wholeCases(answers).filter((code) => code !== 'lowerOut' || below.answers.length > 0)
  if (plan === null) return { hanger, potted, hangerMass: own, cord, geometry, loads, plan, wholeCases: whole, gust, slings: null, panel: null, pinnedMargin: null, drawnKnot: null, tiers: [] }
  const battery = (code: CaseCode): BatteryInput => ({
    plan,
    stiffness,
    bedded: stiffness * BEDDED_STIFFNESS.value,
    mass: loads[code].weight / STANDARD_GRAVITY,
    ...centreOfAll(potted[loads[code].case.state].centre, answers['seat.offset'], loads[code], knot),
    tolerance: answers['make.tolerance'],
  })
  return {
    hanger, potted, hangerMass: own, cord, geometry, loads, plan, wholeCases: whole, gust,
    slings: solveCases(battery, whole, cases.strandParted.state),
    panel: geometry.panel === null ? null : solvePanel(battery('watered'), battery('legParted')),
    pinnedMargin: pinnedMargin(battery('dry'), battery('watered')),
    drawnKnot: knot,
    tiers: [],
  }
}

const NO_SIDE_PULL = { side: 0, sideShare: 0, sideSource: 'hangs straight down' } as const

/** Stiffness of the way from hook to gathering knot, for the drop: the whole strand stretches, not its free part only. */
function dropStiffness(answers: Answers, path: TautPath, strand: number, stiffness: number): number {
  // In front at a slant, behind straight down: all count as straight down.
  if (answers['make.arrangement'] === 'panel') return (panelStrands(answers).reduce((sum, strands) => sum + strands, 0) * stiffness) / strand
  return heaveStiffness({
    legs: answers['make.legs'],
    stiffness: newtons((stiffness * path.free) / strand),
    length: path.free,
    height: metres(path.top - path.leave.z),
    run: metres(path.leave.r),
    tension: newtons(0),
  })
}

/** The sling in each case; a case that does not concern this hanger is as it hangs just watered. */
function solveCases(battery: (code: CaseCode) => BatteryInput, whole: readonly CaseCode[], accidentState: State): Record<CaseCode, CaseSling> {
  const solved = new Map(whole.map((code) => [code, solveBattery(battery(code))]))
  const at = (code: CaseCode): CaseSling => solved.get(code) ?? (solved.get('watered') as CaseSling)
  const intact = at(accidentState)
  const parted = solveWithoutLeg(battery('legParted'))
  return {
    ...(Object.fromEntries(CASES.map((code) => [code, at(code)])) as Record<CaseCode, CaseSling>),
    strandParted: intact,
    legParted: parted,
    // Linear bound on the jolt: T0 + 2 (T' - T0).
    legPartedSudden: parted.tension === null || intact.tension === null ? parted : { ...parted, tension: intact.tension + 2 * Math.max(0, parted.tension - intact.tension) },
  }
}

/** Whether the pinned sling stays upright, dry and watered, with softer legs and a higher centre of gravity. */
function pinnedMargin(...inputs: readonly BatteryInput[]): boolean {
  return inputs.every((input) => troubleOf(solveSling(slingInput(input, input.stiffness * SOFT_LEGS.value, [0, 0, input.centre + CENTRE_MARGIN.value], [])), input.plan) === 'none')
}
