/** What decides a story is asked in the forms, shown in the journal and kept through a correction. */
import { describe, expect, it } from 'vitest'
import { day, intake, look, put, words } from '../../support/hard-yard.ts'
import { INTAKE, type Yard, yardOn } from '../../support/yard-on.ts'

const entryOf = (yard: Yard, tag: string, kind: string) =>
  yard.store.colony(tag)?.history.entries.find((e) => e.kind === kind)

describe('at intake', () => {
  it('a virgin, clipped, marked, brood chilled: asked, said in the journal, shown when corrected', async () => {
    const yard = await yardOn(day(1))
    const saved = await yard.post('/intake', {
      ...INTAKE,
      queen: 'loose',
      queenVirgin: 'yes',
      queenMarked: 'no',
      queenClipped: 'yes',
      broodState: 'chilled',
    })
    expect(saved.status).toBe(303)
    expect(entryOf(yard, 'W-12', 'intake')).toMatchObject({
      queenVirgin: true,
      queenMarked: false,
      queenClipped: true,
      broodState: 'chilled',
    })
    const journal = await words(yard, '/colony/W-12')
    for (const fact of ['a virgin', 'clipped', 'brood chilled']) expect(journal).toContain(fact)
    const id = entryOf(yard, 'W-12', 'intake')?.id ?? ''
    const form = (await yard.get(`/entry/${id}/correct`)).text
    expect(form).toMatch(/name="queenVirgin" value="yes" checked/)
    expect(form).toMatch(/name="broodState" value="chilled" checked/)
    // Chilled brood can become no queen: said, and not hidden in a fold.
    expect(form).toMatch(/<details class="also" open[^>]*><summary>A virgin, marked or clipped/)
  })
})

describe('at the box', () => {
  it('how many cells and how thoroughly one looked are asked once, and nothing stands by itself', async () => {
    const yard = await yardOn(day(6))
    put(yard, intake('W-12'))
    const form = (await yard.get('/colony/W-12/visit')).text
    expect(form.match(/name="searched"/g)).toHaveLength(3)
    expect(form).toMatch(/name="searched" value="" checked/)
    await yard.post('/colony/W-12/visit', {
      on: day(6),
      opened: 'yes',
      eggs: 'none',
      cells: 'open',
      cellCount: '7',
      searched: 'thoroughly',
    })
    expect(entryOf(yard, 'W-12', 'inspection')).toMatchObject({ cellCount: 7, searched: 'thoroughly' })
    expect(await words(yard, '/colony/W-12')).toContain('looked frame by frame')
  })

  it('is typed in from a sheet alike', async () => {
    const yard = await yardOn(day(6))
    put(yard, intake('W-12'))
    await yard.post('/sheet-entry', {
      day: day(6),
      'r0.colony': 'W-12',
      'r0.eggs': 'none',
      'r0.cells': 'none',
      'r0.searched': 'in-haste',
    })
    expect(entryOf(yard, 'W-12', 'inspection')).toMatchObject({ opened: true, searched: 'in-haste' })
  })
})

describe('a move', () => {
  it('says what becomes of foragers, of a young queen in her days, how it is done; and keeps how far', async () => {
    const yard = await yardOn(day(14))
    put(yard, intake('W-12'), intake('Q-1'), look('W-12', 6, { eggs: 'none', cells: 'open' }))
    put(yard, look('Q-1', 6, { eggs: 'single', cells: 'none' }))
    const form = await words(yard, '/colony/W-12/move')
    expect(form).toContain('Under about 1.9 miles foragers fly back to the old stand')
    expect(form).toContain('Move in the evening, closed, and lean branches before the entrance')
    expect(form).toMatch(/A young queen who has learnt the old place may not come home from her flight: not /)
    expect(await words(yard, '/colony/Q-1/move')).not.toContain('A young queen')
    await yard.post('/colony/Q-1/move', { yard: 'North field', stand: '3', distanceKm: '1', on: day(14) })
    const move = entryOf(yard, 'Q-1', 'move')
    // A mile, as typed in a yard that counts in miles.
    expect(move).toMatchObject({ distanceKm: 1.609344 })
    expect(await words(yard, '/colony/Q-1')).toContain('1 miles away')
    expect((await yard.get(`/entry/${move?.id}/correct`)).text).toMatch(/name="distanceKm"[^>]*value="1"/)
  })
})

