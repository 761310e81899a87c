/** On pages that the phone made itself: what waits to be sent, and of when the page is. */

import { dayIn } from '../days.ts'
import type { Frame } from './layout.tsx'
import { clockWords, waitingWords } from './phone-state.ts'

/** The time alone where it was today. */
function asOf(instant: string, { zone, today, words: w }: Frame): string {
  const words = w.dates.instant(instant, zone, today)
  return dayIn(zone, new Date(instant)) === today ? (words.split(', ').at(-1) ?? words) : words
}

export const PhoneLine = ({ frame }: { frame: Frame }) => {
  const { phone, words } = frame
  if (phone === undefined) return null
  const waiting = waitingWords(phone, words)
  return (
    <>
      {phone.kills?.map((k) => (
        <p class="phone-kills" role="alert">
          {words.phone.kills(k)}
        </p>
      ))}
      {phone.clock === null ? null : (
        <p class="phone-clock" role="alert">
          {clockWords(phone.clock, words)}
        </p>
      )}
      <aside class="phone-line" aria-label={words.phone.this} id="phone-line" data-news={phone.newsAt}>
        {waiting === null ? null : (
          <a
            class={phone.refused > 0 ? 'phone-waiting phone-refused' : 'phone-waiting'}
            href="/outbox"
            id="phone-waiting"
          >
            {waiting}
          </a>
        )}
        <span class="phone-when" id="phone-when">
          {phone.signIn ? (
            <a href={`/sign-in?to=${encodeURIComponent(frame.path)}`}>
              {waiting === null ? words.phone.signIn : words.phone.signInToSend}
            </a>
          ) : phone.fetchedAt === null ? null : (
            words.phone[phone.reached ? 'fromPhone' : 'noSignal'](asOf(phone.fetchedAt, frame))
          )}
        </span>
      </aside>
    </>
  )
}
