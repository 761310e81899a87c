/** What to load, and for which boxes. */
import type { Load } from './bring.ts'
import { loadWords } from './words.ts'

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

export const LoadList = ({ load }: { load: readonly Load[] }) => (
  <ul class="load">
    {load.map((l) => (
      <li>
        <b>{loadWords(l)}</b>{' '}
        <span class="soft">
          for <Tags tags={l.tags} />
        </span>
      </li>
    ))}
  </ul>
)
