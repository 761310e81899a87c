/** Backups while the book is in use, and going back to one. */
import { spawnSync } from 'node:child_process'
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { run as backupCommand } from '../../src/node/commands/backup.ts'
import { run as personCommand } from '../../src/node/commands/person.ts'
import { run as restoreCommand } from '../../src/node/commands/restore.ts'
import { openServices } from '../../src/node/services.ts'
import { backupFolder, backupProblem, listBackups, takeBackup } from '../../src/store/backup.ts'
import { bestGood } from '../../src/store/integrity.ts'
import { openConnection, openStore, storeOn } from '../../src/store/node.ts'
import { restore } from '../../src/store/restore.ts'
import { CHEAP, signInAs } from '../support/people.ts'
import { testYard } from '../support/yard-app.ts'
import { add, inspection, intake } from './helpers.ts'

const CLI = fileURLToPath(new URL('../../src/bin.mjs', import.meta.url))
let folder = ''
let file = ''
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'resettle-safe-'))
  file = join(folder, 'resettle.db')
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

const AT = new Date('2026-06-01T04:00:00.000Z')
const nothing = (): undefined => undefined

describe('a backup', () => {
  test('is one whole file, named by its moment, for its owner’s eyes only', async () => {
    const connection = openConnection(file)
    add(storeOn(connection), intake('A-1'))
    const taken = await takeBackup(connection, backupFolder(file), AT)
    expect(taken).toMatchObject({ name: 'resettle-2026-06-01T04-00-00.000Z.sqlite', at: AT.toISOString() })
    expect(readdirSync(backupFolder(file))).toEqual([taken.name])
    expect(statSync(taken.file).mode & 0o077).toBe(0)
    const copy = openStore(taken.file, { migrate: false })
    expect(copy.verify()).toMatchObject({ ok: true, entries: 1 })
    copy.close()
    connection.raw.close()
  })

  test('holds every entry that was acknowledged before it began, taken while others write', async () => {
    const connection = openConnection(file)
    const store = storeOn(connection)
    add(store, ...Array.from({ length: 60 }, (_, i) => intake(`A-${i}`)))
    const before = store.changes({ limit: 1 })[0]?.seq ?? 0
    let writing = true
    const writer = (async () => {
      for (let i = 0; writing; i++) {
        add(store, inspection(`A-${i % 60}`, '2026-05-20'))
        await new Promise((go) => setImmediate(go))
      }
    })()
    const taken = await takeBackup(connection, backupFolder(file), AT)
    writing = false
    await writer
    const copy = openStore(taken.file, { migrate: false })
    expect(copy.verify()).toMatchObject({ ok: true, problems: [] })
    expect(copy.changes({ limit: 1 })[0]?.seq).toBeGreaterThanOrEqual(before)
    expect(store.changes({ limit: 1 })[0]?.seq).toBeGreaterThan(before)
    copy.close()
    connection.raw.close()
  })

  test('has its name only once it is proved, and one that is not whole never', async () => {
    const connection = openConnection(file)
    add(storeOn(connection), intake('A-1'))
    const seen: string[][] = []
    const taking = (problem: string | null) =>
      takeBackup(connection, backupFolder(file), AT, async (copy) => {
        seen.push(listBackups(backupFolder(file)).map((b) => b.name))
        // What is proved is the copy itself, with everything in it.
        expect(backupProblem(copy)).toBeNull()
        return problem
      })
    await expect(taking('a page is missing')).rejects.toThrow('a page is missing')
    expect(readdirSync(backupFolder(file))).toEqual([])
    const { name } = await taking(null)
    expect(seen).toEqual([[], []])
    expect(readdirSync(backupFolder(file))).toEqual([name])
    connection.raw.close()
  })

  test('that cannot be written leaves nothing behind', async () => {
    const connection = openConnection(file)
    writeFileSync(join(folder, 'backups'), 'a file where the folder should be')
    await expect(takeBackup(connection, backupFolder(file), AT)).rejects.toThrow()
    connection.raw.close()
  })

  test('whose photos cannot be copied is none: it is tried again, and taken with them when there is room', async () => {
    const services = openServices(file, { clock: () => AT, cost: CHEAP })
    const id = 'a'.repeat(64)
    await services.photos.keep({ id, bytes: new Uint8Array([1, 2, 3]) })
    mkdirSync(backupFolder(file), { recursive: true })
    // As a full disk would: there is no room for photos.
    const room = join(backupFolder(file), 'photos')
    writeFileSync(room, 'a file where the folder should be')
    await services.safekeeping?.ifDue()
    expect(services.safekeeping?.state()).toMatchObject({ backups: [], failed: { at: AT.toISOString() } })
    expect(readdirSync(backupFolder(file))).toEqual(['photos'])
    rmSync(room)
    await services.safekeeping?.ifDue()
    expect(services.safekeeping?.state()).toMatchObject({ backups: [{ at: AT.toISOString() }], failed: null })
    expect(readdirSync(room)).toEqual([`${id}.jpg`])
    services.close()
  })

  test('that was damaged is passed over for an older one that is whole', async () => {
    const connection = openConnection(file)
    add(storeOn(connection), intake('A-1'))
    const old = await takeBackup(connection, backupFolder(file), AT)
    const cut = await takeBackup(connection, backupFolder(file), new Date('2026-06-02T04:00:00Z'))
    const junk = await takeBackup(connection, backupFolder(file), new Date('2026-06-03T04:00:00Z'))
    truncateSync(cut.file, 8192)
    writeFileSync(junk.file, 'not a database')
    expect(backupProblem(cut.file)).not.toBeNull()
    expect(backupProblem(junk.file)).not.toBeNull()
    expect(bestGood(backupFolder(file))?.name).toBe(old.name)
    connection.raw.close()
  })
})

