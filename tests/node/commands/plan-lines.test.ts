/** `resettle plan --lines -`: formats are public. */
import { once } from 'node:events'
import { PassThrough } from 'node:stream'
import { describe, expect, test } from 'vitest'
import { planOf } from '../../../src/decision/index.ts'
import { readPlanInput } from '../../../src/node/commands/plan-input.ts'
import { answerLine, planLines } from '../../../src/node/commands/plan-lines.ts'
import { processorOf } from '../../support/processor.ts'

const request = (asOf: string, tag = 'X-1') => ({
  asOf,
  tag,
  entries: [
    {
      kind: 'intake',
      on: '2026-05-01',
      by: 'ada',
      removal: { type: 'wall' },
      yard: 'North',
      queen: 'lost',
      brood: { eggs: 0, open: 0, capped: 0 },
    },
    {
      kind: 'inspection',
      on: '2026-05-20',
      by: 'ada',
      opened: true,
      eggs: 'none',
      open: 'none',
      cells: 'none',
    },
  ],
})

async function run(lines: string[]): Promise<unknown[]> {
  const [input, output] = [new PassThrough(), new PassThrough()]
  const done = planLines(input, output)
  input.end(lines.join('\n'))
  await done
  output.end()
  const text = (await output.toArray()).join('')
  return text
    .split('\n')
    .filter((l) => l !== '')
    .map((l) => JSON.parse(l) as unknown)
}

describe('plans by the line', () => {
  test('one answer a request, in order, the same as the plan by itself', async () => {
    const days = ['2026-05-20', '2026-05-21', '2026-06-01']
    const answers = await run(days.map((d) => JSON.stringify(request(d))))
    const alone = days.map((day) => {
      const { asOf: _asOf, ...rest } = request(day)
      const input = readPlanInput(JSON.stringify(rest), day)
      if (!input.ok) throw new Error('refused')
      return JSON.parse(JSON.stringify(planOf(input.history, day, input.protocol))) as unknown
    })
    expect(answers).toEqual(alone)
  })

  test('a bad line is answered with its problems and ends nothing', async () => {
    const good = JSON.stringify(request('2026-05-20'))
    const unknown = JSON.stringify({ ...request('2026-05-20'), colour: 'red' })
    const field = JSON.stringify({
      ...request('2026-05-20'),
      entries: [{ kind: 'intake', on: '2026-05-01' }],
    })
    const noDay = JSON.stringify({ ...request('2026-05-20'), asOf: '2026-02-30' })
    const answers = await run([good, 'not json', '', '[]', unknown, field, noDay, good])
    expect(answers.map((a) => Object.keys(a as object).includes('problems'))).toEqual([
      false,
      true,
      true,
      true,
      true,
      true,
      true,
      false,
    ])
    expect(answers[5]).toMatchObject({
      problems: expect.arrayContaining([expect.objectContaining({ entry: 1 })]),
    })
    expect(answers[6]).toMatchObject({ problems: [{ field: 'asOf' }] })
  })

  test('an answer is there before the next request is asked', async () => {
    const [input, output] = [new PassThrough(), new PassThrough()]
    const done = planLines(input, output)
    for (const day of ['2026-05-20', '2026-05-21']) {
      input.write(`${JSON.stringify(request(day))}\n`)
      const [chunk] = (await once(output, 'data')) as [Buffer]
      expect(JSON.parse(chunk.toString())).toMatchObject({ asOf: day })
    }
    input.end()
    await done
  })

  test('supplies are read: a queen that is not in hand is ordered', () => {
    const late = request('2026-06-10')
    const without = JSON.parse(answerLine(JSON.stringify(late))) as { advice: { action: string } }
    const none = { ...late, supplies: { queensInHand: 0, daysUntilQueens: 4 } }
    const ordered = JSON.parse(answerLine(JSON.stringify(none))) as {
      advice: { action: string; why: string }
    }
    expect(without.advice.action).toBe('buy-queen')
    expect(ordered.advice.action).toBe('order-queen')
    expect(ordered.advice.why).toContain('4 days')
  })

  test('500 plans a second or more', async () => {
    const line = JSON.stringify(request('2026-05-25'))
    const count = 300
    const { ms } = await processorOf(() => {
      for (let i = 0; i < count; i++) answerLine(line)
    })
    expect(count / (ms / 1000)).toBeGreaterThan(500)
  })
})
