/** Stand labels: the address of a colony, to be drawn as a QR code. */

/**
 * Where the code of a box leads: to the colony that has the tag when it is scanned, for a painted box is used again.
 *
 * @param origin as phones in the yard reach the book, such as 'https://yard.example'
 */
export const boxAddress = (origin: string, tag: string): string =>
  `${origin}/colony/${encodeURIComponent(tag)}`

/** The origin of an address that was typed; null when it is none that a phone could open. */
export function originTyped(text: string): string | null {
  const typed = text.trim()
  if (typed === '' || typed.length > 200) return null
  const withScheme = /^[a-z][a-z0-9+.-]*:\/\//i.test(typed) ? typed : `https://${typed}`
  if (!URL.canParse(withScheme)) return null
  const url = new URL(withScheme)
  return /^https?:$/.test(url.protocol) && url.hostname !== '' ? url.origin : null
}
