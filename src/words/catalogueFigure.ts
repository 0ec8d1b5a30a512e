import type { CatalogueEntry } from '../catalogue/collectEntries'
import { formatSi } from '../quantity/formatSi'
import { POUND, STANDARD_GRAVITY } from '../quantity/si'
import { forceText, linearDensityText, massText, numberText, timeText } from './amounts'
import { withMark, writingHabits } from './writing'

type Write = (value: number) => string

const scaled = (size: number, unit: string): Write => (value) => `${numberText(value / size)} ${unit}`
/** In the reader’s own unit, metric where both are read. */
const either = (metric: Write, imperial: Write): Write => (value) => (writingHabits().units === 'imperial' ? imperial : metric)(value)
/** A table’s lengths go by hundredths of an inch, which no tape shows. */
const MILLIMETRES = either(scaled(1e-3, 'mm'), scaled(0.0254, 'in'))

/** How a value is written for a maker, by its SI unit: forces as the mass that would pull as hard. */
const BY_UNIT: Readonly<Record<string, Write>> = {
  '1': (value) => withMark(formatSi(value, '')),
  N: forceText,
  'kg': massText,
  's': timeText,
  'm': MILLIMETRES,
  'rad': (value) => `${withMark(formatSi(value, 'deg').replace(' deg', ''))}°`,
  'kg/m': linearDensityText,
  'kg/m3': either(scaled(1e3, 'kg per litre'), scaled(POUND / 0.3048 ** 3, 'lb per cubic foot')),
  'Pa': either((value) => (value >= 1e9 ? scaled(1e9, 'GPa') : scaled(1e6, 'MPa'))(value), scaled(POUND * STANDARD_GRAVITY / 0.0254 ** 2, 'psi')),
  'N/(kg/m)': scaled(1e4, 'cN/tex'),
  'N/m^1.5': scaled(1000 ** 1.5, 'N per mm^1.5'),
  'N/m^1.75': scaled(1000 ** 1.75, 'N per mm^1.75'),
  'N/(Pa^0.5 m^1.5)': scaled(1000 ** 0.5, 'N per MPa^0.5 mm^1.5'),
  '1/m': scaled(1e3, 'per mm'),
  'N/m2': (value) => `${forceText(value / 1e6)} per mm²`,
}

/** Where the SI unit alone would mislead. */
const BY_ID: Readonly<Record<string, Write>> = {
  'cords.DEFAULT_STIFFNESS': scaled(1, 'N'),
  'cords.MASS_BY_DIAMETER': scaled(1e3, 'g/m per mm²'),
}

/** What the x of a curve is, where it is no plain number. */
const X_BY_ID: Readonly<Record<string, Write>> = {
  'lateral.BENDING_YIELD.lag.steps': (x) => `up to ${MILLIMETRES(x)}`,
  'lateral.BENDING_YIELD.nail.steps': (x) => `up to ${MILLIMETRES(x)}`,
  'lateral.LAG_ACROSS_GRAIN.steps': MILLIMETRES,
  'sticks.SLOPE_OF_GRAIN.points': (x) => `1 in ${numberText(1 / x)}`,
  'wind.FOLDED_LEAVES.points': either(scaled(1, 'm/s'), scaled(0.44704, 'mph')),
  'timber.ALLOWABLE_DURATION.steps': (x) => (x === Infinity ? 'longer' : `up to ${timeText(x)}`),
}

/** "0.6 to 0.8 kg per litre, likely 0.7": the unit once, where the ends share it. */
function rangeText(low: string, likely: string, high: string): string {
  const [lowNumber, likelyNumber, highNumber] = [low, likely, high].map((text) => text.split(' ', 1)[0] ?? '')
  const unitOf = (text: string): string => text.slice(text.split(' ', 1)[0]?.length)
  const shared = unitOf(low) === unitOf(high) && unitOf(low) === unitOf(likely)
  return shared ? `${lowNumber} to ${highNumber}${unitOf(high)}, likely ${likelyNumber}` : `${low} to ${high}, likely ${likely}`
}

/** The figure of a catalogue entry in a maker's units. */
export function catalogueFigure({ id, figure, unit }: CatalogueEntry): string {
  const write = BY_ID[id] ?? BY_UNIT[unit] ?? ((value: number) => `${numberText(value)} ${unit}`)
  switch (figure.kind) {
    case 'single': return write(figure.value)
    case 'range': return figure.low === figure.high ? write(figure.likely) : rangeText(write(figure.low), write(figure.likely), write(figure.high))
    case 'curve': return figure.points.map(([x, y]) => `${(X_BY_ID[id] ?? numberText)(x)}: ${write(y)}`).join('; ')
  }
}
