import type { Answers, FieldPath } from './fields'

type Rule = (a: Answers) => boolean

const hasPot: Rule = (a) => a['pot.have'] === 'yes'
const hasHanger: Rule = (a) => a['make.have'] === 'yes'
const estimatesPot: Rule = (a) => a['weighed.mass'] === null && hasPot(a)
const wireHook: Rule = (a) => a['hook.rated'] === null
const wireRing: Rule = (a) => a['make.top'] === 'ring' && a['ring.rated'] === null
const inTimber: Rule = (a) => a['place.substrate'] === 'timber' && a['fixing.rated'] === null
const cordGuess: Rule = (a) => a['cord.rated'] === null

/** Fields that only matter beside certain answers to others; the rest always do. */
const RULES: Readonly<Partial<Record<FieldPath, Rule>>> = {
  'pot.material': estimatesPot,
  'pot.wall': (a) => estimatesPot(a) && a['pot.emptyMass'] === null,
  'pot.emptyMass': estimatesPot,
  'weighed.mass': hasPot,
  'weighed.state': (a) => hasPot(a) && a['weighed.mass'] !== null,
  'plant.mass': hasPot,
  'cord.make': cordGuess,
  'cord.diameter': hasHanger,
  'testHang.mass': hasHanger,
  'testHang.time': (a) => a['testHang.mass'] !== null,
  'testHang.slip': (a) => a['testHang.mass'] !== null,
  'ring.rated': (a) => a['make.top'] === 'ring',
  'ring.metal': wireRing,
  'ring.wire': (a) => a['make.top'] === 'ring',
  'ring.inside': (a) => a['make.top'] === 'ring',
  'hook.inside': wireHook,
  'place.timber': inTimber,
  'fixing.rated': (a) => a['place.substrate'] === 'timber' || a['place.substrate'] === 'masonry',
  'fixing.diameter': inTimber,
  'fixing.penetration': inTimber,
  'fixing.proof': inTimber,
}

/** Whether a field has a bearing on this hanger: asked in the form, listed among what is assumed. */
export const isRelevant = (path: FieldPath, answers: Answers): boolean => RULES[path]?.(answers) ?? true
