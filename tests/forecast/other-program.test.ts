/**
 * The odds equal an exact enumeration in another language (other-program.ts tells it, other-program.json keeps what it
 * answered, with the hash of the program and the tables that it rests on).
 */
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { addDays } from '../../src/days.ts'
import { queenOdds, storyOf } from '../../src/forecast/queen-odds.ts'
import { DEFAULT_RATES } from '../../src/forecast/rates.ts'
import { KINDS } from '../../src/forecast/story/kinds.ts'
import { modelOf } from '../../src/forecast/story/walk.ts'
import { historyOf } from '../../src/journal/history.ts'
import { hashOf, MODELS, programOf, rates } from './other-program.ts'

const KEPT = JSON.parse(readFileSync(new URL('./other-program.json', import.meta.url), 'utf8')) as Record<
  string,
  { hash: string; odds: Record<string, number> }
>

describe('the odds equal an exact enumeration in WebPPL', () => {
  for (const { name, intake, brood, looks, last } of MODELS)
    it(name, () => {
      const id = (n: number): string => `00000000-0000-7000-8000-${String(n).padStart(12, '0')}`
      const entries = [
        {
          ...intake,
          id: id(1),
          kind: 'intake' as const,
          colony: 'W-1',
          on: '2026-05-01',
          queen: 'unseen' as const,
        },
        ...Object.entries(looks).map(([t, seen], i) => ({
          id: id(2 + i),
          kind: 'inspection' as const,
          colony: 'W-1',
          by: 'x',
          opened: true,
          on: addDays('2026-05-01', Number(t)),
          ...seen,
        })),
      ]
      const history = historyOf('W-1', entries)
      if (history === null) throw new Error('no history')
      const today = addDays('2026-05-01', last)
      const odds = queenOdds(storyOf(history, today, modelOf(rates), today)).today
      const program = programOf(rates, DEFAULT_RATES.aliveUnseen, brood, looks, last)
      const theirs = KEPT[name]
      expect(
        theirs?.hash,
        'other tables than those it was asked with: run tests/forecast/make-other-program.ts',
      ).toBe(hashOf(program))
      for (const kind of KINDS) expect(odds[kind], kind).toBeCloseTo(theirs?.odds[kind] ?? 0, 10)
    })
})
