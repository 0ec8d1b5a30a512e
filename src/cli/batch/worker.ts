import { parentPort, workerData } from 'node:worker_threads'
import { workOn, type BatchSetting, type BatchTask } from './work'

const setting = workerData as BatchSetting

parentPort?.on('message', (lot: readonly BatchTask[]) => {
  parentPort?.postMessage(lot.map((task) => workOn(task, setting)))
})
