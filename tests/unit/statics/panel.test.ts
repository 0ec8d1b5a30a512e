import { describe, expect, test } from 'vitest'
import { metres, newtons, radians } from '../../../src/quantity/si'
import { panel, type Panel, type PanelInput } from '../../../src/statics/panel'
import { alongStrand, mirrored, panelStrand, type PanelStrandInput } from '../../../src/statics/panelStrand'
import { frontShares, onStick, panelLean } from '../../../src/statics/panelStick'
import { radiusAt, rollUp, unroll, type RoundSide } from '../../../src/statics/unrolled'
import { seededRandom } from '../quantity/seededRandom'

const random = seededRandom(64)
const between = (low: number, high: number): number => low + (high - low) * random()
const side = (base: number, rim: number, height: number): RoundSide => ({ baseRadius: metres(base), rimRadius: metres(rim), height: metres(height) })
const POTS = [side(0.07, 0.1, 0.19), side(0.09, 0.09, 0.21), side(0.1, 0.08, 0.17), side(0.1, 0.1 + 1e-9, 0.2)]

const STRAND: PanelStrandInput = { pot: side(0.075, 0.1, 0.2), axisFromWall: metres(0.112), across: metres(0.13), fromWall: metres(0), height: metres(0.31), knotHeight: metres(0.04), knotTurn: radians(0) }
const PLANTER: PanelInput = {
  pot: side(0.075, 0.1, 0.2), weight: newtons(43), centreHeight: metres(0.09), behind: metres(0.012), edgeHeight: metres(0.31), edgeFromWall: metres(0), halfWidth: metres(0.13),
  back: [metres(-0.05), metres(0.05)], knotHeight: metres(0.04), knotTurn: radians(0), backStiffness: newtons(5800), frontStiffness: newtons(2900), frontLonger: metres(0),
}

function hung(change: Partial<PanelInput>): Panel {
  const found = panel({ ...PLANTER, ...change })
  if (!found.ok) throw new Error(JSON.stringify(found))
  return found
}

describe('the unrolled side', () => {
  test('rolls up again to where it was, and keeps lengths', () => {
    for (const pot of POTS) {
      for (let i = 0; i < 30; i++) {
        const [z, turn] = [metres(between(0, pot.height)), radians(between(0, 2.5))]
        const back = rollUp(pot, unroll(pot, z, turn))
        expect(back.z).toBeCloseTo(z, 9)
        expect(back.turn).toBeCloseTo(turn, 7)
        const [near, r] = [unroll(pot, metres(z + 1e-5), radians(turn + 2e-4)), radiusAt(pot, z)]
        const flat = unroll(pot, z, turn)
        const round = Math.hypot(2e-4 * r, 1e-5, ((pot.rimRadius - pot.baseRadius) / pot.height) * 1e-5)
        expect(Math.hypot(near.along - flat.along, near.up - flat.up) / round).toBeCloseTo(1, 3)
      }
    }
  })
})

