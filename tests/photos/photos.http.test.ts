/** Photos over HTTP, with and without a phone that keeps them; in backups, exports and back. */
import { mkdtempSync, readdirSync, rmSync, statSync, unlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { exportLines } from '../../src/features/data/yard-export.ts'
import { importYard } from '../../src/features/data/yard-import.ts'
import type { Inspection } from '../../src/journal/entry.ts'
import { metadataIn } from '../../src/photos/jpeg.ts'
import { photoIn } from '../../src/photos/photo.ts'
import { shelfIn } from '../../src/photos/shelf.ts'
import { backupFolder, takeBackup } from '../../src/store/backup.ts'
import { openConnection, openStore } from '../../src/store/node.ts'
import { restore } from '../../src/store/restore.ts'
import { down, good, nextId, outside, phoneIn, sometimes } from '../support/phone.ts'
import { ORIGIN, type TestYard, testYard } from '../support/yard-app.ts'
import { COLOUR_PROFILE, COMMENT, exifWithPlace, picture, withSegments, XMP } from './picture.ts'

const DAY = '2026-06-01'
const AT = { today: DAY, zone: 'UTC', now: new Date(`${DAY}T12:00:00Z`) }
let folder: string
let yard: TestYard
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'resettle-photos-'))
  yard = testYard({ day: DAY, file: join(folder, 'resettle.db') })
  const intake = {
    id: nextId(),
    colony: 'W-1',
    kind: 'intake',
    on: '2026-05-28',
    by: 'Bram',
    yard: 'North',
    queen: 'unseen',
  }
  const sent = await yard.send('beekeeper', { ...intake, removal: { type: 'wall' } })
  expect(sent.status).toBe(200)
})
afterEach(() => {
  yard.services.close()
  rmSync(folder, { recursive: true, force: true })
})

/** As a phone's camera makes it: upright only by its metadata, and with the place. */
const raw = (): Uint8Array<ArrayBuffer> => withSegments(picture(), exifWithPlace(6), XMP, COMMENT)
async function clean(file = raw()): Promise<{ id: string; bytes: Uint8Array<ArrayBuffer> }> {
  const read = await photoIn(file)
  if (!read.ok) throw new Error(read.problems[0])
  return read.photo
}
const files = (): string[] => readdirSync(join(folder, 'photos'))
const lastVisit = (): Inspection =>
  [...yard.services.store.journal()]
    .map((r) => r.entry)
    .findLast((e): e is Inspection => e.kind === 'inspection') as Inspection

/** A visit as a browser without scripts posts it. */
async function visitWith(
  photos: [string, Uint8Array<ArrayBuffer>][],
  fields: Record<string, string> = {},
  kept: string[] = [],
) {
  const form = new FormData()
  for (const [name, value] of Object.entries(outside(DAY, fields))) form.append(name, value)
  for (const id of kept) form.append('photos', id)
  for (const [name, bytes] of photos) form.append('photo', new File([bytes], name, { type: 'image/jpeg' }))
  return yard.ask('helper', '/colony/W-1/visit', { method: 'POST', body: form })
}

describe('a photo that comes with a form', () => {
  it('is stripped of its place, kept beside the database, named in the entry and shown', async () => {
    const answer = await visitWith([['box.jpg', raw()]])
    expect(answer.status).toBe(303)
    const { id } = await clean()
    expect(lastVisit().photos).toEqual([id])
    expect(files()).toEqual([`${id}.jpg`])
    expect(statSync(join(folder, 'photos', `${id}.jpg`)).mode & 0o077).toBe(0)

    const page = await (await yard.ask('helper', '/colony/W-1')).text()
    expect(page).toContain(`href="/colony/W-1/photo/${id}"`)
    const whole = await (await yard.ask('helper', `/colony/W-1/photo/${id}`)).text()
    expect(whole).toContain(`<img src="/photos/${id}"`)
    expect(whole).toContain(`href="/colony/W-1#e-${lastVisit().id}"`)
    expect((await yard.ask('helper', `/colony/W-1/photo/${'0'.repeat(64)}`)).status).toBe(404)
    const shown = await yard.ask('helper', `/photos/${id}`)
    expect(shown.headers.get('Content-Type')).toBe('image/jpeg')
    expect(shown.headers.get('Cache-Control')).toContain('private')
    const bytes = new Uint8Array(await shown.arrayBuffer())
    expect(metadataIn(bytes)).toEqual(['APP0 JFIF', 'APP1 Exif'])
    expect(Buffer.from(bytes).toString('latin1')).not.toMatch(/Wren Optics|Acacia|32\.5/)
  })

  it('stays with a form that comes back, which names what was wrong and keeps the good ones', async () => {
    const text = new TextEncoder().encode('no picture at all')
    const back = await visitWith(
      [
        ['box.jpg', raw()],
        ['notes.txt', text],
      ],
      { note: 'kept words' },
    )
    expect(back.status).toBe(422)
    const page = await back.text()
    const { id } = await clean()
    expect(page).toContain('“notes.txt” is no JPEG picture')
    // Said before as well, where no page draws it anew.
    expect(page).toMatch(/name="photo"[^>]*><noscript>[^/]*Without JavaScript: JPEG pictures/)
    expect(page).toContain('kept words')
    expect(page).toMatch(new RegExp(`name="photos" value="${id}" checked`))

    expect((await visitWith([], {}, [id])).status).toBe(303)
    expect(lastVisit().photos).toEqual([id])
  })

  it('is one of eight at most', async () => {
    const many = Array.from({ length: 9 }, (_, i): [string, Uint8Array<ArrayBuffer>] => [
      `${i}.jpg`,
      withSegments(picture(), [...COLOUR_PROFILE.slice(0, -1), i]),
    ])
    const back = await visitWith(many)
    expect(back.status).toBe(422)
    expect(await back.text()).toContain('one entry takes at most 8')
  })

  it('changes nothing in the plan', async () => {
    await visitWith([])
    const without = yard.services.store.colony('W-1')?.summary.plan
    const other = testYard({ day: DAY })
    for (const r of yard.services.store.journal())
      other.services.store.append(
        [
          {
            ...r.entry,
            colony: r.written,
            ...(r.entry.kind === 'inspection' ? { photos: ['a'.repeat(64)] } : {}),
          },
        ],
        {
          today: DAY,
          recordedAt: r.recordedAt,
        },
      )
    expect(other.services.store.colony('W-1')?.summary.plan).toEqual(without)
  })
})

