/** The numbers behind the charts. */
export const CHARTS = {
  asTable: 'The numbers as a table',
  notKnown: 'not known',
  bending: { caption: (situation: string) => `How it bends, ${situation}`, columns: ['Along', 'Pull', 'Bent, of the most', 'Out of line'], held: 'held' },
  pullTests: { columns: ['Test', 'As pulled', 'As it counts', ''], odd: 'far from the others', average: 'Average', counts: 'What counts' },
  ladder: { caption: 'Every part and how hard it works', columns: ['Part', 'Situation', 'Asked of it', 'Its limit', 'Share', 'Holds up to', 'Verdict'] },
  strength: { caption: 'What one strand bears', columns: ['How it is known', 'Bears', 'Source', ''], counts: 'counts' },
} as const
