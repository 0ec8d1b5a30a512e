const unanswered = (name) => async () => { throw new Error(`No test has answered dialog.${name}`) }

/** A test puts its answers in place of these. */
export const dialog = Object.fromEntries(['showOpenDialog', 'showSaveDialog', 'showMessageBox'].map((name) => [name, unanswered(name)]))

export const screen = { getAllDisplays: () => [{ workArea: { x: 0, y: 0, width: 1920, height: 1080 } }] }
