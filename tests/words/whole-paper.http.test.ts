/**
 * The same for what goes out of the house: paper, labels, calendars and their page, messages and theirs, the invitation, what
 * waits on a phone, and the pages that teach. Nothing is left in plain letters but what people wrote.
 */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import ICAL from 'ical.js'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import {
  BrokenPage,
  ElsewherePage,
  NoColonyPage,
  NoEntryPage,
  NoPagePage,
  NotYoursPage,
  TooLargePage,
  TooManyTriesPage,
} from '../../src/app/error-pages.tsx'
import { bareFrame } from '../../src/app/index.ts'
import { SignInAgainPage } from '../../src/features/accounts/sign-in-page.tsx'
import { digestOf } from '../../src/features/messages/digest.ts'
import { digestText } from '../../src/features/messages/digest-text.ts'
import {
  NoSignalPage,
  NotKeptPage,
  OutboxPage,
  type OwnItem,
  SignOutPage,
  TakeOutPage,
  TakeOutSheetPage,
  UnlistedPage,
} from '../../src/features/offline/index.ts'
import type { Frame } from '../../src/parts/index.ts'
import { guardFor } from '../../src/people/index.ts'
import { pageOf } from '../../src/phone/no-signal.ts'
import { ACTS } from '../../src/words/index.ts'
import { NAMES, ORIGIN, type TestYard } from '../support/yard-app.ts'
import { MADE_UP } from './made-up.ts'
import { madeUpYard } from './made-up-yard.ts'
import { leftIn, writtenIn } from './plain-words.ts'

const DAY = '2026-06-10'
const folder = mkdtempSync(join(tmpdir(), 'resettle-words-'))
let yard: TestYard
let typed: string[]

beforeAll(async () => {
  yard = await madeUpYard(folder, DAY)
  // The feed and the digest are made when no browser asks: in the language of the account.
  await yard.post('helper', '/account/language', { language: 'es' })
  typed = writtenIn(yard.services.store, [...Object.values(NAMES), 'Letter', 'yard.test', 'colony'])
})
afterAll(() => {
  yard.services.close()
  rmSync(folder, { recursive: true })
})

const ES = { 'Accept-Language': 'es' }

/** Signs that are the same in every language: formats, header names, addresses. */
const SIGNS =
  /\b(A4|E-mail|HTTP|JSON|https?|api|v1|openapi|json|RESETTLE_SMTP_URL|Standard Webhooks|webhook-\w+|UTC|yard\.example)\b/g

async function left(answer: Response, more: readonly string[] = []): Promise<string[]> {
  const html = (await answer.text()).replaceAll(SIGNS, ' ')
  return leftIn(html, [...more, ...typed])
}

async function plainWords(path: string): Promise<string[]> {
  const answer = await yard.ask('helper', path, { headers: ES })
  expect(answer.status, path).toBe(200)
  return left(answer)
}

const posted = (path: string, fields: Record<string, string>): Promise<Response> =>
  yard.ask('helper', path, { method: 'POST', headers: ES, body: new URLSearchParams(fields) })

const spoken = (path: string): Frame => ({
  ...bareFrame(path, () => null),
  ...guardFor('helper'),
  today: DAY,
  viewer: { name: NAMES.helper, role: 'helper' },
  words: MADE_UP,
})

