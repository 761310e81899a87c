/**
 * Published worked date examples (numbered W1-W27 in the project's notes), run through the plan wherever the example
 * describes a colony. Dates without a year in the source are given one; the arithmetic is theirs.
 */
import { describe, expect, test } from 'vitest'
import { DRONE, QUEEN, WORKER } from '../../src/biology/development.ts'
import { FIRST_EGG_AFTER_EMERGENCE, FIRST_EGG_AFTER_EMERGENCE_HARD } from '../../src/biology/queen-rearing.ts'
import { WORKER_EGG_LAID } from '../../src/biology/sightings.ts'
import { addDays, daysBetween, type Span } from '../../src/days.ts'
import { cage, check, gave, intake, laidWhen, look, plan } from './support.ts'

const holds = (span: Span | undefined, ...days: string[]): void => {
  if (span === undefined) throw new Error('no span')
  for (const d of days)
    expect(d >= span.earliest && d <= span.latest, `${d} in ${JSON.stringify(span)}`).toBe(true)
}

describe('Bush, beesmath', () => {
  test('W1: eggs seen, no queen: she was here at most three days ago', () => {
    expect(laidWhen('2026-06-10', WORKER_EGG_LAID.eggs)).toEqual({ from: '2026-06-07', to: '2026-06-10' })
    const p = plan(
      '2026-06-10',
      intake('2026-06-01', 'unseen'),
      look('2026-06-10', { eggs: 'single', queen: 'unseen' }),
    )
    expect(p.phase).toBe('laying')
  })

  test('W2: just-hatched larvae and no eggs: laid four days ago, inside what open brood allows', () => {
    const laid = laidWhen('2026-06-10', WORKER_EGG_LAID.open)
    expect('2026-06-06' >= laid.from && '2026-06-06' <= laid.to).toBe(true)
  })

  test('W3 and W7: queen gone on day 0, laying queen again after 24 days (24 ± 5)', () => {
    const p = plan('2026-05-02', intake('2026-05-01', 'lost'))
    expect(daysBetween('2026-05-01', p.spans.firstEgg?.likely ?? '')).toBe(24)
    holds(p.spans.firstEgg, addDays('2026-05-01', 19), addDays('2026-05-01', 29))
  })

  test('W4: four days after the queen can last have laid, eggs show where she is', () => {
    const p = plan('2026-05-05', intake('2026-05-01', 'unseen'), look('2026-05-05', { eggs: 'single' }))
    expect(p.phase).toBe('laying')
    const early = plan('2026-05-04', intake('2026-05-01', 'unseen'), look('2026-05-04', { eggs: 'single' }))
    expect(early.phase).toBe('queen-unknown')
  })

  test('W5 and W6: a sealed cell: emerged for sure by day 9, probably 8; her first eggs by day 20', () => {
    // Found the day it came along with a colony, so that nothing but its age is known.
    const p = plan('2026-05-01', intake('2026-05-01', 'lost', { queenCells: 'capped' }))
    const latest = daysBetween('2026-05-01', p.spans.emergence?.latest ?? '')
    expect(latest).toBe(8)
    expect(latest).toBeLessThanOrEqual(9)
    holds(p.spans.firstEgg, addDays('2026-05-01', 20))
    expect(8 + FIRST_EGG_AFTER_EMERGENCE.likely).toBe(20)
  })

  test('W8: grafted larvae (day 4) go to their nucleus 10 days on, day 14; she emerges about two days later', () => {
    const p = plan(
      '2026-05-01',
      intake('2026-05-01', 'lost', { brood: { eggs: 0, open: 0, capped: 0 } }),
      gave('2026-05-01', 'queen-cell'),
    )
    expect(4 + 10 + daysBetween('2026-05-01', p.spans.emergence?.likely ?? '')).toBe(QUEEN.emerge)
  })

  test('W10: from the egg to her laying daughter, 28 days', () => {
    expect(QUEEN.emerge + FIRST_EGG_AFTER_EMERGENCE.likely).toBe(28)
  })

  test('W11: just before the new queen lays no old brood is left: workers out by 21, drones by 24, she lays on 24-25', () => {
    const p = plan('2026-05-02', intake('2026-05-01', 'lost'))
    const likely = daysBetween('2026-05-01', p.spans.firstEgg?.likely ?? '')
    expect(likely).toBeGreaterThanOrEqual(24)
    expect(likely).toBeLessThanOrEqual(25)
    expect(WORKER.emerge).toBeLessThanOrEqual(likely)
    expect(DRONE.emerge).toBeLessThanOrEqual(likely)
    expect(p.spans.broodless?.from).toBe('2026-05-22')
  })
})