describe('the daily round', () => {
  test('takes one a day, one more after a change of the schema, and thins out', async () => {
    let now = new Date('2026-06-01T04:00:00Z')
    const services = openServices(file, { clock: () => now, cost: CHEAP })
    services.store.settings.set('timeZone', 'UTC')
    const keeping = services.safekeeping
    if (keeping === null) throw new Error('no safekeeping')
    for (let hour = 0; hour < 24 * 60; hour += 12) {
      now = new Date(Date.UTC(2026, 5, 1) + hour * 3_600_000)
      await keeping.ifDue()
    }
    const { backups, failed } = keeping.state()
    expect(failed).toBeNull()
    expect(backups[0]?.at.slice(0, 10)).toBe('2026-07-30')
    expect(backups).toHaveLength(7 + 3 + 1)
    // As after an update that brought a migration: the newest backup is of the schema before.
    const newest = backups[0]
    if (newest === undefined) throw new Error('no backup')
    copyFileSync(fileURLToPath(new URL('./fixtures/0000_journal.db', import.meta.url)), newest.file)
    await keeping.ifDue()
    // The first of the day stays: it may hold what the second has lost.
    expect(keeping.state().backups.filter((b) => b.at.startsWith('2026-07-30'))).toHaveLength(2)
    expect(keeping.state().backups[0]?.name).not.toBe(newest.name)
    services.close()
  })

  test('goes on when the clock is set back', async () => {
    let now = new Date('2027-06-01T04:00:00Z')
    const services = openServices(file, { clock: () => now, cost: CHEAP })
    await services.safekeeping?.ifDue()
    now = new Date('2026-06-01T04:00:00Z')
    await services.safekeeping?.ifDue()
    await services.safekeeping?.ifDue()
    expect(services.safekeeping?.state().backups.map((b) => b.at.slice(0, 4))).toEqual(['2027', '2026'])
    services.close()
  })

  test('a failure is told on the page, as is having none', async () => {
    const yard = testYard({ file })
    const page = async (): Promise<string> => (await yard.ask('operator', '/data')).text()
    expect(await page()).toContain('There is no backup')
    writeFileSync(join(folder, 'backups'), 'in the way')
    expect((await yard.post('operator', '/data/backup', {})).status).toBe(422)
    expect(await page()).toContain('The last attempt failed')
    rmSync(join(folder, 'backups'))
    expect((await yard.post('operator', '/data/backup', {})).status).toBe(303)
    const good = await page()
    expect(good).toContain('Mon 1 Jun, 12:00')
    expect(good).not.toMatch(/There is no backup|attempt failed/)
    yard.at('2026-06-04T12:00:00Z')
    expect(await page()).toContain('The last backup is 3 days old')
    yard.services.close()
  })
})

