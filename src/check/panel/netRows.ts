import type { Answers } from '../../hanger/fields'

/** A knot of the net in front: so far along from the gathering knot, and aside of the very front, m. */
export interface NetKnot {
  readonly along: number
  readonly aside: number
}

/** A diamond of square knots in front, rows from above: 1, 2 ... k ... 2, 1, as far as the strands go. */
export function netRows(answers: Answers): readonly (readonly NetKnot[])[] {
  const first = answers['cradle.first']
  if (answers['cradle.kind'] !== 'net') return [[{ along: first, aside: 0 }]]
  const widest = answers['panel.knots'] ?? Math.max(1, Math.floor(answers['panel.front'] / 2))
  const spacing = Math.min(answers['panel.knotSpacing'], (0.8 * answers['pot.rim']) / widest)
  return Array.from({ length: 2 * widest - 1 }, (_, row): readonly NetKnot[] => {
    const knots = widest - Math.abs(widest - 1 - row)
    return Array.from({ length: knots }, (_knot, i) => ({ along: first * (1 - row / (2 * widest)), aside: (i - (knots - 1) / 2) * spacing }))
  })
}

/** Knots of one row and the next between which strands run. */
export function netRuns(rows: readonly (readonly NetKnot[])[]): readonly (readonly [NetKnot, NetKnot])[] {
  return rows.flatMap((row, i) => {
    const next = rows[i + 1] ?? []
    // Each lies between two of the longer row: those half a spacing away.
    const pairs = row.flatMap((a) => next.map((b): readonly [NetKnot, NetKnot] => [a, b]))
    const nearest = Math.min(...pairs.map(([a, b]) => Math.abs(a.aside - b.aside)))
    return pairs.filter(([a, b]) => Math.abs(a.aside - b.aside) < 1.5 * nearest)
  })
}
