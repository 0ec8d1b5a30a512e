import { SCREW_GAUGES, screwGauge } from '../catalogue/screws'
import type { QuantityProblem } from '../quantity/quantityProblem'
import { readQuantity, type ReadResult } from '../quantity/readQuantity'
import { metres, type Metres } from '../quantity/si'
import { tidyText } from '../quantity/tidyText'

/** A screw as its packet names it. */
export interface ScrewSize {
  readonly ok: true
  /** Outside the thread, m. */
  readonly diameter: Metres
  /** Of the whole screw, m; null where only its thickness was said. */
  readonly length: Metres | null
  /** Of its thread, m, where the packet says it (4.0 x 40/24). */
  readonly thread: Metres | null
  readonly named: 'gauge' | 'millimetres' | 'inches'
}

export type ScrewPart = 'diameter' | 'length' | 'thread'

/** Why a screw's name could not be read. Sentences: words/screwProblems.ts. */
export type ScrewProblem =
  | { readonly code: 'NO_SCREW'; readonly text: string }
  | { readonly code: 'BAD_SCREW_PART'; readonly part: ScrewPart; readonly why: QuantityProblem }
  | { readonly code: 'UNKNOWN_GAUGE'; readonly gauge: number; readonly known: readonly string[] }
  /** "8 x 40": 8 mm thick, or a No. 8. */
  | { readonly code: 'GAUGE_OR_MILLIMETRES'; readonly number: number; readonly gaugeDiameter: Metres }
  | { readonly code: 'SCREW_OUT_OF_RANGE'; readonly part: ScrewPart; readonly value: Metres; readonly min: Metres; readonly max: Metres }
  | { readonly code: 'THREAD_LONGER_THAN_SCREW'; readonly thread: Metres; readonly length: Metres }

export interface UnreadScrew {
  readonly ok: false
  readonly problem: ScrewProblem
}

