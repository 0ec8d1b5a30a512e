import type { Sheet } from '#core'

type Block = Sheet['pages'][number]['blocks'][number]

const inside = (block: Block): readonly Block[] => {
  if (block.kind === 'columns') return block.columns.flatMap(({ blocks }) => blocks)
  return block.kind === 'box' || block.kind === 'cutOut' ? block.blocks : []
}
const withInside = (block: Block): readonly Block[] => [block, ...inside(block).flatMap(withInside)]

/** All blocks of a sheet, those within others too. */
export const blocksOf = ({ pages }: Sheet): readonly Block[] => pages.flatMap(({ blocks, foot }) => [...blocks, ...foot].flatMap(withInside))

/** The blocks of one kind. */
export const ofKind = <K extends Block['kind']>(sheet: Sheet, kind: K): readonly Extract<Block, { kind: K }>[] =>
  blocksOf(sheet).filter((block): block is Extract<Block, { kind: K }> => block.kind === kind)

/** Every text of a sheet, one a line. */
export function textOf(sheet: Sheet): string {
  const texts = (value: unknown): readonly string[] => {
    if (typeof value === 'string') return [value]
    if (value === null || typeof value !== 'object' || 'shapes' in value) return []
    return Object.entries(value).flatMap(([key, inner]) => (key === 'kind' || key === 'mark' || key === 'weight' || key === 'width' ? [] : texts(inner)))
  }
  return texts(blocksOf(sheet).filter(({ kind }) => kind !== 'columns' && kind !== 'box' && kind !== 'cutOut')).join('\n')
}
