/** Who signs an entry: whoever is signed in. */
import type { Frame } from './layout.tsx'

export const SignedBy = ({ frame }: { frame: Frame }) =>
  frame.viewer === null ? null : (
    <p class="signed">
      {frame.words.parts.signed} <b>{frame.viewer.name}</b>.{' '}
      <a class="tall" href="/account">
        {frame.words.parts.notYou}
      </a>
    </p>
  )
