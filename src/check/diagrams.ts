import { METAL_STIFFNESS } from '../catalogue/metals'
import { CREEP } from '../catalogue/sticks'
import { hangsFrom, hasStick, liesLevel } from '../hanger/arrangement'
import type { CaseCode } from '../load/loadCases'
import { metres, newtons } from '../quantity/si'
import { solveBeam } from '../statics/beam'
import { armDiagram, beamDiagram, ringDiagram, type Diagram } from '../statics/diagram'
import type { LinkCode } from './linkResult'
import { placeLoad } from './placeLoad'
import type { Solved } from './solved'
import { stickBeam } from './stickBeam'
import { stickSection } from './stickSection'
import { stickWood } from './stickWood'

/** Links that are bars and bend. */
export type BentLink = Extract<LinkCode, 'stick' | 'ring' | 'bracket' | 'pin'>

const BENT: readonly LinkCode[] = ['stick', 'ring', 'bracket', 'pin'] satisfies readonly BentLink[]
export const isBent = (link: LinkCode): link is BentLink => BENT.includes(link)

/** How one of them bends in a case, under the worst of the ways it may be loaded. */
export interface LinkDiagram extends Diagram {
  readonly link: BentLink
  readonly case: CaseCode
  /** Where it is held, and where and how hard it is pulled down, m and N. */
  readonly held: readonly number[]
  readonly pulls: readonly { readonly at: number; readonly force: number }[]
}

/** Diagrams of every bent link that this hanger has; none of a stick that cannot hang so. What it weighs itself is counted with what hangs from it. */
export const diagramsOf = (solved: Solved, code: CaseCode): readonly LinkDiagram[] =>
  [stickIn, ringIn, bracketIn, pinIn].flatMap((diagram) => diagram(solved, code) ?? [])

function stickIn(solved: Solved, code: CaseCode): LinkDiagram | null {
  const { answers } = solved.hanger
  const found = hasStick(answers) ? stickBeam(solved, code) : null
  if (found?.ok !== true) return null
  const { weight } = solved.loads[code]
  const { beam: share } = found.worst
  const pulls = share.forces.filter((f) => f.force < 0).map(({ at, force }) => ({ at, force: newtons(0 - force * weight) }))
  const beam = solveBeam({ length: share.length, supports: share.supports, loads: pulls, heldDown: true })
  if (!beam.ok) return null
  // Wood as it bends at first: what creep adds is told beside.
  const stiffness = stickWood(answers).stiffness.value * CREEP.high * stickSection(answers).inertia
  return { ...beamDiagram(beam, stiffness), link: 'stick', case: code, held: beam.supports, pulls }
}

function ringIn(solved: Solved, code: CaseCode): LinkDiagram | null {
  const { answers } = solved.hanger
  if (hangsFrom(answers) !== 'ring' || liesLevel(answers)) return null
  const { weight } = solved.loads[code]
  const wire = answers['ring.wire']
  const mean = metres((answers['ring.inside'] + wire) / 2)
  const metal = answers['ring.metal']
  return {
    ...ringDiagram(newtons(weight), mean, metal === 'wood' ? null : METAL_STIFFNESS[metal].value * roundInertia(wire)),
    link: 'ring', case: code, held: [0], pulls: [{ at: Math.PI * mean, force: weight }],
  }
}

function bracketIn(solved: Solved, code: CaseCode): LinkDiagram | null {
  const { answers } = solved.hanger
  if (answers['place.support'] !== 'bracket' && answers['place.support'] !== 'swingArm') return null
  const { load } = placeLoad(solved, code)
  const [thick, high, reach] = [answers['bracket.thick'], answers['bracket.high'], answers['bracket.reach']]
  // The oval that fits in the section.
  const inertia = thick === null || high === null ? null : (Math.PI * thick * high ** 3) / 64
  return {
    ...armDiagram(newtons(load), reach, inertia === null ? null : METAL_STIFFNESS[answers['bracket.metal']].value * inertia),
    link: 'bracket', case: code, held: [0], pulls: [{ at: reach, force: load }],
  }
}

function pinIn(solved: Solved, code: CaseCode): LinkDiagram | null {
  const { answers } = solved.hanger
  const reach = answers['hook.projection']
  if (answers['place.support'] !== 'wallHook' || reach <= 0) return null
  const { load } = placeLoad(solved, code)
  return {
    ...armDiagram(newtons(load), reach, METAL_STIFFNESS[answers['hook.metal']].value * roundInertia(answers['hook.wire'])),
    link: 'pin', case: code, held: [0], pulls: [{ at: reach, force: load }],
  }
}

const roundInertia = (diameter: number): number => (Math.PI * diameter ** 4) / 64
