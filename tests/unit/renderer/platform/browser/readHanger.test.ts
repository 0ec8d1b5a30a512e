import { expect, test } from 'vitest'
import { HANGER_BYTES_LIMIT, HANGER_EXTENSION } from '../../../../../electron/contract'
import { BYTES_LIMIT, EXTENSION } from '../../../../../renderer/platform/browser/fileKind'
import { readHanger } from '../../../../../renderer/platform/browser/readHanger'

test('both editions read the same files', () => {
  expect([BYTES_LIMIT, EXTENSION]).toEqual([HANGER_BYTES_LIMIT, HANGER_EXTENSION])
})

test('reads UTF-8 text, without a byte order mark', async () => {
  expect(await readHanger(new Blob(['\ufeff{"größer": "½"}']))).toEqual({ ok: true, text: '{"größer": "½"}' })
})

test('refuses other bytes, and too many', async () => {
  expect(await readHanger(new Blob([new Uint8Array([0x7b, 0xff])]))).toMatchObject({ ok: false, problem: { code: 'NOT_TEXT' } })
  expect(await readHanger(new Blob(['x'.repeat(BYTES_LIMIT)]))).toMatchObject({ ok: true })
  expect(await readHanger(new Blob(['x'.repeat(BYTES_LIMIT + 1)]))).toMatchObject({ ok: false, problem: { code: 'TOO_LARGE' } })
})

test('says what kept it from reading', async () => {
  const blob = { size: 1, arrayBuffer: () => Promise.reject(new DOMException('moved', 'NotFoundError')) } as unknown as Blob
  expect(await readHanger(blob)).toEqual({ ok: false, problem: { code: 'NOT_FOUND', detail: 'NotFoundError: moved' } })
})
