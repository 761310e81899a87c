/** One phone in several hands: what waits on it is shown to whoever wrote it, and to nobody else. */
import { beforeEach, describe, expect, it } from 'vitest'
import {
  down,
  good,
  type Network,
  nextId,
  outside,
  type Phone,
  phoneIn,
  sometimes,
  wordsOf,
} from '../support/phone.ts'
import { type TestYard, testYard } from '../support/yard-app.ts'

const SITE = 'Maren Aldous, 4 Acacia Lane'
const NOTE = 'the gate code is 4711'

let yard: TestYard
let phone: Phone

/** A beekeeper has logged an intake and a visit without signal; then the helper signed in on the same phone. */
beforeEach(async () => {
  yard = testYard({ day: '2026-06-01' })
  phone = phoneIn(yard, 'beekeeper')
  await phone.syncService.send()
  phone.network(down)
  const form = {
    id: nextId(),
    colony: 'N-1',
    yard: 'South field',
    on: '2026-06-01',
    'removal.type': 'wall',
    'removal.site': SITE,
    queen: 'unseen',
  }
  expect((await phone.post('/intake', form)).status).toBe(303)
  expect((await phone.post('/colony/N-1/visit', outside('2026-06-01', { note: NOTE }))).status).toBe(303)
})

/** Everything gets through but entries. */
const noEntries: Network = sometimes((path) => path === '/entries', down)

const handOver = async (): Promise<void> => {
  phone.network(noEntries)
  phone.heldBy('helper')
  await phone.syncService.send()
}

const copy = async (): Promise<unknown[]> => JSON.parse(await phone.open('/outbox/entries.json'))

describe('what waits on a phone', () => {
  it('is shown whole to whoever wrote it and may see it', async () => {
    const page = wordsOf(await phone.open('/outbox'))
    expect(page).toContain(SITE)
    expect(page).toContain(NOTE)
    expect(await copy()).toMatchObject([{ kind: 'intake', removal: { site: SITE } }, { note: NOTE }])
  })

  it('of another person is named by kind, box and day, and by whose it is', async () => {
    await handOver()
    const html = await phone.open('/outbox')
    const page = wordsOf(html)
    expect(page).toContain('2 waiting to be sent')
    expect(page).toMatch(/N-1 Mon 1 Jun The intake Goes when Bram signs in on this phone\./)
    expect(page).toMatch(/N-1 Mon 1 Jun The visit Goes when Bram signs in on this phone\./)
    for (const words of [SITE, NOTE, 'entries.json', '/outbox/1']) expect(html).not.toContain(words)
  })

  it('of another person is not in the copy, on no page of its own, and not lost by that', async () => {
    await handOver()
    expect(await copy()).toEqual([])
    for (const path of ['/outbox/1', '/outbox/1/take-out'])
      expect(
        (await phone.syncService.page(new Request(`http://yard.test${path}`)))?.headers.get('Location'),
      ).toBe('/outbox')
    expect((await phone.post('/outbox/1/take-out', {})).to).toBe('/outbox')
    expect((await phone.syncService.state()).waiting).toBe(2)

    phone.network(good)
    phone.heldBy('beekeeper')
    await phone.syncService.send()
    expect(await copy()).toEqual([])
    expect((await phone.syncService.state()).waiting).toBe(0)
    expect([...yard.services.store.journal()].map((r) => r.entry)).toMatchObject([
      { kind: 'intake', removal: { site: SITE } },
      { kind: 'inspection', note: NOTE },
    ])
  })

  it('shows no customer to one who was a beekeeper when it was written and is a helper now', async () => {
    const { accounts } = yard.services.people
    const bram = accounts.byName('Bram')
    accounts.setRole(bram?.id ?? '', 'helper')
    phone.network(noEntries)
    await phone.syncService.send()
    const page = wordsOf(await phone.open('/outbox'))
    expect(page).toContain(NOTE)
    expect(page).not.toContain(SITE)
  })
})

describe('signing in on a phone that has the round of somebody else', () => {
  it('leaves nothing of that round, and all that waits', async () => {
    phone.network(noEntries)
    phone.heldBy('helper')
    await phone.syncService.signedOut()
    await expect(phone.open('/')).rejects.toThrow('no page')
    await expect(phone.post('/colony/N-1/visit', outside('2026-06-01'))).rejects.toThrow('takes no form')
    expect((await phone.syncService.state()).waiting).toBe(2)
    await phone.syncService.send()
    expect(await phone.open('/')).not.toContain('href="/intake"')
  })

  it('drops the round that was still on its way to the one before', async () => {
    let arrives = (): void => undefined
    const underWay = new Promise<void>((done) => {
      arrives = done
    })
    let first = true
    phone.network(async (path, reach) => {
      if (!path.startsWith('/phone/round') || !first) return noEntries(path, reach)
      first = false
      const answer = await reach()
      await underWay
      return answer
    })
    const sending = phone.syncService.send()
    await expect.poll(() => first).toBe(false)
    phone.heldBy('helper')
    await phone.syncService.signedOut()
    arrives()
    await sending
    expect(await phone.open('/')).not.toContain('href="/intake"')
    const kept = await (await phone.database()).get('kept', 'round')
    expect(kept).toMatchObject({ head: { viewer: { name: 'Teuila' } } })
  })

  it('says how much waits, and not what, until it is known who looks', async () => {
    await phone.syncService.signedOut()
    const page = wordsOf(await phone.open('/outbox'))
    expect(page).toContain('2 waiting to be sent')
    for (const words of ['N-1', NOTE, SITE, 'Bram', 'Nothing waits']) expect(page).not.toContain(words)
    await expect(phone.open('/outbox/entries.json')).rejects.toThrow('no page')
    phone.network(good)
    await phone.syncService.send()
    expect((await phone.syncService.state()).waiting).toBe(0)
  })
})
