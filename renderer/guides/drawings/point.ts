/** A place on a drawing, y downwards. */
export type Spot = readonly [x: number, y: number]

/** From one spot to another: its length, its direction, and what lies to its side. */
export function wayOf(from: Spot, to: Spot): { readonly length: number, readonly along: Spot, readonly aside: Spot } {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]]
  const length = Math.max(1e-9, Math.hypot(dx, dy))
  return { length, along: [dx / length, dy / length], aside: [-dy / length, dx / length] }
}

/** A spot moved by so much in a direction. */
export const moved = ([x, y]: Spot, by: number, [dx, dy]: Spot): Spot => [x + by * dx, y + by * dy]

/** A line through spots, as the text of a path. */
export const pathThrough = (spots: readonly Spot[]): string => spots.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('')
