/**
 * The hanger as it was sold, kept in its own file and never changed later: the whole file as text, and
 * what the check said of it that day.
 */
export interface SoldCopy {
  /** YYYY-MM-DD */
  readonly date: string
  /** Verdicts in the words of the check, on the whole, the hanger and the place. */
  readonly verdict: string
  readonly hanger: string
  readonly place: string
  /** Heaviest watered pot that was promised, kg; null where none was. */
  readonly heaviest: number | null
  /** The hanger file of that day. */
  readonly file: string
}

/** Longest file that is kept so, characters. */
export const MOST_SOLD = 200_000
const DAY_TEXT = /^\d{4}-\d{2}-\d{2}$/

/** A frozen copy from parsed JSON; null where it is none, so that its key is kept as one that is not known. */
export function readSoldCopy(json: unknown): SoldCopy | null {
  if (typeof json !== 'object' || json === null) return null
  const { date, verdict, hanger, place, heaviest, file, ...others } = json as Record<string, unknown>
  if (Object.keys(others).length > 0 || typeof date !== 'string' || !DAY_TEXT.test(date) || typeof file !== 'string' || file.length > MOST_SOLD) return null
  if (typeof verdict !== 'string' || typeof hanger !== 'string' || typeof place !== 'string') return null
  if (heaviest !== null && (typeof heaviest !== 'number' || !Number.isFinite(heaviest) || heaviest <= 0)) return null
  return { date, verdict, hanger, place, heaviest, file }
}
