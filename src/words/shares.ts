/** Shares and small numbers as people say them. */

/** With fewer colonies than this a reading says what cannot be concluded (common practice asks for ten or more). */
export const FEW = 10

/** Said beside a group with fewer than ten colonies wherever its figures stand without a sentence; '' for others. */
export const fewWords = (n: number): string => (n < FEW ? ', too few' : '')

/** What those words mean, once on a page that has them. */
export const FEW_MEANS = `Too few: fewer than ${FEW} colonies. Such a group can neither be ranked nor foretell its next colony.`

/** '78 %'; 'under 1 %' and 'over 99 %' where rounding would claim certainty. */
export function percent(share: number): string {
  if (share > 0 && share < 0.01) return 'under 1 %'
  if (share < 1 && share > 0.99) return 'over 99 %'
  return `${Math.round(share * 100)} %`
}

/** '62 to 88 %' */
export function percentRange(lower: number, upper: number): string {
  const [low, high] = [percent(lower), percent(upper)]
  if (low === high) return `about ${low}`
  return /^\d+ %$/.test(low) && /^\d+ %$/.test(high) ? `${low.slice(0, -2)} to ${high}` : `${low} to ${high}`
}

/** Limits in a narrow column of per cents. Example: shortRange(0.54, 0.812) = '54–81'. */
export function shortRange(lower: number, upper: number): string {
  const short = (share: number): string =>
    share > 0 && share < 0.01 ? '<1' : share < 1 && share > 0.99 ? '>99' : String(Math.round(share * 100))
  const [low, high] = [short(lower), short(upper)]
  return low === high ? low : `${low}–${high}`
}
