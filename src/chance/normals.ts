import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator'

/**
 * The generator of each chunk of a seed: that of the seed, sent ahead by one jump of 2^64 numbers for each chunk and one more,
 * so that no two chunks share any and none begins at the seed's own few bits. Asked for with rising numbers.
 */
export function chunkGenerators(seed: number): (chunk: number) => RandomGenerator {
  const ahead = xoroshiro128plus(seed)
  let jumps = 0
  return (chunk) => {
    for (; jumps <= chunk; jumps += 1) ahead.jump()
    return ahead.clone()
  }
}

/** Fills with standard normal numbers, two from two uniform ones each (Box and Muller, Ann. Math. Stat. 29, 1958). */
export function fillNormals(generator: RandomGenerator, z: Float64Array): void {
  for (let i = 0; i < z.length; i += 2) {
    const radius = Math.sqrt(-2 * Math.log(1 - uniformFloat64(generator)))
    const angle = 2 * Math.PI * uniformFloat64(generator)
    z[i] = radius * Math.cos(angle)
    if (i + 1 < z.length) z[i + 1] = radius * Math.sin(angle)
  }
}
