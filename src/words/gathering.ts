import type { Gathering } from '../check/gathering'
import { forceText, lengthText, lengthUpText } from './amounts'
import { CASE_NAMES } from './names'

/** One line of the table of a gathering knot. */
export interface GatheringRow {
  readonly name: string
  readonly text: string
}

const wrapsText = (wraps: number): string => `${wraps} ${wraps === 1 ? 'wrap' : 'wraps'}`
/** Cord to cut, rounded up to a whole centimetre or half an inch. */
const cutText = (length: number): string => lengthUpText(length, 0.01)

/** How many wraps would do, and what is usual: the model was never tested, so that fewer than usual are never advised. */
export function neededWrapsText({ needed, usual }: Pick<Gathering, 'needed' | 'usual'>): string {
  const practice = `makers usually tie ${usual.low} to ${usual.high}`
  if (!needed.ok) {
    return needed.reason === 'notSolved'
      ? `Not known before the legs reach round the pot; ${practice}.`
      : 'By the model no number of wraps would do: the pot is too heavy, or the cord too slick. Use a cord that grips, or settle it by a test hang.'
  }
  const by = `${wrapsText(needed.wraps)} by the model, for the pot ${CASE_NAMES[needed.case]}`
  if (needed.wraps < usual.low) return `${by}; ${practice}, and no test of such a knot was ever published: tie no fewer than they do.`
  return needed.wraps > usual.high ? `${by}: more than the ${usual.low} to ${usual.high} that makers usually tie.` : `${by}, as ${practice}.`
}

/** What the gathering knot takes to tie, and what pulls at it, for a small table. */
export function gatheringRows(knot: Gathering): readonly GatheringRow[] {
  const { wraps, wrappingCord, height, bundle, cordMakes, baseEdge, slip, splay } = knot
  const row = (name: string, text: string | null): readonly GatheringRow[] => (text === null ? [] : [{ name, text }])
  return [
    ...row('Wraps as tied', wrapsText(wraps)),
    ...row('Wraps that would do', neededWrapsText(knot)),
    ...row('Wrapping cord to cut', `${cutText(wrappingCord)}, for ${wrapsText(wraps)} round strands ${lengthText(bundle)} thick, with the loop under them and both ends`),
    ...row('The cord as cut makes', cordMakes === null ? null : wrapsText(cordMakes)),
    ...row('Height of the knot', lengthText(height)),
    ...row('Each leg presses on the base edge with', baseEdge === null ? null : forceText(baseEdge.force)),
    ...row('Pull left after rim and base edge', baseEdge === null ? null : `${forceText(baseEdge.after)} of ${forceText(baseEdge.leg)}`),
    ...row('Pull on the wraps, all legs together', slip === null ? null : forceText(slip)),
    ...row('Pull round the top wrap', splay === null ? null : forceText(splay)),
  ]
}

/** The same in one line: wraps, cord and height. */
export const gatheringText = (knot: Gathering): string =>
  `Gathering knot: cut ${cutText(knot.wrappingCord)} for ${wrapsText(knot.wraps)}, ${lengthText(knot.height)} high. What would do: ${neededWrapsText(knot)}`
