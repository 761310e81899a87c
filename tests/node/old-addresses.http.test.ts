/** Pages that moved under others are found at their old addresses, by whoever may open them. */
import { expect, it } from 'vitest'
import { GROUPS, WAYS } from '../../src/parts/nav.ts'
import type { Role } from '../../src/people/index.ts'
import { testYard } from '../support/yard-app.ts'

it.each([
  ['/stands', '/supplies/stands', 'operator'],
  ['/calendar', '/account/calendar', 'helper'],
] as const)('%s leads to %s', async (old, now, role: Role) => {
  const yard = testYard()
  const answer = await yard.ask(role, old)
  expect(answer.status).toBe(301)
  expect(answer.headers.get('location')).toBe(now)
  expect((await yard.ask(role, now)).status).toBe(200)
})

it('there are six groups at most, none of them empty', () => {
  expect(GROUPS.length).toBeLessThanOrEqual(6)
  for (const group of GROUPS)
    expect(
      WAYS.some((w) => w.place === group),
      group,
    ).toBe(true)
})

it.each(['operator', 'beekeeper', 'helper'] as const)(
  'a page tells a %s who is signed in, offers the way out, and leads only where they may go',
  async (role) => {
    const yard = testYard()
    const html = await (await yard.ask(role, '/')).text()
    const menu = /<nav class="ways".*?<\/nav>/s.exec(html)?.[0] ?? ''
    expect(menu).toContain('action="/sign-out"')
    expect(menu).toContain('href="/account"')
    for (const [, href = ''] of menu.matchAll(/href="([^"]+)"/g))
      expect((await yard.ask(role, href)).status, href).toBe(200)
  },
)
