import { resolve } from 'node:path'
import js from '@eslint/js'
import globals from 'globals'
import tseslint from 'typescript-eslint'
import vue from 'eslint-plugin-vue'
import accessibility from 'eslint-plugin-vuejs-accessibility'
import { layersRule } from './layersRule.js'
import { oneProgram } from './oneProgram.js'

const root = resolve(import.meta.dirname, '../..')
const shipped = ['src/**/*.ts', 'electron/**/*.ts', 'renderer/**/*.ts']
const renderer = ['renderer/**/*.{ts,vue}']
const core = { files: ['src/**/*.ts'], ignores: ['src/cli/**', '**/*.d.ts'] }

const noDefaultExport = { selector: 'ExportDefaultDeclaration, ExportSpecifier[exported.name="default"]', message: 'Named exports only.' }
const noBarrel = { selector: 'ExportAllDeclaration', message: 'No barrels: name what is exported.' }
const noHiddenInput = [
  { selector: 'MemberExpression[object.name="Math"][property.name="random"]', message: 'Chance is passed in.' },
  { selector: 'MemberExpression[object.name="Date"][property.name="now"]', message: 'The clock is passed in.' },
  { selector: 'NewExpression[callee.name="Date"][arguments.length=0], CallExpression[callee.name="Date"]', message: 'The clock is passed in.' },
  { selector: ':function > AssignmentPattern.params', message: 'No default parameters in the core.' },
  { selector: ':function > Identifier.params[optional=true]', message: 'No optional parameters in the core.' },
]

/** Attributes that are read out or shown. */
const SAID_ATTRIBUTES = ['aria-label', 'aria-description', 'aria-placeholder', 'aria-roledescription', 'aria-valuetext', 'alt', 'label', 'placeholder', 'title']
const SAID = ['VElement > VExpressionContainer', `VAttribute[directive=true][key.name.name="bind"][key.argument.name=/^(${SAID_ATTRIBUTES.join('|')})$/] > VExpressionContainer`]
const IN_CATALOGUE = 'What the window says stands in renderer/texts.'
const bareStrings = SAID.flatMap((said) => ['> Literal', 'ConditionalExpression > Literal', 'LogicalExpression > Literal'].map((place) => `${said} ${place}[value=/[A-Za-z]{2}/]`).concat(`${said} TemplateElement[value.raw=/[A-Za-z]{2}/]`))
  .map((selector) => ({ selector, message: IN_CATALOGUE }))
/** Sentences in scripts; errors of a programmer are no words to a user. */
const bareSentences = ['Literal[value=/^[A-Z][a-z]+ [a-z’]/]:not(NewExpression > Literal)', 'TemplateElement[value.raw=/^[A-Z][a-z]+ [a-z’]/]'].map((selector) => ({ selector, message: IN_CATALOGUE }))

export default tseslint.config(
  // The build puts its configuration there for a moment, which may be while this looks for files.
  { ignores: ['out/**', 'coverage/**', 'test-results/**', 'playwright-report/**', 'electron.vite.config.ts.*.mjs'] },
  { linterOptions: { noInlineConfig: true, reportUnusedDisableDirectives: 'error' } },
  js.configs.recommended,
  ...tseslint.configs.recommendedTypeChecked,
  ...[...vue.configs['flat/recommended'], ...accessibility.configs['flat/recommended']].map((part) => ({ files: renderer, ...part })),
  {
    plugins: { strandwise: { rules: { layers: layersRule } } },
    languageOptions: {
      parserOptions: { parser: oneProgram, projectService: true, tsconfigRootDir: root, extraFileExtensions: ['.vue'] },
    },
    rules: {
      'strandwise/layers': 'error',
      'no-restricted-syntax': ['error', noBarrel],
      eqeqeq: 'error',
      'prefer-const': 'error',
      semi: ['error', 'never'],
      quotes: ['error', 'single', { avoidEscape: true }],
      'comma-dangle': ['error', 'always-multiline'],
    },
  },
  { files: ['**/*.ts'], languageOptions: { parser: oneProgram } },
  {
    files: ['**/*.ts', '**/*.vue'],
    rules: {
      // The type checker knows every name, the linter does not know the types' globals.
      'no-undef': 'off',
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': 'error',
      '@typescript-eslint/no-unnecessary-condition': ['error', { allowConstantLoopConditions: true }],
      '@typescript-eslint/require-await': 'off',
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
    },
  },
  { files: [...shipped, 'renderer/**/*.vue'], rules: { 'max-lines': ['error', 250] } },
  { files: shipped, ignores: ['**/*.d.ts'], rules: { 'no-restricted-syntax': ['error', noBarrel, noDefaultExport] } },
  { files: ['renderer/**/*.ts'], ignores: ['renderer/texts/**', '**/*.d.ts'], rules: { 'no-restricted-syntax': ['error', noBarrel, noDefaultExport, ...bareSentences] } },
  { files: ['renderer/**/*.vue'], rules: { 'no-restricted-syntax': ['error', noBarrel, ...bareSentences] } },
  { ...core, rules: { 'no-console': 'error', 'no-restricted-syntax': ['error', noBarrel, noDefaultExport, ...noHiddenInput] } },
  {
    // The types of Node are in sight where the renderer is checked together with its tests.
    files: renderer,
    rules: {
      'no-restricted-globals': ['error', 'process', 'Buffer', 'global', 'require', '__dirname', '__filename', 'setImmediate'],
      'no-restricted-imports': ['error', { patterns: ['node:*'] }],
    },
  },
  {
    files: ['renderer/**/*.vue'],
    rules: {
      'vue/no-v-html': 'error',
      'vue/block-lang': ['error', { script: { lang: 'ts' } }],
      'vue/component-api-style': ['error', ['script-setup']],
      // Layout is the author's: these fight over line breaks, not over meaning.
      'vue/max-attributes-per-line': 'off',
      'vue/singleline-html-element-content-newline': 'off',
      'vue/multiline-html-element-content-newline': 'off',
      'vue/html-self-closing': 'off',
      'vue/html-indent': 'off',
      'vue/html-closing-bracket-newline': 'off',
      'vue/first-attribute-linebreak': 'off',
      'vue/multi-word-component-names': 'off',
      'vuejs-accessibility/label-has-for': ['error', { required: { some: ['nesting', 'id'] } }],
      'vue/no-bare-strings-in-template': ['error', { allowlist: ['/[^\\p{L}]/u'], attributes: { '/.+/': SAID_ATTRIBUTES } }],
      'vue/no-restricted-syntax': ['error', ...bareStrings],
    },
  },
  {
    // To load the types of these many tests takes longer than to lint them, and what one forgets to await there is seen by its outcome.
    files: ['tests/unit/**/*.ts', 'tests/reference/**/*.ts', 'tests/bench/**/*.ts'],
    ignores: ['tests/unit/{electron,cli,tools}/**'],
    ...tseslint.configs.disableTypeChecked,
    languageOptions: { parserOptions: { projectService: false, project: false } },
  },
  {
    files: ['**/*.{js,mjs,cjs}'],
    ...tseslint.configs.disableTypeChecked,
    languageOptions: { globals: globals.node, parserOptions: { projectService: false, project: false } },
  },
  // Its functions run in the page, by their source text.
  { files: ['tests/desktop/standin/pageBridge.mjs'], languageOptions: { globals: globals.browser } },
  { files: ['**/*.cjs'], rules: { '@typescript-eslint/no-require-imports': 'off' }, languageOptions: { sourceType: 'commonjs' } },
)
