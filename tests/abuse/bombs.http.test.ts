/**
 * Small things that cost much: every body here is within the limit of bytes, and is refused in words before it is taken
 * apart. The times are generous, for a machine that does other things too; before, they were seconds, or an error of ours.
 */
import { beforeAll, describe, expect, test } from 'vitest'
import { API } from '../../src/features/api/operations.ts'
import { photoIn } from '../../src/photos/photo.ts'
import { picture, segment } from '../photos/picture.ts'
import { intake } from '../store/helpers.ts'
import { processorOf } from '../support/processor.ts'
import { NAMES, ORIGIN, type TestYard, testYard } from '../support/yard-app.ts'

const DAY = '2026-06-01'
/** Milliseconds of the processor. */
const SOON = 500

let yard: TestYard
let token = ''
beforeAll(async () => {
  yard = testYard({ day: DAY })
  await yard.session('helper')
  yard.services.store.append([intake('A-1')], { today: DAY, recordedAt: `${DAY}T08:00:00.000Z` })
  const person = yard.services.people.accounts.byName(NAMES.helper)
  const made =
    person === null
      ? null
      : yard.services.tokens.make({ person, name: 'x', scopes: ['read', 'write'], days: 30 })
  token = made?.ok === true ? made.value.token : ''
  // What is made once is made now.
  await yard.ask('helper', '/colony/A-1/visit')
})

async function told(
  ask: () => Response | Promise<Response>,
): Promise<{ status: number; text: string; ms: number }> {
  const { made, ms } = await processorOf(async () => {
    const response = await ask()
    return { status: response.status, text: await response.text() }
  })
  return { ...made, ms }
}

const toApi = (body: string): Response | Promise<Response> =>
  yard.app.request(`${ORIGIN}${API}/entries`, {
    method: 'POST',
    headers: { Authorization: `Bearer ${token}`, 'Content-Type': 'application/json' },
    body,
  })
const toEntries = (body: string): Promise<Response> =>
  yard.ask('helper', '/entries', { method: 'POST', headers: { 'Content-Type': 'application/json' }, body })

describe('JSON', () => {
  const DEEP = [
    '['.repeat(500_000) + ']'.repeat(500_000),
    '{"a":'.repeat(200_000),
    `{"id":"x","note":"[[[[","more":${'['.repeat(40)}${']'.repeat(40)}}`,
  ]

  test.each(DEEP.map((d) => [d.slice(0, 30), d]))(
    'nested without end is refused before it is read: %s',
    async (_, body) => {
      for (const send of [toApi, toEntries]) {
        const { status, text, ms } = await told(() => send(body))
        expect(status).toBe(400)
        expect(text).toContain('lists and objects within each other')
        expect(ms).toBeLessThan(SOON)
      }
    },
  )

  test('with tens of thousands of names is refused', async () => {
    const body = `{${Array.from({ length: 90_000 }, (_, i) => `"a${i}":1`).join(',')}}`
    for (const send of [toApi, toEntries]) {
      const { status, text, ms } = await told(() => send(body))
      expect(status).toBe(400)
      expect(text).toContain('send fewer at once')
      expect(ms).toBeLessThan(SOON)
    }
  })

  test('with as many names as are let in is answered shortly', async () => {
    const names = Array.from({ length: 49_000 }, (_, i) => `"a${i}":1`).join(',')
    const signs = `"signs":[${'"x",'.repeat(100_000)}"x"]`
    for (const more of [names, signs])
      for (const send of [toApi, toEntries]) {
        const { status, text, ms } = await told(() => send(`{"kind":"inspection",${more}}`))
        expect(status).toBe(422)
        expect(text.length).toBeLessThan(50_000)
        expect(ms).toBeLessThan(2 * SOON)
      }
  })

  test('brackets in a note are no depth', async () => {
    const entry = { ...intake('B-1'), by: NAMES.helper, note: `${'['.repeat(200)} \\" ${'{'.repeat(200)}` }
    expect((await told(() => toEntries(JSON.stringify(entry)))).text).not.toContain('within each other')
  })
})

