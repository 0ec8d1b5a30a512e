import { availableParallelism } from 'node:os'
import { Worker } from 'node:worker_threads'
import { batchCommand, type BatchWorld } from './batch/command'
import { runCommand } from './commands'
import { listFolder, openFile, readFile } from './files'
import { whyOf } from './whyOf'
import { writeWhole } from './writeWhole'

/** The day by the clock of the place, YYYY-MM-DD. */
function todayText(now: Date): string {
  const two = (part: number): string => String(part).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

/** The answer did not reach its end. */
class UnwrittenError extends Error {
  override readonly name = 'UnwrittenError'
}

async function write(text: string): Promise<void> {
  try {
    await writeWhole(process.stdout, text)
  } catch (error) {
    throw new UnwrittenError(whyOf(error))
  }
}

const complain = (text: string): void => { process.stderr.write(text) }

const batchWorld: BatchWorld = {
  readFile, listFolder, openFile, write, complain,
  cores: availableParallelism(),
  startWorker: (setting) => new Worker(new URL('./batchWorker.js', import.meta.url), { workerData: setting }),
}

// Whoever reads the answer may have had enough of it. Else whoever writes is told.
process.stdout.on('error', (error: NodeJS.ErrnoException) => { if (error.code === 'EPIPE') process.exit() })
// There is nobody left to tell.
process.stderr.on('error', () => undefined)

const [verb, ...args] = process.argv.slice(2)

async function answer(): Promise<0 | 1 | 2> {
  if (verb === 'batch') return batchCommand(args, batchWorld)
  const { out, err, exit } = runCommand(process.argv.slice(2), readFile, todayText(new Date()), listFolder)
  process.exitCode = exit
  complain(err)
  await write(out)
  return exit
}

try {
  process.exitCode = await answer()
} catch (error) {
  if (error instanceof UnwrittenError) complain(`The answer could not be written to its end: ${error.message} What stands there is not whole.\n`)
  else if (verb === 'batch') complain(`The table could not be read to its end: ${whyOf(error)}\n`)
  else throw error
  process.exitCode = 2
}
