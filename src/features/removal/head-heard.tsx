/** What stands in the head of a page that a phone made itself: it knows of the job what it was told last. */
import { comesBack } from '../../records/index.ts'
import type { RemovalProps } from './page.tsx'
import { isOver } from './stage.ts'

/** A phone that made this page itself knows what it was told last: a colleague may have found gas since. */
export const AsKnown = (p: RemovalProps) => {
  const { heard, goes, late, stage, sheet, path } = p
  if (heard === null || isOver(stage)) return null
  if (heard.signIn)
    return (
      <p class="notice notice-late">
        <b>Your sign-in is over.</b> What others found since {heard.words} is not here, and nothing of yours
        reaches them: <a href={`/sign-in?to=${encodeURIComponent(path)}`}>sign in again</a>, or call.
      </p>
    )
  if (sheet.work.openedAt !== undefined && !comesBack(sheet, p.frame.today)) return <OpenAsKnown {...p} />
  if (stage === 'go' && goes && late === null)
    return (
      <p class="notice">
        <b>Go, as this phone knows it</b>, of {heard.words}. What others found since is not here until there
        is signal: open this page once more before the cut, or call.
      </p>
    )
  return heard.deaf ? (
    <p class="notice notice-late">
      <b>Heard nothing since {heard.words}.</b> What others found since is not here: open this page where
      there is a signal. Without, it is asked beside “Go”.
    </p>
  ) : null
}

/** Opened without signal, and nothing heard since the “go”: what a colleague finds now does not come here by itself. */
const OpenAsKnown = ({ heard, stage, sheet: { work, decision } }: RemovalProps) =>
  heard === null ||
  heard.signIn ||
  stage !== 'go' ||
  work.openedAt === undefined ||
  decision?.heard?.of !== heard.of ? null : (
    <p class="notice">
      <b>Open, as this phone knows it</b>, of {heard.words}. What others found since is not here: open this
      page where there is a signal, or call.
    </p>
  )
