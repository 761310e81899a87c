/** What is told of work is work, whatever field it is told in; and what comes to light on it is answered for. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { INTAKE, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { oneSheet } from './one-sheet.ts'
import { DAY, goAt, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000012'
const PATH = `/removals/${ID}`
let yard: Yard
const { last, sheet, saved, words, find, typed: work } = oneSheet(() => yard, ID)
const GO = goAt('11:00')

beforeEach(async () => {
  yard = await yardOn(DAY)
})

describe('work that is told of, where no go stands', () => {
  beforeEach(() => saved(READY))
  const LOOKED = { arrivedAt: '08:00', leftAt: '09:00', method: 'vacuum' }

  test.each([
    ['in a note', { note: 'All out and in the crate, the mother seen' }],
    ['in a note of another language', { note: 'Todo fuera, la reina vista' }],
    ['as their temper', { temper: '3' }],
  ])('%s asks once whether it was opened', async (_, fields) => {
    const asked = await work({ ...LOOKED, ...fields })
    expect(asked.status).toBe(422)
    expect(wordsOf(asked.text)).toContain('Was it opened?')
    expect(asked.text).toContain('value="not-opened"')
    expect((await work({ ...LOOKED, ...fields, 'withoutGo.why': 'not-opened' })).status).toBe(303)
    expect(sheet().work.withoutGo).toBeUndefined()
    expect((await yard.get(`${PATH}/intake`)).to).toBe(`${PATH}/work#now`)
    // Asked once.
    expect((await work({ ...LOOKED, ...fields, leftAt: '09:10' })).status).toBe(303)
  })

  test('is marked where it was', async () => {
    const fields = { ...LOOKED, note: 'All out and in the crate', 'withoutGo.why': 'could-not-wait' }
    expect((await work(fields)).status).toBe(303)
    expect(sheet().work.withoutGo).toMatchObject({ why: 'could-not-wait', on: DAY })
    expect(await words()).toContain('Begun without a “go”')
  })

  test('what kills in the reason is read like a note, and answered for by whoever gave it', async () => {
    const why = { 'withoutGo.why': 'could-not-wait', 'withoutGo.words': 'hissing gas pipe behind the board' }
    expect((await work({ openedAt: '08:00', ...why })).status).toBe(303)
    expect(sheet().work.withoutGo?.unmet.join(' ')).toContain('Written, and not tapped: gas')
    expect(await words(`${PATH}/check`)).toContain('Written, and not tapped: gas')
    expect((await work({ openedAt: '08:00', boxedAt: '09:00' })).status).toBe(303)
  })

  test('“not opened” answers nothing where something is said to be', async () => {
    expect((await work({ ...LOOKED, openedAt: '08:30', 'withoutGo.why': 'not-opened' })).status).toBe(422)
  })

  test('the temperature in a box is that of a box', async () => {
    expect((await work({ ...LOOKED, boxC: '90' })).status).toBe(422)
  })

  test('who came, looked and left is asked nothing', async () => {
    expect((await work(LOOKED)).status).toBe(303)
  })

  test('nor is anybody under a go', async () => {
    saved({ ...sheet(), decision: GO })
    expect((await work({ note: 'Bees on the left side' })).status).toBe(303)
  })
})

test.each(['swarm', 'roof', 'shed'])(
  'a plain intake tapped as %s on the day of an open job asks from which',
  async (type) => {
    saved(READY)
    const box = { ...INTAKE, on: DAY, 'removal.removedOn': DAY, 'removal.type': type }
    const asked = await yard.post('/intake', box)
    expect(asked.status).toBe(422)
    expect(wordsOf(asked.text)).toContain('From which job')
    expect((await yard.post('/intake', { ...box, otherJob: 'yes' })).status).toBe(303)
    // Nothing of that day is open.
    const [colony, on] = ['W-13', '2026-06-11']
    expect(
      (await yard.post('/intake', { ...box, colony, stand: '5', on, 'removal.removedOn': on })).status,
    ).toBe(type === 'swarm' ? 303 : 422)
  },
)

describe('once it is marked', () => {
  const MARK = { openedAt: '08:00', 'withoutGo.why': 'open-already' }
  beforeEach(async () => {
    saved(READY)
    expect((await work(MARK)).status).toBe(303)
    const { site } = sheet()
    saved({ ...sheet(), site: { ...site, behind: [...(site.behind ?? []), 'gas'] } })
  })

  test('what came to light since is answered for, once, and stands in its list', async () => {
    const boxed = { openedAt: '08:00', now: 'boxedAt' }
    const asked = await work(boxed)
    expect(asked.status).toBe(422)
    expect(asked.text).toContain('name="withoutGo.why"')
    expect((await work({ ...boxed, 'withoutGo.why': 'could-not-wait' })).status).toBe(303)
    const mark = sheet().work.withoutGo
    expect(mark?.why).toBe('open-already')
    expect(mark?.unmet.at(-1)).toMatch(/^Not yet: gas pipe cleared.*It could not wait; Ines/)
    expect((await work({ ...boxed, boxedAt: '12:00', now: 'leftAt' })).status).toBe(303)
  })

  test('a phone’s answer for it comes onto the list of the same mark, whoever made that', async () => {
    const { version = 0 } = last() ?? {}
    const mark = sheet().work.withoutGo
    const { work: was } = sheet()
    saved({
      ...sheet(),
      work: { ...was, ...(mark === undefined ? {} : { withoutGo: { ...mark, by: 'Bram' } }) },
    })
    const theirs = sheet().work.withoutGo
    if (theirs === undefined) throw new Error('no mark')
    const line = 'Not yet: gas pipe cleared. Seen at ten. (It could not wait; Ines, 2026-06-12 12:00)'
    const mine: Sheet = {
      ...sheet(),
      work: { ...was, boxedAt: '11:30', withoutGo: { ...theirs, unmet: [...theirs.unmet, line] } },
    }
    const sent = { id: ID, base: version + 1, over: false, sheet: mine }
    expect((await yard.send('/removals/sync', sent)).status).toBe(200)
    expect(sheet().work.withoutGo).toMatchObject({ by: 'Bram', why: 'open-already' })
    expect(sheet().work.withoutGo?.unmet).toContain(line)
  })

  test('and before bees come of it', async () => {
    expect((await yard.get(`${PATH}/intake`)).to).toBe(`${PATH}/work#now`)
  })
})

describe('times that are typed by hand', () => {
  test('without a “go” are kept only with a name and a reason, and stay unmet', async () => {
    saved(READY)
    for (const said of [
      { openedAt: '09:00' },
      { boxedAt: '11:00' },
      { queen: 'caged' },
      { 'bees.frames': '5' },
    ]) {
      const answer = await work(said)
      expect(answer.status, JSON.stringify(said)).toBe(422)
      expect(answer.text).toContain('name="withoutGo.why"')
      expect(sheet().work).toEqual({})
    }
    const why = { 'withoutGo.why': 'could-not-wait' }
    expect((await work({ openedAt: '09:00', boxedAt: '11:00', ...why })).status).toBe(303)
    expect(sheet().work.withoutGo).toMatchObject({
      why: 'could-not-wait',
      by: 'Ines',
      on: DAY,
      at: '12:00',
    })
    for (const page of [PATH, '/removals'])
      expect(await words(page), page).toMatch(
        /Begun without a “go”.*It could not wait \(Ines, 2026-06-12 12:00\)/,
      )
    await yard.post('/intake', { ...INTAKE, on: DAY, otherJob: 'yes' })
    expect(await words('/')).toContain('1 removal was begun without a “go”')
    // A go that is decided afterwards does not unsay it, nor does another save.
    await work({ openedAt: '09:10', boxedAt: '11:00' })
    expect(sheet().work.withoutGo?.why).toBe('could-not-wait')
  })

  test('need no reason on the day of a “Go” that stands; over gas that came to light they do', async () => {
    const times = { openedAt: '11:00', water: 'yes', outdoorC: '75' }
    saved({ ...READY, decision: goAt() })
    await find('gas')
    expect((await work(times)).status).toBe(422)
    expect(sheet().work.openedAt).toBeUndefined()
    const other = oneSheet(() => yard, ID.replace(/2$/, '4'))
    other.saved({ ...READY, decision: goAt() })
    yard.setDay('2026-06-13')
    const late = (more: object) => other.typed({ ...times, ...more })
    expect((await late({})).status, 'the day that stood in the form answers for nothing').toBe(422)
    expect((await late({ 'withoutGo.why': 'that-day' })).status, 'written up the day after').toBe(303)
    expect(other.sheet().work.withoutGo).toBeUndefined()
  })

  test('who came, looked and left has begun nothing', async () => {
    saved(READY)
    expect((await work({ arrivedAt: '09:00', leftAt: '10:00' })).status).toBe(303)
    const { text } = await yard.get(PATH)
    expect(text).not.toContain('Begun without')
    expect(text).not.toContain('Log the intake')
  })
})
