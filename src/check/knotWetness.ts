import type { Answers } from '../hanger/fields'
import { hasCover } from '../load/drainage'
import { hasSaucer } from '../load/saucer'

/**
 * How wet the gathering knot gets from the pot: `dry` where no water runs out, or a cover pot or
 * saucer keeps it; `splashed` at every watering; `never dry` where the next water comes, or the air
 * is wet, before it has dried. A saucer that is filled so often runs over.
 */
export type KnotWetness = 'dry' | 'splashed' | 'never dry'

/** A pot of which it is not known whether water can run out counts as one with a hole. */
export function knotWetness(answers: Answers): KnotWetness {
  if (answers['pot.drainage'] === 'none' || hasCover(answers)) return 'dry'
  const dries = answers['place.watering'] === 'weekly' && answers['place.exposure'] === 'indoors'
  if (hasSaucer(answers)) return dries ? 'dry' : 'splashed'
  return dries ? 'splashed' : 'never dry'
}
