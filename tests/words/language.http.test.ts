/** In which language a page is: as chosen on the way in, else by the account, else by the browser; and never half and half. */
import ICAL from 'ical.js'
import { v7 } from 'uuid'
import { beforeEach, describe, expect, it } from 'vitest'
import { digestOf } from '../../src/features/messages/digest.ts'
import { digestText } from '../../src/features/messages/digest-text.ts'
import { english } from '../../src/words/en/index.ts'
import { spanish } from '../../src/words/es/index.ts'
import { PASSPHRASE } from '../support/people.ts'
import { NAMES, type TestYard, testYard } from '../support/yard-app.ts'

let yard: TestYard
beforeEach(async () => {
  yard = testYard()
  await yard.session('operator')
})

const textAt = async (
  path: string,
  accept: string,
  role: 'helper' | 'operator' | null = null,
): Promise<string> => (await yard.ask(role, path, { headers: { 'Accept-Language': accept } })).text()

describe('the sign-in page', () => {
  it.each([
    ['es-MX,es;q=0.9,en;q=0.5', 'es'],
    ['en;q=0.4, es;q=0.8', 'es'],
    ['de-CH,es;q=0.3', 'es'],
    ['en-US,es;q=0.9', 'en'],
    ['de', 'en'],
    ['es;q=0', 'en'],
    ['*', 'en'],
    ['', 'en'],
  ])('asked for in “%s” is in %s', async (accept, language) => {
    const html = await textAt('/sign-in', accept)
    expect(html).toContain(`<html lang="${language}"`)
    const words = language === 'es' ? spanish : english
    expect(html).toContain(`<h1>${words.signIn.title}</h1>`)
  })

  it('can be read in the other, and leads on to where one was going', async () => {
    const html = await textAt('/sign-in?to=%2Fround', 'en')
    expect(html).toMatch(/<a [^>]*lang="es"[^>]*href="\/sign-in\?lang=es&amp;to=%2Fround"[^>]*>\s*Español/)
    const chosen = await textAt('/sign-in?lang=es&to=%2Fround', 'en')
    expect(chosen).toContain('<html lang="es"')
    expect(chosen).toContain('value="/round"')
  })

  it('says in that language what is wrong', async () => {
    const wrong = await yard.post(null, '/sign-in?lang=es', { name: 'Odalys', passphrase: 'not this one' })
    expect(wrong.status).toBe(401)
    expect(await wrong.text()).toContain(spanish.signIn.wrong)
  })
})

describe('a choice', () => {
  it('made on the way in stays with the account', async () => {
    const form = { name: NAMES.operator, passphrase: PASSPHRASE }
    expect((await yard.post(null, '/sign-in?lang=es', form)).status).toBe(303)
    expect(yard.services.people.accounts.byName(NAMES.operator)?.language).toBe('es')
  })

  it('of the account goes before the browser, and can be taken back', async () => {
    await yard.post('helper', '/account/language', { language: 'es' })
    expect(await textAt('/phone/person', 'en', 'helper')).toContain('"language":"es"')
    await yard.post('helper', '/account/language', { language: '' })
    expect(await textAt('/phone/person', 'en', 'helper')).toContain('"language":"en"')
    expect(await textAt('/phone/round', 'es', 'helper')).toContain('"language":"es"')
  })

  it('that is not spoken here is none', async () => {
    await yard.post('helper', '/account/language', { language: 'xx' })
    expect(yard.services.people.accounts.byName(NAMES.helper)?.language).toBeNull()
  })
})

it('leaves a page whose words are not all known in English whole', async () => {
  await yard.post('operator', '/account/language', { language: 'es' })
  const html = await textAt('/review', 'es', 'operator')
  expect(html).toContain('<html lang="en"')
  expect(html).toContain(english.ways['/round'])
})

