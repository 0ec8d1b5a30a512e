import { describe, expect, test } from 'vitest'
import { BOARD_FIXINGS, BRACKET_MOMENT, SECOND_MAKER_TOGGLES, WINGED_FIXING } from '../../../src/catalogue/boardFixings'
import { CHAIN_BREAK_OVER_LIMIT, PROOF_COIL, UNWELDED_CHAIN } from '../../../src/catalogue/chain'
import { ELECTRICAL_BOXES } from '../../../src/catalogue/ceilings'
import { CONE_ROOM, CONCRETE_CONE } from '../../../src/catalogue/concrete'
import { EYE_BOLT_M12, OPEN_HOOK_OVER_EYE, SNAP_HOOKS, TURNBUCKLE_ENDS, WELDED_RING } from '../../../src/catalogue/connectors'
import { NYLON_PLUGS, PLUG_BASES, PLUG_SAFETY, PLUG_ULTIMATES } from '../../../src/catalogue/plugs'
import { SCREW_GAUGES, screwGauge } from '../../../src/catalogue/screws'
import { BAMBOO, UNKNOWN_WOOD } from '../../../src/catalogue/sticks'
import { TIMBER_GRAVITY, TIMBER_SPECIES } from '../../../src/catalogue/timber'
import { WOODS } from '../../../src/catalogue/woods'
import { concreteCone } from '../../../src/check/concreteCone'
import { INCH, metres, pascals, POUND, STANDARD_GRAVITY } from '../../../src/quantity/si'

const LBF = POUND * STANDARD_GRAVITY

describe('screws by their number, USDA Wood Handbook, table 8-9', () => {
  // As printed, mm.
  test.each([[4, 2.84], [5, 3.18], [6, 3.51], [7, 3.84], [8, 4.17], [9, 4.5], [10, 4.83], [12, 5.49], [14, 6.15], [16, 6.81], [18, 7.47], [20, 8.13], [24, 9.45]])('No. %d: %d mm', (gauge, printed) => {
    expect(Math.abs((screwGauge(gauge)?.outside.value ?? NaN) * 1000 - printed)).toBeLessThanOrEqual(0.0051)
  })
  test('the root is 0.70 to 0.83 of the outside', () => {
    for (const { outside, root } of SCREW_GAUGES) {
      if (root === null) continue
      expect(root.value / outside.value).toBeGreaterThan(0.7)
      expect(root.value / outside.value).toBeLessThan(0.83)
    }
  })
  test('No. 11 is not sold', () => {
    expect(screwGauge(11)).toBeNull()
  })
})

describe('timber by the names it is sold under', () => {
  // AWC National Design Specification, table 12.3.3A, oven-dry.
  test.each([
    ['sprucePineFir', 0.42], ['hemFir', 0.43], ['douglasFirLarch', 0.5], ['southernPine', 0.55], ['sprucePineFirSouth', 0.36], ['easternWhitePine', 0.36],
    ['westernCedars', 0.36], ['redOak', 0.67], ['whiteOak', 0.73], ['yellowPoplar', 0.43], ['beechBirchHickory', 0.71],
  ] as const)('%s: %d', (species, gravity) => {
    expect(TIMBER_GRAVITY[species].specification.value).toBe(gravity)
  })
  test('oven-dry wood has shrunk: its gravity is never below that at 12 %', () => {
    for (const species of TIMBER_SPECIES) expect(TIMBER_GRAVITY[species].handbook.value).toBeLessThan(TIMBER_GRAVITY[species].specification.value)
  })
  test('not knowing is never better than knowing a softwood', () => {
    for (const species of TIMBER_SPECIES) {
      expect(TIMBER_GRAVITY.unknown.handbook.value).toBeLessThanOrEqual(TIMBER_GRAVITY[species].handbook.value)
      expect(TIMBER_GRAVITY.unknown.specification.value).toBeLessThanOrEqual(TIMBER_GRAVITY[species].specification.value)
    }
  })
})

