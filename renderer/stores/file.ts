import { defineStore } from 'pinia'
import { computed, inject, shallowRef, watch, type InjectionKey } from 'vue'
import { draftNotKeptText, dropProblemText, droppedText, EMPTY_DOCUMENT, fileOutcomeText, findingText, parseDocument, problemText, recoveredText, unknownKeyNames, writeDocument, type FileDeed, type HangerDocument } from '#core'
import type { ExportExtension, ExportOutcome, FileProblem, FileToken, NamedFile, OpenOutcome, Paper, RecentHanger } from '../../electron/contract'
import type { Platform } from '../platform/platform'
import { texts } from '../texts/texts'
import { useDocument } from './document'
import { draftText, readDraft } from './drafts'
import { dropProblem } from './dropProblem'
import { useQuestions } from './questions'

/** Provided to the app by whoever starts it. */
export const PLATFORM: InjectionKey<Platform> = Symbol('platform')

/** What is not saved is kept this long after a change, ms. */
const DRAFT_PAUSE = 700

/** What became of a file, to be told: said quietly, or said because something was not done. */
export interface FileMessage {
  readonly isProblem: boolean
  readonly text: string
}

/** A file as the hanger knows it; without a token it can be saved only by choosing where. */
interface CurrentFile {
  readonly token: FileToken | null
  readonly name: string
}

/**
 * The file the hanger is kept in: which one, whether it lags behind, and the ways to open and save.
 * Nothing that was not saved is put aside without asking. A save either happened or says why.
 */