describe('a photo on its own', () => {
  const put = (id: string, body: Uint8Array<ArrayBuffer>, role: 'helper' | null = 'helper') =>
    yard.ask(role, `/photos/${id}`, {
      method: 'PUT',
      body,
      headers: { Accept: 'application/json', 'Content-Type': 'image/jpeg' },
    })

  it('is kept under its own name only, stripped, however often it is sent', async () => {
    const { id, bytes } = await clean()
    for (const body of [bytes, bytes, raw()]) {
      const answer = await put(id, body)
      expect([answer.status, await answer.json()]).toEqual([200, { kept: id }])
    }
    for (const [name, body] of [
      ['f'.repeat(64), bytes],
      [id, new TextEncoder().encode('<svg onload="alert(1)">')],
      ['..%2f..%2fresettle.db', bytes],
    ] as const) {
      const answer = await put(name, body)
      expect(answer.status).toBe(422)
      expect(((await answer.json()) as { problems: unknown[] }).problems).toHaveLength(1)
    }
    expect(files()).toEqual([`${id}.jpg`])
    expect(await yard.services.photos.find(id)).toEqual(bytes)
  })

  it('is for people of the yard', async () => {
    const { id, bytes } = await clean()
    expect((await put(id, bytes, null)).status).toBe(401)
    await put(id, bytes)
    expect((await yard.ask(null, `/photos/${id}`)).status).toBe(303)
    expect((await yard.ask('helper', `/photos/${'0'.repeat(64)}`)).status).toBe(404)
    expect((await yard.ask('helper', '/photos/..%2fresettle.db')).status).toBe(404)
  })

  it('that is too large is refused with 413', async () => {
    const { id } = await clean()
    expect((await put(id, new Uint8Array(13 * 1024 * 1024))).status).toBe(413)
  })
})

