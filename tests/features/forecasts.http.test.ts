/** Forecasts on the pages: what a colony's page, Today, Supplies, Stands and the rates say, over the invented yard. */
import { beforeAll, describe, expect, test } from 'vitest'
import { addDays } from '../../src/days.ts'
import { colonyForecast } from '../../src/forecast/colony-forecast.ts'
import { DEFAULT_RATES } from '../../src/forecast/rates.ts'
import { listModelOf } from '../../src/forecast/story/walk.ts'
import { suspicionOn } from '../../src/recovery/suspicion.ts'
import type { ColonySummary } from '../../src/store/index.ts'
import {
  betterDay,
  evidenceWords,
  mayWaitUntil,
  moveOutWords,
  oddsWords,
  planActs,
  whenToLook,
} from '../../src/words/forecasts.ts'
import { waitsUntil } from '../../src/words/lines.ts'
import { isQuiet } from '../../src/words/rules.ts'
import { filledFile } from '../support/filled.ts'
import { wordsOf, type Yard, yardOn } from '../support/yard-on.ts'

const DAY = '2026-06-10'
const model = listModelOf(DEFAULT_RATES)

let yard: Yard
let open: ColonySummary[]
beforeAll(async () => {
  yard = await yardOn(DAY, 'operator', filledFile(DAY, 'boxes'))
  open = yard.store.colonies({ open: true })
})

function forecastOf(s: ColonySummary) {
  const found = yard.store.colony(s.id)
  if (found === null) throw new Error(`no ${s.tag}`)
  return colonyForecast(found.history, DAY, { model, protocol: yard.store.protocol(), plan: s.plan })
}

const plain = (text: string): string => text.replaceAll('&#39;', "'").replaceAll('&amp;', '&')

describe('a colony’s page', () => {
  test('says the odds as a sentence, their evidence, the strength, and when to move out', async () => {
    for (const s of open.filter((_, i) => i % 4 === 0)) {
      const f = forecastOf(s)
      const words = plain(wordsOf((await yard.get(`/colony/${s.tag}`)).text))
      expect(words).toContain(oddsWords(f.odds.today))
      for (const e of f.odds.evidence) expect(words.toLowerCase()).toContain(evidenceWords(e).toLowerCase())
      expect(words).toContain(moveOutWords(f.moveOut))
      expect(words).toContain(whenToLook(s.plan, f.telling))
    }
    expect(yard.errors).toEqual([])
  })

  test('keeps headline and ribbon before the odds, and draws every chart with its table', async () => {
    const { text } = await yard.get(`/colony/${open[0]?.tag}`)
    const at = (part: string): number => text.indexOf(part)
    expect(at('class="ribbon"')).toBeGreaterThan(at('<h1'))
    expect(at('id="foresight"')).toBeGreaterThan(at('class="ribbon"'))
    expect(at('The odds in numbers')).toBeGreaterThan(at('class="odds"'))
    expect(at('Strength in numbers')).toBeGreaterThan(at('class="fan"'))
  })

  test('says what a frame of capped brood given on a chosen day would change', async () => {
    const s = open.find((c) => c.phase === 'rearing') as ColonySummary
    const on = addDays(DAY, 7)
    const now = plain(wordsOf((await yard.get(`/colony/${s.tag}`)).text))
    const then = plain(wordsOf((await yard.get(`/colony/${s.tag}?frame=${on}`)).text))
    const effect = /one frame of capped brood lifts the lowest point from [^;]*; [^.]*\./
    expect(now).toMatch(/Given today: one frame/)
    expect(then).toMatch(/Given on Wed 17 Jun: one frame/)
    expect(effect.exec(then)?.[0]).not.toBe(effect.exec(now)?.[0])
    for (const bad of ['2019-01-01', 'soon', '2031-01-01'])
      expect(wordsOf((await yard.get(`/colony/${s.tag}?frame=${bad}`)).text)).toContain('Given today')
  })

  test('foresees nothing of a colony that has left', async () => {
    const closed = yard.store.colonies({ open: false })[0]
    expect((await yard.get(`/colony/${closed?.id}`)).text).not.toContain('id="foresight"')
  })
})

