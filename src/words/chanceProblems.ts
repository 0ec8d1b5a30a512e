import type { ChanceProblem } from '../chance/problem'
import { FIELD_WORDS } from './fields'
import { LINK_NAMES } from './names'
import { problemText } from './problems'
import { countText } from './chanceCounts'

const quoted = (given: string): string => (given.trim() === '' ? 'nothing' : `“${given.trim()}”`)

/** Why no chance is told, in one sentence; of a file that cannot be read one for each fault. */
export function chanceProblemText(problem: ChanceProblem): string {
  switch (problem.code) {
    case 'BAD_SAMPLES': return `The number of hangers must be a whole number from 1 to ${countText(problem.most)}; ${quoted(problem.given)} was given.`
    case 'BAD_SEED': return `The seed must be a whole number from 0 to ${countText(problem.greatest)}; ${quoted(problem.given)} was given.`
    case 'UNREADABLE': return problem.problems.map(problemText).join(' ')
    case 'NO_POT': return 'There is no pot yet: say what pot hangs in it, or what it weighs, and chance can be reckoned.'
    case 'NO_HANGER': return 'There is no hanger yet: say how it is made, and chance can be reckoned.'
    case 'LOAD_NOT_KNOWN': return problem.open.length === 0
      ? 'No chance is told, for what was weighed is too light for the pot as drawn; set one of the two right first.'
      : `No chance is told while first questions are open; answer: ${problem.open.map((path) => FIELD_WORDS[path].label).join(', ')}.`
    case 'LEGS_NOT_KNOWN': return 'No chance is told, for the strength of the strands that carry the pot is not known well enough; weigh a length of the cord or pull some of it to breaking, and it can be.'
    case 'LEGS_REFUSED': return 'No chance is told, for the check refuses the legs as they are, whatever their strength; see what it says of them.'
    case 'NO_BALANCE': return 'No chance is told, for the pot does not come to rest in these strands; see what the check says of the legs.'
    case 'NOTHING_KNOWN': return `No chance is told, for no part is known well enough${problem.links.length === 0 ? '' : `: ${problem.links.map((link) => LINK_NAMES[link].toLowerCase()).join(', ')}`}.`
  }
}