describe('going back to a backup', () => {
  const made = async (): Promise<string> => {
    const services = openServices(file, { cost: CHEAP })
    add(services.store, intake('A-1'))
    await signInAs(services.people, { name: 'Odalys', role: 'operator' })
    const connection = openConnection(file)
    const taken = await takeBackup(connection, backupFolder(file), AT)
    connection.raw.close()
    add(services.store, intake('A-2'))
    services.close()
    return taken.file
  }

  test('is refused over a database unless told so, and then keeps what was there', async () => {
    const backup = await made()
    const options = { now: AT, prepare: nothing }
    expect(() => restore(backup, file, { ...options, replace: false })).toThrow('say --replace')
    const done = restore(backup, file, { ...options, replace: true })
    expect(done).toMatchObject({ entries: 1, colonies: 1 })
    const [now, kept] = [openStore(file), openStore(done.kept ?? '', { migrate: false })]
    expect(now.colonies().map((c) => c.tag)).toEqual(['A-1'])
    expect(kept.colonies().map((c) => c.tag)).toEqual(['A-1', 'A-2'])
    now.close()
    kept.close()
  })

  test('is refused while the server has the book open', async () => {
    const backup = await made()
    const services = openServices(file)
    expect(() => restore(backup, file, { replace: true, now: AT, prepare: nothing })).toThrow('is in use')
    expect(services.store.colonies()).toHaveLength(2)
    services.close()
  })

  test('is refused for a file that is not whole, changing nothing', async () => {
    const backup = await made()
    const before = readFileSync(file)
    truncateSync(backup, 8192)
    expect(() => restore(backup, file, { replace: true, now: AT, prepare: nothing })).toThrow('is not whole')
    expect(readFileSync(file).equals(before)).toBe(true)
  })

  test('takes a backup of any earlier schema', () => {
    const old = fileURLToPath(new URL('./fixtures/0000_journal.db', import.meta.url))
    const done = restore(old, file, { replace: false, now: AT, prepare: nothing })
    expect(done.kept).toBeNull()
    expect(done.entries).toBeGreaterThan(5)
  })
})

describe('at the terminal', () => {
  let said = { out: '', err: '' }
  beforeEach(() => {
    vi.stubEnv('RESETTLE_DATA', folder)
    said = { out: '', err: '' }
    vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
      said.out += text
      return true
    })
    vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
      said.err += text
      return true
    })
  })
  afterEach(() => {
    vi.restoreAllMocks()
    vi.unstubAllEnvs()
  })

  test('an operator who is locked out makes an account, backs up, and goes back; old sessions stay dead', async () => {
    const added = spawnSync(process.execPath, [CLI, 'person', 'add', 'Odalys', '--role', 'operator'], {
      input: 'slow lantern over gravel\n',
      encoding: 'utf8',
    })
    expect([added.status, added.stdout]).toEqual([0, 'Odalys can sign in as operator\n'])
    const services = openServices(file)
    const session = services.people.sessions.open(services.people.accounts.byName('Odalys')?.id ?? '')
    services.close()

    expect(await backupCommand([])).toBe(0)
    const backup = said.out.trim()
    expect(existsSync(backup)).toBe(true)
    expect(await restoreCommand([backup])).toBe(2)
    expect(said.err).toContain('say --replace')
    expect(await restoreCommand([backup, '--replace'])).toBe(0)
    const after = openServices(file)
    expect(after.people.accounts.byName('Odalys')?.state).toBe('active')
    expect(after.people.sessions.holder(session)).toBeNull()
    after.close()
    expect(listBackups(backupFolder(file))).toHaveLength(1)
  })

  test('accounts are invited, listed, given roles and closed; what is wrong is said and changes nothing', async () => {
    expect(await personCommand(['invite', 'Bram', '--role', 'beekeeper'])).toBe(0)
    expect(said.out).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/invite\/[\w-]{43}\nworks once, until /)
    for (const wrong of [
      ['invite', 'Bram', '--role', 'helper'],
      ['invite', 'Rowan', '--role', 'king'],
      ['role', 'Nobody', 'helper'],
      ['dance'],
      ['close'],
    ])
      expect(await personCommand(wrong), wrong.join(' ')).toBe(2)
    expect(await personCommand(['role', 'bram', 'helper'])).toBe(0)
    expect(await personCommand(['close', 'Bram'])).toBe(0)
    said.out = ''
    expect(await personCommand(['list'])).toBe(0)
    expect(said.out).toBe('Bram\thelper\tclosed\t0 signed in\n')
  })
})
