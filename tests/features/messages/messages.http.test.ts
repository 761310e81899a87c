/** The morning digest to a real SMTP server and a real webhook on this machine, by a clock that is set by hand. */
import { Webhook } from 'standardwebhooks'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { deliver, newHookSecret } from '../../../src/features/messages/hook.ts'
import { hookRulesFrom } from '../../../src/features/messages/hook-rules.ts'
import { mailerFrom } from '../../../src/features/messages/mail.ts'
import { intake } from '../../store/helpers.ts'
import { NAMES, type TestYard, testYard } from '../../support/yard-app.ts'
import { type HookSink, hookSink, type MailSink, mailSink } from './sinks.ts'

const RULES = hookRulesFrom({ RESETTLE_WEBHOOK_INSIDE: 'loopback' })

let mails: MailSink
let hooks: HookSink
let yard: TestYard
beforeAll(async () => {
  mails = await mailSink()
  hooks = await hookSink()
})
afterAll(async () => {
  await mails.close()
  await hooks.close()
})

/** Denver: 06:00 there is 12:00 UTC in June. */
const ZONE = 'America/Denver'
const at = (time: string): void => yard.at(`2026-06-${time}Z`)

beforeEach(async () => {
  mails.mails.length = 0
  hooks.calls.length = 0
  const mailer = mailerFrom({
    RESETTLE_SMTP_URL: mails.url,
    RESETTLE_SMTP_FROM: 'Quarry <yard@quarry.example>',
  })
  yard = testYard({ services: { mailer, hookRules: RULES, home: 'https://yard.example' } })
  yard.at('2026-06-01T08:00:00Z')
  const { services } = yard
  services.store.settings.set('timeZone', ZONE)
  services.store.append([intake('M-1', { on: '2026-05-20' }), intake('M-2', { on: '2026-05-30' })], {
    today: '2026-06-01',
    recordedAt: '2026-06-01T08:00:00.000Z',
  })
})
afterEach(() => {
  yard.services.close()
  mails.refuse.length = 0
  hooks.statuses.length = 0
})

const idOf = async (role: 'operator' | 'helper'): Promise<string> => {
  const made = yard.services.people.accounts.byName(NAMES[role])
  if (made !== null) return made.id
  await yard.services.people.make({ name: NAMES[role], role, passphrase: 'slow lantern over gravel' })
  return yard.services.people.accounts.byName(NAMES[role])?.id ?? ''
}
const choose = async (
  choice: { mail?: string; hook?: string; hour?: number },
  role: 'operator' | 'helper' = 'operator',
) => {
  const { choices, messenger } = yard.services.messages
  const hour = choice.hour ?? 6
  choices.set(
    await idOf(role),
    { mail: choice.mail ?? null, hook: choice.hook ?? null, hour, fromDay: messenger.firstDay(hour) },
    '2026-06-01T08:00:00.000Z',
  )
}
const tick = (): Promise<void> => yard.services.messages.messenger.tick()
const lines = async () => yard.services.messages.sent.of(await idOf('operator'), 10)

