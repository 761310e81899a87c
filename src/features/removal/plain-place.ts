/**
 * Whether a short field says a plain place, an address, a name or a number, and nothing else. A list of dangerous words never ends; one of plain
 * words does. Whatever is not on it, be it of another language, is read before “go” like any note.
 */
import { wordsOf } from '../../records/index.ts'

/**
 * Left out is what hides a danger by itself: a nursery, a stairwell, a chimney, a vent, a box, a panel, a sheet, tiles, slate, tin,
 * plaster, felt, thatch, whatever is old, open or painted, and what says how high.
 */
const PLAIN = new Set(
  `a an the and or of on in at to by from with near beside between behind under below beneath above over inside outside along round left
  right middle top bottom upper lower low up north south east west side front back end corner one two both bay wall porch deck door window
  frame trim sill gable eave soffit fascia gutter dormer roof ridge ceiling floor attic loft column beam cavity void room kitchen house home
  shed barn garage gate fence post hedge garden grass ground yard orchard tree trunk branch limb bush hollow oak ash pear apple pine wood wooden
  timber log cedar siding clapboard board plank tongue groove brick block stone stucco drywall plywood sheathing shingle bark bee nest
  entrance`.split(/\s+/),
)

/** One or more of it. */
const isPlain = (word: string): boolean => PLAIN.has(word) || PLAIN.has(word.replace(/s$/, ''))

/** What an address has in small letters beside that. */
const STREET = new Set(
  'street st road rd lane ln avenue ave row hill way park farm flat apt unit no de la le del von van der'.split(
    ' ',
  ),
)

/** A street is called as it is: 'School Lane', 'Calle de Gas'. */
export const STREETS =
  /\p{Lu}[\p{L}'’]+ (Works )?(Street|St|Road|Rd|Lane|Ln|Avenue|Ave|Row)\b|\bCalle (de (la )?)?\p{Lu}\p{L}+/gu

/** Where children are, in a name or in small letters. */
export const CHILDREN =
  /\b(kids?|child(ren)?|toddlers?|bab(y|ies)|infants?|(pre-?)?schools?|nurser(y|ies)|cr[eè]ches?|kindergartens?|(day|child) ?-?care|play ?groups?|niñ[oa]s?|escuela)(?!\p{L})/iu

/** Where people are who cannot walk away by themselves. */
const CARE = /\b(care|nursing|rest) homes?\b|hospice|hospital/i

/** Letters, blanks and what parts words: a bracket, a sign or a number says more than a place. */
const ONLY_WORDS = /^[\p{L}\p{M}\s.,;:'’/-]*$/u

export const isPlainPlace = (text: string): boolean => ONLY_WORDS.test(text) && wordsOf(text).every(isPlain)

/** Points that end no sentence. */
const SHORTENED = /(?<!\p{L})(\p{L}|St|Rd|Ln|Ave|No|Mrs?|Ms|Dr)\.|\.\s*$/gu

/** '30 ft', "12'", 'of 1926'. */
const SAYS_MORE =
  /(?<!\d)1[5-9]\d\d(?!\d)|\d\s?-?(ft|feet|foot|m|met(re|er)s?|inch(es)?|k?v|volts?|['’′])(?!\p{L})/iu

/** Capitals or not, nobody and no street is called so. */
const NO_NAME =
  /\b(beware|danger|caution|warning|dogs?|oxygen|well|mine ?shafts?|shafts?|septic|cess ?(pit|pool)s?|cisterns?|manholes?|floors?)\b/iu

/** A house number, a post code, a word with a capital; one all in capitals is called out. */
const isNamed = (word: string): boolean =>
  /^\d+\p{Lu}{0,2}$/iu.test(word) ||
  (/^\p{Lu}/u.test(word) && !/^\p{Lu}{4,}$/u.test(word)) ||
  isPlain(word) ||
  STREET.has(word)

/** An address or a name, as one writes it. All in small letters it may be anything. */
export function isPlainName(text: string): boolean {
  const words = text.replaceAll(SHORTENED, '$1')
  const beside = words.replaceAll(STREETS, ' ')
  return (
    /^[\p{L}\p{M}\p{N}\s,;#&'’/-]*$/u.test(words) &&
    !SAYS_MORE.test(words) &&
    !CHILDREN.test(beside) &&
    !CARE.test(beside) &&
    !NO_NAME.test(beside) &&
    words
      .split(/[^\p{L}\p{M}\p{N}'’]+/u)
      .filter(Boolean)
      .every(isNamed)
  )
}

/** What stands beside a telephone's or an invoice's number. */
const BESIDE_NUMBER = new Set('inv nr ext tel mob cell mobile home work fax or and'.split(' '))

/** A telephone, an e-mail address or the number of an invoice, as one writes it. */
export const isPlainNumber = (text: string): boolean =>
  /^\S+@\S+$/.test(text) ||
  (/^[\p{L}\p{N}\s()+,;:./#-]*$/u.test(text) &&
    [...text.toLowerCase().matchAll(/\p{L}+/gu)].every(
      ([letters]) => /^[a-z]{1,2}$/.test(letters) || BESIDE_NUMBER.has(letters),
    ))
