import { afterEach, expect, test } from 'vitest'
import {
  CASE_NAMES, catalogueEntries, catalogueFigure, dayText, DEMOS, checkHanger, FIELD_PATHS, fieldOf, findingText, forceText, lengthText, linearDensityText, markedText, massLimitText, massRangeText, massText, massUnit, numberText,
  otherwiseMeant, parseDocument, percentText, plainLengthText, preferredText, problemText, ratingText, readField, resolveDocument, speedText, timeText, USUAL_HABITS, writeBy, writingHabits,
  type WritingHabits,
} from '#core'
import { lengthUpText, massLeastText, massWholeText } from '../../../src/words/amounts'

const using = (habits: Partial<WritingHabits>): void => writeBy({ ...USUAL_HABITS, ...habits })
// Every test file of the core shares its modules.
afterEach(() => writeBy(USUAL_HABITS))

const METRIC_UNIT = /\d ?(kg|mm|cm|m|km\/h|g\/m)\b/
const IMPERIAL_UNIT = /\d ?(lb|in|ft|mph|oz\/yd)\b/

test('each amount in the units that are read, and in both', () => {
  const amounts = (): readonly string[] => [massText(5.5), massRangeText({ low: 4.9, high: 6.25 }), massLimitText(13.58), massLeastText(12.04), massWholeText(11.2), forceText(98.0665), lengthText(0.1318), lengthText(1.524), speedText(18)]
  expect(amounts()).toEqual(['5.5 kg (12.1 lb)', '4.9 to 6.25 kg (10.8 to 13.8 lb)', '13.5 kg (29.9 lb)', '12.1 kg (26.6 lb)', '12 kg (25 lb)', '10 kg (22 lb)', '132 mm (5 3/16 in)', '1.52 m (5 ft 0 in)', '65 km/h (40 mph)'])
  using({ units: 'metric' })
  expect(amounts()).toEqual(['5.5 kg', '4.9 to 6.25 kg', '13.5 kg', '12.1 kg', '12 kg', '10 kg', '132 mm', '1.52 m', '65 km/h'])
  using({ units: 'imperial' })
  expect(amounts()).toEqual(['12.1 lb', '10.8 to 13.8 lb', '29.9 lb', '26.6 lb', '25 lb', '22 lb', '5 3/16 in', '5 ft 0 in', '40 mph'])
})

test('a decimal comma, in every number that can have decimals', () => {
  using({ decimalMark: ',' })
  expect([massText(5.5), massLimitText(13.58), massLeastText(12.04), lengthText(0.0254), numberText(0.08714), timeText(5400), linearDensityText(0.00465), ratingText(98.5)])
    .toEqual(['5,5 kg (12,1 lb)', '13,5 kg (29,9 lb)', '12,1 kg (26,6 lb)', '25,4 mm (1 in)', '0,087', '1,5 hours', '4,65 g/m', '11 kg (23 lb, 99 N)'])
  expect(percentText(0.621)).toBe('63 %')
})

test('without millimetres thin things are told in finer parts of an inch', () => {
  using({ units: 'imperial' })
  // 2.5 mm is 6.3 sixty-fourths of an inch, 3 mm 7.6.
  expect([lengthText(0.0025), lengthText(0.003), plainLengthText(0.01)]).toEqual(['3/32 in', '1/8 in', '25/64 in'])
  expect([CASE_NAMES.drop, massUnit().name, linearDensityText(0.00465), ratingText(98.5)]).toEqual(['dropped 3/8 in', 'lb', '0.15 oz/yd', '23 lb (99 N)'])
})

test('what must be enough is rounded up in whatever is read', () => {
  expect(lengthUpText(0.1312, 0.005)).toBe('135 mm (5 5/16 in)')
  using({ units: 'imperial' })
  for (let length = 0.011; length < 1.4; length += 0.0371) {
    const up = readField('make.totalLength', lengthUpText(length + 0.2, 0.005))
    expect(up.ok && typeof up.value === 'number' ? up.value : 0).toBeGreaterThanOrEqual(length + 0.2 - 1e-9)
  }
})

test('days in the order they are said', () => {
  const orders = (['dayFirst', 'monthFirst', 'yearFirst'] as const).map((dayOrder) => { using({ dayOrder }); return dayText('2029-03-09') })
  expect(orders).toEqual(['9 March 2029', 'March 9, 2029', '2029-03-09'])
})

test('whoever hands over an object may change it', () => {
  const own: { -readonly [K in keyof WritingHabits]: WritingHabits[K] } = { ...USUAL_HABITS }
  writeBy(own)
  own.units = 'metric'
  expect(massText(5.5)).toBe('5.5 kg')
  expect(writingHabits()).toBe(own)
})

test('what is assumed is written as the reader would type it, and reads back as the same', () => {
  expect(preferredText('200 mm', 'length')).toBe('200 mm')
  using({ decimalMark: ',' })
  expect([preferredText('4.5 kg', 'mass'), preferredText('8', 'count'), preferredText('1.25 kg', 'mass'), preferredText('nonsense', 'mass')]).toEqual(['4,5 kg', '8', '1,25 kg', 'nonsense'])
  // Three decimals behind a comma would be taken for a group.
  expect([markedText('131.937 in', 'length'), readField('make.cutLength', markedText('131.937 in', 'length'))]).toEqual(['131,9370 in', readField('make.cutLength', '131.937 in')])
  using({ units: 'imperial' })
  expect([preferredText('200 mm', 'length'), preferredText('100 cm', 'length'), preferredText('4 mm', 'length'), preferredText('5 in', 'length'), preferredText('60 min', 'time'), preferredText('4.5 kg', 'mass')])
    .toEqual(['7 7/8 in', '39 3/8 in', '5/32 in', '5 in', '60 min', '9.92 lb'])
})

