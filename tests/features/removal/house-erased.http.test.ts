/** Sheets perhaps of one house are asked for whatever stands there, and an erased one leaves that it said something. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import { otherSheetsOf, readThere } from '../../../src/features/removal/other-sheets.ts'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Decision, Sheet } from '../../../src/records/removal-sheet.ts'
import { formIn, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { oneSheet } from './one-sheet.ts'
import { but, DAY, here, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000081'
const OTHER = '019e0000-0000-7000-8000-000000000082'
const HISSES = 'It hisses behind the boards'
let yard: Yard
const own = oneSheet(() => yard, ID, '08:00')
const theirs = oneSheet(() => yard, OTHER, '08:00')
const reads = (text: string) =>
  [...text.matchAll(/name="done" value="(read[^"]+)"/g)].map(([, value]) => value ?? '')
const asked = (text: string) => [
  ...new Set([...text.matchAll(/name="again\.([^"]+)"/g)].map(([, value]) => value ?? '')),
]
const go = async (...more: string[]) => {
  const typed = formIn((await yard.get(`/removals/${ID}/check`)).text)
  return own.save('check', { done: [...(typed.done ?? []), ...more], is: 'go' })
}
const at = (address: string, more: Partial<Sheet> = {}): Sheet =>
  here({
    ...READY,
    ...more,
    job: { name: 'Edgar Quill', phone: '555 010 7788', plannedOn: DAY, ...more.job, address },
  })
const decided = (d: Partial<Decision>): Partial<Sheet> => ({
  decision: { is: 'refuse', by: 'Bram', on: DAY, at: '07:10', unmet: [], ...placeOf(READY), ...d },
})
const MINE = '14 Beech Road'
const BY_EAR = '14 Beach Road'

beforeEach(async () => {
  yard = await yardOn(DAY)
})

describe('a sheet that is perhaps of this house', () => {
  test.each<[string, Partial<Sheet>, string]>([
    ['a hazard', { site: { ...READY.site, behind: ['gas'] } }, 'gas pipe'],
    ['a note', { job: { told: HISSES } }, HISSES],
    ['a refusal', decided({ reason: HISSES }), HISSES],
    ['a wait with a reason', decided({ is: 'wait', reason: HISSES }), HISSES],
    ['why it ended', { ended: { on: DAY, why: 'They flew off' } }, 'They flew off'],
    ['where it is', { site: { ...READY.site, where: 'over the covered well' } }, 'over the covered well'],
  ])('is asked about for %s, which is quoted', async (_, more, quoted) => {
    theirs.saved(at(BY_EAR, more), 'Bram')
    own.saved(at(MINE, { job: { name: 'Ottoline', phone: '555 010 1111' } }))
    const barred = await go()
    expect(barred.status).toBe(422)
    const page = wordsOf(barred.text)
    expect(page).toContain('Is it the same house?')
    expect(page).toContain(quoted)
    expect(page).toContain(`Edgar Quill, ${BY_EAR}`)
    const [perhaps = '', ...rest] = asked(barred.text)
    expect(rest).toEqual([])
    expect(reads(barred.text), 'nothing is read of a house that is another one').toEqual([])
    expect((await go(perhaps)).status).toBe(303)
    // More is written there since.
    theirs.saved({ ...theirs.sheet(), site: { ...theirs.sheet().site, hazards: ['asbestos'] } }, 'Bram')
    expect((await go(perhaps)).status).toBe(422)
  })

  test('is asked and read like any sheet of it, once it is the same house', async () => {
    theirs.saved(at(BY_EAR, decided({ reason: HISSES })), 'Bram')
    own.saved(at(MINE, { job: { name: 'Ottoline', phone: '555 010 1111' } }))
    const [perhaps = ''] = asked((await go()).text)
    await own.save('check', { [`again.${perhaps}`]: 'here' })
    const barred = await go()
    expect(wordsOf(barred.text)).toContain(`“${HISSES}”: is that so here?`)
    expect((await go(...reads(barred.text), ...asked(barred.text))).status).toBe(303)
  })

  test('by an address that it had before is named by that', async () => {
    theirs.saved(at(BY_EAR, { site: { ...READY.site, behind: ['gas'] } }))
    expect((await theirs.save('job', { address: '9 Elm Street' })).status).toBe(303)
    own.saved(at(MINE, { job: { name: 'Ottoline', phone: '555 010 1111' } }))
    const barred = await go()
    expect(barred.status).toBe(422)
    expect(wordsOf(barred.text)).toContain(`“${BY_EAR}” was on it before`)
    const [perhaps = ''] = asked(barred.text)
    await own.save('check', { [`again.${perhaps}`]: 'here' })
    expect(own.sheet().site.foundNote).toBe(`This house is “${BY_EAR}” too`)
    expect(asked((await go()).text)).toEqual([`not-there:gas:${OTHER}`])
  })

  test('asks nothing where a bare “Wait” is all that is on it', async () => {
    theirs.saved(at(BY_EAR, decided({ is: 'wait' })), 'Bram')
    own.saved(at(MINE, { job: { name: 'Ottoline', phone: '555 010 1111' } }))
    expect((await go()).status).toBe(303)
  })
})

describe('erased', () => {
  const erase = async () => {
    const page = wordsOf((await yard.get(`/removals/${OTHER}/erase`)).text)
    expect((await yard.post(`/removals/${OTHER}/erase`, {})).status).toBe(303)
    return page
  }

  test.each<[string, Partial<Sheet>, string]>([
    ['a refusal', decided({ reason: HISSES }), 'was refused: look again'],
    ['a wait with a reason', decided({ is: 'wait', reason: HISSES }), 'was to wait: look again'],
    ['a note', { job: { told: 'Mrs Quill cannot breathe after a sting' } }, 'held notes: look again'],
    ['a hazard', { site: { ...READY.site, behind: ['gas'] } }, 'said: gas pipe'],
  ])('leaves of %s that there was one, and no word of it', async (_, more, left) => {
    for (const [address, of] of [
      [MINE, 'of this house'],
      [BY_EAR, 'perhaps of this house'],
    ] as const) {
      yard = await yardOn(DAY)
      theirs.saved(at(address, more), 'Bram')
      own.saved(at(MINE, { job: { name: 'Ottoline', phone: '555 010 1111' } }))
      const words = `Another sheet ${of}, erased since, ${left}.`
      expect(await erase(), 'said before it is done').toContain(words)
      expect(own.sheet().site.behindNote).toBe(words)
      const barred = await go()
      expect(barred.status).toBe(422)
      expect((await go(...reads(barred.text), ...asked(barred.text))).status).toBe(303)
    }
  })

  test('takes a “go” that stood, and pushes out nothing that is written there', async () => {
    theirs.saved(at(MINE, decided({ reason: HISSES })), 'Bram')
    const behindNote = `${'Loft is full of boxes. '.repeat(21)}A shaft.`
    own.saved(at(MINE, { site: { ...READY.site, behindNote }, job: { name: 'Ottoline' } }))
    const { text } = await go()
    expect((await go(...reads(text), ...asked(text))).status).toBe(303)
    await erase()
    expect(own.sheet().decision?.fell).toMatchObject({ by: 'Ines', on: DAY })
    expect((await own.post('work', { outdoorC: '75', water: 'yes', now: 'openedAt' })).status).toBe(422)
    expect(own.sheet().site.behindNote).toContain('was refused')
    expect(await own.words(`/removals/${ID}/check`)).toContain('A shaft.')
  })

  test('says on its page what is lost with it, where no other sheet keeps it', async () => {
    theirs.saved(at(MINE, { ...decided({ reason: HISSES }), job: { told: 'Key at the gate' } }), 'Bram')
    expect(await erase()).toContain('What it says of this house: why it was stopped, its notes')
  })
})

describe('a “go”', () => {
  /** What is ticked of the other sheet, before one's own decision and after it. */
  const ticks = (decision: Sheet['decision'] | undefined, other: Sheet) =>
    otherSheetsOf(
      ID,
      but(decision === undefined ? {} : { decision }),
      [{ id: OTHER, sheet: other, colonies: [] }],
      DAY,
    ).map((o) => [readThere(o), o.asks])

  test('changes nothing of what its own ticks are of', async () => {
    const wait = decided({ is: 'wait', reason: HISSES }).decision
    const over = { by: 'Bram', on: DAY, reason: HISSES }
    const decision = decided({ is: 'go', by: 'Ines', reason: 'key is here now', over }).decision
    for (const other of [
      at('4 Invented Row', { decision, job: { told: HISSES } }),
      at('4 Invented Row', { decision: wait }),
    ])
      expect(ticks(decision, other)).toEqual(ticks(wait, other))
  })

  test('stands where both sheets bear the words that it answers', async () => {
    const wait = decided({ is: 'wait', reason: HISSES }).decision
    const over = { by: 'Bram', on: DAY, reason: HISSES }
    const theirGo = decided({ is: 'go', reason: 'key is here now', over })
    theirs.saved(at('4 Invented Row', { ...theirGo, job: { told: 'Beehive at the back' } }), 'Bram')
    own.saved({ ...READY, decision: wait && { ...wait, at: '11:30' } }, 'Bram')
    const { text } = await own.save('check', { is: 'go', reason: 'key is here now' })
    const more = [...reads(text), ...asked(text)]
    const done = [...(formIn(text).done ?? []), ...more]
    expect((await own.save('check', { done, is: 'go', reason: 'key is here now' })).status).toBe(303)
    expect(own.sheet().decision).toMatchObject({ is: 'go' })
    expect((await own.post('work', { outdoorC: '75', water: 'yes', now: 'openedAt' })).status).toBe(303)
  })
})