describe('other published examples', () => {
  test('W12: queen removed 12 Aug 2023: virgin on day 13-16, eggs looked for on day 30, new adults 1 Oct (colonialbeekeepers.com)', () => {
    const p = plan('2023-08-13', intake('2023-08-12', 'lost'))
    holds(p.spans.emergence, addDays('2023-08-12', 13), addDays('2023-08-12', 16))
    holds(p.spans.firstEgg, addDays('2023-08-12', 29))
    const telling = plan(
      '2023-08-18',
      intake('2023-08-12', 'lost'),
      look('2023-08-17', { eggs: 'none', cells: 'capped' }),
    )
    const eggs = check(telling, 'new-queen-eggs')
    expect(addDays('2023-08-12', 30) >= eggs.opens && addDays('2023-08-12', 30) <= eggs.closes).toBe(true)
    // Their first egg on day 29 and 21 days to the adult: 50 days.
    expect(addDays('2023-08-12', 29 + WORKER.emerge)).toBe('2023-10-01')
    expect(addDays('2023-08-15', 29 + WORKER.emerge)).toBe('2023-10-04')
  })

  test('W13: a prime swarm left: 8 + 7-8 + 5 days before she can lay (a keeper’s talk, 2013)', () => {
    const p = plan('2026-05-01', intake('2026-05-01', 'unseen', { queenCells: 'capped' }))
    // Cells sealed at the swarming: emergence within 8 days, then 12-13 to the first egg.
    holds(p.spans.firstEgg, addDays('2026-05-01', 20), addDays('2026-05-01', 21))
  })

  test('W14: 16 + 7 + 2 + 3 = 28 days from the egg to her first egg (Connor, Bee Culture)', () => {
    const afterEmergence = 7 + 2 + 3
    expect(QUEEN.emerge + afterEmergence).toBe(28)
    expect(FIRST_EGG_AFTER_EMERGENCE.likely).toBe(afterEmergence)
  })

  test('W15: cells just capped on 19 Aug 2020 (day 8): laying by day 28, 20 days on (a beekeeper’s diary)', () => {
    const p = plan(
      '2020-08-19',
      intake('2020-08-14', 'unseen'),
      look('2020-08-19', { eggs: 'none', cells: 'capped' }),
    )
    holds(p.spans.firstEgg, addDays('2020-08-19', 20 - 1), addDays('2020-08-19', 20))
  })

  test('W16: split 17 May 2014, sealed cell on 31 May: possible, virgin about 1-3 June; on 8 June: not from the old queen', () => {
    const first = plan(
      '2014-05-31',
      intake('2014-05-17', 'unseen'),
      look('2014-05-31', { eggs: 'none', cells: 'capped' }),
    )
    expect(first.surprises).toEqual([])
    holds(first.spans.emergence, '2014-06-01', '2014-06-02')
    const second = plan(
      '2014-06-08',
      intake('2014-05-17', 'unseen'),
      look('2014-06-08', { eggs: 'none', cells: 'capped' }),
    )
    expect(second.surprises.join()).toContain('cannot come from the young brood')
  })

  test('W17: piping on 20 Apr 2011, emergence 20-21 Apr: eggs 2-7 May (a beekeeper’s diary)', () => {
    const p = plan(
      '2011-04-22',
      intake('2011-04-10', 'unseen'),
      look('2011-04-19', { eggs: 'none', cells: 'capped' }),
      look('2011-04-21', { cells: 'emerged' }),
    )
    expect(p.phase).toBe('awaiting-new-queen')
    holds(p.spans.emergence, '2011-04-20', '2011-04-21')
    holds(p.spans.firstEgg, '2011-05-02', '2011-05-07')
  })

  test('W19: from emergence 5+1+2 = 8 at best, 6+4+2 = 12 as a rule, 19 after a bad week (a beekeeper’s blog, 2023)', () => {
    expect(FIRST_EGG_AFTER_EMERGENCE.earliest).toBe(5 + 1 + 2)
    expect(FIRST_EGG_AFTER_EMERGENCE.likely).toBe(6 + 4 + 2)
    expect(FIRST_EGG_AFTER_EMERGENCE.latest).toBeGreaterThanOrEqual(19)
  })

  test('W20: capped cells the day after the swarm, 1 May 2022: they emerge in a week, 7-8 May (a ranch’s diary)', () => {
    const p = plan('2022-05-01', intake('2022-05-01', 'unseen', { queenCells: 'capped' }))
    holds(p.spans.emergence, '2022-05-07', '2022-05-08')
  })

  test('W21: a package with its queen let out on day 7 and laying three days on: first new bees 31 days after hiving', () => {
    const p = plan(
      '2026-05-08',
      intake('2026-05-01', 'caged', { removal: { type: 'swarm' }, brood: { eggs: 0, open: 0, capped: 0 } }),
      cage('2026-05-08', 'released'),
    )
    holds(p.spans.firstEgg, addDays('2026-05-08', 3))
    expect(7 + 3 + WORKER.emerge).toBe(31)
    expect(check(p, 'eggs-after-introduction').opens <= addDays('2026-05-08', 4)).toBe(true)
  })

  test('W22: a test frame given on day 0 is read by day 8, before a virgin could leave on day 10 (a breeder’s page)', () => {
    const p = plan(
      '2026-05-08',
      intake('2026-05-01', 'unseen'),
      look('2026-05-06', { eggs: 'none', cells: 'none' }),
      gave('2026-05-07', 'egg-frame'),
    )
    expect(check(p, 'cells-on-egg-frame').closes <= addDays('2026-05-07', 8)).toBe(true)
    expect(p.spans.emergence?.earliest).toBe(addDays('2026-05-07', 10))
  })

  test('W23: a virgin seen and no eggs after 28 days: she has failed, act (a beekeepers’ association, 2024)', () => {
    const p = plan(
      '2026-06-20',
      intake('2026-05-01', 'unseen'),
      look('2026-05-06', { eggs: 'none', cells: 'capped' }),
      look('2026-06-11', { eggs: 'none', queen: 'seen' }),
    )
    expect(FIRST_EGG_AFTER_EMERGENCE_HARD.latest).toBe(28)
    expect(p.phase).toBe('queenless')
    expect(p.advice.action).toBe('buy-queen')
  })

  test('W26: eggs today but no queen: in 3-4 days the old eggs are larvae, so any eggs are new (Practical Manual of Beekeeping)', () => {
    const early = plan('2026-05-03', intake('2026-05-01', 'unseen'), look('2026-05-03', { eggs: 'single' }))
    expect(early.phase).toBe('queen-unknown')
    expect(daysBetween('2026-05-01', early.horizon.eggs ?? '')).toBe(3)
    expect(daysBetween('2026-05-01', check(early, 'telling-visit').opens)).toBe(4)
  })

  test('W27: the first swarm gone, the new queen’s eggs after sixteen to eighteen days (Quinby, historic)', () => {
    // Cells are about to emerge when the first swarm leaves: sealed, and sealed for some days.
    const p = plan('2026-05-01', intake('2026-05-01', 'unseen', { queenCells: 'capped' }))
    holds(p.spans.firstEgg, addDays('2026-05-01', 16), addDays('2026-05-01', 18))
  })
})

