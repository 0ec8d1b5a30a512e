import { REFUSAL_LIFTED_BY, REFUSED_SUPPORTS, type RefusedSupport, type Refusal } from '../../../catalogue/refusals'
import type { Answers } from '../../../hanger/fields'

const isRefusedSupport = (substrate: string): substrate is RefusedSupport => (REFUSED_SUPPORTS as readonly string[]).includes(substrate)

/** What a rod, or a rail that cords go round, is rated for by its maker, N; null where it is not. */
export const ratedBar = (answers: Answers): number | null => answers['bracket.rated'] ?? answers['fixing.rated']

/**
 * Why nothing is hung so, whatever the numbers say; null where nothing speaks against it. `pulledForGood`: something
 * pulls the fixing straight out at rest. A rod is not refused where its bracket is rated, nor one plug overhead where
 * its packet rates it for that pull; a rating of the rod lifts no refusal of what is stuck or nailed to it; where the packet leaves the way open that is asked first.
 */
export function refusalOf(answers: Answers, pulledForGood: boolean): Refusal | null {
  const { 'place.substrate': substrate, 'place.support': support, 'fixing.kind': kind } = answers
  const rodIsRated = isRefusedSupport(substrate) && REFUSAL_LIFTED_BY[substrate] === 'bracketRated' && ratedBar(answers) !== null
  if (isRefusedSupport(substrate) && !rodIsRated) return substrate
  if (support === 'overBeam') return null
  const overhead = support === 'ceilingHook'
  if (substrate === 'plasterboard' && overhead) return 'plasterboardCeiling'
  if (kind === 'adhesive') return 'adhesiveHook'
  if (kind === 'magnet') return 'magneticHook'
  if (kind === 'resinAnchor' && overhead) return 'resinAnchorOverhead'
  if (kind === 'plug' && overhead && (answers['fixing.rated'] === null || answers['fixing.ratedFor'] === 'shear')) return 'plasticPlugOverhead'
  if (kind === 'nail' && pulledForGood) return 'smoothNailPulledOut'
  if (substrate === 'timber' && answers['fixing.grain'] === 'end' && answers['fixing.rated'] === null && kind !== 'lagScrew') return kind === 'nail' ? 'nailInEndGrain' : 'screwInEndGrain'
  return null
}