describe('in a language that is made up, nothing is left in English', () => {
  it.each([
    ...[
      '/paper',
      '/paper?all=1&size=letter',
      '/paper?yard=Nowhere&day=2026-06-12',
      '/labels',
      '/labels?address=,',
    ],
    ...['/sheet-entry', '/sheet-entry?all=1', '/sheet-entry?saved=1'],
    ...['/account/calendar', '/account/calendar?revoked=1', '/account/messages', '/account/tokens'],
    ...['/outbox', '/how', '/how/words', '/how/first-round', ...ACTS.map((act) => `/how/${act}`)],
  ])('at %s', async (path) => {
    expect(await plainWords(path)).toEqual([])
  })

  it('on a sheet of which a row is refused', async () => {
    const colonies = yard.services.store.colonies({ open: true }).slice(0, 3)
    const answer = await posted('/sheet-entry', {
      ...Object.fromEntries(colonies.map((c, n) => [`r${n}.colony`, c.id])),
      day: DAY,
      all: '1',
      'r0.eggs': 'single',
      'r0.missed.reason': 'rain',
      'r1.stores': 'low',
      'r3.tag': '',
      'r3.note': '12',
    })
    expect(answer.status).toBe(422)
    expect(await left(answer)).toEqual([])
  })

  it('where a calendar address is made, and in the calendar itself', async () => {
    for (const shows of ['yard-day', 'best-day', 'window']) {
      const answer = await posted('/account/calendar', { yard: '*', shows })
      const html = await answer.text()
      const path = /value="[^"]*(\/feed\/[^"]+\.ics)"/.exec(html)?.[1] ?? ''
      expect(leftIn(html, [...typed, 'http'])).toEqual([])
      const feed = await (await yard.ask(null, path)).text()
      const events = new ICAL.Component(ICAL.parse(feed)).getAllSubcomponents('vevent')
      expect(events.length).toBeGreaterThan(5)
      for (const e of events.map((c) => new ICAL.Event(c)))
        expect([e.uid, ...leftIn(`<p>${e.summary} ${e.location} ${e.description}</p>`, typed)]).toEqual([
          e.uid,
        ])
    }
    expect(await plainWords('/account/calendar')).toEqual([])
  })

  it('in the morning message, with boxes and without', () => {
    const { store } = yard.services
    const all = store.colonies({ open: true })
    for (const digest of [
      digestOf(store.today(DAY), all, DAY),
      digestOf([], all, DAY),
      digestOf([], [], DAY),
    ])
      for (const home of [null, ORIGIN]) {
        const { subject, text } = digestText(digest, home, MADE_UP)
        const said = leftIn(`<p>${subject}</p><p>${text}</p>`, typed)
        expect(said.filter((w) => !/^(http|yard|test|round|account|messages)$/.test(w))).toEqual([])
      }
  })

  it('where messages are chosen, refused, and have gone out', async () => {
    const hook = 'https://home.example/bees'
    expect(
      await left(await posted('/account/messages', { hook: 'nowhere', hour: '6' }), [
        'nowhere',
        'home',
        'example',
        'bees',
      ]),
    ).toEqual([])
    await posted('/account/messages', { hook, hour: '6' })
    const { choices, sent } = yard.services.messages
    const [mine] = choices.wanted()
    for (const [n, again] of [true, false].entries()) {
      const claim = { person: mine?.person ?? '', day: `2026-06-0${n + 1}`, way: 'hook' as const }
      sent.claim(claim, new Date(`${DAY}T06:00:00Z`))
      sent.failed(claim, { again, words: 'the webhook answered 500' }, new Date(`${DAY}T06:00:00Z`))
    }
    const page = await yard.ask('helper', '/account/messages?done=saved', { headers: ES })
    expect(await left(page, [hook, mine?.secret ?? ''])).toEqual([])
  })

  it('where a token is made', async () => {
    const refused = await posted('/account/tokens', { name: '', days: '90' })
    expect(refused.status).toBe(422)
    expect(await left(refused)).toEqual([])
    const made = await posted('/account/tokens', { name: '1', scopes: 'read', days: '90' })
    const html = (await made.text()).replace(/<p class="copyable">[^<]*/, '')
    expect(leftIn(html, typed)).toEqual([])
    expect(await plainWords('/account/tokens')).toEqual([])
  })

  it.each(['helper', 'beekeeper', 'operator'] as const)('on the invitation of a %s', async (role) => {
    const made = yard.services.people.invite({ name: `Ute ${role}`, role, by: null })
    if (!made.ok) throw new Error('no invitation')
    const path = `/invite/${made.value.link.token}`
    const answer = await yard.ask(null, path, { headers: ES })
    expect(await left(answer, [`Ute ${role}`])).toEqual([])
    const short = await yard.ask(null, path, {
      method: 'POST',
      headers: ES,
      body: new URLSearchParams({ passphrase: 'short', again: 'other' }),
    })
    expect(short.status).toBe(422)
    expect(await left(short, [`Ute ${role}`])).toEqual([])
  })

  it('where something went wrong', async () => {
    const frame = spoken('/none')
    const near = [true, false].map((left) => ({ tag: 'W-2', path: '/colony/W-2', left }))
    const { errors, signIn } = MADE_UP
    const pages = [
      NoPagePage({ frame }),
      NotYoursPage({ frame, whose: errors.notYours.operators }),
      NoEntryPage({ frame }),
      NoColonyPage({ frame, asked: 'W-2', near }),
      NoColonyPage({ frame: { ...frame, ...guardFor('operator') }, asked: 'W-2', near: [] }),
      ...[undefined, errors.tooLarge.fields(1)].map((what) => TooLargePage({ frame, what, yard: false })),
      TooManyTriesPage({ frame, wait: signIn.tooMany(600) }),
      ElsewherePage({ frame, address: 'https://yard.test', known: false }),
      BrokenPage({ frame, posted: true, trouble: errors.broken.full }),
      SignInAgainPage({ frame }),
    ]
    for (const page of pages) expect(await left(await pageOf(page))).toEqual([])
  })

  it('in what waits on a phone, whatever it is and however it stands', async () => {
    const frame = spoken('/outbox')
    const states: OwnItem['state'][] = ['waiting', 'resting', 'refused', 'day']
    const entries = [...yard.services.store.journal()].map((r) => r.entry)
    const kinds = new Map(entries.map((e) => [e.kind, e]))
    const items = [...kinds.values()].flatMap((entry) =>
      states.map(
        (state, n): OwnItem => ({
          ...{ n, id: `${entry.id}-${n}`, tag: 'W-2', on: entry.on, owner: NAMES.helper, entry, state },
          keptAt: `${DAY}T09:00:00.000Z`,
          clock: { phone: '2026-06-08', yard: DAY },
          problems: [{ field: 'on', message: '2026-06-12 is in the future (today is 2026-06-10)' }],
          change: '/outbox/1',
          removable: true,
          back: '/entry/1/withdraw',
        }),
      ),
    )
    expect(items.length).toBeGreaterThan(30)
    const [first] = items
    if (first === undefined) throw new Error('nothing waits')
    const theirs = [true, false].map((stuck) => ({
      ...{ ...first, kind: 'note' as const, state: 'theirs' as const, owner: NAMES.operator, stuck },
    }))
    const own = { name: 'W-2', problems: first.problems, again: false, over: true }
    const sheets = [
      null,
      { ...own, out: null, stays: false, found: [], photos: [] },
      { ...own, again: true, out: 'W-2', stays: true, found: ['W-2'], photos: [] },
    ].map((own, n) => ({
      ...{ id: String(n), owner: NAMES.operator, keptAt: first.keptAt, kills: '', own },
      stuck: n !== 1,
    }))
    const pages = [
      OutboxPage({ frame, items: [...items, ...theirs], sheets, signIn: true }),
      OutboxPage({ frame, items: [] }),
      TakeOutPage({ frame, item: first }),
      ...[false, true].map((stays) =>
        TakeOutSheetPage({
          frame,
          id: '1',
          own: { ...own, out: stays ? 'W-2' : null, stays, found: ['W-2'], photos: [] },
        }),
      ),
      SignOutPage({ frame, waiting: MADE_UP.phone.waiting(2), kills: [], rest: [], goes: true }),
      UnlistedPage({ frame, waiting: MADE_UP.phone.waiting(2), kills: [] }),
      NoSignalPage({ frame }),
      NotKeptPage({ frame }),
    ]
    for (const page of pages) expect(await left(await pageOf(page))).toEqual([])
  })
})
