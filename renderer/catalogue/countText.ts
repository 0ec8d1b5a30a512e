import { BASIS_MEANINGS, type Basis, type NamedEntry } from '#core'
import { texts } from '../texts/texts'

const t = texts.catalogue
const BASES = Object.keys(BASIS_MEANINGS) as Basis[]

/** How many values are shown of how many, and how they are known: "3 of 461 values: 1 published, 2 from memory". */
export function countText(found: readonly Pick<NamedEntry, 'basis'>[], all: number): string {
  const count = found.length === all ? t.all(all) : t.some(found.length, all)
  const byBasis = BASES
    .map((basis) => ({ basis, count: found.filter((entry) => entry.basis === basis).length }))
    .filter((part) => part.count > 0)
    .map((part) => t.ofBasis(part.count, part.basis))
  return byBasis.length === 0 ? count : t.countByBasis(count, byBasis)
}
