import type { Finding } from '../check/finding'
import type { Answers } from '../hanger/fields'
import { numberText } from './amounts'
import { dayText } from './care'
import { CAUTION_TEXTS } from './cautions'
import { findingText } from './findings'

/** What is beneath, within a sentence. */
export const BENEATH_TEXTS: Readonly<Record<Answers['place.beneath'], string>> = {
  nothing: 'nothing that matters beneath', furniture: 'furniture beneath', wayThrough: 'a way through beneath', people: 'people beneath', public: 'the public beneath',
}

/** Names of what stands at the foot. */
export const FOOT_NAMES = { maker: 'Made by', contact: 'Reach us', made: 'Made on', code: 'Tag', today: 'Sheet of' } as const

/** What is known of maker and hanger, name by name; what was not said is left out. */
export function footFacts(answers: Pick<Answers, 'make.maker' | 'make.contact' | 'make.date' | 'make.code'>, today: string): readonly { readonly name: string; readonly text: string }[] {
  const said = (name: keyof typeof FOOT_NAMES, text: string | null): readonly { readonly name: string; readonly text: string }[] =>
    (text === null || text.trim() === '' ? [] : [{ name: FOOT_NAMES[name], text: text.trim() }])
  const { 'make.date': made } = answers
  return [
    ...said('maker', answers['make.maker']),
    ...said('contact', answers['make.contact']),
    ...said('made', made === null ? null : dayText(made)),
    ...said('code', answers['make.code']),
    ...said('today', dayText(today)),
  ]
}

/** The reserve it was reckoned with, and the reason where it is not the usual one. */
export function reserveLine(usual: number, answers: Pick<Answers, 'place.beneath'>, findings: readonly Finding[]): string {
  const own = findings.find(({ code }) => code === 'RESERVE_CHANGED' || code === 'RESERVE_NEEDS_REASON')
  return own === undefined ? `Reserve ${numberText(usual)}, as usual with ${BENEATH_TEXTS[answers['place.beneath']]}.` : findingText(own)
}

/** What every sheet says of itself. */
export const AID_TEXT = `${CAUTION_TEXTS.aidNotCertificate} ${CAUTION_TEXTS.localCodes} ${CAUTION_TEXTS.askLicensed}`
