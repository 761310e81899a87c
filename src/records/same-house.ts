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

/** Words beside a number that say no house ('No. 4', 'Flat 2'). */
const BESIDE = 'the no nr flat unit apt house'.split(' ')
/** Those that every street has. */
const KINDS =
  'street road lane avenue drive court place way close boulevard blvd calle avenida camino walk hill row terrace crescent gardens grove green mews rise park view square alley path track circle loop trail bank end gate yard highway route mile'.split(
    ' ',
  )
const WHICH =
  'old new upper lower north south east west little great big front back side left right near behind'.split(
    ' ',
  )
/** Those that many a place has, and trees: by itself none is the name of a house. */
const ORDINARY =
  'school primary nursery preschool daycare creche college church chapel hall farm farmhouse barn stable cottage lodge bungalow mill orchard garden wall fence shed garage porch playground field wood edge quarry pond lake river bridge station shop store inn pub hotel felled tree oak ash elm beech birch pine fir larch maple willow poplar alder hazel holly hawthorn yew lime linden chestnut walnut cherry apple pear plum cedar'.split(
    ' ',
  )
const SHORT: Readonly<Record<string, string>> = {
  hwy: 'highway',
  rd: 'road',
  ln: 'lane',
  ave: 'avenue',
  dr: 'drive',
  ct: 'court',
  pl: 'place',
}
const NUMBERS = 'one two three four five six seven eight nine ten eleven twelve'.split(' ')
const ORDINALS = 'first second third fourth fifth sixth seventh eighth ninth tenth'.split(' ')
/** Letters by which two words are one that was mistyped, and that a word cut short has at least: 'Inventd', 'Inv.' (judgement). */
const ALIKE = 5
const CUT_SHORT = 3

