import * as z from 'zod'
import { OUTSIDE_CHANCE } from '../chance/report'
import { CHANCE_CASES } from '../chance/tally'
import { LINKS } from '../check/linkResult'
import { CHANCE_FORMAT, CHANCE_VERSION } from './chanceJson'

z.config({ jitless: true })

const share = z.number().min(0).max(1)
const count = z.int().nonnegative()
const state = { hangers: count, overloaded: count, chance: share, interval: z.strictObject({ low: share, high: share, method: z.enum(['wilson', 'ruleOfThree']) }), text: z.string() }
const part = z.strictObject({ link: z.enum(LINKS), tier: z.int().positive(), count, share })
const positive = z.number().positive()
const distribution = z.strictObject({
  unit: z.enum(['1', 'kg']), logarithmic: z.boolean(), edges: z.array(positive), counts: z.array(count), least: positive, most: positive,
  quantiles: z.strictObject({ p05: positive, p25: positive, p50: positive, p75: positive, p95: positive, p99: positive, p999: positive }),
})

/** One line of `chance --json`. */
export const CHANCE_ANSWER = z.strictObject({
  format: z.literal(CHANCE_FORMAT),
  version: z.literal(CHANCE_VERSION),
  file: z.string(),
  name: z.string(),
  samples: z.int().positive(),
  seed: count,
  atRest: z.strictObject(state),
  cases: z.array(z.strictObject({ case: z.enum(CHANCE_CASES), ...state, fails: z.array(part), nearest: z.array(part), use: distribution })),
  inputs: z.array(z.strictObject({ input: z.string(), total: z.number().nonnegative(), alone: z.number().nonnegative(), name: z.string() })),
  watered: distribution,
  checkedWeight: positive,
  life: positive,
  slings: z.enum(['solved', 'scaled']),
  byModel: z.array(z.string()),
  leftOut: z.array(z.strictObject({ link: z.enum(LINKS), tier: z.int().positive(), reason: z.enum(['notKnown', 'refused', 'fit', 'farStronger']), text: z.string() })),
  basis: z.array(z.string()),
  outside: z.array(z.strictObject({ code: z.enum(OUTSIDE_CHANCE), text: z.string() })),
})

/** JSON Schema (draft 2020-12) of one line of `chance --json`. */
export const chanceSchema = (): object => ({ $id: 'strandwise-chance-1', title: 'Answer of strandwise chance --json, version 1', ...z.toJSONSchema(CHANCE_ANSWER) })
