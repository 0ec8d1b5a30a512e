import { USUAL_RIMS } from '../../advice/potsThatFit'
import type { CheckResult } from '../../check/checkHanger'
import { LOOK_TITLE, lookMonthsText, replaceByText, SIGN_TEXTS, SIGNS_TEXT } from '../../words/sheetCare'
import { neverTexts, NO_WEIGHT_TOLD, PART_LABELS, pictureText, potsText, POTS_NOTE, potsTitle, reckonedText, sheetName, STEPS_TITLE, stepTexts } from '../../words/sheetCustomer'
import type { Block } from '../block'
import type { Limit, SheetFacts } from '../facts'
import { footBlocks } from '../foot'
import { hangerPicture, namedParts } from '../hangerPicture'
import { heaviestFigure } from '../heaviestFigure'
import type { SheetOptions } from '../options'
import { ownVerdict } from '../../advice/ownVerdict'
import type { Page } from '../sheet'
import { signPicture, SIGNS } from '../signs'
import { placeBox, placeToFix, trialOf } from './placeBox'

const potsBlocks = ({ pots, check: { solved } }: Limit): readonly Block[] => [
  { kind: 'heading', level: 2, text: potsTitle(solved.tiers.length > 0) },
  { kind: 'list', items: pots.map(({ material, runs }) => potsText(material, runs, USUAL_RIMS[0] as number)) },
  { kind: 'paragraph', weight: 'small', text: POTS_NOTE },
]

/** Where no weight may be told, that is said in its place. */
const noFigure = (check: CheckResult): Block => ({ kind: 'paragraph', weight: 'strong', text: NO_WEIGHT_TOLD[ownVerdict(check) === 'fails' ? 'fails' : 'not enough known'] })

/** The hanger with its own pot, or with the heaviest where it has none. */
const picture = (facts: SheetFacts): Block => {
  const { check } = facts.answer
  return { kind: 'drawing', picture: hangerPicture(check), said: pictureText(facts.document.name), labels: namedParts(check).map(({ part, at }) => ({ at, text: PART_LABELS[part] })) }
}

const careBlocks = ({ care }: CheckResult, today: string): readonly Block[] => [
  { kind: 'heading', level: 2, text: LOOK_TITLE },
  { kind: 'paragraph', weight: 'plain', text: `${lookMonthsText(care.inspect, today)} ${replaceByText(care)} ${SIGNS_TEXT}` },
  { kind: 'pictures', items: SIGNS.map((sign) => ({ picture: signPicture(sign), caption: SIGN_TEXTS[sign] })) },
]

/** The front of a customer sheet: read in ten seconds. */
export function customerFront(facts: SheetFacts, { today }: SheetOptions): Page {
  const { answer: { check }, limit } = facts
  const { answers } = check.solved.hanger
  return {
    side: 'front',
    blocks: [
      { kind: 'heading', level: 1, text: sheetName(facts.document.name) },
      limit === null ? noFigure(check) : { kind: 'columns', columns: [{ width: 'wide', blocks: [heaviestFigure(limit, check)] }, { width: 'narrow', blocks: potsBlocks(limit) }] },
      {
        kind: 'columns', columns: [
          { width: 'even', blocks: [picture(facts), ...careBlocks(check, today)] },
          {
            width: 'even', blocks: [
              placeBox(facts),
              { kind: 'heading', level: 2, text: STEPS_TITLE },
              { kind: 'steps', items: stepTexts(placeToFix(facts), trialOf(facts)) },
              { kind: 'nevers', items: neverTexts(answers['place.beneath'], trialOf(facts)) },
              { kind: 'paragraph', weight: 'small', text: reckonedText(answers) },
            ],
          },
        ],
      },
    ],
    foot: footBlocks(check, today),
  }
}
