import type { MenuCommand } from '../../../electron/contract'

const KEYS: Readonly<Record<string, MenuCommand>> = {
  'o': 'open',
  's': 'save',
  'shift+s': 'saveAs',
  'p': 'print',
  'shift+p': 'pdf',
  'shift+d': 'drawing',
  'k': 'catalogue',
  'shift+l': 'shelf',
  'shift+h': 'hangers',
  'shift+e': 'place',
  'shift+y': 'sheets',
  'shift+u': 'choosing',
  'shift+m': 'maps',
  'shift+k': 'compare',
  'shift+x': 'chance',
  ',': 'habits',
  'z': 'undo',
  'y': 'redo',
  'shift+z': 'redo',
}

const TEXT_FIELDS = 'input, textarea, select, [contenteditable]'

const isInTextField = ({ target }: KeyboardEvent): boolean => target instanceof Element && target.matches(TEXT_FIELDS)

/**
 * The command a key stands for where there is no native menu, or null. In a text field undo and redo are
 * left to the field; a new window (Ctrl+N) browsers do not let go.
 *
 * @param mac whether Command takes the place of Ctrl
 */
export function menuCommandOf(event: KeyboardEvent, mac: boolean): MenuCommand | null {
  if (event.defaultPrevented || event.altKey) return null
  if (event.key === 'F1') return 'help'
  if (mac ? !event.metaKey || event.ctrlKey : !event.ctrlKey || event.metaKey) return null
  const command = KEYS[`${event.shiftKey ? 'shift+' : ''}${event.key.toLowerCase()}`] ?? null
  return (command === 'undo' || command === 'redo') && isInTextField(event) ? null : command
}
