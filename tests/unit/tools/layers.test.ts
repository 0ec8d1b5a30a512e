import { Linter } from 'eslint'
import tseslint from 'typescript-eslint'
import vueParser from 'vue-eslint-parser'
import { describe, expect, it } from 'vitest'
import { layersRule } from '../../tools/layersRule.js'

const lint = (filename: string, code: string): string[] => {
  const linter = new Linter({ cwd: '/project' })
  const parser = filename.endsWith('.vue') ? vueParser : tseslint.parser
  const config: Linter.Config = {
    files: ['**/*.{ts,mjs,vue}'],
    plugins: { strandwise: { rules: { layers: layersRule } } },
    languageOptions: { parser, parserOptions: { parser: tseslint.parser } },
    rules: { 'strandwise/layers': 'error' },
  }
  return linter.verify(code, [config], { filename: `/project/${filename}` }).map(({ message }) => message)
}

const allowed: [string, string][] = [
  ['src/quantity/parse.ts', "import { metres } from './si'"],
  ['src/statics/sling.ts', "import { newtons } from '../quantity/si'"],
  ['src/statics/sling.ts', "import { solve } from './linear/solve'"],
  ['src/check/links/hook.ts', "import { hookStress } from '../../statics/hook'"],
  ['src/words/verdict.ts', "import type { Verdict } from '../check/verdict'"],
  ['src/words/remedy.ts', "import type { Remedy } from '../advice/remedy'"],
  ['src/words/force.ts', "import { formatMass } from '../quantity/format'"],
  ['src/hanger/schema.ts', "import { z } from 'zod'"],
  ['src/hanger/schema.ts', "import { z } from 'zod/mini'"],
  ['src/index.ts', "export { check } from './check/check'"],
  ['src/cli/main.ts', "import { check } from '../index'\nimport { readFile } from 'node:fs/promises'"],
  ['renderer/App.vue', "<script setup lang=\"ts\">\nimport { check } from '#core'\nimport { ref } from 'vue'\nimport Ladder from './Ladder.vue'\nimport type { Bridge } from '../electron/contract'\n</script>"],
  ['electron/main/index.ts', "import { app } from 'electron'\nimport { join } from 'node:path'\nimport policy from '../contentSecurityPolicy.json'\nimport type { Bridge } from '../contract'"],
  ['electron/preload/index.ts', "import { channel } from '../contract'\nimport { contextBridge } from 'electron'"],
  ['electron/launch.mjs', "import { serve } from './launch/server.mjs'\nimport { join } from 'node:path'"],
  ['tests/unit/check/hook.test.ts', "import { hook } from '../../../src/check/links/hook'"],
]

const refused: [string, string, RegExp][] = [
  ['src/quantity/parse.ts', "import { cords } from '../catalogue/cords'", /src\/quantity may not import src\/catalogue\/cords; allowed layers: none/],
  ['src/statics/sling.ts', "import { formatMass } from '../quantity/format'", /allowed layers: src\/quantity\/si;/],
  ['src/load/mass.ts', "import { verdict } from '../check/verdict'", /src\/load may not import/],
  ['src/check/check.ts', "import type { Remedy } from '../advice/remedy'", /src\/check may not import src\/advice\/remedy/],
  ['src/words/verdict.ts', "import { worst } from '../check/verdict'", /as types only: .*src\/check/],
  ['src/words/verdict.ts', "import { type Verdict } from '../check/verdict'", /src\/words may not import/],
  ['src/words/verdict.ts', "export { worst } from '../check/verdict'", /src\/words may not import/],
  ['src/drawing/shapes.ts', "import type { Remedy } from '../advice/remedy'", /src\/drawing may not import/],
  ['src/check/check.ts', "const later = () => import('../words/verdict')", /src\/check may not import/],
  ['src/check/check.ts', "type W = import('../words/verdict').W", /src\/check may not import/],
  ['src/check/check.ts', "import { check } from '../index'", /src\/check may not import src\/index/],
  ['src/check/check.ts', "import { check } from '#core'", /package #core; allowed packages: zod/],
  ['src/check/check.ts', "import { readFileSync } from 'node:fs'", /package node:fs/],
  ['src/check/check.ts', "import { zodiac } from 'zodiac'", /package zodiac/],
  ['src/index.ts', "export { main } from './cli/main'", /src\/index may not import src\/cli\/main/],
  ['src/newcomer/thing.ts', 'import { metres } from "../quantity/si"', /src\/newcomer has no line/],
  ['renderer/App.vue', "<script setup lang=\"ts\">\nimport { check } from '../src/index'\n</script>", /renderer may not import src\/index/],
  ['renderer/bridge.ts', "import { channel } from '../electron/contract'", /as types only: electron\/contract/],
  ['renderer/workers/start.ts', "new Worker(new URL('../../src/chance/job.ts', import.meta.url))", /renderer may not import src\/chance\/job/],
  ['electron/main/index.ts', "import { bridge } from '../preload/index'", /electron may not import electron\/preload/],
  ['electron/main/index.ts', "import { check } from '../../src/index'", /electron may not import src\/index/],
  ['electron/preload/index.ts', "import { join } from 'node:path'", /allowed packages: electron/],
  ['electron/preload/index.ts', "import { save } from '../main/save'", /allowed layers: electron\/contract/],
  ['electron/launch/server.mjs', "import { app } from 'electron'", /electron\/launch may not import the package electron/],
]

describe('the import table', () => {
  it.each(allowed)('%s: %s', (file, code) => {
    expect(lint(file, code)).toEqual([])
  })

  it.each(refused)('%s refuses %s', (file, code, reason) => {
    expect(lint(file, code)).toEqual([expect.stringMatching(reason)])
  })
})
