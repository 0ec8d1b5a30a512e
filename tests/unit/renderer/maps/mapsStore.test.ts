import { describe, expect, test } from 'vitest'
import { nextTick, shallowRef } from 'vue'
import { editField, type HangerDocument, type MapStep } from '#core'
import type { Ended, StartJob } from '../../../../renderer/jobs/startJob'
import { createMaps } from '../../../../renderer/maps/mapsStore'
import { demoDocument } from '../hangers'

const FERN = demoDocument('fern-over-the-sideboard')
const WIDER = editField(FERN, 'pot.rim', '20 cm')
const HOLDS = { utilisation: 0.5, verdict: 'holds', link: 'leg' } as const

/** A grid of so many points each way, and its rows. */
function grid(points: number, rows = points): readonly MapStep[] {
  const values = Array.from({ length: points }, (_, i) => 0.1 + (0.2 * i) / (points - 1))
  return [
    { kind: 'grid', along: { code: 'rim', field: 'pot.rim', unit: 'm', values, present: 0.17 }, up: { code: 'length', field: 'make.totalLength', unit: 'm', values, present: 0.2 } },
    ...Array.from({ length: rows }, (_, row): MapStep => ({ kind: 'row', row, cells: values.map(() => HOLDS) })),
  ]
}

/** A worker that does what the test says. */
function open(first: HangerDocument) {
  const document = shallowRef(first)
  const jobs: { readonly name: string, readonly asked: unknown, readonly steps: (steps: readonly unknown[]) => void, readonly end: (ended: Ended<never>) => void }[] = []
  const start = ((name: string, asked: unknown, steps: (steps: readonly unknown[]) => void) => {
    let end: (ended: Ended<never>) => void = () => undefined
    const ended = new Promise<Ended<never>>((done) => { end = done })
    jobs.push({ name, asked, steps, end })
    return { ended, callOff: () => { end({ how: 'calledOff' }) } }
  }) as unknown as StartJob
  const maps = createMaps(start, () => document.value, (next) => { document.value = next })
  const settle = (): Promise<void> => new Promise((done) => { setTimeout(done) })
  const answer = async (): Promise<void> => {
    jobs.at(-1)?.end({ how: 'answered', answer: { ok: true, checks: 1 } as never })
    await settle()
  }
  maps.open()
  return { maps, document, jobs, answer, settle }
}
const shown = ({ maps }: ReturnType<typeof open>): readonly [points: number | undefined, rows: number | undefined] => [maps.drawn.value?.along.values.length, maps.drawn.value?.grid.length]

describe('maps', () => {
  test('a first grid is seen row by row; a finer one takes its place when it is whole', async () => {
    const one = open(FERN)
    const [coarse, fine] = [grid(3), grid(5)]
    one.jobs[0]?.steps(coarse.slice(0, 2))
    expect(shown(one)).toEqual([3, 1])
    one.jobs[0]?.steps(coarse.slice(2))
    one.jobs[0]?.steps(fine.slice(0, 5))
    expect(shown(one)).toEqual([3, 3])
    one.jobs[0]?.steps(fine.slice(5))
    expect(shown(one)).toEqual([5, 5])
    await one.answer()
    expect([one.maps.state.value, one.maps.isOld.value]).toEqual(['done', false])
    one.maps.open()
    expect(one.jobs).toHaveLength(1)
  })

  test('what is called off stays as far as it came, and is drawn again when it is looked at again', async () => {
    const one = open(FERN)
    one.jobs[0]?.steps(grid(3, 2))
    one.maps.callOff()
    await one.settle()
    expect([one.maps.state.value, shown(one)]).toEqual(['calledOff', [3, 2]])
    one.maps.open()
    expect([one.maps.state.value, one.jobs.length]).toEqual(['asking', 2])
  })

  test('a map of the hanger as it was is told as such until the new one is there, and nothing of it is tried on', async () => {
    const one = open(FERN)
    one.jobs[0]?.steps(grid(3))
    await one.answer()
    one.document.value = WIDER
    await nextTick()
    expect(one.maps.isOld.value).toBe(true)
    one.maps.begin()
    expect([one.jobs[1]?.asked, one.maps.isOld.value, shown(one)]).toEqual([{ document: WIDER, map: 'cordByPot', scope: 'hanger' }, true, [3, 3]])
    expect([one.maps.tryOn(0.2, 0.004), one.document.value]).toEqual([false, WIDER])
    one.jobs[1]?.steps(grid(3))
    expect(one.maps.isOld.value).toBe(false)
  })

  test('a point is laid over the hanger and taken back to the very hanger it was', async () => {
    const one = open(FERN)
    one.jobs[0]?.steps(grid(3))
    await one.answer()
    expect(one.maps.tryOn(0.2, 0.006)).toBe(true)
    expect([one.document.value.typed['pot.rim'], one.document.value.typed['cord.diameter'], one.maps.isTried.value]).toEqual(['20 cm', '6 mm', true])
    one.maps.takeBack()
    expect(one.document.value).toBe(FERN)
  })

  test('another map drops the one before, even while that is being drawn', async () => {
    const one = open(FERN)
    one.jobs[0]?.steps(grid(3))
    one.maps.chooseLook('strandsByWeight')
    await one.settle()
    expect([one.maps.drawn.value, one.maps.state.value, one.jobs[1]?.asked]).toEqual([null, 'asking', { document: FERN, map: 'strandsByWeight', scope: 'hanger' }])
    one.maps.chooseLook('lines')
    expect(one.jobs[2]).toMatchObject({ name: 'inputLines', asked: { document: FERN, field: 'make.totalLength' } })
    one.maps.chooseField('make.strands')
    expect(one.jobs[3]?.asked).toEqual({ document: FERN, field: 'make.strands' })
  })

  test('why there is no map is told, and a fault', async () => {
    const one = open(FERN)
    one.jobs[0]?.end({ how: 'answered', answer: { ok: false, why: 'notConcerned' } as never })
    await one.settle()
    expect([one.maps.why.value, one.maps.drawn.value]).toEqual(['notConcerned', null])
    one.maps.begin()
    one.jobs[1]?.end({ how: 'failed', detail: 'broken' })
    await one.settle()
    expect(one.maps.state.value).toBe('failed')
  })
})