const doorWords = (text: string): string[] =>
  wordsOf(
    text
      .replaceAll(/['’.]/g, '')
      .replaceAll(/(\d)(\p{L}{3})/gu, '$1 $2')
      // Elsewhere it is a saint.
      .replaceAll(/\bst(?=[\s\d]*(,|$))/gi, 'street'),
  ).map((w) => {
    const [n, nth] = [NUMBERS.indexOf(w), ORDINALS.indexOf(w)]
    return n >= 0
      ? `${n + 1}`
      : nth >= 0
        ? `${nth + 1}th`
        : (SHORT[w] ?? w.replace(/^(\d+)(st|nd|rd)$/, '$1th'))
  })

const isIn = (words: readonly string[], w: string): boolean =>
  words.includes(w) || words.includes(w.replace(/s$/, ''))
const isStreetWord = (w: string): boolean => isIn(KINDS, w) || WHICH.includes(w)

/** What a door is called by. */
interface Called {
  numbers: string[]
  /** All its words but numbers. */
  plain: string[]
  /** Those that not any place may have. */
  names: string[]
  /** Names and ordinary words; where it has none ('Old Hill Road'), all but the kind of street. */
  heads: string[]
}

function calledBy(words: readonly string[]): Called {
  const numbers = words.flatMap((w) => /^\d+(?!\d*th)/.exec(w)?.[0] ?? [])
  const plain = words.filter((w) => !/^\d+[a-z]?$/.test(w) && !BESIDE.includes(w))
  const said = plain.filter((w) => !isStreetWord(w) && w.length > 2)
  const heads = said.length > 0 ? said : plain.length > 1 ? plain.slice(0, -1) : plain
  return { numbers, plain, names: said.filter((w) => !isIn(ORDINARY, w) && !/\d/.test(w)), heads }
}

const isLike = (a: string, b: string): boolean => {
  const [short, long] = a.length < b.length ? [a, b] : [b, a]
  if (short.length >= CUT_SHORT && long.startsWith(short)) return true
  return short.length >= ALIKE && a.slice(0, ALIKE) === b.slice(0, ALIKE)
}

const sharedIn = (a: readonly string[], b: readonly string[]): string[] =>
  a.filter((one) => b.some((other) => one === other || isLike(one, other)))

/**
 * One name, and no other number: '4a Invented Rd' is '4-6 Inventd Row' and 'Invented Row'. Where one of them has no name but words that
 * any place may have, one of these is enough beside the number ('47 Old St' is '47 Old Street'), and without it two, or all of them:
 * '2 Quarry Road' is no 'quarry edge'.
 */
function sameDoor(a: string, b: string): boolean {
  const [x, y] = [calledBy(doorWords(a)), calledBy(doorWords(b))]
  const numbered = x.numbers.length > 0 && y.numbers.length > 0
  if (numbered && sharedNumbers(x, y).length === 0) return false
  if (x.names.length > 0 && y.names.length > 0) return sharedIn(x.names, y.names).length > 0
  const heads = sharedIn(x.heads, y.heads).length
  if (numbered || heads === 0) return heads > 0
  const [v, w] = [x.plain, y.plain].map((words) => words.filter((word) => !WHICH.includes(word)))
  return sharedIn(x.plain, y.plain).length > 1 || v?.join() === w?.join()
}

const sharedNumbers = (x: Called, y: Called): string[] => x.numbers.filter((n) => y.numbers.includes(n))

const isStreet = (part: string): boolean => doorWords(part).some(isStreetWord)

/** The parts of an address that name the house: not the flat, not the town. 'Rose Cottage, 5 Invented Lane' has two. */
const doorsOf = (address: string): string[] => {
  const parts = address.split(',')
  const door = parts.find((part) => doorWords(part).some((w) => !/\d/.test(w) && !BESIDE.includes(w)))
  if (door === undefined) return parts
  return [door, ...parts.filter((part) => part !== door && /^\s*\d/.test(part) && isStreet(part))]
}

/** A house by its name alone, and one by its number, in one street: 'Rose Cottage, Invented Lane' may be '5 Invented Lane'. */
function sameStreet(a: string, b: string): boolean {
  if (/\d/.test(a) === /\d/.test(b)) return false
  const [x = [], y = []] = [a, b].map((address) => address.split(',').filter(isStreet))
  return x.some((one) => y.some((other) => sameDoor(one, other)))
}

/** All words of the one are in the other, number and all: '1 Old St' is 'Old St 1' and 'Flat 2, 1 Old St, Springfield'. */
function sameAddress(a = '', b = ''): boolean {
  if (doorsOf(a).some((x) => doorsOf(b).some((y) => sameDoor(x, y)))) return true
  if (sameStreet(a, b)) return true
  const [short = [], long = []] = [a, b]
    .map((x) => doorWords(x).filter((w) => !BESIDE.includes(w)))
    .sort((x, y) => x.length - y.length)
  const numbered = short.some((w) => /\d/.test(w)) || short.length === long.length
  return short.length > 0 && numbered && short.every((w) => long.includes(w))
}

/** Letters that a word has at least to be another one by one letter (judgement): 'Beech' and 'Beach' are, 'Oak' and 'Elk' are not. */
const LONG = 4

/** By ear 'Quarble' is 'Kwarble'. */
const byEar = (w: string): string => w.replace('qu', 'kw')

/** One number, and words by which the two streets are called are one letter apart. */
function soundsAlike(a = '', b = ''): boolean {
  // Before anything that takes time: of a thousand sheets few bear that number.
  if (/\d/.test(a) && !a.match(/\d+/g)?.some((n) => b.includes(n)) && /\d/.test(b)) return false
  const [x = [], y = []] = [a, b].map((address) => doorsOf(address).map((d) => calledBy(doorWords(d))))
  const words = ({ names, heads }: Called) => (names.length > 0 ? names : heads).map(byEar)
  const isOne = (v: string, w: string) => Math.min(v.length, w.length) >= LONG && distance(v, w) < 2
  return x.some((one) =>
    y.some(
      (other) =>
        sharedNumbers(one, other).length > 0 && words(one).some((v) => words(other).some((w) => isOne(v, w))),
    ),
  )
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
  const had = noted.flatMap(({ what, words = '' }) => (what === 'house' ? [words] : []))
  for (const was of had) {
    const shares = sharedBy({ address: was, phone: was, email: was }, here)
    if (shares !== undefined) return { shares, was }
  }
  if (soundsAlike(job.address, here.address)) return { shares: 'perhaps' }
  const was = had.find((words) => soundsAlike(words, here.address))
  return was === undefined ? undefined : { shares: 'perhaps', was }
}
