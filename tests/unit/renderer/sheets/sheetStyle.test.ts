import { expect, test } from 'vitest'
import { scopedStyle } from '../../../../renderer/sheets/sheetStyle'

const STYLE = `@page a4 { size: A4; }
@font-face { font-family: 'A'; src: url('data:x'); }
.sheet { page: a4; }
@media print { .sheet .page { margin: 0; } }
`

test('the style of sheets touches nothing outside them, and papers stand for the whole page', () => {
  const [papers = '', scoped = ''] = scopedStyle(STYLE).split('@scope')
  expect(papers).toContain('@page a4 { size: A4; }')
  expect(papers).not.toContain('.sheet')
  expect(scoped).toMatch(/^ \(\.on-paper\) \{[^]*\.sheet \{ page: a4; \}[^]*@media print[^]*\}\s*\}$/)
  expect(scoped).not.toMatch(/@page|@font-face/)
})
