import { DEMOS, parseDocument, sheetFacts, type HangerDocument, type Patch, type SheetFacts, type SheetOptions } from '#core'
import { documentOf, ORDINARY } from '../hanger/hangerOf'

const made = new Map<string, SheetFacts>()

/** Made once, for they take a while. */
function factsOnce(key: string, document: () => HangerDocument): SheetFacts {
  const known = made.get(key)
  if (known !== undefined) return known
  const outcome = sheetFacts(document())
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems))
  made.set(key, outcome.facts)
  return outcome.facts
}

/** The facts of the ordinary hanger with other answers; an empty one takes its answer away. */
export const factsOf = (patch: Patch): SheetFacts => factsOnce(JSON.stringify(patch), () =>
  documentOf(Object.fromEntries(Object.entries({ ...ORDINARY, ...patch }).filter(([, text]) => text !== ''))))

/** A hanger of each arrangement but the ordinary one. */
export const SHEET_DEMOS = ['herbs-in-a-row', 'spider-plant-on-the-study-wall', 'two-tiers-at-the-landing-window'] as const

/** The facts of a demo. */
export const factsOfDemo = (name: (typeof SHEET_DEMOS)[number]): SheetFacts => factsOnce(name, () => {
  const parsed = parseDocument(DEMOS.find(({ file }) => file.startsWith(name))?.text ?? '')
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return parsed.document
})

/** A day whose month is the eleventh, so that months that begin again show. */
export const OPTIONS: SheetOptions = { format: 'a4', today: '2026-11-26', draft: false }

/** A pot far too heavy for its cord. */
export const FAILING: Patch = { 'weighed.mass': '24 kg' }
/** Nothing said of the cord. */
export const UNKNOWN: Patch = { 'cord.fibre': 'unknown', 'cord.diameter': '', 'cord.linearDensity': '' }
