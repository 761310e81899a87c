/**
 * Stands where catalogue.ts stands in what pages run (web/vite.config.ts): a browser fetches the words of its page's language
 * and of no other, and of those what a visit's live panel says.
 */
import { type Language, languageOf } from '../languages.ts'
import type { LiveWords } from './catalogue.ts'

const LIVE: Record<Language, () => Promise<LiveWords>> = {
  en: async () => (await import('./en/live.ts')).live,
  es: async () => (await import('./es/live.ts')).live,
}

const spoken = await LIVE[languageOf(globalThis.document?.documentElement.lang) ?? 'en']()

/** Whatever language is asked for: those of the page are the only ones there. */
export const wordsIn = (_language: Language): LiveWords => spoken
