/** Erased means erased: not a byte of the customer is left in the file, its log, the pages or the folder of photos. Invented. */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { v7 as newId } from 'uuid'
import { afterEach, beforeEach, expect, test } from 'vitest'
import type { EntryId } from '../../../src/ids.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { but, DAY } from './ready.ts'

const STAMP = { savedAt: `${DAY}T09:00:00.000Z`, savedBy: 'Bram' }
const PHOTO = 'ab'.repeat(32)
const SHARED = 'cd'.repeat(32)

let folder: string
let yard: TestYard
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'erase-'))
  yard = testYard({ day: DAY, file: join(folder, 'yard.sqlite') })
})
afterEach(() => {
  yard.services.store.close()
  rmSync(folder, { recursive: true, force: true })
})

/** Everything in the folder, as one text. */
const bytes = (of = folder): string =>
  readdirSync(of, { withFileTypes: true })
    .map((f) => (f.isDirectory() ? bytes(join(of, f.name)) : readFileSync(join(of, f.name), 'latin1')))
    .join('')

const PRIVATE = ['Zephyrine Quillfeather', '555 0199', 'zephyrine@example.test', '77 Invented Row']
const sheet: Sheet = but({
  job: {
    name: 'Zephyrine Quillfeather',
    phone: '555 0199',
    email: 'zephyrine@example.test',
    address: '77 Invented Row',
    plannedOn: DAY,
    photos: [PHOTO, SHARED],
  },
})

const intake = (id: string, tag: string, more: object = {}) => ({
  id,
  colony: tag,
  kind: 'intake',
  on: DAY,
  by: 'Bram',
  yard: 'Quarry yard',
  queen: 'caged',
  removal: { type: 'wall', site: 'Zephyrine Quillfeather, 77 Invented Row' },
  ...more,
})

test('erasing takes name, address, telephone and mail out of file, log, colonies, letters and photos', async () => {
  const { store, photos } = yard.services
  for (const id of [PHOTO, SHARED]) photos.keepNow({ id, bytes: new Uint8Array([1, 2, 3]) })
  const [id, second] = [newId(), newId()]
  let version = 0
  // Many versions, so that pages are freed and filled again.
  for (const hours of [1, 2, 3, 4, 5, 6, 7, 8]) {
    const saved = store.removals.save(
      id,
      version,
      { ...sheet, agreement: { ...sheet.agreement, hours } },
      STAMP,
    )
    if (saved.ok) version = saved.version
  }
  const entries = [
    intake(id, 'W-1'),
    intake(second, 'W-2', { photos: [SHARED] }),
    intake(newId(), 'W-1', { replaces: id, queen: 'loose' }),
  ]
  for (const e of entries)
    expect(store.append([e], { today: DAY, recordedAt: STAMP.savedAt, recordedBy: 'Bram' }).ok).toBe(true)
  store.removals.link(id, second, STAMP)
  store.after.letters.add({
    id: newId(),
    colony: id,
    digest: 'x',
    asOf: DAY,
    words: 'Dear Zephyrine Quillfeather',
    createdAt: STAMP.savedAt,
    createdBy: 'Bram',
    expiresAt: '2027-01-01T00:00:00.000Z',
  })
  // What the journal would not have: the box's first intake sent once more, and one of another box of the same place.
  const sent = { person: 'Teuila', sentBy: 'Teuila', receivedAt: STAMP.savedAt, tag: 'W-1', problems: [] }
  const others = [id, newId()].map((own) => ({ ...sent, id: own as EntryId, entry: intake(own, 'W-9') }))
  const elsewhere = newId() as EntryId
  store.refused.keep([
    ...others,
    {
      ...sent,
      id: elsewhere,
      entry: intake(elsewhere, 'W-8', { removal: { type: 'wall', site: 'The mill' } }),
    },
  ])
  for (const said of PRIVATE) expect(bytes()).toContain(said)
  expect(await (await yard.ask('operator', '/colony/W-2')).text()).toContain('Quillfeather')

  const page = await (await yard.ask('operator', `/removals/${id}/erase`)).text()
  expect(page).toMatch(/W-1[\s\S]*W-2/)
  const answer = await yard.post('operator', `/removals/${id}/erase`, {})
  expect(answer.headers.get('location')).toBe('/removals?erased=clean')

  for (const said of PRIVATE) expect(bytes()).not.toContain(said)
  expect(store.refused.count()).toBe(3)
  expect(JSON.stringify(store.refused.open())).toContain('The mill')
  for (const path of ['/colony/W-1', '/colony/W-2', '/removals', '/changes', '/letters', '/refused'])
    expect(await (await yard.ask('operator', path)).text()).not.toContain('Quillfeather')
  expect(store.colony('W-1')?.history.intake.queen).toBe('loose')
  expect(await photos.find(PHOTO)).toBeNull()
  expect(await photos.find(SHARED)).not.toBeNull()
  expect(store.verify().problems).toEqual([])
})

