import { potPatch, withoutPot } from '../advice/potsThatFit'
import { weighedPatch } from '../advice/heaviestPot'
import { editField, patchDocument, type HangerDocument } from '../hanger/document'
import type { Answers, FieldPath } from '../hanger/fields'
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
  /** What is taken out of the hanger first: it would contradict every value. */
  readonly bare: (document: HangerDocument) => HangerDocument | null
  readonly put: (document: HangerDocument, value: number) => HangerDocument
}

const same = (document: HangerDocument): HangerDocument => document
const clamp = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value))

/** So many values from one to the other, both included. */
const spread = (from: number, to: number, points: number): readonly number[] =>
  Array.from({ length: points }, (_, i) => Number((from + ((to - from) * i) / (points - 1)).toPrecision(12)))

/** Thinner is no cord for a hanger, thicker is sold as rope, m. */
const CORDS = [0.001, 0.01] as const
/** Pots as they are sold, m. */
const RIMS = [0.08, 0.4] as const

/** The same cord thicker or thinner: grams per metre go with the square of the diameter. Null where its strength does not follow from its measures. */
function cordDiameter(answers: Answers, points: number): AxisOf | null {
  const now = answers['cord.diameter']
  if (now === null || answers['cord.rated'] !== null) return null
  const [perMetre, piece] = [answers['cord.linearDensity'], answers['cord.weighedMass']]
  return {
    axis: { code: 'cordDiameter', field: 'cord.diameter', unit: 'm', values: spread(Math.min(CORDS[0], now), Math.max(CORDS[1], now), points), present: now },
    // Pulls of this cord say nothing of a thicker one.
    bare: (document) => ({ ...document, pullTests: [] }),
    put: (document, value) => patchDocument(document, {
      'cord.diameter': formatSi(value, 'mm'),
      ...(perMetre === null ? {} : { 'cord.linearDensity': formatSi(perMetre * (value / now) ** 2, 'g/m') }),
      ...(piece === null ? {} : { 'cord.weighedMass': formatSi(piece * (value / now) ** 2, 'g') }),
    }),
  }
}

/** Usual round pots of the hanger’s own material, with its mix and a plant of the pot’s size. */
function rim(answers: Answers, points: number): AxisOf {
  const now = answers['pot.have'] === 'yes' ? answers['pot.rim'] : null
  return {
    axis: { code: 'rim', field: 'pot.rim', unit: 'm', values: spread(Math.min(RIMS[0], now ?? RIMS[0]), Math.max(RIMS[1], now ?? RIMS[1]), points), present: now },
    bare: withoutPot,
    put: (document, value) => patchDocument(document, potPatch(value, answers['pot.material'])),
  }
}

/** Of a leg or of the whole, as the maker gives it. */
function length(answers: Answers, points: number): AxisOf | null {
  if (answers['make.arrangement'] === 'panel') return null
  const leg = answers['make.legLength']
  const [field, now, least, most] = leg === null ? ['make.totalLength' as const, answers['make.totalLength'], 0.2, 5] : ['make.legLength' as const, leg, 0.05, 4]
  return {
    axis: { code: 'length', field, unit: 'm', values: spread(clamp(now / 2, least, most), clamp(now * 2, least, most), points), present: now },
    bare: same,
    put: (document, value) => editField(document, field, formatSi(value, 'mm')),
  }
}

/** Strands of a leg by twos, told filler cords in proportion. */
function strands(answers: Answers): AxisOf | null {
  if (answers['make.arrangement'] === 'panel') return null
  const [now, fillers] = [answers['make.strands'], answers['make.fillers']]
  const most = clamp(Math.ceil(now), 16, 48)
  return {
    axis: { code: 'strands', field: 'make.strands', unit: 'count', values: Array.from({ length: Math.floor(most / 2) }, (_, i) => 2 * (i + 1)), present: now },
    bare: same,
    put: (document, value) => {
      const put = editField(document, 'make.strands', String(value))
      return fillers === null ? put : editField(put, 'make.fillers', String(Math.max(1, Math.floor((fillers * value) / now))))
    },
  }
}

/** The pot of the drawn size at a watered weight, as if it had been weighed. */
function watered(now: number, points: number): AxisOf {
  return {
    axis: { code: 'watered', field: 'weighed.mass', unit: 'kg', values: spread(0.5, clamp(now * 2, 15, 149), points), present: now },
    bare: (document) => editField(document, 'weighed.tare', null),
    put: (document, value) => patchDocument(document, { ...weighedPatch(value), 'pot.have': 'yes' }),
  }
}

/** An axis for a hanger; null where it has no such thing. `now`: its watered weight at most, kg. */
export function axisOf(code: AxisCode, answers: Answers, now: number, points: number): AxisOf | null {
  switch (code) {
    case 'cordDiameter': return cordDiameter(answers, points)
    case 'rim': return rim(answers, points)
    case 'length': return length(answers, points)
    case 'strands': return strands(answers)
    case 'watered': return watered(now, points)
  }
}
