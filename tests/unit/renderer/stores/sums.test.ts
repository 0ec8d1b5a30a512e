import { createPinia, setActivePinia } from 'pinia'
import { beforeEach, describe, expect, it } from 'vitest'
import { useDocument } from '../../../../renderer/stores/document'
import { useSums } from '../../../../renderer/stores/sums'

beforeEach(() => setActivePinia(createPinia()))

describe('a sum typed in a field', () => {
  it('is worked out when the field is left, and told beside it as long as it stands', async () => {
    const source = useDocument()
    const sums = useSums()
    source.edit('make.totalLength', '2*64 in + 10 cm')
    await sums.settle('make.totalLength')
    expect(source.document.typed['make.totalLength']).toBe('131.937 in')
    expect(sums.behind('make.totalLength')).toBe('2*64 in + 10 cm = 131.937 in')
    expect(sums.behind('make.fringe')).toBeNull()
    source.edit('make.totalLength', '130 in')
    expect(sums.behind('make.totalLength')).toBeNull()
  })

  it('can be undone, which brings the sum back', async () => {
    const source = useDocument()
    const sums = useSums()
    source.edit('make.totalLength', '1 m - 25 cm')
    await sums.settle('make.totalLength')
    source.undo()
    expect(source.document.typed['make.totalLength']).toBe('1 m - 25 cm')
  })

  it.each([['make.totalLength', '75 cm'], ['make.totalLength', '2 cm * 3 cm'], ['make.totalLength', '1 m +'], ['make.totalLength', '((((1 m'], ['pot.shape', 'bowl'], ['cord.lot', '1+1']] as const)('%s: %s stays as it is typed', async (path, typed) => {
    const source = useDocument()
    source.edit(path, typed)
    await useSums().settle(path)
    expect(source.document.typed[path]).toBe(typed)
  })

  it('never takes the place of what was typed meanwhile', async () => {
    const source = useDocument()
    source.edit('make.totalLength', '1 m + 5 cm')
    const worked = useSums().settle('make.totalLength')
    source.edit('make.totalLength', '90 cm')
    await worked
    expect(source.document.typed['make.totalLength']).toBe('90 cm')
  })
})
