/** A photo in pieces over HTTP and from a phone: a lost line costs one piece, and nothing half or false is ever a photo. */
import { createHash } from 'node:crypto'
import { existsSync, mkdtempSync, readdirSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { FIRST_PIECE } from '../../src/phone/photo-sender.ts'
import { arrivingIn } from '../../src/photos/arriving.ts'
import { PHOTO_LIMIT, photoIn } from '../../src/photos/photo.ts'
import { intake } from '../store/helpers.ts'
import { good, outside, type Phone, phoneIn } from '../support/phone.ts'
import { ORIGIN, type TestYard, testYard } from '../support/yard-app.ts'
import { picture, segment, withSegments } from './picture.ts'

const DAY = '2026-06-01'
let folder: string
let yard: TestYard
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'resettle-pieces-'))
  yard = testYard({ day: DAY, file: join(folder, 'resettle.db') })
  expect((await yard.send('beekeeper', intake('W-1'))).status).toBe(200)
})
afterEach(() => {
  yard.services.close()
  rmSync(folder, { recursive: true, force: true })
})

/** A picture of about as many bytes: a colour profile in several segments, which belongs to the picture and stays. */
async function photoOf(bytes: number): Promise<{ id: string; bytes: Uint8Array<ArrayBuffer> }> {
  const size = 60_000
  const many = Math.ceil(bytes / size)
  const profile = Array.from({ length: many }, (_, i) =>
    segment(0xe2, [
      ...new TextEncoder().encode('ICC_PROFILE\0'),
      i + 1,
      many,
      ...Array.from({ length: size }, (_, n) => (n * 31 + i) % 251),
    ]),
  )
  const read = await photoIn(withSegments(picture(), ...profile))
  if (!read.ok) throw new Error(read.problems.join())
  return read.photo
}
const kept = (): string[] => (existsSync(join(folder, 'photos')) ? readdirSync(join(folder, 'photos')) : [])
const waiting = (id: string): number => yard.services.photos.arriving.size(id)

const patch = (
  id: string,
  offset: unknown,
  length: unknown,
  piece: Uint8Array<ArrayBuffer>,
  role: 'helper' | null = 'helper',
) =>
  yard.ask(role, `/photos/${id}`, {
    method: 'PATCH',
    body: piece,
    headers: {
      Accept: 'application/json',
      'Content-Type': 'application/partial-upload',
      'Upload-Offset': String(offset),
      'Upload-Length': String(length),
    },
  })
const arrived = async (id: string) => (await yard.ask('helper', `/photos/${id}/arrived`)).json()

describe('pieces', () => {
  it('are put together, told of at any time, and gone once the photo is kept', async () => {
    const { id, bytes } = await photoOf(120_000)
    expect(await arrived(id)).toEqual({ offset: 0 })
    const first = await patch(id, 0, bytes.length, bytes.slice(0, 50_000))
    expect([first.status, await first.json()]).toEqual([200, { offset: 50_000 }])
    expect(await arrived(id)).toEqual({ offset: 50_000 })
    expect(statSync(join(folder, 'photos', 'arriving', `${id}.jpg.part`)).mode & 0o077).toBe(0)
    expect((await yard.ask('helper', `/photos/${id}`)).status).toBe(404)
    expect(await (await patch(id, 50_000, bytes.length, bytes.slice(50_000))).json()).toEqual({ kept: id })
    expect(kept()).toEqual([`${id}.jpg`])
    expect(await yard.services.photos.find(id)).toEqual(bytes)
    expect(await arrived(id)).toEqual({ kept: id })
  })

  it('that begin elsewhere than the last ended are not taken; the answer says where', async () => {
    const { id, bytes } = await photoOf(120_000)
    await patch(id, 0, bytes.length, bytes.slice(0, 1000))
    // The answer to the first was lost, so it comes again; then one comes too early.
    for (const [from, to] of [
      [0, 1000],
      [2000, 3000],
    ] as const)
      expect(await (await patch(id, from, bytes.length, bytes.slice(from, to))).json()).toEqual({
        offset: 1000,
      })
    expect(waiting(id)).toBe(1000)
  })

  it('of another photo than their name says never become one', async () => {
    const { bytes } = await photoOf(60_000)
    const id = 'a'.repeat(64)
    expect(await (await patch(id, 0, bytes.length, bytes)).json()).toEqual({ offset: 0 })
    const junk = new Uint8Array(500)
    const name = createHash('sha256').update(junk).digest('hex')
    expect(await (await patch(name, 0, junk.length, junk)).json()).toEqual({ offset: 0 })
    expect(kept()).toEqual([])
  })

  it('are no more than the whole that was said, and that is no more than a photo may be', async () => {
    const id = 'b'.repeat(64)
    const piece = new Uint8Array(2000)
    expect(await (await patch(id, 0, 1000, piece)).json()).toEqual({ offset: 0 })
    for (const [offset, length] of [
      [0, PHOTO_LIMIT + 1],
      ['', 10],
      [-1, 10],
      ['0x10', 10],
      [0, '1e3'],
    ])
      expect((await patch(id, offset, length, piece)).status).toBe(422)
    expect(kept()).toEqual([])
  })

  it('are taken from people of the yard, under the name of a photo', async () => {
    const piece = new Uint8Array(10)
    expect((await patch('c'.repeat(64), 0, 20, piece, null)).status).toBe(401)
    for (const id of ['..%2f..%2fresettle', 'note', 'A'.repeat(64)]) {
      expect((await patch(id, 0, 20, piece)).status).toBe(404)
      expect((await yard.ask('helper', `/photos/${id}/arrived`)).status).toBe(404)
    }
    expect(kept()).toEqual([])
  })

  it('that never went on are let go after two weeks, when another photo begins', () => {
    const at = join(folder, 'arriving')
    const arriving = arrivingIn(at)
    const [old, fresh, next] = ['d', 'e', 'f'].map((c) => c.repeat(64)) as [string, string, string]
    arriving.add(old, new Uint8Array(5))
    arriving.add(fresh, new Uint8Array(5))
    writeFileSync(join(at, 'note.txt'), 'not ours')
    const then = Date.now() / 1000 - 15 * 86_400
    utimesSync(join(at, `${old}.jpg.part`), then, then)
    arriving.add(next, new Uint8Array(5))
    expect([old, fresh, next].map(arriving.size)).toEqual([0, 5, 5])
    expect(readdirSync(at)).toContain('note.txt')
  })
})