describe('a strand round the front', () => {
  test('touches the pot, turns nowhere where it leaves it, and is the shortest over its own generator', () => {
    let found = 0
    for (let i = 0; i < 200; i++) {
      const pot = POTS[i % 4]!
      const input: PanelStrandInput = { pot, axisFromWall: metres(between(0.11, 0.13)), across: metres(between(0, 0.16)), fromWall: metres(between(0, 0.02)), height: metres(between(0.22, 0.4)), knotHeight: metres(between(0, 0.08)), knotTurn: radians(between(0, 0.5)) }
      const strand = panelStrand(input)
      if (!strand.ok) continue
      found++
      const [x, y, z] = strand.touch
      const around = [x, y - input.axisFromWall] as const
      const r = radiusAt(pot, metres(z))
      expect(Math.hypot(...around)).toBeCloseTo(r, 12)
      const normal = [around[0] / r, around[1] / r, -(pot.rimRadius - pot.baseRadius) / pot.height] as const
      expect(normal[0] * strand.pull[0] + normal[1] * strand.pull[1] + normal[2] * strand.pull[2]).toBeCloseTo(0, 9)
      expect(Math.hypot(...strand.pull)).toBeCloseTo(1, 12)
      const end = alongStrand(pot, strand, input.knotHeight, 1)
      expect(end.z).toBeCloseTo(input.knotHeight, 9)
      expect(end.turn).toBeCloseTo(strand.turn, 7)
      // The direction on the pot just after the touching point is that of the free part.
      const near = alongStrand(pot, strand, input.knotHeight, 1e-5)
      const at = Math.atan2(...around) - near.turn
      const rNear = radiusAt(pot, near.z)
      const step = [rNear * Math.sin(at) - around[0], rNear * Math.cos(at) - around[1], near.z - z] as const
      const along = Math.hypot(...step)
      step.forEach((part, axis) => expect(part / along).toBeCloseTo(-strand.pull[axis]!, 4))
    }
    expect(found).toBeGreaterThan(60)
  })

  test('stays on the side: on a piece cut from a cone only strands that nowhere run above or below the piece can be', () => {
    const decided = { held: 0, byMiddle: 0 }
    for (let i = 0; i < 600; i++) {
      const whole = i % 2 === 0 ? side(0.04, 0.14, 0.16) : side(0.14, 0.04, 0.16)
      const input: PanelStrandInput = { pot: whole, axisFromWall: metres(0.15), across: metres(between(0, 0.25)), fromWall: metres(0), height: metres(between(0.17, 0.3)), knotHeight: metres(between(0.04, 0.12)), knotTurn: radians(between(-3, 0)) }
      const strand = panelStrand(input)
      if (!strand.ok) continue
      const [low, high] = [between(0, 0.04), between(0.12, 0.16)]
      const heights = Array.from({ length: 81 }, (_, k) => alongStrand(whole, strand, input.knotHeight, k / 80).z)
      const past = Math.max(low - Math.min(...heights), Math.max(...heights) - high)
      if (Math.abs(past) < 1e-3) continue
      const piece = side(radiusAt(whole, metres(low)), radiusAt(whole, metres(high)), high - low)
      const cut = panelStrand({ ...input, pot: piece, height: metres(input.height - low), knotHeight: metres(input.knotHeight - low) })
      expect(cut.ok).toBe(past < 0)
      decided[past > 0 && strand.touch[2] > low && strand.touch[2] < high ? 'byMiddle' : 'held']++
    }
    expect(decided.held).toBeGreaterThan(40)
    expect(decided.byMiddle).toBeGreaterThan(10)
  })

  test('its mirror is on the left', () => {
    const strand = panelStrand(STRAND)
    if (!strand.ok) throw new Error(strand.reason)
    expect(mirrored(strand).touch[0]).toBe(-strand.touch[0])
    expect(mirrored(mirrored(strand))).toEqual(strand)
  })

  test('a narrow taper comes to the cylinder', () => {
    const [plain, nearly] = [POTS[1]!, side(0.09, 0.09 + 1e-10, 0.21)].map((pot) => panelStrand({ ...STRAND, pot }))
    if (!plain?.ok || !nearly?.ok) throw new Error('no strand')
    expect(nearly.angle).toBeCloseTo(plain.angle, 7)
    expect(nearly.onPot).toBeCloseTo(plain.onPot, 7)
  })

  test('says why it cannot go', () => {
    const reason = (change: Partial<PanelStrandInput>): string => {
      const strand = panelStrand({ ...STRAND, ...change })
      return strand.ok ? 'goes' : strand.reason
    }
    expect(reason({})).toBe('goes')
    expect(reason({ across: metres(0.02), fromWall: metres(0.08), height: metres(0.15) })).toBe('insidePot')
    expect(reason({ pot: POTS[1]!, height: metres(0.03), knotHeight: metres(0.05) })).toBe('panelTooLow')
    expect(reason({ height: metres(0.9) })).toBe('offRim')
    expect(reason({ knotHeight: metres(-0.01) })).toBe('offBase')
    expect(reason({ knotTurn: radians(3) })).toBe('roundTip')
  })
})

