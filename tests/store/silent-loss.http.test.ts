/** Entries that are gone or changed without anybody having done it are noticed, and what to do is said. */
import { spawn } from 'node:child_process'
import {
  copyFileSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { run as exportCommand } from '../../src/node/commands/export.ts'
import { run as importCommand } from '../../src/node/commands/import.ts'
import { run as restoreCommand } from '../../src/node/commands/restore.ts'
import { run as verifyCommand } from '../../src/node/commands/verify.ts'
import { openCheckedServices, openServices } from '../../src/node/services.ts'
import { backupFolder, takeBackup } from '../../src/store/backup.ts'
import { bestGood } from '../../src/store/integrity.ts'
import { openConnection, openStore } from '../../src/store/node.ts'
import { CHEAP } from '../support/people.ts'
import { testYard } from '../support/yard-app.ts'
import { add, inspection, intake } from './helpers.ts'

let folder = ''
let file = ''
let said = { out: '', err: '' }
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'resettle-loss-'))
  file = join(folder, 'resettle.db')
  vi.stubEnv('RESETTLE_DATA', folder)
  said = { out: '', err: '' }
  for (const [stream, key] of [
    [process.stdout, 'out'],
    [process.stderr, 'err'],
  ] as const)
    vi.spyOn(stream, 'write').mockImplementation((text) => {
      said[key] += String(text)
      return true
    })
})
afterEach(() => {
  vi.restoreAllMocks()
  vi.unstubAllEnvs()
  rmSync(folder, { recursive: true, force: true })
})

const at = (day: number): Date => new Date(Date.UTC(2026, 5, day, 4))

async function backUp(when: Date): Promise<string> {
  const connection = openConnection(file)
  const taken = await takeBackup(connection, backupFolder(file), when)
  connection.raw.close()
  return taken.file
}

/** Writes so many entries and closes the book. */
function write(count: number, from = 0): void {
  const store = openStore(file)
  add(store, ...Array.from({ length: count }, (_, i) => intake(`A-${from + i}`)))
  store.close()
}

/** What a start says: nothing when it serves. */
function start(): string {
  try {
    openCheckedServices(file, { cost: CHEAP }).close()
    return ''
  } catch (error) {
    return error instanceof Error ? error.message : String(error)
  }
}

describe('a log that was lost', () => {
  /** 10 entries in the file, 31 more in the log beside it; a backup after the first 30; then the log is gone. */
  async function lost(): Promise<string> {
    write(10)
    const before = join(folder, 'as-it-was')
    copyFileSync(file, before)
    write(20, 10)
    const backup = await backUp(at(1))
    write(11, 30)
    for (const end of ['', '-wal', '-shm']) rmSync(file + end, { force: true })
    copyFileSync(before, file)
    return backup
  }

  test('is noticed at the start, which serves nothing and names the way back', async () => {
    const backup = await lost()
    expect(start()).toContain('20 entries of the backup')
    expect(start()).toContain(`resettle restore ${backup} --replace`)
  })

  test('is noticed by verify', async () => {
    const backup = await lost()
    expect(await verifyCommand([])).toBe(1)
    expect(said.err).toContain('the journal is not complete: 20 entries of the backup')
    expect(said.err).toContain(`resettle restore ${backup} --replace`)
    // The backup by itself is whole.
    expect(await verifyCommand([backup])).toBe(0)
  })

  test('costs nothing that any file still has: go back, and bring the rest along', async () => {
    const backup = await lost()
    // Somebody wrote on before it was noticed.
    write(3, 90)
    expect(await restoreCommand([backup, '--replace'])).toBe(0)
    const kept =
      readdirSync(folder).find((name) => name.includes('before-restore') && !/-(wal|shm)$/.test(name)) ?? ''
    const rest = join(folder, 'rest.jsonl')
    expect(await exportCommand([rest, '--from', join(folder, kept)])).toBe(0)
    expect(await importCommand([rest])).toBe(0)
    expect(start()).toBe('')
    const store = openStore(file)
    expect(store.verify()).toMatchObject({ ok: true, entries: 33 })
    store.close()
  })

  test('stops the throwing away of backups while the server runs', async () => {
    await lost()
    const services = openServices(file, { clock: () => at(2), cost: CHEAP })
    for (let n = 0; n < 3; n++) await services.safekeeping?.backUp()
    expect(services.safekeeping?.state().backups).toHaveLength(4)
    expect(services.safekeeping?.state().damage).toContain('20 entries of the backup')
    services.close()
  })
})

test('going back on purpose is no loss, until entries are lost again', async () => {
  write(5)
  const old = await backUp(at(1))
  write(5, 5)
  await backUp(at(2))
  expect(await restoreCommand([old, '--replace'])).toBe(0)
  expect(start()).toBe('')
  const before = join(folder, 'as-it-was')
  copyFileSync(file, before)
  write(4, 20)
  await backUp(at(3))
  copyFileSync(before, file)
  for (const end of ['-wal', '-shm']) rmSync(file + end, { force: true })
  expect(start()).toContain('4 entries of the backup')
})