describe('an e-mail', () => {
  test('goes out at the person’s hour of the yard’s day, once', async () => {
    await choose({ mail: 'odalys@quarry.example' })
    at('01T11:59:59')
    await tick()
    expect(mails.mails).toHaveLength(0)
    at('01T12:00:10')
    await tick()
    await tick()
    at('01T20:00:00')
    await tick()
    expect(mails.mails).toHaveLength(1)
    const [mail] = mails.mails
    expect(mail).toMatchObject({ to: ['odalys@quarry.example'], from: 'yard@quarry.example', auth: 'yard' })
    expect(mail?.raw).toMatch(/^Subject: Mon 1 Jun: 2 boxes ask, 1 late\r$/m)
    expect(mail?.raw).toContain('M-1: the first brood check')
    expect(mail?.raw).toMatch(/^Auto-Submitted: auto-generated\r$/m)
    for (const secret of ['Quarry yard', '12 Invented Way', 'Odalys', 'stand'])
      expect(mail?.raw, secret).not.toContain(secret)
    at('02T12:00:00')
    await tick()
    expect(mails.mails).toHaveLength(2)
    expect((await lines()).map((l) => [l.day, l.state])).toEqual([
      ['2026-06-02', 'sent'],
      ['2026-06-01', 'sent'],
    ])
  })

  test('is in the language of the account', async () => {
    await choose({ mail: 'odalys@quarry.example' })
    yard.services.people.accounts.setLanguage(await idOf('operator'), 'es')
    at('01T12:00:00')
    await tick()
    const [mail] = mails.mails
    expect(mail?.raw).toMatch(/^Subject: lun 1 jun: 2 colmenas piden algo, 1 atrasada\r$/m)
    expect(mail?.raw).toMatch(/M-1: primera revisi(ó|=C3=B3)n de cr/)
    expect(mail?.raw).not.toMatch(/first brood check|The round/)
  })

  test('is sent once when the server is asked many times at once', async () => {
    await choose({ mail: 'odalys@quarry.example' })
    at('01T12:00:00')
    await Promise.all([tick(), tick(), tick()])
    expect(mails.mails).toHaveLength(1)
  })

  test('whose hour has passed when it is chosen begins the next day', async () => {
    at('01T13:00:00')
    await choose({ mail: 'odalys@quarry.example', hour: 6 })
    await tick()
    expect(mails.mails).toHaveLength(0)
    at('02T12:00:00')
    await tick()
    expect(mails.mails).toHaveLength(1)
  })

  test('keeps its hour when the clocks change', async () => {
    // 2026-11-01, Denver: back to standard time at 02:00, so 06:00 is 13:00 UTC.
    yard.at('2026-10-31T06:00:00Z')
    await choose({ mail: 'odalys@quarry.example' })
    for (const [time, count] of [
      ['2026-10-31T12:00:00Z', 1],
      ['2026-11-01T12:30:00Z', 1],
      ['2026-11-01T13:00:00Z', 2],
    ] as const) {
      yard.at(time)
      await tick()
      expect(mails.mails, time).toHaveLength(count)
    }
  })

  test('refused for now is tried again later and later, then given up for the day', async () => {
    await choose({ mail: 'odalys@quarry.example' })
    mails.refuse.push(...Array.from({ length: 9 }, () => ({ at: 'rcpt' as const, code: 451 })))
    at('01T12:00:00')
    await tick()
    expect(await lines()).toMatchObject([
      {
        state: 'again',
        attempts: 1,
        againAt: '2026-06-01T12:05:00.000Z',
        trouble: 'the mail server answered 451 to RCPT',
      },
    ])
    at('01T12:04:00')
    await tick()
    expect((await lines())[0]?.attempts).toBe(1)
    for (const time of ['01T12:05:00', '01T12:25:00', '01T13:25:00', '01T20:00:00']) {
      at(time)
      await tick()
    }
    expect(await lines()).toMatchObject([{ state: 'given-up', attempts: 4 }])
    mails.refuse.length = 0
    await tick()
    expect(mails.mails).toHaveLength(0)
    at('02T12:00:00')
    await tick()
    expect(mails.mails).toHaveLength(1)
  })

  test('refused for good is not tried again', async () => {
    await choose({ mail: 'odalys@quarry.example' })
    mails.refuse.push({ at: 'rcpt', code: 550 })
    at('01T12:00:00')
    await tick()
    at('01T14:00:00')
    await tick()
    expect(await lines()).toMatchObject([{ state: 'given-up', attempts: 1 }])
    expect(mails.mails).toHaveLength(0)
  })

  test('that a dying server may have sent is not sent again', async () => {
    await choose({ mail: 'odalys@quarry.example' })
    at('01T12:00:00')
    const claim = { person: await idOf('operator'), day: '2026-06-01', way: 'mail' as const }
    expect(yard.services.messages.sent.claim(claim, new Date('2026-06-01T12:00:00Z'))).toBe(1)
    at('01T12:30:00')
    await tick()
    expect(mails.mails).toHaveLength(0)
  })

  test('is for those who can sign in, whatever their role', async () => {
    await choose({ mail: 'teuila@quarry.example' }, 'helper')
    at('01T12:00:00')
    await tick()
    expect(mails.mails.map((m) => m.to)).toEqual([['teuila@quarry.example']])
    yard.services.people.close(await idOf('helper'))
    at('02T12:00:00')
    await tick()
    expect(mails.mails).toHaveLength(1)
  })

  test('with a wrong password, or a server that is not there, says so without repeating either', async () => {
    const wrong = mailerFrom({
      RESETTLE_SMTP_URL: mails.url.replace('p%40ss', 'x'),
      RESETTLE_SMTP_FROM: 'a@b.example',
    })
    const mail = { to: 'x@y.example', subject: 's', text: 't', id: 'i' }
    expect(await wrong?.send(mail)).toEqual({
      ok: false,
      again: false,
      words: 'the mail server answered 535 to AUTH',
    })
    const gone = mailerFrom({ RESETTLE_SMTP_URL: 'smtp://127.0.0.1:9', RESETTLE_SMTP_FROM: 'a@b.example' })
    expect(await gone?.send(mail)).toMatchObject({ ok: false, again: true })
  })

  test('to another machine insists on TLS; settings that cannot be read are said so', async () => {
    // 127.0.0.1 by another name, so that it counts as another machine: the sink offers no STARTTLS.
    const far = mailerFrom({
      RESETTLE_SMTP_URL: mails.url.replace('127.0.0.1', '[::ffff:127.0.0.1]'),
      RESETTLE_SMTP_FROM: 'a@b.example',
    })
    expect(await far?.send({ to: 'x@y.example', subject: 's', text: 't', id: 'i' })).toMatchObject({
      ok: false,
    })
    expect(mails.mails).toHaveLength(0)
    expect(mailerFrom({})).toBeNull()
    expect(() => mailerFrom({ RESETTLE_SMTP_URL: 'mail.example' })).toThrow('RESETTLE_SMTP_URL must be like')
    expect(() => mailerFrom({ RESETTLE_SMTP_URL: mails.url })).toThrow('RESETTLE_SMTP_FROM')
    expect(() =>
      mailerFrom({ RESETTLE_SMTP_URL: mails.url, RESETTLE_SMTP_FROM: 'a@b.example\r\nBcc: c@d.example' }),
    ).toThrow('RESETTLE_SMTP_FROM')
  })
})

