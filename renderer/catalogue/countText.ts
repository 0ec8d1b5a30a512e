import { BASIS_MEANINGS, type Basis, type NamedEntry } from '#core'

const BASES = Object.keys(BASIS_MEANINGS) as Basis[]

/** How many values are shown of how many, and how they are known: "3 of 461 values: 1 published, 2 from memory". */
export function countText(found: readonly Pick<NamedEntry, 'basis'>[], all: number): string {
  const noun = all === 1 ? 'value' : 'values'
  const count = found.length === all ? `${all} ${noun}` : `${found.length} of ${all} ${noun}`
  const byBasis = BASES
    .map((basis) => ({ basis, count: found.filter((entry) => entry.basis === basis).length }))
    .filter((part) => part.count > 0)
    .map((part) => `${part.count} ${part.basis}`)
  return byBasis.length === 0 ? count : `${count}: ${byBasis.join(', ')}`
}
