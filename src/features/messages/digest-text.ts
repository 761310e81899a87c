/** The digest as an e-mail says it: plain text. */

import { inWordsWithYear } from '../../days.ts'
import type { Action } from '../../recovery/index.ts'
import { ACTION_WORDS, dayWords, RULE_WORDS } from '../../words/index.ts'
import type { Digest, DigestItem } from './digest.ts'

export interface MailText {
  subject: string
  text: string
}

/** `home`: address of the yard's pages, where it is known. */
export function digestText(digest: Digest, home: string | null): MailText {
  const { items, day } = digest
  const late = items.filter((i) => i.late)
  const rest = items.filter((i) => !i.late)
  return {
    subject: `${dayWords(day, day)}: ${countWords(items.length)}${late.length > 0 ? `, ${late.length} late` : ''}`,
    text: [
      inWordsWithYear(day),
      ...(items.length === 0 ? ['', nothingWords(digest)] : []),
      ...block('Late', late, day),
      ...block('Today', rest, day),
      '',
      ...(home === null
        ? ['Change or stop these messages on your account’s page.']
        : [`The round: ${home}/round`, `Change or stop these messages: ${home}/account/messages`]),
      '',
    ].join('\n'),
  }
}

const countWords = (n: number): string =>
  n === 0 ? 'no box asks' : n === 1 ? '1 box asks' : `${n} boxes ask`

function nothingWords({ next, day }: Digest): string {
  if (next === null) return 'No box asks for anything today, and nothing is planned.'
  const what = next.rule === null ? '' : `, ${lower(RULE_WORDS[next.rule].name)}`
  return `No box asks for anything today. The next one: ${next.tag}${what}, ${dayWords(next.on, day)}.`
}

const block = (title: string, items: readonly DigestItem[], day: string): string[] =>
  items.length === 0 ? [] : ['', `${title}:`, ...items.map((i) => `  ${lineWords(i, day)}`)]

/** Actions that only say "look": the check's own name says more. */
const LOOKING: readonly Action[] = ['none', 'leave-alone', 'outside-look', 'open-and-look']

function lineWords(i: DigestItem, day: string): string {
  const what =
    i.rule !== null && LOOKING.includes(i.action) ? RULE_WORDS[i.rule].name : ACTION_WORDS[i.action]
  const lid = i.lidOn && !what.includes('lid') ? ' (lid on)' : ''
  const until =
    i.closes === null
      ? ''
      : i.late
        ? `; should have been done by ${dayWords(i.closes, day)}`
        : `; last day ${dayWords(i.closes, day)}`
  return `${i.tag}: ${lower(what)}${lid}${until}`
}

const lower = (s: string): string => s.charAt(0).toLowerCase() + s.slice(1)
