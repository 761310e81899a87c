/** However many long pages wait, a form and an entry are answered between them. */
import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { type AddressInfo, createServer } from 'node:net'
import { expect, it } from 'vitest'
import { turns } from '../../../src/node/reader/turns.ts'
import { testYard } from '../../support/yard-app.ts'

const PAGES = 20

it('a form asked for after twenty pages comes before most of them', async () => {
  const yard = testYard()
  const session = await yard.session('operator')
  expect(session).not.toBe('')
  await yard.ask('operator', '/')
  const order: string[] = []
  const ask = async (path: string, name: string): Promise<void> => {
    const answer = await yard.ask('operator', path)
    expect(answer.status).toBe(200)
    order.push(name)
  }
  const pages = Array.from({ length: PAGES }, (_, n) => ask('/', `page ${n}`))
  await Promise.all([...pages, ask('/intake', 'form')])
  expect(order).toHaveLength(PAGES + 1)
  expect(order.indexOf('form')).toBeLessThan(PAGES / 2)
  expect(yard.errors).toEqual([])
  yard.services.close()
})

it('turns come in the order in which they were asked for, one in each round of the event loop', async () => {
  const turn = turns()
  const order: number[] = []
  const rounds: number[] = []
  let round = 0
  let counting = true
  const count = (): void => {
    round++
    if (counting) setImmediate(count)
  }
  setImmediate(count)
  await Promise.all(
    [1, 2, 3, 4].map(async (n) => {
      await turn()
      order.push(n)
      rounds.push(round)
    }),
  )
  counting = false
  expect(order).toEqual([1, 2, 3, 4])
  expect(new Set(rounds).size).toBe(4)
})

/** Opens forty connections at once, from another process: in this one it would wait for the pages itself. */
const FORTY = `
  const { connect } = require('node:net')
  const sockets = Array.from({ length: 40 }, () => connect(Number(process.argv[1]), '127.0.0.1'))
  process.stdin.once('end', () => sockets.forEach((s) => s.destroy())).resume()
`

it('forty phones that come at once are let in between a few pages, not one between two', async () => {
  const turn = turns()
  let pages = 0
  const came: number[] = []
  const server = createServer(() => came.push(pages)).listen(0, '127.0.0.1')
  await once(server, 'listening')
  const { port } = server.address() as AddressInfo
  const phones = spawn(process.execPath, ['-e', FORTY, String(port)], {
    stdio: ['pipe', 'ignore', 'inherit'],
  })
  while (came.length < 40) {
    await turn()
    const until = performance.now() + 20
    while (performance.now() < until);
    pages++
  }
  phones.stdin.end()
  await once(phones, 'exit')
  server.close()
  expect((came.at(-1) ?? 0) - (came[0] ?? 0)).toBeLessThan(20)
})
