import { runsOf } from '../advice/potsThatFit'
import { takes, type ChartRow, type SizeChart } from '../advice/sizeChart'
import type { PotMaterialKind } from '../catalogue/potMaterials'
import { onPaper } from '../words/onPaper'
import { potSizesText } from '../words/sheetCustomer'
import { AID_TEXT, footFacts } from '../words/sheetFoot'
import { CHART_COLUMN, CHART_LEGEND, CHART_NOTE, CHART_TITLE, chartCellText, chartHangerName, chartRimText, chartTableTitle, LISTING_COLUMNS, LISTING_TITLE, listingWeightText, NO_ROWS_TEXT, shortened } from '../words/sizeChart'
import type { Block } from './block'
import type { SheetOptions } from './options'
import type { Sheet } from './sheet'

const cellsOf = (row: ChartRow, material: PotMaterialKind): ChartRow['cells'] => row.cells.filter((cell) => cell.material === material)

/** What may be promised of each hanger: its heaviest pot, and the usual ones that fit. */
function listings({ materials, rims, rows }: SizeChart): Block {
  const sizes = (row: ChartRow, material: PotMaterialKind): string => potSizesText(runsOf(cellsOf(row, material).map(takes), rims), rims[0] ?? 0)
  return {
    kind: 'table', caption: LISTING_TITLE, columns: [...LISTING_COLUMNS, ...materials.map(chartTableTitle)],
    rows: rows.map((row) => ({ head: chartHangerName(row), cells: [listingWeightText(row.isTold ? row.heaviest : null), ...materials.map((material) => (row.isTold ? sizes(row, material) : '–'))] })),
  }
}

/** The maker's hangers against usual pots, one table a material, and a line for each hanger's tag or listing. Pure. */
export const sizeChartSheet = (chart: SizeChart, { format, today }: Pick<SheetOptions, 'format' | 'today'>): Sheet => onPaper((): Sheet => {
  const { rows, rims, materials } = chart
  const maker = rows.map(({ document }) => document.typed['make.maker'] ?? null).find((text) => text !== null) ?? null
  const tables = materials.map((material): Block => ({
    kind: 'table', caption: chartTableTitle(material), columns: [CHART_COLUMN, ...rims.map(chartRimText)],
    rows: rows.map((row) => ({ head: shortened(chartHangerName(row)), cells: cellsOf(row, material).map(chartCellText) })),
  }))
  const blocks: readonly Block[] = rows.length === 0
    ? [{ kind: 'paragraph', weight: 'strong', text: NO_ROWS_TEXT }]
    : [
        ...tables,
        { kind: 'paragraph', weight: 'plain', text: CHART_LEGEND },
        { kind: 'paragraph', weight: 'small', text: CHART_NOTE },
        listings(chart),
      ]
  return {
    kind: 'chart', title: CHART_TITLE, language: 'en', format, draft: null, notices: [],
    pages: [{
      side: 'front',
      blocks: [{ kind: 'heading', level: 1, text: CHART_TITLE }, ...blocks],
      foot: [
        { kind: 'facts', items: footFacts({ 'make.maker': maker, 'make.contact': null, 'make.date': null, 'make.code': null }, today) },
        { kind: 'paragraph', weight: 'small', text: AID_TEXT },
      ],
    }],
  }
})
