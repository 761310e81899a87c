/** The end of a round in words. */
import { expect, it } from 'vitest'
import { doneWords } from '../../../src/features/round/words.ts'
import { RULES } from '../../../src/recovery/plan-types.ts'
import { isAsked } from '../../../src/words/rules.ts'

const bare = { title: 'Opened', facts: [] }
const look = { title: 'Opened', facts: ['eggs none', 'queen cells none'] }
const gift = { title: 'Frame of eggs given', facts: ['1 frame', 'from W-2'] }

it('says nothing twice of what was done at a box', () => {
  const told = 'Opened: eggs none, queen cells none. Frame of eggs given: 1 frame, from W-2.'
  expect(doneWords([bare, look, gift])).toBe(told)
  expect(doneWords([look, gift, look])).toBe(told)
  expect(doneWords([bare, bare])).toBe('Opened.')
})

it('tells what is to be found out from what is to be done', () => {
  expect(RULES.filter((rule) => !isAsked(rule)).sort()).toEqual([
    'egg-frame',
    'laying-workers',
    'move-out',
    'unite-or-boost',
  ])
})
