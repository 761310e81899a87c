/** The letter to a customer: what it tells, and that nothing anybody can write a name into ever gets out. */
import { describe, expect, test } from 'vitest'
import { planOf } from '../../../src/decision/index.ts'
import { historyUntil, type Letter, letterOf } from '../../../src/features/letters/letter.ts'
import { ENTRY_KINDS, type Entry, GIFTS, OUTCOMES, entry as schema } from '../../../src/journal/entry.ts'
import { historyOf } from '../../../src/journal/history.ts'

const SECRET = 'Zebulon'
const id = (n: number): string => `0190a000-0000-7000-8000-${String(n).padStart(12, '0')}`
let made = 0
const make = (kind: Entry['kind'], on: string, more: Record<string, unknown>): Entry => {
  made++
  return schema.parse({
    id: id(made),
    colony: `${SECRET} tag`,
    kind,
    on,
    by: `${SECRET} the helper`,
    ...more,
  })
}

const intake = (more: Record<string, unknown> = {}): Entry =>
  make('intake', '2026-05-10', {
    removal: { type: 'wall', site: `${SECRET}, 12 Nowhere Lane`, sprayed: 'no' },
    yard: `${SECRET} yard`,
    stand: SECRET,
    queen: 'unseen',
    brood: { eggs: 0.5, open: 1, capped: 1 },
    bees: { frames: 6 },
    tiedComb: true,
    note: SECRET,
    ...more,
  })

function letterFor(entries: Entry[], asOf: string): Letter {
  const whole = historyOf('A-1', entries)
  const history = whole === null ? null : historyUntil(whole, asOf)
  if (history === null) throw new Error('no intake stands')
  return letterOf(history, planOf(history, history.outcome?.on ?? asOf), asOf)
}

const said = (letter: Letter): string => JSON.stringify(letter)

/** One entry of each kind and gift, every free text filled with the secret. */
const everything = (): Entry[] => [
  intake(),
  ...GIFTS.map((what) =>
    make('given', '2026-05-14', {
      what,
      donor: SECRET,
      product: SECRET,
      cost: 47.31,
      note: SECRET,
      frames: 1,
    }),
  ),
  make('inspection', '2026-05-15', {
    opened: true,
    eggs: 'none',
    cells: 'capped',
    signs: ['brood-disease-suspected'],
    note: SECRET,
  }),
  make('queen-cage', '2026-05-16', { found: 'released', note: SECRET }),
  make('ties-removed', '2026-05-18', { note: SECRET }),
  make('mite-wash', '2026-05-20', { bees: 300, mites: 6, note: SECRET }),
  make('disease-cleared', '2026-05-21', { clearedBy: 'laboratory', reference: SECRET, note: SECRET }),
  make('move', '2026-05-22', { yard: SECRET, stand: SECRET, note: SECRET }),
  make('note', '2026-05-22', { text: SECRET }),
  make('missed-visit', '2026-05-23', { reason: 'rain', note: SECRET }),
]

describe('nothing private gets out', () => {
  test.each(OUTCOMES)('of a colony that ended as %s', (what) => {
    const entries = [
      ...everything(),
      make('outcome', '2026-06-08', {
        what,
        into: SECRET,
        cause: SECRET,
        destination: SECRET,
        note: SECRET,
      }),
    ]
    const kinds = new Set(entries.map((e) => e.kind))
    expect(ENTRY_KINDS.filter((k) => !kinds.has(k))).toEqual(['withdrawal'])
    expect(JSON.stringify(entries)).toContain(SECRET)
    for (const day of ['2026-05-10', '2026-05-20', '2026-06-09']) {
      const text = said(letterFor(entries, day))
      expect(text).not.toContain(SECRET)
      expect(text).not.toContain('47.31')
      expect(text).not.toContain('A-1')
    }
  })

  test('a kind of removal that a yard made up may name a customer: it is not told', () => {
    const letter = letterFor([intake({ removal: { type: `${SECRET}’s chimney` } })], '2026-05-10')
    expect(said(letter)).not.toContain(SECRET)
    expect(letter.came[0]).toBe('On Sun 10 May 2026 your bees came to us, and into a box of their own.')
  })
})