describe('a phone', () => {
  /** With a visit that has a photo of about as many bytes, and a line that says of each request whether it arrives. */
  async function withPhoto(bytes: number): Promise<{ phone: Phone; id: string; length: number }> {
    const phone = phoneIn(yard)
    await phone.syncService.send()
    const photo = await photoOf(bytes)
    const form = new FormData()
    for (const [name, value] of Object.entries(outside(DAY))) form.append(name, value)
    form.append('photo', new File([photo.bytes], 'box.jpg'))
    await phone.syncService.form(new Request(`${ORIGIN}/colony/W-1/visit`, { method: 'POST', body: form }))
    phone.asked.length = 0
    return { phone, id: photo.id, length: photo.bytes.length }
  }
  const photosOf = (phone: Phone): string[] =>
    phone.asked.filter((a) => a.includes('/photos/')).map((a) => a.replace(/[0-9a-f]{64}/, 'ID'))

  it('goes on where the line broke off, and sends no piece twice that arrived', async () => {
    const { phone, id, length } = await withPhoto(200_000)
    let pieces = 0
    // The third piece is lost on its way; then the answer to the fifth, though the server has it.
    phone.network(async (path, reach) => {
      if (path !== `/photos/${id}`) return reach()
      pieces++
      if (pieces === 3) throw new TypeError('Failed to fetch')
      const answer = await reach()
      if (pieces === 5) throw new TypeError('Failed to fetch')
      return answer
    })
    expect(await phone.syncService.send()).toBe('no-answer')
    const before = waiting(id)
    // 16 and 32 KB, as long as each comes quickly.
    expect(before).toBe(3 * FIRST_PIECE)
    expect(await phone.syncService.send()).toBe('no-answer')
    expect(waiting(id)).toBe(before + 3 * FIRST_PIECE)
    phone.network(good)
    expect(await phone.syncService.send()).toBe('done')
    expect(kept()).toEqual([`${id}.jpg`])
    expect((await yard.services.photos.find(id))?.length).toBe(length)
    expect([...yard.services.store.journal()].at(-1)?.entry).toMatchObject({ photos: [id] })
    expect(photosOf(phone).filter((a) => a === 'GET /photos/ID/arrived')).toHaveLength(3)
    expect(await (await phone.database()).getAll('photos')).toEqual([])
  })

  it('lets what is written down meanwhile go between two pieces', async () => {
    const { phone } = await withPhoto(200_000)
    let written = false
    phone.network(async (path, reach) => {
      if (!written && path.startsWith('/photos/') && !path.endsWith('arrived')) {
        written = true
        await phone.post('/colony/W-1/note', { on: DAY, text: 'Written while it crawled.' })
      }
      return reach()
    })
    expect(await phone.syncService.send()).toBe('done')
    const order = phone.asked.filter((a) => !a.startsWith('GET')).map((a) => a.replace(/[0-9a-f]{64}/, 'ID'))
    expect(order.slice(0, 3)).toEqual(['PATCH /photos/ID', 'POST /entries', 'PATCH /photos/ID'])
  })

  it('sends it whole where what had come was spoiled at the server', async () => {
    const { phone, id, length } = await withPhoto(100_000)
    yard.services.photos.arriving.add(id, new Uint8Array(length - 10))
    expect(await phone.syncService.send()).toBe('done')
    expect(kept()).toEqual([`${id}.jpg`])
    expect((await yard.services.photos.find(id))?.length).toBe(length)
  })
})
