// A parser that takes types from one program for all code.
import { resolve } from 'node:path'
import ts from 'typescript'
import tseslint from 'typescript-eslint'

const root = resolve(import.meta.dirname, '../..')
const { parser } = tseslint
const SCRIPT = /<script[^>]*>([^]*?)<\/script>/
// An editor's linter lives on while files change, and would be told of types as they were.
const runsOnce = /[\\/]eslint(\.js)?$/.test(process.argv[1] ?? '')

function makeProgram() {
  const { config } = ts.readConfigFile(resolve(root, 'tests/tsconfig.json'), ts.sys.readFile)
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, resolve(root, 'tests'))
  const files = ts.sys.readDirectory(root, ['.ts', '.vue'], ['node_modules', 'out', 'packaging', 'tests/reference', 'tests/bench', 'tests/unit'], ['**/*'])
  const tests = ts.sys.readDirectory(resolve(root, 'tests/unit'), ['.ts'], [], ['electron', 'cli', 'tools'])
  const host = ts.createCompilerHost(options, true)
  const { getSourceFile } = host
  host.getSourceFile = (file, ...rest) => file.endsWith('.vue')
    ? ts.createSourceFile(file, SCRIPT.exec(ts.sys.readFile(file) ?? '')?.[1] ?? '', rest[0], true, ts.ScriptKind.TS)
    : getSourceFile(file, ...rest)
  return ts.createProgram([...files, ...tests], { ...options, allowNonTsExtensions: true }, host)
}

let made

/**
 * The linter's own service makes a program for each configuration, each with the core in it, and a new one for
 * each component file: twice the work of all else in linting. It still serves where a text is not the file's.
 */
export const oneProgram = {
  ...parser,
  parseForESLint(code, options) {
    if (!runsOnce || !options.projectService) return parser.parseForESLint(code, options)
    made ??= makeProgram()
    const known = made.getSourceFile(options.filePath)?.text === code
    return parser.parseForESLint(code, known ? { ...options, projectService: false, programs: [made] } : options)
  },
}
