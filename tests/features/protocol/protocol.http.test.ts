/** The protocol page: own values, what a change would move, who changed it, plans recomputed. */
import { setTimeout as wait } from 'node:timers/promises'
import { beforeEach, describe, expect, test } from 'vitest'
import { RULES } from '../../../src/recovery/plan-types.ts'
import { RULE_WORDS } from '../../../src/words/rules.ts'
import { INTAKE, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'

let yard: Yard
beforeEach(async () => {
  yard = await yardOn('2026-05-08')
  for (const colony of ['W-1', 'W-2', 'W-3']) await yard.post('/intake', { ...INTAKE, colony })
})

const windows = () =>
  yard.store.colonies().map((s) => s.plan.checks.find((x) => x.rule === 'telling-visit')?.closes)

/** Until no plan waits to be made. */
async function settled(): Promise<void> {
  for (let i = 0; i < 100 && yard.store.protocols.recomputing() !== null; i++) await wait(10)
  expect(yard.store.protocols.recomputing()).toBeNull()
}

test('every rule and threshold stands there with its default and its source', async () => {
  const words = wordsOf((await yard.get('/protocol')).text)
  for (const rule of RULES) expect(words).toContain(RULE_WORDS[rule].name)
  for (const said of [
    'Hold A colony stays at least so long. Default: 30 days.',
    'Default: 3 frames of bees.',
    'Default: 3 per 100 bees.',
    'Default: 85 °F.',
    'Default: 1/8 in.',
    'Default: opens +4, due +5, closes +7. Eggs hatch after 3 days',
    'USDA-ARS Tucson',
    'Never changed: the defaults stand.',
    'Units and time zone',
  ])
    expect(words).toContain(said)
})

describe('a change', () => {
  const LATER = { 'w.telling-visit.opens': '6', 'w.telling-visit.due': '7', 'w.telling-visit.closes': '9' }

  test('is previewed over the colonies in the yard, and saves nothing', async () => {
    const answer = await yard.post('/protocol/preview', LATER)
    const words = wordsOf(answer.text)
    expect(words).toContain('3 colonies’ checks move')
    expect(words).toContain(
      'The first brood check: opens +4, due +5, closes +7; now opens +6, due +7, closes +9',
    )
    expect(words).toMatch(/W-1 The first brood check: Tue 5 to Fri 8 May, then Thu 7 to Sun 10 May/)
    expect(new Set(windows())).toEqual(new Set(['2026-05-08']))
    expect(yard.store.settings.get('protocol')).toEqual({})
  })

  test('of the months in which queens mate is kept, told, and shown again', async () => {
    const answer = await yard.post('/protocol/preview', { matingMonths: ['7', '6'] })
    expect(wordsOf(answer.text)).toContain('Months in which queens mate: not said, now June, July')
    await yard.post('/protocol/save', { matingMonths: ['7', '6'] })
    await settled()
    expect(yard.store.settings.get('protocol')).toEqual({ matingMonths: ['7', '6'] })
    const text = (await yard.get('/protocol')).text
    expect(text.match(/name="matingMonths" value="(\d+)" checked/g)).toHaveLength(2)
    // All twelve rule nothing out, and one that is no month is refused.
    const all = Array.from({ length: 12 }, (_, i) => String(i + 1))
    await yard.post('/protocol/save', { matingMonths: all })
    await settled()
    expect(yard.store.settings.get('protocol')).toEqual({})
    expect((await yard.post('/protocol/preview', { matingMonths: ['13'] })).status).toBe(422)
  })

  test('says how many become late', async () => {
    const words = wordsOf((await yard.post('/protocol/preview', { 'w.telling-visit.closes': '6' })).text)
    expect(words).toContain('3 colonies’ checks move; 3 become late')
    expect(words).toContain('Becomes late : The first brood check')
  })

  test('that changes nothing says so', async () => {
    expect(wordsOf((await yard.post('/protocol/preview', {})).text)).toContain('there is nothing to save')
    const cut = wordsOf((await yard.post('/protocol/preview', { cutMarginMm: '1/4' })).text)
    expect(cut).toContain('Nothing moves: the plans of all 3 colonies in the yard stay as they are.')
    expect(cut).toContain('Cutting margin: 1/8 in, now 1/4 in')
  })

  test('is saved with who, when and why; plans follow; the page says so', async () => {
    const saved = await yard.post('/protocol/save', { ...LATER, reason: 'Cold spring.' })
    expect(saved.to).toBe('/protocol/progress')
    await settled()
    expect(new Set(windows())).toEqual(new Set(['2026-05-10']))
    expect(wordsOf((await yard.get('/protocol/progress')).text)).toContain(
      'All plans are made again 3 colonies',
    )
    const page = await yard.get('/protocol')
    const words = wordsOf(page.text)
    expect(words).toMatch(
      /Fri 8 May, 12:00 Ines The first brood check: opens \+4.*now opens \+6, due \+7, closes \+9 Cold spring\./,
    )
    expect(page.text).toMatch(/name="w.telling-visit.opens"[^>]*value="6"/)
    expect(words).toContain('The first brood check yours')
    expect(yard.store.verify()).toMatchObject({ ok: true })
    expect(yard.errors).toEqual([])
  })

  test('emptied, a field is the default again', async () => {
    await yard.post('/protocol/save', { ...LATER, holdDays: '40' })
    await settled()
    await yard.post('/protocol/save', { holdDays: '40' })
    await settled()
    expect(yard.store.settings.get('protocol')).toEqual({ holdDays: 40 })
    expect(new Set(windows())).toEqual(new Set(['2026-05-08']))
    expect(yard.store.protocols.changes()).toHaveLength(2)
  })

  test('what equals the default is no choice of the yard’s, in whatever units', async () => {
    await yard.post('/protocol/save', {
      heatLimitC: '85',
      cutMarginMm: '0.125',
      holdDays: '30',
      'w.welfare.due': '7',
    })
    expect(yard.store.settings.get('protocol')).toEqual({})
    expect(yard.store.protocols.changes()).toEqual([])
    await yard.post('/protocol/save', { heatLimitC: '80' })
    await settled()
    expect(yard.store.settings.get('protocol').heatLimitC).toBe(26.7)
  })

  test('mite thresholds by month are kept', async () => {
    await yard.post('/protocol/save', { 'month.9': '2', 'month.12': '1' })
    await settled()
    expect(yard.store.settings.get('protocol')).toEqual({ miteThresholdByMonth: { '9': 2, '12': 1 } })
    expect(wordsOf((await yard.get('/protocol')).text)).toContain(
      'Mites in September: as in the rest of the year, now 2',
    )
  })
})

test.each([
  [{ holdDays: 'long' }, 'must be a number'],
  [{ holdDays: '3' }, 'must be at least 7'],
  [{ holdDays: '30.5' }, 'must be a whole number'],
  [{ heatLimitC: '400' }, 'must be at most'],
  [
    { 'w.welfare.opens': '9', 'w.welfare.due': '3' },
    'must be in order: it opens, then it is due, then comes its last day (now 9, 3, 10)',
  ],
  [{ 'w.mite-wash.closes': '999' }, 'must be at most 120'],
  [{ 'month.4': '-1' }, 'must be at least 0.1'],
  [{ holdDays: '40', reason: 'x'.repeat(501) }, 'must be at most 500'],
])('refuses %j and keeps what was typed', async (fields, says) => {
  for (const path of ['/protocol/preview', '/protocol/save']) {
    const answer = await yard.post(path, fields as Record<string, string>)
    expect(answer.status).toBe(422)
    expect(wordsOf(answer.text)).toContain(says)
    const [name, value] = Object.entries(fields)[0] ?? []
    expect(answer.text).toMatch(new RegExp(`name="${name}"[^>]*value="${value}"`))
  }
  expect(yard.store.settings.get('protocol')).toEqual({})
})

test('while plans are being made again the page counts, and asks again without scripts', async () => {
  const changed = { changedAt: '2026-05-08T12:00:00.000Z', changedBy: 'Ines' }
  yard.store.protocols.change({ holdDays: 40 }, changed)
  yard.store.protocols.remakeSome(1)
  const page = await yard.get('/protocol/progress')
  expect(page.text).toContain('<meta http-equiv="refresh" content="1"/>')
  expect(wordsOf(page.text)).toContain('1 of 3 colonies')
  expect(wordsOf((await yard.get('/protocol')).text)).toContain('Plans are being made again: 1 of 3.')
  await yard.post('/protocol/go-on', {})
  await settled()
  expect((await yard.get('/protocol/progress')).text).not.toContain('http-equiv="refresh"')
})

test('all plans can be made again at any time', async () => {
  const before = JSON.stringify(yard.store.colonies().map((s) => s.plan))
  expect((await yard.post('/protocol/rebuild', {})).to).toBe('/protocol/progress')
  await settled()
  expect(JSON.stringify(yard.store.colonies().map((s) => s.plan))).toBe(before)
})

test('units, time zone and names are changed from here too', async () => {
  const answer = await yard.post('/settings', {
    temperature: 'C',
    weight: 'kg',
    timeZone: 'UTC',
    yardName: 'Quarry yard',
    inspector: 'Hollis Vane, 555 0111',
    back: '/protocol',
  })
  expect(answer.to).toBe('/protocol?saved=units')
  const words = wordsOf((await yard.get('/protocol?saved=units')).text)
  expect(words).toContain('are saved, for everyone')
  expect(words).toContain('Default: 29 °C.')
  expect(words).toContain('Default: 3.2 mm.')
  expect(yard.store.settings.get('inspector')).toBe('Hollis Vane, 555 0111')
})

test('only operators may', async () => {
  for (const role of ['beekeeper', 'helper'] as const) {
    const other = await yardOn('2026-05-08', role)
    expect((await other.get('/protocol')).status).toBe(403)
    expect((await other.post('/protocol/save', { holdDays: '40' })).status).toBe(403)
    expect((await other.post('/protocol/rebuild', {})).status).toBe(403)
  }
})
