import { once } from 'node:events'
import { availableParallelism } from 'node:os'
import { Worker } from 'node:worker_threads'
import { batchCommand, type BatchWorld } from './batch/command'
import { runCommand } from './commands'
import { listFolder, openFile, readFile } from './files'

/** The day by the clock of the place, YYYY-MM-DD. */
function todayText(now: Date): string {
  const two = (part: number): string => String(part).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

const batchWorld: BatchWorld = {
  readFile, listFolder, openFile,
  cores: availableParallelism(),
  startWorker: (setting) => new Worker(new URL('./batchWorker.js', import.meta.url), { workerData: setting }),
  write: async (text) => { if (!process.stdout.write(text)) await once(process.stdout, 'drain') },
  complain: (text) => { process.stderr.write(text) },
}

// Whoever reads the answer may have had enough of it.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit()
  throw error
})

const [verb, ...args] = process.argv.slice(2)
if (verb === 'batch') {
  try {
    process.exitCode = await batchCommand(args, batchWorld)
  } catch (error) {
    process.stderr.write(`The table could not be read to its end: ${error instanceof Error ? error.message : String(error)}\n`)
    process.exitCode = 2
  }
} else {
  const { out, err, exit } = runCommand(process.argv.slice(2), readFile, todayText(new Date()), listFolder)
  process.exitCode = exit
  process.stderr.write(err)
  process.stdout.write(out)
}
