/** The line protocol from the asking side, against a program of a few lines that answers as formats say. */
import { expect, it } from 'vitest'
import { type Request, throughLines } from './ask.ts'
import { DEFAULT_COSTS } from './keeper.ts'

const request = (asOf: string): Request => ({
  asOf,
  tag: 'A-1',
  protocol: {},
  supplies: { queensInHand: 0, daysUntilQueens: 5, eggFrames: 3 },
  costs: DEFAULT_COSTS,
  entries: [],
})

const ECHO = `require('node:readline').createInterface({ input: process.stdin }).on('line', (line) => {
  const { asOf } = JSON.parse(line)
  console.log(JSON.stringify(asOf === 'bad'
    ? { problems: [{ field: 'asOf', message: 'must be a day' }] }
    : { advice: { action: 'none', why: asOf }, checks: [], readiness: { unmet: [] } }))
})`

it('gets answers in the order of its questions, and goes on after a refusal', async () => {
  const asker = throughLines(['-e', ECHO])
  const [first, refused, last] = await Promise.allSettled([
    asker.ask(request('2026-05-01')),
    asker.ask(request('bad')),
    asker.ask(request('2026-05-02')),
  ])
  asker.close()
  expect(first).toMatchObject({ value: { advice: { why: '2026-05-01' } } })
  expect(refused).toMatchObject({ status: 'rejected' })
  expect(last).toMatchObject({ value: { advice: { why: '2026-05-02' } } })
})

it('says so when the program ends before it answers', async () => {
  const asker = throughLines(['-e', 'process.exit(2)'])
  await expect(Promise.resolve(asker.ask(request('2026-05-01')))).rejects.toThrow('exit 2')
})
