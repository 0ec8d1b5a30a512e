import { spawnSync } from 'node:child_process'
import { closeSync, mkdtempSync, openSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { expect, test } from 'playwright/test'

const root = resolve(import.meta.dirname, '../..')
const demo = join(root, 'src/hanger/demos/fern-over-the-sideboard.strandwise')

/** The built command line, its answer going to what `open` opens. */
function run(args: readonly string[], path: string, limit = 'true') {
  const fd = openSync(path, 'w')
  const { status, stderr } = spawnSync('sh', ['-c', `${limit}; exec "$@"`, 'sh', process.execPath, join(root, 'out/main/cli.js'), ...args], { stdio: ['ignore', fd, 'pipe'], encoding: 'utf8' })
  closeSync(fd)
  return { status, stderr }
}

test('the terminal: an answer that does not get to its end is told and ends with 2, one that does is whole', () => {
  test.skip(process.platform !== 'linux', 'no disk that is always full')
  const folder = mkdtempSync(join(tmpdir(), 'strandwise-cli-'))
  const table = join(folder, 'table.csv')
  writeFileSync(table, 'name,pot.rim\nFern,17 cm\n')
  const NOT_WHOLE = 'The answer could not be written to its end: no room is left on that disk. What stands there is not whole.\n'
  for (const args of [['check', demo], ['batch', table], ['choose', demo, 'strands'], ['schema']]) {
    const { status, stderr } = run(args, '/dev/full')
    expect([status, stderr], args[0]).toEqual([2, NOT_WHOLE])
  }

  // A limit on the size of files takes the first part, as a disk that fills does.
  const sheet = join(folder, 'sheet.html')
  const cut = run(['sheet', demo, '--kind', 'customer'], sheet, 'trap "" XFSZ; ulimit -f 64')
  expect(cut.status).toBe(2)
  expect(cut.stderr).toContain('The answer could not be written to its end: the file would be larger than is allowed.')
  expect(readFileSync(sheet, 'utf8')).not.toContain('</html>')
  expect(run(['sheet', demo, '--kind', 'customer'], sheet).status).toBe(0)
  expect(readFileSync(sheet, 'utf8').trimEnd()).toMatch(/<\/html>$/)
  rmSync(folder, { recursive: true })
})
