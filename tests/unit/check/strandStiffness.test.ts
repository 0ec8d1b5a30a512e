import { describe, expect, test } from 'vitest'
import { DEFAULT_STIFFNESS, FIBRE_PROPERTIES } from '../../../src/catalogue/cords'
import { cordStrengths, strandStiffness } from '../../../src/check/cordStrength'
import { hangerOf, ORDINARY } from '../hanger/hangerOf'
import { testedHanger } from '../hanger/testedHanger'
import { without } from '../hanger/without'

const stiffnessOf = (hanger: ReturnType<typeof hangerOf>): number => strandStiffness(hanger.answers, cordStrengths(hanger))
const { value: cottonStrain } = FIBRE_PROPERTIES.cotton.strainAtBreak
const pulls = (how: string): readonly object[] => [180, 200, 220].map((n) => ({ load: `${n} N`, how, state: 'dry', time: '10 s' }))
/** Strengths of cord scatter log-normally: their mean is that of the logarithms. */
const MEAN = Math.cbrt(180 * 200 * 220)
const UNTOLD = without(ORDINARY, 'cord.fibre', 'cord.diameter', 'cord.linearDensity')

// EA = breaking force / strain at break.
describe('how stiff one strand is', () => {
  test('is told by the mean of straight pulls', () => {
    expect(stiffnessOf(testedHanger(ORDINARY, pulls('straight')))).toBeCloseTo(MEAN / cottonStrain, 6)
  })
  test('is not less than by the mean of strands pulled as tied, and by what the cord weighs', () => {
    const weighed = stiffnessOf(hangerOf(ORDINARY))
    expect(stiffnessOf(testedHanger(ORDINARY, pulls('tied')))).toBeCloseTo(Math.max(weighed, MEAN / cottonStrain), 6)
    const strong = [980, 1000, 1020].map((n) => ({ load: `${n} N`, how: 'tied', state: 'dry', time: '10 s' }))
    expect(stiffnessOf(testedHanger(ORDINARY, strong))).toBeCloseTo(Math.cbrt(980 * 1000 * 1020) / cottonStrain, 6)
  })
  test('is that of 4 mm cotton where nothing is known, and by the pulls as tied where only they are', () => {
    expect(cordStrengths(hangerOf({ ...UNTOLD, 'cord.fibre': 'unknown' })).likely).toBeNull()
    expect(stiffnessOf(hangerOf({ ...UNTOLD, 'cord.fibre': 'unknown' }))).toBe(DEFAULT_STIFFNESS.value)
    expect(cordStrengths(testedHanger({ ...UNTOLD, 'cord.fibre': 'unknown' }, pulls('tied'))).likely).toBeCloseTo(MEAN, 9)
  })
})
