/** Whether two people are the same for all anybody can tell; and what a full name and a number look like. */

/** Whatever the capitals, blanks, dots and accents; 'Ines' is 'Ines Albrecht', and so is 'I. Albrecht'. */
export function sameName(a: string, b: string): boolean {
  const [x, y] = [wordsOf(a), wordsOf(b)]
  if (x.length === 0 || y.length === 0) return x.length === y.length
  const within = (some: string[], all: string[]): boolean =>
    some.every((w) => all.some((v) => v === w || isInitial(w, v) || isInitial(v, w)))
  return within(x, y) || within(y, x)
}

const isInitial = (short: string, long: string): boolean => /^\p{L}$/u.test(short) && long.startsWith(short)

/** The words of a name, without capitals, accents and marks. */
export const wordsOf = (name: string): string[] =>
  name
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean)

/** Small words in names of people and companies, and what people are called before their name. */
const SMALL = 'a an and co da de der du la le of the van von y mr mrs ms miss dr sr'.split(' ')

const inName = (text: string): string[] => wordsOf(text).filter((w) => w.length > 1 && !SMALL.includes(w))

/** Bears the customer's name: the brother of the customer is no licensed trade either. */
export const sharesName = (a: string, b: string): boolean =>
  sameName(a, b) || inName(a).some((w) => w.length > 2 && inName(b).includes(w))

/** Two names at least, each with a capital where its letters have any: a person or a company by their full name. */
export const isFullName = (text: string): boolean =>
  new Set(
    text
      .split(/[^\p{L}\p{M}\p{N}]+/u)
      .filter((w) => /^[\p{Lu}\p{Lt}\p{Lo}\p{N}]/u.test(w) && inName(w).length > 0)
      .map((w) => w.toLowerCase()),
  ).size > 1

/** A number as licences, tickets and reports bear one: four digits or more, no day, year or time, and not 1111 or 12345 (judgement). */
export function isNumber(text: string): boolean {
  const digits = text
    .replaceAll(/\d{4}-\d\d-\d\d|\b(19|20)\d\d\b|\b\d{1,2}:\d\d\b/g, '')
    .replaceAll(/\D/g, '')
  return (
    digits.length >= 4 &&
    !/^(\d+)\1+$/.test(digits) &&
    !['0123456789', '9876543210'].some((row) => row.includes(digits))
  )
}
