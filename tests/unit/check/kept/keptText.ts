import { writeFileSync } from 'node:fs'
import { join } from 'node:path'

/** Lines under a name. */
export type Section = readonly [name: string, lines: readonly string[]]

/** Writes anew what is kept, where that is asked for: `STRANDWISE_KEEP=1 npm run unit -- tests/unit/check/kept`. */
export function keepAnew(file: string, sections: () => readonly Section[]): void {
  if (process.env['STRANDWISE_KEEP'] !== '1') return
  writeFileSync(join(import.meta.dirname, file), sections().map(([name, lines]) => `## ${name}\n${lines.map((line) => `${line}\n`).join('')}`).join('\n'))
}

/** The sections of a kept text, by name. */
export const sectionsOf = (kept: string): ReadonlyMap<string, readonly string[]> => new Map(kept.split(/^## /m).slice(1).map((part): Section => {
  const [name = '', ...lines] = part.trim().split('\n')
  return [name, lines]
}))
