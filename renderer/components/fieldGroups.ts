import { fieldOf, FIELD_PATHS, type FieldPath } from '#core'
import { texts } from '../texts/texts'

const t = texts.form
type GroupCode = keyof typeof t.groups

/** A heading of the form and the groups of the hanger file that stand under it. */
const HEADINGS: readonly { readonly code: GroupCode, readonly groups: readonly string[] }[] = [
  { code: 'pot', groups: ['pot', 'weighed', 'seat'] },
  { code: 'filling', groups: ['mix', 'layer', 'topping', 'plant'] },
  { code: 'water', groups: ['saucer', 'reservoir', 'cover'] },
  { code: 'cord', groups: ['cord'] },
  { code: 'making', groups: ['make', 'takeUp', 'panel', 'tiers', 'second', 'third', 'cradle', 'gathering', 'testHang', 'ring'] },
  { code: 'place', groups: ['hook', 'connector', 'place', 'fixing', 'reserve'] },
  { code: 'bars', groups: ['stick', 'row', 'rail', 'bracket'] },
]

/** Answered by the three doors, and what is asked beside them. */
const DOORS: ReadonlySet<FieldPath> = new Set(['pot.have', 'make.have', 'make.stage'])

/** Asked beside the first question that calls for them, where a maker has them at hand: the tub on the scale, the long side of a trough. */
export const FOLLOW_UPS: ReadonlySet<FieldPath> = new Set(['pot.length', 'pot.belly', 'pot.bellyHeight', 'weighed.tare'])

const isFirst = (path: FieldPath): boolean => fieldOf(path).first || FOLLOW_UPS.has(path)

/** Nothing is asked where only one answer exists. */
const isAsked = (path: FieldPath): boolean => {
  const field = fieldOf(path)
  return !DOORS.has(path) && (field.type !== 'choice' || field.choices.length > 1)
}

export interface FieldGroup {
  readonly code: GroupCode
  readonly title: string
  readonly first: readonly FieldPath[]
  readonly later: readonly FieldPath[]
}

/** Every field a maker is asked, by heading, in the table's order: the first questions with what they call for, and the rest. */
export const FIELD_GROUPS: readonly FieldGroup[] = HEADINGS.map(({ code, groups }) => {
  const paths = FIELD_PATHS.filter((path) => isAsked(path) && groups.includes(path.split('.', 1)[0] ?? ''))
  return { code, title: t.groups[code], first: paths.filter(isFirst), later: paths.filter((path) => !isFirst(path)) }
})
