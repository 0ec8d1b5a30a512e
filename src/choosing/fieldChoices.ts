import { asListed, halveBy, multiple, searchEdge, type EdgeSearch, type Halve, type Trial } from '../advice/edge'
import { untested } from '../advice/untested'
import { LEAST_KNOTTED } from '../catalogue/knots'
import { USUAL_DOWELS } from '../catalogue/sticks'
import type { CheckResult } from '../check/checkHanger'
import { hasStick } from '../hanger/arrangement'
import { editField, type HangerDocument } from '../hanger/document'
import type { Answers, FieldPath } from '../hanger/fields'
import { formatSi } from '../quantity/formatSi'
import type { Choice } from './choice'
import { judge, type Judged } from './judge'
import { DECIDES, isForNext } from './question'
import { choiceOf, noChoice, reversed, type Asked } from './tell'

/** A question that one field answers. */
export type FieldChoiceCode = 'strands' | 'legs' | 'wraps' | 'stick' | 'shortestLeg' | 'longestLeg'

/** The values of one field, from the safe end on. */
interface Scale {
  readonly field: FieldPath
  readonly unit: 'count' | 'm'
  readonly now: number
  readonly steps: readonly number[]
  readonly halve: Halve
  readonly close: number
  readonly put: (document: HangerDocument, value: number) => HangerDocument
}

const COUNT = halveBy(1)
/** Nobody ties legs closer to a length than this, m. */
const LENGTH_STEP = 0.005
/** Between lengths of a scan. */
const LENGTH_RATIO = 1.25

const descending = (steps: readonly number[]): readonly number[] => [...new Set(steps)].toSorted((a, b) => b - a)
const upTo = (most: number): readonly number[] => [48, 36, 24, 20, 16, 14, 12, 10, 8, 7, 6, 5, 4, 3, 2, 1].filter((count) => count <= most)
const counted = (document: HangerDocument, field: FieldPath, value: number): HangerDocument => editField(document, field, String(value))
const onGrid = (length: number): number => multiple(Math.round(length / LENGTH_STEP), LENGTH_STEP)

/** A field that is counted, one by one. */
const countScale = (field: FieldPath, now: number, steps: readonly number[]): Scale =>
  ({ field, unit: 'count', now, steps: descending([...steps, now]), halve: COUNT, close: 0, put: (document, value) => counted(document, field, value) })

/** Strands of a leg, its told filler cords in proportion; of a panel those that go round the front from each corner. */
function strandScale(answers: Answers): Scale {
  if (answers['make.arrangement'] === 'panel') return countScale('panel.front', answers['panel.front'], upTo(24))
  const [now, fillers] = [answers['make.strands'], answers['make.fillers']]
  // Fewer than these cannot be knotted as the legs are.
  const least = answers['make.build'] === 'plain' ? 1 : LEAST_KNOTTED.value
  const scale = countScale('make.strands', now, upTo(48).filter((count) => count >= least))
  return fillers === null ? scale : { ...scale, put: (document, value) => counted(scale.put(document, value), 'make.fillers', Math.max(1, Math.floor((fillers * value) / now))) }
}

/** Dowels as they are sold; of bamboo as hollow in proportion. */
function stickScale(answers: Answers): Scale {
  const [now, hollow] = [answers['stick.diameter'], answers['stick.hollow']]
  const sold = USUAL_DOWELS.map(({ diameter }) => diameter.value)
  return {
    field: 'stick.diameter', unit: 'm', now, steps: descending(sold), halve: asListed, close: 0,
    put: (document, value) => {
      const put = editField(document, 'stick.diameter', formatSi(value, 'mm'))
      return hollow === null ? put : editField(put, 'stick.hollow', formatSi((hollow * value) / now, 'mm'))
    },
  }
}

/** Lengths of the legs as the maker gives them: of the leg itself, or of the whole hanger. From the longest down. */
function lengthScale(answers: Answers): Scale {
  const leg = answers['make.legLength']
  const [field, now, least, most] = leg === null ? ['make.totalLength' as const, answers['make.totalLength'], 0.2, 5] : ['make.legLength' as const, leg, 0.05, 4]
  const steps = [most, least, now]
  for (let length = least * LENGTH_RATIO; length < most; length *= LENGTH_RATIO) steps.push(onGrid(length))
  return { field, unit: 'm', now, steps: descending(steps), halve: halveBy(LENGTH_STEP), close: LENGTH_STEP, put: (document, value) => editField(document, field, formatSi(value, 'mm')) }
}

/** The scale of a question; null where there is nothing of the kind on this hanger. */
function scaleOf(choice: FieldChoiceCode, answers: Answers): Scale | null {
  const isPanel = answers['make.arrangement'] === 'panel'
  switch (choice) {
    case 'strands': return strandScale(answers)
    case 'legs': return isPanel ? null : countScale('make.legs', answers['make.legs'], [12, 11, 10, 9, 8, 7, 6, 5, 4, 3])
    case 'wraps': return countScale('gathering.wraps', answers['gathering.wraps'], [40, 30, 20, 16, 12, 10, 8, 6, 5, 4, 3, 2, 1])
    case 'stick': return hasStick(answers) ? stickScale(answers) : null
    case 'shortestLeg': case 'longestLeg': return isPanel ? null : lengthScale(answers)
  }
}

/**
 * The answer that one field gives, found by checking the hanger with one value after the other. A test hang of the present
 * hanger is left out on both sides, for it says nothing of another. `known`: the search of the other end of the legs, which
 * is the same; null where there was none.
 */
export function* fieldChoice(choice: FieldChoiceCode, document: HangerDocument, answers: Answers, nowOf: (document: HangerDocument) => CheckResult | null, known: EdgeSearch<Judged> | null): Generator<Trial<Judged>, FieldAnswer, void> {
  const scale = scaleOf(choice, answers)
  const bare = untested(document)
  const asked: Asked = {
    choice, of: null, unit: scale?.unit ?? 'count', field: scale?.field ?? null, now: scale?.now ?? null, close: scale?.close ?? 0,
    isForNext: isForNext(choice, answers['make.stage'] === 'made'), document, isUntested: bare !== document,
  }
  if (scale === null) return { choice: noChoice(asked, { code: 'notConcerned' }, 0), search: null }
  const now = nowOf(bare)
  const search = known ?? (yield* searchEdge(scale.steps, (value) => judge(scale.put(bare, value), now, ({ link }) => DECIDES[choice].includes(link)), scale.halve))
  const isFarEnd = choice === 'longestLeg' && search.edge !== null
  return { choice: choiceOf(asked, isFarEnd ? { ...search, edge: reversed(search.edge) } : search), search }
}

/** An answer, and the search it came of; null where there was none. */
interface FieldAnswer {
  readonly choice: Choice
  readonly search: EdgeSearch<Judged> | null
}
