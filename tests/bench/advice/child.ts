/** Plays one part of a job in a process of its own (see measure.ts). */
import { type Job, measure } from './measure.ts'

process.once('message', async (job) => {
  process.send?.(await measure(job as Job))
})
