import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'

/** Seeded choices, so that what failed can be had again. */
export interface Chance {
  /** An integer from `low` to `high`, both included. */
  readonly whole: (low: number, high: number) => number
  readonly oneOf: <T>(things: readonly T[]) => T
  readonly maybe: (percent: number) => boolean
}

export function chanceOf(seed: number): Chance {
  const generator = xoroshiro128plus(seed)
  const whole = (low: number, high: number): number => uniformInt(generator, low, high)
  return {
    whole,
    oneOf: (things) => {
      const one = things[whole(0, things.length - 1)]
      if (one === undefined) throw new Error('Nothing to choose from')
      return one
    },
    maybe: (percent) => whole(1, 100) <= percent,
  }
}
