import { STANDARD_GRAVITY } from '../quantity/si'
import type { Contact, SlingInput, Vec3 } from '../statics/sling/result'

export type SlingInputOutcome = { readonly ok: true; readonly input: SlingInput } | { readonly ok: false; readonly why: string }

const isRecord = (x: unknown): x is Record<string, unknown> => typeof x === 'object' && x !== null && !Array.isArray(x)
const list = (x: unknown): readonly unknown[] => (Array.isArray(x) ? x : [])

// What is missing or no number goes on as NaN: the solver's answer to it is NOT_FINITE.
const number = (x: unknown): number => (typeof x === 'number' ? x : NaN)
const vector = (x: unknown): Vec3 => {
  const given = list(x)
  return [number(given[0]), number(given[1]), given.length > 3 ? NaN : number(given[2])]
}

function contact(x: unknown): Contact {
  if (!isRecord(x)) return { type: 'circle', z: NaN, r: NaN }
  return x['type'] === 'corner' ? { type: 'corner', at: vector(x['at']) } : { type: 'circle', z: number(x['z']), r: number(x['r']) }
}

/** Reads one sling as JSON: points in m, EA in N, mass in kg, ell in m; standard gravity. */
export function readSlingInput(text: string): SlingInputOutcome {
  let json: unknown
  try {
    json = JSON.parse(text)
  } catch (error) {
    return { ok: false, why: `the sling cannot be read as JSON (${error instanceof Error ? error.message : 'unreadable'}).` }
  }
  if (!isRecord(json)) return { ok: false, why: 'a sling is a JSON object with A, B, L0, EA, mass, cg and ell.' }
  const lists = { A: list(json['A']), B: list(json['B']), L0: list(json['L0']), EA: list(json['EA']) }
  const legs = Math.max(...Object.values(lists).map((l) => l.length))
  const each = <T>(of: readonly unknown[], read: (x: unknown) => T): readonly T[] => Array.from({ length: legs }, (_, i) => read(of[i]))
  const wall = json['wall']
  return {
    ok: true,
    input: {
      A: each(lists.A, vector),
      B: each(lists.B, vector),
      L0: each(lists.L0, number),
      EA: each(lists.EA, number),
      mass: number(json['mass']),
      cg: vector(json['cg']),
      ell: number(json['ell']),
      gravity: STANDARD_GRAVITY,
      wall: isRecord(wall)
        ? { n: vector(wall['n']), d: number(wall['d']), contacts: list(wall['contacts']).map(contact) }
        : null,
    },
  }
}
