import type { EdgeSearch } from '../advice/edge'
import { checkPatched } from '../advice/evaluate'
import type { PotMaterialKind } from '../catalogue/potMaterials'
import type { MixKind } from '../catalogue/pottingMixes'
import type { CheckResult } from '../check/checkHanger'
import type { HangerDocument } from '../hanger/document'
import type { Answers } from '../hanger/fields'
import { resolveDocument } from '../hanger/resolve'
import type { Choice } from './choice'
import { cordChoices, type OwnCord } from './cordChoices'
import { fieldChoice } from './fieldChoices'
import { fixingChoices } from './fixingChoices'
import type { Judged } from './judge'
import { heaviestChoice, rimChoice } from './potChoices'
import { inOrder, isForNext, type ChoiceCode } from './question'

/** What is to be chosen for a hanger. */
export interface ChoicesAsked {
  readonly document: HangerDocument
  readonly choices: readonly ChoiceCode[]
  /** Cords of the maker's own shelf, each put on the hanger. */
  readonly own: readonly OwnCord[]
  /** Of the pots that are tried for the largest rim; null takes those of the hanger. */
  readonly material: PotMaterialKind | null
  readonly mix: MixKind | null
}

/** One check more, for a choice; or an answer. */
export type ChoosingStep = { readonly kind: 'tried'; readonly choice: ChoiceCode } | { readonly kind: 'chosen'; readonly choice: Choice }

/** Choices that need a pot to be in the hanger: of the rest the pot is what is asked. */
const OF_A_LOADED_HANGER: readonly ChoiceCode[] = ['cord', 'strands', 'legs', 'shortestLeg', 'longestLeg', 'stick', 'wraps']

/** Why nothing can be tried for a choice yet; null where it can. */
function missing(choice: ChoiceCode, answers: Answers): 'noPot' | 'noHanger' | null {
  if (choice !== 'cord' && answers['make.have'] === 'no') return 'noHanger'
  return answers['pot.have'] === 'no' && OF_A_LOADED_HANGER.includes(choice) ? 'noPot' : null
}

const UNITS: Readonly<Record<ChoiceCode, Choice['unit']>> = { cord: 'm', strands: 'count', legs: 'count', shortestLeg: 'm', longestLeg: 'm', stick: 'm', wraps: 'count', fixing: 'count', heaviestPot: 'kg', largestRim: 'm' }

type Tries = Generator<unknown, readonly Choice[], void>

/** The check of a document, remembered: most choices compare with the same. */
function remembered(): (document: HangerDocument) => CheckResult | null {
  let last: { readonly document: HangerDocument; readonly check: CheckResult | null } | null = null
  return (document) => {
    if (last?.document !== document) last = { document, check: checkPatched(document, {}) }
    return last.check
  }
}

/**
 * Finds what was asked by checking the hanger anew for each value that is tried: first what can still be changed. Yields
 * every check and each answer as it is found, so that it can be stopped; returns all answers. None where the document
 * cannot be read.
 */
export function* chooseSizes({ document, choices, own, material, mix }: ChoicesAsked): Generator<ChoosingStep, readonly Choice[], void> {
  const resolved = resolveDocument(document)
  if (!resolved.ok) return []
  const { answers } = resolved.hanger
  const isMade = answers['make.stage'] === 'made'
  const nowOf = remembered()
  const told: Choice[] = []
  let lengths: EdgeSearch<Judged> | null = null

  function* triesOf(choice: ChoiceCode): Tries {
    switch (choice) {
      case 'cord': return yield* cordChoices(document, answers, own, nowOf)
      case 'fixing': return yield* fixingChoices(document, answers)
      case 'heaviestPot': return [yield* heaviestChoice(document, answers)]
      case 'largestRim': return [yield* rimChoice(document, answers, { material: material ?? answers['pot.material'], mix: mix ?? answers['mix.kind'] })]
      case 'strands': case 'legs': case 'wraps': case 'stick': case 'shortestLeg': case 'longestLeg': {
        const isLength = choice === 'shortestLeg' || choice === 'longestLeg'
        const answer = yield* fieldChoice(choice, document, answers, nowOf, isLength ? lengths : null)
        if (isLength) lengths = answer.search
        return [answer.choice]
      }
    }
  }

  for (const choice of inOrder(choices, isMade)) {
    const lacking = missing(choice, answers)
    if (lacking !== null) {
      const none: Choice = { found: false, choice, of: null, unit: UNITS[choice], field: null, now: null, isForNext: isForNext(choice, isMade), checks: 0, reason: { code: lacking } }
      told.push(none)
      yield { kind: 'chosen', choice: none }
      continue
    }
    const sent = new Set<unknown>()
    const tries = triesOf(choice)
    let step = tries.next()
    while (step.done !== true) {
      if (isChoice(step.value)) {
        sent.add(step.value)
        yield { kind: 'chosen', choice: step.value }
      } else yield { kind: 'tried', choice }
      step = tries.next()
    }
    for (const one of step.value) if (!sent.has(one)) yield { kind: 'chosen', choice: one }
    told.push(...step.value)
  }
  return told
}

const isChoice = (step: unknown): step is Choice => typeof step === 'object' && step !== null && 'found' in step
