/** What `batch` is asked. */
export interface BatchRequest {
  /** A table or a folder. */
  readonly path: string
  readonly json: boolean
  readonly heaviest: boolean
  /** A hanger file whose answers all rows share; null where there is none. */
  readonly base: string | null
  /** Workers; null for one a core. */
  readonly jobs: number | null
}
export type BatchArguments = { readonly ok: true; readonly request: BatchRequest } | { readonly ok: false; readonly why: string }

const MOST_JOBS = 64
const fault = (why: string): BatchArguments => ({ ok: false, why })

/** Reads the arguments of `batch`: one table or folder, `--json`, `--heaviest`, `--base FILE` and `--jobs N`, in any order. */
export function batchArguments(args: readonly string[]): BatchArguments {
  const paths: string[] = []
  let [json, heaviest] = [false, false]
  let base: string | null = null
  let jobs: number | null = null
  for (let i = 0; i < args.length; i++) {
    const word = args[i] as string
    if (word === '--json') json = true
    else if (word === '--heaviest') heaviest = true
    else if (word === '--base' || word === '--jobs') {
      const value = args[i + 1]
      if (value === undefined || value.startsWith('--')) return fault(word === '--base' ? '--base needs a hanger file whose answers all rows share.' : `--jobs needs a whole number from 1 to ${MOST_JOBS}.`)
      i++
      if (word === '--base') base = value
      else if (!/^[1-9]\d?$/.test(value) || Number(value) > MOST_JOBS) return fault(`--jobs: given ${value}. Allowed: a whole number from 1 to ${MOST_JOBS}.`)
      else jobs = Number(value)
    } else if (word.startsWith('-')) return fault(`batch does not know the option ${word}; it knows --json, --heaviest, --base and --jobs.`)
    else paths.push(word)
  }
  const [path, ...rest] = paths
  return path === undefined || rest.length > 0 ? fault('batch needs exactly one table (CSV) or folder.') : { ok: true, request: { path, json, heaviest, base, jobs } }
}
