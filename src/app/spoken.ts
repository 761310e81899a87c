/** In which language a page is. */
import { accepts } from 'hono/accepts'
import { LANGUAGES, type Language, languageOf } from '../languages.ts'
import type { AppContext, Deps } from './context.ts'

/**
 * Pages whose every word is in the catalogue, and every word of each answer their forms get. All others are in English
 * whole: a page is never half and half.
 */
const SPOKEN: RegExp[] = [
  /^\/how(\/|$)/,
  /^\/sign-in$/,
  /^\/outbox(\/\d+(\/take-out)?)?$/,
  /^\/account(\/passphrase)?$/,
  /^\/$/,
  /^\/round(\/box\/[^/]+|\/end)?$/,
  /^\/colony\/[^/]+(\/(visit|missed|note|outside-look|lost|move|health|wash|feed|treat|photo\/[^/]+))?$/,
  /^\/entry\/[^/]+\/(correct|withdraw|other-box)$/,
  /^\/(find|health|yard)$/,
  /^\/(paper|sheet-entry|labels)$/,
  /^\/account\/(calendar|messages|tokens)(\/|$)/,
  /^\/invite\/[^/]+$/,
]

const [ENGLISH] = LANGUAGES

/** What a browser asks for, the first of its languages that is spoken here. */
const languageAsked = (c: AppContext): Language =>
  languageOf(
    accepts(c, {
      header: 'Accept-Language',
      supports: [...LANGUAGES],
      default: ENGLISH,
      match: (asked) =>
        asked
          .filter(({ q }) => q > 0)
          .sort((a, b) => b.q - a.q)
          .map(({ type }) => languageOf(type))
          .find((l) => l !== null) ?? ENGLISH,
    }),
  ) ?? ENGLISH

/** Chosen on the way in, in the address of the sign-in page; null where it is not. */
export const languageChosen = (c: AppContext): Language | null => languageOf(c.req.query('lang'))

/** What whoever asks reads: what they just chose, or have chosen for their account, else what their browser says. */
export const languageFor = (c: AppContext): Language =>
  languageChosen(c) ?? c.get('viewer')?.language ?? languageAsked(c)

/** The language of a page at the address asked for. */
export const languageOfPage = (c: AppContext): Language =>
  SPOKEN.some((path) => path.test(c.req.path)) ? languageFor(c) : ENGLISH

/**
 * Whoever asks for something that is made later, when no browser is there to say a language, gets it as the page reads on
 * which it was asked for: kept with an account that has chosen none.
 */
export function keepPageLanguage(c: AppContext, { people }: Pick<Deps, 'people'>): void {
  const { viewer } = c.var
  const { language } = c.var.frame.words
  if (viewer !== null && viewer.language === null && language !== ENGLISH)
    people.accounts.setLanguage(viewer.id, language)
}
