import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, join } from 'node:path'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { findCycle, importGraph } from '../../tools/cycles.mjs'

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'cycles-'))
  mkdirSync(join(folder, 'inner'))
})
afterEach(() => rmSync(folder, { recursive: true }))

const circleOf = (files: Record<string, string>): string[] | null => {
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text)
  return findCycle(importGraph([folder]))?.map((file) => basename(file)) ?? null
}

it('finds a circle through folders, counting types', () => {
  const circle = circleOf({
    'a.ts': "import { b } from './inner/b'",
    'inner/b.ts': "import type { C } from '../c'",
    'c.ts': "export { a } from './a'",
  })
  expect(circle).toHaveLength(4)
  expect(new Set(circle)).toEqual(new Set(['a.ts', 'b.ts', 'c.ts']))
})

it('finds a circle through a component', () => {
  const circle = circleOf({
    'Card.vue': "<script setup lang=\"ts\">import { list } from './list'</script>\n<template><p /></template>",
    'list.ts': "import Card from './Card.vue'",
  })
  expect(new Set(circle)).toEqual(new Set(['Card.vue', 'list.ts']))
})

it('passes two ways to one file', () => {
  expect(circleOf({
    'a.ts': "import './inner/b'\nimport './c'",
    'inner/b.ts': "import '../c'",
    'c.ts': "import { z } from 'zod'",
  })).toBeNull()
})
