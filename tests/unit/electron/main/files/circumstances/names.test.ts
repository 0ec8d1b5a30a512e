import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { createHangerFiles } from '../../../../../../electron/main/files/hangerFiles'
import { createHangerFolder } from '../../../../../../electron/main/files/hangerFolder'
import { temporaryFolder } from '../../temporaryFolder'

const folder = temporaryFolder()
const KEEP = { overwrite: false }

/** By what is odd about each. */
const ODD: Readonly<Record<string, string>> = {
  composed: 'Farn über Brüstung'.normalize('NFC'),
  decomposed: 'Farn über Brüstung'.normalize('NFD'),
  'from right to left': 'سرخس\u200F فوق النافذة',
  emoji: '👩🏽‍🌾🪴',
  'beyond the first plane': '𝒻𝑒𝓇𝓃 𠮷',
  'spaces and dots at the end': 'fern . . ',
  'like a device': 'con',
  'like a switch': '--fern',
  'like a backup': 'fern~',
  'signs of shells': 'fern $(rm) "it\'s" \\ % `x` *?',
  'a line break': 'fern\nkitchen',
}

describe.runIf(process.platform === 'linux')('names of all kinds', () => {
  test('each is a file of its own: saved, saved again with what it held before, listed, opened and named as it is', async () => {
    const files = createHangerFiles()
    for (const [what, stem] of Object.entries(ODD)) {
      const name = `${stem}.strandwise`
      const saved = await files.saveAs(folder.file(name), `1 ${what}`)
      expect(saved, what).toMatchObject({ ok: true, saved: { name } })
      if (saved.ok) expect(await files.save(saved.saved.token, `2 ${what}`, KEEP), what).toEqual({ ok: true })
    }
    for (const [what, stem] of Object.entries(ODD)) {
      expect(readFileSync(folder.file(`${stem}.strandwise~`), 'utf8')).toBe(`1 ${what}`)
      expect(await files.open(folder.file(`${stem}.strandwise`))).toMatchObject({ ok: true, hanger: { name: `${stem}.strandwise`, text: `2 ${what}` } })
    }
    expect(readdirSync(folder.path)).toHaveLength(2 * Object.keys(ODD).length)
    const place = createHangerFolder(folder.file('folder.json'), files)
    place.choose(folder.path)
    const listed = await place.list()
    expect(listed.ok && listed.listing?.files.map(({ name }) => name).sort()).toEqual(Object.values(ODD).map((stem) => `${stem}.strandwise`).sort())
  })

  test('the longest name there can be is saved and opened; where that of the backup would be too long, saving again says so and loses nothing', async () => {
    const files = createHangerFiles()
    const longest = `${'ü'.repeat(122)}.strandwise` // 255 bytes
    const saved = await files.saveAs(folder.file(longest), 'first')
    expect(saved).toMatchObject({ ok: true })
    if (saved.ok) expect(await files.save(saved.saved.token, 'second', KEEP)).toMatchObject({ ok: false, problem: { code: 'TOO_LONG' } })
    expect([readFileSync(folder.file(longest), 'utf8'), readdirSync(folder.path)]).toEqual(['first', [longest]])
    expect(await files.saveAs(folder.file(`${'ü'.repeat(123)}.strandwise`), 'x')).toMatchObject({ ok: false, problem: { code: 'TOO_LONG' } })
    expect(await files.open(folder.file('n'.repeat(256)))).toMatchObject({ ok: false, problem: { code: 'TOO_LONG' } })
  })

  test('a path beyond what the system takes is told, for saving and for opening, without the path', async () => {
    const files = createHangerFiles()
    const far = folder.file(`${'pots/'.repeat(1000)}fern.strandwise`)
    for (const outcome of [await files.saveAs(far, 'x'), await files.open(far)]) {
      expect(outcome).toMatchObject({ ok: false, problem: { code: 'TOO_LONG' } })
      expect(JSON.stringify(outcome)).not.toContain('pots')
    }
    const odd = await files.saveAs(folder.file('fern\0.strandwise'), 'x')
    expect(odd).toMatchObject({ ok: false, problem: { code: 'BAD_NAME' } })
    expect(JSON.stringify(odd)).not.toContain(folder.path)
    expect(readdirSync(folder.path)).toEqual([])
  })
})
