import type { Basis } from '../catalogue/basis'

/** What each basis means to a maker, the best known first. */
export const BASIS_MEANINGS: Readonly<Record<Basis, string>> = {
  'your own': 'you weighed, measured or tested it',
  'told by customer': 'somebody told you; better than assumed, worse than measured',
  'published': 'read in the source that is named',
  'computed': 'worked out here from other values',
  'common practice': 'the trade does it so, or a judgement; nobody has published it',
  'from memory': 'not looked up again: a starting value, to be checked before much hangs on it',
}
