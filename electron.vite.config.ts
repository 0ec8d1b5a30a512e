import { existsSync } from 'node:fs'
import { resolve } from 'node:path'
import vue from '@vitejs/plugin-vue'
import { defineConfig } from 'electron-vite'

const at = (path: string): string => resolve(import.meta.dirname, path)

const present = (entries: Record<string, string>): Record<string, string> =>
  Object.fromEntries(Object.entries(entries).filter(([, path]) => existsSync(path)))

const parts = {
  main: {
    build: {
      rolldownOptions: {
        input: present({ index: at('electron/main/index.ts'), cli: at('src/cli/main.ts'), batchWorker: at('src/cli/batch/worker.ts') }),
      },
    },
  },
  preload: {
    build: {
      rolldownOptions: {
        input: { preload: at('electron/preload/index.ts') },
        // A sandboxed preload cannot be a module, and in a package of modules that needs the ending.
        output: { format: 'cjs' as const, entryFileNames: '[name].cjs' },
      },
    },
  },
  renderer: {
    root: at('renderer'),
    plugins: [vue()],
    build: {
      minify: 'oxc' as const,
      // The content security policy knows no data: addresses but those of images.
      assetsInlineLimit: 0,
      rolldownOptions: { input: at('renderer/index.html') },
    },
    worker: { format: 'es' as const },
  },
}

export default defineConfig({
  main: parts.main,
  ...(existsSync(at('electron/preload/index.ts')) ? { preload: parts.preload } : {}),
  ...(existsSync(at('renderer/index.html')) ? { renderer: parts.renderer } : {}),
})
