import { expect, test } from 'vitest'
import type { Patch } from '#core'
import type { Component } from '../../../src/load/component'
import { estimateStates } from '../../../src/load/estimate'
import type { State } from '../../../src/load/states'
import type { WeightPart } from '../../../src/load/weightParts'
import { hangerOf } from '../hanger/hangerOf'

/** Round, 6 mm of plastic: inside 164 mm wide, 154 mm deep. */
const POT: Patch = { 'pot.shape': 'cylinder', 'pot.rim': '176 mm', 'pot.height': '160 mm', 'pot.wall': '6 mm', 'pot.material': 'plastic' }
const partIn = (patch: Patch, state: State, part: WeightPart): Component | undefined =>
  estimateStates(hangerOf({ ...POT, ...patch }).answers)[state].find((c) => c.part === part)
const litres = (width: number, height: number): number => (Math.PI / 4) * width * width * height * 1000

test('a reservoir stands on the floor, as deep as its share of the room inside, at most to the rim', () => {
  const centre = (litre: string) => partIn({ 'reservoir.volume': litre }, 'flooded', 'reservoir')?.centre
  expect(centre('0.8 l')).toBeCloseTo(0.006 + (0.8 / litres(0.164, 0.154)) * 0.077, 12)
  expect(centre('30 l')).toBeCloseTo(0.006 + 0.077, 12)
})

test('rain hangs half way up the leaves: a tenth to all of the plant’s mass, none of it for sure where only watered', () => {
  const RAINED: Patch = { 'place.exposure': 'outdoors', 'plant.mass': '310 g', 'plant.growth': 'kept', 'plant.height': '44 cm' }
  const [watered, flooded] = [partIn(RAINED, 'watered', 'rain'), partIn(RAINED, 'flooded', 'rain')]
  expect(partIn(RAINED, 'dry', 'rain')).toBeUndefined()
  expect(watered?.mass.low).toBe(0)
  expect(flooded?.mass.low).toBeCloseTo(0.031, 12)
  expect(watered?.mass.high).toBeCloseTo(0.31, 12)
  expect(flooded?.centre).toBeCloseTo(0.16 + 0.22, 12)
})

test('saucer and cover pot balance half way up, known by the maker’s own weighing or from memory', () => {
  const saucer = (patch: Patch) => partIn({ 'saucer.width': '200 mm', 'saucer.depth': '24 mm', ...patch }, 'watered', 'saucer')
  expect(saucer({ 'saucer.mass': '140 g' })).toMatchObject({ centre: 0.012, basis: 'your own' })
  expect(saucer({})?.basis).toBe('from memory')
  const cover = (patch: Patch) => partIn({ 'cover.inside': '210 mm', 'cover.height': '146 mm', ...patch }, 'watered', 'coverPot')
  expect(cover({ 'cover.mass': '1.9 kg' })).toMatchObject({ centre: 0.073, basis: 'your own' })
  expect(cover({})?.basis).toBe('from memory')
})

test('the saucer of a trough is longer than wide by as much as the trough: full, a box of water', () => {
  const trough: Patch = { 'pot.shape': 'trough', 'pot.base': '176 mm', 'pot.length': '476 mm', 'saucer.width': '200 mm', 'saucer.depth': '24 mm' }
  expect(partIn(trough, 'flooded', 'saucer')?.water.high).toBeCloseTo(0.2 * 0.5 * 0.024 * 1000, 12)
})
