import { shallowRef } from 'vue'
import { describe, expect, it } from 'vitest'
import { DEMOS, EMPTY_DOCUMENT, parseDocument, patchDocument, writeDocument, type HangerDocument, type VariantOutcome } from '#core'
import { createCompare } from '../../../../renderer/compare/compareStore'
import type { Ended, StartJob } from '../../../../renderer/jobs/startJob'
import { QUIET_PLATFORM } from '../stores/quietPlatform'

const named = (name: string, rim: string): HangerDocument => ({ ...patchDocument(EMPTY_DOCUMENT, { 'pot.rim': rim }), name })
const MINE = named('Mine', '20 cm')
const BEFORE = named('Mine', '18 cm')

/** A worker that cannot read anything, but answers: what is asked is what matters here. */
function setUp(text: string | null = null) {
  const document = shallowRef(MINE)
  const asked: (readonly HangerDocument[])[] = []
  const unread: VariantOutcome = { ok: false, problems: [] }
  const start = ((_name: string, documents: readonly HangerDocument[], onSteps: (steps: readonly VariantOutcome[]) => void) => {
    asked.push(documents)
    onSteps(documents.map(() => unread))
    return { ended: Promise.resolve<Ended<unknown>>({ how: 'answered', answer: undefined }), callOff: () => undefined }
  }) as unknown as StartJob
  const platform = { ...QUIET_PLATFORM, openHanger: () => Promise.resolve({ ok: true as const, hanger: text === null ? null : { token: 'x', name: 'other.strandwise', text } }) }
  const compare = createCompare(platform, start, {
    atHand: () => ({ document: document.value, saved: BEFORE, asOpened: BEFORE, before: null, remedies: [], tried: [] }),
    fileName: () => 'mine.strandwise',
    replace: (next) => { document.value = next },
  })
  return { compare, document, asked }
}

describe('what a hanger is compared with', () => {
  it('is kept aside as it is now, and stays so when the hanger changes', async () => {
    const { compare, document, asked } = setUp()
    compare.keep()
    document.value = named('Mine', '24 cm')
    compare.look()
    await Promise.resolve()
    expect(asked.at(-1)?.map(({ typed }) => typed['pot.rim'])).toEqual(['24 cm', '20 cm'])
  })

  it('as it was last saved is offered while it differs, and not twice where it was opened so', () => {
    const { compare, document } = setUp()
    expect(compare.own.value.map(({ key }) => key)).toEqual(['saved'])
    document.value = BEFORE
    expect(compare.own.value).toEqual([])
  })

  it('is any file, which changes nothing of the one worked on; one that cannot be read is told, and the last stays', async () => {
    const { compare, document, asked } = setUp(writeDocument(named('Other', '12 cm')))
    await compare.openFile()
    expect([compare.other.value?.what, document.value]).toEqual(['file: other.strandwise', MINE])
    expect(asked.at(-1)?.[1]?.typed['pot.rim']).toBe('12 cm')
    const broken = setUp('{')
    await broken.compare.choose('saved')
    await broken.compare.openFile()
    expect(broken.compare.said.value?.isProblem).toBe(true)
    expect(broken.compare.other.value?.key).toBe('saved')
  })

  it('is a demo', async () => {
    const { compare } = setUp()
    const [demo] = DEMOS
    const parsed = parseDocument(demo?.text ?? '')
    await compare.choose(`demo.${demo?.file}`)
    expect(compare.other.value?.document).toEqual(parsed.ok ? parsed.document : null)
  })
})

describe('the other one', () => {
  it('becomes the one worked on; the first is kept, each stays where it stood, and what saving would do is told', async () => {
    const { compare, document } = setUp()
    await compare.choose('saved')
    compare.workOnOther()
    expect([document.value, compare.other.value?.document, compare.isSwapped.value]).toEqual([BEFORE, MINE, true])
    expect(compare.own.value.find(({ key }) => key === 'kept')?.document).toBe(MINE)
    expect(compare.said.value?.text).toContain('mine.strandwise')
    compare.workOnOther()
    expect([document.value, compare.isSwapped.value]).toEqual([MINE, false])
  })
})
