/** A colony's page tells what was united into it, and the form of leaving says what uniting asks first. */
import { v7 } from 'uuid'
import { beforeEach, describe, expect, it } from 'vitest'
import { given, INTAKE, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'

const DAY = '2026-05-20'
const UNITED = { on: '2026-05-19', what: 'united', into: 'w-12', cause: '' }

let yard: Yard
beforeEach(async () => {
  yard = await yardOn(DAY)
  await yard.post('/intake', INTAKE)
  await yard.post('/intake', { ...INTAKE, colony: 'W-13', stand: '5', queen: 'lost' })
})

describe('the colony that took another in', () => {
  const line = 'W-13 was united into it'

  it('tells it in its journal, on that day, as a line that cannot be corrected there', async () => {
    expect((await yard.post('/colony/W-13/outcome', UNITED)).status).toBe(303)
    const html = (await yard.get('/colony/W-12')).text
    const item =
      html.match(/<li class="entry">(?:(?!<\/li>)[\s\S])*was united into it[\s\S]*?<\/li>/)?.[0] ?? ''
    expect(wordsOf(item)).toContain(`Tue 19 May Ines ${line}`)
    expect(item).not.toContain('/correct')
    const gone = yard.store.colonies({}).find((s) => s.tag === 'W-13')?.id
    expect(item).toContain(`href="/colony/${gone}"`)
  })

  it('tells it no more once it is taken back', async () => {
    await yard.post('/colony/W-13/outcome', UNITED)
    const outcome = yard.store.changes({ limit: 1 })[0]?.entry.id ?? ''
    await yard.post(`/entry/${outcome}/withdraw`, { reason: 'Another box.' })
    expect((await yard.get('/colony/W-12')).text).not.toContain('was united into it')
  })

  it('is the one that had the tag then, not one that has it now', async () => {
    await yard.post('/colony/W-13/outcome', UNITED)
    await yard.post('/colony/W-12/outcome', { on: DAY, what: 'moved-out' })
    await yard.post('/intake', { ...INTAKE, on: DAY })
    const [now, then] = [true, false].map((open) =>
      yard.store.colonies({}).find((s) => s.tag === 'W-12' && (s.closedOn === null) === open),
    )
    expect((await yard.get(`/colony/${now?.id}`)).text).not.toContain('was united into it')
    expect((await yard.get(`/colony/${then?.id}`)).text).toContain('was united into it')
  })
})

describe('the form of leaving', () => {
  const caution = 'one queen first'

  it('says that one queen goes first, where the colony has or may have one', async () => {
    const saw = { id: v7(), colony: 'W-12', kind: 'inspection', on: '2026-05-06', by: 'Ines', opened: true }
    given(yard, [{ ...saw, eggs: 'single', queen: 'seen' }])
    expect(wordsOf((await yard.get('/colony/W-12/outcome?what=united')).text)).toContain(caution)
  })

  it('does not where it is known to have none', async () => {
    const looked = {
      id: v7(),
      colony: 'W-13',
      kind: 'inspection',
      on: '2026-05-06',
      by: 'Ines',
      opened: true,
    }
    given(yard, [{ ...looked, eggs: 'none', open: 'none', cells: 'none', queen: 'unseen' }])
    expect(wordsOf((await yard.get('/colony/W-13/outcome?what=united')).text)).not.toContain(caution)
  })
})
