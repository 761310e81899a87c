/**
 * Whether a short field says a plain place, an address or a name, and nothing else. A list of dangerous words never ends; one of plain
 * words does. Whatever is not on it, be it of another language, is read before “go” like any note.
 */
import { wordsOf } from '../../records/index.ts'

/**
 * Left out is what hides a danger by itself: a nursery, a stairwell, a chimney, a vent, a box, a panel, a sheet, tiles, slate, tin,
 * plaster, felt, thatch, whatever is old, open or painted, and what says how high.
 */
const PLAIN = new Set(
  `a an the and or of on in at to by from with near beside between behind under below beneath above over inside outside into along round
  around across just about left right middle centre center top bottom upper lower low up down next north south east west northern
  southern eastern western facing side sides front back rear end corner half one two both first bay bays
  wall walls porch deck patio terrace veranda balcony door doors doorway window windows frame trim sill lintel gable gables eave eaves soffit
  soffits fascia gutter dormer roof ridge ceiling floor attic loft column beam rafter rafters joist joists stud studs cavity void room
  kitchen lounge hall bedroom office pantry house home cottage cabin extension shed barn garage outbuilding shop carport gate fence hedge
  post posts garden lawn grass ground yard orchard tree trunk branch limb fork hollow bush oak ash elm beech birch maple willow pear apple plum cherry pine
  wood wooden timber log logs cedar redwood fir spruce larch hardwood siding clapboard clapboards board boards boarding weatherboard
  weatherboarding plank planks batten battens tongue groove brick bricks brickwork block blocks stone stonework stucco drywall plywood ply
  sheathing shingle shingles shake shakes cladding vinyl bark bees nest comb entrance`.split(/\s+/),
)

/** What an address has in small letters beside that. */
const STREET = new Set(
  `street st road rd lane ln avenue ave row drive court place square close hill way walk green park farm flat apt unit no de la le les
  del el du des da di van von der den zu y e`.split(/\s+/),
)

/** A street is called as it is: 'School Lane', 'Calle de Gas'. */
export const STREETS =
  /\p{Lu}[\p{L}'’]+ (Works )?(Street|St|Road|Rd|Lane|Ln|Avenue|Ave|Row)\b|\bCalle (de (la )?)?\p{Lu}\p{L}+/gu

/** Where children are, in a name or in small letters. */
export const CHILDREN =
  /\b(kids?|child(ren)?|toddlers?|bab(y|ies)|infants?|(pre-?)?schools?|nurser(y|ies)|cr[eè]ches?|kindergartens?|(day|child) ?-?care|play ?(group|school)s?|niñ[oa]s?|escuela|guarder[ií]a)(?!\p{L})/iu

/** Where people are who cannot walk away by themselves. */
const CARE = /\b(care|nursing|retirement|rest|old people.?s|elderly) homes?\b|hospice|hospital|asylum|clinic/i

/** Letters, blanks and what parts words: a bracket, a sign or a number says more than a place. */
const ONLY_WORDS = /^[\p{L}\p{M}\s.,;:'’/-]*$/u

export const isPlainPlace = (text: string): boolean =>
  ONLY_WORDS.test(text) && wordsOf(text).every((word) => PLAIN.has(word))

/** Points that end no sentence. */
const SHORTENED = /(?<!\p{L})(\p{L}|St|Rd|Ln|Ave|Apt|No|Mr|Mrs|Ms|Dr|Sr|Jr)\.|\.\s*$/gu

/** '30 ft', "12'", 'of 1926'. */
const SAYS_MORE =
  /(?<!\d)1[5-9]\d\d(?!\d)|\d\s?-?(ft|feet|foot|m|metres?|meters?|yds?|yards?|inch(es)?|v|kv|volts?|['’′])(?!\p{L})/iu

/** A house number, a post code, a word with a capital; one all in capitals is called out. */
const isNamed = (word: string): boolean =>
  /^\d+\p{Lu}{0,2}$/iu.test(word) ||
  (/^\p{Lu}/u.test(word) && !/^\p{Lu}{4,}$/u.test(word)) ||
  PLAIN.has(word) ||
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
    words
      .split(/[^\p{L}\p{M}\p{N}'’]+/u)
      .filter(Boolean)
      .every(isNamed)
  )
}
