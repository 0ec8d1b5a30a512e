// As much of the test runner's interface as the core's tests use, synchronous and in this process.
import { Buffer } from 'node:buffer'
import { format } from 'node:util'

/**
 * The functions a test file imports, and what it registered through them.
 * @param {{ chai: object, expectations: object }} libraries chai, and the runner's own package of expectations
 */
export function testApi({ chai, expectations }) {
  const tests = []
  const names = []

  const within = (name, body) => {
    names.push(name)
    try { return body() } finally { names.pop() }
  }
  // What a test reaches is kept by its name, and cases may share one.
  const seen = new Map()
  const register = (title, body) => {
    const name = [...names, title].join(' > ')
    const times = (seen.get(name) ?? 0) + 1
    seen.set(name, times)
    tests.push({ name: times > 1 ? `${name} (${times})` : name, body })
  }

  /** Title of one case: `$name` and `$a.b` are fields of the case, `%s` and its like its values in turn. */
  const titled = (title, row, index) => {
    const values = Array.isArray(row) ? row : [row]
    const named = title.replace(/\$([A-Za-z_][\w.]*)/g, (whole, path) => {
      const found = path.split('.').reduce((value, key) => value?.[key], values[0])
      return found === undefined ? whole : String(found)
    })
    return format(named.replace(/%#/g, String(index)), ...values.slice(0, (named.match(/%[sdifjoO]/g) ?? []).length))
  }
  const each = (add) => (rows) => (title, body) => {
    rows.forEach((row, index) => add(titled(title, row, index), () => (Array.isArray(row) ? body(...row) : body(row))))
  }

  const test = Object.assign((name, options, body) => register(name, body ?? options), { each: each(register) })
  const describe = Object.assign(within, { each: each(within) })

  return { tests, api: { test, it: test, describe, expect: expectOf(chai, expectations) } }
}

let made

/** The runner's own expectations, so that a test says the same here. */
function expectOf(chai, { JestExtend, JestChaiExpect, JestAsymmetricMatchers, ...found }) {
  if (made !== undefined) return made
  globalThis.Buffer ??= Buffer
  for (const plugin of [JestExtend, JestChaiExpect, JestAsymmetricMatchers]) chai.use(plugin)
  const expect = (value, message) => chai.expect(value, message)
  Object.assign(expect, chai.expect, globalThis[found.ASYMMETRIC_MATCHERS_OBJECT], {
    unreachable: (message) => chai.assert.fail(message ?? 'reached what is never reached'),
  })
  return made = expect
}