describe('plugs', () => {
  test('a larger plug is never recommended for less, and stronger bases never hold less', () => {
    NYLON_PLUGS.slice(1).forEach((row, i) => {
      for (const base of PLUG_BASES) {
        const [smaller, larger] = [NYLON_PLUGS[i]?.pullOut[base], row.pullOut[base]]
        if (smaller && larger) expect(larger.low).toBeGreaterThanOrEqual(smaller.low)
      }
    })
    for (const { pullOut } of NYLON_PLUGS) {
      const order = [pullOut.concrete, pullOut.solidBrick, pullOut.perforatedBrick, pullOut.aerated].map((r) => r?.low ?? NaN)
      expect(order).toEqual([...order].sort((a, b) => b - a))
    }
  })
  // A maker's printed loads over its own factor of six: 0.82 and 0.47 kN, 1.0 and 0.82 kN, 1.87 kN. They lie in, or just beside, the ranges.
  test.each([
    ['6 mm', 'concrete', PLUG_ULTIMATES.mm6.concrete.value, 0.82], ['6 mm', 'solidBrick', PLUG_ULTIMATES.mm6.solidBrick.value, 0.47],
    ['8 mm', 'concrete', PLUG_ULTIMATES.mm8.concrete.value, 1], ['8 mm', 'solidBrick', PLUG_ULTIMATES.mm8.solidBrick.value, 0.82], ['10 mm', 'concrete', PLUG_ULTIMATES.mm10.concrete.value, 1.87],
  ] as const)('%s in %s: a sixth of %d N is %d kN', (id, base, ultimate, kilonewtons) => {
    const recommended = ultimate / PLUG_SAFETY.value
    const range = NYLON_PLUGS.find((row) => row.id === id)?.pullOut[base]
    expect(recommended / 1000).toBeCloseTo(kilonewtons, 1.9)
    expect(recommended).toBeGreaterThan(range?.low ?? NaN)
    expect(recommended).toBeLessThan((range?.high ?? NaN) * 1.03)
  })
})

describe('plasterboard', () => {
  // National Gypsum, Construction Guide, 12th edition, p. 98: 40, 70, 50 and 25 ft-lb; 54, 95, 68 and 34 N m.
  test.each([['blocksBehind13', 54], ['blocksBehind16', 95], ['steelStudsClose', 68], ['steelStudsWide', 34]] as const)('%s: %d N m', (what, moment) => {
    expect(Math.round(BRACKET_MOMENT[what].value)).toBe(moment)
  })
  test('the two makers’ toggles differ up to twice, and the first is the lower', () => {
    for (const size of ['toggleEighth', 'toggleThreeSixteenths', 'toggleQuarter'] as const) {
      const ratio = SECOND_MAKER_TOGGLES.board13[size].value / (BOARD_FIXINGS.board13[size]?.pullOut.value ?? NaN)
      expect(ratio).toBeGreaterThanOrEqual(1.5)
      expect(ratio).toBeLessThanOrEqual(2)
    }
  })
  test('pulled straight out never more than down the wall', () => {
    for (const rows of Object.values(BOARD_FIXINGS)) for (const { pullOut, shear } of Object.values(rows)) expect(pullOut.value).toBeLessThan(shear.value)
    for (const { pullOut, shear } of Object.values(WINGED_FIXING)) expect(pullOut.high).toBeLessThan(shear.low)
  })
  // 30 lb is 133 N, 155 lb 689 N.
  test('pounds are pounds-force', () => {
    expect(Math.round(BOARD_FIXINGS.board13.toggleThreeSixteenths?.pullOut.value ?? NaN)).toBe(133)
    expect(Math.round(BOARD_FIXINGS.board13OnSteelStud.toggleQuarter?.pullOut.value ?? NaN)).toBe(689)
  })
})

