import { describe, expect, it } from 'vitest'
import { cordPlan, editField, EMPTY_DOCUMENT, patchDocument, resolveDocument, type CordPlan, type Patch } from '#core'

// Source of every expected value: the sum written beside it, by hand from the lengths told and the catalogue's
// common-practice figures (square-knot sinnet 3.5, 4, 5; filler 1, 1.05, 1.1; rows 2, 2.5, 3.5; square knot 3, 3.5, 4
// thicknesses high; fringe trimmed by 2, 3, 5 cm; 10, 15, 20 cm for a knot at an end).

const planOf = (patch: Patch): CordPlan => {
  const read = resolveDocument(patchDocument(EMPTY_DOCUMENT, patch))
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  const plan = cordPlan(read.hanger)
  if (!plan.ok) throw new Error(plan.reason)
  return plan
}
const kind = (plan: CordPlan, role: string, tier = 1): CordPlan['kinds'][number] => {
  const found = plan.kinds.find((k) => k.role === role && k.tier === tier)
  if (!found) throw new Error(`no ${role} of ${tier}: ${plan.kinds.map((k) => k.role).join(' ')}`)
  return found
}
const near = (range: { low: number; likely: number; high: number }, ...[low, likely, high]: readonly number[]): void => {
  expect(range.low).toBeCloseTo(low as number, 9)
  expect(range.likely).toBeCloseTo(likely as number, 9)
  expect(range.high).toBeCloseTo(high as number, 9)
}

const SINNET: Patch = {
  'make.legs': '5', 'make.strands': '6', 'make.fillers': '4', 'make.build': 'sinnet', 'make.top': 'ring', 'make.legLength': '60 cm', 'make.knotted': '45 cm', 'make.fringe': '21 cm',
  'cradle.kind': 'net', 'cradle.first': '11 cm', 'gathering.wraps': '7', 'gathering.tails': '18 cm',
  'cord.diameter': '3 mm', 'cord.linearDensity': '5 g/m', 'ring.wire': '5 mm', 'pot.rim': '18 cm',
}
const MOUNT = Math.PI * (0.005 + 0.003)
const KNOTS = [3 * 0.003 * (3.5 - 1), 3.5 * 0.003 * (4 - 1), 4 * 0.003 * (5 - 1)] as const
const BELOW = 0.11 + 7 * 0.003 + 0.21

