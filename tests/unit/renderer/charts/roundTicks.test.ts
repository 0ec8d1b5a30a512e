import { afterEach, expect, test } from 'vitest'
import { USUAL_HABITS, writeBy } from '#core'
import { roundTicks, tickText, type TickKind } from '../../../../renderer/charts/roundTicks'

afterEach(() => { writeBy(USUAL_HABITS) })
const told = (kind: TickKind, from: number, to: number): readonly string[] => roundTicks(kind, from, to, 6).map((value) => tickText(kind, value))

test('ticks are round in millimetres and kilograms', () => {
  expect(told('length', 0.08, 0.4)).toEqual(['100 mm', '150 mm', '200 mm', '250 mm', '30 cm', '35 cm', '40 cm'])
  expect(told('mass', 0.5, 15)).toEqual(['2 kg', '4 kg', '6 kg', '8 kg', '10 kg', '12 kg', '14 kg'])
  expect(told('count', 3, 12)).toEqual(['4', '6', '8', '10', '12'])
  expect(told('count', 2, 4)).toEqual(['2', '3', '4'])
})

test('and in parts of an inch and pounds for those who read these', () => {
  writeBy({ ...USUAL_HABITS, units: 'imperial' })
  expect(told('length', 0.08, 0.4)).toEqual(['6 in', '9 in', '12 in', '15 in'])
  expect(told('length', 0.001, 0.01)).toEqual(['1/16 in', '1/8 in', '3/16 in', '1/4 in', '5/16 in', '3/8 in'])
  expect(told('mass', 0.5, 15)).toEqual(['5 lb', '10 lb', '15 lb', '20 lb', '25 lb', '30 lb'])
})

test('a time, a force and a weight of cord have their units', () => {
  expect(told('time', 1.5 * 31_557_600, 6 * 31_557_600)).toEqual(['2 years', '3 years', '4 years', '5 years', '6 years'])
  expect(told('force', 200, 800).at(0)).toBe('30 kg')
  expect(told('linearDensity', 0.002, 0.008).at(0)).toBe('2 g/m')
})
