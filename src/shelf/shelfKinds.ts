import { FIELD_PATHS, type FieldPath } from '../hanger/fields'

/** What a maker keeps on the shelf. Each kind is named as its group in the hanger file. */
export const SHELF_KINDS = ['cord', 'pot', 'mix', 'hook', 'ring'] as const
export type ShelfKind = (typeof SHELF_KINDS)[number]

export const isShelfKind = (text: unknown): text is ShelfKind => (SHELF_KINDS as readonly unknown[]).includes(text)

const allOf = (kind: ShelfKind): readonly FieldPath[] => FIELD_PATHS.filter((path) => path.startsWith(`${kind}.`))

/** The answers that go with a thing from hanger to hanger; those that change with each hanging stay behind. */
export const SHELF_PATHS: Readonly<Record<ShelfKind, readonly FieldPath[]>> = {
  // What is left on a roll changes with every hanger cut from it.
  cord: allOf('cord').filter((path) => path !== 'cord.onRoll'),
  pot: [
    'pot.shape', 'pot.rim', 'pot.height', 'pot.base', 'pot.length', 'pot.belly', 'pot.bellyHeight',
    'pot.edge', 'pot.material', 'pot.wall', 'pot.emptyMass', 'pot.drainage',
  ],
  mix: allOf('mix'),
  hook: allOf('hook'),
  ring: ['ring.rated', 'ring.metal', 'ring.wire', 'ring.inside'],
}

/** The kinds that have pull tests of their own. */
export const hasPullTests = (kind: ShelfKind): boolean => kind === 'cord'
