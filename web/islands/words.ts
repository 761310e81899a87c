/** The words of the page that this code runs in: the page says its language. */
import { type Language, languageOf } from '../../src/languages.ts'
import { type PageWords, pageWordsIn } from '../../src/words/index.ts'

export const LANGUAGE: Language = languageOf(globalThis.document?.documentElement.lang) ?? 'en'

export const words: PageWords = pageWordsIn(LANGUAGE)

/** For dates of the browser: English as it is written in the yards’ books, day before month. */
export const LOCALE = LANGUAGE === 'en' ? 'en-GB' : LANGUAGE

const AS_SAID = {
  weekday: 'short',
  day: 'numeric',
  month: 'short',
  hour: '2-digit',
  minute: '2-digit',
} as const
/** A moment as it is said on this phone: 'Wed 10 Jun, 18:05'. */
export const momentSaid = (instant: string): string => new Date(instant).toLocaleString(LOCALE, AS_SAID)
