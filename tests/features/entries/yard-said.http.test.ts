/** A yard typed wrong must not begin a yard of its own: not at the desk, not on a phone without signal. */
import { beforeEach, describe, expect, it } from 'vitest'
import { down, nextId, phoneIn } from '../../support/phone.ts'
import { testYard } from '../../support/yard-app.ts'
import { INTAKE, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'

const DAY = '2026-05-06'
const ASKED =
  'There is no yard called Noth field yet. Did you mean North field? Tick “A new yard” to begin one.'
const MOVE = { on: DAY, stand: '7' }

let yard: Yard
beforeEach(async () => {
  yard = await yardOn(DAY)
})
const yards = (): string[] => yard.store.yards().map((y) => y.yard)
const yardOf = (tag: string) => yard.store.colony(tag)?.summary.yard

describe('a yard that nobody has used', () => {
  it('begins an empty book without a question', async () => {
    expect((await yard.post('/intake', INTAKE)).status).toBe(303)
    expect(yards()).toEqual(['North field'])
  })

  it('is asked about at an intake, beside the field, with the nearest name and a box to tick', async () => {
    await yard.post('/intake', INTAKE)
    const typed = { ...INTAKE, colony: 'W-13', yard: 'Noth field' }
    const back = await yard.post('/intake', typed)
    expect(back.status).toBe(422)
    expect(wordsOf(back.text)).toContain(ASKED)
    expect(back.text).toContain('id="f-yard-problem"')
    expect(back.text).toContain('name="newYard"')
    expect(yards()).toEqual(['North field'])
    expect((await yard.post('/intake', { ...typed, newYard: 'yes' })).status).toBe(303)
    expect(yardOf('W-13')).toBe('Noth field')
  })

  it('is asked about at a move, and where a move or an intake is corrected', async () => {
    await yard.post('/intake', INTAKE)
    expect(wordsOf((await yard.post('/colony/W-12/move', { ...MOVE, yard: 'Noth field' })).text)).toContain(
      ASKED,
    )
    expect((await yard.post('/colony/W-12/move', { ...MOVE, yard: 'Orchard', newYard: 'yes' })).status).toBe(
      303,
    )
    const [move, intake] = yard.store.changes()
    const wrong = await yard.post(`/entry/${move?.entry.id}/correct`, { ...MOVE, yard: 'Orchad' })
    expect(wordsOf(wrong.text)).toContain('Did you mean Orchard?')
    // Nothing stands in the intake's yard any more, but it was settled when the intake was written.
    expect(yards()).toEqual(['Orchard'])
    expect((await yard.post(`/entry/${intake?.entry.id}/correct`, { ...INTAKE, stand: '5' })).status).toBe(
      303,
    )
  })

  it('is the known one where only capitals and spaces differ', async () => {
    await yard.post('/intake', INTAKE)
    expect((await yard.post('/intake', { ...INTAKE, colony: 'W-13', yard: 'north  Field' })).status).toBe(303)
    expect(yardOf('W-13')).toBe('North field')
  })

  it('has no nearest name where none is like it', async () => {
    await yard.post('/intake', INTAKE)
    const back = wordsOf((await yard.post('/colony/W-12/move', { ...MOVE, yard: 'Zugspitze' })).text)
    expect(back).toContain('There is no yard called Zugspitze yet. Tick')
  })
})

describe('a phone without signal', () => {
  it('asks as the server does', async () => {
    const services = testYard({ day: DAY })
    await services.post('operator', '/intake', INTAKE)
    const phone = phoneIn(services, 'operator')
    phone.at(`${DAY}T12:00:00Z`)
    await phone.syncService.send()
    phone.network(down)
    const move = { ...MOVE, yard: 'Noth field', id: nextId() }
    const back = await phone.post('/colony/W-12/move', move)
    expect(back.status).toBe(422)
    expect(wordsOf(back.html)).toContain(ASKED)
    expect((await phone.post('/colony/W-12/move', { ...move, newYard: 'yes' })).status).toBe(303)
  })
})