describe('a webhook', () => {
  test('is called once, and told tags, actions and windows', async () => {
    await choose({ hook: hooks.url })
    at('01T12:00:00')
    await tick()
    await tick()
    expect(hooks.calls).toHaveLength(1)
    const [call] = hooks.calls
    const body = JSON.parse(call?.body ?? '{}')
    expect(body).toMatchObject({
      type: 'digest.morning',
      data: { day: '2026-06-01', items: [{ tag: 'M-1' }, { tag: 'M-2' }] },
    })
    for (const secret of ['Quarry', 'Invented', 'Odalys']) expect(call?.body).not.toContain(secret)
  })

  test('is signed as Standard Webhooks say: their own library takes it, and nothing changed on the way', async () => {
    const secret = newHookSecret()
    const body = '{"type":"digest.morning","data":"Zoë’s"}'
    const result = await deliver({ url: hooks.url, secret, id: 'msg_1', body }, RULES, new Date())
    expect(result).toEqual({ ok: true })
    const { headers, body: got } = hooks.calls[0] ?? { headers: {}, body: '' }
    const plain = headers as Record<string, string>
    expect(new Webhook(secret).verify(got, plain)).toEqual(JSON.parse(body))
    expect(() => new Webhook(newHookSecret()).verify(got, plain)).toThrow()
    expect(() => new Webhook(secret).verify(`${got} `, plain)).toThrow()
  })

  test('that is broken for now is called again under the same id; a redirect is not followed', async () => {
    await choose({ hook: hooks.url })
    hooks.statuses.push(503, 302)
    at('01T12:00:00')
    await tick()
    at('01T12:05:00')
    await tick()
    at('01T20:00:00')
    await tick()
    expect(hooks.calls.map((c) => c.path)).toEqual(['/bees', '/bees'])
    expect(new Set(hooks.calls.map((c) => c.headers['webhook-id'])).size).toBe(1)
    expect(await lines()).toMatchObject([
      { way: 'hook', state: 'given-up', trouble: 'the webhook answered 302' },
    ])
  })

  test('that never answers is let go', async () => {
    hooks.statuses.push(0)
    const delivery = { url: hooks.url, secret: newHookSecret(), id: 'msg_2', body: '{}' }
    expect(await deliver(delivery, RULES, new Date(), 200)).toEqual({
      ok: false,
      again: true,
      words: 'the webhook did not answer in time',
    })
  })

  test('into this machine is refused unless its owner lists it, by number and by name', async () => {
    const delivery = { secret: newHookSecret(), id: 'msg_3', body: '{}' }
    for (const url of [
      hooks.url,
      hooks.url.replace('127.0.0.1', 'localhost'),
      hooks.url.replace('http:', 'https:'),
    ])
      expect(await deliver({ ...delivery, url }, hookRulesFrom({}), new Date())).toMatchObject({
        ok: false,
        again: false,
        words: expect.stringContaining('may not call'),
      })
    expect(hooks.calls).toHaveLength(0)
    const byName = hooks.url.replace('127.0.0.1', 'localhost')
    expect(await deliver({ ...delivery, url: byName }, RULES, new Date())).toEqual({ ok: true })
  })
})

