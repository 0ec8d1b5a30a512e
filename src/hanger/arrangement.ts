import type { Answers } from './fields'

type TopAnswers = Pick<Answers, 'make.arrangement' | 'make.top'>
type StickAnswers = TopAnswers & Pick<Answers, 'place.support'>

/**
 * What the strands of one hanger hang from; a panel always from its stick.
 * @example hangsFrom({ 'make.arrangement': 'panel', 'make.top': 'ring' }) // 'stick'
 */
export const hangsFrom = (answers: TopAnswers): Answers['make.top'] => (answers['make.arrangement'] === 'panel' ? 'stick' : answers['make.top'])

/**
 * Whether there is a stick at all: under the strands themselves, or over several hangers unless each goes round the beam or rail itself.
 * @example hasStick({ 'make.arrangement': 'row', 'make.top': 'ring', 'place.support': 'ceilingHook' }) // true
 */
export const hasStick = (answers: StickAnswers): boolean =>
  hangsFrom(answers) === 'stick' || (answers['make.arrangement'] === 'row' && answers['place.support'] !== 'overBeam')

/**
 * Whether the strands hang from a ring that lies level as a hoop, on cords of its own.
 * @example liesLevel({ 'make.arrangement': 'legs', 'make.top': 'ring', 'ring.lies': 'level' }) // true
 */
export const liesLevel = (answers: TopAnswers & Pick<Answers, 'ring.lies'>): boolean =>
  answers['make.arrangement'] === 'legs' && answers['make.top'] === 'ring' && answers['ring.lies'] === 'level'

/** Whether these are the answers of a lower pot alone, told as a hanger of one pot, on strands or cords that come out of the wraps above it. */
export const hangsFromKnot = (answers: Pick<Answers, 'make.arrangement' | 'tiers.count' | 'tiers.how'>): boolean =>
  answers['make.arrangement'] === 'tiers' && answers['tiers.count'] === 1 && answers['tiers.how'] !== 'ownCords'
