import { partOf, type FieldPath, type LinkCode, type PartKey } from '#core'

const CORD: readonly FieldPath[] = ['cord.fibre', 'cord.make', 'cord.diameter', 'cord.linearDensity', 'cord.weighedMass', 'cord.weighedLength', 'cord.rated']

/** The answers that decide a part, shown on its card. */
export const LINK_FIELDS: Readonly<Record<LinkCode, readonly FieldPath[]>> = {
  fixing: [
    'place.support', 'place.substrate', 'place.timber', 'fixing.kind', 'fixing.screw', 'fixing.diameter', 'fixing.penetration', 'fixing.plugHole', 'fixing.count', 'fixing.rated', 'fixing.ratedFor', 'fixing.ratedShear',
    'bracket.reach', 'bracket.screws', 'bracket.top', 'bracket.bottom', 'bracket.wide', 'fixing.proof', 'place.beneath',
  ],
  bracket: ['bracket.rated', 'bracket.reach', 'bracket.metal', 'bracket.thick', 'bracket.high', 'place.beneath'],
  pin: ['hook.projection', 'hook.wire', 'hook.metal', 'fixing.kind', 'fixing.diameter', 'fixing.penetration', 'fixing.between', 'place.beneath'],
  hook: ['hook.kind', 'hook.rated', 'hook.metal', 'hook.wire', 'hook.inside', 'place.beneath'],
  hookShank: ['hook.metal', 'hook.wire', 'hook.projection', 'place.wind', 'place.reach'],
  connector: ['connector.kind', 'connector.rated', 'connector.joint', 'connector.metal', 'connector.wire', 'connector.inside', 'place.beneath'],
  topCord: ['row.count', 'row.spacing', 'row.others', 'stick.topCord', 'stick.topStrands', 'stick.over', 'stick.span', 'stick.held', 'hook.wire', ...CORD, 'place.beneath', 'place.exposure', 'place.life'],
  stick: ['panel.width', 'row.count', 'row.spacing', 'row.others', 'make.top', 'stick.wood', 'stick.diameter', 'stick.hollow', 'stick.state', 'stick.grain', 'stick.length', 'stick.held', 'stick.span', 'stick.bunch', 'stick.topCord', 'testHang.mass', 'testHang.time'],
  ringCord: ['ring.lies', 'ring.cords', 'ring.cordStrands', 'ring.rise', 'ring.inside', 'ring.wire', 'hook.wire', ...CORD, 'place.beneath', 'place.exposure', 'place.life'],
  ring: ['make.top', 'ring.lies', 'ring.rated', 'ring.metal', 'ring.wire', 'ring.inside', 'testHang.mass', 'testHang.time'],
  leg: ['panel.width', 'panel.front', 'panel.behind', 'panel.cords', 'panel.height', 'panel.rise', 'panel.behindWidth', 'panel.thickness', 'panel.knots', 'panel.knotSpacing', 'make.legs', 'make.strands', 'make.build', 'make.joined', ...CORD, 'make.legLength', 'make.totalLength', 'make.fringe', 'place.exposure', 'place.life'],
  cradle: ['cradle.kind', 'cradle.first', 'cradle.second', 'pot.base', 'pot.height', 'make.legs', 'plant.height'],
  seat: ['panel.rise', 'cradle.kind', 'cradle.first', 'pot.rim', 'pot.height', 'pot.base', 'pot.strandsAt', 'plant.height', 'seat.offset'],
  gatheringTurn: ['panel.front', 'panel.behind', 'make.strands', ...CORD, 'pot.drainage', 'place.exposure', 'place.watering', 'place.life'],
  wrapHoop: ['make.legs', 'make.strands', ...CORD, 'place.life'],
  gatheringGrip: ['testHang.mass', 'testHang.volume', 'testHang.time', 'testHang.slip', 'testHang.date', 'gathering.wraps', 'cord.fibre'],
  load: [
    'weighed.mass', 'weighed.state', 'weighed.tare', 'pot.shape', 'pot.rim', 'pot.length', 'pot.belly', 'pot.bellyHeight', 'pot.height', 'pot.base', 'pot.material', 'pot.emptyMass', 'pot.drainage',
    'mix.kind', 'plant.size', 'plant.mass', 'plant.height', 'place.wind', 'plant.width', 'plant.trail', 'place.reach',
  ],
}

/** Further answers that bear on a part but are seldom given; folded away on its card. */
export const RARE_FIELDS: Readonly<Partial<Record<LinkCode, readonly FieldPath[]>>> = {
  fixing: ['place.known', 'fixing.length', 'fixing.between', 'fixing.timberDepth', 'fixing.grain', 'rail.others'],
  leg: ['cord.lot', 'make.fillers', 'make.knotted', 'make.cords', 'make.cutLength', 'takeUp.cut', 'takeUp.finished', 'make.tolerance', 'make.date', 'make.code', 'make.customer', 'make.maker', 'make.contact', 'pot.edge', 'reserve.own', 'reserve.reason'],
  seat: ['pot.shape', 'pot.length', 'pot.belly', 'pot.bellyHeight'],
  gatheringGrip: ['gathering.cordLength', 'gathering.tails'],
  load: [
    'pot.wall', 'pot.fillGap', 'mix.bulkDensity', 'mix.capacity', 'mix.porosity', 'layer.depth', 'layer.kind', 'topping.depth', 'topping.kind',
    'saucer.width', 'saucer.depth', 'saucer.mass', 'reservoir.volume', 'cover.inside', 'cover.height', 'cover.mass', 'plant.kind', 'plant.growth',
  ],
}

/** What is told of a lower pot by itself, beside its parts; of the first that there are others, with all their weights beside what hangs. */
export function tierFields(part: PartKey): readonly FieldPath[] {
  const { link, tier } = partOf(part)
  if (tier > 1) return tierAnswers(tier === 2 ? 'second' : 'third', link)
  if (link === 'gatheringGrip') return ['tiers.how', 'tiers.tested']
  return link === 'load' ? ['tiers.count', 'tiers.how', 'second.mass', 'second.state', 'third.mass', 'third.state'] : []
}

function tierAnswers(pot: 'second' | 'third', link: LinkCode): readonly FieldPath[] {
  if (link === 'seat') return [`${pot}.first`, `${pot}.rim`, `${pot}.height`, `${pot}.base`]
  if (link === 'leg') return ['tiers.how', `${pot}.strand`, `${pot}.strands`, `${pot}.mass`, `${pot}.state`]
  return link === 'gatheringGrip' ? ['tiers.how', 'tiers.tested'] : [`${pot}.strands`]
}
