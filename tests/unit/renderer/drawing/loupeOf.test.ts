import { expect, it } from 'vitest'
import { loupes, partOf, parts, partKey } from '#core'
import { loupeOf } from '../../../../renderer/drawing/loupeOf'
import { DRAWN } from '../../drawing/drawnHangers'

it('every detail is seen with the part it is opened from, and a part of a lower pot never in one of the first', () => {
  for (const [, check] of DRAWN) {
    const details = loupes(check, 'watered')
    for (const detail of details) expect(loupeOf(details, detail.link)).toBe(detail)
    for (const { link, tier } of parts(check)) {
      const found = loupeOf(details, partKey(link, tier))
      if (found !== null) expect(partOf(found.link).tier).toBe(tier)
    }
    // What is spread over the whole hanger has no detail.
    expect(loupeOf(details, 'load')).toBeNull()
    expect(loupeOf(details, 'leg')).toBeNull()
  }
})
