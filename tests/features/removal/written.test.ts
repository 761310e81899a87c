/** What is written and tapped nowhere is asked; what is tapped is asked where it was tapped. */
import { expect, test } from 'vitest'
import { beforeCut } from '../../../src/features/removal/before-cut.ts'
import { withNoted } from '../../../src/features/removal/grave.ts'
import { TICKED } from '../../../src/features/removal/item.ts'
import { writtenIn } from '../../../src/features/removal/written.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { DEFAULT_PROTOCOL } from '../../../src/recovery/protocol.ts'
import { but, DAY, READY, read, SHOWS } from './ready.ts'
import { holding } from './reckoned.ts'

test.each([
  ['her son is allergic', 'somebody allergic'],
  ['Su hija tiene alergia', 'somebody allergic'],
  ['enchufe detrás', 'electric wires'],
  ['high on a power pole', 'a power line, meter or pole'],
  ['the breaker is behind', 'electric wires'],
  ['uralita en el techo', 'asbestos'],
  ['an LPG bottle', 'gas'],
  ['green cabinet at the street', 'electric wires'],
  ['kids play there', 'children'],
  ['killer bees, they chased the postman', 'fierce bees'],
  ['the boards are rotten', 'weak boards'],
])('“%s” is written and tapped nowhere: %s', (told, says) => {
  expect(writtenIn(but({ job: { ...READY.job, told } })).map((w) => w.says)).toEqual([says])
})

test('a drum of weedkiller is no fierce bees', () => {
  expect(writtenIn(but({ job: { ...READY.job, told: 'The drum had weedkiller in it.' } }))).toEqual([])
})

test.each<[string, Partial<Sheet>, string]>([
  ['gas', { site: { ...READY.site, behindNote: 'Gas pipe runs left of the window.' } }, 'gas'],
  ['a cable', { job: { ...READY.job, told: 'Beside the electric meter.' } }, 'a power line, meter or pole'],
  ['the board', { site: { ...READY.site, surface: 'asbestos cement board' } }, 'asbestos'],
  ['in Spanish', { site: { ...READY.site, surface: 'placa de amianto' } }, 'asbestos'],
  [
    'next door',
    { site: { ...READY.site, bystanders: ['neighbours'], bystandersNote: 'Mrs Brown has an EpiPen.' } },
    'somebody allergic',
  ],
])('what is written of %s and tapped nowhere holds until it is looked at again', (_, change, says) => {
  const s = but(change)
  expect(holding(s)).toEqual(['notes'])
  const item = beforeCut(s, DEFAULT_PROTOCOL, SHOWS, DAY).items.find((i) => i.id === 'notes')
  expect(item).toMatchObject({ weight: 'trade', why: expect.stringContaining(says) })
  const not = ['not-here:gas', 'not-here:near-wires', 'not-here:asbestos', 'not-here:allergic']
  const looked = but({ ...change, check: { ...READY.check, done: [...TICKED, ...not] } })
  expect(holding(read(looked))).toEqual([])
})

test('what is written and tapped is asked where it was tapped', () => {
  const s = but({
    site: { ...READY.site, behind: ['gas', 'insulation'], behindNote: 'Gas pipe, left of the window.' },
  })
  expect(holding(read(s))).toEqual(['trade-gas'])
})

test('what was written since, or a way up that is higher, is ticked again', () => {
  const stamp = { by: 'Ines', on: DAY, at: '09:00', writtenAt: `${DAY}T09:00:00.000Z` }
  const ticks = (after: Sheet): string[] => withNoted(READY, after, {}, stamp).check.done ?? []
  expect(ticks(READY)).toEqual(READY.check.done)
  const told = but({ job: { ...READY.job, told: 'A gas meter beside it.' } })
  const wires = { ...told, check: { ...told.check, done: [...TICKED, 'not-here:electric'] } }
  expect(holding(wires), 'the gas of it').toEqual(['notes'])
  expect(ticks(told)).toContain('ladder-person')
  const roof = but({ site: { ...READY.site, access: 'roof', heightM: 9 } })
  expect(ticks(roof)).not.toContain('ladder-person')
  const lower = but({ site: { ...READY.site, heightM: 3 } })
  expect(ticks(lower)).toContain('ladder-person')
})
