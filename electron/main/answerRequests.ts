import type { IpcMain, IpcMainInvokeEvent } from 'electron'
import { REQUESTS, type StrandwiseBridge } from '../contract'
import type { Check } from './checks'

type RequestName = keyof typeof REQUESTS

interface Answerer<Arguments extends readonly unknown[], Answer> {
  /** One check for each argument. */
  readonly takes: { readonly [Index in keyof Arguments]: Check<Arguments[Index]> }
  readonly answer: (...args: Arguments) => Answer | Promise<Answer>
}

/** How each method of the bridge that asks something is answered. */
export type Answerers = {
  readonly [Name in RequestName]: Answerer<Parameters<StrandwiseBridge[Name]>, Awaited<ReturnType<StrandwiseBridge[Name]>>>
}

interface AnyAnswerer {
  readonly takes: readonly ((value: unknown) => boolean)[]
  readonly answer: (...args: unknown[]) => unknown
}

/** As much of an event as tells who asks. */
export type Asker = Pick<IpcMainInvokeEvent, 'sender' | 'senderFrame'>

/**
 * The one place where the page's questions come in. Whoever is not the app's own page, and whatever is
 * not what the contract says, is refused by an error before any answerer sees it.
 */
export function answerRequests(ipc: Pick<IpcMain, 'handle'>, isOwnPage: (asker: Asker) => boolean, answerers: Answerers): void {
  for (const name of Object.keys(REQUESTS) as RequestName[]) {
    const channel = REQUESTS[name]
    const { takes, answer } = answerers[name] as AnyAnswerer
    ipc.handle(channel, (event, ...args: unknown[]) => {
      if (!isOwnPage(event)) throw new Error(`${channel} is answered to the app's own page only`)
      const fits = args.length === takes.length && takes.every((check, index) => check(args[index]))
      if (!fits) throw new TypeError(`${channel} was asked with arguments it does not take`)
      return answer(...args)
    })
  }
}
