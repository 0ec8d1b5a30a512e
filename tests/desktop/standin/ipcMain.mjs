const handlers = new Map()

export const ipcMain = {
  handle(channel, handler) {
    if (handlers.has(channel)) throw new Error(`Attempted to register a second handler for '${channel}'`)
    handlers.set(channel, handler)
  },
}

/** Answers an `invoke`, rejecting in Electron's words. */
export async function answerInvoke(event, channel, args) {
  try {
    const handler = handlers.get(channel)
    if (!handler) throw new Error(`No handler registered for '${channel}'`)
    return await handler(event, ...args)
  } catch (error) {
    throw new Error(`Error invoking remote method '${channel}': ${error}`, { cause: error })
  }
}
