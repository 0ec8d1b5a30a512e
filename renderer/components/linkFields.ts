import type { FieldPath, LinkCode } from '#core'

const CORD: readonly FieldPath[] = ['cord.fibre', 'cord.make', 'cord.diameter', 'cord.linearDensity', 'cord.rated']

/** The answers that decide a part, shown on its card. */
export const LINK_FIELDS: Readonly<Record<LinkCode, readonly FieldPath[]>> = {
  fixing: ['place.substrate', 'place.timber', 'fixing.rated', 'fixing.diameter', 'fixing.penetration', 'fixing.proof', 'place.beneath'],
  hook: ['hook.kind', 'hook.rated', 'hook.metal', 'hook.wire', 'hook.inside', 'place.beneath'],
  hookShank: ['hook.metal', 'hook.wire', 'hook.projection'],
  ring: ['make.top', 'ring.rated', 'ring.metal', 'ring.wire', 'ring.inside'],
  leg: ['make.legs', 'make.strands', 'make.build', 'make.joined', ...CORD, 'make.legLength', 'make.totalLength', 'make.fringe', 'make.tolerance', 'place.exposure', 'place.life'],
  seat: ['cradle.kind', 'cradle.first', 'pot.rim', 'pot.height', 'pot.base', 'plant.height', 'seat.offset'],
  gatheringTurn: ['make.strands', ...CORD, 'pot.drainage', 'place.exposure', 'place.watering', 'place.life'],
  wrapHoop: ['make.legs', 'make.strands', ...CORD, 'place.life'],
  gatheringGrip: ['testHang.mass', 'testHang.time', 'testHang.slip', 'gathering.wraps', 'cord.fibre'],
  load: ['weighed.mass', 'weighed.state', 'pot.rim', 'pot.height', 'pot.base', 'pot.material', 'pot.wall', 'pot.emptyMass', 'pot.drainage', 'pot.fillGap', 'mix.kind', 'plant.mass', 'plant.height'],
}
