/**
 * Half a look answers half a question (common practice): eggs "none" with cells not looked for leaves the first brood
 * check open, as late as it was, and every page says what is missing.
 */
import { describe, expect, it } from 'vitest'
import { day, intake, look, put, words } from '../../support/hard-yard.ts'
import { type Yard, yardOn } from '../../support/yard-on.ts'

const MISSING = 'You have not said whether there are queen cells: that decides it.'

async function halfLooked(): Promise<{ yard: Yard; saved: string }> {
  const yard = await yardOn(day(11))
  put(yard, intake('W-12'), look('W-12', 2, { opened: false, signs: [] }))
  const answer = await yard.post('/colony/W-12/visit', {
    on: day(11),
    opened: 'yes',
    eggs: 'none',
    open: 'none',
  })
  expect(answer.status).toBe(303)
  return { yard, saved: answer.to ?? '' }
}

describe('half a look on day 11', () => {
  it('is named after saving, on Today, in the advice and at the box; the box stays late', async () => {
    const { yard, saved } = await halfLooked()
    const after = await words(yard, saved)
    expect(after).toContain(`${MISSING} Say it now`)
    expect(await words(yard, '/colony/W-12')).toContain(MISSING)
    const today = await words(yard, '/')
    expect(today).toContain('1 colony to see to, 1 late.')
    expect(today).toContain(MISSING)
    const box = await words(yard, '/round/box/W-12?yard=')
    expect(box).toContain(MISSING)
    const round = await words(yard, '/round?yard=')
    expect(round).toContain('late: half a look')
    expect(round).toContain('1 of 1, 1 late')
  })

  it('is answered by the other half, whoever brings it: the looks of a day add up', async () => {
    const { yard } = await halfLooked()
    await yard.post('/colony/W-12/visit', { on: day(11), opened: 'yes', cells: 'none' })
    for (const path of ['/', '/colony/W-12', '/round?yard='])
      expect(await words(yard, path), path).not.toContain('You have not said')
    expect(await words(yard, '/round?yard=')).not.toContain('half a look')
    expect(yard.store.colony('W-12')?.summary.plan.missing).toEqual([])
  })
})

describe('a visit at which nothing is noted', () => {
  const empty = { on: day(11), opened: 'yes' }

  it('is asked about before it is saved, without scripts: the form comes back with a tick', async () => {
    const yard = await yardOn(day(11))
    put(yard, intake('W-12'), look('W-12', 2, { opened: false, signs: [] }))
    const before = yard.store.colony('W-12')?.journal.length
    const asked = await yard.post('/colony/W-12/visit', empty)
    expect(asked.status).toBe(422)
    expect(asked.text).toContain('Nothing is noted. Save it as a visit at which nothing was looked at?')
    expect(asked.text).toContain('<input type="checkbox" name="nothing" value="yes"/>')
    expect(yard.store.colony('W-12')?.journal.length).toBe(before)
  })

  it('is saved once somebody says so, and answers nothing', async () => {
    const yard = await yardOn(day(11))
    put(yard, intake('W-12'), look('W-12', 2, { opened: false, signs: [] }))
    await yard.get('/')
    const plan = yard.store.colony('W-12')?.summary.plan
    expect(plan?.asOf).toBe(day(11))
    const saved = await yard.post('/colony/W-12/visit', { ...empty, nothing: 'yes' })
    expect(saved.status).toBe(303)
    expect(yard.store.colony('W-12')?.summary.plan.checks).toEqual(plan?.checks)
  })

  it('is not asked about where something was done, or only a note taken', async () => {
    const yard = await yardOn(day(11))
    put(yard, intake('W-12'))
    const note = await yard.post('/colony/W-12/visit', { ...empty, note: 'Wet.' })
    expect(note.status).toBe(303)
    const fed = await yard.post('/colony/W-12/visit', { ...empty, 'given1.what': 'syrup' })
    expect(fed.status).toBe(303)
  })

  it('is not what one tap for "all well" writes: that answers the look from outside', async () => {
    const yard = await yardOn(day(2))
    put(yard, intake('W-12'))
    await yard.post('/colony/W-12/outside-look', {})
    const { plan } = yard.store.colony('W-12')?.summary ?? {}
    expect(plan?.checks.find((c) => c.rule === 'outside-look')?.status).toBe('answered')
  })
})

describe('looks that disagree', () => {
  it('are listed for who may correct them, with what to do, on Today and the colony page', async () => {
    const yard = await yardOn(day(6))
    put(yard, intake('W-12'), look('W-12', 6, { eggs: 'single' }), look('W-12', 6, { eggs: 'none' }))
    const today = await words(yard, '/')
    expect(today).toContain('Entries that do not fit W-12 Two looks of Thu 7 May disagree about eggs.')
    expect(today).toMatch(/Look once more .*; or if an entry is wrong, correct it in its journal\./)
    expect(await words(yard, '/colony/W-12')).toMatch(/This does not fit .*if an entry is wrong, correct it/)
    const helper = await yardOn(day(6), 'helper')
    put(helper, intake('W-12'), look('W-12', 6, { eggs: 'single' }), look('W-12', 6, { eggs: 'none' }))
    expect(await words(helper, '/')).not.toContain('Entries that do not fit')
    expect(await words(helper, '/colony/W-12')).toContain('or if an entry is wrong, tell a beekeeper.')
  })

  it('leave Today when they are settled or old', async () => {
    const yard = await yardOn(day(20))
    put(yard, intake('W-12'), look('W-12', 6, { eggs: 'single' }), look('W-12', 6, { eggs: 'none' }))
    put(yard, look('W-12', 9, { eggs: 'single', open: 'some', cells: 'none' }))
    expect(yard.store.colony('W-12')?.summary.plan.surprises.length).toBeGreaterThan(0)
    expect(await words(yard, '/')).not.toContain('Entries that do not fit')
  })
})
