// Mutation testing of the core: each deciding line is changed, one change at a time, and the tests must notice.
// `npm run mutants -- src/statics src/load` (a folder or file each; `--tests tests/unit/check` names where the tests are looked for, or a file of them,
// else those of the three deciding folders; `--slowest 500` leaves out files of tests that take longer, ms; `--without
// ObjectLiteral,ArrayDeclaration` leaves out kinds of changes by the tool's names; `--report FILE` keeps the tool's own report, and
// `--again FILE` changes once more only what that report has unnoticed; `--workers N`). The report ends with every change that no test noticed.
import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { runNode } from '../../electron/launch/run.mjs'

const here = import.meta.dirname
const root = join(here, '../..')
const DECIDING = ['src/statics', 'src/load', 'src/check']
const TESTS = ['statics', 'load', 'check'].flatMap((name) => [`tests/unit/${name}`, `tests/reference/${name}`])

const { values, positionals } = parseArgs({ allowPositionals: true, options: { tests: { type: 'string', multiple: true }, workers: { type: 'string', default: '2' }, slowest: { type: 'string', default: '60000' }, without: { type: 'string', default: '' }, report: { type: 'string' }, again: { type: 'string' } } })
const UNNOTICED = new Set(['Survived', 'NoCoverage'])
// Its columns count from 0, those of its report from 1.
const unnoticedIn = (report) => Object.entries(JSON.parse(readFileSync(report, 'utf8')).files).flatMap(([file, { mutants }]) =>
  [...new Set(mutants.filter(({ status }) => UNNOTICED.has(status)).map(({ location: { start, end } }) => `${file}:${start.line}:${start.column - 1}-${end.line}:${end.column - 1}`))])
const mutated = values.again ? unnoticedIn(values.again) : (positionals.length ? positionals : DECIDING).map((path) => (/\.ts(:|$)/.test(path) ? path : `${path}/**/*.ts`))

const scratch = mkdtempSync(join(tmpdir(), 'strandwise-mutants-'))
const project = join(scratch, 'project')
const report = values.report ?? join(scratch, 'report.json')

try {
  const tools = join(scratch, 'tools')
  mkdirSync(tools)
  for (const name of ['package.json', 'package-lock.json', '.npmrc', 'runner.mjs', 'testApi.mjs']) cpSync(join(here, name), join(tools, name))
  const set = spawnSync('npm', ['ci'], { cwd: tools, encoding: 'utf8', shell: process.platform === 'win32' })
  if (set.status !== 0) throw new Error(`Its packages could not be installed: ${set.stderr}`)

  for (const name of ['src', 'tests/unit', 'tests/reference', 'package.json']) cpSync(join(root, name), join(project, name), { recursive: true })
  writeFileSync(join(project, 'tsconfig.json'), '{ "files": [] }')
  symlinkSync(join(root, 'node_modules'), join(project, 'node_modules'), 'junction')
  writeFileSync(join(project, 'stryker.config.json'), JSON.stringify({
    testRunner: 'in-process', plugins: [join(tools, 'runner.mjs')], testFolders: values.tests ?? TESTS, slowestTests: Number(values.slowest),
    mutate: [...mutated, '!src/**/*.d.ts'],
    coverageAnalysis: 'perTest', concurrency: Number(values.workers), dryRunTimeoutMinutes: 60, timeoutMS: 60_000, timeoutFactor: 1, checkers: [],
    // What a part is called, and what an error of a programmer says, decides nothing.
    mutator: { excludedMutations: ['StringLiteral', ...values.without.split(',').filter(Boolean)] },
    reporters: ['json', 'progress-append-only'], jsonReporter: { fileName: report },
    warnings: { slow: false, unknownOptions: false }, disableTypeChecks: false, tsconfigFile: 'none.json', allowConsoleColors: false,
  }))
  const { code } = await runNode(join(tools, 'node_modules/@stryker-mutator/core/bin/stryker.js'), ['run'], { cwd: project, stdio: 'inherit' })
  if (code !== 0) throw new Error(`The mutation tool ended with ${code}.`)
  tell(JSON.parse(readFileSync(report, 'utf8')))
} catch (error) {
  console.error(error.message)
  process.exitCode = 1
} finally {
  rmSync(scratch, { recursive: true, force: true })
}

function tell({ files }) {
  const counts = {}
  for (const [file, { source, mutants }] of Object.entries(files).sort(([a], [b]) => a.localeCompare(b))) {
    const lines = source.split('\n')
    for (const { status, location: { start, end }, replacement } of mutants) {
      counts[status] = (counts[status] ?? 0) + 1
      if (!UNNOTICED.has(status)) continue
      const was = start.line === end.line ? lines[start.line - 1].slice(start.column - 1, end.column - 1) : `${lines[start.line - 1].slice(start.column - 1)} …`
      console.log(`${file}:${start.line}:${start.column} ${status}: ${was.trim()} → ${(replacement ?? '').replace(/\s+/g, ' ').slice(0, 120)}`)
    }
  }
  const judged = ['Killed', 'Timeout', 'Survived', 'NoCoverage'].reduce((total, status) => total + (counts[status] ?? 0), 0)
  const noticed = (counts.Killed ?? 0) + (counts.Timeout ?? 0)
  console.log(Object.entries(counts).map(([status, count]) => `${status} ${count}`).join(', '))
  console.log(`${noticed} of ${judged} changes noticed (${(100 * noticed / judged).toFixed(1)} %)`)
}
