import { describe, expect, it } from 'vitest'
import type { Patch } from '#core'
import { situationNotes } from '../../../../renderer/drawing/sentences'
import { situationsOf } from '../../../../renderer/components/situations'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'

const OUTDOORS: Patch = { ...ORDINARY, 'cord.fibre': 'polyester', 'cord.make': 'braided', 'place.exposure': 'outdoors' }
const codes = (patch: Patch): readonly string[] => situationsOf(checkOf(patch)).map(({ code }) => code)

describe('the situations to choose from', () => {
  it('are a gust outdoors and a tug where somebody can reach it, and neither otherwise', () => {
    expect(codes(ORDINARY)).toEqual(['dry', 'watered', 'flooded', 'strandParted', 'legParted', 'bump'])
    expect(codes(OUTDOORS)).toContain('gust')
    expect(codes(OUTDOORS)).not.toContain('tug')
    expect(codes({ ...ORDINARY, 'place.reach': 'cat' })).toContain('tug')
    expect(situationsOf(null)).toHaveLength(6)
  })
})

describe('the caption', () => {
  it('says how far a gust pushes it and that it is drawn plumb', () => {
    const [said] = situationNotes(checkOf(OUTDOORS), 'gust')
    expect(said).toMatch(/^Gusts of 65 km\/h \(40 mph\) push with 2\.6\d kg \(.* lb\): it leans \d+° just watered, \d+° dry, and may swing to \d+°\. It is drawn hanging plumb\.$/)
  })

  it('says who pulls, and how hard', () => {
    expect(situationNotes(checkOf({ ...ORDINARY, 'place.reach': 'child' }), 'tug')[0]).toContain('A child pulls with 25.5 kg')
    expect(situationNotes(checkOf({ ...ORDINARY, 'place.reach': 'cat' }), 'tug')[0]).toContain('A cat pulls with')
  })

  it('says how long a bumped one swings', () => {
    expect(situationNotes(checkOf(ORDINARY), 'bump')[0]).toMatch(/^It swings 30° to each side of where it is drawn, there and back in 1\.\d s\.$/)
  })
})
