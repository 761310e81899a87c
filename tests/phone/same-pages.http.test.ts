/** A phone without signal shows what the server would: the same pages, from what the phone keeps, for every role. */
import { beforeAll, describe, expect, it } from 'vitest'
import { addDays } from '../../src/days.ts'
import type { RoundBundle } from '../../src/features/offline/round-bundle.ts'
import type { Role } from '../../src/people/index.ts'
import { filledFile } from '../support/filled.ts'
import { LONG_ENOUGH, often } from '../support/long.ts'
import { phoneIn } from '../support/phone.ts'
import { type TestYard, testYard } from '../support/yard-app.ts'

const DAY = '2026-06-10'
let yard: TestYard
beforeAll(() => {
  yard = testYard({ day: DAY, file: filledFile(DAY, 'boxes') })
})

/** Without what has to differ: ids made for each form, the phone's own line, and letters, which only the server knows of. */
const plain = (html: string): string =>
  html
    .replaceAll(/01[0-9a-f]{6}-[0-9a-f]{4}-7[0-9a-f]{3}-[0-9a-f]{4}-[0-9a-f]{12}(?=" ?\/?>)/g, 'id')
    .replace(/<p class="letters-due">[\s\S]*?<\/p>/, '')
    .replace(/<aside class="phone-line"[\s\S]*?<\/aside>/, '')

/** Every second box, and for the other roles and the other day every eighth; others each run, and all of them in the long run. */
const [HALF, EIGHTH] = [often(1, 2), often(1, 8)]
const FIRST = Date.now() % EIGHTH

const ROLES: Role[] = ['operator', 'beekeeper', 'helper']

describe.each(ROLES)('the pages of the round, for a %s', (role) => {
  it(
    'are the same from the phone as from the server, today and a week on',
    async () => {
      const phone = phoneIn(yard, role)
      phone.at(`${DAY}T12:00:00Z`)
      expect(await phone.syncService.send()).toBe('done')
      const all = yard.services.store.colonies({ open: true }).map((s) => s.tag)
      const some = (step: number): string[] => all.filter((_, i) => i % step === FIRST % step)
      const pathsOn = (day: string): string[] => {
        const tags = some(role === 'operator' && day === DAY ? HALF : EIGHTH)
        return [
          '/',
          '/round',
          ...tags.map((tag) => `/colony/${tag}`),
          ...tags
            .slice(0, 3)
            .flatMap((tag) => ['visit', 'move', 'note'].map((form) => `/colony/${tag}/${form}`)),
          ...(role === 'helper' ? [] : ['/intake', `/colony/${tags[0]}/outcome`]),
        ]
      }
      for (const day of [DAY, addDays(DAY, 7)]) {
        yard.at(`${day}T12:00:00Z`)
        phone.at(`${day}T12:00:00Z`)
        for (const path of pathsOn(day)) {
          const there = await yard.ask(role, path)
          expect(there.status, path).toBe(200)
          expect(plain(await phone.open(path)), `${path} on ${day}`).toBe(plain(await there.text()))
        }
      }
      yard.at(`${DAY}T12:00:00Z`)
      expect(phone.errors).toEqual([])
    },
    LONG_ENOUGH,
  )
})

describe('what a phone is given', () => {
  const bundle = async (role: Role, query = ''): Promise<{ text: string; round: RoundBundle }> => {
    const answer = await yard.ask(role, `/phone/round${query}`, { headers: { Accept: 'application/json' } })
    expect(answer.headers.get('Cache-Control')).toBe('no-store')
    const text = await answer.text()
    return { text, round: JSON.parse(text) as RoundBundle }
  }

  it('holds nothing that a helper may not see, on the disk neither', async () => {
    const site = [...yard.services.store.journal()].flatMap(({ entry }) =>
      entry.kind === 'intake' && entry.removal.site !== undefined ? [entry.removal.site] : [],
    )
    expect(site.length).toBeGreaterThan(0)
    const helper = await bundle('helper')
    for (const word of [...site, '"site"', '"cost"', '"destination"']) expect(helper.text).not.toContain(word)
    expect((await bundle('beekeeper')).text).toContain('"site"')

    const phone = phoneIn(yard, 'beekeeper')
    await phone.syncService.send()
    const onDisk = async (): Promise<string> =>
      JSON.stringify(await (await phone.database()).getAll('colonies'))
    expect(await onDisk()).toContain('"site"')
    phone.heldBy('helper')
    await phone.syncService.send()
    expect(await onDisk()).not.toContain('"site"')
    expect(await onDisk()).not.toContain('"cost"')
  })

  it('is only what is new, once it has the rest', async () => {
    const { round } = await bundle('helper')
    expect(round.whole).toBe(true)
    expect(round.colonies).toHaveLength(round.open.length)
    const asked = `?since=${round.seq}&person=${round.viewer.id}&role=helper`
    expect((await bundle('helper', asked)).round).toMatchObject({
      whole: false,
      colonies: [],
      seq: round.seq,
    })

    const colony = round.open[3]
    const note = {
      id: '019e9000-0000-7000-8000-000000000001',
      colony,
      kind: 'note',
      on: DAY,
      by: 'Bram',
      text: 'new',
    }
    expect((await yard.send('beekeeper', note)).status).toBe(200)
    const next = (await bundle('helper', asked)).round
    expect(next.colonies.map((c) => c.id)).toEqual([colony])
    expect(next.seq).toBeGreaterThan(round.seq)
    // Of another person or role, or of a database that knows less: the whole.
    expect((await bundle('helper', asked.replace(round.viewer.id, 'x'))).round.whole).toBe(true)
    expect((await bundle('helper', asked.replace('role=helper', 'role=operator'))).round.whole).toBe(true)
    expect((await bundle('helper', asked.replace(String(round.seq), '999999'))).round.whole).toBe(true)
  })

  it('forgets a box that has left the yard', async () => {
    const phone = phoneIn(yard, 'helper')
    phone.at(`${DAY}T12:00:00Z`)
    await phone.syncService.send()
    const tag = yard.services.store.colonies({ open: true }).find((s) => s.phase === 'queenright')?.tag ?? ''
    expect(await phone.open(`/colony/${tag}`)).toContain(tag)
    const gone = {
      id: '019e9000-0000-7000-8000-000000000002',
      colony: tag,
      kind: 'outcome',
      what: 'other',
      on: DAY,
      by: 'Bram',
    }
    expect((await yard.send('beekeeper', gone)).status).toBe(200)
    const before = (await phone.syncService.state()).newsAt
    phone.at(`${DAY}T12:01:00Z`)
    await phone.syncService.send()
    expect((await phone.syncService.state()).newsAt > before).toBe(true)
    await expect(phone.open(`/colony/${tag}`)).rejects.toThrow('no page')
  })
})
