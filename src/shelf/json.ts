/** Whether a parsed value is an object with keys. */
export const isRecord = (x: unknown): x is Record<string, unknown> => typeof x === 'object' && x !== null && !Array.isArray(x)

/** What was found, as it stands in its file and short enough for a sentence. */
export const shown = (x: unknown): string => JSON.stringify(x ?? null).slice(0, 60)
