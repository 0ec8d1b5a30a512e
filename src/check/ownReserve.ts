import type { Value } from '../catalogue/basis'
import { RESERVE, type Beneath } from '../catalogue/reserves'
import type { Answers } from '../hanger/fields'

/** A reserve of the maker's own that counts: it has a reason and differs from the usual one. */
export interface OwnReserve {
  readonly own: number
  readonly usual: number
  readonly reason: string
}

/** The maker's own reserve; null where none is given, it is the usual one, or it has no reason. */
export function ownReserve(answers: Answers): OwnReserve | null {
  const own = answers['reserve.own']
  const reason = answers['reserve.reason']
  const usual = RESERVE[answers['place.beneath']].value
  return own === null || own === usual || reason === null || reason === '' ? null : { own, usual, reason }
}

/** Whether a reserve was given that is left aside for want of a reason. */
export function reserveWithoutReason(answers: Answers): boolean {
  const own = answers['reserve.own']
  return own !== null && own !== RESERVE[answers['place.beneath']].value && ownReserve(answers) === null
}

const asValue = (value: number, { reason }: OwnReserve): Value => ({ value, unit: '1', basis: 'your own', source: `your own reserve: ${reason}` })

/** The reserve on strengths that hold no safety of their own: the maker's own, or the usual one. */
export function reserveOnStrength(answers: Answers): Value {
  const own = ownReserve(answers)
  return own === null ? RESERVE[answers['place.beneath']] : asValue(own.own, own)
}

/**
 * The reserve on a value that holds some safety of its own, from its table by what is beneath. A
 * larger reserve of the maker's own raises it in the proportion that stands where people are
 * beneath; a smaller one leaves it as it is.
 */
export function reserveOnSafeValue(answers: Answers, table: Readonly<Record<Beneath, Value>>): Value {
  const usual = table[answers['place.beneath']]
  const own = ownReserve(answers)
  if (own === null || own.own < own.usual) return usual
  const raised = (own.own * table.people.value) / RESERVE.people.value
  return raised > usual.value ? asValue(raised, own) : usual
}
