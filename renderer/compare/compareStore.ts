import { defineStore } from 'pinia'
import { computed, inject, shallowRef } from 'vue'
import { compareVariants, fileOutcomeText, parseDocument, problemText, type HangerDocument, type Variant, type VariantOutcome } from '#core'
import type { FileProblem, FolderFile } from '../../electron/contract'
import { startJob, type RunningJob, type StartJob } from '../jobs/startJob'
import type { Platform } from '../platform/platform'
import { useAdvice } from '../stores/advice'
import { useDocument } from '../stores/document'
import { PLATFORM, useFile } from '../stores/file'
import { useHistory } from '../stores/history'
import { useTried } from '../stores/tried'
import { texts } from '../texts/texts'
import { demoOf, ownStates, withRemedies, type AtHand, type Other } from './otherHangers'

const t = texts.compare

/** What the store asks of the rest of the page. */
export interface CompareGround {
  readonly atHand: () => Omit<AtHand, 'kept'>
  /** Name of the file that saving writes to; null where there is none. */
  readonly fileName: () => string | null
  readonly replace: (document: HangerDocument) => void
}

/**
 * The present hanger beside another, which stays what it was when it was chosen. Both are checked by the worker;
 * A is the one worked on until they are swapped.
 */
export function createCompare(platform: Pick<Platform, 'openHanger' | 'readListed' | 'listFolder' | 'canChooseFolder'>, start: StartJob, ground: CompareGround) {
  const kept = shallowRef<HangerDocument | null>(null)
  const other = shallowRef<Other | null>(null)
  const outcomes = shallowRef<readonly VariantOutcome[]>([])
  const state = shallowRef<'idle' | 'checking' | 'done' | 'failed'>('idle')
  const isSwapped = shallowRef(false)
  const said = shallowRef<{ readonly isProblem: boolean, readonly text: string } | null>(null)
  /** Hangers of the folder chosen last. */
  const folder = shallowRef<readonly FolderFile[]>([])
  let running: RunningJob<'checkVariants'> | null = null

  const atHand = (): AtHand => ({ ...ground.atHand(), kept: kept.value })
  const own = computed(() => ownStates(atHand()))
  const remedies = computed(() => withRemedies(atHand()))
  const complain = (text: string): void => { said.value = { isProblem: true, text } }
  const complainOf = ({ code, detail }: FileProblem): void => complain(fileOutcomeText({ code, deed: 'open', detail }))

  async function check(): Promise<void> {
    running?.callOff()
    outcomes.value = []
    if (other.value === null) {
      state.value = 'idle'
      return
    }
    state.value = 'checking'
    const found: VariantOutcome[] = []
    const mine = start('checkVariants', [ground.atHand().document, other.value.document], (steps) => { found.push(...steps) })
    running = mine
    const { how } = await mine.ended
    if (running !== mine) return
    outcomes.value = how === 'answered' ? found : []
    state.value = how === 'answered' ? 'done' : 'failed'
  }

  function put(next: Other): void {
    other.value = next
    said.value = null
    void check()
  }

  function putText(key: string, name: string, text: string): void {
    const parsed = parseDocument(text)
    if (parsed.ok) put({ key, what: t.file(name), document: parsed.document })
    else complain(parsed.problems.map(problemText).join(' '))
  }

  /** Chooses the other by its key; if it cannot be had, it is said why and the last stays. */
  async function choose(key: string): Promise<void> {
    const found = [...own.value, ...remedies.value].find((one) => one.key === key) ?? demoOf(key)
    if (found !== null) return put(found)
    const listed = folder.value.find(({ token }) => key === `folder.${token}`)
    if (listed === undefined) return complain(t.notHere)
    const outcome = await platform.readListed(listed.token)
    if (outcome.ok) putText(key, listed.name, outcome.text)
    else complainOf(outcome.problem)
  }

  async function openFile(): Promise<void> {
    const outcome = await platform.openHanger()
    if (!outcome.ok) complainOf(outcome.problem)
    else if (outcome.hanger !== null) putText('file', outcome.hanger.name, outcome.hanger.text)
  }

  /** Keeps the present hanger aside, to be compared once it was changed. */
  function keep(): void {
    kept.value = ground.atHand().document
    put({ key: 'kept', what: t.kept, document: kept.value })
    said.value = { isProblem: false, text: t.keptNow }
  }

  /** The other becomes the one worked on, as one step that can be undone; the first is kept aside. Each stays where it stands. */
  function workOnOther(): void {
    if (other.value === null) return
    const mine = ground.atHand().document
    ground.replace(other.value.document)
    kept.value = mine
    other.value = { key: 'kept', what: t.kept, document: mine }
    outcomes.value = outcomes.value.toReversed()
    isSwapped.value = !isSwapped.value
    const file = ground.fileName()
    said.value = { isProblem: false, text: file === null ? t.workedOn : t.workedOnFile(file) }
  }

  /** Looks at both again, for the present hanger may have changed; a state of it that was chosen is taken as it is now. */
  function look(): void {
    said.value = null
    const again = [...own.value, ...remedies.value].find(({ key }) => key === other.value?.key && key !== 'kept')
    if (again !== undefined) other.value = again
    void check()
    void listFolder()
  }

  /** What cannot be listed is not offered; why is said where the folder is looked into. */
  async function listFolder(): Promise<void> {
    const outcome = platform.canChooseFolder ? await platform.listFolder() : null
    folder.value = outcome?.ok === true ? outcome.listing?.files ?? [] : []
  }

  const inOrder = computed(() => (isSwapped.value ? outcomes.value.toReversed() : outcomes.value))
  const both = computed<readonly [Variant, Variant] | null>(() => {
    const [a, b] = inOrder.value
    return a?.ok === true && b?.ok === true ? [a.variant, b.variant] : null
  })

  return {
    own, remedies,
    folder: computed(() => folder.value),
    other: computed(() => other.value),
    isSwapped: computed(() => isSwapped.value),
    state: computed(() => state.value),
    said: computed(() => said.value),
    both,
    comparison: computed(() => (both.value === null ? null : compareVariants(...both.value))),
    /** Why A, or B, cannot be checked. */
    unread: computed(() => inOrder.value.flatMap((one, i) => (one.ok ? [] : [t.unread(i === 0 ? 'A' : 'B', one.problems.slice(0, 3).map(problemText).join(' '))]))),
    choose, openFile, keep, workOnOther, look,
    swap: () => { isSwapped.value = !isSwapped.value },
  }
}

export const useCompare = defineStore('compare', () => {
  const platform = inject(PLATFORM)
  if (platform === undefined) throw new Error('The app was started without a platform.')
  const [source, file, history, advice, tried] = [useDocument(), useFile(), useHistory(), useAdvice(), useTried()]
  return createCompare(platform, startJob, {
    atHand: () => ({ document: source.document, saved: file.saved, asOpened: file.asOpened, before: history.last, remedies: advice.remedies, tried: tried.current }),
    fileName: () => file.name,
    replace: source.replace,
  })
})
