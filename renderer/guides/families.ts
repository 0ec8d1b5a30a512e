import { isRelevant, type Answers, type FieldPath } from '#core'

/** Fields measured on one drawing, in the order a tape is laid; the drawing is known by the name of its family. */
export const FAMILIES = {
  pot: ['pot.rim', 'pot.base', 'pot.height', 'pot.belly', 'pot.bellyHeight'],
  trough: ['pot.length'],
  inside: ['pot.wall', 'pot.fillGap', 'topping.depth', 'layer.depth'],
  vessels: ['saucer.width', 'saucer.depth', 'cover.inside', 'cover.height'],
  plant: ['plant.height', 'plant.width', 'plant.trail', 'seat.offset'],
  cord: ['cord.diameter'],
  cordWeight: ['cord.weighedLength', 'cord.weighedMass', 'cord.linearDensity'],
  lengths: ['make.totalLength', 'make.fringe', 'make.legLength', 'make.knotted', 'make.tolerance'],
  sample: ['takeUp.finished', 'takeUp.cut'],
  cradle: ['cradle.first', 'cradle.second'],
  wraps: ['gathering.wraps', 'gathering.tails'],
  ring: ['ring.wire', 'ring.inside'],
  levelRing: ['ring.rise'],
  stick: ['stick.diameter', 'stick.hollow', 'stick.length', 'stick.span', 'stick.bunch', 'stick.topCord'],
  row: ['row.spacing'],
  connector: ['connector.wire', 'connector.inside'],
  hook: ['hook.wire', 'hook.inside', 'hook.projection'],
  screw: ['fixing.penetration', 'fixing.diameter', 'fixing.length', 'fixing.between', 'fixing.timberDepth'],
  bracket: ['bracket.reach', 'bracket.top', 'bracket.bottom', 'bracket.wide', 'bracket.thick', 'bracket.high'],
  panel: ['panel.width', 'panel.height', 'panel.rise', 'panel.behindWidth', 'panel.knotSpacing', 'panel.thickness'],
  second: ['second.rim', 'second.base', 'second.height'],
  secondStrand: ['second.strand', 'second.first'],
  third: ['third.rim', 'third.base', 'third.height'],
  thirdStrand: ['third.strand', 'third.first'],
} as const satisfies Readonly<Record<string, readonly FieldPath[]>>

export type Family = keyof typeof FAMILIES
export type MeasuredPath = (typeof FAMILIES)[Family][number]

/** Lengths for which no tape is laid, with the reason. */
export const NOT_MEASURED: Readonly<Partial<Record<FieldPath, string>>> = {
  'cord.rollLength': 'printed on the label of the roll',
  'cord.onRoll': 'reckoned from the label and what was cut: nobody unwinds a roll to measure it',
  'make.cutLength': 'written down when the cords are cut; knotted, none can be measured any more',
  'gathering.cordLength': 'written down when it is cut; leave it open to be told what to cut',
  'testHang.slip': 'read off in the guide to the test hang',
  'fixing.plugHole': 'printed on the plug, for it is the size of the drill',
}

const FAMILY_OF: ReadonlyMap<FieldPath, Family> = new Map((Object.keys(FAMILIES) as Family[]).flatMap((family) => FAMILIES[family].map((path) => [path, family] as const)))

/** The drawing on which a field is measured, or null where no tape is laid. */
export const familyOf = (path: FieldPath): Family | null => FAMILY_OF.get(path) ?? null

/**
 * What is measured alike on the first pot, so that drawing and words are those: the rim of the third as the first’s.
 * @example likeOf('third.rim') // 'pot.rim'
 */
export function likeOf(path: MeasuredPath): MeasuredPath {
  const [pot, what] = path.split('.')
  if (pot !== 'second' && pot !== 'third') return path
  const like = what === 'strand' ? 'second.strand' : what === 'first' ? 'cradle.first' : `pot.${what ?? ''}`
  return like as MeasuredPath
}

/** What is measured on the drawing of a field: that field, and the others of it that bear on this hanger. */
export function measuredWith(path: MeasuredPath, answers: Answers | null): readonly MeasuredPath[] {
  const family: readonly MeasuredPath[] = FAMILIES[FAMILY_OF.get(path) ?? 'pot']
  return family.filter((other) => other === path || answers === null || isRelevant(other, answers))
}
