/**
 * Foulbrood traced: spores travel with combs, bees, honey and robbers in both directions (common practice of inspectors),
 * so colonies bound to a suspected one are held and looked at in two to eight weeks (afb.org.nz: signs from 12.5 days on).
 */
import { beforeAll, describe, expect, it } from 'vitest'
import { day, gift, intake, look, outcome, put, words } from '../../support/hard-yard.ts'
import { type Yard, yardOn } from '../../support/yard-on.ts'

const SUSPECTED = { signs: ['brood-disease-suspected'] }

/** W-7 got a frame from D-1 and gave combs to T-1; N-1 stands in another yard; W-7 is suspected on day 8. */
async function traced(on: number): Promise<Yard> {
  const yard = await yardOn(day(on))
  put(yard, intake('W-7'), intake('D-1'), intake('T-1'), intake('N-1', { yard: 'South bank' }))
  put(yard, gift('W-7', 4, 'egg-frame', { donor: 'D-1' }), gift('T-1', 5, 'combs', { donor: 'w-7' }))
  put(yard, look('W-7', 8, SUSPECTED))
  return yard
}

describe('bound to a suspected colony', () => {
  let yard: Yard
  beforeAll(async () => {
    yard = await traced(9)
  })

  it('is listed on Health and on each colony’s page, with how and when', async () => {
    const health = await words(yard, '/health')
    expect(health).toMatch(
      /Bound to a suspected colony .*D-1 ▲ Held : gave a frame of eggs to W-7, Tue 5 May/,
    )
    expect(health).toMatch(/T-1 ▲ Held : got combs from W-7, Wed 6 May/)
    expect(health).not.toMatch(/N-1 ▲ Held/)
    for (const path of ['/colony/D-1', '/colony/D-1/health'])
      expect(await words(yard, path), path).toContain(
        'Held: bound to W-7, in which brood disease is suspected Tue 5 May: it gave a frame of eggs to W-7',
      )
    expect(await words(yard, '/colony/W-7/health')).toMatch(/Bound to it: D-1 .*; T-1 /)
  })

  it('is held from moving, uniting and giving, with the reason; others are not', async () => {
    const move = await yard.post('/colony/D-1/move', { yard: 'North field', stand: '9', on: day(9) })
    expect(move.status).toBe(422)
    expect(move.text).toContain('brood disease is suspected in W-7: it may not be moved')
    const into = await yard.post('/colony/N-1/outcome', { what: 'united', into: 'T-1', on: day(9) })
    expect(into.text).toContain('T-1 got combs from W-7')
    const donor = await yard.post('/colony/N-1/visit', {
      on: day(9),
      opened: 'yes',
      'given1.what': 'egg-frame',
      'given1.donor': 'D-1',
    })
    expect(donor.status).toBe(422)
    expect(await words(yard, '/colony/D-1/move')).toContain('Held: bound to W-7')
    const well = await yard.post('/colony/N-1/move', { yard: 'South bank', stand: '9', on: day(9) })
    expect(well.status).toBe(303)
  })

  it('opens its form with the lid on until its look is due, and gets no chores', async () => {
    expect((await yard.get('/colony/D-1/visit')).text).toMatch(/name="opened" value="no" checked/)
    expect((await yard.get('/colony/W-7/visit')).text).toMatch(/name="opened" value="no" checked/)
    const chores = ['comb-ties', 'mite-wash']
    for (const tag of ['D-1', 'W-7'])
      for (const c of yard.store.colony(tag)?.summary.plan.checks.filter((x) => chores.includes(x.rule)) ??
        [])
        expect(c.status, `${tag} ${c.rule}`).toBe('void')
    const line = (await words(yard, '/round/box/W-7?yard=')).split('Nothing lives')[0]
    expect(line).not.toContain('On the same visit')
  })
})

describe('gone before anybody suspected', () => {
  it('is listed on Health with how it is bound, so that who has it is told', async () => {
    const yard = await yardOn(day(9))
    put(yard, intake('W-7'), intake('D-1'), intake('G-1'), intake('F-1'))
    put(yard, gift('W-7', 4, 'egg-frame', { donor: 'G-1' }), outcome('G-1', 6), outcome('F-1', 6))
    expect(await words(yard, '/health')).not.toContain('Gone since')
    put(yard, look('W-7', 8, SUSPECTED))
    const health = await words(yard, '/health')
    expect(health).toMatch(
      /Gone since, and bound to a suspected colony .*G-1 Moved out Thu 7 May.*: gave a frame of eggs to W-7, Tue 5 May/,
    )
    expect(health).not.toContain('F-1')
  })
})

describe('after two weeks', () => {
  it('is asked for a look at every frame of brood, and cleared by a clean one', async () => {
    const yard = await traced(20)
    expect(await words(yard, '/')).toContain('Look at every frame of brood')
    expect((await yard.get('/colony/D-1/visit')).text).toMatch(/name="opened" value="yes" checked/)
    await yard.post('/colony/D-1/visit', { on: day(20), opened: 'yes', eggs: 'single', signs: 'none' })
    expect(yard.store.colony('D-1')?.summary.plan.exposed).toBeNull()
    expect(yard.store.colony('T-1')?.summary.plan.exposed?.from).toBe('W-7')
    const move = await yard.post('/colony/D-1/move', { yard: 'North field', stand: '9', on: day(20) })
    expect(move.status).toBe(303)
  })

  it('is freed at once when the suspected colony is cleared, and the book stays what a rebuild makes', async () => {
    const yard = await traced(20)
    expect(yard.store.verify().problems).toEqual([])
    await yard.post('/colony/W-7/cleared', { clearedBy: 'inspector', on: day(20) })
    for (const tag of ['D-1', 'T-1']) expect(yard.store.colony(tag)?.summary.plan.exposed).toBeNull()
    expect(yard.store.verify().problems).toEqual([])
  })

  it('may be cleared by the inspector before its look is due', async () => {
    const yard = await traced(9)
    const cleared = await yard.post('/colony/D-1/cleared', { clearedBy: 'inspector', on: day(9) })
    expect(cleared.status).toBe(303)
    expect(yard.store.colony('D-1')?.summary.plan.exposed).toBeNull()
  })
})

describe('the inspector', () => {
  it('can be called from the card: a number is a link', async () => {
    const yard = await traced(9)
    expect(await words(yard, '/colony/W-7')).toContain('Say whom to call')
    yard.store.settings.set('inspector', 'Perpetua Lindqvist, (555) 010-4477')
    for (const path of ['/', '/colony/W-7', '/round/box/W-7?yard=', '/colony/W-7/health'])
      expect((await yard.get(path)).text, path).toContain('href="tel:5550104477"')
  })
})