describe('a hanger in square-knot sinnets', () => {
  const plan = planOf(SINNET)

  it('takes two folded filler cords and one folded working cord a leg', () => {
    expect(plan.kinds.map(({ role, count, strands }) => [role, count, strands.length])).toEqual([['filler', 10, 2], ['working', 5, 2], ['wrapping', 1, 1]])
  })

  it('cuts each twice the way of a strand', () => {
    const half = (knotted: number, i: 0 | 1 | 2): number => MOUNT + 0.45 * knotted + 0.15 + KNOTS[i] + BELOW + [0.02, 0.03, 0.05][i]!
    near(kind(plan, 'filler').cut, 2 * half(1, 0), 2 * half(1.05, 1), 2 * half(1.1, 2))
    near(kind(plan, 'working').cut, 2 * half(3.5, 0), 2 * half(4, 1), 2 * half(5, 2))
  })

  it('wraps by the length of the gathering knot', () => {
    // 30 strands and the loop fill 0.75 of the bundle: D = 3 mm sqrt(32 / 0.75).
    const bundle = 0.003 * Math.sqrt(32 / 0.75)
    const length = 7 * Math.PI * (bundle + 0.003) + 2 * 7 * 0.003 + 0.18
    near(kind(plan, 'wrapping').cut, length, length, length)
  })

  it('adds up, weighs by the metre, and says what it does not know', () => {
    const total = 10 * kind(plan, 'filler').cut.likely + 5 * kind(plan, 'working').cut.likely + kind(plan, 'wrapping').cut.likely
    expect(plan.total.likely).toBeCloseTo(total, 9)
    expect(plan.mass).toMatchObject({ known: true, basis: 'your own' })
    if (plan.mass.known) expect(plan.mass.value.likely).toBeCloseTo(0.005 * total, 9)
    expect([plan.roll, plan.left, plan.cost]).toEqual([{ known: false, needs: ['cord.rollLength'] }, { known: false, needs: ['cord.onRoll'] }, { known: false, needs: ['cord.rollPrice'] }])
  })

  it('prices a share of the roll and tells what is left on it', () => {
    const bought = planOf({ ...SINNET, 'cord.rollLength': '250 m', 'cord.rollPrice': '31.50', 'cord.currency': 'EUR', 'cord.onRoll': '60 m' })
    if (!bought.cost.known || !bought.left.known) throw new Error('not known')
    near(bought.cost.value, (31.5 * bought.total.low) / 250, (31.5 * bought.total.likely) / 250, (31.5 * bought.total.high) / 250)
    expect(bought.cost.value.currency).toBe('EUR')
    near(bought.left.value, 60 - bought.total.high, 60 - bought.total.likely, 60 - bought.total.low)
  })

  it('finds the length of a roll sold by weight', () => {
    const { roll } = planOf({ ...SINNET, 'cord.rollMass': '500 g' })
    if (!roll.known) throw new Error('not known')
    near(roll.value, 100, 100, 100)
  })

  it('lets an own sample stand in for common practice', () => {
    // 1.30 m in 40 cm: 3.25, a twentieth more or less.
    const own = planOf({ ...SINNET, 'takeUp.cut': '130 cm', 'takeUp.finished': '40 cm' })
    const part = kind(own, 'working').strands[0]?.find(({ code }) => code === 'knotted')
    near(part!.cord, 0.45 * 3.25 * 0.95, 0.45 * 3.25, 0.45 * 3.25 * 1.05)
    expect(part?.basis).toBe('your own')
    expect(own.notes).toContain('LEARNED')
    expect(kind(own, 'filler').cut).toEqual(kind(plan, 'filler').cut)
  })
})

it('folds one cord off its middle where a filler and a working strand are left over in each leg', () => {
  const plan = planOf({ ...SINNET, 'make.fillers': '3' })
  expect(plan.kinds.map(({ role, count }) => [role, count])).toEqual([['filler', 5], ['working', 5], ['mixed', 5], ['wrapping', 1]])
  expect(kind(plan, 'mixed').cut.likely).toBeCloseTo((kind(plan, 'filler').cut.likely + kind(plan, 'working').cut.likely) / 2, 9)
})

it('ties a single strand on where they do not pair', () => {
  const plan = planOf({ ...SINNET, 'make.legs': '3', 'make.strands': '5', 'make.build': 'plain', 'make.fillers': '2' })
  const [folded, single] = plan.kinds.filter(({ role }) => role === 'strand')
  expect([folded?.count, folded?.strands.length, single?.count, single?.strands.length]).toEqual([7, 2, 1, 1])
  expect(single!.cut.likely).toBeCloseTo(folded!.cut.likely / 2 + 0.15, 9)
})

