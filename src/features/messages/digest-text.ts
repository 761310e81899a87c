/** The digest as an e-mail says it: plain text. */

import type { Action } from '../../recovery/index.ts'
import type { Words } from '../../words/index.ts'
import type { Digest, DigestItem } from './digest.ts'

export interface MailText {
  subject: string
  text: string
}

/** `home`: address of the yard's pages, where it is known. */
export function digestText(digest: Digest, home: string | null, w: Words): MailText {
  const { items, day } = digest
  const { digest: t } = w.messages
  const late = items.filter((i) => i.late)
  const rest = items.filter((i) => !i.late)
  return {
    subject: `${w.dates.day(day, day)}: ${t.count(items.length)}${late.length > 0 ? `, ${t.late(late.length)}` : ''}`,
    text: [
      w.dates.dayWithYear(day),
      ...(items.length === 0 ? ['', nothingWords(digest, w)] : []),
      ...block(t.blocks.late, late, day, w),
      ...block(t.blocks.today, rest, day, w),
      '',
      ...(home === null
        ? [t.changeSomewhere]
        : [t.round(`${home}/round`), t.change(`${home}/account/messages`)]),
      '',
    ].join('\n'),
  }
}

function nothingWords({ next, day }: Digest, { dates, messages, trade }: Words): string {
  const { digest: t } = messages
  if (next === null) return t.nothing
  const what = next.rule === null ? '' : `, ${lower(trade.rules[next.rule].name)}`
  return t.next(`${next.tag}${what}`, dates.day(next.on, day))
}

const block = (title: string, items: readonly DigestItem[], day: string, w: Words): string[] =>
  items.length === 0 ? [] : ['', `${title}:`, ...items.map((i) => `  ${lineWords(i, day, w)}`)]

/** Actions that only say "look": the check's own name says more. */
const LOOKING: readonly Action[] = ['none', 'leave-alone', 'outside-look', 'open-and-look']
/** Their words say already that the lid stays on. */
const SAYS_LID_ON: readonly Action[] = ['leave-alone', 'outside-look']

function lineWords(i: DigestItem, day: string, { dates, messages, trade }: Words): string {
  const { digest: t } = messages
  const looks = i.rule !== null && LOOKING.includes(i.action)
  const what = looks && i.rule !== null ? trade.rules[i.rule].name : trade.actions[i.action]
  const lid = i.lidOn && (looks || !SAYS_LID_ON.includes(i.action)) ? ` ${t.lidOn}` : ''
  const until =
    i.closes === null
      ? ''
      : `; ${i.late ? t.shouldHave(dates.day(i.closes, day)) : t.lastDay(dates.day(i.closes, day))}`
  return `${i.tag}: ${lower(what)}${lid}${until}`
}

const lower = (s: string): string => s.charAt(0).toLowerCase() + s.slice(1)
