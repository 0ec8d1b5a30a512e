import type { HangerDocument } from './document'
import type { Extra } from './extra'
import { INSPECTION_COLUMNS } from './inspectionFields'
import { logJson, logRows } from './logRows'
import { FIELD_PATHS, isFieldPath, type FieldPath } from './fields'
import type { FileProblem } from './problem'
import type { PullTestRow } from './pullTest'
import { PULL_TEST_COLUMNS } from './pullTestFields'
import { FORMAT, HANGER_FILE, splitPath, VERSION } from './schema'
import { readSoldCopy } from './soldCopy'

export type ParseOutcome =
  | { readonly ok: true; readonly document: HangerDocument }
  | { readonly ok: false; readonly problems: readonly FileProblem[] }

const isRecord = (x: unknown): x is Record<string, unknown> => typeof x === 'object' && x !== null && !Array.isArray(x)
// What comes here was parsed from JSON, so it can always be written back.
const show = (x: unknown): string => JSON.stringify(x).slice(0, 60)
const refuse = (...problems: readonly FileProblem[]): ParseOutcome => ({ ok: false, problems })

const KNOWN_TOP = new Set(['format', 'version', 'name', 'pullTests', 'inspections'])
const GROUPS = new Set(FIELD_PATHS.map((path) => splitPath(path)[0]))

/**
 * Reads the text of a hanger file into a document of typed texts. Says what is wrong with the file
 * as a whole (the codes of FileProblem); what the texts mean is read by `resolveDocument`. Keys it
 * does not know are kept.
 * @example parseDocument('{"format": "strandwise-hanger", "version": 1, "pot": {"rim": "9 in"}}').document.typed // { 'pot.rim': '9 in' }
 */
export function parseDocument(text: string): ParseOutcome {
  let json: unknown
  try {
    json = JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    return refuse({ code: 'NOT_JSON', detail: error instanceof Error ? error.message : 'unreadable' })
  }
  if (!isRecord(json) || json['format'] !== FORMAT) return refuse({ code: 'NOT_A_HANGER_FILE', found: isRecord(json) ? show(json['format'] ?? null) : show(json) })
  const version = json['version']
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) return refuse({ code: 'BAD_VERSION', found: show(version ?? null) })
  if (version > VERSION) return refuse({ code: 'NEWER_VERSION', version })
  const shape = HANGER_FILE.safeParse(json)
  if (!shape.success) {
    return refuse(...shape.error.issues.map((issue): FileProblem => {
      const found = issue.path.reduce<unknown>((at, key) => (isRecord(at) && Object.hasOwn(at, key) ? at[key as string] : null), json)
      const [at] = issue.path
      if ((at === 'pullTests' || at === 'inspections') && issue.path.length < 3) return { code: 'NOT_A_LOG', log: at, found: show(found) }
      return at === 'name' ? { code: 'BAD_NAME', found: show(found) } : { code: 'NOT_TEXT', path: issue.path.join('.'), found: show(found) }
    }))
  }
  const document: HangerDocument = {
    name: typeof json['name'] === 'string' ? json['name'] : '',
    typed: typedTexts(json),
    pullTests: pullTestRows(json['pullTests']),
    inspections: logRows(json['inspections'], INSPECTION_COLUMNS),
    sold: readSoldCopy(json['sold']),
    extra: unknownKeys(json),
  }
  return { ok: true, document }
}

function typedTexts(json: Record<string, unknown>): HangerDocument['typed'] {
  const typed: Partial<Record<FieldPath, string>> = {}
  for (const path of FIELD_PATHS) {
    const [group, key] = splitPath(path)
    const inGroup = Object.hasOwn(json, group) ? json[group] : undefined
    const text = isRecord(inGroup) && Object.hasOwn(inGroup, key) ? inGroup[key] : undefined
    if (typeof text === 'number' || typeof text === 'string') typed[path] = String(text)
  }
  return typed
}

/** Rows of a pull-test log from parsed JSON; what is no row is none. */
export const pullTestRows = (json: unknown): readonly PullTestRow[] => logRows(json, PULL_TEST_COLUMNS)

/** The log as it stands in a file. */
export const pullTestJson = (rows: readonly PullTestRow[]): readonly Extra[] => logJson(rows, PULL_TEST_COLUMNS)

function unknownKeys(json: Record<string, unknown>): Extra {
  const kept = Object.entries(json).flatMap(([key, value]): [string, unknown][] => {
    if (KNOWN_TOP.has(key) || (key === 'sold' && readSoldCopy(value) !== null)) return []
    if (!GROUPS.has(key) || !isRecord(value)) return [[key, value]]
    const inGroup = Object.entries(value).filter(([inner]) => !isFieldPath(`${key}.${inner}`))
    return inGroup.length > 0 ? [[key, Object.fromEntries(inGroup)]] : []
  })
  return Object.fromEntries(kept)
}

/** Dotted names of the keys in a document that this version does not know. */
export function unknownKeyNames(document: HangerDocument): readonly string[] {
  const inGroups = Object.entries(document.extra).flatMap(([key, value]) =>
    GROUPS.has(key) && isRecord(value) ? Object.keys(value).map((inner) => `${key}.${inner}`) : [key])
  const inRows = (log: 'pullTests' | 'inspections'): readonly string[] => document[log].flatMap(({ extra }, i) => Object.keys(extra).map((key) => `${log}[${i + 1}].${key}`))
  return [...inGroups, ...inRows('pullTests'), ...inRows('inspections')]
}

/** The text of the hanger file: what was typed, in the table's order, and every kept key. */
export function writeDocument(document: HangerDocument): string {
  const groups = new Map<string, [string, unknown][]>()
  for (const path of FIELD_PATHS) {
    const text = document.typed[path]
    if (text === undefined) continue
    const [group, key] = splitPath(path)
    groups.set(group, [...(groups.get(group) ?? []), [key, text]])
  }
  const top: [string, unknown][] = [['format', FORMAT], ['version', VERSION], ['name', document.name]]
  for (const [group, entries] of groups) {
    const kept = document.extra[group]
    top.push([group, Object.fromEntries([...entries, ...(isRecord(kept) ? Object.entries(kept) : [])])])
  }
  if (document.pullTests.length > 0) top.push(['pullTests', pullTestJson(document.pullTests)])
  if (document.inspections.length > 0) top.push(['inspections', logJson(document.inspections, INSPECTION_COLUMNS)])
  if (document.sold !== null) top.push(['sold', document.sold])
  top.push(...Object.entries(document.extra).filter(([key]) => !groups.has(key)))
  return `${JSON.stringify(Object.fromEntries(top), null, 2)}\n`
}
