import { mount, type VueWrapper } from '@vue/test-utils'
import { describe, expect, it } from 'vitest'
import { aboveView, EMPTY_DOCUMENT, frontView, resolveDocument, type CheckResult, type LinkCode } from '#core'
import HangerDrawing from '../../../../renderer/drawing/HangerDrawing.vue'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'

const check = checkOf(ORDINARY)
const draw = (props: Partial<InstanceType<typeof HangerDrawing>['$props']>): VueWrapper => mount(HangerDrawing, { props: { check, situation: 'watered', selected: null, stale: false, typed: ORDINARY, ...props }, attachTo: document.body })

async function openTables(page: VueWrapper): Promise<void> {
  const tables = page.find<HTMLDetailsElement>('details.tables')
  tables.element.open = true
  await tables.trigger('toggle')
}

const numbers = (element: Element | undefined, names: readonly string[]): readonly number[] => names.map((name) => Number(element?.getAttribute(name)))

describe('the drawing', () => {
  it.each(['watered', 'bump', 'gust', 'legParted'] as const)('shows the legs in millimetres where the core drew them: %s', (situation) => {
    const page = draw({ situation })
    for (const [view, drawing] of [['front', frontView(check, situation)], ['above', aboveView(check, situation)]] as const) {
      const lines = page.findAll(`[data-view="${view}"] line[data-leg]`).map((line) => line.element)
      expect(lines.map((line) => line.getAttribute('data-leg')).sort()).toEqual(drawing.legs.flatMap((leg, i) => (leg === null ? [] : [String(i + 1)])))
      drawing.legs.forEach((leg, i) => {
        if (leg === null) return
        const line = lines.find((l) => l.getAttribute('data-leg') === String(i + 1))
        const [[ax, az], [bx, bz]] = leg
        numbers(line, ['x1', 'y1', 'x2', 'y2']).forEach((x, k) => expect(x).toBeCloseTo(1000 * ([ax, -az, bx, -bz][k] ?? NaN), 9))
      })
    }
    page.unmount()
  })

  it('says in words what is seen, with parts and pulls in tables that open', async () => {
    const page = draw({})
    expect(page.find('svg title').text()).toBe('The hanger to scale, from the front and from above: At rest, just watered')
    expect(page.find('svg desc').text()).toMatch(/4 legs hang from a ring, \d+° from the vertical/)
    expect(page.find('svg').attributes('role')).toBe('img')
    expect(page.find('table').exists()).toBe(false)
    await openTables(page)
    const pulls = page.findAll('[data-table="pulls"] tbody tr').map((row) => row.text())
    expect(pulls).toHaveLength(4)
    expect(pulls[0]).toMatch(/^1\s*1\.\d+ kg.*25 %$/)
    const parts = page.findAll('table:not([data-table]) tbody tr').map((row) => row.text())
    expect(parts[0]).toMatch(/^Fixing in the building/)
    expect(parts.at(-1)).toMatch(/^Grip of the gathering knot.* below/)
    expect(page.text()).toContain('Only what carries is drawn.')
    page.unmount()
  })

  it('names the tilt and what is gone', async () => {
    const page = draw({ situation: 'legParted' })
    expect(page.find('figcaption').text()).toMatch(/^One leg gone.*The pot tilts \d+°\. Leg 1 is gone and is not drawn\./s)
    await openTables(page)
    expect(page.findAll('[data-table="pulls"] tbody th').map((head) => head.text())).toEqual(['2', '3', '4'])
    page.unmount()
  })

  it('marks the chosen part and takes a choice by mouse', async () => {
    const page = draw({ selected: 'ring' })
    expect([...new Set(page.findAll('.selected').map((group) => group.attributes('data-link')))]).toEqual(['ring'])
    await page.find('[data-view="front"] [data-link="hook"] path').trigger('click')
    expect(page.emitted<[LinkCode]>('select')).toEqual([['hook']])
    page.unmount()
  })

  it('is looked at closer by keys, and printed whole all the same', async () => {
    const page = draw({ selected: 'ring' })
    const seen = (): readonly number[] => (page.find('svg').attributes('viewBox') ?? '').split(' ').map(Number)
    const whole = seen()
    expect(page.find('[data-view="loupe"]').exists()).toBe(true)
    await page.find('.sheet').trigger('keydown', { key: '+' })
    await page.find('.sheet').trigger('keydown', { key: '+' })
    expect(seen()[2]).toBeCloseTo((whole[2] ?? NaN) / 1.96, 6)
    expect(page.find('[data-view="loupe"]').exists()).toBe(false)
    window.dispatchEvent(new Event('beforeprint'))
    await page.vm.$nextTick()
    // All of the picture as it fits a page, with what is not asked for by hand.
    const [x = NaN, y = NaN, width = NaN, height = NaN] = seen()
    const { left, right, top, bottom } = frontView(check, 'watered').bounds
    expect(x).toBeLessThanOrEqual(1000 * left + 1e-6)
    expect(y).toBeLessThanOrEqual(-1000 * top + 1e-6)
    expect(x + width).toBeGreaterThanOrEqual(1000 * right - 1e-6)
    expect(y + height).toBeGreaterThanOrEqual(-1000 * bottom - 1e-6)
    expect(page.find('[data-view="loupe"]').exists()).toBe(true)
    window.dispatchEvent(new Event('afterprint'))
    await page.vm.$nextTick()
    // Afterwards it is looked at as closely as before.
    expect(seen()[2]).toBeCloseTo((whole[2] ?? NaN) / 1.96, 6)
    await page.find('.sheet').trigger('keydown', { key: '0' })
    expect(seen()).toEqual(whole)
    page.unmount()
  })

  it('swings an outline of the one hanger that is bumped, and none at rest', () => {
    const row = checkOf({ ...ORDINARY, 'make.top': 'stick', 'row.count': '3', 'row.spacing': '40 cm', 'stick.length': '120 cm' })
    const lines = (hanger: CheckResult, situation: 'watered' | 'bump'): number => {
      const page = draw({ check: hanger, situation })
      const found = page.findAll('.ghost path').length
      page.unmount()
      return found
    }
    expect(lines(check, 'watered')).toBe(0)
    // Four legs and the pot at least; in a row no more of them.
    expect(lines(check, 'bump')).toBeGreaterThan(4)
    expect(lines(row, 'bump')).toBe(lines(check, 'bump'))
  })

  it('names the chosen part beside it, and points at it by a line', () => {
    for (const [selected, name] of [['leg', 'Legs'], ['ring', 'Ring']] as const) {
      const page = draw({ selected })
      expect(page.find('.pointed text').text()).toBe(name)
      expect(page.findAll('.pointed line')).toHaveLength(1)
      page.unmount()
    }
  })

  it('shows the views asked for and draws no other', () => {
    for (const choice of ['front', 'side', 'above'] as const) {
      const page = draw({ choice })
      expect(page.findAll('[data-view]').map((view) => view.attributes('data-view'))).toEqual([choice])
      expect(page.find<HTMLInputElement>(`input[value="${choice}"]`).element.checked).toBe(true)
      page.unmount()
    }
  })

  it('hands over a drawing of what is shown to be saved', async () => {
    const page = draw({ choice: 'above', name: 'Fern & <fig>' })
    await page.find('.save').trigger('click')
    const [svg = ''] = page.emitted<[string]>('save')?.[0] ?? []
    expect(svg).toContain('Fern &amp; &lt;fig&gt;. The hanger to scale, from above: At rest, just watered')
    page.unmount()
  })

  it('stands a pot alone beside legs too short for it', () => {
    const short: CheckResult = checkOf({ ...ORDINARY, 'make.totalLength': '55 cm' })
    const page = draw({ check: short, typed: {} })
    expect(page.findAll('line[data-leg]')).toEqual([])
    expect(page.text()).toContain('too short')
    expect(page.find('button[data-path="make.totalLength"]').text()).toBe('550 mm')
    page.unmount()
  })
})

