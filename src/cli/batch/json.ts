import * as z from 'zod'
import { COLUMN_NAMES } from '../../batch/columns'
import type { BatchResult } from '../../batch/result'
import { LINKS } from '../../check/linkResult'
import { VERDICTS } from '../../check/verdict'
import { CASES } from '../../load/loadCases'
import { batchProblemText } from '../../words/batch'

z.config({ jitless: true })

export const BATCH_FORMAT = 'strandwise-batch'
export const BATCH_VERSION = 1

/** One line of `batch --json`. Every key is always there; null means not known. */
export const BATCH_ANSWER = z.strictObject({
  format: z.literal(BATCH_FORMAT),
  version: z.literal(BATCH_VERSION),
  line: z.int().positive(),
  file: z.string().nullable(),
  name: z.string(),
  verdict: z.enum(VERDICTS).nullable(),
  verdicts: z.strictObject({ hanger: z.enum(VERDICTS), place: z.enum(VERDICTS) }).nullable(),
  governing: z.strictObject({ link: z.enum(LINKS), tier: z.int().positive(), case: z.enum(CASES), utilisation: z.number().nullable() }).nullable(),
  weights: z.strictObject({ dry: z.number(), watered: z.number(), flooded: z.number() }).nullable().meta({ description: 'all that is potted, high values, kg' }),
  heaviest: z.strictObject({ watered: z.number().positive() }).nullable(),
  problems: z.array(z.strictObject({ code: z.string(), text: z.string() })),
})

/** A result as its line of JSON says it, in SI, unrounded. */
export const batchJson = ({ line, file, name, facts, problems }: BatchResult): z.infer<typeof BATCH_ANSWER> => ({
  format: BATCH_FORMAT,
  version: BATCH_VERSION,
  line, file, name,
  verdict: facts?.verdict ?? null,
  verdicts: facts === null ? null : { hanger: facts.hanger, place: facts.place },
  governing: facts?.governing ?? null,
  weights: facts?.potted ?? null,
  heaviest: facts === null || facts.heaviest === null ? null : { watered: facts.heaviest },
  problems: problems.map((problem) => ({ code: problem.code, text: batchProblemText(problem, COLUMN_NAMES) })),
})

/** The JSON Schema of one line of `batch --json`. */
export const batchSchema = (): object => ({ $id: 'strandwise-batch-1', title: 'One line of strandwise batch --json, version 1', ...z.toJSONSchema(BATCH_ANSWER) })
