import { describe, expect, it } from 'vitest'
import { patchLines } from '../../../../renderer/components/patchText'

describe('what a remedy would write, in words', () => {
  it('puts a colon behind a name and none behind a question, and names choices', () => {
    expect(patchLines({ 'hook.wire': '7 mm', 'pot.drainage': 'hole', 'pot.material': 'plastic' })).toEqual([
      'Thickness of the hook’s wire: 7 mm',
      'Can water run out? yes, it has a hole',
      'What the pot is made of: plastic',
    ])
  })
})
