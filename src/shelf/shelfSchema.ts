import * as z from 'zod/mini'
import { PULL_TEST_COLUMNS } from '../hanger/pullTestFields'
import { hangerFileSchema, splitPath } from '../hanger/schema'
import { ENTRY_HEADINGS } from './entryHeadings'
import { hasPullTests, SHELF_KINDS, SHELF_PATHS, type ShelfKind } from './shelfKinds'

export const SHELF_FORMAT = 'strandwise-shelf'
export const SHELF_VERSION = 1

/** What is let through to the reader of the value, whose sentence says more than a schema can. */
const anyText = (): z.ZodMiniType => z.optional(z.union([z.string(), z.number()]))
const anyTexts = (keys: readonly string[]): z.ZodMiniType => z.looseObject(Object.fromEntries(keys.map((key) => [key, anyText()])))

const keysOf = (kind: ShelfKind): readonly string[] => SHELF_PATHS[kind].map((path) => splitPath(path)[1])

const entrySchema = (kind: ShelfKind): z.ZodMiniType => z.looseObject({
  name: z.optional(z.string()),
  date: z.optional(z.string()),
  note: z.optional(z.string()),
  [kind]: z.optional(anyTexts(keysOf(kind))),
  ...(hasPullTests(kind) ? { pullTests: z.optional(z.array(anyTexts(PULL_TEST_COLUMNS))) } : {}),
})

/** An entry as text, once its kind is known: what is in it, not what it means. Unknown keys are let through. */
export const ENTRY_SCHEMAS: Readonly<Record<ShelfKind, z.ZodMiniType>> =
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
