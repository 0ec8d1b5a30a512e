import type { Choice, ChoiceOf } from '../choosing/choice'
import type { ChoiceCode } from '../choosing/question'
import { FIELD_WORDS } from './fields'
import { PLACE_FORM_NAMES, USUAL_PLACE_NAMES } from './placeNeeds'

/** What is asked, as a heading. */
export const CHOICE_NAMES: Readonly<Record<ChoiceCode, string>> = {
  cord: 'Smallest cord',
  strands: 'Fewest strands in each leg',
  legs: 'Fewest legs',
  shortestLeg: 'Shortest legs',
  longestLeg: 'Longest legs',
  stick: 'Thinnest stick',
  wraps: 'Fewest wraps of the gathering knot',
  fixing: 'Smallest fixing',
  heaviestPot: 'Heaviest pot, just watered',
  largestRim: 'Widest pot at the rim',
}

/** What is asked of this hanger: lengths by the field that was varied, of a panel the strands in front. */
export function choiceName({ choice, field }: Pick<Choice, 'choice' | 'field'>): string {
  if (field === 'panel.front') return 'Fewest strands round the front from each corner'
  if (field === 'make.totalLength') return choice === 'shortestLeg' ? 'Shortest hanger, by its whole length' : 'Longest hanger, by its whole length'
  return CHOICE_NAMES[choice]
}

const choiceOfField = (path: 'cord.fibre' | 'cord.make', value: string): string => FIELD_WORDS[path].choices[value] ?? value

/** Which cord, or what form of fixing where, an answer is about. */
export function choiceOfText(of: ChoiceOf): string {
  switch (of.kind) {
    case 'shelf': return of.name
    case 'catalogue': return `${choiceOfField('cord.fibre', of.fibre)}, ${choiceOfField('cord.make', of.make)}`
    case 'fixing': return `${USUAL_PLACE_NAMES[of.place]}: ${PLACE_FORM_NAMES[of.form][1]}`
  }
}
