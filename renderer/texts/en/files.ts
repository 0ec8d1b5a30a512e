/** Files: how they are called, and what became of them. */
export const FILES = {
  /** Name offered for a hanger that has none. */
  unnamed: 'Hanger',
  /** Name of a file for which none is left, without its ending. */
  fileStem: 'hanger',
  savedAs: (file: string) => `Saved as ${file}.`,
  writtenTo: (file: string) => `Written to ${file}.`,
  /** What the browser's pickers call each kind of file. */
  kinds: { strandwise: 'Strandwise hanger', svg: 'Drawing (SVG)', json: 'JSON', html: 'Web page', csv: 'Table (CSV)' },
} as const