describe('what is made when no browser asks', () => {
  const SEEN = '2026-05-25'
  beforeEach(async () => {
    const entry = {
      ...{ id: v7(), colony: 'W-2', kind: 'intake', on: SEEN, by: NAMES.operator, yard: 'North field' },
      removal: { type: 'swarm' },
      queen: 'unseen',
    }
    expect((await yard.send('operator', [entry])).status).toBe(200)
  })

  /** The feed at an address just made, as an independent reader has it. */
  const feedAt = async (html: string): Promise<{ tag: unknown; uids: string[]; said: string }> => {
    const path = /value="[^"]*(\/feed\/[^"]+\.ics)"/.exec(html)?.[1] ?? ''
    const calendar = new ICAL.Component(ICAL.parse(await (await yard.ask(null, path)).text()))
    const events = calendar.getAllSubcomponents('vevent').map((c) => new ICAL.Event(c))
    return {
      tag: calendar.getFirstPropertyValue('prodid'),
      uids: events.map((e) => e.uid),
      said: events.map((e) => `${e.summary} ${e.description}`).join('\n'),
    }
  }
  const made = async (accept: string): Promise<string> => {
    const answer = await yard.ask('helper', '/account/calendar', {
      method: 'POST',
      headers: { 'Accept-Language': accept },
      body: new URLSearchParams({ yard: '*', shows: 'window' }),
    })
    return answer.text()
  }

  it('is in the language of the page on which it was asked for, where the account has chosen none', async () => {
    const { said, tag } = await feedAt(await made('es-MX'))
    expect(yard.services.people.accounts.byName(NAMES.helper)?.language).toBe('es')
    expect(said).toContain(`W-2: ${spanish.trade.rules['telling-visit'].name.toLowerCase()}`)
    expect(said).not.toContain(english.trade.rules['telling-visit'].question)
    expect(tag).toMatch(/\/\/ES$/)
  })

  it('is in another as soon as the account is, and one reader’s language calls nothing off for another', async () => {
    const address = await made('en')
    const before = await feedAt(address)
    expect(before.said).toContain(english.trade.rules['telling-visit'].question)
    await yard.post('helper', '/account/language', { language: 'es' })
    const after = await feedAt(address)
    expect(after.said).toContain(spanish.trade.rules['telling-visit'].question)
    expect(after.uids).toEqual(before.uids.map((uid) => `${uid}-es`))
    await yard.post('helper', '/account/language', { language: 'en' })
    expect(await feedAt(address)).toEqual(before)
  })

  it('so is the morning message', async () => {
    const { choices, messenger } = yard.services.messages
    const save = { hook: 'https://home.example/bees', hour: '6' }
    await yard.ask('helper', '/account/messages', {
      method: 'POST',
      headers: { 'Accept-Language': 'es' },
      body: new URLSearchParams(save),
    })
    expect(choices.wanted()).toMatchObject([{ language: 'es' }])
    expect(messenger.sendsMail).toBe(false)
    const { store } = yard.services
    const all = store.colonies({ open: true })
    const { subject, text } = digestText(
      digestOf(store.today('2026-06-01'), all, '2026-06-01'),
      null,
      spanish,
    )
    expect(subject).toMatch(/^lun 1 jun: 1 colmena pide algo/)
    expect(text).toContain('W-2: ')
    expect(text).toContain(spanish.messages.digest.changeSomewhere)
  })
})

describe('a screen reader is told the language', () => {
  it('of every page of a helper that is spoken, and of each part in another', async () => {
    for (const path of [
      ...['/', '/round', '/paper', '/labels', '/sheet-entry', '/how', '/outbox', '/account'],
      ...['/account/calendar', '/account/messages', '/account/tokens'],
    ])
      expect([path, /<html lang="(\w+)"/.exec(await textAt(path, 'es', 'helper'))?.[1]]).toEqual([path, 'es'])
    // A language is named in itself, and read out as such.
    const account = await textAt('/account', 'es', 'helper')
    expect(account).toMatch(/<span lang="en">\s*English/)
    expect(account).toMatch(/<span lang="es">\s*Español/)
    expect(await textAt('/account/tokens', 'es', 'helper')).toContain('openapi.json" hreflang="en"')
  })

  it('of an invitation, which can be read in the other and keeps it with the account', async () => {
    const { people } = yard.services
    const invited = people.invite({ name: 'Ute', role: 'helper', by: null })
    if (!invited.ok) throw new Error('no invitation')
    const path = `/invite/${invited.value.link.token}`
    const html = await textAt(path, 'en')
    expect(html).toContain('<html lang="en"')
    expect(html).toContain(`lang="es" hreflang="es" href="${path}?lang=es"`)
    const chosen = await textAt(`${path}?lang=es`, 'en')
    expect(chosen).toContain('<html lang="es"')
    const form = { passphrase: 'candle orchard velvet', again: 'candle orchard velvet' }
    expect((await yard.post(null, `${path}?lang=es`, form)).status).toBe(303)
    expect(people.accounts.byName('Ute')?.language).toBe('es')
  })
})