export function createFile(platform: Platform) {
  const source = useDocument()
  const questions = useQuestions()
  const current = shallowRef<CurrentFile | null>(null)
  const saved = shallowRef<HangerDocument>(source.document)
  const asOpened = shallowRef<HangerDocument>(source.document)
  const message = shallowRef<FileMessage | null>(null)
  const recent = shallowRef<readonly RecentHanger[]>([])
  const isDirty = computed(() => source.document !== saved.value)
  const suggestedName = (): string => source.document.name.trim() || texts.files.unnamed

  const say = (text: string): void => { message.value = { isProblem: false, text } }
  const complain = (text: string): void => { message.value = { isProblem: true, text } }
  const complainOf = (deed: FileDeed, { code, detail }: FileProblem): void => complain(fileOutcomeText({ code, deed, detail }))

  async function refreshRecent(): Promise<void> { recent.value = await platform.recent() }

  function put(document: HangerDocument, file: CurrentFile | null): void {
    source.load(document)
    saved.value = document
    asOpened.value = document
    current.value = file
    const names = unknownKeyNames(document)
    message.value = names.length === 0 ? null : { isProblem: false, text: findingText({ code: 'UNKNOWN_KEYS', names }) }
  }

  /** Whether the hanger at hand may be put aside: saved, or given up knowingly. */
  async function mayLeave(): Promise<boolean> {
    if (!isDirty.value) return true
    const answer = await questions.ask('unsaved')
    return answer === 'save' ? save() : answer === 'discard'
  }

  /** Whether the text was that of a hanger; if not, it is said why. */
  function putText(text: string, file: CurrentFile | null): boolean {
    const parsed = parseDocument(text)
    if (parsed.ok) put(parsed.document, file)
    else complain(parsed.problems.map(problemText).join(' '))
    return parsed.ok
  }

  /** Takes what was opened, once it is known that the present hanger may go. */
  async function take(outcome: OpenOutcome): Promise<void> {
    if (!outcome.ok) complainOf('open', outcome.problem)
    else if (outcome.hanger !== null) putText(outcome.hanger.text, { token: outcome.hanger.token, name: outcome.hanger.name })
    await refreshRecent()
  }

  async function startNew(): Promise<void> { if (await mayLeave()) put(EMPTY_DOCUMENT, null) }
  async function open(): Promise<void> { if (await mayLeave()) await take(await platform.openHanger()) }
  async function openRecent(token: FileToken): Promise<void> { if (await mayLeave()) await take(await platform.openRecent(token)) }
  async function openDemo(text: string): Promise<void> { if (await mayLeave()) putText(text, null) }
  /** Opens the one hanger file that was dropped on the window. */
  async function openDropped(dropped: DataTransfer): Promise<void> {
    const problem = dropProblem(dropped)
    if (problem !== null) return complain(dropProblemText(problem))
    // Read before anything is asked: what was dropped is gone afterwards.
    const outcome = await platform.openDropped(dropped)
    if (!outcome.ok) return complainOf('open', outcome.problem)
    await recovered
    if (!await mayLeave()) return
    const { token, name, text } = outcome.hanger
    if (putText(text, { token, name }) && token === null && message.value === null) say(droppedText(name))
    await refreshRecent()
  }
  async function openFromOutside(outcome: OpenOutcome): Promise<void> {
    await recovered
    if (!outcome.ok || await mayLeave()) await take(outcome)
  }

  /** Puts back what was not saved when the app last ended, unless somebody works on another hanger already. */
  async function recover(): Promise<void> {
    const kept = await platform.takeDraft()
    const draft = kept === null ? null : readDraft(kept)
    if (draft === null || isDirty.value || current.value !== null) return
    source.load(draft.document)
    say(recoveredText(draft.file))
  }

  let keeping: ReturnType<typeof setTimeout> | undefined
  let couldKeep = true
  async function keepNow(): Promise<void> {
    keeping = undefined
    const outcome = await platform.keepDraft(draftText({ file: current.value?.name ?? null, document: source.document }))
    // Said once, not after each change.
    if (!outcome.ok && couldKeep && isDirty.value) complain(draftNotKeptText(outcome.problem.code, outcome.problem.detail))
    couldKeep = outcome.ok
  }

  /** Keeps what is not saved, a moment after a change: whoever types without a pause is not left without. */
  function keepDraft(): void {
    if (isDirty.value) keeping ??= setTimeout(() => void keepNow(), DRAFT_PAUSE)
    else {
      clearTimeout(keeping)
      keeping = undefined
      void platform.keepDraft(null)
    }
  }

  /** A dropped file keeps its name, so that it can be put where it came from. */
  const nameToSaveAs = (): string => (current.value?.token === null ? current.value.name.replace(/\.(strandwise|json)$/i, '') : suggestedName())

  async function saveAs(): Promise<boolean> {
    const { document } = source
    const outcome = await platform.saveHangerAs(nameToSaveAs(), writeDocument(document))
    if (!outcome.ok) {
      complainOf('save', outcome.problem)
      return false
    }
    if (outcome.saved === null) return false
    current.value = outcome.saved
    return haveSaved(document, outcome.saved.name)
  }

  async function saveTo(file: NamedFile, overwrite: boolean): Promise<boolean> {
    const { document } = source
    const outcome = await platform.saveHanger(file.token, writeDocument(document), { overwrite })
    if (outcome.ok) return haveSaved(document, file.name)
    if (outcome.problem.code === 'CHANGED_ON_DISK') {
      const answer = await questions.ask('overwrite')
      if (answer === 'overwrite') return saveTo(file, true)
      if (answer === 'saveAs') return saveAs()
    }
    complainOf('save', outcome.problem)
    return false
  }

  async function haveSaved(document: HangerDocument, name: string): Promise<boolean> {
    saved.value = document
    say(texts.files.savedAs(name))
    await refreshRecent()
    return true
  }

  let turn: Promise<unknown> = Promise.resolve()
  /** Two saves at once would each find the file changed by the other. */
  function save(): Promise<boolean> {
    const mine = turn.then(() => {
      const { token, name } = current.value ?? { token: null, name: '' }
      return token === null ? saveAs() : saveTo({ token, name }, false)
    })
    turn = mine.catch(() => false)
    return mine
  }

  function tellOf(outcome: ExportOutcome): void {
    if (!outcome.ok) complainOf('export', outcome.problem)
    else if (outcome.name !== null) say(texts.files.writtenTo(outcome.name))
  }
  /** Writes the page as a PDF, offering a name. */
  const savePdfAs = async (name: string): Promise<void> => tellOf(await platform.savePdf(name))
  const savePdf = (): Promise<void> => savePdfAs(suggestedName())
  /** Writes a text where the maker chooses, offering a name. */
  const saveText = async (name: string, extension: ExportExtension, text: string): Promise<void> => tellOf(await platform.exportText(name, extension, text))
  async function print(paper: Paper): Promise<void> {
    const outcome = await platform.print(paper)
    if (!outcome.ok) complainOf('print', outcome.problem)
  }

  /** Writes the drawing, an SVG text, where the maker chooses. */
  async function saveDrawing(svg: string): Promise<void> {
    const outcome = await platform.exportText(suggestedName(), 'svg', svg)
    if (!outcome.ok) complainOf('export', outcome.problem)
    else if (outcome.name !== null) say(texts.drawing.written(outcome.name))
  }

  watch(isDirty, (dirty) => platform.setUnsaved(dirty), { immediate: true })
  const recovered = recover()
  watch([() => source.document, isDirty], keepDraft)
  platform.onOpened((outcome) => { void openFromOutside(outcome) })
  platform.onSaveBeforeClose(save)
  void refreshRecent()

  return {
    name: computed(() => current.value?.name ?? null),
    /** The hanger as it was last saved or, before that, opened; and as it was opened. */
    saved: computed(() => saved.value), asOpened: computed(() => asOpened.value),
    isDirty, message: computed(() => message.value), recent: computed(() => recent.value),
    startNew, open, openRecent, openDemo, openDropped, save, saveAs, savePdf, savePdfAs, saveText, saveDrawing, print,
    /** What was said has been read. */
    hush: () => { message.value = null },
    onMenu: platform.onMenu.bind(platform),
  }
}

export const useFile = defineStore('file', () => {
  const platform = inject(PLATFORM)
  if (platform === undefined) throw new Error('The app was started without a platform.')
  return createFile(platform)
})
