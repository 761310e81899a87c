/** Which words for a place ask what, by a person in a hurry. Invented; what swarms hang on is common practice. */
import { describe, expect, test } from 'vitest'
import { sheetTyped, typedPart } from '../../../src/features/removal/form.ts'
import { TICKED } from '../../../src/features/removal/item.ts'
import { NONE_BEHIND } from '../../../src/features/removal/none-found.ts'
import { otherSheetsOf } from '../../../src/features/removal/other-sheets.ts'
import { isShort } from '../../../src/features/removal/stage.ts'
import { HANGS_ON } from '../../../src/features/removal/swarm.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { sameHouse } from '../../../src/records/same-house.ts'
import { DAY, here, READY, read, swarmAt } from './ready.ts'
import { holding } from './reckoned.ts'

describe('a swarm', () => {
  test('says where it hangs before any “go”, and is asked no more than that', () => {
    expect(holding(swarmAt())).toEqual(['free'])
    expect(isShort(swarmAt())).toBe(true)
  })

  test.each([...HANGS_ON, 'under a branch of the pear tree', 'fence post by the gate', 'in the hedge'])(
    '“%s” is open',
    (where) => {
      expect(holding(swarmAt(where))).toEqual([])
    },
  )

  test.each([
    'lamp post',
    'on the power pole',
    'power pole in the hedge',
    'transformer',
    'street lamp',
    'air conditioner',
    'manhole',
    'door frame',
    'door frame under the apple tree',
    'rafters',
    'barn',
    'floor',
    'car engine',
    'inside the old oak',
    'by the road',
    '?',
  ])('“%s” is asked like a nest', (where) => {
    const s = swarmAt(where)
    expect(isShort(s)).toBe(false)
    for (const id of ['services', 'old-building']) expect(holding(s)).toContain(id)
  })

  test.each(['on the power pole', 'lamp post', 'transformer box', 'street light', 'en la farola'])(
    '“%s” asks for electric wires besides, though they were tapped as not near',
    (where) => {
      const read = { ...swarmAt(where), check: { ...swarmAt(where).check, done: [] } }
      expect(holding(read)).toContain('notes')
    },
  )
})

describe('nothing behind it', () => {
  const none = (behindHow?: Sheet['site']['behindHow']): Sheet => ({
    ...READY,
    site: { ...READY.site, behind: [], ...(behindHow === undefined ? {} : { behindHow }) },
  })

  test('says how it was looked for; the owner’s word finds no wire', () => {
    expect(holding(none('detector'))).toEqual([])
    expect(holding(none('traced'))).toEqual([])
    expect(holding(none('owner'))).toEqual(['services'])
    expect(holding(none())).toEqual(['services'])
  })

  test('is one tap, and comes back as it was tapped', () => {
    const units = { temperature: 'F', weight: 'lb' } as const
    for (const how of NONE_BEHIND) {
      const { sheet } = sheetTyped('site', { behind: [how], hazards: ['none-tested'] }, units)
      expect(sheet.site).toMatchObject({ behind: [], behindHow: how.slice('none-'.length), oldHow: 'tested' })
      expect(typedPart('site', sheet, units).behind).toEqual([how])
    }
    const both = sheetTyped('site', { behind: ['none-detector', 'gas'] }, units).sheet
    expect(both.site.behind, 'a pipe wins').toEqual(['gas'])
  })
})

test('a meter box: “Water pipe” alone is not taken for the electric meter', () => {
  const box = (where: string): Sheet =>
    here({ ...READY, site: { ...READY.site, type: 'utility-box', where, behind: ['water'] } })
  expect(holding(read(box('grey box by the gate')))).toEqual(['services'])
  expect(holding(read(box('water box by the gate'))), 'a well, a softener').toEqual(['services'])
  expect(holding(read(box('water meter box by the gate')))).toEqual([])
})

describe('another sheet of the same house', () => {
  const asked = (other: Partial<Sheet>, own: Sheet = READY, colonies: string[] = []) =>
    otherSheetsOf(
      'own',
      { ...own, job: { address: '4 Invented Row, Springfield' } },
      [
        {
          id: 'other',
          sheet: { ...READY, ...other, job: { address: '4 Invented Row', ...other.job } },
          colonies,
        },
      ],
      DAY,
    )

  test.each(['4 Invented Rd', '4A Invented Row', '4-6 Invented Row', '4 Inventd Rw', 'Invented Row 4'])(
    '“%s” is the same door',
    (address) => {
      expect(sameHouse({ address: '4 Invented Row' }, { address })).toBe(true)
    },
  )
  test.each(['44 Invented Row', '4 Larch Row', '6 Invented Row', ''])('“%s” is another', (address) => {
    expect(sameHouse({ address: '4 Invented Row' }, { address })).toBe(false)
    expect(sameHouse({ address: '4 Larch St, Springfield' }, { address: '4 Elm St, Springfield' })).toBe(
      false,
    )
  })

  test('counts for what it says in words only', () => {
    const [other] = asked({ job: { told: 'Gas pipe in the wall, grandma is allergic.' } })
    expect(other?.what).toEqual(['gas', 'allergic'])
    const harmless = { told: 'They fly in by the door.' }
    expect(asked({ job: harmless })).toMatchObject([{ what: [], notes: [harmless.told] }])
  })

  test('that was refused is shown with its reason, which is read for hazards', () => {
    const decision = { is: 'refuse' as const, by: 'Bram', on: DAY, at: '09:00', unmet: [] }
    const [gas] = asked({ decision: { ...decision, reason: 'smell of gas in the hall' } })
    expect(gas).toMatchObject({ what: ['gas'], stopped: { by: 'Bram' } })
    const [roof] = asked({ decision: { ...decision, reason: 'The owner is away.' } })
    expect(roof).toMatchObject({ what: [], stopped: { reason: 'The owner is away.' } })
    expect(asked({ ended: { on: DAY, why: 'Asbestos.' } })).toMatchObject([{ what: ['asbestos'] }])
  })

  test('with fierce or Africanized bees asks how fierce these are; bees in the yard are gone from the house', () => {
    for (const site of [{ africanized: 'yes' as const }, { temper: 5 as const }]) {
      const fierce = { site: { ...READY.site, ...site } }
      expect(asked(fierce)).toMatchObject([{ what: ['fierce'] }])
      expect(asked(fierce, { ...READY, site: { ...READY.site, temper: 'unknown' } })).toEqual([])
      expect(asked({ ...fierce, work: { on: DAY } }, READY, ['c'])).toEqual([])
    }
  })
})

test('a word is no reason to go over a refusal that names gas: it is looked for again', () => {
  const over = { by: 'Bram', on: DAY, at: '09:00', reason: 'Gas smell' }
  const decision = { is: 'go' as const, by: 'Ines', on: DAY, unmet: [], reason: 'gone', over }
  expect(holding(READY)).toEqual([])
  expect(holding({ ...READY, decision })).toEqual(['notes'])
  expect(holding({ ...READY, decision: { ...over, is: 'refuse', unmet: [] } })).toEqual(['notes'])
  const looked = { ...READY.check, done: [...TICKED, 'not-here:gas'] }
  expect(holding({ ...READY, decision, check: looked })).toEqual([])
  // One tap is not for two things.
  const told = { ...READY.job, told: 'Eternit, and the meter.' }
  expect(holding({ ...READY, decision, check: looked, job: told })).toEqual(['notes'])
})
