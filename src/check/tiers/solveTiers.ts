import type { Answers } from '../../hanger/fields'
import type { Hanger } from '../../hanger/hanger'
import { hangerMass } from '../../load/hangerMass'
import { pottedMass } from '../../load/pottedMass'
import { addMass, STATES, type MassRange, type State } from '../../load/states'
import { metres } from '../../quantity/si'
import type { Solved, Tier } from '../solved'
import { answersOfTier } from './answersOfTier'
import { patched } from './patched'
import { NOTHING_BELOW, withPot, type Below } from './below'

type Masses = Readonly<Record<State, MassRange>>
type SolveAbove = (hanger: Hanger, own: Masses, below: Below) => Solved

/**
 * Pots one under another: each is solved as a hanger of its own, with what hangs from its gathering knot, and once
 * more with nothing there. The whole is the first pot's hanger with the loads of all of them: what it hangs from
 * bears their sum, and a jolt meets all at once, which no jolt of one can exceed.
 */
export function solveTiers(hanger: Hanger, solveAbove: SolveAbove): Solved {
  const { answers } = hanger
  const count = answers['tiers.count']
  const ownCords = answers['tiers.how'] === 'ownCords'
  const pots = Array.from({ length: count }, (_, i) => answersOfTier(answers, i + 1))
  const cords = cordsOf(answers, pots)
  const under = belowEach(pots, cords)
  const hangers = pots.map((pot, i): Hanger => ({ ...hanger, answers: withTestShare(pot, answers['tiers.tested'] === 'all' ? shareOf(pots, under, i, ownCords) : testedFirst(answers, i)) }))
  const tiers = hangers.map((one, i): Tier => {
    const own = cords[i] as Masses
    const alone = solveAbove(one, own, NOTHING_BELOW)
    return { tier: i + 1, alone, hung: ownCords || i === count - 1 ? alone : solveAbove(one, own, under[i] as Below) }
  })
  const first = tiers[0] as Tier
  const whole = solveAbove({ ...hanger, answers: pots[0] as Answers }, cords[0] as Masses, under[0] as Below)
  return {
    ...whole,
    hanger,
    hangerMass: cords.reduce(sumOf),
    geometry: { ...whole.geometry, drop: dropOf(tiers, ownCords) },
    slings: first.hung.slings,
    pinnedMargin: first.alone.pinnedMargin,
    tiers,
  }
}

const sumOf = (a: Masses, b: Masses): Masses => Object.fromEntries(STATES.map((state) => [state, addMass(a[state], b[state])])) as Record<State, MassRange>
const atLeastNone = (a: MassRange, less: MassRange): MassRange => ({ low: Math.max(0, a.low - less.low), likely: Math.max(0, a.likely - less.likely), high: Math.max(0, a.high - less.high) })

/** Cords of each pot; of cords told as cut what the lower pots leave is the first pot's, and what the whole hangs from is with it. */
function cordsOf(answers: Answers, pots: readonly Answers[]): readonly Masses[] {
  const lower = pots.slice(1).map((pot) => hangerMass(patched(pot, { 'make.top': 'bunched' })))
  const first = hangerMass(pots[0] as Answers)
  if (answers['make.cords'] === null || answers['make.cutLength'] === null) return [first, ...lower]
  return [Object.fromEntries(STATES.map((state) => [state, lower.reduce((left, own) => atLeastNone(left, own[state]), first[state])])) as Record<State, MassRange>, ...lower]
}

/** What hangs below each pot, from the first. */
function belowEach(pots: readonly Answers[], cords: readonly Masses[]): readonly Below[] {
  const under: Below[] = []
  let below = NOTHING_BELOW
  for (let i = pots.length - 1; i >= 0; i--) {
    under.unshift(below)
    below = withPot(below, pots[i] as Answers, pottedMass(pots[i] as Answers), cords[i] as Masses)
  }
  return under
}

/** Share of all pots that hangs in the legs of one: of what hung in a test, all of them laden as they will be. */
function shareOf(pots: readonly Answers[], under: readonly Below[], i: number, ownCords: boolean): number {
  const own = (at: number): number => pottedMass(pots[at] as Answers).watered.mass.high
  const lower = (at: number): number => under[at]?.potted.watered.high ?? 0
  return (own(i) + (ownCords ? 0 : lower(i))) / (own(0) + lower(0))
}

/** Hung in the first pot's place alone it says nothing of the others, nor of wraps from which cords of a lower one hang. */
const testedFirst = (answers: Answers, i: number): number => (i === 0 && answers['tiers.how'] !== 'wrapped' ? 1 : 0)

function withTestShare(answers: Answers, share: number): Answers {
  const of = (value: number | null): number | null => (value === null || share === 0 ? null : value * share)
  return patched(answers, { 'testHang.mass': of(answers['testHang.mass']), 'testHang.volume': of(answers['testHang.volume']) })
}

/** From the hook's bowl to the end of the lowest fringe. */
function dropOf(tiers: readonly Tier[], ownCords: boolean): Solved['geometry']['drop'] {
  const drops = tiers.map(({ hung }) => hung.geometry.drop)
  if (drops.some((drop) => drop === null)) return null
  const sum = ownCords
    ? Math.max(...drops.map((drop) => drop ?? 0))
    : drops.reduce<number>((all, drop, i) => all + (drop ?? 0) + (tiers[i]?.hung.drawnKnot?.drawn ?? 0), 0)
  return metres(sum)
}
