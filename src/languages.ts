/** The languages that pages can be read in. Each is a folder of src/words with the same type; README.md there says how. */

/** BCP 47 tags, as they stand in `lang` and in an account. The first is what is spoken where nothing was chosen. */
export const LANGUAGES = ['en', 'es'] as const
export type Language = (typeof LANGUAGES)[number]

/** The language of a tag, whatever its region; null for one that is not spoken here. Example: languageOf('es-MX') = 'es'. */
export const languageOf = (tag: string | null | undefined): Language | null =>
  LANGUAGES.find((l) => l === tag?.toLowerCase().split('-')[0]) ?? null
