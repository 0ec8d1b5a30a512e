/**
 * How many letters must be put in, taken out or changed to make one word of another, two swapped
 * neighbours counting as one (restricted Damerau-Levenshtein distance).
 *
 * @example editDistance('hmep', 'hemp') // 1
 */
export function editDistance(from: string, to: string): number {
  const rows: number[][] = [Array.from({ length: to.length + 1 }, (_, j) => j)]
  const at = (i: number, j: number): number => rows[i]?.[j] ?? 0
  for (let i = 1; i <= from.length; i++) {
    rows.push([i])
    for (let j = 1; j <= to.length; j++) {
      const changed = from[i - 1] === to[j - 1] ? 0 : 1
      const swapped = i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1]
      rows[i]?.push(Math.min(at(i - 1, j) + 1, at(i, j - 1) + 1, at(i - 1, j - 1) + changed, swapped ? at(i - 2, j - 2) + 1 : Infinity))
    }
  }
  return at(from.length, to.length)
}
