import type { WebContents } from 'electron'
import type { Asker } from './answerRequests'
import { ORIGIN } from './origin'

/**
 * Whether a message comes from the app's own page in the window given: not from another window, not from
 * a frame in the page, not from wherever the window may have been led.
 */
export const isOwnPage = ({ sender, senderFrame }: Asker, page: WebContents | undefined): boolean =>
  sender === page && senderFrame?.parent === null && senderFrame.origin === ORIGIN
