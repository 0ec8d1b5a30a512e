import type { MenuItemConstructorOptions } from 'electron'
import { describe, expect, test } from 'vitest'
import { MENU_COMMANDS, type MenuCommand } from '../../../../electron/contract'
import { menuTemplate } from '../../../../electron/main/menu'

type Item = MenuItemConstructorOptions
const itemsOf = (items: readonly Item[]): Item[] => items.flatMap((item) => [item, ...itemsOf(Array.isArray(item.submenu) ? item.submenu : [])])
const menu = (platform: NodeJS.Platform, developing = false, send: (command: MenuCommand) => void = () => undefined) =>
  itemsOf(menuTemplate(platform, developing, send))

describe.each(['linux', 'win32', 'darwin'] as const)('on %s', (platform) => {
  test('every command has one item, which sends it', () => {
    const sent: string[] = []
    const items = menu(platform, false, (command) => { sent.push(command) }).filter(({ id }) => id !== undefined)
    items.forEach((item) => { (item.click as () => void)() })
    expect(items.map(({ id }) => id).sort()).toEqual([...MENU_COMMANDS].sort())
    expect(sent.sort()).toEqual([...MENU_COMMANDS].sort())
  })

  test('no key stands for two things', () => {
    const keys = menu(platform).flatMap(({ accelerator }) => accelerator ? [accelerator.toString()] : [])
    expect(keys.length).toBeGreaterThan(7)
    expect(new Set(keys).size).toBe(keys.length)
  })

  test('a developer\'s tools are for developers', () => {
    expect(menu(platform).some(({ role }) => role === 'toggleDevTools')).toBe(false)
    expect(menu(platform, true).some(({ role }) => role === 'toggleDevTools')).toBe(true)
  })

  test('there is a way out, and a way to magnify', () => {
    const roles = menu(platform).map(({ role }) => role)
    expect(roles).toEqual(expect.arrayContaining([platform === 'darwin' ? 'appMenu' : 'quit', 'zoomIn', 'copy', 'paste']))
  })
})
