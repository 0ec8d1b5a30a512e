import { peopleBeneath } from '../catalogue/reserves'
import type { Answers } from '../hanger/fields'

/** The usual cautions and those that apply to some places only. Sentences: words/cautions.ts. */
export const CAUTIONS = [
  'aidNotCertificate', 'localCodes', 'askLicensed', 'hiddenServices', 'testHang', 'notOverBed', 'secondTie', 'children', 'headroom', 'exits', 'heat', 'sockets', 'drips',
  'takeDown', 'recheck', 'notForPeople',
] as const
export type Caution = (typeof CAUTIONS)[number]

const passedUnder = ({ 'place.beneath': beneath }: Answers): boolean => beneath === 'wayThrough' || peopleBeneath(beneath)
const indoors = ({ 'place.exposure': exposure }: Answers): boolean => exposure !== 'outdoors'

/** Where each of these applies; the others always do. */
const APPLIES: Readonly<Partial<Record<Caution, (answers: Answers) => boolean>>> = {
  secondTie: (a) => peopleBeneath(a['place.beneath']),
  children: (a) => a['place.beneath'] !== 'nothing',
  headroom: passedUnder,
  exits: (a) => a['place.beneath'] === 'wayThrough' || a['place.beneath'] === 'public',
  heat: indoors,
  sockets: indoors,
  drips: (a) => a['pot.drainage'] !== 'none' && passedUnder(a),
}

/**
 * Cautions for a hanger: all the usual ones; a second tie where people sit, sleep or play beneath; headroom where they
 * pass, too; ways out kept free where they pass and in public places; children's reach unless nothing that matters
 * is beneath; heat and sockets indoors; a wet floor where people walk under a pot that drips.
 */
export const cautionsFor = (answers: Answers): readonly Caution[] => CAUTIONS.filter((caution) => APPLIES[caution]?.(answers) ?? true)
