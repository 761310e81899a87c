/** Whether two people are the same for all anybody can tell; and what a full name and a number look like. */
import { wordsOf } from '../../records/index.ts'

/** Whatever the capitals, blanks, dots and accents; 'Ines' is 'Ines Albrecht', and so is 'I. Albrecht'. */
export function sameName(a: string, b: string): boolean {
  const [x, y] = [wordsOf(a), wordsOf(b)]
  if (x.length === 0 || y.length === 0) return x.length === y.length
  const within = (some: string[], all: string[]): boolean =>
    some.every((w) => all.some((v) => v === w || isInitial(w, v) || isInitial(v, w)))
  return within(x, y) || within(y, x)
}

const isInitial = (short: string, long: string): boolean => /^\p{L}$/u.test(short) && long.startsWith(short)

/** Small words in names of people and companies, and what people are called before their name. */
const SMALL = 'a an and co da de der du la le of the van von y mr mrs ms miss dr sr'.split(' ')

const inName = (text: string): string[] => wordsOf(text).filter((w) => w.length > 1 && !SMALL.includes(w))

/** Bears the customer's name: the brother of the customer is no licensed trade either. */
export const sharesName = (a: string, b: string): boolean =>
  sameName(a, b) || inName(a).some((w) => w.length > 2 && inName(b).includes(w))

/** Nobody is called so: what people type where they have no name. Few on purpose; what is photographed counts for more. */
const NO_NAME =
  'not yet nobody none myself owner tenant landlord customer neighbour neighbor says said told asked ask unknown somebody someone later tomorrow today pending'.split(
    ' ',
  )
/** A trade, and whose it is: without a name beside it, nobody. */
const TRADE_ALONE =
  'local licensed electrician electric electrical electricity gas power fitter heating engineer builder surveyor laboratory lab supplier supply company service services firm ltd llc inc trade'.split(
    ' ',
  )

/** Two names at least, each with a capital where its letters have any: a person or a company by their full name. */
export function isFullName(text: string): boolean {
  const words = text
    .split(/[^\p{L}\p{M}\p{N}]+/u)
    .filter((w) => /^[\p{Lu}\p{Lt}\p{Lo}\p{N}]/u.test(w) && inName(w).length > 0)
    .map((w) => w.toLowerCase())
  return (
    new Set(words).size > 1 &&
    !wordsOf(text).some((w) => NO_NAME.includes(w)) &&
    !words.every((w) => TRADE_ALONE.includes(w))
  )
}

/** A number as licences, tickets and reports bear one: four digits or more, no day, year or time, and not 1111 or 12345 (judgement). */
export function isNumber(text: string): boolean {
  const digits = text
    .replaceAll(/\d{4}-\d\d-\d\d|\b\d{1,2}[./-]\d{1,2}[./-](19|20)?\d\d\b/g, '')
    .replaceAll(/\b(19|20)\d\d\b|\b\d{1,2}[:.h]\d\d\b|^\D*(19|20)\d\d[01]\d[0-3]\d\D*$/g, '')
    .replaceAll(/\D/g, '')
  return (
    digits.length >= 4 &&
    !/^(\d+)\1+$/.test(digits) &&
    !['0123456789', '9876543210'].some((row) => row.includes(digits))
  )
}
