/** Answers `import 'electron'` with the stand-in; there is but one, for it is found by its address. */
export const resolve = (specifier, context, next) =>
  specifier === 'electron' ? { url: new URL('./electron.mjs', import.meta.url).href, shortCircuit: true } : next(specifier, context)
