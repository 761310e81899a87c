/** Whether two sheets are of one house: a street is written in many ways, a telephone in one. To ask once too often costs a tap. */
import { wordsOf } from './job-state.ts'
import type { Job } from './removal-sheet.ts'

export const digitsOf = (text = ''): string => text.replaceAll(/\D/g, '')

/** Whether a number is that telephone's: its last seven digits, for country and area are left out or not. */
export function isTelephone(number: string, phone: string | undefined): boolean {
  const line = digitsOf(phone).slice(-7)
  return line.length > 5 && digitsOf(number).endsWith(line)
}

/** Words beside a number that say no house ('No. 4', 'Flat 2'), and those that every street has. */
const BESIDE = 'no nr flat unit apt house'.split(' ')
const ANY_STREET =
  'the old new upper lower north south east west street road row lane avenue ave drive court place way close blvd calle avenida camino'.split(
    ' ',
  )
/** Letters by which two words are one that was mistyped or cut short: 'Inventd' (judgement). */
const ALIKE = 5

const namesIn = (words: readonly string[]): string[] =>
  words.filter((w) => w.length > 2 && !/\d/.test(w) && !ANY_STREET.includes(w) && !BESIDE.includes(w))

const isLike = (a: string, b: string): boolean =>
  a === b || (a.length >= ALIKE && b.length >= ALIKE && a.slice(0, ALIKE) === b.slice(0, ALIKE))

/** One number and one name of a street between the same commas: '4a Invented Rd' is '4-6 Inventd Row'. */
function sameDoor(a: string, b: string): boolean {
  const [x, y] = [wordsOf(a), wordsOf(b)]
  const numbers = (words: readonly string[]): string[] => words.flatMap((w) => /^\d+/.exec(w)?.[0] ?? [])
  return (
    numbers(x).some((n) => numbers(y).includes(n)) &&
    namesIn(x).some((v) => namesIn(y).some((w) => isLike(v, w)))
  )
}

/** All words of the one are in the other, number and all: '1 Old St' is 'Old St 1' and 'Flat 2, 1 Old St, Springfield'. */
function sameAddress(a = '', b = ''): boolean {
  if (a.split(',').some((x) => b.split(',').some((y) => sameDoor(x, y)))) return true
  const [short = [], long = []] = [a, b]
    .map((x) => wordsOf(x).filter((w) => !BESIDE.includes(w)))
    .sort((x, y) => x.length - y.length)
  const numbered = short.some((w) => /\d/.test(w)) || short.length === long.length
  return short.length > 0 && numbered && short.every((w) => long.includes(w))
}

type Caller = Pick<Job, 'address' | 'phone' | 'email'>

export const sameHouse = (a: Caller, b: Caller): boolean =>
  sameAddress(a.address, b.address) ||
  isTelephone(digitsOf(a.phone), b.phone) ||
  (a.email !== undefined && a.email.toLowerCase() === b.email?.toLowerCase())
