/** A caged queen is never forgotten, whatever else goes on in her box. */
import { daysBetween, inWords } from '../../days.ts'
import type { Adviser } from './context.ts'

/** A virgin who cannot fly by about three weeks of age mates no more; she is let out after days (common practice: 3). */
const VIRGIN_CAGED_AT_MOST = 3

export const cagedQueen: Adviser = ({ s, today, asked }) => {
  const ask = asked('queen-release')
  if (ask === undefined) return null
  const cells =
    s.cellsBeside === null && s.cellsSeen?.holding !== true
      ? ''
      : ' There are queen cells: cut every one before she comes out, or keep one and not her.'
  const { caged } = s
  if (caged === null) return { action: 'release-queen', rule: ask.rule, why: `${ask.why}${cells}` }
  const still = caged.stillCagedOn
  const eggsFrom =
    s.queen.is === 'laying' ? s.queen.firstSeen : s.queen.is === 'queenright' ? s.queen.provenOn : null
  if (eggsFrom !== null)
    return {
      action: 'release-queen',
      rule: ask.rule,
      why:
        still === null || still < eggsFrom
          ? ask.why
          : `Two queens: one in the cage, still there on ${inWords(still)}, and another that lays. Take one of them out today: the caged one if the eggs are good.`,
    }
  if (still === null) {
    const late =
      today > ask.closes
        ? ' Nobody has looked for days: look for queen cells as well, in case she is dead.'
        : ''
    return { action: 'release-queen', rule: ask.rule, why: `${ask.why}${late}${cells}` }
  }
  const days = daysBetween(caged.since, still)
  const why =
    caged.who === 'virgin' || days >= VIRGIN_CAGED_AT_MOST + 2
      ? `Still in her cage on ${inWords(still)}, ${days} days after it went in: let her out by hand${caged.who === 'virgin' ? ', for a virgin has to fly within her first three weeks' : ' if the bees on the cage are calm; if they cling and bite, look for another queen or for cells'}.`
      : `Still in her cage on ${inWords(still)}, ${days} days after it went in: let her out by hand if the bees on the cage are calm; if they cling and bite, wait a day.`
  return { action: 'release-queen', rule: ask.rule, why: `${why}${cells}` }
}
