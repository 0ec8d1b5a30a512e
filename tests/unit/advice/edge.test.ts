import { describe, expect, test } from 'vitest'
import { asListed, finish, halveBy, halveTo, lastThatHolds, searchEdge, type Halve } from '../../../src/advice/edge'

/** Searches with a check that says which values hold. */
function search(steps: readonly number[], holds: (value: number) => boolean, halve: Halve) {
  const asked: number[] = []
  const { edge, trials } = finish(searchEdge(steps, (value) => {
    asked.push(value)
    return { holds: holds(value) }
  }, halve))
  expect(trials.map(({ value }) => value)).toEqual(asked)
  expect(lastThatHolds(steps, holds, halve)).toBe(edge?.last.value ?? null)
  return { asked, edge: edge === null ? null : { last: edge.last.value, beyond: edge.beyond?.value ?? null, first: edge.first.value, before: edge.before?.value ?? null, again: edge.again } }
}

describe('where values stop holding', () => {
  test('integers are found exactly between the steps of a scan', () => {
    for (let least = 1; least <= 48; least += 1) {
      const { edge } = search([48, 36, 24, 12, 6, 3, 1], (n) => n >= least, halveBy(1))
      expect(edge).toEqual({ last: least, beyond: least === 1 ? null : least - 1, first: 48, before: null, again: [] })
    }
  })

  test('a length is found to the step that is asked, on either side of the edge', () => {
    const { edge } = search([4, 2, 1, 0.5], (length) => length >= 1.2345, halveBy(0.005))
    expect(edge).toMatchObject({ last: 1.235, beyond: 1.23 })
  })

  test('a mass is halved until it is close enough', () => {
    const { edge } = search([0.1, 1, 10, 100], (mass) => mass <= 7.77, halveTo(0.005))
    expect(edge?.last).toBeLessThanOrEqual(7.77)
    expect(edge?.beyond).toBeGreaterThan(7.77)
    expect((edge?.beyond ?? 0) - (edge?.last ?? 0)).toBeLessThanOrEqual(0.005)
  })

  test('of what is sold only what is listed is tried', () => {
    const { edge, asked } = search([32, 25, 16, 10], (size) => size >= 12, asListed)
    expect(asked).toEqual([32, 25, 16, 10])
    expect(edge).toMatchObject({ last: 16, beyond: 10 })
  })

  test('what holds again beyond a gap is told, and not trusted', () => {
    const { edge } = search([12, 11, 10, 9, 8, 7, 6, 5, 4, 3], (n) => n !== 7 && n !== 4, halveBy(1))
    expect(edge).toEqual({ last: 8, beyond: 7, first: 12, before: null, again: [6, 5, 3] })
  })

  test('what does not hold at the safe end is passed over, and where that begins is found', () => {
    const { edge } = search([48, 36, 24, 12, 6, 3], (n) => n >= 5 && n <= 29, halveBy(1))
    expect(edge).toEqual({ last: 5, beyond: 4, first: 29, before: 30, again: [] })
  })

  test.each([
    ['none holds', () => false, null],
    ['all hold', () => true, { last: 1, beyond: null, first: 8, before: null, again: [] }],
    ['the far end alone', (n: number) => n === 1, { last: 1, beyond: null, first: 1, before: 2, again: [] }],
    ['the safe end alone', (n: number) => n === 8, { last: 8, beyond: 7, first: 8, before: null, again: [] }],
  ])('%s', (_, holds, edge) => {
    expect(search([8, 4, 2, 1], holds, halveBy(1)).edge).toEqual(edge)
  })

  test('a single value is an edge of its own', () => {
    expect(search([5], () => true, halveBy(1)).edge).toEqual({ last: 5, beyond: null, first: 5, before: null, again: [] })
    expect(search([], () => true, halveBy(1)).edge).toBeNull()
  })

  test('it can be stopped after any check', () => {
    let asked = 0
    const steps = searchEdge([8, 4, 2, 1], () => ({ holds: (asked += 1) > 0 }), halveBy(1))
    steps.next()
    steps.next()
    expect(asked).toBe(2)
  })
})
