/** On pages that the phone made itself: what waits to be sent, and of when the page is. */

import { dayIn } from '../days.ts'
import { instantWords } from '../words/index.ts'
import type { Frame } from './layout.tsx'
import { clockWords, waitingWords } from './phone-state.ts'

/** The time alone where it was today. */
function asOf(instant: string, { zone, today }: Frame): string {
  const words = instantWords(instant, zone, today)
  return dayIn(zone, new Date(instant)) === today ? (words.split(', ').at(-1) ?? words) : words
}

export const PhoneLine = ({ frame }: { frame: Frame }) => {
  const { phone } = frame
  if (phone === undefined) return null
  const waiting = waitingWords(phone)
  return (
    <>
      {phone.clock === null ? null : (
        <p class="phone-clock" role="alert">
          {clockWords(phone.clock)}
        </p>
      )}
      <aside class="phone-line" aria-label="This phone" id="phone-line" data-news={phone.newsAt}>
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
              {waiting === null ? 'Sign in again' : 'Sign in to send'}
            </a>
          ) : phone.fetchedAt === null ? null : (
            `${phone.reached ? 'From this phone' : 'No signal'}, as of ${asOf(phone.fetchedAt, frame)}`
          )}
        </span>
      </aside>
    </>
  )
}
