/** A caged queen is never forgotten, whatever else goes on in her box. */
import { daysBetween } from '../../days.ts'
import type { Adviser } from './context.ts'

/** A virgin who cannot fly by about three weeks of age mates no more; she is let out after days (common practice: 3). */
const VIRGIN_CAGED_AT_MOST = 3

export const cagedQueen: Adviser = ({ s, today, asked }) => {
  const ask = asked('queen-release')
  if (ask === undefined) return null
  const cells =
    s.cellsBeside === null && s.cellsSeen?.holding !== true
      ? []
      : [{ code: 'cut-cells-before-release' } as const]
  const { caged } = s
  if (caged === null) return { action: 'release-queen', rule: ask.rule, reasons: [ask.why, ...cells] }
  const still = caged.stillCagedOn
  const eggsFrom =
    s.queen.is === 'laying' ? s.queen.firstSeen : s.queen.is === 'queenright' ? s.queen.provenOn : null
  if (eggsFrom !== null)
    return {
      action: 'release-queen',
      rule: ask.rule,
      reasons: [still === null || still < eggsFrom ? ask.why : { code: 'two-queens', still }],
    }
  if (still === null) {
    const late = today > ask.closes ? [{ code: 'cage-forgotten' } as const] : []
    return { action: 'release-queen', rule: ask.rule, reasons: [ask.why, ...late, ...cells] }
  }
  const days = daysBetween(caged.since, still)
  const long = days >= VIRGIN_CAGED_AT_MOST + 2 ? 'long-caged' : 'still-caged'
  const code = caged.who === 'virgin' ? 'virgin-still-caged' : long
  return { action: 'release-queen', rule: ask.rule, reasons: [{ code, on: still, days }, ...cells] }
}
