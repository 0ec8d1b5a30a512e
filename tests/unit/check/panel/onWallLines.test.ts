import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'
import { PANEL } from '../../hanger/panelPatch'
import { without } from '../../hanger/without'
import { WALL_HOOK } from '../links/places'
import { linkIn } from '../linkOf'

describe('what lies between pot and wall', () => {
  const between = (patch: Patch) => linkIn(checkOf(patch), 'fixing', 'watered').terms.find((t) => t.symbol === 'd_c')

  test('is a cord as thick as measured or usual, of a planter the thickness of its panel', () => {
    expect(between({ ...ORDINARY, ...WALL_HOOK })).toMatchObject({ basis: 'your own', source: 'a cord lies between pot and wall' })
    expect(between(without({ ...ORDINARY, ...WALL_HOOK }, 'cord.diameter'))?.basis).toBe('common practice')
    const panel = between(PANEL)
    expect(panel?.value).toBe(0.01)
    expect(panel).toMatchObject({ basis: 'your own', source: 'cords and knots between pot and wall' })
    expect(between(without(PANEL, 'cord.diameter'))?.basis).toBe('your own')
  })
})

describe('the geometry as it is looked at', () => {
  const geometryOf = (patch: Patch) => checkOf(patch).solved.geometry

  test('a planter is seen from the room, with first knots from its base edge up to where its strands touch', () => {
    const { turn, onSide, path } = geometryOf(PANEL)
    expect(turn).toBe(Math.PI)
    if (!path.ok) throw new Error('no path')
    expect(onSide).toEqual({ from: path.knotToBaseEdge, to: path.knotToLeave })
    expect(geometryOf(ORDINARY).turn).not.toBe(Math.PI)
  })

  test('of a trough the first knots lie no higher than the shortest way between two legs, and no lower than the widest base', () => {
    const { onSide, between } = geometryOf({ ...ORDINARY, 'pot.shape': 'trough', 'pot.rim': '140 mm', 'pot.base': '110 mm', 'pot.length': '420 mm', 'make.totalLength': '180 cm' })
    const [edges, ends] = [between.map(({ path }) => path.knotToBaseEdge), between.map(({ path }) => path.knotToLeave)]
    expect(Math.max(...ends)).toBeGreaterThan(Math.min(...ends) + 0.01)
    expect(onSide).toEqual({ from: Math.max(...edges), to: Math.min(...ends) })
  })
})
