/** A box in which nothing lives: anybody says so with one tap, a beekeeper confirms (common practice). */
import { describe, expect, it } from 'vitest'
import { day, intake, put, words } from '../../support/hard-yard.ts'
import { yardOn } from '../../support/yard-on.ts'

describe('a box found lost', () => {
  it('is said by a helper with one tap, from the round’s box or the colony’s page', async () => {
    const yard = await yardOn(day(6), 'helper')
    put(yard, intake('W-12'))
    for (const path of ['/round/box/W-12?yard=', '/colony/W-12']) {
      const page = await yard.get(path)
      expect(page.text, path).toMatch(/action="\/colony\/W-12\/lost/)
      expect(page.text, path).toMatch(/name="lost" value="no-bees".*name="lost" value="dead".*value="gone"/s)
    }
    const saved = await yard.post('/colony/W-12/lost', { lost: 'dead' })
    expect(saved.status).toBe(303)
    const { plan } = yard.store.colony('W-12')?.summary ?? {}
    expect(plan?.lost).toEqual({ on: day(6), how: 'dead', by: 'Ines' })
  })

  it('is asked for nothing more, and handed to a beekeeper with an outcome filled in', async () => {
    const yard = await yardOn(day(6))
    put(yard, intake('W-12'))
    await yard.post('/colony/W-12/lost', { lost: 'dead' })
    const today = await words(yard, '/')
    expect(today).toContain('Nothing to do today.')
    expect(today).toContain(
      'Found lost, to be confirmed W-12 Found dead on Thu 7 May, signed Ines. Confirm how it left',
    )
    expect(today).not.toContain('Can wait')
    expect(await words(yard, '/colony/W-12')).toContain('W-12 Found dead, to be confirmed')
    const form = await yard.get('/colony/W-12/outcome')
    expect(form.text).toMatch(/name="what" value="died" checked/)
    expect(form.text).toContain(`value="${day(6)}"`)
    const left = await yard.post('/colony/W-12/outcome', { what: 'died', on: day(6) })
    expect(left.status).toBe(303)
    expect(await words(yard, '/')).not.toContain('Found lost')
  })

  it('is shown to a helper without a way they may not go', async () => {
    const yard = await yardOn(day(6), 'helper')
    put(yard, intake('W-12'))
    await yard.post('/colony/W-12/lost', { lost: 'gone' })
    const today = await yard.get('/')
    expect(today.text).toContain('A beekeeper confirms how it left.')
    expect(today.text).not.toContain('/colony/W-12/outcome')
  })

  it('is said in the form of a visit and on paper as well, and a made-up word writes nothing', async () => {
    const yard = await yardOn(day(6))
    put(yard, intake('W-12'))
    expect((await yard.get('/colony/W-12/visit')).text).toMatch(/name="lost" value="gone"/)
    expect((await yard.get('/paper?yard=')).text).toContain('data-field="lost"')
    const count = yard.store.colony('W-12')?.journal.length
    await yard.post('/colony/W-12/lost', { lost: 'stolen' })
    await yard.post('/colony/W-12/lost', {})
    expect(yard.store.colony('W-12')?.journal.length).toBe(count)
    await yard.post('/sheet-entry', { day: day(6), 'r0.colony': 'W-12', 'r0.lost': 'no-bees' })
    expect(yard.store.colony('W-12')?.summary.plan.lost?.how).toBe('no-bees')
  })
})
