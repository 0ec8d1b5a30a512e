import type { FieldPath, Patch } from '#core'

/** The patch with some answers taken back. */
export const without = (patch: Patch, ...paths: readonly FieldPath[]): Patch =>
  Object.fromEntries(Object.entries(patch).filter(([path]) => !(paths as readonly string[]).includes(path)))
