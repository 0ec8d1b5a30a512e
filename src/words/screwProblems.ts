import type { ScrewPart, ScrewProblem } from '../hanger/readScrew'
import { lengthText, plainLengthText } from './amounts'
import { quantityText } from './quantityProblems'

const PART_WORDS: Readonly<Record<ScrewPart, string>> = { diameter: 'thickness', length: 'length', thread: 'length of the thread' }

const WORDS: { readonly [C in ScrewProblem['code']]: (problem: Extract<ScrewProblem, { code: C }>) => string } = {
  NO_SCREW: ({ text }) => `${text === '' ? 'No screw was named' : `“${text}” names no screw`}: write it as on the packet, such as 4 x 40 mm or #8 x 1 1/2 in.`,
  BAD_SCREW_PART: ({ part, why }) => `The screw’s ${PART_WORDS[part]}: ${quantityText(why)}.`,
  UNKNOWN_GAUGE: ({ gauge, known }) => `There is no screw No. ${gauge}; known are ${known.slice(0, -1).join(', ')} and ${known.at(-1) ?? ''}.`,
  GAUGE_OR_MILLIMETRES: ({ number, gaugeDiameter }) => `“${number}” may be ${number} mm thick or a No. ${number}, which is ${plainLengthText(gaugeDiameter)} thick: write M${number} or #${number}.`,
  SCREW_OUT_OF_RANGE: ({ part, min, max }) => `The screw’s ${PART_WORDS[part]} must be ${lengthText(min)} to ${lengthText(max)}.`,
  THREAD_LONGER_THAN_SCREW: ({ thread, length }) => `The thread, ${lengthText(thread)}, cannot be longer than the screw, ${lengthText(length)}.`,
}

/** What is wrong with the name of a screw, as a sentence. */
export const screwProblemText = (problem: ScrewProblem): string => (WORDS[problem.code] as (p: ScrewProblem) => string)(problem)