describe('the plan stays in charge', () => {
  test('of when to look: acts, quiet time and late checks come before the telling day', () => {
    const seen = new Set<string>()
    for (const s of open) {
      const { telling } = forecastOf(s)
      const words = whenToLook(s.plan, telling)
      if (planActs(s.plan)) {
        seen.add('acts')
        expect(words).toMatch(/^The plan says what to do: /)
      } else if (isQuiet(s.plan)) {
        seen.add('quiet')
        expect(words).toMatch(/^Quiet time: the lid stays on/)
      } else if (/tells most/.test(words)) seen.add('tells')
      // No day is named on which the plan keeps the lid on.
      if (waitsUntil(s.plan) === null) continue
      const named = /A look on \w{3} (\d+ \w{3}) tells most/.exec(words)?.[1]
      if (named !== undefined && s.plan.quiet !== null) {
        const day =
          telling.find((t) => new Date(t.day).getUTCDate() === Number(named.split(' ')[0]))?.day ?? ''
        expect(day >= s.plan.quiet.from && day <= s.plan.quiet.to).toBe(false)
      }
    }
    expect([...seen].sort()).toEqual(['acts', 'quiet', 'tells'])
  })

  test('of Today: another day is named only where the plan leaves one open and it tells much more', async () => {
    const today = plain(wordsOf((await yard.get('/')).text))
    const lines = open.flatMap((s) => {
      const until = mayWaitUntil(s.plan)
      if (until === null) return []
      const days = forecastOf(s).telling.filter((t) => t.day <= until)
      return betterDay(days) ?? []
    })
    for (const line of lines) expect(today).toContain(line)
    expect([...today.matchAll(/A look on [^.]* tells/g)].length).toBe(lines.length)
  })

  test('of supplies: what it says to give is needed, what it says to unite needs nothing', async () => {
    const { text } = await yard.get('/supplies')
    const which = plain(wordsOf(text.slice(text.indexOf('id="which"'), text.indexOf('id="donors"'))))
    const buys = open.filter((s) => s.action === 'buy-queen')
    expect(buys.length).toBeGreaterThan(0)
    for (const s of buys) expect(which).toContain(`${s.tag} 100 %`)
    for (const s of open.filter((c) => c.action === 'unite')) expect(which).not.toContain(`${s.tag} `)
  })
})

describe('telling days in words', () => {
  const on = (net: number, day: string) => ({ day, bits: net, harm: 0, net })
  test('twice, four times, hardly more, or little either way', () => {
    expect(betterDay([on(0.3, '2026-05-10'), on(0.6, '2026-05-12')])).toBe(
      'A look on Tue 12 May tells twice what today does.',
    )
    expect(betterDay([on(0.25, '2026-05-10'), on(1, '2026-05-12')])).toBe(
      'A look on Tue 12 May tells 4 times what today does.',
    )
    expect(betterDay([on(0.05, '2026-05-10'), on(1, '2026-05-12')])).toBe(
      'A look on Tue 12 May tells most; today tells little.',
    )
    expect(betterDay([on(0.5, '2026-05-10'), on(0.6, '2026-05-12')])).toBeNull()
    expect(betterDay([on(0.01, '2026-05-10'), on(0.1, '2026-05-12')])).toBeNull()
  })
})

