import { PROOF_PULL } from '../../../catalogue/reserves'
import { STANDARD_GRAVITY } from '../../../quantity/si'
import { placeLoad } from '../../placeLoad'
import type { Solved } from '../../solved'

/**
 * What to pull or hang on a fixing in place before the pot goes up, kg: all that hangs there at its wettest, with the
 * share more that guidance on site tests asks for.
 */
export const pullInPlaceMass = (solved: Solved): number =>
  PROOF_PULL.value * (Math.max(placeLoad(solved, 'watered').load, placeLoad(solved, 'flooded').load) / STANDARD_GRAVITY)
