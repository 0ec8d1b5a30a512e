import { DEMOS, EMPTY_DOCUMENT, parseDocument, patchDocument, REMEDY_TEXTS, type HangerDocument, type Remedy } from '#core'
import type { Tried } from '../stores/tried'
import { editedBy } from './editedBy'
import { texts } from '../texts/texts'

/** A hanger to compare with, and in words how it came about. */
export interface Other {
  readonly key: string
  readonly what: string
  readonly document: HangerDocument
}

/** What of the present hanger is at hand. */
export interface AtHand {
  readonly document: HangerDocument
  readonly kept: HangerDocument | null
  readonly saved: HangerDocument
  readonly asOpened: HangerDocument
  readonly before: HangerDocument | null
  readonly remedies: readonly Remedy[]
  readonly tried: readonly Tried[]
}

const t = texts.compare

/** Other states of the present hanger; those that are no other are left out. */
export function ownStates({ document, kept, saved, asOpened, before, tried }: AtHand): readonly Other[] {
  const states: readonly (readonly [string, string, HangerDocument | null])[] = [
    ['kept', t.kept, kept], ['saved', t.saved, saved], ['opened', t.opened, asOpened === saved ? null : asOpened], ['before', t.before, before],
  ]
  const nothing = (one: HangerDocument): boolean => one === EMPTY_DOCUMENT || Object.keys(one.typed).length === 0
  return [
    ...states.flatMap(([key, what, one]): Other[] => (one === null || (key !== 'kept' && (one === document || nothing(one))) ? [] : [{ key, what, document: one }])),
    ...tried.map(({ remedy, before: texts }): Other => ({ key: `without.${remedy.code}`, what: t.without(REMEDY_TEXTS[remedy.code]), document: editedBy(document, texts) })),
  ]
}

/** The present hanger with each remedy that was found for it. */
export function withRemedies({ document, remedies, tried }: AtHand): readonly Other[] {
  const found = remedies.filter(({ code }) => !tried.some(({ remedy }) => remedy.code === code))
  const seen = new Set<string>()
  return found.flatMap(({ code, patch }): Other[] => {
    if (seen.has(code)) return []
    seen.add(code)
    return [{ key: `remedy.${code}`, what: t.remedy(REMEDY_TEXTS[code]), document: patchDocument(document, patch) }]
  })
}

/** The hangers that come with the app. */
export const demoChoices = DEMOS.map(({ file, title }) => ({ key: `demo.${file}`, label: title }))

export function demoOf(key: string): Other | null {
  const demo = DEMOS.find(({ file }) => key === `demo.${file}`)
  const parsed = demo === undefined ? null : parseDocument(demo.text)
  return demo === undefined || parsed?.ok !== true ? null : { key, what: t.demo(demo.title), document: parsed.document }
}
