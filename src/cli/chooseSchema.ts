import * as z from 'zod'
import { PLACE_FORMS, USUAL_PLACES } from '../advice/usualPlaces'
import { CORD_MAKES, FIBRES } from '../catalogue/cords'
import { LINKS } from '../check/linkResult'
import { VERDICTS } from '../check/verdict'
import { CHOICES } from '../choosing/question'
import { CHOOSE_FORMAT, CHOOSE_VERSION } from './chooseJson'

z.config({ jitless: true })

const verdict = z.enum(VERDICTS)
const limit = z.strictObject({
  value: z.number().nullable(),
  why: z.enum(['link', 'unfit', 'unreadable', 'tooHeavy']),
  link: z.enum(LINKS).nullable(),
  verdict: verdict.nullable(),
  verdictNow: verdict.nullable(),
  utilisation: z.number().nullable(),
  text: z.string(),
})
const of = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('shelf'), name: z.string(), text: z.string() }),
  z.strictObject({ kind: z.literal('catalogue'), fibre: z.enum(FIBRES), make: z.enum(CORD_MAKES), text: z.string() }),
  z.strictObject({ kind: z.literal('fixing'), place: z.enum(USUAL_PLACES), form: z.enum(PLACE_FORMS), text: z.string() }),
])

/** One line of `choose --json`. */
export const CHOOSE_ANSWER = z.strictObject({
  format: z.literal(CHOOSE_FORMAT),
  version: z.literal(CHOOSE_VERSION),
  file: z.string(),
  name: z.string(),
  answers: z.array(z.strictObject({
    question: z.enum(CHOICES),
    name: z.string(),
    of: of.nullable(),
    unit: z.enum(['count', 'm', 'kg']),
    now: z.number().nullable(),
    forNext: z.boolean(),
    checks: z.int().nonnegative(),
    found: z.boolean(),
    value: z.number().nullable(),
    text: z.string().nullable(),
    changes: z.record(z.string(), z.string().nullable()).nullable(),
    pullTests: z.int().nonnegative().nullable(),
    link: z.enum(LINKS).nullable(),
    verdict: verdict.nullable(),
    utilisation: z.number().nullable(),
    whole: verdict.nullable(),
    limit: limit.nullable(),
    until: z.strictObject({ value: z.number(), limit }).nullable(),
    again: z.array(z.number()),
    monotone: z.boolean().nullable(),
    close: z.number().nonnegative().nullable(),
    reason: z.strictObject({ code: z.enum(['notConcerned', 'noPot', 'noHanger', 'answersNeeded', 'noneHolds', 'notEnoughKnown', 'noFixings']), text: z.string(), settle: z.array(z.string()) }).nullable(),
    notes: z.array(z.string()),
  })),
})

/** JSON Schema (draft 2020-12) of one line of `choose --json`. */
export const chooseSchema = (): object => ({ $id: 'strandwise-choose-1', title: 'Answer of strandwise choose --json, version 1', ...z.toJSONSchema(CHOOSE_ANSWER) })
