import * as z from 'zod'
import type { Field } from './field'
import { FIELD_PATHS, fieldOf, type FieldPath } from './fields'
import { INSPECTION_FIELDS } from './inspectionFields'
import { PULL_TEST_FIELDS } from './pullTestFields'

// The page forbids code from strings; zod's faster path would try it once.
z.config({ jitless: true })

export const FORMAT = 'strandwise-hanger'
export const VERSION = 1

/**
 * Splits a path into its group and key.
 * @example splitPath('pot.rim') // ['pot', 'rim']
 */
export function splitPath(path: FieldPath): readonly [string, string] {
  const [group = '', key = ''] = path.split('.')
  return [group, key]
}

/** What the file should hold for a field. */
function textSchema(field: Field): z.ZodType {
  if (field.type === 'choice') return z.string().meta({ enum: [...field.choices] }).optional()
  if (field.type === 'text') return z.string().max(field.max).optional()
  if (field.type === 'screw') return z.string().meta({ description: 'a screw as its packet names it' }).optional()
  if (field.type === 'date') return z.string().meta({ format: 'date' }).optional()
  if (field.kind === 'count') return z.union([z.string(), z.number()]).meta({ description: `whole number from ${field.min} to ${field.max}` }).optional()
  return z.string().meta({ description: field.kind === 'ratio' ? 'a share or a plain number' : `${field.kind} with its unit, as typed` }).optional()
}

/** What is let through to the reader of the field, whose sentence says more than a schema can: a bare number too. */
const anyText = (): z.ZodType => z.union([z.string(), z.number()]).optional()

function groupSchemas(textOf: (field: Field) => z.ZodType): Record<string, z.ZodType> {
  const groups: Record<string, Record<string, z.ZodType>> = {}
  for (const path of FIELD_PATHS) {
    const [group, key] = splitPath(path)
    groups[group] = { ...groups[group], [key]: textOf(fieldOf(path)) }
  }
  return Object.fromEntries(Object.entries(groups).map(([group, shape]) => [group, z.looseObject(shape).optional()]))
}

const logSchema = (fields: Readonly<Record<string, Field>>, textOf: (field: Field) => z.ZodType): z.ZodType =>
  z.array(z.looseObject(Object.fromEntries(Object.entries(fields).map(([column, field]) => [column, textOf(field)])))).optional()

/** The hanger as it was sold: the file of that day as text, and what the check said of it. */
const SOLD = z.looseObject({ date: z.string().meta({ format: 'date' }), verdict: z.string(), hanger: z.string(), place: z.string(), heaviest: z.number().nullable(), file: z.string() }).optional()

const fileSchema = (textOf: (field: Field) => z.ZodType, sold: z.ZodType): z.ZodType => z.looseObject({
  format: z.literal(FORMAT),
  version: z.number(),
  name: z.string().max(200).optional(),
  ...groupSchemas(textOf),
  pullTests: logSchema(PULL_TEST_FIELDS, textOf),
  inspections: logSchema(INSPECTION_FIELDS, textOf),
  sold,
})

/** The hanger file as text: what is in it, not what it means. Unknown keys are let through. */
export const HANGER_FILE = fileSchema(anyText, z.unknown().optional())

/** JSON Schema (draft 2020-12) of the hanger file. */
export function hangerFileSchema(): object {
  return { $id: 'strandwise-hanger-1', title: 'Strandwise hanger file, version 1', ...z.toJSONSchema(fileSchema(textSchema, SOLD), { io: 'input' }) }
}
