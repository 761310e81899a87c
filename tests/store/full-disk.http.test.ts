/**
 * The disk fills up while people write: a clear error, nothing half-written, reading goes on, and writing too once there
 * is room. As root on a real small file system (tmpfs); elsewhere by SQLite's own limit of pages, which fails with the
 * same SQLITE_FULL at the same places. The test's name says which.
 */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { type TestYard, testYard } from '../support/yard-app.ts'
import { inspection, intake, newId } from './helpers.ts'

const folder = mkdtempSync(join(tmpdir(), 'resettle-full-'))
const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=3m', 'tmpfs', folder]).status === 0
afterAll(() => {
  if (mounted) spawnSync('umount', [folder])
  rmSync(folder, { recursive: true, force: true })
})

/** Takes all room there is, and gives it back. */
interface Room {
  fill: () => void
  free: () => void
}

function onDisk(): Room {
  const filler = join(folder, 'filler')
  return {
    fill: () => {
      for (const size of [1024 * 1024, 64 * 1024, 4096])
        for (;;)
          try {
            writeFileSync(filler, Buffer.alloc(size), { flag: 'a' })
          } catch {
            break
          }
    },
    free: () => rmSync(filler, { force: true }),
  }
}

function byPages({ services }: TestYard): Room {
  const { raw } = services.connection
  return {
    fill: () => raw.pragma(`max_page_count = ${raw.pragma('page_count', { simple: true })}`),
    free: () => raw.pragma('max_page_count = 1000000'),
  }
}

test(`a full disk (${mounted ? 'a tmpfs of 3 MB' : 'by max_page_count'})`, async () => {
  const yard = testYard({ file: join(folder, 'resettle.db') })
  await yard.session('helper')
  await yard.send('operator', [intake('A-1'), intake('A-2')])
  const room = mounted ? onDisk() : byPages(yard)
  room.fill()

  const heard: string[] = []
  let refused: Response | undefined
  let unheard = ''
  for (let n = 0; n < 2000 && refused === undefined; n++) {
    const look = inspection('A-1', '2026-05-20', { note: 'x'.repeat(1900) })
    const response = await yard.send('helper', look)
    if (response.status === 200) heard.push(look.id)
    else [refused, unheard] = [response, look.id]
  }
  expect(refused?.status).toBe(507)
  expect(await refused?.text()).toContain('The server’s disk is full. Nothing was saved.')

  // A form says the same, to people.
  const form = await yard.post('helper', '/colony/A-1/note', {
    on: '2026-06-01',
    text: 'y'.repeat(1900),
    id: newId(),
  })
  expect(form.status).toBe(507)
  expect(await form.text()).toMatch(/disk is full.*What you sent was not saved/s)

  // Reading goes on, for those who are signed in already; a backup that does not fit says why.
  for (const path of ['/', '/yard', '/colony/A-1']) expect((await yard.ask('helper', path)).status).toBe(200)
  if (mounted) {
    expect((await yard.post('operator', '/data/backup', {})).status).toBe(422)
    expect(await (await yard.ask('operator', '/data')).text()).toContain('the disk is full')
  }
  const { store } = yard.services
  expect(store.verify()).toMatchObject({ ok: true, problems: [] })
  expect(heard.every((id) => store.entry(id) !== null)).toBe(true)
  expect(store.entry(unheard)).toBeNull()

  room.free()
  expect((await yard.send('helper', { ...inspection('A-1', '2026-05-20'), id: unheard })).status).toBe(200)
  expect(store.entry(unheard)).not.toBeNull()
  expect(store.verify()).toMatchObject({ ok: true, problems: [], entries: heard.length + 3 })
  yard.services.close()
})
