/** Short fields are read before “go” like any note, unless they say a plain place, an address, a name or a number. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import { readNotes } from '../../../src/features/removal/notes-read.ts'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { formIn, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { oneSheet } from './one-sheet.ts'
import { but, DAY, here, READY, read, swarmAt } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000071'
const OTHER = ID.replace(/71$/, '72')
const PATH = `/removals/${ID}`
let yard: Yard
const { sheet, saved, save, words } = oneSheet(() => yard, ID, '08:00')
const { job, site, agreement } = READY
const signedBy = (name: string): Sheet['agreement'] =>
  agreement.signature === undefined
    ? agreement
    : { ...agreement, signature: { ...agreement.signature, name } }
const go = async (...more: string[]) => {
  const typed = formIn((await yard.get(`${PATH}/check`)).text)
  return save('check', { done: [...(typed.done ?? []), ...more], is: 'go' })
}
const GO = { is: 'go' as const, by: 'Ines', on: DAY, at: '08:00', unmet: [] }

beforeEach(async () => {
  yard = await yardOn(DAY)
  yard.setDay(DAY, '08:00')
})

describe('read before “go”', () => {
  test.each<[string, Partial<Sheet>]>([
    ['under the weatherhead', { site: { ...site, where: 'under the weatherhead' } }],
    ['grey corrugated sheet', { site: { ...site, surface: 'grey corrugated sheet' } }],
    ['6 Tor Road, beware of the dog', { job: { ...job, address: '6 Tor Road, beware of the dog' } }],
    ['Ott Pray (deaf, on oxygen)', { job: { ...job, name: 'Ott Pray (deaf, on oxygen)' } }],
    ['569 3001 (Dad swells up)', { job: { ...job, phone: '569 3001 (Dad swells up)' } }],
    ['ask for Jim, he swells up', { agreement: { ...agreement, invoice: 'ask for Jim, he swells up' } }],
    ['Hal Ivory, for a son who swells up', { agreement: signedBy('Hal Ivory, for a son who swells up') }],
  ])('“%s”', async (said, change) => {
    saved(but(change))
    const barred = await go()
    expect(barred.status).toBe(422)
    expect(wordsOf(barred.text)).toContain(`Read: all it says of danger is tapped “${said}”`)
    expect((await go(readNotes(sheet()))).status).toBe(303)
  })

  test('what is plain costs no tap', async () => {
    saved(but({ site: { ...site, surface: 'cedar siding' } }))
    expect((await yard.get(`${PATH}/check`)).text).not.toContain('Read: all it says')
    expect((await go()).status).toBe(303)
  })

  test('on another sheet of the house too; its own name in other letters is none', async () => {
    saved(but({ job: { ...job, name: 'Ott Pray, on oxygen' } }), 'Bram', { of: OTHER })
    saved(but({ job: { ...job, name: 'ott pray, on oxygen' } }), 'Bram', { of: OTHER.replace(/2$/, '3') })
    saved(READY)
    expect(await words(`${PATH}/check`)).toContain('“Ott Pray, on oxygen”')
    saved({ ...sheet(), job: { ...job, name: 'Ott Pray, on oxygen' } })
    expect(await words(`${PATH}/check`)).not.toContain('Read: the sheet of')
  })

  test.each(['Ladybird preschool', 'Tiny Toes crèche', 'The old Nursery', 'Little Acorns daycare'])(
    'of “%s” children are asked about',
    async (name) => {
      saved(but({ job: { ...job, name } }))
      expect(await words(`${PATH}/check`)).toContain('children')
      expect(wordsOf((await go(readNotes(sheet()))).text)).toContain('Written, and not tapped: children')
    },
  )
})

test('what is longer than a sentence is shown whole', async () => {
  const where = 'Left of the porch. Over the covered well'
  const surface = 'Boards. A shaft behind them'
  saved({ ...read(but({ site: { ...site, where, surface } })), decision: GO })
  const page = (await yard.get(PATH)).text
  const short = wordsOf(/<h2>Finding and opening<\/h2>.*?<\/summary>/s.exec(page)?.[0] ?? '')
  expect(short).toContain(where)
  saved({ ...sheet(), site: { ...sheet().site, where: 'left of the porch' } })
  const next = (await yard.get(PATH)).text
  expect(wordsOf(/<h2>Finding and opening<\/h2>.*?<\/summary>/s.exec(next)?.[0] ?? '')).not.toContain('well')
})

describe('taken out before anybody read it', () => {
  test.each([
    ['where', 'left of the porch, above the open shaft', 'left of the porch'],
    ['surface', 'boards that hum', ''],
  ])('%s stays a line', async (field, was, is) => {
    saved(but({ site: { ...site, [field]: was } }))
    yard.setDay(DAY, '09:30')
    expect((await save('site', { [field]: is })).status).toBe(303)
    expect(await words(`${PATH}/check`)).toContain(`“Was written: ${was}”`)
  })

  test('an address and a name too, but not in other letters', async () => {
    saved(but({ job: { ...job, address: '4 invented row', name: 'Mr Hart, on oxygen' } }))
    yard.setDay(DAY, '09:30')
    expect((await save('job', { address: '4 Invented Row', name: 'Mr Hart' })).status).toBe(303)
    const lines = (sheet().site.noted ?? []).filter((n) => n.what === 'note')
    expect(lines.map((n) => n.words)).toEqual(['Mr Hart, on oxygen'])
  })
})

describe('typed in the very press', () => {
  const TINGLES = 'knife tingled in my hand as I cut'
  const READS = { outdoorC: '76', water: 'yes' }
  const since = `Since it was opened (Ines, Fri 12 Jun, 09:00): “${TINGLES}”`
  beforeEach(() => {
    const told = { ...job, told: 'Honey drips' }
    const s = read(but({ job: told, check: { ...READY.check, tickedAt: '08:00' } }))
    saved({ ...s, decision: { ...GO, reason: 'All read', ...placeOf(s) } })
    yard.setDay(DAY, '09:00')
  })

  test('that opens, it stands in the head, and nothing that stood before', async () => {
    expect((await save('work', { ...READS, note: TINGLES, now: 'openedAt' })).status).toBe(303)
    const said = await words()
    expect(said).toContain(since)
    expect(said.split('Since it was opened')).toHaveLength(2)
  })

  test('that boxes, likewise', async () => {
    expect((await save('work', { ...READS, now: 'openedAt' })).status).toBe(303)
    expect((await save('work', { note: TINGLES, now: 'boxedAt' })).status).toBe(303)
    expect(await words()).toContain(since)
  })

  test('that goes on on another day, likewise', async () => {
    expect((await save('work', { ...READS, now: 'openedAt' })).status).toBe(303)
    yard.setDay('2026-06-13', '09:00')
    const s = read({ ...sheet(), decision: undefined as never })
    const { decision: _, ...rest } = s
    const day = '2026-06-13'
    saved(
      {
        ...rest,
        check: { ...s.check, on: day, doneOn: day, tickedAt: '08:40' },
        site: { ...s.site, lookedAt: { ...s.site.lookedAt, bystanders: { ...placeOf(s), on: day } } },
        decision: { ...GO, on: day, at: '08:40', ...placeOf(s) },
      },
      'Ines',
    )
    const opened = await save('work', { ...READS, note: TINGLES, now: 'openedAt' })
    expect([opened.status, opened.status === 303 ? '' : wordsOf(opened.text)]).toEqual([303, ''])
    expect(await words()).toContain(`“${TINGLES}”`)
    expect((await words()).split('Since it was opened')).toHaveLength(2)
  })

  test('why it had no “go” is said by itself', async () => {
    const { decision: _, ...rest } = sheet()
    saved(rest)
    const why = { 'withoutGo.why': 'could-not-wait', 'withoutGo.words': 'boards came down' }
    expect((await save('work', { openedAt: '08:50', ...READS, ...why })).status).toBe(303)
    const said = await words()
    expect(said).toContain('boards came down')
    expect(said).not.toContain('Since it was opened')
  })
})

describe('a nest is found', () => {
  const lines = [{ what: 'nest', is: 'found', by: 'Bram', on: DAY, at: '08:04', writtenAt: '' }]
  const fell = { by: 'Ines', on: DAY, at: '08:10' }
  test('by whoever says it of a swarm', async () => {
    const swarm = swarmAt('on a branch')
    const noted = lines.map((n) => ({ ...n, writtenAt: `${DAY}T08:04:00.000Z` })) as Sheet['site']['noted']
    const decision = { ...GO, fell, ...placeOf(swarm) }
    saved({ ...swarm, site: { ...swarm.site, type: 'wall', noted }, decision })
    expect(await words()).toContain('this was found: a nest that is opened (Bram, 08:04)')
  })

  test('and not where “go” was of a wall', async () => {
    const noted = lines.map((n) => ({ ...n, writtenAt: `${DAY}T08:04:00.000Z` })) as Sheet['site']['noted']
    saved(here({ ...READY, site: { ...site, noted }, decision: { ...GO, fell, ...placeOf(READY) } }))
    const said = await words()
    expect(said).toContain('before Ines changed something')
    expect(said).not.toContain('a nest that is opened')
  })
})
