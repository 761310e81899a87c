/**
 * Addresses by which a phone calls, writes and shows a place: tel: (RFC 3966), sms: (RFC 5724), mailto: (RFC 6068) and
 * geo: (RFC 5870, with the search `q` that map programs of every maker read). Which program opens them is the phone's choice.
 */

interface Tel {
  before: string
  shown: string
  /** Digits and a leading plus. */
  digits: string
  after: string
}

/** The first telephone number in what somebody wrote; null where there is none. */
export function telIn(text: string): Tel | null {
  const found = /\+?[(\d][\d\s()./-]{4,}\d/.exec(text)
  if (found === null) return null
  const [shown] = found
  return {
    before: text.slice(0, found.index),
    shown,
    digits: shown.replaceAll(/[^\d+]/g, ''),
    after: text.slice(found.index + shown.length),
  }
}

export const telHref = ({ digits }: Pick<Tel, 'digits'>): string => `tel:${digits}`
export const smsHref = ({ digits }: Pick<Tel, 'digits'>): string => `sms:${digits}`

/** `to` may be empty: whoever sends it chooses. Example: mailHref('a@b.example') = 'mailto:a@b.example'. */
export function mailHref(to: string, subject = '', body = ''): string {
  const said = Object.entries({ subject, body })
    .filter(([, text]) => text !== '')
    .map(([name, text]) => `${name}=${encodeURIComponent(text)}`)
  const address = encodeURIComponent(to).replaceAll('%40', '@')
  return `mailto:${address}${said.length === 0 ? '' : `?${said.join('&')}`}`
}

/** Two decimal degrees, as maps show them: '51.2194, 4.4025'. */
const DEGREES = /^(-?\d{1,2}(?:\.\d+)?)\s*[,;\s]\s*(-?\d{1,3}(?:\.\d+)?)$/

/** A place on the map: coordinates as they are, else what was written as an address. */
export function placeHref(address: string): string {
  const [, lat, lon] = DEGREES.exec(address.trim()) ?? []
  if (lat !== undefined && lon !== undefined && Math.abs(Number(lat)) <= 90 && Math.abs(Number(lon)) <= 180)
    return `geo:${lat},${lon}?q=${lat},${lon}`
  return `geo:0,0?q=${encodeURIComponent(address.trim())}`
}