describe('forms', () => {
  const many = (n: number): string => 'a=&'.repeat(n)
  const FORM = 'application/x-www-form-urlencoded'
  const post = (role: 'helper' | null, path: string, type: string, body: string): Promise<Response> =>
    yard.ask(role, path, { method: 'POST', headers: { 'Content-Type': type }, body })

  test.each([
    [null, '/sign-in'],
    ['helper', '/colony/A-1/visit'],
    ['helper', '/sheet-entry'],
  ] as const)('of 90,000 fields are refused: %s at %s', async (role, path) => {
    const { status, text, ms } = await told(() => post(role, path, FORM, many(90_000)))
    expect(status).toBe(413)
    expect(text).toContain('more than 10000 fields')
    expect(ms).toBeLessThan(SOON)
  })

  test('of 60,000 parts are refused, also where photos are taken', async () => {
    const body = `${'--b\r\nContent-Disposition: form-data; name="a"\r\n\r\n\r\n'.repeat(15_000)}--b--`
    for (const [role, path] of [
      [null, '/sign-in'],
      ['helper', '/colony/A-1/visit'],
    ] as const) {
      const times = role === null ? 1 : 4
      const { status, text, ms } = await told(() =>
        post(role, path, 'multipart/form-data; boundary=b', body.slice(0, -5).repeat(times)),
      )
      expect(status).toBe(413)
      expect(text).toContain('more than 10000 fields')
      expect(ms).toBeLessThan(SOON)
    }
  })

  test('whose boundary is everywhere cost no more than their bytes', async () => {
    const type = `multipart/form-data; boundary=${'-'.repeat(60)}x`
    const { ms } = await told(() => post('helper', '/colony/A-1/visit', type, `\n${'-'.repeat(8_000_000)}`))
    expect(ms).toBeLessThan(SOON)
  })
})

describe('photos', () => {
  /** The small picture with another size written into its frame. */
  const sized = (width: number, height: number): Uint8Array => {
    const file = picture()
    const frame = file.findIndex((b, i) => b === 0xff && file[i + 1] === 0xc0)
    file.set([height >> 8, height & 255, width >> 8, width & 255], frame + 5)
    return file
  }
  const refusedWith = async (file: Uint8Array): Promise<string> => {
    const { made: read, ms } = await processorOf(() => photoIn(file))
    expect(ms).toBeLessThan(SOON)
    return read.ok ? 'taken' : read.problems.join()
  }

  test('of 400 megapixels in a few hundred bytes are refused', async () => {
    expect(sized(20_000, 20_000).length).toBeLessThan(1000)
    expect(await refusedWith(sized(20_000, 20_000))).toContain('cut off')
    expect(await refusedWith(sized(4000, 3000))).toContain('cut off')
  })

  test('of more pixels than anybody can look at are refused, however many bytes they bring', async () => {
    const file = sized(20_000, 20_000)
    const end = file.length - 2
    const padded = Uint8Array.from([
      ...file.subarray(0, end),
      ...new Uint8Array(2_000_000).fill(0x55),
      0xff,
      0xd9,
    ])
    expect(await refusedWith(padded)).toContain('20000 by 20000 pixels')
  })

  test('with a second frame, which readers see differently, are refused', async () => {
    const file = picture()
    const scan = file.findIndex((b, i) => b === 0xff && file[i + 1] === 0xda)
    const frame = segment(0xc0, [8, 78, 32, 78, 32, 1, 1, 0x11, 0])
    const twice = Uint8Array.from([...file.subarray(0, scan), ...frame, ...file.subarray(scan)])
    expect(await refusedWith(twice)).toContain('two pictures')
    expect(await refusedWith(file)).toBe('taken')
  })

  test('of 200,000 pieces are refused', async () => {
    const file = picture()
    const pieces = new Uint8Array(800_000)
    for (let at = 0; at < pieces.length; at += 4) pieces.set([0xff, 0xfe, 0, 2], at)
    expect(
      await refusedWith(Uint8Array.from([...file.subarray(0, 2), ...pieces, ...file.subarray(2)])),
    ).toContain('pieces')
  })

  test('that are drawn over a thousand times are refused', async () => {
    const file = picture()
    const scan = file.findIndex((b, i) => b === 0xff && file[i + 1] === 0xda)
    const again = [...file.subarray(scan, file.length - 2)]
    const often = Array.from({ length: 1000 }, () => again).flat()
    expect(await refusedWith(Uint8Array.from([...file.subarray(0, scan), ...often, 0xff, 0xd9]))).toContain(
      'pieces',
    )
  })
})

test.each(['/', '/a', '/..', '/%2e', '/colony/'])(
  'a path of thousands of pieces is answered shortly: %s',
  async (piece) => {
    for (const role of [null, 'helper'] as const) {
      const { status, ms } = await told(() => yard.ask(role, piece.repeat(Math.floor(15_000 / piece.length))))
      expect(status).toBeLessThan(500)
      expect(ms).toBeLessThan(SOON)
    }
  },
)

test('none of it is a bug of ours', () => expect(yard.errors).toEqual([]))
