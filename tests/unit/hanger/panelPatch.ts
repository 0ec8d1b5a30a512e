/** A wall planter of which everything is said: 4 kg watered on 12 cords of weighed 4 mm cotton, a beech stick on a screw hook in a stud, over furniture. */
export const PANEL = {
  'pot.rim': '170 mm', 'pot.height': '155 mm', 'pot.base': '120 mm', 'pot.material': 'terracotta', 'pot.drainage': 'hole',
  'weighed.mass': '4 kg', 'weighed.state': 'watered', 'plant.height': '18 cm', 'seat.offset': '6 mm',
  'make.arrangement': 'panel', 'make.fringe': '15 cm', 'make.tolerance': '8 mm',
  'panel.width': '230 mm', 'panel.height': '26 cm', 'panel.rise': '80 mm', 'panel.front': '4', 'panel.behind': '4', 'panel.behindWidth': '60 mm', 'panel.thickness': '10 mm', 'panel.cords': '12',
  'cord.fibre': 'cotton', 'cord.make': 'loose', 'cord.diameter': '4 mm', 'cord.linearDensity': '9 g/m',
  'cradle.kind': 'net', 'cradle.first': '95 mm',
  'stick.wood': 'americanBeech', 'stick.diameter': '20 mm', 'stick.grain': 'straight', 'stick.length': '320 mm', 'stick.span': '280 mm', 'stick.topCord': '50 cm', 'stick.topStrands': '4',
  'hook.kind': 'closed', 'hook.rated': '40 kgf', 'hook.wire': '6 mm', 'hook.projection': '30 mm',
  'place.support': 'wallHook', 'place.substrate': 'timber', 'fixing.kind': 'screwHook', 'fixing.diameter': '6 mm', 'fixing.penetration': '45 mm', 'place.beneath': 'furniture',
} as const
