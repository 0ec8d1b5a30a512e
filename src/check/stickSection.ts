import { BAMBOO_HOLLOW } from '../catalogue/sticks'
import type { Answers } from '../hanger/fields'
import { metres } from '../quantity/si'
import { roundSection, tubeSection, type Section } from '../statics/section'

/** The hollow of a bamboo, measured or taken wide; nothing in a solid stick. */
export const stickHollow = (answers: Answers): number =>
  (answers['stick.wood'] === 'bamboo' ? answers['stick.hollow'] ?? BAMBOO_HOLLOW.value * answers['stick.diameter'] : 0)

/** The cross-section of the stick. */
export const stickSection = (answers: Answers): Section => {
  const hollow = stickHollow(answers)
  return hollow > 0 ? tubeSection(metres(answers['stick.diameter']), metres(hollow)) : roundSection(metres(answers['stick.diameter']))
}
