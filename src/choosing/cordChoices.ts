import { asListed, searchEdge, type Trial } from '../advice/edge'
import { untested, without } from '../advice/untested'
import { CATALOGUE_CORDS, type CordMake, type Fibre } from '../catalogue/cords'
import type { CheckResult } from '../check/checkHanger'
import { ropeTable } from '../check/ropeTable'
import { patchDocument, withPullTests, type HangerDocument } from '../hanger/document'
import type { Answers } from '../hanger/fields'
import { resolveDocument } from '../hanger/resolve'
import { formatSi } from '../quantity/formatSi'
import { changeBetween } from './change'
import type { Choice } from './choice'
import { judge, type Judged } from './judge'
import { DECIDES, isForNext } from './question'
import { choiceOf, type Asked } from './tell'

/** A cord of the maker's own: the hanger with it put on. */
export interface OwnCord {
  readonly name: string
  readonly document: HangerDocument
}

interface CordKind {
  readonly fibre: Fibre
  readonly make: CordMake
}

/** Kinds of cord that hangers are usually knotted of. */
const USUAL_CORDS: readonly CordKind[] = [
  { fibre: 'cotton', make: 'loose' }, { fibre: 'cotton', make: 'twisted' }, { fibre: 'cotton', make: 'braided' },
  { fibre: 'linen', make: 'twisted' }, { fibre: 'hemp', make: 'twisted' }, { fibre: 'jute', make: 'twisted' },
  { fibre: 'manila', make: 'rope' }, { fibre: 'sisal', make: 'rope' },
  { fibre: 'polyester', make: 'braided' }, { fibre: 'polyester', make: 'rope' },
  { fibre: 'polypropylene', make: 'braided' }, { fibre: 'polypropylene', make: 'rope' },
  { fibre: 'nylon', make: 'braided' }, { fibre: 'nylon', make: 'rope' },
]

/** Diameters that a kind is sold in, m, the thickest first: of rope those of its table. */
const soldIn = ({ fibre, make }: CordKind): readonly number[] =>
  (make === 'rope' ? ropeTable(fibre) ?? [] : CATALOGUE_CORDS).map(({ diameter }) => diameter).toSorted((a, b) => b - a)

/** The usual kinds, that of the hanger itself first. */
function kindsFor(answers: Answers): readonly CordKind[] {
  const own: CordKind = { fibre: answers['cord.fibre'], make: answers['cord.make'] }
  const isKnown = own.fibre !== 'unknown' && own.make !== 'unknown' && soldIn(own).length > 0
  return isKnown ? [own, ...USUAL_CORDS.filter(({ fibre, make }) => fibre !== own.fibre || make !== own.make)] : USUAL_CORDS
}

/** The hanger on a cord of which nothing but fibre, make and diameter is known. */
const onCord = (bare: HangerDocument, { fibre, make }: CordKind, diameter: number): HangerDocument =>
  patchDocument(bare, { 'cord.fibre': fibre, 'cord.make': make, 'cord.diameter': formatSi(diameter, 'mm') })

const diameterOf = (document: HangerDocument): number | null => {
  const resolved = resolveDocument(document)
  return resolved.ok ? resolved.hanger.answers['cord.diameter'] : null
}

/** Whether a cord is the one that the hanger is on. */
function isSame(document: HangerDocument, on: HangerDocument): boolean {
  const { typed, pullTests } = changeBetween(document, on)
  return Object.keys(typed).length === 0 && (pullTests === null || JSON.stringify(pullTests) === JSON.stringify(document.pullTests))
}

/** The answer for a cord of which there is one size only: that there is no other is no limit. */
function asItIs(choice: Choice, diameter: number | null): Choice {
  if (choice.found) return { ...choice, value: diameter }
  const { reason } = choice
  return 'limit' in reason ? { ...choice, reason: { ...reason, limit: { ...reason.limit, value: null } } } : choice
}

/** The smallest of each cord that holds: those of the maker as they are, then of each kind in the shops the thinnest that is sold. Yields each as it is found. */
export function* cordChoices(document: HangerDocument, answers: Answers, own: readonly OwnCord[], nowOf: (document: HangerDocument) => CheckResult | null): Generator<Trial<Judged> | Choice, readonly Choice[], void> {
  const told: Choice[] = []
  const made = (next: HangerDocument): HangerDocument => (answers['make.have'] === 'no' ? patchDocument(untested(next), { 'make.have': 'yes' }) : untested(next))
  const tested = untested(document) !== document
  const now = nowOf(made(document))
  const common = { choice: 'cord', unit: 'm', field: 'cord.diameter', isForNext: isForNext('cord', answers['make.stage'] === 'made'), document, close: 0, isUntested: tested } as const
  const decides = ({ link }: { readonly link: Parameters<typeof DECIDES.cord.includes>[0] }): boolean => DECIDES.cord.includes(link)
  for (const { name, document: on } of own) {
    const diameter = diameterOf(on)
    const asked: Asked = { ...common, of: { kind: 'shelf', name }, now: isSame(document, on) ? diameter : null }
    const search = yield* searchEdge([diameter ?? 0], () => judge(made(on), now, decides), asListed)
    told.push(asItIs(choiceOf(asked, search), diameter))
    yield told.at(-1) as Choice
  }
  const bare = withPullTests(without(made(document), (path) => path.startsWith('cord.')), [])
  for (const kind of kindsFor(answers)) {
    const isNow = kind.fibre === answers['cord.fibre'] && kind.make === answers['cord.make']
    const asked: Asked = { ...common, of: { kind: 'catalogue', ...kind }, now: isNow ? answers['cord.diameter'] : null }
    const choice = choiceOf(asked, yield* searchEdge(soldIn(kind), (diameter) => judge(onCord(bare, kind, diameter), now, decides), asListed))
    told.push(choice)
    yield choice
  }
  return told
}
