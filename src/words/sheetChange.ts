import type { Remedy } from '../advice/remedies'
import type { Verdict } from '../check/verdict'
import type { LinkResult } from '../check/linkResult'
import type { FieldPath } from '../hanger/fields'
import type { QuantityKind } from '../quantity/quantityKind'
import { percentText } from './amounts'
import { FIELD_WORDS } from './fields'
import { CASE_NAMES, LINK_NAMES } from './names'
import { preferredText } from './preferredText'
import { REMEDY_TEXTS } from './remedies'
import { sheetName } from './sheetCustomer'
import { linkName } from './tiers'

type Held = 'fails' | 'not enough known'

export const changeTitle = (name: string, held: Held): string => `${sheetName(name)}: ${held === 'fails' ? 'what must change' : 'what is still to be found out'}`
export const CHANGE_LEADS: Readonly<Record<Held, string>> = {
  fails: 'This hanger fails. Until it is changed, no sheet and no weight may be given away with it.',
  'not enough known': 'Not enough is known of this hanger. Until it is, no sheet and no weight may be given away with it.',
}
export const CHANGE_PARTS_TITLES: Readonly<Record<Held, string>> = { fails: 'What is wrong', 'not enough known': 'What would settle it' }
/** Those that mend their part, and those that only help. */
export const REMEDIES_TITLE = 'What mends a part'
export const HELPS_TITLE = 'What helps, and is not enough alone'
export const NO_REMEDY_TEXT = 'No single change was found that mends it. Change more than one thing, or begin with a smaller pot.'

/** A part in trouble: its name, its verdict, in which situation, and how far it is used. */
export const partInTrouble = ({ link, tier, case: situation, verdict, utilisation }: LinkResult): string =>
  `${linkName(link, tier)}: ${verdict}, ${CASE_NAMES[situation]}${utilisation === null ? '' : `, at ${percentText(utilisation)} of what it may carry`}`

/** What kind of quantity a field takes; null of choices and counts. */
export type KindOf = (path: FieldPath) => QuantityKind | null

function answered(path: FieldPath, text: string, kind: QuantityKind | null): string {
  const { label, choices } = FIELD_WORDS[path]
  const said = choices[text] ?? (kind === null ? text : preferredText(text, kind))
  return `${label.endsWith('?') ? label : `${label}:`} ${said}`
}

const VERDICT_AFTER: Readonly<Record<Verdict, string>> = { holds: 'holds', 'just holds': 'just holds', 'not enough known': 'is not known well enough', fails: 'still fails' }

/** A remedy with what to change, in the reader's units, and what becomes of its part; of the whole where that holds. */
export function remedyLine({ code, patch, link, linkVerdict, verdict }: Remedy, kindOf: KindOf): string {
  const changes = (Object.entries(patch) as [FieldPath, string][]).map(([path, text]) => answered(path, text, kindOf(path))).join('; ')
  const whole = verdict === 'holds' || verdict === 'just holds' ? `, and the whole ${VERDICT_AFTER[verdict]}` : ''
  return `${REMEDY_TEXTS[code]} (${changes}): ${LINK_NAMES[link].toLowerCase()}, ${VERDICT_AFTER[linkVerdict]}${whole}.`
}
