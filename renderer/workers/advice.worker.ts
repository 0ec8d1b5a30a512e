import type { PlaceQuestion } from '../place/messages'
import { servePlace } from '../place/servePlace'
import type { AdviceQuestion } from './messages'
import { serveAdvice } from './serveAdvice'

const breathe = (): Promise<void> => new Promise((done) => { setTimeout(done) })
const takeAdvice = serveAdvice((reply) => self.postMessage(reply), breathe)
const takePlace = servePlace((reply) => self.postMessage(reply), breathe)

self.addEventListener('message', ({ data }: MessageEvent<AdviceQuestion | PlaceQuestion>) => {
  if (data.kind === 'place') takePlace(data)
  else takeAdvice(data)
})
