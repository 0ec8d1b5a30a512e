// Inches, width first.
const SIZES = { A4: [8.27, 11.7], Letter: [8.5, 11] }

/** Electron's options for printing to PDF in the words of the DevTools protocol. */
export function printOptions({ pageSize = 'Letter', ...options }) {
  const [paperWidth, paperHeight] = SIZES[pageSize]
  return { paperWidth, paperHeight, ...options }
}
