import type { WebContents } from 'electron'
import type { Paper, PrintOutcome } from '../contract'
import { failureOf, fileFailure } from './files/fileProblem'

/** As Electron takes them; what has no name there in thousandths of a millimetre. */
const SIZES: Readonly<Record<Exclude<Paper, 'usual'>, 'A4' | 'Letter' | 'A5' | { readonly width: number, readonly height: number }>> = {
  a4: 'A4',
  letter: 'Letter',
  a5: 'A5',
  halfLetter: { width: 139_700, height: 215_900 },
}

/** What Electron says of a print that did not come about, in its own words. */
function outcomeOf(printed: boolean, reason: string): PrintOutcome {
  if (printed || /cancel/i.test(reason)) return { ok: true }
  return fileFailure(/no .*printer|printer.*(not found|invalid)/i.test(reason) ? 'NO_PRINTER' : 'OTHER', reason)
}

/** Lets the user choose a printer and prints the page; what goes wrong is an answer. */
export function printOn(contents: Pick<WebContents, 'print'>, paper: Paper): Promise<PrintOutcome> {
  return new Promise((done) => {
    try {
      contents.print({ printBackground: true, ...(paper === 'usual' ? {} : { pageSize: SIZES[paper] }) }, (printed, reason) => { done(outcomeOf(printed, reason)) })
    } catch (error) {
      done(failureOf(error))
    }
  })
}
