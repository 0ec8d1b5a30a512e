import type { PartKey, Shape } from '#core'

/** Shapes of one part that follow each other. */
export interface Run {
  readonly link: PartKey | null
  readonly shapes: readonly Shape[]
}

/** Neighbouring shapes of one part stand in one group; the order in which they cover each other is kept. */
export function runsOf(shapes: readonly Shape[]): readonly Run[] {
  const found: { readonly link: PartKey | null, readonly shapes: Shape[] }[] = []
  for (const shape of shapes) {
    const last = found.at(-1)
    if (last?.link === shape.link) last.shapes.push(shape)
    else found.push({ link: shape.link, shapes: [shape] })
  }
  return found
}
