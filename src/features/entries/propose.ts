/** The next tag and the next free stand, proposed where an intake is logged: read off what stands in the yard. */
import type { ColonySummary } from '../../store/index.ts'

/** 'W-09' → { before: 'W-', digits: '09' }; null where a tag ends in no number. */
function numbered(tag: string): { before: string; digits: string } | null {
  const [, before, digits] = /^(.*?)(\d{1,6})$/.exec(tag) ?? []
  return before === undefined || digits === undefined ? null : { before, digits }
}

/**
 * The tag after the highest one of the same series, written as wide as that one; '' where the yard's tags are in no series. `last`: the tag
 * given last. Example: after 'W-09' comes 'W-10'.
 */
export function nextTag(colonies: readonly ColonySummary[], last: string | null): string {
  const series = last === null ? null : numbered(last)
  if (series === null) return ''
  const same = [last ?? '', ...colonies.map((s) => s.tag)].flatMap((tag) => {
    const n = numbered(tag)
    // The book tells tags apart without regard to capitals.
    return n !== null && n.before.toLowerCase() === series.before.toLowerCase() ? [n.digits] : []
  })
  const highest = same.reduce((a, b) => (Number(b) > Number(a) ? b : a), series.digits)
  return `${series.before}${String(Number(highest) + 1).padStart(highest.length, '0')}`
}

/** The lowest numbered stand of the yard on which nothing stands; '' where its stands have no numbers. */
export function freeStand(colonies: readonly ColonySummary[], yard: string): string {
  const taken = new Set(
    colonies.flatMap((s) =>
      s.yard === yard && s.stand !== null && /^\d+$/.test(s.stand) ? [Number(s.stand)] : [],
    ),
  )
  if (taken.size === 0) return ''
  let stand = 1
  while (taken.has(stand)) stand++
  return String(stand)
}
