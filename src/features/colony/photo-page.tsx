/** A photo as large as the screen, with the way back to its colony and to the others of the same entry. */
import type { Entry } from '../../journal/index.ts'
import { Crumb, type Frame, Layout } from '../../parts/index.ts'
import type { ColonySummary } from '../../store/index.ts'

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

export const PhotoPage = ({ frame, summary: s, path, entry: e, ids, at }: PhotoProps) => {
  const { colony, dates, entries } = frame.words
  const said = colony.photo
  const day = dates.day(e.on, frame.today)
  return (
    <Layout frame={frame} title={said.title(s.tag)}>
      <Crumb to={`${path}#e-${e.id}`}>{s.tag}</Crumb>
      <h1>{said.heading(s.tag)}</h1>
      <p class="soft">
        {said.of(entries.kinds[e.kind], day, e.by)}
        {ids.length === 1 ? '' : said.nth(at + 1, ids.length)}.
      </p>
      <p class="photo-whole">
        <img src={`/photos/${ids[at]}`} alt={said.alt(s.tag, day)} />
      </p>
      <nav class="buttons" aria-label={said.others}>
        <Way path={path} id={ids[at - 1]} words={said.before} />
        <Way path={path} id={ids[at + 1]} words={said.next} />
        <a class="button" href={`${path}#e-${e.id}`}>
          {said.back(s.tag)}
        </a>
      </nav>
    </Layout>
  )
}

const Way = ({ path, id, words }: { path: string; id: string | undefined; words: string }) =>
  id === undefined ? null : (
    <a class="button" href={`${path}/photo/${id}`}>
      {words}
    </a>
  )
