/** Who signs an entry: whoever is signed in. */
import type { Frame } from './layout.tsx'

export const SignedBy = ({ frame }: { frame: Frame }) =>
  frame.viewer === null ? null : (
    <p class="signed">
      Signed <b>{frame.viewer.name}</b>.{' '}
      <a class="tall" href="/account">
        Not you?
      </a>
    </p>
  )
