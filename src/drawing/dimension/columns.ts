/** An upright line beside others: the heights it takes with its number, m. */
export interface Upright {
  readonly from: number
  readonly to: number
  /** Height of its number. */
  readonly number: number
}

/** Column of each line, from 0 outwards: the first in which neither it nor its number meets another. `letter`: half a number's height, m. */
export function columnsOf(lines: readonly Upright[], letter: number): readonly number[] {
  const taken: (readonly [number, number])[][] = []
  return lines.map(({ from, to, number }) => {
    const [low, high] = [Math.min(from, to, number - letter), Math.max(from, to, number + letter)]
    const free = taken.findIndex((column) => column.every(([a, b]) => high < a || low > b))
    const column = free < 0 ? taken.length : free
    ;(taken[column] ??= []).push([low, high])
    return column
  })
}
