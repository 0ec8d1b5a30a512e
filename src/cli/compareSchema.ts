import * as z from 'zod'
import { LINKS } from '../check/linkResult'
import { VERDICTS } from '../check/verdict'
import { CASES } from '../load/loadCases'
import { STATES } from '../load/states'
import { COMPARE_FORMAT, COMPARE_VERSION } from './compareJson'

z.config({ jitless: true })

const verdict = z.enum(VERDICTS)
const better = z.enum(['first', 'second', 'alike', 'untold'])
const range = z.strictObject({ low: z.number().nonnegative(), likely: z.number().nonnegative(), high: z.number().nonnegative() })
const judged = z.strictObject({ verdict, utilisation: z.number().nullable(), case: z.enum(CASES) })
const saying = z.strictObject({ how: z.enum(['said', 'assumed', 'open', 'noBearing']), text: z.string().nullable() })

const hanger = z.strictObject({
  file: z.string(),
  name: z.string(),
  verdict,
  verdicts: z.strictObject({ hanger: verdict, place: verdict }),
  governing: z.strictObject({ link: z.enum(LINKS), tier: z.int().positive(), case: z.enum(CASES), utilisation: z.number().nullable() }).nullable(),
  heaviest: z.number().positive().nullable(),
  pot: z.enum(['own', 'heaviest', 'none']),
  hangerMass: range,
  cord: z.strictObject({
    cords: z.int().positive(), length: range, mass: range.nullable(), cost: z.strictObject({ low: z.number(), likely: z.number(), high: z.number(), currency: z.string() }).nullable(),
  }).nullable(),
})

/** The line of `compare --json`. */
export const COMPARE_ANSWER = z.strictObject({
  format: z.literal(COMPARE_FORMAT),
  version: z.literal(COMPARE_VERSION),
  first: hanger,
  second: hanger,
  better: z.strictObject({ hanger: better, place: better }),
  parts: z.array(z.strictObject({ link: z.enum(LINKS), tier: z.int().positive(), first: judged.nullable(), second: judged.nullable(), better: better.nullable() })),
  weights: z.array(z.strictObject({ state: z.enum(STATES), first: range, second: range })),
  differences: z.array(z.strictObject({ path: z.string(), name: z.string(), first: saying, second: saying, onlySaid: z.boolean() })),
  logs: z.array(z.enum(['pullTests', 'inspections', 'sold'])),
})

/** JSON Schema (draft 2020-12) of the line of `compare --json`. */
export const compareSchema = (): object => ({ $id: 'strandwise-compare-1', title: 'Answer of strandwise compare --json, version 1', ...z.toJSONSchema(COMPARE_ANSWER) })
