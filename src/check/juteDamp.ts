import { JUTE_NEVER_DRY } from '../catalogue/ageing'
import type { Answers } from '../hanger/fields'
import type { Finding } from './finding'
import { knotWetness } from './knotWetness'
import type { Verdict } from './verdict'

/**
 * What dripping water does to a gathering knot of jute, whatever its strength: splashed at every
 * watering it just holds at best (JUTE_DAMP), kept damp it is refused, or not enough known where the
 * pot may have no hole at all (JUTE_NEVER_DRY). Null for other fibres and dry knots.
 */
export function juteDamp(answers: Answers): { readonly finding: Finding; readonly atLeast: Verdict } | null {
  const wetness = knotWetness(answers)
  if (answers['cord.fibre'] !== 'jute' || wetness === 'dry') return null
  if (wetness === 'splashed') return { finding: { code: 'JUTE_DAMP' }, atLeast: 'just holds' }
  const holeKnown = answers['pot.drainage'] === 'hole'
  return { finding: { code: 'JUTE_NEVER_DRY', lost: JUTE_NEVER_DRY.value, holeKnown }, atLeast: holeKnown ? 'fails' : 'not enough known' }
}
