/** One date a box: headline, card, advice and list say the same day until which a box can wait, over the invented yard. */
import { beforeAll, expect, it } from 'vitest'
import { colonyPath } from '../../src/app/index.ts'
import { addDays, inWords } from '../../src/days.ts'
import { filledFile } from '../support/filled.ts'
import { someOf } from '../support/long.ts'
import { wordsOf, type Yard, yardOn } from '../support/yard-on.ts'

const DAY = '2026-06-10'
/** 'wait until Sun 24 May', 'Leave it alone until Sun 24 May'. Not of quiet time or a rule, which have ends of their own. */
const UNTIL = /(?:wait|alone) until (\w{3} \d{1,2} \w{3})/g

const untils = (text: string): string[] => [...text.matchAll(UNTIL)].map((m) => m[1] ?? '')

let yard: Yard
beforeAll(async () => {
  yard = await yardOn(DAY, 'operator', filledFile(DAY, 'boxes'))
})

it.each(someOf([0, 1, 2, 3], 1))('no page says two dates of one box, %i days on', async (later) => {
  const today = addDays(DAY, later)
  yard.setDay(today)
  const list = wordsOf((await yard.get('/')).text).split(' Can wait ')[1] ?? ''
  let said = 0
  for (const s of yard.store.colonies({ open: true })) {
    const { until, advice, lost } = s.plan
    const pages = [colonyPath(s), `${colonyPath(s)}/visit`, `/round/box/${encodeURIComponent(s.tag)}?yard=`]
    for (const path of pages) {
      const found = untils(wordsOf((await yard.get(path)).text).split('Checks')[0] ?? '')
      said += found.length
      for (const day of found)
        expect(day, `${path}: ${advice.why}`).toBe(until === null ? '' : inWords(until))
    }
    const waits = advice.action === 'leave-alone' || (advice.action === 'none' && lost === null)
    if (!waits) continue
    // On Today's list it stands under that very day.
    const before = list.slice(0, list.search(new RegExp(`(^| )${s.tag}( |$)`)))
    const day = [...before.matchAll(/until (?:tomorrow, )?(\w{3} \d{1,2} \w{3})/g)].at(-1)?.[1]
    expect(day, `${s.tag} on Today`).toBe(until === null ? undefined : inWords(until))
  }
  expect(said).toBeGreaterThan(0)
})