describe('what it tells', () => {
  test('how they came: place, count in thousands, queen, brood', () => {
    // 6 frames at 2,300 bees a frame (common practice, src/biology/strength.ts) are 13,800.
    expect(letterFor([intake()], '2026-05-10').came).toEqual([
      'On Sun 10 May 2026 your bees came out of the wall, and into a box of their own.',
      'There were very roughly 14 thousand of them.',
      'We did not see their queen that day, which is common: there are thousands of bees and one of her.',
      'Some of their brood, the young still in the comb, came along with them, their own comb tied into wooden frames.',
    ])
    // 3 lb at 3,500 bees a pound are 10,500.
    expect(letterFor([intake({ bees: { kg: 1.36 } })], '2026-05-10').came[1]).toBe(
      'There were very roughly 10 thousand of them.',
    )
  })

  test('day 30 of a colony that raises a queen: not sure yet, and says so', () => {
    const letter = letterFor(
      [
        intake({ queen: 'lost' }),
        make('inspection', '2026-05-15', { opened: true, eggs: 'none', cells: 'capped' }),
        make('inspection', '2026-06-05', { opened: true, eggs: 'single', onFreshComb: true, capped: 'none' }),
      ],
      '2026-06-09',
    )
    expect(letter.title).toBe('Your bees, day 30')
    expect(letter.now.join(' ')).toContain('A queen is laying.')
    expect(letter.steps).toEqual([
      {
        on: '2026-05-15',
        text: 'We looked inside and saw a queen cell, in which they raise a new queen.',
      },
      { on: '2026-06-05', text: 'We looked inside and saw eggs.' },
    ])
    expect(letter.next.join(' ')).toContain(
      'Day 30 is often too early to be sure, and not every rescued colony comes through.',
    )
    expect(letter.next.join(' ')).toMatch(/Capped worker brood is what proves a well-mated queen/)
  })

  test('nothing of later days', () => {
    const entries = [
      intake(),
      make('inspection', '2026-05-15', { opened: true, eggs: 'single', onFreshComb: true }),
      make('outcome', '2026-06-20', { what: 'died' }),
    ]
    const early = letterFor(entries, '2026-05-12')
    expect(early.steps).toEqual([])
    expect(said(early)).not.toContain('lost: the colony died')
    expect(letterFor(entries, '2026-07-01').title).toBe('Your bees, day 41')
    expect(letterFor(entries, '2026-07-01').next).toEqual([])
    const whole = historyOf('A-1', entries)
    expect(whole === null ? whole : historyUntil(whole, '2026-05-09')).toBeNull()
  })

  test('a suspected disease keeps them where they are, without naming one', () => {
    const letter = letterFor(
      [
        intake(),
        make('inspection', '2026-05-15', {
          opened: true,
          eggs: 'single',
          signs: ['brood-disease-suspected'],
        }),
      ],
      '2026-05-16',
    )
    expect(letter.now.join(' ')).toContain('until that is cleared up they stay where they are')
    expect(said(letter)).not.toMatch(/foulbrood/i)
  })

  test('what to know at the place: keep back, do not spray, who climbs; nothing to close after a swarm', () => {
    const wall = letterFor([intake()], '2026-05-10').place.join(' ')
    expect(wall).toMatch(/equipped for ladders and walls/)
    expect(wall).toMatch(/neither spray them nor shut them in/)
    expect(wall).toMatch(/call the emergency number/)
    const swarm = letterFor([intake({ removal: { type: 'swarm' } })], '2026-05-10').place.join(' ')
    expect(swarm).not.toMatch(/closing the opening/)
  })

  test('looks and feedings are counted', () => {
    const look = (on: string): Entry => make('inspection', on, { opened: false })
    const feed = (on: string): Entry => make('given', on, { what: 'syrup', litres: 1 })
    const opened = make('inspection', '2026-05-15', { opened: true })
    const again = make('inspection', '2026-05-15', { opened: true, eggs: 'single' })
    const letter = letterFor(
      [intake(), look('2026-05-11'), look('2026-05-13'), opened, again, feed('2026-05-11')],
      '2026-05-16',
    )
    // As many looks inside as there are days listed.
    expect(letter.now.at(-1)).toBe(
      'We have looked inside once, looked at them from outside twice and fed them once.',
    )
  })

  test('the first day is not “day 0”, and a day of another year has its year', () => {
    const first = letterFor([intake()], '2026-05-10')
    expect(first.title).toBe('Your bees, the day they came')
    expect(said(first)).not.toMatch(/[Dd]ay 0/)
    const gone = letterFor([intake(), make('outcome', '2026-06-20', { what: 'died' })], '2027-01-05')
    expect(gone.now[0]).toMatch(/^On Sat 20 Jun 2026 /)
  })
})
