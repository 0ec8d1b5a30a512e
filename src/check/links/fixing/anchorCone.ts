import { CONCRETE_CONE, WEAK_CONCRETE } from '../../../catalogue/concrete'
import type { Answers } from '../../../hanger/fields'
import { metres, pascals } from '../../../quantity/si'
import { concreteCone } from '../../concreteCone'
import type { Term } from '../../linkResult'
import { entering, fromCatalogue, worked } from '../../term'

/**
 * Of an anchor in concrete of known depth, the cone that would break out of weak, cracked concrete: shown as what it
 * cannot exceed, never counted as what it bears.
 */
export function anchorCone(answers: Answers): readonly Term[] {
  const length = answers['fixing.length']
  const depth = length === null ? 0 : length - answers['fixing.between']
  const anchored = ['metalAnchor', 'resinAnchor'].includes(answers['fixing.kind']) && answers['place.substrate'] === 'concrete'
  if (!anchored || depth <= 0) return []
  const cone = concreteCone('crackedPostInstalled', pascals(WEAK_CONCRETE.value), metres(depth))
  return [
    entering('anchorDepth', 'h_ef', depth, 'm', 'your own', 'depth of the anchor in the concrete'),
    fromCatalogue('coneConstant', 'k_c', CONCRETE_CONE.crackedPostInstalled),
    fromCatalogue('concreteStrength', 'f_c', WEAK_CONCRETE),
    worked('coneBound', 'R_cone', cone, 'N', 'k_c * sqrt(f_c) * h_ef^1.5', 'no anchor bears more than this cone, and many pull out long before'),
  ]
}
