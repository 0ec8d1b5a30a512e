/** How to read the page. */
export const HELP = {
  title: 'How to read this page',
  follow: 'Follow the weight of the watered pot up to the building, part by part. Choose a part on the ladder to see what decides it and what would mend it.',
  verdicts: [
    { verdict: 'holds', means: 'with the reserve that is due to what is beneath' },
    { verdict: 'just holds', means: 'with less than a maker would like: look at what works hardest' },
    { verdict: 'not enough known', means: 'one answer or one measurement is missing; the card says which' },
    { verdict: 'fails', means: 'more is asked of a part than it may carry' },
  ],
  units: 'Answers take any unit: 3 mm, 3/16 in, 5 ft 6 in, 4,5 kg, 10 lb. The up and down keys step them. Leave one empty if you don’t know: it is assumed, drawn in pencil, and listed beside the verdict.',
  atHome: 'Two things you can do at home tell more than all other answers: weigh the pot wet, and pull five strands of the cord until they break.',
} as const
