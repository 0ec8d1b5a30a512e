/** How the maker likes numbers and the window. */
export const HABITS = {
  title: 'Units and appearance',
  about: 'How numbers and dates are shown, and how the page looks. Nothing in your hangers changes, and every field takes any unit as before.',
  legends: { units: 'Weights and lengths', decimalMark: 'Decimals', dayOrder: 'Dates', appearance: 'The page' },
  asSystem: (means: string) => `as this computer has it${means === '' ? '' : ` (${means})`}`,
  choices: {
    units: { both: 'kilograms and millimetres, with pounds and inches beside', metric: 'kilograms and millimetres', imperial: 'pounds and inches' },
    decimalMark: { '.': 'with a point: 5.5', ',': 'with a comma: 5,5' },
    dayOrder: { dayFirst: '9 March 2029', monthFirst: 'March 9, 2029', yearFirst: '2029-03-09' },
    appearance: { light: 'ink on paper', dark: 'chalk on slate' },
  },
  sample: 'It looks so',
  readAs: (meant: string) => `Read as ${meant}: a point is always the decimal mark here. Write a thousand without one.`,
} as const
