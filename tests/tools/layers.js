/**
 * Who may import whom, as data. A layer is a folder (or one file, named without its extension) and
 * may always import itself; `values` lists the further layers it may import, `types` those of which
 * only `import type` is allowed, `packages` the packages. `src/quantity` admits all below it,
 * `node:` every module of Node. Files that belong to no layer (tests, tools, configuration) are free,
 * except in src, where every folder must have its line here.
 */
const core = ['src/quantity', 'src/catalogue', 'src/hanger', 'src/load', 'src/statics', 'src/check']

export const layers = {
  'src/quantity': { values: [], types: [], packages: ['zod'] },
  'src/statics': { values: ['src/quantity/si'], types: [], packages: ['zod'] },
  'src/catalogue': { values: ['src/quantity'], types: [], packages: ['zod'] },
  'src/hanger': { values: ['src/quantity', 'src/catalogue'], types: [], packages: ['zod'] },
  'src/shelf': { values: ['src/quantity', 'src/catalogue', 'src/hanger'], types: [], packages: ['zod'] },
  'src/load': { values: ['src/quantity', 'src/catalogue', 'src/hanger', 'src/statics'], types: [], packages: ['zod'] },
  'src/check': { values: ['src/quantity', 'src/catalogue', 'src/hanger', 'src/load', 'src/statics'], types: [], packages: ['zod'] },
  'src/advice': { values: core, types: [], packages: ['zod'] },
  'src/chance': { values: core, types: [], packages: ['zod', 'pure-rand'] },
  'src/choosing': { values: [...core, 'src/advice'], types: [], packages: ['zod'] },
  'src/maps': { values: [...core, 'src/advice'], types: [], packages: ['zod'] },
  'src/compare': { values: [...core, 'src/advice', 'src/cordPlan'], types: [], packages: ['zod'] },
  'src/batch': { values: [...core, 'src/advice'], types: [], packages: ['zod'] },
  'src/cordPlan': { values: core, types: [], packages: ['zod'] },
  'src/words': { values: ['src/quantity'], types: [...core, 'src/advice', 'src/choosing', 'src/maps', 'src/compare', 'src/chance', 'src/batch', 'src/cordPlan', 'src/shelf'], packages: ['zod'] },
  'src/drawing': { values: ['src/quantity'], types: core, packages: ['zod'] },
  'src/sheet': { values: [...core, 'src/advice', 'src/chance', 'src/cordPlan', 'src/words', 'src/drawing'], types: [], packages: ['zod', '@fontsource/alegreya-sans'] },
  'src/index': { values: [...core, 'src/shelf', 'src/advice', 'src/choosing', 'src/maps', 'src/compare', 'src/chance', 'src/batch', 'src/cordPlan', 'src/words', 'src/drawing', 'src/sheet'], types: [], packages: ['zod'] },
  'src/cli': { values: ['src'], types: [], packages: ['zod', 'node:', 'csv-parse', 'csv-stringify'] },
  renderer: { values: ['package'], types: ['electron/contract'], packages: ['#core', 'vue', 'pinia', 'mathjs/number', 'd3-scale', 'd3-shape', 'd3-contour', 'csv-stringify'] },
  electron: { values: [], types: [], packages: ['#core', 'node:', 'electron'] },
  'electron/preload': { values: ['electron/contract'], types: [], packages: ['electron'] },
  'electron/launch': { values: ['electron/contentSecurityPolicy'], types: [], packages: ['node:'] },
}
