import { answerDocument, type Answer } from '../advice/answer'
import { checkPatched } from '../advice/evaluate'
import { weighedPatch } from '../advice/heaviestPot'
import type { Loaded } from '../advice/loadedHanger'
import { needOf, placeNeedsOf, type PlaceNeed, type PlaceNeeds } from '../advice/placeNeeds'
import { potsThatFit, type PotsThatFit } from '../advice/potsThatFit'
import { USUAL_PLACES } from '../advice/usualPlaces'
import { toldMass } from '../words/sheetAmounts'
import type { PotMaterialKind } from '../catalogue/potMaterials'
import type { CheckResult } from '../check/checkHanger'
import { countedTestMass } from './testedWeight'
import { editField, patchDocument, type HangerDocument } from '../hanger/document'
import type { AnswerProblem } from '../hanger/problem'
import { ownVerdict } from '../advice/ownVerdict'

/** The hanger with the heaviest pot it may carry. */
export interface Limit {
  /** Heaviest potted plant just watered that is told, kg: that of the test hang where it is as good as the heaviest. */
  readonly watered: number
  readonly check: CheckResult
  /** What its place needs with that pot. */
  readonly needs: PlaceNeeds
  /** Where no fixing was found for that pot: what would do for the hanger's own, if it has one. */
  readonly ownNeeds: readonly PlaceNeed[]
  /** Usual pots that fit. */
  readonly pots: readonly PotsThatFit[]
}

/** All that sheets tell of one hanger. */
export interface SheetFacts {
  readonly document: HangerDocument
  readonly answer: Answer
  /** Null where no weight may be told: it fails, or not enough is known of it. */
  readonly limit: Limit | null
}

export type SheetFactsOutcome = { readonly ok: true; readonly facts: SheetFacts } | { readonly ok: false; readonly problems: readonly AnswerProblem[] }

const USUAL_MATERIALS: readonly PotMaterialKind[] = ['terracotta', 'plastic']

/** Usual clay and plastic pots, and those of the pot's own material before them. */
function materialsOf({ hanger: { answers, given } }: CheckResult['solved']): readonly PotMaterialKind[] {
  const own = answers['pot.material']
  return answers['pot.have'] === 'yes' && given.has('pot.material') && !USUAL_MATERIALS.includes(own) ? [own, ...USUAL_MATERIALS] : USUAL_MATERIALS
}

/** Checks a document for its sheets: with its own pot, with the heaviest it may carry, in every usual place, with every usual pot. Pure. */
export function sheetFacts(document: HangerDocument): SheetFactsOutcome {
  const outcome = answerDocument(document)
  if (!outcome.ok) return outcome
  const { answer } = outcome
  return { ok: true, facts: { document, answer, limit: limitOf(document, answer) } }
}

function limitOf(document: HangerDocument, { check, heaviest }: Answer): Limit | null {
  const known = ownVerdict(check)
  if (heaviest === null || (known !== 'holds' && known !== 'just holds')) return null
  const hasPot = check.solved.hanger.answers['pot.have'] === 'yes'
  const untared = editField(document, 'weighed.tare', null)
  const atLimit = hasPot ? checkPatched(untared, weighedPatch(heaviest)) : check
  if (atLimit === null) return null
  const loaded: Loaded = { document: patchDocument(untared, weighedPatch(heaviest)), solved: atLimit.solved, pot: 'heaviest' }
  const own: Loaded = { document, solved: check.solved, pot: 'own' }
  const needs = USUAL_PLACES.map((place) => needOf(loaded, place))
  const bare = needs.filter(({ fixings }) => fixings.length > 0 && fixings.every(({ found }) => !found))
  return {
    watered: toldMass(heaviest, countedTestMass(atLimit)),
    check: atLimit,
    needs: placeNeedsOf(loaded, needs),
    ownNeeds: hasPot ? bare.map(({ place }) => needOf(own, place)) : [],
    pots: materialsOf(check.solved).map((material) => potsThatFit(document, heaviest, material)),
  }
}
