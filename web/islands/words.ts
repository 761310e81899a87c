/** The words of the page that this code runs in: the page says its language. */
import { languageOf } from '../../src/languages.ts'
import { type Words, wordsIn } from '../../src/words/index.ts'

export const words: Words = wordsIn(languageOf(globalThis.document?.documentElement.lang) ?? 'en')

/** For dates of the browser: English as it is written in the yards’ books, day before month. */
export const LOCALE = words.language === 'en' ? 'en-GB' : words.language
