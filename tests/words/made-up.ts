/** A third language, made up: English in full-width letters, every text a third longer. What is still in plain letters is no word of a catalogue. */

import { languageOf } from '../../src/languages.ts'
import { english } from '../../src/words/en/index.ts'
import type { Words } from '../../src/words/index.ts'

const WIDE = 0xff21 - 0x41

/** 'Look' → 'Ｌｏｏｋ～'; letters of the Latin alphabet alone are changed. */
export function madeUp(text: string): string {
  const wide = text.replace(/[A-Za-z]/g, (letter) => String.fromCharCode(letter.charCodeAt(0) + WIDE))
  return wide + '～'.repeat(Math.ceil((text.match(/[A-Za-z]/g) ?? []).length / 3))
}

/** Values that programs read stand beside words in lists of answers, and the tag of a language in its catalogue. */
const isKept = (key: string, value: unknown): boolean =>
  typeof value === 'string' && (key === 'value' || (key === 'language' && languageOf(value) === value))

type Say = (text: string) => string

function said(node: unknown, say: Say): unknown {
  if (typeof node === 'string') return say(node)
  if (typeof node === 'function')
    return (...given: unknown[]) => said((node as (...args: unknown[]) => unknown)(...given), say)
  if (Array.isArray(node)) return node.map((n) => said(n, say))
  if (node === null || typeof node !== 'object') return node
  return Object.fromEntries(
    Object.entries(node).map(([key, value]) => [key, isKept(key, value) ? value : said(value, say)]),
  )
}

/** Complete by its making: whatever English says, it says. */
export const MADE_UP = said(english, madeUp) as Words

/** English with every word a third longer, as other languages are beside it. Example: 'Look' → 'Lookok'. */
export const LONGER = said(english, (text) =>
  text.replace(/[A-Za-z’]{2,}/g, (word) => word + word.slice(-Math.ceil(word.length / 3))),
) as Words

/** Texts on a page that people see or hear: between tags, and in the attributes that are read out. */
export function textsOf(html: string): string[] {
  const seen = html
    .replace(/<(script|style|code)[\s\S]*?<\/\1>/g, ' ')
    .replace(/<head>[\s\S]*?<\/head>/g, (head) => /<title>([^<]*)/.exec(head)?.[1] ?? '')
  const heard = [...seen.matchAll(/\b(?:aria-label|placeholder|alt|title)="([^"]*)"/g)].map((m) => m[1] ?? '')
  return [...seen.replace(/<[^>]*>/g, '\n').split('\n'), ...heard].map((t) => t.trim()).filter(Boolean)
}
