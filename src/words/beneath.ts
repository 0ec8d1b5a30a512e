import type { BeneathChoice } from '../advice/beneathChoices'
import { numberText } from './amounts'
import { CAUTION_TEXTS } from './cautions'

/** What one answer to "what is beneath" changes, line by line. */
export function beneathTexts({ reserve, reserveOnRated, openHook, redundant, cautions }: BeneathChoice): readonly string[] {
  const rated = reserveOnRated === 1 ? 'ratings on packets are used as they are' : `ratings on packets are divided by ${numberText(reserveOnRated)}`
  return [
    `Reserve ${numberText(reserve)} on cord, wire and wood; ${rated}.`,
    openHook ? 'An open hook will do.' : 'A closed eye, or a hook with a latch: an open hook is refused.',
    redundant ? 'One strand that parts must not let the pot fall.' : 'What happens when a strand or leg parts is told, and decides nothing.',
    ...cautions.map((caution) => CAUTION_TEXTS[caution]),
  ]
}
