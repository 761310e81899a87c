import { v7 } from 'uuid'
import { beforeEach, describe, expect, it } from 'vitest'
import { type Yard, yardOn } from '../../support/yard-on.ts'

let yard: Yard
beforeEach(async () => {
  yard = await yardOn('2026-05-06')
})

const intake = (id: string, colony = 'W-1') => ({
  id,
  colony,
  kind: 'intake',
  on: '2026-05-01',
  removal: { type: 'wall' },
  yard: 'North field',
  queen: 'unseen',
})
const look = (id: string, fields = {}) => ({
  id,
  colony: 'W-1',
  kind: 'inspection',
  on: '2026-05-05',
  opened: true,
  ...fields,
})

describe('POST /entries', () => {
  it('takes one or a list, and names what it took', async () => {
    const [a, b, c] = [v7(), v7(), v7()]
    const one = await yard.send('/entries', intake(a))
    expect(one.status).toBe(200)
    expect(JSON.parse(one.text)).toEqual({ accepted: [a], already: [] })
    const two = await yard.send('/entries', [look(b), look(c, { on: '2026-05-06' })])
    expect(JSON.parse(two.text)).toEqual({ accepted: [b, c], already: [] })
  })

  it('is safe to repeat', async () => {
    const [a, b] = [v7(), v7()]
    await yard.send('/entries', [intake(a), look(b)])
    const again = await yard.send('/entries', [intake(a), look(b)])
    expect(JSON.parse(again.text)).toEqual({ accepted: [], already: [a, b] })
    expect([...yard.store.journal()]).toHaveLength(2)
  })

  it('writes all or nothing, and says which entry and field is wrong', async () => {
    const refused = await yard.send('/entries', [intake(v7()), look(v7(), { eggs: 'lots' })])
    expect(refused.status).toBe(422)
    expect(JSON.parse(refused.text).problems[0]).toMatchObject({
      entry: 2,
      field: 'eggs',
      message: 'must be one of: none, single, multiple; not "lots"',
    })
    expect([...yard.store.journal()]).toEqual([])
  })

  it('refuses the future and what contradicts the history, in words', async () => {
    await yard.send('/entries', intake(v7()))
    const future = await yard.send('/entries', look(v7(), { on: '2026-05-07' }))
    expect(future.text).toContain('is in the future')
    const before = await yard.send('/entries', look(v7(), { on: '2026-04-30' }))
    expect(before.text).toContain('is before the intake')
    const stranger = await yard.send('/entries', look(v7(), { colony: 'X-9' }))
    expect(stranger.text).toContain('is no colony of this yard')
  })

  it.each(['', 'not json', '{"a":', 'null', '7', '"text"', '[null]', '[[]]', '[]'])(
    'answers the body %j with a sentence or an empty acknowledgement, never an error of ours',
    async (body) => {
      const answer = await yard.send('/entries', body)
      expect([200, 400, 422]).toContain(answer.status)
      expect(yard.errors).toEqual([])
      expect([...yard.store.journal()]).toEqual([])
    },
  )

  it('takes at most 500 at once', async () => {
    const many = Array.from({ length: 501 }, () => look(v7()))
    expect((await yard.send('/entries', many)).status).toBe(422)
  })
})
