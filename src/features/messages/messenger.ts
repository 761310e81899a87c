/** Sends each person's digest at their hour of the yard's day, once. Asked every half minute while serving. */

import { createHash } from 'node:crypto'
import { TZDate } from '@date-fns/tz'
import { addDays, type Day, dayIn } from '../../days.ts'
import type { Store } from '../../store/index.ts'
import { wordsIn } from '../../words/index.ts'
import type { Choices, MessageChoice } from './choices.ts'
import { type Digest, digestOf } from './digest.ts'
import { digestText } from './digest-text.ts'
import { deliver } from './hook.ts'
import type { HookRules } from './hook-rules.ts'
import type { Mailer, Sent } from './mail.ts'
import type { Claim, MessageWay, SentMessages } from './sent.ts'

export interface MessengerParts {
  store: Store
  choices: Choices
  sent: SentMessages
  /** Null: this server sends no e-mail. */
  mailer: Mailer | null
  rules: HookRules
  clock: () => Date
  /** The yard's time zone, as it is at that moment. */
  zone: () => string
  /** Address of the yard's pages, where it is known. */
  home: string | null
  report: (error: unknown) => void
}

export interface Messenger {
  /** Sends what is due now. Resolves when all of it was tried. */
  tick(): Promise<void>
  /** Sends one now, to try a choice out. Not counted as the day's. */
  tryOut(choice: MessageChoice, way: MessageWay): Promise<Sent>
  /** The first day a choice made now is sent for: today, unless its hour has passed. */
  firstDay(hour: number): Day
  sendsMail: boolean
  rules: HookRules
}

/** How long a stopping server waits for what is on its way is bounded by the timeouts of mail.ts and hook.ts. */
export const EVERY_MS = 30_000

export function messengerOf(parts: MessengerParts): Messenger {
  const { store, choices, sent, mailer, rules, clock } = parts
  const hourNow = (): number => new TZDate(clock(), parts.zone()).getHours()
  const today = (): Day => dayIn(parts.zone(), clock())
  const digest = (day: Day): Digest => digestOf(store.today(day), store.colonies({ open: true }), day)

  const send = (choice: MessageChoice, way: MessageWay, made: Digest, id: string): Promise<Sent> => {
    if (way === 'mail')
      return mailer === null || choice.mail === null
        ? Promise.resolve({ ok: false, again: false, words: 'this server sends no e-mail' })
        : mailer.send({ to: choice.mail, id, ...digestText(made, parts.home, wordsIn(choice.language)) })
    if (choice.hook === null || choice.secret === null)
      return Promise.resolve({ ok: false, again: false, words: 'there is no webhook' })
    const body = hookBody(made, clock())
    return deliver({ url: choice.hook, secret: choice.secret, id, body }, rules, clock())
  }

  const sendOnce = async (choice: MessageChoice, claim: Claim, made: () => Digest): Promise<void> => {
    if (sent.claim(claim, clock()) === null) return
    try {
      const result = await send(choice, claim.way, made(), messageId(claim))
      if (result.ok) sent.done(claim, clock())
      else sent.failed(claim, result, clock())
    } catch (error) {
      // A bug of ours: the day is used up, rather than sent a second time.
      sent.failed(claim, { again: false, words: 'the server’s log says what happened' }, clock())
      parts.report(error)
    }
  }

  return {
    sendsMail: mailer !== null,
    rules,
    firstDay: (hour) => (hourNow() < hour ? today() : addDays(today(), 1)),
    async tick() {
      const day = today()
      const hour = hourNow()
      let made: Digest | undefined
      const once = (): Digest => {
        made ??= digest(day)
        return made
      }
      const due = choices.wanted().filter((c) => c.fromDay <= day && c.hour <= hour)
      await Promise.all(
        due.flatMap((choice) =>
          waysOf(choice, mailer !== null).map((way) =>
            sendOnce(choice, { person: choice.person, day, way }, once),
          ),
        ),
      )
    },
    tryOut(choice, way) {
      const at = clock().toISOString()
      return send(choice, way, digest(today()), messageId({ person: choice.person, day: `try ${at}`, way }))
    },
  }
}

const waysOf = (choice: MessageChoice, mails: boolean): MessageWay[] => [
  ...(mails && choice.mail !== null ? (['mail'] as const) : []),
  ...(choice.hook === null ? [] : (['hook'] as const)),
]

/** The same for the same person, day and way; gives none of them away. */
const messageId = ({ person, day, way }: Claim): string =>
  `msg_${createHash('sha256').update(`${person} ${day} ${way}`).digest('hex').slice(0, 32)}`

/** What a webhook is sent. Public format (README). */
const hookBody = (digest: Digest, now: Date): string =>
  JSON.stringify({ type: 'digest.morning', timestamp: now.toISOString(), data: digest })

/** Asks the messenger over and over. Returns what stops it, which waits for what is on its way. */
export function startMessenger(messenger: Messenger, report: (error: unknown) => void): () => Promise<void> {
  let running: Promise<void> | null = null
  const ask = (): void => {
    if (running !== null) return
    running = messenger
      .tick()
      .catch(report)
      .finally(() => {
        running = null
      })
  }
  const timer = setInterval(ask, EVERY_MS)
  ask()
  return async () => {
    clearInterval(timer)
    await running
  }
}
