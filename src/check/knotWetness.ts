import type { Answers } from '../hanger/fields'

/**
 * How wet the gathering knot gets from the pot: `dry` where no water runs out, or a cover pot keeps
 * it; `splashed` at every watering, or when a saucer runs over; `never dry` where the next water
 * comes, or the air is wet, before it has dried.
 */
export type KnotWetness = 'dry' | 'splashed' | 'never dry'

/** A pot of which it is not known whether water can run out counts as one with a hole. */
export function knotWetness(answers: Answers): KnotWetness {
  if (answers['pot.drainage'] === 'none' || answers['cover.inside'] !== null) return 'dry'
  if (answers['saucer.width'] !== null) return 'splashed'
  return answers['place.watering'] === 'daily' || answers['place.exposure'] !== 'indoors' ? 'never dry' : 'splashed'
}
