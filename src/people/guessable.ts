/** Whether a long passphrase is a short thought: common words, walks over the keyboard, one word and a year, a name twice. */
import { COMMON_PHRASES, COMMON_WORDS } from './common-words.ts'

/** Letters and digits that have to stand on their own once the obvious is taken away. Judgement: half of what is asked. */
const OWN_MIN = 6
/** Characters in a row along one line of the keyboard or alphabet that count as a walk. Judgement. */
const WALK_MIN = 4
/** One word of at most so many letters with digits and signs around it is what everybody does with a word. Judgement. */
const WORD_MAX = 16
/** Digits alone are a telephone number or a date up to this length. Judgement. */
const NUMBER_MAX = 16

/** A piece of at most so many characters said over and over is that piece alone. Judgement. */
const PIECE_MAX = 11

/** Lines fingers walk along: rows of three keyboard layouts, columns, pads, the alphabet. */
const LINES = [
  'abcdefghijklmnopqrstuvwxyz',
  '01234567890',
  'qwertyuiop',
  'asdfghjkl',
  'zxcvbnm',
  'qwertzuiop',
  'yxcvbnm',
  'azertyuiop',
  'qsdfghjklm',
  'wxcvbn',
  '1qaz2wsx3edc4rfv5tgb6yhn7ujm8ik9ol0p',
  'qazwsxedcrfvtgbyhnujmikolp',
  '147258369',
  '789456123',
  '123654789',
]
const STEPS = LINES.flatMap((line) => [line, [...line].reverse().join('')])

/** Signs that stand for letters: 'p4$$w0rd'. */
const STANDS_FOR: Record<string, string> = {
  '0': 'o',
  '1': 'i',
  '3': 'e',
  '4': 'a',
  '5': 's',
  '7': 't',
  '@': 'a',
  $: 's',
  '!': 'i',
}

/**
 * Whether a passphrase is among what is tried first.
 *
 * @param names of its owner and of the yards here, in lower case
 */
export function guessable(passphrase: string, names: readonly string[]): boolean {
  const plain = passphrase.normalize('NFKC').toLowerCase()
  const spelled = [...plain].map((c) => STANDS_FOR[c] ?? c).join('')
  return (
    isWordAndSigns(plain) ||
    isNumber(plain) ||
    isRepeated(ownIn(plain)) ||
    [plain, spelled].some(
      (text) => COMMON_PHRASES.has(ownIn(text)) || ownIn(lessObvious(text, names)).length < OWN_MIN,
    )
  )
}

const ownIn = (text: string): string => text.replaceAll(/[^\p{L}\p{N}]/gu, '')

const isWordAndSigns = (text: string): boolean => {
  const [word, ...more] = text.match(/\p{L}[\p{L}\p{M}]*/gu) ?? []
  return word !== undefined && more.length === 0 && word !== text && word.length <= WORD_MAX
}

const isNumber = (text: string): boolean =>
  !/\p{L}/u.test(text) && ownIn(text).length <= NUMBER_MAX && /\d/.test(text)

/** Whether it is a short piece over and over. Example: 'gravelgravel'. */
function isRepeated(own: string): boolean {
  for (let size = 1; size <= Math.min(own.length / 2, PIECE_MAX); size++)
    if (
      own ===
      own
        .slice(0, size)
        .repeat(Math.ceil(own.length / size))
        .slice(0, own.length)
    )
      return true
  return false
}

/** What is left without common words, names and walks; longest words first, so that 'honeybees' leaves no 's'. */
function lessObvious(text: string, names: readonly string[]): string {
  const words = [...COMMON_WORDS, ...namesIn(names)].sort((a, b) => b.length - a.length)
  return words.reduce((left, word) => left.replaceAll(word, ' '), withoutWalks(text))
}

/** Names, their parts, and both backwards. */
function namesIn(names: readonly string[]): string[] {
  const parts = names.flatMap((n) => [n, ...n.split(/[^\p{L}\p{N}]+/u)]).filter((p) => p.length >= 3)
  return [...new Set(parts.flatMap((p) => [p, [...p].reverse().join('')]))]
}

function withoutWalks(text: string): string {
  let left = ''
  for (let at = 0; at < text.length; ) {
    const long = walkAt(text, at)
    left += long >= WALK_MIN ? ' ' : text[at]
    at += long >= WALK_MIN ? long : 1
  }
  return left
}

/** How many characters from there on lie along one line. */
function walkAt(text: string, at: number): number {
  let longest = 1
  for (const line of STEPS)
    while (at + longest < text.length && line.includes(text.slice(at, at + longest + 1))) longest++
  return longest
}