test('every default reads back in every way of writing', () => {
  const document = parseDocument('{"format":"strandwise-hanger","version":1}')
  if (!document.ok) throw new Error('an empty hanger is one')
  const resolved = resolveDocument(document.document)
  if (!resolved.ok) throw new Error('an empty hanger is checked with what is assumed')
  for (const habits of [{ units: 'imperial', decimalMark: ',' }, { units: 'metric', decimalMark: ',' }, { units: 'imperial' }] as const) {
    using(habits)
    for (const { path, text } of resolved.hanger.assumed) {
      const field = fieldOf(path)
      if (!('kind' in field)) continue
      const [plain, preferred] = [readField(path, text), readField(path, preferredText(text, field.kind))]
      // An end of a range may be rounded out of it.
      if (plain.ok && plain.value === field.max) continue
      if (!plain.ok || !preferred.ok) throw new Error(`${path}: ${preferredText(text, field.kind)}`)
      expect(Math.abs(Number(preferred.value) - Number(plain.value)), path).toBeLessThanOrEqual(0.0008)
    }
  }
})

test('a point before three digits is no group, and that is told to those who might mean one', () => {
  expect(otherwiseMeant('1.250 mm', 'length')).toBe(null)
  using({ decimalMark: ',' })
  expect([otherwiseMeant('1.250 mm', 'length'), otherwiseMeant('1.25 m', 'length'), otherwiseMeant('1250 mm', 'length'), otherwiseMeant('0.250 m', 'length')]).toEqual(['1,25 mm', null, null, null])
})

test('typed numbers are read with either mark, whatever the habits', () => {
  const readings = ['3,5 mm', '1.234,5 mm', '1,234.5 mm', '1 234,5 mm', '3.5 mm'].map((text) => readField('cord.weighedLength', text)).map((read) => (read.ok ? null : read.problem.code))
  // 3.5 mm is below what may be weighed; the rest is read and allowed.
  expect(readings).toEqual(['OUT_OF_RANGE', null, null, null, 'OUT_OF_RANGE'])
  const ambiguous = readField('pot.rim', '1,250 mm')
  expect(ambiguous.ok ? '' : problemText(ambiguous.problem)).toContain('can be read as 1250 mm or 1.250 mm: write it without a group mark, or with a decimal point')
  using({ decimalMark: ',' })
  expect(ambiguous.ok ? '' : problemText(ambiguous.problem)).toContain('with a further 0 behind the comma')
  expect(readField('pot.rim', '0,250 m').ok && readField('pot.rim', '1,2500 m').ok).toBe(false)
})

test('no range that is allowed is told wider than it is', () => {
  using({ units: 'imperial' })
  for (const path of FIELD_PATHS) {
    const field = fieldOf(path)
    if (!('min' in field) || field.kind === 'time') continue
    const read = readField(path, 'x')
    const [low = '', high = ''] = (read.ok ? '' : problemText(read.problem)).split('Allowed: ')[1]?.replace(/\.$/, '').split(' to ') ?? []
    expect([readField(path, low).ok, readField(path, high).ok], `${path}: ${low} to ${high}`).toEqual([true, true])
  }
})

test('no sentence or table of a reader of one kind of units brings in the other', () => {
  const checks = DEMOS.slice(0, 4).flatMap(({ text }) => {
    const parsed = parseDocument(text)
    const resolved = parsed.ok ? resolveDocument(parsed.document) : null
    return resolved?.ok ? [checkHanger(resolved.hanger)] : []
  })
  const findings = checks.flatMap(({ links }) => links.flatMap((link) => link.findings))
  expect(findings.length).toBeGreaterThan(20)
  const figures = catalogueEntries().filter(({ unit }) => ['kg', 'm', 'kg/m', 'kg/m3', 'Pa'].includes(unit))
  using({ units: 'metric' })
  for (const finding of findings) expect(findingText(finding)).not.toMatch(IMPERIAL_UNIT)
  using({ units: 'imperial' })
  // What a maker gave as a reason or what a document says is theirs.
  for (const finding of findings) if (finding.code !== 'RESERVE_CHANGED') expect(findingText(finding)).not.toMatch(METRIC_UNIT)
  for (const entry of figures) if (!entry.id.startsWith('cords.MASS')) expect(catalogueFigure(entry), entry.id).not.toMatch(/\d ?(kg|mm|g\/m|kg per litre|MPa|GPa)\b/)
})

test('what is written for machines never depends on habits', () => {
  const parsed = parseDocument(DEMOS[0]?.text ?? '')
  const resolved = parsed.ok ? resolveDocument(parsed.document) : null
  if (!resolved?.ok) throw new Error('a demo is a hanger')
  const before = JSON.stringify(checkHanger(resolved.hanger))
  using({ units: 'imperial', decimalMark: ',', dayOrder: 'monthFirst' })
  expect(JSON.stringify(checkHanger(resolved.hanger))).toBe(before)
})
