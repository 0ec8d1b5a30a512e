/** The numbers behind the charts. */
export const CHARTS = {
  asTable: 'The numbers as a table',
  notKnown: 'not known',
  /** A figure that stands on what is assumed only. */
  doubtful: (share: string) => `${share}?`,
  /** A mark of a scale, with its unit. */
  tick: (figure: string, unit: string) => `${figure} ${unit}`,
  bending: {
    caption: (situation: string) => `How it bends, ${situation}`,
    columns: ['Along', 'Pull', 'Bent, of the most', 'Out of line'],
    held: 'held',
    outOfLine: (length: string) => `Most out of line: ${length}.`,
    outOfLineEnlarged: (length: string, times: number) => `Most out of line: ${length}, drawn ${times} times as much.`,
    deepest: (along: string) => `The hatching is deepest where it is bent hardest, ${along} along.`,
  },
  pullTests: { columns: ['Test', 'As pulled', 'As it counts', ''], odd: 'far from the others', average: 'Average', counts: 'What counts', markAverage: 'average', markCounts: 'counts' },
  ladder: { caption: 'Every part and how hard it works', columns: ['Part', 'Situation', 'Asked of it', 'Its limit', 'Share', 'Holds up to', 'Verdict'] },
  strength: {
    caption: 'What one strand bears',
    columns: ['How it is known', 'Bears', 'Source', ''],
    counts: 'counts',
    why: 'New and dry, the best way of knowing first. The first that is known counts; a better one takes its place.',
    tiedTests: (name: string, count: number, state: string) => `${name} (${count}, as tied, ${state})`,
    straightTests: (name: string, count: number, state: string) => `${name} (${count}, straight, ${state})`,
    noSource: '–',
    source: (source: string, basis: string) => `${source} (${basis})`,
    thisCounts: 'This one counts.',
    knotsInIt: 'What its knots take is in it already.',
    withTex: (mass: string, tex: number) => `${mass} (${tex} tex)`,
    weighed: (mass: string, low: string, high: string, counted: string) => `Weighed, the cord has ${mass}. Cord so heavy of this fibre may break anywhere from ${low} to ${high}: this is a range, not a promise, and ${counted} of it is counted on.`,
  },
} as const
