import { describe, expect, test } from 'vitest'
import { readScrew, type ScrewSize } from '../../../src/hanger/readScrew'
import { screwProblemText } from '../../../src/words/screwProblems'
import { seededRandom } from '../quantity/seededRandom'
import { sentenceFaultsOf } from '../words/cleanSentence'

const sizeOf = (text: string): ScrewSize => {
  const read = readScrew(text)
  if (!read.ok) throw new Error(`${text}: ${read.problem.code}`)
  return read
}
const problemOf = (text: string) => {
  const read = readScrew(text)
  if (read.ok) throw new Error(`${text} was read`)
  return read.problem
}
const millimetres = (text: string): readonly (number | null)[] => {
  const { diameter, length, thread } = sizeOf(text)
  return [diameter, length, thread].map((x) => (x === null ? null : Number((x * 1000).toFixed(6))))
}

describe('a screw as its packet names it', () => {
  // [name, thickness, length and thread in mm]: gauges by 0.060 in + 0.013 in each, inches of 25.4 mm.
  test.each([
    ['#8 x 1-1/2 in', 4.1656, 38.1, null],
    ['No. 8 x 1 1/2"', 4.1656, 38.1, null],
    ['no 10 × 2½ in', 4.826, 63.5, null],
    ['Nº 6 x 1 in', 3.5052, 25.4, null],
    ['8 x 1-1/2', 4.1656, 38.1, null],
    ['12x3', 5.4864, 76.2, null],
    ['8 gauge x 40 mm', 4.1656, 40, null],
    ['#14', 6.1468, null, null],
    ['4 x 40', 4, 40, null],
    ['4.0 x 40 mm', 4, 40, null],
    ['4,5×50', 4.5, 50, null],
    ['3.5x30', 3.5, 30, null],
    ['6 x 60', 6, 60, null],
    ['8.0 x 120', 8, 120, null],
    ['8 mm x 90 mm', 8, 90, null],
    ['5mm x 7 cm', 5, 70, null],
    ['M8 x 80', 8, 80, null],
    ['4.0 x 40/24', 4, 40, 24],
    ['4.5 x 60/36 mm', 4.5, 60, 36],
    ['1/4 x 3 in', 6.35, 76.2, null],
    ['5/16" by 4"', 7.9375, 101.6, null],
    ['0.25 x 3 in', 6.35, 76.2, null],
    ['3.5 mm', 3.5, null, null],
  ])('%s', (name, diameter, length, thread) => {
    expect(millimetres(name)).toEqual([diameter, length, thread])
  })

  test('says how it was named', () => {
    expect(['#8 x 2 in', '4 x 40', '1/4 x 3 in'].map((name) => sizeOf(name).named)).toEqual(['gauge', 'millimetres', 'inches'])
  })

  test('a slash is a thread in millimetres and a fraction in inches', () => {
    expect(millimetres('4 x 40/24')).toEqual([4, 40, 24])
    expect(millimetres('6 x 3/4')).toEqual([3.5052, 19.05, null])
  })

  test.each([['8 x 40 mm', 8, 4.1656], ['10 x 60', 10, 4.826], ['7 x 30', 7, 3.8354]])('“%s” may be millimetres or a gauge and is asked back', (name, number, gauge) => {
    const problem = problemOf(name)
    if (problem.code !== 'GAUGE_OR_MILLIMETRES') throw new Error(problem.code)
    expect(problem.number).toBe(number)
    expect(problem.gaugeDiameter * 1000).toBeCloseTo(gauge, 9)
  })

  test.each([
    ['', 'NO_SCREW'], ['hex', 'NO_SCREW'], ['x 40', 'NO_SCREW'], ['4 x 40 '.repeat(9), 'NO_SCREW'],
    ['#11 x 1 in', 'UNKNOWN_GAUGE'], ['#0 x 1 in', 'UNKNOWN_GAUGE'],
    ['4 x 4000', 'SCREW_OUT_OF_RANGE'], ['40 mm', 'SCREW_OUT_OF_RANGE'], ['4 x 2 mm', 'SCREW_OUT_OF_RANGE'], ['4 x 40/1', 'SCREW_OUT_OF_RANGE'],
    ['#8 x 40 kg', 'BAD_SCREW_PART'], ['4 x 3 x 2', 'BAD_SCREW_PART'], ['4 x', 'BAD_SCREW_PART'], ['4 N x 40', 'BAD_SCREW_PART'],
    ['4 x 40/60', 'THREAD_LONGER_THAN_SCREW'],
  ])('“%s”: %s', (name, code) => {
    expect(problemOf(name).code).toBe(code)
  })

  test('whatever is typed is read within its range or refused in a sentence', () => {
    const random = seededRandom(20)
    const pieces = ['#', 'No. ', '8', '4.5', '1/2', '-', ' x ', '×', 'by', ' mm', ' in', '"', '/', '24', ',', '½', 'M', 'gauge', ' ', 'kg', '0', '∞']
    for (let i = 0; i < 4000; i++) {
      const name = Array.from({ length: 1 + Math.floor(random() * 7) }, () => pieces[Math.floor(random() * pieces.length)]).join('')
      const read = readScrew(name)
      if (read.ok) {
        expect(read.diameter).toBeGreaterThanOrEqual(0.0015)
        expect(read.diameter).toBeLessThanOrEqual(0.02)
        if (read.length !== null) expect(read.length).toBeGreaterThanOrEqual(read.thread ?? 0.005)
      } else {
        expect([name, sentenceFaultsOf(screwProblemText(read.problem).replace(/“[^”]*”/g, '“x”'))]).toEqual([name, []])
      }
    }
  })
})

describe('what is said of one that cannot be read', () => {
  test.each([
    ['', 'No screw was named: write it as on the packet, such as 4 x 40 mm or #8 x 1 1/2 in.'],
    ['8 x 40', '“8” may be 8 mm thick or a No. 8, which is 4.17 mm thick: write M8 or #8.'],
    ['4 x 4000', 'The screw’s length must be 5 mm (3/16 in) to 40 cm (15 3/4 in).'],
    ['#8 x 40 kg', 'The screw’s length: “kg” is a unit of mass, and length is asked.'],
    ['4 x 40/60', 'The thread, 60 mm (2 3/8 in), cannot be longer than the screw, 40 mm (1 9/16 in).'],
  ])('“%s”', (name, text) => {
    expect(screwProblemText(problemOf(name))).toBe(text)
  })
})
