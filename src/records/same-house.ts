/** Whether two sheets are of one house: a street is written in many ways, a telephone in one. To ask once too often costs a tap. */
import { distance } from 'fastest-levenshtein'
import { wordsOf } from './job-state.ts'
import type { Job, Sheet } from './removal-sheet.ts'

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
const NUMBERS = 'one two three four five six seven eight nine ten eleven twelve'.split(' ')
const ORDINALS = 'first second third fourth fifth sixth seventh eighth ninth tenth'.split(' ')
/** Letters by which two words are one that was mistyped, and that a word cut short has at least: 'Inventd', 'Inv.' (judgement). */
const ALIKE = 5
const CUT_SHORT = 3

const doorWords = (text: string): string[] =>
  wordsOf(text.replaceAll(/['’.]/g, '').replaceAll(/(\d)(\p{L}{3})/gu, '$1 $2')).map((w) => {
    const [n, nth] = [NUMBERS.indexOf(w), ORDINALS.indexOf(w)]
    return w === 'hwy'
      ? 'highway'
      : n >= 0
        ? `${n + 1}`
        : nth >= 0
          ? `${nth + 1}th`
          : w.replace(/^(\d+)(st|nd|rd)$/, '$1th')
  })

const namesIn = (words: readonly string[]): string[] =>
  words.filter((w) => w.length > 2 && !/\d/.test(w) && !ANY_STREET.includes(w) && !BESIDE.includes(w))

const isLike = (a: string, b: string): boolean => {
  const [short, long] = a.length < b.length ? [a, b] : [b, a]
  if (short.length >= CUT_SHORT && long.startsWith(short)) return true
  return short.length >= ALIKE && a.slice(0, ALIKE) === b.slice(0, ALIKE)
}

/**
 * One name, and no other number: '4a Invented Rd' is '4-6 Inventd Row' and 'Invented Row'. Where neither has a name but those that
 * every street has, one of these: '47 Old St' is '47 Old Street'.
 */
function sameDoor(a: string, b: string): boolean {
  const [x, y] = [doorWords(a), doorWords(b)]
  const numbers = (words: readonly string[]): string[] =>
    words.flatMap((w) => /^\d+(?!\d*th)/.exec(w)?.[0] ?? [])
  const [m, n] = [numbers(x), numbers(y)]
  if (m.length > 0 && n.length > 0 && !m.some((number) => n.includes(number))) return false
  const [v, w] = [namesIn(x), namesIn(y)]
  if (v.length > 0 && w.length > 0) return v.some((one) => w.some((other) => isLike(one, other)))
  const plain = x.filter((word) => !/^\d+[a-z]?$/.test(word) && !BESIDE.includes(word))
  return m.length + n.length > 1 && v.length === w.length && plain.some((word) => y.includes(word))
}

/** The part of an address that names the house: not the flat, not the town. */
const doorOf = (address: string): string[] => {
  const parts = address.split(',')
  const door = parts.find((part) => doorWords(part).some((w) => !/\d/.test(w) && !BESIDE.includes(w)))
  return door === undefined ? parts : [door]
}

const isStreet = (part: string): boolean => doorWords(part).some((w) => ANY_STREET.includes(w))

/** A house by its name alone, and one by its number, in one street: 'Rose Cottage, Invented Lane' may be '5 Invented Lane'. */
function sameStreet(a: string, b: string): boolean {
  if (/\d/.test(a) === /\d/.test(b)) return false
  const [x = [], y = []] = [a, b].map((address) => address.split(',').filter(isStreet))
  return x.some((one) => y.some((other) => sameDoor(one, other)))
}

/** All words of the one are in the other, number and all: '1 Old St' is 'Old St 1' and 'Flat 2, 1 Old St, Springfield'. */
function sameAddress(a = '', b = ''): boolean {
  if (doorOf(a).some((x) => doorOf(b).some((y) => sameDoor(x, y)))) return true
  if (sameStreet(a, b)) return true
  const [short = [], long = []] = [a, b]
    .map((x) => doorWords(x).filter((w) => !BESIDE.includes(w)))
    .sort((x, y) => x.length - y.length)
  const numbered = short.some((w) => /\d/.test(w)) || short.length === long.length
  return short.length > 0 && numbered && short.every((w) => long.includes(w))
}

/** Letters of a name that is another one by one letter (judgement): 'Oak' and 'Ash' are. */
const LONG = 6

/** One number, and the longest words of the two streets are one letter apart. */
function soundsAlike(a = '', b = ''): boolean {
  // Before anything that takes time: of a thousand sheets few bear that number.
  if (!a.match(/\d+/g)?.some((number) => b.includes(number))) return false
  const [x = [], y = []] = [a, b].map((address) => doorOf(address).flatMap(doorWords))
  if (!x.some((word) => /^\d/.test(word) && y.includes(word))) return false
  // By ear 'Quarble' is 'Kwarble'.
  const [street = '', other = ''] = [x, y].map((words) =>
    namesIn(words)
      .sort((v, w) => w.length - v.length)[0]
      ?.replace('qu', 'kw'),
  )
  return Math.min(street.length, other.length) >= LONG && distance(street, other) < 2
}

type Caller = Pick<Job, 'address' | 'phone' | 'email' | 'name'>

/** One full name, and the place is on one sheet only: the first call was cut off. */
function sameCaller(a: Caller, b: Caller): boolean {
  if (a.address !== undefined && b.address !== undefined) return false
  const [name = [], other = []] = [a, b].map((c) => wordsOf(c.name ?? '').sort())
  return name.length > 1 && name.join(' ') === other.join(' ')
}

/** 'perhaps': one number, and streets that sound alike. */
export type Shared = 'house' | 'telephone' | 'name' | 'e-mail' | 'perhaps'

/** What two jobs share, as if they were of one house; undefined where nothing. */
const sharedBy = (a: Caller, b: Caller): Shared | undefined =>
  sameAddress(a.address, b.address)
    ? 'house'
    : isTelephone(digitsOf(a.phone), b.phone)
      ? 'telephone'
      : a.email !== undefined && a.email.toLowerCase() === b.email?.toLowerCase()
        ? 'e-mail'
        : sameCaller(a, b)
          ? 'name'
          : undefined

export const sameHouse = (a: Caller, b: Caller): boolean => sharedBy(a, b) !== undefined

/** The same of a sheet and a job elsewhere; `was`: by an address or a telephone that the sheet has no more, and had when something stood on it. */
export function sharedWith(
  { job, site: { noted = [] } }: Pick<Sheet, 'job' | 'site'>,
  here: Caller,
): { shares: Shared; was?: string } | undefined {
  const now = sharedBy(job, here)
  if (now !== undefined) return { shares: now }
  for (const { what, words = '' } of noted) {
    const shares =
      what === 'house' ? sharedBy({ address: words, phone: words, email: words }, here) : undefined
    if (shares !== undefined) return { shares, was: words }
  }
  return soundsAlike(job.address, here.address) ? { shares: 'perhaps' } : undefined
}
