import { posix, relative, sep } from 'node:path'
import { layers } from './layers.js'

const within = (name, place) => name === place || name.startsWith(place.endsWith(':') ? place : `${place}/`)
const withoutExtension = (path) => path.replace(/\?.*$/, '').replace(/\.(ts|vue|mjs|js|cjs|json)$/, '')
const homeOf = (path) => Object.keys(layers).filter((layer) => within(path, layer)).sort((a, b) => b.length - a.length)[0]
const list = (names) => (names.length ? names.join(', ') : 'none')

/**
 * Judges one import by the table.
 * @param {string} file path of the importing file from the root, with forward slashes
 * @param {string} source what stands between the quotes
 * @param {boolean} typeOnly whether the whole declaration says `import type`
 * @returns {string | null} what is wrong, naming what would be allowed, or null
 */
export function judgeImport(file, source, typeOnly) {
  const path = withoutExtension(file)
  const home = homeOf(path)
  if (!home) return within(path, 'src') ? `${posix.dirname(path)} has no line in tests/tools/layers.js.` : null
  const { values, types, packages } = layers[home]
  if (!source.startsWith('.')) {
    if (packages.some((name) => within(source, name))) return null
    return `${home} may not import the package ${source}; allowed packages: ${list(packages)}.`
  }
  const target = withoutExtension(posix.join(posix.dirname(file), source))
  if (homeOf(target) === home || values.some((layer) => within(target, layer))) return null
  if (typeOnly && types.some((layer) => within(target, layer))) return null
  return `${home} may not import ${target}; allowed layers: ${list(values)}; as types only: ${list(types)}.`
}

/**
 * ESLint rule `strandwise/layers`: every way of naming another file is held against the table.
 * @type {import('eslint').Rule.RuleModule}
 */
export const layersRule = {
  meta: { type: 'problem', schema: [], messages: { forbidden: '{{ reason }}' } },
  create(context) {
    const file = relative(context.cwd, context.filename).split(sep).join('/')
    const judge = (node, source, typeOnly) => {
      if (source?.type !== 'Literal' || typeof source.value !== 'string') return
      const reason = judgeImport(file, source.value, typeOnly)
      if (reason) context.report({ node, messageId: 'forbidden', data: { reason } })
    }
    return {
      ImportDeclaration: (node) => judge(node, node.source, node.importKind === 'type'),
      ExportNamedDeclaration: (node) => judge(node, node.source, node.exportKind === 'type'),
      ExportAllDeclaration: (node) => judge(node, node.source, node.exportKind === 'type'),
      ImportExpression: (node) => judge(node, node.source, false),
      TSImportType: (node) => judge(node, node.source ?? node.argument?.literal, true),
      // `new Worker(new URL('./job.ts', import.meta.url))` brings a file in as surely as an import does.
      NewExpression: (node) => {
        if (node.callee.name === 'URL' && node.arguments[1]?.type === 'MemberExpression') judge(node, node.arguments[0], false)
      },
    }
  },
}
