import type { BeneathChoice } from '../advice/beneathChoices'
import type { FixingOutcome } from '../advice/findFixing'
import type { PlaceNeed, PlaceNeeds } from '../advice/placeNeeds'
import type { HangerDocument } from '../hanger/document'
import { askCustomerText } from '../words/askCustomer'
import { beneathTexts } from '../words/beneath'
import { findingText } from '../words/findings'
import { fixingText, howKnownText, noFixingText, refusedText, USUAL_PLACE_NAMES } from '../words/placeNeeds'

export const PLACE_FORMAT = 'strandwise-place'
export const PLACE_VERSION = 1

function fixingJson(fixing: FixingOutcome): object {
  const { form, verdict, utilisation, link } = fixing
  const common = { form, found: fixing.found, verdict, utilisation, link }
  if (!fixing.found) {
    return {
      ...common, size: null, length: null, count: fixing.count, depth: null, grade: null, basis: null, changes: null, largestTried: fixing.largest,
      findings: fixing.findings.map((finding) => ({ ...finding, text: findingText(finding) })), text: noFixingText(fixing), howKnown: null,
    }
  }
  const { size, length, count, depth, grade, basis, changes } = fixing
  return { ...common, size, length, count, depth, grade, basis, changes, largestTried: null, findings: [], text: fixingText(fixing), howKnown: howKnownText(fixing) }
}

const needJson = (need: PlaceNeed): object => ({
  place: need.place,
  name: USUAL_PLACE_NAMES[need.place],
  refused: need.refused === null ? null : { code: need.refused, text: refusedText(need) },
  rating: need.rating,
  fixings: need.fixings.map(fixingJson),
})

/**
 * What the hanger of one file needs of its place by the contract "strandwise-place" version 1: every
 * key always there, null where not known, SI, unrounded.
 */
export const placeJson = (file: string, document: HangerDocument, { watered, heaviest, pot, needs }: PlaceNeeds, beneath: readonly BeneathChoice[]): object => ({
  format: PLACE_FORMAT,
  version: PLACE_VERSION,
  file,
  name: document.name,
  pot,
  hangs: { watered, heaviest },
  places: needs.map(needJson),
  beneath: beneath.map((choice) => ({ ...choice, texts: beneathTexts(choice) })),
  askCustomer: askCustomerText(document.name, { watered, heaviest, pot, needs }),
})
