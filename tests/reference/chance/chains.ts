import type { Chain } from '../../../src/chance/chain'
import { drawChunk } from '../../../src/chance/chunk'
import { deviationsOf } from '../../../src/chance/nearness'
import { chunkGenerators } from '../../../src/chance/normals'

/** A chain of parts of which each is used so much by the numbers of a hanger, in every situation. */
export function chainOfUses(size: number, uses: readonly ((z: Float64Array) => number)[]): Chain {
  let now = new Float64Array(size)
  return {
    size,
    inputs: ['roll'],
    places: [Array.from({ length: size }, (_, i) => i)],
    parts: uses.map((use) => ({ key: 'leg', members: [{ draw: () => undefined, use: () => use(now) }] })),
    weight: () => 1,
    draw: (z) => { now = z as Float64Array<ArrayBuffer> },
  }
}

/** How many of so many hangers of a chain are overloaded. */
export function overloadedOf(chain: Chain, hangers: number, seed: number): number {
  const generators = chunkGenerators(seed)
  const deviations = deviationsOf(chain, generators(0))
  return drawChunk(chain, deviations, 0, hangers, generators(1)).atRest
}
