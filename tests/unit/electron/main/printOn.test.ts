import { describe, expect, test } from 'vitest'
import { printOn } from '../../../../electron/main/printOn'

type Print = Parameters<typeof printOn>[0]['print']
const printer = (printed: boolean, reason: string) => {
  const asked: unknown[] = []
  const print: Print = (options, done) => {
    asked.push(options?.pageSize)
    done?.(printed, reason)
  }
  return { asked, contents: { print } }
}

test('a sheet goes to the printer on its own paper, the page on what the printer has', async () => {
  const { asked, contents } = printer(true, '')
  for (const paper of ['usual', 'a4', 'letter', 'a5', 'halfLetter'] as const) expect(await printOn(contents, paper)).toEqual({ ok: true })
  // Half of a letter is 5½ by 8½ inches.
  expect(asked).toEqual([undefined, 'A4', 'Letter', 'A5', { width: 5.5 * 25_400, height: 8.5 * 25_400 }])
})

describe('a print that did not come about', () => {
  test('because the user thought better of it is no failure', async () => {
    expect(await printOn(printer(false, 'Print job canceled').contents, 'a4')).toEqual({ ok: true })
  })
  test.each([['no valid printers available', 'NO_PRINTER'], ['Print job failed', 'OTHER']])('%s: %s', async (reason, code) => {
    expect(await printOn(printer(false, reason).contents, 'a4')).toEqual({ ok: false, problem: { code, detail: reason } })
  })
  test('because the system threw is an answer too', async () => {
    const print: Print = () => { throw new Error('spooler gone') }
    expect(await printOn({ print }, 'letter')).toEqual({ ok: false, problem: { code: 'OTHER', detail: 'spooler gone' } })
  })
})
