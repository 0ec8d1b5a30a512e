import type { PictureLabel } from '../block'
import { element, type Element } from '../element'
import { at, svgNumber } from './svgNumber'

/** Letters that stand in one line of a label. */
const LINE = 17
/** Width of a letter of its height, on the wide side. */
const LETTER = 0.52
const LEADING = 1.12
/** Between two labels. */
const GAP = 0.7

/** Words in lines of at most so many letters, as even as they may be; a word longer than that stands alone. */
export function linesOf(text: string, most: number): readonly string[] {
  const count = filled(text, most).length
  for (let width = Math.ceil(text.length / count); width < most; width++) {
    const lines = filled(text, width)
    if (lines.length <= count) return lines
  }
  return filled(text, most)
}

function filled(text: string, most: number): readonly string[] {
  return text.split(' ').reduce<readonly string[]>((lines, word) => {
    const last = lines.at(-1)
    return last !== undefined && last.length + 1 + word.length <= most ? [...lines.slice(0, -1), `${last} ${word}`] : [...lines, word]
  }, [])
}

/** Room that labels need beside a picture, in the height of their letters. */
export const labelsWidth = (labels: readonly PictureLabel[]): number =>
  (labels.length === 0 ? 0 : Math.max(...labels.flatMap(({ text }) => linesOf(text, LINE).map((line) => line.length))) * LETTER + 1.5)
/** And one under another. */
export const labelsHeight = (labels: readonly PictureLabel[]): number =>
  labels.reduce((sum, { text }) => sum + linesOf(text, LINE).length * LEADING + GAP, 0)

interface Placed {
  readonly label: PictureLabel
  readonly lines: readonly string[]
  /** Top of its lines, in the picture. */
  readonly top: number
}

/** Labels from the top down, none over another, each as near to the height of its point as there is room. */
function place(labels: readonly PictureLabel[], size: number, top: number, bottom: number): readonly Placed[] {
  const sorted = labels.map((label) => ({ label, lines: linesOf(label.text, LINE) })).toSorted((a, b) => at(a.label.at)[1] - at(b.label.at)[1])
  const gap = GAP * size
  const height = (lines: readonly string[]): number => lines.length * LEADING * size
  const placed: Placed[] = []
  for (const { label, lines } of sorted) {
    const last = placed.at(-1)
    const least = last === undefined ? top : last.top + height(last.lines) + gap
    placed.push({ label, lines, top: Math.max(least, at(label.at)[1] - height(lines) / 2) })
  }
  // Pushed down beyond the end they are moved up again, from the last.
  return placed.reduceRight<readonly Placed[]>((below, one) => {
    const most = (below[0]?.top ?? bottom + gap) - gap - height(one.lines)
    return [{ ...one, top: Math.min(one.top, most) }, ...below]
  }, [])
}

/** Names in a column that begins at `x`, each with a line to its point. */
export function paintLabels(labels: readonly PictureLabel[], x: number, size: number, pen: number, top: number, bottom: number): readonly Element[] {
  return place(labels, size, top, bottom).flatMap(({ label, lines, top: from }) => {
    const [px, py] = at(label.at)
    const middle = from + (lines.length * LEADING * size) / 2
    return [
      element('path', { class: 'leader', d: `M${svgNumber(px)} ${svgNumber(py)}L${svgNumber(x - 0.3 * size)} ${svgNumber(middle)}`, 'stroke-width': svgNumber(pen) }),
      element('circle', { class: 'point', cx: svgNumber(px), cy: svgNumber(py), r: svgNumber(2.2 * pen) }),
      element('text', { 'font-size': svgNumber(size) }, ...lines.map((line, i) =>
        element('tspan', { x: svgNumber(x), y: svgNumber(from + (i * LEADING + 0.86) * size) }, line))),
    ]
  })
}
