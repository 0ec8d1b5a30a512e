/** A hanger on which everything is said: 6 kg flooded over furniture, weighed 3 mm loose cotton, rated hook in a pulled joist. */
export const ORDINARY = {
  'pot.rim': '210 mm', 'pot.height': '185 mm', 'pot.base': '140 mm', 'pot.material': 'terracotta', 'pot.drainage': 'hole',
  'weighed.mass': '6 kg', 'weighed.state': 'flooded', 'plant.height': '20 cm',
  'make.legs': '4', 'make.strands': '4', 'make.build': 'sinnet', 'make.totalLength': '105 cm', 'make.fringe': '22 cm',
  'cord.fibre': 'cotton', 'cord.make': 'loose', 'cord.diameter': '3 mm', 'cord.linearDensity': '4.8 g/m',
  'cradle.first': '115 mm', 'ring.wire': '5 mm', 'hook.kind': 'closed', 'hook.rated': '40 kgf', 'hook.wire': '6 mm', 'hook.projection': '30 mm',
  'place.substrate': 'timber', 'fixing.diameter': '6 mm', 'fixing.penetration': '45 mm', 'fixing.proof': '10 kg', 'place.beneath': 'furniture',
} as const
