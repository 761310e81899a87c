/** Whether two people, or two places, are the same for all anybody can tell; and whether a word says anything at all. */

/** Whatever the capitals, blanks, dots and accents; 'Ines' is 'Ines Albrecht', and so is 'I. Albrecht'. */
export function sameName(a: string, b: string): boolean {
  const [x, y] = [wordsOf(a), wordsOf(b)]
  if (x.length === 0 || y.length === 0) return x.length === y.length
  const within = (some: string[], all: string[]): boolean =>
    some.every((w) => all.some((v) => v === w || isInitial(w, v) || isInitial(v, w)))
  return within(x, y) || within(y, x)
}

const isInitial = (short: string, long: string): boolean => /^\p{L}$/u.test(short) && long.startsWith(short)

/** The same place: one says no more than the other, in other words of the same. A number more or less is another house. */
export function samePlace(a: string, b: string): boolean {
  const [x, y] = [wordsOf(a), wordsOf(b)]
  return x.every((w) => y.includes(w)) || y.every((w) => x.includes(w))
}

const wordsOf = (name: string): string[] =>
  name
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean)

/** What is typed to get past a field (judgement). */
const NO_ANSWERS =
  'ok okay yes no none na n a x xx xxx not known unknown me myself self owner customer tenant later done cleared checked fine licensed licence license company trade'.split(
    ' ',
  )

/** Says more than that: 'ok', 'n/a' or 'the owner' is no name and no licence. */
export const isAnswer = (text: string): boolean =>
  wordsOf(text).some((w) => !NO_ANSWERS.includes(w) && w !== 'the')
