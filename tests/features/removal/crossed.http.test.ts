/** What somebody else said meanwhile stays on a sheet that a phone sends, whoever saved it last. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import { readNotes } from '../../../src/features/removal/notes-read.ts'
import { placeOf } from '../../../src/features/removal/place.ts'
import { jobsOf, withFinds } from '../../../src/phone/jobs.ts'
import { acknowledgeSheet, keepSheets } from '../../../src/phone/sheet-outbox.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import type { SheetVersion } from '../../../src/store/index.ts'
import { down, good, type Phone, phoneIn, wordsOf } from '../../support/phone.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { DAY, READY, read } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000029'
const PATH = `/removals/${ID}`
let yard: TestYard
beforeEach(() => {
  yard = testYard({ day: DAY })
})
const removals = () => yard.services.store.removals
const last = (): Sheet => removals().get(ID)?.last.sheet ?? READY
const saved = (s: Sheet, savedBy = 'Bram'): void => {
  const stamp = { savedAt: `${DAY}T08:00:00.000Z`, savedBy }
  expect(removals().save(ID, removals().get(ID)?.last.version ?? 0, s, stamp).ok).toBe(true)
}
const sync = async (sheet: Sheet, base: number, over = false) => {
  const answer = await yard.ask('beekeeper', '/removals/sync', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    // Over the version that was read: here the last one.
    body: JSON.stringify({ id: ID, base, over: over && removals().get(ID)?.last.version, sheet }),
  })
  return { status: answer.status, text: await answer.text() }
}
const go: Sheet['decision'] = { is: 'go', by: 'Bram', on: DAY, at: '10:00', unmet: [], ...placeOf(READY) }
const job = (more: Partial<Sheet['job']>, s = READY): Sheet => ({ ...s, job: { ...s.job, ...more } })
const site = (more: Partial<Sheet['site']>): Sheet => ({ ...READY, site: { ...READY.site, ...more } })

const SAID: [string, Sheet, Sheet, Partial<Sheet>][] = [
  ['wasps', job({ bees: 'wasps' }), job({ bees: 'nest' }), { job: { bees: 'wasps' } }],
  ['temper', site({ temper: 'unknown' }), site({ temper: 3 }), { site: { temper: 'unknown' } }],
  ['depth', site({ sheathingMm: 6 }), site({ sheathingMm: 25 }), { site: { sheathingMm: 6 } }],
  ['height', site({ heightM: 9 }), site({ heightM: 3 }), { site: { heightM: 9 } }],
  [
    'words',
    job({ told: 'Gas meter under it' }),
    read(job({ told: 'Honey drips' })),
    { job: { told: 'Gas meter under it. Honey drips' } },
  ],
]

describe.each(SAID)(
  '%s, said by a colleague, and otherwise on a phone that had not read it',
  (_, hers, mine, stays) => {
    beforeEach(() => {
      saved(READY)
      saved(hers, 'Odalys')
    })

    test('is said, although somebody saved another line of the sheet since', async () => {
      saved({ ...last(), job: { ...last().job, wayIn: 'Gate' } })
      const answer = await sync({ ...mine, decision: go }, 1)
      expect(answer.status).toBe(200)
      expect(answer.text).toContain('saved something else meanwhile')
    })

    test('stays, put over: the careful answer of the two', async () => {
      expect((await sync({ ...mine, decision: go }, 1, true)).status).toBe(200)
      expect(last()).toMatchObject(stays)
      expect(last().decision?.fell).toBeDefined()
    })
  },
)

test('of one person on two devices the later line is taken without a question', async () => {
  saved(READY)
  saved(job({ wayIn: 'Gate' }))
  expect((await sync(job({ wayIn: 'Side door' }), 1)).status).toBe(200)
})

describe('a phone whose words for the way in cross a colleague’s, whose “go” stands', () => {
  const hers: Sheet['decision'] = { ...go, by: 'Odalys', at: '11:50' }
  const clashing = job({ wayIn: 'Back' })
  const found = (more: Partial<Sheet['site']>): Sheet => ({
    ...clashing,
    site: { ...clashing.site, ...more },
  })
  beforeEach(() => {
    saved(READY)
    saved({ ...job({ wayIn: 'Front' }), decision: hers }, 'Odalys')
  })

  test.each<[string, Sheet, Partial<Sheet['site']>]>([
    ['gas', found({ behind: ['insulation', 'gas'] }), { behind: expect.arrayContaining(['gas']) }],
    ['asbestos', found({ hazards: ['asbestos'] }), { hazards: ['asbestos'] }],
    ['somebody allergic', found({ bystanders: ['allergic'] }), { bystanders: ['allergic'] }],
    ['wires near', found({ nearWires: true }), { nearWires: true }],
  ])('%s that it found is on the sheet all the same, and the “go” has fallen', async (_, sheet, site) => {
    expect((await sync(sheet, 1)).status).toBe(200)
    expect(last().site).toMatchObject(site)
    expect(last().job.wayIn).toContain('Front')
    expect(last().decision).toMatchObject({ by: 'Odalys', fell: { by: 'Bram' } })
  })

  test.each(['refuse', 'wait'] as const)('a “%s” with its reason stands for the “go”', async (is) => {
    const reason = 'Smells of gas in the hall'
    const mine = { ...go, is, reason }
    expect((await sync({ ...clashing, decision: mine }, 1)).status).toBe(200)
    expect(last().decision).toMatchObject({ is, by: 'Bram', reason })
  })

  test('in other words for it, which are read before “go”, takes the “go” away', async () => {
    expect((await sync(clashing, 1)).status).toBe(200)
    expect(last().job.wayIn, 'the words of both').toBe('Front. Back')
    expect(last().decision).toMatchObject({ by: 'Odalys', fell: { by: 'Bram' } })
  })
})

test('a phone whose sheet is refused over an e-mail brings no version where it found nothing', async () => {
  saved(READY)
  saved({ ...job({ email: 'hers@example.org' }), decision: { ...go, by: 'Odalys' } }, 'Odalys')
  const before = removals().get(ID)?.last.version
  expect((await sync(job({ email: 'mine@example.org' }), 1)).status).toBe(422)
  expect(removals().get(ID)?.last.version).toBe(before)
  expect(last().decision?.fell).toBeUndefined()
})

describe('on a phone', () => {
  let phone: Phone
  beforeEach(async () => {
    saved({ ...READY, job: { ...READY.job, plannedOn: DAY } })
    phone = phoneIn(yard, 'beekeeper')
    phone.at(`${DAY}T12:00:00Z`)
    await phone.syncService.send()
    phone.network(down)
  })
  const note = (told: string) =>
    phone.post(`${PATH}/job`, {
      version: '1',
      name: 'Ottoline Fairweather',
      address: '4 Invented Row',
      plannedOn: DAY,
      what: 'wall',
      access: 'ladder',
      heightM: '13',
      sprayed: 'no',
      bystanders: 'none',
      told,
    })

  test('what the server put to a sheet stays under what was written while it answered', async () => {
    await note('Gate at the back')
    const db = await phone.database()
    const mine = (await db.get('sheets', ID))?.mine
    const sent = mine?.sheet ?? READY
    // While the answer is under way a “go” is tapped; the answer brings what a colleague took off.
    const hers: Sheet = { ...sent, check: { ...sent.check, done: ['kit'] } }
    const tx = await db.get('sheets', ID)
    if (tx?.mine) await db.put('sheets', { ...tx, mine: { ...tx.mine, sheet: { ...sent, decision: go } } })
    await acknowledgeSheet(
      db,
      { id: ID, sent, now: `${DAY}T12:00:00Z` },
      { version: 3, sheet: hers, said: [] },
    )
    const after = (await db.get('sheets', ID))?.mine
    expect(after).toMatchObject({ base: 3, sheet: { check: { done: ['kit'] }, decision: { is: 'go' } } })
  })

  test('no “go” stands on a sheet that the yard has not taken', async () => {
    await note('Honey drips')
    saved({ ...last(), job: { ...last().job, told: 'Meter beside it' } }, 'Odalys')
    phone.network((path, reach) =>
      path.startsWith('/removals/sync') ? good(path, reach) : down(path, reach),
    )
    await phone.syncService.send()
    const db = await phone.database()
    const waits = await db.get('sheets', ID)
    if (waits?.mine)
      await db.put('sheets', {
        ...waits,
        mine: {
          ...waits.mine,
          refused: [{ field: '', message: 'x' }],
          sheet: { ...waits.mine.sheet, decision: { ...go, at: '11:50' } },
        },
      })
    const opened = await phone.post(`${PATH}/work`, {
      version: /name="version" value="([\d.]+)"/.exec(await phone.open(`${PATH}/work`))?.[1] ?? '',
      on: DAY,
      outdoorC: '75',
      water: 'yes',
      now: 'openedAt',
    })
    expect(opened.status).toBe(422)
    expect(wordsOf(opened.html)).toContain('waits for “go”')
  })
})

describe('what a phone shows of a sheet with its own “go”', () => {
  const owner = { id: 'x', name: 'Bram' }
  const said = (sheet: Sheet, version: number, savedBy: string): SheetVersion => ({
    id: ID,
    version,
    savedAt: `${DAY}T11:00:00.000Z`,
    savedBy,
    sheet,
  })
  const mine = {
    base: 1,
    sheet: { ...READY, decision: go },
    owner,
    keptAt: `${DAY}T11:00:00.000Z`,
    tries: 1,
    refused: null,
    over: false,
  }
  const shown = (kept: Parameters<typeof jobsOf>[0][number]) =>
    jobsOf([kept], () => false).get(ID)?.last.sheet

  test('it stands where nothing was refused', () => {
    expect(shown({ id: ID, theirs: null, mine })?.decision?.fell).toBeUndefined()
  })

  test('it does not come back by one more tap on a sheet that was refused', async () => {
    const phone = phoneIn(yard, 'beekeeper')
    const db = await phone.database()
    await db.put('sheets', {
      id: ID,
      theirs: null,
      mine: { ...mine, refused: [{ field: '', message: 'x' }] },
    })
    const written = { ...mine.sheet, job: { ...mine.sheet.job, wayIn: 'Gate' } }
    await keepSheets(db, [{ id: ID, base: 1, version: said(written, 3, 'Bram') }], owner)
    const kept = await db.get('sheets', ID)
    expect(kept?.mine?.refused, 'what it was refused for stays to be read').toHaveLength(1)
    expect(kept?.mine?.unaccepted).toBe(true)
    expect(kept === undefined ? undefined : shown(kept)?.decision?.fell).toBeDefined()
  })

  test('what somebody else tapped on the same phone is on the page, and no “go” of the yard’s stands over it', () => {
    const theirs = { ...said({ ...READY, decision: { ...go, by: 'Odalys' } }, 1, 'Odalys'), colonies: [] }
    const gas = { ...mine, sheet: { ...READY, site: { ...READY.site, behind: ['gas' as const] } } }
    const seen = shown(withFinds({ id: ID, theirs, mine: null, aside: [gas] }))
    expect(seen?.site.behind).toContain('gas')
    expect(seen?.decision?.fell).toMatchObject({ by: 'Bram' })
  })

  test('a colleague’s refusal that is on the phone holds it, though it was opened', () => {
    const refusal = { ...go, is: 'refuse' as const, by: 'Odalys', reason: 'Wires in the wall' }
    const theirs = { ...said({ ...READY, decision: refusal }, 2, 'Odalys'), colonies: [] }
    const opened = { ...mine, sheet: { ...mine.sheet, work: { on: DAY, openedAt: '10:10' } } }
    expect(shown({ id: ID, theirs, mine: opened })?.decision).toEqual(refusal)
  })

  test('a refusal that was not read stands in place of a “go”, until it is answered', () => {
    const refusal = { ...go, is: 'refuse' as const, by: 'Odalys', reason: 'Wires in the wall' }
    const theirs = { ...said({ ...READY, decision: refusal }, 2, 'Odalys'), colonies: [] }
    expect(shown({ id: ID, theirs, mine })?.decision).toEqual(refusal)
    const { by, on, at } = refusal
    const over = { ...mine.sheet, decision: { ...go, over: { by, on, ...(at === undefined ? {} : { at }) } } }
    expect(shown({ id: ID, theirs, mine: { ...mine, sheet: over } })?.decision).toMatchObject({ is: 'go' })
  })
})

test('a “go” over a refusal that was read is no clash', async () => {
  const refusal = {
    ...go,
    is: 'refuse' as const,
    by: 'Odalys',
    at: '09:00',
    reason: 'The stairs are burnt through',
  }
  saved(READY, 'Odalys')
  saved({ ...READY, decision: refusal }, 'Odalys')
  const over = { by: 'Odalys', on: DAY, at: '09:00', reason: refusal.reason }
  const mine = { ...go, reason: 'Boards were laid over them this morning', over }
  const done = [...(READY.check.done ?? []), readNotes({ ...READY, decision: refusal })]
  const check = { ...READY.check, done, tickedAt: '09:55' }
  expect((await sync({ ...READY, check, decision: mine }, 1)).status).toBe(200)
  expect(last().decision).toMatchObject({ is: 'go', over })
})

test('whoever has opened one job decides no “go” at another by a phone either', async () => {
  const other = '019e0000-0000-7000-8000-000000000030'
  const stamp = { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Bram' }
  const open: Sheet = { ...READY, decision: go, work: { on: DAY, openedAt: '10:05' } }
  expect(removals().save(other, 0, { ...open, job: { ...open.job, address: '9 Larch St' } }, stamp).ok).toBe(
    true,
  )
  saved(READY, 'Odalys')
  expect((await sync({ ...READY, decision: go }, 1)).status).toBe(200)
  expect(last().decision).toMatchObject({ is: 'go', fell: { by: 'Bram' } })
})
