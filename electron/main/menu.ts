import type { MenuItemConstructorOptions } from 'electron'
import type { MenuCommand } from '../contract'
import { texts } from './texts'

type Item = MenuItemConstructorOptions

const divider: Item = { type: 'separator' }

/**
 * The native menu. An item that asks something of the page carries the command as its id.
 *
 * @param developing adds the tools of a developer
 * @param send hands a command to the page
 */
export function menuTemplate(platform: NodeJS.Platform, developing: boolean, send: (command: MenuCommand) => void): Item[] {
  const mac = platform === 'darwin'
  const command = (id: MenuCommand, accelerator: string): Item =>
    ({ id, label: texts.commands[id], click: () => { send(id) }, accelerator })

  const file: Item[] = [
    command('new', 'CmdOrCtrl+N'),
    command('open', 'CmdOrCtrl+O'),
    divider,
    command('save', 'CmdOrCtrl+S'),
    command('saveAs', 'CmdOrCtrl+Shift+S'),
    divider,
    command('drawing', 'CmdOrCtrl+Shift+D'),
    command('pdf', 'CmdOrCtrl+Shift+P'),
    command('print', 'CmdOrCtrl+P'),
    divider,
    mac ? { role: 'close' } : { role: 'quit' },
  ]
  const edit: Item[] = [
    command('undo', 'CmdOrCtrl+Z'),
    command('redo', mac ? 'Shift+Cmd+Z' : 'Ctrl+Y'),
    divider,
    { role: 'cut' },
    { role: 'copy' },
    { role: 'paste' },
    { role: 'selectAll' },
  ]
  const view: Item[] = [
    command('catalogue', 'CmdOrCtrl+K'),
    command('shelf', 'CmdOrCtrl+Shift+L'),
    command('hangers', 'CmdOrCtrl+Shift+H'),
    command('place', 'CmdOrCtrl+Shift+E'),
    command('sheets', 'CmdOrCtrl+Shift+Y'),
    divider,
    command('choosing', 'CmdOrCtrl+Shift+U'),
    command('maps', 'CmdOrCtrl+Shift+M'),
    command('compare', 'CmdOrCtrl+Shift+K'),
    command('chance', 'CmdOrCtrl+Shift+X'),
    divider,
    command('habits', 'CmdOrCtrl+,'),
    divider,
    { role: 'resetZoom' },
    { role: 'zoomIn' },
    { role: 'zoomOut' },
    divider,
    { role: 'togglefullscreen' },
    ...(developing ? [divider, { role: 'toggleDevTools' } satisfies Item] : []),
  ]
  return [
    ...(mac ? [{ role: 'appMenu' } satisfies Item] : []),
    { label: texts.menus.file, submenu: file },
    { label: texts.menus.edit, submenu: edit },
    { label: texts.menus.view, submenu: view },
    { role: 'windowMenu' },
    { role: 'help', label: texts.menus.help, submenu: [command('help', mac ? 'Cmd+?' : 'F1'), ...(mac ? [] : [{ role: 'about' } satisfies Item])] },
  ]
}
