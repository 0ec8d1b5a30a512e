import { expect, test } from 'vitest'
import { fileName } from '../../../../../electron/main/files/fileName'

test.each([
  ['Fern / kitchen', 'Fern kitchen.pdf'],
  ['../../etc/passwd', 'etc passwd.pdf'],
  ['C:\\pots\\fern', 'C pots fern.pdf'],
  ['  Fern  over\nthe sideboard. ', 'Fern over the sideboard.pdf'],
  ['.hidden', 'hidden.pdf'],
  ['a\u202Efdp', 'a fdp.pdf'],
  ['Größe 3½', 'Größe 3½.pdf'],
  ['con', 'hanger con.pdf'],
  ['LPT1.old', 'hanger LPT1.old.pdf'],
  ['com¹', 'hanger com¹.pdf'],
  ['CONIN$', 'hanger CONIN$.pdf'],
  ['Connie', 'Connie.pdf'],
  ['', 'hanger.pdf'],
  ['///', 'hanger.pdf'],
])('%j is offered as %j', (suggested, offered) => {
  expect(fileName(suggested, 'pdf')).toBe(offered)
})

test('a long name is cut between characters, with room for ending and backup', () => {
  const offered = fileName('🪴'.repeat(200), 'strandwise')
  expect(new TextEncoder().encode(`${offered}~`).length).toBeLessThan(255)
  expect(offered).toMatch(/^(🪴){45}\.strandwise$/u)
})
