/** "Late" means one thing: the same boxes on Today, on the round and in the yard. */
import { expect, it } from 'vitest'
import { filledFile } from '../support/filled.ts'
import { testYard } from '../support/yard-app.ts'

const DAY = '2026-06-10'

/** Tags in the rows of a page that carry the mark of what is late, and what stands in the mark. */
function lateOn(html: string, row: RegExp): Map<string, string> {
  return new Map(
    [...html.matchAll(row)].flatMap(([li]) => {
      const tag = /class="tag"[^>]*>([^<]+)</.exec(li)?.[1]?.trim()
      const mark = /mark-late">(?:<svg.*?<\/svg>)?([^<]+)</s.exec(li)?.[1]?.trim()
      return tag === undefined || mark === undefined ? [] : [[tag, mark] as const]
    }),
  )
}

const sorted = (late: Map<string, string>): string[] => [...late].map(([t, m]) => `${t} ${m}`).sort()

it('the same boxes are late by as many days on Today, on the round and in the yard', async () => {
  const yard = testYard({ day: DAY, file: filledFile(DAY, 'boxes') })
  const html = async (path: string): Promise<string> => (await yard.ask('beekeeper', path)).text()
  const [today, round, all] = [await html('/'), await html('/round?yard='), await html('/yard')]

  const onToday = lateOn(today, /<li class="todo\b.*?<\/li>/gs)
  expect(onToday.size).toBeGreaterThan(2)
  expect(today).toContain(`, ${onToday.size} late`)
  expect(sorted(lateOn(round, /<li class="stop\b.*?<\/li>/gs))).toEqual(sorted(onToday))
  expect(round).toMatch(new RegExp(`of \\d+, ${onToday.size} late`))
  expect(sorted(lateOn(all, /<li class="line\b.*?<\/li>/gs))).toEqual(sorted(onToday))
})
