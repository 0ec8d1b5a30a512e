// The small edition: the same schemas at a third of the code, which is part of the first screen.
import * as z from 'zod/mini'
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
function textSchema(field: Field): z.ZodMiniType {
  if (field.type === 'choice') return z.optional(z.string().check(z.meta({ enum: [...field.choices] })))
  if (field.type === 'text') return z.optional(z.string().check(z.maxLength(field.max)))
  if (field.type === 'screw') return z.optional(z.string().check(z.meta({ description: 'a screw as its packet names it' })))
  if (field.type === 'date') return z.optional(z.string().check(z.meta({ format: 'date' })))
  if (field.kind === 'count') return z.optional(z.union([z.string(), z.number()]).check(z.meta({ description: `whole number from ${field.min} to ${field.max}` })))
  return z.optional(z.string().check(z.meta({ description: field.kind === 'ratio' ? 'a share or a plain number' : `${field.kind} with its unit, as typed` })))
}

/** What is let through to the reader of the field, whose sentence says more than a schema can: a bare number too. */
const anyText = (): z.ZodMiniType => z.optional(z.union([z.string(), z.number()]))

function groupSchemas(textOf: (field: Field) => z.ZodMiniType): Record<string, z.ZodMiniType> {
  const groups: Record<string, Record<string, z.ZodMiniType>> = {}
  for (const path of FIELD_PATHS) {
    const [group, key] = splitPath(path)
    groups[group] = { ...groups[group], [key]: textOf(fieldOf(path)) }
  }
  return Object.fromEntries(Object.entries(groups).map(([group, shape]) => [group, z.optional(z.looseObject(shape))]))
}

const logSchema = (fields: Readonly<Record<string, Field>>, textOf: (field: Field) => z.ZodMiniType): z.ZodMiniType =>
  z.optional(z.array(z.looseObject(Object.fromEntries(Object.entries(fields).map(([column, field]) => [column, textOf(field)])))))

/** The hanger as it was sold: the file of that day as text, and what the check said of it. */
const SOLD = z.optional(z.looseObject({ date: z.string().check(z.meta({ format: 'date' })), verdict: z.string(), hanger: z.string(), place: z.string(), heaviest: z.nullable(z.number()), file: z.string() }))

const fileSchema = (textOf: (field: Field) => z.ZodMiniType, sold: z.ZodMiniType): z.ZodMiniType => z.looseObject({
  format: z.literal(FORMAT),
  version: z.number(),
  name: z.optional(z.string().check(z.maxLength(200))),
  ...groupSchemas(textOf),
  pullTests: logSchema(PULL_TEST_FIELDS, textOf),
  inspections: logSchema(INSPECTION_FIELDS, textOf),
  sold,
})

/** The hanger file as text: what is in it, not what it means. Unknown keys are let through. */
export const HANGER_FILE = fileSchema(anyText, z.optional(z.unknown()))

/** JSON Schema (draft 2020-12) of the hanger file. */
export function hangerFileSchema(): object {
  return { $id: 'strandwise-hanger-1', title: 'Strandwise hanger file, version 1', ...z.toJSONSchema(fileSchema(textSchema, SOLD), { io: 'input' }) }
}
