import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { expect, test } from 'vitest'
import type { SheetQuestion, SheetReply } from '../../../../renderer/sheets/messages'
import { serveSheets } from '../../../../renderer/sheets/serveSheets'
import { USUAL_HABITS } from '../../../../src/words/writing'

const flat = readFileSync(resolve(import.meta.dirname, '../../../../src/hanger/demos/order-for-a-rented-flat.strandwise'), 'utf8')
const asked = (text: string, revision: number): SheetQuestion => ({
  kind: 'sheet', revision, source: { text }, sheet: 'tag', options: { format: 'a5', today: '2026-11-26', draft: false }, habits: USUAL_HABITS,
})
function serve(...questions: readonly SheetQuestion[]): readonly SheetReply[] {
  const replies: SheetReply[] = []
  questions.forEach(serveSheets((reply) => { replies.push(reply) }))
  return replies
}

test('a hanger file becomes a sheet, and one that is none gets the reason', () => {
  const [sheet, unread, unknown] = serve(asked(flat, 4), asked('{"format"', 5), asked('{"format":"strandwise-hanger","version":1,"name":"Bare"}', 6))
  expect(sheet).toMatchObject({ kind: 'sheet', revision: 4, outcome: { ok: true, isOnlyDraft: false, sheet: { kind: 'tag', format: 'a5' } } })
  expect(unread).toMatchObject({ revision: 5, outcome: { ok: false, problem: expect.stringContaining('cannot be read as JSON') as string } })
  expect(unknown).toMatchObject({ revision: 6, outcome: { ok: true, isOnlyDraft: true, sheet: { kind: 'notKnown' } } })
})

test('what breaks is told, and the next question is answered', () => {
  const [failed, unread] = serve({ ...asked(flat, 7), sheet: 'poster' as 'tag' }, asked('', 8))
  expect(failed).toMatchObject({ kind: 'sheetFailed', revision: 7 })
  expect(unread).toMatchObject({ kind: 'sheet', revision: 8, outcome: { ok: false } })
})
