/** A second person can be found again: by an account’s own passphrase, or by full name, drawing and telephone; each signs for one item. Invented. */
import { beforeEach, expect, test } from 'vitest'
import { AS_TOLD } from '../../../src/features/removal/people.ts'
import { PASSPHRASE } from '../../support/people.ts'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { oneSheet } from './one-sheet.ts'
import { DAY, DRAWING, READY, unticked } from './ready.ts'

const PATH = '/removals/019e0000-0000-7000-8000-000000000009'
let yard: Yard
const { sheet, saved, save, post, words, go } = oneSheet(() => yard, PATH.slice(10), '08:00')
beforeEach(async () => {
  yard = await yardOn(DAY)
  await yard.account('Bram')
})

/** The sheet with something that is not so, and what is shown of it to be signed for. */
async function withoutTick(item: string): Promise<{ text: string; of: string }> {
  saved({ ...READY, check: unticked(item) })
  const { text } = await yard.get(`${PATH}/second?item=${item}`)
  return { text, of: /name="of" value="([^"]*)"/.exec(text)?.[1] ?? '' }
}
const signing =
  (item: string, of: string, why = 'stays') =>
  (by: string, { phone = '', ...more }: Record<string, string> = {}) =>
    post('second', { item, of, [`${item}.by`]: by, [`${item}.why`]: why, [`${item}.phone`]: phone, ...more })

test('with an account: types its own passphrase, and nobody draws under that name', async () => {
  const { text, of } = await withoutTick('ladder-person')
  expect(text).toContain('value="Bram"')
  expect(text).not.toContain('value="Ines"')
  // This can kill: nobody without an account.
  expect(text).not.toContain('data-pad-field')
  const sign = signing('ladder-person', of)
  const drawn = { drawing: DRAWING, phone: '555 0177' }
  expect((await sign('Bram')).status).toBe(422)
  expect((await sign('Bram', drawn)).status, 'drawn by whoever holds the telephone').toBe(422)
  const wrong = await sign('Bram', { passphrase: 'slow lantern over gravel ' })
  expect(wrong.status).toBe(422)
  expect(wrong.text).not.toContain('slow lantern')
  expect((await sign('Bram Oyelaran', { ...drawn, passphrase: PASSPHRASE })).status).toBe(422)
  expect((await sign('Zed Quill', drawn)).status, 'anybody').toBe(422)
  expect(sheet().check.seconds).toBeUndefined()
  expect((await sign('Bram', { passphrase: PASSPHRASE })).status).toBe(303)
  expect(sheet().check.seconds).toMatchObject([{ by: 'Bram', why: 'stays', account: true }])
  expect(JSON.stringify(sheet())).not.toContain('slow lantern')
  expect((await go()).status).toBe(303)
})

test('without one: name, drawing and their own telephone, and not for what can kill', async () => {
  const { text, of } = await withoutTick('exclusion')
  expect(text).toContain('data-pad-field')
  const sign = signing('exclusion', of, 'seen')
  const drawn = (by: string, drawing: string, phone = '555 0177') => sign(by, { drawing, phone })
  for (const [by, drawing, phone] of [
    ['Zed Q', DRAWING],
    ['nobody', DRAWING],
    ['Zed Quill', ''],
    ['Zed Quill', '[[[5,5],[6,6]]]'],
    ['Zed Quill', '[[[5,5],[150,5]]]'],
    ['Zed Quill', '[]'],
    ['Zed Quill', DRAWING, ''],
    ['Jim Fairweather', DRAWING],
    ['Ines Albrecht', DRAWING],
  ] as const)
    expect((await drawn(by, drawing, phone)).status, `${by} ${drawing}`).toBe(422)
  expect((await drawn('Zed Quill', DRAWING)).status).toBe(303)
  expect(sheet().check.seconds).toMatchObject([
    { by: 'Zed Quill', why: 'seen', phone: '555 0177', path: expect.stringContaining('M40') },
  ])
})

test('signs for one item; not for gas, and not the one who decides', async () => {
  const check = {
    ...READY.check,
    done: unticked('not-alone').done?.filter((t) => t !== 'ladder-person') ?? [],
  }
  const { signature: _, ...agreement } = READY.agreement
  saved({ ...READY, agreement, check })
  const decide = () => go({ reason: 'Signs tonight.' })
  expect((await decide()).status).toBe(422)
  expect((await yard.get(`${PATH}/check`)).text).toContain('/second?item=ladder-person')
  const name = (by: string, item = 'ladder-person', of: string = AS_TOLD['ladder-person']) =>
    signing(item, of)(by, { passphrase: PASSPHRASE })
  expect((await name('ines')).status).toBe(422)
  expect((await name('Bram', 'ladder-person', 'Something else.')).status).toBe(422)
  expect((await name('Bram')).status).toBe(303)
  expect((await decide()).status, 'one name is for one item').toBe(422)
  expect((await name('Bram', 'not-alone', AS_TOLD['not-alone'])).status).toBe(303)
  // The agreement is not signed: that needs a reason, and has one.
  const gone = await decide()
  expect(gone.status, wordsOf(gone.text)).toBe(303)
  expect(await words()).toContain('Go , decided by Ines, Fri 12 Jun')
  await save('site', { behind: ['insulation', 'gas'] })
  expect(await words()).toContain('No go any more: it no longer stands')
  await name('Bram', 'trade-gas', 'x')
  expect(sheet().check.seconds).toHaveLength(2)
})
