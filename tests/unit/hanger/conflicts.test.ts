import { describe, expect, test } from 'vitest'
import { problemText, resolveDocument, type Patch } from '#core'
import { checkOf, documentOf } from './hangerOf'

const sentences = (patch: Patch): readonly string[] => {
  const outcome = resolveDocument(documentOf(patch))
  return outcome.ok ? [] : outcome.problems.map(problemText)
}

describe('answers that cannot both be true', () => {
  test.each<[Patch, RegExp]>([
    [{ 'mix.capacity': '70 %', 'mix.porosity': '60 %' }, /Water the mix holds once drained: given 70 %.* at most .*Pores.* 60 %/],
    [{ 'weighed.mass': '5 kg', 'weighed.tare': '6 kg' }, /to be taken off: given 6 kg.* below .* 5 kg/],
    [{ 'make.strands': '4', 'make.fillers': '5' }, /Filler cords in each leg: given 5.* at most .* 4/],
    [{ 'pot.shape': 'bellied', 'pot.rim': '20 cm', 'pot.belly': '15 cm' }, /rim: given 20 cm.* at most .*belly.* 15 cm/],
    [{ 'pot.height': '15 cm', 'layer.depth': '16 cm' }, /Drainage layer.*given 16 cm.* below .* 15 cm/],
  ])('%j', (patch, expected) => {
    const said = sentences(patch)
    expect(said).toHaveLength(1)
    expect(said[0]).toMatch(expected)
  })

  test.each<[Patch]>([
    [{ 'mix.capacity': '60 %', 'mix.porosity': '60 %' }],
    [{ 'make.strands': '4', 'make.fillers': '4' }],
    [{ 'pot.rim': '20 cm', 'pot.belly': '15 cm' }],
    [{ 'weighed.mass': '5 kg', 'weighed.tare': '4.9 kg' }],
    [{ 'make.strands': '4', 'make.fillers': '5', 'make.build': 'plain' }],
  ])('%j is no conflict', (patch) => {
    expect(sentences(patch)).toEqual([])
  })

  test('a porosity above one is refused as out of range', () => {
    expect(sentences({ 'mix.porosity': '104 %' })[0]).toMatch(/Pores of the mix in all: given “104 %”.* 0 to 1/)
  })
})

test('a rating in kilograms is taken as their pull, and that is said', () => {
  const check = checkOf({ 'hook.rated': '15 kg', 'cord.rated': '300 N' })
  expect(check.solved.hanger.answers['hook.rated']).toBeCloseTo(15 * 9.80665, 9)
  expect(check.findings.filter((f) => f.code === 'FORCE_FROM_MASS')).toEqual([{ code: 'FORCE_FROM_MASS', path: 'hook.rated', force: 15 * 9.80665 }])
})
