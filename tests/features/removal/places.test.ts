/** Which words for a place ask what, by a person in a hurry. Invented; what swarms hang on is common practice. */
import { describe, expect, test } from 'vitest'
import { beforeCut, holds } from '../../../src/features/removal/before-cut.ts'
import { TICKED } from '../../../src/features/removal/item.ts'
import { isShort } from '../../../src/features/removal/stage.ts'
import { HANGS_ON } from '../../../src/features/removal/swarm.ts'
import { EMPTY_SHEET, type Sheet } from '../../../src/records/removal-sheet.ts'
import { DEFAULT_PROTOCOL } from '../../../src/recovery/index.ts'
import { DAY, here, SHOWS } from './ready.ts'

const holding = (s: Sheet): string[] =>
  beforeCut(s, DEFAULT_PROTOCOL, SHOWS, DAY)
    .unmet.filter(holds)
    .map((i) => i.id)

/** Everything tapped that a swarm is asked, without reading; `where` as somebody said it. */
const swarmAt = (where?: string): Sheet =>
  here({
    ...EMPTY_SHEET,
    job: { bees: 'swarm', since: 'today', address: '4 Invented Row' },
    site: {
      type: 'swarm',
      ...(where === undefined ? {} : { where }),
      access: 'ground',
      heightM: 2,
      bystanders: [],
      sprayed: 'no',
      temper: 1,
      africanized: 'no',
    },
    check: { on: DAY, hottestC: 20, wires: 'none', done: [...TICKED], doneOn: DAY },
  })

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
