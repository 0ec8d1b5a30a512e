import type { DropProblem } from '#core'

/** Files that may be hangers: others are not even read. */
const HANGER_NAME = /\.(strandwise|json)$/i

/** Why what was dropped cannot be opened; null if it is one file that may be a hanger. */
export function dropProblem({ files }: Pick<DataTransfer, 'files'>): DropProblem | null {
  if (files.length > 1) return { code: 'SEVERAL_FILES', count: files.length }
  const [file] = files
  if (file === undefined) return { code: 'NO_FILE' }
  return HANGER_NAME.test(file.name) ? null : { code: 'OTHER_KIND', name: file.name }
}
