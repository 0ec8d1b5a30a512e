import { JOBS } from './jobs'
import type { JobQuestion } from './messages'
import { serveJobs } from './serveJobs'

const take = serveJobs(JOBS, (reply) => self.postMessage(reply), () => new Promise((done) => { setTimeout(done) }), () => performance.now())

self.addEventListener('message', ({ data }: MessageEvent<JobQuestion>) => take(data))