describe('a treatment', () => {
  const treat = { what: 'treatment', product: 'thymol', withdrawalDays: '30' }

  it('says that a wash follows, the withdrawal, and whom it can cost', async () => {
    const yard = await yardOn(day(14))
    put(
      yard,
      intake('W-12'),
      intake('C-1', { queen: 'caged' }),
      look('W-12', 6, { eggs: 'none', cells: 'open' }),
    )
    expect(await words(yard, '/colony/W-12/treat')).toMatch(
      /Wash again 10 to 14 days after.*A young queen may be/,
    )
    expect(await words(yard, '/colony/C-1/treat')).toContain('A queen is in a cage in there')
    expect(await words(yard, '/colony/C-1/visit')).toMatch(/Treatment: A queen is in a cage/)
    await yard.post('/colony/W-12/treat', { ...treat, on: day(14) })
    expect(await words(yard, '/colony/W-12')).toContain(
      'Treated Fri 15 May (thymol). Wash again Mon 25 to Fri 29 May. Withdrawal until Sun 14 Jun.',
    )
  })
})

describe('leaving', () => {
  it('by moving out, the form lists what is not met, and a decision can be signed', async () => {
    const yard = await yardOn(day(31))
    put(yard, intake('W-12', { temper: 5 }), look('W-12', 20, { eggs: 'single', signs: ['robbing'] }))
    const form = await yard.get('/colony/W-12/outcome?what=moved-out')
    expect(form.text).toMatch(/<details class="caution" open/)
    const listed = await words(yard, '/colony/W-12/outcome?what=moved-out')
    for (const unmet of [
      'disease look within',
      'no robbing at the last look',
      'temper under 4',
      'mites: no mite wash',
    ])
      expect(listed).toContain(unmet)
    expect((await yard.get('/colony/W-12/note')).text).toContain('name="settles" value="temper"')
    await yard.post('/colony/W-12/note', { text: 'The buyer knows.', settles: 'temper', on: day(31) })
    expect(await words(yard, '/colony/W-12/outcome?what=moved-out')).not.toContain('temper under 4')
    const helper = await yardOn(day(31), 'helper')
    put(helper, intake('W-12', { temper: 5 }))
    expect((await helper.get('/colony/W-12/note')).text).not.toContain('name="settles"')
  })
})

describe('signs', () => {
  it.each([
    ['robbing', 'Robbing: close the entrance to one bee’s width today'],
    ['beetles', 'Small hive beetles: crush what you see'],
    ['moths', 'Wax moths: take out comb the bees do not cover'],
    ['deformed-wings', 'Deformed wings: that is what mites do'],
  ])('%s leads, with its remedy in the same words on every page', async (sign, remedy) => {
    const yard = await yardOn(day(9))
    put(yard, intake('W-12'), look('W-12', 6, { eggs: 'single', cells: 'none' }))
    await yard.post('/colony/W-12/visit', { on: day(9), opened: 'yes', signs: sign })
    yard.setDay(day(10))
    for (const path of ['/', '/round/box/W-12?yard=', '/colony/W-12', '/health', '/colony/W-12/health'])
      expect(await words(yard, path), path).toContain(remedy)
    const lid = (await yard.get('/colony/W-12/visit')).text
    if (sign === 'robbing') expect(lid).toMatch(/name="opened" value="no" checked/)
  })

  it('seen on combs are not gone because somebody saw nothing from outside', async () => {
    const yard = await yardOn(day(9))
    put(
      yard,
      intake('W-12'),
      look('W-12', 7, { eggs: 'single', cells: 'none', signs: ['beetles', 'robbing'] }),
    )
    await yard.post('/colony/W-12/outside-look', {})
    const health = await words(yard, '/colony/W-12/health')
    expect(health).toContain('Hive beetles Seen Fri 8 May.')
    expect(health).toMatch(/Robbing Seen once, last Fri 8 May; not at the last look/)
    const { plan } = yard.store.colony('W-12')?.summary ?? {}
    const unmet = plan?.readiness.unmet.map((u) => u.what).join() ?? ''
    expect(unmet).toContain('no beetles sliming')
    expect(unmet).not.toContain('no robbing')
  })
})
