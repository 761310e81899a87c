/** Reasons are data: the English beside them is theirs word for word, and Spanish says each of them. */
import { describe, expect, it } from 'vitest'
import { planOf } from '../../src/decision/index.ts'
import { readPlanInput } from '../../src/node/commands/plan-input.ts'
import type { Plan } from '../../src/recovery/index.ts'
import { english } from '../../src/words/en/index.ts'
import { spanish } from '../../src/words/es/index.ts'
import hard from '../recovery/cases/hard.json' with { type: 'json' }
import own from '../recovery/cases/own.json' with { type: 'json' }
import trade from '../recovery/cases/trade.json' with { type: 'json' }
import worked from '../recovery/cases/worked.json' with { type: 'json' }

interface Case {
  input: { tag: string; entries: { on: string; known?: string }[] }
  expect: { asOf: string }[]
}

const plans: Plan[] = ([hard, own, trade, worked] as unknown as Case[][]).flat().flatMap((c) =>
  c.expect.map(({ asOf }) => {
    const entries = c.input.entries
      .filter((e) => (e.known ?? e.on) <= asOf)
      .map(({ known: _known, ...entry }) => entry)
    const read = readPlanInput(JSON.stringify({ ...c.input, entries }), asOf)
    if (!read.ok) throw new Error(JSON.stringify(read.problems))
    return planOf(read.history, asOf, read.protocol)
  }),
)

/** Every sentence of a plan: English as printed, the reasons it is made of, and Spanish. */
const sentences = (p: Plan): { printed: string; made: string; spanish: string; codes: string[] }[] =>
  [
    ...p.checks.map((c) => ({ printed: c.why, reasons: [c.reason] })),
    { printed: p.advice.why, reasons: p.advice.reasons },
    ...p.surprised.map((r, i) => ({ printed: p.surprises[i] ?? '', reasons: [r] })),
  ].map(({ printed, reasons }) => ({
    printed,
    made: english.reasons.all(reasons),
    spanish: spanish.reasons.all(reasons),
    codes: reasons.map((r) => r.code),
  }))

const all = [...new Map(plans.flatMap(sentences).map((s) => [s.printed, s])).values()]

/** Words that every longer English sentence has and no Spanish one does. */
const ENGLISH = /\b(the|and|with|was|were|queen|bees|brood|eggs|frame|until)\b/i

describe('the reasons of all worked cases', () => {
  it('are many', () => {
    expect(new Set(all.flatMap((s) => s.codes)).size).toBeGreaterThan(60)
  })

  it('make the English that is printed', () => {
    expect(all.filter((s) => s.made !== s.printed)).toEqual([])
  })

  it('are said in Spanish, whole', () => {
    expect(all.filter((s) => ENGLISH.test(s.spanish) || /undefined|null|\[object/.test(s.spanish))).toEqual(
      [],
    )
  })

  it('name in Spanish the days that English names', () => {
    const days = (text: string, day: RegExp): number[] => [...text.matchAll(day)].map((m) => Number(m[1]))
    const said = (s: (typeof all)[number]): number[][] =>
      [
        days(s.made, /[A-Z][a-z]{2} (\d+) [A-Z][a-z]{2}/g),
        days(s.spanish, /(?:lun|mar|mié|jue|vie|sáb|dom) (\d+) [a-z]{3,4}/g),
      ].map((list) => [...new Set(list)].sort((a, b) => a - b))
    expect(
      all.filter((s) => String(said(s)[0]) !== String(said(s)[1])).map((s) => [s.made, s.spanish]),
    ).toEqual([])
  })

  it('say in Spanish what keeps a colony here', () => {
    const unmet = plans.flatMap((p) => p.readiness.unmet)
    expect(unmet.filter((u) => english.reasons.unmet(u.reason) !== u.what)).toEqual([])
    expect(unmet.filter((u) => ENGLISH.test(spanish.reasons.unmet(u.reason)))).toEqual([])
  })
})

describe('the test itself', () => {
  it('finds English', () => {
    expect(ENGLISH.test(english.reasons.all([{ code: 'first-days' }, { code: 'layer' }]))).toBe(true)
  })
})
