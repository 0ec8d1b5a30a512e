/** The card of a part: what decides it, what would mend it, its answers and its sum. */
export const CARD = {
  /** The verdict on a part, and what share of what it may bear is asked of it. */
  verdictAt: (verdict: string, share: string) => `${verdict}, ${share}`,
  situation: 'Situation',
  decides: 'What decides',
  asked: 'Asked of it',
  comesTo: 'It comes to',
  mayCarry: 'It may carry',
  limit: 'Its limit',
  turned: 'When turned',
  pushed: 'Pushed at its rim',
  newOverLoad: 'New strands over watered load',
  factor: (figure: string, guidance: string) => `${figure} (${guidance})`,
  knownBy: 'Known by',
  source: (source: string, basis: string) => `${source} (${basis})`,
  findings: 'What was found',
  answers: 'Answers for this part',
  moreAnswers: 'More answers',

  remedies: 'What would mend it',
  triedOn: '(tried on)',
  /** What a field would say; a question keeps its mark and takes no colon. */
  patched: (label: string, text: string) => (label.endsWith('?') ? `${label} ${text}` : `${label}: ${text}`),
  /** In the reader's units, and as it would be written in the file. */
  asWritten: (text: string, written: string) => `${text} (${written})`,
  tryIt: 'Try it',
  tryRemedy: (remedy: string) => `Try it: ${remedy}`,
  takeBack: 'Take it back',
  takeRemedyBack: (remedy: string) => `Take it back: ${remedy}`,
  effect: (part: string, partVerdict: string, verdict: string) => `${part} then: ${partVerdict}. The whole then: ${verdict}.`,
  effectAt: (part: string, partVerdict: string, verdict: string, share: string) => `${part} then: ${partVerdict}. The whole then: ${verdict}, what decides it at ${share}.`,
  remediesFailed: 'Remedies could not be looked for.',
  remediesAsked: 'Looking for remedies.',
  /** What may still be changed decides what is offered. */
  planned: 'As planned: everything can still be changed.',
  made: 'Already made: only what can still be changed is offered.',
  isMade: 'It is already made',
  isPlanned: 'It is only planned',
  noRemedy: 'None was found for this part, or it needs none.',

  everySituation: 'In every situation',
  share: 'Share',
  verdict: 'Verdict',
  noShare: '—',

  sum: 'Worked sum',
  sumLines: 'Worked sum, line by line',
  sumColumns: { line: 'Line', symbol: 'Symbol', value: 'Value', basis: 'Basis' },
  basisAndSource: (basis: string, source: string) => `${basis}: ${source}`,
} as const
