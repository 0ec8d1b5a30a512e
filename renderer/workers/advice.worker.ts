import type { HangerQuestion } from '../hangers/messages'
import { serveHangers } from '../hangers/serveHangers'
import type { PlaceQuestion } from '../place/messages'
import { servePlace } from '../place/servePlace'
import type { ChartQuestion, PotQuestion, SheetQuestion } from '../sheets/messages'
import { serveSheets } from '../sheets/serveSheets'
import type { AdviceQuestion } from './messages'
import { serveAdvice } from './serveAdvice'

const breathe = (): Promise<void> => new Promise((done) => { setTimeout(done) })
const takeAdvice = serveAdvice((reply) => self.postMessage(reply), breathe)
const takePlace = servePlace((reply) => self.postMessage(reply), breathe)
const takeHanger = serveHangers((reply) => self.postMessage(reply))
const takeSheet = serveSheets((reply) => self.postMessage(reply))

self.addEventListener('message', ({ data }: MessageEvent<AdviceQuestion | PlaceQuestion | HangerQuestion | SheetQuestion | ChartQuestion | PotQuestion>) => {
  if (data.kind === 'place') takePlace(data)
  else if (data.kind === 'ask' || data.kind === 'cancel') takeAdvice(data)
  else if (data.kind === 'sheet' || data.kind === 'chartRow' || data.kind === 'potTaken') takeSheet(data)
  else takeHanger(data)
})
