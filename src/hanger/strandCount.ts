import type { Answers } from './fields'

type StrandAnswers = Pick<Answers, 'make.arrangement' | 'make.legs' | 'make.strands' | 'panel.front' | 'panel.behind'>

/**
 * Strands that come together in the gathering knot: of all legs, or of both corners of a panel and behind the pot.
 * @example gatheredStrands({ 'make.arrangement': 'panel', 'make.legs': 4, 'make.strands': 4, 'panel.front': 3, 'panel.behind': 5 }) // 11
 */
export const gatheredStrands = (answers: StrandAnswers): number =>
  (answers['make.arrangement'] === 'panel' ? 2 * answers['panel.front'] + answers['panel.behind'] : answers['make.legs'] * answers['make.strands'])
