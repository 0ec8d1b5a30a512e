/**
 * Turns values into JSON text and back. Runs in Node and, by its source text, in both worlds of a page.
 * What is not JSON's, undefined or a function is refused in Electron's words. Functions are kept in
 * `functions`, which is null where none may pass, and come out as whatever `proxyFor(index)` makes.
 */
export function createCodec(functions, proxyFor) {
  const refuse = () => { throw new Error('An object could not be cloned.') }
  const wrap = (value) => {
    if (value === undefined) return { kind: 'undefined' }
    if (typeof value === 'function') {
      if (!functions) refuse()
      return { kind: 'function', value: functions.push(value) - 1 }
    }
    if (Array.isArray(value)) return { kind: 'array', value: value.map(wrap) }
    if (value !== null && typeof value === 'object') {
      if (![Object.prototype, null].includes(Object.getPrototypeOf(value))) refuse()
      return { kind: 'object', value: Object.entries(value).map(([key, member]) => [key, wrap(member)]) }
    }
    if (typeof value === 'number' && !Number.isFinite(value)) return { kind: 'number', value: String(value) }
    if (typeof value === 'bigint' || typeof value === 'symbol') refuse()
    return { kind: 'plain', value }
  }
  const unwrap = ({ kind, value }) => {
    if (kind === 'function') return proxyFor(value)
    if (kind === 'array') return value.map(unwrap)
    if (kind === 'object') return Object.fromEntries(value.map(([key, member]) => [key, unwrap(member)]))
    return kind === 'number' ? Number(value) : value
  }
  return {
    encode: (value) => {
      // A Proxy, such as a framework's reactive object, looks plain and yet cannot be cloned.
      if (typeof value === 'object') structuredClone(value)
      return JSON.stringify(wrap(value))
    },
    /** For an object of functions. */
    encodeInterface: (value) => JSON.stringify(wrap(value)),
    decode: (text) => unwrap(JSON.parse(text)),
  }
}
