/** What was on the prototypes before anything hostile was read. */
const PROTOTYPES = [Object.prototype, Array.prototype, String.prototype, Number.prototype, Function.prototype]
const before = PROTOTYPES.map((prototype) => Reflect.ownKeys(prototype).length)

/** Whether nothing was put on the prototypes that all things share. */
export const prototypesAreClean = (): boolean => PROTOTYPES.every((prototype, i) => Reflect.ownKeys(prototype).length === before[i])

/** Paths at which a result holds a number that is none, or one without end. */
export function oddNumbers(thing: unknown, path = ''): readonly string[] {
  if (typeof thing === 'number') return Number.isFinite(thing) ? [] : [`${path} = ${thing}`]
  if (typeof thing !== 'object' || thing === null) return []
  if (thing instanceof Set || thing instanceof Map) return oddNumbers([...thing], path)
  return Object.entries(thing).flatMap(([key, value]) => oddNumbers(value, `${path}.${key}`))
}