describe('other arrangements', () => {
  const TIERS: Patch = { ...SINNET, 'make.build': 'plain', 'make.arrangement': 'tiers', 'tiers.count': '2', 'second.rim': '16 cm', 'second.strand': '55 cm', 'second.first': '9 cm', 'second.strands': '6' }
  const knotHeight = 7 * 0.003
  const first = MOUNT + 0.6 + 0.11 + KNOTS[1] + knotHeight
  const second = 0.55 + KNOTS[1] + knotHeight

  it('runs strands on through the wraps to the lower pot', () => {
    const plan = planOf({ ...TIERS, 'tiers.how': 'runOn' })
    expect(plan.kinds.map(({ role, tier, count }) => [role, tier, count])).toEqual([['strand', 1, 15], ['wrapping', 1, 1], ['wrapping', 2, 1]])
    expect(kind(plan, 'strand').cut.likely).toBeCloseTo(2 * (first + second + 0.21 + 0.03), 9)
  })

  it('ties cords of their own in under the wraps', () => {
    const plan = planOf({ ...TIERS, 'tiers.how': 'wrapped' })
    expect(kind(plan, 'strand').cut.likely).toBeCloseTo(2 * (first + 0.03), 9)
    expect(kind(plan, 'strand', 2).cut.likely).toBeCloseTo(2 * (knotHeight + second + 0.21 + 0.03), 9)
  })

  it('hangs cords of their own from the top, each longer than those above', () => {
    const plan = planOf({ ...TIERS, 'tiers.how': 'ownCords' })
    expect(kind(plan, 'strand', 2).cut.likely).toBeCloseTo(2 * (MOUNT + 0.71 + 0.55 + KNOTS[1] + knotHeight + 0.21 + 0.03), 9)
  })

  it('adds a top cord for a stick, with a knot at both ends of each of its strands', () => {
    const plan = planOf({ ...SINNET, 'make.top': 'stick', 'stick.diameter': '18 mm', 'stick.topCord': '52 cm', 'stick.topStrands': '3' })
    expect(kind(plan, 'topCord').count).toBe(3)
    near(kind(plan, 'topCord').cut, 0.52 + 0.2, 0.52 + 0.3, 0.52 + 0.4)
    expect(kind(plan, 'filler').strands[0]?.[0]?.cord.likely).toBeCloseTo(Math.PI * 0.021, 9)
  })

  it('cuts the cords of a panel by the way round the front', () => {
    const plan = planOf({
      ...SINNET, 'make.arrangement': 'panel', 'stick.diameter': '18 mm', 'stick.held': 'twoHooks', 'pot.base': '13 cm', 'pot.height': '16 cm',
      'panel.width': '26 cm', 'panel.height': '30 cm', 'panel.rise': '6 cm', 'panel.front': '4', 'panel.behind': '6', 'panel.cords': '7', 'stick.length': '40 cm',
    })
    const panel = kind(plan, 'panel')
    expect(panel.count).toBe(7)
    const knotted = panel.strands[0]?.find(({ code }) => code === 'knotted')
    near(knotted!.cord, 0.3 * 2, 0.3 * 2.5, 0.3 * 3.5)
    const way = panel.strands[0]?.find(({ code }) => code === 'toKnot')
    // Down to the rim, the height of the pot and half its base at least.
    expect(way!.finished).toBeGreaterThan(0.06 + 0.16 + 0.06)
    expect(way!.finished).toBeLessThan(0.06 + 0.16 + 0.065 + 0.15)
    expect(plan.notes).toContain('PANEL_BY_LONGEST')
  })

  it('has no plan where nothing is left for the legs, and none without a hanger', () => {
    const outcome = (patch: Patch): unknown => {
      const read = resolveDocument(patchDocument(EMPTY_DOCUMENT, patch))
      return read.ok ? cordPlan(read.hanger) : read
    }
    expect(outcome({ ...SINNET, 'make.legLength': '5 cm', 'make.knotted': '4 cm', 'cradle.first': '1 cm' })).toMatchObject({ ok: true })
    expect(outcome({ 'make.totalLength': '40 cm', 'make.fringe': '30 cm' })).toEqual({ ok: false, reason: 'tooShort' })
    expect(outcome({ ...SINNET, 'make.have': 'no' })).toEqual({ ok: false, reason: 'noHanger' })
  })

  it('names what was assumed, and weighs nothing of a cord nobody measured', () => {
    const read = resolveDocument(editField(EMPTY_DOCUMENT, 'make.fringe', '20 cm'))
    if (!read.ok) throw new Error('unread')
    const plan = cordPlan(read.hanger)
    expect(plan).toMatchObject({ ok: true, mass: { known: false, needs: ['cord.linearDensity'] } })
    if (!plan.ok) return
    expect(plan.assumed).toEqual(expect.arrayContaining(['make.totalLength', 'make.legs']))
    expect(plan.assumed).not.toContain('make.fringe')
    expect(plan.notes).toEqual(expect.arrayContaining(['WHOLE_LEG_KNOTTED', 'CORD_UNMEASURED']))
  })
})