describe('what the published numbers mean for a 30-day hold', () => {
  test('a colony that raises its own queen lays about day 23-25 (16-34) and has capped worker brood about day 32-34: day 30 does not prove her', () => {
    const p = plan('2026-05-02', intake('2026-05-01', 'lost'))
    const day = (d: string | undefined): number => daysBetween('2026-05-01', d ?? '')
    expect(day(p.spans.firstEgg?.likely)).toBeGreaterThanOrEqual(23)
    expect(day(p.spans.firstEgg?.likely)).toBeLessThanOrEqual(25)
    expect(day(p.spans.firstEgg?.earliest)).toBeGreaterThanOrEqual(16)
    expect(day(p.spans.workerBroodProof?.likely)).toBeGreaterThanOrEqual(32)
    expect(day(p.spans.workerBroodProof?.likely)).toBeLessThanOrEqual(34)
    expect(day(p.readiness.expected?.likely)).toBeGreaterThan(30)
  })

  test('Tofilski & Czekonska 2004: mean emergence 12.3 days after the loss lies in the planned span, whatever was seen', () => {
    for (const cells of ['open', 'capped'] as const) {
      const p = plan(
        '2026-05-06',
        intake('2026-05-01', 'unseen'),
        look('2026-05-06', { eggs: 'none', cells }),
      )
      holds(p.spans.emergence, addDays('2026-05-01', cells === 'capped' ? 12 : 13))
    }
  })

  test('Fell & Morse 1984: an open cell on day 8-9 after the loss is late but no surprise', () => {
    for (const day of [8, 9]) {
      const on = addDays('2026-05-01', day)
      expect(
        plan(on, intake('2026-05-01', 'unseen'), look(on, { eggs: 'none', cells: 'open' })).surprises,
      ).toEqual([])
    }
  })

  test('Szabo 1987 and Pérez-Sato & Ratnieks 2006: the means 10.6 and 12.9 days after emergence lie in the first-egg span', () => {
    const p = plan(
      '2026-05-07',
      intake('2026-05-01', 'unseen'),
      look('2026-05-06', { eggs: 'none', cells: 'capped' }),
    )
    const emergence = p.spans.emergence
    if (emergence === undefined) throw new Error('no emergence')
    holds(p.spans.firstEgg, addDays(emergence.likely, 11), addDays(emergence.likely, 13))
    // Eggs 22 days after the latest emergence are Szabo's extreme: past the plan's last day by one at the most.
    expect(daysBetween(p.spans.firstEgg?.latest ?? '', addDays(emergence.latest, 22))).toBeLessThanOrEqual(1)
  })
})
