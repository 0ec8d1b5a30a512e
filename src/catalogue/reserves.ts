import { value, type Grade, type Value } from './basis'

export const BENEATH = ['nothing', 'furniture', 'wayThrough', 'people', 'public'] as const
export type Beneath = (typeof BENEATH)[number]

export const peopleBeneath = (beneath: Beneath): boolean => beneath === 'people' || beneath === 'public'

const practice = (x: number, source: string): Value => value(x, '1', 'common practice', source)
const CHOSEN = 'chosen so that the overall factor of an ordinary hanger falls within 5 to 12 (Cordage Institute CI 1401-15)'

/** Reserve by what is beneath, on strengths that hold no safety of their own. */
export const RESERVE: Readonly<Record<Beneath, Value>> = {
  nothing: practice(1.5, CHOSEN),
  furniture: practice(2, CHOSEN),
  wayThrough: practice(2, CHOSEN),
  people: practice(3, CHOSEN),
  public: practice(3, CHOSEN),
}

const ALLOWABLE = 'the published allowable already holds its own safety'
/** Reserve on published allowables and rated loads. */
export const RESERVE_ON_ALLOWABLE: Readonly<Record<Beneath, Value>> = {
  nothing: practice(1, ALLOWABLE),
  furniture: practice(1, ALLOWABLE),
  wayThrough: practice(1, ALLOWABLE),
  people: practice(1.5, ALLOWABLE),
  public: practice(1.5, ALLOWABLE),
}

const UNPROVED = 'one wood screw overhead, not yet pulled in place'
/** Reserve on the published allowable of a single wood screw overhead that has not been pulled in place. */
export const RESERVE_ON_UNPROVED_SCREW: Readonly<Record<Beneath, Value>> = {
  nothing: practice(1.5, UNPROVED),
  furniture: practice(1.5, UNPROVED),
  wayThrough: practice(1.5, UNPROVED),
  people: practice(2, UNPROVED),
  public: practice(2, UNPROVED),
}

/** Reserve in accidental cases. */
export const RESERVE_IN_ACCIDENT: Value = practice(1, 'an accident may use up the whole reserve')

/** What a rated part may be asked for a moment, as a multiple of its rated load. */
export const RATED_FOR_A_MOMENT: Value = value(2, '1', 'published', 'proof coil chain is proof-loaded to twice its working load limit (chain maker’s chart); rated wall fixings hold at least four times theirs (home repair tables)')

/** What a rated part may be asked in an accident, as a multiple of its rated load: it may bend, not break. */
export const RATED_IN_ACCIDENT: Value = value(3, '1', 'published', 'proof coil chain breaks at four times its working load limit (chain maker’s chart); rated wall fixings hold at least four times theirs (home repair tables); three taken')

/** Pull in place that lifts the doubt about a screw, as a multiple of the load. */
export const PROOF_PULL: Value = value(1.5, '1', 'from memory', 'BS 8539 and anchor association guidance: on-site test of at least 1.5 times the load')

const LIMITS = 'margin by the quality of what is known'
/** Largest utilisation that counts as "holds", by the weakest grade in a link. */
export const HOLDS_LIMIT: Readonly<Record<Grade, Value>> = {
  tested: practice(0.8, LIMITS),
  rated: practice(0.8, LIMITS),
  weighed: practice(0.65, LIMITS),
  table: practice(0.65, LIMITS),
  diameter: practice(0.4, LIMITS),
  model: practice(0.4, LIMITS),
  fit: practice(1, 'one length against another has no strength to scatter: what is as wide still goes through'),
}

/** Overall factor below which a cord link never "holds". */
export const LEAST_OVERALL_FACTOR: Value = value(5, '1', 'published', 'Cordage Institute CI 1401-15: design factors 5 to 12, the low end only with expert knowledge')
/** Overall factor above which guidance for fibre rope asks for no more in ordinary use. */
export const MOST_OVERALL_FACTOR: Value = value(12, '1', 'published', 'Cordage Institute CI 1401-15: design factors 5 to 12; more for unknown load, shock, long tension, knots, injury or loss')
/** Overall factors that guidance asks for where lives hang on the rope; told over people. */
export const LIFE_LINE_FACTOR = {
  least: value(12, '1', 'published', 'rope maker’s working-load guidance: 5 to 6 non-critical, 12 to 15 life lines'),
  most: value(15, '1', 'published', 'rope makers’ guidance: 12 to 15 life lines; a fifteenth of the breaking force where lives depend on it'),
} as const satisfies Readonly<Record<string, Value>>
