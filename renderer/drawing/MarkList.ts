import { h, type FunctionalComponent } from 'vue'
import type { Mark, Pen } from './marks'

/** Pens of the screen: they follow the page from paper to slate. */
const INK: Readonly<Record<Pen, string>> = {
  own: 'currentcolor',
  paper: 'var(--drawn-on)',
  soft: 'var(--ink-soft)',
  pencil: 'var(--pencil)',
  fine: 'var(--line)',
  accent: 'var(--accent)',
}

const isPen = (fill: string): fill is Pen => fill in INK

/** Marks as elements of the page; `hatch` is what names of fillings begin with. */
export const MarkList: FunctionalComponent<{ readonly marks: readonly Mark[], readonly hatch: string }> = ({ marks, hatch }) =>
  marks.map(({ tag, at, stroke, fill, text }) => h(tag, {
    ...at,
    fill: fill === null ? 'none' : isPen(fill) ? INK[fill] : `url(#${hatch}-${fill})`,
    ...(stroke === null ? {} : { stroke: INK[stroke] }),
  }, text ?? undefined))
MarkList.props = ['marks', 'hatch']
