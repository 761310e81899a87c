/** Ways to a person or a place, each one tap: call, text, mail, map. What is not known is left out. */
import { mailHref, placeHref, smsHref, telHref, telIn } from '../words/index.ts'
import { Copy } from './hand-out.tsx'

/** A text with the telephone number in it to be tapped. */
export const Tel = ({ text }: { text: string }) => {
  const tel = telIn(text)
  if (tel === null) return <b>{text}</b>
  return (
    <>
      {tel.before}
      <a class="tall" href={telHref(tel)}>
        <b>{tel.shown}</b>
      </a>
      {tel.after}
    </>
  )
}

interface ReachProps {
  /** As they were written; '' and undefined are the same. */
  phone?: string | undefined
  email?: string | undefined
  address?: string | undefined
}

/** The page needs `islands/share.ts` for the button that copies the address. */
export const Reach = ({ phone = '', email = '', address = '' }: ReachProps) => {
  const tel = telIn(phone)
  if (phone === '' && email === '' && address === '') return null
  return (
    <div class="buttons reach">
      {tel === null ? (
        phone === '' ? null : (
          <span>{phone}</span>
        )
      ) : (
        <>
          <a class="button" href={telHref(tel)}>
            Call {tel.shown}
          </a>
          <a class="button" href={smsHref(tel)}>
            Text
          </a>
        </>
      )}
      {email === '' ? null : (
        <a class="button" href={mailHref(email)}>
          Mail<span class="unseen"> to {email}</span>
        </a>
      )}
      {address === '' ? null : (
        <>
          <a class="button" href={placeHref(address)}>
            Map<span class="unseen"> of {address}</span>
          </a>
          <Copy text={address} label="Copy the address" />
        </>
      )}
    </div>
  )
}
