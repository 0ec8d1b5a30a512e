import { bench, describe } from 'vitest'
import { checkHanger } from '../../src/check/checkHanger'
import { solve } from '../../src/check/solve'
import { hangerOf, ORDINARY } from '../unit/hanger/hangerOf'

describe('a full check', () => {
  for (const legs of [3, 4, 12]) {
    const hanger = hangerOf({ ...ORDINARY, 'make.legs': String(legs) })
    bench(`${legs} legs, all cases and links`, () => { checkHanger(hanger) })
    bench(`${legs} legs, loads and slings only`, () => { solve(hanger) })
  }
})
