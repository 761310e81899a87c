/** Words as they are looked for: capitals, accents and the like do not matter. */

/** Letters that no accent is taken off of by decomposition (Unicode NFD). */
const WHOLE: Record<string, string> = {
  ß: 'ss',
  ø: 'o',
  æ: 'ae',
  œ: 'oe',
  ł: 'l',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ı: 'i',
}

/** 'Zoë Straße 3' → 'zoe strasse 3'. */
export function folded(text: string): string {
  const small = text.toLowerCase()
  // Most of what is written is plain ASCII, and this runs over whole journals.
  if (/^[\x20-\x7e]*$/.test(small)) return small
  return small
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .replaceAll(/[ßøæœłđðþı]/g, (letter) => WHOLE[letter] ?? letter)
}
