/** What to load, and for which boxes. */
import type { Words } from '../../words/index.ts'
import type { Load } from './bring.ts'
import { loadWords } from './words.ts'

/** More tags than this in a row are a number: nobody reads them, and each box asks for its own (judgement: two lines of a phone). */
export const MOST_TAGS = 12

/** Tags in a row, none of them broken in two. */
export const Tags = ({ tags }: { tags: readonly string[] }) => (
  <>
    {tags.map((tag, i) => (
      <>
        {i === 0 ? '' : ', '}
        <span class="nowrap">{tag}</span>
      </>
    ))}
  </>
)

export const LoadList = ({ load, words }: { load: readonly Load[]; words: Words }) => (
  <ul class="load">
    {load.map((l) => (
      <li>
        <b>{loadWords(l, words)}</b>{' '}
        <span class="soft">
          {words.round.forBoxes}{' '}
          {l.tags.length > MOST_TAGS ? words.parts.box(l.tags.length) : <Tags tags={l.tags} />}
        </span>
      </li>
    ))}
  </ul>
)
