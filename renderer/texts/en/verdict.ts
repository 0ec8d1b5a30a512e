const inMidSentence = (label: string): string => label.charAt(0).toLowerCase() + label.slice(1)

/** The verdict on the whole, and what is to be minded with it. */
export const VERDICT = {
  verdict: 'Verdict',
  unread: 'Nothing can be said until the marked answers can be read.',
  /** `questions` are labels of fields. */
  unanswered: (questions: readonly string[]) => `Still to be answered: ${questions.map(inMidSentence).join(', ')}.`,
  decides: 'What decides: {link}, {reason} {finding}',
  /** Of what decides not enough is known: what would settle it comes before any number. */
  toSettle: 'What would settle it, at {link}: {finding}',
  toKnow: 'Not enough is known of: {link}. Its card says what was assumed.',
  inSituation: (verdictOrShare: string, situation: string) => `${verdictOrShare}, ${situation}.`,
  beingTyped: 'Being typed: the verdict is of what stood before.',
  lookingForPot: 'Looking for the heaviest pot.',
  heaviestPot: (mass: string) => `Heaviest pot when watered: ${mass}`,
  /** The hanger with its own pot fails or is not known well enough: its sheets tell no weight either. */
  heaviestNotYet: (mass: string) => `Heaviest pot when watered: ${mass}, not for the tag yet`,
  assumed: (count: number) => (count === 1 ? `${count} thing assumed` : `${count} things assumed`),
  givesWay: 'If something gives way',
  cautions: 'Cautions',
} as const
