/** Who decides, over what is read, and what becomes of a “go” under which something comes to light. Invented. */
import { beforeAll, beforeEach, expect, test } from 'vitest'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { emptied, oneSheet } from './one-sheet.ts'
import { but, DAY, goAt, READY, unticked } from './ready.ts'

const PATH = '/removals/019e0000-0000-7000-8000-000000000009'
let yard: Yard
const { sheet, saved, save, post, words, go, open, typed, find } = oneSheet(
  () => yard,
  PATH.slice(10),
  '08:00',
)
beforeAll(async () => {
  yard = await yardOn(DAY)
})
beforeEach(() => {
  emptied(yard)
  saved({ ...READY, decision: goAt() })
})

test('whoever is signed in decides, whatever name is sent', async () => {
  expect((await yard.get(`${PATH}/check`)).text).not.toContain('name="by"')
  await save('check', { by: 'ok', is: 'wait' })
  expect(sheet().decision).toMatchObject({ is: 'wait', by: 'Ines' })
})

test('how fierce they are is asked, and not knowing is met as fierce', async () => {
  const { temper: _t, africanized: _a, ...site } = READY.site
  saved({ ...READY, site })
  expect(wordsOf((await go()).text)).toContain('asked how they behave, and of Africanized bees')
  await save('site', { temper: 'unknown', africanized: 'no' })
  expect(sheet().site.temper).toBe('unknown')
  expect((await go({ done: unticked('fierce').done ?? [] })).status).toBe(422)
})

test('without an address there is nowhere to send an ambulance to', async () => {
  const { address: _, ...job } = READY.job
  saved(but({ job }))
  const answer = await go()
  expect(answer.status).toBe(422)
  expect(wordsOf(answer.text)).toContain('plan for stings')
})

test('no “go” for a job that has ended, for wasps, or with a dot for a reason', async () => {
  const undecided = but({ agreement: {} })
  const decide = async (reason: string) => (await go({ reason })).status
  saved(undecided)
  expect(await decide('.')).toBe(422)
  saved({ ...undecided, ended: { on: DAY, why: 'They flew.' } })
  expect(await decide('Signs tonight.')).toBe(422)
  saved({ ...undecided, job: { ...READY.job, bees: 'wasps' } })
  expect(await decide('Signs tonight.')).toBe(422)
  saved(undecided)
  expect(await decide('Signs tonight.')).toBe(303)
})

test('what is said where “none” was tapped is read once more above “Go”', async () => {
  const site = { ...READY.site, behind: [], behindNote: 'Grey pipe, and a cable.', surface: 'grey board' }
  saved(but({ site, job: { ...READY.job, told: 'Bees in the wall.' } }))
  const { text } = await yard.get(`${PATH}/check`)
  const above = wordsOf(text.slice(text.indexOf('checklist'), text.indexOf('value="go"')))
  expect(above).toContain(
    'Read: all it says of danger is tapped “grey board” “Bees in the wall.” “Grey pipe, and a cable.”',
  )
})

test('a “go” that stands no more is not the word in the list, and does not lead to the removal', async () => {
  await find('gas')
  const { text } = await yard.get('/removals')
  expect(wordsOf(text)).toContain('No go any more')
  expect(wordsOf(text)).toContain('Stop. Not yet: gas pipe cleared')
  expect(text).toContain(`href="${PATH}/check#now"`)
  expect(text).not.toContain(`href="${PATH}/work#now"`)
  const page = (await yard.get(PATH)).text
  expect(wordsOf(page)).not.toContain('with nothing on the list unmet')
  // What stops it stands apart from what is to be met.
  expect(page).toMatch(/<li class="stops">\s*<span class="stop-mark">Stop<\/span>/)
})

test('what comes to light once it is open is said on top: stop', async () => {
  await open()
  expect((await yard.get(PATH)).text).not.toContain('id="unmet"')
  await find('gas')
  const { text } = await yard.get(PATH)
  expect(text).toContain('id="unmet"')
  expect(text).toContain('Stop. Not yet: gas pipe cleared')
  // The work is written down all the same: what happened cannot be refused.
  const box = { now: 'boxedAt', openedAt: '12:00' }
  expect((await typed(box)).status, 'going on over gas is answered for').toBe(422)
  expect((await typed({ 'withoutGo.why': 'open-already', ...box })).status).toBe(303)
  expect(sheet().work.withoutGo?.unmet.join()).toContain('gas pipe cleared')
})

test('work over gas says afterwards what was unmet', async () => {
  await find('gas')
  const times = { openedAt: '11:00', boxedAt: '11:30', 'withoutGo.why': 'could-not-wait' }
  expect((await post('work', { on: DAY, ...times })).status).toBe(303)
  const after = await words()
  expect(after).toContain('What was unmet then')
  expect(after).toContain('It was go, decided by Ines')
})
