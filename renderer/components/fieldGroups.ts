import { fieldOf, FIELD_PATHS, type FieldPath } from '#core'

/** A heading of the form and the groups of the hanger file that stand under it. */
const HEADINGS: readonly { readonly title: string, readonly groups: readonly string[] }[] = [
  { title: 'Pot', groups: ['pot', 'weighed', 'seat'] },
  { title: 'Mix and plant', groups: ['mix', 'layer', 'topping', 'plant'] },
  { title: 'Water that hangs with it', groups: ['saucer', 'reservoir', 'cover'] },
  { title: 'Cord', groups: ['cord'] },
  { title: 'How it is made up', groups: ['make', 'takeUp', 'panel', 'tiers', 'second', 'third', 'cradle', 'gathering', 'testHang', 'ring'] },
  { title: 'Where it hangs', groups: ['hook', 'connector', 'place', 'fixing', 'reserve'] },
  { title: 'Stick, rail or bracket', groups: ['stick', 'row', 'rail', 'bracket'] },
]

/** Answered by the three doors. */
const DOORS: ReadonlySet<FieldPath> = new Set(['pot.have', 'make.have'])

/** Asked beside the first question that calls for them, where a maker has them at hand: the tub on the scale, the long side of a trough. */
export const FOLLOW_UPS: ReadonlySet<FieldPath> = new Set(['pot.length', 'pot.belly', 'pot.bellyHeight', 'weighed.tare'])

const isFirst = (path: FieldPath): boolean => fieldOf(path).first || FOLLOW_UPS.has(path)

/** Nothing is asked where only one answer exists. */
const isAsked = (path: FieldPath): boolean => {
  const field = fieldOf(path)
  return !DOORS.has(path) && (field.type !== 'choice' || field.choices.length > 1)
}

export interface FieldGroup {
  readonly title: string
  readonly first: readonly FieldPath[]
  readonly later: readonly FieldPath[]
}

/** Every field a maker is asked, by heading, in the table's order: the first questions with what they call for, and the rest. */
export const FIELD_GROUPS: readonly FieldGroup[] = HEADINGS.map(({ title, groups }) => {
  const paths = FIELD_PATHS.filter((path) => isAsked(path) && groups.includes(path.split('.', 1)[0] ?? ''))
  return { title, first: paths.filter(isFirst), later: paths.filter((path) => !isFirst(path)) }
})
