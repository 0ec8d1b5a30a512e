import type { Bounds, Point, Shape } from '../drawing/shape'

/** A drawing of the core as a picture of its own: its shapes in metres and the room they take. */
export interface Picture {
  readonly shapes: readonly Shape[]
  readonly bounds: Bounds
}

/** A name beside a picture, with a line to the point it names. */
export interface PictureLabel {
  readonly at: Point
  readonly text: string
}

/** How a number is known; the two never look alike: other word, frame and mark. */
export type FigureMark = 'calculated' | 'testHung'

export interface TableRow {
  /** What the row is about; its header. */
  readonly head: string
  readonly cells: readonly string[]
}

/** One of several columns beside each other; the wide one takes three fifths. */
export interface Column {
  readonly width: 'narrow' | 'even' | 'wide'
  readonly blocks: readonly Block[]
}

/** What sheets are made of. No block knows how it is painted. */
export type Block =
  | { readonly kind: 'heading'; readonly level: 1 | 2 | 3; readonly text: string }
  /** `weight`: plain; strong for what must be seen; small for the foot. */
  | { readonly kind: 'paragraph'; readonly weight: 'plain' | 'strong' | 'small'; readonly text: string }
  /** The one number of a sheet. `marked`: the word for how it is known, and what that means. */
  | { readonly kind: 'figure'; readonly label: string; readonly value: string; readonly mark: FigureMark; readonly marked: string; readonly note: string | null }
  | { readonly kind: 'steps'; readonly items: readonly Step[] }
  | { readonly kind: 'list'; readonly items: readonly string[] }
  /** Things that must never be done. */
  | { readonly kind: 'nevers'; readonly items: readonly string[] }
  /** `columns`: headers, the first of them over the heads of the rows. */
  | { readonly kind: 'table'; readonly caption: string; readonly columns: readonly string[]; readonly rows: readonly TableRow[] }
  /** Names and what is said of them. */
  | { readonly kind: 'facts'; readonly items: readonly { readonly name: string; readonly text: string }[] }
  | { readonly kind: 'drawing'; readonly picture: Picture; readonly said: string; readonly labels: readonly PictureLabel[] }
  /** Small pictures in a row, each with its caption. */
  | { readonly kind: 'pictures'; readonly items: readonly { readonly picture: Picture; readonly caption: string }[] }
  /** A wide and low picture that its caption explains. */
  | { readonly kind: 'diagram'; readonly picture: Picture; readonly caption: string }
  /** `ask`: what is still open; `stop`: what must not be done; `plain` else. */
  | { readonly kind: 'box'; readonly mark: 'plain' | 'ask' | 'stop'; readonly title: string; readonly blocks: readonly Block[] }
  | { readonly kind: 'columns'; readonly columns: readonly Column[] }
  /** A small thing to be cut out, such as a tag. */
  | { readonly kind: 'cutOut'; readonly blocks: readonly Block[] }

/** One step of several: a word or two, and how. */
export interface Step {
  readonly title: string
  readonly text: string
}
