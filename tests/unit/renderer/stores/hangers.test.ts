import { describe, expect, it, vi } from 'vitest'
import type { FileProblemCode, FolderFile, ListFolderOutcome, ReadListedOutcome } from '../../../../electron/contract'
import { unreadCard } from '../../../../renderer/hangers/hangerCard'
import type { HangerQuestion, HangerReply } from '../../../../renderer/hangers/messages'
import type { Platform } from '../../../../renderer/platform/platform'
import { createHangers, type HangersWorker } from '../../../../renderer/stores/hangers'
import { QUIET_PLATFORM } from './quietPlatform'

const fileOf = (name: string, modified = 1): FolderFile => ({ token: `token of ${name}`, name, size: 2, modified })
const settle = (): Promise<void> => new Promise((done) => { setTimeout(done) })
const failure = (code: FileProblemCode) => ({ ok: false as const, problem: { code, detail: 'E_DETAIL' } })

/** A folder with these files, and a worker that answers only when told to. */
function start(files: readonly FolderFile[], changes: Partial<Platform> = {}) {
  const asked: HangerQuestion[] = []
  const worker: HangersWorker = { postMessage: (question) => { asked.push(question) }, onmessage: null, onerror: null }
  const state = { list: { ok: true, listing: { folder: { name: 'Hangers' }, files, isCut: false } } as ListFolderOutcome }
  const readListed = vi.fn(async (token: string): Promise<ReadListedOutcome> => ({ ok: true, text: token }))
  const hangers = createHangers({ ...QUIET_PLATFORM, listFolder: async () => state.list, readListed, ...changes }, () => worker)
  const reply = async (message: HangerReply): Promise<void> => {
    worker.onmessage?.({ data: message } as MessageEvent<HangerReply>)
    await settle()
  }
  /** Answers the question asked last. */
  const answer = (): Promise<void> => {
    const { kind, revision, text } = asked.at(-1) as HangerQuestion
    return reply(kind === 'hangerCard' ? { kind, revision, card: { ...unreadCard(''), name: text, verdict: 'The hanger holds.', problem: null } } : { kind, revision, heaviest: 7 })
  }
  return { hangers, asked, worker, state, readListed, reply, answer }
}

describe('the hangers of a folder', () => {
  it('are checked one after the other: all verdicts first, then the heaviest pots', async () => {
    const [fern, ivy] = [fileOf('fern'), fileOf('ivy')]
    const { hangers, asked, answer } = start([fern, ivy])
    void hangers.look()
    await settle()
    expect([hangers.folder.value, hangers.files.value, hangers.checked.value]).toEqual(['Hangers', [fern, ivy], 0])
    expect(asked).toHaveLength(1)
    for (let i = 0; i < 4; i++) await answer()
    expect(asked.map(({ kind, text }) => [kind, text])).toEqual([
      ['hangerCard', 'token of fern'], ['hangerCard', 'token of ivy'], ['hangerHeaviest', 'token of fern'], ['hangerHeaviest', 'token of ivy'],
    ])
    expect([hangers.cardOf(ivy)?.name, hangers.heaviestOf(ivy), hangers.checked.value]).toEqual(['token of ivy', 7, 2])
  })

  it('are checked no further once nobody looks, and from there when somebody does again', async () => {
    const files = [fileOf('fern'), fileOf('ivy'), fileOf('moss')]
    const { hangers, asked, answer } = start(files)
    void hangers.look()
    await settle()
    await answer()
    hangers.leave()
    await answer()
    expect(asked).toHaveLength(2)
    expect(hangers.checked.value).toBe(1)
    void hangers.look()
    await settle()
    expect(asked.at(-1)?.text).toBe('token of ivy')
    expect(hangers.cardOf(fileOf('fern'))?.name).toBe('token of fern')
  })

  it('are checked again once they were written anew', async () => {
    const { hangers, asked, answer, state } = start([fileOf('fern', 1)])
    void hangers.look()
    await settle()
    await answer()
    state.list = { ok: true, listing: { folder: { name: 'Hangers' }, files: [fileOf('fern', 2)], isCut: false } }
    void hangers.look()
    await settle()
    expect(hangers.cardOf(fileOf('fern', 2))).toBeNull()
    expect(asked.at(-1)).toMatchObject({ kind: 'hangerCard', text: 'token of fern' })
  })

  it('that cannot be read or checked are listed with a sentence, and the next one is checked', async () => {
    const files = [fileOf('gone'), fileOf('odd'), fileOf('worse'), fileOf('fern')]
    const { hangers, asked, worker, reply, answer } = start(files, {
      readListed: async (token) => (token === 'token of gone' ? failure('NOT_FOUND') : { ok: true, text: token }),
    })
    void hangers.look()
    await settle()
    await reply({ kind: 'hangerFailed', revision: asked.at(-1)?.revision ?? 0, detail: 'boom' })
    worker.onerror?.({} as ErrorEvent)
    await settle()
    await answer()
    expect(files.map((file) => hangers.cardOf(file)?.problem)).toEqual([
      'The file was not opened: it is no longer there. It may have been moved or renamed.', 'Could not be checked. Open it to see why.', 'Could not be checked. Open it to see why.', null,
    ])
    expect(asked.filter(({ kind }) => kind === 'hangerHeaviest').map(({ text }) => text)).toEqual(['token of fern'])
  })
})

describe('the folder', () => {
  it('that was never chosen is asked for, and looked into once it is', async () => {
    const { hangers, state } = start([])
    state.list = { ok: true, listing: null }
    await hangers.look()
    expect(hangers.state.value).toBe('none')
    await hangers.choose()
    expect(hangers.state.value).toBe('none')
    const chosen = start([fileOf('fern')], { chooseFolder: async () => ({ ok: true, folder: { name: 'Hangers' } }) })
    void chosen.hangers.choose()
    await settle()
    expect(chosen.hangers.files.value).toHaveLength(1)
  })

  it.each([['NOT_FOUND', /no longer there/], ['PERMISSION', /may not look/], ['OTHER', /E_DETAIL/]] as const)('that cannot be looked into is told of: %s', async (code, said) => {
    const { hangers, state } = start([fileOf('fern')])
    state.list = failure(code)
    await hangers.look()
    expect([hangers.state.value, hangers.files.value]).toEqual(['failed', []])
    expect(hangers.problem.value).toMatch(said)
  })

  it('that holds too many is told of', async () => {
    const { hangers, state } = start([])
    state.list = { ok: true, listing: { folder: { name: 'Hangers' }, files: [fileOf('fern')], isCut: true } }
    void hangers.look()
    await settle()
    expect(hangers.problem.value).toContain('than the 1 listed')
  })
})
