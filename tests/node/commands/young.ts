/** Bytes of room for what is young, after much that was; a program of its own for running.http.test.ts. */
import { once } from 'node:events'
import { getHeapSpaceStatistics } from 'node:v8'
import { Worker } from 'node:worker_threads'
import { sparing } from '../../../src/node/memory.ts'

sparing(process.env)
const thread = new Worker('', { eval: true })
thread.once('online', () => sparing(process.env))
await once(thread, 'exit')
let kept: unknown[] = []
for (let n = 0; n < 600_000; n++) {
  kept.push({ n, of: [n] })
  if (kept.length > 200_000) kept = []
}
const young = getHeapSpaceStatistics().find((s) => s.space_name === 'new_space')
process.stdout.write(`${young?.space_size}`)
