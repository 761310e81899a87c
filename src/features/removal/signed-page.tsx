/** What was signed, into the hands of who signed it: share, mail, a code to scan, paper. */
import { raw } from 'hono/html'
import { inWordsWithYear } from '../../days.ts'
import { BarePage, type Frame, HandOut } from '../../parts/index.ts'
import type { Signature } from '../../records/index.ts'
import { mailHref } from '../../words/index.ts'
import { SignatureView, Terms } from './signature.tsx'

interface HandOverProps {
  signature: Signature
  yard: string
  email: string
  path: string
  /** The address of the text; null where it was shown once already. */
  link: string | null
}

const titleOf = (yard: string): string => (yard === '' ? 'The agreement' : `Agreement with ${yard}`)

/** The text as plain words, with who signed it. */
const textOf = ({ signature: s, link }: Pick<HandOverProps, 'signature' | 'link'>): string =>
  `${s.terms}\n\nSigned by ${s.name}, ${inWordsWithYear(s.on)}.${link === null ? '' : `\n\n${link}`}`

/** Buttons that hand the text over. Sharing needs a browser that can; mail and paper do not. */
export const HandOver = (p: HandOverProps) => {
  const [title, text] = [titleOf(p.yard), textOf(p)]
  return (
    <div class="buttons">
      <HandOut title={title} text={text} main />
      <a class="button" href={mailHref(p.email, title, text)}>
        Mail it
      </a>
      <a class="button" href={`${p.path}/print?what=agreement`}>
        Print it
      </a>
    </div>
  )
}

/** Right after signing, over the part of the job that is next. The address is shown once: only its digest is kept. */
export const JustSigned = (p: HandOverProps & { qr: string; onPhone: boolean }) => (
  <section class="just-signed" id="signed">
    <h1>Signed by {p.signature.name}</h1>
    <div class="just-signed-in">
      <div class="qr">{raw(p.qr)}</div>
      <div>
        <p>The text goes to who signed it: they scan this, or you send it.</p>
        {p.onPhone ? <p class="hint">The code opens once this phone has sent the sheet.</p> : null}
      </div>
    </div>
    <HandOver {...p} />
  </section>
)

/** As the signer opens it, without an account. */
export const SignedTextPage = ({
  signature,
  yard,
  built,
}: {
  signature: Signature
  yard: string
  built: Frame['built']
}) => (
  <BarePage title={titleOf(yard)} built={built}>
    <article class="paper paper-print">
      <h1>{titleOf(yard)}</h1>
      <Terms text={signature.terms} />
      <SignatureView signature={signature} today={signature.on} />
    </article>
    <p>
      <button class="button" type="button" id="print" hidden>
        Print
      </button>
    </p>
  </BarePage>
)

export const NothingSignedPage = ({ built }: { built: Frame['built'] }) => (
  <BarePage title="Nothing here" built={built}>
    <article class="paper">
      <h1>There is no agreement at this address</h1>
      <p>
        It may have been mistyped, drawn up anew or erased, or not have arrived yet: it was signed where there
        was no signal. Ask the yard.
      </p>
    </article>
  </BarePage>
)
