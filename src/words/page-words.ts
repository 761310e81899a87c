/**
 * The few words of browser code that runs on every page: the phone's line, photos, drafts, scanning. They are in the
 * catalogue too; here they come without all the rest of it, which would be five times as much as any page.
 */
import type { Language } from '../languages.ts'
import type { Words } from './catalogue.ts'
import { signIn as signInEn } from './en/door.ts'
import { frame as frameEn } from './en/frame.ts'
import { islands as islandsEn } from './en/islands.ts'
import { today as todayEn } from './en/today.ts'
import { signIn as signInEs } from './es/door.ts'
import { frame as frameEs } from './es/frame.ts'
import { islands as islandsEs } from './es/islands.ts'
import { today as todayEs } from './es/today.ts'

export type PageWords = Pick<Words, 'language' | 'phone' | 'islands' | 'today' | 'signIn'>

const CATALOGUES: Record<Language, PageWords> = {
  en: { ...frameEn, islands: islandsEn, today: todayEn, signIn: signInEn },
  es: { ...frameEs, islands: islandsEs, today: todayEs, signIn: signInEs },
}

export const pageWordsIn = (language: Language): PageWords => CATALOGUES[language]
