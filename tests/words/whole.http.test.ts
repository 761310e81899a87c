/**
 * Pages are never half and half: each page that can be read in other languages is drawn in one that is made up, for every
 * colony of the invented yard, and nothing on it is left in plain letters but what people wrote themselves.
 */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { often } from '../support/long.ts'
import { NAMES, type TestYard } from '../support/yard-app.ts'
import { madeUp, textsOf } from './made-up.ts'
import { madeUpYard } from './made-up-yard.ts'
import { leftIn, writtenIn } from './plain-words.ts'

const DAY = '2026-06-10'
const folder = mkdtempSync(join(tmpdir(), 'resettle-words-'))
let yard: TestYard
/** What people wrote: tags, names, yards, notes; the longest first. */
let typed: string[]

beforeAll(async () => {
  yard = await madeUpYard(folder, DAY)
  typed = writtenIn(yard.services.store, Object.values(NAMES))
})
afterAll(() => {
  yard.services.close()
  rmSync(folder, { recursive: true })
})

/** All in the yard, and of those gone, whose pages are much alike, every fourth; others each run, and all of them in the long run. */
const STEP = often(1, 4)
const FIRST = Date.now() % STEP
const colonies = () => {
  const { store } = yard.services
  return [
    ...store.colonies({ open: true }),
    ...store.colonies({ open: false }).filter((_, i) => i % STEP === FIRST),
  ]
}

async function plainWords(path: string, role: 'helper' | 'operator' = 'helper'): Promise<string[]> {
  const answer = await yard.ask(role, path, { headers: { 'Accept-Language': 'es' } })
  expect(answer.status, path).toBeLessThan(400)
  return leftIn(await answer.text(), typed)
}

describe('in a language that is made up, nothing is left in English', () => {
  it('on Today, the round and its end, the account', async () => {
    for (const path of ['/', '/round', '/round?minutes=40', '/round/end', '/account'])
      expect([path, ...(await plainWords(path))]).toEqual([path])
  })

  it('at any box of the round', async () => {
    for (const { tag } of yard.services.store.colonies({ open: true })) {
      const answer = await yard.ask('helper', `/round/box/${tag}`, { headers: { 'Accept-Language': 'es' } })
      if (answer.status === 303) continue
      expect([tag, ...(await plainWords(`/round/box/${tag}`))]).toEqual([tag])
    }
  })

  it('on the forms of a visit, a note, and of a box that was not reached', async () => {
    for (const { tag } of yard.services.store.colonies({ open: true }))
      for (const form of ['visit', 'visit?lid=on', 'note', 'missed']) {
        const path = `/colony/${tag}/${form}`
        expect([path, ...(await plainWords(path))]).toEqual([path])
      }
  })

  it('on the page of any colony, in the yard or gone, with all that is folded in it', async () => {
    for (const { id } of colonies()) {
      const path = `/colony/${id}`
      expect([path, ...(await plainWords(path))]).toEqual([path])
    }
  })

  it('on the page of a colony after saving, and where somebody asks about a frame', async () => {
    const { store } = yard.services
    for (const { id, tag } of store.colonies({ open: true }).slice(0, 6)) {
      for (const { entry } of store.colony(id)?.journal ?? []) {
        const path = `/colony/${tag}?saved=${entry.id}`
        expect([path, ...(await plainWords(path))]).toEqual([path])
      }
      const asked = `/colony/${tag}?frame=2026-06-20`
      expect([asked, ...(await plainWords(asked))]).toEqual([asked])
    }
  })

  it('where a colony is moved, and an entry corrected, taken back or moved to the right box', async () => {
    const { store } = yard.services
    const shown = new Set<string>()
    for (const { id, tag } of colonies()) {
      const paths = (store.colony(id)?.journal ?? []).flatMap(({ entry }) => {
        if (shown.has(entry.kind)) return []
        shown.add(entry.kind)
        return ['correct', 'withdraw', 'other-box'].map((form) => `/entry/${entry.id}/${form}`)
      })
      for (const path of [`/colony/${id}`, `/colony/${tag}/move`, ...paths]) {
        // An operator sees more: customers, costs, what goes out of the yard.
        const answer = await yard.ask('operator', path, { headers: { 'Accept-Language': 'es' } })
        // What founds a colony or ends it can be no other box’s: there is no such page.
        if (answer.status !== 404) expect([path, ...leftIn(await answer.text(), typed)]).toEqual([path])
      }
    }
    expect(shown.size).toBeGreaterThan(8)
  })

  it('where something is looked for, found or not', async () => {
    for (const q of ['', 'wall', 'note', 'zzz', 'queen', '1']) {
      // Notes are shown in part.
      const ours = (await plainWords(`/find?list&q=${q}`)).filter((w) => !typed.some((t) => t.includes(w)))
      expect([q, ...ours.filter((w) => w !== q)]).toEqual([q])
    }
  })

  it('on the health of any colony, and where a wash, feed or a treatment is written down', async () => {
    expect(await plainWords('/health')).toEqual([])
    for (const { id } of colonies()) {
      const path = `/colony/${id}/health`
      expect([path, ...(await plainWords(path))]).toEqual([path])
    }
    for (const { tag } of yard.services.store.colonies({ open: true }))
      for (const form of ['wash', 'feed', 'treat']) {
        const path = `/colony/${tag}/${form}`
        expect([path, ...(await plainWords(path))]).toEqual([path])
      }
  })

  it('in the yard as a list, chosen and ordered', async () => {
    for (const asked of ['', '?show=left&sort=tag', '?show=all&sort=next&page=2', '?find=zzz'])
      expect([asked, ...(await plainWords(`/yard${asked}`))]).toEqual([asked])
  })

  it('where a form is refused', async () => {
    const [colony] = yard.services.store.colonies({ open: true })
    const answer = await yard.ask('helper', `/colony/${colony?.tag}/note`, {
      method: 'POST',
      headers: { 'Accept-Language': 'es' },
      body: new URLSearchParams({ text: '', on: '2026-06-01' }),
    })
    expect(answer.status).toBe(422)
    expect(leftIn(await answer.text(), typed)).toEqual([])
  })
})

describe('the test itself', () => {
  it('sees what is left in plain letters, and what is not', () => {
    expect(textsOf('<p aria-label="Seen">Two words</p><script>no()</script>')).toEqual(['Two words', 'Seen'])
    expect(madeUp('Look 2')).toBe('Ｌｏｏｋ 2～～')
  })
})
