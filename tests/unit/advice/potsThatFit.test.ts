import { describe, expect, it } from 'vitest'
import { checkHanger, isWorse, resolveDocument, type Patch } from '#core'
import { potsThatFit, USUAL_RIMS } from '../../../src/advice/potsThatFit'
import { documentOf, ORDINARY } from '../hanger/hangerOf'

const OF_THE_POT = ['weighed.mass', 'weighed.state', 'pot.height', 'pot.base', 'plant.height']
const UNPOTTED: Patch = Object.fromEntries(Object.entries(ORDINARY).filter(([path]) => !OF_THE_POT.includes(path)))

const fitting = (runs: readonly { readonly from: number; readonly to: number }[]): readonly number[] => USUAL_RIMS.filter((rim) => runs.some(({ from, to }) => rim >= from - 1e-9 && rim <= to + 1e-9))

describe('pots that fit', () => {
  const document = documentOf(ORDINARY)

  it('are those with which the hanger, checked by itself, holds, and which are no heavier than it may carry', () => {
    const heaviest = 7
    const { runs } = potsThatFit(document, heaviest, 'plastic')
    const found = fitting(runs)
    expect(found.length).toBeGreaterThan(2)
    for (const rim of USUAL_RIMS) {
      const resolved = resolveDocument(documentOf({ ...UNPOTTED, 'pot.rim': `${rim * 100} cm`, 'pot.material': 'plastic' }))
      if (!resolved.ok) throw new Error(JSON.stringify(resolved.problems))
      const check = checkHanger(resolved.hanger)
      const holds = check.links.every((l) => l.side === 'place' || !isWorse(l.verdict, 'just holds'))
      const light = check.solved.potted.watered.mass.high <= heaviest
      expect(found.includes(rim), `${rim}`).toBe(holds && light)
    }
  })

  it('are fewer and smaller of clay than of plastic, and of a lighter limit', () => {
    const largest = (heaviest: number, material: 'plastic' | 'terracotta'): number => Math.max(0, ...fitting(potsThatFit(document, heaviest, material).runs))
    expect(largest(4, 'terracotta')).toBeLessThan(largest(4, 'plastic'))
    expect(largest(2, 'plastic')).toBeLessThan(largest(6, 'plastic'))
  })

  it('do not hang on the pot that was entered', () => {
    const other = documentOf({ ...ORDINARY, 'weighed.mass': '1.5 kg', 'weighed.state': 'watered', 'pot.height': '120 mm', 'saucer.width': '200 mm', 'cover.mass': '2 kg' })
    expect(potsThatFit(other, 5, 'plastic')).toEqual(potsThatFit(document, 5, 'plastic'))
  })

  it('are none where nothing is light enough', () => {
    expect(potsThatFit(document, 0.01, 'terracotta').runs).toEqual([])
  })
})
