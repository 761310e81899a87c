/** What hono itself takes to read an entry and answer: nothing is judged, planned or written. */
import { serve } from '@hono/node-server'
import { Hono } from 'hono'

const app = new Hono()
app.post('/entries', async (c) => c.json({ accepted: [(await c.req.json()).id], already: [] }))
serve({ fetch: app.fetch, hostname: '127.0.0.1', port: 0 }, ({ port }) => {
  process.stdout.write(`http://127.0.0.1:${port}\n`)
})
