import { inCase } from '../check/cordStrength'
import { strandsGone } from '../check/inspected'
import type { LinkResult } from '../check/linkResult'
import { legSections, wrapSection, type Section } from '../check/sections'
import type { Solved } from '../check/solved'
import { bundleStrength } from './bundle'
import type { CordNow } from './cordNow'
import type { Layout } from './layout'
import type { Member, StateIn } from './member'
import type { PotNow } from './potNow'
import { CHANCE_CASES } from './tally'

interface Legs {
  readonly solved: Solved
  readonly layout: Layout
  readonly cord: CordNow
  readonly now: PotNow
  readonly stateIn: StateIn
}

/**
 * The legs of a pot whose slings are solved, leg by leg: the tension of each against its own strands, each of them drawn, in
 * every section of the run and in the turn into the wraps, which the same strands pass.
 */
export function legMembers(at: Legs): (results: readonly LinkResult[], where: 'run' | 'turn') => Member {
  const { solved: { hanger: { answers }, plan }, layout } = at
  const [legs, strands] = [plan?.legs.length ?? 0, answers['make.strands']]
  const first = layout.take('strands', legs * strands)
  return (results, where) => memberOf(at, results, sectionsOf(at.solved, where), { legs, strands, first })
}

function sectionsOf(solved: Solved, where: 'run' | 'turn'): readonly Section[] {
  const { answers } = solved.hanger
  const strength = inCase(solved.cord.leg, solved.loads.watered.case)
  return where === 'run' ? legSections(answers, strandsGone(solved), strength) : [wrapSection(answers, strandsGone(solved), strength.tied)]
}

function memberOf({ solved, cord, now, stateIn }: Legs, results: readonly LinkResult[], sections: readonly Section[], { legs, strands, first }: { readonly legs: number; readonly strands: number; readonly first: number }): Member {
  const knots = sections.map((s) => cord.knot(s.part, s.efficiency.value))
  const cases = CHANCE_CASES.flatMap((code) => {
    const result = results.find((r) => r.case === code)
    if (result === undefined || result.capacity === null) return []
    const strength = inCase(solved.cord.leg, solved.loads[code].case)
    return [{ code, counted: result.capacity.value, checked: result.demand?.value ?? 0, roll: cord.roll(strength), strand: cord.strand(strength), left: cord.left(result.factors, solved.loads[code].case), strength: new Float64Array(legs) }]
  })
  const scratch = new Float64Array(strands)
  const eta = new Float64Array(sections.length)
  return {
    draw: (z) => {
      for (let s = 0; s < knots.length; s += 1) eta[s] = knots[s]!(z)
      for (const one of cases) {
        const whole = one.counted * one.roll(z) * one.left(z)
        for (let leg = 0; leg < legs; leg += 1) {
          let least = Infinity
          for (let s = 0; s < sections.length; s += 1) {
            const count = sections[s]!.strands
            // The bundle puts its strands in order, so they are drawn anew for each section.
            for (let i = 0; i < count; i += 1) scratch[i] = one.strand(z[first + leg * strands + i]!)
            least = Math.min(least, bundleStrength(scratch, count) * eta[s]!)
          }
          one.strength[leg] = whole * least
        }
      }
    },
    use: (code) => {
      const one = cases.find((c) => c.code === code)
      if (one === undefined) return 0
      const state = stateIn(code)
      const tensions = now.tensions[state]
      const factor = solved.loads[code].factor
      let most = 0
      for (let leg = 0; leg < legs; leg += 1) {
        // Where no balance was found, the check's worst tension stands for it.
        const tension = tensions.length > 0 ? tensions[leg]! * factor : one.checked * now.ratio[state]
        most = Math.max(most, tension / one.strength[leg]!)
      }
      return most
    },
  }
}

/** Whether a leg's slings are solved for each hanger drawn. */
export const isSolved = ({ plan }: Pick<Solved, 'plan'>): boolean => plan !== null && plan.wall === null
