import { massLimitText } from './amounts'
import { dayText } from './care'
import { troubleText, type FileTrouble } from './fileTroubles'

/** Said where no folder was chosen yet. */
export const NO_FOLDER_TEXT = 'Choose the folder you keep your hanger files in. Each is listed here with its verdicts, and found by its name, tag code or lot.'
/** Said where the browser cannot look into a folder. */
export const NO_FOLDERS_HERE_TEXT = 'This browser lets no page look into a folder. The desktop app lists the hangers of a folder; here they are opened one by one.'
export const EMPTY_FOLDER_TEXT = 'No hanger file is in this folder yet: a hanger saved there shows up here.'
export const UNCHECKED_TEXT = 'Could not be checked. Open it to see why.'

/** Said where a folder holds more hanger files than are listed. */
export const cutFolderText = (listed: number): string => `More hanger files are in this folder than the ${listed} listed here. Keep some in another folder.`

/** The sentence for a folder that could not be looked into. */
export function folderProblemText({ code, detail }: { readonly code: FileTrouble; readonly detail: string }): string {
  if (code === 'NOT_FOUND') return 'The folder is no longer there. It may have been moved or renamed: choose it again.'
  if (code === 'PERMISSION') return 'You may not look into this folder. Choose another.'
  return `The folder could not be looked into: ${troubleText(code, detail)}`
}

/**
 * What a maker tells hangers apart by, in one line.
 * @example keptFactsText({ code: 'A7', lot: null, date: '2026-10-18' }) // 'Tag A7 · made 18 October 2026'
 */
export const keptFactsText = ({ code, lot, date }: { readonly code: string | null; readonly lot: string | null; readonly date: string | null }): string =>
  [code === null ? '' : `Tag ${code}`, lot === null ? '' : `lot ${lot}`, date === null ? '' : `made ${dayText(date)}`].filter((text) => text !== '').join(' · ')

/** Heaviest watered pot, kg; null where none can be told. */
export const heaviestKeptText = (mass: number | null): string =>
  mass === null ? 'No heaviest pot can be told.' : `Heaviest pot when watered: ${massLimitText(mass)}.`

/** How far the checks have come. */
export const checkedText = (checked: number, all: number): string => `${checked} of ${all} checked`

/** How many were found of all. */
export const foundText = (found: number, all: number): string => (found === all ? `${all} ${all === 1 ? 'hanger' : 'hangers'}` : `${found} of ${all} hangers`)
