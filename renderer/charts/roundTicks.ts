import { scaleLinear } from 'd3-scale'
import { INCH, linearDensityText, massUnit, numberText, plainLengthText, STANDARD_GRAVITY, timeText, writingHabits } from '#core'
import { texts } from '../texts/texts'

/** What an axis is measured in, SI throughout. */
export type TickKind = 'length' | 'mass' | 'force' | 'time' | 'linearDensity' | 'count' | 'ratio'

/** How inches are divided and gathered on a tape. */
const INCH_STEPS = [1 / 64, 1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 3, 6, 12, 24, 36, 60, 120]
const DAY = 86_400
const YEAR = 365.25 * DAY

/** What the reader counts in on such an axis, in SI. */
function unitOf(kind: TickKind, span: number): number {
  switch (kind) {
    case 'length': return 0.001
    case 'mass': return massUnit().kilograms
    case 'force': return massUnit().kilograms * STANDARD_GRAVITY
    case 'time': return span > YEAR ? YEAR : DAY
    case 'linearDensity': return 0.001
    case 'count': case 'ratio': return 1
  }
}

function inchTicks(from: number, to: number, most: number): readonly number[] {
  const step = INCH * (INCH_STEPS.find((one) => (to - from) / (one * INCH) <= most) ?? 240)
  const first = Math.ceil(from / step - 1e-9)
  return Array.from({ length: Math.floor(to / step + 1e-9) - first + 1 }, (_, i) => (first + i) * step)
}

/** Values along an axis that are round in the unit the reader thinks in, about `most` of them. */
export function roundTicks(kind: TickKind, from: number, to: number, most: number): readonly number[] {
  if (kind === 'length' && writingHabits().units === 'imperial') return inchTicks(from, to, most)
  const unit = unitOf(kind, to - from)
  const ticks = scaleLinear([from / unit, to / unit], [0, 1]).ticks(most).map((value) => value * unit)
  return kind === 'count' ? ticks.filter((value) => Number.isInteger(value)) : ticks
}

/** A value of an axis in the reader’s first unit, short enough to stand at its tick; forces as the mass that would pull as hard. */
export function tickText(kind: TickKind, value: number): string {
  switch (kind) {
    case 'length': return plainLengthText(value)
    case 'mass': return texts.charts.tick(numberText(value / massUnit().kilograms), massUnit().name)
    case 'force': return texts.charts.tick(numberText(value / massUnit().kilograms / STANDARD_GRAVITY), massUnit().name)
    case 'time': return timeText(value)
    case 'linearDensity': return linearDensityText(value)
    case 'count': case 'ratio': return numberText(value)
  }
}
