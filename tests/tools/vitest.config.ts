import { resolve } from 'node:path'
import vue from '@vitejs/plugin-vue'
import { defineConfig } from 'vitest/config'
import { builtCore } from './builtCore.js'

const core = await builtCore()

export default defineConfig({
  root: resolve(import.meta.dirname, '../..'),
  test: {
    // A slow machine is no failure: nothing here is a timed test.
    testTimeout: 60_000,
    maxWorkers: 2,
    // Shown by `npm run coverage`; no share of it is asked for.
    coverage: { provider: 'v8', include: ['src/**/*.ts'], reporter: ['text-summary', 'html'], reportsDirectory: resolve(import.meta.dirname, '../../coverage') },
    projects: [
      {
        extends: true,
        plugins: [core],
        test: {
          name: 'core',
          environment: 'node',
          include: ['tests/unit/**/*.test.ts', 'tests/reference/**/*.test.ts', 'tests/fuzz/**/*.test.ts'],
          exclude: ['tests/unit/renderer/**', 'tests/unit/electron/**'],
          // Else a style sheet that is read as text comes out empty.
          css: { include: [/\/sheet\.css/] },
          // The core is pure, so its modules are loaded once, not again for every file.
          isolate: false,
          benchmark: { include: ['tests/bench/**/*.bench.ts'] },
        },
      },
      {
        extends: true,
        test: { name: 'shell', environment: 'node', isolate: false, include: ['tests/unit/electron/**/*.test.ts'], benchmark: { include: [] } },
      },
      {
        extends: true,
        plugins: [core, vue()],
        test: { name: 'renderer', environment: 'happy-dom', isolate: false, include: ['tests/unit/renderer/**/*.test.ts'], benchmark: { include: [] } },
      },
    ],
  },
})