const LONGEST = 60
const RANGE = { diameter: [metres(0.0015), metres(0.02)], length: [metres(0.005), metres(0.4)], thread: [metres(0.002), metres(0.4)] } as const
const PARTS = /^(.+?) ?(?:[x×*]|by) ?(?=[\d½¼¾⅛⅜⅝⅞.,])(.+)$/i
const GAUGE = /^(?:#|no\.?|n[º°]|gauge) ?(\d{1,3})$|^(\d{1,3}) ?(?:g|ga|gauge)$/i
const METRIC = /^m ?(?=\d)(.+)$/i
const FRACTION = /[/½¼¾⅛⅜⅝⅞]/
const THREAD = /^(\d+(?:[.,]\d+)?) ?(?:mm)? ?\/ ?(\d+(?:[.,]\d+)?) ?(?:mm)?$/i
/** From this whole number on, a thickness without a mark is sold both in millimetres and as a gauge. */
const DOUBTFUL_FROM = 7
/** No wood screw is shorter than this in millimetres, nor longer in inches. */
const INCHES_BELOW = 8

const refused = (problem: ScrewProblem): UnreadScrew => ({ ok: false, problem })

/**
 * Reads a screw as printed on its packet: a gauge and inches (#8 x 1-1/2 in, No. 8 x 1 1/2, 8 x 2),
 * millimetres (4 x 40, 3.5x30 mm, M6 x 60, with the thread as in 4.0 x 40/24) or inches
 * (1/4 x 3 in); or its thickness alone (#8, 4 mm). A whole number from 7 on beside millimetres may
 * be either, and is asked back.
 * @example readScrew('#8 x 1-1/2 in') // { ok: true, diameter: 0.0041656, length: 0.0381, thread: null, named: 'gauge' }
 */
export function readScrew(typed: string): ScrewSize | UnreadScrew {
  const text = tidyText(typed).replace(/ ?mm ?(?=[x×*])/i, ' mm ')
  if (text === '' || text.length > LONGEST) return refused({ code: 'NO_SCREW', text: text.slice(0, LONGEST) })
  const [, first = text, second = null] = PARTS.exec(text) ?? []
  const thickness = readThickness(first.trim(), second)
  if (!thickness.ok) return thickness
  const lengths = second === null ? { length: null, thread: null } : readLengths(second, thickness.named === 'millimetres' ? 'mm' : 'in')
  if ('ok' in lengths) return lengths
  return withinRange({ ...thickness, ...lengths })
}

type Thickness = Pick<ScrewSize, 'ok' | 'diameter' | 'named'>

function readThickness(first: string, second: string | null): Thickness | UnreadScrew {
  const gauge = GAUGE.exec(first)
  if (gauge !== null) return ofGauge(Number(gauge[1] ?? gauge[2]))
  const metric = METRIC.exec(first)?.[1]
  if (metric !== undefined) return measured(metric, 'mm', 'millimetres')
  const bare = readQuantity(first, 'length')
  if (bare.ok) return { ok: true, diameter: bare.value, named: bare.unit === 'in' ? 'inches' : 'millimetres' }
  if (!/^\d/.test(first) && !FRACTION.test(first)) return refused({ code: 'NO_SCREW', text: first })
  if (FRACTION.test(first)) return measured(first, 'in', 'inches')
  if (second !== null && inInches(second)) return /^\d+$/.test(first) ? ofGauge(Number(first)) : measured(first, 'in', 'inches')
  const number = /^\d+$/.test(first) ? Number(first) : 0
  const doubtful = number >= DOUBTFUL_FROM ? screwGauge(number) : null
  return doubtful === null ? measured(first, 'mm', 'millimetres') : refused({ code: 'GAUGE_OR_MILLIMETRES', number, gaugeDiameter: metres(doubtful.outside.value) })
}

/** Whether a length is said, or can only be meant, in inches. */
function inInches(second: string): boolean {
  const said = readQuantity(second, 'length')
  if (said.ok) return said.unit === 'in'
  if (THREAD.test(second) && Number(second.split('/')[0]) > INCHES_BELOW) return false
  return FRACTION.test(second) || Number(second) < INCHES_BELOW
}

function ofGauge(gauge: number): Thickness | UnreadScrew {
  const row = screwGauge(gauge)
  return row === null ? refused({ code: 'UNKNOWN_GAUGE', gauge, known: SCREW_GAUGES.map(({ id }) => id) }) : { ok: true, diameter: metres(row.outside.value), named: 'gauge' }
}

function measured(text: string, unit: 'mm' | 'in', named: ScrewSize['named']): Thickness | UnreadScrew {
  const read = asLength(text, unit)
  return read.ok ? { ok: true, diameter: read.value, named } : refused({ code: 'BAD_SCREW_PART', part: 'diameter', why: read.problem })
}

function readLengths(second: string, unit: 'mm' | 'in'): Pick<ScrewSize, 'length' | 'thread'> | UnreadScrew {
  const [, whole, thread] = (unit === 'mm' ? THREAD.exec(second) : null) ?? []
  const said = readQuantity(second, 'length')
  const length = said.ok ? said : asLength(whole ?? second, unit)
  if (!length.ok) return refused({ code: 'BAD_SCREW_PART', part: 'length', why: length.problem })
  if (thread === undefined || whole === undefined) return { length: length.value, thread: null }
  const [all, threaded] = [asLength(whole, 'mm'), asLength(thread, 'mm')]
  if (!all.ok) return refused({ code: 'BAD_SCREW_PART', part: 'length', why: all.problem })
  return threaded.ok ? { length: all.value, thread: threaded.value } : refused({ code: 'BAD_SCREW_PART', part: 'thread', why: threaded.problem })
}

/** A length with its unit, or with the unit meant where none is written. */
function asLength(text: string, meant: 'mm' | 'in'): ReadResult<'length'> {
  const said = readQuantity(text, 'length')
  return said.ok || said.problem.code !== 'NO_UNIT' ? said : readQuantity(`${text} ${meant}`, 'length')
}

function withinRange(screw: ScrewSize): ScrewSize | UnreadScrew {
  for (const part of ['diameter', 'length', 'thread'] as const) {
    const value = screw[part]
    const [min, max] = RANGE[part]
    if (value !== null && (value < min || value > max)) return refused({ code: 'SCREW_OUT_OF_RANGE', part, value, min, max })
  }
  const { length, thread } = screw
  return length !== null && thread !== null && thread > length ? refused({ code: 'THREAD_LONGER_THAN_SCREW', thread, length }) : screw
}
