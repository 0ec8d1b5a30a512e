import type { CheckResult } from '../check/checkHanger'
import type { CordStrengths } from '../check/cordStrength'
import { partKey, type PartKey } from '../check/parts'
import type { Solved, Tier } from '../check/solved'
import type { State } from '../load/states'
import type { ChanceInput, InputCode } from './inputs'
import { cordMember } from './cordMember'
import { cordOf, type CordNow } from './cordNow'
import { gripMember } from './gripMember'
import type { KnownPart } from './known'
import { newLayout, type Layout } from './layout'
import { isSolved, legMembers } from './legMembers'
import { massesOf, type MassOf } from './masses'
import type { Member, RatioIn, StateIn } from './member'
import { partMember } from './partMember'
import { hangsIn, newPotNow, type Hung, type PotNow } from './potNow'
import { seatMember } from './seatMember'

/** The whole chain of a hanger, laid out so that one hanger after the other can be drawn through it. */
export interface Chain {
  /** How many standard normal numbers one hanger takes, and which of them belong to which input. */
  readonly size: number
  readonly inputs: readonly InputCode[]
  readonly places: readonly (readonly number[])[]
  readonly parts: readonly ChainPart[]
  /** Takes over the numbers of the next hanger. */
  readonly draw: (z: Float64Array) => void
  /** Weight of the hanger drawn last in a state, kg; NaN before the first. */
  readonly weight: (state: State) => number
}

export interface ChainPart {
  readonly key: PartKey
  readonly members: readonly Member[]
}

/** One of the pots, with all that hangs from its legs. */
interface Pot {
  readonly solved: Solved
  readonly now: PotNow
  readonly hung: Hung
  readonly own: MassOf
  readonly legs: ReturnType<typeof legMembers> | null
  readonly friction: number
}

/** The pots of a hanger; the one of a hanger without tiers stands as it is. */
const tiersOf = (solved: Solved): readonly Tier[] => (solved.tiers.length > 0 ? solved.tiers : [{ tier: 1, hung: solved, alone: solved }])

/** Lays out a checked hanger for drawing: its pots in their legs, its cord, and every part whose strength is known. */
export function chainOf({ solved }: Pick<CheckResult, 'solved'>, known: readonly KnownPart[]): Chain {
  const layout = newLayout()
  const cord = cordOf(solved.hanger.answers, layout)
  const stateIn: StateIn = (code) => solved.loads[code].case.state
  const shared = { stretch: layout.take('stretch', 1), masses: new Map<ChanceInput, number>(), friction: layout.take('friction', 1) }
  const massPlaces = (): readonly number[] => [...shared.masses.values()]
  const pots = tiersOf(solved).map(({ hung, alone }): Pot => {
    const now = newPotNow()
    const own = massesOf(alone, layout, shared.masses)
    return { solved: hung, now, own, hung: hangsIn(hung, now, layout, shared, massPlaces), legs: isSolved(hung) ? legMembers({ solved: hung, layout, cord, now, stateIn }) : null, friction: shared.friction }
  })
  const ownCords = solved.tiers.length > 0 && solved.hanger.answers['tiers.how'] === 'ownCords'
  let z: Float64Array = new Float64Array(0)
  /** All that hangs from a pot's legs: the pots below it too, unless they have cords of their own. */
  const below = (from: number) => (state: State): number => {
    let sum = 0
    for (let i = from; i < (ownCords ? from + 1 : pots.length); i += 1) sum += pots[i]!.own(z, state)
    return sum
  }
  const masses = pots.map((_, i) => below(i))
  const all = (state: State): number => pots.reduce((sum, pot) => sum + pot.own(z, state), 0)
  const checked = (state: State): number => solved.loads[state].potted + solved.loads[state].hanger
  const ratio: Record<State, number> = { dry: 1, watered: 1, flooded: 1 }
  const ratioOf = (pot: Pot | undefined): RatioIn => (code) => (pot === undefined ? ratio : pot.now.ratio)[stateIn(code)]
  const parts = known.map((part): ChainPart => ({ key: partKey(part.link, part.tier), members: membersOf(part, pots[part.tier - 1], { solved, layout, cord, stateIn, ratioOf }) }))
  const slung = new Set([...massPlaces(), ...pots.flatMap(({ hung }) => hung.places)])
  // Inputs by which pots hang come last: before them every sling can stay as it is.
  const inputs = layout.inputs().map((input, i) => ({ input, places: layout.places()[i] ?? [] })).sort((a, b) => Number(a.places.some((p) => slung.has(p))) - Number(b.places.some((p) => slung.has(p))))
  return {
    size: layout.size(), inputs: inputs.map(({ input }) => input), places: inputs.map(({ places }) => places), parts,
    weight: all,
    draw: (numbers) => {
      z = numbers
      for (const state of ['dry', 'watered', 'flooded'] as const) ratio[state] = all(state) / checked(state)
      pots.forEach(({ hung }, i) => { hung.hang(z, masses[i]!) })
      for (const { members } of parts) for (const member of members) member.draw(z)
    },
  }
}

interface Around {
  readonly solved: Solved
  readonly layout: Layout
  readonly cord: CordNow
  readonly stateIn: StateIn
  /** Of one pot, or of all that hangs there. */
  readonly ratioOf: (pot: Pot | undefined) => RatioIn
}

/** The ways in which a part may give way: one for each way in which the check found its strength. */
function membersOf({ link, results }: KnownPart, pot: Pot | undefined, { solved, layout, cord, stateIn, ratioOf }: Around): readonly Member[] {
  const ways = [...new Set(results.map((r) => r.part))].map((part) => results.filter((r) => r.part === part))
  const at = pot?.solved ?? solved
  const ofCord = (strengths: CordStrengths['leg'], from: Pot | undefined): readonly Member[] =>
    ways.map((way) => cordMember(from?.solved ?? solved, strengths, way, layout, cord, ratioOf(from)))
  const legs = pot?.legs ?? null
  if (link === 'leg' || link === 'gatheringTurn') return legs !== null ? [legs(results, link === 'leg' ? 'run' : 'turn')] : ofCord(at.cord.leg, pot)
  if (link === 'wrapHoop') return ofCord(at.cord.wrap, pot)
  if (link === 'topCord' || link === 'ringCord') return ofCord(solved.cord.wrap, undefined)
  if (link === 'seat') return pot === undefined ? [] : [seatMember(results, pot.friction, pot.now, stateIn)]
  if (link === 'gatheringGrip') return ways.map((way) => (way[0]?.part === 'gripModel' && pot !== undefined ? gripMember(way, layout, pot.friction, ratioOf(pot)) : partMember(way, layout, ratioOf(pot))))
  return ways.map((way) => partMember(way, layout, ratioOf(undefined)))
}