describe('a number on a dimension line', () => {
  const rim = (page: VueWrapper): ReturnType<VueWrapper['find']> => page.find('button[data-path="pot.rim"]')

  it('shows the text as typed, or what was assumed', () => {
    const page = draw({ typed: { ...ORDINARY, 'pot.rim': '8 1/4 in' } })
    expect(rim(page).text()).toBe('8 1/4 in')
    page.unmount()
    const bare = draw({ check: checkOf({ 'pot.rim': '240 mm' }), typed: { 'pot.rim': '240 mm' } })
    expect(bare.find('button[data-path="pot.base"]').text()).toBe('168 mm')
    expect(bare.find('button[data-path="pot.base"]').attributes('aria-label')).toContain('assumed')
    bare.unmount()
  })

  it('becomes a line to type in and gives the new text on Enter, once', async () => {
    const page = draw({})
    await rim(page).trigger('click')
    const input = page.find('.number input')
    expect(document.activeElement).toBe(input.element)
    await input.setValue('23 cm')
    await input.trigger('keydown', { key: 'Enter' })
    // A browser takes the focus from a line that goes away.
    await input.trigger('blur')
    await page.vm.$nextTick()
    expect(page.emitted('edit')).toEqual([['pot.rim', '23 cm']])
    expect(document.activeElement).toBe(rim(page).element)
    page.unmount()
  })

  it('keeps what was typed when it is left, and nothing when it is given up or unchanged', async () => {
    const page = draw({})
    const type = async (text: string, leave: (input: ReturnType<VueWrapper['find']>) => Promise<unknown>): Promise<void> => {
      await rim(page).trigger('click')
      await page.find('.number input').setValue(text)
      await leave(page.find('.number input'))
      await page.vm.$nextTick()
    }
    await type('24 cm', async (input) => {
      await input.trigger('keydown', { key: 'Escape' })
      await input.trigger('blur')
    })
    await type('210 mm', (input) => input.trigger('blur'))
    expect(page.emitted('edit')).toBeUndefined()
    await type('25 cm', (input) => input.trigger('blur'))
    expect(page.emitted('edit')).toEqual([['pot.rim', '25 cm']])
    page.unmount()
  })

  it('keeps what cannot be read, and says in place what is wrong with it', () => {
    const typed = { ...ORDINARY, 'pot.rim': '17 parsnips' }
    const read = resolveDocument({ ...EMPTY_DOCUMENT, typed })
    const problems = new Map(read.ok ? [] : read.problems.flatMap((problem) => ('path' in problem ? [[problem.path, problem] as const] : [])))
    const page = draw({ typed, problems })
    expect(rim(page).text()).toBe('17 parsnips')
    const told = page.find(`#${rim(page).attributes('aria-describedby') ?? 'none'}`)
    expect(told.text()).toContain('parsnips')
    expect(page.findAll('.problem')).toHaveLength(1)
    page.unmount()
  })

  it('steps by the arrow keys in the unit typed', async () => {
    const page = draw({})
    await rim(page).trigger('click')
    const input = page.find<HTMLInputElement>('.number input')
    await input.trigger('keydown', { key: 'ArrowUp' })
    await input.trigger('keydown', { key: 'ArrowUp' })
    await input.trigger('keydown', { key: 'ArrowDown' })
    expect(input.element.value).toBe('211 mm')
    page.unmount()
  })
})
