/** The same page in the other languages, each named in itself, for whoever reads no other. */
import { LANGUAGES, type Language } from '../../languages.ts'
import type { Frame } from '../../parts/index.ts'
import { wordsIn } from '../../words/index.ts'

interface LanguageLinksProps {
  frame: Frame
  hrefIn: (language: Language) => string
}

export const LanguageLinks = ({ frame, hrefIn }: LanguageLinksProps) => (
  <nav class="buttons" aria-label={frame.words.signIn.language}>
    {LANGUAGES.filter((l) => l !== frame.words.language).map((l) => (
      <a class="button" lang={l} hreflang={l} href={hrefIn(l)}>
        {wordsIn(l).ownName}
      </a>
    ))}
  </nav>
)
