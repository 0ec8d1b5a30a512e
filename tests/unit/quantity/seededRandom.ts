/** Numbers from 0 to below 1 that are the same on every run, from a seed (32-bit mixing by multiplication). */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}

/** A whole number from `from` to `to`, both included. */
export const wholeBetween = (random: () => number, from: number, to: number): number =>
  from + Math.floor(random() * (to - from + 1))

export const oneOf = <T>(random: () => number, choices: readonly T[]): T => {
  const chosen = choices[Math.floor(random() * choices.length)]
  if (chosen === undefined) throw new Error('nothing to choose from')
  return chosen
}
