// A test runner for the mutation tool. The tests and the core in them are made one script, which is evaluated anew
// for each mutant: nothing kept by an earlier one is left, and it takes milliseconds where a test runner's process takes a second.
import { existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join, posix, relative, sep } from 'node:path'
import { pathToFileURL } from 'node:url'
import { Script } from 'node:vm'
import { PluginKind, commonTokens, declareClassPlugin } from '@stryker-mutator/api/plugin'
import { DryRunStatus, TestStatus, determineHitLimitReached, toMutantRunResult } from '@stryker-mutator/api/test-runner'
import { testApi } from './testApi.mjs'

/** Where the first run tells the others how long each file takes, so that quick ones come first. */
const TIMES = 'times-of-tests.json'
const SEPARATOR = ' :: '

const testsIn = (place) => (place.endsWith('.test.ts') ? [place] : readdirSync(place, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.test.ts')).map((name) => posix.join(place, name.split(sep).join('/'))).filter(atOnce))
/** Tests with a library that is only there after a while cannot be evaluated anew each time: the general minimiser, for one. */
const atOnce = (file) => {
  const text = readFileSync(file, 'utf8')
  return !/^(?:\S.*\b)?await\b/m.test(text) && [...text.matchAll(/from '(\.{1,2}\/(?!.*src\/).+)'/g)].every(([, path]) => {
    const beside = posix.join(posix.dirname(file), `${path}.ts`)
    return !existsSync(beside) || atOnce(beside)
  })
}

// The tool's own switches and counters are functions that are asked at every step: ten times as slow as these.
const SWITCH = /stryMutAct_9fa48[\w$]*\("(\d+)"\)/g
const COUNTER = /stryCov_9fa48[\w$]*\(((?:"\d+"(?:, )?)+)\)/g
const counted = (code) => code.replace(SWITCH, 'false').replace(COUNTER, (_, ids) => `(${ids.split(', ').map((id) => `hits[${id.slice(1, -1)}]++`).join(', ')})`)
const switched = (code) => code.replace(COUNTER, '0').replace(SWITCH, '(active === $1 && hit())')

/** The code of a function that gives the test files by name, each to be evaluated when it is asked for. */
async function codeOf(files) {
  const entry = join(process.cwd(), 'all-tests.js')
  writeFileSync(entry, `export const files = { ${files.map((file) => `${JSON.stringify(file)}: () => require(${JSON.stringify(`./${file}`)})`).join(',\n')} }`)
  const { build } = await import(pathToFileURL(createRequire(entry).resolve('vite')).href)
  const { output } = await build({
    root: process.cwd(), configFile: false, logLevel: 'error',
    build: {
      write: false, minify: false, target: 'node20', ssr: entry,
      rolldownOptions: { external: [/^vitest$/], output: { format: 'cjs', codeSplitting: false } },
    },
  })
  return output[0].code
}

const scriptOf = (code) => new Script(`(require, exports, module, active, hit, hits) => {\n${code}\nmodule.activate = (mutant) => { active = mutant }\n}`, { filename: 'all-tests.cjs' })

/** Tests that reckon nothing while they are loaded, and may be run again for another mutant in the code as it has become fast. */
const runsAgain = (file) => file.includes('/kept/')

class InProcessRunner {
  static inject = [commonTokens.options]

  constructor(options) {
    this.folders = options.testFolders
    this.slowest = options.slowestTests
    this.required = new Map()
    /** By mutated file, how many changes of it each file of tests noticed. */
    this.noticed = new Map()
  }

  capabilities() { return { reloadEnvironment: true } }

  async init() {
    this.files = this.folders.flatMap(testsIn)
    this.code = await codeOf(this.files)
    this.script = scriptOf(switched(this.code))
    const require = createRequire(join(process.cwd(), 'package.json'))
    const ofRunner = createRequire(require.resolve('vitest/package.json'))
    const load = async (name) => import(pathToFileURL(ofRunner.resolve(name)).href)
    this.libraries = { chai: await load('chai'), expectations: await load('@vitest/expect') }
    this.require = (name) => {
      if (!this.required.has(name)) this.required.set(name, require(name))
      return this.required.get(name)
    }
  }

  /** Evaluates the script, then the file in it: its tests, or the error of a file that cannot even be loaded. */
  collect(fresh, file) {
    fresh.current = testApi(this.libraries)
    try {
      fresh.files[file]()
      return fresh.current.tests
    } catch (error) {
      return [{ name: 'loads', body: () => { throw error } }]
    }
  }

  /** The core and its tests as if just loaded, with one change made in it or none. */
  evaluate(script, active, hit, hits) {
    const fresh = { current: null }
    const module = { exports: {} }
    const api = { test: (...a) => fresh.current.api.test(...a), describe: (...a) => fresh.current.api.describe(...a) }
    api.test.each = (rows) => fresh.current.api.test.each(rows)
    api.describe.each = (rows) => fresh.current.api.describe.each(rows)
    api.it = api.test
    api.expect = testApi(this.libraries).api.expect
    script.runInThisContext()((name) => (name === 'vitest' ? api : this.require(name)), module.exports, module, active, hit, hits)
    fresh.files = module.exports.files
    fresh.activate = module.activate
    return fresh
  }

  run(file, { name, body }) {
    const began = performance.now()
    const result = { id: file + SEPARATOR + name, name: `${file} ${name}`, fileName: file }
    try {
      body()
      return { ...result, status: TestStatus.Success, timeSpentMs: performance.now() - began }
    } catch (error) {
      return { ...result, status: TestStatus.Failed, timeSpentMs: performance.now() - began, failureMessage: String(error?.message ?? error) }
    }
  }

  async dryRun() {
    const perTest = {}
    const tests = []
    const times = {}
    const script = scriptOf(counted(this.code))
    const most = Math.max(...[...this.code.matchAll(SWITCH)].map(([, id]) => Number(id)))
    const hits = new Float64Array(most + 1)
    const took = (work) => {
      hits.fill(0)
      const value = work()
      return { value, hit: hits.slice() }
    }
    for (const file of this.files) {
      const began = performance.now()
      // What a file asks of the core while it is loaded counts for each of its tests.
      const loaded = took(() => this.collect(this.evaluate(script, -1, null, hits), file))
      const ran = loaded.value.map((test) => took(() => this.run(file, test)))
      times[file] = performance.now() - began
      if (times[file] > this.slowest && !runsAgain(file)) continue
      for (const { value, hit } of ran) {
        tests.push(value)
        const both = hit.map((count, id) => count + loaded.hit[id])
        perTest[value.id] = Object.fromEntries([...both.entries()].filter(([, count]) => count > 0))
      }
    }
    writeFileSync(TIMES, JSON.stringify(times))
    return { status: DryRunStatus.Complete, tests, mutantCoverage: { static: {}, perTest } }
  }

  /** The tests that noticed most changes of this file so far, those beside it, then the quick ones. */
  order(files, mutated) {
    const times = existsSync(TIMES) ? JSON.parse(readFileSync(TIMES, 'utf8')) : {}
    const stem = relative(join(process.cwd(), 'src'), mutated).split(sep).join('/').replace(/\.ts$/, '')
    const noticed = this.noticed.get(mutated) ?? {}
    const rank = (file) => (file === `tests/unit/${stem}.test.ts` ? -0.5 : times[file] ?? 0) - 1e6 * (noticed[file] ?? 0)
    return [...files].sort((a, b) => rank(a) - rank(b))
  }

  remember(mutated, file) {
    const noticed = this.noticed.get(mutated) ?? {}
    this.noticed.set(mutated, { ...noticed, [file]: (noticed[file] ?? 0) + 1 })
  }

  /** The first of the tests that may be run again to fail, in one evaluation that serves all mutants; what an earlier one left may be to blame. */
  firstToFail(wanted, mutant, hit) {
    this.count = hit
    if (!this.again) {
      this.again = this.evaluate(this.script, -1, () => this.count(), null)
      this.againTests = this.files.filter(runsAgain).flatMap((file) => this.collect(this.again, file).map((test) => ({ file, test })))
    }
    this.again.activate(mutant)
    const failing = this.againTests.find(({ file, test }) => (!wanted || wanted.has(file + SEPARATOR + test.name)) && this.run(file, test).status === TestStatus.Failed)
    this.again.activate(-1)
    return failing && failing.file + SEPARATOR + failing.test.name
  }

  async mutantRun({ testFilter, hitLimit, activeMutant, sandboxFileName }) {
    // The tool allows a hundred times what was counted, which takes minutes where a search goes on without end.
    const most = Math.ceil(hitLimit / 10)
    let hitCount = 0
    const hit = () => {
      if (++hitCount > most) throw new Error('Without end')
      return true
    }
    const wanted = testFilter && new Set(testFilter)
    const mutant = Number(activeMutant.id)
    const suspect = this.firstToFail(wanted, mutant, hit)
    const reached = hitCount > 0
    // A failure counts only where everything is evaluated anew.
    if (suspect) {
      const { tests } = this.runAnew(new Set([suspect]), mutant, hit, sandboxFileName)
      if (tests.some(({ status }) => status === TestStatus.Failed)) return toMutantRunResult({ status: DryRunStatus.Complete, tests })
    }
    hitCount = 0
    const asked = wanted ?? new Set(this.files)
    const passed = reached && !suspect && !activeMutant.static
    const rest = passed ? new Set([...asked].filter((id) => !runsAgain(id))) : asked
    const { tests } = this.runAnew(rest, mutant, hit, sandboxFileName)
    return toMutantRunResult(determineHitLimitReached(hitCount, most) ?? { status: DryRunStatus.Complete, tests })
  }

  /** Runs tests by their ids, or all of a file by its name, evaluated anew, up to the first that fails. */
  runAnew(ids, mutant, hit, mutated) {
    const files = new Set([...ids].map((id) => id.split(SEPARATOR)[0]))
    const tests = []
    const fresh = this.evaluate(this.script, mutant, hit, null)
    for (const file of this.order(files, mutated)) {
      const collected = this.collect(fresh, file)
      for (const test of collected) {
        const loads = test.name === 'loads' && collected.length === 1
        if (!loads && !ids.has(file) && !ids.has(file + SEPARATOR + test.name)) continue
        tests.push(this.run(file, test))
        if (tests.at(-1).status === TestStatus.Failed) {
          this.remember(mutated, file)
          return { tests }
        }
      }
    }
    return { tests }
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'in-process', InProcessRunner)]
