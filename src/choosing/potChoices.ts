import { finish, halveBy, multiple, searchEdge, type EdgeSearch, type Trial } from '../advice/edge'
import { heaviestPot, isBuildKnown, isOwn, potOfMass, searchHeaviestPot, type PotTrial } from '../advice/heaviestPot'
import { potPatch, USUAL_RIMS, withoutPot } from '../advice/potsThatFit'
import { without } from '../advice/untested'
import type { PotMaterialKind } from '../catalogue/potMaterials'
import type { MixKind } from '../catalogue/pottingMixes'
import { editField, patchDocument, type HangerDocument } from '../hanger/document'
import type { Answers, FieldPath } from '../hanger/fields'
import { resolveDocument } from '../hanger/resolve'
import { pottedMass } from '../load/pottedMass'
import type { Choice } from './choice'
import { judge, type Judged } from './judge'
import { choiceOf, noChoice, type Asked } from './tell'

/** As weights are told, kg. */
const MASS_STEP = 0.1
/** Between usual rims, m. */
const RIM_STEP = 0.005

const BUILD: Readonly<Record<'legs' | 'panel', readonly FieldPath[]>> = { legs: ['make.legs', 'make.strands'], panel: ['panel.front', 'panel.behind'] }
const buildNeeded = (answers: Answers): readonly FieldPath[] => BUILD[answers['make.arrangement'] === 'panel' ? 'panel' : 'legs']

/** What the pot in it weighs just watered, kg. */
const watered = (answers: Answers): number | null => (answers['pot.have'] === 'yes' ? pottedMass(answers).watered.mass.high : null)

const judged = (document: HangerDocument): Judged => judge(document, null, isOwn)

/**
 * The heaviest watered pot the hanger itself may carry, the place left aside: the search of `heaviestPot`, and the weight as it
 * is told, rounded down, checked once more.
 */
export function* heaviestChoice(document: HangerDocument, answers: Answers): Generator<Trial<PotTrial> | Judged, Choice, void> {
  const asked: Asked = { choice: 'heaviestPot', of: null, unit: 'kg', field: 'weighed.mass', now: watered(answers), isForNext: false, document, close: MASS_STEP, isUntested: false }
  if (!isBuildKnown(document)) return noChoice(asked, { code: 'answersNeeded', paths: buildNeeded(answers) }, 0)
  const { edge, trials } = yield* searchHeaviestPot(document)
  const loaded = potOfMass(document)
  const at = (mass: number): Trial<Judged> => ({ value: mass, outcome: judged(patchDocument(loaded(mass), { 'pot.have': 'yes' })) })
  const down = edge === null ? 0 : Math.floor(edge.last.value / MASS_STEP + 1e-9)
  const found: Trial<Judged> | null = edge === null ? null : at(Math.max(multiple(down, MASS_STEP), edge.first.value))
  const next = edge === null || edge.beyond === null ? null : at(multiple(down + 1, MASS_STEP))
  const search: EdgeSearch<Judged> = edge === null || found === null || !found.outcome.holds
    ? { edge: null, trials: trials.map(({ value }) => at(value)) }
    : {
        edge: {
          last: found, again: edge.again, first: at(edge.first.value),
          beyond: next === null || !next.outcome.holds || edge.beyond === null ? next : at(edge.beyond.value),
          before: edge.before === null ? null : at(edge.before.value),
        },
        trials: [],
      }
  return { ...choiceOf(asked, search), checks: trials.length + 2 }
}

export interface RimOptions {
  readonly material: PotMaterialKind
  readonly mix: MixKind
}

/** The hanger without its pot, in a mix: what was measured of another mix is taken back. */
function inMix(bare: HangerDocument, mix: MixKind): HangerDocument {
  const isOther = (bare.typed['mix.kind'] ?? null) !== mix
  return isOther ? editField(without(bare, (path) => path.startsWith('mix.')), 'mix.kind', mix) : bare
}

/** How the hanger takes a pot: every part of it must hold, and the pot be no heavier than the hanger carries, kg. */
function potted(document: HangerDocument, heaviest: number): Judged {
  const whole = judge(document, null, ({ side }) => side !== 'place')
  const resolved = resolveDocument(document)
  const mass = resolved.ok ? pottedMass(resolved.hanger.answers).watered.mass.high : 0
  return mass > heaviest ? { ...whole, holds: false, stop: { kind: 'tooHeavy', watered: mass, heaviest } } : whole
}

/**
 * The widest usual pot of a material and mix that the hanger may carry, by its measures and its weight: usual sizes first,
 * then between them. None may weigh more just watered than the heaviest the hanger carries.
 */
export function* rimChoice(document: HangerDocument, answers: Answers, { material, mix }: RimOptions): Generator<Trial<Judged>, Choice, void> {
  const asked: Asked = {
    choice: 'largestRim', of: null, unit: 'm', field: 'pot.rim', now: answers['pot.have'] === 'yes' ? answers['pot.rim'] : null,
    isForNext: false, document, close: RIM_STEP, isUntested: false,
  }
  if (!isBuildKnown(document)) return noChoice(asked, { code: 'answersNeeded', paths: buildNeeded(answers) }, 0)
  const emptied = withoutPot(document)
  const heaviest = heaviestPot(document)?.watered ?? null
  if (emptied === null || heaviest === null) return finish(heaviestOf(asked, document, answers))
  const bare = inMix(emptied, mix)
  const search = yield* searchEdge(USUAL_RIMS, (rim) => potted(patchDocument(bare, potPatch(rim, material)), heaviest), halveBy(RIM_STEP))
  return choiceOf(asked, search)
}

/** Where not even the lightest pot holds, no size does: for the same reason. */
function* heaviestOf(asked: Asked, document: HangerDocument, answers: Answers): Generator<Trial<PotTrial> | Judged, Choice, void> {
  const choice = yield* heaviestChoice(document, answers)
  return choice.found ? noChoice(asked, { code: 'notConcerned' }, choice.checks) : noChoice(asked, choice.reason, choice.checks)
}
