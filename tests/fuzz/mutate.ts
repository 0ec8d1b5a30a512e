import type { Chance } from './chance'

/** Texts that readers of numbers, units, JSON and tables have stumbled over. */
export const NASTY_TEXTS = [
  '', ' ', '0', '-0', '-1', '1e308', '1e-320', '1e999', '-1e999', 'NaN', 'Infinity', '-Infinity mm', '0x10', '1_000', '١٢ mm', '１２ｍｍ', '½ in', '1/0 in', '0/0', '1//2 in', '3 mm mm', '3 furlongs', '12,5,5 kg', '1.2.3', "5' 6\" 7'",
  '1e5 mm', '.5 m', '5. m', '+-3 mm', '2^10 mm', '9'.repeat(400), `0.${'0'.repeat(400)}1 m`, `${'9'.repeat(40)}/${'7'.repeat(40)} in`, '((((1))))', '1+'.repeat(200) + '1', 'yes', 'no', 'true', 'null', 'undefined', '__proto__', 'constructor', 'toString',
  '\u0000', '\uFEFF3 mm', '\u202E3 mm', '\uD800', '👩‍🌾', 'a\u0301'.repeat(50), '=1+1', '@SUM(A1)', '"', '\\', '\n', '\r\n', ';', ',', '\t', '2026-02-30', '9999-99-99', '-271821-04-21', '2026-11-26T99:99',
] as const

const NASTY_VALUES: readonly unknown[] = [null, true, false, 0, -0, 1e308, -1, 0.1, [], {}, [[]], [null], { a: {} }, '']

const NASTY_KEYS = ['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', '', ' ', '0', 'typed', 'extra', 'format', 'version'] as const

type Json = null | boolean | number | string | Json[] | { [key: string]: Json }

const isObject = (json: Json): json is { [key: string]: Json } => typeof json === 'object' && json !== null && !Array.isArray(json)

/** Places deeper than this are left alone. */
const DEEPEST = 12

/** The places of a JSON value that can be replaced. */
function placesOf(json: Json, depth = 0): readonly { readonly at: { [key: string]: Json } | Json[], readonly key: string }[] {
  if (typeof json !== 'object' || json === null || depth > DEEPEST) return []
  return Object.keys(json).flatMap((key) => [{ at: json, key }, ...placesOf((json as { [key: string]: Json })[key] ?? null, depth + 1)])
}

/** An own key whatever its name: `__proto__` set plainly would not be one. */
const put = (at: object, key: string, value: unknown): void => { Object.defineProperty(at, key, { value, enumerable: true, configurable: true, writable: true }) }

function deep(depth: number): Json {
  let json: Json = 1
  for (let i = 0; i < depth; i++) json = i % 2 === 0 ? [json] : { a: json }
  return json
}

/** A text changed in a few characters. */
export function mutatedText(text: string, chance: Chance, words: readonly string[]): string {
  let now = text
  for (let times = chance.whole(1, 3); times > 0; times--) {
    const at = chance.whole(0, now.length)
    const end = Math.min(now.length, at + chance.whole(0, 12))
    const insert = chance.oneOf([
      () => '',
      () => String.fromCodePoint(chance.whole(0, 0xD7FF)),
      () => String.fromCharCode(chance.whole(32, 126)),
      () => now.slice(at, end).repeat(chance.whole(2, 5)),
      () => chance.oneOf(NASTY_TEXTS),
      () => chance.oneOf(words),
    ])()
    now = now.slice(0, at) + insert + now.slice(chance.maybe(50) ? end : at)
  }
  return now
}

/** A JSON value with one or a few of its places replaced, taken away, renamed or doubled. */
export function mutatedJson(source: string, chance: Chance, words: readonly string[]): string {
  const json = JSON.parse(source) as Json
  for (let times = chance.whole(1, 3); times > 0; times--) {
    const places = placesOf(json)
    if (places.length === 0) break
    const { at, key } = chance.oneOf(places)
    const old = (at as { [key: string]: Json })[key] ?? null
    chance.oneOf([
      () => { put(at, key, typeof old === 'string' ? mutatedText(old, chance, words) : structuredClone(chance.oneOf(NASTY_VALUES))) },
      () => { put(at, key, chance.oneOf(NASTY_TEXTS)) },
      () => { put(at, key, chance.oneOf(words)) },
      () => { put(at, key, structuredClone(chance.oneOf(NASTY_VALUES))) },
      () => { put(at, key, deep(chance.whole(1, 40))) },
      () => { if (isObject(at)) Reflect.deleteProperty(at, key) },
      () => { if (isObject(at)) put(at, chance.oneOf(NASTY_KEYS), old) },
      () => { if (isObject(at)) put(at, chance.oneOf(words), old) },
      // Not what holds it itself, by way of which it would have no end.
      () => { put(at, key, Array.from({ length: chance.whole(0, 30) }, () => structuredClone(old))) },
    ])()
  }
  return JSON.stringify(json)
}

/** Either kind: a file whose letters were jumbled is mostly refused at once, one whose values were seldom. */
export const mutated = (source: string, chance: Chance, words: readonly string[]): string => {
  const changed = chance.maybe(80) ? mutatedJson(source, chance, words) : source
  return chance.maybe(25) ? mutatedText(changed, chance, words) : changed
}
