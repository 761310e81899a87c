/** The odds in a plain sentence. */
import type { KindShares } from './queen-odds.ts'
import { KIND_WORDS, KINDS } from './story/kinds.ts'

/** A share as people say it: '9 in 10', 'almost certainly'. Example: inTen(0.72) = '7 in 10'. */
function inTen(p: number): string {
  if (p >= 0.975) return 'almost certain'
  if (p >= 0.945) return '19 in 20'
  if (p < 0.01) return 'next to none'
  if (p < 0.035) return '1 in 50'
  if (p < 0.07) return '1 in 20'
  return `${Math.max(1, Math.round(p * 10))} in 10`
}

/**
 * The likeliest, and what else may well be. Example: 'A queen being raised: 7 in 10. Otherwise a laying queen (2 in 10).'
 */
export function sentenceOf(odds: KindShares): string {
  const ranked = [...KINDS].sort((a, b) => odds[b] - odds[a])
  const [first = 'laying', ...rest] = ranked
  const name = KIND_WORDS[first]
  const head = `${name.charAt(0).toUpperCase()}${name.slice(1)}: ${inTen(odds[first])}.`
  const others = rest.filter((k) => odds[k] >= 0.05).slice(0, 2)
  if (others.length === 0) return head
  return `${head} Otherwise ${others.map((k) => `${KIND_WORDS[k]} (${inTen(odds[k])})`).join(' or ')}.`
}
