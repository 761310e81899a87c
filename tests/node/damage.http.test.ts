/** A file that is damaged is not served; the fullest good backup is named. */
import {
  closeSync,
  existsSync,
  mkdtempSync,
  openSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  unlinkSync,
  writeFileSync,
  writeSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { run as restoreCommand } from '../../src/node/commands/restore.ts'
import { run as serveCommand } from '../../src/node/commands/serve.ts'
import { openCheckedServices, openServices } from '../../src/node/services.ts'
import { add, inspection, intake } from '../store/helpers.ts'
import { randomFrom } from '../store/yard.ts'
import { CHEAP } from '../support/people.ts'

let folder = ''
let file = ''
let said = ''
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'resettle-damage-'))
  file = join(folder, 'resettle.db')
  said = ''
  vi.stubEnv('RESETTLE_DATA', folder)
  vi.spyOn(process.stdout, 'write').mockReturnValue(true)
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    said += text
    return true
  })
  let now = new Date('2026-06-01T04:00:00Z')
  const services = openServices(file, { cost: CHEAP, clock: () => now })
  add(services.store, ...Array.from({ length: 30 }, (_, i) => intake(`A-${i}`)))
  for (let i = 0; i < 30; i++)
    add(services.store, inspection(`A-${i}`, '2026-05-20', { note: 'n'.repeat(900) }))
  await services.safekeeping?.backUp()
  now = new Date('2026-06-02T04:00:00Z')
  await services.safekeeping?.backUp()
  services.close()
})
afterEach(() => {
  vi.restoreAllMocks()
  vi.unstubAllEnvs()
  rmSync(folder, { recursive: true, force: true })
})

const pages = (): number => statSync(file).size / 4096

function scribble(page: number): void {
  const random = randomFrom(page)
  const handle = openSync(file, 'r+')
  writeSync(
    handle,
    Buffer.from(Array.from({ length: 4096 }, () => Math.floor(random() * 256))),
    0,
    4096,
    page * 4096,
  )
  closeSync(handle)
}

const HARMS: [string, () => void][] = [
  ['cut to half', () => truncateSync(file, Math.floor(pages() / 2) * 4096)],
  ['cut in the middle of a page', () => truncateSync(file, 4096 * 9 + 77)],
  ['cut to nothing', () => truncateSync(file, 0)],
  ['gone', () => unlinkSync(file)],
  ['overwritten at its beginning', () => scribble(0)],
  ['overwritten in the middle', () => scribble(Math.floor(pages() / 2))],
  ['overwritten at its end', () => scribble(pages() - 1)],
  ['something else altogether', () => writeFileSync(file, 'A letter to the neighbours.\n'.repeat(500))],
]

test.each(HARMS)(
  '%s: it is not served, the fullest good backup is named, and restoring that one helps',
  async (_what, harm) => {
    harm()
    const before = existsSync(file) ? readFileSync(file) : null
    expect(await serveCommand(['--port', '0'])).toBe(1)
    const [, named] = /The good backup with most entries is (\S+), of 2026-06-02T04:00:00/.exec(said) ?? []
    expect(said).toContain('It is not served.')
    expect(named).toBeDefined()
    // Refusing changed nothing that somebody may still want to rescue.
    if (before !== null) expect(readFileSync(file).equals(before)).toBe(true)
    expect(await restoreCommand([named ?? '', '--replace'])).toBe(0)
    const services = openCheckedServices(file, { cost: CHEAP })
    expect(services.store.verify()).toMatchObject({ ok: true, entries: 60 })
    services.close()
  },
)

test('the newest backup is damaged too: an older good one is named', async () => {
  const services = openServices(file)
  const [newest, older] = services.safekeeping?.state().backups ?? []
  services.close()
  truncateSync(newest?.file ?? '', 5000)
  scribble(3)
  expect(await serveCommand(['--port', '0'])).toBe(1)
  expect(said).toContain(`The good backup with most entries is ${older?.file}`)
})

test('any single page overwritten is noticed', () => {
  const whole = readFileSync(file)
  const unnoticed: number[] = []
  for (let page = 0; page < pages(); page++) {
    scribble(page)
    try {
      openCheckedServices(file, { cost: CHEAP }).close()
      unnoticed.push(page)
    } catch (error) {
      expect(String(error)).toContain('It is not served')
    }
    for (const end of ['', '-wal', '-shm']) rmSync(file + end, { force: true })
    writeFileSync(file, whole)
  }
  expect(unnoticed).toEqual([])
})
