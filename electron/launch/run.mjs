import { spawn } from 'node:child_process'
import { constants } from 'node:os'

/**
 * Runs a command to its end.
 * @param {string} command
 * @param {readonly string[]} args
 * @param {import('node:child_process').SpawnOptions} options
 * @returns {Promise<{ code: number, output: string }>} the exit code (128 + n after signal n, 127 if it
 *   could not be started) and whatever was piped
 */
export function run(command, args, options) {
  return new Promise((done) => {
    const child = spawn(command, args, { windowsHide: true, ...options })
    let output = ''
    const keep = (chunk) => { output += chunk }
    child.stdout?.setEncoding('utf8').on('data', keep)
    child.stderr?.setEncoding('utf8').on('data', keep)
    const pass = (signal) => child.kill(signal)
    // An interrupt from the keyboard reaches the child by itself; the launcher waits for its end.
    const wait = () => {}
    process.on('SIGTERM', pass).on('SIGINT', wait)
    const end = (code) => {
      process.off('SIGTERM', pass).off('SIGINT', wait)
      done({ code, output })
    }
    child.once('error', (error) => {
      output += error.message
      end(127)
    })
    child.once('close', (code, signal) => end(code ?? 128 + constants.signals[signal]))
  })
}

/**
 * Runs a script with the Node this process runs on.
 * @param {string} script
 * @param {readonly string[]} args
 * @param {import('node:child_process').SpawnOptions} options
 */
export const runNode = (script, args, options) => run(process.execPath, [script, ...args], options)
