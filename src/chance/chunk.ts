import type { RandomGenerator } from 'pure-rand/types/RandomGenerator'
import { CASES_AT_REST } from '../load/loadCases'
import type { Chain } from './chain'
import { useOf, type Deviations } from './nearness'
import { fillNormals } from './normals'
import { addPair, newSums } from './sensitivity'
import { CHANCE_CASES, type ChanceCase, type ChunkTally } from './tally'

/** Hangers in a chunk: what one generator draws, and what is handed over at once. */
export const CHUNK = 250
/** Every how many-th hanger also begins a pick-freeze pair, which takes as many more draws as there are inputs. */
const PAIR_EVERY = 10

/** What the parts of a hanger do in a situation. */
interface Hit {
  /** The hardest used part, and its use. */
  part: number
  use: number
  /** The part nearest to failing, and how many of its own standard deviations it is short of that: positive beyond it. */
  nearest: number
  nearness: number
}

function look({ parts }: Chain, deviations: Deviations, code: ChanceCase, hit: Hit): void {
  hit.part = hit.nearest = 0
  hit.use = 0
  hit.nearness = -Infinity
  for (let i = 0; i < parts.length; i += 1) {
    const use = useOf(parts[i]!, code)
    const nearness = Math.log(use) / deviations[code][i]!
    if (use > hit.use) {
      hit.part = i
      hit.use = use
    }
    if (nearness > hit.nearness) {
      hit.nearest = i
      hit.nearness = nearness
    }
  }
}

/** How near a hanger comes to failing at rest, which is defined whether or not anything fails. */
function nearnessAtRest(chain: Chain, deviations: Deviations, z: Float64Array, hit: Hit): number {
  chain.draw(z)
  let most = -Infinity
  for (const code of CASES_AT_REST) {
    look(chain, deviations, code, hit)
    most = Math.max(most, hit.nearness)
  }
  return most
}

/** Draws so many hangers from a chunk's own generator and tallies them. */
export function drawChunk(chain: Chain, deviations: Deviations, index: number, hangers: number, generator: RandomGenerator): ChunkTally {
  const [z, other, mixed] = [0, 1, 2].map(() => new Float64Array(chain.size)) as [Float64Array, Float64Array, Float64Array]
  const none = (): number[] => new Array<number>(chain.parts.length).fill(0)
  const cases = Object.fromEntries(CHANCE_CASES.map((code) => [code, { use: [], nearest: none(), overloaded: none() }])) as unknown as Record<ChanceCase, { use: number[]; nearest: number[]; overloaded: number[] }>
  const rank = newSums(chain.inputs.length)
  const watered: number[] = []
  const hit: Hit = { part: 0, use: 0, nearest: 0, nearness: 0 }
  let atRest = 0
  for (let i = 0; i < hangers; i += 1) {
    fillNormals(generator, z)
    chain.draw(z)
    let over = false
    for (const code of CHANCE_CASES) {
      look(chain, deviations, code, hit)
      const tally = cases[code]
      tally.use.push(hit.use)
      tally.nearest[hit.nearest]! += 1
      if (hit.use <= 1) continue
      tally.overloaded[hit.part]! += 1
      over ||= code !== 'bump'
    }
    if (over) atRest += 1
    watered.push(chain.weight('watered'))
    if (i % PAIR_EVERY !== 0) continue
    fillNormals(generator, other)
    addPair(rank, (numbers) => nearnessAtRest(chain, deviations, numbers, hit), z, other, mixed, chain.places)
  }
  return { index, hangers, cases, atRest, watered, rank }
}
