/** All that is said, by language. A language that lacks a word does not compile. */
import type { Language } from '../languages.ts'
import { english } from './en/index.ts'
import { spanish } from './es/index.ts'

/** What every language says: plain texts, and functions from what is known to a text. */
export type Words = typeof english

/** What is said while a visit is tapped, in the browser: what a catalogue there has. */
export type LiveWords = Pick<
  Words,
  'choiceWords' | 'choices' | 'dates' | 'fields' | 'reasons' | 'record' | 'trade' | 'units' | 'visit'
>

const CATALOGUES: Record<Language, Words> = { en: english, es: spanish }

export const wordsIn = (language: Language): Words => CATALOGUES[language]
