import { linkName, partOf, type CaseCode, type CheckResult, type Dimension, type PartKey } from '#core'
import { texts } from '../texts/texts'
import type { Box } from './box'
import { attributes, escaped, FILE_INK, INK, marksMarkup } from './markup'
import { noteMarks } from './notes'
import type { Pointing } from './pointing'
import { pointingMarks } from './pointingMarks'
import { drawingDescription, situationNotes, situationTitle } from './sentences'
import { loupeScale, usePicture } from './usePicture'
import { hatchMarkup, numberMarkup, viewMarkup } from './viewMarkup'
import type { ViewChoice, ViewCode } from './views'

const t = texts.drawing

/** What is put into a file of its own. */
export interface DrawingInFile {
  readonly check: CheckResult
  readonly situation: CaseCode
  readonly choice: ViewChoice
  readonly selected: PartKey | null
  /** Whether the page has room for all views beside each other. */
  readonly isWide: boolean
  readonly name: string
  readonly textOf: (dimension: Dimension) => string
}

/** A sheet of A4 within its margins, px of 1/96 in, and the mm of paper under one px. */
const SHORT = 700
const LONG = 1020
const PIXEL = 25.4 / 96
/** Scales that read well, 1 to each of these. */
const SCALES = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100]
/** The page's face where it is installed, else one like it. */
const FONT = '\'Alegreya Sans\', \'Gill Sans\', \'Gill Sans MT\', \'Trebuchet MS\', sans-serif'

/**
 * The picture as an SVG file that needs nothing else: all of it, to a plain scale that is written beneath it, its
 * size in mm so that it prints true to that scale, with a title and a description for whoever cannot see it.
 */
export function fileOfDrawing({ check, situation, choice, selected, isWide, name, textOf }: DrawingInFile): string {
  const frame = isWide ? { width: LONG, height: SHORT } : { width: SHORT, height: LONG }
  const { codes, placement, pulls, lettering, pointing, extent: { value: box }, scale } = usePicture(() => ({ check, situation, choice, selected, frame, textOf }))
  const size = SCALES.find((n) => n >= 1 / (PIXEL * scale.value)) ?? Math.ceil(1 / (PIXEL * scale.value))
  const hair = 1 / scale.value
  const fineness = { hair, lettering: lettering.value, hatch: 'hatch' }
  const letter = 0.92 * lettering.value * hair
  const views = placement.value.views.map(({ drawing, dx, dy }) => `<g${attributes({ transform: `translate(${dx} ${dy})` })}>${
    viewMarkup(drawing, selected, fineness)}${marksMarkup(noteMarks(drawing, pulls.value, letter), INK, 'hatch')}${
    drawing.dimensions.map((dimension) => numberMarkup(dimension, textOf(dimension), letter)).join('')}</g>`)
  const pointed = pointing.value === null || selected === null ? '' : loupeMarkup(pointing.value, selected, fineness, letter, textOf)
    + marksMarkup(pointingMarks(pointing.value, partName(selected), hair, letter), INK, 'hatch')
  const foot = [[name, situationTitle(situation)].filter((said) => said !== '').join(': '), ...situationNotes(check, situation), t.scale(size)]
  const page: Box = { ...box, height: box.height + (1.4 * foot.length + 1) * letter }
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg${attributes({
      xmlns: 'http://www.w3.org/2000/svg', width: `${page.width / size}mm`, height: `${page.height / size}mm`, viewBox: [page.x, page.y, page.width, page.height].join(' '),
      role: 'img', 'aria-labelledby': 'title', 'aria-describedby': 'words', 'font-family': FONT, 'stroke-linejoin': 'round',
    })}>`,
    `<title id="title">${escaped([name, t.title((codes.value.split(' ') as ViewCode[]).map((code) => t.seen[code]), situationTitle(situation))].filter((said) => said !== '').join('. '))}</title>`,
    `<desc id="words">${escaped(drawingDescription(check, situation))}</desc>`,
    hatchMarkup(fineness),
    ...views,
    pointed,
    ...foot.map((line, i) => `<text${attributes({ x: box.x + letter, y: box.y + box.height + 1.4 * (i + 1) * letter, 'font-size': letter, 'font-weight': i === 0 ? 700 : null, fill: i === 0 ? INK : FILE_INK.soft })}>${escaped(line)}</text>`),
    '</svg>\n',
  ].join('\n')
}

function partName(part: PartKey): string {
  const { link, tier } = partOf(part)
  return linkName(link, tier)
}

function loupeMarkup(pointing: Pointing, selected: PartKey, { hair, lettering }: { readonly hair: number, readonly lettering: number }, letter: number, textOf: DrawingInFile['textOf']): string {
  const moved = loupeScale(pointing)
  if (pointing.loupe === null || moved === null) return ''
  const { frame, detail: { drawing } } = pointing.loupe
  const fine = { hair: hair / moved.scale, lettering, hatch: 'loupe' }
  const rect = (extra: Readonly<Record<string, string>>): string => `<rect${attributes({ ...frame, rx: 8 * hair, ...extra })}/>`
  return `<clipPath id="frame">${rect({})}</clipPath>${rect({ fill: FILE_INK.paper })}<g clip-path="url(#frame)"><g${attributes({ transform: `translate(${moved.x} ${moved.y}) scale(${moved.scale})` })}>${
    hatchMarkup(fine)}${viewMarkup(drawing, selected, fine)}${drawing.dimensions.map((dimension) => numberMarkup(dimension, textOf(dimension), letter / moved.scale)).join('')}</g></g>`
}
