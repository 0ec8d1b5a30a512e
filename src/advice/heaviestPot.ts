import type { CheckResult } from '../check/checkHanger'
import type { LinkResult } from '../check/linkResult'
import { ownHolds } from '../check/ownHolds'
import { solve } from '../check/solve'
import { isWorse } from '../check/verdict'
import { editField, patchDocument, type HangerDocument, type Patch } from '../hanger/document'
import type { FieldPath } from '../hanger/fields'
import { resolveDocument } from '../hanger/resolve'
import { pottedMass } from '../load/pottedMass'
import { formatSi } from '../quantity/formatSi'
import { halveTo, lastThatHolds, searchEdge, type EdgeSearch, type Trial, type Tried } from './edge'
import { checkPatched } from './evaluate'

/** Range searched, kg, and how close the answer is. */
const LEAST = 0.1
const MOST = 149
const CLOSE = 0.005

export interface HeaviestPot {
  /** Heaviest potted plant, just watered, that the hanger may carry, kg. */
  readonly watered: number
  /** The pot it was found with. */
  readonly patch: Patch
  /** The check of the hanger with that pot. */
  readonly check: CheckResult
}

/** A pot of the drawn size and a given watered mass, weighed. */
export const weighedPatch = (mass: number): Patch => ({ 'weighed.mass': `${mass} kg`, 'weighed.state': 'watered' })

/** Sizes a pot may take when none is drawn yet, m. */
const NARROWEST = 0.08
const WIDEST = 0.6

/** The patch for a watered mass: with no pot yet, the usual pot grows with its mass, for a small pot cannot be heavy. */
function patchFor(document: HangerDocument): (mass: number) => Patch {
  const resolved = resolveDocument(document)
  if (!resolved.ok) return weighedPatch
  const { answers, given } = resolved.hanger
  if (answers['pot.have'] === 'yes' || given.has('pot.rim')) return weighedPatch
  const drawn = pottedMass({ ...answers, 'weighed.mass': null }).watered.mass.likely
  return (mass) => {
    const rim = Math.min(WIDEST, Math.max(NARROWEST, answers['pot.rim'] * Math.cbrt(mass / drawn)))
    return { ...weighedPatch(mass), 'pot.rim': formatSi(Math.round(rim * 1000) / 1000, 'mm') }
  }
}

/** How one mass was borne. */
export type PotTrial = Tried

/** The masses that are scanned, kg: in doublings. */
function massesTried(): readonly number[] {
  const steps: number[] = []
  for (let mass = LEAST; mass < MOST; mass *= 2) steps.push(mass)
  return [...steps, MOST]
}

/** A document with a pot of a watered mass in it: of the drawn size, or the usual pot of that mass where there is none yet. */
export function potOfMass(document: HangerDocument): (mass: number) => HangerDocument {
  const patch = patchFor(document)
  // The masses tried stand for the pot alone: nothing else is on their scale.
  const untared = editField(document, 'weighed.tare', null)
  return (mass) => patchDocument(untared, patch(mass))
}

/** Searches the heaviest pot, mass by mass; a heavier one that holds again beyond one that does not is not trusted. */
export function searchHeaviestPot(document: HangerDocument): Generator<Trial<PotTrial>, EdgeSearch<PotTrial>, void> {
  const loaded = potOfMass(document)
  return searchEdge(massesTried(), (mass) => {
    const check = checkPatched(loaded(mass), {})
    return { holds: check !== null && check.links.every((l) => !isOwn(l) || !isWorse(l.verdict, 'just holds')) }
  }, halveTo(CLOSE))
}

/**
 * The heaviest watered mass, in a pot of the drawn size (or the usual pot of that mass where there is
 * none yet), with which the hanger (ring to seat, not the place) still holds or just holds: a scan in
 * doublings, then bisection on the whole check. Null if even the lightest does not, or the document
 * cannot be read.
 */
export function heaviestPot(document: HangerDocument): HeaviestPot | null {
  if (!isBuildKnown(document)) return null
  const loaded = potOfMass(document)
  const watered = lastThatHolds(massesTried(), (mass) => {
    const resolved = resolveDocument(loaded(mass))
    return resolved.ok && ownHolds(solve(resolved.hanger))
  }, halveTo(CLOSE))
  const check = watered === null ? null : checkPatched(loaded(watered), {})
  return watered === null || check === null ? null : { watered, patch: patchFor(document)(watered), check }
}

/** A limit may be told only of a hanger whose legs and strands were said, or of a panel those in front and behind. */
export function isBuildKnown(document: HangerDocument): boolean {
  const resolved = resolveDocument(document)
  if (!resolved.ok) return false
  const { given, answers } = resolved.hanger
  const strands: readonly FieldPath[] = answers['make.arrangement'] === 'panel' ? ['panel.front', 'panel.behind'] : ['make.legs', 'make.strands']
  return strands.every((path) => given.has(path))
}

/** What the hanger itself answers for, the load's open questions left aside. */
export const isOwn = ({ side, link }: LinkResult): boolean => side !== 'place' && link !== 'load'
