/**
 * Handing a text or an address to somebody: by the phone's own sharing, or copied. Both buttons stay hidden until
 * `islands/share.ts` knows that the browser can; without it the text stands on the page to be marked.
 */

import { useWords } from '../forms/index.ts'

interface CopyProps {
  text: string
  label?: string
}

export const Copy = ({ text, label }: CopyProps) => (
  <button class="button" type="button" data-copy={text} hidden>
    {label ?? useWords().parts.copyIt}
  </button>
)

interface HandOutProps {
  title: string
  text: string
  /** The first thing to do on the page. */
  main?: boolean
}

export const HandOut = ({ title, text, main = false }: HandOutProps) => (
  <>
    <button
      class={main ? 'button button-do' : 'button'}
      type="button"
      data-share
      data-share-title={title}
      data-share-text={text}
      hidden
    >
      {useWords().parts.shareIt}
    </button>
    <Copy text={text} />
  </>
)