describe('chain, hooks and rings', () => {
  // Proof coil chain, grade 30: 400, 800, 1300, 1900 lb are 1.78, 3.56, 5.78, 8.45 kN.
  test.each([['1/8 in', 1.78], ['3/16 in', 3.56], ['1/4 in', 5.78], ['5/16 in', 8.45]])('welded chain of %s: %d kN', (id, kilonewtons) => {
    expect((PROOF_COIL.find((row) => row.id === id)?.limit.value ?? NaN) / 1000).toBeCloseTo(kilonewtons, 2)
  })
  test('unwelded chain: jack No. 10 191 N, No. 12 129 N, double loop No. 2 512 N', () => {
    expect(UNWELDED_CHAIN.slice(0, 3).map(({ limit }) => Math.round(limit.value))).toEqual([191, 129, 512])
  })
  test('a welded ring holds 15.7 kN of 78 kN, five to one; chain four to one', () => {
    expect(WELDED_RING.limit.value / 1000).toBeCloseTo(15.7, 1)
    expect(WELDED_RING.breaks.value / WELDED_RING.limit.value).toBeCloseTo(5, 9)
    expect(CHAIN_BREAK_OVER_LIMIT.value).toBe(4)
  })
  // Bridco, p. 42: M4 100 against 475 kg, M5 130 against 680, M6 350 against 1500, M8 650 against 2300.
  test('an open hook opens at 0.19 to 0.28 of a closed eye', () => {
    expect(OPEN_HOOK_OVER_EYE.low).toBeCloseTo(130 / 680, 12)
    expect(OPEN_HOOK_OVER_EYE.high).toBeCloseTo(650 / 2300, 12)
    expect(TURNBUCKLE_ENDS.map(({ hook }) => Math.round(hook.value / STANDARD_GRAVITY))).toEqual([100, 130, 350, 650])
  })
  test('snap hooks in newtons, and an eye bolt pulled its worst way holds a sixth', () => {
    expect(SNAP_HOOKS.find(({ id }) => id === 'cast, 70 mm long')?.deforms.value).toBeCloseTo(250 * STANDARD_GRAVITY, 9)
    expect(EYE_BOLT_M12.worst.value / EYE_BOLT_M12.best.value).toBeCloseTo(0.16, 12)
  })
  // NEC 314.27: 50 lb is 23 kg, 70 lb 32 kg, 35 lb 16 kg.
  test('electrical boxes', () => {
    expect(Object.values(ELECTRICAL_BOXES).map(({ value }) => Math.round(value))).toEqual([23, 32, 16])
  })
})

describe('a cone of concrete, an upper bound', () => {
  // EN 1992-4, k = 7.7, cylinder strength 20 MPa: 30, 40 and 50 mm deep 5.7, 8.7 and 12.2 kN.
  test.each([[30, 5.7], [40, 8.7], [50, 12.2]])('%d mm deep: %d kN', (depth, kilonewtons) => {
    expect(concreteCone('crackedPostInstalled', pascals(20e6), metres(depth / 1000)) / 1000).toBeCloseTo(kilonewtons, 1)
  })
  // ACI prints k = 24 and 17 for pounds, psi and inches, and whole numbers for N, MPa and mm.
  test.each([['castIn', 24], ['postInstalled', 17]] as const)('%s: %d in pounds is the metric one, which is rounded to a whole number', (kind, k) => {
    const metric = (k * LBF) / Math.sqrt(LBF / INCH ** 2 / 1e6) / (INCH * 1000) ** 1.5
    expect(CONCRETE_CONE[kind].value / (1000 ** 1.5 / 1000)).toBeCloseTo(Math.round(metric), 9)
  })
  test('it lies far above what any plug is recommended for', () => {
    const recommended = NYLON_PLUGS.find(({ id }) => id === '8 mm')?.pullOut.concrete?.high ?? NaN
    expect(concreteCone('crackedPostInstalled', pascals(20e6), metres(0.04))).toBeGreaterThan(5 * recommended)
  })
  test('room: the projected area of a whole cone is 9 h^2 (ACI 318), half its side to an edge, its side between', () => {
    expect(CONE_ROOM.between.value ** 2).toBe(9)
    expect(CONE_ROOM.toEdge.value).toBe(CONE_ROOM.between.value / 2)
  })
  test('cracked holds less than sound in every pair', () => {
    expect(CONCRETE_CONE.crackedPostInstalled.value).toBeLessThan(CONCRETE_CONE.uncrackedPostInstalled.value)
    expect(CONCRETE_CONE.crackedHeaded.value).toBeLessThan(CONCRETE_CONE.uncrackedHeaded.value)
    expect(CONCRETE_CONE.crackedCube.value).toBeLessThan(CONCRETE_CONE.uncrackedCube.value)
  })
})

describe('sticks of unknown wood and bamboo', () => {
  test('unknown wood is no stronger than the weakest listed', () => {
    expect(UNKNOWN_WOOD.value).toBeLessThanOrEqual(Math.min(...Object.values(WOODS).map(({ rupture }) => rupture.value)))
  })
  // J. Renewable Materials 2022, doi 10.32604/jrm.2022.019882.
  test('bamboo splits at a small share of its strength along the culm', () => {
    expect(BAMBOO.splitWall.value).toBeLessThan(BAMBOO.splitNode.value)
    expect(BAMBOO.splitNode.value).toBeLessThan(BAMBOO.splitDiaphragm.value)
    expect(BAMBOO.splitWall.value / BAMBOO.rupture.low).toBeLessThan(0.07)
  })
})
