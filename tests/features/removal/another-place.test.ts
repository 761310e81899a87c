/** What was seen is of one place: another wall, another house, or a swarm that has gone into something, is asked anew. */
import { describe, expect, test } from 'vitest'
import { beforeCut } from '../../../src/features/removal/before-cut.ts'
import { decisionProblems, goStands } from '../../../src/features/removal/decide.ts'
import { TICKED } from '../../../src/features/removal/item.ts'
import { placeOf, stamped } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { DEFAULT_PROTOCOL } from '../../../src/recovery/protocol.ts'
import { but, DAY, GAS_CLEARED, here, READY, SHOWS, swarmAt } from './ready.ts'
import { holding } from './reckoned.ts'

describe('a sheet used again for another wall', () => {
  const gas = here(GAS_CLEARED)
  const at = (address: string, where: string): string[] =>
    holding(here({ ...gas, job: { ...gas.job, address }, site: { ...gas.site, where } }))
  test('what was cleared here is not cleared there', () => {
    expect(at('4 Invented Row', 'left of the porch')).toEqual([])
    expect(at('4, Invented ROW', 'Left of the porch.')).toEqual([])
    // One word more is another place: a wall is not the north wall.
    expect(at('4 Invented Row', 'left of the porch, low')).toEqual(['trade-gas'])
    expect(at('4 Invented Row, Quarryville', 'left of the porch')).toEqual(['trade-gas'])
    expect(at('14 Invented Row', 'left of the porch')).toEqual(['trade-gas'])
    expect(at('4 Invented Row', 'right of the porch')).toEqual(['trade-gas'])
    const { unmet } = beforeCut(
      { ...gas, job: { ...gas.job, address: '9 Other Lane' } },
      DEFAULT_PROTOCOL,
      SHOWS,
      DAY,
    )
    expect(unmet[0]?.why).toContain('cleared for another place (4 Invented Row: left of the porch)')
  })
  test.each<[string, (s: Sheet) => Sheet]>([
    ['address', (s) => ({ ...s, job: { ...s.job, address: '9 Other Lane' } })],
    ['wall', (s) => ({ ...s, site: { ...s.site, where: 'the north wall' } })],
    ['surface', (s) => ({ ...s, site: { ...s.site, surface: 'cedar shingles' } })],
    ['kind of place', (s) => ({ ...s, site: { ...s.site, type: 'floor' } })],
  ])('after another %s nothing is looked for yet, and nothing ticked', (what, moved) => {
    const s = moved(READY)
    const held = holding(s)
    for (const id of ['services', 'old-building', 'not-alone', 'sting-plan']) expect(held).toContain(id)
    expect(held.includes('bystanders')).toBe(what === 'address')
    expect(holding(here(s))).toEqual([])
  })
  test('built after 1980 was said of the old place', () => {
    const built: Sheet = { ...READY, site: { ...READY.site, old: 'no' } }
    const { hazards: _, ...site } = { ...built.site, where: 'the north wall' }
    const item = beforeCut({ ...built, site }, DEFAULT_PROTOCOL, SHOWS, DAY).items.find(
      (i) => i.id === 'old-building',
    )
    expect(item).toMatchObject({ weight: 'trade', state: 'unsaid' })
  })
  test('what was looked for without a place does not count', () => {
    const { lookedAt: _, ...site } = READY.site
    expect(holding({ ...READY, site })).toEqual(['services', 'old-building', 'bystanders'])
  })
  test('an answer that stood in the form when the place was changed in it is of the old place', () => {
    const moved: Sheet = { ...READY, site: { ...READY.site, where: 'the north wall' } }
    const asked = ['behind', 'hazards', 'old'] as const
    expect(holding(stamped(moved, READY, asked, DAY))).toContain('services')
    // Shown again, with that place on it, and tapped again.
    expect(stamped(moved, moved, asked, DAY).site.lookedAt?.behind).toMatchObject({ where: 'the north wall' })
    // The first answer is of the place that was typed with it.
    const { behind: _, ...unasked } = READY.site
    expect(stamped(moved, { ...READY, site: unasked }, asked, DAY).site.lookedAt?.behind).toMatchObject({
      where: 'the north wall',
    })
  })
})

test('with no word for the wall, a look at one wall is no look at another', () => {
  const { where: _, ...site } = READY.site
  expect(holding(but({ site }))).toEqual(['services', 'old-building'])
})

test('“go” says what the bees are in', () => {
  const { type: _, ...site } = READY.site
  const s = but({ site })
  const reckoning = beforeCut(s, DEFAULT_PROTOCOL, SHOWS, DAY)
  const go = { is: 'go' as const, by: 'Ines', on: DAY, unmet: [], ...placeOf(s) }
  expect(decisionProblems(go, reckoning, s)).toMatchObject([
    { message: expect.stringContaining('what the bees are in') },
  ])
  expect(goStands({ ...s, decision: go }, reckoning, DAY)).toBe(false)
})

describe('a swarm that has gone into something', () => {
  const swarm = swarmAt('On a branch')
  test('hanging free, it needs the short sheet, and somebody who sees that it does', () => {
    expect(holding(swarm)).toEqual([])
    const unseen = { ...swarm, check: { ...swarm.check, done: TICKED.filter((t) => t !== 'free') } }
    expect(holding(unseen)).toEqual(['free'])
    const s = beforeCut(unseen, DEFAULT_PROTOCOL, SHOWS, DAY)
    expect(s.items.find((i) => i.id === 'free')?.weight, 'no second person signs that away').toBe('trade')
  })
  test('in a tree it hangs free; near a wire it is not taken', () => {
    expect(holding(here({ ...swarm, site: { ...swarm.site, where: 'in the pear tree' } }))).toEqual([])
    const wired = here({ ...swarm, site: { ...swarm.site, nearWires: true } })
    expect(holding(wired)).toEqual(['trade-near-wires'])
    const told = here({ ...swarm, job: { ...swarm.job, told: 'They are in the electric meter cabinet.' } })
    expect(holding(told)).toContain('services')
  })
  test.each<[string, Partial<Sheet['site']>]>([
    ['in words', { where: 'in the wall left of the porch' }],
    ['in a cabinet', { where: 'in the electrical panel' }],
    ['in Spanish', { where: 'en la pared' }],
    ['beside a tree', { where: 'in the eaves over the garden' }],
    ['in a tree', { where: 'pear tree, hollow' }],
    ['out of something', { where: 'out of the soffit vent' }],
    ['in a shed', { where: 'on the wall of the garden shed' }],
    ['with an entrance', { entrance: 'a gap under the sill' }],
    ['of a size', { nestHighMm: 400 }],
    ['found with a camera', { foundBy: ['heat-camera'] }],
    ['behind siding', { surface: 'cedar siding' }],
  ])('%s, it is asked like the nest it is', (_, site) => {
    const s = here({ ...swarm, site: { ...swarm.site, ...site } })
    for (const id of ['services', 'old-building', 'cut-depth']) expect(holding(s)).toContain(id)
  })
})