describe('a photo taken without signal', () => {
  it('waits with its entry, is shown meanwhile, and goes before it, once', async () => {
    const phone = phoneIn(yard)
    await phone.syncService.send()
    phone.network(down)
    const form = new FormData()
    for (const [name, value] of Object.entries(outside(DAY, { note: 'see the comb' })))
      form.append(name, value)
    form.append('photo', new File([raw()], 'box.jpg'))
    const kept = await phone.syncService.form(
      new Request(`${ORIGIN}/colony/W-1/visit`, { method: 'POST', body: form }),
    )
    expect(kept?.status).toBe(303)
    const { id, bytes } = await clean()
    expect(await phone.syncService.photo(id)).toEqual(bytes)
    expect(await phone.open('/colony/W-1')).toContain(`/photos/${id}`)
    expect(await phone.open(`/colony/W-1/photo/${id}`)).toContain('Back to W-1')

    // The photo arrives, the entry does not: the next time only the entry goes.
    phone.asked.length = 0
    phone.network(sometimes((path) => path === '/entries', down))
    await phone.syncService.send()
    expect(files()).toEqual([`${id}.jpg`])
    phone.network(good)
    await phone.syncService.send()
    expect(phone.asked.filter((a) => !a.startsWith('GET'))).toEqual([
      `PUT /photos/${id}`,
      'POST /entries',
      'POST /entries',
    ])
    expect(lastVisit().photos).toEqual([id])
    expect(await (await phone.database()).getAll('photos')).toEqual([])
  })

  it('lets what is written down go first, also what is written while it is on its way', async () => {
    const phone = phoneIn(yard)
    await phone.syncService.send()
    phone.network(down)
    const form = new FormData()
    for (const [name, value] of Object.entries(outside(DAY, { note: 'see the comb' })))
      form.append(name, value)
    for (const [i, file] of [raw(), withSegments(raw(), COLOUR_PROFILE)].entries())
      form.append('photo', new File([file], `box-${i}.jpg`))
    await phone.syncService.form(new Request(`${ORIGIN}/colony/W-1/visit`, { method: 'POST', body: form }))
    await phone.post('/colony/W-1/note', { on: DAY, text: 'The second.' })
    // The third is written down while the first picture crawls.
    let written = false
    phone.asked.length = 0
    phone.network(async (path, reach) => {
      if (!written && path.startsWith('/photos/')) {
        written = true
        await phone.post('/colony/W-1/note', { on: DAY, text: 'The third.' })
      }
      return reach()
    })
    expect(await phone.syncService.send()).toBe('done')
    expect(
      phone.asked.filter((a) => !a.startsWith('GET')).map((a) => a.replace(/[0-9a-f]{64}/, '…')),
    ).toEqual(['POST /entries', 'PUT /photos/…', 'POST /entries', 'PUT /photos/…', 'POST /entries'])
    expect(lastVisit().photos).toHaveLength(2)
  })

  it('is not lost when its form comes back', async () => {
    const phone = phoneIn(yard)
    await phone.syncService.send()
    phone.network(down)
    const post = (fields: Record<string, string>, file?: Uint8Array<ArrayBuffer>) => {
      const form = new FormData()
      for (const [name, value] of Object.entries(fields)) form.append(name, value)
      if (file !== undefined) form.append('photo', new File([file], 'box.jpg'))
      return phone.syncService.form(new Request(`${ORIGIN}/colony/W-1/visit`, { method: 'POST', body: form }))
    }
    const wrong = await post(outside('2026-05-01'), raw())
    const { id } = await clean()
    expect(wrong?.status).toBe(422)
    expect(await wrong?.text()).toContain(`value="${id}" checked`)
    expect((await post({ ...outside(DAY), photos: id }))?.status).toBe(303)
    phone.network(good)
    await phone.syncService.send()
    expect(files()).toEqual([`${id}.jpg`])
    expect(lastVisit().photos).toEqual([id])
  })
})

describe('photos of a yard', () => {
  it('go into a backup and come back from it', async () => {
    await visitWith([['box.jpg', raw()]])
    const connection = openConnection(join(folder, 'resettle.db'))
    const backups = backupFolder(join(folder, 'resettle.db'))
    const backup = await takeBackup(connection, backups, new Date(`${DAY}T13:00:00Z`))
    connection.raw.close()
    const name = files()[0] ?? ''
    expect(readdirSync(join(backups, 'photos'))).toEqual([name])

    const elsewhere = mkdtempSync(join(tmpdir(), 'resettle-restored-'))
    restore(backup.file, join(elsewhere, 'resettle.db'), {
      replace: false,
      now: new Date(),
      prepare: () => {},
    })
    expect(readdirSync(join(elsewhere, 'photos'))).toEqual([name])
    rmSync(elsewhere, { recursive: true, force: true })
  })

  it('go out with everything and come in with it; without what is private they stay at home', async () => {
    await visitWith([['box.jpg', raw()]])
    const { store, photos } = yard.services
    const everything = [...exportLines(store, { private: true, photos })].join('')
    const there = mkdtempSync(join(tmpdir(), 'resettle-imported-'))
    const other = openStore(join(there, 'resettle.db'))
    expect(importYard(other, () => everything.split('\n'), AT, shelfIn(join(there, 'photos')))).toMatchObject(
      {
        ok: true,
        accepted: 2,
      },
    )
    expect(readdirSync(join(there, 'photos'))).toEqual(files())
    const spoiled = everything.replace(
      /("jpeg":"[^"]{400})(.)/,
      (_, before, c) => `${before}${c === 'B' ? 'C' : 'B'}`,
    )
    expect(spoiled).not.toBe(everything)
    expect(importYard(other, () => spoiled.split('\n'), AT)).toMatchObject({
      ok: false,
      problems: [expect.stringMatching(/^line \d+: jpeg: is/)],
    })
    other.close()
    rmSync(there, { recursive: true, force: true })

    const shared = [...exportLines(store, { private: false, photos })].join('')
    expect(shared).not.toContain('photo')
  })

  it('that are missing or spoiled are named by verify', async () => {
    await visitWith([['box.jpg', raw()]])
    const { run } = await import('../../src/node/commands/verify.ts')
    const said: string[] = []
    const [out, err] = [process.stdout.write, process.stderr.write]
    const verify = async (): Promise<number> => {
      said.length = 0
      process.stdout.write = process.stderr.write = ((text: string) =>
        said.push(text) > 0) as typeof process.stdout.write
      try {
        return await run([join(folder, 'resettle.db')])
      } finally {
        process.stdout.write = out
        process.stderr.write = err
      }
    }
    expect(await verify()).toBe(0)
    const file = join(folder, 'photos', files()[0] ?? '')
    writeFileSync(file, 'spoiled')
    expect(await verify()).toBe(1)
    expect(said.join('')).toContain('is no JPEG picture')
    unlinkSync(file)
    expect(await verify()).toBe(1)
    expect(said.join('')).toContain('is missing')
  })
})
