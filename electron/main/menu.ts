import type { MenuItemConstructorOptions } from 'electron'
import type { MenuCommand } from '../contract'

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
  const command = (id: MenuCommand, label: string, accelerator?: string): Item =>
    ({ id, label, click: () => { send(id) }, ...(accelerator ? { accelerator } : {}) })

  const file: Item[] = [
    command('new', 'New hanger', 'CmdOrCtrl+N'),
    command('open', 'Open…', 'CmdOrCtrl+O'),
    divider,
    command('save', 'Save', 'CmdOrCtrl+S'),
    command('saveAs', 'Save as…', 'CmdOrCtrl+Shift+S'),
    divider,
    command('drawing', 'Save drawing…', 'CmdOrCtrl+Shift+D'),
    command('pdf', 'Save as PDF…', 'CmdOrCtrl+Shift+P'),
    command('print', 'Print…', 'CmdOrCtrl+P'),
    divider,
    mac ? { role: 'close' } : { role: 'quit' },
  ]
  const edit: Item[] = [
    command('undo', 'Undo', 'CmdOrCtrl+Z'),
    command('redo', 'Redo', mac ? 'Shift+Cmd+Z' : 'Ctrl+Y'),
    divider,
    { role: 'cut' },
    { role: 'copy' },
    { role: 'paste' },
    { role: 'selectAll' },
  ]
  const view: Item[] = [
    command('catalogue', 'Catalogue', 'CmdOrCtrl+K'),
    command('shelf', 'Shelf', 'CmdOrCtrl+Shift+L'),
    command('hangers', 'My hangers', 'CmdOrCtrl+Shift+H'),
    command('place', 'What the place needs', 'CmdOrCtrl+Shift+E'),
    command('sheets', 'Sheets', 'CmdOrCtrl+Shift+Y'),
    divider,
    command('habits', 'Units and appearance…', 'CmdOrCtrl+,'),
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
    { label: 'File', submenu: file },
    { label: 'Edit', submenu: edit },
    { label: 'View', submenu: view },
    { role: 'windowMenu' },
    { role: 'help', label: 'Help', submenu: [command('help', 'Strandwise help', mac ? 'Cmd+?' : 'F1'), ...(mac ? [] : [{ role: 'about' } satisfies Item])] },
  ]
}
