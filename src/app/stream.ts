/** A file made while it is sent, so that a large one need not fit in memory. */
import type { AppContext } from './context.ts'

/** Lines gathered until there is this much text to send at once. */
const CHUNK = 64 * 1024

export function streamed(c: AppContext, type: string, name: string, lines: Iterable<string>): Response {
  const source = lines[Symbol.iterator]()
  const encoder = new TextEncoder()
  const body = new ReadableStream<Uint8Array>({
    pull(controller) {
      let text = ''
      while (text.length < CHUNK) {
        const { done, value } = source.next()
        if (done) {
          if (text !== '') controller.enqueue(encoder.encode(text))
          controller.close()
          return
        }
        text += value
      }
      controller.enqueue(encoder.encode(text))
    },
  })
  c.header('Content-Type', type)
  c.header('Content-Disposition', `attachment; filename="${name.replaceAll(/[^A-Za-z0-9._-]/g, '-')}"`)
  c.header('Cache-Control', 'no-store')
  return c.body(body)
}
