import { join, resolve } from 'node:path'

/** The project's folder. */
export const root = resolve(import.meta.dirname, '../..')

/** Where the built parts lie. */
export const output = join(root, 'out')

/** What the launcher remembers between runs; goes away with node_modules. */
export const memory = join(root, 'node_modules/.cache/strandwise')
