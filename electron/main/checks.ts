import { EXPORT_EXTENSIONS, PAPERS, type ExportExtension, type Paper, type SaveOptions } from '../contract'

/** Tells whether a value that came from the page is what it should be. */
export type Check<Value> = (value: unknown) => value is Value

export const isText: Check<string> = (value): value is string => typeof value === 'string'

export const isTextOrNull: Check<string | null> = (value): value is string | null => value === null || isText(value)

export const isFlag: Check<boolean> = (value): value is boolean => typeof value === 'boolean'

export const isExportExtension: Check<ExportExtension> = (value): value is ExportExtension =>
  (EXPORT_EXTENSIONS as readonly unknown[]).includes(value)

export const isPaper: Check<Paper> = (value): value is Paper => (PAPERS as readonly unknown[]).includes(value)

export const isSaveOptions: Check<SaveOptions> = (value): value is SaveOptions =>
  typeof value === 'object' && value !== null && Object.keys(value).join() === 'overwrite' && 'overwrite' in value && isFlag(value.overwrite)
