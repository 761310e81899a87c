/** The air between a phone and the yard, for journeys: passes requests on, or cuts them off, or loses the answer. */
import http from 'node:http'
import type { AddressInfo } from 'node:net'

export type Fate =
  | 'pass'
  /** The request never arrives. */
  | 'cut'
  /** It arrives and is answered, and the answer never comes back. */
  | 'lose'
  /** It is held up for so many milliseconds. */
  | { after: number }
  /** Something in between answers. */
  | { status: number; body: string }

export interface Wire {
  /** Where the phone goes. */
  url: string
  /** Decides what becomes of each request from now on. */
  fate: (decide: (request: { method: string; path: string }) => Fate) => void
  /** Changes what comes back from a path. */
  change: (path: string, how: (text: string) => string) => void
  /** Requests that came, in order. */
  seen: string[]
  /** How many of them are not answered yet. */
  open: () => number
  stop: () => Promise<void>
}

export async function wireTo(target: string): Promise<Wire> {
  let decide: (request: { method: string; path: string }) => Fate = () => 'pass'
  const changes = new Map<string, (text: string) => string>()
  const seen: string[] = []
  let open = 0
  const { hostname, port } = new URL(target)
  const server = http.createServer((from, to) => {
    const request = { method: from.method ?? 'GET', path: from.url ?? '/' }
    seen.push(`${request.method} ${request.path}`)
    open++
    to.on('close', () => open--)
    const fate = decide(request)
    if (fate === 'cut') {
      from.socket.destroy()
      return
    }
    if (typeof fate === 'object' && 'status' in fate) {
      from.resume()
      to.writeHead(fate.status, { 'Content-Type': 'text/html' }).end(fate.body)
      return
    }
    const headersFor = (path: string): http.IncomingHttpHeaders =>
      changes.has(path) ? { ...from.headers, 'accept-encoding': 'identity' } : from.headers
    // The name the phone used is passed on: the yard must take the phone's pages for its own.
    const onward = http.request(
      { hostname, port, method: from.method, path: from.url, headers: headersFor(request.path) },
      (answer) => {
        if (fate === 'lose') {
          answer.resume().on('end', () => to.socket?.destroy())
          return
        }
        const change = changes.get(request.path)
        if (change === undefined) {
          to.writeHead(answer.statusCode ?? 502, answer.headers)
          answer.pipe(to)
          return
        }
        const parts: Buffer[] = []
        answer.on('data', (part: Buffer) => parts.push(part))
        answer.on('end', () => {
          const { 'content-length': _length, ...headers } = answer.headers
          to.writeHead(answer.statusCode ?? 502, headers).end(change(Buffer.concat(parts).toString()))
        })
      },
    )
    onward.on('error', () => to.socket?.destroy())
    if (typeof fate === 'object') setTimeout(() => from.pipe(onward), fate.after)
    else from.pipe(onward)
  })
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    fate: (next) => {
      decide = next
    },
    change: (path, how) => {
      changes.set(path, how)
    },
    seen,
    open: () => open,
    stop: () =>
      new Promise((done) => {
        server.close(() => done())
        server.closeAllConnections()
      }),
  }
}
