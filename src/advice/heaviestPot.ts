import type { CheckResult } from '../check/checkHanger'
import { isWorse } from '../check/verdict'
import { editField, type HangerDocument, type Patch } from '../hanger/document'
import type { FieldPath } from '../hanger/fields'
import { resolveDocument } from '../hanger/resolve'
import { pottedMass } from '../load/pottedMass'
import { formatSi } from '../quantity/formatSi'
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

/**
 * The heaviest watered mass, in a pot of the drawn size (or the usual pot of that mass where there is
 * none yet), with which the hanger (ring to seat, not the place) still holds or just holds: a scan in
 * doublings, then bisection on the whole check. Null if even the lightest does not, or the document
 * cannot be read.
 */
export function heaviestPot(document: HangerDocument): HeaviestPot | null {
  if (!isBuildKnown(document)) return null
  const patch = patchFor(document)
  // The masses tried stand for the pot alone: nothing else is on their scale.
  const untared = editField(document, 'weighed.tare', null)
  const at = (mass: number): CheckResult | null => {
    const check = checkPatched(untared, patch(mass))
    return check !== null && holds(check) ? check : null
  }
  // A coarse scan first: from the lightest step that holds up to the first that does not. A heavier one
  // that holds again beyond is not trusted.
  const steps: number[] = []
  for (let mass = LEAST; mass < MOST; mass *= 2) steps.push(mass)
  steps.push(MOST)
  const checks = steps.map(at)
  const first = checks.findIndex((check) => check !== null)
  if (first < 0) return null
  const beyond = checks.findIndex((check, i) => i > first && check === null)
  const last = beyond < 0 ? steps.length - 1 : beyond - 1
  let best = checks[last] as CheckResult
  let low = steps[last] as number
  let high = steps[last + 1] ?? MOST
  while (high - low > CLOSE) {
    const middle = (low + high) / 2
    const check = at(middle)
    if (check === null) high = middle
    else {
      low = middle
      best = check
    }
  }
  return { watered: low, patch: patch(low), check: best }
}

/** A limit may be told only of a hanger whose legs and strands were said, or of a panel those in front and behind. */
function isBuildKnown(document: HangerDocument): boolean {
  const resolved = resolveDocument(document)
  if (!resolved.ok) return false
  const { given, answers } = resolved.hanger
  const strands: readonly FieldPath[] = answers['make.arrangement'] === 'panel' ? ['panel.front', 'panel.behind'] : ['make.legs', 'make.strands']
  return strands.every((path) => given.has(path))
}

/** The hanger's own links hold, the load's open questions left aside. */
function holds(check: CheckResult): boolean {
  return check.links.every((l) => l.side === 'place' || l.link === 'load' || !isWorse(l.verdict, 'just holds'))
}
