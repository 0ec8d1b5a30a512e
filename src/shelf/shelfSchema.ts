import * as z from 'zod'
import { PULL_TEST_COLUMNS } from '../hanger/pullTestFields'
import { hangerFileSchema, splitPath } from '../hanger/schema'
import { ENTRY_HEADINGS } from './entryHeadings'
import { hasPullTests, SHELF_KINDS, SHELF_PATHS, type ShelfKind } from './shelfKinds'

export const SHELF_FORMAT = 'strandwise-shelf'
export const SHELF_VERSION = 1

/** What is let through to the reader of the value, whose sentence says more than a schema can. */
const anyText = (): z.ZodType => z.union([z.string(), z.number()]).optional()
const anyTexts = (keys: readonly string[]): z.ZodType => z.looseObject(Object.fromEntries(keys.map((key) => [key, anyText()])))

const keysOf = (kind: ShelfKind): readonly string[] => SHELF_PATHS[kind].map((path) => splitPath(path)[1])

const entrySchema = (kind: ShelfKind): z.ZodType => z.looseObject({
  name: z.string().optional(),
  date: z.string().optional(),
  note: z.string().optional(),
  [kind]: anyTexts(keysOf(kind)).optional(),
  ...(hasPullTests(kind) ? { pullTests: z.array(anyTexts(PULL_TEST_COLUMNS)).optional() } : {}),
})

/** An entry as text, once its kind is known: what is in it, not what it means. Unknown keys are let through. */
export const ENTRY_SCHEMAS: Readonly<Record<ShelfKind, z.ZodType>> =
  { cord: entrySchema('cord'), pot: entrySchema('pot'), mix: entrySchema('mix'), hook: entrySchema('hook'), ring: entrySchema('ring') }

/** As much as is needed here of a JSON Schema of an object. */
interface ObjectSchema {
  readonly properties: Readonly<Record<string, object>>
}

/** JSON Schema (draft 2020-12) of the shelf file; what it says of a value is what the hanger file's says. */
export function shelfFileSchema(): object {
  const { $schema, properties } = hangerFileSchema() as ObjectSchema & { readonly $schema: string }
  const groupOf = (kind: ShelfKind): object => {
    const group = properties[kind] as ObjectSchema
    return { ...group, properties: Object.fromEntries(Object.entries(group.properties).filter(([key]) => keysOf(kind).includes(key))) }
  }
  const entryOf = (kind: ShelfKind): object => ({
    type: 'object',
    properties: {
      kind: { const: kind },
      name: { type: 'string', minLength: 1, maxLength: ENTRY_HEADINGS.name.max },
      date: { type: 'string', format: 'date' },
      note: { type: 'string', maxLength: ENTRY_HEADINGS.note.max },
      [kind]: groupOf(kind),
      ...(hasPullTests(kind) ? { pullTests: properties['pullTests'] } : {}),
    },
    required: ['kind', 'name'],
  })
  return {
    $id: 'strandwise-shelf-1',
    title: 'Strandwise shelf file, version 1',
    $schema,
    type: 'object',
    properties: {
      format: { const: SHELF_FORMAT },
      version: { type: 'number', const: SHELF_VERSION },
      entries: { type: 'array', items: { oneOf: SHELF_KINDS.map(entryOf) } },
    },
    required: ['format', 'version', 'entries'],
  }
}
