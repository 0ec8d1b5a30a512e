import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { windLoad } from '../../../src/load/windLoad'
import { metresPerSecond } from '../../../src/quantity/si'
import { hangerOf } from '../hanger/hangerOf'

const POT: Patch = { 'pot.shape': 'cylinder', 'pot.rim': '200 mm', 'pot.height': '180 mm' }
const windOn = (patch: Patch) => windLoad(hangerOf({ ...POT, ...patch }).answers, metresPerSecond(12))

describe('the pot', () => {
  test('is a rectangle of its width and height, round ones with 1.2, square ones on their diagonal with 1.4', () => {
    expect(windOn({}).pot).toMatchObject({ drag: 1.2, share: 1 })
    expect(windOn({}).pot.area).toBeCloseTo(0.2 * 0.18, 12)
    expect(windOn({ 'pot.shape': 'square', 'pot.base': '200 mm' }).pot.drag).toBe(1.4)
    expect(windOn({ 'pot.shape': 'square', 'pot.base': '200 mm' }).pot.area).toBeCloseTo(0.2 * Math.SQRT2 * 0.18, 12)
    expect(windOn({ 'pot.shape': 'trough', 'pot.base': '200 mm', 'pot.length': '480 mm' }).pot.drag).toBe(1.4)
    expect(windOn({ 'pot.shape': 'trough', 'pot.base': '200 mm', 'pot.length': '480 mm' }).pot.area).toBeCloseTo(Math.hypot(0.2, 0.48) * 0.18, 12)
  })

  test('if a bowl is all but the area under its ellipse', () => {
    const [radius, base, height] = [0.1, 0.045, 0.18]
    const half = height / Math.sqrt(1 - (base / radius) ** 2)
    const u = height / half
    const under = radius * half * (u * Math.sqrt(1 - u * u) + Math.asin(u))
    const { area } = windOn({ 'pot.shape': 'bowl', 'pot.base': '90 mm' }).pot
    expect(area).toBeLessThan(under)
    expect(area).toBeGreaterThan(0.99 * under)
  })

  test('in a lower cover pot stands out above it: both are in the wind', () => {
    // 280 mm inside and two walls of 7 mm of stoneware.
    expect(windOn({ 'cover.inside': '280 mm', 'cover.height': '60 mm' }).pot.area).toBeCloseTo(0.294 * 0.06 + 0.2 * (0.18 - 0.06), 12)
    expect(windOn({ 'cover.inside': '280 mm', 'cover.height': '190 mm' }).pot.area).toBeCloseTo(0.294 * 0.19, 12)
    // Of a cone 100 to 200 mm wide the upper half is 150 to 200 mm wide.
    const cone: Patch = { 'pot.shape': 'taperedRound', 'pot.base': '100 mm', 'cover.inside': '280 mm', 'cover.height': '90 mm' }
    expect(windOn(cone).pot.area).toBeCloseTo(0.294 * 0.09 + 0.175 * 0.09, 12)
  })

  test('has its saucer’s own silhouette added: 230 mm and two walls of 2 mm of plastic wide, 25 mm high', () => {
    const saucer: Patch = { 'pot.material': 'plastic', 'saucer.width': '230 mm', 'saucer.depth': '25 mm' }
    expect(windOn(saucer).pot.area - windOn({}).pot.area).toBeCloseTo((0.23 + 2 * 0.002) * 0.025, 12)
  })
})

describe('the cords', () => {
  // A bundle of n strands is 1.3 sqrt(n) cords wide.
  test('of legs are as many bundles as legs, as long as their strands', () => {
    const { cords } = windOn({ 'make.legs': '3', 'make.strands': '4', 'make.totalLength': '110 cm', 'cord.diameter': '5 mm' })
    expect(cords.area).toBeCloseTo(3 * 1.1 * 1.3 * 2 * 0.005, 12)
  })

  test('of a panel are the whole panel, and four bundles from it past the pot down to the end of the fringe', () => {
    const { cords } = windOn({
      'make.arrangement': 'panel', 'panel.width': '30 cm', 'panel.height': '25 cm', 'panel.rise': '8 cm', 'panel.front': '9', 'make.fringe': '15 cm', 'cord.diameter': '5 mm',
    })
    expect(cords.area).toBeCloseTo(0.3 * 0.25 + 4 * (0.08 + 0.18 + 0.15) * 1.3 * 3 * 0.005, 12)
  })
})
