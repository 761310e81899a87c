/** The bytes of an uploaded file as text. */

import { type Problems, type Result, refused } from '../../result.ts'

export type Decoded = Result<{ text: string; encoding: string }, Problems<string>>

const starts = (bytes: Uint8Array, ...with_: number[]): boolean => with_.every((b, i) => bytes[i] === b)

/**
 * UTF-8, UTF-16 with its mark (what spreadsheet programs call "Unicode text"), else Windows-1252, which old programs
 * write. A workbook or a picture is refused in words.
 */
export function decoded(bytes: Uint8Array): Decoded {
  if (bytes.length === 0) return refused(['The file is empty.'])
  if (starts(bytes, 0x50, 0x4b) || starts(bytes, 0xd0, 0xcf, 0x11, 0xe0))
    return refused([
      'This is a workbook, not a table of text. Open it, choose “Save as” or “Download” and CSV; or select the cells, copy them, and paste them in the field below.',
    ])
  if (starts(bytes, 0xff, 0xfe)) return checked(new TextDecoder('utf-16le').decode(bytes), 'UTF-16')
  if (starts(bytes, 0xfe, 0xff)) return checked(new TextDecoder('utf-16be').decode(bytes), 'UTF-16')
  try {
    return checked(new TextDecoder('utf-8', { fatal: true }).decode(bytes), 'UTF-8')
  } catch {
    return checked(westernText(bytes), 'Windows-1252')
  }
}

/** Windows-1252 from 0x80 to 0x9F (WHATWG Encoding, index windows-1252); what it leaves open stays the control it is. */
const WESTERN = '€\x81‚ƒ„…†‡ˆ‰Š‹Œ\x8dŽ\x8f\x90‘’“”•–—˜™š›œ\x9džŸ'

/** Spelled out because the decoder of this name in Node 20 reads Latin-1 (seen with 20.20). */
const westernText = (bytes: Uint8Array): string =>
  Array.from(bytes, (b) => (b >= 0x80 && b <= 0x9f ? WESTERN[b - 0x80] : String.fromCharCode(b))).join('')

/** Text has no control characters but tabs and line ends. */
function checked(text: string, encoding: string): Decoded {
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i)
    if (code < 32 && code !== 9 && code !== 10 && code !== 13 && code !== 12)
      return refused(['This is no text: save the table as CSV and choose that file.'])
  }
  return { ok: true, text, encoding }
}
