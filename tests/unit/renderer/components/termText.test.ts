import { describe, expect, it } from 'vitest'
import { termText } from '../../../../renderer/components/termText'

describe('a value of a worked sum', () => {
  it.each([
    [9.80665, 'm/s2', '9.807 m/s²'],
    [0.0046, 'kg/m', '0.0046 kg/m'],
    [250e6, 'Pa', '2.5 × 10⁸ Pa'],
    [0.00001234567, 'm', '1.235 × 10⁻⁵ m'],
    [0.7, '1', '0.7'],
    [123.456, 'N', '123.5 N'],
    [0, 'N', '0 N'],
  ])('%d %s', (value, unit, text) => expect(termText(value, unit)).toBe(text))
})
