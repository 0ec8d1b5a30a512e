import { peopleBeneath } from '../catalogue/reserves'
import type { Answers } from '../hanger/fields'

/** The usual cautions, always shown, and those that apply to a hanger. Sentences: words/cautions.ts. */
export const CAUTIONS = [
  'aidNotCertificate', 'localCodes', 'askLicensed', 'hiddenServices', 'testHang', 'notOverBed', 'secondTie', 'children', 'headroom', 'heatAndSockets',
  'takeDown', 'recheck', 'notForPeople',
] as const
export type Caution = (typeof CAUTIONS)[number]

/** Cautions for a hanger: all the usual ones; the second tie where people sit, sleep or play beneath. */
export const cautionsFor = (answers: Answers): readonly Caution[] =>
  CAUTIONS.filter((caution) => caution !== 'secondTie' || peopleBeneath(answers['place.beneath']))
