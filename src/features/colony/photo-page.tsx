/** A photo as large as the screen, with the way back to its colony and to the others of the same entry. */
import type { Entry } from '../../journal/index.ts'
import { type Frame, Layout } from '../../parts/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import { dayWords, KIND_WORDS } from '../../words/index.ts'

export interface PhotoProps {
  frame: Frame
  summary: ColonySummary
  /** Of the colony's page. */
  path: string
  /** Whose photo it is. */
  entry: Entry
  /** Every photo of that entry, and which of them is shown. */
  ids: readonly string[]
  at: number
}

export const PhotoPage = ({ frame, summary: s, path, entry: e, ids, at }: PhotoProps) => (
  <Layout frame={frame} title={`${s.tag}, photo`}>
    <p class="crumb">
      <a href={`${path}#e-${e.id}`}>‹ {s.tag}</a>
    </p>
    <h1>Photo of {s.tag}</h1>
    <p class="soft">
      With {KIND_WORDS[e.kind]} of {dayWords(e.on, frame.today)}, by {e.by}
      {ids.length === 1 ? '' : `; ${at + 1} of ${ids.length}`}.
    </p>
    <p class="photo-whole">
      <img
        src={`/photos/${ids[at]}`}
        alt={`${s.tag}, ${dayWords(e.on, frame.today)}; not here without signal`}
      />
    </p>
    <nav class="buttons" aria-label="Photos of the same entry">
      <Way path={path} id={ids[at - 1]} words="Photo before" />
      <Way path={path} id={ids[at + 1]} words="Next photo" />
      <a class="button" href={`${path}#e-${e.id}`}>
        Back to {s.tag}
      </a>
    </nav>
  </Layout>
)

const Way = ({ path, id, words }: { path: string; id: string | undefined; words: string }) =>
  id === undefined ? null : (
    <a class="button" href={`${path}/photo/${id}`}>
      {words}
    </a>
  )
