import type { Answers } from '../hanger/fields'

/** Wire and width inside that are drawn where they were not measured, m, and links of a chain of unknown length. */
const UNMEASURED = { wire: 0.004, inside: 0.016 } as const
export const CHAIN_LINKS = 4

/** Thickness and width inside that are drawn, m. */
export const wireOf = (answers: Answers): number => answers['connector.wire'] ?? UNMEASURED.wire
export const insideOf = (answers: Answers): number => answers['connector.inside'] ?? UNMEASURED.inside

/** Length drawn for what hangs between hook and hanger, from where it hangs to where it carries, m. Chains may be of any length: some links stand for it. */
export function connectorLength(answers: Answers): number {
  switch (answers['connector.kind']) {
    case 'none': return 0
    case 'sHook': return 2 * insideOf(answers) + wireOf(answers)
    case 'chain': return CHAIN_LINKS * 1.5 * insideOf(answers)
    case 'carabiner': return 3 * insideOf(answers)
    case 'swivel': return 2.6 * insideOf(answers)
  }
}
