import type { InputCode } from './inputs'

/** Which of a hanger's standard normal numbers belong to which input. */
export interface Layout {
  /** The first of so many more numbers for an input. */
  readonly take: (input: InputCode, count: number) => number
  readonly inputs: () => readonly InputCode[]
  /** Numbers of each input, in the order of `inputs`. */
  readonly places: () => readonly (readonly number[])[]
  readonly size: () => number
}

export function newLayout(): Layout {
  const places = new Map<InputCode, number[]>()
  let size = 0
  return {
    take: (input, count) => {
      const first = size
      size += count
      places.set(input, [...(places.get(input) ?? []), ...Array.from({ length: count }, (_, i) => first + i)])
      return first
    },
    inputs: () => [...places.keys()],
    places: () => [...places.values()],
    size: () => size,
  }
}
