import type { PotMaterialKind } from '../catalogue/potMaterials'
import { isWorse } from '../check/verdict'
import { editField, patchDocument, type HangerDocument, type Patch } from '../hanger/document'
import { FIELD_PATHS, type FieldPath } from '../hanger/fields'
import { resolveDocument } from '../hanger/resolve'
import { pottedMass } from '../load/pottedMass'
import { formatSi } from '../quantity/formatSi'
import { checkPatched } from './evaluate'

/** Rims of round pots as they are usually sold, m. */
export const USUAL_RIMS: readonly number[] = [8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 35, 40].map((centimetres) => centimetres / 100)

/** Usual pots of one material that a hanger takes, of those sizes that stand next to each other from one to another. */
export interface PotsThatFit {
  readonly material: PotMaterialKind
  /** Rims from the smallest to the largest of each run, m; empty where none fits. */
  readonly runs: readonly { readonly from: number; readonly to: number }[]
  /** Whether larger ones fit by their width and are only too heavy. */
  readonly limitedBy: 'weight' | 'size'
}

/** What belongs to the pot that was entered, and not to a usual one. */
export const OF_ITS_POT: readonly string[] = ['pot', 'weighed', 'saucer', 'cover', 'reservoir']
export const OF_ITS_PLANT: readonly FieldPath[] = ['plant.mass', 'plant.size', 'plant.height', 'plant.width', 'plant.trail', 'seat.offset']
/** Kept of the pot: whether water runs out, which the maker says of whatever hangs in it. */
const KEPT: readonly FieldPath[] = ['pot.drainage']
/** Parts of the hanger that are drawn for its pot where they were not said: another pot does not change them. */
const DRAWN_FOR_POT: readonly string[] = ['cradle', 'panel', 'row', 'second', 'third']

export const groupOf = (path: FieldPath): string => path.split('.', 1)[0] ?? ''

/** The hanger as it is, its pot taken out. */
export function withoutPot(document: HangerDocument): HangerDocument | null {
  const resolved = resolveDocument(document)
  if (!resolved.ok) return null
  const drawn: Patch = Object.fromEntries(resolved.hanger.assumed.filter(({ path }) => DRAWN_FOR_POT.includes(groupOf(path))).map(({ path, text }) => [path, text]))
  const taken = FIELD_PATHS.filter((path) => (OF_ITS_POT.includes(groupOf(path)) && !KEPT.includes(path)) || OF_ITS_PLANT.includes(path))
  return patchDocument(taken.reduce((left, path) => editField(left, path, null), document), drawn)
}

/** A round pot as it is usually sold. */
export const potPatch = (rim: number, material: PotMaterialKind): Patch => ({ 'pot.have': 'yes', 'pot.rim': formatSi(rim, 'cm'), 'pot.material': material })

/** Whether every part of the hanger holds or just holds, the place left aside. */
function holdsIn(document: HangerDocument, patch: Patch): boolean {
  const check = checkPatched(document, patch)
  return check !== null && check.links.every((l) => l.side === 'place' || !isWorse(l.verdict, 'just holds'))
}

/** How much it weighs just watered at most, kg; null where the pot cannot be read with the rest. */
function wateredMass(document: HangerDocument, patch: Patch): number | null {
  const resolved = resolveDocument(patchDocument(document, patch))
  return resolved.ok ? pottedMass(resolved.hanger.answers).watered.mass.high : null
}

/** Sizes that fit and stand next to each other among those tried, from one to another. */
export function runsOf(fits: readonly boolean[], rims: readonly number[]): PotsThatFit['runs'] {
  const runs: { from: number; to: number }[] = []
  fits.forEach((fit, i) => {
    const rim = rims[i] as number
    const last = runs.at(-1)
    if (!fit) return
    if (last !== undefined && fits[i - 1] === true) last.to = rim
    else runs.push({ from: rim, to: rim })
  })
  return runs
}

/**
 * Which usual pots of a material fit a hanger by their measures and their weight, in its own mix, with a plant of their
 * size: each is put into the document and checked whole. None may weigh more, just watered, than `heaviest`, kg.
 */
export function potsThatFit(document: HangerDocument, heaviest: number, material: PotMaterialKind): PotsThatFit {
  const bare = withoutPot(document)
  if (bare === null) return { material, runs: [], limitedBy: 'size' }
  const masses = USUAL_RIMS.map((rim) => wateredMass(bare, potPatch(rim, material)))
  const light = masses.map((mass) => mass !== null && mass <= heaviest)
  const fits = USUAL_RIMS.map((rim, i) => light[i] === true && holdsIn(bare, potPatch(rim, material)))
  const largest = fits.lastIndexOf(true)
  return { material, runs: runsOf(fits, USUAL_RIMS), limitedBy: largest >= 0 && light[largest + 1] === false ? 'weight' : 'size' }
}
