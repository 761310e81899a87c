/** The words of the page that this code runs in: the page says its language. */
import { type Language, languageOf } from '../../src/languages.ts'
import { type PageWords, pageWordsIn } from '../../src/words/index.ts'

export const LANGUAGE: Language = languageOf(globalThis.document?.documentElement.lang) ?? 'en'

export const words: PageWords = pageWordsIn(LANGUAGE)

/** For dates of the browser: English as it is written in the yards’ books, day before month. */
export const LOCALE = LANGUAGE === 'en' ? 'en-GB' : LANGUAGE