test('the way out is the backup with most of the journal, not the one with the latest name', async () => {
  write(4)
  // A clock that ran a year ahead.
  await backUp(new Date('2027-06-01T04:00:00Z'))
  write(4, 4)
  const full = await backUp(at(1))
  expect(bestGood(backupFolder(file))?.file).toBe(full)
  rmSync(file)
  expect(start()).toContain(`resettle restore ${full} --replace`)
})

describe('a bit that flips', () => {
  test.each([
    ['a note', 'payload', (v: string) => v.replace('Quarry', 'Quasry')],
    ['who recorded it', 'recorded_by', (v: string) => v.replace('Odalys', 'Odalyr')],
    ['when it was recorded', 'recorded_at', (v: string) => v.replace('17:00', '17:01')],
  ])('in %s is noticed by verify and while serving', async (_what, column, flip) => {
    write(6)
    const raw = new Database(file)
    raw.pragma('journal_mode = DELETE')
    const value = raw.prepare(`SELECT ${column} FROM entry WHERE seq = 3`).pluck().get() as string
    raw.close()
    const bytes = readFileSync(file)
    const [from, to] = [Buffer.from(value), Buffer.from(flip(value))]
    expect(to.length).toBe(from.length)
    // The row of the third colony: the last place where its payload is, seen from the end of the file.
    const row = bytes.indexOf(Buffer.from('"colony":"A-2"'))
    const place = bytes.indexOf(from, row - 400)
    to.copy(bytes, place)
    writeFileSync(file, bytes)
    expect(await verifyCommand([])).toBe(1)
    expect(said.err).toMatch(/entry \d \(.*\) is not as it was written/)
    const services = openServices(file, { clock: () => at(2), cost: CHEAP })
    await services.safekeeping?.lookThrough()
    expect(services.safekeeping?.state().damage).toContain('is not as it was written')
    await expect(services.safekeeping?.backUp()).rejects.toThrow('not whole')
    // Proved before it gets its name: nothing is called a backup that is none.
    expect(readdirSync(backupFolder(file)).filter((name) => name.endsWith('.sqlite'))).toEqual([])
    services.close()
  })

  test('is told to whoever looks at the backups', async () => {
    write(3)
    const raw = new Database(file)
    raw.exec("DROP TRIGGER entry_no_update; UPDATE entry SET digest = 'x' WHERE seq = 2")
    raw.close()
    const yard = testYard({ file })
    await yard.services.safekeeping?.lookThrough()
    const page = await (await yard.ask('operator', '/data')).text()
    expect(page).toContain('The book is damaged')
    expect(page).toContain('resettle verify')
    yard.services.close()
  })
})

test('an entry taken out of the middle, or slipped in, breaks the chain', () => {
  write(5)
  const raw = new Database(file)
  raw.exec('DROP TRIGGER entry_no_delete; DELETE FROM planned_check; DELETE FROM colony')
  raw.pragma('foreign_keys = OFF')
  raw.exec('DELETE FROM entry WHERE seq = 3')
  raw.close()
  const store = openStore(file)
  expect(store.verify().problems.join('\n')).toMatch(/entry 4 .* one before it is missing/)
  store.close()
})

test('parts that killed backups left are cleared away, and those under way are not', async () => {
  write(2)
  await backUp(at(1))
  const part = (name: string): string => join(backupFolder(file), `resettle-${name}.sqlite.part`)
  const [old, young] = [part('2026-05-01T04-00-00.000Z'), part('2026-06-02T03-59-00.000Z')]
  const other = join(backupFolder(file), 'mine.part')
  for (const name of [old, `${old}-journal`, young, other]) {
    writeFileSync(name, 'half')
    utimesSync(name, at(1), name === young ? at(2) : at(1))
  }
  await backUp(at(2))
  expect([old, `${old}-journal`, young, other].map((f) => existsSync(f))).toEqual([false, false, true, true])
})

describe('a second server on the same folder', () => {
  test('is refused, and let in once the first has stopped', () => {
    write(1)
    const first = openCheckedServices(file, { cost: CHEAP })
    expect(start()).toContain('Another Resettle server is running')
    first.close()
    expect(start()).toBe('')
  })

  test('is refused while the first is another process, and let in once that was killed', async () => {
    write(1)
    const module = new URL('../../src/store/folder-lock.ts', import.meta.url).href
    const holder = spawn(
      process.execPath,
      [
        '--import',
        'tsx',
        '-e',
        `import('${module}').then((m) => { m.lockFolder('${file}'); console.log('held'); setInterval(() => {}, 1000) })`,
      ],
      { stdio: ['ignore', 'pipe', 'inherit'] },
    )
    await new Promise((held) => holder.stdout.once('data', held))
    expect(start()).toContain('Another Resettle server is running')
    const gone = new Promise((exited) => holder.once('exit', exited))
    holder.kill('SIGKILL')
    await gone
    expect(start()).toBe('')
  })
})

test('the chain of an older database is made when it is brought up to date, and holds', () => {
  copyFileSync(new URL('./fixtures/0005_colony_imports.db', import.meta.url), file)
  const store = openStore(file)
  const [id = ''] = [add(store, intake('Z-9'))]
  add(store, inspection('Z-9', '2026-05-20'))
  expect(store.entry(id)).not.toBeNull()
  expect(store.verify()).toMatchObject({ ok: true, problems: [] })
  store.close()
})
