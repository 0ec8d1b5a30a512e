import type { Choice } from '../choosing/choice'
import type { HangerDocument } from '../hanger/document'
import { checksText, choiceGroupNotes, choiceLimitText, choiceNotes, choiceNowText, choiceSettlingTexts, choiceValueText, noChoiceText, standText } from '../words/choosing'
import { choiceName, choiceOfText } from '../words/choosingNames'

function choiceLines(choice: Choice): readonly string[] {
  const name = choice.of === null ? '' : `${choiceOfText(choice.of)}: `
  if (!choice.found) return [`${name}${noChoiceText(choice)}`, ...choiceSettlingTexts(choice).map((line) => `  ${line}`)]
  const now = choice.now === null ? '' : `, now ${choiceNowText(choice)}`
  return [`${name}${choiceValueText(choice)}${now} (${checksText(choice)})`, ...[standText(choice.stand), choiceLimitText(choice), ...choiceNotes(choice)].filter((line) => line !== '').map((line) => `  ${line}`)]
}

/** The readable answers for the hanger of one file, under their questions. */
export function chooseTable(file: string, document: HangerDocument, choices: readonly Choice[]): string {
  const asked = [...new Set(choices.map(({ choice }) => choice))]
  const lines = asked.flatMap((code) => {
    const answers = choices.filter(({ choice }) => choice === code)
    return ['', ...answers.slice(0, 1).map(choiceName), ...new Set(answers.flatMap(choiceGroupNotes)), ...answers.flatMap(choiceLines).map((line) => `  ${line}`)]
  })
  return [document.name === '' ? file : document.name, ...lines, ''].join('\n')
}
