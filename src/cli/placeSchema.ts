import * as z from 'zod'
import { PLACE_FORMS, USUAL_PLACES } from '../advice/usualPlaces'
import { BENEATH } from '../catalogue/reserves'
import { CAUTIONS } from '../check/cautions'
import { LINKS } from '../check/linkResult'
import { VERDICTS } from '../check/verdict'
import { PLACE_FORMAT, PLACE_VERSION } from './placeJson'

z.config({ jitless: true })

const fixing = z.strictObject({
  form: z.enum(PLACE_FORMS),
  found: z.boolean(),
  verdict: z.enum(VERDICTS),
  utilisation: z.number().nullable(),
  link: z.enum(LINKS).nullable(),
  size: z.string().nullable(),
  length: z.string().nullable(),
  count: z.int().positive().nullable(),
  depth: z.number().positive().nullable(),
  grade: z.enum(['tested', 'rated', 'weighed', 'table', 'diameter', 'model', 'fit']).nullable(),
  basis: z.enum(['published', 'common practice', 'from memory', 'computed', 'your own', 'told by customer']).nullable(),
  changes: z.record(z.string(), z.string().nullable()).nullable(),
  largestTried: z.string().nullable(),
  findings: z.array(z.looseObject({ code: z.string(), text: z.string() })),
  text: z.string(),
  howKnown: z.string().nullable(),
})

/** One line of `place --json`. */
export const PLACE_ANSWER = z.strictObject({
  format: z.literal(PLACE_FORMAT),
  version: z.literal(PLACE_VERSION),
  file: z.string(),
  name: z.string(),
  pot: z.enum(['own', 'heaviest']),
  hangs: z.strictObject({ watered: z.number().positive(), heaviest: z.number().positive() }),
  places: z.array(z.strictObject({
    place: z.enum(USUAL_PLACES),
    name: z.string(),
    refused: z.strictObject({ code: z.string(), text: z.string() }).nullable(),
    rating: z.strictObject({ fixing: z.number().positive(), alongToo: z.boolean(), holder: z.number().nonnegative(), count: z.int().positive() }).nullable(),
    fixings: z.array(fixing),
  })),
  beneath: z.array(z.strictObject({
    beneath: z.enum(BENEATH), reserve: z.number(), reserveOnRated: z.number(), openHook: z.boolean(), redundant: z.boolean(), cautions: z.array(z.enum(CAUTIONS)), rating: z.number().nullable(), texts: z.array(z.string()),
  })),
  askCustomer: z.string(),
})

/** JSON Schema (draft 2020-12) of one line of `place --json`. */
export const placeSchema = (): object => ({ $id: 'strandwise-place-1', title: 'Answer of strandwise place --json, version 1', ...z.toJSONSchema(PLACE_ANSWER) })
