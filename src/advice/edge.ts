/** What trying one value came to. */
export interface Tried {
  readonly holds: boolean
}

export interface Trial<T extends Tried> {
  readonly value: number
  readonly outcome: T
}

/** The values of a scan that hold, next to each other from the safe end on. */
export interface Edge<T extends Tried> {
  /** The last that holds, seen from the safe end. */
  readonly last: Trial<T>
  /** The first that does not, beyond it; null where the far end of the scan still holds. */
  readonly beyond: Trial<T> | null
  /** The first that holds, seen from the safe end. */
  readonly first: Trial<T>
  /** The last that does not, before it; null where the safe end itself holds. */
  readonly before: Trial<T> | null
  /** Values of the scan that hold again beyond one that does not: they are not trusted. */
  readonly again: readonly number[]
}

export interface EdgeSearch<T extends Tried> {
  /** Null where none of the values tried holds. */
  readonly edge: Edge<T> | null
  /** All that was tried, the scan first, from its safe end. */
  readonly trials: readonly Trial<T>[]
}

/** A value between two that were tried, one of which holds; null where they are close enough. */
export type Halve = (holding: number, failing: number) => number | null

/** A multiple of a step without what binary fractions leave behind. */
export const multiple = (count: number, step: number): number => Number((count * step).toPrecision(12))

/** Whole multiples of a step, to the last one; a step of 1 for counts. */
export const halveBy = (step: number): Halve => (holding, failing) => {
  const [a, b] = [Math.round(holding / step), Math.round(failing / step)]
  return Math.abs(a - b) <= 1 ? null : multiple(Math.round((a + b) / 2), step)
}

/** Halves until the two are as close as this. */
export const halveTo = (close: number): Halve => (holding, failing) => (Math.abs(holding - failing) <= close ? null : (holding + failing) / 2)

/** Only the values listed are sold. */
export const asListed: Halve = () => null

/**
 * Where values stop holding: a coarse scan from the safe end to the far one, then halving between the last that holds
 * and the first that does not. Values that hold again beyond such a gap are not trusted. Values at the safe end that do
 * not hold are passed over, and told. Yields each trial, so that a long search can be stopped.
 */
export function* searchEdge<T extends Tried>(steps: readonly number[], at: (value: number) => T, halve: Halve): Generator<Trial<T>, EdgeSearch<T>, void> {
  const trials: Trial<T>[] = []
  const attempt = (value: number): Trial<T> => {
    const trial = { value, outcome: at(value) }
    trials.push(trial)
    return trial
  }
  for (const step of steps) yield attempt(step)
  const scanned = [...trials]
  const start = scanned.findIndex(({ outcome }) => outcome.holds)
  if (start < 0) return { edge: null, trials }
  const gap = scanned.findIndex(({ outcome }, i) => i > start && !outcome.holds)
  const end = gap < 0 ? scanned.length - 1 : gap - 1

  function* between(holding: Trial<T>, failing: Trial<T> | null): Generator<Trial<T>, readonly [Trial<T>, Trial<T> | null], void> {
    let [inner, outer] = [holding, failing]
    for (;;) {
      const middle = outer === null ? null : halve(inner.value, outer.value)
      if (middle === null) return [inner, outer]
      const trial = attempt(middle)
      yield trial
      if (trial.outcome.holds) inner = trial
      else outer = trial
    }
  }
  const [last, beyond] = yield* between(scanned[end] as Trial<T>, scanned[end + 1] ?? null)
  const [first, before] = yield* between(scanned[start] as Trial<T>, scanned[start - 1] ?? null)
  const again = scanned.slice(end + 1).filter(({ outcome }) => outcome.holds).map(({ value }) => value)
  return { edge: { last, beyond, first, before, again }, trials }
}

/** Only the last value that holds before the first that does not: as `searchEdge` finds it, with nothing tried beyond; null where none holds. */
export function lastThatHolds(steps: readonly number[], holds: (value: number) => boolean, halve: Halve): number | null {
  let [inner, outer]: [number | null, number | null] = [null, null]
  for (const step of steps) {
    if (holds(step)) inner = step
    else if (inner !== null) {
      outer = step
      break
    }
  }
  if (inner === null) return null
  while (outer !== null) {
    const middle = halve(inner, outer)
    if (middle === null) break
    if (holds(middle)) inner = middle
    else outer = middle
  }
  return inner
}

/** Runs a search to its end at once. */
export function finish<Answer>(search: Generator<unknown, Answer, void>): Answer {
  let step = search.next()
  while (step.done !== true) step = search.next()
  return step.value
}
