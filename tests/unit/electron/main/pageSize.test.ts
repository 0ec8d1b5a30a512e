import { expect, test } from 'vitest'
import { pageSizeFor } from '../../../../electron/main/pageSize'

test.each([['US', 'Letter'], ['CA', 'Letter'], ['GB', 'A4'], ['DE', 'A4'], ['', 'A4']])('%s prints on %s', (country, paper) => {
  expect(pageSizeFor(country)).toBe(paper)
})
