import { USUAL_SAMPLES, USUAL_SEED } from '../chance/asked'
import type { ChanceProblem } from '../chance/problem'
import { readChance } from '../chance/readChance'
import { chanceProblemText } from '../words/chanceProblems'

export type ChanceArguments =
  | { readonly ok: true; readonly file: string; readonly samples: number; readonly seed: number; readonly json: boolean }
  | { readonly ok: false; readonly sentences: readonly string[] }

const OPTIONS = ['--samples', '--seed'] as const

/** What `chance` was given: one file, options each once with their number, and --json. */
export function chanceArguments(args: readonly string[]): ChanceArguments {
  const wrong = (...sentences: readonly string[]): ChanceArguments => ({ ok: false, sentences })
  const given = new Map<string, string>()
  const files: string[] = []
  for (let i = 0; i < args.length; i += 1) {
    const arg = args[i] ?? ''
    if (arg === '--json') continue
    const option = OPTIONS.find((o) => o === arg)
    if (option === undefined) {
      if (arg.startsWith('-')) return wrong(`chance does not know the option ${arg}; it knows --samples N, --seed S and --json.`)
      files.push(arg)
      continue
    }
    if (given.has(option)) return wrong(`${option} was given twice.`)
    i += 1
    given.set(option, args[i] ?? '')
  }
  const [file, ...rest] = files
  if (file === undefined || rest.length > 0) return wrong('chance needs exactly one hanger file.')
  const numbers = readChance(given.get('--samples') ?? String(USUAL_SAMPLES), given.get('--seed') ?? String(USUAL_SEED))
  if (!numbers.ok) return wrong(...numbers.problems.map((p: ChanceProblem) => chanceProblemText(p)))
  return { ok: true, file, samples: numbers.samples, seed: numbers.seed, json: args.includes('--json') }
}
