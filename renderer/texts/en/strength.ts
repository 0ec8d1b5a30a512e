/** How strong cord and knots are: tables on the cards, and the log of the maker's own pull tests. */
export const STRENGTH = {
  notKnown: 'not known',
  percent: (figure: string) => `${figure} %`,

  panel: {
    title: 'Who bears the weight, just watered',
    columns: ['How it is tied', 'In front', 'Behind', 'Push of the wall'],
    asDrawn: 'As drawn',
    longer: (length: string) => `In front ${length} longer`,
    shorter: (length: string) => `In front ${length} shorter`,
    noRest: 'no rest',
  },
  sections: {
    title: 'What carries where in a leg',
    columns: ['Section', 'Strands', 'Each keeps', 'Worth'],
    weakest: (section: string) => `${section} (weakest)`,
  },
  gathering: 'Tying the gathering knot',

  log: 'Your own pull tests',
  whyTest: 'The best way to know a cord: pull five strands of the roll until they break, tied as in the hanger. A load in kg or lb is taken as the pull of that mass; what stands in brackets counts where nothing is said.',
  anotherTest: 'Another pull test',
  test: (number: number) => `Pull test ${number}`,
  removeTest: (number: number) => `Remove pull test ${number}`,
  /** What to write, where the heading does not tell. */
  examples: { load: 'kg, lb, N', time: 's', date: 'year-month-day' },
  /** A choice that counts where nothing is said. */
  unlessSaid: (choice: string) => `(${choice})`,
  toLog: (count: number) => `Pull tests (${count})`,
  unreadable: 'One cannot be read.',
  theyCount: 'They count before all else said of the cord. For another cord, take them out, or put that cord in from your shelf.',
} as const
