import type { Answers } from '../hanger/fields'

type Vessels = Pick<Answers, 'pot.drainage' | 'cover.inside' | 'cover.mass' | 'reservoir.volume'>

/** Whether a pot stands in a cover pot that hangs with it. */
export const hasCover = (answers: Pick<Vessels, 'cover.inside' | 'cover.mass'>): boolean => answers['cover.inside'] !== null || answers['cover.mass'] !== null

/** Whether a cover pot or a reservoir keeps what runs out of the pot. */
export const keepsWater = (answers: Vessels): boolean => hasCover(answers) || answers['reservoir.volume'] !== null

/** Whether water can run out of all that hangs: never where a cover pot or a reservoir keeps it. */
export const drainageOf = (answers: Vessels): Answers['pot.drainage'] => (keepsWater(answers) ? 'none' : answers['pot.drainage'])
