import { potPatch, withoutPot } from '../advice/potsThatFit'
import { weighedPatch } from '../advice/heaviestPot'
import { untested } from '../advice/untested'
import { editField, patchDocument, type HangerDocument } from '../hanger/document'
import type { Answers, FieldPath } from '../hanger/fields'
import type { Hanger } from '../hanger/hanger'
import { formatSi } from '../quantity/formatSi'

/** What a map is drawn over. */
export const AXES = ['cordDiameter', 'rim', 'length', 'strands', 'watered'] as const
export type AxisCode = (typeof AXES)[number]

/** One direction of a map: evenly spaced values, and where the hanger stands as it is. */
export interface Axis {
  readonly code: AxisCode
  readonly field: FieldPath
  readonly unit: 'm' | 'kg' | 'count'
  /** From the least, evenly spaced. */
  readonly values: readonly number[]
  /** Null where the hanger has none yet. */
  readonly present: number | null
}

/** An axis with how its values are put into a hanger. */
export interface AxisOf {
  readonly axis: Axis
  /** What is taken out of the hanger first: it would contradict every value, or was found of the hanger as it is and says nothing of another. */
  readonly bare: (document: HangerDocument) => HangerDocument | null
  readonly put: (document: HangerDocument, value: number) => HangerDocument
}

const clamp = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value))

/** So many values from one to the other, both included. */
const spread = (from: number, to: number, points: number): readonly number[] =>
  Array.from({ length: points }, (_, i) => Number((from + ((to - from) * i) / (points - 1)).toPrecision(12)))

/** Thinner is no cord for a hanger, thicker is sold as rope, m. */
const CORDS = [0.001, 0.01] as const
/** Pots as they are sold, m. */
const RIMS = [0.08, 0.4] as const
/** More are seldom knotted into one leg. */
const STRANDS = 16
/** A pot that one hand lifts, and one that takes two people, kg; beyond the last, what a field of weights allows. */
const WEIGHTS = [0.5, 15, 150] as const

/** The same cord thicker or thinner: grams per metre go with the square of the diameter. Null where its strength does not follow from its measures. */
function cordDiameter(answers: Answers, points: number): AxisOf | null {
  const now = answers['cord.diameter']
  if (now === null || answers['cord.rated'] !== null) return null
  const [perMetre, piece] = [answers['cord.linearDensity'], answers['cord.weighedMass']]
  return {
    axis: { code: 'cordDiameter', field: 'cord.diameter', unit: 'm', values: spread(Math.min(CORDS[0], now), Math.max(CORDS[1], now), points), present: now },
    // Pulls and a test hang of this cord say nothing of another.
    bare: (document) => ({ ...untested(document), pullTests: [] }),
    put: (document, value) => patchDocument(document, {
      'cord.diameter': formatSi(value, 'mm'),
      ...(perMetre === null ? {} : { 'cord.linearDensity': formatSi(perMetre * (value / now) ** 2, 'g/m') }),
      ...(piece === null ? {} : { 'cord.weighedMass': formatSi(piece * (value / now) ** 2, 'g') }),
    }),
  }
}

/** Whether what the pot is made of matters and was not said: then it stays open at every point, as it is in the check. */
const isMaterialOpen = ({ answers, given }: Hanger): boolean =>
  answers['pot.have'] === 'yes' && answers['weighed.mass'] === null && answers['pot.emptyMass'] === null && !given.has('pot.material')

/** Usual round pots of the hanger’s own material, with its mix and a plant of the pot’s size. */
function rim(hanger: Hanger, points: number): AxisOf {
  const { answers } = hanger
  const material = answers['pot.material']
  const now = answers['pot.have'] === 'yes' ? answers['pot.rim'] : null
  return {
    axis: { code: 'rim', field: 'pot.rim', unit: 'm', values: spread(Math.min(RIMS[0], now ?? RIMS[0]), Math.max(RIMS[1], now ?? RIMS[1]), points), present: now },
    bare: withoutPot,
    put: (document, value) => {
      const put = patchDocument(document, potPatch(value, material))
      return isMaterialOpen(hanger) ? editField(put, 'pot.material', null) : put
    },
  }
}

/** Of a leg or of the whole, as the maker gives it. */
function length(answers: Answers, points: number): AxisOf | null {
  if (answers['make.arrangement'] === 'panel') return null
  const leg = answers['make.legLength']
  const [field, now, least, most] = leg === null ? ['make.totalLength' as const, answers['make.totalLength'], 0.2, 5] : ['make.legLength' as const, leg, 0.05, 4]
  return {
    axis: { code: 'length', field, unit: 'm', values: spread(clamp(now / 2, least, most), clamp(now * 2, least, most), points), present: now },
    bare: untested,
    put: (document, value) => editField(document, field, formatSi(value, 'mm')),
  }
}

/** Strands of a leg by twos, odd ones where the hanger has an odd number; told filler cords in proportion. */
function strands(answers: Answers): AxisOf | null {
  if (answers['make.arrangement'] === 'panel') return null
  const [now, fillers] = [answers['make.strands'], answers['make.fillers']]
  const [first, most] = [now % 2 === 1 ? 1 : 2, Math.max(now, STRANDS)]
  return {
    axis: { code: 'strands', field: 'make.strands', unit: 'count', values: Array.from({ length: Math.floor((most - first) / 2) + 1 }, (_, i) => first + 2 * i), present: now },
    bare: untested,
    put: (document, value) => {
      const put = editField(document, 'make.strands', String(value))
      return fillers === null ? put : editField(put, 'make.fillers', String(Math.max(1, Math.floor((fillers * value) / now))))
    },
  }
}

/** The pot of the drawn size at a watered weight, as if it had been weighed. */
function watered(answers: Answers, now: number, points: number): AxisOf {
  const [least, usual, most] = WEIGHTS
  const isKnown = answers['pot.have'] === 'yes' && now <= most
  return {
    axis: { code: 'watered', field: 'weighed.mass', unit: 'kg', values: spread(isKnown ? Math.min(least, now) : least, isKnown ? clamp(now * 2, usual, most) : usual, points), present: isKnown ? now : null },
    bare: (document) => editField(document, 'weighed.tare', null),
    put: (document, value) => patchDocument(document, { ...weighedPatch(value), 'pot.have': 'yes' }),
  }
}

/** An axis for a hanger; null where it has no such thing. `now`: its watered weight at most, kg. */
export function axisOf(code: AxisCode, hanger: Hanger, now: number, points: number): AxisOf | null {
  const { answers } = hanger
  switch (code) {
    case 'cordDiameter': return cordDiameter(answers, points)
    case 'rim': return rim(hanger, points)
    case 'length': return length(answers, points)
    case 'strands': return strands(answers)
    case 'watered': return watered(answers, now, points)
  }
}