test('what phones could not hand in loses the customer too, settled or not; another customer’s stays', () => {
  const { store } = yard.services
  const [id, never, other, corrected] = [newId(), newId(), newId(), newId()]
  store.removals.save(id, 0, sheet, STAMP)
  store.append([intake(id, 'W-1')], { today: DAY, recordedAt: STAMP.savedAt, recordedBy: 'Bram' })
  const why = [
    { field: 'removal.site', message: 'must be shorter: "Zephyrine Quillfeather, 77 Invented Row"' },
    { field: 'on', message: 'is in the future' },
  ]
  const asked = { person: 'Juno', sentBy: 'Juno', receivedAt: STAMP.savedAt, tag: 'W-1' }
  const site = (text: string) => ({ removal: { type: 'wall', site: text } })
  store.refused.keep(
    [
      intake(never, 'W-7', site('ZEPHYRINE Quillfeather')),
      intake(corrected, 'W-1', { replaces: newId(), ...site('At the widow’s house') }),
      { ...intake(other, 'W-8', site('Osric Pellow')), note: 'Strong.' },
    ].map((entry) => ({
      ...asked,
      id: entry.id as EntryId,
      entry,
      problems: entry.id === other ? [] : why,
    })),
  )
  store.refused.settle([never as EntryId], { at: STAMP.savedAt, by: 'Bram' })
  store.removals.erase(id)
  expect(store.clean()).toBe(true)
  for (const said of [...PRIVATE, 'ZEPHYRINE', 'widow']) expect(bytes()).not.toContain(said)
  expect(bytes()).toContain('Osric Pellow')
  const kept = store.refused.everything()
  expect(kept.map((e) => (e.entry as { kind: string }).kind)).toEqual(['intake', 'intake', 'intake'])
  expect(kept.find((e) => e.id === corrected)?.problems).toEqual([why[1]])
})

test('an intake from before sites were kept apart is taken out of the journal itself, which is guarded as before', () => {
  const { store, connection } = yard.services
  const id = newId()
  store.removals.save(id, 0, sheet, STAMP)
  store.append([intake(id, 'W-1')], { today: DAY, recordedAt: STAMP.savedAt, recordedBy: 'Bram' })
  const { raw } = connection
  // As it lay in the journal then.
  const guard = raw
    .prepare(`SELECT sql FROM sqlite_master WHERE name = 'entry_no_update'`)
    .pluck()
    .get() as string
  raw.exec('DROP TRIGGER entry_no_update')
  raw
    .prepare(
      `UPDATE entry SET payload = json_set(payload, '$.removal.site', 'Zephyrine Quillfeather') WHERE id = ?`,
    )
    .run(id)
  raw.exec(guard)
  raw.exec('DELETE FROM site_contact')
  store.removals.erase(id)
  expect(store.clean()).toBe(true)
  expect(bytes()).not.toContain('Quillfeather')
  expect(() => raw.exec(`UPDATE entry SET payload = '{}'`)).toThrow(/append|never|journal/i)
  expect(store.verify().problems).toEqual([])
})

test('an open sheet of the same house keeps what can kill, in words and of nobody', async () => {
  const { removals } = yard.services.store
  const [gas, open, elsewhere] = [newId(), newId(), newId()]
  removals.save(
    gas,
    0,
    { ...sheet, site: { ...sheet.site, behind: ['gas'], bystanders: ['allergic'] } },
    STAMP,
  )
  removals.save(open, 0, { ...sheet, job: { address: '77 Invented Row' } }, STAMP)
  removals.save(elsewhere, 0, { ...sheet, job: { address: '9 Other Lane' } }, STAMP)
  expect((await yard.post('operator', `/removals/${gas}/erase`, {})).status).toBe(303)
  expect(removals.get(open)?.last.sheet.site.behindNote).toBe(
    'Another sheet of this house, erased since, said: gas pipe, somebody allergic.',
  )
  const page = await (await yard.ask('operator', `/removals/${open}/check`)).text()
  for (const what of ['gas', 'allergic']) expect(page).toContain(`name="again.not-here:${what}"`)
  expect(removals.get(elsewhere)?.last.version).toBe(1)
  expect(bytes()).not.toContain('Zephyrine')
})
