/** Keys of a file that this version does not know; they are kept and written back. */
export type Extra = Readonly<Record<string, unknown>>
