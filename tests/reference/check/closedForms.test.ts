import { describe, expect, test } from 'vitest'
import { metres, newtons, radians } from '../../../src/quantity/si'
import { afterTurn, edgeForce, splayHoop, wrapGrip } from '../../../src/statics/friction'
import { criticalHeight } from '../sling/criticalHeight'
import { lockedSeatLimit, noSlipOffset, slidingSeatLimit } from '../../../src/statics/seat'

// Textbook statics; expected values are written as the hand formula, or found by summing small pieces.

describe('cord round a bend (Euler and Eytelwein)', () => {
  // A turn in 200 000 pieces, each of which takes friction times its normal force.
  function byPieces(tension: number, friction: number, turn: number): number {
    const pieces = 200_000
    let left = tension
    for (let i = 0; i < pieces; i++) left -= friction * left * (turn / pieces)
    return left
  }

  test.each([[37, 0.24, 1.73], [112, 0.12, 4.1], [5, 0.51, Math.PI / 2]])('%d N, mu %d, turned by %d rad', (tension, friction, turn) => {
    expect(afterTurn(newtons(tension), friction, radians(turn)) / byPieces(tension, friction, turn)).toBeCloseTo(1, 5)
  })

  test('two bends in a row are one of both turns', () => {
    const twice = afterTurn(afterTurn(newtons(61), 0.24, radians(1.1)), 0.24, radians(0.6))
    expect(twice).toBeCloseTo(61 * Math.exp(-0.24 * 1.7), 12)
  })
})

test('an edge bears what two tensions along a bent cord add up to as vectors', () => {
  for (const [before, after, turn] of [[37, 52, 0.4], [80, 44, 1.9], [25, 25, Math.PI]] as const) {
    // The cord comes along x and goes on turned; it pulls the edge back along the one and on along the other.
    const [x, y] = [after * Math.cos(turn) - before, after * Math.sin(turn)]
    expect(edgeForce(newtons(before), newtons(after), radians(turn))).toBeCloseTo(Math.hypot(x, y), 12)
  }
})

describe('wraps round a bundle', () => {
  // A wrap of tension t on radius r presses t / r per length of its circle 2 pi r: the radius drops out.
  test.each([0.004, 0.013])('grip on a bundle of radius %d m', (radius) => {
    const [friction, wraps, tension] = [0.3, 7, 28]
    const normal = wraps * (tension / radius) * (2 * Math.PI * radius)
    expect(wrapGrip(friction, wraps, newtons(tension))).toBeCloseTo(friction * normal, 9)
  })

  // Half a hoop cut free: two cuts hold the sum of the pulls' components across the cut.
  test.each([4, 7, 12])('hoop tension under %d even pulls of 19 N, the mean over all cuts', (strands) => {
    const cuts = 3600
    let sum = 0
    for (let i = 0; i < cuts; i++) {
      const cut = (2 * Math.PI * i) / cuts + 1e-4
      for (let s = 0; s < strands; s++) sum += Math.max(0, 19 * Math.sin((2 * Math.PI * s) / strands - cut))
    }
    expect(splayHoop(strands, newtons(19))).toBeCloseTo(sum / cuts / 2, 4)
  })
})

describe('a pot whose strands may slide', () => {
  const limit = (a: number, b: number, l: number): number => {
    const h = Math.sqrt(l * l - a * a)
    return slidingSeatLimit({ leaveRadius: metres(a), baseRadius: metres(b), free: metres(l), rise: metres(h) })
  }

  // Derived by energy, eight unknowns (pose of the pot and place of the knot); by hand for a 105, b 70, l 640 mm:
  // q = 0.011025 / 0.0896 - 0.011025 / 0.8192 = 0.123047 - 0.013458, h = 631.33 mm, y = 631.33 x 0.109588 / 1.109588.
  test('by hand: rim 210, base 140, free leg 640 mm', () => {
    expect(limit(0.105, 0.07, 0.64) * 1000).toBeCloseTo(62.35, 1)
  })

  test('ordinary pots gain some 50 to 80 mm', () => {
    for (const [a, b, l] of [[0.09, 0.063, 0.6], [0.105, 0.07, 0.64], [0.13, 0.09, 0.75]] as const) {
      expect(limit(a, b, l)).toBeGreaterThan(0.05)
      expect(limit(a, b, l)).toBeLessThan(0.08)
    }
  })

  test('as wide below as above on long legs it tends to half the radius', () => {
    // b = a, l >> a: q -> a / (2 l), h -> l, y -> a / 2.
    expect(limit(0.1, 0.1, 400)).toBeCloseTo(0.05, 4)
  })

  test('a base narrowed to a point gives the whole height', () => {
    // b -> 0: q grows without end, y -> h: a plumb bob.
    expect(limit(0.1, 1e-9, 0.7) / Math.sqrt(0.49 - 0.01)).toBeCloseTo(1, 6)
  })

  test('free legs no longer than the base is wide from its middle gain nothing: q = 0 at l = b', () => {
    const a = 0.08
    expect(slidingSeatLimit({ leaveRadius: metres(a), baseRadius: metres(0.5), free: metres(0.5), rise: metres(Math.sqrt(0.25 - a * a)) })).toBeCloseTo(0, 14)
  })

  test('a wider base is worse', () => {
    expect(limit(0.1, 0.09, 0.7)).toBeLessThan(limit(0.1, 0.06, 0.7))
  })
})

describe('a pot whose strands are locked', () => {
  // zb_crit of a symmetric sling from one hook (r0 = 0): -h a2 / (2 eps l2 + a2) in its small-motion form.
  test.each([[0.105, 0.64, 0.012], [0.08, 0.31, 0.002], [0.15, 1.1, 0.08]])('leave radius %d, leg %d m, strain %d', (a, l, strain) => {
    const h = Math.sqrt(l * l - a * a)
    const locked = lockedSeatLimit(metres(a), metres(l), metres(h), strain)
    expect(locked).toBeCloseTo((h * a * a) / (2 * strain * l * l + a * a), 14)
    const critical: number = criticalHeight({ radius: metres(a), ring: metres(0), height: metres(h), strain })
    expect(-critical).toBeCloseTo(locked, 14)
  })

  test('that do not stretch hang like a pendulum: up to the hook', () => {
    const h = Math.sqrt(0.49 - 0.01)
    expect(lockedSeatLimit(metres(0.1), metres(0.7), metres(h), 0)).toBe(h)
  })

  test('always gain more than strands that slide, short of very soft ones', () => {
    for (const [a, b, l] of [[0.09, 0.063, 0.4], [0.13, 0.125, 0.9]] as const) {
      const rise = metres(Math.sqrt(l * l - a * a))
      const sliding = slidingSeatLimit({ leaveRadius: metres(a), baseRadius: metres(b), free: metres(l), rise })
      expect(lockedSeatLimit(metres(a), metres(l), rise, 0.01)).toBeGreaterThan(sliding)
    }
  })
})

describe('friction over rim and base', () => {
  // One pair of opposite strands: at the knot T1 e^(-mu alpha) may balance T2 e^(+mu alpha); the weight sits
  // where moments about the axis balance, e / a = (T1 - T2) / (T1 + T2).
  test.each([[0.24, 1.75], [0.12, 2.4], [0.3, 1.6]])('mu %d, turn %d rad: the offset it holds', (friction, turn) => {
    const [strong, weak] = [Math.exp(friction * turn), Math.exp(-friction * turn)]
    expect(noSlipOffset(friction, turn)).toBeCloseTo((strong - weak) / (strong + weak), 14)
  })
})
