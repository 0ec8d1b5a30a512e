import * as z from 'zod'
import { LOOK_REASONS } from '../catalogue/reinspection'
import { CARE_REASONS } from '../check/care'
import { CAUTIONS } from '../check/cautions'
import { LINKS, PARTS } from '../check/linkResult'
import { FACTOR_CODES, TERM_CODES } from '../check/termCodes'
import { VERDICTS } from '../check/verdict'
import { REMEDY_CODES } from '../advice/remedyKinds'
import { CASES } from '../load/loadCases'
import { STATES } from '../load/states'
import { CHECK_FORMAT, CHECK_VERSION } from './checkJson'

z.config({ jitless: true })

const verdict = z.enum(VERDICTS)
const basis = z.enum(['published', 'common practice', 'from memory', 'computed', 'your own', 'told by customer'])
const mass = z.strictObject({ low: z.number().nonnegative(), likely: z.number().nonnegative(), high: z.number().nonnegative() })
const quantity = z.strictObject({ value: z.number(), unit: z.enum(['N', 'm']) })
const finding = z.looseObject({ code: z.string(), text: z.string() })
const each = <K extends readonly string[], T extends z.ZodType>(keys: K, type: T): z.ZodType => z.strictObject(Object.fromEntries(keys.map((key) => [key, type])))

const sling = z.looseObject({
  status: z.enum(['OK', 'OK_WITH_SLACK', 'OK_NEUTRAL_TWIST', 'LOST_SUPPORT', 'UNSTABLE', 'ERROR', 'NOT_CONVERGED']),
  T: z.array(z.number()).nullable(),
  slack: z.array(z.boolean()).nullable(),
  tilt_deg: z.number().nullable(),
  stable: z.boolean().nullable(),
  residual_rel: z.number().nullable(),
})

const link = z.strictObject({
  id: z.string(),
  link: z.enum(LINKS),
  tier: z.int().positive(),
  part: z.enum(PARTS),
  case: z.enum(CASES),
  demand: quantity.nullable(),
  capacity: z.strictObject({ value: z.number(), unit: z.enum(['N', 'm']), basis, source: z.string() }).nullable(),
  factors: z.array(z.strictObject({ code: z.enum(FACTOR_CODES), name: z.string(), value: z.number(), basis, source: z.string() })),
  allowable: quantity.nullable(),
  utilisation: z.number().nullable(),
  overallFactor: z.number().nullable(),
  verdict,
  findings: z.array(finding),
  terms: z.array(z.strictObject({
    code: z.enum(TERM_CODES), symbol: z.string(), name: z.string(), value: z.number(), unit: z.string(), basis, source: z.string(), formula: z.string().nullable(),
  })),
})

/** One line of `check --json`. */
export const CHECK_ANSWER = z.strictObject({
  format: z.literal(CHECK_FORMAT),
  version: z.literal(CHECK_VERSION),
  file: z.string(),
  name: z.string(),
  verdict,
  verdicts: z.strictObject({ hanger: verdict, place: verdict }),
  governing: z.strictObject({ id: z.string(), link: z.enum(LINKS), case: z.enum(CASES), utilisation: z.number().nullable() }).nullable(),
  weights: each(STATES, mass),
  tiers: z.array(z.strictObject({ tier: z.int().positive(), weights: each(STATES, mass), strand: z.number(), drop: z.number().nullable() })),
  geometry: z.strictObject({
    strand: z.number(),
    ringHeight: z.number().nullable(),
    legAngle: z.number().nullable(),
    legLength: z.number().nullable(),
    leaveRadius: z.number().nullable(),
    leaveHeight: z.number().nullable(),
    drop: z.number().nullable(),
    swingPeriod: z.number().nullable(),
    hangerMass: mass,
    centreOfGravity: each(STATES, z.number()),
  }),
  sling: each(CASES, sling.nullable()),
  tipPush: z.strictObject({ force: z.number().nullable(), share: z.number().nullable(), direction: z.number().nullable(), locked: z.boolean(), lean: z.number(), tilt: z.number(), work: z.number() }).nullable(),
  panel: z.strictObject({
    onWall: z.boolean(),
    edgeFromAxis: z.number(),
    touches: z.strictObject({ radius: z.number(), height: z.number() }),
    shares: z.array(z.strictObject({ longer: z.number(), front: z.number().nullable(), behind: z.number().nullable(), wallAtRim: z.number().nullable(), wallAtBase: z.number().nullable() })),
  }).nullable(),
  gathering: z.strictObject({
    wraps: z.int().positive(),
    wrapsNeeded: z.int().positive().nullable(),
    wrapsNeededCase: z.enum(CASES).nullable(),
    wrappingCord: z.number().positive(),
    knotHeight: z.number().positive(),
    bundle: z.number().positive(),
    cordMakes: z.int().nonnegative().nullable(),
    baseEdge: z.strictObject({ above: z.number(), turn: z.number(), leg: z.number(), before: z.number(), after: z.number(), force: z.number() }).nullable(),
    slip: z.number().nullable(),
    splay: z.number().nullable(),
  }),
  links: z.array(link),
  remedies: z.array(z.strictObject({ code: z.enum(REMEDY_CODES), patch: z.record(z.string(), z.string()), verdict, utilisation: z.number().nullable() })),
  heaviest: z.strictObject({ watered: z.number() }).nullable(),
  care: z.strictObject({
    life: z.number().positive(),
    replaceAfter: z.number().positive().nullable(),
    replaceBy: z.iso.date().nullable(),
    reasons: z.array(z.looseObject({ code: z.enum(CARE_REASONS), text: z.string() })),
    inspect: z.strictObject({ first: z.int().positive(), every: z.int().positive(), reasons: z.array(z.enum(LOOK_REASONS)) }),
    texts: z.strictObject({ replace: z.string(), inspect: z.string() }),
  }),
  cautions: z.array(z.strictObject({ code: z.enum(CAUTIONS), text: z.string() })),
  assumed: z.array(z.strictObject({ path: z.string(), value: z.string(), basis })),
  findings: z.array(finding),
})

/** JSON Schema (draft 2020-12) of one line of `check --json`. */
export const checkSchema = (): object => ({ $id: 'strandwise-check-1', title: 'Answer of strandwise check --json, version 1', ...z.toJSONSchema(CHECK_ANSWER) })
