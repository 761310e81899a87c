/** The worker is built with the smaller router of Hono (web/vite.config.ts): it leads where the whole one does. Invented. */
import { expect, test, vi } from 'vitest'
import { down, phoneIn } from '../support/phone.ts'
import { testYard } from '../support/yard-app.ts'

vi.mock('hono', () => import('hono/tiny'))

const ID = '019e0000-0000-7000-8000-000000000009'
const DAY = '2026-06-12'

test('pages, forms, addresses with a name in them and those that nobody has, with it', async () => {
  const { Hono } = await import('hono')
  expect(new Hono().router.name).toBe('PatternRouter')
  const yard = testYard({ day: DAY })
  const job = { name: 'Ottoline Fairweather', address: '4 Invented Row', plannedOn: DAY, what: 'wall' }
  await yard.post('beekeeper', '/removals/new', { ...job, id: ID, version: '0' })
  const phone = phoneIn(yard, 'beekeeper')
  phone.at(`${DAY}T12:00:00Z`)
  await phone.syncService.send()
  phone.network(down)
  for (const path of ['/', '/round', '/removals', '/removals/new', '/outbox', '/find?q=ott', '/intake'])
    expect(await phone.open(path), path).toContain('<main')
  for (const part of ['', '/job', '/site', '/check', '/second?item=exclusion', '/sign', '/end'])
    expect(await phone.open(`/removals/${ID}${part}`), part).toContain('Ottoline Fairweather')
  const changed = { ...job, version: '1', wayIn: 'Gate code 1234' }
  expect((await phone.post(`/removals/${ID}/job`, changed)).to).toContain(`/removals/${ID}`)
  expect(await phone.open(`/removals/${ID}`)).toContain('Gate code 1234')
  for (const path of ['/removals/none', `/removals/${ID}/print`, '/nowhere'])
    await expect(phone.open(path), path).rejects.toThrow()
})