describe('one’s own page', () => {
  const save = (fields: Record<string, string>) =>
    yard.post('helper', '/account/messages', { mail: '', hook: '', hour: '6', ...fields })

  test('chooses, tries out, and tells what was sent', async () => {
    expect((await save({ mail: 'teuila@quarry.example', hook: hooks.url })).status).toBe(303)
    const page = await (await yard.ask('helper', '/account/messages')).text()
    expect(page).toContain('value="teuila@quarry.example"')
    expect(page).toMatch(/whsec_[A-Za-z0-9+/=]+/)
    expect(await (await yard.post('helper', '/account/messages/try', { way: 'mail' })).text()).toContain(
      'It went out.',
    )
    expect(await (await yard.post('helper', '/account/messages/try', { way: 'hook' })).text()).toContain(
      'It went out.',
    )
    expect([mails.mails.length, hooks.calls.length]).toEqual([1, 1])
    at('02T12:00:00')
    await tick()
    // One tried out does not count as the day's.
    expect([mails.mails.length, hooks.calls.length]).toEqual([2, 2])
    expect(await (await yard.ask('helper', '/account/messages')).text()).toContain('sent Tue 2 Jun, 06:00')
    expect(yard.errors).toEqual([])
  })

  test('refuses what is no address, and no way to reach inside', async () => {
    for (const fields of [
      { mail: 'teuila' },
      { mail: 'a@b.example\r\nBcc: c@d.example' },
      { hook: 'https://10.0.0.1/' },
      { hour: '24' },
      { hour: '' },
    ])
      expect((await save(fields as Record<string, string>)).status, JSON.stringify(fields)).toBe(422)
    expect(yard.services.messages.choices.wanted()).toEqual([])
  })

  test('a new webhook address, or asking for it, makes a new secret; empty fields stop it all', async () => {
    const secret = async () => yard.services.messages.choices.of(await idOf('helper'))?.secret
    await save({ hook: hooks.url })
    const first = await secret()
    await save({ hook: hooks.url, hour: '7' })
    expect(await secret()).toBe(first)
    await save({ hook: `${hooks.url}/other` })
    const second = await secret()
    expect(second).not.toBe(first)
    await yard.post('helper', '/account/messages/secret', {})
    expect(await secret()).not.toBe(second)
    await save({})
    expect(await secret()).toBeNull()
    at('02T12:00:00')
    await tick()
    expect([mails.mails.length, hooks.calls.length]).toEqual([0, 0])
  })

  test('cannot be used to flood: six tries an hour', async () => {
    await save({ hook: hooks.url })
    for (let i = 0; i < 8; i++) await yard.post('helper', '/account/messages/try', { way: 'hook' })
    expect(hooks.calls).toHaveLength(6)
  })
})
