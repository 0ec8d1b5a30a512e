import { POT_MATERIALS_KINDS, type PotMaterialKind } from '../catalogue/potMaterials'
import { MIX_KINDS, type MixKind } from '../catalogue/pottingMixes'
import { CHOICES, type ChoiceCode } from '../choosing/question'

export interface ChooseArguments {
  readonly file: string
  readonly choices: readonly ChoiceCode[]
  readonly material: PotMaterialKind | null
  readonly mix: MixKind | null
  readonly shelf: string | null
  readonly json: boolean
}
export type ChooseArgumentsOutcome = { readonly ok: true; readonly asked: ChooseArguments } | { readonly ok: false; readonly why: string }

const OPTIONS = ['--material', '--mix', '--shelf'] as const
type Option = (typeof OPTIONS)[number]

const isOneOf = <T extends string>(kinds: readonly T[], text: string): text is T => (kinds as readonly string[]).includes(text)
const isOption = (text: string): text is Option => isOneOf(OPTIONS, text)

interface Sorted {
  readonly given: ReadonlyMap<Option, string>
  readonly rest: readonly string[]
}

/** Options with what follows them, and the rest; the sentence that says which option lacks its value or is not known. */
function sort(args: readonly string[]): Sorted | string {
  const given = new Map<Option, string>()
  const rest: string[] = []
  for (let i = 0; i < args.length; i += 1) {
    const text = args[i] as string
    if (isOption(text)) {
      const following = args[i + 1]
      if (following === undefined || following.startsWith('-')) return `${text} needs a value after it.`
      given.set(text, following)
      i += 1
    } else if (text !== '--json') rest.push(text)
  }
  const odd = rest.find((text) => text.startsWith('-'))
  return odd === undefined ? { given, rest } : `choose does not know the option ${odd}; it knows --material, --mix, --shelf and --json.`
}

/** Reads `choose FILE [QUESTION…] [--material M] [--mix M] [--shelf FILE] [--json]`. */
export function chooseArguments(args: readonly string[]): ChooseArgumentsOutcome {
  const refuse = (why: string): ChooseArgumentsOutcome => ({ ok: false, why })
  const sorted = sort(args)
  if (typeof sorted === 'string') return refuse(sorted)
  const [file, ...questions] = sorted.rest
  if (file === undefined) return refuse('choose needs a hanger file.')
  const unknown = questions.find((question) => !isOneOf(CHOICES, question))
  if (unknown !== undefined) return refuse(`choose knows no question “${unknown}”; it knows ${CHOICES.join(', ')}.`)
  const material = sorted.given.get('--material') ?? null
  if (material !== null && !isOneOf(POT_MATERIALS_KINDS, material)) return refuse(`There is no pot of “${material}”; --material knows ${POT_MATERIALS_KINDS.join(', ')}.`)
  const mix = sorted.given.get('--mix') ?? null
  if (mix !== null && !isOneOf(MIX_KINDS, mix)) return refuse(`There is no mix “${mix}”; --mix knows ${MIX_KINDS.join(', ')}.`)
  const choices = CHOICES.filter((choice) => questions.length === 0 || questions.includes(choice))
  return { ok: true, asked: { file, choices, material, mix, shelf: sorted.given.get('--shelf') ?? null, json: args.includes('--json') } }
}