describe('supplies', () => {
  const advised = async (query: string): Promise<number> => {
    const words = wordsOf((await yard.get(`/supplies?${query}`)).text)
    return words.includes('No need to order') ? 0 : Number(/Order (\d+) queens?:/.exec(words)?.[1])
  }

  test('advise more for a smaller chance of running short, less with queens on hand', async () => {
    const [bold, careful] = [await advised('chanceShort=0.25'), await advised('chanceShort=0.01')]
    expect(careful).toBeGreaterThan(bold)
    expect(await advised('chanceShort=0.01&inHand=2')).toBe(careful - 2)
    expect(await advised('chanceShort=0.01&leadDays=14&coverDays=14')).toBeGreaterThanOrEqual(careful)
    expect(await advised('inHand=500')).toBe(0)
  })

  test('name what cannot be read and keep what was typed', async () => {
    const answer = await yard.get('/supplies?leadDays=soon&costOver=-3&chanceShort=7')
    expect(answer.status).toBe(422)
    const words = plain(answer.text)
    expect(words).toContain('must be a whole number from 0 to 14, not “soon”')
    expect(words).toContain('must be a number from 0 to 100000, not “-3”')
    expect(words).toContain('value="soon"')
    expect(words).toMatch(/Order \d+ queens/)
  })

  test('lock out donors where brood disease was suspected', async () => {
    const { text } = await yard.get('/supplies')
    const donors = plain(wordsOf(text.slice(text.indexOf('id="donors"'))))
    const suspected = open.filter((s) => {
      const history = yard.store.colony(s.id)?.history
      return history !== undefined && suspicionOn(history.entries, DAY) !== null
    })
    expect(suspected.length).toBeGreaterThan(0)
    for (const s of suspected) expect(donors).toMatch(new RegExp(`${s.tag} [^.]*brood disease was suspected`))
  })

  test('are the operator’s', async () => {
    for (const role of ['helper', 'beekeeper'] as const) {
      const other = await yardOn(DAY, role)
      expect((await other.get('/supplies')).status).toBe(403)
      expect((await other.get('/supplies/stands')).status).toBe(403)
    }
  })

  test('of an empty yard say so', async () => {
    const empty = await yardOn(DAY)
    for (const path of ['/supplies', '/supplies/stands'])
      expect(wordsOf((await empty.get(path)).text)).toContain('No colony in the yard')
    expect(empty.errors).toEqual([])
  })
})

describe('stands', () => {
  test('are asked for, kept, and told free by date', async () => {
    const [first] = yard.store.yards()
    const name = `stands:${first?.yard}`
    const refused = await yard.post('/supplies/stands', { [name]: 'many' })
    expect(refused.status).toBe(422)
    expect(refused.text).toContain('value="many"')
    expect(yard.store.settings.get('stands')).toEqual({})
    expect((await yard.post('/supplies/stands', { [name]: String((first?.open ?? 0) + 3) })).to).toBe(
      '/supplies/stands?saved=1',
    )
    const words = wordsOf((await yard.get('/supplies/stands')).text)
    expect(words).toContain('3 stands are free today')
    await yard.post('/supplies/stands', { [name]: '' })
    expect(yard.store.settings.get('stands')).toEqual({})
  })
})

describe('what the odds rest on', () => {
  test('shows every rate with its basis, the calibration, and the yard’s own beside the defaults', async () => {
    const words = wordsOf((await yard.get('/rates')).text)
    expect(words).toMatch(/Of [\d,]+ odds of about 70 %, (69|70|71) % were so/)
    expect(words).toContain('Pérez-Sato')
    expect(words).toMatch(/Learned from \d+ closed colonies/)
  })

  test('goes by the own rates once they are chosen, and back', async () => {
    const s = open.find((c) => c.phase === 'queen-unknown') as ColonySummary
    const odds = async (): Promise<string> => {
      const { text } = await yard.get(`/colony/${s.tag}`)
      return wordsOf(text.slice(text.indexOf('id="foresight"'), text.indexOf('The odds in numbers')))
    }
    const before = await odds()
    expect((await yard.post('/rates/use', { use: 'own' })).to).toBe('/rates?saved=1')
    expect(yard.store.settings.get('ownRates')?.on).toBe(DAY)
    expect(wordsOf((await yard.get('/rates')).text)).toContain('this yard’s own rates, learned on')
    expect(await odds()).not.toBe(before)
    await yard.post('/rates/use', { use: 'default' })
    expect(await odds()).toBe(before)
    expect((await yard.post('/rates/use', { use: 'other' })).to).toBe('/rates')
  })

  test('may be read by everybody and changed by operators', async () => {
    const helper = await yardOn(DAY, 'helper')
    expect((await helper.get('/rates')).status).toBe(200)
    expect((await helper.post('/rates/use', { use: 'own' })).status).toBe(403)
    expect(helper.store.settings.get('ownRates')).toBeNull()
  })
})
