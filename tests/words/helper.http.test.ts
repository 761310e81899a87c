/** What a helper may open is in their language, or on a short list that says why not. */
import { v7 } from 'uuid'
import { beforeAll, describe, expect, it } from 'vitest'
import { appFor } from '../../src/node/app.ts'
import { actionAt, guardFor } from '../../src/people/index.ts'
import { type TestYard, testYard } from '../support/yard-app.ts'

const DAY = '2026-06-01'

/** Pages a helper may open that are in English whole. */
const ENGLISH: Record<string, string> = {
  '/weeks': 'plans the work of weeks: beekeepers and operators do that',
  '/rates': 'what the odds rest on: numbers and sources, for who answers for them',
}

let yard: TestYard
let visit: string
beforeAll(async () => {
  yard = testYard({ day: DAY })
  await yard.session('helper')
  visit = v7()
  const written = yard.services.store.append(
    [
      {
        id: v7(),
        colony: 'W-1',
        kind: 'intake',
        on: '2026-05-20',
        by: 'Bram',
        removal: { type: 'wall' },
        yard: 'Home',
        queen: 'unseen',
      },
      {
        id: visit,
        colony: 'W-1',
        kind: 'inspection',
        on: '2026-05-26',
        by: 'Teuila',
        opened: true,
        eggs: 'none',
        photos: ['a'.repeat(64)],
      },
    ],
    { today: DAY, recordedAt: `${DAY}T08:00:00.000Z`, recordedBy: 'Teuila' },
  )
  expect(written).toMatchObject({ ok: true })
})

/** A path with what stands for its parts. */
const filled = (path: string): string =>
  path
    .replace(':tag', 'W-1')
    .replace(':photo', 'a'.repeat(64))
    .replace(':act', 'open')
    .replace(/^\/entry\/:id/, `/entry/${visit}`)

/** Every path of the server that answers a helper with a page. */
async function pages(): Promise<{ path: string; language: string | undefined }[]> {
  const app = appFor('helper', yard.deps)
  const may = (path: string): boolean => {
    const action = actionAt(path)
    return action !== null && guardFor('helper').may(action)
  }
  const paths = new Set(
    app.routes.filter((r) => r.method === 'GET' && !r.path.includes('*')).map((r) => r.path),
  )
  const found: { path: string; language: string | undefined }[] = []
  for (const path of paths) {
    if (!may(filled(path))) continue
    const answer = await yard.ask('helper', filled(path), { headers: { 'Accept-Language': 'es' } })
    if (!answer.headers.get('content-type')?.startsWith('text/html')) continue
    const [, language] = /<html lang="(..)"/.exec(await answer.text()) ?? []
    found.push({ path, language })
  }
  return found
}

describe('every page that a helper may open', () => {
  it('is in Spanish for who reads Spanish, but for those that are named', async () => {
    const all = await pages()
    expect(all.length).toBeGreaterThan(20)
    expect(all.filter((p) => p.language === undefined)).toEqual([])
    expect(
      all
        .filter((p) => p.language === 'en')
        .map((p) => p.path)
        .sort(),
    ).toEqual(Object.keys(ENGLISH).sort())
  })
})
