import type { SlingInput, Vec3 } from '../../../../src/statics/sling/result'

/**
 * A hanger of 3 to 12 legs with everything unequal: places, lengths (up to 30 mm apart), stiffnesses,
 * centre of gravity; hung from a ring, sometimes from one point; made to lean on a wall if asked.
 */
export function randomHanger(random: () => number, leaning: boolean): SlingInput {
  const between = (low: number, high: number): number => low + (high - low) * random()
  const legs = 3 + Math.floor(10 * random())
  const radius = between(0.06, 0.2)
  const ring = random() < 0.3 ? 0 : between(0.01, 0.15)
  const leave = between(0.05, 0.3)
  const length = between(0.35, 1.3)
  const spread = random() < 0.3 ? 0 : between(0, 0.015)
  const turn = between(0, 2 * Math.PI)
  const away = leaning ? between(0, 0.1) : 0
  const A: Vec3[] = []
  const B: Vec3[] = []
  const L0: number[] = []
  const EA: number[] = []
  for (let i = 0; i < legs; i++) {
    const angle = turn + (2 * Math.PI * (i + between(-0.25, 0.25))) / legs
    const reach = radius * between(0.9, 1.1)
    A.push([ring * Math.cos(angle), ring * Math.sin(angle) - away, 2 + ring * between(-0.1, 0.1)])
    B.push([reach * Math.cos(angle), reach * Math.sin(angle), leave + between(-0.01, 0.01)])
    L0.push(length + spread * between(-1, 1))
    EA.push(between(600, 6000))
  }
  return {
    A, B, L0, EA, mass: between(0.8, 22), cg: [radius * between(-0.2, 0.2), radius * between(-0.2, 0.2), leave * between(0.2, 1)],
    ell: radius, gravity: 9.80665,
    wall: leaning
      ? { n: [0, 1, 0], d: 0, contacts: [{ type: 'circle', z: leave + 0.02, r: 1.1 * radius }, { type: 'circle', z: 0, r: radius * between(0.5, 1) }] }
      : null,
  }
}
