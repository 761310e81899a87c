/**
 * Reading what was sent. A body within the limit of bytes can still be made to cost seconds: lists within lists, tens of
 * thousands of fields. It is counted before anything takes it apart, and refused in words.
 */
import { HTTPException } from 'hono/http-exception'
import { type Problems, type Result, refused } from '../result.ts'
import { wordsIn } from '../words/index.ts'
import type { AppContext } from './context.ts'

/** Lists and objects within each other. An entry has four at most. */
const DEEPEST = 32
/** Names with a value in one JSON body: 500 entries of the longest kind have fewer. */
const MOST_MEMBERS = 50_000
/** Fields, or parts, of one form: a paper sheet of a hundred colonies typed in has half as many. */
const MOST_FIELDS = 10_000

/** More fields than `most`; answered as 413. */
export class TooMuch extends HTTPException {
  constructor(readonly most: number) {
    super(413, { message: wordsIn('en').errors.tooLarge.fields(most) })
  }
}

const forms = new WeakMap<Request, Promise<FormData | null>>()

/** The form that was sent; null when the body is none. Rejects with TooMuch. */
export function formIn(c: AppContext): Promise<FormData | null> {
  const known = forms.get(c.req.raw)
  if (known !== undefined) return known
  const read = readForm(c)
  forms.set(c.req.raw, read)
  return read
}

async function readForm(c: AppContext): Promise<FormData | null> {
  const type = c.req.header('content-type') ?? ''
  const bytes = await c.req.arrayBuffer().catch(() => null)
  // Whoever sent it went away, or was cut off.
  if (bytes === null) return null
  if (fieldsIn(new Uint8Array(bytes), type) > MOST_FIELDS) throw new TooMuch(MOST_FIELDS)
  try {
    return await new Response(bytes, { headers: { 'Content-Type': type } }).formData()
  } catch {
    return null
  }
}

/** How many fields a form has, or one more. */
function fieldsIn(bytes: Uint8Array, type: string): number {
  const [, quoted, bare] = /boundary=(?:"([^"]{1,200})"|([^;\s]{1,200}))/i.exec(type) ?? []
  const boundary = quoted ?? bare
  // A boundary holds no end of line, so looking for it behind one goes over no byte twice.
  const mark = new TextEncoder().encode(boundary === undefined ? '&' : `\n--${boundary}`)
  let found = 1
  for (let at = placeOf(mark, bytes, 0); at !== -1 && found <= MOST_FIELDS; at = placeOf(mark, bytes, at + 1))
    found++
  return found
}

/** Where the mark comes next; -1: no more. */
function placeOf(mark: Uint8Array, bytes: Uint8Array, from: number): number {
  for (let at = bytes.indexOf(mark[0] ?? 0, from); at !== -1; at = bytes.indexOf(mark[0] ?? 0, at + 1)) {
    let same = 1
    while (same < mark.length && bytes[at + same] === mark[same]) same++
    if (same === mark.length) return at
  }
  return -1
}

/** The JSON that was sent, or why it was not read. */
export async function jsonIn(c: AppContext): Promise<Result<{ value: unknown }, Problems<string>>> {
  try {
    const text = await c.req.text()
    const bomb = bombIn(text)
    return bomb === null ? { ok: true, value: JSON.parse(text) as unknown } : refused([bomb])
  } catch {
    return refused(['The body is not JSON.'])
  }
}

const QUOTE = 0x22
const BACKSLASH = 0x5c
const COLON = 0x3a
const OPENING = new Set([0x5b, 0x7b])
const CLOSING = new Set([0x5d, 0x7d])

/** What is too deep or too many in a JSON text, or null. One pass, without taking it apart. */
function bombIn(text: string): string | null {
  let depth = 0
  let members = 0
  let inText = false
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at)
    if (inText) {
      if (code === BACKSLASH) at++
      else if (code === QUOTE) inText = false
    } else if (code === QUOTE) inText = true
    else if (code === COLON && ++members > MOST_MEMBERS)
      return `The body has more than ${MOST_MEMBERS} values with names: send fewer at once.`
    else if (OPENING.has(code) && ++depth > DEEPEST)
      return `The body has more than ${DEEPEST} lists and objects within each other.`
    else if (CLOSING.has(code)) depth--
  }
  return null
}
