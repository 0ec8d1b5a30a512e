import type { ShelfEntry } from '#core'

const plain = { date: '', note: '', pullTests: [], extra: {} } as const

/** A roll of cord that was weighed and pulled. */
export const ROLL: ShelfEntry = {
  kind: 'cord', name: 'Roll B12', date: '2026-02-17', note: 'from the mill', extra: {},
  typed: { 'cord.fibre': 'cotton', 'cord.make': 'loose', 'cord.diameter': '3 mm', 'cord.weighedMass': '48 g', 'cord.weighedLength': '10 m', 'cord.lot': 'B12' },
  pullTests: [{ typed: { load: '118 N', how: 'tied' }, extra: {} }, { typed: { load: '31 lb', time: '20 s' }, extra: { by: 'me' } }],
}
export const BOWL: ShelfEntry = { ...plain, kind: 'pot', name: 'Blue bowl', typed: { 'pot.shape': 'bowl', 'pot.rim': '7 1/2 in', 'pot.material': 'stoneware', 'pot.emptyMass': '1.3 kg', 'pot.drainage': 'none' } }
export const GRITTY: ShelfEntry = { ...plain, kind: 'mix', name: 'Gritty', typed: { 'mix.kind': 'cactus', 'mix.bulkDensity': '0.9 kg/L', 'mix.capacity': '35 %', 'mix.porosity': '52 %' } }
export const SWAN: ShelfEntry = { ...plain, kind: 'hook', name: 'Swan neck', note: 'shop in town', typed: { 'hook.kind': 'latched', 'hook.rated': '25 kgf' } }
export const BRASS: ShelfEntry = { ...plain, kind: 'ring', name: 'Brass 5', typed: { 'ring.metal': 'brass', 'ring.wire': '5 mm', 'ring.inside': '50 mm' } }

/** One of each kind. */
export const ENTRIES: readonly ShelfEntry[] = [ROLL, BOWL, GRITTY, SWAN, BRASS]
