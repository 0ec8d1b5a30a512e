import { describe, expect, it } from 'vitest'
import { FILE_PROBLEM_CODES } from '../../../electron/contract'
import { fileOutcomeText, type FileDeed } from '../../../src/words/fileOutcomes'

const DEEDS: readonly FileDeed[] = ['open', 'save', 'export']

describe('the sentence for a file that could not be had', () => {
  it.each(FILE_PROBLEM_CODES)('%s tells what was not done and why', (code) => {
    const sentences = DEEDS.map((deed) => fileOutcomeText({ code, deed, detail: 'EXAMPLE: it broke.' }))
    expect(new Set(sentences).size).toBe(DEEDS.length)
    for (const sentence of sentences) expect(sentence).toMatch(/^(The file was not opened|The hanger was not saved|Nothing was written): .+\.$/)
  })

  it('shows the system’s own words only where nothing better is known', () => {
    const shows = (code: (typeof FILE_PROBLEM_CODES)[number]) => fileOutcomeText({ code, deed: 'save', detail: 'EXAMPLE' }).includes('EXAMPLE')
    expect(FILE_PROBLEM_CODES.filter(shows)).toEqual(['OTHER'])
  })
})
