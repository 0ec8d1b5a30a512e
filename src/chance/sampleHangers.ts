import { checkHanger } from '../check/checkHanger'
import { resolveDocument } from '../hanger/resolve'
import { STANDARD_GRAVITY } from '../quantity/si'
import type { ChanceShare } from './asked'
import { chainOf } from './chain'
import { CHUNK, drawChunk } from './chunk'
import { knownParts, refusalFor } from './known'
import { isSolved } from './legMembers'
import { deviationsOf } from './nearness'
import { chunkGenerators } from './normals'
import type { ChanceProblem } from './problem'
import { faultsOf } from './readChance'
import type { ChanceFrame, ChanceTally, ChunkTally } from './tally'

export type ChanceOutcome = { readonly ok: true; readonly tally: ChanceTally } | { readonly ok: false; readonly problems: readonly ChanceProblem[] }

const refused = (...problems: readonly ChanceProblem[]): ChanceOutcome => ({ ok: false, problems })

/**
 * Draws hangers made like the one asked about and tallies what each does, chunk by chunk, so that it can be stopped in
 * between and shared among workers: the hanger is checked once, and each drawn one only runs through its slings and its parts'
 * demand and strength. The same seed gives the same hangers, however they are divided. Pure.
 */
export function* sampleHangers(share: ChanceShare): Generator<ChanceTally, ChanceOutcome, void> {
  const faults = faultsOf(share)
  if (faults.length > 0) return refused(...faults)
  const resolved = resolveDocument(share.document)
  if (!resolved.ok) return refused({ code: 'UNREADABLE', problems: resolved.problems })
  const check = checkHanger(resolved.hanger)
  const sorted = knownParts(check)
  const refusal = refusalFor(check, sorted)
  if (refusal !== null) return refused(refusal)
  const chain = chainOf(check, sorted.known)
  const { solved } = check
  const frame: ChanceFrame = {
    samples: share.samples,
    seed: share.seed,
    parts: chain.parts.map(({ key }) => key),
    byModel: chain.parts.flatMap(({ key }, i) => (sorted.known[i]?.results.some((r) => r.grade === 'model') === true ? [key] : [])),
    leftOut: sorted.leftOut,
    inputs: chain.inputs,
    slings: isSolved(solved.tiers[0]?.hung ?? solved) ? 'solved' : 'scaled',
    checkedWeight: solved.loads.watered.weight / STANDARD_GRAVITY,
    life: solved.hanger.answers['place.life'],
  }
  const generatorOf = chunkGenerators(share.seed)
  // The first stream is that of the pilot, which every worker draws alike.
  const deviations = deviationsOf(chain, generatorOf(0))
  const chunks: ChunkTally[] = []
  for (let index = share.worker; index * CHUNK < share.samples; index += share.workers) {
    const chunk = drawChunk(chain, deviations, index, Math.min(CHUNK, share.samples - index * CHUNK), generatorOf(index + 1))
    chunks.push(chunk)
    yield { frame, chunks: [chunk] }
  }
  return { ok: true, tally: { frame, chunks } }
}
