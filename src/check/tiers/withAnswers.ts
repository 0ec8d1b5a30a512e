import type { Answers } from '../../hanger/fields'
import type { Solved } from '../solved'

/** The same solved hanger, judged by some other answers; of several pots each. */
export function withAnswers(solved: Solved, patch: Partial<Answers>): Solved {
  const { hanger, tiers } = solved
  return {
    ...solved,
    hanger: { ...hanger, answers: { ...hanger.answers, ...patch } },
    tiers: tiers.map(({ tier, hung, alone }) => ({ tier, hung: withAnswers(hung, patch), alone: withAnswers(alone, patch) })),
  }
}