describe('a wall planter', () => {
  test('is in balance, forces and moments, and does not reach into the wall', () => {
    for (let i = 0; i < 40; i++) {
      const { sling, rest, edge, tensions, wallAtRim, wallAtBase } = hung({ weight: newtons(between(20, 90)), centreHeight: metres(between(0.06, 0.12)), frontLonger: metres(between(-0.004, 0.004)), halfWidth: metres(between(0.11, 0.15)) })
      const W = sling.mass * sling.gravity
      expect(edge.reduce((s, load) => s + load.down, 0) / W).toBeCloseTo(1, 8)
      expect(edge.reduce((s, load) => s + load.out, 0) / W).toBeCloseTo((wallAtRim + wallAtBase) / W, 8)
      expect(edge.reduce((s, load) => s + load.aside, 0) / W).toBeCloseTo(0, 8)
      edge.forEach((load, j) => expect(Math.hypot(load.down, load.out, load.aside)).toBeCloseTo(tensions[j]!, 8))
      for (const force of [wallAtRim, wallAtBase]) expect(force).toBeGreaterThanOrEqual(0)
      // All strands end on one line, the panel's edge: moments about it.
      const touched = ([[wallAtRim, 0.2], [wallAtBase, 0]] as const).reduce((s, [force, z]) => s + force * (0.31 - heightOf(rest, z, sling.cg[2], force === wallAtRim ? 0.1 : 0.075)), 0)
      expect(touched / (W * rest.cg[1])).toBeCloseTo(1, 6)
    }
  })

  /** Height of the point where a circle of the pot touches the wall. */
  const heightOf = (rest: Panel['rest'], z: number, centre: number, r: number): number => {
    const axis = [rest.R[0][2], rest.R[1][2], rest.R[2][2]] as const
    const lean = axis[1]
    return rest.cg[2] + (z - centre) * axis[2] + (r * lean * axis[2]) / Math.sqrt(1 - lean * lean)
  }

  test('hangs alike on both sides', () => {
    const { tensions, edge, rest } = hung({})
    expect(tensions[0]).toBeCloseTo(tensions[1]!, 7)
    expect(tensions[2]).toBeCloseTo(tensions[3]!, 7)
    expect(edge[0]!.aside + edge[1]!.aside).toBeCloseTo(0, 7)
    expect(rest.cg[0]).toBeCloseTo(0, 9)
  })

  test('longer front strands bear less, shorter ones more', () => {
    const { drawn, longer, shorter } = frontShares({ ...PLANTER, frontLonger: metres(0.004) }, metres(0.001))
    expect(longer).toBeLessThan(drawn!)
    expect(shorter).toBeGreaterThan(drawn!)
  })

  test('says what is wrong', () => {
    expect(panel({ ...PLANTER, back: [metres(0.02), metres(-0.14)] })).toEqual({ ok: false, reason: 'besidePot', across: -0.14 })
    expect(panel({ ...PLANTER, edgeHeight: metres(0.9) })).toEqual({ ok: false, reason: 'offRim' })
    expect(panel({ ...PLANTER, back: [] })).toMatchObject({ ok: false, reason: 'noRest', result: { status: 'ERROR', error: 'TOO_FEW_LEGS' } })
  })

  test('puts the strands’ loads where they are on the stick', () => {
    const { edge } = hung({})
    const loads = onStick(edge, metres(0.4))
    ;[0.33, 0.07, 0.15, 0.25].forEach((at, i) => expect(loads[i]?.at).toBeCloseTo(at, 12))
    expect(loads.reduce((s, load) => s + load.force, 0)).toBeCloseTo(43, 6)
  })

  test('leans less from a longer drop, and needs one', () => {
    const lean = { weight: newtons(43), centreFromWall: metres(0.112), projection: metres(0.03), drop: metres(0.5), edgeBelow: metres(0.3) }
    expect(panelLean(lean)).toMatchObject({ ok: true, fixing: { pull: expect.closeTo((43 * 0.082) / 0.5, 12) as number }, edgeFromWall: expect.closeTo(0.03 + (0.3 * 0.082) / 0.5, 12) as number })
    expect(panelLean({ ...lean, drop: metres(0) })).toEqual({ ok: false, reason: 'noDrop' })
  })
})
