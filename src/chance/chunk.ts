import type { RandomGenerator } from 'pure-rand/types/RandomGenerator'
import { CASES_AT_REST } from '../load/loadCases'
import type { Chain } from './chain'
import { fillNormals } from './normals'
import { addPair, newSums } from './sensitivity'
import { CHANCE_CASES, type ChanceCase, type ChunkTally } from './tally'

/** Hangers in a chunk: what one generator draws, and what is handed over at once. */
export const CHUNK = 250
/** Every how many-th hanger also begins a pick-freeze pair, which takes as many more draws as there are inputs. */
const PAIR_EVERY = 10

/** Use beyond which nothing more is told: so that a part that bears nothing leaves a number. */
const [LEAST_USE, MOST_USE] = [1e-6, 1e3]

interface Hit { part: number; use: number }

/** The hardest used part of the hanger drawn last, in a situation. */
function hardest({ parts }: Chain, code: ChanceCase, hit: Hit): void {
  hit.part = 0
  hit.use = LEAST_USE
  for (let i = 0; i < parts.length; i += 1) {
    for (const member of parts[i]!.members) {
      const use = member.use(code)
      if (use > hit.use) {
        hit.part = i
        hit.use = Math.min(MOST_USE, use)
      }
    }
  }
}

/** The logarithm of the largest use at rest, which is defined whether or not anything fails. */
function logUse(chain: Chain, z: Float64Array, hit: Hit): number {
  chain.draw(z)
  let most = LEAST_USE
  for (const code of CASES_AT_REST) {
    hardest(chain, code, hit)
    most = Math.max(most, hit.use)
  }
  return Math.log(most)
}

/** Draws so many hangers from a chunk's own generator and tallies them. */
export function drawChunk(chain: Chain, index: number, hangers: number, generator: RandomGenerator): ChunkTally {
  const [z, other, mixed] = [0, 1, 2].map(() => new Float64Array(chain.size)) as [Float64Array, Float64Array, Float64Array]
  const none = (): number[] => new Array<number>(chain.parts.length).fill(0)
  const cases = Object.fromEntries(CHANCE_CASES.map((code) => [code, { use: [], weakest: none(), overloaded: none() }])) as unknown as Record<ChanceCase, { use: number[]; weakest: number[]; overloaded: number[] }>
  const rank = newSums(chain.inputs.length)
  const watered: number[] = []
  const hit: Hit = { part: 0, use: 0 }
  let atRest = 0
  for (let i = 0; i < hangers; i += 1) {
    fillNormals(generator, z)
    chain.draw(z)
    let over = false
    for (const code of CHANCE_CASES) {
      hardest(chain, code, hit)
      const tally = cases[code]
      tally.use.push(hit.use)
      tally.weakest[hit.part]! += 1
      if (hit.use <= 1) continue
      tally.overloaded[hit.part]! += 1
      over ||= code !== 'bump'
    }
    if (over) atRest += 1
    watered.push(chain.weight('watered'))
    if (i % PAIR_EVERY !== 0) continue
    fillNormals(generator, other)
    addPair(rank, (numbers) => logUse(chain, numbers, hit), z, other, mixed, chain.places)
  }
  return { index, hangers, cases, atRest, watered, rank }
}
