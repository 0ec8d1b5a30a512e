import type { AdviceQuestion } from './messages'
import { serveAdvice } from './serveAdvice'

const take = serveAdvice(
  (reply) => self.postMessage(reply),
  () => new Promise((done) => { setTimeout(done) }),
)

self.addEventListener('message', ({ data }: MessageEvent<AdviceQuestion>) => take(data))
