import type { BeneathChoice } from '../advice/beneathChoices'
import type { FixingFound } from '../advice/findFixing'
import type { PlaceNeed, PlaceNeeds } from '../advice/placeNeeds'
import type { HangerDocument } from '../hanger/document'
import { askCustomerText } from '../words/askCustomer'
import { beneathTexts } from '../words/beneath'
import { FIELD_WORDS } from '../words/fields'
import { fixingText, hangsText, howKnownText, noFixingText, numberAndDepthText, packetTexts, refusedText, usedText, USUAL_PLACE_NAMES } from '../words/placeNeeds'

const foundLines = (found: FixingFound): readonly string[] => [
  `${fixingText(found)}`,
  `  number and depth: ${numberAndDepthText(found)}`,
  `  then: ${[found.verdict, usedText(found), howKnownText(found)].filter((said) => said !== null).join('; ')}`,
]

function needLines(need: PlaceNeed): readonly string[] {
  const refused = refusedText(need)
  return [
    '',
    USUAL_PLACE_NAMES[need.place],
    ...[
      ...(refused === null ? [] : [`refused: ${refused}`]),
      ...need.fixings.flatMap((fixing) => (fixing.found ? foundLines(fixing) : [noFixingText(fixing)])),
      ...(need.rating === null ? [] : ['On a packet look for', ...packetTexts(need.rating).map((line) => `  ${line}`)]),
    ].map((line) => `  ${line}`),
  ]
}

/** The readable answer to what the hanger of one file needs of its place. */
export const placeTable = (file: string, document: HangerDocument, needs: PlaceNeeds, beneath: readonly BeneathChoice[]): string => [
  document.name === '' ? file : document.name,
  '',
  hangsText(needs),
  ...needs.needs.flatMap(needLines),
  '',
  'What is beneath changes',
  ...beneath.flatMap((choice) => [`  ${FIELD_WORDS['place.beneath'].choices[choice.beneath] ?? choice.beneath}`, ...beneathTexts(choice).map((line) => `    ${line}`)]),
  '',
  'To ask the customer',
  ...askCustomerText(document.name, needs).split('\n').map((line) => (line === '' ? '' : `  ${line}`)),
  '',
].join('\n')
